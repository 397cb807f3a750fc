//! Photos of two jobs that are one photo, though not the same bytes: saved again, or with something behind it.

use super::judged::Judged;
use crate::words::Value;

/// Two jobs with one photo, as a lead says it.
#[derive(Debug)]
pub(super) struct Alike {
    /// The later job's path and the earlier one's.
    pub(super) paths: [String; 2],
    /// The photo's name in each.
    pub(super) photos: [String; 2],
}

impl Alike {
    /// Those that an audit's line leads to. Photos that are the same bytes are known by their digests.
    pub(super) fn of(line: &Judged) -> impl Iterator<Item = Alike> + '_ {
        line.across.iter().filter(|lead| lead.code == "photo-of-another-job").filter_map(|lead| {
            let text = |name: &str| match lead.message_phrase.as_ref()?.with.get(name)? {
                Value::Text(text) => Some(text.clone()),
                _ => None,
            };
            let photos = [text("photo")?, text("other")?];
            (text("how")? == "view").then(|| Alike { paths: [line.path.clone(), lead.other.clone()], photos })
        })
    }

    /// The other job's path and its photo's name, where one of the two is this one.
    pub(super) fn beside(&self, path: &str) -> Option<(&str, &str)> {
        let own = self.paths.iter().position(|p| p == path)?;
        Some((&self.paths[1 - own], &self.photos[1 - own]))
    }
}
