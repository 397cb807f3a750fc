//! The calibration, the photo after it, scan reports, and closing the job.

use maud::{Markup, html};

use super::bodies::{what_comes_off, what_stays};
use super::changes::section as changes;
use super::frame::{Line, field, notice};
use super::job_head::{self, Step};
use super::photo_card::card;
use super::photos::senders;
use super::verdict::verdict_words;
use crate::quantity::rounded;
use crate::record::Verdict;
use crate::report::{verdict_class, verdict_symbol};
use crate::web::answer::job_path;
use crate::web::edit::is_after;
use crate::web::view::View;
use crate::web::words::{Words, fill};

/// From here on a reported misalignment is pointed out, degrees (common
/// practice, no source: control units that align themselves correct about as much).
const LARGE_DEG: f64 = 1.0;

/// The page.
pub(in crate::web) fn page(words: &Words, view: &View) -> Markup {
    let body = html! {
        @if view.closed { (closed(words, view)) }
        (calibration(words, view))
        section aria-labelledby="after" {
            h2 #after { (words.after_photo) }
            (what_stays(words, view))
            @if !view.closed { (senders(words, view, "after")) }
        }
        (live(words, view))
    };
    job_head::page(words, view, Step::Finish, &body)
}

/// What the script draws anew when something happens.
pub(in crate::web) fn live(words: &Words, view: &View) -> Markup {
    html! {
        div #live data-part="finish" data-working=[view.standing.working.then_some("yes")] {
            @if view.has_after() {
                ul.photos {
                    @for (i, entry) in view.photos.iter().enumerate().filter(|(_, e)| is_after(e)) {
                        (card(words, view, i, entry, "finish"))
                    }
                }
            }
            @if view.standing.working { p.measuring { (words.measuring) } }
            (moved(words, view))
            (files(words, view))
            (changes(words, &view.changes))
            @if !view.closed { (close(words, view)) }
        }
    }
}

fn calibration(words: &Words, view: &View) -> Markup {
    let now = view.job.calibration.as_ref();
    let result = now.map(|c| c.result.as_str()).unwrap_or_default();
    let angle = |name, label, value: Option<f64>| {
        let value = value.map(|v| rounded(v, 2)).unwrap_or_default();
        field(&Line { name, label, value: &value, mode: "text", hint: None })
    };
    let choices = [
        ("", words.result_none),
        ("successful", words.result_successful),
        ("failed", words.result_failed),
        ("not-run", words.result_not_run),
    ];
    let (azimuth, elevation) = (now.and_then(|c| c.reported_azimuth_deg), now.and_then(|c| c.reported_elevation_deg));
    let largest = azimuth.into_iter().chain(elevation).max_by(|a, b| a.abs().total_cmp(&b.abs()));
    html! {
        section aria-labelledby="calibration" {
            h2 #calibration { (words.calibration) }
            @if !view.closed { (what_comes_off(words, view)) }
            @if let Some(angle) = largest.filter(|a| a.abs() >= LARGE_DEG) {
                (notice("warn", &fill(words.large_misalignment, &[&rounded(angle, 2)])))
            }
            form.stack method="post" action=(job_path(&view.name, "calibration")) {
                fieldset.plain disabled[view.closed] {
                    legend.gone { (words.calibration) }
                    div.field {
                        label for="f-result" { (words.calibration_result) }
                        select #f-result name="result" {
                            @for (value, name) in choices { option value=(value) selected[value == result] { (name) } }
                        }
                    }
                    (angle("azimuth", words.reported_azimuth, azimuth))
                    (angle("elevation", words.reported_elevation, elevation))
                    @if !view.closed { button type="submit" { (words.save) } }
                }
            }
        }
    }
}

fn moved(words: &Words, view: &View) -> Markup {
    let phases = view.record().map(|r| r.phases.as_slice()).unwrap_or_default();
    html! {
        @for m in phases {
            @let said = fill(words.moved_words, &[&m.body, &rounded(m.moved_mm, 1), &rounded(m.moved_deg, 2)]);
            (notice(if m.moved { "bad" } else { "good" }, &format!("{said}: {}", if m.moved { words.has_moved } else { words.stood_still })))
        }
    }
}

fn files(words: &Words, view: &View) -> Markup {
    let kinds = [("scan-before", words.scan_before), ("scan-after", words.scan_after), ("other", words.other_file)];
    let kind_words = |kind: &str| kinds.iter().find(|(k, _)| *k == kind).map_or(words.other_file, |(_, name)| name);
    html! {
        section aria-labelledby="files" {
            h2 #files { (words.scan_reports) }
            @if view.job.attachments.is_empty() { p { (words.no_files) } }
            @else {
                ul.files { @for a in &view.job.attachments { li { (kind_words(&a.kind)) ": " span.path { (a.file) } } } }
            }
            @if !view.closed {
                noscript {
                    form.stack method="post" enctype="multipart/form-data" action=(job_path(&view.name, "sent")) {
                        input type="hidden" name="page" value="finish";
                        div.field {
                            label for="plain-kind" { (words.attach) }
                            select #plain-kind name="kind" { @for (kind, name) in kinds { option value=(kind) { (name) } } }
                        }
                        div.field { input type="file" name="file" aria-label=(words.attach); }
                        button type="submit" { (words.send_file) }
                    }
                }
                div.deeds.scripted hidden {
                    @for (kind, name) in kinds {
                        label.button for={ "file-" (kind) } { (words.attach) ": " (name) }
                        input.gone #{ "file-" (kind) } type="file" data-file={ (job_path(&view.name, "files")) "?kind=" (kind) };
                    }
                }
                p.here aria-hidden="true" {}
            }
        }
    }
}

fn close(words: &Words, view: &View) -> Markup {
    let (answered, all) = view.answered();
    let verdict = view.record().map(|r| r.verdict);
    let open = [
        (answered < all, words.open_prerequisites),
        (verdict != Some(Verdict::Within), words.open_verdict),
        (view.job.calibration.is_none(), words.open_result),
        (!view.has_after(), words.open_after),
    ];
    let open: Vec<&str> = open.into_iter().filter(|(is, _)| *is).map(|(_, name)| name).collect();
    html! {
        section aria-labelledby="close" {
            h2 #close { (words.close_job) }
            @if let Some(v) = verdict {
                p { span class={ "state " (verdict_class(v)) } { (verdict_symbol(v)) span { (verdict_words(words, v)) } } }
            }
            @if !open.is_empty() { (notice("warn", &fill(words.close_open, &[&open.join(", ")]))) }
            p { (words.close_why) }
            form.inline method="post" action=(job_path(&view.name, "close")) { button.go type="submit" { (words.close_now) } }
        }
    }
}

fn closed(words: &Words, view: &View) -> Markup {
    html! {
        section.sealed aria-labelledby="sealed" {
            h2 #sealed { (words.closed_title) }
            p { (fill(words.evidence_in, &[&view.sealed.display().to_string()])) }
            p { (if view.signed { words.signed_words } else { words.unsigned_words }) }
            div.deeds {
                a.button href=(job_path(&view.name, "report")) { (words.full_report) }
                a.button href=(job_path(&view.name, "evidence.tar")) download { (words.take_evidence) }
            }
        }
    }
}
