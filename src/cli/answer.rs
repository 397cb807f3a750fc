//! A timestamp authority's answer, as it lies in a file.

use std::path::Path;

use super::output::cannot_read;

/// An answer's name and bytes.
pub(super) fn read_answer(path: &Path) -> Result<(String, Vec<u8>), String> {
    let bytes = std::fs::read(path).map_err(|e| cannot_read(path, &e))?;
    Ok((path.display().to_string(), bytes))
}
