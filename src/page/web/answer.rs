//! Answers: pages, what went wrong, JSON for the page's script.

use axum::Json;
use axum::http::header::{CONTENT_TYPE, LOCATION};
use axum::http::{HeaderValue, StatusCode};
use axum::response::{IntoResponse, Response};
use maud::Markup;
use percent_encoding::{AsciiSet, NON_ALPHANUMERIC, utf8_percent_encode};

use super::language::Visitor;
use super::page;
use super::trouble::Trouble;

/// What may stand in a part of a path as it is (RFC 3986, unreserved).
const KEPT: &AsciiSet = &NON_ALPHANUMERIC.remove(b'-').remove(b'.').remove(b'_').remove(b'~');

/// A name as a part of a path or a value of a query.
pub(super) fn encoded(name: &str) -> String {
    utf8_percent_encode(name, KEPT).to_string()
}

/// The address of a job's page; of none, of the job.
pub(super) fn job_path(name: &str, page: &str) -> String {
    let slash = if page.is_empty() { "" } else { "/" };
    format!("/jobs/{}{slash}{page}", encoded(name))
}

/// A page, or the page that says why there is none.
pub(super) fn page_or(visitor: Visitor, made: Result<Markup, Trouble>) -> Response {
    match made {
        Ok(markup) => html(StatusCode::OK, markup.into_string()),
        Err(trouble) => trouble_page(visitor, &trouble),
    }
}

/// The page that says why there is none.
pub(super) fn trouble_page(visitor: Visitor, trouble: &Trouble) -> Response {
    html(trouble.status, page::trouble::page(visitor.language, &trouble.words).into_string())
}

/// HTML text.
pub(super) fn html(status: StatusCode, text: String) -> Response {
    (status, [(CONTENT_TYPE, HeaderValue::from_static("text/html; charset=utf-8"))], text).into_response()
}

/// Another page, read anew: after a form was taken.
pub(super) fn see(path: &str) -> Response {
    match HeaderValue::from_str(path) {
        Ok(value) => (StatusCode::SEE_OTHER, [(LOCATION, value)]).into_response(),
        Err(_) => StatusCode::INTERNAL_SERVER_ERROR.into_response(),
    }
}

/// Another page, or why not.
pub(super) fn see_or(visitor: Visitor, done: Result<String, Trouble>) -> Response {
    match done {
        Ok(path) => see(&path),
        Err(trouble) => trouble_page(visitor, &trouble),
    }
}

/// What went wrong, for the page's script.
pub(super) fn json_trouble(visitor: Visitor, trouble: &Trouble) -> Response {
    let body = serde_json::json!({ "error": trouble.code, "message": trouble.words.say(visitor.language) });
    (trouble.status, Json(body)).into_response()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_cannot_leave_their_place_in_a_path() {
        assert_eq!(job_path("a/../b c", "photos"), "/jobs/a%2F..%2Fb%20c/photos");
        assert_eq!(encoded("J-1.x_y~"), "J-1.x_y~");
        assert_eq!(encoded("\"&<ü"), "%22%26%3C%C3%BC");
    }
}
