//! One shape per verdict: circle, square, diamond, triangle, each with its own
//! glyph, so that a verdict is recognised without its colour.

use maud::{Markup, html};

use crate::record::Verdict;
use crate::words::Language;

/// The style class of a verdict.
pub fn class(verdict: Verdict) -> &'static str {
    verdict.name()
}

/// The symbol; hidden from readers of the text, who have the words beside it.
pub fn symbol(verdict: Verdict) -> Markup {
    html! {
        svg.sym viewBox="0 0 100 100" aria-hidden="true" focusable="false" {
            @match verdict {
                Verdict::Within => {
                    circle.plate cx="50" cy="50" r="44" {}
                    path.glyph d="M29 52 44 67 72 35" {}
                }
                Verdict::Outside => {
                    rect.plate x="9" y="9" width="82" height="82" {}
                    path.glyph d="M32 32 68 68M68 32 32 68" {}
                }
                Verdict::NotProven => {
                    path.plate d="M50 4 96 50 50 96 4 50Z" {}
                    path.glyph d="M38 41C38 24 62 24 62 41C62 51 50 50 50 60" {}
                    circle.dot cx="50" cy="74" r="5.5" {}
                }
                Verdict::Retake => {
                    path.plate d="M50 6 96 92 4 92Z" {}
                    path.glyph d="M36 72H64M36 72 44 63M36 72 44 81M64 72V52H42" {}
                }
            }
        }
    }
}

/// Symbol and word.
pub(in crate::report) fn tag(verdict: Verdict, language: Language) -> Markup {
    let words = verdict.phrase().say(language);
    html! { span class={ "tag " (class(verdict)) } { (symbol(verdict)) (words) } }
}

/// A small mark of the same shape around `(x, y)` for a bar.
pub(super) fn mark(verdict: Verdict, x: f64, y: f64, r: f64) -> Markup {
    let p = super::svg::points;
    html! {
        @match verdict {
            Verdict::Within => circle.value cx=(super::svg::n(x)) cy=(super::svg::n(y)) r=(super::svg::n(r)) {},
            Verdict::Outside => {
                polygon.value points=(p(&[[x - r, y - r], [x + r, y - r], [x + r, y + r], [x - r, y + r]])) {}
            }
            Verdict::NotProven => {
                polygon.value points=(p(&[[x, y - 1.3 * r], [x + 1.3 * r, y], [x, y + 1.3 * r], [x - 1.3 * r, y]])) {}
            }
            Verdict::Retake => {
                polygon.value points=(p(&[[x, y - 1.2 * r], [x + 1.2 * r, y + r], [x - 1.2 * r, y + r]])) {}
            }
        }
    }
}
