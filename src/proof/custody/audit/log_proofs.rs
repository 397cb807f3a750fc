//! The proofs that an archive's own folders hold, against the log as it is now: each was signed for a state that the log
//! has to begin with, so that one that was put back, cut off or forked is seen without any checkpoint that an auditor kept.

use std::path::PathBuf;

use super::judged::Judged;
use super::log_finding::LogFinding;
use super::proven::Proven;
use crate::transparency::{Checkpoint, LogError, LogFolder, PROOF_FILE, VerifierKey};
use crate::words::{Phrase, phrase};

/// What a folder's proof came to, by the keys that count.
pub(super) struct ProofFound {
    path: String,
    came: Result<Came, Phrase>,
}

/// A proof whose signatures hold as far as they are known.
struct Came {
    checkpoint: Checkpoint,
    /// Whether a key of the log that counts signed it.
    signed: bool,
    index: u64,
    /// Why its times cannot be true.
    early: Option<Phrase>,
}

impl ProofFound {
    /// Of a line's folder; `None` where that holds none.
    pub(super) fn of(line: &Judged, proven: Result<Option<&Proven>, Phrase>, keys: &[VerifierKey]) -> Option<Self> {
        let came = match proven {
            Ok(None) => return None,
            Ok(Some(proven)) => proven.vouchers(keys).map(|vouchers| Came {
                checkpoint: proven.shown.checkpoint.clone(),
                signed: vouchers.log,
                index: proven.proof.index,
                early: proven.in_time(&vouchers).err(),
            }),
            Err(why) => Err(why),
        };
        Some(ProofFound { path: line.path.clone(), came })
    }
}

/// Holds the proofs against the log: false ones, and those whose times cannot be true.
///
/// # Errors
/// The log does not begin with what it signed for, or cannot be read.
pub(super) fn hold(found: &[ProofFound], log: &LogFolder) -> Result<Vec<LogFinding>, LogError> {
    let mut findings = Vec::new();
    for ProofFound { path, came } in found {
        let false_proof = |why: Phrase| {
            let why = phrase!("evidence-file-wrong", file = PROOF_FILE, why = why);
            LogFinding::new("proof-false", Vec::new(), Some(path), phrase!("evidence-altered", path = path, why = why))
        };
        let came = match came {
            Ok(came) => came,
            Err(why) => {
                findings.push(false_proof(why.clone()));
                continue;
            }
        };
        // Of another log: that this one has no entry of the folder is found by its entries.
        if came.checkpoint.origin == log.checkpoint.origin {
            let named = PathBuf::from(path).join(PROOF_FILE);
            match log.check_earlier(&came.checkpoint, &named) {
                Ok(()) => {}
                // What nobody's key vouches for may have been made by anybody: it speaks against the folder, not the log.
                Err(LogError::Rewritten { why, .. }) if !came.signed => {
                    findings.push(false_proof(phrase!("evidence-log-does-not-fit", why = why)));
                    continue;
                }
                Err(e) => return Err(e),
            }
        }
        if let Some(why) = &came.early {
            let words = phrase!("evidence-file-wrong", file = path, why = why.clone());
            findings.push(LogFinding::new("logged-before-taken", vec![came.index], Some(path), words));
        }
    }
    Ok(findings)
}
