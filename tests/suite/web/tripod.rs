//! Photos of a tripod, sent to the page.

use std::sync::Arc;

use baywitness::folder::JobFile;

use super::bay::{BAY, begin, with_comment};
use super::client::Server;

fn send(server: &Server, job: &str, bytes: &[u8]) -> (u16, serde_json::Value) {
    let answer = server.upload(&format!("/jobs/{job}/tripod"), bytes);
    (answer.status, answer.json())
}

/// The job's photos with the moves after which they were taken.
fn listed(jobs: &std::path::Path, job: &str) -> Vec<(String, u32)> {
    let text = std::fs::read_to_string(jobs.join(job).join("job.toml")).unwrap();
    let entries = JobFile::from_toml(&text, "job.toml").unwrap().photo_entries.unwrap_or_default();
    entries.into_iter().map(|e| (e.file, e.after_move)).collect()
}

#[test]
fn of_a_tripods_photos_the_newest_of_each_place_is_kept() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let job = begin(&server, &[]);
    let photo = |n: u32| with_comment(&BAY.photo("a.jpg"), &format!("photo {n} of the tripod"));
    let (status, said) = send(&server, &job, &photo(0));
    assert_eq!(status, 409, "{said}");
    assert!(said["message"].as_str().unwrap().contains("two first photos"), "{said}");
    for first in ["a.jpg", "b.jpg"] {
        server.upload(&format!("/jobs/{job}/photos?phase=before"), &BAY.photo(first));
    }
    server.verdict(&job);
    let (status, said) = send(&server, &job, &photo(1));
    assert_eq!((status, said["kept"].as_str()), (200, Some("skipped")), "{said}");
    assert_eq!(listed(jobs.path(), &job).len(), 2);
    // The same bytes but for a comment: nothing moved.
    let (status, said) = send(&server, &job, &photo(2));
    assert_eq!((status, said["kept"].as_str()), (201, Some("new")), "{said}");
    let (status, said) = send(&server, &job, &photo(3));
    assert_eq!((status, said["kept"].as_str()), (201, Some("newest")), "{said}");
    let (_, said) = send(&server, &job, &photo(3));
    assert_eq!(said["kept"], "already", "{said}");
    let photos = listed(jobs.path(), &job);
    assert_eq!(photos.iter().map(|p| p.1).collect::<Vec<_>>(), [0, 0, 1], "{photos:?}");
    assert_eq!(std::fs::read_dir(jobs.path().join(&job).join("photos")).unwrap().count(), 3);
    server.verdict(&job);
    let page = server.get(&format!("/jobs/{job}/live?part=photos")).text();
    assert!(page.contains("Tripod:") && page.contains("the stand stands where it did"), "{page}");
    // Somebody walks through the picture from the other side: another place altogether.
    let (_, said) = send(&server, &job, &BAY.photo("b.jpg"));
    assert_eq!(said["kept"], "skipped", "{said}");

    // Killed, with a photo that was brought and not listed: nobody takes it for one of the first.
    server.kill();
    let left = jobs.path().join(&job).join("photos/tripod-2-0123456789abcdef.jpg");
    std::fs::write(&left, photo(4)).unwrap();
    let server = BAY.serve(jobs.path());
    server.get(&format!("/jobs/{job}/photos"));
    assert_eq!(listed(jobs.path(), &job), photos);
    // It goes on with the photo that was kept.
    let (_, said) = send(&server, &job, &photo(5));
    assert_eq!(said["kept"], "newest", "{said}");
    assert!(!left.exists());
}

/// Two that send at once: each photo is compared with one before it, and the job stays whole.
#[test]
fn a_tripod_and_a_phone_at_once_leave_the_job_whole() {
    let jobs = tempfile::tempdir().unwrap();
    let server = Arc::new(BAY.serve(jobs.path()));
    let job = begin(&server, &[]);
    for first in ["a.jpg", "b.jpg"] {
        server.upload(&format!("/jobs/{job}/photos?phase=before"), &BAY.photo(first));
    }
    let photo = |n: u32| with_comment(&BAY.photo("a.jpg"), &format!("photo {n}"));
    std::thread::scope(|scope| {
        for tripod in 0..2 {
            let (server, job) = (Arc::clone(&server), &job);
            scope.spawn(move || (0..3).for_each(|n| drop(send(&server, job, &photo(10 * tripod + n)))));
        }
        let more = with_comment(&BAY.photo("b.jpg"), "by hand");
        server.upload(&format!("/jobs/{job}/photos?phase=before"), &more);
    });
    server.verdict(&job);
    let photos = listed(jobs.path(), &job);
    let of_tripod = photos.iter().filter(|p| p.0.starts_with("photos/tripod-1-")).count();
    assert_eq!((of_tripod, photos.len()), (1, 4), "{photos:?}");
    for (file, _) in &photos {
        assert!(jobs.path().join(&job).join(file).exists(), "{file}");
    }
}
