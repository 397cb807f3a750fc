//! Lines of an audit on the disk. What stays in memory of each is where it lies,
//! so that an archive may have any number of jobs.

use std::collections::HashMap;
use std::fs::{File, OpenOptions};
use std::hash::{BuildHasher, RandomState};
use std::io::{self, BufRead, BufReader, Seek, Write};
use std::path::{Path, PathBuf};
use std::sync::Mutex;

use super::failed::{LedgerError, failed};
use super::judged::Judged;

/// A file of lines that are looked up by their job's path, and added to.
#[derive(Debug)]
pub(super) struct LineFile {
    path: PathBuf,
    /// Where each line begins, by a number of its job's path; the line itself says whose it is.
    places: HashMap<u64, u64>,
    numbers: RandomState,
    reader: Mutex<BufReader<File>>,
    /// The end that is added to, and how long the file is.
    writer: Mutex<(File, u64)>,
}

impl LineFile {
    /// Opens a file, which need not be there yet. A line that was cut off is taken
    /// away where it is the last, and passed over elsewhere; of two for one job the later counts.
    pub(super) fn open(path: &Path) -> Result<Self, LedgerError> {
        let writer = OpenOptions::new().read(true).append(true).create(true).open(path);
        let writer = writer.map_err(failed("write", path))?;
        let numbers = RandomState::new();
        let mut places = HashMap::new();
        let mut reader = BufReader::new(File::open(path).map_err(failed("read", path))?);
        let (mut at, mut line) = (0_u64, Vec::new());
        loop {
            line.clear();
            let read = reader.read_until(b'\n', &mut line).map_err(failed("read", path))?;
            if line.last() != Some(&b'\n') {
                break;
            }
            if let Ok(judged) = serde_json::from_slice::<PathOfLine>(&line) {
                places.insert(numbers.hash_one(judged.path.as_ref()), at);
            }
            at += read as u64;
        }
        writer.set_len(at).map_err(failed("write", path))?;
        let (reader, writer) = (Mutex::new(reader), Mutex::new((writer, at)));
        Ok(LineFile { path: path.to_path_buf(), places, numbers, reader, writer })
    }

    /// Where the line of a job begins, and the line.
    pub(super) fn of(&self, path: &str) -> Option<(u64, Judged)> {
        let at = *self.places.get(&self.numbers.hash_one(path))?;
        // One that cannot be read any more, or is of another job, is none.
        self.at(at).ok().filter(|line| line.path == path).map(|line| (at, line))
    }

    /// Every line that can be read, in the file's order; to be called before any is added.
    pub(super) fn each(&self, mut take: impl FnMut(Judged)) {
        let Ok(file) = File::open(&self.path) else { return };
        for line in BufReader::new(file).split(b'\n').map_while(Result::ok) {
            if let Ok(judged) = serde_json::from_slice(&line) {
                take(judged);
            }
        }
    }

    pub(super) fn is_empty(&self) -> bool {
        self.places.is_empty()
    }

    /// The line that begins at a place.
    pub(super) fn at(&self, place: u64) -> Result<Judged, LedgerError> {
        let mut line = Vec::new();
        let mut reader = self.reader.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        let mut read = || {
            let here = reader.stream_position()?;
            // Lines are mostly asked for one after the other: what is read ahead stays.
            reader.seek_relative(place.wrapping_sub(here) as i64)?;
            reader.read_until(b'\n', &mut line)
        };
        read().map_err(failed("read", &self.path))?;
        drop(reader);
        serde_json::from_slice(&line).map_err(|e| failed("read", &self.path)(e.into()))
    }

    /// Adds a line and says where it begins, once it is on the disk.
    pub(super) fn add(&self, line: &Judged) -> Result<u64, LedgerError> {
        let text = text_of(line);
        let mut guard = self.writer.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        let (file, end) = &mut *guard;
        let write = file.write_all(text.as_bytes()).and_then(|()| file.sync_data());
        write.map_err(failed("write", &self.path))?;
        let at = *end;
        *end += text.len() as u64;
        Ok(at)
    }
}

/// A line as it stands in the file.
pub(super) fn text_of(line: &Judged) -> String {
    let mut text = serde_json::to_string(line).unwrap_or_default();
    text.push('\n');
    text
}

/// As much of a line as tells whose it is and that it is whole.
#[derive(serde::Deserialize)]
struct PathOfLine<'a> {
    #[serde(borrow)]
    path: std::borrow::Cow<'a, str>,
    #[serde(rename = "exit")]
    _exit: u8,
    #[serde(rename = "digest", borrow)]
    _digest: std::borrow::Cow<'a, str>,
}

/// The lines of a finished audit, in the order of their paths.
#[derive(Debug, Clone)]
pub struct Lines {
    path: PathBuf,
    count: usize,
}

impl Lines {
    pub(super) fn new(path: PathBuf, count: usize) -> Self {
        Lines { path, count }
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.count
    }

    /// Whether there is none.
    pub fn is_empty(&self) -> bool {
        self.count == 0
    }

    /// Each line, read as it is asked for.
    ///
    /// # Errors
    /// The file cannot be read.
    pub fn iter(&self) -> Result<impl Iterator<Item = Result<Judged, LedgerError>> + use<>, LedgerError> {
        let path = self.path.clone();
        let file = File::open(&path).map_err(failed("read", &path))?;
        let read = move |bytes: io::Result<Vec<u8>>| {
            let parsed = bytes.and_then(|line| serde_json::from_slice(&line).map_err(Into::into));
            parsed.map_err(failed("read", &path))
        };
        Ok(BufReader::new(file).split(b'\n').map(read))
    }
}
