//! The side view.

use maud::{Markup, html};

use super::frame::{Frame, WIDTH, marker_shape, spoken};
use super::photo_place::photo_places;
use super::scene::{Scene, Stand};
use super::svg::{dimension, line, n, text};
use super::vehicle::{body_from_beside, tyres_from_beside};
use crate::record::JobRecord;
use crate::report::figures::Measured;
use crate::report::label::Label;
use crate::words::Language;

/// The view from the vehicle's right side.
pub(super) fn side_view(record: &JobRecord, scene: &Scene, frame: &Frame, language: Language) -> Markup {
    let floor = frame.beside([0.0; 3])[1];
    let place = |&(number, at, direction): &(usize, [f64; 3], Option<[f64; 3]>)| {
        (number, frame.beside(at), direction.map(|d| [d[0], -d[2]]))
    };
    let photos: Vec<_> = scene.photos.iter().map(place).collect();
    html! {
        svg.dw.wide viewBox={ "0 0 " (n(WIDTH)) " " (n(floor + 30.0)) } role="img" aria-label=(spoken(record, language)) {
            (body_from_beside(scene, frame))
            (tyres_from_beside(scene, frame))
            (floor_line(floor))
            @for marker in &scene.markers { (marker_shape(marker.map(|p| frame.beside(p)))) }
            @for stand in &scene.targets { (stand_from_beside(record, stand, frame, language)) }
            (photo_places(&photos))
        }
    }
}

fn floor_line(y: f64) -> Markup {
    html! {
        (line("floor", [0.0, y], [WIDTH, y]))
        @for i in 0_u8..50 {
            @let x = f64::from(i) * 20.0 + 8.0;
            (line("hatch", [x, y + 2.0], [x - 8.0, y + 11.0]))
        }
    }
}

fn stand_from_beside(record: &JobRecord, stand: &Stand, frame: &Frame, language: Language) -> Markup {
    let end = |way: f64| frame.beside([0, 1, 2].map(|i| stand.aim[i] + way * stand.half_height * stand.up[i]));
    let [u, v] = frame.beside(stand.aim);
    let floor = frame.beside([0.0; 3])[1];
    html! {
        (line("mast", [u, v], [u, floor])) (line("mast", [u - 22.0, floor], [u + 22.0, floor]))
        (line("face", end(1.0), end(-1.0)))
        circle.aim cx=(n(u)) cy=(n(v)) r="5" {}
        (height_line(height_words(record, stand, language), [u, v], floor))
    }
}

fn height_line(words: Option<String>, aim: [f64; 2], floor: f64) -> Markup {
    let Some(words) = words else { return html! {} };
    let x = aim[0] + 46.0;
    // A phone sets the words so wide; they may touch the line, but not leave the drawing.
    let words_at = (x + 8.0).min(WIDTH - 22.0 * words.chars().count() as f64);
    html! {
        (line("ext", aim, [x + 6.0, aim[1]]))
        (dimension([x, aim[1]], [x, floor]))
        (text("halo", "start", [words_at, f64::midpoint(aim[1], floor) + 5.0], &words))
    }
}

/// The checked height, else the measured one.
fn height_words(record: &JobRecord, stand: &Stand, language: Language) -> Option<String> {
    let of_this = |target: Option<&str>| target.is_none_or(|name| name == stand.name);
    let check = record.checks.iter().find(|c| c.quantity == "height" && of_this(c.target.as_deref()));
    let checked = check.and_then(|c| Measured::of_check(c, Label::of_check(c, language).quantity, language));
    let of_target = || record.measured.get(&format!("height@{}", stand.name)).or_else(|| record.measured.get("height"));
    let m = checked.or_else(|| of_target().map(|h| Measured::new(None, &h.unit, h.value, None, language)))?;
    Some(m.amount_with_unit())
}
