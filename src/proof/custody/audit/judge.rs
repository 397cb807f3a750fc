//! One folder of an archive judged, whatever is in it.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;

use super::digest::{digest, of_job};
use super::find::{Found, Sort};
use super::judged::{COPY, Judged, NOT_MEASURED, ReportSignature};
use super::proven::Proven;
use super::trust::Trust;
use crate::custody::{
    RemeasureError, Reports, further, look_at_masked, order_page_again, remeasure, reports_again, sealed_report,
};
use crate::evidence::{
    Certificates, Inspection, Item, OneFileError, Outcome, Signers, Standing, cannot, inspect, inspect_index, unpack,
};
use crate::job::verify_and;
use crate::record::JobRecord;
use crate::transparency::PROOF_FILE;
use crate::words::{Language, Phrase, phrase};

/// Judges a folder. Nothing that is in it ends the program: a fault becomes an
/// error of this folder alone.
pub fn judge(found: &Found, trust: Trust) -> Judged {
    let options = trust.options;
    let path = found.path.display().to_string();
    let again = || digest(found, trust);
    let judged = catch_unwind(AssertUnwindSafe(|| match found.sort {
        Sort::Job => {
            // The photos' digests are known once they are read: no byte is read twice.
            let own = verify_and(&found.path, options, |folder, digests| {
                of_job(folder, &options.credentials, |n| digests[n].to_owned())
            });
            match own {
                Ok((record, digest)) => of_record(&path, &digest, &record),
                Err(e) => failed(&path, &again(), &e.phrase()),
            }
        }
        Sort::Evidence => evidence(&found.path, &path, &again(), trust),
        Sort::OneFile => one_file(&found.path, &path, &again(), trust),
        Sort::Series => {
            let index = inspect_index(&found.path);
            let page = || phrase!("evidence-altered", path = &path, why = order_page_again(&found.path).phrase());
            altered(&path, &again(), &if index.intact() { page() } else { what_failed(&path, &index) })
        }
    }));
    judged.unwrap_or_else(|_| failed(&path, &again(), &phrase!("evidence-judge-fault")))
}

/// An evidence folder as one file, unpacked into a folder that is gone afterwards.
fn one_file(file: &Path, path: &str, digest: &str, trust: Trust) -> Judged {
    let room = match tempfile::tempdir() {
        Ok(room) => room,
        Err(e) => {
            return failed(path, digest, &phrase!("evidence-unpack-room", path = path, why = e.to_string()));
        }
    };
    let mut judged = match unpack(file, room.path()) {
        Ok(folder) => evidence(&folder, path, digest, trust),
        Err(e @ OneFileError::Entry { .. }) => altered(path, digest, &e.phrase()),
        Err(e) => failed(path, digest, &e.phrase()),
    };
    // Where it was unpacked to is nobody's concern.
    if let Some(message) = judged.result.get_mut("message")
        && let Some(text) = message.as_str()
    {
        *message = text.replace(&format!("{}/", room.path().display()), "").into();
    }
    judged
}

fn altered(path: &str, digest: &str, why: &Phrase) -> Judged {
    Judged { evidence: Some("altered".to_owned()), ..failed(path, digest, why) }
}

/// The line of a folder that an earlier run judged, where nothing lies any more.
pub(super) fn no_longer_there(path: &str) -> Judged {
    // Its digest is no folder's: should it come back, it is judged again.
    Judged { evidence: Some("gone".to_owned()), ..failed(path, "gone", &phrase!("evidence-judge-gone", path = path)) }
}

/// Everything that is not as it was sealed.
fn what_failed(path: &str, inspection: &Inspection) -> Phrase {
    let bad = inspection.items.iter().filter(|i| i.outcome == Outcome::Failed);
    let one = |i: &Item| {
        let item = phrase!("evidence-item", item = i.what.replace(' ', "-"));
        phrase!("evidence-altered-item", item = item, found = i.found.clone())
    };
    phrase!("evidence-altered", path = path, why = further(bad.map(one).collect()))
}

fn evidence(folder: &Path, path: &str, digest: &str, trust: Trust) -> Judged {
    let inspection = match inspect(folder) {
        Ok(inspection) => inspection,
        Err(e) => return failed(path, digest, &cannot("folder", folder, &e)),
    };
    let altered = |why: &Phrase| altered(path, digest, why);
    if !inspection.intact() {
        return altered(&what_failed(path, &inspection));
    }
    let signer = signer(&inspection, trust.signers);
    let payload = folder.join("data");
    let (report, broken) = report(&payload, trust.certificates);
    if let Some(why) = broken {
        let item = phrase!("evidence-item", item = "report-signature");
        let item = phrase!("evidence-altered-item", item = item, found = why);
        return Judged { report, ..altered(&phrase!("evidence-altered", path = path, why = item)) };
    }
    if let Err(why) = Proven::read(&payload) {
        let why = phrase!("evidence-file-wrong", file = PROOF_FILE, why = why);
        return Judged { report, ..altered(&phrase!("evidence-altered", path = path, why = why)) };
    }
    let state = match (&signer, inspection.signed) {
        (Some(_), _) => "intact and signed",
        (None, true) => "intact, signer unknown",
        (None, false) => "intact, unsigned",
    };
    if inspection.is_copy() {
        return copy(&payload, path, digest, (state, signer));
    }
    let judged = match remeasure(&payload, &trust.options.credentials) {
        Ok(again) if again.differences.is_empty() => {
            let reports = reports_again(&payload, &again.recorded);
            if matches!(reports, Reports::Other(_)) {
                let why = phrase!("evidence-altered", path = path, why = reports.phrase());
                return Judged { report, ..altered(&why) };
            }
            Judged { evidence: Some(state.to_owned()), signer, ..of_record(path, digest, &again.now) }
        }
        Ok(again) => altered(&phrase!("evidence-otherwise", path = path, differences = again.differing())),
        Err(e @ RemeasureError::Room(_)) => failed(path, digest, &e.phrase()),
        Err(e) => altered(&phrase!("evidence-file-wrong", file = path, why = e.phrase())),
    };
    Judged { report, ..judged }
}

/// A masked copy: it holds neither whole photos nor all attachments, so that the sealed result stands where its
/// masked photos measure it too.
fn copy(payload: &Path, path: &str, digest: &str, (state, signer): (&str, Option<String>)) -> Judged {
    let wrong = |why: Vec<Phrase>| {
        let differences = further(why);
        altered(path, digest, &phrase!("evidence-otherwise", path = path, differences = differences))
    };
    let again = match look_at_masked(payload) {
        Ok(copy) if !copy.strange.is_empty() => return wrong(copy.strange),
        Ok(copy) => copy,
        Err(e @ RemeasureError::Room(_)) => return failed(path, digest, &e.phrase()),
        Err(e) => return altered(path, digest, &phrase!("evidence-file-wrong", file = path, why = e.phrase())),
    };
    let measured = match again.differences {
        Ok(differences) if !differences.is_empty() => return wrong(differences),
        Ok(_) => "",
        Err(_) => NOT_MEASURED,
    };
    let evidence = Some(format!("{COPY}{state}{measured}"));
    Judged { evidence, signer, ..of_record(path, digest, &again.recorded) }
}

/// What the report's signature says, and why it does not hold, where it does not.
fn report(payload: &Path, certificates: Option<&Certificates>) -> (Option<ReportSignature>, Option<Phrase>) {
    let Some(standing) = sealed_report(payload) else { return (None, None) };
    let (signer, listed) = standing.signer(certificates).map_or((None, None), |(who, listed)| (Some(who), listed));
    let (state, broken) = match &standing {
        Standing::Unsigned => ("none", None),
        Standing::Broken(e) => ("broken", Some(e.phrase())),
        Standing::Holds(_) => ("holds", None),
    };
    (Some(ReportSignature { state: state.to_owned(), signer, listed }), broken)
}

fn signer(inspection: &Inspection, signers: Option<&Signers>) -> Option<String> {
    let key = inspection.signature.as_ref()?.key();
    signers?.who(&key).ok().map(str::to_owned)
}

fn of_record(path: &str, digest: &str, record: &JobRecord) -> Judged {
    Judged {
        path: path.to_owned(),
        exit: record.verdict.exit_code(),
        verdict: Some(record.verdict),
        result: serde_json::to_value(record).unwrap_or_default(),
        digest: digest.to_owned(),
        evidence: None,
        signer: None,
        report: None,
        version: env!("CARGO_PKG_VERSION").to_owned(),
        changed: Vec::new(),
        across: Vec::new(),
    }
}

fn failed(path: &str, digest: &str, why: &Phrase) -> Judged {
    let message = why.say(Language::English);
    Judged {
        path: path.to_owned(),
        exit: 2,
        verdict: None,
        result: serde_json::json!({ "format": "error/1", "path": path, "message": message }),
        digest: digest.to_owned(),
        evidence: None,
        signer: None,
        report: None,
        version: env!("CARGO_PKG_VERSION").to_owned(),
        changed: Vec::new(),
        across: Vec::new(),
    }
}
