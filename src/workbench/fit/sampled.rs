//! Sampled boards with a known lens: what a fit states against what is true.

use nalgebra::{DVector, Rotation3, SMatrix, UnitQuaternion, Vector2, Vector3};
use rand::rngs::ChaCha8Rng;
use rand::{RngExt, SeedableRng};

use super::seen::BoardPhoto;
use super::state::parameters;
use super::target::{FLEXES, Target};
use super::{CameraFit, Error, Options, fit_camera};
use crate::camera::{Lens, LensModel};
use crate::detect::{Sighting, Sightings};
use crate::geom::{Camera, Carrier, Pose};
use crate::marker::{Board, BoardKind};
use crate::num::normal_quantile;
use crate::photo::Exif;
use crate::words::Language;

const SIZE: [u32; 2] = [4000, 3000];
const NOISE_PX: f64 = 0.03;
/// Processor time for 50 photos of 108 corners, s; 0.4 to 0.5 are found.
const MOST_SECONDS: f64 = 1.5;

fn board() -> Board {
    Board {
        kind: BoardKind::Markers { columns: 5, rows: 4, first_id: 20, size_mm: 60.0, gap_mm: 20.0 },
        u_scale_relative: 5e-4,
    }
}

fn lens(model: LensModel) -> Lens {
    let distortion = match model {
        LensModel::BrownConrady => [0.08, -0.2, 4e-4, -3e-4, 0.11],
        LensModel::KannalaBrandt => [-0.02, 0.01, -0.004, 0.001, 0.0],
    };
    let f = if model == LensModel::BrownConrady { 3050.0 } else { 1700.0 };
    Lens { model, focal_px: [f, f * 0.9997], centre_px: [2011.0, 1492.0], distortion }
}

/// A sampled session: how photos differ, and how they are taken.
struct Session {
    rng: ChaCha8Rng,
    model: LensModel,
    u_focal: f64,
    u_centre: f64,
    /// How far the camera turns about each axis while rows are read, rad.
    u_turn: f64,
    /// How far the board turns out of the picture plane, rad.
    tilt: f64,
}

impl Session {
    fn new(seed: u64, model: LensModel) -> Self {
        Session { rng: ChaCha8Rng::seed_from_u64(seed), model, u_focal: 1e-3, u_centre: 2.0, u_turn: 0.0, tilt: 0.6 }
    }

    fn normal(&mut self) -> f64 {
        normal_quantile(self.rng.random_range(1e-12..1.0))
    }

    /// The board in photo `i`: near a different part of the frame each time.
    fn pose(&mut self, i: usize, lens: &Lens) -> Pose<Camera, Carrier> {
        let angle = |r: &mut ChaCha8Rng, size: f64| r.random_range(-size..size);
        let turn = if i.is_multiple_of(3) { 1.57 } else { 0.0 };
        let tilt = self.tilt;
        // Board z towards the camera, x right: half a turn about the camera's x.
        let rotation = UnitQuaternion::from_euler_angles(angle(&mut self.rng, tilt), angle(&mut self.rng, tilt), turn)
            * UnitQuaternion::from_euler_angles(std::f64::consts::PI, 0.0, 0.0);
        let place = Vector2::new([0.25, 0.75, 0.5][i % 3] * 4000.0, [0.25, 0.75, 0.75, 0.25, 0.5][i % 5] * 3000.0);
        let ray = lens.ray(&place).unwrap();
        let far = lens.focal_px[0] * 0.2 * (1.0 + 0.3 * self.rng.random_range(0.0..1.0));
        Pose::new(rotation, ray * far)
    }

    fn photos(&mut self, count: usize) -> Vec<BoardPhoto> {
        let mean = lens(self.model);
        let target = Target::new(&board());
        let shape: Vec<f64> = (0..target.unknowns()).map(|_| self.normal()).collect();
        (0..count)
            .map(|i| {
                let mut own = mean;
                let (df, du, dv) = (self.normal(), self.normal(), self.normal());
                own.focal_px = own.focal_px.map(|f| f * (1.0 + self.u_focal * df));
                own.centre_px = [own.centre_px[0] + self.u_centre * du, own.centre_px[1] + self.u_centre * dv];
                let pose = self.pose(i, &mean);
                self.photo(i, &own, &pose, &target, &shape)
            })
            .collect()
    }

    /// Photos of a chessboard, whole in each.
    fn chessboards(&mut self, board: &Board, count: usize) -> Vec<BoardPhoto> {
        let mean = lens(self.model);
        let target = Target::new(board);
        let unknowns: Vec<f64> = (0..target.unknowns()).map(|_| self.normal()).collect();
        let shape = target.shape(&unknowns, &[0.0; FLEXES]);
        let mut photos = Vec::new();
        for i in 0.. {
            let mut own = mean;
            let df = self.normal();
            own.focal_px = own.focal_px.map(|f| f * (1.0 + self.u_focal * df));
            own.centre_px = own.centre_px.map(|c| c + self.u_centre * self.normal());
            let pose = self.pose(i, &mean);
            let inside = |p: &Vector2<f64>| (0..2).all(|a| p[a] > 0.0 && p[a] < f64::from(SIZE[a]) - 1.0);
            let corner = |s: usize| own.project(&pose.point(&shape.place(s, 0)).coords).map(|q| q.pixel);
            let exact: Option<Vec<_>> = (0..target.spots.len()).map(|s| corner(s).filter(inside)).collect();
            if let Some(exact) = exact {
                let found: Vec<_> =
                    exact.iter().map(|p| p + Vector2::new(self.normal(), self.normal()) * NOISE_PX).collect();
                photos.push(BoardPhoto::of_corners(&format!("{i}.jpg"), SIZE, Exif::default(), &found));
            }
            if photos.len() == count {
                break;
            }
        }
        photos
    }

    fn photo(
        &mut self,
        i: usize,
        own: &Lens,
        pose: &Pose<Camera, Carrier>,
        target: &Target,
        unknowns: &[f64],
    ) -> BoardPhoto {
        let shape = target.shape(unknowns, &[0.0; FLEXES]);
        let mut markers = Vec::new();
        // A still hand draws nothing: sessions stay as they were.
        let turn = Vector3::from_fn(|_, _| if self.u_turn > 0.0 { self.u_turn * self.normal() } else { 0.0 });
        for (s, spot) in target.spots.iter().enumerate() {
            let corner = |k: usize| {
                let point = pose.point(&shape.place(s, k));
                let still = own.project(&point.coords)?.pixel;
                // Its row sees it as the camera stood when that was read.
                let moment = still.y / f64::from(SIZE[1]) - 0.5;
                let pixel = own.project(&(Rotation3::new(turn * moment) * point.coords))?.pixel;
                let inside = (0..2).all(|a| pixel[a] > 0.0 && pixel[a] < f64::from(SIZE[a]) - 1.0);
                inside.then_some(pixel)
            };
            let Some(exact) = (0..4).map(corner).collect::<Option<Vec<_>>>() else { continue };
            markers.push(Sighting {
                id: spot.id,
                wrong_bits: 0,
                corners_px: std::array::from_fn(|k| exact[k] + Vector2::new(self.normal(), self.normal()) * NOISE_PX),
                corner_valid: [true; 4],
                covariance_px2: SMatrix::identity() * (NOISE_PX * NOISE_PX),
                contrast: 0.7,
                blur_px: 0.7,
                warp_px: None,
            });
        }
        let sightings =
            Sightings { markers, edge_offset_px: 0.0, u_edge_offset_px: 0.02, blur_px: 0.7, gain_spread: None };
        BoardPhoto::of_markers(&format!("{i}.jpg"), SIZE, Exif::default(), target, &sightings)
    }
}

fn fit(photos: &[BoardPhoto], model: LensModel) -> Result<CameraFit, Error> {
    fit_camera(&board(), photos, &Options { name: "sampled".to_owned(), model })
}

/// Mean over sessions of the squared error over its stated covariance, per parameter.
fn squared_error(model: LensModel, sessions: u64, u_turn: f64) -> f64 {
    let mut sum = 0.0;
    for seed in 0..sessions {
        let mut session = Session::new(seed, model);
        session.u_turn = u_turn;
        let fitted = fit(&session.photos(12), model).unwrap();
        let p = model.parameters();
        let (found, truth) = (parameters(&fitted.profile.lens), parameters(&lens(model)));
        let error = DVector::from_fn(p, |i, _| found[i] - truth[i]);
        let covariance = fitted.profile.covariance.unwrap();
        sum += error.dot(&covariance.cholesky().unwrap().solve(&error)) / p as f64;
    }
    sum / sessions as f64
}

#[test]
fn stated_covariance_holds_for_brown_conrady() {
    // Sum over 6 x 9: chi squared with 54 degrees of freedom has a sigma of
    // .19 per degree; sigmas that are themselves estimated widen it a little.
    let found = squared_error(LensModel::BrownConrady, 6, 0.0);
    assert!((0.4..1.8).contains(&found), "{found}");
}

#[test]
fn stated_covariance_holds_for_kannala_brandt() {
    let found = squared_error(LensModel::KannalaBrandt, 4, 0.0);
    assert!((0.4..1.8).contains(&found), "{found}");
}

/// A hand that turns by 1 deg/s during 20 ms: a pixel from the first row to the last.
#[test]
fn stated_covariance_holds_while_the_hand_turns() {
    let found = squared_error(LensModel::BrownConrady, 6, 0.02_f64.to_radians());
    assert!((0.4..1.8).contains(&found), "{found}");
}

#[test]
fn differences_between_photos_are_recovered() {
    // A sigma from n values is known to 1 / sqrt(2 n) of itself.
    let fitted = fit(&Session::new(99, LensModel::BrownConrady).photos(20), LensModel::BrownConrady).unwrap();
    let found = fitted.profile.per_photo;
    for (found, truth, degrees) in [
        (found.u_focal_relative, 1e-3, fitted.per_photo_degrees[0]),
        (found.u_centre_px, 2.0, fitted.per_photo_degrees[1]),
    ] {
        assert!(degrees > 8.0, "{degrees}");
        assert!((found / truth - 1.0).abs() < 3.0 / (2.0 * degrees).sqrt(), "{found} for {truth}");
    }
    assert!((fitted.noise_factor - 1.0).abs() < 0.1, "{}", fitted.noise_factor);
    let words = super::words(&fitted, Language::English);
    assert!(fitted.fit_for_use(), "{words}");
    assert!(super::page(&fitted, Language::English).contains("times their true length"));
}

#[test]
fn photos_that_look_alike_are_refused_with_the_remedy() {
    let mut session = Session::new(5, LensModel::BrownConrady);
    session.tilt = 0.03;
    match fit(&session.photos(8), LensModel::BrownConrady) {
        Ok(fitted) => {
            assert!(!fitted.fit_for_use());
            assert!(
                super::words(&fitted, Language::English).contains("look alike"),
                "{}",
                super::words(&fitted, Language::English)
            );
        }
        Err(e) => assert!(e.to_string().contains("tilted"), "{e}"),
    }
}

#[test]
fn strange_photos_are_named() {
    let mut session = Session::new(7, LensModel::BrownConrady);
    let mut photos = session.photos(12);
    let target = Target::new(&board());
    let mut zoomed = lens(LensModel::BrownConrady);
    zoomed.focal_px = zoomed.focal_px.map(|f| f * 1.06);
    let pose = session.pose(4, &zoomed);
    let shape = vec![0.0; target.unknowns()];
    photos.push(session.photo(90, &zoomed, &pose, &target, &shape));
    let mut smaller = photos[0].clone();
    smaller.size_px = [2000, 1500];
    smaller.file = "small.jpg".to_owned();
    photos.push(smaller);
    let fitted = fit(&photos, LensModel::BrownConrady).unwrap();
    let why = |file: &str| fitted.rejected.iter().find(|r| r.file == file).map(|r| r.why.say(Language::English));
    assert!(why("90.jpg").is_some_and(|w| w.contains("focal length")), "{:?}", fitted.rejected);
    assert!(why("small.jpg").is_some_and(|w| w.contains("2000 x 1500")), "{:?}", fitted.rejected);
    assert_eq!(fitted.rejected.len(), 2, "{:?}", fitted.rejected);
}

#[test]
fn photos_without_the_board_are_said_so() {
    let none = BoardPhoto::of_markers("a.jpg", SIZE, Exif::default(), &Target::new(&board()), &Sightings::default());
    let error = fit(&[none], LensModel::BrownConrady).unwrap_err();
    assert!(!error.unreadable());
    assert!(error.to_string().contains("a.jpg: no part of the board"), "{error}");
    assert!(fit(&[], LensModel::BrownConrady).is_err());
}

#[test]
fn the_wrong_lens_model_is_refused_and_the_other_one_named() {
    // A sampled wide lens that Kannala-Brandt describes and Brown-Conrady does not: its distortion grows
    // with the angle, and the photos reach 60 deg.
    let photos = Session::new(11, LensModel::KannalaBrandt).photos(16);
    let wrong = fit(&photos, LensModel::BrownConrady).unwrap();
    let words = super::words(&wrong, Language::English);
    assert!(!wrong.fit_for_use(), "{words}");
    assert!(words.contains("fit it with --model kannala-brandt"), "{words}");
    let right = fit(&photos, LensModel::KannalaBrandt).unwrap();
    assert!(
        right.fit_for_use() && !super::words(&right, Language::English).contains("fit it with"),
        "{}",
        super::words(&right, Language::English)
    );
    // The other way round the model bends to fit these photos, but not two halves of them alike.
    let photos = Session::new(12, LensModel::BrownConrady).photos(16);
    let wrong = fit(&photos, LensModel::KannalaBrandt).unwrap();
    assert!(!wrong.fit_for_use(), "{}", super::words(&wrong, Language::English));
    assert!(fit(&photos, LensModel::BrownConrady).unwrap().fit_for_use());
}

#[test]
fn good_fits_stay_fit_for_use() {
    // One in twenty good fits has halves that "disagree" by chance: it is no reason to refuse it.
    for seed in 0..8 {
        let fitted =
            fit(&Session::new(200 + seed, LensModel::BrownConrady).photos(12), LensModel::BrownConrady).unwrap();
        assert!(fitted.fit_for_use(), "{seed}: {}", super::words(&fitted, Language::English));
    }
}

/// Processor time of all threads so far, s, as Linux states it.
fn processor_s() -> f64 {
    let thread = |task: std::fs::DirEntry| -> Option<f64> {
        let text = std::fs::read_to_string(task.path().join("schedstat")).ok()?;
        text.split_whitespace().next()?.parse::<f64>().ok()
    };
    let tasks = std::fs::read_dir("/proc/self/task").expect("a Linux system");
    tasks.filter_map(|task| thread(task.ok()?)).sum::<f64>() / 1e9
}

/// How long a fit takes grows with the number of photos, not with its square or cube.
#[test]
#[ignore = "measures time"]
fn fifty_photos_of_a_large_board_take_seconds() {
    let large =
        Board { kind: BoardKind::Chessboard { inner_corners: [12, 9], square_mm: 30.0 }, u_scale_relative: 5e-4 };
    let photos = Session::new(31, LensModel::BrownConrady).chessboards(&large, 50);
    let start = processor_s();
    let fitted =
        fit_camera(&large, &photos, &Options { name: "sampled".to_owned(), model: LensModel::BrownConrady }).unwrap();
    let seconds = processor_s() - start;
    assert_eq!(fitted.photos.len(), 50, "{:?}", fitted.rejected);
    let truth = parameters(&lens(LensModel::BrownConrady));
    for (i, found) in parameters(&fitted.profile.lens).into_iter().enumerate() {
        assert!((found - truth[i]).abs() < 4.0 * fitted.u_parameters[i], "{i}: {found} for {}", truth[i]);
    }
    assert!(seconds < MOST_SECONDS, "{seconds} s");
}
