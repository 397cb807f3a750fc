//! Connecting a device.

use maud::{Markup, html};

use super::devices::certificate;
use super::frame::{Line, field, notice, open_network, page as frame};
use crate::web::app::App;
use crate::web::words::Words;

/// The page; `code` is what a scanned address brought.
pub(in crate::web) fn page(words: &Words, app: &App, code: &str, wrong: Option<&str>) -> Markup {
    frame(
        words,
        words.pair_title,
        None,
        &html! {
            (open_network(words, app.open))
            h1 { (words.pair_title) }
            p { (words.pair_why) }
            @if let Some(wrong) = wrong { (notice("bad", wrong)) }
            form.stack method="post" action="/pair" {
                (field(&Line { name: "code", label: words.pair_code, value: code, mode: "text", hint: None }))
                (field(&Line { name: "name", label: words.pair_name, value: "", mode: "text", hint: Some(words.pair_name_why) }))
                button.go type="submit" { (words.pair_now) }
            }
            (certificate(words, app))
        },
    )
}
