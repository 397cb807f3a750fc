//! A disk that is full, and one that may only be read. Both are small file
//! systems in memory, which only root may mount: others skip with a message.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use super::bay::{JOB, MEASURED, a_job, below, ended, program, refused, run, text};

/// A file system in memory of so many kilobytes, unmounted when dropped.
struct Small {
    _room: tempfile::TempDir,
    at: PathBuf,
}

impl Small {
    fn mount(kilobytes: u32) -> Option<Small> {
        let room = tempfile::tempdir().unwrap();
        let at = room.path().join("disk");
        fs::create_dir(&at).unwrap();
        let size = format!("size={kilobytes}k");
        let mounted = Command::new("mount").args(["-t", "tmpfs", "-o", &size, "tmpfs"]).arg(&at).output();
        if mounted.is_ok_and(|m| m.status.success()) {
            return Some(Small { _room: room, at });
        }
        println!("skipped: only root may mount a small disk");
        None
    }

    fn read_only(&self) {
        let done = Command::new("mount").args(["-o", "remount,ro"]).arg(&self.at).status().unwrap();
        assert!(done.success());
    }
}

impl Drop for Small {
    fn drop(&mut self) {
        let _ = Command::new("umount").arg("-l").arg(&self.at).status();
    }
}

/// Files that stand under a final name: neither hidden parts nor folders of parts.
fn final_names(disk: &Path) -> Vec<String> {
    below(disk).into_iter().filter(|n| !n.contains(".part")).collect()
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_full_disk_gets_nothing_half_written() {
    let Some(disk) = Small::mount(24) else { return };
    let (job, at) = (text(&JOB).to_owned(), disk.at.clone());
    let out = |name: &str| text(&at.join(name)).to_owned();
    for arguments in [
        vec!["seal", &job, "--out", &out("sealed")],
        vec!["seal", &job, "--out", &out("sealed.tar")],
        vec!["verify", &job, "--json", &out("result.json")],
        vec!["verify", &job, "--report", &out("report")],
        vec!["sheet", "bay-a4", "--out", &out("kit.pdf")],
        vec!["audit", &job, "--out", &out("audit")],
        vec!["stage", "samples/scenes/good.toml", "--out", &out("staged")],
    ] {
        refused(&arguments, text(&at));
        for name in final_names(&at) {
            let whole = match name.rsplit('.').next() {
                Some("json") => serde_json::from_slice::<serde_json::Value>(&fs::read(at.join(&name)).unwrap()).is_ok(),
                Some("pdf") => fs::read(at.join(&name)).unwrap().ends_with(b"%%EOF"),
                Some("html") => fs::read_to_string(at.join(&name)).unwrap().trim_end().ends_with("</html>"),
                // Of an audit: lines, each whole or cut off at the end.
                Some("jsonl" | "csv" | "lock") => true,
                _ => name.starts_with("staged/"),
            };
            assert!(whole, "{arguments:?} left {name}");
        }
        assert!(!at.join("sealed").exists() && !at.join("sealed.tar").exists());
        fs::read_dir(&at).unwrap().map(|e| e.unwrap().path()).for_each(|p| {
            let _ = if p.is_dir() { fs::remove_dir_all(&p) } else { fs::remove_file(&p) };
        });
    }
}

/// An audit that ran out of room goes on when there is some, and says the same.
#[test]
fn an_audit_goes_on_after_a_full_disk() {
    let Some(disk) = Small::mount(48) else { return };
    let room = tempfile::tempdir().unwrap();
    let jobs = room.path().join("jobs");
    for name in ["a", "b"] {
        a_job(&jobs.join(name));
    }
    let at = disk.at.join("audit");
    let (code, said) = run(&["audit", text(&jobs), "--out", text(&at)]);
    assert_eq!(code, Some(2), "{said}");
    let grown = Command::new("mount").args(["-o", "remount,size=20m"]).arg(&disk.at).status().unwrap();
    assert!(grown.success());
    let (code, said) = run(&["audit", text(&jobs), "--out", text(&at)]);
    assert_eq!(code, MEASURED, "{said}");
    let fresh = room.path().join("fresh");
    run(&["audit", text(&jobs), "--out", text(&fresh)]);
    assert_eq!(fs::read(at.join("audit.jsonl")).unwrap(), fs::read(fresh.join("audit.jsonl")).unwrap());
    assert_eq!(below(&at), below(&fresh));
}

#[test]
fn a_disk_that_may_only_be_read_is_named() {
    let Some(disk) = Small::mount(20_000) else { return };
    let job = a_job(&disk.at.join("job"));
    disk.read_only();
    let (code, said) = run(&["verify", text(&job)]);
    assert_eq!(code, MEASURED, "reading is enough: {said}");
    let out = |name: &str| text(&disk.at.join(name)).to_owned();
    for arguments in [
        vec!["seal", text(&job), "--out", &out("sealed")],
        vec!["verify", text(&job), "--report", &out("report")],
        vec!["verify", text(&job), "--json", &out("result.json")],
        vec!["audit", text(&job), "--out", &out("audit")],
        vec!["serve", "--listen", "127.0.0.1:0", "--jobs", &out("jobs")],
    ] {
        let (code, said) = ended(&program(&arguments).output().unwrap());
        assert_eq!(code, Some(2), "{arguments:?}: {said}");
        assert!(said.contains(text(&disk.at)), "{arguments:?}: {said}");
    }
}

/// A log of attempts that ran out of room lost nothing that it acknowledged, and goes on when there is some.
#[test]
fn a_log_goes_on_after_a_full_disk() {
    use crate::transparency::{attempts, names};
    use baywitness::transparency::{Log, LogFolder};
    let Some(disk) = Small::mount(160) else { return };
    let folder = disk.at.join("log");
    let log = Log::create(&folder, "shop.example/attempts").unwrap();
    let full = (0..200).find(|n| log.append(&attempts(*n, n + 1)).is_err());
    let full = full.expect("the disk is smaller than the log");
    assert_eq!(names(&LogFolder::open(&folder).unwrap()).len(), full);
    let grown = Command::new("mount").args(["-o", "remount,size=20m"]).arg(&disk.at).status().unwrap();
    assert!(grown.success());
    let done = log.append(&attempts(full, 200)).unwrap();
    assert!(full > 0 && done.repaired.len() < 2, "{:?}", done.repaired);
    assert_eq!(names(&LogFolder::open(&folder).unwrap()).len(), 200);
}
