//! No camera took a photo: this program rendered it.

use super::{Case, Explanation, Finding, PhotoFacts, Rule, Touches};
use crate::photo::Mark;
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule =
    Rule { name: "photo-rendered", codes: &["photo-rendered"], touches: Touches::Everything, find };

pub(super) const EXPLAIN: &[Explanation] = &[Explanation::of("photo-rendered", Level::Stop)];

/// A sample or a drill says itself what it is.
fn find(case: &Case) -> Vec<Finding> {
    if case.job.rendered { Vec::new() } else { case.photos.iter().filter_map(rendered).collect() }
}

fn rendered(photo: &PhotoFacts) -> Option<Finding> {
    let marks = &photo.traces?.rendered;
    let place = match (marks.contains(&Mark::Record), marks.contains(&Mark::Picture)) {
        (true, true) => "both",
        (true, false) => "record",
        (false, true) => "picture",
        (false, false) => return None,
    };
    let message = phrase!("findings-rendered", photo = photo.file, place = place);
    Some(Finding::new("photo-rendered", Level::Stop, message).in_photo(photo.file))
}
