//! What could not be done, for the person and for the page's script.

use axum::http::StatusCode;

use crate::input;

/// Why a request is not served.
#[derive(Debug, Clone)]
pub(super) struct Trouble {
    pub(super) status: StatusCode,
    /// A word for the script.
    pub(super) code: &'static str,
    /// What is wrong and what to do.
    pub(super) words: String,
}

impl Trouble {
    pub(super) fn new(status: StatusCode, code: &'static str, words: impl Into<String>) -> Self {
        Trouble { status, code, words: words.into() }
    }

    pub(super) fn not_found(what: &str) -> Self {
        Trouble::new(
            StatusCode::NOT_FOUND,
            "not-found",
            format!("{what} is not here: it may have been moved or renamed"),
        )
    }

    /// What was typed can't be kept.
    pub(super) fn typed(words: impl Into<String>) -> Self {
        Trouble::new(StatusCode::UNPROCESSABLE_ENTITY, "typed", words)
    }

    /// The job is closed.
    pub(super) fn closed() -> Self {
        Trouble::new(StatusCode::CONFLICT, "closed", "the job is closed and sealed: begin a further attempt instead")
    }

    pub(super) fn disk(doing: &str, e: &std::io::Error) -> Self {
        Trouble::new(
            StatusCode::INSUFFICIENT_STORAGE,
            "disk",
            format!("cannot {doing} ({e}): look after the disk of the machine that serves this page"),
        )
    }
}

impl From<input::Error> for Trouble {
    fn from(e: input::Error) -> Self {
        // The page's field, where a key of job.toml has one.
        let key = match e.key() {
            Some("vehicle.vin") => "The VIN ".to_owned(),
            Some(key) => format!("{key}: "),
            None => String::new(),
        };
        Trouble::typed(format!("{key}{}; {}", e.problem(), e.remedy()))
    }
}

impl From<tokio::task::JoinError> for Trouble {
    fn from(_: tokio::task::JoinError) -> Self {
        Trouble::new(StatusCode::INTERNAL_SERVER_ERROR, "fault", "the program failed at this: report it with the job")
    }
}

/// Runs work that waits for the disk or computes.
pub(super) async fn blocking<T: Send + 'static>(
    work: impl FnOnce() -> Result<T, Trouble> + Send + 'static,
) -> Result<T, Trouble> {
    tokio::task::spawn_blocking(work).await?
}
