//! Photos and files that the page's script sends.

use std::path::PathBuf;
use std::sync::Arc;

use axum::Json;
use axum::body::Body;
use axum::extract::{Path, Query, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};

use super::answer::json_trouble;
use super::app::App;
use super::intake::{self, Kept};
use super::limits;
use super::routes::{Shared, change, job, queried};
use super::trouble::Trouble;
use super::upload::{Announced, Came, take};
use crate::folder::Phase;

type Pairs = Vec<(String, String)>;

/// Takes one photo. It is acknowledged when it is on the disk and in the job file.
pub(super) async fn photo(
    State(app): Shared,
    Path(name): Path<String>,
    Query(query): Query<Pairs>,
    headers: HeaderMap,
    body: Body,
) -> Response {
    let phase = if queried(&query, "phase") == Some("after") { Phase::After } else { Phase::Before };
    let step = queried(&query, "step").filter(|s| !s.is_empty()).map(str::to_owned);
    let sent = async {
        let announced = Announced::of(&headers)?;
        let came = came(&app, &name, &announced, "photos", body, limits::PHOTO_BYTES).await?;
        intake::recognised(&came)?;
        app.desk.examine(&came.path).await?;
        let kept = change(&app, &name, move |folder| intake::photo(folder, &came, step, phase)).await?;
        Ok((announced, kept))
    };
    answer(sent.await)
}

/// Takes one attachment.
pub(super) async fn file(
    State(app): Shared,
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
        let kept = change(&app, &name, move |folder| intake::attachment(folder, &came, &kind, &sent_as)).await?;
        Ok((announced, kept))
    };
    answer(sent.await)
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
    let (folder, _) = job(app, name)?;
    if app.shelf.is_closed(name) {
        return Err(Trouble::closed());
    }
    let busy = |_| Trouble::new(StatusCode::SERVICE_UNAVAILABLE, "busy", "many files come at once: send it again soon");
    let _place = Arc::clone(&app.uploads).try_acquire_owned().map_err(busy)?;
    let within: PathBuf = folder.join(within);
    tokio::fs::create_dir_all(&within).await.map_err(|e| Trouble::disk("make a folder for the file", &e))?;
    take(body, announced, &within, most).await
}

fn answer(sent: Result<(Announced, (Kept, String)), Trouble>) -> Response {
    match sent {
        Ok((announced, (kept, file))) => {
            let status = if kept == Kept::New { StatusCode::CREATED } else { StatusCode::OK };
            let body = serde_json::json!({
                "id": announced.id, "sha256": announced.sha256, "kept": kept.name(), "file": file
            });
            (status, Json(body)).into_response()
        }
        Err(trouble) => json_trouble(&trouble),
    }
}
