//! Where to stand for each photo: the drawing and the words.

use maud::{Markup, html};

use super::frame::notice;
use crate::quantity::rounded;
use crate::record::{PlanRecord, PlannedStation};
use crate::web::draw::bay;
use crate::web::view::View;
use crate::web::words::{Words, fill};

/// The section.
pub(super) fn section(words: &Words, view: &View) -> Markup {
    html! {
        section aria-labelledby="stand" {
            h2 #stand { (words.where_to_stand) }
            @match &view.plan {
                Some(Ok(plan)) => (places(words, plan)),
                Some(Err(why)) => { (notice("warn", words.plan_failed)) p.hint lang="en" { (why) } },
                None => {},
            }
        }
    }
}

fn places(words: &Words, plan: &PlanRecord) -> Markup {
    if plan.stations.is_empty() {
        return notice("warn", words.no_place);
    }
    html! {
        div.stand {
            (bay::drawing(words, plan))
            div {
                @if plan.steps.len() > 1 { p { (fill(words.in_every_step, &[&plan.steps.join(", ")])) } }
                ol.places {
                    @for station in &plan.stations {
                        li {
                            p { strong { (place(words, plan, station)) } }
                            p.hint { (fill(words.place_sees, &[&station.sees.join(", ")])) }
                        }
                    }
                }
            }
        }
    }
}

fn place(words: &Words, plan: &PlanRecord, station: &PlannedStation) -> String {
    let [x, y, z] = station.position_mm;
    let metres = |mm: f64| rounded(mm.abs() / 1000.0, 1);
    let ahead = x - plan.bay.nose_mm;
    let along = fill(if ahead >= 0.0 { words.place_ahead } else { words.place_behind }, &[&metres(ahead)]);
    let across = match y {
        y if y.abs() < 50.0 => words.place_middle.to_owned(),
        y => fill(if y > 0.0 { words.place_left } else { words.place_right }, &[&metres(y)]),
    };
    format!("{along}, {across}, {}", fill(words.place_high, &[&metres(z)]))
}
