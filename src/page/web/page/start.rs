//! The list of jobs.

use maud::{Markup, html};
use time::UtcOffset;

use super::frame::{moment, notice, open_network, page as frame};
use super::verdict::verdict_words;
use crate::record::Verdict;
use crate::report::{verdict_class, verdict_symbol};
use crate::web::answer::{encoded, job_path};
use crate::web::app::App;
use crate::web::limits::ROWS;
use crate::web::shelf::Entry;
use crate::web::words::{Words, fill};

/// The page; `rows` begin with number `from` of `count`.
pub(in crate::web) fn page(
    words: &Words,
    app: &App,
    q: &str,
    rows: &[(Option<Verdict>, Entry)],
    (from, count): (usize, usize),
) -> Markup {
    let at = |from: usize| format!("/?q={}&from={from}", encoded(q));
    let body = html! {
        (open_network(words, app.open))
        h1 { (words.jobs_title) }
        p { a.button.go href="/new" { (words.begin_job) } }
        form.search method="get" action="/" role="search" {
            label for="q" { (words.search_jobs) }
            div.row {
                input #q name="q" type="search" value=(q) maxlength="120" autocomplete="off";
                button type="submit" { (words.search) }
            }
        }
        @if rows.is_empty() {
            (notice("plain", if q.is_empty() { words.no_jobs } else { words.no_match }))
        } @else {
            p.count { (fill(words.found_jobs, &[&count.to_string()])) }
            ul.jobs { @for (verdict, entry) in rows { li { (row(words, *verdict, entry, app.offset)) } } }
            nav.pager aria-label=(words.jobs_title) {
                @if from > 0 { a.button href=(at(from.saturating_sub(ROWS))) { (words.later) } }
                @if from + rows.len() < count { a.button href=(at(from + ROWS)) { (words.earlier) } }
            }
        }
        @if app.pairing.code().is_some() { p { a.button href="/devices" { (words.devices) } } }
    };
    frame(words, words.jobs_title, None, &body)
}

fn row(words: &Words, verdict: Option<Verdict>, entry: &Entry, offset: UtcOffset) -> Markup {
    let Ok(job) = &entry.job else {
        return html! {
            div.job.broken {
                span.title { (entry.name) }
                span.more { (words.unreadable_job) ": " span lang="en" { (entry.job.as_ref().err().map_or("", String::as_str)) } }
            }
        };
    };
    let vehicle = job.vehicle.description.as_deref().or(job.vehicle.vin.as_deref());
    html! {
        a.job href=(job_path(&entry.name, "")) {
            @match verdict {
                Some(v) => span class={ "state " (verdict_class(v)) } { (verdict_symbol(v)) span { (verdict_words(words, v)) } },
                None => span.state { span { (words.not_measured) } },
            }
            span.title { (vehicle.unwrap_or(&job.job)) }
            span.more {
                (job.job) " · " (job.setup)
                @if let Some(n) = job.attempt.filter(|n| *n > 1) { " · " (fill(words.attempt_n, &[&n.to_string()])) }
                @if let Some(who) = &job.technician { " · " (who) }
            }
            span.more { (moment(entry.changed, offset)) " · " (if entry.closed { words.closed_state } else { words.open_state }) }
        }
    }
}
