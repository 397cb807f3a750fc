//! Attacks that keep whoever checks busy, or take all of a machine's memory: files of any length that take no room on the
//! disk.

use std::fs::{self, File};
use std::path::Path;
use std::time::{Duration, Instant};

use super::rewrite;
use super::workshop::Workshop;
use crate::audit::copy;
use crate::evidence::doors::{run, seal_with, small_job};

/// A tebibyte: hours of hashing, more than any machine's memory.
const ENDLESS: u64 = 1 << 40;
/// Far more than looking at a small folder takes.
const SOON: Duration = Duration::from_secs(60);

fn endless(path: &Path) {
    File::options().create(true).truncate(false).write(true).open(path).unwrap().set_len(ENDLESS).unwrap();
}

/// Exit code and words, which have to be there soon.
fn soon(arguments: &[&Path], command: &str) -> (i32, String) {
    let start = Instant::now();
    let (code, said) = run(arguments, &[command], None);
    assert!(start.elapsed() < SOON, "{command} took {:?}: {said}", start.elapsed());
    (code, said)
}

/// In a sealed folder, listed or not.
#[test]
fn files_without_end_in_a_sealed_folder() {
    let shop = Workshop::new();
    assert_eq!(seal_with(&small_job(&shop.at("in")), &shop.at("sealed"), &shop.key, None).0, 0);
    let too_large = "it is not a file of the size that it has in a folder as sealed";
    for (n, (name, words)) in [
        ("data/more.bin", "data/more.bin was added"),
        ("bag-info.txt", too_large),
        ("data/result.json", too_large),
        ("data/job/notes (ä).txt", too_large),
        ("tagmanifest-sha512.txt", "it is not a file of a manifest's size"),
    ]
    .into_iter()
    .enumerate()
    {
        let folder = shop.at(&format!("archive/{n}"));
        copy(&shop.at("sealed"), &folder);
        endless(&folder.join(name));
        let (code, said) = soon(&[&folder], "check");
        assert!(code == 1 && said.contains(words), "{name}: {code}: {said}");
    }
    for _ in 0..2 {
        // The second audit asks what has changed since the first.
        let (code, said) = soon(&[&shop.at("archive"), Path::new("--out"), &shop.at("audited")], "audit");
        let lines = fs::read_to_string(shop.at("audited/audit.jsonl")).unwrap();
        assert_eq!((code, lines.matches("\"evidence\":\"altered\"").count()), (2, 5), "{said} {lines}");
    }
}

/// In an archive: as an attachment, as a photo, as sealed evidence in one file.
#[test]
fn files_without_end_in_an_archive() {
    let dir = tempfile::tempdir().unwrap();
    let (archive, out) = (dir.path().join("archive"), dir.path().join("out"));
    let attached = small_job(&archive.join("attached"));
    endless(&attached.join("notes (ä).txt"));
    let (code, said) = soon(&[&attached], "verify");
    assert!(code == 2 && said.contains("larger than 1024 MB"), "{code}: {said}");
    let pictured = small_job(&archive.join("pictured"));
    endless(&pictured.join("photos/b.png"));
    endless(&archive.join("x.tar"));
    // One whose head is that of evidence.
    let job = small_job(&dir.path().join("in"));
    assert_eq!(run(&[&job, Path::new("--out"), &archive.join("y.tar")], &["seal"], None).0, 0);
    endless(&archive.join("y.tar"));
    rewrite(&small_job(&archive.join("plain")).join("job.toml"), |text| text.replace("J 1", "J 2"));
    for _ in 0..2 {
        let (code, said) = soon(&[&archive, Path::new("--out"), &out], "audit");
        assert_eq!(code, 2, "{said}");
        let lines = fs::read_to_string(out.join("audit.jsonl")).unwrap();
        assert_eq!(lines.lines().count(), 5, "{lines}");
        assert_eq!(lines.lines().filter(|line| line.contains("\"exit\":2")).count(), 4, "{lines}");
    }
}
