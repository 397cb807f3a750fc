//! How far a stand stands off.

use serde::Deserialize;

/// By how much the stand is off, in the terms of the set-up sheet.
#[derive(Debug, Clone, Copy, PartialEq, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct StandError {
    /// Too far from the vehicle positive, mm.
    pub distance_mm: f64,
    /// Too far to the vehicle's left positive, mm.
    pub lateral_mm: f64,
    /// Too high positive, mm.
    pub height_mm: f64,
    /// Turned to the left positive, degrees.
    pub yaw_deg: f64,
    /// Top away from the vehicle positive, degrees.
    pub pitch_deg: f64,
    /// Vehicle's right side down positive, degrees.
    pub roll_deg: f64,
}

impl From<[f64; 6]> for StandError {
    /// Distance, offset, height (mm), yaw, pitch, roll (degrees).
    fn from([distance_mm, lateral_mm, height_mm, yaw_deg, pitch_deg, roll_deg]: [f64; 6]) -> Self {
        StandError { distance_mm, lateral_mm, height_mm, yaw_deg, pitch_deg, roll_deg }
    }
}

impl StandError {
    /// Both deviations together.
    pub fn plus(&self, other: &StandError) -> StandError {
        StandError {
            distance_mm: self.distance_mm + other.distance_mm,
            lateral_mm: self.lateral_mm + other.lateral_mm,
            height_mm: self.height_mm + other.height_mm,
            yaw_deg: self.yaw_deg + other.yaw_deg,
            pitch_deg: self.pitch_deg + other.pitch_deg,
            roll_deg: self.roll_deg + other.roll_deg,
        }
    }
}
