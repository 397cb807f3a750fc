//! Names of quantities and what their signs mean, in the page's language.

use crate::quantity::Quantity;
use crate::words::{Language, phrase, say};

/// The name, with the datum that it is measured from.
pub(super) fn quantity_words(language: Language, quantity: Quantity, from: Option<&str>) -> String {
    // A datum is named once.
    let (shown, datum) = match (quantity, from) {
        (Quantity::HeightFromNose, from) => (Quantity::Height, from.or(Some("nose"))),
        (Quantity::LateralFromNose, from) => (Quantity::LateralOffset, from.or(Some("nose"))),
        (other, from) => (other, from),
    };
    let name = phrase!("verdict-quantity", quantity = shown.name());
    match datum {
        Some(datum) => say!(language, "page-quantity-from", name = name, datum = datum),
        None => name.say(language),
    }
}

/// What the sign of a value means; nothing where it means nothing.
pub(super) fn side_words(language: Language, quantity: Quantity, value: f64) -> String {
    side(quantity, value > 0.0).map(|side| say!(language, "page-side", side = side)).unwrap_or_default()
}

/// The direction of a sign (vehicle frame, ISO 8855), as the message names it.
fn side(quantity: Quantity, positive: bool) -> Option<&'static str> {
    use Quantity as Q;
    let (negative, positive_side) = match quantity {
        Q::Yaw => (Some("right-end-nearer"), Some("left-end-nearer")),
        Q::LateralOffset | Q::LateralFromNose | Q::ThrustAngle | Q::SteeringAngle => (Some("right"), Some("left")),
        Q::Pitch | Q::TargetTiltGravity => (Some("top-towards"), Some("top-away")),
        Q::Roll | Q::TargetLevelGravity => (Some("left-end-low"), Some("right-end-low")),
        Q::HeightFromNose => (Some("below"), Some("above")),
        Q::SideRangeDifference => (Some("right-longer"), Some("left-longer")),
        Q::Setback => (Some("left-longer"), Some("right-longer")),
        Q::RearToeLeft | Q::RearToeRight | Q::FrontToeLeft | Q::FrontToeRight => (Some("toe-out"), Some("toe-in")),
        Q::PlatePlumbLeft | Q::PlatePlumbRight | Q::PlatePlumbFrontLeft | Q::PlatePlumbFrontRight => {
            (Some("top-rearward"), Some("top-forward"))
        }
        Q::CamberLeft | Q::CamberRight | Q::CamberFrontLeft | Q::CamberFrontRight => {
            (Some("top-inward"), Some("top-outward"))
        }
        Q::BodyPitch => (Some("nose-up"), Some("nose-down")),
        Q::Height => (Some("below-floor"), None),
        Q::Distance | Q::Range => (Some("behind"), None),
        _ => (Some("negative"), None),
    };
    if positive { positive_side } else { negative }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A side that the messages lack would be called by the last of its variants.
    #[test]
    fn every_quantity_has_a_name_of_its_own_in_every_language() {
        for language in Language::ALL {
            let names: std::collections::BTreeSet<String> =
                Quantity::ALL.iter().map(|q| quantity_words(language, *q, None)).collect();
            assert_eq!(names.len(), Quantity::ALL.len(), "{names:?}");
            for (q, value) in Quantity::ALL.iter().flat_map(|q| [(q, -1.0), (q, 1.0)]) {
                assert_ne!(side_words(language, *q, value), "?", "{q:?}");
            }
        }
    }
}
