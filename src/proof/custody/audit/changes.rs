//! What a recomputed result says otherwise than the earlier one.

use super::super::AGREE_U;
use super::judged::{Change, Judged, Outcome};
use crate::record::{CheckRecord, JobRecord};

/// In what two outcomes of a folder differ, the verdict first.
pub(super) fn changes(earlier: (&Judged, &Outcome), now: (&Judged, &Outcome)) -> Vec<Change> {
    let mut found = Vec::new();
    let mut same = |what: &str, a: String, b: String, in_u: Option<f64>| {
        if a != b {
            found.push(Change { what: what.to_owned(), earlier: a, now: b, in_u });
        }
    };
    same("verdict", verdict(earlier.0), verdict(now.0), None);
    match (earlier.1, now.1) {
        (Ok(a), Ok(b)) => {
            same("findings", codes(a), codes(b), None);
            let key = |c: &CheckRecord| (c.quantity.clone(), c.from.clone(), c.target.clone(), c.step.clone());
            for was in &a.checks {
                let is = b.checks.iter().find(|c| key(c) == key(was));
                same(
                    &label(was),
                    was.verdict.name().to_owned(),
                    is.map_or("not checked", |c| c.verdict.name()).to_owned(),
                    None,
                );
                if let Some((a, b, in_u)) = is.and_then(|is| moved(was, is)) {
                    same(&label(was), a, b, in_u);
                }
            }
            for is in b.checks.iter().filter(|c| a.checks.iter().all(|was| key(was) != key(c))) {
                same(&label(is), "not checked".to_owned(), is.verdict.name().to_owned(), None);
            }
        }
        (Err(a), Err(b)) => same("message", a.clone(), b.clone(), None),
        // The verdict says it.
        _ => {}
    }
    found
}

fn verdict(line: &Judged) -> String {
    line.verdict.map_or("unreadable or altered", |v| v.name()).to_owned()
}

fn codes(record: &JobRecord) -> String {
    let mut all: Vec<&str> = record.findings.iter().map(|f| f.code.as_str()).collect();
    all.sort_unstable();
    if all.is_empty() { "none".to_owned() } else { all.join(" ") }
}

fn label(check: &CheckRecord) -> String {
    let parts = [&check.from, &check.target, &check.step];
    let parts: Vec<&str> = parts.into_iter().flatten().map(String::as_str).collect();
    if parts.is_empty() { check.quantity.clone() } else { format!("{} ({})", check.quantity, parts.join(", ")) }
}

/// Both values with their standard uncertainties, where they differ by more than rounding.
fn moved(was: &CheckRecord, is: &CheckRecord) -> Option<(String, String, Option<f64>)> {
    let shown = |c: &CheckRecord| match (c.value, c.standard_uncertainty) {
        (Some(value), Some(u)) => format!("{value:.4} {} (u {u:.4})", c.unit),
        _ => "not determined".to_owned(),
    };
    let (Some(a), Some(u)) = (was.value, was.standard_uncertainty) else {
        return is.value.map(|_| (shown(was), shown(is), None));
    };
    let (Some(b), Some(v)) = (is.value, is.standard_uncertainty) else {
        return Some((shown(was), shown(is), None));
    };
    let agree = (a - b).abs() <= AGREE_U * u && (u - v).abs() <= AGREE_U * u;
    (!agree).then(|| (shown(was), shown(is), Some((b - a) / u)))
}
