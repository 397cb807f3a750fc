//! The survey as one HTML page: a picture of each carrier, lengths, halves.

use maud::{DOCTYPE, Markup, html};

use super::compose::{CarrierSurvey, Survey};
use super::picture::picture;
use super::words::{HEADS, length_words, marker_row, scale_words};

pub(super) const STYLE: &str = "body{font:16px/1.45 sans-serif;color:#1a1f24;background:#fff;max-width:62rem;margin:2rem auto;\
padding:0 1rem}table{border-collapse:collapse;margin:.5rem 0}td,th{padding:.2rem .8rem .2rem 0;text-align:left;\
border-bottom:1px solid #d5dade}td.n{text-align:right;font-variant-numeric:tabular-nums}svg{max-width:100%;height:auto;\
display:block}figure{margin:1rem 0 2rem}figcaption{color:#45505a}.no{border-left:6px solid #a3201d;padding-left:.8rem}\
.yes{border-left:6px solid #1d6b3a;padding-left:.8rem}text{font:13px sans-serif;fill:#1a1f24}";

/// The page of a survey: one file, no script, nothing fetched.
pub fn page(survey: &Survey) -> String {
    let title = format!("Survey of {}", survey.kit.name);
    let page = html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (title) }
                style { (STYLE) }
            }
            body {
                h1 { (title) }
                @if let Some(serial) = &survey.kit.serial { p { "Serial " (serial) } }
                (verdict(survey))
                @for carrier in &survey.carriers { (carrier_part(survey, carrier)) }
                (scale(survey))
                (halves(survey))
                (photos(survey))
            }
        }
    };
    page.into_string()
}

fn verdict(survey: &Survey) -> Markup {
    html! {
        div class=(if survey.fit_for_use() { "yes" } else { "no" }) {
            p { strong { @if survey.fit_for_use() { "Fit for use" } @else { "Not fit for use" } } }
            ul { @for a in &survey.advice { li { @if a.forbids { strong { "Forbids use: " } } (a.text) } } }
        }
        p {
            "Photos fix the markers against each other. Where the carrier's own frame is (hub datum, aim point) follows \
             from the kit file: the found shape is laid on it by the best rigid fit, and what the file's errors ("
            (format!("{:.2}", survey.u_found_mm)) " mm, 1 sigma, found here) do to that fit is part of \"u in the carrier\"."
        }
    }
}

fn carrier_part(survey: &Survey, carrier: &CarrierSurvey) -> Markup {
    let (magnify, drawing) = picture(&survey.kit.carriers[carrier.carrier], carrier);
    html! {
        h2 { (carrier.name) }
        figure {
            (drawing)
            figcaption {
                "Seen from where the markers look to, upper edges of the codes bold. Red: from the file's centre to the \
                 found one, " (magnify) " times its true length; disc: twice its standard uncertainty. Numbers: marker \
                 and how far it was found in front of (+) its place, mm."
            }
        }
        table {
            tr { @for head in HEADS { th { (head) } } }
            @for marker in &carrier.markers {
                tr { @for cell in marker_row(marker) { td class="n" { (cell) } } }
            }
        }
    }
}

fn scale(survey: &Survey) -> Markup {
    html! {
        h2 { "Scale" }
        p { (scale_words(survey)) "." }
        @if !survey.lengths.is_empty() {
            p { "Measured lengths against everything else; above 1, E_n says that they disagree (ISO/IEC 17043, k = 2):" }
            ul { @for check in &survey.lengths { li { (length_words(check)) } } }
        }
    }
}

fn halves(survey: &Survey) -> Markup {
    html! {
        h2 { "Two halves of the photos" }
        @match &survey.halves {
            None => p { "Two halves cannot be compared: the photos are too few, or half of them does not fix the markers." },
            Some(h) => p {
                "Every second photo against the others, " (h.markers) " markers: centres differ by "
                (format!("{:.3}", h.rms_mm)) " mm per coordinate, " (format!("{:.2}", h.largest_mm.0)) " mm at most (marker "
                (h.largest_mm.1) "). Over its stated uncertainty the difference is " (format!("{:.2}", h.ratio.sqrt()))
                " (up to " (format!("{:.2}", h.limit.sqrt())) " is chance): "
                @if h.agree() { "the halves agree." } @else { "the halves disagree." }
            },
        }
    }
}

fn photos(survey: &Survey) -> Markup {
    html! {
        h2 { "Photos" }
        table {
            tr { th { "Photo" } th { "Markers" } th { "RMS px" } }
            @for p in &survey.photos {
                tr {
                    td { (p.file) }
                    td class="n" { (p.markers) }
                    td class="n" { @match p.rms_px { Some(rms) => (format!("{rms:.3}")), None => "took no part" } }
                }
            }
        }
        @if !survey.left_out.is_empty() {
            h3 { "Not surveyed" }
            ul { @for left in &survey.left_out { li { (left.what) ": " (left.why) } } }
        }
    }
}
