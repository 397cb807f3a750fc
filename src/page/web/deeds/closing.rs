//! Closing a job: its evidence folder, and its place in the log of attempts.

use std::path::{Path, PathBuf};

use axum::http::StatusCode;

use super::changes::Act;
use crate::custody;
use crate::evidence::{self, Bytes};
use crate::transparency::PROOF_FILE;
use crate::web::app::App;
use crate::web::desk::add;
use crate::web::folders::Lies;
use crate::web::trouble::Trouble;
use crate::words::{Language, Wish, phrase};

/// Seals a job under its name, once, with its report in the job's language, else
/// in that of whoever closes it; the evidence folder.
pub(in crate::web) fn seal(
    app: &App,
    name: &str,
    folder: &Path,
    act: &Act,
    language: Language,
) -> Result<PathBuf, Trouble> {
    let out = app.shelf.sealed_path(name);
    match app.shelf.lies(name) {
        Lies::Nothing => {}
        Lies::Own => return Ok(out),
        Lies::Another => {
            let folder = out.display().to_string();
            return Err(Trouble::new(StatusCode::CONFLICT, "taken", phrase!("page-sealed-another", folder = folder)));
        }
    }
    // Before it is sealed, so that the evidence says who closed it.
    act.note(folder)?;
    let wish = Wish { typed: None, otherwise: language };
    let mut gathered = custody::gather(folder, &app.options, wish).map_err(|e| Trouble::typed(e.phrase()))?;
    if let Some(identity) = &app.pdf_signer {
        let now = time::OffsetDateTime::now_utc();
        custody::sign_report(&mut gathered, identity, wish, now).map_err(|e| Trouble::typed(e.phrase()))?;
    }
    let (record, mut contents) = gathered;
    if let Some(log) = &app.log {
        let json = record.to_json().map_err(|e| Trouble::typed(e.to_string()))?;
        let proofs = add(log, &record, &json).and_then(|added| added.proofs());
        for proof in proofs.map_err(|e| Trouble::typed(phrase!("page-trouble-stays-open", why = e.phrase())))? {
            contents.payload.insert(PROOF_FILE.to_owned(), Bytes::Here(proof.to_text().into_bytes()));
        }
    }
    if let Some(parent) = out.parent() {
        std::fs::create_dir_all(parent).map_err(|e| Trouble::disk("folder", &e))?;
    }
    evidence::seal(&out, &contents, app.key.as_ref(), None).map_err(|e| Trouble::typed(e.phrase()))?;
    app.shelf.refresh(true);
    Ok(out)
}
