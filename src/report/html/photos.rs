//! Each photo with what was found in it.

use base64::Engine;
use maud::{Markup, html};

use super::svg::{n, points, round_down, text};
use super::upright::Upright;
use super::{PhotoPicture, path};
use crate::record::{JobRecord, MarkerRecord, PhotoRecord};

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
        ul.key aria-label="How to read the photos" {
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
            figcaption { (caption(photo)) }
            (facts(photo))
        }
    }
}

/// The stored size is the record's; a photo that could not be used may have
/// none there.
fn upright(photo: &PhotoRecord, picture: Option<&PhotoPicture>) -> Upright {
    match picture {
        Some(p) if photo.width_px == 0 || photo.height_px == 0 => {
            Upright::new(p.stored_width, p.stored_height, p.orientation)
        }
        _ => Upright::new(photo.width_px, photo.height_px, photo.orientation),
    }
}

fn overlay(number: usize, photo: &PhotoRecord, picture: Option<&PhotoPicture>) -> Markup {
    let map = upright(photo, picture);
    let [width, height] = map.size();
    // One hundredth of a text's height on a desktop screen, in stored pixels.
    let unit = format!("--u:{}px;--v:{}px", n(width.max(height) / 1000.0), n(width));
    let magnified = magnification(photo, width);
    html! {
        svg.ph viewBox={ "0 0 " (n(width)) " " (n(height)) } role="img" style=(unit)
            aria-label={ "Photo " (number) ": " (spoken(photo)) } {
            @match picture {
                Some(p) => {
                    image x="0" y="0" width=(n(width)) height=(n(height)) preserveAspectRatio="none" href=(data_uri(&p.jpeg_bytes)) {}
                }
                None => { (text("", "middle", [width / 2.0, height / 2.0], "the picture is not at hand")) }
            }
            (outlines(photo, &map))
            @for marker in &photo.markers { (marker_shape(marker, &map)) }
            @if let Some(factor) = magnified { (residuals(photo, &map, factor)) }
            @for marker in &photo.markers { (marker_name(marker, &map, width)) }
            @if let Some(factor) = magnified { (scale_bar(factor, width, height)) }
        }
    }
}

fn data_uri(jpeg: &[u8]) -> String {
    format!("data:image/jpeg;base64,{}", base64::engine::general_purpose::STANDARD.encode(jpeg))
}

fn spoken(photo: &PhotoRecord) -> String {
    let used = photo.markers.iter().filter(|m| m.used).count();
    format!("{} markers found, {used} of them used", photo.markers.len())
}

fn outlines(photo: &PhotoRecord, map: &Upright) -> Markup {
    let lines: Vec<String> = photo
        .outlines
        .iter()
        .flat_map(|outline| &outline.lines_px)
        .map(|polyline| points(&polyline.iter().map(|&p| map.point(p)).collect::<Vec<_>>()))
        .collect();
    html! { @for class in ["c ol", "l ol"] { @for line in &lines { polyline class=(class) points=(line) {} } } }
}

fn marker_shape(marker: &MarkerRecord, map: &Upright) -> Markup {
    let corners = marker.corners_px.map(|p| map.point(p));
    let class = if marker.used { "mk" } else { "un" };
    let [a, b, c, d] = corners.map(|p| points(&[p]));
    let cross = if marker.used { String::new() } else { format!("M{a}L{c}M{b}L{d}") };
    let outline = format!("M{a}L{b}L{c}L{d}Z{cross}");
    html! { path class={ "c mk" } d=(outline) {} path class={ "l " (class) } d=(outline) {} }
}

fn marker_name(marker: &MarkerRecord, map: &Upright, width: f64) -> Markup {
    let corners = marker.corners_px.map(|p| map.point(p));
    let top = corners.iter().fold([f64::NAN, f64::INFINITY], |best, p| if p[1] < best[1] { *p } else { best });
    let middle = corners.iter().map(|p| p[0]).sum::<f64>() / 4.0;
    let words = match (&marker.carrier, marker.used) {
        (None, _) => format!("{} unknown", marker.id),
        (_, true) => marker.id.to_string(),
        (_, false) => format!("{} not used", marker.id),
    };
    text("", "middle", [middle, top[1] - width * 0.004], &words)
}

/// So large that the 90th percentile of the residuals is about 3 % of the
/// picture's width.
fn magnification(photo: &PhotoRecord, width: f64) -> Option<f64> {
    let mut lengths: Vec<f64> = photo
        .markers
        .iter()
        .filter_map(|marker| marker.residuals_px)
        .flatten()
        .map(|r| r[0].hypot(r[1]))
        .filter(|length| length.is_finite())
        .collect();
    lengths.sort_by(f64::total_cmp);
    let large = *lengths.get(lengths.len().saturating_sub(1) * 9 / 10)?;
    (large > 0.0).then(|| round_down((width * 0.03 / large).min(1e5)))
}

fn residuals(photo: &PhotoRecord, map: &Upright, factor: f64) -> Markup {
    let ends: Vec<[[f64; 2]; 2]> = photo
        .markers
        .iter()
        .filter_map(|m| m.residuals_px.map(|r| (m.corners_px, r)))
        .flat_map(|(corners, residuals)| corners.into_iter().zip(residuals))
        .map(|(corner, residual)| {
            let (start, along) = (map.point(corner), map.vector(residual));
            [start, [start[0] + along[0] * factor, start[1] + along[1] * factor]]
        })
        .collect();
    let d: String = ends.iter().map(|[a, b]| format!("M{}L{}", points(&[*a]), points(&[*b]))).collect();
    html! { path.c.rs d=(d) {} path.l.rs d=(d) {} }
}

/// A bar of a round length near an eighth of the width, with its true length.
fn scale_bar(factor: f64, width: f64, height: f64) -> Markup {
    let length_px = round_down(width / 7.0 / factor);
    let (x, y) = (width * 0.02, height - width * 0.02);
    let words = format!("{} px, residuals drawn {} times", crate::report::figures::plain(length_px), factor);
    let bar = format!("M{} {}h{}", n(x), n(y), n(length_px * factor));
    html! { path.c.rs d=(bar) {} path.l.rs d=(bar) {} (text("", "start", [x, y - width * 0.008], &words)) }
}

fn caption(photo: &PhotoRecord) -> String {
    let unknown = photo.markers.iter().filter(|m| m.carrier.is_none()).count();
    let left_out = photo.markers.iter().filter(|m| m.carrier.is_some() && !m.used).count();
    let mut words = spoken(photo);
    if left_out > 0 {
        words = format!("{words}; {left_out} of the marker kit left out");
    }
    if unknown > 0 {
        words = format!("{words}; {unknown} with numbers that the marker kit does not know");
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
    let all: [(&str, Option<String>); 7] = [
        ("Camera profile", photo.camera.clone()),
        ("Taken", photo.taken.clone()),
        ("Residuals, RMS", photo.rms_px.map(px)),
        ("Blur, median", (photo.blur_px > 0.0).then(|| format!("{:.2} px", photo.blur_px))),
        ("Edge offset", Some(px(photo.edge_offset_px.abs()) + edge_side(photo.edge_offset_px))),
        ("Focal length", photo.focal_px.map(|f| format!("{:.1} px, {:.1} px", f[0], f[1]))),
        ("Taken from", photo.position_mm.map(place)),
    ];
    html! {
        dl.facts { @for (name, value) in all { @if let Some(value) = value { div { dt { (name) } dd { (value) } } } } }
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
