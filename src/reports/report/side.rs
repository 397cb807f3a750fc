//! What the sign of a quantity means, in the words of someone at the stand.

use crate::quantity::Quantity;

/// The direction that a sign stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Side {
    /// One to three words for a table cell: `left`, `top away`.
    pub short: &'static str,
    /// Continues the sentence that begins with the amount:
    /// `12 mm` ... `to the vehicle's left`.
    pub long: &'static str,
}

const fn pair(short: &'static str, long: &'static str) -> Side {
    Side { short, long }
}

/// The direction of a positive or negative value; `None` where the sign needs
/// no words (a distance before its datum, a height above the floor).
///
/// Signs are those of the vehicle frame (ISO 8855). A stand before the vehicle
/// whose yaw is positive has turned counter-clockwise seen from above, so its
/// end on the vehicle's left has come nearer; positive pitch leans its top
/// away; positive roll lowers its end on the vehicle's right.
pub fn side(quantity: Quantity, positive: bool) -> Option<Side> {
    sides(quantity)[usize::from(positive)]
}

/// Negative, then positive.
fn sides(quantity: Quantity) -> [Option<Side>; 2] {
    use Quantity as Q;
    match quantity {
        Q::LateralOffset | Q::LateralFromNose | Q::ThrustAngle => {
            both(pair("right", "to the vehicle's right"), pair("left", "to the vehicle's left"))
        }
        Q::SteeringAngle => both(pair("right", "steered to the right"), pair("left", "steered to the left")),
        Q::Yaw => both(
            pair("right end nearer", "turned: the end on the vehicle's right is nearer the vehicle"),
            pair("left end nearer", "turned: the end on the vehicle's left is nearer the vehicle"),
        ),
        Q::Pitch | Q::TargetTiltGravity => both(
            pair("top towards", "tilted: the top leans towards the vehicle"),
            pair("top away", "tilted: the top leans away from the vehicle"),
        ),
        Q::Roll | Q::TargetLevelGravity => both(
            pair("left end low", "out of level: the end on the vehicle's left is lower"),
            pair("right end low", "out of level: the end on the vehicle's right is lower"),
        ),
        Q::SideRangeDifference => both(
            pair("right longer", "longer on the vehicle's right"),
            pair("left longer", "longer on the vehicle's left"),
        ),
        Q::RearToeLeft | Q::RearToeRight | Q::FrontToeLeft | Q::FrontToeRight => {
            both(pair("toe-out", "toe-out"), pair("toe-in", "toe-in"))
        }
        Q::PlatePlumbLeft | Q::PlatePlumbRight | Q::PlatePlumbFrontLeft | Q::PlatePlumbFrontRight => both(
            pair("top rearward", "with the top leaning to the vehicle's rear"),
            pair("top forward", "with the top leaning forward"),
        ),
        Q::CamberLeft | Q::CamberRight | Q::CamberFrontLeft | Q::CamberFrontRight => {
            both(pair("top inward", "with the top leaning inward"), pair("top outward", "with the top leaning outward"))
        }
        Q::Setback => both(
            pair("left longer", "longer on the vehicle's left"),
            pair("right longer", "longer on the vehicle's right"),
        ),
        Q::BodyPitch => both(pair("nose up", "with the nose up"), pair("nose down", "with the nose down")),
        Q::HeightFromNose => both(pair("below", "below it"), pair("above", "above it")),
        Q::Height => [Some(pair("below the floor", "below the floor")), None],
        Q::Distance | Q::Range => [Some(pair("behind it", "on the vehicle's side of it")), None],
        Q::SideRangeLeft
        | Q::SideRangeRight
        | Q::RearTrack
        | Q::Wheelbase
        | Q::RideHeight
        | Q::ArchHeightFrontLeft
        | Q::ArchHeightFrontRight
        | Q::ArchHeightRearLeft
        | Q::ArchHeightRearRight => [Some(pair("negative", "below zero")), None],
    }
}

fn both(negative: Side, positive: Side) -> [Option<Side>; 2] {
    [Some(negative), Some(positive)]
}

/// What lies towards the low and the high end of a drawn scale, and whether
/// the scale runs from high to low so that the vehicle's left is drawn left.
pub(super) struct Ends {
    pub(super) low: &'static str,
    pub(super) high: &'static str,
    pub(super) high_is_left: bool,
}

/// The ends of the scale that a quantity is drawn on.
pub(super) fn ends(quantity: Option<Quantity>) -> Ends {
    use Quantity as Q;
    let plain = |low, high| Ends { low, high, high_is_left: false };
    match quantity {
        Some(Q::Distance | Q::Range) => plain("nearer", "further away"),
        Some(Q::Height | Q::HeightFromNose) => plain("lower", "higher"),
        Some(Q::LateralOffset | Q::LateralFromNose | Q::ThrustAngle | Q::SteeringAngle) => {
            Ends { low: "vehicle's right", high: "vehicle's left", high_is_left: true }
        }
        Some(q) => match sides(q) {
            [Some(low), Some(high)] => plain(low.short, high.short),
            _ => plain("less", "more"),
        },
        None => plain("less", "more"),
    }
}

/// How a value lies against the wanted one, after the amount:
/// `22 mm` ... `nearer than wanted`.
pub(super) fn against_wanted(quantity: Quantity, too_much: bool) -> &'static str {
    use Quantity as Q;
    match (quantity, too_much) {
        (Q::Distance | Q::Range, false) => "nearer than required",
        (Q::Distance | Q::Range, true) => "further away than required",
        (Q::Height | Q::HeightFromNose, false) => "lower than required",
        (Q::Height | Q::HeightFromNose, true) => "higher than required",
        (Q::LateralOffset | Q::LateralFromNose, false) => "further to the vehicle's right than required",
        (Q::LateralOffset | Q::LateralFromNose, true) => "further to the vehicle's left than required",
        (Q::Yaw, false) => "turned, its right end nearer than required",
        (Q::Yaw, true) => "turned, its left end nearer than required",
        (Q::Pitch, false) => "leaning more towards the vehicle than required",
        (Q::Pitch, true) => "leaning more away from the vehicle than required",
        (Q::Roll, false) => "turned, its left end lower than required",
        (Q::Roll, true) => "turned, its right end lower than required",
        (_, false) => "less than required",
        (_, true) => "more than required",
    }
}

#[cfg(test)]
mod tests {
    use nalgebra::Vector3;

    use super::*;
    use crate::geom::Attitude;

    /// Where a point of the stand goes when the stand turns by one degree.
    fn moved(attitude: Attitude, point: Vector3<f64>) -> Vector3<f64> {
        attitude.rotation() * point - point
    }

    const LEFT_END: Vector3<f64> = Vector3::new(0.0, 700.0, 0.0);
    const RIGHT_END: Vector3<f64> = Vector3::new(0.0, -700.0, 0.0);
    const TOP: Vector3<f64> = Vector3::new(0.0, 0.0, 300.0);

    // The frame is ISO 8855: x forward, y left, z up. The stand stands before
    // the vehicle, so smaller x is nearer to it.
    #[test]
    fn positive_yaw_brings_the_left_end_nearer() {
        let yaw = Attitude { yaw_deg: 1.0, ..Default::default() };
        assert!(moved(yaw, LEFT_END).x < -10.0 && moved(yaw, RIGHT_END).x > 10.0);
        assert!(side(Quantity::Yaw, true).unwrap().long.contains("left is nearer"));
        assert!(side(Quantity::Yaw, false).unwrap().long.contains("right is nearer"));
        assert_eq!(against_wanted(Quantity::Yaw, true), "turned, its left end nearer than required");
    }

    #[test]
    fn positive_pitch_leans_the_top_away() {
        let pitch = Attitude { pitch_deg: 1.0, ..Default::default() };
        assert!(moved(pitch, TOP).x > 5.0);
        assert!(side(Quantity::Pitch, true).unwrap().long.contains("away from the vehicle"));
        assert!(side(Quantity::Pitch, false).unwrap().long.contains("towards the vehicle"));
    }

    #[test]
    fn positive_roll_lowers_the_right_end() {
        let roll = Attitude { roll_deg: 1.0, ..Default::default() };
        assert!(moved(roll, RIGHT_END).z < -10.0 && moved(roll, LEFT_END).z > 10.0);
        assert!(side(Quantity::Roll, true).unwrap().long.contains("right is lower"));
        assert!(side(Quantity::Roll, false).unwrap().long.contains("left is lower"));
    }

    #[test]
    fn lateral_left_is_positive() {
        assert_eq!(side(Quantity::LateralOffset, true).unwrap().long, "to the vehicle's left");
        assert_eq!(side(Quantity::LateralOffset, false).unwrap().short, "right");
        assert!(ends(Some(Quantity::LateralOffset)).high_is_left);
    }

    #[test]
    fn every_negative_value_has_words_and_none_says_back() {
        for &quantity in Quantity::ALL {
            let negative = side(quantity, false).expect("a negative value needs words");
            let words = [Some(negative), side(quantity, true)];
            for word in words.into_iter().flatten() {
                assert!(!word.long.split(' ').any(|w| w == "back"), "{quantity:?}");
                assert!(!word.long.contains(['-', '+']) || word.long.starts_with("toe-"), "{quantity:?}");
            }
        }
    }

    #[test]
    fn a_plain_distance_or_height_needs_no_direction() {
        assert_eq!(side(Quantity::Distance, true), None);
        assert_eq!(side(Quantity::Height, true), None);
    }
}
