//! A photo was saved again at another size.

use super::{Case, Explanation, Finding, Open, PhotoFacts, PhotoProblem, Rule, Touches};
use crate::verdict::Level;

pub(super) const RULE: Rule =
    Rule { name: "photo-resized", codes: &["photo-resized"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("photo-resized", Level::Stop)];

fn find(case: &Case) -> Vec<Finding> {
    let photos = case.photos.iter().enumerate();
    photos.filter_map(|(j, p)| against_camera(p).or_else(|| against_exif(j, p))).collect()
}

fn against_camera(photo: &PhotoFacts) -> Option<Finding> {
    let problem = photo.problem.as_ref().filter(|p| matches!(p, PhotoProblem::Resized(_)))?;
    let finding = Finding::new("photo-resized", Level::Stop, format!("{}: {problem}", photo.file));
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
    let message = format!(
        "{} has {} x {} px, but its own record says {width} x {height}: it was saved again at another size. Use the photo as the camera stored it.",
        photo.file, photo.size_px[0], photo.size_px[1]
    );
    let finding = Finding::new("photo-resized", Level::Stop, message).in_photo(photo.file);
    Some(finding.leaving(vec![Open::WithoutPhoto(j)]))
}
