//! Photos and files that the page's script sends, or its forms where there is no script.

use std::path::PathBuf;
use std::sync::Arc;

use axum::Json;
use axum::body::Body;
use axum::extract::multipart::{Field, Multipart, MultipartRejection};
use axum::extract::{Path, Query, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};

use super::answer::{json_trouble, see_or};
use super::request::{Shared, change, job, queried};
use crate::folder::Phase;
use crate::web::address::job_path;
use crate::web::app::App;
use crate::web::deeds::{Act, Deed};
use crate::web::entry::Who;
use crate::web::folders::Kept;
use crate::web::folders::intake;
use crate::web::folders::{Announced, Came, take, take_any};
use crate::web::language::Visitor;
use crate::web::limits;
use crate::web::trouble::Trouble;
use crate::words::phrase;
use tokio::sync::OwnedSemaphorePermit;

type Pairs = Vec<(String, String)>;

/// Fields of a form besides its files.
const FORM_FIELDS: usize = 8;

/// The step that a photo is said to be of.
pub(in crate::web) fn step(said: &Pairs) -> Option<String> {
    queried(said, "step").filter(|s| !s.is_empty()).map(str::to_owned)
}

/// What a photo is said to be of.
fn shows(said: &Pairs) -> intake::Shows {
    intake::Shows {
        step: step(said),
        phase: if queried(said, "phase") == Some("after") { Phase::After } else { Phase::Before },
        moved: queried(said, "moved") == Some("yes"),
    }
}

/// Takes one photo. It is acknowledged when it is on the disk and in the job file.
pub(in crate::web) async fn photo(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
    Query(query): Query<Pairs>,
    headers: HeaderMap,
    body: Body,
) -> Response {
    let shows = shows(&query);
    let sent = async {
        let (announced, came) = photo_came(&app, &name, &headers, body).await?;
        let act = Act::new(&app, &who, Deed::Photo);
        let kept = change(&app, &name, act, move |folder| intake::photo(folder, &came, shows)).await?;
        Ok((announced, kept))
    };
    answer(visitor, sent.await)
}

/// Receives one photo and looks whether it is one that can be measured.
pub(in crate::web) async fn photo_came(
    app: &Arc<App>,
    name: &str,
    headers: &HeaderMap,
    body: Body,
) -> Result<(Announced, Came), Trouble> {
    let announced = Announced::of(headers)?;
    let came = came(app, name, &announced, "photos", body, limits::PHOTO_BYTES).await?;
    intake::recognised(&came)?;
    app.desk.examine(&came.path).await?;
    Ok((announced, came))
}

/// Takes one attachment.
pub(in crate::web) async fn file(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
    Query(query): Query<Pairs>,
    headers: HeaderMap,
    body: Body,
) -> Response {
    let kind = queried(&query, "kind").unwrap_or("other").to_owned();
    let sent_as = queried(&query, "name").unwrap_or_default().to_owned();
    let sent = async {
        let announced = Announced::of(&headers)?;
        let came = came(&app, &name, &announced, "attachments", body, limits::ATTACHMENT_BYTES).await?;
        let kept = change(&app, &name, Act::new(&app, &who, Deed::File), move |folder| {
            intake::attachment(folder, &came, &kind, &sent_as)
        })
        .await?;
        Ok((announced, kept))
    };
    answer(visitor, sent.await)
}

/// Takes what a form sends from a page without script: photos or attachments,
/// with the form's other fields before them. Ends at the page that it came from.
pub(in crate::web) async fn form(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
    form: Result<Multipart, MultipartRejection>,
) -> Response {
    let broken = || Trouble::new(StatusCode::BAD_REQUEST, "form", phrase!("page-trouble-form"));
    let sent = async {
        let mut form = form.map_err(|_| broken())?;
        let mut said: Vec<(String, String)> = Vec::new();
        while let Some(field) = form.next_field().await.map_err(|_| broken())? {
            let part = field.name().unwrap_or_default().to_owned();
            let sent_as = field.file_name().map(str::to_owned);
            match sent_as {
                // A browser sends an empty file where none was chosen.
                Some(sent_as) if sent_as.is_empty() => {}
                Some(sent_as) => one_of_form((&app, &who), &name, &said, (&part, &sent_as), field).await?,
                None if said.len() < FORM_FIELDS => {
                    said.push((part, field.text().await.map_err(|_| broken())?.chars().take(200).collect()));
                }
                None => return Err(broken()),
            }
        }
        Ok(job_path(&name, if queried(&said, "page") == Some("finish") { "finish" } else { "photos" }))
    };
    see_or(visitor, sent.await)
}

/// Keeps one file of a form.
async fn one_of_form(
    (app, who): (&Arc<App>, &Who),
    name: &str,
    said: &Vec<(String, String)>,
    (part, sent_as): (&str, &str),
    field: Field<'_>,
) -> Result<(), Trouble> {
    if part == "photo" {
        let shows = shows(said);
        let (within, _place) = room_for(app, name, "photos").await?;
        let came = take_any(field, "form", &within, limits::PHOTO_BYTES).await?;
        intake::recognised(&came)?;
        app.desk.examine(&came.path).await?;
        change(app, name, Act::new(app, who, Deed::Photo), move |folder| intake::photo(folder, &came, shows)).await?;
    } else {
        let (kind, sent_as) = (queried(said, "kind").unwrap_or("other").to_owned(), sent_as.to_owned());
        let (within, _place) = room_for(app, name, "attachments").await?;
        let came = take_any(field, "form", &within, limits::ATTACHMENT_BYTES).await?;
        change(app, name, Act::new(app, who, Deed::File), move |folder| {
            intake::attachment(folder, &came, &kind, &sent_as)
        })
        .await?;
    }
    Ok(())
}

/// The whole file, in a folder of an open job.
async fn came(
    app: &Arc<App>,
    name: &str,
    announced: &Announced,
    within: &str,
    body: Body,
    most: u64,
) -> Result<Came, Trouble> {
    let (within, _place) = room_for(app, name, within).await?;
    take(body, announced, &within, most).await
}

/// The folder of an open job that a file comes into, and a place among the uploads.
async fn room_for(app: &Arc<App>, name: &str, within: &str) -> Result<(PathBuf, OwnedSemaphorePermit), Trouble> {
    let (folder, _) = job(app, name)?;
    if app.shelf.is_closed(name) {
        return Err(Trouble::closed());
    }
    let busy = |_| Trouble::new(StatusCode::SERVICE_UNAVAILABLE, "busy", phrase!("page-trouble-uploads-busy"));
    let place = Arc::clone(&app.uploads).try_acquire_owned().map_err(busy)?;
    let within: PathBuf = folder.join(within);
    tokio::fs::create_dir_all(&within).await.map_err(|e| Trouble::disk("folder", &e))?;
    Ok((within, place))
}

fn answer(visitor: Visitor, sent: Result<(Announced, (Kept, String)), Trouble>) -> Response {
    match sent {
        Ok((announced, (kept, file))) => {
            let status = if kept == Kept::New { StatusCode::CREATED } else { StatusCode::OK };
            let body = serde_json::json!({
                "id": announced.id, "sha256": announced.sha256, "kept": kept.name(), "file": file
            });
            (status, Json(body)).into_response()
        }
        Err(trouble) => json_trouble(visitor, &trouble),
    }
}
