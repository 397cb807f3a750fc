//! Checking an evidence folder that may be anything.
//!
//! Nothing in the folder is trusted: names are checked before they are used,
//! links are never followed, every byte is hashed again.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{self, Read};
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha512};

use super::bag_path::BagPath;
use super::inspection::{Inspection, Outcome, unreadable};
use super::manifest::Manifest;
use super::redacted::{Redaction, inspect_redacted};
use super::signature::Signature;
use super::small_file::{MOST_FILE, MOST_MANIFEST, MOST_SMALL, read_small};
use super::timestamp::{inspect_tokens, is_token_name};
use super::{BAG_INFO, BAGIT, DECLARATION, MANIFEST, PAYLOAD, RESULT, SIGNATURE, TAG_FILES, TAG_MANIFEST};
use crate::input::hex;
use crate::words::{Phrase, phrase};

/// Files of an evidence folder, at most.
const MOST_FILES: usize = 100_000;
/// Folders in folders, at most.
const MOST_DEPTH: usize = 32;

/// Checks names, completeness, digests and the signature's truth.
///
/// # Errors
/// The folder itself cannot be read.
pub fn inspect(folder: &Path) -> io::Result<Inspection> {
    let mut found = Inspection::default();
    let (files, bad_names) = walk(folder)?;
    found.judge("names", bad_names, phrase!("evidence-names", count = files.len()));
    declaration(folder, &mut found);
    let tags = read_manifest(folder, TAG_MANIFEST, &mut found);
    let payload = read_manifest(folder, MANIFEST, &mut found);
    if let Some((tags, text)) = tags {
        let is_tag = |path: &BagPath| !path.as_str().starts_with("data/");
        let own = [TAG_MANIFEST, SIGNATURE];
        let here = files.iter().filter(|(p, _)| is_tag(p) && !own.contains(&p.as_str()) && !is_token_name(p.as_str()));
        let strange = strange(&tags, |path| TAG_FILES.contains(&path));
        compare("tag files", &tags, here, strange, &mut found);
        check_signature(folder, ("signature", SIGNATURE), &text, &mut found);
        inspect_tokens(folder, &text, &mut found);
    }
    if let Some((payload, _)) = payload {
        let here = files.iter().filter(|(p, _)| p.as_str().starts_with("data/"));
        compare("payload", &payload, here, Vec::new(), &mut found);
        inspect_redacted(folder, &payload, &mut found);
    }
    Ok(found)
}

fn declaration(folder: &Path, found: &mut Inspection) {
    match read_small(&folder.join(BAGIT), MOST_SMALL, "small") {
        Ok(text) if text == DECLARATION.as_bytes() => {
            found.note("declaration", Outcome::Passed, phrase!("evidence-bag"));
        }
        Ok(_) => found.note("declaration", Outcome::Failed, phrase!("evidence-no-bag", file = BAGIT)),
        Err(e) => found.note("declaration", Outcome::Failed, e.of_file(BAGIT)),
    }
    if fs::symlink_metadata(folder.join("fetch.txt")).is_ok() {
        found.note("completeness", Outcome::Failed, phrase!("evidence-fetch"));
    }
}

pub(super) fn read_manifest(folder: &Path, name: &str, found: &mut Inspection) -> Option<(Manifest, Vec<u8>)> {
    let read = || -> Result<(Manifest, Vec<u8>), Phrase> {
        let bytes = read_small(&folder.join(name), MOST_MANIFEST, "manifest").map_err(|e| e.why)?;
        let text = std::str::from_utf8(&bytes).map_err(|_| phrase!("evidence-not-utf8"))?;
        let manifest = Manifest::read(text).map_err(|(line, why)| match line {
            0 => why,
            _ => phrase!("evidence-line", line = line, why = why),
        })?;
        Ok((manifest, bytes))
    };
    match read() {
        Ok(read) => Some(read),
        Err(why) => {
            found.note("manifests", Outcome::Failed, phrase!("evidence-file-wrong", file = name, why = why));
            None
        }
    }
}

fn state(path: &BagPath, state: &str) -> Phrase {
    phrase!("evidence-file-state", file = path.as_str(), state = state)
}

/// Files that a list has and that sealing does not put there, whoever signed the list: another report, a whole folder.
pub(super) fn strange(manifest: &Manifest, known: impl Fn(&str) -> bool) -> Vec<Phrase> {
    manifest.entries.keys().filter(|path| !known(path.as_str())).map(|path| state(path, "strange")).collect()
}

/// Missing, added and altered files, after those that are `bad` already.
pub(super) fn compare<'a>(
    what: &str,
    manifest: &Manifest,
    files: impl Iterator<Item = (&'a BagPath, &'a PathBuf)>,
    mut bad: Vec<Phrase>,
    found: &mut Inspection,
) {
    let here: BTreeMap<&BagPath, &PathBuf> = files.collect();
    bad.extend(manifest.entries.keys().filter(|p| !here.contains_key(p)).map(|p| state(p, "missing")));
    for (path, on_disk) in &here {
        // What no list has is not worth a digest, and neither is what no folder holds: either may be without end.
        let Some(listed) = manifest.digest(path) else {
            bad.push(state(path, "added"));
            continue;
        };
        if fs::metadata(on_disk).is_ok_and(|file| file.len() > most(path.as_str())) {
            bad.push(phrase!(
                "evidence-file-wrong",
                file = path.as_str(),
                why = phrase!("evidence-size", what = "small"),
            ));
            continue;
        }
        match digest(on_disk) {
            Ok(digest) if listed == digest => {}
            Ok(_) => bad.push(state(path, "altered")),
            Err(e) => bad.push(unreadable(path.as_str(), &e)),
        }
    }
    found.judge(what, bad, phrase!("evidence-files", count = here.len()));
}

/// The largest that a file may be.
fn most(path: &str) -> u64 {
    let of_payload = path.strip_prefix(PAYLOAD).and_then(|rest| rest.strip_prefix('/'));
    if [BAGIT, BAG_INFO].contains(&path) {
        MOST_SMALL
    } else if path == MANIFEST || path.ends_with(TAG_MANIFEST) || of_payload == Some(RESULT) {
        MOST_MANIFEST
    } else {
        MOST_FILE
    }
}

/// The signature in a file over a message; `what` is what it is called.
pub(super) fn check_signature(folder: &Path, (what, file): (&str, &str), message: &[u8], found: &mut Inspection) {
    let text = match read_small(&folder.join(file), MOST_SMALL, "signature") {
        Ok(bytes) => String::from_utf8_lossy(&bytes).into_owned(),
        Err(e) if e.missing && Redaction::of(folder).is_some() => return,
        Err(e) if e.missing => return found.note(what, Outcome::NotCheckable, phrase!("evidence-unsigned")),
        Err(e) => return found.note(what, Outcome::Failed, e.of_file(file)),
    };
    let checked = Signature::read(&text).and_then(|s| s.check(message).map(|()| s));
    match checked {
        Ok(signature) => {
            found.note(what, Outcome::Passed, phrase!("evidence-signed", key = signature.fingerprint().to_string()));
            found.signature = Some(signature);
            found.signed = true;
        }
        Err(why) => {
            found.note(what, Outcome::Failed, phrase!("evidence-file-wrong", file = file, why = why));
        }
    }
}

/// Every file below a folder by its checked path, and what is wrong with others.
pub(super) fn walk(folder: &Path) -> io::Result<(BTreeMap<BagPath, PathBuf>, Vec<Phrase>)> {
    let (mut files, mut bad, mut folded) = (BTreeMap::new(), Vec::new(), BTreeMap::<String, String>::new());
    let mut open = vec![(folder.to_path_buf(), String::new(), 0)];
    while let Some((dir, prefix, depth)) = open.pop() {
        let mut empty = ![String::new(), format!("{PAYLOAD}/")].contains(&prefix);
        for entry in fs::read_dir(&dir)? {
            let entry = entry?;
            empty = false;
            let Some(name) = entry.file_name().to_str().map(str::to_owned) else {
                bad.push(phrase!("evidence-name-not-utf8", file = entry.path().display().to_string()));
                continue;
            };
            let relative = format!("{prefix}{name}");
            let kind = entry.file_type()?;
            let path = match BagPath::new(&relative) {
                Ok(path) => path,
                Err(problem) => {
                    bad.push(phrase!("evidence-file-wrong", file = format!("{relative:?}"), why = problem.phrase()));
                    continue;
                }
            };
            if let Some(first) = folded.insert(path.folded(), relative.clone()) {
                bad.push(phrase!("evidence-name-case", first = first, second = &relative));
            }
            if kind.is_dir() && depth < MOST_DEPTH {
                open.push((entry.path(), format!("{relative}/"), depth + 1));
            } else if kind.is_file() {
                files.insert(path, entry.path());
            } else {
                bad.push(phrase!("evidence-name-link", file = &relative));
            }
        }
        if empty {
            // No list has folders, and a name alone may say something.
            bad.push(phrase!("evidence-empty-folder", folder = prefix.trim_end_matches('/')));
        }
        if files.len() > MOST_FILES {
            bad.push(phrase!("evidence-too-many", count = MOST_FILES));
            break;
        }
    }
    Ok((files, bad))
}

fn digest(path: &Path) -> io::Result<String> {
    let mut file = File::open(path)?;
    let (mut digest, mut block) = (Sha512::new(), vec![0; 1 << 18]);
    loop {
        let n = file.read(&mut block)?;
        if n == 0 {
            return Ok(hex(&digest.finalize()));
        }
        digest.update(&block[..n]);
    }
}

/// Whether a folder looks like an evidence folder at all.
pub fn is_evidence(folder: &Path) -> bool {
    folder.join(TAG_MANIFEST).is_file() || (folder.join(BAGIT).is_file() && folder.join(PAYLOAD).is_dir())
}
