//! The jobs that a page points to, and where their results and reports lie.

use std::collections::HashMap;
use std::fs;
use std::path::{Component, Path, PathBuf};

use time::format_description::well_known::Rfc3339;

use super::archive::Archive;
use crate::record::JobPointer;

/// Jobs, each once, in the order in which they were first asked for.
pub(super) struct Pointers<'a> {
    archive: &'a Archive,
    out: PathBuf,
    reports: Vec<PathBuf>,
    places: HashMap<usize, usize>,
    order: Vec<usize>,
}

impl<'a> Pointers<'a> {
    /// `out` is the folder that the page will lie in; `reports` are folders to look for reports in.
    pub(super) fn new(archive: &'a Archive, out: &Path, reports: &[PathBuf]) -> Self {
        Pointers { archive, out: absolute(out), reports: reports.to_vec(), places: HashMap::new(), order: Vec::new() }
    }

    /// A job's place in the list.
    pub(super) fn of(&mut self, job: usize) -> usize {
        let next = self.order.len();
        let place = *self.places.entry(job).or_insert(next);
        if place == next {
            self.order.push(job);
        }
        place
    }

    /// The places of at most `most` jobs.
    pub(super) fn all(&mut self, jobs: impl IntoIterator<Item = usize>, most: usize) -> Vec<usize> {
        jobs.into_iter().take(most).map(|job| self.of(job)).collect()
    }

    /// The list itself.
    pub(super) fn list(self) -> Vec<JobPointer> {
        let mut folders = Folders::default();
        let one = |job: &usize| {
            let job = &self.archive.jobs[*job];
            let source = PathBuf::from(job.source.as_ref());
            let mut report = job.folder.as_deref().and_then(|f| in_job_folder(Path::new(f)));
            let beside = source.parent().map(Path::to_path_buf);
            for folder in self.reports.iter().cloned().chain(beside) {
                report = report.or_else(|| folders.report_of(&folder, &job.job, &source));
            }
            JobPointer {
                job: job.job.to_string(),
                verdict: job.verdict,
                taken: job.taken.and_then(|t| t.format(&Rfc3339).ok()),
                result: relative(&self.out, &source),
                report: report.map(|path| relative(&self.out, &path)),
                folder: job.folder.as_deref().map(|f| relative(&self.out, Path::new(f))),
            }
        };
        self.order.iter().map(one).collect()
    }
}

/// The report of a job or evidence folder, where it has one.
fn in_job_folder(folder: &Path) -> Option<PathBuf> {
    ["report.html", "data/report.html"].iter().map(|name| folder.join(name)).find(|path| path.is_file())
}

/// Reports by the job number that their names begin with.
#[derive(Default)]
struct Folders {
    read: HashMap<PathBuf, HashMap<String, Vec<PathBuf>>>,
}

impl Folders {
    /// `JOB-DIGEST.html` as `verify --report` names it, or the result's own name with `.html`.
    fn report_of(&mut self, folder: &Path, job: &str, source: &Path) -> Option<PathBuf> {
        let names = self.read.entry(folder.to_path_buf()).or_insert_with(|| names(folder));
        let stem = source.file_stem()?.to_string_lossy().into_owned();
        if let Some([one]) = names.get(&stem).map(Vec::as_slice) {
            return Some(one.clone());
        }
        let safe = |c: char| if c.is_ascii_alphanumeric() || "-_".contains(c) { c } else { '_' };
        let plain: String = job.chars().map(safe).take(60).collect();
        match names.get(&plain).map(Vec::as_slice) {
            Some([one]) => Some(one.clone()),
            _ => None,
        }
    }
}

fn names(folder: &Path) -> HashMap<String, Vec<PathBuf>> {
    let mut names: HashMap<String, Vec<PathBuf>> = HashMap::new();
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        if path.extension().is_none_or(|e| e != "html") {
            continue;
        }
        let Some(stem) = path.file_stem().map(|s| s.to_string_lossy().into_owned()) else { continue };
        if let Some((job, digest)) = stem.rsplit_once('-')
            && digest.len() == 8
            && digest.bytes().all(|b| b.is_ascii_hexdigit())
        {
            names.entry(job.to_owned()).or_default().push(path.clone());
        }
        names.entry(stem).or_default().push(path);
    }
    names
}

fn absolute(path: &Path) -> PathBuf {
    fs::canonicalize(path).or_else(|_| std::path::absolute(path)).unwrap_or_else(|_| path.to_path_buf())
}

/// `path` as seen from the folder `from` (absolute), with `/` between names.
fn relative(from: &Path, path: &Path) -> String {
    let path = absolute(path);
    let (a, b): (Vec<Component>, Vec<Component>) = (from.components().collect(), path.components().collect());
    let same = a.iter().zip(&b).take_while(|(x, y)| x == y).count();
    if same == 0 {
        return path.to_string_lossy().into_owned();
    }
    let up = std::iter::repeat_n("..".to_owned(), a.len() - same);
    let down = b[same..].iter().map(|c| c.as_os_str().to_string_lossy().into_owned());
    up.chain(down).collect::<Vec<_>>().join("/")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn paths_are_seen_from_the_page() {
        assert_eq!(relative(Path::new("/a/out"), Path::new("/a/audit/results/x.json")), "../audit/results/x.json");
        assert_eq!(relative(Path::new("/a"), Path::new("/a/x.json")), "x.json");
    }
}
