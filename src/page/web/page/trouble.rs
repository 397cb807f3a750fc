//! What did not work.

use maud::{Markup, html};

use super::frame::{self, notice};
use crate::words::{Language, Value, say};

/// The page.
pub(in crate::web) fn page(language: Language, what: &Value) -> Markup {
    frame::page(
        language,
        &say!(language, "page-trouble-title"),
        None,
        &html! {
            h1 { (say!(language, "page-trouble-title")) }
            (notice("bad", frame::why(what, language)))
            p { a.button href="/" { (say!(language, "page-all-jobs")) } }
        },
    )
}
