//! Attacks on what was sealed and on who checks it: keys, the auditor's own folder.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::Value;

use crate::evidence::doors::{run, seal_with, small_job};
use crate::evidence::fresh_key;

fn path(text: &str) -> &Path {
    Path::new(text)
}

/// A list with the workshop's key, with options in front of it.
fn signers(dir: &Path, key: &Path, options: &str) -> PathBuf {
    let list = dir.join("signers");
    let public = fs::read_to_string(key.with_extension("pub")).unwrap();
    fs::write(&list, format!("shop@invented.example {options}{public}")).unwrap();
    list
}

fn key(dir: &Path, name: &str) -> PathBuf {
    let home = dir.join(name);
    fs::create_dir_all(&home).unwrap();
    fresh_key(&home, "")
}

fn check(folder: &Path, list: &Path) -> (i32, String) {
    run(&[folder, path("--signers"), list], &["check"], None)
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
