//! What the sign of a quantity means, in the words of someone at the stand.

use crate::quantity::Quantity;
use crate::words::{Language, say};

/// The direction that a sign stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Side(&'static str);

impl Side {
    /// One to three words for a table cell: `left`, `top away`.
    pub fn short(self, language: Language) -> String {
        say!(language, "report-side-short", side = self.0)
    }

    /// Continues what begins with the amount: `12 mm` ... `to the vehicle's left`.
    pub fn long(self, language: Language) -> String {
        say!(language, "report-side-long", side = self.0)
    }
}

/// The direction of a positive or negative value; `None` where the sign needs
/// no words (a distance in front of its datum, a height above the floor).
///
/// Signs are those of the vehicle frame (ISO 8855). A stand in front of the
/// vehicle whose yaw is positive has turned counter-clockwise seen from above,
/// so its end on the vehicle's left has come nearer; positive pitch leans its
/// top away; positive roll lowers its end on the vehicle's right.
pub fn side(quantity: Quantity, positive: bool) -> Option<Side> {
    sides(quantity)[usize::from(positive)].map(Side)
}

/// Negative, then positive.
fn sides(quantity: Quantity) -> [Option<&'static str>; 2] {
    use Quantity as Q;
    let [negative, positive] = match quantity {
        Q::LateralOffset | Q::LateralFromNose | Q::ThrustAngle => ["right", "left"],
        Q::SteeringAngle => ["steered-right", "steered-left"],
        Q::Yaw => ["right-end-nearer", "left-end-nearer"],
        Q::Pitch | Q::TargetTiltGravity => ["top-towards", "top-away"],
        Q::Roll | Q::TargetLevelGravity => ["left-end-low", "right-end-low"],
        Q::SideRangeDifference => ["right-longer", "left-longer"],
        Q::RearToeLeft | Q::RearToeRight | Q::FrontToeLeft | Q::FrontToeRight => ["toe-out", "toe-in"],
        Q::PlatePlumbLeft | Q::PlatePlumbRight | Q::PlatePlumbFrontLeft | Q::PlatePlumbFrontRight => {
            ["top-rearward", "top-forward"]
        }
        Q::CamberLeft | Q::CamberRight | Q::CamberFrontLeft | Q::CamberFrontRight => ["top-inward", "top-outward"],
        Q::Setback => ["left-longer", "right-longer"],
        Q::BodyPitch => ["nose-up", "nose-down"],
        Q::HeightFromNose => ["below", "above"],
        Q::Height => return [Some("below-floor"), None],
        Q::Distance | Q::Range => return [Some("behind"), None],
        Q::SideRangeLeft
        | Q::SideRangeRight
        | Q::RearTrack
        | Q::Wheelbase
        | Q::RideHeight
        | Q::ArchHeightFrontLeft
        | Q::ArchHeightFrontRight
        | Q::ArchHeightRearLeft
        | Q::ArchHeightRearRight => return [Some("negative"), None],
    };
    [Some(negative), Some(positive)]
}

/// What lies towards the low and the high end of a drawn scale, and whether
/// the scale runs from high to low so that the vehicle's left is drawn left.
pub(super) struct Ends {
    pub(super) low: String,
    pub(super) high: String,
    pub(super) high_is_left: bool,
}

/// The ends of the scale that a quantity is drawn on.
pub(super) fn ends(quantity: Option<Quantity>, language: Language) -> Ends {
    use Quantity as Q;
    let end = |end: &str| say!(language, "report-end", end = end);
    let plain = |low, high| Ends { low: end(low), high: end(high), high_is_left: false };
    match quantity {
        Some(Q::Distance | Q::Range) => plain("nearer", "further"),
        Some(Q::Height | Q::HeightFromNose) => plain("lower", "higher"),
        Some(Q::LateralOffset | Q::LateralFromNose | Q::ThrustAngle | Q::SteeringAngle) => {
            Ends { low: end("vehicle-right"), high: end("vehicle-left"), high_is_left: true }
        }
        Some(q) => match sides(q) {
            [Some(low), Some(high)] => {
                Ends { low: Side(low).short(language), high: Side(high).short(language), high_is_left: false }
            }
            _ => plain("less", "more"),
        },
        None => plain("less", "more"),
    }
}

/// How a value lies against the required one, after the amount:
/// `22 mm` ... `nearer than required`.
pub(super) fn against_wanted(quantity: Quantity, too_much: bool, language: Language) -> String {
    say!(language, "report-against-required", way = way(quantity, too_much))
}

fn way(quantity: Quantity, too_much: bool) -> &'static str {
    use Quantity as Q;
    let [less, more] = match quantity {
        Q::Distance | Q::Range => ["nearer", "further"],
        Q::Height | Q::HeightFromNose => ["lower", "higher"],
        Q::LateralOffset | Q::LateralFromNose => ["right", "left"],
        Q::Yaw => ["right-end-nearer", "left-end-nearer"],
        Q::Pitch => ["top-towards", "top-away"],
        Q::Roll => ["left-end-low", "right-end-low"],
        _ => ["less", "more"],
    };
    if too_much { more } else { less }
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

    fn long(quantity: Quantity, positive: bool) -> String {
        side(quantity, positive).unwrap().long(Language::English)
    }

    const LEFT_END: Vector3<f64> = Vector3::new(0.0, 700.0, 0.0);
    const RIGHT_END: Vector3<f64> = Vector3::new(0.0, -700.0, 0.0);
    const TOP: Vector3<f64> = Vector3::new(0.0, 0.0, 300.0);

    // The frame is ISO 8855: x forward, y left, z up. The stand stands in front
    // of the vehicle, so smaller x is nearer to it.
    #[test]
    fn positive_yaw_brings_the_left_end_nearer() {
        let yaw = Attitude { yaw_deg: 1.0, ..Default::default() };
        assert!(moved(yaw, LEFT_END).x < -10.0 && moved(yaw, RIGHT_END).x > 10.0);
        assert!(long(Quantity::Yaw, true).contains("left is nearer"));
        assert!(long(Quantity::Yaw, false).contains("right is nearer"));
        let against = against_wanted(Quantity::Yaw, true, Language::English);
        assert_eq!(against, "turned, its left end nearer than required");
    }

    #[test]
    fn positive_pitch_leans_the_top_away() {
        let pitch = Attitude { pitch_deg: 1.0, ..Default::default() };
        assert!(moved(pitch, TOP).x > 5.0);
        assert!(long(Quantity::Pitch, true).contains("away from the vehicle"));
        assert!(long(Quantity::Pitch, false).contains("towards the vehicle"));
    }

    #[test]
    fn positive_roll_lowers_the_right_end() {
        let roll = Attitude { roll_deg: 1.0, ..Default::default() };
        assert!(moved(roll, RIGHT_END).z < -10.0 && moved(roll, LEFT_END).z > 10.0);
        assert!(long(Quantity::Roll, true).contains("right is lower"));
        assert!(long(Quantity::Roll, false).contains("left is lower"));
    }

    #[test]
    fn lateral_left_is_positive_in_every_language() {
        assert_eq!(long(Quantity::LateralOffset, true), "to the vehicle's left");
        let short = |language, positive| side(Quantity::LateralOffset, positive).unwrap().short(language);
        for (language, left, right) in [
            (Language::English, "left", "right"),
            (Language::German, "links", "rechts"),
            (Language::Spanish, "izquierda", "derecha"),
            (Language::French, "à gauche", "à droite"),
        ] {
            assert_eq!((short(language, true).as_str(), short(language, false).as_str()), (left, right));
        }
        assert!(ends(Some(Quantity::LateralOffset), Language::English).high_is_left);
    }

    #[test]
    fn every_negative_value_has_words_and_none_says_back() {
        for &quantity in Quantity::ALL {
            side(quantity, false).expect("a negative value needs words");
            for word in [side(quantity, false), side(quantity, true)].into_iter().flatten() {
                let long = word.long(Language::English);
                assert!(!long.split(' ').any(|w| w == "back"), "{quantity:?}");
                assert!(!long.contains(['-', '+']) || long.starts_with("toe-"), "{quantity:?}");
                // The default variant is for one of them alone.
                assert_eq!(long == "below zero", word == Side("negative"), "{word:?}");
            }
        }
    }

    #[test]
    fn a_plain_distance_or_height_needs_no_direction() {
        assert_eq!(side(Quantity::Distance, true), None);
        assert_eq!(side(Quantity::Height, true), None);
    }
}
