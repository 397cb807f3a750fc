//! Each photo with what was found in it.

use maud::{Markup, html};

use super::marker_names::names;
use super::overlay::{overlay, spoken, upright};
use super::{PhotoPicture, path};
use crate::record::{JobRecord, PhotoRecord};
use crate::report::figures::moment;

/// The section.
pub(super) fn section(record: &JobRecord, pictures: &[PhotoPicture]) -> Markup {
    html! {
        section aria-labelledby="photos" {
            h2 id="photos" { "Photos" }
            @if record.photos.is_empty() { p { "No photo could be read." } }
            @else { (key()) }
            @for (i, photo) in record.photos.iter().enumerate() {
                (figure(i + 1, photo, pictures.iter().find(|picture| picture.file == photo.file)))
            }
        }
    }
}

fn key() -> Markup {
    html! {
        ul.key.first aria-label="How to read the photos" {
            li { (swatch("M3 3H31V13H3Z", "mk")) "marker that was used, with its number" }
            li { (swatch("M3 3H31V13H3ZM3 3 31 13M31 3 3 13", "un")) "marker that was not used" }
            li { (swatch("M2 8H32", "ol")) "where the solved marker holders and the aim point come out" }
            li { (swatch("M4 12 28 5", "rs")) "residual, found minus calculated, magnified" }
        }
    }
}

fn swatch(d: &str, class: &str) -> Markup {
    html! { svg.ph viewBox="0 0 34 16" aria-hidden="true" style="background:#c9cfd1" {
        path class={ "c " (class) } d=(d) {} path class={ "l " (class) } d=(d) {}
    } }
}

fn figure(number: usize, photo: &PhotoRecord, picture: Option<&PhotoPicture>) -> Markup {
    html! {
        figure.photo {
            h3 { "Photo " (number) ": " (path(&photo.file)) }
            @if let Some(why) = &photo.unused_because { p { strong { "Not used: " } (why) } }
            (overlay(number, photo, picture))
            figcaption { (caption(photo, picture)) }
            (facts(photo))
        }
    }
}

fn caption(photo: &PhotoRecord, picture: Option<&PhotoPicture>) -> String {
    let unknown = photo.markers.iter().filter(|m| m.carrier.is_none()).count();
    let left_out = photo.markers.iter().filter(|m| m.carrier.is_some() && !m.used).count();
    let mut words = spoken(photo);
    if left_out > 0 {
        words = format!("{words}; {left_out} of the marker kit left out");
    }
    if unknown > 0 {
        words = format!("{words}; {unknown} with numbers that the marker kit does not know");
    }
    let nameless = names(photo, &upright(photo, picture)).left_out;
    if !nameless.is_empty() {
        let ids: Vec<String> = nameless.iter().map(u32::to_string).collect();
        words = format!("{words}; too close together to be named in the picture: {}", ids.join(", "));
    }
    format!("{words}.")
}

fn facts(photo: &PhotoRecord) -> Markup {
    let px = |value: f64| format!("{value:.3} px");
    let place = |p: [f64; 3]| {
        let m = |v: f64| format!("{:.2} m", v.abs() / 1000.0);
        let side = if p[1] < 0.0 { "right" } else { "left" };
        format!("{} before the rear axle, {} to the vehicle's {side}, {} high", m(p[0]), m(p[1]), m(p[2]))
    };
    let all: [(&str, Option<String>); 10] = [
        ("Camera profile", photo.camera.clone()),
        ("Taken", photo.taken.as_deref().map(moment)),
        (
            "Also in the photo's own record, and not shown here",
            (!photo.private.is_empty() && photo.private_values.is_empty()).then(|| photo.private.join(", ")),
        ),
        ("Residuals, RMS", photo.rms_px.map(px)),
        ("Blur, median", (photo.blur_px > 0.0).then(|| format!("{:.2} px", photo.blur_px))),
        ("Corner noise", photo.noise_ratio.map(|r| format!("{r:.1} times that of a plainly developed photo"))),
        (
            "Light changed by the phone",
            photo.gain_spread.map(|s| format!("by {:.0} % from place to place (1 sigma)", 100.0 * s)),
        ),
        ("Edge offset", Some(px(photo.edge_offset_px.abs()) + edge_side(photo.edge_offset_px))),
        ("Focal length", photo.focal_px.map(|f| format!("{:.1} px, {:.1} px", f[0], f[1]))),
        ("Taken from", photo.position_mm.map(place)),
    ];
    html! {
        dl.facts {
            @for [name, value] in &photo.private_values { div { dt { "Private: " (name) } dd { (value) } } }
            @for (name, value) in all { @if let Some(value) = value { div.wide[name == "Taken from"] { dt { (name) } dd { (value) } } } }
        }
    }
}

/// An offset below zero means that black came out too small.
fn edge_side(offset_px: f64) -> &'static str {
    if offset_px.abs() < 0.0005 {
        ""
    } else if offset_px > 0.0 {
        ", outward"
    } else {
        ", inward"
    }
}
