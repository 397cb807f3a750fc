//! Same inputs, same bytes: result, pages, PDF and sealed folder, whatever the
//! number of threads, run after run, whatever the order of the photos.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]

use crate::staged;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use baywitness::photo;

fn run(arguments: &[&str]) -> String {
    let output = crate::program::program().args(arguments).env_remove("BAYWITNESS_MODELS").output().unwrap();
    assert_eq!(output.status.code(), Some(0), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

fn verified(job: &Path, threads: &str) -> String {
    run(&["verify", "--json", "-", "--threads", threads, job.to_str().unwrap()])
}

#[test]
fn a_record_is_the_same_on_any_number_of_threads() {
    let job: PathBuf = [env!("CARGO_MANIFEST_DIR"), "samples", "good"].iter().collect();
    let first = verified(&job, "1");
    for threads in ["1", "2", "8"] {
        assert!(verified(&job, threads) == first, "{threads} threads give other bytes");
    }
}

/// Every file below a folder by its path in it.
fn files(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let (mut all, mut open) = (BTreeMap::new(), vec![folder.to_path_buf()]);
    while let Some(at) = open.pop() {
        for path in fs::read_dir(&at).unwrap().map(|e| e.unwrap().path()) {
            if path.is_dir() {
                open.push(path);
            } else {
                all.insert(path.strip_prefix(folder).unwrap().to_path_buf(), fs::read(&path).unwrap());
            }
        }
    }
    all
}

fn same(a: &BTreeMap<PathBuf, Vec<u8>>, b: &BTreeMap<PathBuf, Vec<u8>>, what: &str) {
    assert_eq!(a.keys().collect::<Vec<_>>(), b.keys().collect::<Vec<_>>(), "{what}");
    let differ: Vec<_> = a.iter().filter(|(path, bytes)| b[*path] != **bytes).map(|(path, _)| path).collect();
    assert!(differ.is_empty(), "{what}: {differ:?} have other bytes");
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn reports_and_sealed_folders_are_the_same_on_any_number_of_threads() {
    let room = tempfile::tempdir().unwrap();
    let job = room.path().join("job");
    staged::scene(0.3).stage(&job, &mut |_| ()).unwrap();
    let job = job.to_str().unwrap();
    let made = |threads: &str| {
        let at = room.path().join(threads);
        let report = at.join("report");
        run(&["verify", job, "--threads", threads, "--report", report.to_str().unwrap()]);
        // As many threads as the library takes by itself.
        let sealed = at.join("sealed.tar");
        let output = crate::program::program()
            .args(["seal", job, "--out", sealed.to_str().unwrap()])
            .env("RAYON_NUM_THREADS", threads)
            .output()
            .unwrap();
        assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
        files(&at)
    };
    let first = made("1");
    let endings = |e: &str| first.keys().filter(|p| p.extension().is_some_and(|x| x == e)).count();
    assert!(endings("html") >= 2 && endings("pdf") >= 1 && endings("json") >= 1 && endings("tar") == 1);
    for threads in ["2", "8"] {
        same(&first, &made(threads), &format!("{threads} threads"));
    }
}

/// Whatever order a job lists its photos in, all but the digest of that list is the same.
#[test]
fn the_order_of_the_photos_changes_no_byte() {
    let room = tempfile::tempdir().unwrap();
    let job = room.path().join("job");
    staged::scene(0.3).stage(&job, &mut |_| ()).unwrap();
    let file = job.join("job.toml");
    let text = fs::read_to_string(&file).unwrap();
    let without: String = text.lines().filter(|l| !l.starts_with("photos")).map(|l| format!("{l}\n")).collect();
    let (head, rest) = without.split_once("\n\n").unwrap_or((&without, ""));
    let record = |photos: &str| {
        let listed = format!("{head}\nphotos = [{photos}]\n\n{rest}");
        fs::write(&file, &listed).unwrap();
        let digest = photo::sha256(listed.as_bytes());
        let record = verified(&job, "2");
        assert!(record.contains(&digest), "the list's digest is in the record");
        record.replace(&digest, "the job's")
    };
    let (ab, ba) = (record("\"photos/a.jpg\", \"photos/b.jpg\""), record("\"photos/b.jpg\", \"photos/a.jpg\""));
    assert!(ab == ba, "another order gives other bytes");
}
