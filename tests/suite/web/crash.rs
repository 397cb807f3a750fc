//! What was acknowledged outlives the program's end at any moment.

use std::collections::BTreeSet;
use std::sync::Mutex;
use std::time::{Duration, Instant};

use baywitness::folder::JobFile;

use super::bay::{BAY, begin, with_comment};
use super::client::sha256;

#[test]
fn nothing_that_was_acknowledged_is_lost_when_the_program_is_killed() {
    let jobs = tempfile::tempdir().unwrap();
    let photo = BAY.photo("a.jpg");
    let mut server = BAY.serve(jobs.path());
    let name = begin(&server, &[]);
    let to = format!("/jobs/{name}/photos");
    let all: Vec<Vec<u8>> = (0..10).map(|i| with_comment(&photo, &format!("photo {i}"))).collect();
    let acknowledged: Mutex<BTreeSet<String>> = Mutex::default();
    for round in 0..3 {
        // Killed while six phones send, at another moment each time.
        let (wanted, end) = (3 + 3 * round, Instant::now() + Duration::from_secs(20));
        std::thread::scope(|s| {
            for phone in 0..6 {
                let (server, to, all, acknowledged) = (&server, &to, &all, &acknowledged);
                s.spawn(move || {
                    for bytes in all.iter().skip(phone).step_by(6) {
                        match server.try_upload(to, bytes) {
                            Ok(a) if a.status == 200 || a.status == 201 => {
                                acknowledged.lock().unwrap().insert(sha256(bytes));
                            }
                            _ => return,
                        }
                    }
                });
            }
            while acknowledged.lock().unwrap().len() < wanted && Instant::now() < end {
                std::thread::sleep(Duration::from_millis(2));
            }
            std::thread::sleep(Duration::from_millis(7 * round as u64));
            server.interrupt();
        });
        server.kill();
        let there = listed(jobs.path(), &name);
        for digest in acknowledged.lock().unwrap().iter() {
            assert!(there.contains(digest), "round {round}: {digest} was acknowledged and is not there");
        }
        server = BAY.serve(jobs.path());
    }
    // The phones send everything again: each is there once.
    for bytes in &all {
        assert!(matches!(server.upload(&to, bytes).status, 200 | 201));
    }
    let text = std::fs::read_to_string(jobs.path().join(&name).join("job.toml")).unwrap();
    let entries = JobFile::from_toml(&text, "job.toml").unwrap().photo_entries.unwrap();
    assert_eq!(entries.len(), all.len());
    assert_eq!(listed(jobs.path(), &name), all.iter().map(|b| sha256(b)).collect());
    assert!(acknowledged.lock().unwrap().len() >= 3, "nothing came through before the end");
}

/// Digests of the photos that the job lists, from their bytes.
fn listed(jobs: &std::path::Path, name: &str) -> BTreeSet<String> {
    let folder = jobs.join(name);
    let text = std::fs::read_to_string(folder.join("job.toml")).unwrap();
    let job = JobFile::from_toml(&text, "job.toml").unwrap();
    job.photo_entries.iter().flatten().map(|e| sha256(&std::fs::read(folder.join(&e.file)).unwrap())).collect()
}
