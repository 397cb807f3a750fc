//! What happens at a job, told to every page that shows it.

use std::convert::Infallible;
use std::sync::Arc;
use std::time::Duration;

use axum::response::sse::{Event, KeepAlive, Sse};
use axum::response::{IntoResponse, Response};
use futures_util::stream;
use tokio::sync::broadcast::Receiver;
use tokio::sync::broadcast::error::RecvError;

use super::app::StreamPlace;

/// Something that happened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Happened {
    /// The list of photos, or what is known of one, changed.
    Photos,
    /// There is a new verdict, or none can be had.
    Verdict,
    /// The job was closed.
    Closed,
}

impl Happened {
    fn name(self) -> &'static str {
        match self {
            Happened::Photos => "photos",
            Happened::Verdict => "verdict",
            Happened::Closed => "closed",
        }
    }
}

/// The stream of a job's events. It begins with a greeting, so that a page that
/// was cut off looks again at once, and ends once who listens is no longer `welcome`.
pub(super) fn stream_of(
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
