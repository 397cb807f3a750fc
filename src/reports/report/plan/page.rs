//! The plan as one page: no script, nothing fetched.

use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::super::named;
use super::drawing::figure;
use super::words::{advice, least_words, name, noise, place, worth};
use crate::record::PlanRecord;
use crate::words::{Language, say};

/// The page of a plan.
pub fn plan_html(plan: &PlanRecord, language: Language) -> String {
    let title = say!(language, "plan-title", sheet = &plan.title);
    html! {
        (DOCTYPE)
        html lang=(language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (title) }
                style { (PreEscaped(STYLE)) }
            }
            body {
                main {
                    h1 { (title) }
                    p.aside { (say!(language, "plan-with", kit = &plan.kit, camera = &plan.camera)) br; (plan.source) }
                    (figure(plan, language))
                    (stations(plan, language))
                    (table(plan, language))
                    @if !plan.advice.is_empty() {
                        h2 { (say!(language, "plan-change-title")) }
                        ul { @for a in advice(plan, language) { li { (a) } } }
                    }
                    p.aside { (say!(language, "plan-foot")) }
                }
            }
        }
    }
    .into_string()
}

pub(super) const STYLE: &str = include_str!("style.css");

fn stations(plan: &PlanRecord, language: Language) -> Markup {
    html! {
        h2 { (say!(language, "plan-stand-title")) }
        @if plan.stations.is_empty() { p.no { (say!(language, "plan-no-station-page")) } }
        @if plan.steps.len() > 1 { p { (say!(language, "plan-every-step", steps = plan.steps.join(", "))) } }
        ol {
            @for s in &plan.stations {
                li { (place(plan, s, language)) " " small { (say!(language, "plan-station-markers", count = s.markers, bodies = s.sees.join(", "))) } }
            }
        }
    }
}

fn table(plan: &PlanRecord, language: Language) -> Markup {
    html! {
        h2 { (say!(language, "plan-worth-title")) }
        @if let Some(noise) = noise(plan) { p { (noise.say(language)) } }
        table {
            thead { tr {
                th scope="col" { (say!(language, "plan-column-check")) }
                th scope="col" { (say!(language, "plan-column-line")) }
                th scope="col" { (say!(language, "plan-column-expected")) }
                @if !plan.least_photos.is_empty() { th scope="col" { (say!(language, "plan-column-least")) } }
            } }
            tbody {
                @for (i, p) in plan.predicted.iter().enumerate() {
                    tr {
                        th scope="row" { (name(p, language)) }
                        td data-k=(say!(language, "plan-column-line")) { (named::reference_line(&p.reference_line, language)) }
                        td.no[!p.can_decide] data-k=(say!(language, "plan-column-expected")) { (worth(p, language)) }
                        @if let Some(least) = plan.least_photos.get(i) {
                            td data-k=(say!(language, "plan-column-least")) { (least_words(p, least, language)) }
                        }
                    }
                }
            }
        }
    }
}
