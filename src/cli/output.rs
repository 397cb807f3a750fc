//! Where results go: JSON to a file or stdout, words to the other one.

use std::io::{IsTerminal, Read, Write};
use std::path::Path;
use std::sync::OnceLock;

use crate::folder::{move_durably, write_durably};
use crate::input::printable;
use crate::photo::is_picture;
use crate::words::{Language, Wish, say};

/// Where JSON goes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum JsonTarget {
    /// Standard output; people's text then goes to stderr.
    Stdout,
    /// A file.
    File(std::path::PathBuf),
}

impl std::str::FromStr for JsonTarget {
    type Err = std::convert::Infallible;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        Ok(if text == "-" { JsonTarget::Stdout } else { JsonTarget::File(text.into()) })
    }
}

/// Writes JSON where it was asked for.
pub(super) fn write_json(target: &JsonTarget, json: &impl serde::Serialize) -> Result<(), String> {
    let mut text = serde_json::to_string_pretty(json).map_err(|e| cannot_write(Path::new("JSON"), &e))?;
    text.push('\n');
    match target {
        JsonTarget::Stdout => std::io::stdout().write_all(text.as_bytes()).map_err(|e| no_stdout(&e)),
        JsonTarget::File(path) if is_photo(path) => Err(say!(language(), "cli-not-over-a-photo", path = shown(path))),
        JsonTarget::File(path) => write_file(path, text.as_bytes()),
    }
}

/// Whether there is a photo already: `--json` in front of photos would take the first of
/// them as the file to write, and a photo is the evidence.
fn is_photo(path: &Path) -> bool {
    let mut head = Vec::with_capacity(12);
    let read = std::fs::File::open(path).and_then(|file| file.take(12).read_to_end(&mut head));
    read.is_ok() && is_picture(&head)
}

/// Writes a file so that it is either whole or as it was. Its folder is made:
/// nobody should lose minutes of work to a folder that is not there yet.
pub(super) fn write_file(path: &Path, bytes: &[u8]) -> Result<(), String> {
    let failed = |e: std::io::Error| cannot_write(path, &e);
    if let Some(folder) = path.parent().filter(|p| !p.as_os_str().is_empty()) {
        std::fs::create_dir_all(folder).map_err(failed)?;
    }
    write_durably(path, bytes).map_err(failed)
}

/// A file that is written bit by bit, since it need not fit into memory; in its place once it is whole.
pub(super) fn write_file_by(
    path: &Path,
    write: impl FnOnce(&mut std::io::BufWriter<std::fs::File>) -> std::io::Result<()>,
) -> Result<(), String> {
    let mut part = path.as_os_str().to_owned();
    part.push(".part");
    let part = std::path::PathBuf::from(part);
    let written = std::fs::File::create(&part).and_then(|file| {
        let mut file = std::io::BufWriter::new(file);
        write(&mut file)?;
        file.into_inner().map_err(std::io::IntoInnerError::into_error)?.sync_all()
    });
    written.and_then(|()| move_durably(&part, path)).map_err(|e| cannot_write(path, &e))
}

/// Makes a folder that files are asked for in.
pub(super) fn make_folder(folder: &Path) -> Result<(), String> {
    std::fs::create_dir_all(folder)
        .map_err(|e| say!(language(), "cli-cannot-make-folder", path = shown(folder), why = e.to_string()))
}

/// A text file's text.
pub(super) fn read_text(path: &Path) -> Result<String, String> {
    std::fs::read_to_string(path).map_err(|e| cannot_read(path, &e))
}

/// That a file or folder cannot be read, and why.
pub(super) fn cannot_read(path: &Path, why: &impl ToString) -> String {
    say!(language(), "cli-cannot-read", path = shown(path), why = why.to_string())
}

/// That a file cannot be written, and why.
pub(super) fn cannot_write(path: &Path, why: &impl ToString) -> String {
    say!(language(), "cli-cannot-write", path = shown(path), why = why.to_string())
}

/// That nothing can be written to standard output.
pub(super) fn no_stdout(why: &std::io::Error) -> String {
    say!(language(), "cli-no-stdout", why = why.to_string())
}

/// A path as messages show it: what would command a terminal or turn its writing is escaped.
pub(super) fn shown(path: &Path) -> String {
    printable(path.display().to_string())
}

/// Whether words for people are held back; said once, before any work.
static QUIET: OnceLock<bool> = OnceLock::new();

/// Holds back words for people, where asked.
pub(super) fn set_quiet(quiet: bool) {
    QUIET.get_or_init(|| quiet);
}

fn is_quiet() -> bool {
    QUIET.get().copied().unwrap_or(false)
}

/// What people read; said once, before any work.
static LANGUAGE: OnceLock<Wish> = OnceLock::new();

/// The language that was typed, else that of the environment.
pub(super) fn set_language(typed: Option<Language>) {
    LANGUAGE.get_or_init(|| Wish { typed, otherwise: Language::of_environment() });
}

/// The language of everything that people read.
pub(super) fn language() -> Language {
    wish().for_job(None)
}

/// The same for a job's report, which may have a wish of its own.
pub(super) fn wish() -> Wish {
    LANGUAGE.get().copied().unwrap_or(Wish { typed: None, otherwise: Language::English })
}

/// A language as typed.
pub(super) fn language_of(tag: &str) -> Result<Language, String> {
    let known = Language::ALL.map(Language::tag).join(", ");
    Language::of_tag(tag).ok_or_else(|| say!(language(), "help-not-choice", known = known))
}

/// Prints words for people: to stdout, or to stderr where stdout carries JSON.
pub(super) fn say(text: &str, json: Option<&JsonTarget>) {
    if is_quiet() {
        return;
    }
    // A closed pipe is the reader's choice, not an error of ours.
    let _ = if json == Some(&JsonTarget::Stdout) {
        std::io::stderr().write_all(text.as_bytes())
    } else {
        std::io::stdout().write_all(text.as_bytes())
    };
}

/// Prints something that is no result, such as progress.
pub(super) fn note(text: &str) {
    if is_quiet() {
        return;
    }
    let _ = std::io::stderr().write_all(text.as_bytes());
}

/// Prints an error.
pub(super) fn complain(message: &str) {
    let _ = writeln!(std::io::stderr(), "{}", say!(language(), "cli-error", message = message));
}

/// Whether words go to a terminal that may show colour.
pub(super) fn colour(json: Option<&JsonTarget>) -> bool {
    let terminal = if json == Some(&JsonTarget::Stdout) {
        std::io::stderr().is_terminal()
    } else {
        std::io::stdout().is_terminal()
    };
    terminal && std::env::var_os("NO_COLOR").is_none_or(|v| v.is_empty())
}
