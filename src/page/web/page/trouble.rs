//! What did not work.

use maud::{Markup, html};

use super::frame::{notice, page as frame};
use crate::web::words::Words;

/// The page.
pub(in crate::web) fn page(words: &Words, what: &str) -> Markup {
    frame(
        words,
        words.trouble_title,
        None,
        &html! {
            h1 { (words.trouble_title) }
            (notice("bad", what))
            p { a.button href="/" { (words.all_jobs) } }
        },
    )
}
