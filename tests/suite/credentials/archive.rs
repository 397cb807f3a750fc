//! Signed photos in sealed folders, audits, copies and statistics.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::Value;

use super::signing::Maker;
use super::{job, run};

/// A job whose photos a maker signed, sealed with its root as anchor: the job,
/// its evidence folder, the anchors.
fn sealed(dir: &Path, maker: &Maker, required: bool) -> (PathBuf, PathBuf, String) {
    fs::create_dir_all(dir).unwrap();
    let job = job(dir, required);
    maker.sign_job(&job);
    let (out, anchors) = (dir.join("archive/evidence"), maker.anchors(dir));
    fs::create_dir_all(out.parent().unwrap()).unwrap();
    let (code, _, error) =
        run(&["seal", job.to_str().unwrap(), "--out", out.to_str().unwrap(), "--credential-anchors", &anchors]);
    assert_eq!(code, 0, "{error}");
    (job, out, anchors)
}

fn checked(folder: &Path, more: &[&str]) -> (i32, Vec<Value>) {
    let (code, out, error) = run(&[&["check", folder.to_str().unwrap(), "--json", "-"], more].concat());
    let record: Value = serde_json::from_str(&out).unwrap_or_else(|e| panic!("{e}: {out} {error}"));
    (code, record["checks"].as_array().unwrap().clone())
}

/// Outcome and words of the check of the credentials.
fn of_credentials(checks: &[Value]) -> (String, String) {
    let item = checks.iter().find(|c| c["what"] == "credentials").unwrap();
    let text = |key: &str| item[key].as_str().unwrap().to_owned();
    (text("outcome"), text("found"))
}

#[test]
fn sealing_keeps_them_byte_for_byte_and_check_finds_them_again() {
    let dir = tempfile::tempdir().unwrap();
    let maker = Maker::new("Invented Optics");
    let (job, folder, anchors) = sealed(dir.path(), &maker, true);
    for name in ["photos/a.jpg", "photos/b.jpg"] {
        assert_eq!(fs::read(job.join(name)).unwrap(), fs::read(folder.join("data/job").join(name)).unwrap());
    }
    let recorded: Value = serde_json::from_slice(&fs::read(folder.join("data/result.json")).unwrap()).unwrap();
    assert_eq!(
        (&recorded["verdict"], &recorded["photos"][0]["credentials"]["state"]),
        (&"within".into(), &"trusted".into())
    );
    // Without anchors the folder is still what was sealed, and every byte is as signed; but nobody vouches, which the
    // sheet requires.
    let (code, checks) = checked(&folder, &[]);
    assert_eq!(code, 3, "{checks:?}");
    assert_eq!(of_credentials(&checks), ("not checkable".into(), "2 valid, signer unknown".into()));
    let again = |checks: &[Value]| checks.iter().find(|c| c["what"] == "measured again").unwrap()["outcome"].clone();
    assert_eq!(again(&checks), "not checkable", "{checks:?}");
    let (_, checks) = checked(&folder, &["--credential-anchors", &anchors]);
    assert_eq!(again(&checks), "passed", "{checks:?}");
    assert_eq!(of_credentials(&checks), ("passed".into(), "2 valid and trusted".into()));
}

#[test]
fn an_audit_has_a_column_and_judges_by_its_own_anchors() {
    let dir = tempfile::tempdir().unwrap();
    let (maker, other) = (Maker::new("Invented Optics"), Maker::new("Other Invented Optics"));
    let (_, folder, anchors) = sealed(dir.path(), &maker, true);
    let archive = folder.parent().unwrap().to_str().unwrap().to_owned();
    let others = dir.path().join("others.pem");
    fs::write(&others, &other.root_pem).unwrap();
    let out = dir.path().join("audit");
    let audit = |more: &[&str]| {
        let (code, text, error) = run(&[&["audit", &archive, "--out", out.to_str().unwrap()], more].concat());
        let mut table = csv::Reader::from_path(out.join("audit.csv")).unwrap();
        let at = |name: &str, row: &csv::StringRecord, head: &csv::StringRecord| {
            row.get(head.iter().position(|h| h == name).unwrap()).unwrap().to_owned()
        };
        let head = table.headers().unwrap().clone();
        let row = table.records().next().unwrap().unwrap();
        (code, at("verdict", &row, &head), at("credentials", &row, &head), text + &error)
    };
    let (code, verdict, column, text) = audit(&["--credential-anchors", &anchors]);
    assert_eq!((code, verdict.as_str(), column.as_str()), (0, "within", "trusted 2"), "{text}");
    // Other anchors: judged anew, and not proven; the folder is not called altered.
    let (code, verdict, column, text) = audit(&["--credential-anchors", others.to_str().unwrap()]);
    assert_eq!((code, verdict.as_str(), column.as_str()), (3, "not_proven", "unknown_signer 2"), "{text}");
    // None: nobody is trusted, and what the sheet requires is not proven by what the record says of itself.
    let (code, verdict, column, text) = audit(&[]);
    assert_eq!((code, verdict.as_str(), column.as_str()), (3, "not_proven", "unknown_signer 2"), "{text}");
    let (code, _, _, text) = audit(&["--credential-anchors", &anchors]);
    assert_eq!(code, 0, "{text}");
    let page = fs::read_to_string(out.join("report.html")).unwrap();
    assert!(page.contains("Content credentials of the photos: 2 valid and trusted."));
    let trends = dir.path().join("trends");
    let (code, _, error) = run(&["trends", out.to_str().unwrap(), "--out", trends.to_str().unwrap()]);
    assert_eq!(code, 0, "{error}");
    let record: Value = serde_json::from_slice(&fs::read(trends.join("trends.json")).unwrap()).unwrap();
    assert_eq!(record["credentials"], serde_json::json!({ "trusted": 2 }));
}

/// Whoever writes "trusted" into a record that is not theirs to write is found out by the bytes.
#[test]
fn a_record_that_claims_what_the_bytes_do_not_bear_is_altered() {
    let dir = tempfile::tempdir().unwrap();
    let maker = Maker::new("Invented Optics");
    let job = job(dir.path(), true);
    let signed = dir.path().join("signed");
    let (_, folder, _) = sealed(&signed, &maker, true);
    let recorded: Value = serde_json::from_slice(&fs::read(folder.join("data/result.json")).unwrap()).unwrap();
    let claimed = recorded["photos"][0]["credentials"].clone();
    let unsigned = dir.path().join("unsigned");
    let (code, _, error) = run(&["seal", job.to_str().unwrap(), "--out", unsigned.to_str().unwrap()]);
    assert_eq!(code, 0, "{error}");
    let payload = unsigned.join("data");
    let mut record: baywitness::record::JobRecord =
        serde_json::from_slice(&fs::read(payload.join("result.json")).unwrap()).unwrap();
    for photo in &mut record.photos {
        photo.credentials = Some(serde_json::from_value(claimed.clone()).unwrap());
    }
    fs::write(payload.join("result.json"), record.to_json().unwrap()).unwrap();
    let again = baywitness::custody::remeasure(&payload, &baywitness::credentials::Source::default()).unwrap();
    let said: Vec<String> = again.differences.iter().map(|d| d.say(baywitness::words::Language::English)).collect();
    assert!(said.iter().any(|s| s.starts_with("content credentials of photos/a.jpg: recorded valid")), "{said:?}");
}

#[test]
fn a_masked_copy_says_what_it_takes_away() {
    let dir = tempfile::tempdir().unwrap();
    let maker = Maker::new("Invented Optics");
    let (_, folder, _) = sealed(dir.path(), &maker, false);
    let copy = dir.path().join("copy");
    let (code, said, error) = run(&["redact", folder.to_str().unwrap(), "--out", copy.to_str().unwrap()]);
    assert_eq!(code, 0, "{error}");
    assert!(said.contains("The content credentials of 2 photos are not in the copy"), "{said}");
    let redaction: Value = serde_json::from_slice(&fs::read(copy.join("data/redaction.json")).unwrap()).unwrap();
    assert_eq!(redaction["credentials_lost"], serde_json::json!(["data/job/photos/a.jpg", "data/job/photos/b.jpg"]));
    assert_eq!(checked(&copy, &[]).0, 3);
}
