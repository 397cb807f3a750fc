//! Lens models with derivatives, and camera files.

mod brown_conrady;
mod exif_match;
mod file;
mod fold;
mod kannala_brandt;
mod lens;
mod profile;

pub use lens::{Lens, LensModel, Projection};
pub use profile::{ExifMatch, PerPhoto, Profile};
