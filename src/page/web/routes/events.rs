//! What happens at a job, told to every page that shows it.

use std::convert::Infallible;
use std::sync::Arc;
use std::time::Duration;

use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::sse::{Event, KeepAlive, Sse};
use axum::response::{IntoResponse, Response};
use futures_util::stream;
use tokio::sync::broadcast::Receiver;
use tokio::sync::broadcast::error::RecvError;

use super::answer::trouble_page;
use super::request::{Shared, job};
use crate::web::app::StreamPlace;
use crate::web::desk::Happened;
use crate::web::entry::Who;
use crate::web::language::Visitor;
use crate::web::trouble::Trouble;

/// The stream of a job's events. It begins with a greeting, so that a page that
/// was cut off looks again at once, and ends once who listens is no longer `welcome`.
fn stream_of(
    receiver: Receiver<Happened>,
    place: Arc<StreamPlace>,
    welcome: impl Fn() -> bool + Send + 'static,
) -> Response {
    let events = stream::unfold((receiver, place, welcome, true), |(mut receiver, place, welcome, first)| async move {
        let name = if first {
            "hello"
        } else {
            match receiver.recv().await {
                Ok(happened) => happened.name(),
                // Missed some: the page looks at everything anyway.
                Err(RecvError::Lagged(_)) => "verdict",
                Err(RecvError::Closed) => return None,
            }
        };
        if !welcome() {
            return None;
        }
        let event = Event::default().event(name).data("1");
        Some((Ok::<Event, Infallible>(event), (receiver, place, welcome, false)))
    });
    let alive = KeepAlive::new().interval(Duration::from_secs(15));
    Sse::new(events).keep_alive(alive).into_response()
}

pub(in crate::web) async fn events(
    State(app): Shared,
    visitor: Visitor,
    who: Who,
    Path(name): Path<String>,
) -> Response {
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
