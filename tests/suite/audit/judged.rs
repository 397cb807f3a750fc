//! The judged archive: a thousand jobs of real photos, five in a hundred broken
//! in more than twenty ways, killed again and again.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::{Duration, Instant};

use baywitness::folder::Models;
use baywitness::job::{Options, verify};
use baywitness::record::JobRecord;
use rand::{RngExt, SeedableRng};
use serde_json::Value;

use super::{audit, copy, edit, everything, lines};
use crate::staged::scene;

const SCENES: usize = 8;

/// A way to break a staged job; what its line must say, and with which exit code.
struct Harm {
    name: &'static str,
    harm: fn(&Path),
    words: &'static str,
    exit: u64,
}

/// A shared file is never written to: it is replaced.
fn replace(path: &Path, bytes: &[u8]) {
    fs::remove_file(path).unwrap();
    fs::write(path, bytes).unwrap();
}

fn change(path: &Path, to: impl Fn(String) -> String) {
    let text = fs::read_to_string(path).unwrap();
    let changed = to(text.clone());
    assert!(text != changed, "{} stayed as it was", path.display());
    replace(path, changed.as_bytes());
}

fn baywitness(words: &[&str], paths: &[&Path]) {
    let status = crate::program::program().args(words).args(paths).output().unwrap().status;
    assert!(status.success(), "{words:?}");
}

/// Seals the job in its own stead; `.tar` where `one_file`.
fn sealed(job: &Path, one_file: bool) {
    let out = job.with_extension(if one_file { "tar" } else { "sealed" });
    baywitness(&["seal"], &[job, Path::new("--out"), &out]);
    fs::remove_dir_all(job).unwrap();
    if !one_file {
        fs::rename(out, job).unwrap();
    }
}

fn photo(job: &Path) -> PathBuf {
    job.join("photos/a.jpg")
}

const HARMS: [Harm; 25] = [
    Harm {
        name: "cut-photo",
        harm: |j| {
            let b = fs::read(photo(j)).unwrap();
            replace(&photo(j), &b[..b.len() / 2]);
        },
        words: "a.jpg",
        exit: 2,
    },
    Harm { name: "no-photo", harm: |j| fs::remove_file(photo(j)).unwrap(), words: "a.jpg", exit: 2 },
    Harm { name: "empty-photo", harm: |j| replace(&photo(j), b""), words: "a.jpg", exit: 2 },
    Harm { name: "text-photo", harm: |j| replace(&photo(j), b"no picture"), words: "text", exit: 2 },
    Harm { name: "film", harm: |j| replace(&photo(j), b"\0\0\0\x18ftypmp42\0\0\0\0"), words: "video", exit: 2 },
    Harm {
        name: "folder-photo",
        harm: |j| {
            fs::remove_file(photo(j)).unwrap();
            fs::create_dir(photo(j)).unwrap();
        },
        words: "a.jpg",
        exit: 2,
    },
    Harm {
        name: "huge-photo",
        harm: |j| {
            let b = fs::read(photo(j)).unwrap();
            replace(&photo(j), &huge(b));
        },
        words: "65000 x 65000",
        exit: 2,
    },
    Harm {
        name: "link-loop",
        harm: |j| {
            fs::remove_file(photo(j)).unwrap();
            std::os::unix::fs::symlink("a.jpg", photo(j)).unwrap();
        },
        words: "a.jpg",
        exit: 2,
    },
    Harm {
        name: "link-outside",
        harm: |j| {
            fs::remove_file(photo(j)).unwrap();
            std::os::unix::fs::symlink("/etc/hostname", photo(j)).unwrap();
        },
        words: "a.jpg",
        exit: 2,
    },
    Harm {
        name: "listed-outside",
        harm: |j| change(&j.join("job.toml"), |t| t.replace("photos/a.jpg", "../../a.jpg")),
        words: "outside",
        exit: 2,
    },
    Harm {
        name: "no-toml",
        harm: |j| change(&j.join("job.toml"), |t| format!("{t}= = =\n")),
        words: "job.toml",
        exit: 2,
    },
    Harm {
        name: "wrong-key",
        harm: |j| change(&j.join("job.toml"), |t| t.replace("technician", "tecnician")),
        words: "tecnician",
        exit: 2,
    },
    Harm { name: "not-utf8", harm: |j| replace(&j.join("job.toml"), &[0xff, 0xfe, 0]), words: "UTF-8", exit: 2 },
    Harm {
        name: "wrong-format",
        harm: |j| change(&j.join("job.toml"), |t| t.replace("job/1", "job/9")),
        words: "job/9",
        exit: 2,
    },
    Harm {
        name: "only-job-file",
        harm: |j| {
            for name in ["kit.toml", "setup.toml", "camera.toml"] {
                fs::remove_file(j.join(name)).unwrap()
            }
        },
        words: "kit",
        exit: 2,
    },
    Harm {
        name: "empty-folder",
        harm: |j| {
            fs::remove_dir_all(j.join("photos")).unwrap();
            fs::create_dir(j.join("photos")).unwrap();
        },
        words: "photos/a.jpg",
        exit: 2,
    },
    Harm {
        name: "nan",
        harm: |j| change(&j.join("kit.toml"), |t| t.replacen("size_xy_mm = ", "size_mm = nan #", 1)),
        words: "kit.toml",
        exit: 2,
    },
    Harm {
        name: "pipe",
        harm: |j| {
            fs::remove_file(j.join("setup.toml")).unwrap();
            assert!(Command::new("mkfifo").arg(j.join("setup.toml")).status().unwrap().success());
        },
        words: "no setup \"setup.toml\"",
        exit: 2,
    },
    Harm {
        name: "wrong-sheet",
        harm: |j| change(&j.join("setup.toml"), |t| t.replacen("\"yaw\"", "\"jaw\"", 1)),
        words: "jaw",
        exit: 2,
    },
    Harm {
        name: "other-kit",
        harm: |j| change(&j.join("kit.toml"), |t| t.replace("id = ", "id = 1")),
        words: "no marker of the kit",
        exit: 4,
    },
    Harm {
        name: "other-camera",
        harm: |j| change(&j.join("camera.toml"), |t| t.replace("Invented Phone", "Invented Other Phone")),
        words: "not by the camera",
        exit: 4,
    },
    Harm {
        name: "sealed-altered",
        harm: |j| {
            sealed(j, false);
            let p = j.join("data/job/photos/a.jpg");
            let mut b = fs::read(&p).unwrap();
            b[5000] ^= 1;
            fs::write(p, b).unwrap();
        },
        words: "a.jpg was altered",
        exit: 2,
    },
    Harm {
        name: "sealed-without-manifest",
        harm: |j| {
            sealed(j, false);
            fs::remove_file(j.join("manifest-sha512.txt")).unwrap();
        },
        words: "manifest-sha512.txt",
        exit: 2,
    },
    Harm {
        name: "sealed-result-written-anew",
        harm: |j| {
            sealed(j, false);
            let p = j.join("data/result.json");
            edit(&p, |t| t.replace("\"not_proven\"", "\"within\"").replace("\"outside\"", "\"within\""));
            edit(&p, |t| t + "\n");
        },
        words: "result.json was altered",
        exit: 2,
    },
    Harm {
        name: "one-file-altered",
        harm: |j| {
            sealed(j, true);
            let p = j.with_extension("tar");
            let mut b = fs::read(&p).unwrap();
            let at = b.len() / 3;
            b[at] ^= 4;
            fs::write(p, b).unwrap();
        },
        words: ".tar",
        exit: 2,
    },
];

/// A JPEG whose frame header states 65,000 by 65,000 px.
fn huge(mut bytes: Vec<u8>) -> Vec<u8> {
    let frame = bytes.windows(4).position(|w| w[0] == 0xff && w[1] == 0xc0 && w[2] == 0).unwrap();
    bytes[frame + 5..frame + 9].copy_from_slice(&[0xfd, 0xe8, 0xfd, 0xe8]);
    bytes
}

/// Eight bays whose stands stand otherwise each, small enough to be quick.
fn stage(folder: &Path) -> Vec<JobRecord> {
    let options = Options::new(Models::embedded());
    let one = |n: usize| {
        let mut scene = scene(0.35);
        scene.spec.seed = 40 + n as u64;
        let k = n as f64;
        scene.spec.stand.error.distance_mm = 2.5 * k - 9.0;
        scene.spec.stand.error.lateral_mm = (3.0 * k) % 8.0 - 3.5;
        scene.spec.stand.error.yaw_deg = 0.04 * ((5.0 * k) % 8.0) - 0.12;
        let job = folder.join(format!("s{n}"));
        scene.stage(&job, &mut |_| ()).unwrap();
        fs::remove_file(job.join("truth.json")).unwrap();
        verify(&job, &options).unwrap()
    };
    (0..SCENES).map(one).collect()
}

/// The same job again under another number: only its job file is its own.
fn copied(from: &Path, to: &Path, number: usize) {
    fs::create_dir_all(to.join("photos")).unwrap();
    for name in ["kit.toml", "setup.toml", "camera.toml", "scan-report.txt", "photos/a.jpg", "photos/b.jpg"] {
        fs::hard_link(from.join(name), to.join(name)).unwrap();
    }
    let text = fs::read_to_string(from.join("job.toml")).unwrap();
    let text = text.replace("SAMPLE-GOOD", &format!("N-{number}")).replace("INVENTED-R1", &format!("R-{number}"));
    fs::write(to.join("job.toml"), text).unwrap();
}

/// `jobs` jobs, of which every twentieth is broken.
fn archive(staged: &Path, root: &Path, jobs: usize) {
    for n in 0..jobs {
        let job = root.join(format!("w{:02}/N-{n:04}", n / 40));
        match n % 20 {
            19 => {
                let harm = &HARMS[(n / 20) % HARMS.len()];
                let job = root.join(format!("broken/{}-{n:04}", harm.name));
                copy(&staged.join(format!("s{}", n % SCENES)), &job);
                (harm.harm)(&job);
            }
            _ => copied(&staged.join(format!("s{}", n % SCENES)), &job, n),
        }
    }
}

/// Every line against what `verify` says of the scene, or what was done to it.
fn judge(out: &Path, scenes: &[JobRecord]) {
    let mut wrong = Vec::new();
    for (path, line) in lines(out) {
        let result: Value =
            serde_json::from_slice(&fs::read(out.join(line["result"].as_str().unwrap())).unwrap()).unwrap();
        let name = path.rsplit('/').next().unwrap();
        if let Some(harm) =
            HARMS.iter().find(|h| path.contains("/broken/") && name.starts_with(&format!("{}-", h.name)))
        {
            let said = result["message"].as_str().or(result["reason"].as_str()).unwrap_or_default();
            if line["exit"] != harm.exit || !said.contains(harm.words) {
                wrong.push(format!("{path}: {} {said}", line["exit"]));
            }
            continue;
        }
        let number: usize = name.trim_start_matches("N-").parse().unwrap();
        let scene = &scenes[number % SCENES];
        let mut expected: Value = serde_json::from_slice(&scene.to_json().unwrap()).unwrap();
        // A copy differs in its numbers and in its job file's digest.
        expected["job"] = format!("N-{number}").into();
        expected["context"]["series"] = format!("R-{number}").into();
        let mut said = result.clone();
        for value in [&mut said, &mut expected] {
            let inputs = value["inputs"].as_array_mut().unwrap();
            inputs.retain(|i| i["role"] != "job");
        }
        if said != expected {
            wrong.push(format!("{path}: not what verify says of its scene"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Runs an audit to its end: seconds, and the most memory it had, MB.
fn run(root: &Path, out: &Path, threads: usize) -> (f64, f64) {
    let start = Instant::now();
    let mut child = audit(root, out).args(["--threads", &threads.to_string()]).spawn().unwrap();
    let status = PathBuf::from(format!("/proc/{}/status", child.id()));
    let mut most: f64 = 0.0;
    loop {
        let text = fs::read_to_string(&status).unwrap_or_default();
        let peak = text.lines().find_map(|l| l.strip_prefix("VmHWM:")?.trim().strip_suffix(" kB")?.trim().parse().ok());
        most = most.max(peak.unwrap_or(0.0) / 1000.0);
        if child.try_wait().unwrap().is_some() {
            return (start.elapsed().as_secs_f64(), most);
        }
        std::thread::sleep(Duration::from_millis(20));
    }
}

#[test]
#[ignore = "half a minute: cargo test --test suite audit:: -- --ignored --nocapture"]
fn every_way_to_break_a_job_is_named() {
    let dir = tempfile::tempdir().unwrap();
    let staged = dir.path().join("staged");
    let scenes = stage(&staged);
    let (root, out) = (dir.path().join("archive"), dir.path().join("out"));
    for (n, harm) in HARMS.iter().enumerate() {
        let job = root.join(format!("broken/{}-{n:04}", harm.name));
        copy(&staged.join("s0"), &job);
        (harm.harm)(&job);
    }
    run(&root, &out, 2);
    assert_eq!(lines(&out).len(), HARMS.len());
    judge(&out, &scenes);
}

/// How many jobs; fewer for a look.
fn jobs() -> usize {
    std::env::var("BAYWITNESS_AUDIT_JOBS").ok().and_then(|n| n.parse().ok()).unwrap_or(1000)
}

#[test]
#[ignore = "some ten minutes: cargo test --test suite audit:: -- --ignored --nocapture"]
fn a_thousand_jobs_of_which_fifty_are_broken() {
    let dir = tempfile::tempdir().unwrap();
    let staged = dir.path().join("staged");
    let scenes = stage(&staged);
    let verdicts: Vec<&str> = scenes.iter().map(|r| r.verdict.name()).collect();
    println!("scenes: {}", verdicts.join(", "));
    let (root, small) = (dir.path().join("archive"), dir.path().join("small"));
    let jobs = jobs();
    archive(&staged, &root, jobs);
    archive(&staged, &small, 100);
    let (one, _) = run(&small, &dir.path().join("one"), 1);
    let (two, memory_of_100) = run(&small, &dir.path().join("two"), 2);
    println!("100 jobs: {one:.1} s with one thread, {two:.1} s with two, {memory_of_100:.0} MB at most");
    let whole = dir.path().join("whole");
    let (seconds, memory) = run(&root, &whole, 2);
    println!("{jobs} jobs: {seconds:.1} s with two threads, {memory:.0} MB at most");
    assert_eq!(lines(&whole).len(), jobs);
    judge(&whole, &scenes);
    assert!(memory < 1.5 * memory_of_100 + 20.0, "{memory} MB for {jobs} jobs, {memory_of_100} MB for 100");
    // Killed twenty times, anywhere.
    let cut = dir.path().join("cut");
    let mut random = rand::rngs::StdRng::seed_from_u64(20);
    for _ in 0..20 {
        let mut running = audit(&root, &cut).args(["--threads", "2"]).spawn().unwrap();
        std::thread::sleep(Duration::from_secs_f64(random.random_range(0.02..seconds / 25.0)));
        running.kill().unwrap();
        running.wait().unwrap();
    }
    run(&root, &cut, 2);
    let (a, b) = (everything(&whole), everything(&cut));
    for (path, bytes) in &a {
        assert!(b.get(path) == Some(bytes), "{} differs", path.display());
    }
    assert!(b.keys().all(|k| a.contains_key(k) || k.extension().is_some_and(|e| e == "part")));
}
