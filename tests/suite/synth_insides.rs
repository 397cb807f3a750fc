//! A phone's insides in the renderer: off they change no byte, on they are the
//! same bytes whatever the threads, and corners stand where their rows see them.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

use crate::staged;
use crate::synth_edges::{edge_misses, high_stand};
use crate::synth_support::{bare, camera};
use baywitness::marker::Role;
use baywitness::synth::{
    Denoise, InsidesSpec, KitErrors, LinearPicture, OpeningSpec, Preset, Scene, SeenMarker, Strength,
};
use nalgebra::{Matrix3, Point3, Vector3};

fn small(preset: Preset) -> Scene {
    let mut scene = staged::scene(0.1);
    scene.spec.insides = InsidesSpec::preset(preset);
    scene
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn plain_insides_change_nothing_and_every_other_preset_something() {
    let light = small(Preset::Plain).render_linear(0).unwrap();
    let plain = staged::scene(0.1).render_photo(0).unwrap();
    assert!(plain == small(Preset::Plain).render_photo(0).unwrap());
    let rgb = |preset| match preset {
        Preset::Rolling => small(preset).render_photo(0).unwrap(),
        _ => small(preset).develop(0, &light).unwrap(),
    };
    for preset in Preset::ALL.into_iter().skip(1).filter(|p| *p != Preset::Jpeg75) {
        let other = rgb(preset);
        let differ = plain.rgb.iter().zip(&other.rgb).filter(|(a, b)| a != b).count();
        println!("{}: {:.0} % of the pixels differ", preset.name(), 100.0 * differ as f64 / plain.rgb.len() as f64);
        assert!(differ > plain.rgb.len() / 100, "{}: {differ}", preset.name());
    }
    assert_eq!(small(Preset::Jpeg75).insides().jpeg_quality, Some(75));
}

#[test]
fn strengths_are_drawn_from_the_seed_within_their_range() {
    let of = |seed| {
        let mut scene = small(Preset::Night).with_seed(seed);
        scene.spec.insides.denoise = Some(Denoise::Bilateral);
        scene.spec.insides.fringes = Some(Strength::Between([1e-4, 2e-4]));
        scene.insides()
    };
    assert_eq!(of(4), of(4));
    let all: Vec<_> = (0..40).map(of).collect();
    assert!(all.iter().all(|i| (1e-4..=2e-4).contains(&i.fringes) && i.denoise == Denoise::Bilateral && i.mosaic));
    let mean = all.iter().map(|i| i.fringes).sum::<f64>() / 40.0;
    // Four standard errors of an even draw.
    assert!((mean - 1.5e-4).abs() < 4.0 * 1e-4 / (12.0f64 * 40.0).sqrt(), "{mean}");
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn light_traced_once_is_developed_as_if_it_were_traced_each_time() {
    let light = small(Preset::Plain).render_linear(1).unwrap();
    for preset in [Preset::Plain, Preset::Denoise, Preset::Hdr] {
        let scene = small(preset);
        assert!(scene.develop(1, &light) == scene.render_photo(1), "{}", preset.name());
    }
    let (a, b) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let mut scene = small(Preset::Jpeg75);
    scene.scale = 0.5;
    let light = scene.render_linear(1).unwrap();
    let first = scene.render_linear(0).unwrap();
    scene.stage(a.path(), &mut |_| ()).unwrap();
    scene.stage_lit(b.path(), &[first, light], &mut |_| ()).unwrap();
    for name in ["photos/a.jpg", "photos/b.jpg", "truth.json", "job.toml"] {
        assert!(std::fs::read(a.path().join(name)).unwrap() == std::fs::read(b.path().join(name)).unwrap(), "{name}");
    }
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_night_photo_has_the_same_bytes_whatever_the_threads() {
    let scene = small(Preset::Night);
    let pool = |n: usize| rayon::ThreadPoolBuilder::new().num_threads(n).build().unwrap();
    let one = pool(1).install(|| scene.render_photo(0).unwrap());
    let three = pool(3).install(|| scene.render_photo(0).unwrap());
    assert!(one == three);
}

/// Far faster than any hand: a skew of 13 px over the picture.
const FAST_DEG_S: [f64; 3] = [9.0, -14.0, 8.0];
const READOUT_S: f64 = 0.035;

/// A bay with its stand high up, before a lens with distortion.
fn turning(rate: [f64; 3], orientation: u16) -> Scene {
    let distortion = [0.08, -0.2, 0.0006, -0.0004, 0.11];
    let mut scene = high_stand(bare(camera(distortion), [6900.0, 1900.0, 2600.0], [4500.0, 300.0, 1900.0]));
    let mut photos = scene.photos();
    photos[0].turn_deg_s = Some(rate);
    photos[0].readout_s = Some(READOUT_S);
    photos[0].orientation = orientation;
    scene.spec.photo = Some(photos);
    scene
}

/// A rotation vector's matrix by its power series: nothing of the renderer's own.
fn matrix(turn: Vector3<f64>) -> Matrix3<f64> {
    let x = Matrix3::new(0.0, -turn.z, turn.y, turn.z, 0.0, -turn.x, -turn.y, turn.x, 0.0);
    Matrix3::identity() + x + x * x / 2.0 + x * x * x / 6.0 + x * x * x * x / 24.0
}

#[test]
fn a_corner_is_where_its_own_row_sees_it() {
    for orientation in [1, 6] {
        let scene = turning(FAST_DEG_S, orientation);
        let (view, placement) = (scene.view(0).unwrap(), scene.placement(0).unwrap());
        let still_hand = turning([0.0; 3], orientation);
        let (still, without) = (still_hand.view(0).unwrap(), still_hand.corners(0));
        let mut moved = 0.0f64;
        for seen in scene.corners(0) {
            let marker = placement.markers().find(|m| m.id == seen.id).unwrap();
            for (k, (corner, pixel)) in marker.corners_mm().iter().zip(seen.corners_px).enumerate() {
                // The moment of the corner's row of 1200, the middle one being zero.
                let t = (pixel[1] / 1199.0 - 0.5) * READOUT_S;
                let turn = matrix(Vector3::from(FAST_DEG_S.map(f64::to_radians)) * t);
                let middle = still.camera_from_world.point(corner).coords;
                let then = turn.transpose() * middle;
                let expected = scene.camera.lens.project(&then).unwrap().pixel;
                assert!((expected.x - pixel[0]).hypot(expected.y - pixel[1]) < 1e-6, "{pixel:?} {expected}");
                let before = without.iter().find(|m| m.id == seen.id).unwrap().corners_px[k];
                moved = moved.max((before[0] - pixel[0]).hypot(before[1] - pixel[1]));
            }
        }
        println!("corners are up to {moved:.1} px off those of a still hand");
        assert!(moved > 3.0 && view.turning.is_some());
    }
}

#[test]
fn rows_read_in_turn_show_edges_where_the_truth_says() {
    let scene = turning(FAST_DEG_S, 1);
    let misses = edge_misses(&scene);
    let rms = (misses.iter().map(|m| m * m).sum::<f64>() / misses.len() as f64).sqrt();
    let worst = misses.iter().fold(0.0f64, |a, m| a.max(m.abs()));
    println!("{} edges: RMS {rms:.5} px, worst {worst:.5} px", misses.len());
    assert!(misses.len() > 20 && worst < 0.01 && rms < 0.003, "{worst} {rms}");
    let truth = serde_json::to_value(scene.truth()).unwrap();
    assert_eq!(truth["photos"][0]["turning"]["readout_s"], READOUT_S);
    let rate: [f64; 3] = serde_json::from_value(truth["photos"][0]["turning"]["rate_deg_s"].clone()).unwrap();
    assert!(rate.iter().zip(FAST_DEG_S).all(|(a, b)| (a - b).abs() < 1e-9));
    let still = serde_json::to_value(turning([0.0; 3], 1).truth()).unwrap();
    assert!(still["photos"][0].get("turning").is_none());
}

#[test]
fn the_stabiliser_moves_every_corner_alike() {
    let scene = turning([0.0; 3], 1);
    let mut moved = scene.clone();
    let mut photos = moved.photos();
    photos[0].stabiliser_shift_px = Some([4.0, -7.5]);
    moved.spec.photo = Some(photos);
    let (before, after) = (scene.corners(0), moved.corners(0));
    assert!(before.len() > 6);
    for (a, b) in before.iter().zip(&after) {
        for (p, q) in a.corners_px.iter().zip(b.corners_px) {
            assert!((q[0] - p[0] - 4.0).abs() < 1e-9 && (q[1] - p[1] + 7.5).abs() < 1e-9);
        }
    }
}

/// What a corner that is off its place in the print does to the picture's edges and to the truth.
#[test]
fn blotchy_prints_move_each_corner_and_their_edges_with_it() {
    let mut scene = turning([0.0; 3], 1);
    let before = scene.placement(0).unwrap();
    scene.spec.kit_errors = KitErrors {
        layout_mm: Some(0.0),
        scale_relative: Some(0.0),
        seating_mm: Some(0.0),
        seating_deg: Some(0.0),
        print_noise_mm: 0.5,
        print_wave_mm: 0.0,
        exact: false,
    };
    let after = scene.placement(0).unwrap();
    let mut squares = Vec::new();
    for (a, b) in before.markers().zip(after.markers()) {
        for (p, q) in a.corners_mm().iter().zip(b.corners_mm()) {
            let step: Vector3<f64> = q - Point3::from(p.coords);
            assert!(step.dot(&a.normal()).abs() < 1e-9, "corners stay in the paper's plane");
            squares.push(step.norm_squared() / 2.0);
        }
    }
    let rms = (squares.iter().sum::<f64>() / squares.len() as f64).sqrt();
    // Four standard errors of that many draws of two coordinates.
    assert!((rms / 0.5 - 1.0).abs() < 4.0 / (4.0 * squares.len() as f64).sqrt(), "{rms} of {}", squares.len());
    let misses = edge_misses(&scene);
    let worst = misses.iter().fold(0.0f64, |a, m| a.max(m.abs()));
    println!("{} edges of blotchy prints: worst {worst:.5} px", misses.len());
    assert!(misses.len() > 20 && worst < 0.01, "{worst}");
}

/// Waves carry edges about as far as is stated, each elsewhere, and leave the square that is the truth where it was.
#[test]
fn waves_in_prints_carry_edges_but_no_corner() {
    let mut scene = turning([0.0; 3], 1);
    let rms = |misses: &[f64]| (misses.iter().map(|m| m * m).sum::<f64>() / misses.len() as f64).sqrt();
    scene.spec.kit_errors = KitErrors { exact: true, ..KitErrors::default() };
    let (still, flat) = (scene.corners(0), rms(&edge_misses(&scene)));
    let off = Some(0.0);
    scene.spec.kit_errors = KitErrors {
        layout_mm: off,
        scale_relative: off,
        seating_mm: off,
        seating_deg: off,
        print_wave_mm: 0.4,
        ..KitErrors::default()
    };
    let size_mm = |id: u32| scene.kit.marker(id).unwrap().1.size_mm[0];
    let px_by_mm: Vec<f64> = still.iter().map(|m| m.side_px / size_mm(m.id)).collect();
    let wavy = edge_misses(&scene);
    let expected = 0.4 * rms(&px_by_mm);
    println!("{} edges: {flat:.4} px flat, {:.4} px wavy, {expected:.4} px as seen from ahead", wavy.len(), rms(&wavy));
    assert!(flat < 0.01 && (0.3..1.6).contains(&(rms(&wavy) / expected)), "{} of {expected}", rms(&wavy));
    let corners =
        |seen: &[SeenMarker]| seen.iter().map(|m| m.corners_px.map(|c| c.map(f64::to_bits))).collect::<Vec<_>>();
    assert_eq!(corners(&still), corners(&scene.corners(0)));
}

/// Light on the white margin beside a marker's first corner.
fn brightness(picture: &LinearPicture, seen: &SeenMarker) -> Option<f64> {
    let [u, v] = [0, 1].map(|i| (seen.corners_px[0][i] * 1.03 - seen.corners_px[2][i] * 0.03).round() as usize);
    (u < picture.width && v < picture.height).then(|| f64::from(picture.rgb[v * picture.width + u][1]))
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn light_from_a_door_is_stronger_beside_it() {
    // Looking back at the vehicle: its left is in the picture's right half.
    let scene = bare(camera([0.0; 5]), [7600.0, 0.0, 1700.0], [3500.0, 0.0, 700.0]);
    let mut scene = scene.with_scale(0.5);
    scene.spec.room.sides_mm = [4000.0, 4000.0];
    let seen: Vec<SeenMarker> = scene.corners(0).into_iter().filter(|m| m.visible > 0.99).collect();
    let floor: Vec<usize> = scene.kit.with_role(Role::Floor).collect();
    let placement = scene.placement(0).unwrap();
    let sheet_y = |id: u32| {
        placement
            .carriers
            .iter()
            .find(|c| floor.contains(&c.index) && c.markers.iter().any(|m| m.id == id))
            .map(|c| c.pose.origin_mm().y)
    };
    let door = |facing: f64, y: f64| OpeningSpec {
        at_mm: [5000.0, y, 1300.0],
        size_mm: [3000.0, 2600.0],
        facing_deg: facing,
        colour: [1.0; 3],
    };
    let ratio = |scene: &Scene| {
        let picture = scene.render_linear(0).unwrap();
        let side = |left: bool| {
            let beside = seen.iter().filter(|m| sheet_y(m.id).is_some_and(|y| (y > 0.0) == left));
            beside.filter_map(|m| brightness(&picture, m)).fold(0.0f64, f64::max)
        };
        side(true) / side(false)
    };
    scene.spec.opening = vec![door(-90.0, 3990.0)];
    let left = ratio(&scene);
    scene.spec.opening = vec![door(90.0, -3990.0)];
    let right = ratio(&scene);
    println!("left over right: {left:.2} by the left door, {right:.2} by the right one");
    assert!(left > 1.3 && right < 1.0 / 1.3, "{left} {right}");
}
