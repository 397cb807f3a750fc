//! Angles as people state them: ISO 8855 yaw, pitch and roll in degrees.

use nalgebra::{UnitQuaternion, Vector3};

/// Degrees to radians.
pub fn rad(degrees: f64) -> f64 {
    degrees.to_radians()
}

/// Radians to degrees.
pub fn deg(radians: f64) -> f64 {
    radians.to_degrees()
}

/// Yaw, pitch and roll of a body, degrees, with `R = Rz(yaw) Ry(pitch) Rx(roll)`
/// (ISO 8855): yaw + to the left (counter-clockwise from above), pitch + nose
/// of +x down, roll + the right side down.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Attitude {
    /// Rotation about z, degrees.
    pub yaw_deg: f64,
    /// Rotation about the y axis that yaw has turned, degrees.
    pub pitch_deg: f64,
    /// Rotation about the x axis that yaw and pitch have turned, degrees.
    pub roll_deg: f64,
}

impl Attitude {
    /// The angles of a rotation; pitch lies in -90..90 degrees.
    pub fn from_rotation(rotation: &UnitQuaternion<f64>) -> Self {
        let (roll, pitch, yaw) = rotation.euler_angles();
        Attitude { yaw_deg: deg(yaw), pitch_deg: deg(pitch), roll_deg: deg(roll) }
    }

    /// The rotation `Rz(yaw) Ry(pitch) Rx(roll)`.
    pub fn rotation(&self) -> UnitQuaternion<f64> {
        let about = |axis: Vector3<f64>, degrees: f64| UnitQuaternion::from_scaled_axis(axis * rad(degrees));
        about(Vector3::z(), self.yaw_deg) * about(Vector3::y(), self.pitch_deg) * about(Vector3::x(), self.roll_deg)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn positive_angles_turn_the_way_iso_8855_says() {
        let x = Vector3::x();
        let yawed = Attitude { yaw_deg: 1.0, ..Default::default() }.rotation() * x;
        assert!(yawed.y > 0.0, "yaw + turns x to the left");
        let pitched = Attitude { pitch_deg: 1.0, ..Default::default() }.rotation() * x;
        assert!(pitched.z < 0.0, "pitch + lowers the nose of +x");
        let rolled = Attitude { roll_deg: 1.0, ..Default::default() }.rotation() * -Vector3::y();
        assert!(rolled.z < 0.0, "roll + lowers the right side");
    }

    #[test]
    fn angles_survive_the_round_trip() {
        let a = Attitude { yaw_deg: 12.0, pitch_deg: -3.0, roll_deg: 170.0 };
        let b = Attitude::from_rotation(&a.rotation());
        assert!((a.yaw_deg - b.yaw_deg).abs() < 1e-12 && (a.pitch_deg - b.pitch_deg).abs() < 1e-12);
        assert!((a.roll_deg - b.roll_deg).abs() < 1e-12);
    }
}
