//! What the answers hang on: how far each check's value moves when a photo, a
//! carrier or the form of the lens model is taken away.
//!
//! For estimates from nested data the variance of the change is the difference
//! of the variances (Hausman 1978): what is left out may move the value by that
//! much and no more.

use crate::camera::OtherModel;
use crate::cores;
use crate::measure::{Ask, Facts, gradients};
use crate::pose::{LeftOut, Problem, Scene};

/// What was assumed otherwise.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Assumption {
    /// Without one carrier, by index in the kit.
    WithoutCarrier(usize),
    /// Without one photo, by index in the problem.
    WithoutPhoto(usize),
    /// With the other lens model.
    OtherLensModel,
}

/// How one check's value depends on one assumption.
#[derive(Debug, Clone, PartialEq)]
pub struct Sensitivity {
    /// What was assumed otherwise.
    pub assumption: Assumption,
    /// Index among the asks.
    pub ask: usize,
    /// Change of the value, mm or degrees.
    pub change: f64,
    /// 1 sigma of such a change where all is well; zero for a model.
    pub u_change: f64,
}

/// Variances that grow by more than this have lost what they need: the change
/// then says nothing.
const LOST: f64 = 400.0;
/// More photos than this hang on none of them; leaving each out costs its time.
const MOST_PHOTOS: usize = 12;

/// Scatter of the corners in a camera's fit, where its file says nothing, px.
const CORNER_NOISE_PX: f64 = 0.05;

/// The changes of all asks under all assumptions.
pub fn sensitivity(facts: &Facts, problem: &Problem, scene: &Scene, asks: &[Ask]) -> Vec<Sensitivity> {
    let gradients = gradients(facts, scene, asks);
    let Some(base) = scene.without(LeftOut::Nothing, &gradients) else { return Vec::new() };
    let mut all = Vec::new();
    let assumptions = assumptions(problem, scene);
    let without = cores::map(&assumptions, |(_, left_out)| scene.without(*left_out, &gradients));
    for ((assumption, _), without) in assumptions.iter().zip(without) {
        let Some(without) = without else { continue };
        for ask in 0..asks.len() {
            let (before, after) = (base.variance[ask], without.variance[ask]);
            if before > 0.0 && after < LOST * before {
                let u_change = (after - before).max(0.0).sqrt();
                let change = without.change[ask];
                all.push(Sensitivity { assumption: assumption.clone(), ask, change, u_change });
            }
        }
    }
    all.extend(other_lens(problem, scene, &gradients));
    all
}

fn assumptions(problem: &Problem, scene: &Scene) -> Vec<(Assumption, LeftOut)> {
    let photos: Vec<usize> = (0..problem.photos.len()).filter(|j| scene.photos[*j].is_some()).collect();
    let carriers = (0..problem.kit.carriers.len()).filter(|k| scene.carriers[*k].is_some());
    let mut all: Vec<_> = carriers.map(|k| (Assumption::WithoutCarrier(k), LeftOut::Carrier(k))).collect();
    if (3..=MOST_PHOTOS).contains(&photos.len()) {
        all.extend(photos.into_iter().map(|j| (Assumption::WithoutPhoto(j), LeftOut::Photo(j))));
    }
    all
}

fn other_lens(problem: &Problem, scene: &Scene, gradients: &nalgebra::DMatrix<f64>) -> Vec<Sensitivity> {
    let others: Option<Vec<OtherModel>> =
        problem.cameras.iter().map(|c| OtherModel::of(&c.lens, c.image_size_px)).collect();
    let Some(others) = others else { return Vec::new() };
    // A model that misses the lens by more than corners scatter is no alternative.
    let noise = |c: &crate::camera::Profile| c.u_noise_px.unwrap_or(CORNER_NOISE_PX);
    if others.iter().zip(&problem.cameras).any(|(other, camera)| other.rms_px() > noise(camera)) {
        return Vec::new();
    }
    let by = |j: usize, p: &nalgebra::Vector2<f64>| -others[problem.photos[j].camera].difference_px(p);
    let Some(changes) = scene.displaced(problem, gradients, &by) else { return Vec::new() };
    let one = |(ask, change): (usize, &f64)| Sensitivity {
        assumption: Assumption::OtherLensModel,
        ask,
        change: *change,
        u_change: 0.0,
    };
    changes.iter().enumerate().map(one).collect()
}
