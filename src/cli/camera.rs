//! `baywitness camera fit`: fits a camera to photos of a board.

use std::path::{Path, PathBuf};

use super::codes::UNREADABLE;
use super::output::{complain, language, make_folder, say, write_file, write_named};
use crate::camera::{LensModel, Profile};
use crate::fit::{self, CameraFit, Options};
use crate::folder::{Kind, Models};
use crate::marker::{Board, Kit};
use crate::words::{Phrase, say};

/// The fit, or what became of it, is not fit for use.
const NOT_FIT: u8 = 3;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[command(subcommand)]
    task: Task,
}

#[derive(Debug, clap::Subcommand)]
enum Task {
    Fit(Fit),
}

#[derive(Debug, clap::Args)]
struct Fit {
    #[arg(required = true, value_name = "PHOTO")]
    photos: Vec<PathBuf>,
    #[arg(long, value_name = "FILE")]
    board: String,
    #[arg(long, value_name = "FILE")]
    out: PathBuf,
    #[arg(long, value_enum, default_value = "brown-conrady")]
    model: Model,
    #[cfg(feature = "sensor-pattern")]
    #[arg(long, value_name = "FILE")]
    pattern: Option<PathBuf>,
    #[arg(long, value_name = "DIR")]
    report: Option<PathBuf>,
}

#[derive(Debug, Clone, Copy, clap::ValueEnum)]
enum Model {
    BrownConrady,
    KannalaBrandt,
}

/// Runs the task; exit code 0, 2 unreadable, 3 not fit for use.
pub(super) fn run(arguments: &Arguments) -> u8 {
    let Task::Fit(options) = &arguments.task;
    match work(options) {
        Ok(code) => code,
        Err((code, message)) => {
            complain(&message);
            code
        }
    }
}

fn work(typed: &Fit) -> Result<u8, (u8, String)> {
    let unreadable = |message: String| (UNREADABLE, message);
    let name = typed.out.file_stem().map_or_else(|| "camera".to_owned(), |s| s.to_string_lossy().into_owned());
    let model = match typed.model {
        Model::BrownConrady => LensModel::BrownConrady,
        Model::KannalaBrandt => LensModel::KannalaBrandt,
    };
    let fitted = match target(&typed.board).map_err(unreadable)? {
        Target::Board(board) => on_board(typed, &board, Options { name: name.clone(), model }),
        Target::Kit(kit) => on_kit(typed, &kit, &name, model),
    }?;
    #[cfg(feature = "sensor-pattern")]
    if let Some(file) = &typed.pattern {
        write_pattern(file, &name, &typed.photos)?;
    }
    Ok(fitted)
}

/// The sensor's pattern; it does not need a camera that is fit for use.
#[cfg(feature = "sensor-pattern")]
fn write_pattern(file: &Path, camera: &str, photos: &[PathBuf]) -> Result<(), (u8, String)> {
    use super::origin::{Refused, made};
    let (bytes, words) = made(camera, photos).map_err(|refused| match refused {
        Refused::Unreadable(message) => (UNREADABLE, message),
        Refused::Unfit(message) => (NOT_FIT, message),
    })?;
    write_named(file, &bytes).map_err(|message| (UNREADABLE, message))?;
    let wrote = say!(language(), "fit-wrote", file = file.display().to_string());
    say(&format!("{words}\n{wrote}\n"), None);
    Ok(())
}

fn failed(e: fit::Error) -> (u8, String) {
    (if e.unreadable() { UNREADABLE } else { NOT_FIT }, e.phrase().say(language()))
}

fn on_board(typed: &Fit, board: &Board, options: Options) -> Result<u8, (u8, String)> {
    let unreadable = |message: String| (UNREADABLE, message);
    let photos = fit::look(board, &typed.photos).map_err(failed)?;
    let fitted = fit::fit_camera(board, &photos, &options).map_err(failed)?;
    say(&fit::words(&fitted, language()), None);
    if let Some(folder) = &typed.report {
        write_page(folder, &fitted).map_err(unreadable)?;
    }
    let reasons = fitted.advice.iter().filter(|a| a.forbids).map(|a| &a.said);
    write_camera(&typed.out, &fitted.profile, reasons).map_err(unreadable)?;
    Ok(if fitted.fit_for_use() { 0 } else { NOT_FIT })
}

fn on_kit(typed: &Fit, kit: &Kit, name: &str, model: LensModel) -> Result<u8, (u8, String)> {
    let unreadable = |message: String| (UNREADABLE, message);
    if typed.report.is_some() {
        return Err(unreadable(say!(language(), "cli-camera-no-report")));
    }
    let photos = fit::look_at_kit(&typed.photos).map_err(failed)?;
    let fitted = fit::fit_on_kit(kit, &photos, name, model).map_err(failed)?;
    say(&fitted.words(language()), None);
    write_camera(&typed.out, &fitted.profile, fitted.objections.iter()).map_err(unreadable)?;
    Ok(if fitted.objections.is_empty() { 0 } else { NOT_FIT })
}

/// The camera file; one that is not fit for use says so to whoever opens it.
fn write_camera<'a>(out: &Path, profile: &Profile, reasons: impl Iterator<Item = &'a Phrase>) -> Result<(), String> {
    let comment = |why: &Phrase| format!("# {}\n", say!(language(), "cli-file-not-fit", why = why.clone()));
    let comments: String = reasons.map(comment).collect();
    write_named(out, (comments + &profile.to_toml()).as_bytes())?;
    say(&(say!(language(), "fit-wrote", file = out.display().to_string()) + "\n"), None);
    Ok(())
}

enum Target {
    Board(Board),
    Kit(Box<Kit>),
}

/// The file's first key tells what it is.
fn target(name: &str) -> Result<Target, String> {
    let models = Models::standard(None).map_err(|e| e.say(language()))?;
    let source = models.open(&[Kind::Board, Kind::Kit], name).map_err(|e| e.say(language()))?;
    let text = source.text().map_err(|e| e.say(language()))?;
    let format = text.parse::<toml::Table>().ok().and_then(|t| Some(t.get("format")?.as_str()?.to_owned()));
    if format.is_some_and(|f| f.starts_with("kit/")) {
        return Ok(Target::Kit(Box::new(super::survey::kit(&models, name)?)));
    }
    Ok(Target::Board(Board::from_toml(text, source.name()).map_err(|e| e.say(language()))?))
}

fn write_page(folder: &Path, fitted: &CameraFit) -> Result<(), String> {
    make_folder(folder)?;
    let path = folder.join("camera.html");
    write_file(&path, fit::page(fitted, language()).as_bytes())?;
    say(&(say!(language(), "fit-wrote", file = path.display().to_string()) + "\n"), None);
    Ok(())
}
