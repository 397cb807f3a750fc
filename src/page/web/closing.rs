//! Closing a job: its evidence folder.

use std::path::{Path, PathBuf};

use super::app::App;
use super::changes::Act;
use super::trouble::Trouble;
use crate::custody;
use crate::evidence;

/// Seals a job under its name, once; the evidence folder.
pub(super) fn seal(app: &App, name: &str, folder: &Path, act: &Act) -> Result<PathBuf, Trouble> {
    let out = app.shelf.sealed_path(name);
    if out.exists() {
        return Ok(out);
    }
    // Before it is sealed, so that the evidence says who closed it.
    act.note(folder)?;
    let (_, contents) = custody::gather(folder, &app.options).map_err(|e| Trouble::typed(e.to_string()))?;
    if let Some(parent) = out.parent() {
        std::fs::create_dir_all(parent).map_err(|e| Trouble::disk("make the folder of sealed jobs", &e))?;
    }
    evidence::seal(&out, &contents, app.key.as_ref(), None).map_err(|e| Trouble::typed(e.to_string()))?;
    app.shelf.refresh(true);
    Ok(out)
}
