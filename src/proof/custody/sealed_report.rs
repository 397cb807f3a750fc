//! The report of a sealed job, and what its own signature says.

use std::fs;
use std::path::Path;

use crate::evidence::Standing;

/// The report in an evidence folder's payload.
pub(super) const REPORT_PDF: &str = "report.pdf";
/// The largest report that is read; one of 50 photos has some 20 MB.
const MOST_BYTES: u64 = 1 << 29;

/// How the report of an evidence folder's payload stands; `None` where there is none, as in masked copies, or where what
/// bears its name is no file of a report's size, which is for [`crate::evidence::inspect`] to say.
pub fn sealed_report(payload: &Path) -> Option<Standing> {
    let file = payload.join(REPORT_PDF);
    let is_one = |m: &fs::Metadata| m.is_file() && m.len() <= MOST_BYTES;
    fs::symlink_metadata(&file).ok().filter(is_one)?;
    Some(Standing::of(fs::read(file).ok()?))
}
