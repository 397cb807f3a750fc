//! Why a quantity has no value, in words.

use crate::measure::Undetermined;
use crate::words::{Phrase, phrase};

/// The sentence for it.
pub(crate) fn why_undetermined(why: &Undetermined) -> Phrase {
    match why {
        Undetermined::NotSeen(role) => {
            phrase!("advice-not-seen", body = phrase!("verdict-body", role = role.name()))
        }
        Undetermined::NothingMeasured => phrase!("advice-nothing-measured"),
        Undetermined::NoFloor => phrase!("advice-no-floor"),
        Undetermined::NoFloorHeight => phrase!("advice-no-floor-height"),
        Undetermined::NoCentreline => phrase!("advice-no-centreline"),
        Undetermined::NoWheelbase => phrase!("advice-no-wheelbase"),
        Undetermined::NoNose => phrase!("advice-no-nose"),
        Undetermined::NoDatum => phrase!("advice-no-datum"),
        Undetermined::PlatesAreTheFloor => phrase!("advice-plates-are-the-floor"),
        Undetermined::Leans(role) => {
            phrase!("advice-leans", body = phrase!("verdict-body", role = role.name()))
        }
        Undetermined::ReadingOnly => phrase!("advice-reading-only"),
        Undetermined::Degenerate => phrase!("advice-degenerate"),
    }
}
