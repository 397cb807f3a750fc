//! The next attempt: a job of its own, with the last one sealed; and the
//! photos of earlier attempts in which the stand stood the same.

use std::path::{Component, Path, PathBuf};

use super::changes::Act;
use super::closing;
use super::opening;
use crate::folder::{JobFile, JobFolder, Origin, Phase};
use crate::web::app::App;
use crate::web::desk::{Outcome, Standing};
use crate::web::folders::Came;
use crate::web::folders::edit;
use crate::web::folders::intake;
use crate::web::trouble::Trouble;
use crate::words::{Language, phrase};

/// Seals a job and makes the job of the next attempt; its folder's name.
pub(in crate::web) fn next(
    app: &App,
    name: &str,
    folder: &Path,
    act: &Act,
    language: Language,
) -> Result<String, Trouble> {
    closing::seal(app, name, folder, act, language)?;
    let last = edit::read(folder)?;
    let series = last.series.clone().unwrap_or_else(|| last.job.clone());
    if let Some(waiting) = waiting(app, &series, &last) {
        return Ok(waiting);
    }
    let attempt = opening::next_attempt(app, &series, &last.setup).max(last.attempt.unwrap_or(1) + 1);
    let stem: String = slug(&series);
    let next = opening::numbered(app.shelf.root(), &format!("{stem}-attempt-{attempt}"))?;
    let job = JobFile {
        job: next.clone(),
        series: Some(series),
        attempt: Some(attempt),
        photos: None,
        photo_entries: None,
        moves: Vec::new(),
        taken: None,
        card: Vec::new(),
        // The stand moved: what was read of it before says nothing now.
        readings: Vec::new(),
        attachments: Vec::new(),
        calibration: None,
        ..last
    };
    let to = app.shelf.root().join(&next);
    copy_own_inputs(app, folder, &to)?;
    opening::fill(&to, &job)?;
    act.note(&to)?;
    app.shelf.refresh(true);
    Ok(next)
}

/// Copies the photos of those attempts in since which nothing moved; whoever
/// calls holds the job's lock.
pub(in crate::web) fn join(folder: &Path, standing: &Standing, earlier: &[PathBuf]) -> Result<(), Trouble> {
    let Some(Outcome::Record(record)) = &standing.outcome else {
        return Err(Trouble::typed(phrase!("page-trouble-not-measured")));
    };
    for from in earlier {
        let job = edit::read(from)?;
        let alike = record.attempts.iter().any(|a| a.job == job.job && a.together);
        if !alike {
            continue;
        }
        let photos = edit::photos(from, &job);
        // Where its stand stood last is what stood the same.
        let last = photos.iter().map(|p| p.after_move).max();
        for photo in photos.into_iter().filter(|p| !edit::is_after(p) && Some(p.after_move) == last) {
            let source = intake::picture_path(from, &photo.file).ok_or_else(|| Trouble::not_found("photo"))?;
            let bytes = std::fs::read(&source).map_err(|e| Trouble::disk("read", &e))?;
            let came = Came::copied(&bytes, &folder.join("photos"))?;
            intake::photo(folder, &came, intake::Shows { step: photo.step, phase: Phase::Before, moved: false })?;
        }
    }
    Ok(())
}

/// A later attempt that nobody photographed yet: a button pressed twice makes no two.
fn waiting(app: &App, series: &str, last: &JobFile) -> Option<String> {
    let later =
        |job: &JobFile| job.series.as_deref() == Some(series) && job.setup == last.setup && job.attempt > last.attempt;
    let empty = |name: &str, job: &JobFile| edit::photos(&app.shelf.root().join(name), job).is_empty();
    app.shelf.refresh(true);
    let found = app.shelf.latest(1, |e| !e.closed && e.job.as_ref().is_ok_and(|job| later(job) && empty(&e.name, job)));
    found.into_iter().next().map(|e| e.name)
}

/// Files that lie in the job's own folder go along.
fn copy_own_inputs(app: &App, from: &Path, to: &Path) -> Result<(), Trouble> {
    let opened = JobFolder::open(from, &app.options.models)?;
    let own = opened.inputs.iter().chain(opened.candidates.iter().map(|c| &c.input));
    for input in own.filter(|i| i.origin == Origin::Job && i.role != "job") {
        let Some(path) = &input.path else { continue };
        let Ok(inside) = path.strip_prefix(from) else { continue };
        if inside.components().any(|c| !matches!(c, Component::Normal(_))) {
            continue;
        }
        let target = to.join(inside);
        let copied =
            target.parent().map_or(Ok(()), std::fs::create_dir_all).and_then(|()| std::fs::copy(path, &target));
        copied.map_err(|e| Trouble::disk("file", &e))?;
    }
    Ok(())
}

/// A folder name of a typed text.
fn slug(text: &str) -> String {
    let plain: String = text.chars().map(|c| if c.is_ascii_alphanumeric() || c == '-' { c } else { '_' }).collect();
    plain.trim_matches(['_', '-']).chars().take(60).collect::<String>()
}
