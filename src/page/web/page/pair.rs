//! Connecting a device.

use maud::{Markup, html};

use super::devices::certificate;
use super::frame::{self, Line, field, notice, open_network};
use crate::web::app::App;
use crate::words::{Language, Value, say};

/// The page; `code` is what a scanned address brought.
pub(in crate::web) fn page(language: Language, app: &App, code: &str, wrong: Option<&Value>) -> Markup {
    frame::page(
        language,
        &say!(language, "page-pair-title"),
        None,
        &html! {
            (open_network(language, app.open))
            h1 { (say!(language, "page-pair-title")) }
            p { (say!(language, "page-pair-why")) }
            @if let Some(wrong) = wrong { (notice("bad", frame::why(wrong, language))) }
            form.stack method="post" action="/pair" {
                (field(&Line { name: "code", label: say!(language, "page-pair-code"), value: code, mode: "text", hint: None }))
                (field(&Line { name: "name", label: say!(language, "page-pair-name"), value: "", mode: "text", hint: Some(say!(language, "page-pair-name-why")) }))
                button.go type="submit" { (say!(language, "page-pair-now")) }
            }
            (certificate(language, app))
        },
    )
}
