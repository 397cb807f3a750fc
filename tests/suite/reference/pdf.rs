//! The PDF report beside pikepdf (is it marked as PDF/A-2a and PDF/UA-1, and
//! structured?) and OpenCV (does the QR code on every page say the digest?).

use std::path::PathBuf;
use std::process::Command;

use baywitness::folder::Models;
use baywitness::job::{Options, verify};
use baywitness::report::{digest, pdf, pictures};
use baywitness::words::Language;
use serde_json::json;

use super::harness::answer;

#[test]
fn the_report_is_marked_structured_and_its_codes_say_the_digest() {
    let job: PathBuf = [env!("CARGO_MANIFEST_DIR"), "samples", "wrong"].iter().collect();
    let record = verify(&job, &Options::new(Models::embedded())).unwrap();
    let result = record.to_json().unwrap();
    let bytes = pdf(&record, &pictures(&job, &record).unwrap(), &result, Language::English).unwrap();
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("report.pdf");
    std::fs::write(&file, &bytes).unwrap();
    let drawn = Command::new("pdftoppm").args(["-r", "150", "-png"]).arg(&file).arg(dir.path().join("page")).status();
    if !drawn.is_ok_and(|status| status.success()) {
        println!("skipped: pdftoppm is not installed");
        return;
    }
    let mut pages: Vec<PathBuf> = std::fs::read_dir(&dir).unwrap().map(|e| e.unwrap().path()).collect();
    pages.retain(|p| p.extension().is_some_and(|e| e == "png"));
    pages.sort();
    let input = json!({ "pdf": file, "pages": pages });
    let Some(found) = answer("pdf.py", &["cv2", "pikepdf"], &input) else { return };
    assert_eq!(found["pdfa"], json!(["2", "A", "1"]), "{found}");
    assert_eq!(found["title"], json!("Where the target stood: job SAMPLE-WRONG: outside tolerance"));
    assert_eq!(
        (&found["language"], &found["marked"], &found["shows_title"]),
        (&json!("en"), &json!(true), &json!(true))
    );
    assert_eq!(found["intents"], json!(["/GTS_PDFA1"]));
    assert_eq!((&found["encrypted"], &found["scripts"]), (&json!(false), &json!(false)));
    assert_eq!(found["pages"], json!(pages.len()));
    // Photos are passed through as JPEG, never unpacked.
    assert!(found["image_filters"].to_string().contains("DCTDecode"), "{found}");
    let count = |role: &str| found["roles"][role].as_u64().unwrap_or(0);
    // One title; the report's sections and the customer's page.
    assert_eq!(count("/H1"), 1, "{found}");
    assert!(count("/H2") >= 10 && count("/P") > 20 && count("/L") > 5 && count("/Table") >= 5, "{found}");
    assert!(count("/TR") > 30 && count("/TD") > 60, "{found}");
    assert!(found["figures"]["all"].as_u64().unwrap() >= 5 + 2 + 3 + 2, "checks, views, magnified, photos: {found}");
    assert_eq!(found["figures"]["all"], found["figures"]["with words"]);
    assert_eq!(found["heads"]["all"], found["heads"]["scoped"]);
    assert!(found["outline"].as_u64().unwrap() >= 10, "{found}");
    let codes = found["codes"].as_array().unwrap();
    assert!(codes.iter().all(|code| *code == json!(digest(&result))), "{codes:?}");
}
