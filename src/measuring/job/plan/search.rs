//! Where to stand: the fewest photos from places that a person can reach.

use std::collections::{BTreeSet, HashMap};

use nalgebra::Point3;
use rayon::prelude::*;

use super::predict::{Predicted, Predictor, Shot};
use crate::marker::Role;

/// Where a person can stand.
#[derive(Debug, Clone, PartialEq)]
pub struct Reach {
    /// Clear width of the bay between walls or posts, mm; the vehicle stands in the middle.
    pub width_mm: f64,
    /// Clear length before the nose, mm.
    pub ahead_mm: f64,
    /// Posts and other things that nobody can stand in: x, y in the vehicle frame, mm.
    pub posts_mm: Vec<[f64; 2]>,
}

impl Default for Reach {
    /// A bay of 4 m (common practice, no source).
    fn default() -> Self {
        Reach { width_mm: 4000.0, ahead_mm: 6000.0, posts_mm: Vec::new() }
    }
}

/// Eye heights that are tried, mm.
const EYES_MM: [f64; 3] = [1200.0, 1500.0, 1800.0];
/// A person keeps so far from a wall or post, mm.
const ELBOW_MM: f64 = 300.0;
/// Most photos that a search goes to.
pub(super) const MOST_PHOTOS: usize = 6;
/// Kept for pairing, by how much they tell alone.
const PAIRED: usize = 8;

/// Stations with their prediction.
#[derive(Debug, Clone)]
pub(super) struct Found {
    pub(super) shots: Vec<Shot>,
    pub(super) predicted: Vec<Predicted>,
}

impl Found {
    pub(super) fn decides_all(&self) -> bool {
        self.predicted.iter().all(|p| p.can_decide)
    }
}

/// A search over one bay's places.
pub(super) struct Search<'p, 'a> {
    predictor: &'p Predictor<'a>,
    shots: Vec<Shot>,
    /// The shot from the mirrored place.
    mirror: Vec<Option<usize>>,
    costs: HashMap<Vec<usize>, f64>,
}

impl<'p, 'a> Search<'p, 'a> {
    pub(super) fn new(predictor: &'p Predictor<'a>, reach: &Reach) -> Self {
        let sight = predictor.sight();
        let places = places(predictor, reach);
        let shot = |eye| predictor.best_shot(&sight, eye).filter(|s| predictor.sees(s).len() >= 2);
        let shots: Vec<Shot> = places.into_par_iter().filter_map(shot).collect();
        let mirror = shots
            .iter()
            .map(|s| {
                let m = Point3::new(s.station.eye.x, -s.station.eye.y, s.station.eye.z);
                shots.iter().position(|o| (o.station.eye - m).norm() < 1.0)
            })
            .collect();
        Search { predictor, shots, mirror, costs: HashMap::new() }
    }

    /// The photos from all places at a middling eye height.
    pub(super) fn middling(&self) -> Vec<&Shot> {
        (0..self.shots.len()).filter(|i| self.is_middle(*i)).map(|i| &self.shots[i]).collect()
    }

    fn predict(&self, set: &[usize]) -> Vec<Predicted> {
        let shots: Vec<&Shot> = set.iter().map(|i| &self.shots[*i]).collect();
        self.predictor.predict(&shots)
    }

    /// Each set's cost, before it: the worst check decides; what is not determined weighs most.
    fn costed(&mut self, sets: Vec<Vec<usize>>) -> Vec<(f64, Vec<usize>)> {
        let keyed = |set: &Vec<usize>| {
            let mut key = set.clone();
            key.sort_unstable();
            key
        };
        let keys: Vec<Vec<usize>> = sets.iter().map(keyed).collect();
        let new: BTreeSet<&Vec<usize>> = keys.iter().filter(|key| !self.costs.contains_key(*key)).collect();
        let costs: Vec<(Vec<usize>, f64)> =
            new.into_par_iter().map(|key| (key.clone(), cost(&self.predict(key)))).collect();
        self.costs.extend(costs);
        keys.iter().map(|key| self.costs[key]).zip(sets).collect()
    }

    fn best_of(&mut self, sets: Vec<Vec<usize>>) -> Option<Vec<usize>> {
        let costed = self.costed(sets);
        costed.into_iter().min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, s)| s)
    }

    /// The best sets of two photos and more, up to `most`; ends at the first
    /// that decides all checks unless exactly `most` is wanted.
    pub(super) fn run(&mut self, most: usize, exactly: bool) -> Vec<Found> {
        let mut found = Vec::new();
        let Some(mut set) = self.best_pair() else { return found };
        loop {
            let here =
                Found { shots: set.iter().map(|i| self.shots[*i].clone()).collect(), predicted: self.predict(&set) };
            let done = here.decides_all() && !exactly;
            found.push(here);
            if done || set.len() >= most {
                return found;
            }
            let Some(next) = self.one_more(&set) else { return found };
            set = next;
        }
    }

    fn best_pair(&mut self) -> Option<Vec<usize>> {
        let middle: Vec<usize> = (0..self.shots.len()).filter(|i| self.is_middle(*i)).collect();
        let mut alone = self.costed(middle.iter().map(|i| vec![*i]).collect());
        alone.sort_by(|a, b| a.0.total_cmp(&b.0));
        let best: Vec<usize> = alone.iter().take(PAIRED).map(|a| a.1[0]).collect();
        let mut sets: Vec<Vec<usize>> =
            (0..self.shots.len()).filter_map(|i| self.mirror[i].filter(|m| i < *m).map(|m| vec![i, m])).collect();
        for (n, i) in best.iter().enumerate() {
            sets.extend(best[n + 1..].iter().map(|j| vec![*i, *j]));
        }
        let first = self.best_of(sets)?;
        // One step of exchange: each photo for any other.
        let mut sets = vec![first.clone()];
        for keep in &first {
            sets.extend(middle.iter().filter(|i| *i != keep).map(|i| vec![*keep, *i]));
        }
        self.best_of(sets)
    }

    fn one_more(&mut self, set: &[usize]) -> Option<Vec<usize>> {
        let others: Vec<usize> = (0..self.shots.len()).filter(|i| !set.contains(i) && self.is_middle(*i)).collect();
        let sets = others.iter().map(|i| [set, &[*i]].concat()).collect();
        self.best_of(sets)
    }

    /// At a middling eye height; the others are tried for the first pair.
    fn is_middle(&self, i: usize) -> bool {
        (self.shots[i].station.eye.z - EYES_MM[1]).abs() < 1.0
    }
}

pub(super) fn cost(predicted: &[Predicted]) -> f64 {
    let finite: Vec<f64> = predicted.iter().map(|p| p.ratio.min(1e6)).collect();
    let sum: f64 = finite.iter().sum();
    finite.iter().fold(0.0f64, |a, b| a.max(*b)) + sum / (20.0 * finite.len().max(1) as f64) + sum.min(1e9) * 1e-9
}

/// Free places with each eye height.
fn places(predictor: &Predictor, reach: &Reach) -> Vec<Point3<f64>> {
    let sizes = &predictor.bay.sizes;
    let half = (reach.width_mm / 2.0 - ELBOW_MM).max(200.0);
    let across = [-1.0, -0.68, -0.32, 0.0, 0.32, 0.68, 1.0].map(|s: f64| s * half);
    let mut all = Vec::new();
    let (first, last) = (sizes.nose - 1400.0, sizes.nose + reach.ahead_mm - ELBOW_MM);
    let steps = (((last - first) / 620.0).floor() as usize).min(14);
    for i in 0..=steps {
        let x = first + (last - first) * i as f64 / steps.max(1) as f64;
        for y in across {
            if is_free(predictor, reach, x, y) {
                all.extend(EYES_MM.map(|z| Point3::new(x, y, z)));
            }
        }
    }
    all
}

/// Nobody stands in the vehicle, on its plates, in the stand or in a post.
fn is_free(predictor: &Predictor, reach: &Reach, x: f64, y: f64) -> bool {
    let sizes = &predictor.bay.sizes;
    if x < sizes.nose + 250.0 && y.abs() < sizes.half_width + 500.0 {
        return false;
    }
    let kit = &predictor.steps.kit;
    let stands = kit.with_role(Role::Target).filter_map(|k| predictor.bay.carriers[k]);
    let on_stand = |o: nalgebra::Vector3<f64>| (x - o.x).abs() < 500.0 && (y - o.y).abs() < 950.0;
    let in_post = |p: &[f64; 2]| (x - p[0]).hypot(y - p[1]) < ELBOW_MM;
    !stands.into_iter().any(|s| on_stand(s.origin_mm())) && !reach.posts_mm.iter().any(in_post)
}
