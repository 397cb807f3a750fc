//! `baywitness sheet`: prints a marker kit or a camera board.

use std::path::PathBuf;

use super::codes::UNREADABLE;
use super::output::{complain, language, say, write_named};
use crate::folder::{Kind, Models};
use crate::input::SourceFile;
use crate::marker::{Board, Kit, KitFile};
use crate::sheet::{self, Options, Paper, RulerReading};
use crate::words::{Figure, Language, say};

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(value_name = "KIT|BOARD")]
    model: String,
    #[arg(long, value_name = "FILE.pdf", required_unless_present_any = ["corrected", "measured_mm"])]
    out: Option<PathBuf>,
    #[arg(long, default_value = "a4", value_parser = paper)]
    paper: Paper,
    #[arg(long, value_name = "RIGHT,UP", value_delimiter = ',', num_args = 1, requires = "corrected")]
    #[arg(allow_hyphen_values = true, value_parser = ruler)]
    measured_mm: Vec<f64>,
    #[arg(long, value_name = "FILE.toml", requires = "measured_mm")]
    corrected: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    models: Option<PathBuf>,
}

fn paper(name: &str) -> Result<Paper, String> {
    let known = Paper::ALL.map(Paper::name).join(", ");
    name.parse().map_err(|_| say!(language(), "help-not-choice", known = known))
}

fn ruler(text: &str) -> Result<f64, String> {
    text.trim().parse().map_err(|_| say!(language(), "cli-sheet-measured"))
}

/// What is printed.
enum Printable {
    Kit(Kit),
    Board(Board),
}

type Failure = Box<dyn std::error::Error>;

/// Prints; the exit code is 0 or 2.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match work(arguments) {
        Ok(()) => 0,
        Err(failure) => {
            complain(&words(&failure));
            UNREADABLE
        }
    }
}

/// The words of a failure, in the reader's language where it has any.
fn words(failure: &Failure) -> String {
    let language = language();
    let input = failure.downcast_ref::<crate::input::Error>().map(|e| e.say(language));
    let sheet = || failure.downcast_ref::<sheet::Error>().map(|e| e.phrase().say(language));
    input.or_else(sheet).unwrap_or_else(|| failure.to_string())
}

fn work(arguments: &Arguments) -> Result<(), Failure> {
    let source = Models::standard(arguments.models.as_deref())?.open(&[Kind::Kit, Kind::Board], &arguments.model)?;
    let printable = read(&source)?;
    if let Some(corrected) = &arguments.corrected {
        let reading = reading(&arguments.measured_mm)?;
        if let Some(line) = as_printed(source.text()?) {
            return Err(say!(language(), "cli-sheet-corrected", file = source.name(), line = line).into());
        }
        let text = corrected_text(&printable, arguments.paper, &reading)?;
        write_named(corrected, text.as_bytes())?;
        let [right, up] = reading.scale().map(|scale| Figure::fixed(100.0 * scale, 3));
        let file = corrected.display().to_string();
        say(&(say!(language(), "print-wrote-corrected", file = file, right = right, up = up) + "\n"), None);
    }
    if let Some(out) = &arguments.out {
        let options = Options { paper: arguments.paper, language: language() };
        let pdf = match &printable {
            Printable::Kit(kit) => sheet::pdf_for_kit(kit, &options),
            Printable::Board(board) => sheet::pdf_for_board(board, &options),
        };
        write_named(out, &pdf.map_err(|error| format!("{}: {}", source.name(), error.phrase().say(language())))?)?;
        let file = out.display().to_string();
        say(&(say!(language(), "print-wrote", file = file, paper = arguments.paper.name()) + "\n"), None);
    }
    Ok(())
}

/// The file's first key tells what it is.
fn read(source: &SourceFile) -> Result<Printable, Failure> {
    let text = source.text()?;
    let is_board = text.parse::<toml::Table>().is_ok_and(|table| {
        table.get("format").and_then(toml::Value::as_str).is_some_and(|format| format.starts_with("board/"))
    });
    if is_board {
        return Ok(Printable::Board(Board::from_toml(text, source.name())?));
    }
    // A surveyed layout says nothing about what to print.
    Ok(Printable::Kit(KitFile::from_toml(text, source.name())?.kit))
}

fn reading(measured_mm: &[f64]) -> Result<RulerReading, Failure> {
    let [right, up] = measured_mm else {
        let wanted = crate::words::say!(super::output::language(), "cli-sheet-measured");
        return Err(format!("--measured-mm: {wanted}").into());
    };
    Ok(RulerReading::new(*right, *up)?)
}

/// The comment that says that a file's sizes are as printed, in whatever language it was written.
fn as_printed(text: &str) -> Option<&str> {
    // What the sentence begins with, before the first figure.
    let beginning = |language: Language, paper: Paper| {
        let said = crate::words::say!(language, "cli-file-printed", paper = paper.name(), right = "|", up = "|");
        said.split('|').next().unwrap_or_default().to_owned()
    };
    let all: Vec<String> =
        Language::ALL.iter().flat_map(|language| Paper::ALL.iter().map(|paper| beginning(*language, *paper))).collect();
    let comments = text.lines().take_while(|line| line.is_empty() || line.starts_with('#'));
    let mut comments = comments.filter(|line| all.iter().any(|b| line.trim_start_matches(['#', ' ']).starts_with(b)));
    comments.next()
}

fn corrected_text(printable: &Printable, paper: Paper, reading: &RulerReading) -> Result<String, Failure> {
    let [right, up] = reading.scale().map(|scale| Figure::plain(scale * sheet::RULER_MM));
    let note = say!(language(), "cli-file-printed", paper = paper.name(), right = right, up = up);
    let note = format!("# {note}\n");
    let text = match printable {
        Printable::Kit(kit) => sheet::corrected_kit(kit, paper, reading)?.to_toml(None),
        Printable::Board(board) => sheet::corrected_board(board, reading).to_toml(),
    };
    Ok(note + &text)
}
