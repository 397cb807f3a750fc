//! Where results go: JSON to a file or stdout, words to the other one.

use std::io::{ErrorKind, IsTerminal, Read, Write};
use std::path::Path;
use std::sync::OnceLock;

use crate::folder::{move_durably, write_as_named, write_durably};
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
        // A closed pipe is the reader's choice, not an error of ours.
        JsonTarget::Stdout => match std::io::stdout().write_all(text.as_bytes()) {
            Err(e) if e.kind() != ErrorKind::BrokenPipe => Err(no_stdout(&e)),
            _ => Ok(()),
        },
        JsonTarget::File(path) => target.check().and_then(|()| write_named(path, text.as_bytes())),
    }
}

impl JsonTarget {
    /// That a result is never written over what is no result: a job, a kit, a photo. Asked
    /// before the work by whoever works long.
    pub(super) fn check(&self) -> Result<(), String> {
        let JsonTarget::File(path) = self else { return Ok(()) };
        not_over_a_photo(path)?;
        let head = head_of(path);
        let first = head.iter().find(|byte| !byte.is_ascii_whitespace());
        match first {
            None | Some(b'{' | b'[') => Ok(()),
            Some(_) => Err(say!(language(), "cli-not-over-no-json", path = shown(path))),
        }
    }
}

/// Refuses a photo: an option in front of `*.jpg` takes the first of them as the file to
/// write, and a photo is the evidence.
fn not_over_a_photo(path: &Path) -> Result<(), String> {
    if is_picture(&head_of(path)) {
        return Err(say!(language(), "cli-not-over-a-photo", path = shown(path)));
    }
    Ok(())
}

/// The first bytes of a file that is there; nothing of a pipe or device, which would wait
/// or lose what is read.
fn head_of(path: &Path) -> Vec<u8> {
    let mut head = Vec::with_capacity(64);
    if std::fs::metadata(path).is_ok_and(|there| there.is_file()) {
        let _ = std::fs::File::open(path).and_then(|file| file.take(64).read_to_end(&mut head));
    }
    head
}

/// Writes a file of the program's own name so that it is either whole or as it was, never over a photo
/// and never through a link. Its folder is made: nobody should lose minutes of work to a folder that
/// is not there yet.
pub(super) fn write_file(path: &Path, bytes: &[u8]) -> Result<(), String> {
    written_by(write_durably, path, bytes)
}

/// The same for a file that was named on the command line: a link stays and what it leads to is
/// written, and so is a pipe or a device.
pub(super) fn write_named(path: &Path, bytes: &[u8]) -> Result<(), String> {
    written_by(write_as_named, path, bytes)
}

fn written_by(write: fn(&Path, &[u8]) -> std::io::Result<()>, path: &Path, bytes: &[u8]) -> Result<(), String> {
    let failed = |e: std::io::Error| cannot_write(path, &e);
    not_over_a_photo(path)?;
    if let Some(folder) = path.parent().filter(|p| !p.as_os_str().is_empty()) {
        std::fs::create_dir_all(folder).map_err(failed)?;
    }
    match write(path, bytes) {
        // Who reads a pipe may leave it.
        Err(e) if e.kind() != ErrorKind::BrokenPipe => Err(failed(e)),
        _ => Ok(()),
    }
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

/// A text file's text, without a byte order mark.
pub(super) fn read_text(path: &Path) -> Result<String, String> {
    let no_utf8 = || say!(language(), "cli-no-utf8", path = shown(path));
    let text = std::fs::read_to_string(path).map_err(|e| match e.kind() {
        ErrorKind::InvalidData => no_utf8(),
        _ => cannot_read(path, &e),
    })?;
    // Plain letters in UTF-16 are valid UTF-8 with a NUL beside each; no text has one.
    if text.contains('\0') {
        return Err(no_utf8());
    }
    Ok(text.strip_prefix('\u{feff}').map_or_else(|| text.clone(), str::to_owned))
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

/// Prints sentences for people: as [`say`], and in a terminal wrapped like the words of `verify`.
/// What goes to a file or a program keeps its lines.
pub(super) fn tell(text: &str, json: Option<&JsonTarget>) {
    if is_terminal(json) { say(&wrapped(text), json) } else { say(text, json) }
}

/// Lines that are too long go on below, a little further in.
fn wrapped(text: &str) -> String {
    /// Columns of a terminal, as `verify` wraps at.
    const WIDTH: usize = 80;
    let one = |line: &str| {
        if textwrap::core::display_width(line) <= WIDTH {
            return line.to_owned();
        }
        let words = line.trim_start();
        let indent = &line[..line.len() - words.len()];
        let below = format!("{indent}  ");
        let options = textwrap::Options::new(WIDTH).initial_indent(indent).subsequent_indent(&below);
        // Names of files and options stay whole.
        let options = options.break_words(false).word_splitter(textwrap::WordSplitter::NoHyphenation);
        textwrap::fill(words, options)
    };
    text.split('\n').map(one).collect::<Vec<_>>().join("\n")
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

/// Whether words go to a terminal.
fn is_terminal(json: Option<&JsonTarget>) -> bool {
    if json == Some(&JsonTarget::Stdout) { std::io::stderr().is_terminal() } else { std::io::stdout().is_terminal() }
}

/// Whether words go to a terminal that may show colour.
pub(super) fn colour(json: Option<&JsonTarget>) -> bool {
    is_terminal(json) && may_colour(std::env::var("TERM").ok().as_deref(), std::env::var("NO_COLOR").ok().as_deref())
}

/// Whether the environment lets a terminal have colour (`NO_COLOR` as no-color.org says; a dumb
/// terminal, as terminfo names it, would show the codes as letters).
fn may_colour(term: Option<&str>, no_colour: Option<&str>) -> bool {
    term != Some("dumb") && no_colour.is_none_or(str::is_empty)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_that_are_too_long_for_a_terminal_go_on_below() {
        let long =
            format!("  - {}\nshort\n  {:<44} {}\n", "a plain word ".repeat(9), "check", "1 mm and more ".repeat(5));
        let told = wrapped(&long);
        assert!(told.lines().all(|line| line.chars().count() <= 80), "{told}");
        assert!(told.lines().count() == 5 && told.lines().any(|line| line == "short"), "{told}");
        let below = told.lines().nth(1).unwrap();
        assert_eq!(below.len() - below.trim_start().len(), 4, "{told}");
        let words = |text: &str| text.split_whitespace().map(str::to_owned).collect::<Vec<_>>();
        assert_eq!(words(&told), words(&long));
        // What has no place to break stays whole, so that it can be copied.
        let path = format!("/{}", "folder/".repeat(20));
        assert_eq!(wrapped(&path), path);
        assert_eq!(wrapped("a table   keeps\n\nits columns\n"), "a table   keeps\n\nits columns\n");
    }

    #[test]
    fn a_dumb_terminal_and_one_without_colour_get_none() {
        assert!(may_colour(None, None) && may_colour(Some("xterm-256color"), Some("")));
        assert!(!may_colour(Some("dumb"), None) && !may_colour(Some("xterm"), Some("1")));
    }
}
