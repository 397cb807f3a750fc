//! Two photos have the same noise, which a camera never makes twice.

use nalgebra::Vector2;

use super::photo_reused::copied;
use super::{Case, Explanation, Finding, PhotoFacts, Rule, Touches};
use crate::detect::{Grain, Products, Sighting};
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "noise-repeated", codes: &["noise-repeated"], touches: Touches::Nothing, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("noise-repeated", Level::Warn)];

/// Markers of one form in two photos: their corners differ by a shift alone, but for so much, px.
const SAME_FORM_PX: f64 = 0.5;
/// Fewer flat pixels say nothing.
const LEAST_PIXELS: usize = 150;
/// Correlation of copied noise. Prints and edges look the same from one place too: rendered photos of a tripod, as eight
/// kinds of phones develop them, show up to 0.64.
const COPIED: f64 = 0.85;

fn find(case: &Case) -> Vec<Finding> {
    let last_of = |j: usize| {
        let like = |i: usize| alike(&case.photos[i], &case.photos[j]).filter(|_| copied(case, i, j).is_none());
        let (earlier, (markers, correlation)) = (0..j).find_map(|i| Some((case.photos[i].file, like(i)?)))?;
        let file = case.photos[j].file;
        let correlation = figure(correlation, 2);
        let message = phrase!(
            "findings-noise-repeated",
            photo = file,
            earlier = earlier,
            markers = markers.join(", "),
            correlation = correlation
        );
        Some(Finding::new("noise-repeated", Level::Warn, message).in_photo(file))
    };
    (1..case.photos.len()).filter_map(last_of).collect()
}

/// Markers whose noise two photos share, and its correlation.
fn alike(earlier: &PhotoFacts, photo: &PhotoFacts) -> Option<(Vec<String>, f64)> {
    let pairs = grains(photo).filter_map(|(marker, grain)| {
        let (other, before) = grains(earlier).find(|(other, _)| other.id == marker.id)?;
        Some((marker.id, before.products(grain, shift(other, marker)?)))
    });
    let pairs: Vec<(u32, Products)> = pairs.filter(|(_, products)| products.pixels > 0).collect();
    let all = pairs.iter().fold(Products::default(), |sum, (_, products)| sum.with(*products));
    let correlation = all.correlation();
    let is_copy = all.pixels >= LEAST_PIXELS && correlation > COPIED;
    is_copy.then(|| (pairs.iter().map(|(id, _)| id.to_string()).collect(), correlation))
}

fn grains<'a>(photo: &PhotoFacts<'a>) -> impl Iterator<Item = (&'a Sighting, &'a Grain)> {
    photo.sightings.markers.iter().zip(photo.grain).filter_map(|(marker, grain)| Some((marker, grain.as_ref()?)))
}

/// The whole pixels by which a marker is elsewhere in another photo, where that is all the difference.
fn shift(from: &Sighting, to: &Sighting) -> Option<[i64; 2]> {
    let apart: [Vector2<f64>; 4] = std::array::from_fn(|i| to.corners_px[i] - from.corners_px[i]);
    let mean = apart.iter().sum::<Vector2<f64>>() / 4.0;
    let is_shift = apart.iter().all(|d| (d - mean).norm() < SAME_FORM_PX);
    is_shift.then(|| [mean.x.round() as i64, mean.y.round() as i64])
}
