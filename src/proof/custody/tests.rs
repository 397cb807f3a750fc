//! Tests of what an archive's size costs: what they ask for and what they print.

use std::time::Instant;

/// Processor seconds of this process so far, and the most memory that it has had, MB.
fn used() -> (f64, f64) {
    let text = std::fs::read_to_string("/proc/self/stat").unwrap_or_default();
    let fields: Vec<f64> =
        text.rsplit(')').next().unwrap_or_default().split_whitespace().filter_map(|f| f.parse().ok()).collect();
    // utime and stime, the 14th and 15th field (proc(5)); of what stands behind the name, state is no number.
    let ticks = fields.get(10).zip(fields.get(11)).map_or(0.0, |(a, b)| a + b);
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let peak = status.lines().find_map(|l| l.strip_prefix("VmHWM:")?.split_whitespace().next()?.parse::<f64>().ok());
    (ticks / 100.0, peak.unwrap_or(0.0) / 1024.0)
}

pub(crate) fn told<T>(what: &str, jobs: u64, work: impl FnOnce() -> T) -> T {
    // The peak starts anew (proc(5)).
    let _ = std::fs::write("/proc/self/clear_refs", "5");
    let ((before, _), start) = (used(), Instant::now());
    let done = work();
    let (after, peak) = used();
    let each = 1e6 * (after - before) / jobs as f64;
    println!(
        "{jobs:9}  {what:30} {:8.1} s of processor time ({each:7.2} us a job), {:7.1} s, {peak:6.0} MB at most",
        after - before,
        start.elapsed().as_secs_f64()
    );
    done
}

pub(crate) fn sizes() -> Vec<u64> {
    let asked = std::env::var("BAYWITNESS_SCALE").unwrap_or_else(|_| "100000,1000000".to_owned());
    asked.split(',').map(|n| n.parse().unwrap()).collect()
}
