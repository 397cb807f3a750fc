//! The verdict, and which way to move what.

use maud::{Markup, html};

use super::bodies::what_comes_off;
use super::frame::{self, notice, told, unit};
use super::quantities::{quantity_words, side_words};
use crate::quantity::{Quantity, rounded, with_uncertainty};
use crate::record::{CheckRecord, JobRecord, Level, Verdict};
use crate::report::{move_is_held, repeats_a_check, verdict_class, verdict_symbol};
use crate::web::address::{encoded, job_path};
use crate::web::desk::Outcome;
use crate::web::draw::moves::{self, Move};
use crate::web::view::View;
use crate::words::{Figure, Language, Value, kept_together, say};

/// A verdict's words.
pub(super) fn verdict_words(language: Language, verdict: Verdict) -> String {
    match verdict {
        Verdict::Within => say!(language, "page-verdict-within"),
        Verdict::Outside => say!(language, "page-verdict-outside"),
        Verdict::NotProven => say!(language, "page-verdict-not-proven"),
        Verdict::Retake => say!(language, "page-verdict-retake"),
    }
}

/// The card at the head of the photos.
pub(super) fn card(language: Language, view: &View) -> Markup {
    if matches!(view.standing.outcome, None | Some(Outcome::NoPhotos)) && view.photos.is_empty() {
        return html! {};
    }
    html! {
        section.verdictcard aria-labelledby="verdict" {
            @match &view.standing.outcome {
                Some(Outcome::Record(record)) => (of_record(language, view, record)),
                Some(Outcome::Failed(why)) => {
                    h2 #verdict { (say!(language, "page-verdict-failed")) }
                    (notice("bad", frame::why(why, language)))
                },
                // The line below says what goes on.
                Some(Outcome::NoPhotos) | None => h2.gone #verdict { (say!(language, "page-measuring")) },
            }
            @if view.standing.working { p.measuring { (say!(language, "page-measuring")) } }
        }
    }
}

fn of_record(language: Language, view: &View, record: &JobRecord) -> Markup {
    // One photo is no mistake: the second is on its way.
    if view.photos.len() == 1 {
        return html! { h2 #verdict { (say!(language, "page-second-photo")) } (next_place(language, record)) };
    }
    let verdict = record.verdict;
    let lead = match verdict {
        Verdict::Within if record.sheet.decision_rule == "simple" => say!(language, "page-lead-within-simple"),
        Verdict::Within => match record.sheet.likely_only() {
            Some(least) => say!(language, "page-lead-within-likely", least = Figure::plain(least)),
            None => say!(language, "page-lead-within"),
        },
        Verdict::Outside if record.checks.iter().any(move_is_held) => say!(language, "page-lead-held"),
        Verdict::Outside => say!(language, "page-lead-outside"),
        Verdict::NotProven if record.checks.iter().any(|c| !c.untrusted.is_empty()) => say!(language, "page-lead-held"),
        Verdict::NotProven => say!(language, "page-lead-not-proven"),
        Verdict::Retake => say!(language, "page-lead-retake"),
    };
    let moves = moves(record);
    html! {
        div class={ "verdict " (verdict_class(verdict)) } data-verdict=(verdict.name()) {
            (verdict_symbol(verdict))
            div {
                h2 #verdict { (if verdict == Verdict::Within { say!(language, "page-all-within") } else { verdict_words(language, verdict) }) }
                p { (lead) }
            }
        }
        @if verdict == Verdict::Within { (what_comes_off(language, view)) }
        (first(language, record, &moves))
        @if !moves.is_empty() {
            section.moves aria-labelledby="moves" {
                h3 #moves { (say!(language, "page-what-moves")) }
                (moves::drawing(language, &moves))
                ol.todo { @for m in &moves { li { (m.icon()) " " (kept_together(&m.in_words(language))) } } }
            }
        }
        (next_place(language, record))
        (findings(language, record))
        (checks(language, record))
        (beside(language, view, record))
        @if !view.closed && !moves.is_empty() { (moved(language, view)) }
        div.deeds {
            @if verdict == Verdict::Within { a.button.go href=(job_path(&view.name, "finish")) { (say!(language, "page-to-finish")) } }
            @if !view.closed && view.photos.len() > 1 && verdict != Verdict::Within {
                form.inline method="post" action=(job_path(&view.name, "attempt")) {
                    button type="submit" aria-describedby="attempt-why" { (say!(language, "page-next-attempt")) }
                    p.hint #attempt-why { (say!(language, "page-next-attempt-why")) }
                }
            }
            a.button href=(job_path(&view.name, "report")) { (say!(language, "page-full-report")) }
        }
    }
}

/// The one thing to do first, to be read from two metres, and how the last move went.
fn first(language: Language, record: &JobRecord, moves: &[Move]) -> Markup {
    let of_it = record.first.as_ref().filter(|f| f.check.is_some());
    html! {
        @if let Some(m) = moves.first() {
            section.first aria-labelledby="first" {
                h3 #first { (say!(language, "page-first-thing")) }
                p.far { (m.icon()) " " (kept_together(&m.in_words(language))) }
                @if let Some(f) = of_it {
                    @if let Some(screw) = &f.screw { p.far { (told(f.screw_phrase.as_ref(), screw, language)) } }
                    @if let Some(last) = &f.last_move { p { (told(f.last_move_phrase.as_ref(), last, language)) } }
                }
            }
        } @else if record.first.is_some() {
            section.first { p.far { (say!(language, "page-prove-it")) } }
        }
    }
}

/// One photo after a move: it is measured with those before.
fn moved(language: Language, view: &View) -> Markup {
    let sends = format!("{}?phase=before&moved=yes", job_path(&view.name, "photos"));
    let steps = view.named.as_ref().map(|n| n.setup.steps.as_slice()).unwrap_or_default();
    html! {
        div.deeds.scripted hidden {
            @if steps.is_empty() { (moved_button(&say!(language, "page-moved-it"), "take-moved", &sends)) }
            // A button for each step: a choice beside one button would be lost when this part is drawn anew.
            @for (i, step) in steps.iter().enumerate() {
                (moved_button(&say!(language, "page-moved-step", step = step), &format!("take-moved-{i}"), &format!("{sends}&step={}", encoded(step))))
            }
            p.hint #moved-why { (say!(language, "page-moved-why")) }
        }
        noscript {
            form.stack method="post" enctype="multipart/form-data" action=(job_path(&view.name, "sent")) {
                input type="hidden" name="phase" value="before";
                input type="hidden" name="moved" value="yes";
                input type="hidden" name="page" value="photos";
                @if !steps.is_empty() {
                    div.field {
                        label for="plain-moved-step" { (say!(language, "page-position")) }
                        select #plain-moved-step name="step" { @for step in steps { option value=(step) { (step) } } }
                    }
                }
                div.field {
                    label for="plain-moved" { (say!(language, "page-moved-it")) }
                    input #plain-moved type="file" name="photo" accept="image/*,.heic";
                }
                button.go type="submit" { (say!(language, "page-send-photos")) }
            }
        }
    }
}

fn moved_button(words: &str, id: &str, sends: &str) -> Markup {
    html! {
        label.button.go.camera for=(id) { (words) }
        input.gone #(id) type="file" accept="image/*" capture="environment" data-file=(sends) aria-describedby="moved-why";
    }
}

/// The earlier attempts: what each proved alone, and whether anything moved since.
fn beside(language: Language, view: &View, record: &JobRecord) -> Markup {
    let others: Vec<_> = record.attempts.iter().filter(|a| a.job != record.job).collect();
    let here = |digest: &str| view.photos.iter().any(|p| digest.get(..16).is_some_and(|d| p.file.contains(d)));
    let joins = others.iter().any(|a| a.together && !a.photos.iter().all(|p| here(&p.sha256)));
    html! {
        @if !others.is_empty() {
            h3 { (say!(language, "page-beside-title")) }
            ul.files {
                @for a in &others {
                    li {
                        @let n = a.attempt.map_or_else(|| a.job.clone(), |n| n.to_string());
                        @let verdict = verdict_words(language, a.verdict_alone);
                        @match &a.why_apart {
                            None => (say!(language, "page-stood-alike", n = n, verdict = verdict)),
                            Some(why) => {
                                (say!(language, "page-stood-apart", n = n, verdict = verdict)) " "
                                (told(a.why_apart_phrase.as_ref(), why, language))
                            },
                        }
                    }
                }
            }
            @if joins && !view.closed {
                form.inline method="post" action=(job_path(&view.name, "join")) {
                    button type="submit" aria-describedby="join-why" { (say!(language, "page-measure-together")) }
                    p.hint #join-why { (say!(language, "page-measure-together-why")) }
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

fn next_place(language: Language, record: &JobRecord) -> Markup {
    html! { @if let Some(next) = &record.next_photo { p.notice.plain { (told(next.words_phrase.as_ref(), &next.words, language)) } } }
}

/// What holds up the verdict and what is worth a look; a photo's own stand at the photo.
fn findings(language: Language, record: &JobRecord) -> Markup {
    let said: Vec<_> =
        record.findings.iter().filter(|f| f.photo.is_none() && f.level != Level::Note && !repeats_a_check(f)).collect();
    html! {
        @if !said.is_empty() {
            h3 { (say!(language, "page-found-out")) }
            ul.findings { @for f in said { li class=(level_class(f.level)) { (told(f.message_phrase.as_ref(), &f.message, language)) } } }
        }
    }
}

fn level_class(level: Level) -> &'static str {
    match level {
        Level::Void | Level::Stop => "stop",
        _ => "warn",
    }
}

fn checks(language: Language, record: &JobRecord) -> Markup {
    let reason = |i: usize| record.checks[i].reason.as_ref().filter(|_| record.checks[i].verdict != Verdict::Within);
    html! {
        h3 { (say!(language, "page-checks")) }
        ul.checks {
            @for (i, c) in record.checks.iter().enumerate() {
                li class=(verdict_class(c.verdict)) {
                    (verdict_symbol(c.verdict))
                    // Where eyes see columns, ears need a pause.
                    span.name { (check_name(language, c)) span.gone { (say!(language, "page-colon")) " " } }
                    span.value {
                        (measured(language, c))
                        @if c.untrusted.is_empty() {
                            span.gone { ", " (verdict_words(language, c.verdict)) }
                        } @else {
                            ", " (say!(language, "page-not-trusted"))
                        }
                        span.gone { ". " }
                    }
                    span.reason { (wanted(language, c)) }
                    // What holds for all of them is said once.
                    @if let Some(why) = reason(i).filter(|why| (0..i).all(|earlier| reason(earlier) != Some(*why))) {
                        span.reason { (told(c.reason_phrase.as_ref(), why, language)) }
                    }
                }
            }
        }
    }
}

fn check_name(language: Language, check: &CheckRecord) -> String {
    let name = Quantity::from_name(&check.quantity)
        .map_or_else(|| check.quantity.clone(), |q| quantity_words(language, q, check.from.as_deref()));
    let more: Vec<&str> = check.target.iter().chain(&check.step).map(String::as_str).collect();
    if more.is_empty() { name } else { format!("{name}, {}", more.join(", ")) }
}

/// The value with its uncertainty, rounded by it; a sign is said in words.
fn measured(language: Language, check: &CheckRecord) -> String {
    let (Some(value), Some(u)) = (check.value, check.expanded_uncertainty) else { return "?".to_owned() };
    let (shown, shown_u) = with_uncertainty(value, u);
    let (figure, figure_u) =
        (Value::digits(shown.trim_start_matches('-')).say(language), Value::digits(&shown_u).say(language));
    let zero = shown.chars().all(|c| matches!(c, '0' | '.' | '-'));
    let amount = match Quantity::from_name(&check.quantity) {
        Some(quantity) => {
            let side = if zero { String::new() } else { side_words(language, quantity, value) };
            let space = if side.is_empty() { "" } else { " " };
            format!("{side}{space}{figure}")
        }
        None if shown.starts_with('-') && !zero => format!("-{figure}"),
        None => figure,
    };
    format!("{amount} ± {figure_u} {}", unit(&check.unit, language))
}

/// `1500 ± 15 mm`, or the limits where they are not alike.
fn wanted(language: Language, check: &CheckRecord) -> String {
    let shown = |v: f64| {
        let text = rounded(v, 2);
        let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
        Value::digits(text).say(language)
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
    say!(language, "page-wanted", limits = format!("{limits} {}", unit(&check.unit, language)))
}
