//! What the signature of a PDF report says, by itself or in an evidence folder:
//! whether its bytes are those that were signed, by whom, and since when.

use std::path::Path;

use time::OffsetDateTime;
use time::format_description::well_known::Rfc3339;

use super::pdf_signer::read_bytes;
use super::who_stamped::{CLOCKS, unstamped, who_stamped};
use crate::custody::{Reports, order_page_again, reports_again, sealed_report};
use crate::evidence::{Authorities, Certificates, Earlier, Item, Outcome, PadesError, Problem, SignedPdf, Standing};
use crate::record::JobRecord;
use crate::words::{Phrase, Value, phrase};

/// What is said of a timestamp.
const TIMESTAMP: &str = "timestamp";

/// Whose word counts.
#[derive(Clone, Copy)]
pub(super) struct Trust<'a> {
    pub(super) certificates: Option<&'a Certificates>,
    pub(super) authorities: Option<&'a Authorities>,
}

/// What holds of a report, and who signed it, where that is somebody whose signature counts.
pub(super) fn look(file: &Path, trust: Trust) -> Result<(Vec<Item>, Option<String>), String> {
    match Standing::of(read_bytes(file)?) {
        Standing::Holds(signed) => {
            let (mut items, signer) = of_signed(&signed, trust);
            if trust.authorities.is_some() && !items.iter().any(|item| item.what == TIMESTAMP) {
                items.push(unstamped());
            }
            Ok((items, signer))
        }
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
    let now = OffsetDateTime::now_utc();
    let stamps = stamps(signed, trust.authorities, now);
    let found = phrase!("evidence-pdf-by", who = signed.signer(), when = shown(signed.claimed()));
    let mut items: Vec<Item> = signed.earlier().unwrap_or_default().iter().map(earlier).collect();
    items.push(item("signature", Outcome::Passed, found));
    items.extend(claim(signed, stamps.first, now));
    // The signer's own clock counts where nobody else's does.
    let moment = stamps.counts.or(signed.claimed()).unwrap_or(now);
    let (by, signer) = who(signed, trust.certificates, moment);
    items.push(by);
    items.extend(stamps.items);
    (items, signer)
}

/// A signature before the last one, whoever made it.
fn earlier(one: &Earlier) -> Item {
    let found = phrase!("evidence-pdf-earlier", who = &one.who, count = one.bytes);
    item("signature", Outcome::NotCheckable, found)
}

/// Whose the signature is, and whether his certificate is one for signatures that counted at that moment.
fn who(signed: &SignedPdf, listed: Option<&Certificates>, moment: OffsetDateTime) -> (Item, Option<String>) {
    let unknown = |found| (item("signer", Outcome::NotCheckable, found), None);
    let Some(listed) = listed else { return unknown(phrase!("evidence-pdf-no-certificates")) };
    if !signed.is_by(listed) {
        return unknown(phrase!("evidence-pdf-unlisted", print = signed.fingerprint()));
    }
    let who = signed.signer();
    let problem = match signed.counted_at(moment) {
        Ok(()) => return (item("signer", Outcome::Passed, phrase!("evidence-pdf-listed", who = &who)), Some(who)),
        Err(Problem::Early) => "early",
        Err(Problem::Late) => "late",
        Err(_) => "usage",
    };
    unknown(phrase!("evidence-pdf-uncounted", who = who, problem = problem, when = shown(Some(moment))))
}

/// Where the signer's own clock cannot have been right.
fn claim(signed: &SignedPdf, stamped: Option<OffsetDateTime>, now: OffsetDateTime) -> Option<Item> {
    let claimed = signed.claimed()?;
    let problem = match stamped {
        Some(stamped) if claimed - stamped > CLOCKS => "stamped",
        _ if claimed - now > CLOCKS => "ahead",
        _ => return None,
    };
    let found = phrase!("evidence-pdf-claim", problem = problem, when = shown(Some(claimed)));
    Some(item("signing time", Outcome::NotCheckable, found))
}

/// What a signature's timestamps say.
struct Stamps {
    items: Vec<Item>,
    /// The earliest time that any states.
    first: Option<OffsetDateTime>,
    /// The earliest by an authority that counts.
    counts: Option<OffsetDateTime>,
}

fn stamps(signed: &SignedPdf, authorities: Option<&Authorities>, now: OffsetDateTime) -> Stamps {
    let mut stamps = Stamps { items: Vec::new(), first: None, counts: None };
    let tokens = match signed.tokens() {
        Ok(tokens) => tokens,
        Err(e) => {
            stamps.items.push(item(TIMESTAMP, Outcome::Failed, e.phrase()));
            return stamps;
        }
    };
    let sooner = |known: Option<OffsetDateTime>, time| Some(known.map_or(time, |known| known.min(time)));
    for token in tokens {
        let time = token.time;
        let (when, authority) = (Value::from(token.when()), token.authority());
        let found = phrase!("evidence-pdf-stamped", when = when, authority = authority);
        stamps.items.push(item(TIMESTAMP, Outcome::Passed, found));
        // Each is over the signature, none over another.
        let judged = who_stamped(&[token], authorities, now, None);
        stamps.first = sooner(stamps.first, time);
        if judged.iter().all(|item| item.outcome == Outcome::Passed) {
            stamps.counts = sooner(stamps.counts, time);
        }
        stamps.items.extend(judged);
    }
    stamps
}

fn shown(moment: Option<OffsetDateTime>) -> String {
    // As all other moments are written: RFC 3339, whole seconds of UTC.
    let written =
        moment.and_then(|m| m.to_offset(time::UtcOffset::UTC).replace_nanosecond(0).ok()?.format(&Rfc3339).ok());
    written.unwrap_or_else(|| "?".to_owned())
}

fn item(what: &str, outcome: Outcome, found: Phrase) -> Item {
    Item { what: what.to_owned(), outcome, found }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn moments_are_written_as_everywhere_else() {
        // RFC 3339, section 5.8: the same moment in UTC and with an offset.
        let moment = OffsetDateTime::parse("1996-12-19T16:39:57.25-08:00", &Rfc3339).unwrap();
        assert_eq!(shown(Some(moment)), "1996-12-20T00:39:57Z");
        assert_eq!(shown(None), "?");
    }
}
