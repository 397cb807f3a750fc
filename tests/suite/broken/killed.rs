//! The program ended at random moments (SIGKILL, as a power cut does): what stands
//! under a final name is whole, and what was interrupted is done by doing it again.
//! `tests/suite/web/crash.rs` does the same to the page.

use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

use super::bay::{JOB, a_job, ended, program, run, text};

/// Runs to the end once for its time, then so many times up to a moment of it; true where it came to its end.
fn ended_early(arguments: &[&str], after: Duration) -> bool {
    let mut child = program(arguments).spawn().unwrap();
    let until = Instant::now() + after;
    loop {
        if child.try_wait().unwrap().is_some() {
            ended(&child.wait_with_output().unwrap());
            return false;
        }
        if Instant::now() >= until {
            child.kill().unwrap();
            child.wait().unwrap();
            return true;
        }
        std::thread::sleep(Duration::from_micros(200));
    }
}

fn time_of(arguments: &[&str]) -> Duration {
    let start = Instant::now();
    let (code, said) = run(arguments);
    assert!(matches!(code, Some(0 | 3)), "{arguments:?}: {code:?} {said}");
    start.elapsed()
}

/// Moments spread over a run, more of them near its end, where files are written.
fn moments(whole: Duration, n: u32) -> impl Iterator<Item = Duration> {
    (0..n).map(move |i| whole.mul_f64((f64::from(i) + 0.5).sqrt() / f64::from(n).sqrt()))
}

fn seals(rounds: u32) {
    let room = tempfile::tempdir().unwrap();
    let job = text(&JOB).to_owned();
    for ending in ["", ".tar"] {
        let out = |i: &str| text(&room.path().join(format!("sealed-{i}{ending}"))).to_owned();
        // The shorter of two runs: other work on the machine may end meanwhile.
        let whole = ["whole", "again"].map(|name| time_of(&["seal", &job, "--out", &out(name)])).into_iter().min();
        let whole = whole.unwrap_or_default();
        let (mut killed, mut there) = (0, 0);
        for (i, moment) in moments(whole, rounds).enumerate() {
            let at = out(&i.to_string());
            let early = ended_early(&["seal", &job, "--out", &at], moment);
            killed += u32::from(early);
            if Path::new(&at).exists() {
                there += 1;
                let (code, said) = run(&["check", &at]);
                assert_eq!(code, Some(3), "unsigned, and intact: {said}");
            } else {
                assert!(early, "it said that it was done");
                time_of(&["seal", &job, "--out", &at]);
            }
        }
        println!("seal{ending}: {killed} of {rounds} killed, {there} folders were there");
        assert!(killed > rounds / 8, "{killed} of {rounds} were killed");
    }
}

fn audits(rounds: u32) {
    let room = tempfile::tempdir().unwrap();
    let jobs = room.path().join("jobs");
    for name in ["a", "b", "c"] {
        a_job(&jobs.join(name));
    }
    let (jobs, wanted) = (text(&jobs).to_owned(), room.path().join("wanted"));
    let whole = time_of(&["audit", &jobs, "--out", text(&wanted)]);
    let mut killed = 0;
    for (i, moment) in moments(whole, rounds).enumerate() {
        let out = room.path().join(format!("out-{i}"));
        killed += u32::from(ended_early(&["audit", &jobs, "--out", text(&out)], moment));
        // What is there is whole.
        for file in fs::read_dir(out.join("results")).into_iter().flatten().map(|e| e.unwrap().path()) {
            if file.extension().is_some_and(|e| e == "json") {
                serde_json::from_slice::<serde_json::Value>(&fs::read(&file).unwrap()).unwrap();
            }
        }
        // Once more for a second kill, then to the end: as if nothing had been.
        ended_early(&["audit", &jobs, "--out", text(&out)], moment / 2);
        time_of(&["audit", &jobs, "--out", text(&out)]);
        for name in ["audit.jsonl", "audit.csv"] {
            let of = |folder: &Path| fs::read_to_string(folder.join(name)).unwrap();
            assert_eq!(of(&out), of(&wanted), "{name} after a kill at {moment:?}");
        }
        for file in fs::read_dir(wanted.join("results")).unwrap().map(|e| e.unwrap()) {
            let again = fs::read(out.join("results").join(file.file_name())).unwrap();
            assert_eq!(again, fs::read(file.path()).unwrap());
        }
    }
    println!("audit: {killed} of {rounds} killed");
    assert!(killed > rounds / 8, "{killed} of {rounds} were killed");
}

/// A survey's kit file names its layout by digest: one without the other would be told, never used.
fn surveys(rounds: u32) {
    let room = tempfile::tempdir().unwrap();
    let file = |name: &str| text(&JOB.join(name)).to_owned();
    let photos = [file("photos/a.jpg"), file("photos/b.jpg")];
    let (kit, camera) = (file("kit.toml"), file("camera.toml"));
    let survey = |out: &Path| {
        ["survey", &photos[0], &photos[1], "--kit", &kit, "--camera", &camera, "--out", text(out)].map(str::to_owned)
    };
    let to_end = |arguments: &[String]| time_of(&arguments.iter().map(String::as_str).collect::<Vec<_>>());
    let wanted = room.path().join("wanted/kit.toml");
    let whole = to_end(&survey(&wanted));
    let mut killed = 0;
    for (i, moment) in moments(whole, rounds).enumerate() {
        let out = room.path().join(format!("s{i}/kit.toml"));
        let arguments = survey(&out);
        let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
        killed += u32::from(ended_early(&arguments, moment));
        for name in ["kit.toml", "layout.json"] {
            let (there, wanted) = (out.with_file_name(name), wanted.with_file_name(name));
            if there.exists() {
                assert_eq!(fs::read(&there).unwrap(), fs::read(&wanted).unwrap(), "{name} is not whole");
            }
        }
    }
    println!("survey: {killed} of {rounds} killed");
    assert!(killed > rounds / 8, "{killed} of {rounds} were killed");
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_kill_leaves_nothing_half_done() {
    seals(2);
    audits(2);
    surveys(2);
}

#[test]
#[ignore = "a minute or two: twenty kills of each"]
fn twenty_kills_leave_nothing_half_done() {
    seals(20);
    audits(20);
    surveys(20);
}
