//! Pages in the pseudo-language: plain letters are texts outside the message
//! files. What remains is data: names, sources and questions as their files have them.

#![cfg(test)]

use std::collections::BTreeSet;
use std::path::Path;

use baywitness::folder::Models;
use baywitness::job;
use baywitness::record::{DrillMark, GalleryEntry, JobRecord};
use baywitness::report;
use baywitness::words::Language;

/// What a reader of the markup sees or hears: text between tags and texts of attributes.
pub(crate) fn texts(page: &str) -> Vec<String> {
    let mut all = Vec::new();
    let body = &page[page.find("<title>").unwrap()..];
    for part in body.split('<').skip(1) {
        let (tag, text) = part.split_once('>').unwrap();
        if !tag.starts_with("style") && !tag.starts_with("script") {
            all.push(text.to_owned());
        }
        for name in [" aria-label=\"", " alt=\"", " title=\""] {
            if let Some((_, value)) = tag.split_once(name) {
                all.push(value.split('"').next().unwrap().to_owned());
            }
        }
    }
    all.into_iter().map(|t| t.trim().to_owned()).filter(|t| t.chars().any(char::is_alphabetic)).collect()
}

/// Takes what the pseudo-language says (in brackets) out of a text.
pub(crate) fn outside_brackets(text: &str) -> String {
    let (mut depth, mut left) = (0, String::new());
    for c in text.chars() {
        match c {
            '⟦' => depth += 1,
            '⟧' => depth -= 1,
            c if depth == 0 => left.push(c),
            _ => {}
        }
    }
    left
}

/// The words of a text, in small letters.
fn words(text: &str) -> impl Iterator<Item = String> {
    text.split(|c: char| !c.is_alphanumeric()).filter(|w| w.chars().any(char::is_alphabetic)).map(str::to_lowercase)
}

/// Words of data: of file names and of the values that a folder's TOML files have under keys for people.
pub(crate) fn data_words(folder: &Path, more: &[&str]) -> BTreeSet<String> {
    const KEYS: [&str; 18] = [
        "title",
        "source",
        "text",
        "name",
        "job",
        "description",
        "note",
        "document",
        "revision",
        "applies_to",
        "technician",
        "bay",
        "series",
        "file",
        "make",
        "model",
        "tolerance_basis",
        "id",
    ];
    // Units, names of formats and methods, the program's own name.
    let mut all: BTreeSet<String> =
        ["mm", "px", "m", "s", "h", "x", "y", "z", "baywitness", "json", "pdf", "html", "sha", "exif", "u", "k"]
            .map(str::to_owned)
            .into();
    all.extend(more.iter().flat_map(|text| words(text)));
    for entry in std::fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()) {
        all.extend(words(&entry.file_name().unwrap().to_string_lossy()));
        if entry.is_dir() {
            all.extend(data_words(&entry, &[]));
        } else if entry.extension().is_some_and(|e| e == "toml") {
            for line in std::fs::read_to_string(&entry).unwrap().lines() {
                let Some((key, value)) = line.split_once('=') else { continue };
                if KEYS.contains(&key.trim()) {
                    all.extend(words(value));
                }
            }
        }
    }
    all
}

/// Texts of a page with words that are neither messages nor data.
pub(crate) fn said_past(page: &str, data: &BTreeSet<String>) -> Vec<String> {
    let past = |text: &String| words(&outside_brackets(text)).any(|w| !data.contains(&w));
    texts(page).into_iter().filter(past).collect()
}

fn sample(name: &str) -> (JobRecord, BTreeSet<String>) {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("samples").join(name);
    let record = job::verify(&folder, &job::Options { models: Models::embedded() }).unwrap();
    let codes: Vec<&str> = record.findings.iter().map(|f| f.code.as_str()).collect();
    let data = data_words(&folder, &[&codes.join(" "), &record.tool.name, &record.tool.version]);
    (record, data)
}

#[test]
fn plain_words_on_a_page_would_be_found() {
    let page = "<title>⟦ƀàý~⟧</title><p title=\"⟦à⟧\">⟦ŵñ⟧ D-1, photos/a.jpg</p><p>12 mm to the left</p>";
    let data = data_words(Path::new(env!("CARGO_MANIFEST_DIR")).join("samples/good").as_path(), &["D photos"]);
    assert_eq!(said_past(page, &data), ["12 mm to the left"]);
}

#[test]
fn every_text_of_the_gallery_is_a_message_or_data() {
    let (right, _) = sample("good");
    let (record, data) = sample("wrong");
    let entries: Vec<GalleryEntry> = record
        .findings
        .iter()
        .map(|f| GalleryEntry {
            code: f.code.clone(),
            record: record.clone(),
            companions: vec!["weak-geometry".to_owned()],
            pictures: vec![["a.jpg".to_owned(), "b.jpg".to_owned()]],
            report: "c.html".to_owned(),
        })
        .collect();
    assert!(!entries.is_empty());
    let past = said_past(&report::gallery_html(&right, &entries, Language::Pseudo), &data);
    assert!(past.is_empty(), "{past:#?}");
}

/// A drill with an answer of each kind.
fn marked() -> DrillMark {
    let answer = |finding: &str, way: &str, size: f64| serde_json::json!({ "job": "DRILL-01", "finding": finding, "move": way, "size": size });
    let truth = || answer("stand-too-near", "away", 20.0);
    let mistake = |answered: serde_json::Value, way: bool, size: bool| serde_json::json!({ "truth": truth(), "answer": answered, "way_right": way, "size_right": size, "size_room": 5.0 });
    let mistakes = [
        mistake(serde_json::Value::Null, false, false),
        mistake(truth(), true, true),
        mistake(answer("stand-too-near", "towards", 20.0), false, true),
        mistake(answer("stand-too-near", "away", 60.0), true, false),
        mistake(answer("stand-too-near", "towards", 60.0), false, false),
    ];
    let job = |mistakes: &[serde_json::Value], answered: bool| {
        let wrong = [answer("stand-turned", "left-end-away", 1.0)];
        serde_json::json!({
            "job": "DRILL-01", "mistakes": mistakes, "wrong": wrong, "answered": answered, "points": 1.0, "of": 3.0
        })
    };
    serde_json::from_value(serde_json::json!({
        "format": "drill-mark/1", "drill": "0123", "trainee": "T9", "day": "2026-02-03", "level": 2, "earlier": 1,
        "findings": [1, 2], "ways": [1, 1], "sizes": [0, 1], "false_alarms": 1, "points": [1.0, 3.0],
        "jobs": [job(&mistakes, true), job(&[], false)],
    }))
    .unwrap()
}

#[test]
fn every_text_of_a_drill_s_mark_is_a_message_or_data() {
    let mark = marked();
    let codes = "DRILL-01 T9 stand-too-near stand-turned";
    let data = data_words(&Path::new(env!("CARGO_MANIFEST_DIR")).join("samples/good"), &[codes]);
    let past = said_past(&report::progress_html(std::slice::from_ref(&mark), Language::Pseudo), &data);
    assert!(past.is_empty(), "{past:#?}");
    let text = report::drill_text(&mark, Language::Pseudo);
    let past: Vec<&str> = text.lines().filter(|l| words(&outside_brackets(l)).any(|w| !data.contains(&w))).collect();
    assert!(past.is_empty(), "{past:#?}");
}
