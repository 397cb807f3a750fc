//! One folder of an archive judged, whatever is in it.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;

use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

use super::across::Lead;
use super::find::{Found, Sort};
use crate::evidence::{Inspection, Outcome, Signers, inspect};
use crate::folder::JobFolder;
use crate::input::{digest_of_file, hex};
use crate::job::{Options, RemeasureError, remeasure, verify};
use crate::record::JobRecord;
use crate::verdict::Verdict;

/// What became of one folder: a line of `audit.jsonl`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Judged {
    /// Its path, as it was found.
    pub path: String,
    /// The exit code that `verify` gives, 2 where it cannot be read or was altered.
    pub exit: u8,
    /// The verdict; none where there is none.
    pub verdict: Option<Verdict>,
    /// The result, `result/1` or `error/1`; in an audit the name of its file.
    pub result: serde_json::Value,
    /// Over everything that was read: another digest, another job.
    pub digest: String,
    /// For evidence folders: `intact and signed`, `intact, signer unknown`, ...
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub evidence: Option<String>,
    /// Who signed, of those listed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signer: Option<String>,
    /// What joins it with earlier folders of the archive.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub across: Vec<Lead>,
}

/// A digest of everything that a folder's judgement depends on, without
/// measuring; the program's version among it.
pub(super) fn digest(found: &Found, options: &Options, signers: Option<&Signers>) -> String {
    let mut digest = Sha256::new();
    digest.update(env!("CARGO_PKG_VERSION"));
    let mut add = |text: &str| {
        digest.update((text.len() as u64).to_le_bytes());
        digest.update(text);
    };
    match found.sort {
        Sort::Evidence => {
            // Its own tag manifest stands for every byte; whether that is true is for the judgement.
            for name in ["tagmanifest-sha512.txt", "tagmanifest-sha512.txt.sig", "manifest-sha512.txt"] {
                add(&digest_of_file(&found.path.join(name)).unwrap_or_else(|e| e.to_string()));
            }
            add(&listing(&found.path));
            add(signers.map_or("", |s| &s.sha256));
        }
        Sort::Job => match JobFolder::open(&found.path, &options.models) {
            Err(e) => {
                add(&digest_of_file(&found.path.join("job.toml")).unwrap_or_default());
                add(&e.to_string());
            }
            Ok(folder) => {
                for input in &folder.inputs {
                    add(&format!("{} {} {}", input.role, input.name, input.sha256));
                }
                for candidate in &folder.candidates {
                    add(&candidate.input.sha256);
                }
                for attached in &folder.attachments {
                    add(&format!("{} {} {}", attached.name, attached.kind, attached.sha256));
                }
                for photo in &folder.photos {
                    add(&photo.name);
                    add(&digest_of_file(&photo.path).unwrap_or_else(|e| e.to_string()));
                }
            }
        },
    }
    hex(&digest.finalize())
}

/// Names, sizes and times of a folder's files: a change is likely to move one.
fn listing(folder: &Path) -> String {
    let mut lines = Vec::new();
    let mut open = vec![folder.to_path_buf()];
    while let Some(path) = open.pop() {
        for entry in std::fs::read_dir(&path).into_iter().flatten().flatten() {
            match entry.metadata() {
                Ok(meta) if meta.is_dir() => open.push(entry.path()),
                Ok(meta) => lines.push(format!("{:?} {} {:?}", entry.path(), meta.len(), meta.modified().ok())),
                Err(e) => lines.push(format!("{:?} {e}", entry.path())),
            }
        }
    }
    lines.sort();
    lines.join("\n")
}

/// Judges a folder. Nothing that is in it ends the program: a fault becomes an
/// error of this folder alone.
pub fn judge(found: &Found, options: &Options, signers: Option<&Signers>) -> Judged {
    let path = found.path.display().to_string();
    let digest = digest(found, options, signers);
    let judged = catch_unwind(AssertUnwindSafe(|| match found.sort {
        Sort::Job => match verify(&found.path, options) {
            Ok(record) => of_record(&path, &digest, &record),
            Err(e) => failed(&path, &digest, &e.to_string()),
        },
        Sort::Evidence => evidence(found, &path, &digest, signers),
    }));
    judged.unwrap_or_else(|_| {
        failed(&path, &digest, "the program failed on this job: please report it, with the job if that is possible")
    })
}

fn evidence(found: &Found, path: &str, digest: &str, signers: Option<&Signers>) -> Judged {
    let inspection = match inspect(&found.path) {
        Ok(inspection) => inspection,
        Err(e) => return failed(path, digest, &format!("cannot read the folder {path}: {e}")),
    };
    let altered = |why: &str| Judged { evidence: Some("altered".to_owned()), ..failed(path, digest, why) };
    if !inspection.intact() {
        let bad = inspection.items.iter().filter(|i| i.outcome == Outcome::Failed);
        let words: Vec<String> = bad.map(|i| format!("{}: {}", i.what, i.found)).collect();
        return altered(&format!("{path} was altered: {}", words.join("; ")));
    }
    let signer = signer(&inspection, signers);
    match remeasure(&found.path.join("data")) {
        Ok(again) if again.differences.is_empty() => Judged {
            evidence: Some(
                match (&signer, inspection.signed) {
                    (Some(_), _) => "intact and signed",
                    (None, true) => "intact, signer unknown",
                    (None, false) => "intact, unsigned",
                }
                .to_owned(),
            ),
            signer,
            ..of_record(path, digest, &again.now)
        },
        Ok(again) => {
            altered(&format!("{path}: measured again, the photos say otherwise: {}", again.differences.join("; ")))
        }
        Err(e @ (RemeasureError::NoJob | RemeasureError::Result(_) | RemeasureError::Job(_))) => {
            altered(&format!("{path}: {e}"))
        }
    }
}

fn signer(inspection: &Inspection, signers: Option<&Signers>) -> Option<String> {
    let key = inspection.signature.as_ref()?.key();
    signers?.who(&key).ok().map(str::to_owned)
}

fn of_record(path: &str, digest: &str, record: &JobRecord) -> Judged {
    Judged {
        path: path.to_owned(),
        exit: record.verdict.exit_code(),
        verdict: Some(record.verdict),
        result: serde_json::to_value(record).unwrap_or_default(),
        digest: digest.to_owned(),
        evidence: None,
        signer: None,
        across: Vec::new(),
    }
}

fn failed(path: &str, digest: &str, message: &str) -> Judged {
    Judged {
        path: path.to_owned(),
        exit: 2,
        verdict: None,
        result: serde_json::json!({ "format": "error/1", "path": path, "message": message }),
        digest: digest.to_owned(),
        evidence: None,
        signer: None,
        across: Vec::new(),
    }
}
