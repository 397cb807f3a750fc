//! The verdict, and which way to move what.

use maud::{Markup, html};

use super::bodies::what_comes_off;
use super::frame::notice;
use super::quantities::{quantity_words, side_words};
use crate::quantity::{Quantity, rounded, with_uncertainty};
use crate::record::{CheckRecord, JobRecord, Level, Verdict};
use crate::report::{move_is_held, repeats_a_check, verdict_class, verdict_symbol};
use crate::web::answer::job_path;
use crate::web::desk::Outcome;
use crate::web::draw::moves::{self, Move};
use crate::web::view::View;
use crate::web::words::{Words, fill};

/// A verdict's words.
pub(super) fn verdict_words(words: &Words, verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Within => words.verdict_within,
        Verdict::Outside => words.verdict_outside,
        Verdict::NotProven => words.verdict_not_proven,
        Verdict::Retake => words.verdict_retake,
    }
}

/// The card at the head of the photos.
pub(super) fn card(words: &Words, view: &View) -> Markup {
    if matches!(view.standing.outcome, None | Some(Outcome::NoPhotos)) && view.photos.is_empty() {
        return html! {};
    }
    html! {
        section.verdictcard aria-labelledby="verdict" {
            @match &view.standing.outcome {
                Some(Outcome::Record(record)) => (of_record(words, view, record)),
                Some(Outcome::Failed(why)) => {
                    h2 #verdict { (words.verdict_failed) }
                    div lang="en" { (notice("bad", why)) }
                },
                // The line below says what goes on.
                Some(Outcome::NoPhotos) | None => h2.gone #verdict { (words.measuring) },
            }
            @if view.standing.working { p.measuring { (words.measuring) } }
        }
    }
}

fn of_record(words: &Words, view: &View, record: &JobRecord) -> Markup {
    // One photo is no mistake: the second is on its way.
    if view.photos.len() == 1 {
        return html! { h2 #verdict { (words.second_photo) } (next_place(record)) };
    }
    let verdict = record.verdict;
    let lead = match verdict {
        Verdict::Within => words.lead_within,
        Verdict::Outside if record.checks.iter().any(move_is_held) => words.lead_held,
        Verdict::Outside => words.lead_outside,
        Verdict::NotProven if record.checks.iter().any(|c| !c.untrusted.is_empty()) => words.lead_held,
        Verdict::NotProven => words.lead_not_proven,
        Verdict::Retake => words.lead_retake,
    };
    let moves = moves(record);
    html! {
        div class={ "verdict " (verdict_class(verdict)) } data-verdict=(verdict.name()) {
            (verdict_symbol(verdict))
            div {
                h2 #verdict { (if verdict == Verdict::Within { words.all_within } else { verdict_words(words, verdict) }) }
                p { (lead) }
            }
        }
        @if verdict == Verdict::Within { (what_comes_off(words, view)) }
        (first(words, record, &moves))
        @if !moves.is_empty() {
            section.moves aria-labelledby="moves" {
                h3 #moves { (words.what_moves) }
                (moves::drawing(words, &moves))
                ol.todo { @for m in &moves { li { (m.in_words(words)) } } }
            }
        }
        (next_place(record))
        (findings(words, record))
        (checks(words, record))
        (beside(words, view, record))
        @if !view.closed && !moves.is_empty() { (moved(words, view)) }
        div.deeds {
            @if verdict == Verdict::Within { a.button.go href=(job_path(&view.name, "finish")) { (words.to_finish) } }
            @if !view.closed && view.photos.len() > 1 && verdict != Verdict::Within {
                form.inline method="post" action=(job_path(&view.name, "attempt")) {
                    button type="submit" aria-describedby="attempt-why" { (words.next_attempt) }
                    p.hint #attempt-why { (words.next_attempt_why) }
                }
            }
            a.button href=(job_path(&view.name, "report")) { (words.full_report) }
        }
    }
}

/// The one thing to do first, to be read from two metres, and how the last move went.
fn first(words: &Words, record: &JobRecord, moves: &[Move]) -> Markup {
    let of_it = record.first.as_ref().filter(|f| f.check.is_some());
    html! {
        @if let Some(m) = moves.first() {
            section.first aria-labelledby="first" {
                h3 #first { (words.first_thing) }
                p.far { (m.in_words(words)) }
                @if let Some(screw) = of_it.and_then(|f| f.screw.as_ref()) { p.far lang="en" { (screw) } }
                @if let Some(last) = of_it.and_then(|f| f.last_move.as_ref()) { p lang="en" { (last) } }
            }
        } @else if record.first.is_some() {
            section.first { p.far { (words.prove_it) } }
        }
    }
}

/// One photo after a move: it is measured with those before.
fn moved(words: &Words, view: &View) -> Markup {
    let sends = format!("{}?phase=before&moved=yes", job_path(&view.name, "photos"));
    html! {
        div.deeds.scripted hidden {
            label.button.go.camera for="take-moved" { (words.moved_it) }
            input.gone #take-moved type="file" accept="image/*" capture="environment" data-file=(sends) aria-describedby="moved-why";
            p.hint #moved-why { (words.moved_why) }
        }
        noscript {
            form.stack method="post" enctype="multipart/form-data" action=(job_path(&view.name, "sent")) {
                input type="hidden" name="phase" value="before";
                input type="hidden" name="moved" value="yes";
                input type="hidden" name="page" value="photos";
                div.field {
                    label for="plain-moved" { (words.moved_it) }
                    input #plain-moved type="file" name="photo" accept="image/*,.heic";
                }
                button.go type="submit" { (words.send_photos) }
            }
        }
    }
}

/// The earlier attempts: what each proved alone, and whether anything moved since.
fn beside(words: &Words, view: &View, record: &JobRecord) -> Markup {
    let others: Vec<_> = record.attempts.iter().filter(|a| a.job != record.job).collect();
    let here = |digest: &str| view.photos.iter().any(|p| digest.get(..16).is_some_and(|d| p.file.contains(d)));
    let joins = others.iter().any(|a| a.together && !a.photos.iter().all(|p| here(&p.sha256)));
    html! {
        @if !others.is_empty() {
            h3 { (words.beside_title) }
            ul.files {
                @for a in &others {
                    li {
                        (fill(words.attempt_n, &[&a.attempt.map_or_else(|| a.job.clone(), |n| n.to_string())]))
                        ": " (verdict_words(words, a.verdict_alone)) "; "
                        @match &a.why_apart {
                            None => (words.stood_alike),
                            Some(why) => { (words.stood_apart) ": " span lang="en" { (why) } },
                        }
                    }
                }
            }
            @if joins && !view.closed {
                form.inline method="post" action=(job_path(&view.name, "join")) {
                    button type="submit" aria-describedby="join-why" { (words.measure_together) }
                    p.hint #join-why { (words.measure_together_why) }
                }
            }
        }
    }
}

/// The moves in the order in which a stand is set; none by figures that can't be trusted.
pub(super) fn moves(record: &JobRecord) -> Vec<Move> {
    if record.findings.iter().any(|f| f.level == Level::Void) {
        return Vec::new();
    }
    let mut outside: Vec<(Quantity, &CheckRecord)> = record
        .checks
        .iter()
        .filter(|c| c.verdict == Verdict::Outside)
        .filter_map(|c| Some((Quantity::from_name(&c.quantity)?, c)))
        .collect();
    outside.sort_by_key(|(q, _)| q.move_order());
    outside.iter().filter_map(|(q, c)| Move::of(*q, c)).collect()
}

fn next_place(record: &JobRecord) -> Markup {
    html! { @if let Some(next) = &record.next_photo { p.notice.plain lang="en" { (next.words) } } }
}

/// What holds up the verdict and what is worth a look; a photo's own stand at the photo.
fn findings(words: &Words, record: &JobRecord) -> Markup {
    let said: Vec<_> =
        record.findings.iter().filter(|f| f.photo.is_none() && f.level != Level::Note && !repeats_a_check(f)).collect();
    html! {
        @if !said.is_empty() {
            h3 { (words.found_out) }
            ul.findings lang="en" { @for f in said { li class=(level_class(f.level)) { (f.message) } } }
        }
    }
}

fn level_class(level: Level) -> &'static str {
    match level {
        Level::Void | Level::Stop => "stop",
        _ => "warn",
    }
}

fn checks(words: &Words, record: &JobRecord) -> Markup {
    let reason = |i: usize| record.checks[i].reason.as_ref().filter(|_| record.checks[i].verdict != Verdict::Within);
    html! {
        h3 { (words.checks) }
        ul.checks {
            @for (i, c) in record.checks.iter().enumerate() {
                li class=(verdict_class(c.verdict)) {
                    (verdict_symbol(c.verdict))
                    span.name { (check_name(words, c)) }
                    span.value {
                        (measured(words, c))
                        @if c.untrusted.is_empty() {
                            span.gone { ", " (verdict_words(words, c.verdict)) }
                        } @else {
                            ", " (words.not_trusted)
                        }
                    }
                    span.reason { (wanted(words, c)) }
                    // What holds for all of them is said once.
                    @if let Some(why) = reason(i).filter(|why| (0..i).all(|earlier| reason(earlier) != Some(*why))) {
                        span.reason lang="en" { (why) }
                    }
                }
            }
        }
    }
}

fn check_name(words: &Words, check: &CheckRecord) -> String {
    let name = Quantity::from_name(&check.quantity)
        .map_or_else(|| check.quantity.clone(), |q| quantity_words(words, q, check.from.as_deref()));
    let more: Vec<&str> = check.target.iter().chain(&check.step).map(String::as_str).collect();
    if more.is_empty() { name } else { format!("{name}, {}", more.join(", ")) }
}

/// The value with its uncertainty, rounded by it; a sign is said in words.
fn measured(words: &Words, check: &CheckRecord) -> String {
    let (Some(value), Some(u)) = (check.value, check.expanded_uncertainty) else { return "?".to_owned() };
    let (shown, shown_u) = with_uncertainty(value, u);
    let zero = shown.chars().all(|c| matches!(c, '0' | '.' | '-'));
    let amount = match Quantity::from_name(&check.quantity) {
        Some(quantity) => {
            let side = if zero { String::new() } else { side_words(words, quantity, value) };
            let space = if side.is_empty() { "" } else { " " };
            format!("{side}{space}{}", shown.trim_start_matches('-'))
        }
        None => shown,
    };
    format!("{amount} ± {shown_u} {}", check.unit)
}

/// `1500 ± 15 mm`, or the limits where they are not alike.
fn wanted(words: &Words, check: &CheckRecord) -> String {
    let shown = |v: f64| {
        let text = rounded(v, 2);
        if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
    };
    let limits = match (check.lower, check.upper) {
        (Some(low), Some(high)) if ((high - check.nominal) - (check.nominal - low)).abs() < 1e-6 => {
            format!("{} ± {}", shown(check.nominal), shown(high - check.nominal))
        }
        (Some(low), Some(high)) => format!("{} ({} … {})", shown(check.nominal), shown(low), shown(high)),
        (Some(low), None) => format!("≥ {}", shown(low)),
        (None, Some(high)) => format!("≤ {}", shown(high)),
        (None, None) => shown(check.nominal),
    };
    fill(words.wanted, &[&format!("{limits} {}", check.unit)])
}
