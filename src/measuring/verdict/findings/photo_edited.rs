//! A photo's file is not as its camera wrote it.

use super::{Case, Explanation, Finding, PhotoFacts, Rule};
use crate::verdict::Level;

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
    let traces = photo.traces.filter(|t| !t.edits.is_empty())?;
    let by_same = |other: &&PhotoFacts| {
        other.file != photo.file && other.exif.make == photo.exif.make && other.exif.model == photo.exif.model
    };
    let mut others = case.photos.iter().filter(by_same).filter_map(|p| p.traces?.compression).peekable();
    let otherwise =
        traces.compression.is_some() && others.peek().is_some() && others.all(|c| Some(c) != traces.compression);
    let message = format!(
        "{} was written by a program after it was taken: {}{}. That proves no change of the picture, but the original file would leave no doubt.",
        photo.file,
        traces.edits.join("; "),
        if otherwise { "; it is compressed otherwise than the job's other photos by this camera" } else { "" }
    );
    Some(Finding::new("photo-edited", Level::Warn, message).in_photo(photo.file))
}

fn other_thumbnail(photo: &PhotoFacts) -> Option<Finding> {
    let likeness = photo.traces?.thumbnail_likeness.filter(|l| *l < ALIKE)?;
    let message = format!(
        "The thumbnail in {} shows another picture than the photo (correlation {likeness:.2}). The picture may have been replaced or cut; give the original file.",
        photo.file
    );
    Some(Finding::new("thumbnail-differs", Level::Warn, message).in_photo(photo.file))
}
