//! What is asked of every request before anything else: the right host, the
//! same origin for what changes something, a paired device. And what every
//! answer tells the browser not to do.

use std::net::{IpAddr, SocketAddr};
use std::sync::Arc;

use axum::extract::{Request, State};
use axum::http::header::{self, HeaderName};
use axum::http::{HeaderMap, HeaderValue, Method, StatusCode};
use axum::middleware::Next;
use axum::response::{IntoResponse, Redirect, Response};

use super::answer::json_trouble;
use crate::web::app::App;
use crate::web::entry::TOKEN_COOKIE;
use crate::web::language::{Visitor, cookie};
use crate::web::trouble::Trouble;
use crate::words::phrase;

/// Nothing but this server's own files; pictures also from the page's memory.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; connect-src 'self'; \
                      form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
/// The report brings its own styles and pictures and has no script at all.
pub(in crate::web) const REPORT_POLICY: &str = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; \
                                        form-action 'none'; frame-ancestors 'none'; sandbox";

/// What a device may have before it is connected: nothing of a job.
const OPEN: [&str; 7] = ["/pair", "/page.css", "/page.js", "/camera.js", "/worker.js", "/icon.svg", "/root.crt"];

/// Where the server listens.
#[derive(Clone)]
pub(in crate::web) struct Guarded {
    pub(in crate::web) app: Arc<App>,
    pub(in crate::web) address: SocketAddr,
}

/// The guard at the door.
pub(in crate::web) async fn guard(State(guarded): State<Guarded>, request: Request, next: Next) -> Response {
    let mut answer = match admitted(&guarded, request) {
        Ok(request) => next.run(request).await,
        Err(refusal) => *refusal,
    };
    let headers = answer.headers_mut();
    for (name, value) in [
        (header::CONTENT_SECURITY_POLICY, POLICY),
        (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
        (header::X_FRAME_OPTIONS, "DENY"),
        // Forms must tell their origin; other sites learn nothing.
        (header::REFERRER_POLICY, "same-origin"),
        (header::CACHE_CONTROL, "no-store"),
        (HeaderName::from_static("cross-origin-opener-policy"), "same-origin"),
        (HeaderName::from_static("cross-origin-resource-policy"), "same-origin"),
        (HeaderName::from_static("permissions-policy"), "geolocation=(), microphone=(), payment=(), usb=()"),
    ] {
        headers.entry(name).or_insert(HeaderValue::from_static(value));
    }
    answer
}

fn admitted(guarded: &Guarded, request: Request) -> Result<Request, Box<Response>> {
    let (mut parts, body) = request.into_parts();
    let visitor = Visitor::of(&parts);
    let path = parts.uri.path().to_owned();
    let encrypted = guarded.app.certificate.is_some();
    if guarded.address.ip().is_loopback() && !names_this_machine(&parts.headers, guarded.address, encrypted) {
        // Another site's name that was made to lead here must not read the page.
        let words = phrase!("page-trouble-host");
        return Err(refused(visitor, &Trouble::new(StatusCode::MISDIRECTED_REQUEST, "host", words)));
    }
    if !matches!(parts.method, Method::GET | Method::HEAD) && !same_origin(&parts.headers, encrypted) {
        let words = phrase!("page-trouble-origin");
        return Err(refused(visitor, &Trouble::new(StatusCode::FORBIDDEN, "origin", words)));
    }
    let open = OPEN.contains(&path.as_str()) || path.starts_with("/pair/") || path.starts_with("/language/");
    let known = guarded.app.pairing.who(cookie(&parts, TOKEN_COOKIE));
    let (method, wants_page) = (parts.method.clone(), wants_page(&parts.headers));
    let admitted = open || known.is_some();
    if let Some(who) = known {
        parts.extensions.insert(who);
    }
    let request = Request::from_parts(parts, body);
    match admitted {
        true => Ok(request),
        false if method == Method::GET && wants_page => Err(Box::new(Redirect::to("/pair").into_response())),
        false => Err(refused(
            visitor,
            &Trouble::new(StatusCode::UNAUTHORIZED, "pair", phrase!("page-trouble-not-connected")),
        )),
    }
}

fn refused(visitor: Visitor, trouble: &Trouble) -> Box<Response> {
    Box::new(json_trouble(visitor, trouble))
}

fn wants_page(headers: &HeaderMap) -> bool {
    headers.get(header::ACCEPT).and_then(|a| a.to_str().ok()).is_some_and(|a| a.contains("text/html"))
}

fn host(headers: &HeaderMap) -> Option<&str> {
    headers.get(header::HOST)?.to_str().ok()
}

/// Whether the request was made to one of this machine's own names.
fn names_this_machine(headers: &HeaderMap, address: SocketAddr, encrypted: bool) -> bool {
    let Some(host) = host(headers) else { return false };
    let (name, port) = match host.rsplit_once(':') {
        Some((name, port)) if !port.ends_with(']') => (name, port.parse().ok()),
        _ => (host, Some(if encrypted { 443 } else { 80 })),
    };
    let name = name.trim_start_matches('[').trim_end_matches(']');
    let local = name.eq_ignore_ascii_case("localhost") || name.parse::<IpAddr>().is_ok_and(|ip| ip.is_loopback());
    local && port == Some(address.port())
}

/// Whether the page itself sent the request. Browsers say so in one of two
/// ways; the newer one only where the page counts as safe.
fn same_origin(headers: &HeaderMap, encrypted: bool) -> bool {
    let text = |name: &str| headers.get(name).and_then(|v| v.to_str().ok());
    if let Some(site) = text("sec-fetch-site") {
        return site == "same-origin";
    }
    let (Some(origin), Some(host)) = (text("origin"), host(headers)) else { return false };
    origin.strip_prefix(if encrypted { "https://" } else { "http://" }).is_some_and(|o| o == host)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn headers(pairs: &[(&str, &str)]) -> HeaderMap {
        let pair = |(k, v): &(&str, &str)| (k.parse::<HeaderName>().unwrap(), HeaderValue::from_str(v).unwrap());
        pairs.iter().map(pair).collect()
    }

    #[test]
    fn only_this_machines_names() {
        let at = "127.0.0.1:8080".parse().unwrap();
        for good in ["127.0.0.1:8080", "localhost:8080", "[::1]:8080", "LOCALHOST:8080"] {
            assert!(names_this_machine(&headers(&[("host", good)]), at, false), "{good}");
        }
        for bad in ["evil.example:8080", "localhost", "localhost:80", "127.0.0.1.evil.example:8080", ""] {
            assert!(!names_this_machine(&headers(&[("host", bad)]), at, false), "{bad}");
        }
    }

    #[test]
    fn only_the_pages_own_requests_change_anything() {
        let host = ("host", "10.0.0.2:8080");
        assert!(same_origin(&headers(&[host, ("origin", "http://10.0.0.2:8080")]), false));
        assert!(same_origin(&headers(&[host, ("sec-fetch-site", "same-origin"), ("origin", "null")]), false));
        for bad in [
            vec![host],
            vec![host, ("origin", "null")],
            vec![host, ("origin", "http://10.0.0.2")],
            vec![host, ("origin", "http://evil.example")],
            vec![host, ("sec-fetch-site", "cross-site"), ("origin", "http://10.0.0.2:8080")],
            vec![host, ("sec-fetch-site", "none")],
        ] {
            assert!(!same_origin(&headers(&bad), false), "{bad:?}");
        }
    }
}
