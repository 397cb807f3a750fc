//! Connecting a device.

use maud::{Markup, html};

use super::frame::{Line, field, notice, page as frame};
use crate::web::words::Words;

/// The page; `code` is what a scanned address brought.
pub(in crate::web) fn page(words: &Words, code: &str, wrong: Option<&str>) -> Markup {
    frame(
        words,
        words.pair_title,
        None,
        &html! {
            h1 { (words.pair_title) }
            p { (words.pair_why) }
            @if let Some(wrong) = wrong { (notice("bad", wrong)) }
            form.stack method="post" action="/pair" {
                (field(&Line { name: "code", label: words.pair_code, value: code, mode: "text", hint: None }))
                button.go type="submit" { (words.pair_now) }
            }
        },
    )
}
