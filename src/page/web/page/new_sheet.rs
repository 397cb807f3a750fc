//! Typing a set-up sheet: every figure twice.

use maud::{Markup, html};

use super::frame::{Line, field, notice, page as frame};
use super::quantities::quantity_words;
use crate::quantity::Quantity;
use crate::setup::ReferenceLine;
use crate::web::forms::Fields;
use crate::web::own_sheets::{FROM, QUANTITIES};
use crate::web::words::Words;

/// The page with what was typed so far, and why it was not taken.
pub(in crate::web) fn page(words: &Words, typed: &Fields, why: Option<&str>) -> Markup {
    let text = |name, label, hint| {
        field(&Line { name, label, value: typed.get(name).unwrap_or_default(), mode: "text", hint })
    };
    let lines = [
        (ReferenceLine::ThrustLine, words.line_thrust),
        (ReferenceLine::Centreline, words.line_centre),
        (ReferenceLine::RearAxleNormal, words.line_rear_axle),
    ];
    let body = html! {
        h1 { (words.new_sheet) }
        @if let Some(why) = why { div lang="en" { (notice("bad", why)) } }
        p { (words.new_sheet_why) }
        form.stack method="post" action="/new-sheet" {
            (text("name", words.sheet_name, Some(words.sheet_name_hint)))
            (text("title", words.sheet_title, None))
            (text("source", words.sheet_source, Some(words.sheet_source_hint)))
            div.field {
                label for="f-line" { (words.reference_line) }
                select #f-line name="line" {
                    option value="" { (words.choose) }
                    @for (line, name) in lines {
                        option value=(line.name()) selected[typed.get("line") == Some(line.name())] { (name) }
                    }
                }
            }
            @for quantity in QUANTITIES { (figures(words, typed, quantity)) }
            div.deeds { button.go type="submit" { (words.keep_sheet) } }
        }
    };
    frame(words, words.new_sheet, None, &body)
}

/// The wanted value and its tolerance, each typed twice.
fn figures(words: &Words, typed: &Fields, quantity: Quantity) -> Markup {
    let unit = quantity.unit().symbol();
    let one = |part: &str, label: &str| {
        let name = format!("{}:{part}", quantity.name());
        let label = format!("{label}, {unit}");
        field(&Line {
            name: &name,
            label: &label,
            value: typed.get(&name).unwrap_or_default(),
            mode: "text",
            hint: None,
        })
    };
    let starts = [words.from_nose, words.from_front_axle, words.from_rear_axle];
    html! {
        fieldset.question {
            legend { (quantity_words(words, quantity, None)) }
            @if quantity == Quantity::Distance {
                div.field {
                    label for="f-from" { (words.distance_from) }
                    select #f-from name="distance:from" {
                        option value="" { (words.choose) }
                        @for (from, name) in FROM.iter().zip(starts) {
                            option value=(from) selected[typed.get("distance:from") == Some(from)] { (name) }
                        }
                    }
                }
            }
            div.pair { (one("nominal", words.wanted_value)) (one("nominal:again", words.once_more)) }
            div.pair { (one("tolerance", words.tolerance_value)) (one("tolerance:again", words.once_more)) }
        }
    }
}
