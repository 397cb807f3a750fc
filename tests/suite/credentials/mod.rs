//! Content credentials (C2PA): what a sheet may ask for, what a record says, in
//! builds that can read them (feature `credentials`) and in those that can't.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]

use std::fs;
use std::path::{Path, PathBuf};

use baywitness::credentials::BUILT_IN;
use serde_json::Value;

use crate::program::program;

#[cfg(feature = "credentials")]
mod archive;
#[cfg(feature = "credentials")]
mod signing;
#[cfg(feature = "credentials")]
mod states;

/// The good sample in a folder of its own; its sheet requires credentials, or not.
fn job(folder: &Path, required: bool) -> PathBuf {
    let sample = Path::new(env!("CARGO_MANIFEST_DIR")).join("samples/good");
    let job = folder.join("job");
    fs::create_dir_all(job.join("photos")).unwrap();
    for name in ["camera.toml", "kit.toml", "job.toml", "scan-report.txt", "photos/a.jpg", "photos/b.jpg"] {
        fs::copy(sample.join(name), job.join(name)).unwrap();
    }
    let sheet = fs::read_to_string(sample.join("setup.toml")).unwrap();
    let asked = "evidence = { credentials = \"required\" }\nreference_line";
    let sheet = if required { sheet.replacen("reference_line", asked, 1) } else { sheet };
    fs::write(job.join("setup.toml"), sheet).unwrap();
    job
}

/// Exit code, standard output, standard error.
fn run(arguments: &[&str]) -> (i32, String, String) {
    let output = program().args(arguments).env_remove("BAYWITNESS_MODELS").output().unwrap();
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    (output.status.code().unwrap(), text(&output.stdout), text(&output.stderr))
}

/// What `verify` says of a job.
fn verified(job: &Path, more: &[&str]) -> (i32, Value) {
    let (code, out, error) = run(&[&["verify", job.to_str().unwrap(), "--json", "-"], more].concat());
    (code, serde_json::from_str(&out).unwrap_or_else(|e| panic!("{e}: {out} {error}")))
}

#[test]
fn photos_without_any_leave_what_is_required_not_proven_and_every_figure_as_it_was() {
    let dir = tempfile::tempdir().unwrap();
    let (code, record) = verified(&job(dir.path(), true), &[]);
    let (plain_code, plain) = verified(&job(&dir.path().join("plain"), false), &[]);
    assert_eq!((code, plain_code), (3, 0));
    assert_eq!((&record["verdict"], &plain["verdict"]), (&"not_proven".into(), &"within".into()));
    assert_eq!(record["checks"], plain["checks"]);
    let finding = record["findings"].as_array().unwrap().iter().find(|f| f["code"] == "credentials-lacking").unwrap();
    assert_eq!((&finding["level"], &finding["message"]), (&"stop".into(), &record["reason"]));
    let said = record["reason"].as_str().unwrap();
    let wanted = if BUILT_IN {
        "photos/a.jpg (none found) and photos/b.jpg (none found)"
    } else {
        "this program was built without them. Verify with a program that was built with the feature credentials."
    };
    assert!(said.contains(wanted), "{said}");
    assert_eq!(record["sheet"]["credentials_required"], true);
    // Nothing of it is in the record of a job that has none and asks for none.
    assert!(!plain.to_string().contains("credentials"));
}

#[test]
fn what_is_outside_stays_outside() {
    let dir = tempfile::tempdir().unwrap();
    let job = job(dir.path(), true);
    for name in ["photos/a.jpg", "photos/b.jpg"] {
        let wrong = Path::new(env!("CARGO_MANIFEST_DIR")).join("samples/wrong");
        fs::copy(wrong.join(name), job.join(name)).unwrap();
    }
    let (code, record) = verified(&job, &[]);
    assert_eq!((code, &record["verdict"]), (1, &"outside".into()));
}

#[test]
fn a_sheet_says_what_it_asks_for_and_takes_no_other_word() {
    let dir = tempfile::tempdir().unwrap();
    let job = job(dir.path(), true);
    let sheet = job.join("setup.toml");
    let (_, words, _) = run(&["setup", "check", sheet.to_str().unwrap()]);
    let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(words.contains("Every photo that counts bears content credentials (C2PA)"), "{words}");
    let text = fs::read_to_string(&sheet).unwrap();
    fs::write(&sheet, text.replace("\"required\"", "\"requird\"")).unwrap();
    let (code, _, error) = run(&["verify", job.to_str().unwrap()]);
    assert!(code == 2 && error.contains("evidence.credentials") && error.contains("required"), "{error}");
    fs::write(&sheet, text.replace("\"required\"", "\"optional\"")).unwrap();
    assert_eq!(verified(&job, &[]).0, 0);
}

#[test]
fn anchors_that_cannot_be_used_are_one_clear_error() {
    let dir = tempfile::tempdir().unwrap();
    let job = job(dir.path(), false);
    let file = dir.path().join("anchors.pem");
    let refused = |wanted: &str| {
        let (code, _, error) = run(&["verify", job.to_str().unwrap(), "--credential-anchors", file.to_str().unwrap()]);
        let wanted = if BUILT_IN { wanted } else { "built without content credentials" };
        assert!(code == 2 && error.contains(wanted) && error.lines().count() <= 2, "{error}");
    };
    refused("cannot be read");
    fs::write(&file, "not a certificate").unwrap();
    refused("holds no certificate that can be read");
    fs::write(&file, "-----BEGIN CERTIFICATE-----\nAAAA\n-----END CERTIFICATE-----\n").unwrap();
    refused("holds no certificate that can be read");
}
