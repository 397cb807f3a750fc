//! Files that change, vanish and come back while they are read.

use std::fs;
use std::path::Path;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

use super::bay::{MEASURED, a_job, ended, program, run, text};
use crate::staged;

/// Puts bytes in a file's place in one step, as editors and copying programs do.
fn replace(path: &Path, bytes: &[u8]) {
    let beside = path.with_extension("new");
    fs::write(&beside, bytes).unwrap();
    fs::rename(&beside, path).unwrap();
}

/// Does something again and again while a deed goes on.
fn meanwhile<T>(mut does: impl FnMut(u32) + Send, deed: impl FnOnce() -> T) -> T {
    let over = AtomicBool::new(false);
    std::thread::scope(|s| {
        s.spawn(|| {
            for turn in 0.. {
                if over.load(Ordering::Acquire) {
                    return;
                }
                does(turn);
                std::thread::sleep(Duration::from_micros(u64::from(turn % 13) * 300));
            }
        });
        let done = deed();
        over.store(true, Ordering::Release);
        done
    })
}

/// What is sealed is what was measured: a photo that changes in between is an error or the one that was read.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_photo_that_changes_is_never_sealed_with_another_ones_result() {
    let room = tempfile::tempdir().unwrap();
    let job = a_job(&room.path().join("job"));
    let photo = job.join("photos/a.jpg");
    let one = fs::read(&photo).unwrap();
    // The same picture in another file: a comment behind the first marker (ITU-T T.81, B.2.4.5).
    let two = [&one[..2], b"\xff\xfe\0\x05abc", &one[2..]].concat();
    let (mut sealed, mut refused) = (0, 0);
    for round in 0..4 {
        let out = room.path().join(format!("sealed-{round}"));
        let output = meanwhile(
            |turn| replace(&photo, if turn % 2 == 0 { &two } else { &one }),
            || program(&["seal", text(&job), "--out", text(&out)]).output().unwrap(),
        );
        let (code, said) = ended(&output);
        if code == Some(0) {
            sealed += 1;
            let (code, said) = run(&["check", text(&out)]);
            assert_eq!(code, Some(3), "unsigned, and intact: {said}");
        } else {
            refused += 1;
            assert!(code == Some(2) && !out.exists(), "{code:?} {said}");
            assert!(said.contains("a.jpg"), "{said}");
        }
    }
    println!("{sealed} sealed, {refused} refused");
}

#[test]
fn a_photo_that_vanishes_is_named_or_was_read() {
    let room = tempfile::tempdir().unwrap();
    let job = a_job(&room.path().join("job"));
    let photo = job.join("photos/b.jpg");
    let bytes = fs::read(&photo).unwrap();
    for _ in 0..4 {
        let output = meanwhile(
            |turn| {
                if turn % 2 == 0 {
                    let _ = fs::remove_file(&photo);
                } else {
                    replace(&photo, &bytes);
                }
            },
            || program(&["verify", text(&job), "--json", "-"]).output().unwrap(),
        );
        let (code, said) = ended(&output);
        match code {
            MEASURED => assert!(said.contains("photos/b.jpg"), "{said}"),
            // Without a list in the job file, a folder with one photo is a job with one photo.
            Some(2 | 4) => assert!(said.contains("b.jpg") || said.contains("only one photo"), "{said}"),
            _ => panic!("{code:?} {said}"),
        }
        replace(&photo, &bytes);
    }
}

/// A file that grows while it is read, as one that is still being copied does.
#[test]
fn a_photo_that_is_still_being_copied_is_cut_off_or_whole() {
    let room = tempfile::tempdir().unwrap();
    let job = a_job(&room.path().join("job"));
    let photo = job.join("photos/a.jpg");
    let bytes = fs::read(&photo).unwrap();
    let mut told = 0;
    for part in [0, 700, bytes.len() - 5, bytes.len()] {
        fs::write(&photo, &bytes[..part]).unwrap();
        let (code, said) = run(&["verify", text(&job)]);
        if part == bytes.len() {
            assert_eq!(code, MEASURED, "{said}");
        } else {
            assert!(code == Some(2) && said.contains("a.jpg"), "{part}: {code:?} {said}");
            told += 1;
        }
    }
    assert_eq!(told, 3);
}

/// Watching begins before the photos arrive.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn photos_may_arrive_while_a_folder_is_watched() {
    let room = tempfile::tempdir().unwrap();
    let jobs = room.path().join("jobs");
    let whole = a_job(&room.path().join("whole"));
    staged::copy(&whole, &jobs.join("j"), false);
    let mut child = program(&["watch", text(&jobs)]).spawn().unwrap();
    for name in ["a.jpg", "b.jpg"] {
        let bytes = fs::read(whole.join("photos").join(name)).unwrap();
        let to = jobs.join("j/photos").join(name);
        for end in [bytes.len() / 2, bytes.len()] {
            fs::write(&to, &bytes[..end]).unwrap();
            std::thread::sleep(Duration::from_millis(250));
        }
    }
    let until = Instant::now() + Duration::from_secs(6);
    while Instant::now() < until && child.try_wait().unwrap().is_none() {
        std::thread::sleep(Duration::from_millis(50));
    }
    let _ = child.kill();
    let (_, said) = ended(&child.wait_with_output().unwrap());
    assert!(said.contains("NOT PROVEN"), "{said}");
}
