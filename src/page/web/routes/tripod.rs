//! Photos of a camera on a tripod: each is compared with the one before, and of
//! every place in which the stand is at rest only the newest is kept.

use std::path::Path as FilePath;
use std::sync::Arc;

use axum::Json;
use axum::body::Body;
use axum::extract::{Path, Query, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};

use super::answer::json_trouble;
use super::request::{Pairs, Shared, job};
use super::sending;
use crate::folder::{self, KeptNewest, NewPhoto, Stands, keep_newest, kept_last, move_durably};
use crate::job::Tripod;
use crate::web::app::App;
use crate::web::deeds::changes;
use crate::web::deeds::named;
use crate::web::deeds::{Act, Deed};
use crate::web::desk::Bench;
use crate::web::desk::Happened;
use crate::web::desk::Named;
use crate::web::entry::Who;
use crate::web::folders::Came;
use crate::web::folders::edit;
use crate::web::folders::intake;
use crate::web::language::Visitor;
use crate::web::limits;
use crate::web::trouble::{Trouble, blocking};
use crate::words::{Phrase, phrase};

/// First photos that a tripod's photos are measured against.
const FIRST: usize = 2;

/// What became of one photo of the tripod.
struct Taken {
    /// What it shows.
    said: Phrase,
    kept: Option<KeptNewest>,
}

impl Taken {
    /// The word for scripts.
    fn name(&self) -> &'static str {
        match self.kept {
            Some(KeptNewest::First(_)) => "new",
            Some(KeptNewest::Instead(_)) => "newest",
            Some(KeptNewest::OlderStays(_)) => "older-stays",
            Some(KeptNewest::Already(_)) => "already",
            None => "skipped",
        }
    }

    fn file(&self) -> Option<&str> {
        match self.kept.as_ref()? {
            KeptNewest::First(entry) | KeptNewest::Instead(entry) => Some(&entry.file),
            KeptNewest::OlderStays(file) | KeptNewest::Already(file) => Some(file),
        }
    }

    fn changed_the_job(&self) -> bool {
        matches!(self.kept, Some(KeptNewest::First(_) | KeptNewest::Instead(_)))
    }
}

/// Takes one photo of a tripod; says what it is, and whether it is kept.
pub(in crate::web) async fn photo(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
    Query(query): Query<Pairs>,
    headers: HeaderMap,
    body: Body,
) -> Response {
    let step = sending::step(&query);
    let taken = async {
        let (_, came) = sending::photo_came(&app, &name, &headers, body).await?;
        take(&app, &name, Act::new(&app, &who, Deed::Photo), came, step).await
    };
    match taken.await {
        Ok(taken) => {
            let status = if taken.changed_the_job() { StatusCode::CREATED } else { StatusCode::OK };
            let said = taken.said.say(visitor.language);
            (status, Json(serde_json::json!({ "kept": taken.name(), "file": taken.file(), "said": said })))
                .into_response()
        }
        Err(trouble) => json_trouble(visitor, &trouble),
    }
}

/// Compares and keeps it, with nobody else at the job's files.
async fn take(app: &Arc<App>, name: &str, act: Act, came: Came, step: Option<String>) -> Result<Taken, Trouble> {
    let (folder, bench) = job(app, name)?;
    let lock = bench.edit.lock().await;
    if app.shelf.is_closed(name) {
        return Err(Trouble::closed());
    }
    let (at, of) = (Arc::clone(app), Arc::clone(&bench));
    let taken = blocking(move || {
        let before = changes::lines(&folder);
        let taken = compared(&at, &of, &folder, &came, step.as_deref())?;
        act.note_since(&folder, &before)?;
        Ok(taken)
    })
    .await?;
    drop(lock);
    bench.set_tripod_said(taken.said.clone());
    if taken.changed_the_job() {
        app.desk.wake(&bench);
    }
    bench.tell(Happened::Photos);
    Ok(taken)
}

fn compared(app: &App, bench: &Bench, folder: &FilePath, came: &Came, step: Option<&str>) -> Result<Taken, Trouble> {
    let file = edit::read(folder)?;
    let listed = edit::photos(folder, &file);
    if listed.iter().filter(|e| e.after_move == 0).count() < FIRST {
        let words = phrase!("page-trouble-no-first-photos");
        return Err(Trouble::new(StatusCode::CONFLICT, "no-first-photos", words));
    }
    let Named { setup, kit, .. } = named(app, folder, &file).map_err(Trouble::typed)?;
    if step.map_or(!setup.steps.is_empty(), |s| setup.steps.iter().all(|known| known != s)) {
        return Err(Trouble::typed(phrase!("page-trouble-which-step", steps = setup.steps.join(", "))));
    }
    let mut tripod = match bench.take_tripod() {
        Some(tripod) => tripod,
        None => {
            folder::sweep(folder)?;
            let kept = kept_last(folder, step)?.map(|kept| app.desk.frame(&kept, &kit)).transpose()?;
            kept.map(Tripod::resumed).unwrap_or_default()
        }
    };
    let seen = tripod.next(app.desk.frame(&came.path, &kit)?, &kit);
    bench.keep_tripod(tripod);
    let said = seen.phrase(&kit);
    let Some(stands) = seen.stands() else { return Ok(Taken { said, kept: None }) };
    if stands == Stands::Elsewhere && listed.len() >= limits::PHOTOS {
        let words = phrase!("page-trouble-many-photos", most = limits::PHOTOS);
        return Err(Trouble::new(StatusCode::CONFLICT, "too-many", words));
    }
    let ending = intake::ending(&came.path)?;
    // What a logged verdict rests on stays, and with a log each verdict is logged.
    let photo = NewPhoto { sha256: &came.sha256, ending, step, stands, older_stays: app.log.is_some() };
    let kept = keep_newest(folder, &photo, |to| move_durably(&came.path, to))?;
    Ok(Taken { said, kept: Some(kept) })
}
