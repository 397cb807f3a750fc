//! An invented workshop bay, rendered with exact truth. It stands on the same
//! frames and files as the measuring, and on nothing that it is there to test:
//! Cargo itself sees to that.

use baywitness_foundation::{camera, folder, geom, input, marker, quantity, rendered, setup};
use baywitness_words as words;

pub mod synth;
