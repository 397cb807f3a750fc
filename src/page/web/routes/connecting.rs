//! Connecting a device, showing one out, and the root that it may trust.

use axum::extract::{Path, State};
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE, SET_COOKIE};
use axum::http::{HeaderValue, StatusCode};
use axum::response::{IntoResponse, Response};

use super::answer::{html, page_or, see, see_or, trouble_page};
use super::request::{Shared, Typed, secure, typed as fields_of};
use crate::web::entry::{Refused, TOKEN_COOKIE};
use crate::web::forms::Fields;
use crate::web::language::Visitor;
use crate::web::page;
use crate::web::trouble::{Trouble, blocking};
use crate::words::{phrase, say};

pub(in crate::web) async fn pair(State(app): Shared, visitor: Visitor) -> Response {
    page_or(visitor, Ok(page::pair::page(visitor.language, &app, "", None)))
}

/// The code came from the square on the terminal: one touch more, since a
/// browser may fetch an address by itself.
pub(in crate::web) async fn scanned(State(app): Shared, visitor: Visitor, Path(code): Path<String>) -> Response {
    let code: String = code.chars().take(40).collect();
    page_or(visitor, Ok(page::pair::page(visitor.language, &app, &code, None)))
}

pub(in crate::web) async fn typed(State(app): Shared, visitor: Visitor, form: Typed) -> Response {
    let language = visitor.language;
    let fields = fields_of(form).unwrap_or(Fields(Vec::new()));
    let code = fields.get("code").unwrap_or_default().to_owned();
    let name = match fields.line("name") {
        Ok(name) => name,
        Err(trouble) => return trouble_page(visitor, &trouble),
    };
    let at = std::sync::Arc::clone(&app);
    let named = move |digits: &str| name.unwrap_or_else(|| say!(language, "page-device-unnamed", digits = digits));
    let (status, message) = match blocking(move || Ok(at.pairing.token_for(&code, named, at.now()))).await {
        Ok(Ok(token)) => {
            let cookie =
                format!("{TOKEN_COOKIE}={token}; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict{}", secure(&app));
            let mut answer = see("/");
            if let Ok(value) = HeaderValue::from_str(&cookie) {
                answer.headers_mut().insert(SET_COOKIE, value);
            }
            return answer;
        }
        Ok(Err(Refused::Wait)) => (StatusCode::TOO_MANY_REQUESTS, phrase!("page-pair-wait")),
        Ok(Err(Refused::Wrong)) => (StatusCode::FORBIDDEN, phrase!("page-pair-wrong")),
        _ => (StatusCode::INSUFFICIENT_STORAGE, phrase!("page-trouble-title")),
    };
    html(status, page::pair::page(language, &app, "", Some(&message.into())).into_string())
}

pub(in crate::web) async fn devices(State(app): Shared, visitor: Visitor, who: crate::web::entry::Who) -> Response {
    page_or(visitor, Ok(page::devices::page(visitor.language, &app, &who)))
}

pub(in crate::web) async fn show_out(State(app): Shared, visitor: Visitor, form: Typed) -> Response {
    let done = async {
        let id = fields_of(form)?.get("device").unwrap_or_default().to_owned();
        let out = blocking(move || app.pairing.devices.show_out(&id).map_err(|e| Trouble::disk("list", &e)));
        out.await?.ok_or_else(|| Trouble::not_found("device"))?;
        Ok("/devices".to_owned())
    };
    see_or(visitor, done.await)
}

/// The page's own root, for a device to trust.
pub(in crate::web) async fn root(State(app): Shared, visitor: Visitor) -> Response {
    let Some((der, _)) = app.certificate.as_ref().and_then(|c| c.root()) else {
        return trouble_page(visitor, &Trouble::not_found("root"));
    };
    let headers = [
        (CONTENT_TYPE, HeaderValue::from_static("application/x-x509-ca-cert")),
        (CONTENT_DISPOSITION, HeaderValue::from_static("attachment; filename=\"baywitness-root.crt\"")),
    ];
    (headers, der).into_response()
}
