//! Deeds that are asked for: what forms and buttons send.

use std::sync::Arc;

use axum::extract::{Path, State};
use axum::http::header::{REFERER, SET_COOKIE};
use axum::http::{HeaderMap, HeaderValue, StatusCode};
use axum::response::Response;

use super::answer::{html, see, see_or, trouble_page};
use super::request::{Shared, Typed, change, job, secure, typed};
use crate::web::address::{encoded, job_path};
use crate::web::app::App;
use crate::web::deeds::attempt;
use crate::web::deeds::closing;
use crate::web::deeds::opening;
use crate::web::deeds::own_sheets;
use crate::web::deeds::paperwork;
use crate::web::deeds::{Act, Deed};
use crate::web::desk::Happened;
use crate::web::entry::Who;
use crate::web::folders::intake;
use crate::web::folders::series;
use crate::web::language::{LANGUAGE_COOKIE, Visitor};
use crate::web::limits;
use crate::web::page;
use crate::web::trouble::{Trouble, blocking};
use crate::words::Language;

pub(in crate::web) async fn new_job_typed(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(sheet): Path<String>,
    form: Typed,
) -> Response {
    let fields = match typed(form) {
        Ok(fields) => fields,
        Err(trouble) => return trouble_page(visitor, &trouble),
    };
    let made = blocking(move || {
        Ok(match opening::open(&app, &sheet, &fields, &Act::new(&app, &who, Deed::Begin)) {
            Ok(name) => Ok(job_path(&name, "prepare")),
            Err(trouble) => Err(page::new_job::page(visitor.language, &app, &sheet, &fields, Some(&trouble.words))?),
        })
    })
    .await;
    match made {
        Ok(Ok(path)) => see(&path),
        Ok(Err(page)) => html(StatusCode::UNPROCESSABLE_ENTITY, page.into_string()),
        Err(trouble) => trouble_page(visitor, &trouble),
    }
}

pub(in crate::web) async fn new_sheet_typed(State(app): Shared, visitor: Visitor, form: Typed) -> Response {
    let fields = match typed(form) {
        Ok(fields) => fields,
        Err(trouble) => return trouble_page(visitor, &trouble),
    };
    let made = blocking(move || {
        Ok(match own_sheets::make(&app, &fields, visitor.language) {
            Ok(name) => Ok(format!("/new/{}", encoded(&name))),
            Err(trouble) => Err(page::new_sheet::page(visitor.language, &fields, Some(&trouble.words))),
        })
    })
    .await;
    match made {
        Ok(Ok(path)) => see(&path),
        Ok(Err(page)) => html(StatusCode::UNPROCESSABLE_ENTITY, page.into_string()),
        Err(trouble) => trouble_page(visitor, &trouble),
    }
}

pub(in crate::web) async fn prepare_typed(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
    form: Typed,
) -> Response {
    let done = async {
        let fields = typed(form)?;
        let (to, at) = (fields.get("then").map(str::to_owned), Arc::clone(&app));
        change(&app, &name, Act::new(&app, &who, Deed::Prepare), move |folder| {
            paperwork::prepare(&at, folder, &fields)
        })
        .await?;
        Ok(match to.as_deref() {
            Some("photos") => job_path(&name, "photos"),
            _ => job_path(&name, "prepare?saved=1"),
        })
    };
    see_or(visitor, done.await)
}

pub(in crate::web) async fn calibration_typed(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
    form: Typed,
) -> Response {
    let done = async {
        let fields = typed(form)?;
        let now = app.now();
        change(&app, &name, Act::new(&app, &who, Deed::Calibration), move |folder| {
            paperwork::calibration(folder, &fields, now)
        })
        .await?;
        Ok(job_path(&name, "finish"))
    };
    see_or(visitor, done.await)
}

pub(in crate::web) async fn set_aside(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
    form: Typed,
) -> Response {
    let act = Act::new(&app, &who, Deed::Aside);
    moved(app, visitor, (name, act), form, intake::set_aside).await
}

pub(in crate::web) async fn bring_back(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
    form: Typed,
) -> Response {
    let act = Act::new(&app, &who, Deed::Back);
    moved(app, visitor, (name, act), form, intake::bring_back).await
}

async fn moved(
    app: Arc<App>,
    visitor: Visitor,
    (name, act): (String, Act),
    form: Typed,
    deed: fn(&std::path::Path, &str) -> Result<(), Trouble>,
) -> Response {
    let done = async {
        let fields = typed(form)?;
        let file = fields.get("file").unwrap_or_default().to_owned();
        let to = if fields.get("page") == Some("finish") { "finish" } else { "photos" };
        change(&app, &name, act, move |folder| deed(folder, &file)).await?;
        Ok(job_path(&name, to))
    };
    see_or(visitor, done.await)
}

pub(in crate::web) async fn card_made(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
) -> Response {
    let done = async {
        let at = Arc::clone(&app);
        let latest = blocking(move || {
            Ok(at.shelf.latest(limits::CARDS, |e| !e.closed && e.job.as_ref().is_ok_and(|j| !j.card.is_empty())))
        })
        .await?;
        let taken: Vec<u32> = latest.iter().filter_map(|e| e.job.as_ref().ok()).flat_map(|j| j.card.clone()).collect();
        change(&app, &name, Act::new(&app, &who, Deed::Card), move |folder| paperwork::card(folder, &taken)).await?;
        Ok(job_path(&name, "card"))
    };
    see_or(visitor, done.await)
}

/// Takes the photos of earlier attempts in, from which nothing moved since.
pub(in crate::web) async fn join(State(app): Shared, visitor: Visitor, who: Who, Path(name): Path<String>) -> Response {
    let done = async {
        let (_, bench) = job(&app, &name)?;
        let standing = bench.settled().await;
        let earlier = series::earlier(&app.shelf, &name);
        change(&app, &name, Act::new(&app, &who, Deed::Join), move |folder| attempt::join(folder, &standing, &earlier))
            .await?;
        Ok(job_path(&name, "photos"))
    };
    see_or(visitor, done.await)
}

pub(in crate::web) async fn next_attempt(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
) -> Response {
    let done = async {
        let (folder, bench) = job(&app, &name)?;
        let lock = bench.edit.lock().await;
        let (at, of, language) = (Arc::clone(&app), name.clone(), visitor.language);
        let act = Act::new(&app, &who, Deed::Attempt);
        let next = blocking(move || attempt::next(&at, &of, &folder, &act, language)).await?;
        drop(lock);
        bench.tell(Happened::Closed);
        Ok(job_path(&next, "photos"))
    };
    see_or(visitor, done.await)
}

pub(in crate::web) async fn close(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
) -> Response {
    let done = async {
        let (folder, bench) = job(&app, &name)?;
        let lock = bench.edit.lock().await;
        let (at, of, language) = (Arc::clone(&app), name.clone(), visitor.language);
        let act = Act::new(&app, &who, Deed::Close);
        blocking(move || closing::seal(&at, &of, &folder, &act, language)).await?;
        drop(lock);
        bench.tell(Happened::Closed);
        Ok(job_path(&name, "finish"))
    };
    see_or(visitor, done.await)
}

/// Keeps the choice of a language and goes back to the page.
pub(in crate::web) async fn language(State(app): Shared, Path(code): Path<String>, headers: HeaderMap) -> Response {
    let from = headers.get(REFERER).and_then(|r| r.to_str().ok()).and_then(|r| r.parse::<axum::http::Uri>().ok());
    let back = from.and_then(|uri| Some(uri.path_and_query()?.as_str().to_owned()));
    // One slash: two would be another site.
    let back = back.filter(|b| b.starts_with('/') && !b.starts_with("//")).unwrap_or_else(|| "/".into());
    let mut answer = see(&back);
    if let Some(language) = Language::of_tag(&code) {
        let cookie = format!(
            "{LANGUAGE_COOKIE}={}; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict{}",
            language.tag(),
            secure(&app)
        );
        if let Ok(value) = HeaderValue::from_str(&cookie) {
            answer.headers_mut().insert(SET_COOKIE, value);
        }
    }
    answer
}
