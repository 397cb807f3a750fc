//! Input files: from bytes to checked values, and from any mistake to one clear error.
//!
//! Every input is TOML whose first key is `format = "NAME/1"`. A reader walks
//! the document with [`Table`] and [`Value`], which know where they stand, so
//! that each error names file, line, column and key, says what is wrong and
//! what to do. Keys that a reader does not know are errors, never ignored.
//!
//! This room knows TOML and bytes; what the keys mean is known by the rooms
//! that own the files (camera, marker, setup, folder).

mod document;
mod error;
mod file;
mod matrix;
mod nearest;
mod older;
mod table;
mod value;
mod writer;

pub use document::Document;
pub use error::{Error, Place, Problem, as_it_came, is_unseen, printable, turns_writing};
pub use file::hex;
pub use file::{MAX_INPUT_BYTES, SourceFile, digest_of_file};
pub use matrix::covariance;
pub use nearest::{did_you_mean, nearest};
pub use older::older_names_met;
pub use table::Table;
pub use value::Value;
pub use writer::Writer;
