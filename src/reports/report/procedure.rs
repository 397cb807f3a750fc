//! What the record says of the procedure around the photos: before and after
//! the calibration, the attempts of the series, the ride height, and where one
//! more photo would help. Sentences, the same for terminal and page.

use super::figures::amount_with_u;
use super::label::sentence;
use crate::record::{AttemptRecord, JobRecord, MovedRecord, RideHeightRecord, told};
use crate::words::{Figure, Language, phrase, say};

/// A heading and its sentences; nothing where the record has none.
pub(super) fn sentences(record: &JobRecord, language: Language) -> Vec<(String, Vec<String>)> {
    let own = &record.job;
    let one_more = record.next_photo.iter().map(|n| {
        let photo = told(n.words_phrase.as_ref(), &n.words, language);
        say!(language, "report-next-photo", photo = photo)
    });
    let parts = [
        (say!(language, "report-phases"), record.phases.iter().map(|m| moved(m, language)).collect()),
        (say!(language, "report-attempts"), record.attempts.iter().map(|a| attempt(a, own, language)).collect()),
        (
            say!(language, "report-ride-height"),
            record.ride_height.iter().flat_map(|r| ride_height(r, language)).collect(),
        ),
        (say!(language, "report-one-more-photo"), one_more.collect::<Vec<String>>()),
    ];
    parts.into_iter().filter(|(_, sentences)| !sentences.is_empty()).collect()
}

fn ride_height(r: &RideHeightRecord, language: Language) -> Vec<String> {
    let told = |(i, sentence): (usize, &String)| told(r.words_phrases.get(i), sentence, language);
    r.words.iter().enumerate().map(told).collect()
}

fn moved(m: &MovedRecord, language: Language) -> String {
    let body = sentence(&say!(language, "report-body", body = &m.body));
    let mm = amount_with_u(Figure::fixed(m.moved_mm, 1), Figure::fixed(2.0 * m.u_mm, 1), "mm");
    let degrees = amount_with_u(Figure::fixed(m.moved_deg, 2), Figure::fixed(2.0 * m.u_deg, 2), "deg");
    match m.moved {
        true => say!(language, "report-moved", body = body, mm = mm, degrees = degrees),
        false => say!(language, "report-not-moved", body = body, mm = mm, degrees = degrees),
    }
}

fn attempt(a: &AttemptRecord, own: &str, language: Language) -> String {
    let beside = match (&a.why_apart, a.job == own) {
        (_, true) => "own",
        (None, false) => "together",
        (Some(_), false) => "apart",
    };
    let why = a.why_apart.as_ref().map_or_else(String::new, |why| told(a.why_apart_phrase.as_ref(), why, language));
    phrase!(
        "report-attempt-line",
        numbered = if a.attempt.is_some() { "yes" } else { "no" },
        number = a.attempt.unwrap_or_default().to_string(),
        job = &a.job,
        photos = a.photos.len(),
        verdict = a.verdict_alone.phrase(),
        beside = beside,
        why = why,
    )
    .say(language)
}
