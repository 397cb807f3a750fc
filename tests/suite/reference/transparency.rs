//! The log of attempts beside other readers: one in Python from the
//! specifications alone, and the libraries of Go's checksum database
//! (Debian's golang-golang-x-mod-dev), where the tiles come from.

use std::path::{Path, PathBuf};
use std::process::Command;

use baywitness::transparency::Log;
use serde_json::json;

use super::harness::answer;
use crate::transparency::attempts;

/// A log that grew in steps, and its verifier key.
fn grown(dir: &Path, sizes: &[usize]) -> (PathBuf, String, Vec<String>) {
    let folder = dir.join("log");
    let log = Log::create(&folder, "shop.example/attempts").unwrap();
    let (mut from, mut proofs) = (0, Vec::new());
    for to in sizes {
        let done = log.append(&attempts(from, *to)).unwrap();
        proofs.extend(done.proofs().unwrap().iter().step_by(29).map(|p| p.to_text()));
        from = *to;
    }
    (folder, log.verifier().text(), proofs)
}

#[test]
fn a_reader_written_from_the_specifications_finds_the_same_tree() {
    for sizes in [&[1][..], &[2, 5, 255, 256], &[7, 256, 300, 513, 700]] {
        let dir = tempfile::tempdir().unwrap();
        let (folder, _, proofs) = grown(dir.path(), sizes);
        let input = json!({ "folder": folder, "proofs": proofs });
        let Some(found) = answer("transparency.py", &["hashlib"], &input) else { return };
        let size = *sizes.last().unwrap();
        assert_eq!(found["size"], json!(size));
        assert_eq!(found["root"], json!(true));
        assert_eq!(found["entries"], json!((0..size).map(|n| n.to_string()).collect::<Vec<_>>()));
        for what in ["tiles", "proofs"] {
            let all = found[what].as_array().unwrap();
            assert!(!all.is_empty() && all.iter().all(|held| *held == json!(true)), "{what}: {all:?}");
        }
    }
}

#[test]
fn go_s_checksum_database_reads_it() {
    // Building the reader takes longer than all that it reads.
    let Ok(reference) = std::env::var("BAYWITNESS_REFERENCE") else {
        return println!("skipped: BAYWITNESS_REFERENCE is not set");
    };
    let script: PathBuf =
        [env!("CARGO_MANIFEST_DIR"), "tests", "suite", "reference", "transparency.go"].iter().collect();
    let dir = tempfile::tempdir().unwrap();
    // Debian keeps the sources of libraries where Go without modules finds them.
    let go = |arguments: &[&std::ffi::OsStr]| {
        let mut command = Command::new("go");
        command.env("GO111MODULE", "off").env("GOPATH", "/usr/share/gocode").env("GOFLAGS", "");
        command.env("GOCACHE", dir.path().join("cache")).args(arguments).output()
    };
    let program = dir.path().join("reads");
    let built = go(&["build".as_ref(), "-o".as_ref(), program.as_os_str(), script.as_os_str()]);
    if !built.as_ref().is_ok_and(|b| b.status.success()) {
        assert!(reference != "required", "{built:?}");
        return println!("skipped: no Go with golang.org/x/mod");
    }
    for sizes in [&[1][..], &[3, 256], &[7, 256, 300, 513, 700]] {
        let room = tempfile::tempdir().unwrap();
        let (folder, key, _) = grown(room.path(), sizes);
        let read = || Command::new(&program).arg(&folder).arg(&key).output().unwrap();
        let said = String::from_utf8(read().stdout).unwrap();
        assert_eq!(said, format!("holds {}\n", sizes.last().unwrap()));
        println!("golang.org/x/mod/sumdb: {said}");
        // It would say so where it did not.
        let checkpoint = folder.join("checkpoint");
        let text = std::fs::read_to_string(&checkpoint).unwrap();
        std::fs::write(&checkpoint, text.replacen("attempts\n", "attempts\n1", 1)).unwrap();
        assert!(!read().status.success());
    }
}
