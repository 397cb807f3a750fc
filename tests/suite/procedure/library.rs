//! Every set-up sheet of the library, staged right and wrong where `plan`
//! says that photos are to be taken from, and verified.

use baywitness::camera::Profile;
use baywitness::folder::{Kind, Models, Vehicle};
use baywitness::job::{PlanOptions, Reach, Wanted, plan};
use baywitness::marker::{Kit, KitFile};
use baywitness::record::{JobRecord, Verdict};
use baywitness::setup::Setup;
use baywitness::synth::{PhotoSpec, Scene, StandError};

use super::{SCALE, codes, verify};

/// A sheet, the kit that it is tried with, and what is wrong with the stand.
struct Case {
    setup: &'static str,
    kit: &'static str,
    wrong: StandError,
    /// The quantity that must then be outside.
    outside: &'static str,
    code: &'static str,
}

const NONE: StandError =
    StandError { distance_mm: 0.0, lateral_mm: 0.0, height_mm: 0.0, yaw_deg: 0.0, pitch_deg: 0.0, roll_deg: 0.0 };

fn read<T>(kind: Kind, name: &str, parse: impl Fn(&str) -> T) -> T {
    let file = Models::embedded().open(&[kind], name).unwrap();
    parse(file.text().unwrap())
}

fn kit(name: &str) -> Kit {
    read(Kind::Kit, name, |text| KitFile::from_toml(text, name).unwrap().kit)
}

/// The staged bay with a sheet and a kit, photographed where the plan says.
fn staged(case: &Case, error: StandError) -> Scene {
    // Marks on the arches are small and far away.
    let small = kit(case.kit).carriers.iter().any(|c| c.role.is_arch());
    let mut scene = crate::staged::scene(if small { 0.8 } else { SCALE });
    scene.spec.job.remove("reading");
    scene.kit = kit(case.kit);
    scene.setup = read(Kind::Setup, case.setup, |text| Setup::from_toml(text, case.setup).unwrap());
    scene.spec.stand.error = error;
    // As the sheet of the body wants it; nobody else looks there.
    scene.spec.vehicle.arch_heights_mm = [372.0, 372.0, 380.0, 380.0];
    // What is tried here is the sheet, not how plates seat.
    scene.spec.kit_errors.exact = true;
    let camera: &Profile = &scene.camera;
    let options = PlanOptions { reach: Reach { width_mm: 4600.0, ..Reach::default() }, ..PlanOptions::default() };
    let vehicle = Vehicle { nose_from_rear_axle_mm: Some(3490.0), wheelbase_mm: Some(2640.0), ..Vehicle::default() };
    let made = plan(Wanted { kit: &scene.kit, setup: &scene.setup, camera, vehicle: &vehicle }, &options);
    println!(
        "{}: {} photos; {:?}",
        case.setup,
        made.stations.len(),
        made.predicted.iter().map(|p| (p.quantity.as_str(), p.expanded_uncertainty, p.can_decide)).collect::<Vec<_>>()
    );
    let steps: Vec<Option<String>> = match scene.setup.steps.as_slice() {
        [] => vec![None],
        steps => steps.iter().cloned().map(Some).collect(),
    };
    let mut photos = Vec::new();
    for (s, step) in steps.into_iter().enumerate() {
        for (i, station) in made.stations.iter().enumerate() {
            let mut photo = PhotoSpec::new(&format!("{s}-{i}.jpg"), station.position_mm, station.look_at_mm);
            photo.step.clone_from(&step);
            photos.push(photo);
        }
    }
    scene.spec.photo = Some(photos);
    scene
}

/// Wrong: that one quantity is outside and told, everything else is within or
/// at least not outside. The right stands of all sheets are a test of their own.
fn try_out(case: &Case) {
    let wrong = verify(&staged(case, case.wrong));
    let outside: Vec<&str> =
        wrong.checks.iter().filter(|c| c.verdict == Verdict::Outside).map(|c| c.quantity.as_str()).collect();
    assert!(!outside.is_empty() && outside.iter().all(|q| *q == case.outside), "{}: {outside:?}", case.setup);
    assert!(codes(&wrong).contains(&case.code), "{}: {:?}", case.setup, codes(&wrong));
    assert!(not_proven(&wrong) <= wrong.checks.len() / 3, "{}: {:?}", case.setup, wrong.reason);
}

fn not_proven(record: &JobRecord) -> usize {
    record.checks.iter().filter(|c| c.verdict == Verdict::NotProven).count()
}

const RADAR_PLATE: Case = Case {
    setup: "radar-plate",
    kit: "bay-a4",
    wrong: StandError { yaw_deg: -0.8, ..NONE },
    outside: "yaw",
    code: "stand-turned",
};

const RADAR_PLATE_IN_TWO_TILTS: Case = Case {
    setup: "radar-plate-two-tilts",
    kit: "bay-a4",
    wrong: StandError { pitch_deg: 0.9, ..NONE },
    outside: "pitch",
    code: "stand-tilted",
};

const CORNER_REFLECTOR: Case = Case {
    setup: "corner-reflector",
    kit: "bay-a4",
    wrong: StandError { height_mm: 25.0, ..NONE },
    outside: "height",
    code: "stand-too-high",
};

const CAMERA_BOARD: Case = Case {
    setup: "camera-board",
    kit: "bay-a4",
    wrong: StandError { lateral_mm: 18.0, ..NONE },
    outside: "lateral_offset",
    code: "stand-off-centre",
};

const CAMERA_BOARD_AND_BODY: Case = Case {
    setup: "camera-board-ride-height",
    kit: "bay-a4-arches",
    wrong: StandError { roll_deg: 0.9, ..NONE },
    outside: "roll",
    code: "stand-not-level",
};

const TWO_CAMERA_BOARDS: Case = Case {
    setup: "camera-boards-two",
    kit: "two-boards",
    wrong: StandError { distance_mm: 25.0, ..NONE },
    outside: "distance",
    code: "stand-too-far",
};

const SURROUND_MATS: Case = Case {
    setup: "surround-mats",
    kit: "mats",
    wrong: StandError { distance_mm: -40.0, ..NONE },
    outside: "distance",
    code: "stand-too-near",
};

const HEIGHT_FOLLOWS_THE_SENSOR: Case = Case {
    setup: "radar-follows-sensor",
    kit: "bay-a4",
    wrong: StandError { height_mm: -22.0, ..NONE },
    outside: "height_from_nose",
    code: "stand-too-low",
};

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn radar_plate() {
    try_out(&RADAR_PLATE);
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn radar_plate_in_two_tilts() {
    try_out(&RADAR_PLATE_IN_TWO_TILTS);
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn corner_reflector() {
    try_out(&CORNER_REFLECTOR);
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn camera_board() {
    try_out(&CAMERA_BOARD);
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn camera_board_and_body() {
    try_out(&CAMERA_BOARD_AND_BODY);
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn two_camera_boards() {
    try_out(&TWO_CAMERA_BOARDS);
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn surround_mats() {
    try_out(&SURROUND_MATS);
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn height_follows_the_sensor() {
    try_out(&HEIGHT_FOLLOWS_THE_SENSOR);
}

/// Half a minute of rendering on one core: run with `--ignored`, as the continuous checks do.
#[test]
#[ignore = "renders as many photos again"]
fn right_stands_are_within() {
    for case in [
        &RADAR_PLATE,
        &RADAR_PLATE_IN_TWO_TILTS,
        &CORNER_REFLECTOR,
        &CAMERA_BOARD,
        &CAMERA_BOARD_AND_BODY,
        &TWO_CAMERA_BOARDS,
        &SURROUND_MATS,
        &HEIGHT_FOLLOWS_THE_SENSOR,
    ] {
        let right = verify(&staged(case, NONE));
        let fine = matches!(right.verdict, Verdict::Within | Verdict::NotProven);
        assert!(fine, "{}: {:?} {:?}", case.setup, right.reason, codes(&right));
        assert!(not_proven(&right) <= right.checks.len() / 3, "{}: {:?}", case.setup, right.reason);
    }
}
