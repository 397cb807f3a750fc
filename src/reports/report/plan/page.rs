//! The plan as one page: no script, nothing fetched.

use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::drawing::plan_svg;
use super::words::{least_words, name, noise, place, worth};
use crate::record::PlanRecord;

/// The page of a plan.
pub fn plan_html(plan: &PlanRecord) -> String {
    html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { "Photo plan: " (plan.title) }
                style { (PreEscaped(STYLE)) }
            }
            body {
                h1 { "Photo plan: " (plan.title) }
                p.aside { "Kit " (plan.kit) ", camera " (plan.camera) ". " (plan.source) }
                figure { (PreEscaped(plan_svg(plan))) }
                (stations(plan))
                (table(plan))
                @if !plan.advice.is_empty() {
                    h2 { "What to change" }
                    ul { @for a in &plan.advice { li { (a) } } }
                }
                p.aside {
                    "Predicted for a stand in its wanted place, clean prints and a lit bay. The vehicle maker's service \
                     information governs; lasers and lifted vehicles need their own precautions."
                }
            }
        }
    }
    .into_string()
}

pub(super) const STYLE: &str = "body{font:16px/1.45 system-ui,'Noto Sans',sans-serif;color:#172024;background:#fff;max-width:1040px;\
margin:1.5rem auto;padding:0 1rem}h1{font-size:1.35rem}h2{font-size:1.1rem;margin-top:1.6rem}table{border-collapse:collapse;width:100%}\
td,th{padding:.35rem .9rem .35rem 0;text-align:left;border-bottom:1px solid #c6cecd;vertical-align:top}.aside{color:#505c61;font-size:.92rem}\
figure{margin:1rem 0}svg{max-width:100%;height:auto;display:block}ol li{margin:.4rem 0}small{color:#505c61}.no{color:#714a00;font-weight:650}";

fn stations(plan: &PlanRecord) -> Markup {
    html! {
        h2 { "Where to stand" }
        @if plan.stations.is_empty() { p.no { "No place in this bay shows enough markers." } }
        @if plan.steps.len() > 1 { p { "Take each photo in every step: " (plan.steps.join(", ")) "." } }
        ol {
            @for s in &plan.stations {
                li { (place(plan, s)) " " small { "(" (s.markers) " markers on " (s.sees.join(", ")) ")" } }
            }
        }
    }
}

fn table(plan: &PlanRecord) -> Markup {
    html! {
        h2 { "What the photos will be worth" }
        @if let Some(noise) = noise(plan) { p { "With " (noise) "." } }
        table {
            thead { tr { th { "Check" } th { "Against" } th { "Expected, 95 %" } @if !plan.least_photos.is_empty() { th { "Least photos" } } } }
            tbody {
                @for (i, p) in plan.predicted.iter().enumerate() {
                    tr {
                        td { (name(p)) }
                        td { (p.reference_line) }
                        td.no[!p.can_decide] { (worth(p)) }
                        @if let Some(least) = plan.least_photos.get(i) { td { (least_words(p, least)) } }
                    }
                }
            }
        }
    }
}
