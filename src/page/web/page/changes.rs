//! Who changed what of a job.

use maud::{Markup, html};

use crate::web::deeds::{Change, Deed};
use crate::words::{Language, Value, say};

/// The latest changes, the last one first.
pub(super) fn section(language: Language, changes: &[Change]) -> Markup {
    html! {
        @if !changes.is_empty() {
            details.aside {
                summary { (say!(language, "page-changes")) " (" (changes.len()) ")" }
                ol.changes {
                    @for c in changes {
                        li {
                            (Value::moment(c.at.as_str()).say(language)) " · " @if c.device.is_some() { (c.by) } @else { (say!(language, "page-this-machine")) } " · " (deed(language, c.did))
                            @for (sign, lines) in [("−", &c.removed), ("+", &c.added)] {
                                @for line in lines { p.path { (sign) " " (line) } }
                            }
                        }
                    }
                }
            }
        }
    }
}

fn deed(language: Language, deed: Deed) -> String {
    match deed {
        Deed::Begin => say!(language, "page-did-begin"),
        Deed::Prepare => say!(language, "page-did-prepare"),
        Deed::Photo => say!(language, "page-did-photo"),
        Deed::Aside => say!(language, "page-did-aside"),
        Deed::Back => say!(language, "page-did-back"),
        Deed::File => say!(language, "page-did-file"),
        Deed::Calibration => say!(language, "page-did-calibration"),
        Deed::Card => say!(language, "page-did-card"),
        Deed::Join => say!(language, "page-did-join"),
        Deed::Attempt => say!(language, "page-did-attempt"),
        Deed::Close => say!(language, "page-did-close"),
    }
}
