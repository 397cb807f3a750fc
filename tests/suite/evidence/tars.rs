//! Evidence as one file: stock `tar` opens it, and no byte of it changes unseen.

use std::fs;
use std::path::Path;
use std::process::Command;

use baywitness::evidence::{OneFileError, inspect, unpack};
use rand::{RngExt, SeedableRng};

use super::doors::{run, small_job};

#[test]
fn one_file_is_whole_or_found_out() {
    let dir = tempfile::tempdir().unwrap();
    let (job, out) = (small_job(&dir.path().join("in")), dir.path().join("evidence.tar"));
    let (code, text) = run(&[&job, Path::new("--out"), &out], &["seal"], None);
    assert_eq!(code, 0, "{text}");
    let (code, text) = run(&[&out], &["check"], None);
    assert!(code == 3 && text.contains("intact, unsigned"), "{text}");
    // Two runs, the same bytes; the folder in it is the folder that `seal` makes.
    let (again, folder) = (dir.path().join("again").join("evidence.tar"), dir.path().join("folder"));
    fs::create_dir(dir.path().join("again")).unwrap();
    assert_eq!(run(&[&job, Path::new("--out"), &again], &["seal"], None).0, 0);
    assert_eq!(run(&[&job, Path::new("--out"), &folder], &["seal"], None).0, 0);
    let bytes = fs::read(&out).unwrap();
    assert!(bytes == fs::read(&again).unwrap());
    let by_stock = dir.path().join("stock");
    fs::create_dir(&by_stock).unwrap();
    let tar = Command::new("tar").arg("-xf").arg(&out).arg("-C").arg(&by_stock).status();
    assert!(tar.unwrap().success());
    let manifest = |folder: &Path| fs::read(folder.join("tagmanifest-sha512.txt")).unwrap();
    assert_eq!(manifest(&by_stock.join("evidence")), manifest(&folder));
    // Flipped bytes anywhere, a tail too much and a tail too little.
    let mut random = rand::rngs::StdRng::seed_from_u64(11);
    for n in 0..302 {
        let mut altered = bytes.clone();
        match n {
            300 => altered.push(0),
            301 => altered.truncate(altered.len() - 512),
            _ => {
                let place = random.random_range(0..altered.len());
                altered[place] ^= 1 << random.random_range(0..8_u8);
            }
        }
        let (file, into) = (dir.path().join("altered.tar"), tempfile::tempdir().unwrap());
        fs::write(&file, &altered).unwrap();
        let found = unpack(&file, into.path());
        let intact = found.as_ref().is_ok_and(|folder| inspect(folder).unwrap().intact());
        assert!(!intact, "change {n} went unseen");
    }
}

#[test]
fn hostile_tars_write_nothing_elsewhere() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("x.tar");
    let make = |path: &str, kind: tar::EntryType| {
        let mut tar = tar::Builder::new(fs::File::create(&file).unwrap());
        let mut header = tar::Header::new_gnu();
        header.set_size(0);
        header.set_entry_type(kind);
        // Past the crate's own care for paths.
        header.as_old_mut().name[..path.len()].copy_from_slice(path.as_bytes());
        header.set_cksum();
        tar.append(&header, std::io::empty()).unwrap();
        tar.finish().unwrap();
    };
    for (path, kind) in [
        ("a/../../out", tar::EntryType::Regular),
        ("/tmp/out", tar::EntryType::Regular),
        ("a/b", tar::EntryType::Symlink),
        ("a/b", tar::EntryType::Block),
        ("a/CON", tar::EntryType::Regular),
        ("top", tar::EntryType::Regular),
    ] {
        make(path, kind);
        let into = tempfile::tempdir().unwrap();
        let found = unpack(&file, into.path());
        assert!(matches!(found, Err(OneFileError::Entry { .. })), "{path}: {found:?}");
        assert!(fs::read_dir(into.path()).unwrap().next().is_none());
    }
}

/// What another program packed is not called altered, and what to do is said.
#[test]
fn a_folder_that_another_program_packed_is_not_called_altered() {
    let dir = tempfile::tempdir().unwrap();
    let (job, out) = (small_job(&dir.path().join("in")), dir.path().join("evidence"));
    let (code, text) = run(&[&job, Path::new("--out"), &out], &["seal"], None);
    assert_eq!(code, 0, "{text}");
    let packed = dir.path().join("by-others.tar");
    let tar = |options: &[&str], what: &str| {
        let done = Command::new("tar").args(options).arg(&packed).arg("-C").arg(dir.path()).arg(what).status();
        assert!(done.unwrap().success());
    };
    let not_read = |words: &str| {
        let (code, text) = run(&[&packed], &["check"], None);
        assert!(code == 2 && text.contains(words) && !text.contains("altered"), "{code}: {text}");
        let (code, text) = run(&[&packed, Path::new("--out"), &dir.path().join("audit")], &["audit"], None);
        let line = fs::read_to_string(dir.path().join("audit/audit.jsonl")).unwrap();
        assert!(code == 2 && !line.contains("\"evidence\""), "{code}: {text}: {line}");
        text
    };
    for what in ["evidence", "./evidence"] {
        tar(&["-cf"], what);
        not_read("another program packed it: unpack it, then check the folder");
    }
    // One of its files twice: which of them counts?
    tar(&["-rf"], "evidence/bagit.txt");
    let (_, text) = run(&[&packed], &["check"], None);
    assert!(text.contains("evidence/bagit.txt\": it is in the archive twice"), "{text}");
    assert_eq!(text.matches(".tmp").count(), 1, "the file's own path, and no other: {text}");
    not_read("twice");
}
