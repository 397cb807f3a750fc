//! Where to stand for each photo: the drawing and the words.

use maud::{Markup, html};

use super::bodies::body_name;
use super::frame::{self, notice};
use crate::record::{PlanRecord, PlannedStation};
use crate::web::draw::bay;
use crate::web::view::View;
use crate::words::{Figure, Language, say};

/// The section.
pub(super) fn section(language: Language, view: &View) -> Markup {
    html! {
        section aria-labelledby="stand" {
            h2 #stand { (say!(language, "page-where-to-stand")) }
            @match &view.plan {
                Some(Ok(plan)) => (places(language, view, plan)),
                Some(Err(why)) => { (notice("warn", say!(language, "page-plan-failed"))) p.hint { (frame::why(why, language)) } },
                None => {},
            }
        }
    }
}

fn places(language: Language, view: &View, plan: &PlanRecord) -> Markup {
    if plan.stations.is_empty() {
        return notice("warn", say!(language, "page-no-place"));
    }
    let named = |name: &String| body_name(language, view, name);
    html! {
        div.stand {
            (bay::drawing(language, plan, &named))
            div {
                @if plan.steps.len() > 1 { p { (say!(language, "page-in-every-step", steps = plan.steps.clone())) } }
                ol.places {
                    @for station in &plan.stations {
                        li {
                            p { strong { (place(language, plan, station)) } }
                            p.hint { (say!(language, "page-place-sees", names = station.sees.iter().map(named).collect::<Vec<_>>())) }
                        }
                    }
                }
            }
        }
    }
}

fn place(language: Language, plan: &PlanRecord, station: &PlannedStation) -> String {
    let [x, y, z] = station.position_mm;
    let metres = |mm: f64| Figure::fixed(mm.abs() / 1000.0, 1);
    let ahead = x - plan.bay.nose_mm;
    let side = match y {
        y if y.abs() < 50.0 => "middle",
        y if y > 0.0 => "left",
        _ => "right",
    };
    say!(
        language,
        "page-place",
        along = if ahead >= 0.0 { "ahead" } else { "behind" },
        distance = metres(ahead),
        side = side,
        beside = metres(y),
        height = metres(z),
    )
}
