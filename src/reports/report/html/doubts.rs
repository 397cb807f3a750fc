//! What the photos would not have shown, and what the answers hang on.

use maud::{Markup, html};

use crate::record::{DetectableRecord, JobRecord, SensitivityRecord, body_told, told};
use crate::report::figures::amount;
use crate::report::label::{Label, sentence};
use crate::verdict::findings::explanation;
use crate::words::{Figure, Language, say};

/// The section; empty where the record says nothing of it.
pub(super) fn section(record: &JobRecord, language: Language) -> Markup {
    html! {
        @if !record.detectable.is_empty() {
            section aria-labelledby="doubts" {
                h2 id="doubts" { (say!(language, "report-doubts")) }
                p.lede { (say!(language, "report-doubts-lede")) }
                table.stack {
                    thead { tr {
                        th scope="col" { (say!(language, "report-fault")) }
                        th scope="col" { (say!(language, "report-found-from")) }
                    } }
                    tbody { @for row in rows(record, language) { (row) } }
                }
                @if !record.sensitivity.is_empty() { (hangs_on(record, language)) }
            }
        }
    }
}

/// Of one fault on several carriers the largest size stands for all; what is
/// not checkable is listed on its own.
fn rows(record: &JobRecord, language: Language) -> Vec<Markup> {
    let all = &record.detectable;
    let told = |name: &str| body_told(record, name, language);
    let mut shown: Vec<(&DetectableRecord, usize)> = Vec::new();
    for d in all.iter().filter(|d| d.size.is_some()) {
        match shown
            .iter_mut()
            .find(|(s, _)| s.code == d.code && s.unit == d.unit && s.carrier.is_some() == d.carrier.is_some())
        {
            Some((worst, count)) => {
                *count += 1;
                if d.size > worst.size {
                    *worst = d;
                }
            }
            None => shown.push((d, 1)),
        }
    }
    let found = shown.into_iter().map(|(d, count)| {
        let single = all.iter().any(|o| o.code == d.code && o.unit == d.unit && o.carrier.is_some());
        let about = match (&d.carrier, count) {
            (Some(name), 1) => Some(told(name)),
            (Some(name), _) => Some(say!(language, "report-worst-of", count = count, name = told(name))),
            (None, _) if single => Some(say!(language, "report-all-alike")),
            _ => None,
        };
        row(d, about, language)
    });
    let mut blind: Vec<(&DetectableRecord, Vec<String>)> = Vec::new();
    for d in all.iter().filter(|d| d.size.is_none()) {
        let alike = |b: &(&DetectableRecord, Vec<String>)| (&b.0.code, &b.0.remedy) == (&d.code, &d.remedy);
        let at = blind.iter().position(alike).unwrap_or(blind.len());
        if at == blind.len() {
            blind.push((d, Vec::new()));
        }
        let name = d.carrier.as_deref().map(told).filter(|name| !blind[at].1.contains(name));
        blind[at].1.extend(name);
    }
    let blind = blind.into_iter().map(|(d, names)| row(d, (!names.is_empty()).then(|| names.join(", ")), language));
    found.chain(blind).collect()
}

fn row(d: &DetectableRecord, about: Option<String>, language: Language) -> Markup {
    let title = explanation(&d.code).map_or_else(|| d.code.clone(), |e| e.title(language));
    html! {
        tr {
            th scope="row" { (title) @if let Some(about) = about { small { (about) } } }
            td data-k=(say!(language, "report-found-from")) {
                @match d.size {
                    Some(size) => { span.num { (shown(size, &d.unit, [1, 2], language)) } }
                    None => {
                        strong { (say!(language, "report-not-checkable")) }
                        @if let Some(remedy) = &d.remedy {
                            @let remedy = told(d.remedy_phrase.as_ref(), remedy, language);
                            small { (say!(language, "report-it-takes", remedy = remedy)) }
                        }
                    }
                }
            }
        }
    }
}

/// With so many decimals: of mm, of degrees.
fn shown(value: f64, unit: &str, decimals: [u8; 2], language: Language) -> String {
    amount(Figure::fixed(value, decimals[usize::from(unit == "deg")]), unit).say(language)
}

fn hangs_on(record: &JobRecord, language: Language) -> Markup {
    html! {
        h3 style="margin-top:16px" { (say!(language, "report-hangs-on")) }
        p.lede { (say!(language, "report-hangs-on-lede")) }
        table.stack {
            thead { tr {
                th scope="col" { (say!(language, "report-check")) }
                th scope="col" { (say!(language, "report-change")) }
                th scope="col" { (say!(language, "report-uncertainty-95")) }
            } }
            tbody { @for s in &record.sensitivity { (change(record, s, language)) } }
        }
    }
}

fn change(record: &JobRecord, s: &SensitivityRecord, language: Language) -> Markup {
    let Some(check) = record.checks.get(s.check) else { return html! {} };
    let shown = |value: f64| shown(value, &check.unit, [2, 3], language);
    let assumption = told(s.assumption_phrase.as_ref(), &s.assumption, language);
    html! {
        tr {
            th scope="row" { (sentence(&Label::of_check(check, language).full())) }
            td data-k=(say!(language, "report-change")) { span.num { (shown(s.change.abs())) } small { (assumption) } }
            td data-k=(say!(language, "report-uncertainty-95")) {
                @match check.expanded_uncertainty { Some(u) => { span.num { "± " (shown(u)) } } None => "–" }
            }
        }
    }
}
