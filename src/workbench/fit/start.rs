//! A first guess: the focal length that explains the photos' perspective
//! best, and the board's pose in each.

use nalgebra::{Point2, Point3, Vector2, Vector3};
use rayon::prelude::*;

use super::adjust::{FAR, FIRST_SPREAD, ROUGHLY};
use super::adjustment::Adjustment;
use super::seen::BoardPhoto;
use super::state::{PhotoState, State};
use super::target::{FLEXES, Target};
use crate::camera::{Lens, LensModel};
use crate::geom::{Camera, Carrier, Pose};
use crate::pose::plane_poses;

/// Focal lengths that are tried, as parts of the longer side: from an
/// ultra-wide lens to a long one, in `STEPS` equal ratios.
const SHORTEST: f64 = 0.3;
const LONGEST: f64 = 6.0;
const STEPS: usize = 40;
/// Of these every so many at first, then those beside the best.
const STRIDE: usize = 4;
/// Points of a photo that the search looks at.
const FEW: usize = 40;

/// A lens and the board's poses, near enough for the adjustment.
pub(super) struct Guess {
    pub(super) lens: Lens,
    /// One for each photo; `None` where the lens explains no pose.
    pub(super) poses: Vec<Option<Pose<Camera, Carrier>>>,
}

/// The lens without distortion that explains the photos best, or that with the focal length that another model
/// was found to have. `None` where none explains them.
pub(super) fn start(
    target: &Target,
    photos: &[&BoardPhoto],
    model: LensModel,
    size_px: [u32; 2],
    known_px: Option<f64>,
) -> Option<Guess> {
    let lens = match known_px {
        Some(f) => plain_lens(model, f, size_px),
        None => search(target, photos, model, size_px)?,
    };
    let poses = photos.iter().map(|p| pose(target, p, &lens, usize::MAX).map(|(pose, _)| pose)).collect();
    Some(Guess { lens, poses })
}

fn search(target: &Target, photos: &[&BoardPhoto], model: LensModel, size_px: [u32; 2]) -> Option<Lens> {
    let longer = f64::from(size_px[0].max(size_px[1]));
    let guess = |step: usize| {
        let f = longer * SHORTEST * (LONGEST / SHORTEST).powf(step as f64 / STEPS as f64);
        plain_lens(model, f, size_px)
    };
    let misfit = |lens: &Lens| -> f64 {
        let each = photos.iter().filter_map(|p| pose(target, p, lens, FEW).map(|(_, misfit)| misfit));
        let all: Vec<f64> = each.collect();
        // A lens without a pose for half of the photos explains nothing.
        if 2 * all.len() < photos.len() { f64::INFINITY } else { all.iter().sum::<f64>() / all.len() as f64 }
    };
    let try_all = |steps: Vec<usize>| {
        let tried: Vec<_> = steps.into_par_iter().map(|step| (misfit(&guess(step)), step)).collect();
        tried.into_iter().min_by(|a, b| a.0.total_cmp(&b.0))
    };
    let (_, coarse) = try_all((0..=STEPS).step_by(STRIDE).collect())?;
    let beside = coarse.saturating_sub(STRIDE - 1)..=(coarse + STRIDE - 1).min(STEPS);
    let (least, best) = try_all(beside.collect())?;
    least.is_finite().then(|| guess(best))
}

fn plain_lens(model: LensModel, f: f64, size_px: [u32; 2]) -> Lens {
    let centre_px = size_px.map(|n| (f64::from(n) - 1.0) / 2.0);
    Lens { model, focal_px: [f, f], centre_px, distortion: [0.0; 5] }
}

/// The board's pose for a lens and how far it misses the points on average, px.
fn pose(target: &Target, photo: &BoardPhoto, lens: &Lens, most: usize) -> Option<(Pose<Camera, Carrier>, f64)> {
    let mut pairs: Vec<(Point2<f64>, Vector2<f64>)> = Vec::new();
    let stride = photo.points().div_ceil(most).max(1);
    for seen in &photo.seen {
        for (found, point) in seen.found_px.iter().zip(&seen.points) {
            pairs.push((target.spots[seen.spot].points_mm[*point], *found));
        }
    }
    let few: Vec<_> = pairs.into_iter().step_by(stride).collect();
    let mut flat = Vec::with_capacity(few.len());
    let mut rays = Vec::with_capacity(few.len());
    for (point, found) in &few {
        if let Some(ray) = lens.ray(found) {
            flat.push(*point);
            rays.push(Point2::new(ray.x, ray.y));
        }
    }
    if 2 * flat.len() < few.len() {
        return None;
    }
    // The first-order pose is taken at the middle of what is seen.
    let middle = flat.iter().fold(Vector2::zeros(), |s, p| s + p.coords) / flat.len() as f64;
    let centred: Vec<_> = flat.iter().map(|p| p - middle).collect();
    let found = plane_poses(&centred, &rays).into_iter().next()?;
    let to_middle = nalgebra::Translation3::new(-middle.x, -middle.y, 0.0);
    let pose: Pose<Camera, Carrier> = Pose::from_isometry(found.isometry() * to_middle);
    let miss = |(point, found): &(Point2<f64>, Vector2<f64>)| {
        let seen = lens.project(&pose.point(&Point3::new(point.x, point.y, 0.0)).coords)?;
        Some((seen.pixel - found).norm())
    };
    let sum: Option<f64> = few.iter().map(miss).sum();
    Some((pose, sum? / few.len() as f64))
}

/// Brings a first guess near: focal length and the first distortion
/// coefficient alone, then all parameters.
pub(super) fn approach<'a>(
    target: &'a Target,
    photos: Vec<&'a BoardPhoto>,
    lens: Lens,
    poses: Vec<Pose<Camera, Carrier>>,
) -> Option<Adjustment<'a>> {
    let photo = |pose| PhotoState {
        camera_from_board: pose,
        focal_relative: 0.0,
        centre_px: [0.0; 2],
        edge: [0.0; 2],
        turn_rad: Vector3::zeros(),
        flex_mm: [0.0; FLEXES],
    };
    let state = State { lens, shape: vec![0.0; target.unknowns()], photos: poses.into_iter().map(photo).collect() };
    let mut work = Adjustment::new(target, photos, state);
    // Far from the solution nothing is known to a hundredth of a pixel.
    work.noise = 30.0;
    work.rigid_board = true;
    work.held = [false, false, true, true, false, true, true, true, true];
    work.settle(30, FAR, ROUGHLY)?;
    work.held = [false; 9];
    work.settle(30, FAR, ROUGHLY)?;
    work.reweigh()?;
    work.settle(20, FAR, ROUGHLY)?;
    work.rigid_board = false;
    work.spread = FIRST_SPREAD;
    work.noise = 1.0;
    Some(work)
}
