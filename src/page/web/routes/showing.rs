//! Pages that are asked for.

use std::sync::Arc;

use axum::extract::{Path, Query, State};
use axum::http::header::{CONTENT_SECURITY_POLICY, CONTENT_TYPE};
use axum::http::{HeaderValue, StatusCode};
use axum::response::{IntoResponse, Response};

use super::answer::{html, page_or, see_or, trouble_page};
use super::guard::REPORT_POLICY;
use super::request::{Pairs, Shared, job, queried};
use crate::web::address::job_path;
use crate::web::app::App;
use crate::web::desk::Outcome;
use crate::web::folders::edit;
use crate::web::folders::intake;
use crate::web::forms::Fields;
use crate::web::language::Visitor;
use crate::web::limits;
use crate::web::page;
use crate::web::trouble::{Trouble, blocking};
use crate::web::view::View;
use crate::words::phrase;

pub(in crate::web) async fn start(State(app): Shared, visitor: Visitor, Query(query): Query<Pairs>) -> Response {
    let language = visitor.language;
    let made = blocking(move || {
        let q = queried(&query, "q").unwrap_or_default().to_owned();
        let from = queried(&query, "from").and_then(|f| f.parse().ok()).unwrap_or(0usize).min(10_000_000);
        let (rows, count) = app.shelf.search(&q, from, limits::ROWS);
        let rows = rows.into_iter().map(|e| (app.shelf.verdict(&e), e)).collect::<Vec<_>>();
        Ok(page::start::page(language, &app, &q, &rows, (from, count)))
    })
    .await;
    page_or(visitor, made)
}

pub(in crate::web) async fn sheets(State(app): Shared, visitor: Visitor, Query(query): Query<Pairs>) -> Response {
    let language = visitor.language;
    let made = blocking(move || {
        let q = queried(&query, "q").unwrap_or_default().to_owned();
        let recent = app.shelf.latest(60, |_| true);
        let recent: Vec<String> = recent.into_iter().filter_map(|e| Some(e.job.ok()?.setup)).collect();
        Ok(page::sheets::page(language, &app.library.now(), &q, &recent))
    })
    .await;
    page_or(visitor, made)
}

pub(in crate::web) async fn new_job(State(app): Shared, visitor: Visitor, Path(sheet): Path<String>) -> Response {
    let made = blocking(move || page::new_job::page(visitor.language, &app, &sheet, &Fields(Vec::new()), None)).await;
    page_or(visitor, made)
}

pub(in crate::web) async fn new_sheet(visitor: Visitor) -> Response {
    html(StatusCode::OK, page::new_sheet::page(visitor.language, &Fields(Vec::new()), None).into_string())
}

pub(in crate::web) async fn job_start(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
    let to = blocking(move || {
        let (folder, bench) = job(&app, &name)?;
        let view = View::of(&app, &name, folder, &bench)?;
        let (answered, all) = view.answered();
        let page = match () {
            () if view.closed => "finish",
            () if view.photos.is_empty() && answered < all => "prepare",
            () => "photos",
        };
        Ok(job_path(&name, page))
    })
    .await;
    see_or(visitor, to)
}

/// Gathers a job for a page, and has it measured where that was not done yet.
async fn view(app: &Arc<App>, name: &str, plan: bool) -> Result<View, Trouble> {
    let (folder, bench) = job(app, name)?;
    if !app.shelf.is_closed(name) {
        let lock = bench.edit.lock().await;
        let at = folder.clone();
        if blocking(move || edit::adopt(&at)).await? {
            app.desk.wake(&bench);
        }
        drop(lock);
    }
    if bench.is_new() {
        app.desk.wake(&bench);
    }
    let (app, name) = (Arc::clone(app), name.to_owned());
    blocking(move || {
        let view = View::of(&app, &name, folder, &bench)?;
        Ok(if plan { view.with_plan(&app) } else { view })
    })
    .await
}

pub(in crate::web) async fn prepare(
    State(app): Shared,
    visitor: Visitor,
    Path(name): Path<String>,
    Query(query): Query<Pairs>,
) -> Response {
    let saved = queried(&query, "saved").is_some();
    page_or(visitor, view(&app, &name, false).await.map(|v| page::prepare::page(visitor.language, &v, saved)))
}

pub(in crate::web) async fn photos(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
    page_or(visitor, view(&app, &name, true).await.map(|v| page::photos::page(visitor.language, &v)))
}

pub(in crate::web) async fn finish(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
    page_or(visitor, view(&app, &name, false).await.map(|v| page::finish::page(visitor.language, &v)))
}

/// The part of a page that changes by itself.
pub(in crate::web) async fn live(
    State(app): Shared,
    visitor: Visitor,
    Path(name): Path<String>,
    Query(query): Query<Pairs>,
) -> Response {
    let finish = queried(&query, "part") == Some("finish");
    let part = |v: View| {
        if finish { page::finish::live(visitor.language, &v) } else { page::photos::live(visitor.language, &v) }
    };
    page_or(visitor, view(&app, &name, false).await.map(part))
}

pub(in crate::web) async fn picture(
    State(app): Shared,
    visitor: Visitor,
    Path(name): Path<String>,
    Query(query): Query<Pairs>,
) -> Response {
    let file = queried(&query, "file").unwrap_or_default().to_owned();
    let at = Arc::clone(&app);
    let path = blocking(move || {
        let (folder, _) = job(&at, &name)?;
        intake::picture_path(&folder, &file).ok_or_else(|| Trouble::not_found("photo"))
    });
    let made = match path.await {
        Ok(path) => app.previews.of(&path).await,
        Err(trouble) => Err(trouble),
    };
    match made {
        Ok(jpeg) => {
            let headers = [(CONTENT_TYPE, "image/jpeg"), (axum::http::header::CACHE_CONTROL, "private, max-age=3600")];
            (headers, jpeg.as_ref().clone()).into_response()
        }
        Err(trouble) => trouble_page(visitor, &trouble),
    }
}

/// The report, for which a page without script waits.
pub(in crate::web) async fn report(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
    let made = async {
        let (folder, bench) = job(&app, &name)?;
        if bench.is_new() {
            app.desk.wake(&bench);
        }
        let record = match bench.settled().await.outcome {
            Some(Outcome::Record(record)) => record,
            Some(Outcome::Failed(words)) => return Err(Trouble::typed(words)),
            _ => return Err(Trouble::typed(phrase!("page-no-photos"))),
        };
        let language = visitor.language;
        blocking(move || {
            let pictures = crate::report::pictures(&folder, &record).map_err(|e| Trouble::typed(e.phrase()))?;
            Ok(crate::report::html(&record, &pictures, language))
        })
        .await
    };
    match made.await {
        Ok(text) => {
            let mut answer = html(StatusCode::OK, text);
            answer.headers_mut().insert(CONTENT_SECURITY_POLICY, HeaderValue::from_static(REPORT_POLICY));
            answer
        }
        Err(trouble) => trouble_page(visitor, &trouble),
    }
}

pub(in crate::web) async fn card(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
    page_or(visitor, view(&app, &name, false).await.map(|v| page::card::page(visitor.language, &v)))
}
