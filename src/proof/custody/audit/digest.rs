//! A digest of everything that a folder's judgement depends on: where it is
//! another one, the folder is judged again. The program's version takes no part:
//! an earlier result stands until somebody asks for it to be recomputed.

use std::fs::Metadata;
use std::path::Path;

use sha2::{Digest, Sha256};

use super::find::{Found, Sort};
use super::trust::Trust;
use crate::credentials::Source;
use crate::evidence::{INDEX, INDEX_SIGNATURE, MOST_FILE, MOST_MANIFEST, MOST_ONE_FILE, holds_evidence, inspect_index};
use crate::folder::JobFolder;
use crate::input::{digest_of_file, hex};
use crate::words::Language;

/// The digest of a folder as it lies there; nothing is measured.
pub(super) fn digest(found: &Found, trust: Trust) -> String {
    let options = trust.options;
    let of_signers = || trust.signers.map_or("", |s| s.sha256.as_str());
    let trusted = |mut parts: Parts| {
        parts.add(of_signers());
        // Without any the digest is what it was before there were any.
        if let Some(certificates) = trust.certificates {
            parts.add(&certificates.sha256());
        }
        anchored(parts, &options.credentials)
    };
    match found.sort {
        Sort::Evidence => {
            // Its own tag manifest stands for every byte; whether that is true is for the judgement.
            let mut parts = Parts::new();
            for name in ["tagmanifest-sha512.txt", "tagmanifest-sha512.txt.sig", "manifest-sha512.txt"] {
                parts.add(&of_file(&found.path.join(name), MOST_MANIFEST));
            }
            parts.add(&listing(&found.path));
            trusted(parts)
        }
        Sort::OneFile => {
            let mut parts = Parts::new();
            parts.add(&of_one_file(&found.path));
            trusted(parts)
        }
        Sort::Series => {
            let mut parts = Parts::new();
            for name in [INDEX, INDEX_SIGNATURE] {
                parts.add(&of_file(&found.path.join(name), MOST_MANIFEST));
            }
            for item in inspect_index(&found.path).items {
                parts.add(&item.found.say(Language::English));
            }
            parts.hex()
        }
        Sort::Job => match JobFolder::open(&found.path, &options.models) {
            Err(e) => {
                let mut parts = Parts::new();
                parts.add(&of_file(&found.path.join("job.toml"), MOST_MANIFEST));
                parts.add(&e.to_string());
                parts.hex()
            }
            Ok(folder) => of_job(&folder, &options.credentials, |n| of_file(&folder.photos[n].path, MOST_FILE)),
        },
    }
}

/// The digest of an opened job, of whose photos the digests are at hand.
pub(super) fn of_job(folder: &JobFolder, credentials: &Source, photo: impl Fn(usize) -> String) -> String {
    let mut parts = Parts::new();
    for input in &folder.inputs {
        parts.add(&format!("{} {} {}", input.role, input.name, input.sha256));
    }
    for candidate in &folder.candidates {
        parts.add(&candidate.input.sha256);
    }
    for attached in &folder.attachments {
        parts.add(&format!("{} {} {}", attached.name, attached.kind, attached.sha256));
    }
    for photo in &folder.unlisted {
        parts.add(&format!("unlisted {}", photo.name));
    }
    for (n, file) in folder.photos.iter().enumerate() {
        parts.add(&file.name);
        parts.add(&photo(n));
    }
    anchored(parts, credentials)
}

/// Other anchors, another judgement; without any the digest is what it was before there were any.
fn anchored(mut parts: Parts, credentials: &Source) -> String {
    if let Source::Photos(Some(anchors)) = credentials {
        parts.add(&anchors.sha256);
    }
    parts.hex()
}

/// Texts that cannot run into each other.
struct Parts(Sha256);

impl Parts {
    fn new() -> Self {
        Parts(Sha256::new())
    }

    fn add(&mut self, text: &str) {
        self.0.update((text.len() as u64).to_le_bytes());
        self.0.update(text);
    }

    fn hex(self) -> String {
        hex(&self.0.finalize())
    }
}

/// A file's digest. What has more bytes than are ever read of such a file may have no end: of that how many, and when
/// it changed.
fn of_file(path: &Path, most: u64) -> String {
    match std::fs::metadata(path) {
        Ok(meta) if meta.len() > most => format!("{} {}", meta.len(), changed(&meta)),
        _ => digest_of_file(path).unwrap_or_else(|e| e.to_string()),
    }
}

/// Of evidence in one file its digest; what does not begin as such is never unpacked.
fn of_one_file(path: &Path) -> String {
    of_file(path, if holds_evidence(path) { MOST_ONE_FILE } else { MOST_MANIFEST })
}

/// Names, sizes and marks of a folder's files: no change of a file leaves all of them.
fn listing(folder: &Path) -> String {
    let mut lines = Vec::new();
    let mut open = vec![folder.to_path_buf()];
    while let Some(path) = open.pop() {
        for entry in std::fs::read_dir(&path).into_iter().flatten().flatten() {
            match entry.metadata() {
                Ok(meta) if meta.is_dir() => open.push(entry.path()),
                Ok(meta) => lines.push(format!("{:?} {} {}", entry.path(), meta.len(), mark(&entry.path(), &meta))),
                Err(e) => lines.push(format!("{:?} {e}", entry.path())),
            }
        }
    }
    lines.sort();
    lines.join("\n")
}

/// What a change of a file cannot but change: when the system last saw one, which no program sets back, unlike the
/// time of modification. Where the system keeps none, the file's own digest.
#[cfg(unix)]
fn mark(_: &Path, meta: &Metadata) -> String {
    changed(meta)
}

/// When the system last saw a change of a file.
#[cfg(unix)]
fn changed(meta: &Metadata) -> String {
    use std::os::unix::fs::MetadataExt;
    format!("{}.{:09}", meta.ctime(), meta.ctime_nsec())
}

#[cfg(not(unix))]
fn changed(meta: &Metadata) -> String {
    format!("{:?}", meta.modified().ok())
}

#[cfg(not(unix))]
fn mark(path: &Path, _: &Metadata) -> String {
    digest_of_file(path).unwrap_or_else(|e| e.to_string())
}
