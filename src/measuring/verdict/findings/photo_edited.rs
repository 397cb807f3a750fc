//! A photo's file is not as its camera wrote it.

use super::{Case, Explanation, Finding, PhotoFacts, Rule};
use crate::credentials::Credentials;
use crate::photo::Edit;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::{Phrase, phrase};

pub(super) const RULE: Rule = Rule {
    name: "photo-edited",
    codes: &["photo-edited", "thumbnail-differs"],
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] =
    &[Explanation::of("photo-edited", Level::Warn), Explanation::of("thumbnail-differs", Level::Warn)];

/// A thumbnail of the same picture correlates by more than .95 however it was made.
const ALIKE: f64 = 0.85;

fn find(case: &Case) -> Vec<Finding> {
    case.photos.iter().flat_map(|photo| [edited(case, photo), other_thumbnail(photo)]).flatten().collect()
}

fn edited(case: &Case, photo: &PhotoFacts) -> Option<Finding> {
    let signed: Vec<Phrase> = photo.credentials.into_iter().flat_map(signed_otherwise).collect();
    let traces = photo.traces.filter(|t| !t.edits.is_empty() || !signed.is_empty())?;
    let by_same = |other: &&PhotoFacts| {
        other.file != photo.file && other.exif.make == photo.exif.make && other.exif.model == photo.exif.model
    };
    let mut others = case.photos.iter().filter(by_same).filter_map(|p| p.traces?.compression).peekable();
    let otherwise =
        traces.compression.is_some() && others.peek().is_some() && others.all(|c| Some(c) != traces.compression);
    let traces: Vec<Phrase> = traces.edits.iter().map(trace).chain(signed).collect();
    let message = match otherwise {
        true => phrase!("findings-edited-other", photo = photo.file, traces = traces),
        false => phrase!("findings-edited", photo = photo.file, traces = traces),
    };
    Some(Finding::new("photo-edited", Level::Warn, message).in_photo(photo.file))
}

/// What tells that a program wrote a file.
fn trace(edit: &Edit) -> Phrase {
    match edit {
        Edit::Program(name) => phrase!("findings-trace-program", program = name),
        Edit::WrittenLater(seconds) => phrase!("findings-trace-later", seconds = *seconds),
        Edit::EditorBlock => phrase!("findings-trace-editor"),
        Edit::History => phrase!("findings-trace-history"),
    }
}

/// What the photo's content credentials say of its past.
fn signed_otherwise(credentials: &Credentials) -> Vec<Phrase> {
    let broken = (!credentials.state.holds())
        .then(|| phrase!("findings-trace-credentials", failures = credentials.failures_named()));
    let edits = credentials.edits_named();
    let listed = (!edits.is_empty()).then(|| phrase!("findings-trace-listed", edits = edits));
    broken.into_iter().chain(listed).collect()
}

fn other_thumbnail(photo: &PhotoFacts) -> Option<Finding> {
    let likeness = photo.traces?.thumbnail_likeness.filter(|l| *l < ALIKE)?;
    let message = phrase!("findings-thumbnail", photo = photo.file, likeness = figure(likeness, 2));
    Some(Finding::new("thumbnail-differs", Level::Warn, message).in_photo(photo.file))
}
