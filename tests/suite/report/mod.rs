//! The report room against invented jobs: what people read, and whether the
//! page is well made. Set `BAYWITNESS_REPORT_DIR` to keep the pages.

#![allow(clippy::unwrap_used, clippy::expect_used, reason = "a fixture that cannot be built is a failed test")]
#![allow(clippy::print_stderr, reason = "a skipped check says so")]

mod customer;
pub(crate) mod fixture;
mod kept;
mod languages;
mod page;
mod pdf;

use baywitness::record::{JobRecord, Level, Verdict};
use baywitness::report::{PhotoPicture, TextOptions, html, text};
use baywitness::words::Language;

type Job = (JobRecord, Vec<PhotoPicture>);

/// Every kind of job; the first five are kept as snapshots.
fn jobs() -> Vec<(&'static str, Job)> {
    vec![
        ("good", fixture::job(&fixture::GOOD, 2)),
        ("wrong", fixture::job(&fixture::WRONG, 2)),
        ("not_proven", fixture::job(&fixture::NOT_PROVEN, 3)),
        ("retake", fixture::retake()),
        ("two-targets", fixture::two_targets()),
        ("twelve-photos", fixture::job(&fixture::GOOD, 12)),
        ("long-names", (poisoned(&fixture::two_targets().0, &"unbroken".repeat(15)), vec![])),
        ("bare", (bare(), vec![])),
    ]
}

/// The least that a record can hold.
fn bare() -> JobRecord {
    let (mut record, _) = fixture::retake();
    record.context = Default::default();
    record.sheet = Default::default();
    record.checks.clear();
    record.photos.clear();
    record.readings.clear();
    record.findings.clear();
    record.attachments.clear();
    record.inputs.clear();
    record
}

#[test]
fn text_reads_as_it_did() {
    for (name, (record, _)) in jobs().iter().take(5) {
        kept::assert_kept(&format!("text-{name}"), &text(record, &TextOptions::default()));
    }
}

/// What a person reads from the page, tag by tag, without pictures and style.
#[test]
fn page_reads_as_it_did() {
    for (name, (record, pictures)) in jobs().iter().take(5) {
        let page = page::Page::parse(&html(record, pictures, Language::English));
        let said = ["h1", "h2", "h3", "p", "li", "dt", "dd", "th", "td", "summary", "figcaption"];
        let lines: Vec<String> = page
            .elements
            .iter()
            .filter(|e| said.contains(&e.name.as_str()) && !e.text.is_empty())
            .map(|e| format!("{}: {}", e.name, e.text))
            .collect();
        kept::assert_kept(&format!("page-{name}"), &lines.join("\n"));
    }
}

#[test]
fn pages_are_well_formed_and_fetch_nothing() {
    for (name, (record, pictures)) in jobs() {
        let written = html(&record, &pictures, Language::English);
        if let Some(dir) = std::env::var_os("BAYWITNESS_REPORT_DIR") {
            std::fs::create_dir_all(&dir).unwrap();
            std::fs::write(std::path::Path::new(&dir).join(format!("{name}.html")), &written).unwrap();
        }
        let page = page::Page::parse(&written);
        assert!(page.complaints.is_empty(), "{name}: {:?}", page.complaints);
        for element in &page.elements {
            assert!(
                !["script", "link", "iframe", "object"].contains(&element.name.as_str()),
                "{name}: {}",
                element.name
            );
            for (key, value) in &element.attributes {
                let reference = ["href", "src", "data", "action"].contains(&key.as_str());
                assert!(
                    !reference || value.starts_with("data:image/jpeg;base64,") || value.starts_with('#'),
                    "{value:.40}"
                );
                assert!(!key.starts_with("on"), "{name}: {key}");
            }
        }
        assert!(!written.contains("url(") && !written.contains("@import"), "{name}");
    }
}

#[test]
fn every_drawing_speaks_and_headings_are_in_order() {
    for (name, (record, pictures)) in jobs() {
        let page = page::Page::parse(&html(&record, &pictures, Language::English));
        for svg in page.named("svg") {
            let spoken =
                svg.attribute("role") == Some("img") && svg.attribute("aria-label").is_some_and(|l| !l.is_empty());
            assert!(spoken || svg.attribute("aria-hidden") == Some("true"), "{name}");
        }
        let mut last = 0;
        for element in &page.elements {
            if let Some(level) = element.name.strip_prefix('h').and_then(|n| n.parse::<u8>().ok()) {
                assert!(level <= last + 1, "{name}: h{level} after h{last}: {}", element.text);
                last = level;
            }
        }
        assert_eq!(page.named("h1").count(), 1, "{name}");
        let mut ids: Vec<&str> = page.elements.iter().filter_map(|e| e.attribute("id")).collect();
        let all = ids.len();
        ids.sort_unstable();
        ids.dedup();
        assert_eq!(ids.len(), all, "{name}: an id occurs twice");
    }
}

/// Puts `poison` into every string of a record.
fn poisoned(record: &JobRecord, poison: &str) -> JobRecord {
    fn poison_all(value: &mut serde_json::Value, poison: &str) {
        match value {
            serde_json::Value::String(text) => text.push_str(poison),
            serde_json::Value::Array(items) => items.iter_mut().for_each(|v| poison_all(v, poison)),
            serde_json::Value::Object(map) => {
                let keep = ["verdict", "level"];
                map.iter_mut()
                    .filter(|(key, _)| !keep.contains(&key.as_str()))
                    .for_each(|(_, v)| poison_all(v, poison));
            }
            _ => {}
        }
    }
    let mut value = serde_json::to_value(record).unwrap();
    poison_all(&mut value, poison);
    serde_json::from_value(value).unwrap()
}

#[test]
fn typed_markup_stays_text() {
    let (record, pictures) = fixture::job(&fixture::WRONG, 2);
    let clean = page::Page::parse(&html(&record, &pictures, Language::English));
    for poison in [
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "</style></title><b>",
        "'\\\n\0\u{1b}[2J\u{202e}",
    ] {
        let page = page::Page::parse(&html(&poisoned(&record, poison), &pictures, Language::English));
        assert!(page.complaints.is_empty(), "{poison}: {:?}", page.complaints);
        assert_eq!(page.named("script").count(), 0);
        assert_eq!(page.named("img").count(), 0);
        assert_eq!(page.named("b").count(), clean.named("b").count());
        assert!(page.elements.iter().flat_map(|e| &e.attributes).all(|(key, _)| !key.starts_with("on")));
    }
}

#[test]
fn a_terminal_is_not_commanded_by_typed_text() {
    let (record, _) = fixture::job(&fixture::WRONG, 2);
    let shown = text(
        &poisoned(&record, "\u{1b}[2J\u{7}\u{202e}"),
        &TextOptions { width: 100, colour: false, ..TextOptions::default() },
    );
    assert!(shown.chars().all(|c| c == '\n' || !c.is_control()), "a control character came through");
    assert!(!shown.contains('\u{202e}'));
}

#[test]
fn colour_adds_nothing_but_colour() {
    for (name, (record, _)) in jobs() {
        let plain = text(&record, &TextOptions { width: 80, colour: false, ..TextOptions::default() });
        let coloured = text(&record, &TextOptions { width: 80, colour: true, ..TextOptions::default() });
        let mut stripped = String::new();
        let mut inside = false;
        for c in coloured.chars() {
            match c {
                '\u{1b}' => inside = true,
                'm' if inside => inside = false,
                _ if !inside => stripped.push(c),
                _ => {}
            }
        }
        assert_eq!(stripped, plain, "{name}");
        assert!(coloured.contains('\u{1b}'), "{name}");
    }
}

#[test]
fn text_keeps_to_its_width() {
    for (name, (record, _)) in jobs() {
        for width in [40, 60, 80, 120, 160] {
            for line in text(&record, &TextOptions { width, colour: false, ..TextOptions::default() }).lines() {
                let columns = line.chars().count();
                assert!(columns <= width, "{name} at {width}: {columns} columns: {line}");
            }
        }
    }
}

#[test]
fn nothing_is_moved_by_figures_that_are_void() {
    let (mut record, pictures) = fixture::job(&fixture::WRONG, 2);
    record.verdict = Verdict::Retake;
    record
        .findings
        .insert(0, fixture::finding("camera-mismatch", Level::Void, "The camera profile does not fit the photos."));
    let shown = text(&record, &TextOptions::default());
    assert!(!shown.contains("move the stand 22"), "{shown}");
    assert!(shown.contains("can't be trusted"));
    let page = page::Page::parse(&html(&record, &pictures, Language::English));
    assert!(page.named("ol").all(|list| !list.text.to_lowercase().contains("move the stand 22")));
}

#[test]
fn corrections_come_in_the_order_in_which_a_stand_is_set() {
    let stance = fixture::Stance { up_mm: 30.0, ..fixture::WRONG };
    let (record, pictures) = fixture::job(&stance, 2);
    let page = page::Page::parse(&html(&record, &pictures, Language::English));
    let list = &page.named("ol").next().unwrap().text;
    let at: Vec<usize> =
        ["Tilt", "Square", "Centre", "Distance", "Height"].iter().map(|w| list.find(w).expect(w)).collect();
    assert!(at.is_sorted(), "{list}");
}

#[test]
fn odd_numbers_never_break_a_page() {
    for odd in [f64::NAN, f64::INFINITY, -1e300, 0.0, 1e-300] {
        let (mut record, pictures) = fixture::job(&fixture::GOOD, 2);
        for check in &mut record.checks {
            check.value = Some(odd);
            check.expanded_uncertainty = Some(odd);
            check.conformance_probability = Some(odd);
            check.lower = Some(odd);
        }
        for measured in record.measured.values_mut() {
            measured.value = odd;
            measured.standard_uncertainty = odd;
        }
        record.carriers[0].position_mm = [odd; 3];
        record.carriers[1].quaternion_wxyz = [odd; 4];
        record.photos[0].markers[0].corners_px = [[odd; 2]; 4];
        record.photos[0].markers[1].residuals_px = Some([[odd; 2]; 4]);
        record.photos[1].position_mm = Some([odd; 3]);
        let written = html(&record, &pictures, Language::English);
        assert!(page::Page::parse(&written).complaints.is_empty());
        for attribute in ["=\"NaN", "=\"inf", "NaN,", "inf,"] {
            assert!(!written.contains(attribute), "{odd}: {attribute}");
        }
        text(&record, &TextOptions::default());
    }
}

#[test]
fn a_value_off_the_scale_and_each_magnification_are_said() {
    let (record, pictures) = fixture::job(&fixture::WRONG, 2);
    let written = html(&record, &pictures, Language::English);
    assert!(written.contains("off this scale: 1278.0 mm"));
    let page = page::Page::parse(&written);
    let captions: Vec<&str> = page.named("figcaption").map(|c| c.text.as_str()).collect();
    assert_eq!(captions.iter().filter(|c| c.contains("drawn 20 times")).count(), 3, "{captions:?}");
    assert_eq!(page.named("text").filter(|t| t.text.contains("px, residuals drawn")).count(), 2);
}

#[test]
fn checks_without_readings_are_shown_where_readings_took_part() {
    let (mut record, pictures) = fixture::job(&fixture::GOOD, 2);
    record.checks_without_readings = Some(fixture::job(&fixture::NOT_PROVEN, 2).0.checks);
    let shown = text(&record, &TextOptions::default());
    assert!(shown.contains("from the photos alone") && shown.contains("not proven"), "{shown}");
    assert!(html(&record, &pictures, Language::English).contains("from the photos alone"));
}
