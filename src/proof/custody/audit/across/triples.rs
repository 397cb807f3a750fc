//! Photos in which three markers lie alike, of all photos of an archive, without
//! looking at every pair of them.
//!
//! Places are kept as whole numbers of small steps, twelve bytes for a photo's
//! triple. Those of the same three markers are joined by strips: a list is cut into
//! strips as wide as what counts as near, in one coordinate after the other, and
//! only a strip with its next one is looked at.

use std::collections::{BTreeSet, HashMap};

use rayon::prelude::*;

/// A copy's markers lie this near, in sides of the first marker: 1 px of noise at
/// 50 px a side, seen over ten sides.
const NEAR: f64 = 0.2;
/// Steps in what counts as near.
const STEPS: i16 = 8;
/// Fewer than this are compared pair by pair.
const FEW: usize = 16;
/// Of the triples that two photos may share, one in so many must lie alike: a crop loses carriers.
const SHARE: usize = 3;

/// Where two markers lie, seen from a third, in steps.
#[derive(Debug, Clone, Copy)]
struct Triple {
    places: [i16; 4],
    photo: u32,
}

impl Triple {
    fn is_near(&self, other: &Triple) -> bool {
        self.places.iter().zip(other.places).all(|(a, b)| (i32::from(*a) - i32::from(b)).abs() <= i32::from(STEPS))
    }
}

/// All triples, by their markers.
#[derive(Debug, Default)]
pub(super) struct Triples {
    by_markers: HashMap<[u32; 3], Vec<Triple>>,
    /// How many each photo has.
    of_photo: Vec<u8>,
}

impl Triples {
    pub(super) fn add(&mut self, ids: [u32; 3], places: [f64; 4], photo: u32) {
        // What lies further off than a number of steps can say lies there too: it is then told apart by the others.
        let places = places.map(|p| (p / NEAR * f64::from(STEPS)).round() as i16);
        self.by_markers.entry(ids).or_default().push(Triple { places, photo });
        if self.of_photo.len() <= photo as usize {
            self.of_photo.resize(photo as usize + 1, 0);
        }
        self.of_photo[photo as usize] = self.of_photo[photo as usize].saturating_add(1);
    }

    /// Pairs of photos that lie alike, the earlier one first; of the photos that are
    /// `copies`, byte for byte, none.
    pub(super) fn alike(self, copies: &[bool]) -> BTreeSet<(u32, u32)> {
        let Triples { by_markers, of_photo } = self;
        let near = |mut own: Vec<Triple>| -> Vec<(u32, u32)> {
            own.retain(|t| !copies[t.photo as usize]);
            let mut pairs = Vec::new();
            within(own, 0, &mut pairs);
            pairs
        };
        let mut pairs: Vec<(u32, u32)> = by_markers.into_par_iter().flat_map_iter(|(_, own)| near(own)).collect();
        pairs.par_sort_unstable();
        let enough = |pair: &[(u32, u32)]| {
            let [a, b] = [pair[0].0, pair[0].1].map(|n| usize::from(of_photo[n as usize]));
            pair.len() * SHARE >= a.min(b)
        };
        pairs.chunk_by(|a, b| a == b).filter(|pair| enough(pair)).map(|pair| pair[0]).collect()
    }
}

fn strip(triple: &Triple, coordinate: usize) -> i16 {
    triple.places[coordinate].div_euclid(STEPS + 1)
}

fn compared(a: &Triple, b: &Triple, pairs: &mut Vec<(u32, u32)>) {
    if a.photo != b.photo && a.is_near(b) {
        pairs.push((a.photo.min(b.photo), a.photo.max(b.photo)));
    }
}

/// Near pairs within a list.
fn within(mut list: Vec<Triple>, coordinate: usize, pairs: &mut Vec<(u32, u32)>) {
    if list.len() <= FEW || coordinate == 4 {
        for (n, a) in list.iter().enumerate() {
            list[n + 1..].iter().for_each(|b| compared(a, b, pairs));
        }
        return;
    }
    list.sort_unstable_by_key(|t| strip(t, coordinate));
    let strips: Vec<&[Triple]> = list.chunk_by(|a, b| strip(a, coordinate) == strip(b, coordinate)).collect();
    for (n, own) in strips.iter().enumerate() {
        if own.len() > 1 {
            within(own.to_vec(), coordinate + 1, pairs);
        }
        if let Some(next) = strips.get(n + 1)
            && strip(&next[0], coordinate) == strip(&own[0], coordinate) + 1
        {
            between(own.to_vec(), next.to_vec(), coordinate + 1, pairs);
        }
    }
}

/// Near pairs of one of the first list and one of the second.
fn between(mut one: Vec<Triple>, mut other: Vec<Triple>, coordinate: usize, pairs: &mut Vec<(u32, u32)>) {
    if one.len().min(other.len()) <= 2 || one.len() + other.len() <= FEW || coordinate == 4 {
        one.iter().for_each(|a| other.iter().for_each(|b| compared(a, b, pairs)));
        return;
    }
    one.sort_unstable_by_key(|t| strip(t, coordinate));
    other.sort_unstable_by_key(|t| strip(t, coordinate));
    let by_strip = |a: &Triple, b: &Triple| strip(a, coordinate) == strip(b, coordinate);
    let beside: Vec<&[Triple]> = other.chunk_by(by_strip).collect();
    for own in one.chunk_by(by_strip) {
        let here = i32::from(strip(&own[0], coordinate));
        let from = beside.partition_point(|s| i32::from(strip(&s[0], coordinate)) < here - 1);
        for next in beside[from..].iter().take_while(|s| i32::from(strip(&s[0], coordinate)) <= here + 1) {
            between(own.to_vec(), next.to_vec(), coordinate + 1, pairs);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rand::rngs::ChaCha8Rng;
    use rand::{RngExt, SeedableRng};

    /// Every pair that a comparison of all with all finds is found by strips, and no other.
    #[test]
    fn strips_find_what_all_pairs_find() {
        let mut random = ChaCha8Rng::seed_from_u64(5);
        for (count, reach) in [(10, 1.0), (300, 1.0), (2000, 3.0), (3000, 2.0)] {
            let mut triples = Triples::default();
            let mut plain = Vec::new();
            for photo in 0..count {
                let places: [f64; 4] = std::array::from_fn(|_| random.random_range(-reach..reach));
                triples.add([1, 2, 3], places, photo);
                let places = places.map(|p| (p / NEAR * f64::from(STEPS)).round() as i16);
                plain.push(Triple { places, photo });
            }
            let mut wanted = BTreeSet::new();
            for (n, a) in plain.iter().enumerate() {
                wanted.extend(plain[n + 1..].iter().filter(|b| a.is_near(b)).map(|b| (a.photo, b.photo)));
            }
            assert!(count < 300 || !wanted.is_empty());
            assert_eq!(triples.alike(&vec![false; count as usize]), wanted, "{count} in {reach}");
        }
    }
}
