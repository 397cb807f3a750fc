//! How far stand or vehicle moved between two states of a bay.

/// How far a body's two poses differ.
#[derive(Debug, Clone, PartialEq)]
pub struct Moved {
    /// The stand, else the vehicle.
    pub is_stand: bool,
    /// The carrier's name, or "vehicle".
    pub name: String,
    /// Distance between the two positions, mm.
    pub mm: f64,
    /// Angle between the two attitudes, degrees.
    pub degrees: f64,
    /// 1 sigma of the position's difference along its worst direction, mm.
    pub u_mm: f64,
    /// Likewise of the attitude, degrees.
    pub u_degrees: f64,
    /// Chance of such a difference where nothing moved.
    pub chance: f64,
}

/// Smaller moves are below what photos of a bay can tell from lens errors.
const LEAST_MM: f64 = 2.5;
const LEAST_DEG: f64 = 0.12;
const CHANCE: f64 = 1e-4;

impl Moved {
    /// Whether the body has moved.
    pub fn is_proven(&self) -> bool {
        self.chance < CHANCE && self.is_large()
    }

    /// Whether the difference is larger than what photos tell from lens errors.
    pub fn is_large(&self) -> bool {
        self.mm > LEAST_MM || self.degrees > LEAST_DEG
    }
}
