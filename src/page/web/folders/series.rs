//! The attempts before one: folders of the same series.

use std::path::PathBuf;

use super::edit;
use super::shelf::Shelf;
use crate::folder::JobFile;

/// So many earlier attempts are compared with.
const COMPARED: usize = 3;

/// The latest attempts before this one, with the same sheet and kit: folders by name.
pub(in crate::web) fn earlier(shelf: &Shelf, name: &str) -> Vec<PathBuf> {
    let Some(own) = shelf.path(name).and_then(|folder| edit::read(&folder).ok()) else { return Vec::new() };
    let before = |job: &JobFile| {
        job.series.is_some()
            && (&job.series, &job.setup, &job.kit) == (&own.series, &own.setup, &own.kit)
            && job.attempt < own.attempt
    };
    let mut found = shelf.latest(usize::MAX, |e| e.job.as_ref().is_ok_and(before));
    found.sort_by_key(|e| std::cmp::Reverse(e.job.as_ref().ok().and_then(|j| j.attempt)));
    found.iter().take(COMPARED).map(|e| shelf.root().join(&e.name)).collect()
}
