//! A copy of an evidence folder that shows less: photos masked, reports left out.
//!
//! It is a bag of its own that also carries the sealed folder's manifests,
//! signature and timestamps below `sealed/`. So whoever has only the copy can
//! check that every file which was not masked or left out is the sealed one,
//! and whoever holds the original can show what was masked.
//!
//! Nobody signs a copy: whatever it holds has to be bound to what was sealed, or
//! to be one of the few things that every copy says of itself.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha512};

use super::bag_path::BagPath;
use super::inspection::{Inspection, Outcome, SEALED_FILES, unreadable};
use super::manifest::Manifest;
use super::place::{find_sealed_job, joined};
use super::seal::{SIZE, info_text};
use super::signature::Signature;
use super::small_file::{MOST_MANIFEST, MOST_SMALL, read_small};
use super::timestamp::{inspect_tokens, is_token_name};
use super::{BAG_INFO, BAGIT, MANIFEST, PAYLOAD, RESULT, SIGNATURE, TAG_FILES, TAG_MANIFEST};
use crate::input::hex;
use crate::record::JobRecord;
use crate::words::{Phrase, phrase};

/// What was masked and left out: a file in the payload.
pub const REDACTION: &str = "redaction.json";
/// Where the sealed folder's own tag files lie in the payload.
pub const SEALED: &str = "sealed";

/// Labels of a copy's own `bag-info.txt`, besides the one that counts its bytes: the job's number, and that it is a copy.
pub(crate) fn copy_info(job: &str) -> Vec<(String, String)> {
    let info = [("External-Identifier", job), ("External-Description", "Copy with photos masked, reports left out")];
    info.map(|(label, value)| (label.to_owned(), value.to_owned())).to_vec()
}

/// `redaction/1`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Redaction {
    /// `redaction/1`.
    pub format: String,
    /// Photos of which only parts are shown, by their path in the sealed folder.
    pub masked: Vec<String>,
    /// Files that are not in the copy.
    pub left_out: Vec<String>,
    /// Masked photos whose content credentials (C2PA) are not in the copy: they are over the sealed photo's bytes.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub credentials_lost: Vec<String>,
}

impl Redaction {
    /// What a copy says of itself; none where a folder is no copy.
    pub(crate) fn of(folder: &Path) -> Option<Result<Redaction, Phrase>> {
        match read_small(&folder.join(PAYLOAD).join(REDACTION), MOST_MANIFEST, "small") {
            Ok(text) => Some(
                serde_json::from_slice(&text)
                    .map_err(|e| phrase!("evidence-cannot-read", path = REDACTION, why = e.to_string())),
            ),
            Err(e) if e.missing => None,
            Err(e) => Some(Err(e.of_file(REDACTION))),
        }
    }
}

/// Compares a copy's files with the manifests of the folder that it was made from.
pub(super) fn inspect_redacted(folder: &Path, own: &Manifest, found: &mut Inspection) {
    let Some(redaction) = Redaction::of(folder) else { return };
    match redaction.and_then(|redaction| compare(folder, own, &redaction, found)) {
        Ok(words) => found.note(SEALED_FILES, Outcome::Passed, words),
        Err(why) => found.note(SEALED_FILES, Outcome::Failed, why),
    }
}

/// Whatever is named as masked is held against nothing that was sealed, so that only photos may be: those
/// of the result, which is as it was sealed.
fn only_photos(folder: &Path, redaction: &Redaction, record: &JobRecord) -> Result<(), Phrase> {
    let job = find_sealed_job(&folder.join(PAYLOAD)).unwrap_or_default();
    let photos: BTreeSet<String> =
        record.photos.iter().map(|photo| format!("data/{}", joined(&job, &photo.file))).collect();
    // A result that were masked itself could name itself a photo.
    let own = format!("data/{RESULT}");
    match redaction.masked.iter().find(|masked| **masked == own || !photos.contains(*masked)) {
        Some(other) => Err(phrase!("evidence-copy-state", file = other, state = "no-photo")),
        None => Ok(()),
    }
}

fn sealed_record(folder: &Path) -> Result<JobRecord, Phrase> {
    let path = format!("{PAYLOAD}/{RESULT}");
    let record = read_small(&folder.join(&path), MOST_MANIFEST, "small").map_err(|e| e.of_file(&path))?;
    JobRecord::from_json(&record).map_err(|e| phrase!("evidence-cannot-read", path = path, why = e.to_string()))
}

fn added(file: &str) -> Phrase {
    phrase!("evidence-copy-state", file = file, state = "added")
}

/// Files below `sealed/` stand beside the signature that vouches for others: each is one of those that the sealed tag
/// manifest lists, that manifest itself, its signature, or a timestamp of it. What its timestamps say.
fn only_sealed(folder: &Path, own: &Manifest, (tags, bytes): (&Manifest, &[u8])) -> Result<Inspection, Phrase> {
    let sealed = format!("{PAYLOAD}/{SEALED}/");
    let (mut here, mut tokens) = (BTreeSet::new(), Vec::new());
    // The key's owner may have listed more beside his own folder.
    if let Some(strange) = tags.entries.keys().find(|path| !TAG_FILES.contains(&path.as_str())) {
        return Err(added(&format!("{sealed}{strange}")));
    }
    for (path, digest) in &own.entries {
        let Some(name) = path.as_str().strip_prefix(&sealed) else { continue };
        here.insert(name);
        if is_token_name(name) {
            tokens.push(path.as_str());
        } else if ![TAG_MANIFEST, SIGNATURE].contains(&name) {
            match BagPath::new(name).ok().and_then(|name| tags.digest(&name)) {
                Some(listed) if listed == digest => {}
                Some(_) => return Err(phrase!("evidence-copy-state", file = path.as_str(), state = "altered")),
                None => return Err(added(path.as_str())),
            }
        }
    }
    if let Some(gone) = tags.entries.keys().find(|path| !here.contains(path.as_str())) {
        return Err(phrase!("evidence-copy-state", file = format!("{sealed}{}", gone.as_str()), state = "missing"));
    }
    // Looked at aside: they do not stamp the copy.
    let mut aside = Inspection::default();
    inspect_tokens(&folder.join(PAYLOAD).join(SEALED), bytes, &mut aside);
    if let Some(wrong) = aside.items.iter().find(|item| item.outcome == Outcome::Failed) {
        return Err(wrong.found.clone());
    }
    match tokens.get(aside.tokens.len()) {
        Some(unread) => Err(added(unread)),
        None => Ok(aside),
    }
}

/// Beside its payload a copy has what makes it a bag, and says no more of itself than every copy does: people read
/// `bag-info.txt`, and of a copy nobody signs it.
fn only_a_bag(folder: &Path, own: &Manifest, record: &JobRecord) -> Result<(), Phrase> {
    let known = [BAGIT, BAG_INFO, MANIFEST, TAG_MANIFEST, SIGNATURE, PAYLOAD];
    for entry in fs::read_dir(folder).map_err(|e| unreadable(BAGIT, &e))? {
        let name = entry.map_err(|e| unreadable(BAGIT, &e))?.file_name().to_string_lossy().into_owned();
        if !known.contains(&name.as_str()) && !is_token_name(&name) {
            return Err(added(&name));
        }
    }
    let says = read_small(&folder.join(BAG_INFO), MOST_SMALL, "small").map_err(|e| e.of_file(BAG_INFO))?;
    let says = String::from_utf8_lossy(&says);
    let size = |path: &BagPath| fs::metadata(folder.join(path.as_str())).map_or(0, |file| file.len());
    let bytes: u64 = own.entries.keys().map(size).sum();
    let mut every = copy_info(&record.job);
    every.push((SIZE.to_owned(), format!("{bytes}.{}", own.entries.len())));
    let every = info_text(&every);
    let mut seen = BTreeSet::new();
    match says.lines().find(|line| !every.lines().any(|known| known == *line) || !seen.insert(*line)) {
        Some(_) => Err(phrase!("evidence-copy-state", file = BAG_INFO, state = "says-more")),
        None => Ok(()),
    }
}

fn compare(folder: &Path, own: &Manifest, redaction: &Redaction, found: &mut Inspection) -> Result<Phrase, Phrase> {
    let sealed = folder.join(PAYLOAD).join(SEALED);
    let read = |name: &str| {
        read_small(&sealed.join(name), MOST_MANIFEST, "small").map_err(|e| e.of_file(&format!("{SEALED}/{name}")))
    };
    let wrong = |name: &str, why: Phrase| phrase!("evidence-file-wrong", file = format!("{SEALED}/{name}"), why = why);
    let manifest = |name: &str| -> Result<(Manifest, Vec<u8>), Phrase> {
        let bytes = read(name)?;
        let text = std::str::from_utf8(&bytes)
            .map_err(|_| phrase!("evidence-name-not-utf8", file = format!("{SEALED}/{name}")))?;
        Ok((Manifest::read(text).map_err(|(_, why)| wrong(name, why))?, bytes))
    };
    let (tags, tag_bytes) = manifest(TAG_MANIFEST)?;
    let (payload, payload_bytes) = manifest(MANIFEST)?;
    let listed = BagPath::new(MANIFEST).ok().and_then(|path| tags.digest(&path).map(str::to_owned));
    if listed.as_deref() != Some(hex(&Sha512::digest(&payload_bytes)).as_str()) {
        return Err(phrase!(
            "evidence-copy-other-manifest",
            file = format!("{SEALED}/{MANIFEST}"),
            list = format!("{SEALED}/{TAG_MANIFEST}"),
        ));
    }
    match read(SIGNATURE) {
        Ok(bytes) => {
            let signature =
                Signature::read(&String::from_utf8_lossy(&bytes)).and_then(|s| s.check(&tag_bytes).map(|()| s));
            let signature = signature.map_err(|why| wrong(SIGNATURE, why))?;
            found.note(
                "signature",
                Outcome::Passed,
                phrase!("evidence-copy-signed", key = signature.fingerprint().to_string()),
            );
            found.signature = Some(signature);
            found.signed = true;
        }
        Err(_) => found.note("signature", Outcome::NotCheckable, phrase!("evidence-copy-unsigned")),
    }
    let shown_otherwise: Vec<&String> = redaction.masked.iter().chain(&redaction.left_out).collect();
    let mut same = 0;
    let by_name: BTreeMap<&str, &str> = payload.entries.iter().map(|(p, d)| (p.as_str(), d.as_str())).collect();
    let record = sealed_record(folder)?;
    only_photos(folder, redaction, &record)?;
    let stamped = only_sealed(folder, own, (&tags, &tag_bytes))?;
    found.items.extend(stamped.items);
    found.sealed_tokens = stamped.tokens;
    for path in own.entries.keys() {
        let name = path.as_str();
        if name == format!("data/{REDACTION}")
            || name.starts_with(&format!("data/{SEALED}/"))
            || redaction.masked.iter().any(|m| m == name)
        {
            continue;
        }
        if by_name.get(name).copied() != own.digest(path) {
            return Err(phrase!("evidence-copy-state", file = name, state = "altered"));
        }
        same += 1;
    }
    for name in by_name.keys() {
        let here = BagPath::new(name).is_ok_and(|path| own.digest(&path).is_some());
        if !here && !redaction.left_out.iter().any(|l| l == name) {
            return Err(phrase!("evidence-copy-state", file = *name, state = "missing"));
        }
    }
    if let Some(strange) = shown_otherwise.iter().find(|name| !by_name.contains_key(name.as_str())) {
        return Err(phrase!("evidence-copy-state", file = *strange, state = "strange"));
    }
    only_a_bag(folder, own, &record)?;
    Ok(phrase!(
        "evidence-copy",
        count = same as usize,
        masked = redaction.masked.len(),
        left_out = redaction.left_out.len(),
    ))
}
