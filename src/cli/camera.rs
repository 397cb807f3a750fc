//! `baywitness camera fit`: fits a camera to photos of a board.

use std::path::{Path, PathBuf};

use super::UNREADABLE;
use super::output::{complain, say, write_file};
use crate::camera::LensModel;
use crate::fit::{self, CameraFit, Options};
use crate::folder::{Kind, Models};
use crate::marker::Board;

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
    /// Fit a camera to 12 to 20 photos of a board
    Fit(Fit),
}

#[derive(Debug, clap::Args)]
struct Fit {
    /// Photos of the board, all by one camera at one zoom
    #[arg(required = true, value_name = "PHOTO")]
    photos: Vec<PathBuf>,
    /// The board: a file, or a name among the models
    #[arg(long, value_name = "FILE")]
    board: String,
    /// The camera file to write
    #[arg(long, value_name = "FILE")]
    out: PathBuf,
    /// The lens model
    #[arg(long, value_enum, default_value = "brown-conrady")]
    model: Model,
    /// Write a page with residuals, coverage and uncertainty into this folder
    #[arg(long, value_name = "DIR")]
    report: Option<PathBuf>,
}

#[derive(Debug, Clone, Copy, clap::ValueEnum)]
enum Model {
    /// Most lenses: k1 k2 p1 p2 k3
    BrownConrady,
    /// Very wide ones: k1 k2 k3 k4
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
    let board = board(&typed.board).map_err(unreadable)?;
    let failed = |e: fit::Error| (if e.unreadable() { UNREADABLE } else { NOT_FIT }, e.to_string());
    let photos = fit::look(&board, &typed.photos).map_err(failed)?;
    let options = Options {
        name: typed.out.file_stem().map_or_else(|| "camera".to_owned(), |s| s.to_string_lossy().into_owned()),
        model: match typed.model {
            Model::BrownConrady => LensModel::BrownConrady,
            Model::KannalaBrandt => LensModel::KannalaBrandt,
        },
    };
    let fitted = fit::fit_camera(&board, &photos, &options).map_err(failed)?;
    say(&fit::words(&fitted), None);
    if let Some(folder) = &typed.report {
        write_page(folder, &fitted).map_err(unreadable)?;
    }
    write_file(&typed.out, camera_text(&fitted).as_bytes()).map_err(unreadable)?;
    say(&format!("wrote {}\n", typed.out.display()), None);
    Ok(if fitted.fit_for_use() { 0 } else { NOT_FIT })
}

/// The camera file; one that is not fit for use says so to whoever opens it.
fn camera_text(fitted: &CameraFit) -> String {
    let reasons = fitted.advice.iter().filter(|a| a.forbids);
    let comments: String = reasons.map(|a| format!("# NOT FIT FOR USE: {}\n", a.text)).collect();
    comments + &fitted.profile.to_toml()
}

fn board(name: &str) -> Result<Board, String> {
    let models = Models::standard(None).map_err(|e| e.to_string())?;
    let source = models.open(&[Kind::Board], name).map_err(|e| e.to_string())?;
    let text = source.text().map_err(|e| e.to_string())?;
    Board::from_toml(text, source.name()).map_err(|e| e.to_string())
}

fn write_page(folder: &Path, fitted: &CameraFit) -> Result<(), String> {
    std::fs::create_dir_all(folder).map_err(|e| format!("cannot make the folder {}: {e}", folder.display()))?;
    let path = folder.join("camera.html");
    write_file(&path, fit::page(fitted).as_bytes())?;
    say(&format!("wrote {}\n", path.display()), None);
    Ok(())
}
