//! Which way to move the stand, in the words a person at the stand needs.

use crate::geom::rad;
use crate::quantity::{Quantity, rounded};

/// How far a stand reaches from its aim point; turns angles into mm at its ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StandSize {
    /// Half of its width, mm.
    pub half_width_mm: f64,
    /// Half of its height, mm.
    pub half_height_mm: f64,
}

/// The move that brings `value` to `nominal` (`move_by` = nominal - value), in words.
pub fn correction(quantity: Quantity, move_by: f64, stand: &StandSize) -> String {
    use Quantity as Q;
    let mm = format!("{} mm", rounded(move_by.abs(), 0));
    let degrees = format!("{} deg", rounded(move_by.abs(), 2));
    let at_ends = format!("{} mm", rounded(stand.half_width_mm * rad(move_by.abs()).sin(), 0));
    let at_top = format!("{} mm", rounded(2.0 * stand.half_height_mm * rad(move_by.abs()).sin(), 0));
    match (quantity, move_by > 0.0) {
        (Q::Yaw, true) => format!(
            "Turn the stand by {degrees}: its end on the vehicle's left {at_ends} towards the vehicle, its end on the vehicle's right {at_ends} away from it."
        ),
        (Q::Yaw, false) => format!(
            "Turn the stand by {degrees}: its end on the vehicle's left {at_ends} away from the vehicle, its end on the vehicle's right {at_ends} towards it."
        ),
        (Q::LateralOffset | Q::LateralFromNose, true) => format!("Move the stand {mm} to the vehicle's left."),
        (Q::LateralOffset | Q::LateralFromNose, false) => format!("Move the stand {mm} to the vehicle's right."),
        (Q::Distance | Q::Range, true) => format!("Move the stand {mm} away from the vehicle."),
        (Q::Distance | Q::Range, false) => format!("Move the stand {mm} towards the vehicle."),
        (Q::Height | Q::HeightFromNose, true) => format!("Raise the target by {mm}."),
        (Q::Height | Q::HeightFromNose, false) => format!("Lower the target by {mm}."),
        (Q::Pitch | Q::TargetTiltGravity, true) => {
            format!("Tilt the target by {degrees}: its top {at_top} away from the vehicle against its bottom.")
        }
        (Q::Pitch | Q::TargetTiltGravity, false) => {
            format!("Tilt the target by {degrees}: its top {at_top} towards the vehicle against its bottom.")
        }
        (Q::Roll | Q::TargetLevelGravity, true) => format!(
            "Level the target by {degrees}: lower its end on the vehicle's right by {} mm, or raise the other end by as much.",
            rounded(2.0 * stand.half_width_mm * rad(move_by.abs()).sin(), 0)
        ),
        (Q::Roll | Q::TargetLevelGravity, false) => format!(
            "Level the target by {degrees}: raise its end on the vehicle's right by {} mm, or lower the other end by as much.",
            rounded(2.0 * stand.half_width_mm * rad(move_by.abs()).sin(), 0)
        ),
        (Q::SideRangeDifference, true) => format!(
            "Turn the stand until the left side range is {mm} longer against the right one: its end on the vehicle's left away from the vehicle."
        ),
        (Q::SideRangeDifference, false) => format!(
            "Turn the stand until the left side range is {mm} shorter against the right one: its end on the vehicle's left towards the vehicle."
        ),
        _ => vehicle_side(quantity, move_by),
    }
}

/// Quantities of the vehicle and its plates: nothing to move at the stand.
fn vehicle_side(quantity: Quantity, move_by: f64) -> String {
    use Quantity as Q;
    let amount = rounded(move_by.abs(), 2);
    match quantity {
        Q::SteeringAngle => format!(
            "Turn the steering until the front wheels point {amount} deg further to the vehicle's {}.",
            if move_by > 0.0 { "left" } else { "right" }
        ),
        Q::PlatePlumbLeft | Q::PlatePlumbRight | Q::PlatePlumbFrontLeft | Q::PlatePlumbFrontRight => {
            format!(
                "Turn the plate {amount} deg about its wheel's axle: its top {}.",
                if move_by > 0.0 { "forwards" } else { "rearwards" }
            )
        }
        _ => format!(
            "The {} is off by {amount} {}: this is a matter of the vehicle, not of the stand.",
            quantity.trade_name(),
            quantity.unit().symbol()
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const STAND: StandSize = StandSize { half_width_mm: 750.0, half_height_mm: 300.0 };

    #[test]
    fn a_stand_at_1278_that_must_be_at_1300_moves_22_away() {
        // Common practice, no source.
        let words = correction(Quantity::Distance, 1300.0 - 1278.0, &STAND);
        assert_eq!(words, "Move the stand 22 mm away from the vehicle.");
    }

    #[test]
    fn words_agree_with_the_signs_of_iso_8855() {
        // Too far left: to the right.
        assert!(correction(Quantity::LateralOffset, -12.0, &STAND).contains("12 mm to the vehicle's right"));
        // Yaw + turns the target's x axis to the left, so its left end (+y)
        // came nearer to the vehicle: it must go away.
        let yaw = crate::geom::Attitude { yaw_deg: 0.8, ..Default::default() };
        let left_end = yaw.rotation() * nalgebra::Vector3::new(0.0, 750.0, 0.0);
        assert!(left_end.x < 0.0, "left end towards the vehicle");
        let words = correction(Quantity::Yaw, -0.8, &STAND);
        assert!(words.contains("vehicle's left 10 mm away from the vehicle"), "{words}");
        // Pitch + leans the top away: the correction is towards the vehicle.
        let pitch = crate::geom::Attitude { pitch_deg: 1.0, ..Default::default() };
        let top = pitch.rotation() * nalgebra::Vector3::new(0.0, 0.0, 300.0);
        assert!(top.x > 0.0, "top away from the vehicle");
        assert!(correction(Quantity::Pitch, -1.0, &STAND).contains("top 10 mm towards the vehicle"));
        // Roll + has the right side down: raise it.
        assert!(correction(Quantity::Roll, -0.5, &STAND).contains("raise its end on the vehicle's right by 13 mm"));
        // A longer left range means the left end is away: bring it towards.
        assert!(correction(Quantity::SideRangeDifference, -5.0, &STAND).contains("towards the vehicle"));
    }
}
