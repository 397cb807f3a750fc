//! From light to a picture as a phone writes it: lens blur and colour fringes,
//! merged frames, sensor with its own pattern and colour mosaic, local tone mapping, tone curve,
//! noise reduction, sharpening, JPEG with EXIF. What a scene's `[insides]` does
//! not ask for is not done.

mod blur;
mod denoise;
mod exif;
mod forge;
mod halo;
mod jpeg;
mod local_tone;
mod mark;
mod mosaic;
mod pattern;
mod resample;
mod saved;
mod sensor;
mod tone;

pub(crate) use exif::Record;
pub(crate) use forge::put_in;
pub(crate) use jpeg::{compress, smaller};
pub(crate) use mark::mark;
pub(crate) use saved::saved;
pub(crate) use sensor::{Exposure, expose};
pub use tone::Picture;
pub(crate) use tone::develop;
