//! Answers: pages, what went wrong, JSON for the page's script.

use axum::Json;
use axum::http::header::{CONTENT_TYPE, LOCATION};
use axum::http::{HeaderValue, StatusCode};
use axum::response::{IntoResponse, Response};
use maud::Markup;

use crate::web::language::Visitor;
use crate::web::page;
use crate::web::trouble::Trouble;

/// A page, or the page that says why there is none.
pub(in crate::web) fn page_or(visitor: Visitor, made: Result<Markup, Trouble>) -> Response {
    match made {
        Ok(markup) => html(StatusCode::OK, markup.into_string()),
        Err(trouble) => trouble_page(visitor, &trouble),
    }
}

/// The page that says why there is none.
pub(in crate::web) fn trouble_page(visitor: Visitor, trouble: &Trouble) -> Response {
    html(trouble.status, page::trouble::page(visitor.language, &trouble.words).into_string())
}

/// HTML text.
pub(in crate::web) fn html(status: StatusCode, text: String) -> Response {
    (status, [(CONTENT_TYPE, HeaderValue::from_static("text/html; charset=utf-8"))], text).into_response()
}

/// Another page, read anew: after a form was taken.
pub(in crate::web) fn see(path: &str) -> Response {
    match HeaderValue::from_str(path) {
        Ok(value) => (StatusCode::SEE_OTHER, [(LOCATION, value)]).into_response(),
        Err(_) => StatusCode::INTERNAL_SERVER_ERROR.into_response(),
    }
}

/// Another page, or why not.
pub(in crate::web) fn see_or(visitor: Visitor, done: Result<String, Trouble>) -> Response {
    match done {
        Ok(path) => see(&path),
        Err(trouble) => trouble_page(visitor, &trouble),
    }
}

/// What went wrong, for the page's script.
pub(in crate::web) fn json_trouble(visitor: Visitor, trouble: &Trouble) -> Response {
    let body = serde_json::json!({ "error": trouble.code, "message": trouble.words.say(visitor.language) });
    (trouble.status, Json(body)).into_response()
}
