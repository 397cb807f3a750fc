//! Photos that could not take part, and cameras that do not fit.

use super::{Case, Finding, PhotoProblem, Rule};
use crate::verdict::Level;

pub(super) const RULE: Rule = Rule {
    codes: &["photo-resized", "camera-mismatch"],
    title: "Photo and camera file do not fit",
    rationale: "A camera file holds for one lens on one pixel grid; a photo of another size or make cannot be measured with it.",
    method: "Stored size and EXIF against the camera file. Exact; a photo without EXIF can't be told by make.",
    find,
};

fn find(case: &Case) -> Vec<Finding> {
    case.photos
        .iter()
        .filter_map(|p| {
            let code = match p.problem.as_ref()? {
                PhotoProblem::Resized(_) => "photo-resized",
                PhotoProblem::OtherCamera(_) => "camera-mismatch",
                PhotoProblem::NotLinked | PhotoProblem::NoMarkers => return None,
            };
            Some(Finding::new(code, Level::Stop, format!("{}: {}", p.file, p.problem.as_ref()?)).in_photo(p.file))
        })
        .collect()
}
