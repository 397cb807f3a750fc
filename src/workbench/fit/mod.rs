//! Fitting a camera to photos of a board.
//!
//! The order of the files is the order of the work: `target` is the board,
//! `chessboard`, `saddle` and
//! `seen` what photos show of it, `record` which photos belong together,
//! `start` a first guess, `state`, `eye`, `equations`, `normal`, `spreads` and `adjust` the
//! bundle adjustment, `reject` the photos that disagree; `field`, `halves`,
//! `coverage` and `advice` judge the result; `words` and `page` tell it. Without
//! a board, `on_kit` fits a camera to ordinary photos of a surveyed kit.

mod adjust;
mod adjustment;
mod advice;
mod camera_fit;
mod chessboard;
mod coverage;
mod equations;
mod eye;
mod field;
mod fitted;
mod halves;
mod look;
mod normal;
mod on_kit;
mod page;
mod record;
mod reject;
mod saddle;
#[cfg(test)]
mod sampled;
mod seen;
mod spreads;
mod start;
mod state;
mod target;
mod trust;
mod words;

use crate::shown::further;
use crate::words::{Language, Phrase, phrase};

pub use camera_fit::{Options, fit_camera};
pub use coverage::{CELLS, Coverage};
pub use field::{FieldPoint, GRID};
pub use fitted::{Advice, CameraFit, FittedPhoto};
pub use halves::Halves;
pub use look::look;
pub use on_kit::{KitFit, KitPhoto, fit_on_kit, look_at_kit};
pub use page::page;
pub use reject::Rejected;
pub use seen::BoardPhoto;
pub use words::words;

/// Why no camera could be fitted.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum Error {
    /// A photo can't be read.
    Photo(#[from] crate::photo::Error),
    /// Too few photos show the board.
    TooFew {
        /// Photos that are left.
        left: usize,
        /// Photos in all.
        photos: usize,
        /// Why the others are not.
        why: Vec<Phrase>,
    },
    /// No focal length explains the photos.
    NoStart {
        /// Photos that were tried.
        photos: usize,
    },
    /// The photos of a kit can't be adjusted.
    Kit(Phrase),
    /// The adjustment failed.
    NotSettled {
        /// Photos that took part.
        photos: usize,
    },
}

impl Error {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            Error::Photo(e) => e.phrase(),
            Error::TooFew { left, photos, why } => {
                let few = phrase!("fit-no-too-few", left = *left, photos = *photos);
                further(few, why.clone())
            }
            Error::NoStart { photos } => phrase!("fit-no-start", photos = *photos),
            Error::Kit(why) => phrase!("fit-no-kit", why = why.clone()),
            Error::NotSettled { photos } => phrase!("fit-no-settled", photos = *photos),
        }
    }

    /// Whether the input could not be read, rather than not be fitted.
    pub fn unreadable(&self) -> bool {
        matches!(self, Error::Photo(_))
    }
}
