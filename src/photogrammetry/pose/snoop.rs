//! Wrong corners: found by their studentised residuals, left out one by one
//! (data snooping, Baarda 1968; externally studentised after Pope), then whole markers.
//!
//! Only a few may go, and never most of one body: when many disagree, it is the
//! model that is wrong (a stand that moved, a plate that turned), and that is
//! for the findings to say.

use nalgebra::{DMatrix, Matrix2, Vector2};
use statrs::distribution::{ContinuousCDF, FisherSnedecor};

use super::views::{Problem, View};
use super::work::{Linearized, Work};
use crate::marker::Role;

/// The largest share of corners that may be left out.
const MOST: f64 = 0.08;
/// Most markers, each in one photo, that may be left out as a whole.
const MOST_MARKERS: usize = 2;
/// A marker is left out as a whole only if one of its corners is farther off than this, px.
const LEAST_BLUNDER_PX: f64 = 0.2;
/// Chance of dropping one good corner of a whole job.
const FALSE_ALARM: f64 = 1e-3;

/// Leaves out corners that the robust solution misses by far.
pub(super) fn drop_gross(work: &mut Work) {
    let Some(equations) = work.equations(&work.state) else { return };
    let mut misfits: Vec<f64> = Vec::new();
    for e in &equations {
        misfits.extend(e.residual.iter().map(|r| r.abs()));
    }
    misfits.sort_by(f64::total_cmp);
    // 1.4826 times the median of absolute values is a normal sigma.
    let sigma = misfits.get(misfits.len() / 2).map_or(1.0, |m| 1.4826 * m).max(0.5);
    let mut doubtful = Vec::new();
    for (e, (j, v)) in equations.iter().zip(index(work)) {
        let view = &work.problem.photos[j].views[v];
        for i in (0..4).filter(|i| view.valid[*i]) {
            let error = e.residual_px[i].norm();
            let u = view.covariance_px2.fixed_view::<2, 2>(2 * i, 2 * i).trace().sqrt();
            if error > 12.0 * sigma * u.max(0.01) && error > 0.3 {
                doubtful.push((j, v, i));
            }
        }
    }
    if (doubtful.len() as f64) <= MOST * corners(work) as f64 {
        let before = work.problem.clone();
        for (j, v, i) in doubtful {
            work.problem.photos[j].views[v].valid[i] = false;
        }
        forget_blind_views(work);
        keep_bodies(work, &before);
    }
}

/// Gives a carrier its corners back in each photo that has lost more than half
/// of them: a body in another place is no blunder.
fn keep_bodies(work: &mut Work, before: &Problem) -> bool {
    let mut kept = false;
    for (photo, was) in work.problem.photos.iter_mut().zip(&before.photos) {
        for k in 0..before.kit.carriers.len() {
            let of_carrier = |views: &[View]| -> usize {
                views.iter().filter(|v| v.carrier == k).map(|v| v.valid.iter().filter(|x| **x).count()).sum()
            };
            if 2 * of_carrier(&photo.views) < of_carrier(&was.views) {
                for (view, was) in photo.views.iter_mut().zip(&was.views).filter(|(v, _)| v.carrier == k) {
                    view.valid = was.valid;
                }
                kept = true;
            }
        }
    }
    kept
}

/// Leaves out what is significantly wrong: corners, and where these do not mend it, whole markers.
pub(super) fn drop_worst(work: &mut Work) {
    if drop_corners(work) {
        return;
    }
    // Corners one by one do not mend it: a marker may be wrong as a whole, or the model is.
    drop_markers(work);
}

/// Leaves out the worst corner as long as it is significantly wrong; false and nothing left out where
/// that would take too many, or where a whole marker still does not fit.
fn drop_corners(work: &mut Work) -> bool {
    let allowed = (MOST * corners(work) as f64) as usize;
    let before = work.clone();
    for dropped in 0.. {
        let Some((j, v, i)) = worst(work) else { break };
        if dropped >= allowed {
            // Too many to be blunders: the model is at fault, keep everything.
            *work = before;
            return false;
        }
        work.problem.photos[j].views[v].valid[i] = false;
        forget_blind_views(work);
        if keep_bodies(work, &before.problem) || work.settle().is_none() {
            *work = before;
            return false;
        }
    }
    worst_marker(work).is_none()
}

/// Leaves out one marker in one photo, or two, where all else fits without it: what strikes only one
/// marker (a shadow's edge, a puddle, a boot on the sheet) is no reason to believe that bodies moved.
/// True where it did. A body other than a sheet on the floor is never left out in a photo: if it stands
/// elsewhere there, a finding must say so.
fn drop_markers(work: &mut Work) -> bool {
    let before = work.clone();
    for _ in 0..MOST_MARKERS {
        let Some((j, v)) = worst_marker(work) else { return true };
        work.problem.photos[j].views[v].valid = [false; 4];
        let mut bodies = before.problem.clone();
        let sheet = |k: usize| bodies.kit.carriers[k].role == Role::Floor;
        for (photo, now) in bodies.photos.iter_mut().zip(&work.problem.photos) {
            for (view, now) in photo.views.iter_mut().zip(&now.views).filter(|(v, _)| sheet(v.carrier)) {
                view.valid = now.valid;
            }
        }
        if keep_bodies(work, &bodies) || work.settle().is_none() {
            *work = before;
            return false;
        }
        if drop_corners(work) {
            return true;
        }
    }
    *work = before;
    false
}

/// A view that lost two corners still helps; with less than two it is noise.
fn forget_blind_views(work: &mut Work) {
    for photo in &mut work.problem.photos {
        for view in &mut photo.views {
            if view.valid.iter().filter(|v| **v).count() < 2 {
                view.valid = [false; 4];
            }
        }
    }
}

fn corners(work: &Work) -> usize {
    let views = work.columns.photos.iter().flat_map(|j| &work.problem.photos[*j].views);
    views.map(|v| v.valid.iter().filter(|x| **x).count()).sum()
}

/// Photo and view of each equation, in order.
fn index(work: &Work) -> Vec<(usize, usize)> {
    let photos = work.columns.photos.iter();
    photos.flat_map(|j| (0..work.problem.photos[*j].views.len()).map(move |v| (*j, v))).collect()
}

/// The corner with the largest significant studentised residual.
fn worst(work: &Work) -> Option<(usize, usize, usize)> {
    let linear = work.linearized()?;
    let freedom = work.redundancy;
    if freedom < 4.0 {
        return None;
    }
    let level = FALSE_ALARM / corners(work) as f64;
    let f = FisherSnedecor::new(2.0, freedom - 2.0).ok()?.inverse_cdf(1.0 - level);
    let mut worst: Option<(f64, (usize, usize, usize))> = None;
    for (at, (j, v)) in index(work).into_iter().enumerate() {
        let least = 2.0 * f * freedom / (freedom - 2.0 + 2.0 * f);
        for (corner, statistic) in statistics(work, &linear, at, (j, v), least).into_iter().flatten() {
            let external = (statistic / 2.0) * (freedom - 2.0) / (freedom - statistic).max(1e-3);
            if external > f && worst.as_ref().is_none_or(|w| external > w.0) {
                worst = Some((external, (j, v, corner)));
            }
        }
    }
    worst.map(|w| w.1)
}

/// The marker in one photo that is most significantly wrong as a whole: photo and view.
fn worst_marker(work: &Work) -> Option<(usize, usize)> {
    let linear = work.linearized()?;
    let freedom = work.redundancy;
    let index = index(work);
    let mut worst: Option<(f64, (usize, usize))> = None;
    for (at, place) in index.iter().enumerate() {
        let e = &linear.equations[at];
        let rows = e.residual.len() as f64;
        if rows < 4.0 || freedom < rows + 4.0 {
            continue;
        }
        // A bound that costs little: others control more than a quarter of a marker.
        if e.residual.norm_squared() / work.variance < rows {
            continue;
        }
        let f = FisherSnedecor::new(rows, freedom - rows).ok()?.inverse_cdf(1.0 - FALSE_ALARM / index.len() as f64);
        let shifts = e.whitened(&DMatrix::identity(e.residual.len(), e.residual.len()));
        let right = shifts.tr_mul(&e.residual);
        let Some(solved) = controlled(work, &linear, at, &shifts).cholesky().map(|c| c.solve(&right)) else { continue };
        // Where all else would have its corners: what is off by less is a model's imperfection.
        let farthest = (0..solved.len() / 2).map(|i| solved.rows(2 * i, 2).norm()).fold(0.0, f64::max);
        if farthest < LEAST_BLUNDER_PX {
            continue;
        }
        let statistic = right.dot(&solved) / work.variance;
        let external = (statistic / rows) * (freedom - rows) / (freedom - statistic).max(1e-3);
        if external > f && worst.is_none_or(|w| external / f > w.0) {
            worst = Some((external / f, *place));
        }
    }
    worst.map(|w| w.1)
}

/// How much the other observations control shifts of a view's corners: their weight once all unknowns are solved for.
fn controlled(work: &Work, linear: &Linearized, at: usize, shifts: &DMatrix<f64>) -> DMatrix<f64> {
    let e = &linear.equations[at];
    let rows = e.residual.len();
    let hat = linear.normal.of_view(e) / work.variance;
    shifts.tr_mul(&(DMatrix::identity(rows, rows) - hat)) * shifts
}

/// For each valid corner of a view that may be wrong: how much the misfit drops
/// without it. `least` is the drop from which one is of interest.
fn statistics(
    work: &Work,
    linear: &Linearized,
    at: usize,
    (j, v): (usize, usize),
    least: f64,
) -> Option<Vec<(usize, f64)>> {
    let e = &linear.equations[at];
    let view = &work.problem.photos[j].views[v];
    let rows = e.residual.len();
    let valid = (0..4).filter(|i| view.valid[*i]).enumerate();
    // A shift of each corner alone, seen through the whitening.
    let shifts = e.whitened(&DMatrix::identity(rows, rows));
    let right = shifts.tr_mul(&e.residual);
    let drop_by = |row: usize, weight: &DMatrix<f64>| -> Option<f64> {
        let weight: Matrix2<f64> = weight.fixed_view::<2, 2>(2 * row, 2 * row).into_owned();
        let right: Vector2<f64> = right.fixed_rows::<2>(2 * row).into_owned();
        Some(right.dot(&(weight.try_inverse()? * right)) / work.variance)
    };
    // An upper bound that costs little, as long as a tenth of a corner is controlled by others.
    let alone = shifts.tr_mul(&shifts);
    let doubtful: Vec<(usize, usize)> =
        valid.filter(|(row, _)| drop_by(*row, &alone).is_none_or(|drop| drop > 0.1 * least)).collect();
    if doubtful.is_empty() {
        return None;
    }
    let weight = controlled(work, linear, at, &shifts);
    Some(doubtful.into_iter().filter_map(|(row, corner)| Some((corner, drop_by(row, &weight)?))).collect())
}
