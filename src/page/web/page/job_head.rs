//! The head of a job's pages: what it is, its steps, its attempts.

use maud::{Markup, html};

use super::frame::{notice, page as frame};
use crate::folder::vin;
use crate::web::address::job_path;
use crate::web::view::View;
use crate::words::{Language, say};

/// A step of the job.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Step {
    Prepare,
    Photos,
    Finish,
}

/// A page of a job.
pub(super) fn page(language: Language, view: &View, step: Step, body: &Markup) -> Markup {
    let steps = [
        (Step::Prepare, "prepare", say!(language, "page-step-prepare")),
        (Step::Photos, "photos", say!(language, "page-step-photos")),
        (Step::Finish, "finish", say!(language, "page-step-finish")),
    ];
    let name = steps.iter().find(|(s, ..)| *s == step).map_or("", |(_, _, name)| name);
    let vehicle = view.job.vehicle.description.as_deref().unwrap_or(&view.job.job);
    let whole = html! {
        @if view.open_network { (notice("warn", say!(language, "page-open-network-here"))) }
        div.jobhead {
            h1 { (vehicle) }
            p {
                (view.job.job) " · " (view.job.setup)
                @if let Some(n) = view.job.attempt { " · " (say!(language, "page-attempt-n", n = n)) }
                @if view.closed { " · " (say!(language, "page-closed-state")) }
            }
        }
        nav.steps aria-label=(say!(language, "page-steps-of-job")) {
            @for (i, (s, path, name)) in steps.iter().enumerate() {
                a href=(job_path(&view.name, path)) aria-current=[(*s == step).then_some("page")] {
                    span.nr { (i + 1) span.gone { ". " } } (name)
                }
            }
        }
        (body)
        (attempts(language, view))
    };
    frame(language, &say!(language, "page-name-of", name = name, of = vehicle), Some(&view.name), &whole)
}

fn attempts(language: Language, view: &View) -> Markup {
    if view.attempts.len() < 2 {
        return html! {};
    }
    html! {
        section aria-labelledby="attempts" {
            h2 #attempts { (say!(language, "page-attempts")) }
            ol.attempts {
                @for e in &view.attempts {
                    @let n = e.job.as_ref().ok().and_then(|j| j.attempt).map(|n| n.to_string()).unwrap_or_default();
                    li {
                        a href=(job_path(&e.name, "")) { (say!(language, "page-attempt-n", n = n)) " · " (e.name) }
                        " "
                        @if e.name == view.name { "(" (say!(language, "page-this-attempt")) ") " }
                        (if e.closed { say!(language, "page-closed-state") } else { say!(language, "page-open-state") })
                    }
                }
            }
        }
    }
}

/// What the number's check digit says.
pub(super) fn vin_words(language: Language, view: &View) -> Markup {
    let number = view.job.vehicle.vin.as_deref();
    match number.and_then(vin::check_digit_agrees) {
        Some(true) => notice("good", say!(language, "page-vin-ok")),
        Some(false) => notice("warn", say!(language, "page-vin-doubt")),
        None => html! {},
    }
}
