//! The customer's page and the page of a repair order.

use baywitness::record::{JobRecord, Level, Verdict};
use baywitness::report::{by_series, customer_html, series_html};
use baywitness::words::Language;

use super::{fixture, jobs, page};

fn read(record: &JobRecord) -> page::Page {
    page::Page::parse(&customer_html(record, &"ab".repeat(64), Language::English))
}

fn list_after(page: &page::Page, heading: &str) -> String {
    let at = page.elements.iter().position(|e| e.name == "h2" && e.text == heading).unwrap();
    let lines = page.elements[at + 1..]
        .iter()
        .take_while(|e| e.name != "h2")
        .filter(|e| ["li", "p"].contains(&e.name.as_str()));
    lines.map(|e| e.text.clone()).collect::<Vec<_>>().join("\n")
}

const PROVEN: &str = "What was proven";
const OPEN: &str = "What was not proven, or is wrong";

#[test]
fn it_is_well_formed_and_has_no_jargon() {
    for (name, (record, _)) in jobs() {
        let page = read(&record);
        assert!(page.complaints.is_empty(), "{name}: {:?}", page.complaints);
        let typed = serde_json::to_string(&record.sheet).unwrap().to_lowercase();
        let said: String = page.elements.iter().filter(|e| e.name == "main").map(|e| e.text.to_lowercase()).collect();
        // Terms of the technician's report that a customer need not know.
        for word in
            ["yaw", "pitch", "roll", "residual", "datum", "coverage", "sigma", "fiducial", "rms", " deg ", " deg."]
        {
            assert!(!said.contains(word) || typed.contains(word) || name == "long-names", "{name}: {word}");
        }
        for word in ["95 of 100", "govern", "trained people", "lasers"] {
            assert!(said.contains(word), "{name}: {word}");
        }
    }
}

#[test]
fn nothing_is_called_proven_that_is_not() {
    let (good, _) = fixture::job(&fixture::GOOD, 2);
    let within = good.checks.iter().filter(|c| c.verdict == Verdict::Within).count();
    assert_eq!(list_after(&read(&good), PROVEN).lines().count(), within);
    let (wrong, _) = fixture::job(&fixture::WRONG, 2);
    let page = read(&wrong);
    assert!(list_after(&page, OPEN).contains("outside what is allowed"));
    assert!(!list_after(&page, PROVEN).contains("How far the target stood from"));
    for level in [Level::Void, Level::Stop] {
        let (mut held, _) = fixture::job(&fixture::GOOD, 2);
        held.findings.insert(0, fixture::finding("camera-mismatch", level, "The camera profile does not fit."));
        held.verdict = if level == Level::Void { Verdict::Retake } else { Verdict::NotProven };
        let page = read(&held);
        assert_eq!(list_after(&page, PROVEN), "Nothing.", "{level:?}");
        assert_eq!(
            page.elements.iter().filter(|e| e.text.contains("stood where it had to stand")).count() > 0,
            level == Level::Stop
        );
    }
    // A stand that is off beside a check that is within: the first does not take the second away.
    let (mut off, _) = fixture::job(&fixture::WRONG, 2);
    off.findings = vec![fixture::finding("stand-too-near", Level::Stop, "Move the stand away.")];
    assert_ne!(list_after(&read(&off), PROVEN), "Nothing.");
}

fn of_series(attempt: u32, setup: &str, stance: &fixture::Stance) -> JobRecord {
    let (mut record, _) = fixture::job(stance, 2);
    record.context.series = Some("R-1".into());
    record.context.attempt = Some(attempt);
    record.context.setup = setup.into();
    record.sheet.title = format!("{setup} title");
    record.job = format!("{setup}-{attempt}");
    record
}

#[test]
fn the_last_attempt_of_each_sensor_counts() {
    let jobs = [
        of_series(2, "radar", &fixture::GOOD),
        of_series(1, "radar", &fixture::WRONG),
        of_series(1, "camera", &fixture::GOOD),
        of_series(2, "camera", &fixture::WRONG),
    ];
    let all: Vec<&JobRecord> = jobs.iter().collect();
    let series = by_series(&all);
    assert_eq!(series.len(), 1);
    let page = page::Page::parse(&series_html(series[0].0, &series[0].1, Language::English));
    assert!(page.complaints.is_empty(), "{:?}", page.complaints);
    let states: Vec<&str> = page
        .named("div")
        .filter(|e| e.attribute("class").is_some_and(|c| c.starts_with("verdict")))
        .map(|e| e.text.as_str())
        .collect();
    assert_eq!(states.len(), 2, "{states:?}");
    let of = |title: &str| states.iter().find(|state| state.contains(title)).unwrap_or_else(|| panic!("{states:?}"));
    assert!(of("radar title").contains("The target stood where") && of("radar title").contains("attempt 2"));
    assert!(of("camera title").contains("did not stand") && of("camera title").contains("attempt 2"));
    let others: Vec<&JobRecord> = all.iter().rev().copied().collect();
    let again = series_html(series[0].0, &others, Language::English);
    assert!(again == series_html(series[0].0, &all, Language::English), "the order in which jobs are named tells");
    assert_eq!(page.named("tr").count(), 5);
}

/// As every report does: that no camera took the photos stands before anything else, with the jobs where some are real.
#[test]
fn rendered_jobs_of_a_repair_order_are_said_to_be() {
    let mut jobs = [of_series(1, "radar", &fixture::GOOD), of_series(2, "radar", &fixture::GOOD)];
    let first = |jobs: &[JobRecord]| {
        let html = series_html("R-1", &jobs.iter().collect::<Vec<_>>(), Language::English);
        let (before, _) = html.split_once("<h1>").unwrap();
        before.to_owned()
    };
    jobs.iter_mut().for_each(|job| job.context.rendered = false);
    assert!(!first(&jobs).contains("RENDERED"));
    jobs[1].context.rendered = true;
    let said = first(&jobs);
    assert!(said.contains("RENDERED") && said.contains("radar-2") && !said.contains("radar-1"), "{said}");
    jobs[0].context.rendered = true;
    let said = first(&jobs);
    assert!(said.contains("RENDERED") && !said.contains("radar-2"), "{said}");
}

#[test]
fn which_attempt_is_the_last_is_not_guessed() {
    let jobs = [of_series(1, "radar", &fixture::GOOD), of_series(1, "radar", &fixture::WRONG)];
    let all: Vec<&JobRecord> = jobs.iter().collect();
    assert!(series_html("R-1", &all, Language::English).contains("cannot be told"));
    assert!(by_series(&all[..1]).is_empty(), "one job is no series");
}
