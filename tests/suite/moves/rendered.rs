//! Rendered jobs: photos of the stand, a move, one photo, another; each against
//! exact truth.

use std::path::Path;

use baywitness::folder::{JobFile, Models};
use baywitness::job;
use baywitness::record::{JobRecord, PositionRecord, Verdict};
use baywitness::synth::{PhotoSpec, Scene, StandError, Truth};
use baywitness::words::Language;

use crate::staged;

const SCALE: f64 = 0.36;

/// The sample's bay: the stand 24 mm too far to the left and turned, moved back but not quite, then all the way.
fn scene() -> Scene {
    let mut scene = staged::scene(SCALE);
    scene.spec.job.remove("reading");
    scene.spec.stand.error = StandError::from([0.0, 24.0, 0.0, 0.9, 0.0, 0.0]);
    scene.spec.moves =
        vec![StandError::from([0.0, -8.0, 0.0, -0.9, 0.0, 0.0]), StandError::from([0.0, -16.0, 0.0, 0.0, 0.0, 0.0])];
    let two = scene.photos();
    let photo = |file: &str, of: usize, after_move: u32| {
        let mut photo = PhotoSpec { file: file.to_owned(), after_move, ..two[of].clone() };
        photo.eye_mm[0] += 90.0 * f64::from(after_move);
        photo.eye_mm[2] -= 40.0 * f64::from(after_move);
        photo
    };
    scene.spec.photo = Some(vec![
        photo("a.jpg", 0, 0),
        photo("b.jpg", 1, 0),
        photo("c.jpg", 0, 1),
        photo("d.jpg", 1, 2),
        photo("e.jpg", 0, 2),
    ]);
    scene
}

fn verify(folder: &Path) -> JobRecord {
    let record = job::verify(folder, &job::Options::new(Models::embedded())).unwrap();
    println!("{}: {}", record.verdict.words(), record.reason);
    for f in &record.findings {
        println!("  {}: {}", f.code, f.message);
    }
    record
}

/// The same job with some of its photos.
fn with_photos(folder: &Path, files: &[&str]) -> JobRecord {
    let path = folder.join("job.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    let mut file = JobFile::from_toml(&text, "job.toml").unwrap();
    let wanted = |name: &str| files.iter().any(|f| name == format!("photos/{f}"));
    file.photo_entries = file.photo_entries.map(|all| all.into_iter().filter(|e| wanted(&e.file)).collect());
    std::fs::write(&path, file.to_toml()).unwrap();
    let record = verify(folder);
    std::fs::write(&path, text).unwrap();
    record
}

/// Every figure of a position against what was true in a photo of it.
fn is_true(record: &JobRecord, position: &PositionRecord, truth: &Truth) {
    let file = &position.photos[0];
    let shown = truth.photos.iter().find(|p| p.file == *file).unwrap();
    let exact = shown.measured.as_ref().unwrap_or(&truth.measured);
    for figure in &position.figures {
        let check = &record.checks[figure.check];
        let key = match &check.from {
            Some(from) => format!("{}_from_{from}", check.quantity),
            None => check.quantity.clone(),
        };
        let (value, u) = (figure.value.unwrap(), figure.standard_uncertainty.unwrap());
        let sigmas = (value - exact[&key]) / u;
        assert!(sigmas.abs() < 4.0, "{key} after move {}: {value} against {}", position.after_move, exact[&key]);
    }
}

fn figure<'a>(record: &'a JobRecord, position: usize, quantity: &str) -> &'a baywitness::record::PositionFigure {
    let at = record.checks.iter().position(|c| c.quantity == quantity).unwrap();
    record.positions[position].figures.iter().find(|f| f.check == at).unwrap()
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn one_photo_tells_where_the_stand_stands_now_and_two_prove_it() {
    let (scene, folder) = (scene(), tempfile::tempdir().unwrap());
    let truth = scene.stage(folder.path(), &mut |_| ()).unwrap();

    // Before the move: turn first, which shifts the aim point, then centre.
    let before = with_photos(folder.path(), &["a.jpg", "b.jpg"]);
    assert_eq!(before.verdict, Verdict::Outside);
    assert!(before.positions.is_empty());
    let first = before.first.as_ref().unwrap();
    assert_eq!(before.checks[first.check.unwrap()].quantity, "yaw", "{first:?}");

    // One photo: measured, not far enough.
    let once = with_photos(folder.path(), &["a.jpg", "b.jpg", "c.jpg"]);
    once.positions.iter().for_each(|p| is_true(&once, p, &truth));
    let lateral = figure(&once, 1, "lateral_offset");
    assert_eq!(lateral.verdict, Verdict::Outside);
    assert!((lateral.moved.unwrap() + 8.0).abs() < 4.0 * lateral.u_moved.unwrap(), "{lateral:?}");
    // What both places have in common is no part of the difference.
    let places = [0, 1].map(|p| figure(&once, p, "lateral_offset").standard_uncertainty.unwrap());
    assert!(lateral.u_moved.unwrap() < 0.9 * places[0].hypot(places[1]), "{lateral:?}");
    let words = lateral.words.as_ref().unwrap();
    assert!(words.starts_with("asked 2") && words.contains("moved 8 mm: 1") && words.ends_with("mm more"), "{words}");
    assert!(figure(&once, 1, "yaw").words.as_ref().unwrap().contains("far enough"));
    let first = once.first.as_ref().unwrap();
    assert!(first.words.contains("mm to the vehicle's right"), "{first:?}");
    assert!(first.last_move.as_ref().unwrap().contains("mm more"));
    // Nobody is asked to prove by photos a place that is left.
    assert!(once.next_photo.is_none(), "{:?}", once.next_photo);
    let waiting = once.checks.iter().filter(|c| c.verdict == Verdict::NotProven);
    assert!(
        waiting.clone().count() >= 2 && waiting.clone().all(|c| c.reason.as_ref().unwrap().contains("counts once"))
    );
    assert_eq!(once.positions[1].proven_by, ["photos/c.jpg"]);
    assert!(once.positions[0].taken < once.positions[1].taken);

    // Moved again: one photo measures within, two prove it.
    let twice = with_photos(folder.path(), &["a.jpg", "b.jpg", "c.jpg", "d.jpg"]);
    twice.positions.iter().for_each(|p| is_true(&twice, p, &truth));
    assert_eq!(twice.verdict, Verdict::NotProven, "{}", twice.reason);
    assert!(twice.reason.contains("one more photo"), "{}", twice.reason);
    assert!(twice.first.as_ref().unwrap().words.contains("Leave the stand where it is"));
    let proven = verify(folder.path());
    proven.positions.iter().for_each(|p| is_true(&proven, p, &truth));
    assert_eq!(proven.verdict, Verdict::Within, "{}", proven.reason);
    assert_eq!(proven.positions.len(), 3);
    assert_eq!(proven.positions[2].proven_by, ["photos/d.jpg", "photos/e.jpg"]);
    // The sheet may be content with one.
    let sheet = folder.path().join("setup.toml");
    let text = std::fs::read_to_string(&sheet).unwrap();
    std::fs::write(&sheet, text.replace("[decision]\n", "[decision]\nphotos_after_move = 1\n")).unwrap();
    assert_eq!(with_photos(folder.path(), &["a.jpg", "b.jpg", "c.jpg", "d.jpg"]).verdict, Verdict::Within);
    // Where it stands now alone is judged: without its photos there is no verdict on where it stood.
    std::fs::write(&sheet, text).unwrap();
    let page = baywitness::report::html(&proven, &[], Language::English);
    assert!(page.contains("Where the stand went") && page.contains("moved 8 mm"));
}

/// The vehicle rolls while the stand is put right; and a photo that shows the stand alone.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_vehicle_that_rolls_meanwhile_is_named_and_a_photo_of_the_stand_alone_says_what_it_lacks() {
    let mut rolled = scene();
    for photo in rolled.spec.photo.iter_mut().flatten().skip(3) {
        photo.vehicle_rolled_mm = 5.0;
    }
    let folder = tempfile::tempdir().unwrap();
    rolled.stage(folder.path(), &mut |_| ()).unwrap();
    let record = verify(folder.path());
    assert_eq!(record.verdict, Verdict::NotProven, "{}", record.reason);
    assert!(record.findings.iter().any(|f| f.code == "vehicle-moved-between-photos"));
    assert!(record.checks.iter().all(|c| c.verdict != Verdict::Within || c.untrusted.is_empty()));

    let mut alone = scene();
    let photos = alone.spec.photo.as_mut().unwrap();
    photos.truncate(3);
    // Close before the stand, which hides everything else.
    let stand = alone.truth().carriers.values().find(|c| c.role == "target").unwrap().position_mm;
    let photo = &mut alone.spec.photo.as_mut().unwrap()[2];
    photo.look_at_mm = stand;
    photo.eye_mm = [stand[0] + 900.0, stand[1], stand[2]];
    let folder = tempfile::tempdir().unwrap();
    alone.stage(folder.path(), &mut |_| ()).unwrap();
    let record = verify(folder.path());
    assert_eq!(record.verdict, Verdict::Retake, "{}", record.reason);
    let why = record.photos[2].unused_because.as_ref().unwrap();
    assert!(why.contains("plates and floor sheets in it beside the stand"), "{why}");
    assert!(record.reason.contains("after move 1"), "{}", record.reason);
}

/// As a technician does it: two photos, `verify`, a move by a screw, `verify --moved` with one photo, `--more` with another.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn photos_are_added_on_the_command_line_and_screws_are_told() {
    let folder = tempfile::tempdir().unwrap();
    let job = folder.path().join("job");
    scene().stage(&job, &mut |_| ()).unwrap();
    let phone = folder.path().join("phone");
    std::fs::create_dir(&phone).unwrap();
    for file in ["c.jpg", "d.jpg", "e.jpg"] {
        std::fs::rename(job.join("photos").join(file), phone.join(file)).unwrap();
    }
    // The next photo of a phone that counts from one again.
    std::fs::rename(phone.join("e.jpg"), phone.join("a.jpg")).unwrap();
    let stand = "format = \"stand/1\"\nname = \"frame\"\n[[screw]]\nname = \"the side spindle\"\nquantity = \"lateral_offset\"\nmm_per_turn = -4.0\n";
    std::fs::write(job.join("stand.toml"), stand).unwrap();
    let text = std::fs::read_to_string(job.join("job.toml")).unwrap();
    let mut file = JobFile::from_toml(&text, "job.toml").unwrap();
    file.photo_entries = None;
    file.stand = Some("stand.toml".into());
    let text = format!("# by hand\n{}", file.to_toml());
    std::fs::write(job.join("job.toml"), text).unwrap();
    let run = |more: &[&str]| {
        let mut command = crate::program::program();
        let out = command.arg("verify").args(more).arg(&job).output().unwrap();
        (out.status.code().unwrap(), String::from_utf8(out.stdout).unwrap() + &String::from_utf8(out.stderr).unwrap())
    };
    assert_eq!(run(&[]).0, 1);
    let photo = |file: &str| phone.join(file).display().to_string();
    let (code, said) = run(&["--moved", &photo("c.jpg")]);
    assert_eq!(code, 1, "{said}");
    assert!(said.contains("moved 8 mm") && said.contains("turns of the side spindle, clockwise"), "{said}");
    // What was turned, as it is written by hand.
    let path = job.join("job.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    assert!(text.contains("# by hand") && text.contains("after_move = 1"), "{text}");
    std::fs::write(&path, format!("{text}\n[[move]]\nturned = {{ \"the side spindle\" = 2.5 }}\n")).unwrap();
    let (code, said) = run(&["--moved", &photo("d.jpg")]);
    assert_eq!(code, 3, "{said}");
    // 8 mm by two and a half turns, not ten.
    assert!(said.contains("2.5 turns of the side spindle gave -") && said.contains("says -4.00"), "{said}");
    assert!(said.contains("Leave everything where it is"), "{said}");
    let (code, said) = run(&["--more", &photo("a.jpg")]);
    assert_eq!(code, 0, "{said}");
    assert!(job.join("photos/move-2-a.jpg").exists());
    let (code, said) = run(&["--more", &photo("a.jpg")]);
    assert!(code == 2 && said.contains("already a photo") && said.contains("after_move = 1"), "{said}");
    assert_eq!(run(&["--moved", &photo("none.jpg")]).0, 2);
}
