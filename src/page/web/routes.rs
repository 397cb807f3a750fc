//! What can be asked, and which page or deed answers.

use std::net::SocketAddr;
use std::path::PathBuf;
use std::sync::Arc;

use axum::Router;
use axum::extract::rejection::FormRejection;
use axum::extract::{DefaultBodyLimit, Form, Path, Query, State};
use axum::http::header::{CONTENT_SECURITY_POLICY, CONTENT_TYPE, REFERER, SET_COOKIE};
use axum::http::{HeaderMap, HeaderValue, StatusCode};
use axum::middleware::from_fn_with_state;
use axum::response::{IntoResponse, Response};
use axum::routing::{get, post};

use super::answer::{encoded, html, job_path, page_or, see, see_or, trouble_page};
use super::app::App;
use super::changes::{Act, Deed};
use super::desk::{Bench, Outcome};
use super::devices::Who;
use super::events::{Happened, stream_of};
use super::forms::Fields;
use super::guard::{Guarded, REPORT_POLICY, guard};
use super::language::{LANGUAGE_COOKIE, Visitor};
use super::trouble::{Trouble, blocking};
use super::view::View;
use super::{
    attempt, changes, closing, connecting, edit, glance, handing_out, intake, limits, opening, own_sheets, page,
    paperwork, sending, tripod,
};
use crate::words::{Language, phrase};

pub(super) type Shared = State<Arc<App>>;
pub(super) type Pairs = Vec<(String, String)>;
pub(super) type Typed = Result<Form<Pairs>, FormRejection>;

/// Every route behind the guard.
pub(super) fn routes(app: &Arc<App>, address: SocketAddr) -> Router {
    let job = Router::new()
        .route("/", get(job_start))
        .route("/prepare", get(prepare).post(prepare_typed))
        .route("/photos", get(photos).post(sending::photo))
        .route("/tripod", post(tripod::photo))
        .route("/finish", get(finish))
        .route("/calibration", post(calibration_typed))
        .route("/live", get(live))
        .route("/events", get(events))
        .route("/picture", get(picture))
        .route("/report", get(report))
        .route("/aside", post(set_aside))
        .route("/back", post(bring_back))
        .route("/files", post(sending::file))
        .route("/glance", post(glance::look).layer(DefaultBodyLimit::max(limits::GLANCE_BYTES)))
        .route("/sent", post(sending::form).layer(DefaultBodyLimit::max(limits::FILES_FORM_BYTES)))
        .route("/evidence.tar", get(handing_out::evidence))
        .route("/join", post(join))
        .route("/card", get(card).post(card_made))
        .route("/attempt", post(next_attempt))
        .route("/close", post(close));
    Router::new()
        .route("/", get(start))
        .route("/new", get(sheets))
        .route("/new-sheet", get(new_sheet).post(new_sheet_typed))
        .route("/new/{sheet}", get(new_job).post(new_job_typed))
        .nest("/jobs/{name}", job)
        .route("/language/{code}", get(language))
        .route("/pair", get(connecting::pair).post(connecting::typed))
        .route("/pair/{code}", get(connecting::scanned))
        .route("/devices", get(connecting::devices).post(connecting::show_out))
        .route("/root.crt", get(connecting::root))
        .route("/page.css", get(|| async { asset("text/css", page::style()) }))
        .route("/icon.svg", get(|| async { asset("image/svg+xml", include_str!("assets/icon.svg").to_owned()) }))
        .route("/page.js", get(|| async { asset("text/javascript", include_str!("assets/page.js").to_owned()) }))
        .route("/camera.js", get(|| async { asset("text/javascript", include_str!("assets/camera.js").to_owned()) }))
        .route("/worker.js", get(|| async { asset("text/javascript", include_str!("assets/worker.js").to_owned()) }))
        .fallback(|visitor: Visitor| async move { trouble_page(visitor, &Trouble::not_found("page")) })
        .layer(DefaultBodyLimit::max(limits::FORM_BYTES))
        .layer(from_fn_with_state(Guarded { app: Arc::clone(app), address }, guard))
        .with_state(Arc::clone(app))
}

fn asset(kind: &'static str, text: String) -> Response {
    ([(CONTENT_TYPE, HeaderValue::from_static(kind))], text).into_response()
}

/// A value of the address's query.
pub(super) fn queried<'a>(query: &'a Pairs, name: &str) -> Option<&'a str> {
    query.iter().find(|(n, _)| n == name).map(|(_, v)| v.as_str()).filter(|v| v.len() <= 400)
}

/// A job and its bench by the folder's name.
pub(super) fn job(app: &Arc<App>, name: &str) -> Result<(PathBuf, Arc<Bench>), Trouble> {
    let folder = app.shelf.path(name).ok_or_else(|| Trouble::not_found("job"))?;
    let bench = app.desk.bench(name, &folder);
    Ok((folder, bench))
}

/// A deed on an open job's files, with nobody else at them; it is noted, and the job measured again.
pub(super) async fn change<T: Send + 'static>(
    app: &Arc<App>,
    name: &str,
    act: Act,
    deed: impl FnOnce(&std::path::Path) -> Result<T, Trouble> + Send + 'static,
) -> Result<T, Trouble> {
    let (folder, bench) = job(app, name)?;
    let lock = bench.edit.lock().await;
    if app.shelf.is_closed(name) {
        return Err(Trouble::closed());
    }
    let done = blocking(move || {
        let before = changes::lines(&folder);
        let done = deed(&folder)?;
        act.note_since(&folder, &before)?;
        Ok(done)
    })
    .await;
    drop(lock);
    if done.is_ok() {
        app.desk.wake(&bench);
    }
    done
}

pub(super) fn typed(form: Typed) -> Result<Fields, Trouble> {
    form.map(|Form(pairs)| Fields(pairs))
        .map_err(|_| Trouble::new(StatusCode::BAD_REQUEST, "form", phrase!("page-trouble-form")))
}

async fn start(State(app): Shared, visitor: Visitor, Query(query): Query<Pairs>) -> Response {
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

async fn sheets(State(app): Shared, visitor: Visitor, Query(query): Query<Pairs>) -> Response {
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

async fn new_job(State(app): Shared, visitor: Visitor, Path(sheet): Path<String>) -> Response {
    let made = blocking(move || page::new_job::page(visitor.language, &app, &sheet, &Fields(Vec::new()), None)).await;
    page_or(visitor, made)
}

async fn new_job_typed(
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

async fn job_start(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
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

async fn prepare(
    State(app): Shared,
    visitor: Visitor,
    Path(name): Path<String>,
    Query(query): Query<Pairs>,
) -> Response {
    let saved = queried(&query, "saved").is_some();
    page_or(visitor, view(&app, &name, false).await.map(|v| page::prepare::page(visitor.language, &v, saved)))
}

async fn photos(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
    page_or(visitor, view(&app, &name, true).await.map(|v| page::photos::page(visitor.language, &v)))
}

async fn finish(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
    page_or(visitor, view(&app, &name, false).await.map(|v| page::finish::page(visitor.language, &v)))
}

/// The part of a page that changes by itself.
async fn live(State(app): Shared, visitor: Visitor, Path(name): Path<String>, Query(query): Query<Pairs>) -> Response {
    let finish = queried(&query, "part") == Some("finish");
    let part = |v: View| {
        if finish { page::finish::live(visitor.language, &v) } else { page::photos::live(visitor.language, &v) }
    };
    page_or(visitor, view(&app, &name, false).await.map(part))
}

async fn events(State(app): Shared, visitor: Visitor, who: Who, Path(name): Path<String>) -> Response {
    let Ok((_, bench)) = job(&app, &name) else { return trouble_page(visitor, &Trouble::not_found("job")) };
    match app.stream_place() {
        Some(place) => {
            // Whoever is shown out hears no more.
            let welcome = move || who.id.as_ref().is_none_or(|id| app.pairing.devices.is_connected(id));
            stream_of(bench.listen(), Arc::new(place), welcome)
        }
        None => StatusCode::SERVICE_UNAVAILABLE.into_response(),
    }
}

async fn picture(
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
async fn report(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
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

async fn prepare_typed(
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

async fn calibration_typed(
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

async fn set_aside(State(app): Shared, visitor: Visitor, who: Who, Path(name): Path<String>, form: Typed) -> Response {
    let act = Act::new(&app, &who, Deed::Aside);
    moved(app, visitor, (name, act), form, intake::set_aside).await
}

async fn bring_back(State(app): Shared, visitor: Visitor, who: Who, Path(name): Path<String>, form: Typed) -> Response {
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

async fn card(State(app): Shared, visitor: Visitor, Path(name): Path<String>) -> Response {
    page_or(visitor, view(&app, &name, false).await.map(|v| page::card::page(visitor.language, &v)))
}

async fn card_made(State(app): Shared, visitor: Visitor, who: Who, Path(name): Path<String>) -> Response {
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
async fn join(State(app): Shared, visitor: Visitor, who: Who, Path(name): Path<String>) -> Response {
    let done = async {
        let (_, bench) = job(&app, &name)?;
        let standing = bench.settled().await;
        let earlier = attempt::earlier(&app.shelf, &name);
        change(&app, &name, Act::new(&app, &who, Deed::Join), move |folder| attempt::join(folder, &standing, &earlier))
            .await?;
        Ok(job_path(&name, "photos"))
    };
    see_or(visitor, done.await)
}

async fn new_sheet(visitor: Visitor) -> Response {
    html(StatusCode::OK, page::new_sheet::page(visitor.language, &Fields(Vec::new()), None).into_string())
}

async fn new_sheet_typed(State(app): Shared, visitor: Visitor, form: Typed) -> Response {
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

async fn next_attempt(State(app): Shared, visitor: Visitor, who: Who, Path(name): Path<String>) -> Response {
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

async fn close(State(app): Shared, visitor: Visitor, who: Who, Path(name): Path<String>) -> Response {
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

/// What every cookie bears where the page is encrypted.
pub(super) fn secure(app: &App) -> &'static str {
    if app.certificate.is_some() { "; Secure" } else { "" }
}

/// Keeps the choice of a language and goes back to the page.
async fn language(State(app): Shared, Path(code): Path<String>, headers: HeaderMap) -> Response {
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
