//! Kits that are not as their files say: markers elsewhere on their holder, prints stretched one way.

use baywitness::verdict::Level;
use rayon::prelude::*;

use super::acceptance::sheet_of;
use super::bench::{bay, job, judge, samples};
use super::defect::Defect;
use crate::sampled_bay::{Bay, Noise, Sample};

/// Errors of a job's six figures in their standard uncertainties, and whether anything stops it.
fn errors(of: &Bay, seed: u64, change: impl Fn(&mut Sample) + Sync + 'static) -> ([f64; 6], bool) {
    let defect = Defect { after: Box::new(change), ..Defect::default() };
    let sample = defect.sample(of, seed);
    let truth = defect.truth(&sample);
    let judged = judge(&sample, &sheet_of(truth), &job());
    let stopped = judged.findings.iter().any(|f| matches!(f.level, Level::Stop | Level::Void));
    let error = |i: usize| {
        let estimate = judged.checks[i].answer.as_ref().unwrap().estimate;
        (estimate.value - truth[i]) / estimate.standard_uncertainty
    };
    (std::array::from_fn(error), stopped)
}

/// One to five of the stand's markers 1 to 10 mm from where the file has them: what is not stopped is hardly wrong.
#[test]
fn displaced_markers_are_stopped_or_do_no_harm() {
    let of_job = |seed: u64| {
        let mut noise = Noise::new(seed ^ 0xd15b_1ace);
        let count = 1 + (5.0 * noise.uniform()) as u32;
        let first = (10.0 * noise.uniform()) as u32;
        let size = 1.0 + 9.0 * noise.uniform();
        let way = [noise.normal(), noise.normal(), noise.normal()];
        let length = way.iter().map(|x| x * x).sum::<f64>().sqrt();
        let shift = nalgebra::Vector3::from(way.map(|x| size * x / length));
        let four_photos = noise.uniform() < 0.5;
        let (errors, stopped) = errors(&Bay { four_photos, ..bay() }, 31_000 + seed, move |sample| {
            for marker in &mut sample.kit.carriers[0].markers {
                if (marker.id + 10 - first) % 10 < count {
                    marker.centre_mm -= shift;
                }
            }
        });
        let worst = errors.iter().fold(0.0, |a: f64, e| a.max(e.abs()));
        (worst, stopped, count, size)
    };
    let n = 16 * samples(3);
    let jobs: Vec<(f64, bool, u32, f64)> = (0..n).into_par_iter().map(of_job).collect();
    let stopped = jobs.iter().filter(|j| j.1).count();
    let mut left: Vec<&(f64, bool, u32, f64)> = jobs.iter().filter(|j| !j.1).collect();
    left.sort_by(|a, b| b.0.total_cmp(&a.0));
    println!("{stopped} of {n} stopped; worst errors of the others, in u: {:.1?}", &left[..left.len().min(8)]);
    assert!(left.iter().all(|j| j.0 < 4.5), "{left:?}");
    assert!(stopped as f64 > 0.8 * n as f64);
}

/// Paper that is wider than the file says and as much less high, by 0.2 % (1 sigma): nothing stops, intervals hold.
#[test]
fn prints_stretched_one_way_move_nothing() {
    let of_job = |seed: u64| {
        errors(&Bay { four_photos: seed.is_multiple_of(2), u_aspect: 0.002, ..bay() }, 32_000 + seed, |_| ())
    };
    let n = 16 * samples(3);
    let jobs: Vec<([f64; 6], bool)> = (0..n).into_par_iter().map(of_job).collect();
    let count = (6 * jobs.len()) as f64;
    let rms = (jobs.iter().flat_map(|j| j.0).map(|e| e * e).sum::<f64>() / count).sqrt();
    let held = jobs.iter().flat_map(|j| j.0).filter(|e| e.abs() < 1.96).count() as f64 / count;
    let stopped = jobs.iter().filter(|j| j.1).count();
    println!("errors in u: RMS {rms:.2}, {:.1} % within 1.96; {stopped} of {n} stopped", 100.0 * held);
    assert!(rms < 1.2 && held > 0.9 && stopped <= 1, "{rms} {held} {stopped}");
}
