//! Each photo with what was found in it.

use maud::{Markup, html};

use super::file_path::path;
use super::marker_names::names;
use super::overlay::{overlay, spoken, upright};
use super::photo_picture::PhotoPicture;
use crate::record::{JobRecord, PhotoRecord, told};
use crate::report::figures::moment;
use crate::words::{Figure, Language, say};

/// The section.
pub(super) fn section(record: &JobRecord, pictures: &[PhotoPicture], language: Language) -> Markup {
    html! {
        section aria-labelledby="photos" {
            h2 id="photos" { (say!(language, "report-photos")) }
            @if record.photos.is_empty() { p { (say!(language, "report-no-photo")) } }
            @else { (key(language)) }
            @for (i, photo) in record.photos.iter().enumerate() {
                (figure(i + 1, photo, pictures.iter().find(|picture| picture.file == photo.file), language))
            }
        }
    }
}

fn key(language: Language) -> Markup {
    html! {
        ul.key.first aria-label=(say!(language, "report-photos-key")) {
            li { (swatch("M3 3H31V13H3Z", "mk")) (say!(language, "report-key-used")) }
            li { (swatch("M3 3H31V13H3ZM3 3 31 13M31 3 3 13", "un")) (say!(language, "report-key-not-used")) }
            li { (swatch("M2 8H32", "ol")) (say!(language, "report-key-outline")) }
            li { (swatch("M4 12 28 5", "rs")) (say!(language, "report-key-residual")) }
        }
    }
}

fn swatch(d: &str, class: &str) -> Markup {
    html! { svg.ph viewBox="0 0 34 16" aria-hidden="true" style="background:#c9cfd1" {
        path class={ "c " (class) } d=(d) {} path class={ "l " (class) } d=(d) {}
    } }
}

fn figure(number: usize, photo: &PhotoRecord, picture: Option<&PhotoPicture>, language: Language) -> Markup {
    html! {
        figure.photo {
            h3 { (say!(language, "report-photo", number = number)) " " (path(&photo.file)) }
            @if let Some(why) = &photo.unused_because {
                @let why = told(photo.unused_because_phrase.as_ref(), why, language);
                p { strong { (say!(language, "report-photo-not-used")) } " " (why) }
            }
            (overlay(number, photo, picture, language))
            figcaption { (caption(photo, picture, language)) }
            (facts(photo, language))
        }
    }
}

fn caption(photo: &PhotoRecord, picture: Option<&PhotoPicture>, language: Language) -> String {
    let unknown = photo.markers.iter().filter(|m| m.carrier.is_none()).count();
    let left_out = photo.markers.iter().filter(|m| m.carrier.is_some() && !m.used).count();
    let mut words = vec![spoken(photo, language)];
    if left_out > 0 {
        words.push(say!(language, "report-markers-left-out", count = left_out));
    }
    if unknown > 0 {
        words.push(say!(language, "report-markers-unknown", count = unknown));
    }
    let nameless = names(photo, &upright(photo, picture), language).left_out;
    if !nameless.is_empty() {
        let ids: Vec<String> = nameless.iter().map(u32::to_string).collect();
        words.push(say!(language, "report-markers-nameless", numbers = ids.join(", ")));
    }
    say!(language, "report-sentence", words = words.join("; "))
}

/// The kinds of private data, which records name in English; one of a later program as it is.
fn private_kinds(photo: &PhotoRecord, language: Language) -> String {
    let kind = |kept: &String| match kept.as_str() {
        "position (GPS)" => say!(language, "report-private-kind", kind = "position"),
        "serial numbers" => say!(language, "report-private-kind", kind = "serial"),
        "owner or author" => say!(language, "report-private-kind", kind = "owner"),
        "the maker's own notes" => say!(language, "report-private-kind", kind = "notes"),
        other => other.to_owned(),
    };
    photo.private.iter().map(kind).collect::<Vec<_>>().join(", ")
}

fn facts(photo: &PhotoRecord, language: Language) -> Markup {
    let px = |value: f64, digits: u8| say!(language, "report-px", value = Figure::fixed(value, digits));
    let hidden = !photo.private.is_empty() && photo.private_values.is_empty();
    let light = |s: f64| say!(language, "report-light-value", percent = Figure::fixed(100.0 * s, 0));
    let focal = |f: [f64; 2]| {
        let [first, second] = f.map(|f| Figure::fixed(f, 1));
        say!(language, "report-px-twice", first = first, second = second)
    };
    let all: [(String, Option<String>); 9] = [
        (say!(language, "report-camera-profile"), photo.camera.clone()),
        (say!(language, "report-taken"), photo.taken.as_deref().map(|taken| moment(taken, language))),
        (say!(language, "report-private-kinds"), hidden.then(|| private_kinds(photo, language))),
        (say!(language, "report-residuals"), photo.rms_px.map(|rms| px(rms, 3))),
        (say!(language, "report-blur"), (photo.blur_px > 0.0).then(|| px(photo.blur_px, 2))),
        (
            say!(language, "report-noise"),
            photo.noise_ratio.map(|r| say!(language, "report-noise-value", ratio = Figure::fixed(r, 1))),
        ),
        (say!(language, "report-light"), photo.gain_spread.map(light)),
        (say!(language, "report-edge-offset"), Some(edge_offset(photo.edge_offset_px, language))),
        (say!(language, "report-focal-length"), photo.focal_px.map(focal)),
    ];
    html! {
        dl.facts {
            @for [name, value] in &photo.private_values {
                div { dt { (say!(language, "report-private-value", name = name)) } dd { (value) } }
            }
            @for (name, value) in all { @if let Some(value) = value { div { dt { (name) } dd { (value) } } } }
            @if let Some(at) = photo.position_mm {
                div.wide { dt { (say!(language, "report-taken-from")) } dd { (place(at, language)) } }
            }
        }
    }
}

/// An offset below zero means that black came out too small.
fn edge_offset(offset_px: f64, language: Language) -> String {
    let way = if offset_px.abs() < 0.0005 {
        "none"
    } else if offset_px > 0.0 {
        "outward"
    } else {
        "inward"
    };
    say!(language, "report-edge-offset-value", way = way, offset = Figure::fixed(offset_px.abs(), 3))
}

/// Where the camera was, vehicle frame.
fn place(p: [f64; 3], language: Language) -> String {
    let [along, across, high] = p.map(|v| Figure::fixed(v.abs() / 1000.0, 2));
    let side = if p[1] < 0.0 { "right" } else { "left" };
    if p[0] < 0.0 {
        say!(language, "report-taken-from-behind", side = side, behind = along, across = across, high = high)
    } else {
        say!(language, "report-taken-from-value", side = side, ahead = along, across = across, high = high)
    }
}
