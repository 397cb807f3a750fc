//! Rendered photos of a tripod, taken in by the program.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use baywitness::folder::{JobFile, Models};
use baywitness::job;
use baywitness::record::{JobRecord, Verdict};
use baywitness::synth::{PhotoSpec, Scene, StandError};

use crate::program::program;
use crate::staged;

const SCALE: f64 = 0.36;

/// What is rendered of one moment: millimetres that the stand stands to the left of where it was first, how far the
/// tripod and the vehicle are from where they were, mm.
#[derive(Clone, Copy)]
struct Moment(f64, f64, f64);

/// The sample's bay with the stand 24 mm too far to the left; two first photos, then the tripod's.
fn scene(moments: &[Moment]) -> Scene {
    let mut scene = staged::scene(SCALE);
    scene.spec.job.remove("reading");
    scene.spec.stand.error = StandError::from([0.0, 24.0, 0.0, 0.0, 0.0, 0.0]);
    let two = scene.photos();
    let mut photos: Vec<PhotoSpec> = ["a.jpg", "b.jpg"]
        .iter()
        .zip(&two)
        .map(|(file, photo)| PhotoSpec { file: (*file).to_owned(), ..photo.clone() })
        .collect();
    for (i, Moment(left, nudged, rolled)) in moments.iter().enumerate() {
        let mut photo = PhotoSpec { file: format!("t{i:02}.jpg"), ..two[0].clone() };
        photo.eye_mm[0] += 120.0;
        photo.eye_mm[1] += nudged;
        photo.stand_moved = StandError::from([0.0, *left, 0.0, 0.0, 0.0, 0.0]);
        photo.vehicle_rolled_mm = *rolled;
        photo.seconds_later = Some(60.0 + 5.0 * i as f64);
        photos.push(photo);
    }
    scene.spec.photo = Some(photos);
    scene
}

/// The job with its first two photos, and the tripod's photos apart.
struct Staged {
    _folder: tempfile::TempDir,
    job: PathBuf,
    camera: PathBuf,
    waiting: PathBuf,
}

impl Staged {
    fn new(moments: &[Moment]) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let [job, camera, waiting] = ["job", "camera", "waiting"].map(|n| folder.path().join(n));
        scene(moments).stage(&job, &mut |_| ()).unwrap();
        std::fs::create_dir(&camera).unwrap();
        std::fs::create_dir(&waiting).unwrap();
        for i in 0..moments.len() {
            let name = format!("t{i:02}.jpg");
            std::fs::rename(job.join("photos").join(&name), waiting.join(&name)).unwrap();
        }
        let path = job.join("job.toml");
        let mut file = JobFile::from_toml(&std::fs::read_to_string(&path).unwrap(), "job.toml").unwrap();
        // As a job is begun: all that lies in photos/.
        (file.photos, file.photo_entries) = (None, None);
        std::fs::write(&path, file.to_toml()).unwrap();
        Staged { job, camera, waiting, _folder: folder }
    }

    /// The camera takes some of its photos.
    fn takes(&self, photos: std::ops::Range<usize>) {
        for i in photos {
            let name = format!("t{i:02}.jpg");
            std::fs::copy(self.waiting.join(&name), self.camera.join(&name)).unwrap();
        }
    }

    fn watch(&self, more: &[&str]) -> (i32, String) {
        let out = self.command().args(["--once"]).args(more).output().unwrap();
        let said = String::from_utf8(out.stdout).unwrap() + &String::from_utf8(out.stderr).unwrap();
        println!("{said}");
        (out.status.code().unwrap(), said)
    }

    fn command(&self) -> Command {
        let mut command = program();
        command.arg("watch").arg(&self.job).arg("--tripod").arg(&self.camera);
        command
    }

    /// The tripod's photos in the job: after which move, and which of its photos.
    fn kept(&self) -> Vec<(u32, String)> {
        let text = std::fs::read_to_string(self.job.join("job.toml")).unwrap();
        let entries = JobFile::from_toml(&text, "job.toml").unwrap().photo_entries.unwrap_or_default();
        let of = |file: &str| {
            let bytes = std::fs::read(self.job.join(file)).unwrap();
            let all = std::fs::read_dir(&self.waiting).unwrap().map(|e| e.unwrap().path());
            all.filter(|p| std::fs::read(p).unwrap() == bytes).map(|p| file_name(&p)).next().unwrap_or_default()
        };
        entries.iter().filter(|e| e.after_move > 0).map(|e| (e.after_move, of(&e.file))).collect()
    }

    fn files(&self) -> usize {
        std::fs::read_dir(self.job.join("photos")).unwrap().count()
    }

    fn verify(&self) -> JobRecord {
        job::verify(&self.job, &job::Options::new(Models::embedded())).unwrap()
    }
}

fn file_name(path: &Path) -> String {
    path.file_name().unwrap().to_string_lossy().into_owned()
}

/// A line of what was said about one of the photos.
fn line(said: &str, photo: usize) -> &str {
    said.lines().find(|l| l.starts_with(&format!("t{photo:02}.jpg"))).unwrap_or_else(|| panic!("t{photo:02}: {said}"))
}

/// At rest, moved in steps, at rest; then all the way, with foreign files in the folder and the watch ended in between.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn of_each_place_the_newest_is_kept_and_what_moves_is_skipped() {
    let at = |left: f64| Moment(left, 0.0, 0.0);
    let staged = Staged::new(&[
        at(0.0),
        at(0.0),
        at(-3.0),
        at(-6.0),
        at(-10.0),
        at(-10.0),
        at(-10.0),
        at(-17.0),
        at(-24.0),
        at(-24.0),
    ]);
    std::fs::write(staged.camera.join("t00.cr2"), "raw").unwrap();
    std::fs::write(staged.camera.join(".t99.jpg"), "what a system leaves").unwrap();
    std::fs::write(staged.camera.join("notes.txt"), "two o'clock").unwrap();
    std::fs::write(staged.camera.join("a-torn.jpg"), "no picture").unwrap();
    staged.takes(0..6);
    let (code, said) = staged.watch(&[]);
    assert!(said.contains("a-torn.jpg: skipped: "), "{said}");
    assert!(!said.contains("notes") && !said.contains("cr2") && !said.contains("t99"), "{said}");
    assert!(line(&said, 0).contains("the first photo"), "{said}");
    assert!(line(&said, 1).contains("at rest in a new place"), "{said}");
    for moving in 2..5 {
        assert!(line(&said, moving).ends_with("skipped: the stand moved since the photo before"), "{said}");
    }
    assert!(line(&said, 5).contains("at rest in a new place"), "{said}");
    assert_eq!(code, 1);
    assert!(said.contains("Do first: ") && said.contains("moved 10 mm"), "{said}");
    assert_eq!(staged.kept(), [(1, "t01.jpg".to_owned()), (2, "t05.jpg".to_owned())]);

    // Begun again: the newer photo takes its place, and the next place is another.
    staged.takes(6..7);
    let (_, said) = staged.watch(&[]);
    assert!(line(&said, 6).contains("stands where it did") && !said.contains("t05.jpg"), "{said}");
    assert_eq!(staged.kept(), [(1, "t01.jpg".to_owned()), (2, "t06.jpg".to_owned())]);
    staged.takes(7..10);
    let (code, said) = staged.watch(&[]);
    assert_eq!(code, 3, "one photo of it measures, two prove: {said}");
    assert!(said.contains("Leave the stand where it is"), "{said}");
    let names = ["t01.jpg", "t06.jpg", "t09.jpg"].map(str::to_owned);
    assert_eq!(staged.kept(), [1, 2, 3].into_iter().zip(names).collect::<Vec<_>>());
    assert_eq!(staged.files(), 5, "no older photo is left");

    let record = staged.verify();
    assert_eq!(record.verdict, Verdict::NotProven);
    let lateral = record.checks.iter().position(|c| c.quantity == "lateral_offset").unwrap();
    for (position, truth) in record.positions.iter().zip([24.0, 24.0, 14.0, 0.0]) {
        let figure = position.figures.iter().find(|f| f.check == lateral).unwrap();
        let (value, u) = (figure.value.unwrap(), figure.standard_uncertainty.unwrap());
        assert!((value - truth).abs() < 4.0 * u, "after move {}: {value} +- {u}", position.after_move);
    }
}

/// Somebody stumbles over the tripod, then the vehicle rolls.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_nudged_tripod_and_a_rolling_vehicle_are_said_to_be_that() {
    let at = |nudged: f64, rolled: f64| Moment(0.0, nudged, rolled);
    let staged = Staged::new(&[at(0.0, 0.0), at(0.0, 0.0), at(6.0, 0.0), at(6.0, 0.0), at(6.0, 5.0), at(6.0, 5.0)]);
    staged.takes(0..6);
    let (_, said) = staged.watch(&[]);
    assert!(line(&said, 2).contains("the tripod itself was moved"), "{said}");
    // Nobody can tell from pixels whether the stand was moved with it: a place of its own.
    assert!(line(&said, 3).contains("new place"), "{said}");
    assert!(line(&said, 4).contains("the vehicle moved, the floor sheets did not"), "{said}");
    let record = staged.verify();
    assert!(record.findings.iter().any(|f| f.code == "vehicle-moved-between-photos"), "{:?}", record.findings);
    assert_ne!(record.verdict, Verdict::Within);
}

/// Killed at any time while photos come, one of them half written: the job is whole, and goes on.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_watch_that_is_killed_goes_on_where_it_was() {
    let at = |left: f64| Moment(left, 0.0, 0.0);
    let staged = Staged::new(&[at(0.0), at(0.0), at(-10.0), at(-10.0), at(-10.0)]);
    let begin = || {
        let mut watch = staged.command();
        watch.args(["--every", "0.1"]).stdout(Stdio::null()).stderr(Stdio::null()).spawn().unwrap()
    };
    let until = |what: &str, done: &dyn Fn() -> bool| {
        let began = Instant::now();
        while !done() {
            assert!(began.elapsed() < Duration::from_secs(60), "{what}: {:?}", staged.kept());
            std::thread::sleep(Duration::from_millis(20));
        }
    };
    let mut watch = begin();
    // What lies there when a watch begins is left out: the photos come afterwards.
    std::thread::sleep(Duration::from_millis(1500));
    staged.takes(0..1);
    // The second one grows while it is looked at.
    let whole = std::fs::read(staged.waiting.join("t01.jpg")).unwrap();
    for part in 1..=8 {
        std::fs::write(staged.camera.join("t01.jpg"), &whole[..whole.len() * part / 8]).unwrap();
        std::thread::sleep(Duration::from_millis(60));
    }
    until("the first place", &|| staged.kept().len() == 1);
    watch.kill().unwrap();
    watch.wait().unwrap();
    assert_eq!(staged.kept(), [(1, "t01.jpg".to_owned())]);
    // As a kill between copy and job file leaves it.
    let left = staged.job.join("photos/tripod-2-0123456789abcdef.jpg");
    std::fs::copy(staged.waiting.join("t04.jpg"), &left).unwrap();
    assert_eq!(staged.verify().positions.len(), 2, "what the job does not list counts for nothing");
    // Kills at times that nobody chose.
    staged.takes(2..5);
    for after_ms in [30, 200, 500, 900] {
        let mut watch = begin();
        std::thread::sleep(Duration::from_millis(after_ms));
        watch.kill().unwrap();
        watch.wait().unwrap();
        staged.verify();
    }
    let mut watch = begin();
    until("the second place", &|| staged.kept().last() == Some(&(2, "t04.jpg".to_owned())));
    watch.kill().unwrap();
    watch.wait().unwrap();
    assert!(!left.exists());
    assert_eq!(staged.kept().len(), 2);
    assert_eq!(std::fs::read_dir(&staged.camera).unwrap().count(), 5, "the camera's folder keeps all");
}

/// What can't be watched is said at once.
#[test]
fn what_a_tripod_needs_is_said() {
    let folder = tempfile::tempdir().unwrap();
    let job = folder.path().join("job");
    let sample: PathBuf = [env!("CARGO_MANIFEST_DIR"), "samples", "good"].iter().collect();
    staged::copy(&sample, &job, false);
    let photo = std::fs::read_dir(sample.join("photos")).unwrap().next().unwrap().unwrap().path();
    std::fs::copy(&photo, job.join("photos").join(file_name(&photo))).unwrap();
    let text = std::fs::read_to_string(job.join("job.toml")).unwrap();
    let mut file = JobFile::from_toml(&text, "job.toml").unwrap();
    (file.photos, file.photo_entries) = (None, None);
    std::fs::write(job.join("job.toml"), file.to_toml()).unwrap();
    let run = |more: &[&str]| {
        let mut command = program();
        let out = command.arg("watch").arg(&job).args(more).output().unwrap();
        (out.status.code().unwrap(), String::from_utf8(out.stderr).unwrap())
    };
    let here = folder.path().display().to_string();
    let (code, said) = run(&["--tripod", &format!("{here}/none")]);
    assert!(code == 2 && said.contains("is no folder"), "{said}");
    let (code, said) = run(&["--tripod", &here, "--once"]);
    assert!(code == 2 && said.contains("has only one first photo"), "{said}");
    let (code, said) = run(&["--tripod", &here, "--step", "high"]);
    assert!(code == 2 && said.contains("has no steps: leave --step"), "{said}");
}
