//! The list of jobs.

use maud::{Markup, html};
use time::UtcOffset;

use super::frame::{self, moment, notice, open_network};
use super::verdict::verdict_words;
use crate::record::Verdict;
use crate::report::{verdict_class, verdict_symbol};
use crate::web::address::{encoded, job_path};
use crate::web::app::App;
use crate::web::folders::Entry;
use crate::web::limits::ROWS;
use crate::words::{Language, say};

/// The page; `rows` begin with number `from` of `count`.
pub(in crate::web) fn page(
    language: Language,
    app: &App,
    q: &str,
    rows: &[(Option<Verdict>, Entry)],
    (from, count): (usize, usize),
) -> Markup {
    let at = |from: usize| format!("/?q={}&from={from}", encoded(q));
    let body = html! {
        (open_network(language, app.open))
        h1 { (say!(language, "page-jobs-title")) }
        p { a.button.go href="/new" { (say!(language, "page-begin-job")) } }
        form.search method="get" action="/" role="search" {
            label for="q" { (say!(language, "page-search-jobs")) }
            div.row {
                input #q name="q" type="search" value=(q) maxlength="120" autocomplete="off";
                button type="submit" { (say!(language, "page-search")) }
            }
        }
        @if rows.is_empty() {
            (notice("plain", if q.is_empty() { say!(language, "page-no-jobs") } else { say!(language, "page-no-match") }))
        } @else {
            p.count { (say!(language, "page-found-jobs", count = count)) }
            ul.jobs { @for (verdict, entry) in rows { li { (row(language, *verdict, entry, app.offset)) } } }
            nav.pager aria-label=(say!(language, "page-jobs-title")) {
                @if from > 0 { a.button href=(at(from.saturating_sub(ROWS))) { (say!(language, "page-later")) } }
                @if from + rows.len() < count { a.button href=(at(from + ROWS)) { (say!(language, "page-earlier")) } }
            }
        }
        @if app.pairing.code().is_some() { p { a.button href="/devices" { (say!(language, "page-devices")) } } }
    };
    frame::page(language, &say!(language, "page-jobs-title"), None, &body)
}

fn row(language: Language, verdict: Option<Verdict>, entry: &Entry, offset: UtcOffset) -> Markup {
    let Ok(job) = &entry.job else {
        return html! {
            div.job.broken {
                span.title { (entry.name) }
                span.more { (say!(language, "page-unreadable-job")) (say!(language, "page-colon")) " " @if let Err(why) = &entry.job { (frame::why(why, language)) } }
            }
        };
    };
    let vehicle = job.vehicle.description.as_deref().or(job.vehicle.vin.as_deref());
    html! {
        a.job href=(job_path(&entry.name, "")) {
            @match verdict {
                Some(v) => span class={ "state " (verdict_class(v)) } { (verdict_symbol(v)) span { (verdict_words(language, v)) } },
                None => span.state { span { (say!(language, "page-not-measured")) } },
            }
            span.title { (vehicle.unwrap_or(&job.job)) }
            span.more {
                (job.job) " · " (job.setup)
                @if let Some(n) = job.attempt.filter(|n| *n > 1) { " · " (say!(language, "page-attempt-n", n = n)) }
                @if let Some(who) = &job.technician { " · " (who) }
            }
            span.more { (moment(entry.changed, offset).say(language)) " · " (if entry.closed { say!(language, "page-closed-state") } else { say!(language, "page-open-state") }) }
        }
    }
}
