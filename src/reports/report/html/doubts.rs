//! What the photos would not have shown, and what the answers hang on.

use maud::{Markup, html};

use crate::quantity::rounded;
use crate::record::{DetectableRecord, JobRecord, SensitivityRecord};
use crate::report::label::Label;
use crate::verdict::findings::explanation;
use crate::words::Language;

/// The section; empty where the record says nothing of it.
pub(super) fn section(record: &JobRecord) -> Markup {
    html! {
        @if !record.detectable.is_empty() {
            section aria-labelledby="doubts" {
                h2 id="doubts" { "What these photos would have shown" }
                p.lede { "The least size of each fault that is found with a probability of 95 % in this job. Smaller ones may be there." }
                table.stack {
                    thead { tr { th scope="col" { "Fault" } th scope="col" { "Found from" } } }
                    tbody { @for row in rows(&record.detectable) { (row) } }
                }
                @if !record.sensitivity.is_empty() { (hangs_on(record)) }
            }
        }
    }
}

/// Of one fault on several carriers the largest size stands for all; what is
/// not checkable is listed on its own.
fn rows(all: &[DetectableRecord]) -> Vec<Markup> {
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
        let about = match (&d.carrier, count) {
            (Some(name), 1) => Some(name.clone()),
            (Some(name), _) => Some(format!("worst of {count}: {name}")),
            _ => None,
        };
        row(d, about)
    });
    let mut blind: Vec<(&DetectableRecord, Vec<&str>)> = Vec::new();
    for d in all.iter().filter(|d| d.size.is_none()) {
        let alike = |b: &(&DetectableRecord, Vec<&str>)| (&b.0.code, &b.0.remedy) == (&d.code, &d.remedy);
        let at = blind.iter().position(alike).unwrap_or(blind.len());
        if at == blind.len() {
            blind.push((d, Vec::new()));
        }
        let name = d.carrier.as_deref().filter(|name| !blind[at].1.contains(name));
        blind[at].1.extend(name);
    }
    let blind = blind.into_iter().map(|(d, names)| row(d, (!names.is_empty()).then(|| names.join(", "))));
    found.chain(blind).collect()
}

fn row(d: &DetectableRecord, about: Option<String>) -> Markup {
    let title = explanation(&d.code).map_or_else(|| d.code.clone(), |e| e.title(Language::English));
    html! {
        tr {
            th scope="row" { (title) @if let Some(about) = about { small { (about) } } }
            td data-k="found from" {
                @match d.size {
                    Some(size) => { span.num { (rounded(size, if d.unit == "deg" { 2 } else { 1 })) " " (d.unit) } }
                    None => {
                        strong { "not checkable with these photos" }
                        @if let Some(remedy) = &d.remedy { small { "it takes " (remedy) } }
                    }
                }
            }
        }
    }
}

fn hangs_on(record: &JobRecord) -> Markup {
    html! {
        h3 style="margin-top:16px" { "What the checks hang on" }
        p.lede { "The largest change of each value when one photo, one carrier or the form of the lens model is taken away." }
        table.stack {
            thead { tr { th scope="col" { "Check" } th scope="col" { "Change" } th scope="col" { "Uncertainty (95 %)" } } }
            tbody { @for s in &record.sensitivity { (change(record, s)) } }
        }
    }
}

fn change(record: &JobRecord, s: &SensitivityRecord) -> Markup {
    let Some(check) = record.checks.get(s.check) else { return html! {} };
    let digits = if check.unit == "deg" { 3 } else { 2 };
    html! {
        tr {
            th scope="row" { (crate::report::label::sentence(&Label::of_check(check).full())) }
            td data-k="change" { span.num { (rounded(s.change.abs(), digits)) " " (check.unit) } small { (s.assumption) } }
            td data-k="uncertainty" {
                @match check.expanded_uncertainty { Some(u) => { span.num { "± " (rounded(u, digits)) " " (check.unit) } } None => "–" }
            }
        }
    }
}
