//! Why a photo did not take part.

use crate::photo::Clearness;
use crate::words::{Phrase, phrase};

/// Why a photo did not take part.
#[derive(Debug, Clone, PartialEq)]
pub enum PhotoProblem {
    /// Its size is not the camera file's.
    Resized(Phrase),
    /// Its EXIF names another camera, or no camera file fits.
    OtherCamera(Phrase),
    /// No marker of the kit was found.
    NoMarkers(Unseen),
    /// It shares no carrier with the other photos.
    NotLinked,
    /// It shows nothing that stood still while the stand was moved.
    NotTied {
        /// The move after which it was taken.
        after_move: u32,
    },
    /// Stand or vehicle had moved when it was taken.
    OtherPhase,
}

impl PhotoProblem {
    /// Why, and the remedy: what stands behind the photo's name and a colon.
    pub fn phrase(&self) -> Phrase {
        match self {
            PhotoProblem::Resized(why) | PhotoProblem::OtherCamera(why) => why.clone(),
            PhotoProblem::NoMarkers(unseen) => phrase!("findings-photo-no-markers", why = unseen.phrase()),
            PhotoProblem::NotLinked => phrase!("findings-photo-not-linked"),
            PhotoProblem::NotTied { after_move } => phrase!("findings-photo-not-tied", move = *after_move),
            PhotoProblem::OtherPhase => phrase!("findings-photo-other-phase"),
        }
    }
}

/// Why no marker of the kit was found in a photo.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unseen {
    /// Its markers are others.
    OtherKit,
    /// Each of its markers is one of two prints that another photo, or this one, shows.
    Doubled,
    /// What its mirror image shows.
    Mirrored,
    /// Too dark.
    Dark,
    /// Blurred.
    Blurred,
    /// Sharp: markers would have been found.
    NotInView,
    /// Too little in it to tell.
    CannotTell,
}

impl Unseen {
    fn phrase(self) -> Phrase {
        match self {
            Unseen::OtherKit => phrase!("findings-unseen-other-kit"),
            Unseen::Doubled => phrase!("findings-unseen-doubled"),
            Unseen::Mirrored => phrase!("findings-unseen-mirrored"),
            Unseen::Dark => phrase!("findings-unseen-dark"),
            Unseen::Blurred => phrase!("findings-unseen-blurred"),
            Unseen::NotInView => phrase!("findings-unseen-not-in-view"),
            Unseen::CannotTell => phrase!("findings-unseen-cannot-tell"),
        }
    }

    /// By what the picture itself shows.
    pub fn by(clearness: Option<&Clearness>) -> Self {
        match clearness {
            Some(c) if c.is_dark() => Unseen::Dark,
            Some(c) if c.is_blurred() => Unseen::Blurred,
            Some(c) if c.is_sharp() => Unseen::NotInView,
            _ => Unseen::CannotTell,
        }
    }
}
