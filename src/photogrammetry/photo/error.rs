//! Why a photo could not be read.

/// Why a photo could not be read; each message names the file and the remedy.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// The file system refused.
    #[error("cannot read photo {name}: {source}")]
    Open {
        /// The photo's name.
        name: String,
        /// What the file system said.
        source: std::io::Error,
    },
    /// Nothing in it.
    #[error("photo {name} is empty (0 bytes): copy it from the camera again")]
    Empty {
        /// The photo's name.
        name: String,
    },
    /// More bytes than any photo has.
    #[error("photo {name} has {bytes} bytes, more than {max}: give the camera's own JPEG")]
    TooManyBytes {
        /// The photo's name.
        name: String,
        /// Its size.
        bytes: u64,
        /// The limit.
        max: u64,
    },
    /// Recognised, and no picture that is decoded.
    #[error("photo {name} is {what}: {remedy}")]
    Foreign {
        /// The photo's name.
        name: String,
        /// What the file is.
        what: &'static str,
        /// What to do.
        remedy: &'static str,
    },
    /// More pixels than the limit; also how a decompression bomb ends.
    #[error("photo {name} states {width} x {height} pixels, more than {max} in all: give the camera's own photo")]
    TooManyPixels {
        /// The photo's name.
        name: String,
        /// Stated width.
        width: usize,
        /// Stated height.
        height: usize,
        /// The limit.
        max: usize,
    },
    /// The file ends early.
    #[error("photo {name} is cut off ({detail}): copy it from the camera again")]
    CutOff {
        /// The photo's name.
        name: String,
        /// Where it ends.
        detail: String,
    },
    /// The file contradicts itself.
    #[error("photo {name} is damaged ({detail}): copy it from the camera again")]
    Damaged {
        /// The photo's name.
        name: String,
        /// What is wrong.
        detail: String,
    },
    /// A variant of the format that is not decoded.
    #[error("photo {name} is {what}, which is not decoded: save it as an ordinary JPEG at full size")]
    Unsupported {
        /// The photo's name.
        name: String,
        /// The variant.
        what: String,
    },
}

/// What a decoder found wrong, before the photo's name is known.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Fault {
    CutOff(String),
    Damaged(String),
    Unsupported(String),
    TooManyPixels(usize, usize),
}

impl Fault {
    pub(super) fn of(self, name: &str) -> Error {
        let name = name.to_owned();
        match self {
            Fault::CutOff(detail) => Error::CutOff { name, detail },
            Fault::Damaged(detail) => Error::Damaged { name, detail },
            Fault::Unsupported(what) => Error::Unsupported { name, what },
            Fault::TooManyPixels(width, height) => {
                Error::TooManyPixels { name, width, height, max: super::read::MAX_PIXELS }
            }
        }
    }
}
