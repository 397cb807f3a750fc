//! What can be asked, and which page or deed answers.

use std::net::SocketAddr;
use std::sync::Arc;

use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::http::HeaderValue;
use axum::http::header::CONTENT_TYPE;
use axum::middleware::from_fn_with_state;
use axum::response::{IntoResponse, Response};
use axum::routing::{get, post};

use super::answer::trouble_page;
use super::connecting;
use super::doing;
use super::events;
use super::glance;
use super::guard::{Guarded, guard};
use super::handing_out;
use super::sending;
use super::showing;
use super::tripod;
use crate::web::app::App;
use crate::web::language::Visitor;
use crate::web::limits;
use crate::web::page;
use crate::web::trouble::Trouble;

/// Every route behind the guard.
pub(in crate::web) fn routes(app: &Arc<App>, address: SocketAddr) -> Router {
    let job = Router::new()
        .route("/", get(showing::job_start))
        .route("/prepare", get(showing::prepare).post(doing::prepare_typed))
        .route("/photos", get(showing::photos).post(sending::photo))
        .route("/tripod", post(tripod::photo))
        .route("/finish", get(showing::finish))
        .route("/calibration", post(doing::calibration_typed))
        .route("/live", get(showing::live))
        .route("/events", get(events::events))
        .route("/picture", get(showing::picture))
        .route("/report", get(showing::report))
        .route("/aside", post(doing::set_aside))
        .route("/back", post(doing::bring_back))
        .route("/files", post(sending::file))
        .route("/glance", post(glance::look).layer(DefaultBodyLimit::max(limits::GLANCE_BYTES)))
        .route("/sent", post(sending::form).layer(DefaultBodyLimit::max(limits::FILES_FORM_BYTES)))
        .route("/evidence.tar", get(handing_out::evidence))
        .route("/join", post(doing::join))
        .route("/card", get(showing::card).post(doing::card_made))
        .route("/attempt", post(doing::next_attempt))
        .route("/close", post(doing::close));
    Router::new()
        .route("/", get(showing::start))
        .route("/new", get(showing::sheets))
        .route("/new-sheet", get(showing::new_sheet).post(doing::new_sheet_typed))
        .route("/new/{sheet}", get(showing::new_job).post(doing::new_job_typed))
        .nest("/jobs/{name}", job)
        .route("/language/{code}", get(doing::language))
        .route("/pair", get(connecting::pair).post(connecting::typed))
        .route("/pair/{code}", get(connecting::scanned))
        .route("/devices", get(connecting::devices).post(connecting::show_out))
        .route("/root.crt", get(connecting::root))
        .route("/page.css", get(|| async { asset("text/css", page::style()) }))
        .route("/icon.svg", get(|| async { asset("image/svg+xml", include_str!("../assets/icon.svg").to_owned()) }))
        .route("/page.js", get(|| async { asset("text/javascript", include_str!("../assets/page.js").to_owned()) }))
        .route("/camera.js", get(|| async { asset("text/javascript", include_str!("../assets/camera.js").to_owned()) }))
        .route("/worker.js", get(|| async { asset("text/javascript", include_str!("../assets/worker.js").to_owned()) }))
        .fallback(|visitor: Visitor| async move { trouble_page(visitor, &Trouble::not_found("page")) })
        .layer(DefaultBodyLimit::max(limits::FORM_BYTES))
        .layer(from_fn_with_state(Guarded { app: Arc::clone(app), address }, guard))
        .with_state(Arc::clone(app))
}

fn asset(kind: &'static str, text: String) -> Response {
    ([(CONTENT_TYPE, HeaderValue::from_static(kind))], text).into_response()
}
