//! The technician's page: the door for phones in the bay.

use baywitness_measuring::{camera, credentials, folder, input, job, marker, photo, quantity, record, setup, verdict};
use baywitness_proof::{custody, evidence, transparency};
use baywitness_reports::report;
pub(crate) use baywitness_words as words;

pub mod web;
