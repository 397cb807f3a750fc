//! Before the photos: prerequisites, sizes, readings.

use maud::{Markup, html};

use super::frame::{Line, field, notice};
use super::job_head::{self, Step, vin_words};
use super::quantities::quantity_words;
use crate::folder::Reading;
use crate::quantity::{Quantity, rounded};
use crate::setup::{From, Prerequisite, Setup};
use crate::web::alignment;
use crate::web::answer::job_path;
use crate::web::paperwork::{instruments, readable};
use crate::web::view::View;
use crate::web::words::{Words, fill};

/// The page.
pub(in crate::web) fn page(words: &Words, view: &View, saved: bool) -> Markup {
    let body = match &view.named {
        Ok(named) => form(words, view, &named.setup),
        Err(why) => html! { div lang="en" { (notice("bad", why)) } },
    };
    let body = html! { @if saved { (notice("good", words.saved)) } (body) };
    job_head::page(words, view, Step::Prepare, &body)
}

fn form(words: &Words, view: &View, setup: &Setup) -> Markup {
    let (answered, all) = view.answered();
    html! {
        form.stack method="post" action=(job_path(&view.name, "prepare")) {
            fieldset.plain disabled[view.closed] {
                legend.gone { (words.step_prepare) }
                @if !setup.prerequisites.is_empty() {
                    h2 { (words.before_photos) }
                    p.count { (fill(words.answered, &[&answered.to_string(), &all.to_string()])) }
                    @for (i, p) in setup.prerequisites.iter().enumerate() { (question(words, view, i, p)) }
                }
                h2 { (words.vehicle) }
                (vin_words(words, view))
                (vehicle(words, view))
                h2 { (words.readings) }
                p.hint { (words.readings_why) }
                @for (i, (quantity, from)) in readable(setup).iter().enumerate() { (reading(words, view, i, *quantity, from.as_ref())) }
                (alignment_sheet(words, view))
                @if !view.closed {
                    div.deeds {
                        button.go type="submit" name="then" value="photos" { (words.to_photos) }
                        button type="submit" { (words.save) }
                    }
                }
            }
        }
    }
}

/// Yes, no, or not answered: nothing is taken for granted.
fn question(words: &Words, view: &View, i: usize, p: &Prerequisite) -> Markup {
    let answer = view.job.prerequisites.get(&p.id);
    let now = match answer {
        None => "none",
        Some(serde_json::Value::Bool(false)) => "no",
        Some(serde_json::Value::Bool(true)) => "yes",
        // Somebody's own words stay until another answer is chosen.
        Some(_) => "",
    };
    let choices = [("yes", words.yes), ("no", words.no), ("none", words.unanswered)];
    html! {
        fieldset.question {
            legend { (p.text) @if p.required { " " small { "(" (words.required) ")" } } }
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

fn vehicle(words: &Words, view: &View) -> Markup {
    let v = &view.job.vehicle;
    let text = |name, label, value: Option<&str>| {
        field(&Line { name, label, value: value.unwrap_or_default(), mode: "text", hint: None })
    };
    let size = |name, label, value: Option<f64>| {
        let value = value.map(shown).unwrap_or_default();
        field(&Line { name, label, value: &value, mode: "decimal", hint: None })
    };
    html! {
        (text("description", words.vehicle_description, v.description.as_deref()))
        (text("vin", words.vin, v.vin.as_deref()))
        h3 { (words.sizes) }
        p.hint { (words.sizes_why) }
        (size("wheelbase", words.wheelbase, v.wheelbase_mm))
        (size("nose_from_rear_axle", words.nose_from_rear_axle, v.nose_from_rear_axle_mm))
        (size("floor_below_hub", words.floor_below_hub, v.floor_below_hub_mm))
    }
}

/// As typed: without zeros at the end.
fn shown(value: f64) -> String {
    let text = rounded(value, 4);
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}

fn reading(words: &Words, view: &View, i: usize, quantity: Quantity, from: Option<&From>) -> Markup {
    let of_this = |r: &&Reading| r.quantity == quantity && r.from.as_ref() == from;
    let there = view.job.readings.iter().find(of_this);
    let label = format!("{}, {}", quantity_words(words, quantity, from.map(From::name)), quantity.unit().symbol());
    let (value_name, instrument_name) = (format!("reading:{i}"), format!("instrument:{i}"));
    let value = there.map(|r| shown(r.value)).unwrap_or_default();
    html! {
        div.pair {
            (field(&Line { name: &value_name, label: &label, value: &value, mode: "decimal", hint: None }))
            div.field {
                label for={ "f-" (instrument_name) } { (words.instrument) span.gone { ": " (label) } }
                select #{ "f-" (instrument_name) } name=(instrument_name) {
                    @for (name, _) in instruments(quantity) {
                        option value=(name) selected[there.is_some_and(|r| r.instrument.as_deref() == Some(name))] {
                            (instrument_words(words, name))
                        }
                    }
                }
            }
        }
    }
}

/// The thrust angle with its side, in degrees and minutes, or the rear toes that give it.
fn alignment_sheet(words: &Words, view: &View) -> Markup {
    let thrust = view.job.readings.iter().find(|r| r.quantity == Quantity::ThrustAngle).map(|r| r.value);
    let points = [words.points_left, words.points_right];
    let toes = [words.toe_in, words.toe_out];
    html! {
        h2 { (words.alignment_sheet) }
        p.hint { (words.alignment_sheet_why) }
        (angle(words, alignment::THRUST, words.thrust_angle, alignment::POINTS, points, thrust))
        (angle(words, alignment::TOE_LEFT, words.rear_toe_left, alignment::TOES, toes, None))
        (angle(words, alignment::TOE_RIGHT, words.rear_toe_right, alignment::TOES, toes, None))
    }
}

fn angle(
    words: &Words,
    name: &str,
    label: &str,
    sides: [&str; 2],
    side_words: [&str; 2],
    value: Option<f64>,
) -> Markup {
    let side_name = format!("{name}:side");
    let shown_side = value.filter(|v| v.abs() > 1e-9).map(|v| sides[usize::from(v < 0.0)]);
    let (degrees, minutes) =
        value.map(alignment::degrees_and_minutes).map_or_else(Default::default, |(d, m)| (shown(d), shown(m)));
    html! {
        div.pair.three {
            div.field {
                label for={ "f-" (side_name) } { (label) }
                select #{ "f-" (side_name) } name=(side_name) {
                    option value="" selected[shown_side.is_none()] { (words.choose_side) }
                    @for (side, side_words) in sides.iter().zip(side_words) {
                        option value=(side) selected[shown_side == Some(side)] { (side_words) }
                    }
                }
            }
            (field(&Line { name: &format!("{name}:deg"), label: &format!("{label}, {}", words.degrees), value: &degrees, mode: "decimal", hint: None }))
            (field(&Line { name: &format!("{name}:min"), label: &format!("{label}, {}", words.minutes), value: &minutes, mode: "decimal", hint: None }))
        }
    }
}

fn instrument_words(words: &Words, name: &str) -> &'static str {
    match name {
        "laser" => words.laser,
        "tape" => words.tape,
        "level" => words.level,
        _ => words.alignment,
    }
}
