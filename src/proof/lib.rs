//! What becomes of a verified job: sealed evidence, copies with masked photos,
//! measured again, audits of whole archives, what an archive tells, and the log
//! of every attempt.

use baywitness_measuring::{folder, input, job, num, photo, quantity, record, verdict};
use baywitness_reports::report;
pub(crate) use baywitness_words as words;

pub mod custody;
pub mod evidence;
pub mod transparency;
pub mod trends;

/// That something cannot be done with a file: `read`, `write`, `make` (a folder), `rename`, `remove`, `lock`,
/// `protect`, `key` (read one), `random` (get random numbers for it).
fn cannot(doing: &str, path: &std::path::Path, why: &std::io::Error) -> words::Phrase {
    words::phrase!("evidence-cannot", doing = doing, path = path.display().to_string(), why = why.to_string())
}
