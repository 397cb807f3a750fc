//! An archive of jobs with two photos of 12 megapixels each: `audit` beside `verify`, memory, and what a kill costs.
//!
//! Fifty bays are rendered, the other jobs have their photos with noise of their
//! own, so that no two photos of the archive are the same. Rendering goes on where
//! it was: `BAYWITNESS_ARCHIVE=DIR` keeps it.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Duration;

use image::codecs::jpeg::JpegEncoder;
use rand::rngs::ChaCha8Rng;
use rand::{Rng, SeedableRng};
use rayon::prelude::*;

use super::{audit, lines};
use crate::staged::scene;

const RENDERED: usize = 50;
/// The sample's camera has 3840 columns.
const SCALE: f64 = 4000.0 / 3840.0;
/// Noise that is added, grey values (1 sigma); rendered photos have about as much.
const NOISE: f64 = 1.5;
/// What `audit` reaches of `verify`, by processor time.
const LEAST_SHARE: f64 = 0.92;

fn number(name: &str, or: usize) -> usize {
    std::env::var(name).ok().and_then(|n| n.parse().ok()).unwrap_or(or)
}

/// The archive's place: kept where that is asked for.
fn place() -> (Option<tempfile::TempDir>, PathBuf) {
    match std::env::var_os("BAYWITNESS_ARCHIVE") {
        Some(kept) => (None, kept.into()),
        None => {
            let dir = tempfile::tempdir().unwrap();
            let path = dir.path().to_path_buf();
            (Some(dir), path)
        }
    }
}

/// Made beside its place and moved there when it is whole.
fn once(job: &Path, make: impl FnOnce(&Path)) {
    if job.is_dir() {
        return;
    }
    let part = job.with_extension("part");
    let _ = fs::remove_dir_all(&part);
    fs::create_dir_all(part.parent().unwrap()).unwrap();
    make(&part);
    fs::rename(part, job).unwrap();
}

fn rendered(folder: &Path, n: usize) -> PathBuf {
    let job = folder.join(format!("rendered/s{n}"));
    once(&job, |part| {
        let mut scene = scene(SCALE);
        scene.spec.seed = 100 + n as u64;
        let k = n as f64;
        scene.spec.stand.error.distance_mm = (2.5 * k) % 21.0 - 10.0;
        scene.spec.stand.error.lateral_mm = (3.0 * k) % 8.0 - 3.5;
        scene.spec.stand.error.yaw_deg = 0.04 * ((5.0 * k) % 8.0) - 0.12;
        scene.stage(part, &mut |_| ()).unwrap();
        fs::remove_file(part.join("truth.json")).unwrap();
    });
    job
}

/// The segments that say what camera took a photo (APP1 to APP15), as they stand in the file.
fn segments(jpeg: &[u8]) -> Vec<u8> {
    let (mut at, mut kept) = (2, Vec::new());
    while let [0xff, kind, high, low, ..] = jpeg[at..] {
        if kind == 0xda {
            break;
        }
        let end = at + 2 + usize::from(u16::from_be_bytes([high, low]));
        if (0xe1..=0xef).contains(&kind) {
            kept.extend_from_slice(&jpeg[at..end]);
        }
        at = end;
    }
    kept
}

/// The photo once more with other noise, coded anew.
fn noisier(jpeg: &[u8], seed: u64) -> Vec<u8> {
    let mut picture = image::load_from_memory_with_format(jpeg, image::ImageFormat::Jpeg).unwrap().to_rgb8();
    let mut random = ChaCha8Rng::seed_from_u64(seed);
    for value in picture.iter_mut() {
        // The sum of four uniform numbers, here the bytes of one, has a variance of a third: nearly a normal law.
        let sum: f64 = random.next_u32().to_le_bytes().iter().map(|byte| f64::from(*byte) / 255.0 - 0.5).sum();
        *value = (f64::from(*value) + NOISE * 3_f64.sqrt() * sum).round().clamp(0.0, 255.0) as u8;
    }
    let mut coded = Vec::new();
    JpegEncoder::new_with_quality(&mut coded, 92).encode_image(&picture).unwrap();
    [&coded[..2], segments(jpeg).as_slice(), &coded[2..]].concat()
}

fn archive(folder: &Path, jobs: usize) -> PathBuf {
    let root = folder.join(format!("archive-{jobs}"));
    (0..RENDERED.min(jobs)).into_par_iter().for_each(|n| drop(rendered(folder, n)));
    (0..jobs).into_par_iter().for_each(|n| {
        let from = rendered(folder, n % RENDERED);
        once(&root.join(format!("w{:02}/N-{n:04}", n / 40)), |part| {
            fs::create_dir_all(part.join("photos")).unwrap();
            for name in ["kit.toml", "setup.toml", "camera.toml", "scan-report.txt"] {
                fs::copy(from.join(name), part.join(name)).unwrap();
            }
            for (k, name) in ["photos/a.jpg", "photos/b.jpg"].into_iter().enumerate() {
                let bytes = fs::read(from.join(name)).unwrap();
                let own = if n < RENDERED { bytes } else { noisier(&bytes, (2 * n + k) as u64) };
                fs::write(part.join(name), own).unwrap();
            }
            let text = fs::read_to_string(from.join("job.toml")).unwrap();
            let text = text.replace("SAMPLE-GOOD", &format!("N-{n}")).replace("INVENTED-R1", &format!("R-{n}"));
            fs::write(part.join("job.toml"), text).unwrap();
        });
    });
    root
}

/// Processor seconds and most memory, MB, of a command that runs to its end.
fn cost(command: &mut Command) -> (f64, f64) {
    let mut child = command.stdout(Stdio::null()).stderr(Stdio::null()).spawn().unwrap();
    let of = PathBuf::from(format!("/proc/{}", child.id()));
    let (mut seconds, mut most) = (0.0, 0.0_f64);
    loop {
        // utime and stime in hundredths of a second (proc(5)), behind the name.
        let stat = fs::read_to_string(of.join("stat")).unwrap_or_default();
        let fields: Vec<f64> =
            stat.rsplit(')').next().unwrap().split_whitespace().skip(1).filter_map(|f| f.parse().ok()).collect();
        if let [user, system] = fields.get(10..12).unwrap_or_default() {
            seconds = (user + system) / 100.0;
        }
        let status = fs::read_to_string(of.join("status")).unwrap_or_default();
        let peak =
            status.lines().find_map(|l| l.strip_prefix("VmHWM:")?.trim().strip_suffix(" kB")?.trim().parse().ok());
        most = most.max(peak.unwrap_or(0.0) / 1000.0);
        if child.try_wait().unwrap().is_some() {
            return (seconds, most);
        }
        std::thread::sleep(Duration::from_millis(2));
    }
}

#[test]
#[ignore = "an hour: BAYWITNESS_AUDIT_JOBS=200 cargo test --test suite audit::large -- --ignored --nocapture"]
fn photos_of_12_megapixels() {
    let (_kept, folder) = place();
    let jobs = number("BAYWITNESS_AUDIT_JOBS", 1000);
    let root = archive(&folder, jobs);
    let some = archive(&folder, (jobs / 10).max(10));
    let scratch = tempfile::tempdir().unwrap();
    // One job after the other, as `verify` has them, beside an audit of the same jobs with one thread.
    let few: Vec<PathBuf> = jobs_of(&some);
    let alone: f64 =
        few.iter().map(|job| cost(crate::program::program().args(["verify", "--threads", "1"]).arg(job)).0).sum();
    let (seconds, memory_of_some) = cost(audit(&some, &scratch.path().join("some")).args(["--threads", "1"]));
    println!(
        "{} jobs: verify {:.3} s a job, audit {:.3} s a job, {memory_of_some:.0} MB",
        few.len(),
        alone / few.len() as f64,
        seconds / few.len() as f64
    );
    // Killed in the middle, then to its end: no job is judged twice but those that were under way.
    let out = scratch.path().join("all");
    let mut running = audit(&root, &out).args(["--threads", "1"]).spawn().unwrap();
    while lines_so_far(&out) < jobs / 3 {
        assert!(running.try_wait().unwrap().is_none(), "it ended before it could be killed");
        std::thread::sleep(Duration::from_millis(5));
    }
    running.kill().unwrap();
    running.wait().unwrap();
    let kept = lines_so_far(&out);
    let judged_before = written(&out);
    let (rest, memory) = cost(audit(&root, &out).args(["--threads", "1"]));
    let after = written(&out);
    assert_eq!(lines(&out).len(), jobs);
    assert!(judged_before.iter().filter(|(path, when)| after.get(*path) != Some(when)).count() <= 1, "judged twice");
    println!(
        "{jobs} jobs: {kept} of them before the kill, then {:.3} s a job, {memory:.0} MB",
        rest / (jobs - kept) as f64
    );
    assert!(memory < memory_of_some + 10.0, "{memory} MB for {jobs} jobs, {memory_of_some} MB for {}", few.len());
    assert!(alone > LEAST_SHARE * seconds, "verify {alone} s, audit {seconds} s");
}

fn jobs_of(root: &Path) -> Vec<PathBuf> {
    let below = |folder: &Path| -> Vec<PathBuf> { fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()).collect() };
    let mut jobs: Vec<PathBuf> = below(root).iter().flat_map(|week| below(week)).collect();
    jobs.sort();
    jobs
}

fn lines_so_far(out: &Path) -> usize {
    fs::read_to_string(out.join("audit.jsonl")).map_or(0, |t| t.matches('\n').count())
}

/// When each result was written.
fn written(out: &Path) -> std::collections::BTreeMap<PathBuf, std::time::SystemTime> {
    let entries = fs::read_dir(out.join("results")).unwrap().map(|e| e.unwrap().path());
    entries
        .filter(|p| p.extension().is_some_and(|e| e == "json"))
        .map(|p| (p.clone(), fs::metadata(p).unwrap().modified().unwrap()))
        .collect()
}
