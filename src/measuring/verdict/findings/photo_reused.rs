//! One picture was given twice.

use nalgebra::{DMatrix, Vector2};

use super::{Case, Explanation, Finding, Open, PhotoFacts, Rule, Touches};
use crate::detect::{Sighting, Sightings};
use crate::marker::{Kit, Role};
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "photo-reused", codes: &["photo-reused"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("photo-reused", Level::Stop)];

/// An affine map leaves less than this between copies, px (RMS).
const COPY_PX: f64 = 1.0;
/// Copies that were made smaller, or saved badly, shift a stand against all else by less, px.
const STAND_PX: f64 = 0.1;
/// Fewer shared markers than this say nothing: six unknowns against eight coordinates each.
const LEAST_MARKERS: usize = 2;

fn find(case: &Case) -> Vec<Finding> {
    let mut found = Vec::new();
    for (j, photo) in case.photos.iter().enumerate() {
        let copy = (0..j).find_map(|i| Some((case.photos[i].file, copied(case, i, j)?)));
        if let Some((earlier, how)) = copy {
            let message = phrase!("findings-reused", how = how, photo = photo.file, earlier = earlier);
            let finding = Finding::new("photo-reused", Level::Stop, message).in_photo(photo.file);
            found.push(finding.leaving(vec![Open::WithoutPhoto(j)]));
        }
    }
    found
}

/// How a photo is the same picture as an earlier one, if it is.
pub(super) fn copied(case: &Case, i: usize, j: usize) -> Option<&'static str> {
    let (photo, earlier) = (&case.photos[j], &case.photos[i]);
    let same_place = case.after_move.get(i) == case.after_move.get(j);
    if !photo.sha256.is_empty() && photo.sha256 == earlier.sha256 {
        return Some("bytes");
    }
    if same_view(photo.sightings, earlier.sightings) && (same_place || !shows_a_move(case, photo, earlier)) {
        return Some("again");
    }
    let mirrored = photo.mirrored.is_some_and(|m| same_view(m, earlier.sightings))
        || earlier.mirrored.is_some_and(|m| same_view(m, photo.sightings));
    mirrored.then_some("mirrored")
}

/// Whether a tripod's photo from after a move of the stand is one, and no copy of an earlier one.
fn shows_a_move(case: &Case, photo: &PhotoFacts, earlier: &PhotoFacts) -> bool {
    let other_time = photo.exif.taken.zip(earlier.exif.taken).is_some_and(|(a, b)| a != b);
    other_time || stand_went(case.kit, photo.sightings, earlier.sightings)
}

/// Whether the stand is elsewhere in the picture than the map of everything else says.
fn stand_went(kit: &Kit, a: &Sightings, b: &Sightings) -> bool {
    let is_stand = |m: &&Sighting| kit.marker(m.id).is_some_and(|(k, _)| kit.carriers[k].role == Role::Target);
    let pairs = |wanted: &dyn Fn(&&Sighting) -> bool| -> Vec<(Vector2<f64>, Vector2<f64>)> {
        let both = a.markers.iter().filter(wanted).filter_map(|m| Some((m, b.markers.iter().find(|n| n.id == m.id)?)));
        let corners = both.flat_map(|(m, n)| {
            (0..4).filter(|i| m.corner_valid[*i] && n.corner_valid[*i]).map(|i| (m.corners_px[i], n.corners_px[i]))
        });
        corners.collect()
    };
    let (stand, rest) = (pairs(&is_stand), pairs(&|m| !is_stand(m)));
    let Some(map) = Affine::of(&rest).filter(|_| !stand.is_empty()) else { return false };
    let mean = stand.iter().map(|pair| map.left(pair)).sum::<Vector2<f64>>() / stand.len() as f64;
    mean.norm() > STAND_PX.max(3.0 * map.misfit_px)
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
    markers >= LEAST_MARKERS && Affine::of(&pairs).is_some_and(|map| map.misfit_px < COPY_PX)
}

/// The best affine map of points to others.
struct Affine {
    from: Vector2<f64>,
    to: Vector2<f64>,
    map: DMatrix<f64>,
    /// RMS distance that it leaves, px.
    misfit_px: f64,
}

impl Affine {
    /// How far the second point is from where the map takes the first.
    fn left(&self, (a, b): &(Vector2<f64>, Vector2<f64>)) -> Vector2<f64> {
        let mapped = (a - self.from).transpose() * &self.map;
        b - self.to - Vector2::new(mapped[0], mapped[1])
    }

    fn of(pairs: &[(Vector2<f64>, Vector2<f64>)]) -> Option<Self> {
        if pairs.len() < 5 {
            return None;
        }
        let n = pairs.len();
        let sum = pairs.iter().fold((Vector2::zeros(), Vector2::zeros()), |(s, t), (a, b)| (s + a, t + b));
        let (from, to) = (sum.0 / n as f64, sum.1 / n as f64);
        let a = DMatrix::from_fn(n, 2, |i, j| pairs[i].0[j] - from[j]);
        let b = DMatrix::from_fn(n, 2, |i, j| pairs[i].1[j] - to[j]);
        let map = (a.tr_mul(&a)).try_inverse()? * a.tr_mul(&b);
        let misfit_px = ((b - a * &map).norm_squared() / n as f64).sqrt();
        Some(Affine { from, to, map, misfit_px })
    }
}
