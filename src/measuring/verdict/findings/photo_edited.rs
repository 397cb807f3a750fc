//! A photo's file is not as its camera wrote it.

use super::{Case, Explanation, Finding, PhotoFacts, Rule};
use crate::photo::Edit;
use crate::verdict::Level;
use crate::verdict::words::figure;
use crate::words::{Phrase, phrase};

pub(super) const RULE: Rule = Rule {
    codes: &["photo-edited", "thumbnail-differs"],
    title: "Edited photos",
    rationale: "What was measured is the picture in the file; a program that wrote it anew may have changed more than its turn.",
    method: "Marks that editing programs leave and cameras do not: a processing program named in the record, an editor's data \
             block, a history of edits, a time of writing more than a minute after the picture was taken. The record's \
             thumbnail against the picture: correlation at 24 by 18 cells below 0.85 at the best of four turns, black bars and \
             longer sides cut off. Compression tables are only named beside other marks: phones use the standard's tables \
             too. An edit that leaves no mark, or one of a small part of the picture, is not seen; a harmless turn or rename \
             in a gallery may leave one.",
    touches: super::Touches::Nothing,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[
    Explanation {
        code: "photo-edited",
        level: Level::Warn,
        title: "Photo written by a program",
        meaning: "The file bears marks of a program that wrote it after the camera did. That is no proof that anything in the picture was changed.",
        cause: "The photo was turned, trimmed or improved in a gallery or an editor, or exported from an app instead of copied.",
        look: "Compare with the original on the phone: its details name the time it was taken and the program that wrote it.",
        remedy: "Copy the original file from the phone and verify again; keep the edited one aside.",
    },
    Explanation {
        code: "thumbnail-differs",
        level: Level::Warn,
        title: "Thumbnail of another picture",
        meaning: "The small picture that the camera put into the file does not show what the photo shows. That is no proof of intent.",
        cause: "A program replaced or cut the picture and left the old thumbnail, or a device wrote a wrong one.",
        look: "Open the thumbnail with any viewer of photo records and lay it beside the photo.",
        remedy: "Give the original file from the phone; if it was lost, take the photo again.",
    },
];

/// A thumbnail of the same picture correlates by more than .95 however it was made.
const ALIKE: f64 = 0.85;

fn find(case: &Case) -> Vec<Finding> {
    case.photos.iter().flat_map(|photo| [edited(case, photo), other_thumbnail(photo)]).flatten().collect()
}

fn edited(case: &Case, photo: &PhotoFacts) -> Option<Finding> {
    let traces = photo.traces.filter(|t| !t.edits.is_empty())?;
    let by_same = |other: &&PhotoFacts| {
        other.file != photo.file && other.exif.make == photo.exif.make && other.exif.model == photo.exif.model
    };
    let mut others = case.photos.iter().filter(by_same).filter_map(|p| p.traces?.compression).peekable();
    let otherwise =
        traces.compression.is_some() && others.peek().is_some() && others.all(|c| Some(c) != traces.compression);
    let traces: Vec<Phrase> = traces.edits.iter().map(trace).collect();
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

fn other_thumbnail(photo: &PhotoFacts) -> Option<Finding> {
    let likeness = photo.traces?.thumbnail_likeness.filter(|l| *l < ALIKE)?;
    let message = phrase!("findings-thumbnail", photo = photo.file, likeness = figure(likeness, 2));
    Some(Finding::new("thumbnail-differs", Level::Warn, message).in_photo(photo.file))
}
