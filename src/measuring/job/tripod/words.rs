//! What a photo of the tripod is, in one line.

use super::{Between, Seen, Untold};
use crate::marker::Kit;
use crate::verdict::body_called;
use crate::words::{Phrase, phrase};

impl Seen {
    /// In one line; the kit says what a carrier is.
    pub fn phrase(&self, kit: &Kit) -> Phrase {
        match self {
            Seen::First => phrase!("moves-tripod-first"),
            Seen::NewPlace => phrase!("moves-tripod-new-place"),
            Seen::SamePlace => phrase!("moves-tripod-same-place"),
            Seen::Unsure => phrase!("moves-tripod-unsure"),
            Seen::Moves(between) => phrase!("moves-tripod-skipped", why = between.phrase(kit)),
            Seen::Useless(why) => phrase!("moves-tripod-skipped", why = why.phrase()),
        }
    }
}

impl Between {
    fn phrase(&self, kit: &Kit) -> Phrase {
        match self {
            Between::Rest => phrase!("moves-tripod-rest"),
            Between::Stand => phrase!("moves-tripod-stand"),
            Between::Tripod => phrase!("moves-tripod-itself"),
            Between::Vehicle => phrase!("moves-tripod-vehicle"),
            Between::One(name) => phrase!("moves-tripod-one", body = body_called(kit, name)),
            Between::Untold(why) => why.phrase(),
        }
    }
}

impl Untold {
    fn phrase(self) -> Phrase {
        match self {
            Untold::NoStand => phrase!("moves-tripod-no-stand"),
            Untold::NothingFixed => phrase!("moves-tripod-nothing-fixed"),
            Untold::OtherSize => phrase!("moves-tripod-other-size"),
        }
    }
}
