//! Which way to move the stand, in the words a person at the stand needs.

use crate::geom::rad;
use crate::quantity::Quantity;
use crate::words::{Phrase, phrase};

use super::words::{amount, figure};

/// How far a stand reaches from its aim point; turns angles into mm at its ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StandSize {
    /// Half of its width, mm.
    pub half_width_mm: f64,
    /// Half of its height, mm.
    pub half_height_mm: f64,
}

/// The move that brings `value` to `nominal` (`move_by` = nominal - value), in words.
pub fn correction(quantity: Quantity, move_by: f64, stand: &StandSize) -> Phrase {
    use Quantity as Q;
    let (by, angle) = (figure(move_by.abs(), 0), figure(move_by.abs(), 2));
    let reach = |half_mm: f64| figure(half_mm * rad(move_by.abs()).sin(), 0);
    let up = move_by > 0.0;
    let way = |positive: &'static str, negative: &'static str| if up { positive } else { negative };
    match quantity {
        Q::Yaw => phrase!("moves-turn", way = way("left", "right"), angle = angle, ends = reach(stand.half_width_mm)),
        Q::LateralOffset | Q::LateralFromNose => phrase!("moves-sideways", way = way("left", "right"), by = by),
        Q::Distance | Q::Range => phrase!("moves-along", way = way("away", "towards"), by = by),
        Q::Height | Q::HeightFromNose => phrase!("moves-height", way = way("up", "down"), by = by),
        Q::Pitch | Q::TargetTiltGravity => {
            let top = reach(2.0 * stand.half_height_mm);
            phrase!("moves-tilt", way = way("away", "towards"), angle = angle, top = top)
        }
        Q::Roll | Q::TargetLevelGravity => {
            let end = reach(2.0 * stand.half_width_mm);
            phrase!("moves-level", way = way("lower", "raise"), angle = angle, end = end)
        }
        Q::SideRangeDifference => phrase!("moves-side-ranges", way = way("longer", "shorter"), by = by),
        Q::SteeringAngle => phrase!("moves-steering", way = way("left", "right"), angle = angle),
        Q::PlatePlumbLeft | Q::PlatePlumbRight | Q::PlatePlumbFrontLeft | Q::PlatePlumbFrontRight => {
            phrase!("moves-plate", way = way("forwards", "rearwards"), angle = angle)
        }
        // Of the vehicle: nothing to move at the stand.
        _ => {
            let by = amount(move_by.abs(), quantity.unit(), [2, 2]);
            phrase!("moves-vehicle", quantity = quantity.phrase(), by = by)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    const STAND: StandSize = StandSize { half_width_mm: 750.0, half_height_mm: 300.0 };

    #[test]
    fn a_stand_at_1278_that_must_be_at_1300_moves_22_away() {
        // Common practice, no source.
        let words = correction(Quantity::Distance, 1300.0 - 1278.0, &STAND).say(Language::English);
        assert_eq!(words, "Move the stand 22 mm away from the vehicle.");
    }

    #[test]
    fn words_agree_with_the_signs_of_iso_8855() {
        // Too far left: to the right.
        assert!(
            correction(Quantity::LateralOffset, -12.0, &STAND)
                .say(Language::English)
                .contains("12 mm to the vehicle's right")
        );
        // Yaw + turns the target's x axis to the left, so its left end (+y)
        // came nearer to the vehicle: it must go away.
        let yaw = crate::geom::Attitude { yaw_deg: 0.8, ..Default::default() };
        let left_end = yaw.rotation() * nalgebra::Vector3::new(0.0, 750.0, 0.0);
        assert!(left_end.x < 0.0, "left end towards the vehicle");
        let words = correction(Quantity::Yaw, -0.8, &STAND).say(Language::English);
        assert!(words.contains("vehicle's left 10 mm away from the vehicle"), "{words}");
        // Pitch + leans the top away: the correction is towards the vehicle.
        let pitch = crate::geom::Attitude { pitch_deg: 1.0, ..Default::default() };
        let top = pitch.rotation() * nalgebra::Vector3::new(0.0, 0.0, 300.0);
        assert!(top.x > 0.0, "top away from the vehicle");
        assert!(
            correction(Quantity::Pitch, -1.0, &STAND).say(Language::English).contains("top 10 mm towards the vehicle")
        );
        // Roll + has the right side down: raise it.
        assert!(
            correction(Quantity::Roll, -0.5, &STAND)
                .say(Language::English)
                .contains("raise its end on the vehicle's right by 13 mm")
        );
        // A longer left range means the left end is away: bring it towards.
        assert!(
            correction(Quantity::SideRangeDifference, -5.0, &STAND)
                .say(Language::English)
                .contains("towards the vehicle")
        );
    }
}
