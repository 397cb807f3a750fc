//! Photos: decoding to luma, EXIF, digest.

mod exif;
mod luma;

pub use exif::{Exif, Orientation};
pub use luma::Luma;
