//! One photo in two jobs: byte for byte, or saved again, scaled or cropped.
//!
//! Copies are told as `photo-reused` tells them within a job: an affine map takes
//! the corners of one to those of the other. To look at few pairs, three markers
//! of three carriers are written as two of them seen from the first one's own
//! corners, which no affine map changes; photos of different set-ups, or of one
//! from different places, differ there by much more than a copy does. A copy that
//! was mirrored shows no marker, so its job is retake anyway.

use std::collections::{BTreeMap, BTreeSet};

use crate::record::{JobRecord, MarkerRecord, PhotoRecord};
use crate::verdict::findings::{Corners, same_corners};
use crate::words::{Phrase, phrase};

/// Carriers that are looked at in a photo, at most.
const MOST_CARRIERS: usize = 5;
/// A copy's markers lie this near, in sides of the first marker: 1 px of noise at
/// 50 px a side, seen over ten sides.
const NEAR: f32 = 0.2;

/// Two jobs with one photo.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Pair {
    /// The earlier and the later line.
    pub(super) jobs: [usize; 2],
    photos: [String; 2],
    bytes: bool,
}

impl Pair {
    pub(super) fn message(&self) -> Phrase {
        let how = if self.bytes { "bytes" } else { "view" };
        phrase!("evidence-photo-of-another-job", photo = &self.photos[1], other = &self.photos[0], how = how)
    }
}

/// Where two markers lie, seen from a third.
struct Triple {
    ids: [u32; 3],
    places: [f32; 4],
    photo: u32,
}

/// All photos of an archive.
#[derive(Default)]
pub(super) struct Index {
    photos: Vec<(usize, String)>,
    digests: BTreeMap<[u8; 16], Vec<u32>>,
    triples: Vec<Triple>,
}

impl Index {
    pub(super) fn add(&mut self, job: usize, record: &JobRecord) {
        for photo in &record.photos {
            let number = self.photos.len() as u32;
            let input = record.inputs.iter().find(|i| i.role == "photo" && i.file == photo.file);
            if let Some(start) = input.and_then(|i| first_bytes(&i.sha256)) {
                self.digests.entry(start).or_default().push(number);
            }
            self.triples.extend(triples(photo, number));
            self.photos.push((job, photo.file.clone()));
        }
    }

    /// Pairs of jobs, each once; `read` gives a job's record again.
    pub(super) fn pairs<E>(mut self, read: impl Fn(usize) -> Result<Option<JobRecord>, E>) -> Result<Vec<Pair>, E> {
        let mut found: BTreeMap<[usize; 2], Pair> = BTreeMap::new();
        for alike in self.digests.values().filter(|a| a.len() > 1) {
            for pair in alike.windows(2) {
                self.keep(&mut found, pair[0], pair[1], true);
            }
        }
        // Copies of one photo are joined once: of many copies, not every pair is looked at.
        let mut joined = Joined::new(self.photos.len());
        for alike in self.digests.values() {
            alike.windows(2).for_each(|pair| joined.join(pair[0], pair[1]));
        }
        for (a, b) in self.candidates() {
            let jobs = [self.photos[a as usize].0, self.photos[b as usize].0];
            if found.contains_key(&jobs) || jobs[0] == jobs[1] || joined.are(a, b) {
                continue;
            }
            let views = [a, b].map(|n| view(&self.photos[n as usize], &read));
            let [first, second] = views;
            if let (Some(first), Some(second)) = (first?, second?)
                && same_corners(&first, &second)
            {
                self.keep(&mut found, a, b, false);
                joined.join(a, b);
            }
        }
        Ok(found.into_values().collect())
    }

    fn keep(&self, found: &mut BTreeMap<[usize; 2], Pair>, a: u32, b: u32, bytes: bool) {
        let [(i, first), (j, second)] = [a, b].map(|n| &self.photos[n as usize]);
        if i != j {
            let pair = Pair { jobs: [*i, *j], photos: [first.clone(), second.clone()], bytes };
            found.entry([*i, *j]).or_insert(pair);
        }
    }

    /// Photos with three markers at nearly the same places, the earlier one first.
    fn candidates(&mut self) -> BTreeSet<(u32, u32)> {
        self.triples.sort_by(|a, b| a.ids.cmp(&b.ids).then(a.places[0].total_cmp(&b.places[0])));
        let mut found = BTreeSet::new();
        for (n, a) in self.triples.iter().enumerate() {
            let window = self.triples[n + 1..].iter();
            for b in window.take_while(|b| b.ids == a.ids && b.places[0] - a.places[0] < NEAR) {
                if a.places.iter().zip(&b.places).all(|(p, q)| (p - q).abs() < NEAR) && a.photo != b.photo {
                    found.insert((a.photo.min(b.photo), a.photo.max(b.photo)));
                }
            }
        }
        found
    }
}

/// Which photos are copies of one another: each names an earlier one, or itself.
struct Joined(Vec<u32>);

impl Joined {
    fn new(photos: usize) -> Self {
        Joined((0..photos as u32).collect())
    }

    fn first(&mut self, mut photo: u32) -> u32 {
        while self.0[photo as usize] != photo {
            let above = self.0[photo as usize];
            self.0[photo as usize] = self.0[above as usize];
            photo = above;
        }
        photo
    }

    fn are(&mut self, a: u32, b: u32) -> bool {
        self.first(a) == self.first(b)
    }

    fn join(&mut self, a: u32, b: u32) {
        let (a, b) = (self.first(a), self.first(b));
        self.0[a.max(b) as usize] = a.min(b);
    }
}

fn first_bytes(digest: &str) -> Option<[u8; 16]> {
    let text = digest.get(..32)?;
    Some(u128::from_str_radix(text, 16).ok()?.to_be_bytes())
}

fn view<E>(
    (job, file): &(usize, String),
    read: &impl Fn(usize) -> Result<Option<JobRecord>, E>,
) -> Result<Option<Vec<Corners>>, E> {
    let record = read(*job)?;
    let photo = record.as_ref().and_then(|r| r.photos.iter().find(|p| p.file == *file));
    Ok(photo.map(|p| p.markers.iter().map(|m| Corners { id: m.id, px: m.corners_px, valid: [true; 4] }).collect()))
}

/// The lowest marker of each carrier, three carriers at a time.
fn triples(photo: &PhotoRecord, number: u32) -> Vec<Triple> {
    let mut lowest: BTreeMap<&str, &MarkerRecord> = BTreeMap::new();
    for marker in &photo.markers {
        let Some(carrier) = &marker.carrier else { continue };
        let kept = lowest.entry(carrier).or_insert(marker);
        if marker.id < kept.id {
            *kept = marker;
        }
    }
    let mut markers: Vec<&MarkerRecord> = lowest.into_values().collect();
    markers.sort_by_key(|m| m.id);
    markers.truncate(MOST_CARRIERS);
    let mut found = Vec::new();
    for (i, a) in markers.iter().enumerate() {
        for (j, b) in markers.iter().enumerate().skip(i + 1) {
            for c in &markers[j + 1..] {
                if let (Some(p), Some(q)) = (seen_from(a, b), seen_from(a, c)) {
                    let places = [p[0], p[1], q[0], q[1]];
                    found.push(Triple { ids: [a.id, b.id, c.id], places, photo: number });
                }
            }
        }
    }
    found
}

/// A marker's middle in the axes of another's top and left side.
fn seen_from(axes: &MarkerRecord, marker: &MarkerRecord) -> Option<[f32; 2]> {
    let [o, x, _, y] = axes.corners_px;
    let middle = |k: usize| marker.corners_px.iter().map(|c| c[k]).sum::<f64>() / 4.0 - o[k];
    let (m, x, y) = ([middle(0), middle(1)], [x[0] - o[0], x[1] - o[1]], [y[0] - o[0], y[1] - o[1]]);
    let area = x[0] * y[1] - x[1] * y[0];
    if area.abs() < 1.0 {
        return None;
    }
    Some([(m[0] * y[1] - m[1] * y[0]) / area, (x[0] * m[1] - x[1] * m[0]) / area].map(|v| v as f32))
}
