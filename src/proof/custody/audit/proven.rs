//! What a masked copy proves of its photos' digests.
//!
//! Masked photos have digests of their own; those of the photos that they were stand in the copy's result, and whoever wrote that
//! may have written any. The log binds them: its entry has been made of photos, and of the result's bytes.

use std::fs;
use std::path::Path;

use super::judged::{COPY, Judged};
use crate::evidence::{PAYLOAD, RESULT, is_one_file, unpack};
use crate::record::JobRecord;
use crate::transparency::{AttemptProof, PROOF_FILE};

/// Whether a line is of a masked copy.
pub(super) fn is_copy(line: &Judged) -> bool {
    line.evidence.as_ref().is_some_and(|evidence| evidence.starts_with(COPY))
}

/// The entry of the log whose proof a copy holds, where it is that of its own result; whether the log has it is for
/// who reads the log to say.
pub(super) fn proven_entry(line: &Judged) -> Option<Vec<u8>> {
    let path = Path::new(&line.path);
    if !is_one_file(path) || path.is_dir() {
        return entry(&path.join(PAYLOAD));
    }
    let room = tempfile::tempdir().ok()?;
    entry(&unpack(path, room.path()).ok()?.join(PAYLOAD))
}

fn entry(payload: &Path) -> Option<Vec<u8>> {
    let proof = AttemptProof::read(&fs::read_to_string(payload.join(PROOF_FILE)).ok()?).ok()?;
    let result = fs::read(payload.join(RESULT)).ok()?;
    let record = JobRecord::from_json(&result).ok()?;
    let own = proof.check().ok()?.attempt.differs_from(&record, &result).is_empty();
    own.then_some(proof.entry)
}
