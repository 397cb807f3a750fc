//! The head of a job's pages: what it is, its steps, its attempts.

use maud::{Markup, html};

use super::frame::{notice, page as frame};
use crate::folder::vin;
use crate::web::answer::job_path;
use crate::web::view::View;
use crate::web::words::{Words, fill};

/// A step of the job.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Step {
    Prepare,
    Photos,
    Finish,
}

/// A page of a job.
pub(super) fn page(words: &Words, view: &View, step: Step, body: &Markup) -> Markup {
    let steps = [
        (Step::Prepare, "prepare", words.step_prepare),
        (Step::Photos, "photos", words.step_photos),
        (Step::Finish, "finish", words.step_finish),
    ];
    let name = steps.iter().find(|(s, ..)| *s == step).map_or("", |(_, _, name)| name);
    let vehicle = view.job.vehicle.description.as_deref().unwrap_or(&view.job.job);
    let whole = html! {
        @if view.open_network { (notice("warn", words.open_network_here)) }
        div.jobhead {
            h1 { (vehicle) }
            p {
                (view.job.job) " · " (view.job.setup)
                @if let Some(n) = view.job.attempt { " · " (fill(words.attempt_n, &[&n.to_string()])) }
                @if view.closed { " · " (words.closed_state) }
            }
        }
        nav.steps aria-label=(words.steps_of_job) {
            @for (i, (s, path, name)) in steps.iter().enumerate() {
                a href=(job_path(&view.name, path)) aria-current=[(*s == step).then_some("page")] {
                    span.nr { (i + 1) } " " (name)
                }
            }
        }
        (body)
        (attempts(words, view))
    };
    frame(words, &format!("{name}: {vehicle}"), Some(&view.name), &whole)
}

fn attempts(words: &Words, view: &View) -> Markup {
    if view.attempts.len() < 2 {
        return html! {};
    }
    html! {
        section aria-labelledby="attempts" {
            h2 #attempts { (words.attempts) }
            ol.attempts {
                @for e in &view.attempts {
                    @let n = e.job.as_ref().ok().and_then(|j| j.attempt).map(|n| n.to_string()).unwrap_or_default();
                    li {
                        a href=(job_path(&e.name, "")) { (fill(words.attempt_n, &[&n])) " · " (e.name) }
                        " "
                        @if e.name == view.name { "(" (words.this_attempt) ") " }
                        (if e.closed { words.closed_state } else { words.open_state })
                    }
                }
            }
        }
    }
}

/// What the number's check digit says.
pub(super) fn vin_words(words: &Words, view: &View) -> Markup {
    let number = view.job.vehicle.vin.as_deref();
    match number.and_then(vin::check_digit_agrees) {
        Some(true) => notice("good", words.vin_ok),
        Some(false) => notice("warn", words.vin_doubt),
        None => html! {},
    }
}
