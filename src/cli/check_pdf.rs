//! `baywitness check` of a signed PDF report: whether its bytes are those that
//! were signed, by whom, and since when.

use std::path::Path;

use time::OffsetDateTime;

use super::pdf_signer::read_bytes;
use super::who_stamped::who_stamped;
use crate::evidence::{Authorities, Certificates, Item, Outcome, PadesError, Problem, SignedPdf};
use crate::words::{Phrase, Value, phrase};

/// What holds of a report, and who signed it, where that is somebody whose signature counts.
pub(super) fn look(
    file: &Path,
    certificates: Option<&Path>,
    authorities: Option<&Authorities>,
) -> Result<(Vec<Item>, Option<String>), String> {
    let language = super::output::language();
    let listed = certificates.map(Certificates::open).transpose().map_err(|e| e.phrase().say(language))?;
    let read = SignedPdf::read(read_bytes(file)?);
    let signed = match read.and_then(|signed| signed.check().map(|()| signed)) {
        Ok(signed) => signed,
        // Nothing can be said of a file that claims no signature.
        Err(e @ PadesError::Pdf(Problem::NoPdf | Problem::Unsigned)) => {
            return Err(super::pdf_signer::of_file(file, &e));
        }
        Err(e) => return Ok((vec![item("signature", Outcome::Failed, e.phrase())], None)),
    };
    let who = signed.signer();
    let when = signed.claimed().map_or_else(|| "?".to_owned(), |moment| moment.to_string());
    let found = phrase!("evidence-pdf-by", who = &who, when = when);
    let mut items = vec![item("signature", Outcome::Passed, found)];
    let mut signer = None;
    items.push(match listed.as_ref().map(|all| signed.is_by(all)) {
        None => item("signer", Outcome::NotCheckable, phrase!("evidence-pdf-no-certificates")),
        Some(true) => {
            signer = Some(who.clone());
            item("signer", Outcome::Passed, phrase!("evidence-pdf-listed", who = who))
        }
        Some(false) => {
            item("signer", Outcome::NotCheckable, phrase!("evidence-pdf-unlisted", print = signed.fingerprint()))
        }
    });
    match signed.token() {
        Ok(None) => {}
        Ok(Some(token)) => {
            let (when, authority) = (Value::from(token.when()), token.authority());
            let found = phrase!("evidence-pdf-stamped", when = when, authority = authority);
            items.push(item("timestamp", Outcome::Passed, found));
            items.extend(who_stamped(&[token], authorities, OffsetDateTime::now_utc()));
        }
        Err(e) => items.push(item("timestamp", Outcome::Failed, e.phrase())),
    }
    Ok((items, signer))
}

fn item(what: &str, outcome: Outcome, found: Phrase) -> Item {
    Item { what: what.to_owned(), outcome, found }
}
