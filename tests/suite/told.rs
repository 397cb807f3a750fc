//! Records in every language: each text that has a phrase beside it is that
//! phrase in English, and each language says it in its own words.
//!
//! That no planted finding is left out is `findings::bench`'s part: it tells
//! every finding of every sampled job in every language.

#![cfg(test)]

use std::collections::BTreeMap;
use std::path::Path;

use baywitness::folder::Models;
use baywitness::job;
use baywitness::record::JobRecord;
use baywitness::words::{Language, Phrase, sources};
use fluent_syntax::ast::{Entry, Message};
use fluent_syntax::{parser, serializer};
use serde_json::Value;

use crate::findings::bench::assert_told;

/// Every `X_phrase` and `X_phrases` below a value, with the texts in `X`.
fn phrases(value: &Value, found: &mut Vec<(String, Phrase)>) {
    match value {
        Value::Object(map) => {
            for (key, beside) in map {
                let text = |suffix: &str| map.get(key.strip_suffix(suffix)?);
                let read = |v: &Value| serde_json::from_value::<Phrase>(v.clone()).unwrap();
                let said = |v: &Value| v.as_str().unwrap().to_owned();
                if let Some(text) = text("_phrase") {
                    found.push((said(text), read(beside)));
                } else if let Some(texts) = text("_phrases") {
                    let pairs = texts.as_array().unwrap().iter().zip(beside.as_array().unwrap());
                    found.extend(pairs.map(|(text, phrase)| (said(text), read(phrase))));
                } else {
                    phrases(beside, found);
                }
            }
        }
        Value::Array(values) => values.iter().for_each(|v| phrases(v, found)),
        _ => {}
    }
}

/// Each phrase of a record; how many there are.
pub(crate) fn assert_record_is_told(record: &JobRecord) -> usize {
    let mut found = Vec::new();
    phrases(&serde_json::to_value(record).unwrap(), &mut found);
    for (text, phrase) in &found {
        assert_eq!(phrase.say(Language::English), *text);
        assert_told(phrase);
    }
    found.len()
}

#[test]
fn the_samples_are_told_in_every_language() {
    let samples = Path::new(env!("CARGO_MANIFEST_DIR")).join("samples");
    for name in ["good", "wrong"] {
        let record = job::verify(&samples.join(name), &job::Options::new(Models::embedded())).unwrap();
        assert!(record.reason_phrase.is_some() && record.findings.iter().all(|f| f.message_phrase.is_some()));
        assert!(
            record
                .checks
                .iter()
                .all(|c| c.correction_phrase.is_some() && c.reason.is_some() == c.reason_phrase.is_some())
        );
        assert!(assert_record_is_told(&record) > 10, "{name}");
    }
}

/// Rooms of measuring.
const ROOMS: [&str; 4] = ["verdict", "findings", "advice", "moves"];

/// Without words: a figure and its unit, or what is put beside each other; `E_n` and `px` are no words either.
const WORDLESS: [&str; 11] = [
    "verdict-sentences",
    "verdict-mm",
    "verdict-degrees",
    "verdict-plus-minus-mm",
    "verdict-plus-minus-degrees",
    "verdict-kit-both",
    "findings-credentials-of-photo",
    "verdict-credentials-counts",
    "findings-gap-minutes",
    "findings-gap-hours",
    "moves-of-check",
];

fn messages(language: Language) -> BTreeMap<String, String> {
    let mut all = BTreeMap::new();
    for (_, text) in sources(language).filter(|(room, _)| ROOMS.contains(room)) {
        for entry in parser::parse(text).unwrap().body {
            if let Entry::Message(message) = entry {
                let alone = Message { comment: None, ..message };
                let key = alone.id.name.to_owned();
                let body = vec![Entry::Message(alone)];
                all.insert(key, serializer::serialize(&fluent_syntax::ast::Resource { body }));
            }
        }
    }
    all
}

#[test]
fn no_message_is_left_in_another_language() {
    for (i, one) in Language::ALL.into_iter().enumerate() {
        for other in Language::ALL.into_iter().skip(i + 1) {
            let (a, b) = (messages(one), messages(other));
            let alike: Vec<&String> =
                a.iter().filter(|(key, text)| b.get(*key) == Some(text)).map(|(key, _)| key).collect();
            let alike: Vec<_> = alike.into_iter().filter(|key| !WORDLESS.contains(&key.as_str())).collect();
            assert!(alike.is_empty(), "{} and {} say alike: {alike:?}", one.tag(), other.tag());
        }
    }
}
