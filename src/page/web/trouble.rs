//! What could not be done, for the person and for the page's script.

use axum::http::StatusCode;

use crate::input;
use crate::words::{Value, phrase};

/// Why a request is not served.
#[derive(Debug, Clone)]
pub(super) struct Trouble {
    pub(super) status: StatusCode,
    /// A word for the script.
    pub(super) code: &'static str,
    /// What is wrong and what to do; other rooms' words as a text.
    pub(super) words: Value,
}

impl Trouble {
    pub(super) fn new(status: StatusCode, code: &'static str, words: impl Into<Value>) -> Self {
        Trouble { status, code, words: words.into() }
    }

    /// `what`: page, job, photo, picture, sheet, kit, camera, device, evidence, root.
    pub(super) fn not_found(what: &'static str) -> Self {
        Trouble::new(StatusCode::NOT_FOUND, "not-found", phrase!("page-trouble-not-here", what = what))
    }

    /// What was typed can't be kept.
    pub(super) fn typed(words: impl Into<Value>) -> Self {
        Trouble::new(StatusCode::UNPROCESSABLE_ENTITY, "typed", words)
    }

    /// The job is closed.
    pub(super) fn closed() -> Self {
        Trouble::new(StatusCode::CONFLICT, "closed", phrase!("page-trouble-closed"))
    }

    /// `doing`: read, folder, photo, file, job, list, sheet.
    pub(super) fn disk(doing: &'static str, e: &std::io::Error) -> Self {
        Trouble::new(
            StatusCode::INSUFFICIENT_STORAGE,
            "disk",
            phrase!("page-trouble-disk", doing = doing, why = e.to_string()),
        )
    }

    /// The program's own fault.
    pub(super) fn fault(words: impl Into<Value>) -> Self {
        Trouble::new(StatusCode::INTERNAL_SERVER_ERROR, "fault", words)
    }
}

impl From<input::Error> for Trouble {
    fn from(e: input::Error) -> Self {
        match e.key() {
            // The page's field.
            Some("vehicle.vin") => Trouble::typed(phrase!("page-trouble-vin")),
            _ => Trouble::typed(e.without_file()),
        }
    }
}

impl From<tokio::task::JoinError> for Trouble {
    fn from(_: tokio::task::JoinError) -> Self {
        Trouble::fault(phrase!("page-trouble-fault"))
    }
}

/// Runs work that waits for the disk or computes.
pub(super) async fn blocking<T: Send + 'static>(
    work: impl FnOnce() -> Result<T, Trouble> + Send + 'static,
) -> Result<T, Trouble> {
    tokio::task::spawn_blocking(work).await?
}
