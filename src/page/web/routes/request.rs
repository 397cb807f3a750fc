//! What handlers share: the job that an address names, and a deed on its files.

use std::path::PathBuf;
use std::sync::Arc;

use axum::extract::rejection::FormRejection;
use axum::extract::{Form, State};
use axum::http::StatusCode;

use crate::web::app::App;
use crate::web::deeds::Act;
use crate::web::deeds::changes;
use crate::web::desk::Bench;
use crate::web::forms::Fields;
use crate::web::trouble::{Trouble, blocking};
use crate::words::phrase;

pub(in crate::web) type Shared = State<Arc<App>>;

pub(in crate::web) type Pairs = Vec<(String, String)>;

pub(in crate::web) type Typed = Result<Form<Pairs>, FormRejection>;

/// A value of the address's query.
pub(in crate::web) fn queried<'a>(query: &'a Pairs, name: &str) -> Option<&'a str> {
    query.iter().find(|(n, _)| n == name).map(|(_, v)| v.as_str()).filter(|v| v.len() <= 400)
}

/// A job and its bench by the folder's name.
pub(in crate::web) fn job(app: &Arc<App>, name: &str) -> Result<(PathBuf, Arc<Bench>), Trouble> {
    let folder = app.shelf.path(name).ok_or_else(|| Trouble::not_found("job"))?;
    let bench = app.desk.bench(name, &folder);
    Ok((folder, bench))
}

/// A deed on an open job's files, with nobody else at them; it is noted, and the job measured again.
pub(in crate::web) async fn change<T: Send + 'static>(
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

pub(in crate::web) fn typed(form: Typed) -> Result<Fields, Trouble> {
    form.map(|Form(pairs)| Fields(pairs))
        .map_err(|_| Trouble::new(StatusCode::BAD_REQUEST, "form", phrase!("page-trouble-form")))
}

/// What every cookie bears where the page is encrypted.
pub(in crate::web) fn secure(app: &App) -> &'static str {
    if app.certificate.is_some() { "; Secure" } else { "" }
}
