//! A camera on a tripod that takes a photo every few seconds while somebody
//! turns the stand's screws: which photos are worth keeping.
//!
//! Two photos in a row that agree show the stand at rest. Whether it is another
//! place than that of the photo kept last is asked of both of them, against the
//! first photo of that place: so noise of one photo begins no place, and a stand
//! that creeps more slowly than two photos show ends up as a new place all the same.

mod body;
mod frame;
mod whole;
mod words;

pub use frame::{Between, FALSE_MOTION, Frame, Untold};

use crate::folder::Stands;
use crate::marker::Kit;

/// What is known of the tripod's photos so far.
#[derive(Debug, Clone, Default)]
pub struct Tripod {
    /// The photo before.
    last: Option<Frame>,
    /// The first photo of the place where the stand was seen at rest last.
    origin: Option<Frame>,
    /// Whether nothing but noise was seen since that place was found.
    resting: bool,
}

/// What a photo of the tripod is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Seen {
    /// The first one: the next tells whether anything moves.
    First,
    /// At rest where the stand was not before.
    NewPlace,
    /// At rest where it was at rest before.
    SamePlace,
    /// It agrees with the photo before, but only one of the two says that the stand stands elsewhere: the next one tells.
    Unsure,
    /// Something moved since the photo before.
    Moves(Between),
    /// It shows too little.
    Useless(Untold),
}

impl Seen {
    /// Where the stand is at rest, where it is.
    pub fn stands(&self) -> Option<Stands> {
        match self {
            Seen::NewPlace => Some(Stands::Elsewhere),
            Seen::SamePlace => Some(Stands::There),
            Seen::First | Seen::Unsure | Seen::Moves(_) | Seen::Useless(_) => None,
        }
    }
}

impl Tripod {
    /// Goes on where a photo was kept before: its place is known.
    pub fn resumed(kept: Frame) -> Self {
        Tripod { last: Some(kept.clone()), origin: Some(kept), resting: true }
    }

    /// Looks at the next photo.
    pub fn next(&mut self, frame: Frame, kit: &Kit) -> Seen {
        // Somebody stands before the stand: the photo before stays the one to compare with.
        if let Err(why) = frame.shows(kit) {
            return Seen::Useless(why);
        }
        let Some(last) = self.last.replace(frame.clone()) else { return Seen::First };
        let between = last.until(&frame, kit);
        if between != Between::Rest {
            self.resting = false;
            return Seen::Moves(between);
        }
        let Some(origin) = &self.origin else { return self.arrived(frame) };
        match (origin.until(&last, kit), origin.until(&frame, kit)) {
            (_, Between::Rest) => {
                self.resting = true;
                Seen::SamePlace
            }
            // A tripod that sinks a hair from photo to photo, while nothing else was ever seen to move.
            (_, Between::Tripod) if self.resting => {
                self.origin = Some(frame);
                Seen::SamePlace
            }
            (Between::Rest, _) => Seen::Unsure,
            _ => self.arrived(frame),
        }
    }

    fn arrived(&mut self, frame: Frame) -> Seen {
        self.origin = Some(frame);
        self.resting = true;
        Seen::NewPlace
    }
}
