//! From light to a picture as a phone writes it: lens blur, sensor, tone
//! curve, noise reduction, sharpening, JPEG with EXIF.

mod blur;
mod exif;
mod jpeg;
mod sensor;
mod tone;

pub(crate) use exif::Record;
pub(crate) use jpeg::{compress, smaller};
pub(crate) use sensor::{Exposure, expose};
pub use tone::Picture;
pub(crate) use tone::develop;
