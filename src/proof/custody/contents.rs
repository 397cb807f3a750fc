//! Whether an evidence folder holds what sealing its job again would put there, and nothing else.
//!
//! Whoever owns the key can sign anything: a false verdict in the label that an archive reads, another job's report
//! beside the real one, a result with more in it than the program writes. Results and reports are looked at elsewhere.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use super::seal::{info, own_files};
use super::sealed_report::{CUSTOMER_HTML, REPORT_HTML, REPORT_PDF};
use crate::evidence::{
    BAG_INFO, MANIFEST, MOST_MANIFEST, MOST_SMALL, PAYLOAD, RESULT, SIZE, info_text, label_text, read_result,
    read_small,
};
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
    let read = read_result(payload);
    let same = read.is_ok_and(|bytes| recorded.to_json().is_ok_and(|json| json == bytes));
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

/// Labels of a folder that say something else than its result, lack, or that no result has; and whatever else the file
/// says, where readers go on with a line that this program would leave out.
fn labels(folder: &Path, recorded: &JobRecord, alike: bool) -> Vec<Phrase> {
    let bytes = match read_small(&folder.join(BAG_INFO), MOST_SMALL, "small") {
        Ok(bytes) => bytes,
        Err(why) => return vec![why.of_file(BAG_INFO)],
    };
    let text = String::from_utf8_lossy(&bytes);
    let mut said: Vec<(&str, &str)> = text.lines().filter_map(|line| line.split_once(": ")).collect();
    let labels: BTreeSet<&str> = said.iter().map(|(label, _)| *label).collect();
    let is_label = |label: &&str| label.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-');
    let plain = labels.len() == said.len() && said.len() == text.lines().count() && labels.iter().all(is_label);
    let size = said.iter().find(|(label, _)| *label == SIZE).map(|(_, value)| (*value).to_owned());
    if let Some(said) = size.as_deref()
        && let Some(counted) = counted(folder, said)
        && counted != said
    {
        return vec![phrase!("evidence-label-count", file = BAG_INFO, label = SIZE, value = said, counted = counted)];
    }
    said.retain(|(label, _)| *label != SIZE);
    let mut wanted = info(recorded);
    let whole = info_text(&[&wanted[..], &[(SIZE.to_owned(), size.unwrap_or_default())]].concat());
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
    if found.is_empty() && (!plain || alike && whole.as_bytes() != bytes) {
        found.push(phrase!("evidence-written-otherwise", file = BAG_INFO));
    }
    found
}

/// The bytes and files of a folder's payload as its label counts them (RFC 8493, 2.2.2). A masked copy has other files
/// than were sealed: of these it has their list, and what the label says of their bytes.
fn counted(folder: &Path, said: &str) -> Option<String> {
    let payload = folder.join(PAYLOAD);
    if payload.is_dir() {
        let files = files(&payload, "").ok()?;
        let sizes = files.iter().map(|file| Some(fs::symlink_metadata(payload.join(file)).ok()?.len()));
        return Some(format!("{}.{}", sizes.sum::<Option<u64>>()?, files.len()));
    }
    let list = read_small(&folder.join(MANIFEST), MOST_MANIFEST, "manifest").ok()?;
    let bytes: u64 = said.split('.').next()?.parse().unwrap_or_default();
    Some(format!("{bytes}.{}", list.iter().filter(|byte| **byte == b'\n').count()))
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
