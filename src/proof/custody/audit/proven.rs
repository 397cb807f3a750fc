//! What the proof in an evidence folder shows: that its own attempt is in a log.
//!
//! Of a masked copy it is what binds the digests of its photos: masked photos have digests of their own; those of the photos
//! that they were stand in the copy's result, and whoever wrote that may have written any. The log binds them: its entry has
//! been made of photos, and of the result's bytes.

use std::fs::File;
use std::io::{self, Read};
use std::path::Path;

use super::judged::{COPY, Judged};
use super::logged_when::{before_taken, too_early};
use crate::custody::moments::latest;
use crate::evidence::{MOST_MANIFEST, MOST_SMALL, PAYLOAD, RESULT, is_one_file, read_result, read_small};
use crate::record::JobRecord;
use crate::transparency::{AttemptProof, PROOF_FILE, Shown, VerifierKey, Vouchers};
use crate::words::{Phrase, phrase};

/// The proof of a folder's own attempt.
#[derive(Debug)]
pub struct Proven {
    /// As the file has it.
    pub proof: AttemptProof,
    /// What it shows once its checkpoint's signature is known to be true.
    pub shown: Shown,
    record: JobRecord,
}

impl Proven {
    /// Reads the proof in an evidence folder's payload; `None` where there is none. Nothing of its signatures is checked.
    ///
    /// # Errors
    /// It is no proof, or not that of the result beside it.
    pub fn read(payload: &Path) -> Result<Option<Self>, Phrase> {
        let path = payload.join(PROOF_FILE);
        if !path.is_file() {
            return Ok(None);
        }
        let text = read_small(&path, MOST_SMALL, "small").map_err(|e| e.why)?;
        let result = read_result(payload);
        Proven::of(text, &result.map_err(|e| phrase!("evidence-no-result", why = e.why))?).map(Some)
    }

    fn of(text: Vec<u8>, result: &[u8]) -> Result<Self, Phrase> {
        let text = String::from_utf8(text).map_err(|_| phrase!("evidence-not-utf8"))?;
        let proof = AttemptProof::read(&text)?;
        let shown = proof.check()?;
        let record = JobRecord::from_json(result);
        let record = record.map_err(|e| phrase!("evidence-bad-result", why = e.to_string()))?;
        let differs = shown.attempt.differs_from(&record, result);
        if !differs.is_empty() {
            return Err(phrase!("evidence-attempt-other", parts = differs));
        }
        Ok(Proven { proof, shown, record })
    }

    /// Who vouches for its checkpoint.
    ///
    /// # Errors
    /// A signature of a known key is false, or the log's key is known and did not sign.
    pub fn vouchers(&self, keys: &[VerifierKey]) -> Result<Vouchers, Phrase> {
        self.shown.checkpoint.vouchers(&self.proof.note, keys)
    }

    /// Whether it was logged, and cosigned, once there was something to log.
    ///
    /// # Errors
    /// By the times that the result itself has, it was not.
    pub fn in_time(&self, vouchers: &Vouchers) -> Result<(), Phrase> {
        let Some(latest) = latest(&self.record) else { return Ok(()) };
        let seconds = self.shown.attempt.seconds();
        if too_early(seconds, &latest) {
            return Err(before_taken((self.proof.index, seconds), None, &latest));
        }
        for (witness, time) in &vouchers.witnesses {
            let seen = i64::try_from(*time).unwrap_or(i64::MAX);
            if too_early(seen, &latest) {
                return Err(before_taken((self.proof.index, seen), Some(witness), &latest));
            }
        }
        Ok(())
    }
}

/// Whether a line is of a masked copy.
pub(super) fn is_copy(line: &Judged) -> bool {
    line.evidence.as_ref().is_some_and(|evidence| evidence.starts_with(COPY))
}

/// The proof that the evidence of a line holds; `None` where it holds none, or cannot be read any more.
///
/// # Errors
/// What is wrong with the proof.
pub(super) fn of_line(line: &Judged) -> Result<Option<Proven>, Phrase> {
    let path = Path::new(&line.path);
    if line.evidence.is_none() {
        return Ok(None);
    }
    if !is_one_file(path) || path.is_dir() {
        return Proven::read(&path.join(PAYLOAD));
    }
    match of_one_file(path) {
        Ok([Some(text), Some(result)]) => Proven::of(text, &result).map(Some),
        _ => Ok(None),
    }
}

/// Proof and result of an evidence folder as one file, which was judged before: nothing else of it is read.
fn of_one_file(file: &Path) -> io::Result<[Option<Vec<u8>>; 2]> {
    let wanted = [PROOF_FILE, RESULT].map(|name| format!("/{PAYLOAD}/{name}"));
    let mut found = [None, None];
    let mut tar = tar::Archive::new(File::open(file)?);
    for entry in tar.entries_with_seek()? {
        let entry = entry?;
        let path = String::from_utf8_lossy(&entry.path_bytes()).into_owned();
        // Behind the folder's own name.
        let below = path.find('/').map_or("", |at| &path[at..]);
        if let Some(n) = wanted.iter().position(|name| name == below) {
            let mut bytes = Vec::new();
            entry.take(MOST_MANIFEST).read_to_end(&mut bytes)?;
            found[n] = Some(bytes);
        }
    }
    Ok(found)
}
