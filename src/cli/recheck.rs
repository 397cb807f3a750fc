//! `baywitness recheck`: a fixed reference against its first survey.

use std::path::{Path, PathBuf};

use time::{Date, OffsetDateTime};

use super::codes::UNREADABLE;
use super::output::{complain, language, make_folder, say, write_file, write_named};
use super::survey::{cameras, kit};
use crate::folder::Models;
use crate::survey::{self, Recheck};
use crate::words::say;

/// Something moved, or the photos do not say.
const OUT: u8 = 3;

/// Options as typed.
#[derive(Debug, clap::Args)]
pub(super) struct Arguments {
    #[arg(required = true, value_name = "PHOTO")]
    photos: Vec<PathBuf>,
    #[arg(long, alias = "rig", value_name = "FILE")]
    kit: String,
    #[arg(long, value_name = "FILE.csv")]
    log: PathBuf,
    #[arg(long, value_name = "FILE")]
    camera: Option<String>,
    #[arg(long, value_name = "DATE", value_parser = super::dates::date)]
    date: Option<Date>,
    #[arg(long, value_name = "DIR")]
    report: Option<PathBuf>,
}

/// Checks the reference; exit code 0 in order, 3 out or not measured, 2 unreadable.
pub(super) fn run(arguments: &Arguments) -> u8 {
    match work(arguments) {
        Ok(code) => code,
        Err((code, message)) => {
            complain(&message);
            code
        }
    }
}

fn work(typed: &Arguments) -> Result<u8, (u8, String)> {
    let unreadable = |message: String| (UNREADABLE, message);
    let mut all = read_log(&typed.log).map_err(unreadable)?;
    let models = Models::standard(None).map_err(|e| unreadable(e.say(language())))?;
    let first = kit(&models, &typed.kit).map_err(unreadable)?;
    let cameras = cameras(&models, typed.camera.as_deref()).map_err(unreadable)?;
    let failed = |e: survey::Error| (if e.unreadable() { UNREADABLE } else { OUT }, e.phrase().say(language()));
    let photos = survey::look(&typed.photos, &|_| ()).map_err(failed)?;
    let taken = photos.iter().find_map(|p| p.exif.taken.map(OffsetDateTime::date));
    let date = typed.date.or(taken).unwrap_or_else(|| OffsetDateTime::now_utc().date());
    let named = typed.camera.is_some();
    all.push(survey::recheck(&first, &cameras, &photos, named, &date.to_string()).map_err(failed)?);
    let (words, out) = survey::recheck_words(&all, language());
    say(&words, None);
    let lines: String = all.iter().map(|r| r.to_csv() + "\n").collect();
    write_named(&typed.log, format!("{}\n{lines}", Recheck::HEAD).as_bytes()).map_err(unreadable)?;
    if let Some(folder) = &typed.report {
        make_folder(folder).map_err(unreadable)?;
        let path = folder.join("recheck.html");
        write_file(&path, survey::recheck_page(&first.name, &all, language()).as_bytes()).map_err(unreadable)?;
        say(&(say!(language(), "fit-wrote", file = path.display().to_string()) + "\n"), None);
    }
    Ok(if out { OUT } else { 0 })
}

/// The earlier checks; a log that is not there yet has none.
fn read_log(path: &Path) -> Result<Vec<Recheck>, String> {
    if !path.exists() {
        return Ok(Vec::new());
    }
    let text = super::output::read_text(path)?;
    let (language, file) = (super::output::language(), super::output::shown(path));
    let mut lines = text.lines();
    if lines.next().is_none_or(|head| head.trim() != Recheck::HEAD) {
        return Err(crate::words::say!(language, "cli-recheck-no-log", file = file, head = Recheck::HEAD));
    }
    let one = |(i, line): (usize, &str)| {
        let wrong = || crate::words::say!(language, "cli-recheck-no-check", file = &file, line = i + 2);
        Recheck::from_csv(line).ok_or_else(wrong)
    };
    lines.enumerate().filter(|(_, l)| !l.trim().is_empty()).map(one).collect()
}
