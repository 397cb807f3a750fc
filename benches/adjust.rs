//! Everything but reading pixels: adjustment and measurement, by number of photos.
//!
//! `cargo bench --bench adjust` prints milliseconds of CPU on one thread.

#![allow(clippy::print_stdout, reason = "a bench prints its figures")]
#![allow(missing_docs, reason = "a program, not an interface")]

#[path = "../tests/common/mod.rs"]
mod common;

use std::hint::black_box;
use std::time::Instant;

use baywitness::pose::{Options, adjust};
use common::{Bay, sample};

fn main() {
    println!("photos  markers  ms");
    for photos in [2, 4, 8, 16, 32, 64, 100] {
        let bay = Bay { stations: Some(photos), ..Bay::default() };
        let job = sample(&bay, 3);
        let markers: usize = job.photos.iter().map(|p| p.views.len()).sum();
        let rounds = (40 / photos).max(2);
        let mut best = f64::INFINITY;
        for _ in 0..rounds {
            let start = Instant::now();
            black_box(adjust(&job.problem(), &Options::default()).is_ok());
            best = best.min(start.elapsed().as_secs_f64());
        }
        println!("{photos:6}  {markers:7}  {:.2}", 1e3 * best);
    }
}
