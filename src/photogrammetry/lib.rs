//! Markers found in photos, and one adjustment over all photos: poses, and the
//! quantities of a set-up with their uncertainty. Nothing here decides: values in,
//! estimates out. This is the part that is optimised fully and benchmarked.

use baywitness_foundation::{camera, folder, geom, marker, num, quantity, rendered, setup};
use baywitness_words as words;

pub mod cores;
pub mod detect;
pub mod measure;
pub mod photo;
pub mod pose;
