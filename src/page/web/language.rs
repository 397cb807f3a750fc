//! Which language a visitor reads: their choice, else what the browser asks for.

use std::convert::Infallible;

use axum::extract::FromRequestParts;
use axum::http::header::{ACCEPT_LANGUAGE, COOKIE};
use axum::http::request::Parts;

use crate::words::Language;

/// The cookie that keeps the choice.
pub(super) const LANGUAGE_COOKIE: &str = "baywitness-language";

/// Who asks.
#[derive(Clone, Copy)]
pub(super) struct Visitor {
    pub(super) language: Language,
}

impl<S: Sync> FromRequestParts<S> for Visitor {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, _: &S) -> Result<Self, Infallible> {
        Ok(Visitor::of(parts))
    }
}

impl Visitor {
    pub(super) fn of(parts: &Parts) -> Self {
        let chosen = cookie(parts, LANGUAGE_COOKIE).and_then(Language::of_tag);
        let asked = || Language::of_header(parts.headers.get(ACCEPT_LANGUAGE)?.to_str().ok()?);
        Visitor { language: chosen.or_else(asked).unwrap_or_default() }
    }
}

/// A cookie's value.
pub(super) fn cookie<'a>(parts: &'a Parts, name: &str) -> Option<&'a str> {
    let all = parts.headers.get_all(COOKIE).iter().filter_map(|h| h.to_str().ok());
    all.flat_map(|h| h.split(';')).find_map(|pair| {
        let (key, value) = pair.trim().split_once('=')?;
        (key == name).then_some(value)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn language(headers: &[(&str, &str)]) -> &'static str {
        let mut request = axum::http::Request::builder();
        for (name, value) in headers {
            request = request.header(*name, *value);
        }
        Visitor::of(&request.body(()).unwrap().into_parts().0).language.tag()
    }

    #[test]
    fn the_choice_comes_before_the_browser_and_english_last() {
        assert_eq!(language(&[]), "en");
        assert_eq!(language(&[("accept-language", "pl, fr-CH;q=0.9, de;q=0.7, en;q=0.3")]), "fr");
        assert_eq!(language(&[("accept-language", "en-GB,de")]), "en");
        assert_eq!(language(&[("accept-language", "en"), ("cookie", "a=b; baywitness-language=de")]), "de");
        assert_eq!(language(&[("cookie", "baywitness-language=<script>")]), "en");
    }
}
