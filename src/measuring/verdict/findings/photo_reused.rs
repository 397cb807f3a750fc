//! One picture was given twice.

use nalgebra::{DMatrix, Vector2};

use super::{Case, Explanation, Finding, Open, Rule, Touches};
use crate::detect::{Sighting, Sightings};
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["photo-reused"],
    title: "Photo used twice",
    rationale: "Two photos prove something because each could contradict the other; a copy agrees with itself.",
    method: "Same bytes; or the corners of the markers that two photos share (two markers or more) are an affine image of each other to \
             1 px: that is a copy that was re-encoded, scaled or cropped, also mirrored. From two \
             stations of a bay the residual is tens of pixels, so there are no false alarms but for a camera that stood on a tripod: those are one photo too.",
    touches: Touches::Everything,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "photo-reused",
    level: Level::Stop,
    title: "Photo used twice",
    meaning: "Two of the photos are the same picture, perhaps re-encoded, cropped or mirrored.",
    cause: "A file was copied under another name, sent twice, or edited to look like a second photo; or the camera stood on a tripod.",
    look: "Lay the two pictures over each other: everything coincides, also the people and the shadows.",
    remedy: "Take the second photo from another place.",
}];

/// An affine map leaves less than this between copies, px (RMS).
const COPY_PX: f64 = 1.0;
/// Fewer shared markers than this say nothing: six unknowns against eight coordinates each.
const LEAST_MARKERS: usize = 2;

fn find(case: &Case) -> Vec<Finding> {
    let mut found = Vec::new();
    for (j, photo) in case.photos.iter().enumerate() {
        let copy = case.photos[..j].iter().find_map(|earlier| {
            if !photo.sha256.is_empty() && photo.sha256 == earlier.sha256 {
                return Some((earlier.file, "bytes"));
            }
            if same_view(photo.sightings, earlier.sightings) {
                return Some((earlier.file, "again"));
            }
            let mirrored = photo.mirrored.is_some_and(|m| same_view(m, earlier.sightings))
                || earlier.mirrored.is_some_and(|m| same_view(m, photo.sightings));
            mirrored.then_some((earlier.file, "mirrored"))
        });
        if let Some((earlier, how)) = copy {
            let message = phrase!("findings-reused", how = how, photo = photo.file, earlier = earlier);
            let finding = Finding::new("photo-reused", Level::Stop, message).in_photo(photo.file);
            found.push(finding.leaving(vec![Open::WithoutPhoto(j)]));
        }
    }
    found
}

/// One marker's corners in a photo.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corners {
    /// Its code number.
    pub id: u32,
    /// Its corners in order, px.
    pub px: [[f64; 2]; 4],
    /// Which of them were seen.
    pub valid: [bool; 4],
}

/// Whether two sets of markers show the same view: an affine map takes the
/// corners of one to those of the other.
pub fn same_view(a: &Sightings, b: &Sightings) -> bool {
    let corners = |s: &Sightings| -> Vec<Corners> {
        let one = |m: &Sighting| Corners { id: m.id, px: m.corners_px.map(Into::into), valid: m.corner_valid };
        s.markers.iter().map(one).collect()
    };
    same_corners(&corners(a), &corners(b))
}

/// [`same_view`] of corners that were kept in a record.
pub fn same_corners(a: &[Corners], b: &[Corners]) -> bool {
    let mut pairs: Vec<(Vector2<f64>, Vector2<f64>)> = Vec::new();
    let mut markers = 0;
    for m in a {
        let Some(n) = b.iter().find(|n| n.id == m.id) else { continue };
        let once = |all: &[Corners]| all.iter().filter(|x| x.id == m.id).count() == 1;
        if !once(a) || !once(b) {
            continue;
        }
        markers += 1;
        let both = (0..4).filter(|i| m.valid[*i] && n.valid[*i]);
        pairs.extend(both.map(|i| (m.px[i].into(), n.px[i].into())));
    }
    markers >= LEAST_MARKERS && affine_misfit_px(&pairs).is_some_and(|px| px < COPY_PX)
}

/// RMS distance that the best affine map leaves, px.
fn affine_misfit_px(pairs: &[(Vector2<f64>, Vector2<f64>)]) -> Option<f64> {
    if pairs.len() < 5 {
        return None;
    }
    let n = pairs.len();
    let sum = pairs.iter().fold((Vector2::zeros(), Vector2::zeros()), |(s, t), (a, b)| (s + a, t + b));
    let (from, to) = (sum.0 / n as f64, sum.1 / n as f64);
    let a = DMatrix::from_fn(n, 2, |i, j| pairs[i].0[j] - from[j]);
    let b = DMatrix::from_fn(n, 2, |i, j| pairs[i].1[j] - to[j]);
    let map = (a.tr_mul(&a)).try_inverse()? * a.tr_mul(&b);
    Some(((b - a * map).norm_squared() / n as f64).sqrt())
}
