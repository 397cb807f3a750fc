//! Rows that are read one after another while the hand turns.

use nalgebra::Vector2;

use crate::geom::rad;

/// From the first row to the last where a camera file states nothing, ms: phones take 10 to 30
/// (common practice, no source).
const USUAL_READ_OUT_MS: f64 = 20.0;
/// How fast an unsteady hand turns a phone about each axis while it takes a photo, 1 sigma, deg/s: hands do
/// .5 to 3 (common practice, no source). How fast this one did is found from the photos.
const USUAL_TURN_DEG_PER_S: f64 = 3.0;

/// How a camera reads its picture; absent values are those of a phone in a hand.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct ReadOut {
    /// From the first row to the last, ms; 0: all at once.
    pub read_out_ms: Option<f64>,
    /// 1 sigma of how fast the camera turns about each axis meanwhile, deg/s; 0: it stands on a tripod.
    pub u_turn_deg_per_s: Option<f64>,
}

impl ReadOut {
    /// Of a camera whose photos showed such turns: as usual, but where they are larger than a hand's usual ones.
    pub fn of_turns(u_turn_rad: f64) -> Self {
        let usual = ReadOut::default();
        let rate = u_turn_rad.to_degrees() / (USUAL_READ_OUT_MS / 1000.0);
        ReadOut { u_turn_deg_per_s: (u_turn_rad > usual.u_turn_rad()).then_some(rate), ..usual }
    }

    /// 1 sigma of how far the camera turns about each axis from the first row to the last, rad.
    pub fn u_turn_rad(&self) -> f64 {
        let seconds = self.read_out_ms.unwrap_or(USUAL_READ_OUT_MS) / 1000.0;
        rad(self.u_turn_deg_per_s.unwrap_or(USUAL_TURN_DEG_PER_S) * seconds)
    }
}

/// When a pixel of a stored picture was read, in units of the read-out and from its middle: -0.5 in the
/// first row, 0.5 in the last.
///
/// A sensor's rows run along its longer side. Phones store them so and say in the photo's record
/// how to turn it; a picture that is stored upright was turned by the program that stored it, and
/// its columns are the sensor's rows. From which end they were read does not matter: turns to
/// either side are equally likely.
pub fn moment_of_read_out(image_size_px: [u32; 2], pixel: &Vector2<f64>) -> f64 {
    let [width, height] = image_size_px.map(f64::from);
    let (at, rows) = if width >= height { (pixel.y, height) } else { (pixel.x, width) };
    (at - (rows - 1.0) / 2.0) / rows
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::camera::{Lens, LensModel, PerPhoto, Profile};

    #[test]
    fn rows_are_the_sensors_however_the_picture_is_stored() {
        let lens =
            Lens { model: LensModel::BrownConrady, focal_px: [100.0; 2], centre_px: [0.0; 2], distortion: [0.0; 5] };
        let camera = |image_size_px| Profile {
            name: "c".into(),
            lens,
            image_size_px,
            u_noise_px: None,
            covariance: None,
            per_photo: PerPhoto { u_focal_relative: 0.0, u_centre_px: 0.0 },
            read_out: ReadOut::default(),
            exif: None,
        };
        let corner = Vector2::new(399.5, -0.5);
        assert!((camera([400, 300]).moment(&corner) + 0.5).abs() < 1e-12);
        assert!((camera([400, 500]).moment(&corner) - 0.5).abs() < 1e-12);
        assert!((ReadOut::default().u_turn_rad() - rad(0.06)).abs() < 1e-12);
        assert_eq!(ReadOut::of_turns(rad(0.05)), ReadOut::default());
        assert!((ReadOut::of_turns(rad(0.16)).u_turn_rad() - rad(0.16)).abs() < 1e-12);
    }
}
