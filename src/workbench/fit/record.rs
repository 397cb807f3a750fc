//! What the photos' own records and sizes say: which belong together.

use super::reject::Rejected;
use super::seen::BoardPhoto;
use crate::camera::ExifMatch;
use crate::photo::Exif;
use crate::words::phrase;

/// Points that a photo must show to say anything of the lens.
const LEAST_POINTS: usize = 12;

/// Camera and zoom as the record names them.
type Stamp = (Option<String>, Option<String>, Option<i64>);

/// Focal lengths are compared to .05 mm.
fn stamp(exif: &Exif) -> Stamp {
    let plain = |text: &Option<String>| text.as_deref().map(|t| t.trim().to_lowercase());
    (plain(&exif.make), plain(&exif.model), exif.focal_length_mm.map(|f| (20.0 * f).round() as i64))
}

/// The photos that can be fitted together; the others with the reason.
pub(super) fn sort_out(photos: &[BoardPhoto]) -> (Vec<&BoardPhoto>, Vec<Rejected>) {
    let size = commonest(photos.iter().map(|p| p.size_px));
    let camera = commonest(photos.iter().filter(|p| Some(p.size_px) == size).map(|p| stamp(&p.exif)));
    let objection = |p: &BoardPhoto| {
        if let Some([w, h]) = size.filter(|s| *s != p.size_px) {
            let [width, height] = p.size_px;
            return Some(phrase!("fit-out-size", width = width, height = height, others_width = w, others_height = h));
        }
        if camera.as_ref().is_some_and(|c| *c != stamp(&p.exif)) {
            return Some(phrase!("fit-out-record"));
        }
        (p.points() < LEAST_POINTS).then(|| match p.seen.len() {
            0 => phrase!("fit-out-no-board"),
            n => phrase!("fit-out-few-markers", count = n),
        })
    };
    let mut kept = Vec::new();
    let mut rejected = Vec::new();
    for photo in photos {
        match objection(photo) {
            None => kept.push(photo),
            Some(why) => rejected.push(Rejected { file: photo.file.clone(), why }),
        }
    }
    (kept, rejected)
}

/// The first of the most frequent values.
fn commonest<T: PartialEq>(values: impl Iterator<Item = T>) -> Option<T> {
    let mut counted: Vec<(T, usize)> = Vec::new();
    for value in values {
        match counted.iter_mut().find(|(v, _)| *v == value) {
            Some((_, count)) => *count += 1,
            None => counted.push((value, 1)),
        }
    }
    counted.into_iter().rev().max_by_key(|(_, count)| *count).map(|(value, _)| value)
}

/// What a photo's record must say for the camera to apply.
pub(super) fn common_exif(photos: &[&BoardPhoto]) -> Option<ExifMatch> {
    let exif = &photos.first()?.exif;
    let found = ExifMatch {
        make: exif.make.clone().map(|t| t.trim().to_owned()),
        model: exif.model.clone().map(|t| t.trim().to_owned()),
        focal_length_mm: exif.focal_length_mm,
    };
    (found != ExifMatch::default()).then_some(found)
}
