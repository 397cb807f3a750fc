//! Sharpening that leaves halos.

use rayon::prelude::*;

use super::blur::gaussian_plane;

/// Unsharp mask (Schreiber, Wirephoto quality improvement by unsharp masking,
/// 1970): `strength` times the difference from a Gaussian blur of sigma
/// `radius_px` is added, at most `clamp` of it either way, as a phone keeps
/// its overshoot from glaring.
pub(super) fn unsharp(plane: &[f32], width: usize, strength: f32, radius_px: f64, clamp: f32) -> Vec<f32> {
    let blurred = gaussian_plane(plane, width, radius_px);
    plane.par_iter().zip(&blurred).map(|(v, b)| v + (strength * (v - b)).clamp(-clamp, clamp)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const WIDTH: usize = 40;

    #[test]
    fn an_edge_overshoots_alike_on_both_sides_and_not_beyond_the_clamp() {
        let step: Vec<f32> = (0..WIDTH * 9).map(|i| if i % WIDTH < 20 { 0.3 } else { 0.7 }).collect();
        let row = |strength, clamp| unsharp(&step, WIDTH, strength, 1.2, clamp)[4 * WIDTH..5 * WIDTH].to_vec();
        let free = row(1.0, 1.0);
        for k in 0..20 {
            // Point symmetry about the edge.
            assert!((free[20 + k] - 0.5 + free[19 - k] - 0.5).abs() < 1e-6, "{k}");
        }
        assert!(free[20] > 0.78 && (free[10] - 0.3).abs() < 1e-6);
        // Blur of a step next to it, half a pixel away: (1 - erf(.5 / (1.2 sqrt 2))) / 2 = .338, a pixel's width apart.
        let overshoot = (free[20] - 0.7) / 0.4;
        assert!((overshoot - 0.338).abs() < 0.01, "{overshoot}");
        let clamped = row(1.4, 0.06);
        assert!((clamped[20] - 0.76).abs() < 1e-6 && (clamped[19] - 0.24).abs() < 1e-6);
    }
}
