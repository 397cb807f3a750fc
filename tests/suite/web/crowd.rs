//! Many phones at once.

use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};

use baywitness::folder::JobFile;

use super::bay::{BAY, begin, with_comment};
use super::client::{Server, sha256};

const PHONES: usize = 50;

/// The jobs of one phone until the time is over: two photos each, then the verdict.
fn phone(
    server: &Server,
    number: usize,
    until: Instant,
    sent: &AtomicUsize,
    times: &Mutex<[Vec<f64>; 3]>,
) -> Vec<(String, Vec<String>)> {
    let ms = |start: Instant| start.elapsed().as_secs_f64() * 1e3;
    let mut done = Vec::new();
    for round in 0.. {
        if Instant::now() > until {
            return done;
        }
        let start = Instant::now();
        let name = begin(server, &[("technician", "T")]);
        times.lock().unwrap()[0].push(ms(start));
        let mut digests = Vec::new();
        for photo in ["a.jpg", "b.jpg"] {
            let bytes = with_comment(&BAY.photo(photo), &format!("{number} {round}"));
            let start = Instant::now();
            // As the page's script does: again until it is acknowledged.
            while !server.try_upload(&format!("/jobs/{name}/photos"), &bytes).is_ok_and(|a| a.status < 300) {
                std::thread::sleep(Duration::from_millis(200));
            }
            times.lock().unwrap()[1].push(ms(start));
            sent.fetch_add(1, Ordering::Relaxed);
            digests.push(sha256(&bytes));
        }
        let start = Instant::now();
        server.verdict(&name);
        times.lock().unwrap()[2].push(ms(start));
        done.push((name, digests));
    }
    done
}

#[test]
#[ignore = "fifty phones for a minute (BAYWITNESS_CROWD_SECONDS): figures for the books"]
fn fifty_phones_lose_nothing() {
    let seconds = std::env::var("BAYWITNESS_CROWD_SECONDS").ok().and_then(|s| s.parse().ok()).unwrap_or(60);
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let (sent, times) = (AtomicUsize::new(0), Mutex::<[Vec<f64>; 3]>::default());
    let until = Instant::now() + Duration::from_secs(seconds);
    let done: Vec<(String, Vec<String>)> = std::thread::scope(|s| {
        let phones: Vec<_> = (0..PHONES)
            .map(|n| {
                s.spawn({
                    let (server, sent, times) = (&server, &sent, &times);
                    move || phone(server, n, until, sent, times)
                })
            })
            .collect();
        phones.into_iter().flat_map(|p| p.join().unwrap()).collect()
    });
    for (name, digests) in &done {
        let folder = jobs.path().join(name);
        let text = std::fs::read_to_string(folder.join("job.toml")).unwrap();
        let entries = JobFile::from_toml(&text, "job.toml").unwrap().photo_entries.unwrap();
        let kept: Vec<String> = entries.iter().map(|e| sha256(&std::fs::read(folder.join(&e.file)).unwrap())).collect();
        assert_eq!(&kept, digests, "{name}");
    }
    for (what, mut of) in ["new job", "photo acknowledged", "verdict"].iter().zip(times.into_inner().unwrap()) {
        of.sort_by(f64::total_cmp);
        let at = |share: f64| of[((of.len() - 1) as f64 * share) as usize];
        println!(
            "{what}: median {:.0} ms, 95 % {:.0} ms, slowest {:.0} ms ({} times)",
            at(0.5),
            at(0.95),
            at(1.0),
            of.len()
        );
    }
    println!(
        "{} jobs, {} photos in {seconds} s from {PHONES} phones, none lost, none twice",
        done.len(),
        sent.into_inner()
    );
    assert!(done.len() >= PHONES);
}
