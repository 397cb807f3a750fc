//! What becomes of a verified job: sealed evidence, copies with masked photos,
//! measured again, audits of whole archives, and what an archive tells.

use baywitness_measuring::{folder, input, job, num, photo, quantity, record, verdict};
use baywitness_reports::report;

pub mod custody;
pub mod evidence;
pub mod trends;
