//! What becomes of a verified job: sealed evidence, copies with masked photos,
//! measured again, audits of whole archives, what an archive tells, and the log
//! of every attempt.

use baywitness_measuring::{credentials, folder, input, job, num, photo, quantity, record, setup, verdict};
use baywitness_reports::report;
pub(crate) use baywitness_words as words;

pub mod custody;
pub mod evidence;
pub mod transparency;
pub mod trends;
