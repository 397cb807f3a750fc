//! Names of quantities in the page's language; what has none of its own there
//! keeps the trade's English name.

use crate::quantity::Quantity;
use crate::report::side;
use crate::web::words::{Words, fill};

/// The name, with the datum that it is measured from.
pub(super) fn quantity_words(words: &Words, quantity: Quantity, from: Option<&str>) -> String {
    use Quantity as Q;
    let name = match quantity {
        Q::Distance | Q::Range => words.q_distance,
        Q::Yaw => words.q_squareness,
        Q::LateralOffset | Q::LateralFromNose => words.q_centring,
        Q::Height | Q::HeightFromNose => words.q_height,
        Q::Pitch => words.q_tilt,
        Q::Roll => words.q_level,
        other => other.trade_name(),
    };
    let datum = match (quantity, from) {
        (Q::HeightFromNose | Q::LateralFromNose, None) => Some("nose"),
        (_, from) => from,
    };
    match datum {
        Some(datum) => fill(words.q_from, &[name, &datum_words(words, datum)]),
        None => name.to_owned(),
    }
}

/// What the sign of a value means; nothing where it means nothing.
pub(super) fn side_words(words: &Words, quantity: Quantity, value: f64) -> String {
    use Quantity as Q;
    let words = match (quantity, value > 0.0) {
        (Q::Yaw, true) => words.side_left_end,
        (Q::Yaw, false) => words.side_right_end,
        (Q::LateralOffset | Q::LateralFromNose | Q::ThrustAngle | Q::SteeringAngle, true) => words.left_word,
        (Q::LateralOffset | Q::LateralFromNose | Q::ThrustAngle | Q::SteeringAngle, false) => words.right_word,
        (Q::Pitch | Q::TargetTiltGravity, true) => words.side_top_away,
        (Q::Pitch | Q::TargetTiltGravity, false) => words.side_top_towards,
        (Q::Roll | Q::TargetLevelGravity, true) => words.side_right_low,
        (Q::Roll | Q::TargetLevelGravity, false) => words.side_left_low,
        (Q::HeightFromNose, true) => words.side_above,
        (Q::HeightFromNose, false) => words.side_below,
        (other, positive) => {
            let language = crate::words::Language::English;
            return side(other, positive).map_or_else(String::new, |s| s.short(language));
        }
    };
    words.to_owned()
}

fn datum_words(words: &Words, datum: &str) -> String {
    match datum {
        "nose" => words.from_nose.to_owned(),
        "front_axle" => words.from_front_axle.to_owned(),
        "rear_axle" => words.from_rear_axle.to_owned(),
        other => other.to_owned(),
    }
}
