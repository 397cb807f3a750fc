//! Whether an evidence folder holds what sealing its job again would put there, and nothing else.
//!
//! Whoever owns the key can sign anything: a false verdict in the label that an archive reads, another job's report
//! beside the real one, a result with more in it than the program writes. Results and reports are looked at elsewhere.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use super::seal::{info, own_files};
use super::sealed_report::{CUSTOMER_HTML, REPORT_HTML, REPORT_PDF};
use crate::evidence::{BAG_INFO, PAYLOAD, RESULT, SIZE, label_text};
use crate::folder::JobFolder;
use crate::record::JobRecord;
use crate::transparency::PROOF_FILE;
use crate::words::{Phrase, phrase};

/// What sealing puts beside the job's own files.
const MADE: [&str; 5] = [RESULT, REPORT_HTML, REPORT_PDF, CUSTOMER_HTML, PROOF_FILE];

/// In what a payload, whose job was measured again, and the labels of its folder are not what this program seals. Of a
/// folder that another version made the files are compared, and the labels that every version writes so.
///
/// A masked copy has the sealed labels elsewhere, and its payload lies in a room without what makes it a copy.
pub(super) fn differences(
    (labelled, payload): (&Path, &Path),
    job: &Path,
    folder: &JobFolder,
    recorded: &JobRecord,
    alike: bool,
) -> Vec<Phrase> {
    let mut found = labels(labelled, recorded, alike);
    found.extend(more_files(payload, job, folder, recorded));
    if alike {
        found.extend(written_otherwise(payload, recorded));
    }
    found
}

/// A result that says more than this program reads, or something twice.
fn written_otherwise(payload: &Path, recorded: &JobRecord) -> Option<Phrase> {
    let same = fs::read(payload.join(RESULT)).is_ok_and(|bytes| recorded.to_json().is_ok_and(|json| json == bytes));
    (!same).then(|| phrase!("evidence-written-otherwise", file = RESULT))
}

/// Files that neither the job nor its result has.
fn more_files(payload: &Path, job: &Path, folder: &JobFolder, recorded: &JobRecord) -> Option<Phrase> {
    // What cannot be gathered cannot be read either, which measuring again has said.
    let own = own_files(job, folder, recorded).ok()?;
    let here: BTreeSet<String> = files(payload, "").ok()?.into_iter().collect();
    let more: Vec<String> = here
        .into_iter()
        .filter(|file| !own.contains_key(file) && !MADE.contains(&file.as_str()))
        .map(|file| format!("{PAYLOAD}/{file}"))
        .collect();
    (!more.is_empty()).then(|| phrase!("evidence-more-files", files = more.join(", ")))
}

/// Labels of a folder that say something else than its result, lack, or that no result has.
fn labels(folder: &Path, recorded: &JobRecord, alike: bool) -> Vec<Phrase> {
    let text = fs::read_to_string(folder.join(BAG_INFO)).unwrap_or_default();
    let mut said: Vec<(&str, &str)> = text.lines().filter_map(|line| line.split_once(": ")).collect();
    // The inspection counts the payload.
    said.retain(|(label, _)| *label != SIZE);
    let mut wanted = info(recorded);
    if !alike {
        wanted.retain(|(label, _)| ["External-Identifier", "Verdict"].contains(&label.as_str()));
        said.retain(|(label, _)| wanted.iter().any(|(wanted, _)| wanted == label));
    }
    let wanted: Vec<(String, String)> = wanted.into_iter().map(|(label, value)| (label, label_text(&value))).collect();
    let other = said.iter().filter(|(l, v)| !wanted.iter().any(|(label, value)| label == l && value == v));
    let mut found: Vec<Phrase> = other
        .map(|(label, value)| phrase!("evidence-label-other", file = BAG_INFO, label = *label, value = *value))
        .collect();
    if found.is_empty() && said.len() != wanted.len() {
        found.push(phrase!("evidence-labels-lack", file = BAG_INFO));
    }
    found
}

/// Every file below a folder, by its path with slashes.
pub(super) fn files(folder: &Path, prefix: &str) -> std::io::Result<Vec<String>> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = format!("{prefix}{}", entry.file_name().to_string_lossy());
        if entry.file_type()?.is_dir() {
            found.extend(files(&entry.path(), &format!("{name}/"))?);
        } else {
            found.push(name);
        }
    }
    found.sort();
    Ok(found)
}
