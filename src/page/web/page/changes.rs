//! Who changed what of a job.

use maud::{Markup, html};

use crate::web::changes::{Change, Deed};
use crate::web::words::Words;

/// The latest changes, the last one first.
pub(super) fn section(words: &Words, changes: &[Change]) -> Markup {
    html! {
        @if !changes.is_empty() {
            details.aside {
                summary { (words.changes) " (" (changes.len()) ")" }
                ol.changes {
                    @for c in changes {
                        li {
                            (c.at.replace('T', " ")) " · " (c.by) " · " (deed(words, c.did))
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

fn deed(words: &Words, deed: Deed) -> &'static str {
    match deed {
        Deed::Begin => words.did_begin,
        Deed::Prepare => words.did_prepare,
        Deed::Photo => words.did_photo,
        Deed::Aside => words.did_aside,
        Deed::Back => words.did_back,
        Deed::File => words.did_file,
        Deed::Calibration => words.did_calibration,
        Deed::Card => words.did_card,
        Deed::Join => words.did_join,
        Deed::Attempt => words.did_attempt,
        Deed::Close => words.did_close,
    }
}
