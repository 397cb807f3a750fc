//! Attacks on masked copies, which nobody signs: by whoever hands one on, and by the workshop that owns the key of what
//! was sealed and knows that a copy holds no whole photos.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

use baywitness::custody::{look_at_masked, masked_differences};
use baywitness::evidence::{BagPath, Bytes, Contents, Manifest, seal};
use baywitness::folder::{JobFolder, Models};
use baywitness::job::{Options, verify};
use baywitness::record::{JobRecord, Verdict};
use baywitness::setup::Decision;
use serde_json::{Value, json};
use sha2::{Digest, Sha512};

use super::rewrite;
use super::workshop::Workshop;
use crate::evidence::doors::{run, seal_with};
use crate::evidence::honest_copies::job;
use crate::evidence::{contents, payload};

/// A job that is within, sealed, and its masked copy.
static WORKSHOP: LazyLock<Workshop> = LazyLock::new(|| {
    let shop = Workshop::new();
    job(&shop.at("job"));
    masked(&shop, "job", "sealed", "copy");
    shop
});

fn masked(shop: &Workshop, job: &str, sealed: &str, copy: &str) {
    let (code, said) = seal_with(&shop.at(job), &shop.at(sealed), &shop.key, None);
    assert_eq!(code, 0, "{said}");
    let (code, said) = run(&[&shop.at(sealed), Path::new("--out"), &shop.at(copy)], &["redact"], None);
    assert_eq!(code, 0, "{said}");
}

/// What `check` says of the copy after somebody without any key changed it and made its own digests fit.
fn changed(out: &str, change: impl FnOnce(&mut Contents)) -> (i32, String) {
    let (copy, out) = (WORKSHOP.at("copy"), WORKSHOP.at(out));
    let mut contents = contents(&copy, payload(&copy));
    change(&mut contents);
    seal(&out, &contents, None, None).unwrap();
    WORKSHOP.check(&out)
}

fn result(folder: &Path) -> Value {
    serde_json::from_slice(&fs::read(folder.join("data/result.json")).unwrap()).unwrap()
}

fn read(record: Value) -> JobRecord {
    serde_json::from_value(record).unwrap()
}

/// The same files with another result among them, as the program writes results: whoever owns the key seals that.
fn forged(copy: &Path, to: &Path, record: Value) -> PathBuf {
    for file in crate::evidence::files(copy) {
        let there = to.join(file.strip_prefix(copy).unwrap());
        fs::create_dir_all(there.parent().unwrap()).unwrap();
        fs::copy(file, there).unwrap();
    }
    fs::write(to.join("data/result.json"), read(record).to_json().unwrap()).unwrap();
    to.join("data")
}

/// The sealed folder's labels and anything else were put beside its signature, where people take them for signed.
#[test]
fn another_verdict_beside_the_seal_of_a_masked_copy() {
    let shop = &*WORKSHOP;
    let (code, said) = changed("honest", |_| ());
    assert_eq!(code, 0, "{said}");
    let put = |all: &mut Contents, name: &str, text: &str| {
        all.payload.insert(format!("sealed/{name}"), Bytes::Here(text.as_bytes().to_vec()));
    };
    let labels = fs::read_to_string(shop.at("copy/data/sealed/bag-info.txt")).unwrap();
    let other = labels.replace("Verdict: within", "Verdict: outside");
    assert_ne!(labels, other);
    let (name, stamp) = ("sealed/bagit.txt", "tagmanifest-sha512.txt.tsr");
    for (out, file, (code, said)) in [
        ("labels", "bag-info.txt is not as", changed("labels", |all| put(all, "bag-info.txt", &other))),
        ("report", "report.html was not", changed("report", |all| put(all, "report.html", "<p>within</p>"))),
        ("below", "a/b.html was not", changed("below", |all| put(all, "a/b.html", "<p>within</p>"))),
        ("stamp", stamp, changed("stamp", |all| put(all, stamp, "<p>within</p>"))),
        ("second", "2.tsr: it is not a", changed("second", |all| put(all, "tagmanifest-sha512.txt.2.tsr", "no"))),
        ("gone", "bagit.txt was sealed", changed("gone", |all| drop(all.payload.remove(name).unwrap()))),
    ] {
        let line = said.lines().find(|line| line.starts_with("failed") && line.contains("sealed files"));
        assert!(code == 1 && line.is_some_and(|line| line.contains(file)), "{out}: {code}: {said}");
    }
}

/// A copy's own labels and files beside its payload are in no sealed manifest.
#[test]
fn a_masked_copy_that_says_more_of_itself() {
    let shop = &*WORKSHOP;
    let verdict = || ("Verdict".to_owned(), "outside".to_owned());
    let (code, said) = changed("says-more", |all| all.info.push(verdict()));
    assert!(code == 1 && said.contains("bag-info.txt says what no copy says of itself"), "{code}: {said}");
    changed("tag-file", |_| ());
    let (folder, report) = (shop.at("tag-file"), "<p>outside</p>");
    fs::write(folder.join("certificate.html"), report).unwrap();
    rewrite(&folder.join("tagmanifest-sha512.txt"), |text| {
        let mut tags = Manifest::read(text).unwrap();
        let digest: String = Sha512::digest(report).iter().map(|byte| format!("{byte:02x}")).collect();
        tags.entries.insert(BagPath::new("certificate.html").unwrap(), digest);
        tags.text()
    });
    let (code, said) = shop.check(&folder);
    assert!(code == 1 && said.contains("certificate.html was not sealed"), "{code}: {said}");
}

/// Which sheet, kit and camera it was is whole in a copy.
#[test]
fn inputs_of_a_masked_copy_rewritten() {
    let shop = &*WORKSHOP;
    let honest = result(&shop.at("copy"));
    let looked = look_at_masked(&shop.at("copy").join("data")).unwrap();
    assert_eq!((looked.strange, looked.differences), (Vec::new(), Ok(Vec::new())));
    let roles: Vec<&str> =
        honest["inputs"].as_array().unwrap().iter().map(|input| input["role"].as_str().unwrap()).collect();
    for role in ["job", "setup", "kit", "camera"] {
        let at = roles.iter().position(|other| *other == role).unwrap();
        let mut record = honest.clone();
        record["inputs"][at]["sha256"] = json!("0".repeat(64));
        let payload = forged(&shop.at("copy"), &shop.at(&format!("input-{role}")), record);
        let differences = look_at_masked(&payload).unwrap().differences.unwrap();
        assert!(
            differences.len() == 1 && format!("{differences:?}").contains(&"0".repeat(64)),
            "{role}: {differences:?}"
        );
    }
}

/// What the masked photos of the copy measure, and the rule of its sheet.
fn measured_again(copy: &Path, room: &Path) -> (JobRecord, Decision) {
    crate::staged::copy(&copy.join("data/job"), room, true);
    fs::write(room.join("scan-report.txt"), "").unwrap();
    let decision = JobFolder::open(room, &Models::embedded()).unwrap().setup.decision;
    (verify(room, &Options::new(Models::embedded())).unwrap(), decision)
}

/// Everything that follows from the values, or stands in the job file, in another way than it is there.
#[test]
fn figures_of_a_masked_copy_rewritten() {
    let shop = &*WORKSHOP;
    let honest = result(&shop.at("copy"));
    let (now, decision) = measured_again(&shop.at("copy"), &shop.at("measured"));
    let differences = |record: Value| masked_differences(&read(record), &now, &decision);
    assert_eq!(differences(honest.clone()), []);
    assert_eq!(honest["verdict"], "within");
    let quantity = honest["measured"].as_object().unwrap().keys().next().unwrap().to_owned();
    let value = honest["checks"][0]["value"].as_f64().unwrap();
    for (place, value) in [
        ("/checks/0/expanded_uncertainty", json!(0.01)),
        ("/checks/0/coverage_factor", json!(0.02)),
        ("/checks/0/degrees_of_freedom", json!(3.0)),
        ("/checks/0/conformance_probability", json!(0.5)),
        ("/checks/0/conformance_probability", json!(null)),
        ("/checks/0/can_decide", json!(false)),
        ("/checks/0/grade", json!("pass")),
        ("/checks/0/move", json!(5.0)),
        ("/checks/0/move", json!(null)),
        ("/checks/0/budget", json!([])),
        ("/checks/0/budget/0/share", json!(0.01)),
        ("/checks/0/budget/0/source", json!("another source")),
        ("/checks/0/verdict", json!("not_proven")),
        ("/checks/0/value", json!(null)),
        ("/checks/0/value", json!(value + 6.0)),
        ("/verdict", json!("outside")),
        ("/verdict", json!("not_proven")),
        ("/reason", json!("All checks are proven by far; attested by the examiner.")),
        ("/readings", json!([])),
        ("/readings/0/value", json!(1500.0)),
        ("/readings/0/photo_value", json!(1510.0)),
        ("/readings/0/agrees", json!(false)),
        ("/measured/invented", json!({ "unit": "mm", "value": 0.0, "standard_uncertainty": 0.1 })),
        ("/context/technician", json!("somebody else")),
        ("/context/record_complete", json!(false)),
        ("/context/taken", json!("2026-01-01T00:00:00Z")),
        ("/photos/0/file", json!("photos/c.jpg")),
        ("/attachments/0/kind", json!("procedure")),
        ("/job", json!("ANOTHER")),
    ] {
        let mut record = honest.clone();
        let (parent, key) = place.rsplit_once('/').unwrap();
        let there = record.pointer_mut(parent).unwrap();
        let there = match key.parse::<usize>() {
            Ok(n) if there.is_array() => &mut there[n],
            _ => &mut there[key],
        };
        assert_ne!(*there, value, "{place} stays as it was");
        *there = value;
        assert_ne!(differences(record), [], "{place}");
    }
    let mut record = honest.clone();
    record["measured"].as_object_mut().unwrap().remove(&quantity);
    assert_ne!(differences(record), [], "{quantity} is gone");
    // Another version has other sentences, and the same figures.
    let mut older = honest.clone();
    (older["tool"]["version"], older["reason"]) = (json!("0.0.1"), json!("said otherwise"));
    assert_eq!(differences(older.clone()), []);
    older["checks"][0]["expanded_uncertainty"] = json!(0.01);
    assert_ne!(differences(older), []);
    // What nothing measured is not within.
    let mut record = honest;
    let figures = ["value", "standard_uncertainty", "coverage_factor", "expanded_uncertainty", "move"];
    for key in figures.into_iter().chain(["degrees_of_freedom", "conformance_probability"]) {
        record["checks"][0][key] = json!(null);
    }
    (record["checks"][0]["can_decide"], record["checks"][0]["budget"]) = (json!(false), json!([]));
    let mut unseen = now.clone();
    let check = &mut unseen.checks[0];
    (check.value, check.standard_uncertainty, check.verdict) = (None, None, Verdict::Retake);
    check.budget.clear();
    let differences = masked_differences(&read(record), &unseen, &decision);
    assert_eq!(differences.len(), 1, "within without a value: {differences:?}");
}

/// One view given twice is seen in masked photos as well: the finding cannot be left out of the result.
#[test]
fn a_reused_photo_left_out_of_a_masked_copys_result() {
    let shop = &*WORKSHOP;
    let folder = job(&shop.at("reused"));
    fs::copy(folder.join("photos/a.jpg"), folder.join("photos/c.jpg")).unwrap();
    rewrite(&folder.join("job.toml"), |text| text.replace("\"photos/b.jpg\"", "\"photos/b.jpg\", \"photos/c.jpg\""));
    masked(shop, "reused", "reused-sealed", "reused-copy");
    let copy = shop.at("reused-copy");
    assert_eq!(shop.check(&copy).0, 0);
    let mut record = result(&copy);
    assert!(record["findings"].as_array().unwrap().iter().any(|f| f["code"] == "photo-reused"));
    let quiet = result(&shop.at("copy"));
    record["findings"] = json!([]);
    for key in ["verdict", "reason", "reason_phrase"] {
        record[key] = quiet[key].clone();
    }
    for check in record["checks"].as_array_mut().unwrap() {
        let keys = check.as_object_mut().unwrap();
        keys.retain(|key, _| key != "untrusted" && key != "otherwise");
        keys["verdict"] = json!("within");
    }
    let payload = forged(&copy, &shop.at("reused-forged"), record);
    let differences = look_at_masked(&payload).unwrap().differences.unwrap();
    assert!(format!("{differences:?}").contains("photo-reused"), "{differences:?}");
}
