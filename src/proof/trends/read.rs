//! Results from files and folders, in parallel, a batch at a time.

use std::fs::{self, File};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use rayon::prelude::*;

use super::archive::{Archive, Draft, Found};
use super::split::{Batch, Objects};
use crate::record::Facts;
use crate::words::{Language, Phrase, Value, phrase};

/// Why an archive cannot be read at all. What cannot be read of its parts is
/// counted and told.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum Error {
    /// A path that was named.
    Open {
        /// Which.
        path: PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// Nothing to count; the first part that cannot be read, where there is one.
    Nothing(Option<Box<Phrase>>),
}

impl Error {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            Error::Open { path, source } => {
                phrase!("trends-cannot-read", path = path.display().to_string(), why = source.to_string())
            }
            Error::Nothing(None) => phrase!("trends-no-results"),
            Error::Nothing(Some(first)) => phrase!("trends-no-results-because", why = Phrase::clone(first)),
        }
    }
}

const LINES: &str = "audit.jsonl";
const RESULTS: &str = "results";
/// Folders in folders, at most; links are not followed.
const MOST_DEPTH: usize = 40;
/// Files that are read before their jobs are put into columns.
const FILES_AT_ONCE: usize = 4096;
/// Unreadable files that are told by name.
const MOST_WORDS: usize = 20;

/// Everything at or below the paths.
pub(super) fn read(paths: &[PathBuf]) -> Result<Archive, Error> {
    let mut archive = Archive::default();
    let mut files = Vec::new();
    for path in paths {
        let meta = fs::metadata(path).map_err(|source| Error::Open { path: path.clone(), source })?;
        if meta.is_dir() { gather(path, 0, &mut files, &mut archive) } else { files.push(path.clone()) }
    }
    files.sort();
    files.dedup();
    // Large files are split into objects; small ones are read many at a time.
    let (large, small): (Vec<_>, Vec<_>) = files
        .into_iter()
        .partition(|f| is_table(f) || f.extension().is_some_and(|e| e == "jsonl") || size(f) > 4 << 20);
    for path in large {
        if is_table(&path) { table(&path, &mut archive) } else { stream(&path, &mut archive) }
    }
    for some in small.chunks(FILES_AT_ONCE) {
        let parsed: Vec<Vec<Parsed>> = some.par_iter().map(|path| whole(path)).collect();
        parsed.into_iter().flatten().for_each(|one| keep(one, &mut archive));
    }
    if archive.jobs.is_empty() {
        return Err(Error::Nothing(archive.read.unreadable_words_phrases.first().cloned().map(Box::new)));
    }
    archive.close();
    Ok(archive)
}

fn size(path: &Path) -> u64 {
    fs::metadata(path).map_or(0, |m| m.len())
}

/// A folder's files of results: of an audit its lines, else its `results`, else
/// every JSON file at or below it.
fn gather(folder: &Path, depth: usize, files: &mut Vec<PathBuf>, archive: &mut Archive) {
    let lines = folder.join(LINES);
    if lines.is_file() {
        files.push(lines);
        return;
    }
    let results = folder.join(RESULTS);
    let folder = if results.is_dir() { &results } else { folder };
    let entries = match fs::read_dir(folder) {
        Ok(entries) => entries,
        Err(e) => return unreadable(archive, in_file(folder, e.to_string())),
    };
    for entry in entries.flatten() {
        let (path, Ok(kind)) = (entry.path(), entry.file_type()) else { continue };
        if kind.is_dir() && depth < MOST_DEPTH {
            gather(&path, depth + 1, files, archive);
        } else if kind.is_file() && (is_table(&path) || path.extension().is_some_and(|e| e == "json" || e == "jsonl")) {
            files.push(path);
        }
    }
}

/// Whether a file is an audit's table.
fn is_table(path: &Path) -> bool {
    path.extension().is_some_and(|e| e.eq_ignore_ascii_case("parquet"))
}

#[cfg(feature = "parquet")]
fn table(path: &Path, archive: &mut Archive) {
    let folder = path.parent().unwrap_or(Path::new(""));
    let mut take = |(facts, result): super::columns::RowFacts| {
        let source = result.map_or_else(|| path.to_path_buf(), |name| folder.join(name));
        let found = Found { source: source.to_string_lossy().into(), folder: facts.path.as_deref().map(Into::into) };
        keep(
            match facts.verdict {
                Some(verdict) => Parsed::Job(Box::new(Draft::new(found, &facts, verdict))),
                None if facts.format == "error/1" => Parsed::Error,
                None => Parsed::Unreadable(in_file(path, phrase!("trends-row-no-verdict"))),
            },
            archive,
        );
    };
    if let Err(why) = super::columns::each_row(path, &mut take) {
        unreadable(archive, in_file(path, why));
    }
}

#[cfg(not(feature = "parquet"))]
fn table(path: &Path, archive: &mut Archive) {
    unreadable(archive, in_file(path, phrase!("trends-no-parquet")));
}

fn unreadable(archive: &mut Archive, said: Phrase) {
    archive.read.unreadable += 1;
    if archive.read.unreadable_words.len() < MOST_WORDS {
        archive.read.unreadable_words.push(said.say(Language::English));
        archive.read.unreadable_words_phrases.push(said);
    }
}

/// What is wrong in a file.
fn in_file(path: &Path, why: impl Into<Value>) -> Phrase {
    phrase!("trends-in-file", file = path.display().to_string(), why = why)
}

/// What became of one object.
enum Parsed {
    Job(Box<Draft>),
    Error,
    Other,
    Unreadable(Phrase),
}

fn keep(parsed: Parsed, archive: &mut Archive) {
    match parsed {
        Parsed::Job(draft) => archive.add(*draft),
        Parsed::Error => archive.read.errors += 1,
        Parsed::Other => archive.read.others += 1,
        Parsed::Unreadable(said) => unreadable(archive, said),
    }
}

/// A small file's objects.
fn whole(path: &Path) -> Vec<Parsed> {
    let bytes = match fs::read(path) {
        Ok(bytes) => bytes,
        Err(e) => return vec![Parsed::Unreadable(in_file(path, e.to_string()))],
    };
    let mut objects = Objects::new(bytes.as_slice());
    let mut parsed = Vec::new();
    loop {
        match objects.next_batch() {
            Ok(Some(batch)) => {
                let found = Found { source: path.to_string_lossy().into(), folder: None };
                parsed.extend(batch.objects.iter().map(|r| one(&batch.bytes[r.clone()], &found, path)));
            }
            Ok(None) => return parsed,
            Err(e) => {
                parsed.push(Parsed::Unreadable(in_file(path, e.words())));
                return parsed;
            }
        }
    }
}

/// A large file's objects, a batch at a time.
fn stream(path: &Path, archive: &mut Archive) {
    let source: Arc<str> = path.to_string_lossy().into();
    let file = match File::open(path) {
        Ok(file) => file,
        Err(e) => return unreadable(archive, in_file(path, e.to_string())),
    };
    let mut objects = Objects::new(file);
    let found = Found { source, folder: None };
    loop {
        match objects.next_batch() {
            Ok(Some(batch)) => batch_of(&batch, &found, path).into_iter().for_each(|one| keep(one, archive)),
            Ok(None) => return,
            Err(e) => return unreadable(archive, in_file(path, e.words())),
        }
    }
}

fn batch_of(batch: &Batch, found: &Found, path: &Path) -> Vec<Parsed> {
    batch.objects.par_iter().map(|r| one(&batch.bytes[r.clone()], found, path)).collect()
}

fn one(bytes: &[u8], found: &Found, path: &Path) -> Parsed {
    let facts: Facts = match serde_json::from_slice(bytes) {
        Ok(facts) => facts,
        Err(e) => return Parsed::Unreadable(in_file(Path::new(&*found.source), e.to_string())),
    };
    match (facts.format.as_ref(), facts.verdict, facts.result) {
        ("result/1", Some(verdict), _) => Parsed::Job(Box::new(Draft::new(found.clone(), &facts, verdict))),
        ("error/1", ..) => Parsed::Error,
        ("", _, Some(result)) => line(&facts, result.get(), found, path),
        ("result/1", None, _) => Parsed::Unreadable(in_file(Path::new(&*found.source), phrase!("trends-no-verdict"))),
        _ => Parsed::Other,
    }
}

/// An audit's line: its result is there, or in a file beside it.
fn line(facts: &Facts, result: &str, found: &Found, path: &Path) -> Parsed {
    let folder: Option<Box<str>> = facts.path.as_deref().map(Into::into);
    let inner = |bytes: &[u8], source: Arc<str>| {
        let found = Found { source, folder: folder.clone() };
        match serde_json::from_slice::<Facts>(bytes) {
            Ok(facts) if facts.format == "error/1" => Parsed::Error,
            Ok(facts) => match facts.verdict {
                Some(verdict) => Parsed::Job(Box::new(Draft::new(found, &facts, verdict))),
                None => Parsed::Other,
            },
            Err(e) => Parsed::Unreadable(in_file(Path::new(&*found.source), e.to_string())),
        }
    };
    match serde_json::from_str::<String>(result) {
        Err(_) => inner(result.as_bytes(), found.source.clone()),
        Ok(name) => {
            let file = path.parent().unwrap_or(Path::new("")).join(&name);
            match fs::read(&file) {
                Ok(bytes) => inner(&bytes, file.to_string_lossy().into()),
                Err(e) => Parsed::Unreadable(in_file(&file, e.to_string())),
            }
        }
    }
}
