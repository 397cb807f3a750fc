//! `baywitness` alone, where jobs lie: what could be done next with each.

use std::fmt::Write;
use std::path::{Path, PathBuf};

use super::codes::UNREADABLE;
use super::output::{complain, language, say};
use crate::evidence::is_evidence;
use crate::folder::{JobFolder, Models};
use crate::words::say;

/// Folders in folders that are looked into: jobs here, in a folder, in a folder of folders.
const MOST_DEPTH: usize = 2;
/// Looked at, at most: typed in somebody's home folder, the answer must still come at once.
const MOST_ENTRIES: usize = 5_000;
/// Told of one by one; an archive is the business of `audit`.
const MOST_TOLD: usize = 8;

/// A folder to go on with.
#[derive(Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Found {
    Job(PathBuf),
    Evidence(PathBuf),
}

/// Prints what could be done next; `None` where there is no job.
pub(super) fn run() -> Option<u8> {
    let found = find(Path::new("."));
    if found.is_empty() {
        return None;
    }
    let models = match Models::standard(None) {
        Ok(models) => models,
        Err(e) => {
            complain(&e.say(language()));
            return Some(UNREADABLE);
        }
    };
    let told: Vec<String> = found.iter().take(MOST_TOLD).map(|one| words(one, &models)).collect();
    let language = language();
    let mut text = format!("{}\n\n{}\n", say!(language, "cli-next"), told.join("\n"));
    if found.len() > MOST_TOLD {
        let rest = found.len() - MOST_TOLD;
        let _ = writeln!(text, "{}\n", say!(language, "cli-next-more", count = rest));
    }
    let _ = writeln!(text, "{}", say!(language, "cli-next-all-commands"));
    say(&text, None);
    Some(0)
}

/// Job and evidence folders at or a little below `here`, in the order of their paths.
fn find(here: &Path) -> Vec<Found> {
    let (mut found, mut looked) = (Vec::new(), 0);
    let mut open = vec![(here.to_path_buf(), 0)];
    while let Some((path, depth)) = open.pop() {
        if is_evidence(&path) {
            found.push(Found::Evidence(path));
            continue;
        }
        if path.join("job.toml").is_file() {
            found.push(Found::Job(path));
            continue;
        }
        // A folder that cannot be read holds nothing that could be done next.
        for entry in std::fs::read_dir(&path).into_iter().flatten().flatten() {
            looked += 1;
            let folder = entry.file_type().is_ok_and(|t| t.is_dir());
            let hidden = entry.file_name().to_string_lossy().starts_with('.');
            if folder && !hidden && depth < MOST_DEPTH && looked < MOST_ENTRIES {
                open.push((entry.path(), depth + 1));
            }
        }
    }
    found.sort();
    found
}

fn words(found: &Found, models: &Models) -> String {
    match found {
        Found::Job(path) => job_words(path, models),
        Found::Evidence(path) => {
            let at = typed(path);
            let sealed = say!(language(), "cli-next-sealed", folder = &at);
            format!("{sealed}\n  baywitness check {at}\n")
        }
    }
}

fn job_words(path: &Path, models: &Models) -> String {
    let at = typed(path);
    let job = match JobFolder::open(shown(path), models) {
        Ok(job) => job,
        Err(e) => return format!("{}\n  {e}\n", say!(language(), "cli-next-not-ready", folder = at)),
    };
    let mut text = say!(language(), "cli-next-photos", folder = &at, count = job.photos.len()) + "\n";
    if job.photos.len() == 1 {
        let _ = writeln!(text, "  {}", say!(language(), "cli-next-one-more"));
    }
    let open: Vec<&str> = job.setup.prerequisites.iter().filter(|p| p.required).map(|p| p.id.as_str()).collect();
    let open: Vec<&str> = open.into_iter().filter(|id| !job.job.prerequisites.contains_key(*id)).collect();
    if !open.is_empty() {
        let _ = writeln!(text, "  {}", say!(language(), "cli-next-answer", questions = open.join(", ")));
    }
    if job.photos.len() > 1 {
        let _ = writeln!(text, "  baywitness verify {at} --report report");
        let out = evidence_of(path);
        if !out.exists() {
            let _ = writeln!(text, "  baywitness seal {at} --out {}", typed(&out));
        }
    }
    text
}

/// Where a job's evidence could go: never inside of the job.
fn evidence_of(job: &Path) -> PathBuf {
    let whole = std::path::absolute(job).unwrap_or_else(|_| job.to_path_buf());
    let name = whole.components().next_back().map_or_else(|| "job".into(), |c| PathBuf::from(c.as_os_str()));
    let beside = if shown(job) == Path::new(".") { "../evidence" } else { "evidence" };
    Path::new(beside).join(name)
}

/// Without the leading `./`, which nobody types.
fn shown(path: &Path) -> &Path {
    let short = path.strip_prefix(".").unwrap_or(path);
    if short.as_os_str().is_empty() { Path::new(".") } else { short }
}

/// As it can be typed in a shell.
fn typed(path: &Path) -> String {
    let text = shown(path).display().to_string();
    let plain = text.chars().all(|c| c.is_alphanumeric() || "./\\:_-+,".contains(c));
    if plain { text } else { format!("\"{text}\"") }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_folders_near_by_are_found() {
        let room = tempfile::tempdir().unwrap();
        for file in ["b/job.toml", "b/inner/job.toml", "a/x/bagit.txt", "a/x/data/f", ".h/job.toml", "a/x2/y/job.toml"]
        {
            let path = room.path().join(file);
            std::fs::create_dir_all(path.parent().unwrap()).unwrap();
            std::fs::write(path, "").unwrap();
        }
        let at = |name: &str| room.path().join(name);
        assert_eq!(find(room.path()), [Found::Job(at("b")), Found::Evidence(at("a/x"))]);
        assert_eq!(find(&at("b")), [Found::Job(at("b"))]);
        assert_eq!(find(&at("a/x/data")), []);
    }

    #[test]
    fn paths_are_shown_as_they_are_typed() {
        assert_eq!(typed(Path::new("./jobs/D-1")), "jobs/D-1");
        assert_eq!(typed(Path::new(".")), ".");
        assert_eq!(typed(Path::new("./my jobs/D-1")), "\"my jobs/D-1\"");
        assert_eq!(evidence_of(Path::new("./jobs/D-1")), Path::new("evidence/D-1"));
        assert!(evidence_of(Path::new(".")).starts_with("../evidence"));
    }
}
