//! Lens models with derivatives, and camera files.

mod brown_conrady;
mod distorted;
mod distortion;
mod exif_match;
mod file;
mod fold;
mod kannala_brandt;
mod lens;
mod other_model;
mod profile;
mod read_out;

pub use lens::{Lens, LensModel, Projection};
pub use other_model::OtherModel;
pub use profile::{ExifMatch, PerPhoto, Profile};
pub use read_out::{ReadOut, moment_of_read_out};
