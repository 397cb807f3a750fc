//! The calibration, the photo after it, scan reports, and closing the job.

use maud::{Markup, html};

use super::bodies::{body_name, what_comes_off, what_stays};
use super::changes::section as changes;
use super::frame::{Line, field, notice};
use super::job_head::{self, Step};
use super::photo_card::card;
use super::photos::senders;
use super::verdict::verdict_words;
use crate::record::Verdict;
use crate::report::{verdict_class, verdict_symbol};
use crate::web::address::job_path;
use crate::web::folders::is_after;
use crate::web::view::View;
use crate::words::{Figure, Language, Phrase, phrase, say};

/// From here on a reported misalignment is pointed out, degrees (common
/// practice, no source: control units that align themselves correct about as much).
const LARGE_DEG: f64 = 1.0;

/// The page.
pub(in crate::web) fn page(language: Language, view: &View) -> Markup {
    let body = html! {
        @if view.closed { (closed(language, view)) }
        (calibration(language, view))
        section aria-labelledby="after" {
            h2 #after { (say!(language, "page-after-photo")) }
            (what_stays(language, view))
            @if !view.closed { (senders(language, view, "after")) }
        }
        (live(language, view))
    };
    job_head::page(language, view, Step::Finish, &body)
}

/// What the script draws anew when something happens.
pub(in crate::web) fn live(language: Language, view: &View) -> Markup {
    html! {
        div #live data-part="finish" data-working=[view.standing.working.then_some("yes")] {
            @if view.has_after() {
                ul.photos {
                    @for (i, entry) in view.photos.iter().enumerate().filter(|(_, e)| is_after(e)) {
                        (card(language, view, i, entry, "finish"))
                    }
                }
            }
            @if view.standing.working { p.measuring { (say!(language, "page-measuring")) } }
            (moved(language, view))
            (files(language, view))
            (changes(language, &view.changes))
            @if !view.closed { (close(language, view)) }
        }
    }
}

fn calibration(language: Language, view: &View) -> Markup {
    let now = view.job.calibration.as_ref();
    let result = now.map(|c| c.result.as_str()).unwrap_or_default();
    let angle = |name, label: String, value: Option<f64>| {
        let value = value.map(|v| Figure::fixed(v, 2).say(language)).unwrap_or_default();
        field(&Line { name, label, value: &value, mode: "text", hint: None })
    };
    let choices = [
        ("", say!(language, "page-result-none")),
        ("successful", say!(language, "page-result-successful")),
        ("failed", say!(language, "page-result-failed")),
        ("not-run", say!(language, "page-result-not-run")),
    ];
    let (azimuth, elevation) = (now.and_then(|c| c.reported_azimuth_deg), now.and_then(|c| c.reported_elevation_deg));
    let largest = azimuth.into_iter().chain(elevation).max_by(|a, b| a.abs().total_cmp(&b.abs()));
    html! {
        section aria-labelledby="calibration" {
            h2 #calibration { (say!(language, "page-calibration")) }
            @if !view.closed { (what_comes_off(language, view)) }
            @if let Some(angle) = largest.filter(|a| a.abs() >= LARGE_DEG) {
                (notice("warn", say!(language, "page-large-misalignment", angle = Figure::fixed(angle, 2))))
            }
            form.stack method="post" action=(job_path(&view.name, "calibration")) {
                fieldset.plain disabled[view.closed] {
                    legend.gone { (say!(language, "page-calibration")) }
                    div.field {
                        label for="f-result" { (say!(language, "page-calibration-result")) }
                        select #f-result name="result" {
                            @for (value, name) in choices { option value=(value) selected[value == result] { (name) } }
                        }
                    }
                    (angle("azimuth", say!(language, "page-reported-azimuth"), azimuth))
                    (angle("elevation", say!(language, "page-reported-elevation"), elevation))
                    @if !view.closed { button type="submit" { (say!(language, "page-save")) } }
                }
            }
        }
    }
}

fn moved(language: Language, view: &View) -> Markup {
    let phases = view.record().map(|r| r.phases.as_slice()).unwrap_or_default();
    html! {
        @for m in phases {
            @let (mm, deg) = (Figure::fixed(m.moved_mm, 1), Figure::fixed(m.moved_deg, 2));
            @let moved = if m.moved { "yes" } else { "no" };
            (notice(if m.moved { "bad" } else { "good" }, say!(language, "page-moved", body = body_name(language, view, &m.body), mm = mm, deg = deg, moved = moved)))
        }
    }
}

fn files(language: Language, view: &View) -> Markup {
    let kinds = [
        ("scan-before", say!(language, "page-scan-before")),
        ("scan-after", say!(language, "page-scan-after")),
        ("other", say!(language, "page-other-file")),
    ];
    let kind_words =
        |kind: &str| kinds.iter().find(|(k, _)| *k == kind).or(kinds.last()).map(|(_, name)| name.as_str());
    html! {
        section aria-labelledby="files" {
            h2 #files { (say!(language, "page-scan-reports")) }
            @if view.job.attachments.is_empty() { p { (say!(language, "page-no-files")) } }
            @else {
                ul.files { @for a in &view.job.attachments { li { (kind_words(&a.kind).unwrap_or_default()) (say!(language, "page-colon")) " " span.path { (a.file) } } } }
            }
            @if !view.closed {
                noscript {
                    form.stack method="post" enctype="multipart/form-data" action=(job_path(&view.name, "sent")) {
                        input type="hidden" name="page" value="finish";
                        div.field {
                            label for="plain-kind" { (say!(language, "page-attach")) }
                            select #plain-kind name="kind" { @for (kind, name) in &kinds { option value=(kind) { (name) } } }
                        }
                        div.field { input type="file" name="file" aria-label=(say!(language, "page-attach")); }
                        button type="submit" { (say!(language, "page-send-file")) }
                    }
                }
                div.deeds.scripted hidden {
                    @for (kind, name) in &kinds {
                        label.button for={ "file-" (kind) } { (say!(language, "page-attach-file", kind = name)) }
                        input.gone #{ "file-" (kind) } type="file" data-file={ (job_path(&view.name, "files")) "?kind=" (kind) };
                    }
                }
                p.here aria-hidden="true" {}
            }
        }
    }
}

fn close(language: Language, view: &View) -> Markup {
    let (answered, all) = view.answered();
    let verdict = view.record().map(|r| r.verdict);
    let open = [
        (answered < all, phrase!("page-open-prerequisites")),
        (verdict != Some(Verdict::Within), phrase!("page-open-verdict")),
        (view.job.calibration.is_none(), phrase!("page-open-result")),
        (!view.has_after(), phrase!("page-open-after")),
    ];
    let open: Vec<Phrase> = open.into_iter().filter(|(is, _)| *is).map(|(_, name)| name).collect();
    html! {
        section aria-labelledby="close" {
            h2 #close { (say!(language, "page-close-job")) }
            @if let Some(v) = verdict {
                p { span class={ "state " (verdict_class(v)) } { (verdict_symbol(v)) span { (verdict_words(language, v)) } } }
            }
            @if !open.is_empty() { (notice("warn", say!(language, "page-close-open", open = open))) }
            @if view.taken {
                (notice("bad", say!(language, "page-sealed-another", folder = view.sealed.display().to_string())))
            } @else {
                p { (say!(language, "page-close-why")) }
                form.inline method="post" action=(job_path(&view.name, "close")) { button.go type="submit" { (say!(language, "page-close-now")) } }
            }
        }
    }
}

fn closed(language: Language, view: &View) -> Markup {
    html! {
        section.sealed aria-labelledby="sealed" {
            h2 #sealed { (say!(language, "page-closed-title")) }
            p { (say!(language, "page-evidence-in", folder = view.sealed.display().to_string())) }
            p { (if view.signed { say!(language, "page-signed-words") } else { say!(language, "page-unsigned-words") }) }
            div.deeds {
                a.button href=(job_path(&view.name, "report")) { (say!(language, "page-full-report")) }
                a.button href=(job_path(&view.name, "evidence.tar")) download { (say!(language, "page-take-evidence")) }
            }
        }
    }
}
