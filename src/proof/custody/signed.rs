//! Content credentials of a sealed job: as recorded, and as its photos bear them today.

use std::collections::BTreeMap;
use std::path::Path;

use crate::credentials::{BUILT_IN, Source, State, carries};
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

/// Where photos carry nothing of what was recorded. That much every build sees, also one that cannot validate it.
pub(super) fn missing(job: &Path, record: &JobRecord, before: &ByDigest) -> Result<Vec<Phrase>, photo::Error> {
    let mut found = Vec::new();
    for photo in &record.photos {
        let Some(was) = digest(record, &photo.file).and_then(|sha256| before.get(&sha256)) else { continue };
        let path = job.join(&photo.file);
        let bytes = photo::read_bytes(&path)?;
        if !carries(&bytes, photo::recognise(&bytes, &photo.file)?) {
            found.push(difference(&photo.file, was, None));
        }
    }
    Ok(found)
}

/// Where the bytes do not bear what was recorded. Who is trusted, and what has
/// expired since, makes no difference.
pub(super) fn differences(before: &ByDigest, found: &[Found]) -> Vec<Phrase> {
    let one = |f: &Found| {
        let was = before.get(&f.sha256)?;
        let same = f.credentials.as_ref().is_some_and(|is| is.same_bytes(was));
        (!same).then(|| difference(&f.file, was, f.credentials.as_ref()))
    };
    found.iter().filter_map(one).collect()
}

fn difference(photo: &str, was: &Credentials, is: Option<&Credentials>) -> Phrase {
    let is = is.map_or_else(|| phrase!("evidence-nothing"), Credentials::phrase);
    let what = phrase!("evidence-difference-credentials", photo = photo);
    phrase!("evidence-difference", what = what, recorded = Value::from(was.phrase()), now = Value::from(is))
}

/// What counts today: what the bytes bear by whom the reader trusts, nobody where no anchors were named. What was
/// trusted when it was sealed and, by the reader's anchors, has merely expired since stays as it was sealed.
pub(super) fn of_today(before: &ByDigest, found: &[Found], credentials: &Source) -> ByDigest {
    let anchored = matches!(credentials, Source::Photos(Some(_)));
    let stays =
        |was: &&Credentials, is: &Credentials| anchored && was.state == State::Trusted && is.state == State::Expired;
    let one = |f: &Found| {
        let is = f.credentials.clone()?;
        let was = before.get(&f.sha256).filter(|was| stays(was, &is));
        Some((f.sha256.clone(), was.cloned().unwrap_or(is)))
    };
    found.iter().filter_map(one).collect()
}
