//! Who changed what of a job, when: `changes.jsonl` beside the job file, only
//! ever added to. A line is one deed: what it took out of `job.toml` and what
//! it put in.

use std::collections::HashMap;
use std::fs::OpenOptions;
use std::io::{Read, Seek, SeekFrom, Write};
use std::path::Path;

use serde::{Deserialize, Serialize};
use time::OffsetDateTime;
use time::format_description::well_known::Rfc3339;

use crate::custody::CHANGES;
use crate::web::app::App;
use crate::web::entry::Who;
use crate::web::folders::edit;
use crate::web::limits;
use crate::web::trouble::Trouble;

/// What was done, as the list and the page name it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub(in crate::web) enum Deed {
    Begin,
    Prepare,
    Photo,
    Aside,
    Back,
    File,
    Calibration,
    Card,
    Join,
    Attempt,
    Close,
}

/// One line of the list.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub(in crate::web) struct Change {
    /// RFC 3339, by the bay's clock.
    pub(in crate::web) at: String,
    /// The device's name, or "this machine".
    pub(in crate::web) by: String,
    /// The first digits of its token's SHA-256.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(in crate::web) device: Option<String>,
    pub(in crate::web) did: Deed,
    /// Lines of `job.toml` that are no longer there, each behind its table's name.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::web) removed: Vec<String>,
    /// Lines that are new.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(in crate::web) added: Vec<String>,
}

/// A deed and whose it is.
#[derive(Debug, Clone)]
pub(in crate::web) struct Act {
    who: Who,
    did: Deed,
    at: OffsetDateTime,
}

impl Act {
    pub(in crate::web) fn new(app: &App, who: &Who, did: Deed) -> Self {
        Act { who: who.clone(), did, at: app.now() }
    }

    /// Notes what the deed changed since the job file was `before`; nothing, where that is nothing.
    /// Whoever calls holds the job's lock.
    pub(in crate::web) fn note_since(&self, folder: &Path, before: &[String]) -> Result<(), Trouble> {
        let after = lines(folder);
        let (removed, added) = (beyond(before, &after), beyond(&after, before));
        if removed.is_empty() && added.is_empty() {
            return Ok(());
        }
        self.add(folder, removed, added)
    }

    /// Notes that it was done.
    pub(in crate::web) fn note(&self, folder: &Path) -> Result<(), Trouble> {
        self.add(folder, Vec::new(), Vec::new())
    }

    fn add(&self, folder: &Path, removed: Vec<String>, added: Vec<String>) -> Result<(), Trouble> {
        let change = Change {
            at: self.at.format(&Rfc3339).unwrap_or_default(),
            by: self.who.name.to_string(),
            device: self.who.id.as_deref().map(str::to_owned),
            did: self.did,
            removed,
            added,
        };
        let disk = |e: std::io::Error| Trouble::disk("list", &e);
        let mut line = serde_json::to_vec(&change).map_err(|e| disk(e.into()))?;
        line.push(b'\n');
        let mut file =
            OpenOptions::new().append(true).create(true).read(true).open(folder.join(CHANGES)).map_err(disk)?;
        // What a power cut left of a line stays, on a line of its own.
        if !ends_whole(&mut file).map_err(disk)? {
            line.insert(0, b'\n');
        }
        file.write_all(&line).and_then(|()| file.sync_all()).map_err(disk)
    }
}

fn ends_whole(file: &mut std::fs::File) -> std::io::Result<bool> {
    if file.metadata()?.len() == 0 {
        return Ok(true);
    }
    let mut last = [0];
    file.seek(SeekFrom::End(-1))?;
    file.read_exact(&mut last)?;
    Ok(last == *b"\n")
}

/// What a job file says, a line for each value behind the name of its table.
pub(in crate::web) fn lines(folder: &Path) -> Vec<String> {
    let text = edit::read(folder).map(|job| job.to_toml()).unwrap_or_default();
    let mut table = String::new();
    let mut all = Vec::new();
    for line in text.lines().map(str::trim).filter(|l| !l.is_empty() && !l.starts_with('#')) {
        match line.starts_with('[') && line.ends_with(']') {
            true => table = format!("{line} "),
            false => all.push(format!("{table}{line}")),
        }
    }
    all
}

/// What `these` have more than `those`, each as often as it is more.
fn beyond(these: &[String], those: &[String]) -> Vec<String> {
    let mut left: HashMap<&str, usize> = HashMap::new();
    for line in those {
        *left.entry(line).or_default() += 1;
    }
    let more = |line: &&String| match left.get_mut(line.as_str()) {
        Some(n) if *n > 0 => {
            *n -= 1;
            false
        }
        _ => true,
    };
    these.iter().filter(more).cloned().collect()
}

/// The latest changes of a job, the last one first.
pub(in crate::web) fn latest(folder: &Path) -> Vec<Change> {
    let text = std::fs::read_to_string(folder.join(CHANGES)).unwrap_or_default();
    text.lines().rev().filter_map(|l| serde_json::from_str(l).ok()).take(limits::CHANGES_SHOWN).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_more_is_told_as_often_as_it_is_more() {
        let all = |lines: &[&str]| lines.iter().map(|l| (*l).to_owned()).collect::<Vec<_>>();
        let (before, after) = (all(&["a = 1", "b = 2", "b = 2"]), all(&["b = 2", "c = 3", "c = 3"]));
        assert_eq!(beyond(&before, &after), ["a = 1", "b = 2"]);
        assert_eq!(beyond(&after, &before), ["c = 3", "c = 3"]);
    }

    #[test]
    fn lines_are_added_behind_half_a_line() {
        let job = tempfile::tempdir().unwrap();
        std::fs::write(job.path().join(CHANGES), "{\"at\":\"20").unwrap();
        let who = Who { name: "a \"name\"".into(), id: None };
        let act = Act { who, did: Deed::Close, at: OffsetDateTime::UNIX_EPOCH };
        act.note(job.path()).unwrap();
        act.note(job.path()).unwrap();
        let text = std::fs::read_to_string(job.path().join(CHANGES)).unwrap();
        assert_eq!(text.lines().count(), 3, "{text}");
        let read = latest(job.path());
        assert_eq!((read.len(), read[0].by.as_str(), read[0].did), (2, "a \"name\"", Deed::Close));
    }
}
