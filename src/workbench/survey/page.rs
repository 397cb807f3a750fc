//! The survey as one HTML page: a picture of each carrier, lengths, halves.

use maud::{DOCTYPE, Markup, html};

use super::picture::picture;
use super::surveyed::{CarrierSurvey, Survey};
use super::words::{heads, length_words, marker_row, scale_words};
use crate::shown::fixed;
use crate::words::{Figure, Language, say};

pub(super) const STYLE: &str = "body{font:16px/1.45 sans-serif;color:#1a1f24;background:#fff;max-width:62rem;margin:2rem auto;\
padding:0 1rem}table{border-collapse:collapse;margin:.5rem 0}td,th{padding:.2rem .8rem .2rem 0;text-align:left;\
border-bottom:1px solid #d5dade}td.n{text-align:right;font-variant-numeric:tabular-nums}svg{max-width:100%;height:auto;\
display:block}figure{margin:1rem 0 2rem}figcaption{color:#45505a}.no{border-left:6px solid #a3201d;padding-left:.8rem}\
.yes{border-left:6px solid #1d6b3a;padding-left:.8rem}text{font:13px sans-serif;fill:#1a1f24}";

/// The page of a survey: one file, no script, nothing fetched.
pub fn page(survey: &Survey, language: Language) -> String {
    let title = say!(language, "fit-survey-title", kit = &survey.kit.name);
    let page = html! {
        (DOCTYPE)
        html lang=(language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (title) }
                style { (STYLE) }
            }
            body {
                h1 { (title) }
                @if let Some(serial) = &survey.kit.serial {
                    p { (say!(language, "fit-survey-serial", serial = serial)) }
                }
                (verdict(survey, language))
                @for carrier in &survey.carriers { (carrier_part(survey, carrier, language)) }
                (scale(survey, language))
                (halves(survey, language))
                (photos(survey, language))
            }
        }
    };
    page.into_string()
}

fn verdict(survey: &Survey, language: Language) -> Markup {
    let is = survey.fit_for_use();
    html! {
        div class=(if is { "yes" } else { "no" }) {
            p { strong { (say!(language, "fit-verdict", answer = if is { "yes" } else { "no" })) } }
            ul {
                @for a in &survey.advice {
                    li { @if a.forbids { strong { (say!(language, "fit-forbids")) } " " } (a.said.say(language)) }
                }
            }
        }
        p { (say!(language, "fit-survey-frame", off = Figure::fixed(survey.u_found_mm, 2))) }
    }
}

fn carrier_part(survey: &Survey, carrier: &CarrierSurvey, language: Language) -> Markup {
    let (magnify, drawing) = picture(&survey.kit.carriers[carrier.carrier], carrier, language);
    html! {
        h2 { (carrier.name) }
        figure {
            (drawing)
            figcaption { (say!(language, "fit-survey-caption", factor = Figure::plain(magnify))) }
        }
        table {
            tr { @for head in heads(language) { th { (head) } } }
            @for marker in &carrier.markers {
                tr { @for cell in marker_row(marker, language) { td class="n" { (cell) } } }
            }
        }
    }
}

fn scale(survey: &Survey, language: Language) -> Markup {
    html! {
        h2 { (say!(language, "fit-survey-scale-title")) }
        p { (scale_words(survey, language)) }
        @if !survey.lengths.is_empty() {
            p { (say!(language, "fit-survey-lengths")) }
            ul { @for check in &survey.lengths { li { (length_words(check, language)) } } }
        }
    }
}

fn halves(survey: &Survey, language: Language) -> Markup {
    let words = survey.halves.as_ref().map_or_else(
        || say!(language, "fit-survey-no-halves"),
        |h| {
            say!(
                language,
                "fit-survey-halves-page",
                count = h.markers,
                rms = Figure::fixed(h.rms_mm, 3),
                most = Figure::fixed(h.largest_mm.0, 2),
                marker = h.largest_mm.1.to_string(),
                ratio = Figure::fixed(h.ratio.sqrt(), 2),
                limit = Figure::fixed(h.limit.sqrt(), 2),
                agree = if h.agree() { "yes" } else { "no" },
            )
        },
    );
    html! { h2 { (say!(language, "fit-halves-title")) } p { (words) } }
}

fn photos(survey: &Survey, language: Language) -> Markup {
    html! {
        h2 { (say!(language, "fit-photos-title")) }
        table {
            tr {
                th { (say!(language, "fit-column-photo")) } th { (say!(language, "fit-survey-column-markers")) }
                th { (say!(language, "fit-column-rms")) }
            }
            @for p in &survey.photos {
                tr {
                    td { (p.file) }
                    td class="n" { (p.markers) }
                    td class="n" {
                        @match p.rms_px {
                            Some(rms) => (fixed(rms, 3, language)),
                            None => (say!(language, "fit-survey-no-part")),
                        }
                    }
                }
            }
        }
        @if !survey.left_out.is_empty() {
            h3 { (say!(language, "fit-survey-left-out-title")) }
            ul {
                @for left in &survey.left_out {
                    li { (say!(language, "fit-survey-left-out-line", what = left.what.clone(), why = left.why.clone())) }
                }
            }
        }
    }
}
