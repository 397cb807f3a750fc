//! What the signature of a PDF report says, by itself or in an evidence folder:
//! whether its bytes are those that were signed, by whom, and since when.

use std::path::Path;

use time::OffsetDateTime;

use super::pdf_signer::read_bytes;
use super::who_stamped::who_stamped;
use crate::custody::{Reports, order_page_again, reports_again, sealed_report};
use crate::evidence::{Authorities, Certificates, Item, Outcome, PadesError, Problem, SignedPdf, Standing};
use crate::record::JobRecord;
use crate::words::{Phrase, Value, phrase};

/// Whose word counts.
#[derive(Clone, Copy)]
pub(super) struct Trust<'a> {
    pub(super) certificates: Option<&'a Certificates>,
    pub(super) authorities: Option<&'a Authorities>,
}

/// What holds of a report, and who signed it, where that is somebody whose signature counts.
pub(super) fn look(file: &Path, trust: Trust) -> Result<(Vec<Item>, Option<String>), String> {
    match Standing::of(read_bytes(file)?) {
        Standing::Holds(signed) => Ok(of_signed(&signed, trust)),
        // Nothing can be said of a file that claims no signature.
        Standing::Unsigned => Err(super::pdf_signer::of_file(file, &PadesError::Pdf(Problem::Unsigned))),
        Standing::Broken(e @ PadesError::Pdf(Problem::NoPdf)) => Err(super::pdf_signer::of_file(file, &e)),
        Standing::Broken(e) => Ok((vec![item("signature", Outcome::Failed, e.phrase())], None)),
    }
}

/// What holds of an evidence folder's report; nothing where it has none. Who sealed the folder is another question.
pub(super) fn of_sealed(payload: &Path, trust: Trust) -> Vec<Item> {
    let items = match sealed_report(payload) {
        None => Vec::new(),
        Some(Standing::Unsigned) => {
            vec![item("signature", Outcome::NotCheckable, phrase!("evidence-report-unsigned"))]
        }
        Some(Standing::Broken(e)) => vec![item("signature", Outcome::Failed, e.phrase())],
        Some(Standing::Holds(signed)) => of_signed(&signed, trust).0,
    };
    items.into_iter().map(|i| Item { what: format!("report {}", i.what), ..i }).collect()
}

/// Whether an evidence folder's reports are those of its result.
pub(super) fn of_result(payload: &Path, record: &JobRecord) -> Item {
    of_reports("reports", &reports_again(payload, record))
}

/// Whether a repair order's page is that of its folders' results; nothing where it has none.
pub(super) fn of_order(folder: &Path) -> Option<Item> {
    let page = order_page_again(folder);
    (page != Reports::None).then(|| of_reports("series page", &page))
}

fn of_reports(what: &str, reports: &Reports) -> Item {
    let outcome = match reports {
        Reports::Same(_) => Outcome::Passed,
        Reports::Other(_) => Outcome::Failed,
        Reports::None | Reports::CannotTell(_) => Outcome::NotCheckable,
    };
    item(what, outcome, reports.phrase())
}

fn of_signed(signed: &SignedPdf, trust: Trust) -> (Vec<Item>, Option<String>) {
    let who = signed.signer();
    let when = signed.claimed().map_or_else(|| "?".to_owned(), |moment| moment.to_string());
    let found = phrase!("evidence-pdf-by", who = &who, when = when);
    let mut items = vec![item("signature", Outcome::Passed, found)];
    let mut signer = None;
    items.push(match trust.certificates.map(|all| signed.is_by(all)) {
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
            items.extend(who_stamped(&[token], trust.authorities, OffsetDateTime::now_utc()));
        }
        Err(e) => items.push(item("timestamp", Outcome::Failed, e.phrase())),
    }
    (items, signer)
}

fn item(what: &str, outcome: Outcome, found: Phrase) -> Item {
    Item { what: what.to_owned(), outcome, found }
}
