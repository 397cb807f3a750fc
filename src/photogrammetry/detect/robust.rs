//! Noise and weights that a few odd pixels do not sway.

use super::model::Model;

/// Residuals beyond this many standard deviations count less (Huber).
const HUBER: f32 = 2.5;
/// Residuals beyond this many standard deviations count nothing.
pub(super) const REJECT: f32 = 7.0;
/// What no model gets below, share of the contrast.
const LEAST_NOISE: f32 = 0.01;

/// Robust standard deviation of residuals: .8693 times the upper quartile of their size (the median would say
/// little of edges where most of the pixels beside them are flat). Pixels at the
/// ends of the scale that agree show no noise and do not speak for the others.
pub(super) fn noise_of(model: &Model, residuals: impl Iterator<Item = f32>) -> f32 {
    let least = (LEAST_NOISE * model.light[3] as f32).max(0.3);
    let silent = |grey: f32, size: f32| (grey <= 0.0 || grey >= 255.0) && size < least;
    let sizes = model.pixels.iter().zip(residuals.map(f32::abs));
    let mut sizes: Vec<f32> = sizes.filter(|(p, size)| !silent(p.grey, *size)).map(|(_, size)| size).collect();
    if sizes.is_empty() {
        return least;
    }
    let upper = sizes.len() * 3 / 4;
    let (_, quartile, _) = sizes.select_nth_unstable_by(upper, f32::total_cmp);
    (0.8693 * *quartile).max(least)
}

/// How much a residual counts, in standard deviations.
pub(super) fn weight(normalized: f32) -> f32 {
    let size = normalized.abs();
    if size > REJECT {
        0.0
    } else if size > HUBER {
        HUBER / size
    } else {
        1.0
    }
}
