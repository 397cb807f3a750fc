//! Which language a visitor reads: their choice, else what the browser asks for.

use std::convert::Infallible;

use axum::extract::FromRequestParts;
use axum::http::header::{ACCEPT_LANGUAGE, COOKIE};
use axum::http::request::Parts;

use super::words::{ENGLISH, GERMAN, Words};

/// The cookie that keeps the choice.
pub(super) const LANGUAGE_COOKIE: &str = "baywitness-language";

/// Who asks.
#[derive(Clone, Copy)]
pub(super) struct Visitor {
    pub(super) words: &'static Words,
}

impl<S: Sync> FromRequestParts<S> for Visitor {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, _: &S) -> Result<Self, Infallible> {
        Ok(Visitor::of(parts))
    }
}

impl Visitor {
    fn of(parts: &Parts) -> Self {
        let chosen = cookie(parts, LANGUAGE_COOKIE).and_then(by_name);
        let asked = || {
            let header = parts.headers.get(ACCEPT_LANGUAGE)?.to_str().ok()?;
            header.split(',').find_map(|part| by_name(part.split([';', '-']).next()?.trim()))
        };
        Visitor { words: chosen.or_else(asked).unwrap_or(&ENGLISH) }
    }
}

/// A language's strings by its name.
pub(super) fn by_name(name: &str) -> Option<&'static Words> {
    [&ENGLISH, &GERMAN].into_iter().find(|w| w.language.eq_ignore_ascii_case(name))
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
        Visitor::of(&request.body(()).unwrap().into_parts().0).words.language
    }

    #[test]
    fn the_choice_comes_before_the_browser_and_english_last() {
        assert_eq!(language(&[]), "en");
        assert_eq!(language(&[("accept-language", "fr-CH, de;q=0.7, en;q=0.3")]), "de");
        assert_eq!(language(&[("accept-language", "en-GB,de")]), "en");
        assert_eq!(language(&[("accept-language", "en"), ("cookie", "a=b; baywitness-language=de")]), "de");
        assert_eq!(language(&[("cookie", "baywitness-language=<script>")]), "en");
    }
}
