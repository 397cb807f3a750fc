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
    .into_string()
}

pub(super) const STYLE: &str = "body{font:16px/1.45 system-ui,'Noto Sans',sans-serif;color:#172024;background:#fff;max-width:1040px;\
margin:1.5rem auto;padding:0 1rem}h1{font-size:1.35rem}h2{font-size:1.1rem;margin-top:1.6rem}table{border-collapse:collapse;width:100%}\
td,th{padding:.35rem .9rem .35rem 0;text-align:left;border-bottom:1px solid #c6cecd;vertical-align:top}.aside{color:#505c61;font-size:.92rem}\
figure{margin:1rem 0}.upright{display:none}\
@media screen and (max-width:640px){.lying{display:none}.upright{display:block}}\
svg{max-width:100%;height:auto;display:block}ol li{margin:.4rem 0}small{color:#505c61}.no{color:#714a00;font-weight:650}";

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
                th { (say!(language, "plan-column-check")) } th { (say!(language, "plan-column-line")) }
                th { (say!(language, "plan-column-expected")) }
                @if !plan.least_photos.is_empty() { th { (say!(language, "plan-column-least")) } }
            } }
            tbody {
                @for (i, p) in plan.predicted.iter().enumerate() {
                    tr {
                        td { (name(p, language)) }
                        td { (named::reference_line(&p.reference_line, language)) }
                        td.no[!p.can_decide] { (worth(p, language)) }
                        @if let Some(least) = plan.least_photos.get(i) { td { (least_words(p, least, language)) } }
                    }
                }
            }
        }
    }
}
