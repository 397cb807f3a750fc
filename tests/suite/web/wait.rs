//! How long a technician waits: from the second photo's last byte to the verdict, with four phones at work.

use std::sync::Mutex;
use std::time::{Duration, Instant};

use super::bay::{Bay, begin, with_comment};

const PHONES: u64 = 4;
/// Nobody takes photos faster than that, s: a step to the next place, and a picture sent.
const BETWEEN: [f64; 2] = [3.0, 6.0];

/// A number in 0 to 1 that follows from two (the 64-bit mix of SplitMix64, Steele, Lea and Flood 2014).
fn mixed(a: u64, b: u64) -> f64 {
    let mut z = (a << 32 | b).wrapping_add(1).wrapping_mul(0x9E37_79B9_7F4A_7C15);
    z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
}

#[test]
#[ignore = "a figure of time, two minutes: cargo test --test suite web::wait -- --ignored --nocapture"]
fn seconds_from_the_last_byte_to_the_verdict() {
    let bay = Bay::of_megapixels(12.0);
    let photos = ["a.jpg", "b.jpg"].map(|name| bay.photo(name));
    println!("photos of {} and {} kB", photos[0].len() / 1000, photos[1].len() / 1000);
    for phones in [1, PHONES] {
        let jobs = tempfile::tempdir().unwrap();
        let server = bay.serve(jobs.path());
        let waits = Mutex::new(Vec::new());
        let until = Instant::now() + Duration::from_secs(50);
        std::thread::scope(|s| {
            for phone in 0..phones {
                let (server, waits, photos) = (&server, &waits, &photos);
                s.spawn(move || {
                    for round in 0.. {
                        if Instant::now() > until {
                            return;
                        }
                        let pause = |part: u64| {
                            let share = mixed(phone, 2 * round + part);
                            std::thread::sleep(Duration::from_secs_f64(BETWEEN[0] + share * (BETWEEN[1] - BETWEEN[0])));
                        };
                        let name = begin(server, &[("technician", "T")]);
                        let to = format!("/jobs/{name}/photos");
                        let [first, second] =
                            [0, 1].map(|k: usize| with_comment(&photos[k], &format!("{phones} {phone} {round}")));
                        assert_eq!(server.upload(&to, &first).status, 201);
                        pause(0);
                        // Over the loopback the last byte is there as soon as the first.
                        let start = Instant::now();
                        assert_eq!(server.upload(&to, &second).status, 201);
                        let kept = start.elapsed().as_secs_f64();
                        server.verdict(&name);
                        waits.lock().unwrap().push([start.elapsed().as_secs_f64(), kept]);
                        pause(1);
                    }
                });
            }
        });
        let waits = waits.into_inner().unwrap();
        for (what, of) in [("verdict", 0), ("photo kept", 1)] {
            let mut sorted: Vec<f64> = waits.iter().map(|w| w[of]).collect();
            sorted.sort_by(f64::total_cmp);
            let at = |share: f64| sorted[((sorted.len() - 1) as f64 * share).ceil() as usize];
            println!(
                "{phones} phones, {what} ({} times): median {:.2} s, 95 % {:.2} s, slowest {:.2} s",
                sorted.len(),
                at(0.5),
                at(0.95),
                at(1.0)
            );
            assert!(at(0.95) < 5.0, "an answer in seconds");
        }
    }
}
