//! The plan view.

use maud::{Markup, html};

use super::frame::{Frame, WIDTH, marker_shape, spoken};
use super::photo_place::photo_places;
use super::scene::{Scene, Stand};
use super::svg::{dimension, line, n, text};
use super::vehicle::{body_from_above, tyres_from_above};
use crate::record::{CheckRecord, JobRecord};
use crate::report::figures::Measured;
use crate::report::label::{Label, datum, reference_line, sentence};
use crate::words::{Language, say};

/// Strip below the bodies that is kept for dimension lines, units.
const DIMENSIONS: f64 = 64.0;

/// The view from above; the vehicle's left is up.
pub(super) fn plan(record: &JobRecord, scene: &Scene, frame: &Frame, language: Language) -> Markup {
    let edge = |sign: char, edge: &str| format!("{} {sign}", say!(language, "report-edge", edge = edge));
    let low = frame.above([0.0, -reach(scene), 0.0])[1];
    let height = frame.above([0.0, frame.y[0], 0.0])[1].max(low + DIMENSIONS);
    let place = |&(number, at, direction): &(usize, [f64; 3], Option<[f64; 3]>)| {
        (number, frame.above(at), direction.map(|d| [d[0], -d[1]]))
    };
    let photos: Vec<_> = scene.photos.iter().map(place).collect();
    html! {
        svg.dw.wide viewBox={ "0 0 " (n(WIDTH)) " " (n(height)) } role="img" aria-label=(spoken(record, language)) {
            (body_from_above(scene, frame))
            (tyres_from_above(scene, frame))
            (reference(record, frame, language))
            @for marker in &scene.markers { (marker_shape(marker.map(|p| frame.above(p)))) }
            @for stand in &scene.targets { (stand_from_above(stand, frame)) }
            (distance_line(record, scene, frame, low, language))
            (wheelbase_line(record, scene, frame, low, language))
            (photo_places(&photos))
            (text("small halo minor", "start", [2.0, 14.0], &edge('▴', "left")))
            (text("small halo minor", "start", [2.0, height - 6.0], &edge('▾', "right")))
        }
    }
}

/// How far to the vehicle's right wheel plates and stands reach, mm.
fn reach(scene: &Scene) -> f64 {
    let stands = scene.targets.iter().map(|s| s.half_width - s.aim[1] + 60.0);
    stands.fold(scene.half_width() + 380.0, f64::max)
}

/// The line that everything refers to, from behind the rear axle to the edge.
fn reference(record: &JobRecord, frame: &Frame, language: Language) -> Markup {
    let [a, b] = [frame.above([frame.x[0] + 60.0, 0.0, 0.0]), frame.above([frame.x[1] - 60.0, 0.0, 0.0])];
    let words = sentence(&reference_line(&record.reference_line).say(language));
    let at = frame.above([250.0, 0.0, 0.0]);
    html! { (line("ref", a, b)) (text("halo", "start", [at[0], at[1] - 8.0], &words)) }
}

fn stand_from_above(stand: &Stand, frame: &Frame) -> Markup {
    let end = |way: f64| frame.above([0, 1, 2].map(|i| stand.aim[i] + way * stand.half_width * stand.left[i]));
    let [u, v] = frame.above(stand.aim);
    html! {
        (line("face", end(1.0), end(-1.0)))
        circle.aim cx=(n(u)) cy=(n(v)) r="5" {}
        (text("halo", "start", [end(1.0)[0] + 8.0, end(1.0)[1] + 4.0], stand.name))
    }
}

/// The first distance check with a value.
fn distance_check(record: &JobRecord) -> Option<&CheckRecord> {
    record.checks.iter().find(|c| c.quantity == "distance" && c.value.is_some_and(f64::is_finite))
}

fn distance_line(record: &JobRecord, scene: &Scene, frame: &Frame, low: f64, language: Language) -> Markup {
    let Some((check, value)) = distance_check(record).and_then(|c| Some((c, c.value?))) else { return html! {} };
    let wanted = check.target.as_deref();
    let Some(stand) = scene.targets.iter().find(|s| wanted.is_none_or(|name| name == s.name)) else { return html! {} };
    let Some(m) = Measured::of_check(check, Label::of_check(check, language).quantity, language) else {
        return html! {};
    };
    let (a, b) = (frame.across(stand.aim[0] - value), frame.across(stand.aim[0]));
    let y = low + 22.0;
    let amount = m.amount_with_unit();
    let words = match check.from.as_deref() {
        Some(from) => say!(language, "report-distance-from", amount = amount, datum = datum(from)),
        None => amount,
    };
    html! {
        (line("ext", [a, frame.above([0.0; 3])[1]], [a, y + 6.0]))
        (line("ext", [b, frame.above(stand.aim)[1]], [b, y + 6.0]))
        (dimension([a, y], [b, y]))
        (text("halo", "middle", [middle(&words, f64::midpoint(a, b)), y + 32.0], &words))
    }
}

/// Where the middle of words stands: at `x`, but inside the drawing also where a phone sets them wide.
fn middle(words: &str, x: f64) -> f64 {
    let half = (9.75 * words.chars().count() as f64).min(WIDTH / 2.0);
    x.clamp(half, WIDTH - half)
}

fn wheelbase_line(record: &JobRecord, scene: &Scene, frame: &Frame, low: f64, language: Language) -> Markup {
    let Some(wheelbase) = record.measured.get("wheelbase") else { return html! {} };
    if scene.front_axle_x().is_none() || !wheelbase.value.is_finite() {
        return html! {};
    }
    let m = Measured::new(None, "mm", wheelbase.value, None, language);
    let words = say!(language, "report-wheelbase", amount = m.amount_with_unit());
    let (a, b) = (frame.across(0.0), frame.across(wheelbase.value));
    let y = low + 22.0;
    html! {
        g.minor {
            (line("ext", [a, low - 20.0], [a, y + 6.0])) (line("ext", [b, low - 20.0], [b, y + 6.0]))
            (dimension([a, y], [b, y]))
            (text("small halo", "middle", [f64::midpoint(a, b), y + 32.0], &words))
        }
    }
}
