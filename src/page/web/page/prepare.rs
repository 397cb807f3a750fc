//! Before the photos: prerequisites, sizes, readings.

use maud::{Markup, html};

use super::frame::{self, Line, field, notice, unit};
use super::job_head::{self, Step, vin_words};
use super::quantities::quantity_words;
use crate::quantity::{Quantity, rounded};
use crate::setup::{From, Prerequisite, Setup};
use crate::web::address::job_path;
use crate::web::deeds::{Readable, alignment, instruments, readable};
use crate::web::view::View;
use crate::words::{Figure, Language, say};

/// The page.
pub(in crate::web) fn page(language: Language, view: &View, saved: bool) -> Markup {
    let body = match &view.named {
        Ok(named) => form(language, view, &named.setup),
        Err(why) => notice("bad", frame::why(why, language)),
    };
    let body = html! { @if saved { (notice("good", say!(language, "page-saved"))) } (body) };
    job_head::page(language, view, Step::Prepare, &body)
}

fn form(language: Language, view: &View, setup: &Setup) -> Markup {
    let (answered, all) = view.answered();
    html! {
        form.stack method="post" action=(job_path(&view.name, "prepare")) {
            fieldset.plain disabled[view.closed] {
                legend.gone { (say!(language, "page-step-prepare")) }
                @if !setup.prerequisites.is_empty() {
                    h2 { (say!(language, "page-before-photos")) }
                    p.count { (say!(language, "page-answered", answered = answered, all = all)) }
                    @for (i, p) in setup.prerequisites.iter().enumerate() { (question(language, view, i, p)) }
                }
                h2 { (say!(language, "page-vehicle")) }
                (vin_words(language, view))
                (vehicle(language, view))
                h2 { (say!(language, "page-readings")) }
                p.hint { (say!(language, "page-readings-why")) }
                @for (i, wanted) in readable(setup).iter().enumerate() { (reading(language, view, i, wanted)) }
                (alignment_sheet(language, view))
                @if !view.closed {
                    div.deeds {
                        button.go type="submit" name="then" value="photos" { (say!(language, "page-to-photos")) }
                        button type="submit" { (say!(language, "page-save")) }
                    }
                }
            }
        }
    }
}

/// Yes, no, or not answered: nothing is taken for granted.
fn question(language: Language, view: &View, i: usize, p: &Prerequisite) -> Markup {
    let answer = view.job.prerequisites.get(&p.id);
    let now = match answer {
        None => "none",
        Some(serde_json::Value::Bool(false)) => "no",
        Some(serde_json::Value::Bool(true)) => "yes",
        // Somebody's own words stay until another answer is chosen.
        Some(_) => "",
    };
    let choices = [
        ("yes", say!(language, "page-yes")),
        ("no", say!(language, "page-no")),
        ("none", say!(language, "page-unanswered")),
    ];
    html! {
        fieldset.question {
            legend { (p.text) @if p.required { " " small { "(" (say!(language, "page-required")) ")" } } }
            @if let Some(serde_json::Value::String(text)) = answer { p.hint { "“" (text) "”" } }
            div.choices {
                @for (value, name) in choices {
                    input type="radio" #{ "p-" (i) "-" (value) } name={ "p:" (p.id) } value=(value) checked[now == value];
                    label for={ "p-" (i) "-" (value) } { (name) }
                }
            }
        }
    }
}

fn vehicle(language: Language, view: &View) -> Markup {
    let v = &view.job.vehicle;
    let text = |name, label: String, value: Option<&str>| {
        field(&Line { name, label, value: value.unwrap_or_default(), mode: "text", hint: None })
    };
    let size = |name, label: String, value: Option<f64>| {
        let value = value.map(|v| shown(v, language)).unwrap_or_default();
        field(&Line { name, label, value: &value, mode: "decimal", hint: None })
    };
    html! {
        (text("description", say!(language, "page-vehicle-description"), v.description.as_deref()))
        (text("vin", say!(language, "page-vin"), v.vin.as_deref()))
        h3 { (say!(language, "page-sizes")) }
        p.hint { (say!(language, "page-sizes-why")) }
        (size("wheelbase", say!(language, "page-wheelbase"), v.wheelbase_mm))
        (size("nose_from_rear_axle", say!(language, "page-nose-from-rear-axle"), v.nose_from_rear_axle_mm))
        (size("floor_below_hub", say!(language, "page-floor-below-hub"), v.floor_below_hub_mm))
        (size("rear_track", say!(language, "page-rear-track"), v.rear_track_mm))
        (size("front_track", say!(language, "page-front-track"), v.front_track_mm))
    }
}

/// As typed: without zeros at the end.
fn shown(value: f64, language: Language) -> String {
    let text = rounded(value, 4);
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    Figure::of_digits(text).map(|f| f.say(language)).unwrap_or_default()
}

fn reading(language: Language, view: &View, i: usize, wanted: &Readable) -> Markup {
    let quantity = wanted.quantity;
    let there = view.job.readings.iter().find(|r| wanted.is_of(r));
    let mut label = quantity_words(language, quantity, wanted.from.as_ref().map(From::name));
    for more in [wanted.target.clone(), wanted.step.clone(), Some(unit(quantity.unit().symbol(), language))] {
        label.extend(more.iter().flat_map(|more| [", ", more.as_str()]));
    }
    let (value_name, instrument_name) = (format!("reading:{i}"), format!("instrument:{i}"));
    let value = there.map(|r| shown(r.value, language)).unwrap_or_default();
    html! {
        div.pair {
            (field(&Line { name: &value_name, label: label.clone(), value: &value, mode: "decimal", hint: None }))
            div.field {
                label for={ "f-" (instrument_name) } { (say!(language, "page-instrument")) span.gone { (say!(language, "page-colon")) " " (label) } }
                select #{ "f-" (instrument_name) } name=(instrument_name) {
                    @for (name, _) in instruments(quantity) {
                        option value=(name) selected[there.is_some_and(|r| r.instrument.as_deref() == Some(name))] {
                            (instrument_words(language, name))
                        }
                    }
                }
            }
        }
    }
}

/// The thrust angle with its side, in degrees and minutes, or the rear toes that give it.
fn alignment_sheet(language: Language, view: &View) -> Markup {
    let thrust = view.job.readings.iter().find(|r| r.quantity == Quantity::ThrustAngle).map(|r| r.value);
    let points = [say!(language, "page-points-left"), say!(language, "page-points-right")];
    let toes = [say!(language, "page-toe-in"), say!(language, "page-toe-out")];
    html! {
        h2 { (say!(language, "page-alignment-sheet")) }
        p.hint { (say!(language, "page-alignment-sheet-why")) }
        (angle(language, alignment::THRUST, &say!(language, "page-thrust-angle"), alignment::POINTS, &points, thrust))
        (angle(language, alignment::TOE_LEFT, &say!(language, "page-rear-toe-left"), alignment::TOES, &toes, None))
        (angle(language, alignment::TOE_RIGHT, &say!(language, "page-rear-toe-right"), alignment::TOES, &toes, None))
    }
}

fn angle(
    language: Language,
    name: &str,
    label: &str,
    sides: [&str; 2],
    side_words: &[String; 2],
    value: Option<f64>,
) -> Markup {
    let side_name = format!("{name}:side");
    let shown_side = value.filter(|v| v.abs() > 1e-9).map(|v| sides[usize::from(v < 0.0)]);
    let (degrees, minutes) = value
        .map(alignment::degrees_and_minutes)
        .map_or_else(Default::default, |(d, m)| (shown(d, language), shown(m, language)));
    html! {
        div.pair.three {
            div.field {
                label for={ "f-" (side_name) } { (label) }
                select #{ "f-" (side_name) } name=(side_name) {
                    option value="" selected[shown_side.is_none()] { (say!(language, "page-choose-side")) }
                    @for (side, side_words) in sides.iter().zip(side_words) {
                        option value=(side) selected[shown_side == Some(side)] { (side_words) }
                    }
                }
            }
            (field(&Line { name: &format!("{name}:deg"), label: say!(language, "page-angle-degrees", angle = label), value: &degrees, mode: "decimal", hint: None }))
            (field(&Line { name: &format!("{name}:min"), label: say!(language, "page-angle-minutes", angle = label), value: &minutes, mode: "decimal", hint: None }))
        }
    }
}

fn instrument_words(language: Language, name: &str) -> String {
    match name {
        "laser" => say!(language, "page-laser"),
        "tape" => say!(language, "page-tape"),
        "level" => say!(language, "page-level"),
        _ => say!(language, "page-alignment"),
    }
}
