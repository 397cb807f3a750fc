//! The index of a repair order's evidence folders, read again: whether all of
//! them are there, as they were when it was signed.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use ssh_key::PublicKey;

use super::bag_path::BagPath;
use super::inspect::{check_signature, compare, is_evidence, read_manifest, strange};
use super::inspection::{Inspection, Outcome};
use super::manifest::Manifest;
use super::signature::Signature;
use super::small_file::{MOST_SMALL, read_small};
use super::{INDEX, INDEX_SIGNATURE, ORDER_PAGE, PAYLOAD, REDACTION, SIGNATURE, TAG_MANIFEST};
use crate::words::phrase;

const SERIES: &str = "series";
const SERIES_SIGNATURE: &str = "series signature";

/// Checks the index in a folder: its signature, who signed it beside who signed the folders, and that none
/// of these is missing, was altered or was put in later. Each folder's own content is for its own check.
pub fn inspect_index(folder: &Path) -> Inspection {
    let mut found = Inspection::default();
    let Some((index, text)) = read_manifest(folder, INDEX, &mut found) else { return found };
    check_signature(folder, (SERIES_SIGNATURE, INDEX_SIGNATURE), &text, &mut found);
    let here = here(folder, &index);
    let signer = found.signature.as_ref().map(Signature::key);
    let others = here.keys().filter(|path| signed_by_another(folder, path, signer.as_ref()));
    let others: Vec<String> = others.map(|path| path.as_str().replace(&format!("/{TAG_MANIFEST}"), "")).collect();
    if !others.is_empty() {
        found.note(
            SERIES_SIGNATURE,
            Outcome::Failed,
            phrase!("evidence-series-signer", index = INDEX, folders = others),
        );
    }
    let strange = strange(&index, |path| path == ORDER_PAGE || is_member(path));
    compare(SERIES, &index, here.iter(), strange, &mut found);
    found
}

/// Whether a path is that of the tag manifest of a folder beside the index.
fn is_member(path: &str) -> bool {
    path.split_once('/').is_some_and(|(_, rest)| rest == TAG_MANIFEST)
}

/// What the index lists and is there, and evidence folders beside it that it does not list.
fn here(folder: &Path, index: &Manifest) -> BTreeMap<BagPath, PathBuf> {
    let listed = index.entries.keys().cloned();
    // A masked copy may lie beside what it was made of.
    let added = |path: &Path| is_evidence(path) && !path.join(PAYLOAD).join(REDACTION).is_file();
    let beside = fs::read_dir(folder).into_iter().flatten().flatten().filter(|entry| added(&entry.path()));
    let beside =
        beside.filter_map(|entry| BagPath::new(&format!("{}/{TAG_MANIFEST}", entry.file_name().to_str()?)).ok());
    let placed = listed.chain(beside).map(|path| (path.clone(), folder.join(path.as_str())));
    placed.filter(|(_, on_disk)| on_disk.is_file()).collect()
}

/// Whether a folder is signed, and not by who signed the index: whoever took a folder away and wrote the index
/// anew has another key, or none.
fn signed_by_another(folder: &Path, tag_manifest: &BagPath, signer: Option<&PublicKey>) -> bool {
    let member = tag_manifest.as_str().strip_suffix(TAG_MANIFEST);
    let text = member.and_then(|member| read_small(&folder.join(member).join(SIGNATURE), MOST_SMALL, "signature").ok());
    let own =
        text.and_then(|text| Signature::read(&String::from_utf8_lossy(&text)).ok()).map(|signature| signature.key());
    own.is_some_and(|own| signer.is_none_or(|signer| signer.key_data() != own.key_data()))
}
