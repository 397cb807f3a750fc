//! One photo in two jobs: byte for byte, or saved again, scaled or cropped.
//!
//! Copies are told as `photo-reused` tells them within a job: an affine map takes
//! the corners of one to those of the other. To look at few pairs, three markers
//! of three carriers are written as two of them seen from the first one's own
//! corners, which no affine map changes; photos of different set-ups, or of one
//! from different places, differ there by much more than a copy does. A copy that
//! was mirrored shows no marker, so its job is retake anyway.

use std::collections::{BTreeMap, HashMap};
use std::rc::Rc;

use rayon::prelude::*;

use super::triples::Triples;
use crate::record::{JobRecord, MarkerRecord, PhotoRecord};
use crate::verdict::findings::{Corners, same_corners};
use crate::words::{Phrase, phrase};

/// Carriers that are looked at in a photo, at most.
const MOST_CARRIERS: usize = 5;
/// Jobs with the very photo before a job that it is compared with, at most.
const MOST_BEFORE: usize = 8;
/// Views that are kept, some 2 kB each.
const MOST_VIEWS: usize = 2000;

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

/// A photo's job and its place among that job's photos; its name is in the record.
#[derive(Clone, Copy)]
struct Place {
    job: u32,
    photo: u32,
}

/// All photos of an archive.
#[derive(Default)]
pub(super) struct Index {
    photos: Vec<Place>,
    digests: Vec<([u8; 16], u32)>,
    triples: Triples,
}

impl Index {
    pub(super) fn add(&mut self, job: usize, record: &JobRecord) {
        for (n, photo) in record.photos.iter().enumerate() {
            let number = self.photos.len() as u32;
            let input = record.inputs.iter().find(|i| i.role == "photo" && i.file == photo.file);
            if let Some(start) = input.and_then(|i| first_bytes(&i.sha256)) {
                self.digests.push((start, number));
            }
            triples(photo, |ids, places| self.triples.add(ids, places, number));
            self.photos.push(Place { job: job as u32, photo: n as u32 });
        }
    }

    /// Pairs of jobs, each once; `read` gives a job's record again.
    pub(super) fn pairs<E>(mut self, read: impl Fn(usize) -> Result<Option<JobRecord>, E>) -> Result<Vec<Pair>, E> {
        let mut views = Views { read, kept: HashMap::new() };
        let mut found: BTreeMap<[usize; 2], (u32, u32, bool)> = BTreeMap::new();
        // Copies of one photo are joined once: of many copies, not every pair is looked at.
        let mut joined = Joined::new(self.photos.len());
        let mut copies = vec![false; self.photos.len()];
        let mut digests = std::mem::take(&mut self.digests);
        digests.par_sort_unstable();
        for same in digests.chunk_by(|a, b| a.0 == b.0) {
            for (n, (_, b)) in same.iter().enumerate().skip(1) {
                // Not the last one alone: that may be a job which shares it rightly.
                for (_, a) in &same[n.saturating_sub(MOST_BEFORE)..n] {
                    self.keep(&mut found, *a, *b, true);
                }
                joined.join(same[n - 1].1, *b);
                copies[*b as usize] = true;
            }
        }
        drop(digests);
        let triples = std::mem::take(&mut self.triples);
        for (a, b) in triples.alike(&copies) {
            let jobs = self.jobs(a, b);
            if found.contains_key(&jobs) || jobs[0] == jobs[1] || joined.are(a, b) {
                continue;
            }
            let [first, second] = [a, b].map(|n| views.of(n, self.photos[n as usize]));
            let (first, second) = (first?, second?);
            if !first.corners.is_empty() && same_corners(&first.corners, &second.corners) {
                self.keep(&mut found, a, b, false);
                joined.join(a, b);
            }
        }
        let named = |(jobs, (a, b, bytes)): ([usize; 2], (u32, u32, bool))| {
            let [first, second] = [a, b].map(|n| views.of(n, self.photos[n as usize]));
            Ok(Pair { jobs, photos: [first?.file.clone(), second?.file.clone()], bytes })
        };
        found.into_iter().map(named).collect()
    }

    fn jobs(&self, a: u32, b: u32) -> [usize; 2] {
        [a, b].map(|n| self.photos[n as usize].job as usize)
    }

    fn keep(&self, found: &mut BTreeMap<[usize; 2], (u32, u32, bool)>, a: u32, b: u32, bytes: bool) {
        let jobs = self.jobs(a, b);
        if jobs[0] != jobs[1] {
            found.entry(jobs).or_insert((a, b, bytes));
        }
    }
}

/// What a record says of a photo.
#[derive(Default)]
struct View {
    file: String,
    corners: Vec<Corners>,
}

/// Views that were read, so that one that is near many others is not read as often.
struct Views<F> {
    read: F,
    kept: HashMap<u32, Rc<View>>,
}

impl<E, F: Fn(usize) -> Result<Option<JobRecord>, E>> Views<F> {
    fn of(&mut self, photo: u32, place: Place) -> Result<Rc<View>, E> {
        if let Some(known) = self.kept.get(&photo) {
            return Ok(Rc::clone(known));
        }
        if self.kept.len() >= MOST_VIEWS {
            self.kept.clear();
        }
        // A job's photos stand side by side: its record is read once for all of them.
        let first = photo - place.photo;
        for (n, p) in (self.read)(place.job as usize)?.iter().flat_map(|record| &record.photos).enumerate() {
            let corners = p.markers.iter().map(|m| Corners { id: m.id, px: m.corners_px, valid: [true; 4] });
            self.kept.insert(first + n as u32, Rc::new(View { file: p.file.clone(), corners: corners.collect() }));
        }
        Ok(Rc::clone(self.kept.entry(photo).or_default()))
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

/// The lowest marker of each carrier, three carriers at a time: two of them seen from the first.
fn triples(photo: &PhotoRecord, mut take: impl FnMut([u32; 3], [f64; 4])) {
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
    for (i, a) in markers.iter().enumerate() {
        for (j, b) in markers.iter().enumerate().skip(i + 1) {
            for c in &markers[j + 1..] {
                if let (Some(p), Some(q)) = (seen_from(a, b), seen_from(a, c)) {
                    take([a.id, b.id, c.id], [p[0], p[1], q[0], q[1]]);
                }
            }
        }
    }
}

/// A marker's middle in the axes of another's top and left side.
fn seen_from(axes: &MarkerRecord, marker: &MarkerRecord) -> Option<[f64; 2]> {
    let [o, x, _, y] = axes.corners_px;
    let middle = |k: usize| marker.corners_px.iter().map(|c| c[k]).sum::<f64>() / 4.0 - o[k];
    let (m, x, y) = ([middle(0), middle(1)], [x[0] - o[0], x[1] - o[1]], [y[0] - o[0], y[1] - o[1]]);
    let area = x[0] * y[1] - x[1] * y[0];
    if area.abs() < 1.0 {
        return None;
    }
    Some([(m[0] * y[1] - m[1] * y[0]) / area, (x[0] * m[1] - x[1] * m[0]) / area])
}
