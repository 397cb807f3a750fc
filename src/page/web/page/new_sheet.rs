//! Typing a set-up sheet: every figure twice.

use maud::{Markup, html};

use super::frame::{self, Line, field, notice, unit};
use super::quantities::quantity_words;
use crate::quantity::Quantity;
use crate::setup::ReferenceLine;
use crate::web::deeds::{FROM, QUANTITIES};
use crate::web::forms::Fields;
use crate::words::{Language, Value, say};

/// The page with what was typed so far, and why it was not taken.
pub(in crate::web) fn page(language: Language, typed: &Fields, why: Option<&Value>) -> Markup {
    let text = |name, label: String, hint| {
        field(&Line { name, label, value: typed.get(name).unwrap_or_default(), mode: "text", hint })
    };
    let lines = [
        (ReferenceLine::ThrustLine, say!(language, "page-line-thrust")),
        (ReferenceLine::Centreline, say!(language, "page-line-centre")),
        (ReferenceLine::RearAxleNormal, say!(language, "page-line-rear-axle")),
    ];
    let body = html! {
        h1 { (say!(language, "page-new-sheet")) }
        @if let Some(why) = why { (notice("bad", frame::why(why, language))) }
        p { (say!(language, "page-new-sheet-why")) }
        form.stack method="post" action="/new-sheet" {
            (text("name", say!(language, "page-sheet-name"), Some(say!(language, "page-sheet-name-hint"))))
            (text("title", say!(language, "page-sheet-title"), None))
            (text("source", say!(language, "page-sheet-source"), Some(say!(language, "page-sheet-source-hint"))))
            div.field {
                label for="f-line" { (say!(language, "page-reference-line")) }
                select #f-line name="line" {
                    option value="" { (say!(language, "page-choose")) }
                    @for (line, name) in lines {
                        option value=(line.name()) selected[typed.get("line") == Some(line.name())] { (name) }
                    }
                }
            }
            @for quantity in QUANTITIES { (figures(language, typed, quantity)) }
            div.deeds { button.go type="submit" { (say!(language, "page-keep-sheet")) } }
        }
    };
    frame::page(language, &say!(language, "page-new-sheet"), None, &body)
}

/// The wanted value and its tolerance, each typed twice.
fn figures(language: Language, typed: &Fields, quantity: Quantity) -> Markup {
    let unit = unit(quantity.unit().symbol(), language);
    let one = |part: &str, label: String| {
        let name = format!("{}:{part}", quantity.name());
        let label = format!("{label}, {unit}");
        field(&Line { name: &name, label, value: typed.get(&name).unwrap_or_default(), mode: "text", hint: None })
    };
    let starts = [
        say!(language, "page-from-nose"),
        say!(language, "page-from-front-axle"),
        say!(language, "page-from-rear-axle"),
    ];
    html! {
        fieldset.question {
            legend { (quantity_words(language, quantity, None)) }
            @if quantity == Quantity::Distance {
                div.field {
                    label for="f-from" { (say!(language, "page-distance-from")) }
                    select #f-from name="distance:from" {
                        option value="" { (say!(language, "page-choose")) }
                        @for (from, name) in FROM.iter().zip(starts) {
                            option value=(from) selected[typed.get("distance:from") == Some(from)] { (name) }
                        }
                    }
                }
            }
            div.pair { (one("nominal", say!(language, "page-wanted-value"))) (one("nominal:again", say!(language, "page-once-more"))) }
            div.pair { (one("tolerance", say!(language, "page-tolerance-value"))) (one("tolerance:again", say!(language, "page-once-more"))) }
        }
    }
}
