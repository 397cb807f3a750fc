//! How noisy a phone's corners are, in units of what is expected of a plainly developed photo.
//!
//! The detector states larger covariances where it sees more noise, and least squares finds what
//! it did not see; a prediction takes both from what is known of the phone at hand: the fit of its
//! camera file, its earlier jobs, or the very job that one more photo is thought for.

use crate::camera::Profile;
use crate::detect::expected_covariance;
use crate::num::median;
use crate::pose::{Problem, Scene, View};

/// Corner noise that a fit finds on boards that fill the frame of rendered phone-like photos of this
/// diagonal, px: .0105 of 4032 x 3024; it falls with the root of the markers' size.
const BOARD_NOISE_PX: f64 = 0.0105;
const BOARD_DIAGONAL_PX: f64 = 5040.0;

/// By what the camera's own fit found on its board; never below one, since a job's light is no better than a board's.
pub(super) fn ratio_by_fit(camera: &Profile) -> f64 {
    let [width, height] = camera.image_size_px.map(f64::from);
    let expected = BOARD_NOISE_PX * (BOARD_DIAGONAL_PX / width.hypot(height).max(1.0)).sqrt();
    camera.u_noise_px.map_or(1.0, |found| (found / expected).max(1.0))
}

/// By what the detector states of markers that were photographed: the median; `None` where there are none.
pub(super) fn ratio_by_views<'a>(views: impl Iterator<Item = &'a View>) -> Option<f64> {
    let one = |v: &View| Some((v.covariance_px2.trace() / expected_covariance(&v.corners_px)?.trace()).sqrt());
    median(views.filter_map(one).filter(|r| r.is_finite()))
}

/// By a job's photo and what its adjustment found.
pub(in crate::job) fn ratio_by_photo(problem: &Problem, scene: &Scene, j: usize) -> Option<f64> {
    scene.photos[j].as_ref()?;
    Some(ratio_by_views(problem.photos[j].views.iter())? * scene.variance.sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_camera_without_a_fit_is_as_expected_and_a_noisy_one_so_much_noisier() {
        let text = include_str!("../../../../models/cameras/demo-phone.toml");
        let mut camera = Profile::from_toml(text, "demo-phone").unwrap();
        camera.u_noise_px = None;
        assert!((ratio_by_fit(&camera) - 1.0).abs() < 1e-12);
        camera.image_size_px = [4032, 3024];
        camera.u_noise_px = Some(0.0525);
        assert!((ratio_by_fit(&camera) - 5.0).abs() < 1e-9);
        camera.u_noise_px = Some(0.001);
        assert!((ratio_by_fit(&camera) - 1.0).abs() < 1e-12);
    }
}
