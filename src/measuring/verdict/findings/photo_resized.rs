//! A photo was saved again at another size.

use super::{Case, Explanation, Finding, Open, PhotoFacts, PhotoProblem, Rule, Touches};
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    codes: &["photo-resized"],
    title: "Resized",
    rationale: "A camera file holds for one pixel grid; a photo that was scaled has lost pixels and fits no camera file.",
    method: "Stored size against the camera file, and against the size that the photo's own EXIF states. Exact; a \
             photo that was scaled, scaled back and stripped of its EXIF only shows as blurred.",
    touches: Touches::Everything,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "photo-resized",
    level: Level::Stop,
    title: "Photo resized",
    meaning: "The photo is not as large as its camera stores pictures.",
    cause: "A messenger, a mail program or an app for pictures made it smaller on the way, or it was cropped.",
    look: "The gallery on the phone shows the original's size in pixels.",
    remedy: "Copy the original file from the phone by cable or as a file, not as a picture in a message.",
}];

fn find(case: &Case) -> Vec<Finding> {
    let photos = case.photos.iter().enumerate();
    photos.filter_map(|(j, p)| against_camera(p).or_else(|| against_exif(j, p))).collect()
}

fn against_camera(photo: &PhotoFacts) -> Option<Finding> {
    let problem = photo.problem.as_ref().filter(|p| matches!(p, PhotoProblem::Resized(_)))?;
    let finding = Finding::new(
        "photo-resized",
        Level::Stop,
        phrase!("findings-of-photo", photo = photo.file, why = problem.phrase()),
    );
    // It takes no part: the figures are the other photos'.
    Some(finding.in_photo(photo.file).touching(Touches::MovesOnly))
}

fn against_exif(j: usize, photo: &PhotoFacts) -> Option<Finding> {
    let [width, height] = photo.exif.pixel_size?;
    let mut stored = photo.size_px;
    let mut stated = [width as usize, height as usize];
    // Some software states the sides of the turned picture.
    stored.sort_unstable();
    stated.sort_unstable();
    if stored == stated || stored == [0, 0] || stated[0] == 0 {
        return None;
    }
    let [stored_width, stored_height] = photo.size_px.map(|px| px.to_string());
    let message = phrase!(
        "findings-resized",
        photo = photo.file,
        width = stored_width,
        height = stored_height,
        stated_width = width.to_string(),
        stated_height = height.to_string()
    );
    let finding = Finding::new("photo-resized", Level::Stop, message).in_photo(photo.file);
    Some(finding.leaving(vec![Open::WithoutPhoto(j)]))
}
