//! What is drawn over a photo, on the upright picture in stored pixels.

use base64::Engine;
use maud::{Markup, html};

use super::marker_names::names;
use super::photo_picture::PhotoPicture;
use super::svg::{n, points, round_down, text};
use super::upright::Upright;
use crate::record::{MarkerRecord, PhotoRecord};
use crate::words::{Figure, Language, say};

/// The stored size is the record's; a photo that could not be used may have
/// none there.
pub(super) fn upright(photo: &PhotoRecord, picture: Option<&PhotoPicture>) -> Upright {
    match picture {
        Some(p) if photo.width_px == 0 || photo.height_px == 0 => {
            Upright::new(p.stored_width, p.stored_height, p.orientation)
        }
        _ => Upright::new(photo.width_px, photo.height_px, photo.orientation),
    }
}

/// The picture with its markers, the solved outlines and the magnified residuals.
pub(super) fn overlay(
    number: usize,
    photo: &PhotoRecord,
    picture: Option<&PhotoPicture>,
    language: Language,
) -> Markup {
    let map = upright(photo, picture);
    let [width, height] = map.size();
    // The style sheet sizes text by it: about one pixel of a desktop screen.
    let unit = format!("--u:{}px;--r:{:.4}", n(width.max(height) / 1000.0), width / height);
    let magnified = magnification(photo, width);
    let label = say!(language, "report-photo-spoken", number = number, markers = spoken(photo, language));
    html! {
        svg.ph viewBox={ "0 0 " (n(width)) " " (n(height)) } role="img" style=(unit)
            aria-label=(label) {
            @match picture {
                Some(p) => {
                    image x="0" y="0" width=(n(width)) height=(n(height)) preserveAspectRatio="none" href=(data_uri(&p.jpeg_bytes)) {}
                }
                None => { (text("", "middle", [width / 2.0, height / 2.0], &say!(language, "report-no-picture"))) }
            }
            (outlines(photo, &map))
            @for marker in &photo.markers { (marker_shape(marker, &map)) }
            @if let Some(factor) = magnified { (residuals(photo, &map, factor)) }
            @for name in &names(photo, &map, language).placed { (text("", "middle", name.at, &name.words)) }
            @if let Some(factor) = magnified { (scale_bar(factor, width, height, language)) }
        }
    }
}

fn data_uri(jpeg: &[u8]) -> String {
    format!("data:image/jpeg;base64,{}", base64::engine::general_purpose::STANDARD.encode(jpeg))
}

/// How many markers there are.
pub(super) fn spoken(photo: &PhotoRecord, language: Language) -> String {
    let used = photo.markers.iter().filter(|m| m.used).count();
    say!(language, "report-markers-found", found = photo.markers.len(), used = used)
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

/// So large that the 90th percentile of the residuals is about 2 % of the
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
    (large > 0.0).then(|| round_down((width * 0.02 / large).min(1e5)))
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
fn scale_bar(factor: f64, width: f64, height: f64, language: Language) -> Markup {
    let length_px = round_down(width / 7.0 / factor);
    let (x, y) = (width * 0.02, height - width * 0.02);
    let [length, times] = [length_px, factor].map(Figure::plain);
    let words = say!(language, "report-residual-scale", length = length, factor = times);
    let bar = format!("M{} {}h{}", n(x), n(y), n(length_px * factor));
    html! { path.c.rs d=(bar) {} path.l.rs d=(bar) {} (text("", "start", [x, y - width * 0.008], &words)) }
}
