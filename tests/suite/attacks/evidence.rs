//! Attacks on what was sealed and on who checks it: keys, the auditor's own folder.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::sync::LazyLock;

use baywitness::custody::differences;
use baywitness::record::JobRecord;
use serde_json::{Value, json};

use super::workshop::{Workshop, check, key, signers};
use super::{judged, sample};
use crate::evidence::doors::{run, seal_with, small_job};
use crate::evidence::pades::own;
use crate::evidence::sealed_anew;

fn path(text: &str) -> &Path {
    Path::new(text)
}

/// Whoever changes everything and seals it anew has another key.
#[test]
fn evidence_sealed_anew_with_another_key() {
    let dir = tempfile::tempdir().unwrap();
    let (own, other) = (key(dir.path(), "own"), key(dir.path(), "other"));
    let list = signers(dir.path(), &own, "");
    let job = small_job(&dir.path().join("in"));
    let (honest, forged) = (dir.path().join("honest"), dir.path().join("forged"));
    assert_eq!(seal_with(&job, &honest, &own, None).0, 0);
    fs::write(job.join("notes (ä).txt"), "another story").unwrap();
    assert_eq!(seal_with(&job, &forged, &other, None).0, 0);
    assert_eq!(check(&honest, &list).0, 0);
    let (code, said) = check(&forged, &list);
    assert!(code == 3 && said.contains("not in the list of signers"), "{code}: {said}");
}

/// A stolen key signs for ever; the list says until when it counts.
#[test]
fn a_stolen_key_that_was_withdrawn() {
    let dir = tempfile::tempdir().unwrap();
    let own = key(dir.path(), "own");
    let job = small_job(&dir.path().join("in"));
    let forged = dir.path().join("forged");
    assert_eq!(seal_with(&job, &forged, &own, None).0, 0);
    let withdrawn = signers(dir.path(), &own, "valid-before=\"20200101\" ");
    let (code, said) = check(&forged, &withdrawn);
    assert!(code == 3 && said.contains("no longer allowed"), "{code}: {said}");
}

/// Before anybody knows of the theft the signature counts; where every job is
/// logged, the forged one has no proof of it.
#[test]
fn a_stolen_key_that_still_counts() {
    let dir = tempfile::tempdir().unwrap();
    let own = key(dir.path(), "own");
    let list = signers(dir.path(), &own, "");
    let forged = dir.path().join("forged");
    assert_eq!(seal_with(&small_job(&dir.path().join("in")), &forged, &own, None).0, 0);
    assert_eq!(check(&forged, &list).0, 0, "the signature alone finds nothing");
    let log = dir.path().join("log");
    let (_, said) = run(&[&log, path("--origin"), path("shop.example/attempts")], &["log", "new"], None);
    let keys = dir.path().join("keys");
    fs::write(&keys, said.lines().find(|l| l.starts_with("shop.example/attempts+")).unwrap()).unwrap();
    let (_, said) = run(&[&forged, path("--signers"), &list, path("--log-keys"), &keys], &["check"], None);
    assert!(said.contains("holds no proof that its attempt was logged"), "{said}");
}

/// An audit keeps what it found, so that the next one is quick: whoever can
/// write there writes the verdicts. Judged again, they are the photos'.
#[test]
fn an_audit_whose_kept_verdicts_were_rewritten() {
    let dir = tempfile::tempdir().unwrap();
    let (root, out) = (dir.path().join("archive"), dir.path().join("out"));
    small_job(&root.join("a"));
    let audit = |more: &[&str]| {
        let mut arguments = vec![root.as_path(), path("--out"), &out];
        arguments.extend(more.iter().copied().map(path));
        run(&arguments, &["audit"], None);
        verdict(&out)
    };
    assert_eq!(audit(&[]), "retake");
    super::rewrite(&out.join("audit.jsonl"), |text| {
        text.replace("\"exit\":4", "\"exit\":0").replace("\"verdict\":\"retake\"", "\"verdict\":\"within\"")
    });
    assert_eq!(audit(&[]), "within", "what was kept is believed");
    assert_eq!(audit(&["--recompute"]), "retake");
    let changes: Value = serde_json::from_slice(&fs::read(out.join("differences.json")).unwrap()).unwrap();
    assert_eq!(changes["format"], "differences/1");
}

fn verdict(out: &Path) -> String {
    let text = fs::read_to_string(out.join("audit.jsonl")).unwrap();
    let line: Value = serde_json::from_str(text.lines().next().unwrap()).unwrap();
    line["verdict"].as_str().unwrap().to_owned()
}

/// A good and a wrong job sealed, the wrong one also as a masked copy.
static WORKSHOP: LazyLock<Workshop> = LazyLock::new(|| {
    let shop = Workshop::new();
    for name in ["good", "wrong"] {
        let (code, said) = seal_with(&sample(name), &shop.at(name), &shop.key, None);
        assert_eq!(code, 0, "{said}");
    }
    let (code, said) = run(&[&shop.at("wrong"), path("--out"), &shop.at("copy")], &["redact"], None);
    assert_eq!(code, 0, "{said}");
    shop
});

/// A file of a sealed folder's payload.
fn file(folder: &str, name: &str) -> Vec<u8> {
    fs::read(WORKSHOP.at(folder).join("data").join(name)).unwrap()
}

/// The good job's result under the wrong one's number.
fn within() -> Vec<u8> {
    let text = String::from_utf8(file("good", "result.json")).unwrap();
    text.replace("SAMPLE-GOOD", "SAMPLE-WRONG").into_bytes()
}

/// The line of a check that failed, of this item.
fn failed<'a>(said: &'a str, item: &str) -> &'a str {
    let line = said.lines().find(|l| l.starts_with("failed") && l.contains(item));
    line.unwrap_or_else(|| panic!("{item} did not fail: {said}"))
}

/// Whatever a copy names as masked is held against no digest: without any key, a
/// result or a report was put in as masked.
#[test]
fn a_masked_copy_that_masks_its_result() {
    let shop = &*WORKSHOP;
    let (code, said) = check(&shop.at("copy"), &shop.list);
    assert_eq!(code, 0, "{said}");
    let masked = |all: &mut BTreeMap<String, Vec<u8>>, name: &str, bytes: Vec<u8>| {
        let mut redaction: Value = serde_json::from_slice(&all["redaction.json"]).unwrap();
        let named = json!(format!("data/{name}"));
        redaction["masked"].as_array_mut().unwrap().push(named.clone());
        redaction["left_out"].as_array_mut().unwrap().retain(|left| *left != named);
        all.insert("redaction.json".to_owned(), redaction.to_string().into_bytes());
        all.insert(name.to_owned(), bytes);
    };
    let of_a_photo = || {
        let mut record: Value = serde_json::from_slice(&within()).unwrap();
        record["photos"][0]["file"] = json!("../result.json");
        record.to_string().into_bytes()
    };
    for (out, name, bytes) in [
        ("masked-result", "result.json", within()),
        ("masked-as-photo", "result.json", of_a_photo()),
        ("masked-pdf", "report.pdf", file("good", "report.pdf")),
        ("masked-html", "report.html", file("good", "report.html")),
    ] {
        let (code, said) = shop.checked(("copy", None), out, |all| masked(all, name, bytes));
        let why = failed(&said, "sealed files");
        assert!(code == 1 && why.contains("is named as masked and is no photo"), "{said}");
    }
}

/// Masked photos have digests of their own; they show another job.
#[test]
fn a_masked_copy_with_another_jobs_photos() {
    let shop = &*WORKSHOP;
    let (code, said) = shop.checked(("copy", None), "others-photos", |all| {
        for photo in ["job/photos/a.jpg", "job/photos/b.jpg"] {
            all.insert(photo.to_owned(), file("good", photo));
        }
    });
    let why = failed(&said, "masked photos");
    assert!(code == 1 && why.contains("a.jpg is not the photo that was sealed"), "{said}");
}

/// A result that does not follow from the photos is found by measuring; a masked
/// copy would not be measured, if it were not.
#[test]
fn a_handwritten_result_handed_on_as_a_masked_copy() {
    let shop = &*WORKSHOP;
    let (code, said) = shop.checked(("wrong", Some(&shop.key)), "handwritten", |all| {
        all.insert("result.json".to_owned(), nearly_within(&all["result.json"]));
    });
    assert_eq!(code, 1, "{said}");
    let handed_on = shop.at("handed-on");
    let (code, said) = run(&[&shop.at("handwritten"), path("--out"), &handed_on], &["redact"], None);
    assert!(code == 2 && said.contains("its photos say otherwise") && !handed_on.exists(), "{code}: {said}");
    // Nor does it help to make the copy by other means: its photos measure what they show.
    let (code, said) = shop.checked(("copy", None), "by-other-means", |all| {
        all.insert("result.json".to_owned(), file("handwritten", "result.json"));
        for name in ["tagmanifest-sha512.txt", "tagmanifest-sha512.txt.sig", "manifest-sha512.txt", "bag-info.txt"] {
            all.insert(format!("sealed/{name}"), fs::read(shop.at("handwritten").join(name)).unwrap());
        }
    });
    let why = failed(&said, "measured again");
    assert!(code == 1 && why.contains("distance: recorded 1495"), "{said}");
}

/// The same job with another distance, and all checks within.
fn nearly_within(result: &[u8]) -> Vec<u8> {
    let mut record: Value = serde_json::from_slice(result).unwrap();
    record["verdict"] = json!("within");
    record["findings"] = json!([]);
    for check in record["checks"].as_array_mut().unwrap() {
        check["verdict"] = json!("within");
    }
    record["checks"][0]["value"] = json!(1495.0);
    record.to_string().into_bytes()
}

/// Masked photos still measure what was recorded: a verdict that does not follow from true values is found too.
#[test]
fn a_verdict_that_does_not_follow_in_a_masked_copy() {
    let shop = &*WORKSHOP;
    sealed_anew(&shop.at("wrong"), &shop.at("verdict-alone"), Some(&shop.key), |all| {
        let mut record: Value = serde_json::from_slice(&all["result.json"]).unwrap();
        record["checks"][0]["verdict"] = json!("within");
        all.insert("result.json".to_owned(), record.to_string().into_bytes());
    });
    let (code, said) = shop.checked(("copy", None), "verdict-copied", |all| {
        all.insert("result.json".to_owned(), file("verdict-alone", "result.json"));
        for name in ["tagmanifest-sha512.txt", "tagmanifest-sha512.txt.sig", "manifest-sha512.txt", "bag-info.txt"] {
            all.insert(format!("sealed/{name}"), fs::read(shop.at("verdict-alone").join(name)).unwrap());
        }
    });
    assert!(code == 1 && failed(&said, "measured again").contains("distance: recorded within"), "{said}");
}

/// Reports of another job, before the workshop's own key seals: people read the report.
#[test]
fn reports_of_another_job_sealed_with_the_own_key() {
    let shop = &*WORKSHOP;
    for name in ["report.pdf", "report.html", "for-the-customer.html"] {
        let (code, said) = shop.checked(("wrong", Some(&shop.key)), &format!("others-{name}"), |all| {
            all.insert(name.to_owned(), file("good", name));
        });
        assert!(code == 1 && failed(&said, "reports").contains(&format!("data/{name}:")), "{said}");
    }
    // One of another job that is validly signed, and its own with a page of somebody's put before the signature.
    let pem = own(&shop.at(""), "Invented");
    let sign = |name: &str| {
        let out = shop.at(&format!("signed-{name}"));
        let arguments = [&sample(name), path("--out"), &out, path("--key"), &shop.key, path("--sign-pdf"), &pem];
        assert_eq!(run(&arguments, &["seal"], None).0, 0);
    };
    ["good", "wrong"].into_iter().for_each(sign);
    let (code, said) = check(&shop.at("signed-wrong"), &shop.list);
    assert!(code == 0 && said.contains("3 files, each what the sealed result and photos give"), "{said}");
    let (code, said) = shop.checked(("wrong", Some(&shop.key)), "others-signed", |all| {
        all.insert("report.pdf".to_owned(), file("signed-good", "report.pdf"));
    });
    assert!(code == 1 && said.contains("by CN=Invented") && failed(&said, "reports").contains("report.pdf"), "{said}");
}

/// An older program set its pages otherwise: that is no forgery, and is said, also where the version is a lie.
#[test]
fn another_version_stated_so_that_reports_cannot_be_made_again() {
    let shop = &*WORKSHOP;
    let (code, said) = shop.checked(("wrong", Some(&shop.key)), "older", |all| {
        let mut record: Value = serde_json::from_slice(&all["result.json"]).unwrap();
        record["tool"]["version"] = json!("0.0.1");
        all.insert("result.json".to_owned(), record.to_string().into_bytes());
    });
    let line = said.lines().find(|l| l.contains("reports")).unwrap();
    assert!(code == 0 && line.starts_with("not checkable") && line.contains("made by version 0.0.1"), "{said}");
}

/// In an archive a masked copy keeps the sealed verdict where its photos measure it, and a forged one has none.
#[test]
fn a_forged_masked_copy_in_an_archive() {
    let shop = &*WORKSHOP;
    let (archive, out) = (shop.at("archive"), shop.at("audited"));
    sealed_anew(&shop.at("copy"), &archive.join("honest"), None, |_| ());
    sealed_anew(&shop.at("copy"), &archive.join("forged"), None, |all| {
        all.insert("job/photos/a.jpg".to_owned(), file("good", "job/photos/a.jpg"));
    });
    let (_, said) = run(&[&archive, path("--out"), &out, path("--signers"), &shop.list], &["audit"], None);
    let text = fs::read_to_string(out.join("audit.jsonl")).unwrap();
    let lines: Vec<Value> = text.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    let of = |name: &str| lines.iter().find(|l| l["path"].as_str().unwrap().ends_with(name)).unwrap();
    let (honest, forged) = (of("honest"), of("forged"));
    assert_eq!((&honest["verdict"], &honest["exit"]), (&json!("outside"), &json!(1)), "{said}");
    assert_eq!(honest["evidence"], json!("masked copy, intact and signed"), "{said}");
    assert_eq!((&forged["evidence"], &forged["exit"]), (&json!("altered"), &json!(2)), "{said}");
}

/// Whatever a sealed result says beside its values is made again as well.
#[test]
fn a_sealed_result_whose_other_fields_were_rewritten() {
    let honest = judged(&sample("wrong"));
    let kept = JobRecord::from_json(&honest.to_json().unwrap()).unwrap();
    assert_eq!(differences(&kept, &honest), []);
    let rewritten = |place: &str, value: Value| {
        let mut record = serde_json::to_value(&kept).unwrap();
        let there = record.pointer_mut(place).unwrap_or_else(|| panic!("{place} is no place of a record"));
        assert_ne!(*there, value, "{place} stays as it was");
        *there = value;
        serde_json::from_value::<JobRecord>(record).unwrap()
    };
    for (place, value) in [
        ("/checks/0/lower", json!(1470.0)),
        ("/checks/0/upper", json!(1530.0)),
        ("/checks/0/nominal", json!(1476.0)),
        ("/checks/0/expanded_uncertainty", json!(0.001)),
        ("/checks/0/conformance_probability", json!(0.9999)),
        ("/checks/0/move", json!(0.0)),
        ("/checks/0/correction", json!("nothing to move")),
        ("/checks/0/correction_phrase", json!(null)),
        ("/checks/0/budget/0/share", json!(0.01)),
        ("/context/technician", json!("somebody else")),
        ("/context/rendered", json!(false)),
        ("/sheet/source", json!("a vehicle maker")),
        ("/reason", json!("All is well.")),
        ("/findings/0/level", json!("note")),
        ("/findings/0/message", json!("nothing")),
        ("/carriers/0/position_mm/0", json!(1500.0)),
        ("/photos/0/taken", json!("2020-01-01T00:00:00Z")),
        ("/photos/0/markers/0/corners_px/0/0", json!(1.0)),
    ] {
        assert_ne!(differences(&rewritten(place, value), &honest), [], "{place}");
    }
    // Another processor rounds otherwise.
    let value = honest.checks[0].expanded_uncertainty.unwrap();
    let rounded = rewritten("/checks/0/expanded_uncertainty", json!(value * (1.0 + 1e-7)));
    assert_eq!(differences(&rounded, &honest), []);
    // Another version has other sentences, and the same limits.
    let older = |place: &str, value: Value| {
        let mut record = rewritten(place, value);
        record.tool.version = "0.0.1".to_owned();
        differences(&record, &honest)
    };
    assert_eq!(older("/reason", json!("said otherwise")), []);
    assert_ne!(older("/checks/0/upper", json!(1530.0)), []);
    assert_ne!(older("/checks/0/move", json!(0.0)), []);
    assert_ne!(older("/context/technician", json!("somebody else")), []);
}
