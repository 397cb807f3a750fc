//! Photos that take no part, and why.

use super::adjustment::Adjustment;
use crate::num::median;
use crate::words::{Figure, Phrase, phrase};

/// A photo whose residuals are this many times the middle photo's disagrees.
const MOST_MISFIT: f64 = 2.5;
/// A focal length this far from the others', relative, is another zoom or crop.
const LEAST_ZOOM: f64 = 0.005;
/// Elements that had to be left out, share of the photo's.
const MOST_OUT: f64 = 0.3;

/// A photo that was left out.
#[derive(Debug, Clone, PartialEq)]
pub struct Rejected {
    /// Its path.
    pub file: String,
    /// Why.
    pub why: Phrase,
}

/// The photo that disagrees most with the others, and in what.
pub(super) fn worst(work: &Adjustment) -> Option<(usize, Phrase)> {
    let zoomed = zoomed(work);
    zoomed.or_else(|| misfit(work)).or_else(|| many_out(work))
}

fn zoomed(work: &Adjustment) -> Option<(usize, Phrase)> {
    let focal: Vec<f64> = work.state.photos.iter().map(|p| p.focal_relative).collect();
    if focal.len() < 5 {
        return None;
    }
    let middle = median(focal.iter().copied()).unwrap_or(f64::NAN);
    let away: Vec<f64> = focal.iter().map(|f| (f - middle).abs()).collect();
    let limit = (7.0 * 1.4826 * median(away.iter().copied()).unwrap_or(f64::NAN)).max(LEAST_ZOOM);
    let (photo, most) = away.iter().copied().enumerate().max_by(|a, b| a.1.total_cmp(&b.1))?;
    (most > limit).then(|| {
        let percent = 100.0 * (focal[photo] - middle);
        let side = if percent < 0.0 { "shorter" } else { "longer" };
        (photo, phrase!("fit-out-zoomed", off = Figure::fixed(percent.abs(), 1), side = side))
    })
}

fn misfit(work: &Adjustment) -> Option<(usize, Phrase)> {
    let each: Vec<f64> = (0..work.photos.len()).map(|j| work.photo_misfit(j)).collect();
    let middle = median(each.iter().copied()).unwrap_or(f64::NAN).max(1e-9);
    let (photo, most) = each.iter().copied().enumerate().max_by(|a, b| a.1.total_cmp(&b.1))?;
    let ratio = most / middle;
    (each.len() >= 4 && ratio > MOST_MISFIT)
        .then(|| (photo, phrase!("fit-out-misfit", ratio = Figure::fixed(ratio, 1))))
}

fn many_out(work: &Adjustment) -> Option<(usize, Phrase)> {
    let share = |w: &Vec<f64>| w.iter().filter(|w| **w <= 0.0).count() as f64 / w.len().max(1) as f64;
    let each = work.weights.iter().map(share).enumerate();
    let (photo, most) = each.max_by(|a, b| a.1.total_cmp(&b.1))?;
    (most > MOST_OUT).then(|| (photo, phrase!("fit-out-markers", share = Figure::fixed(100.0 * most, 0))))
}
