//! Photos: decoding to luma, EXIF, digest, and upright copies for people.
//!
//! A picture is recognised by its content, whatever its name says. Pixels stay
//! on the stored grid; EXIF orientation turns only the copies for people. A
//! file that cannot be decoded to its last block is an [`Error`], never a
//! picture with a grey rest.

mod clearness;
mod compressed;
mod content;
mod error;
mod exif;
mod exif_reader;
mod exif_time;
#[cfg(feature = "heic")]
mod heic;
mod jpeg;
mod jpeg_codes;
mod jpeg_inverse;
mod jpeg_progressive;
mod jpeg_scan;
mod jpeg_source;
mod jpeg_structure;
mod jpeg_tables;
mod light;
mod likeness;
mod limits;
mod luma;
mod made;
mod orientation;
mod png_rows;
mod preview;
mod read;
mod size;
mod steps;
mod traces;
mod turned;

pub use clearness::Clearness;
pub use compressed::compressed;
pub use content::{Kind, is_picture};
pub use error::Error;
pub use exif::Exif;
pub use exif_reader::private_values;
pub use light::Light;
pub use limits::{MAX_BYTES, MAX_PIXELS};
pub use luma::Luma;
pub use orientation::Orientation;
pub use preview::{Preview, preview};
pub use read::{Photo, decode, exif, read, read_bytes, recognise, sha256};
pub use steps::Steps;
pub use traces::{Edit, Mark, Traces};
