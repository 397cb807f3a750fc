//! Any texts as the files of an evidence folder and of a job's folder: looked at, never trusted.

#![no_main]

use std::fs;
use std::path::Path;

use baywitness::evidence::inspect;
use baywitness::folder::{JobFolder, Models};
use libfuzzer_sys::fuzz_target;

const EVIDENCE: [&str; 7] = [
    "bagit.txt",
    "bag-info.txt",
    "manifest-sha512.txt",
    "tagmanifest-sha512.txt",
    "tagmanifest-sha512.txt.sig",
    "data/job.toml",
    "data/result.json",
];
const JOB: [&str; 5] = ["job.toml", "kit.toml", "setup.toml", "camera.toml", "layout.json"];

/// Between one file and the next.
const NEXT: &[u8] = b"\0\0\0";

fn lay(room: &Path, names: &[&str], bytes: &[u8]) {
    let mut rest = bytes;
    for name in names {
        let end = rest.windows(NEXT.len()).position(|w| w == NEXT);
        let text = &rest[..end.unwrap_or(rest.len())];
        let path = room.join(name);
        fs::create_dir_all(path.parent().expect("a folder")).expect("room in memory");
        fs::write(path, text).expect("room in memory");
        rest = end.map_or(&[][..], |end| &rest[end + NEXT.len()..]);
    }
}

fuzz_target!(|bytes: &[u8]| {
    let Some((pick, rest)) = bytes.split_first() else { return };
    let room = tempfile::tempdir_in("/dev/shm").expect("a folder in memory");
    if pick % 2 == 0 {
        lay(room.path(), &EVIDENCE, rest);
        let _ = inspect(room.path());
    } else {
        lay(room.path(), &JOB, rest);
        fs::create_dir(room.path().join("photos")).expect("room in memory");
        let _ = JobFolder::open(room.path(), &Models::embedded());
    }
});
