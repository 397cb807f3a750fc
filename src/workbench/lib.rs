//! What is done on the bench before any job: cameras fitted, marker kits
//! surveyed, wheel plates, gauges and references studied.

use baywitness_measuring::{camera, detect, geom, marker, num, photo, pose, record};
pub(crate) use baywitness_words as words;

pub mod fit;
mod shown;
pub mod survey;
