//! What can be wrong with a pattern's file or the photos that it should be made from.

use crate::words::{Language, Phrase, phrase};

/// Why there is no pattern.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum Error {
    /// A file that is none, or not whole.
    NotAPattern {
        /// The file's name.
        file: String,
        /// What is wrong with it.
        why: Broken,
    },
    /// Photos of different sizes.
    Sizes {
        /// The photo that differs.
        photo: String,
        /// Its width and height, px.
        size: [usize; 2],
        /// Those of the first.
        first: [usize; 2],
    },
    /// Too few photos.
    Few {
        /// How many there are.
        photos: usize,
        /// How many it takes.
        least: usize,
    },
    /// Photos that do not find themselves in each other's pattern.
    Faint {
        /// How many of them do.
        shown: usize,
        /// Of how many.
        photos: usize,
    },
}

/// What is wrong with a pattern's file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Broken {
    /// It is larger than a pattern may be.
    TooLarge,
    /// Its first line or its keys are others.
    Head(String),
    /// It ends before or after its own count, or runs past its last pixel.
    Body,
}

impl Error {
    /// What went wrong and what to do, in words.
    pub fn phrase(&self) -> Phrase {
        match self {
            Error::NotAPattern { file, why: Broken::TooLarge } => phrase!("pattern-too-large", file = file),
            Error::NotAPattern { file, why: Broken::Head(why) } => phrase!("pattern-no-head", file = file, why = why),
            Error::NotAPattern { file, why: Broken::Body } => phrase!("pattern-not-whole", file = file),
            Error::Sizes { photo, size, first } => phrase!(
                "pattern-sizes",
                photo = photo,
                width = size[0],
                height = size[1],
                first_width = first[0],
                first_height = first[1]
            ),
            Error::Few { photos, least } => phrase!("pattern-few", photos = *photos, least = *least),
            Error::Faint { shown, photos } => phrase!("pattern-faint", shown = *shown, photos = *photos),
        }
    }
}
