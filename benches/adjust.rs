//! Everything but reading pixels, by number of photos: the adjustment alone, and
//! with it all measuring, deciding, findings and what the answers hang on.
//!
//! `cargo bench --bench adjust` prints milliseconds of processor time of one
//! thread (where the system does not tell, of the clock).

#![allow(clippy::print_stdout, clippy::unwrap_used, reason = "a bench prints its figures and may panic")]
#![allow(missing_docs, reason = "a program, not an interface")]

#[path = "../tests/suite/findings/bench.rs"]
#[allow(dead_code, reason = "the tests use more of it")]
mod bench;
#[path = "../tests/suite/sampled_bay/mod.rs"]
mod sampled_bay;

use std::hint::black_box;
use std::time::Instant;

use baywitness::pose::{Options, adjust};
use sampled_bay::{Bay, Sample, sample};

fn main() {
    println!("photos  markers  adjustment ms  all ms  all, ms a photo");
    for photos in [2, 4, 8, 16, 32, 64, 100] {
        let stations = (photos > 4).then_some(photos);
        let bay = Bay { stations, four_photos: photos == 4, ..bench::bay() };
        let jobs: Vec<Sample> = (0..(32 / photos as u64).max(2)).map(|seed| sample(&bay, 3 + seed)).collect();
        let markers: usize = jobs[0].photos.iter().map(|p| p.views.len()).sum();
        let adjusted = mean_ms(&jobs, |job| black_box(adjust(&job.problem(), &Options::default()).is_ok()));
        let all = mean_ms(&jobs, |job| !black_box(bench::judge(job, &bench::sheet(), &bench::job())).checks.is_empty());
        println!("{photos:6}  {markers:7}  {adjusted:13.2}  {all:6.2}  {:15.2}", all / photos as f64);
    }
}

/// Mean over the jobs of the best of several runs, ms.
fn mean_ms(jobs: &[Sample], run: impl Fn(&Sample) -> bool) -> f64 {
    let best = |job: &Sample| {
        let one = |_| {
            let (start, processor) = (Instant::now(), processor_s());
            assert!(run(job));
            match (processor, processor_s()) {
                (Some(before), Some(after)) => after - before,
                _ => start.elapsed().as_secs_f64(),
            }
        };
        (0..(24 / job.photos.len()).max(2)).map(one).fold(f64::INFINITY, f64::min)
    };
    1e3 * jobs.iter().map(best).sum::<f64>() / jobs.len() as f64
}

/// Processor time of this thread so far: the first figure that Linux tells of it, ns.
fn processor_s() -> Option<f64> {
    let text = std::fs::read_to_string("/proc/thread-self/schedstat").ok()?;
    Some(1e-9 * text.split_whitespace().next()?.parse::<f64>().ok()?)
}
