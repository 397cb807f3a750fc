//! Private values of photos' own records, for who asks for them.

use std::path::Path;

use crate::photo::{private_values, read_bytes, sha256};
use crate::record::JobRecord;

use crate::job::error::Error;

/// Puts into a record what its photos' own records hold of people and things:
/// positions, serial numbers, names. Nobody else puts them there. A photo that is
/// no longer the one that was measured is left out.
///
/// # Errors
/// A photo cannot be read again.
pub fn reveal_private(job: &Path, record: &mut JobRecord) -> Result<(), Error> {
    for photo in &mut record.photos {
        let bytes = read_bytes(&job.join(&photo.file))?;
        let measured = record.inputs.iter().find(|i| i.role == "photo" && i.file == photo.file);
        if measured.is_some_and(|input| input.sha256 == sha256(&bytes)) {
            photo.private_values = private_values(&bytes).into_iter().map(|(name, value)| [name, value]).collect();
        }
    }
    Ok(())
}
