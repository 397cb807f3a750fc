//! Content credentials of a sealed job: as recorded, and as its photos bear them today.

use std::collections::BTreeMap;
use std::path::Path;

use crate::credentials::{BUILT_IN, Source, State};
use crate::photo;
use crate::record::{Credentials, JobRecord};
use crate::words::{Phrase, Value, phrase};

/// By a photo's SHA-256.
pub(super) type ByDigest = BTreeMap<String, Credentials>;

/// A photo's credentials as its bytes bear them.
pub(super) struct Found {
    pub(super) file: String,
    sha256: String,
    pub(super) credentials: Option<Credentials>,
}

/// What a record says.
pub(super) fn recorded(record: &JobRecord) -> ByDigest {
    let one = |p: &crate::record::PhotoRecord| Some((digest(record, &p.file)?, p.credentials.clone()?));
    record.photos.iter().filter_map(one).collect()
}

fn digest(record: &JobRecord, file: &str) -> Option<String> {
    record.inputs.iter().find(|i| i.role == "photo" && i.file == file).map(|i| i.sha256.clone())
}

/// What the photos of a job folder bear today; nothing where this program cannot read it.
pub(super) fn found(job: &Path, record: &JobRecord, credentials: &Source) -> Result<Vec<Found>, photo::Error> {
    if !BUILT_IN || matches!(credentials, Source::Recorded(_)) {
        return Ok(Vec::new());
    }
    let photos = record.photos.iter().filter_map(|p| Some((p, digest(record, &p.file)?)));
    photos
        .map(|(p, sha256)| {
            let credentials = credentials.of(&job.join(&p.file), &sha256)?;
            Ok(Found { file: p.file.clone(), sha256, credentials })
        })
        .collect()
}

/// Where the bytes do not bear what was recorded. Who is trusted, and what has
/// expired since, makes no difference.
pub(super) fn differences(before: &ByDigest, found: &[Found]) -> Vec<Phrase> {
    let words = |c: Option<&Credentials>| c.map_or_else(|| phrase!("evidence-nothing"), Credentials::phrase);
    let one = |f: &Found| {
        let was = before.get(&f.sha256)?;
        let same = f.credentials.as_ref().is_some_and(|is| is.same_bytes(was));
        let (was, is) = (Value::from(was.phrase()), Value::from(words(f.credentials.as_ref())));
        let what = phrase!("evidence-difference-credentials", photo = &f.file);
        (!same).then(|| phrase!("evidence-difference", what = what, recorded = was, now = is))
    };
    found.iter().filter_map(one).collect()
}

/// What counts today: what the bytes bear by today's anchors. What was trusted
/// when it was sealed and has merely expired since stays as it was sealed.
pub(super) fn of_today(before: &ByDigest, found: &[Found]) -> ByDigest {
    let one = |f: &Found| {
        let is = f.credentials.clone()?;
        let was = before.get(&f.sha256).filter(|was| was.state == State::Trusted && is.state == State::Expired);
        Some((f.sha256.clone(), was.cloned().unwrap_or(is)))
    };
    found.iter().filter_map(one).collect()
}
