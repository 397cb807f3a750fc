//! Rows that are read one after another while the hand turns the camera.
//!
//! A sensor without a shutter exposes its rows in turn, so that each row has an
//! attitude of its own (Forssen and Ringaby, Rectifying rolling shutter video
//! from hand-held devices, 2010: over some tens of milliseconds a hand's
//! motion is a turn at an even rate). The camera's place stays: a hand that
//! turns by a degree per second hardly moves it in that time.

use nalgebra::{UnitQuaternion, Vector3};

/// A turn at an even rate; the middle row's moment is zero.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turning {
    /// About the stored grid's axes (right, down, ahead) by the right-hand rule, radians per second.
    pub rate_rad_s: Vector3<f64>,
    /// From the first row's moment to the last one's, seconds.
    pub readout_s: f64,
    /// Rows of the stored grid.
    pub rows: u32,
}

impl Turning {
    /// None where nothing turns or all rows are read at once.
    pub(crate) fn of(rate_deg_s: [f64; 3], readout_s: f64, rows: u32) -> Option<Self> {
        let turns = readout_s > 0.0 && rows > 1 && rate_deg_s.iter().any(|r| *r != 0.0);
        turns.then(|| Turning { rate_rad_s: rate_deg_s.map(f64::to_radians).into(), readout_s, rows })
    }

    /// The moment of a row (any real number), seconds.
    pub fn moment_s(&self, row: f64) -> f64 {
        let last = f64::from(self.rows) - 1.0;
        (row / last - 0.5) * self.readout_s
    }

    /// The camera's attitude at a row's moment, seen from the middle row's.
    pub fn middle_from_row(&self, row: f64) -> UnitQuaternion<f64> {
        UnitQuaternion::from_scaled_axis(self.rate_rad_s * self.moment_s(row))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_middle_row_stands_still_and_signs_are_as_told() {
        let of = |rate| Turning::of(rate, 0.02, 3000).unwrap();
        let turning = of([3.0, -5.0, 7.0]);
        assert!(turning.middle_from_row(1499.5).angle() < 1e-15);
        assert!((turning.moment_s(2999.0) - 0.01).abs() < 1e-15);
        // Late rows: about right looks up (-y), about down looks right (+x), about ahead turns right downwards.
        let late = |rate, v| of(rate).middle_from_row(2999.0) * v;
        assert!(late([1.0, 0.0, 0.0], Vector3::z()).y < 0.0);
        assert!(late([0.0, 1.0, 0.0], Vector3::z()).x > 0.0);
        assert!(late([0.0, 0.0, 1.0], Vector3::x()).y > 0.0);
        // 10 ms at one degree per second.
        assert!((of([1.0, 0.0, 0.0]).middle_from_row(2999.0).angle().to_degrees() - 0.01).abs() < 1e-12);
        assert!(Turning::of([0.0; 3], 0.02, 3000).is_none() && Turning::of([1.0; 3], 0.0, 3000).is_none());
    }
}
