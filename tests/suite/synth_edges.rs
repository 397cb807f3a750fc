//! The renderer's light against the projected geometry: edges stand where the
//! lens puts them, pixels are covered by their exact share, and the centre of
//! the top-left pixel is (0, 0).
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

use crate::synth_support::{bare, camera};
use baywitness::synth::{LinearPicture, PhotoSpec, Scene, SeenMarker};
use nalgebra::{Point3, Vector2};

fn green(picture: &LinearPicture, u: usize, v: usize) -> f64 {
    f64::from(picture.rgb[v * picture.width + u][1])
}

/// The stand two metres high: nothing is near enough to take light away.
pub(crate) fn high_stand(mut scene: Scene) -> Scene {
    scene.setup.checks.retain(|c| c.quantity.name() != "height");
    scene.spec.stand.height_mm = 2000.0;
    scene
}

/// A camera that looks squarely at the middle of the stand.
fn square_on() -> Scene {
    high_stand(bare(camera([0.0; 5]), [8000.3, 0.4, 2000.7], [0.0, 0.4, 2000.7]))
}

#[test]
fn an_upright_edge_covers_its_pixel_by_the_exact_share() {
    let scene = square_on();
    let picture = scene.render_linear(0).unwrap();
    let seen = scene.corners(0);
    let mut checked = 0;
    for marker in seen.iter().filter(|m| m.id < 6) {
        let [top_left, top_right, _, bottom_left] = marker.corners_px;
        assert!((top_left[0] - bottom_left[0]).abs() < 1e-6, "the camera looks squarely at the stand");
        let cell = (top_right[0] - top_left[0]) / 8.0;
        let v = (0.5 * (top_left[1] + bottom_left[1])).round() as usize;
        let at = top_left[0];
        let edge_pixel = at.round() as usize;
        let white = green(&picture, (at - 0.6 * cell).round() as usize, v);
        let black = green(&picture, (at + 0.5 * cell).round() as usize, v);
        let share = (green(&picture, edge_pixel, v) - white) / (black - white);
        // The pixel reaches from -0.5 to +0.5 about its whole number.
        let wanted = edge_pixel as f64 + 0.5 - at;
        assert!((share - wanted).abs() < 2e-4, "marker {}: {share} against {wanted}", marker.id);
        checked += 1;
    }
    assert_eq!(checked, 6);
}

#[test]
fn every_edge_of_every_marker_stands_where_the_lens_puts_it() {
    let distortion = [0.08, -0.2, 0.0006, -0.0004, 0.11];
    let mut worst = 0.0f64;
    let mut squares = Vec::new();
    for (eye, at) in
        [([6900.0, 1900.0, 2600.0], [4500.0, 300.0, 1900.0]), ([6400.0, -2300.0, 2300.0], [4500.0, 0.0, 1900.0])]
    {
        for miss in edge_misses(&high_stand(bare(camera(distortion), eye, at))) {
            worst = worst.max(miss.abs());
            squares.push(miss * miss);
        }
    }
    let rms = (squares.iter().sum::<f64>() / squares.len() as f64).sqrt();
    assert!(squares.len() > 40, "{} edges", squares.len());
    println!("{} edges: RMS {rms:.5} px, worst {worst:.5} px", squares.len());
    assert!(worst < 0.01, "worst {worst} px, RMS {rms} px over {} edges", squares.len());
    assert!(rms < 0.003, "RMS {rms} px");
}

/// How far the edges of a scene's first photo lie from where they are projected to, px.
pub(crate) fn edge_misses(scene: &Scene) -> Vec<f64> {
    let picture = scene.render_linear(0).unwrap();
    let mut all = Vec::new();
    for marker in scene.corners(0).iter().filter(|m| m.visible > 0.999 && m.side_px > 40.0 && m.tilt_deg < 60.0) {
        for side in 0..4 {
            let Some(miss) = edge_miss(scene, &picture, marker, side) else { continue };
            if miss.abs() > 0.004 {
                println!(
                    "id {} side {side} miss {miss:.4} tilt {:.0} px {:.0}",
                    marker.id, marker.tilt_deg, marker.side_px
                );
            }
            all.push(miss);
        }
    }
    all
}

/// How far the light's own edge lies from the projected one, along the grid
/// line (row or column) that crosses the side most squarely, px.
fn edge_miss(scene: &Scene, picture: &LinearPicture, marker: &SeenMarker, side: usize) -> Option<f64> {
    let view = scene.view(0)?;
    let placement = scene.placement(0)?;
    let corners = placement.markers().find(|m| m.id == marker.id)?.corners_mm();
    let along = |t: f64| view.project(&Point3::from(corners[side].coords.lerp(&corners[(side + 1) % 4].coords, t)));
    let (p, q) = (along(0.0)?, along(1.0)?);
    let upright = (q - p).y.abs() > (q - p).x.abs();
    let (line, across) = if upright { (1, 0) } else { (0, 1) };
    let middle = along(0.5)?;
    let grid = middle[line].round();
    let exact = crossing(&along, line, grid)?[across];
    let next =
        view.project(&Point3::from(corners[(side + 2) % 4].coords.lerp(&corners[(side + 3) % 4].coords, 0.5)))?;
    let cell = (next - middle)[across].abs() / 8.0;
    if cell < 5.0 || (q - p)[line].abs() < 1.3 * (q - p)[across].abs() {
        return None;
    }
    let inwards = (next - middle)[across].signum();
    let value = |i: f64| {
        let at = if upright { Vector2::new(i, grid) } else { Vector2::new(grid, i) };
        let inside = at.x >= 0.0 && at.y >= 0.0 && at.x < picture.width as f64 && at.y < picture.height as f64;
        inside.then(|| green(picture, at.x as usize, at.y as usize))
    };
    let (first, last) = ((exact - inwards * 0.55 * cell).round(), (exact + inwards * 0.55 * cell).round());
    let (white, black) = (value(first)?, value(last)?);
    // Sum of the white share from the white end to the black end is the edge's distance.
    let steps = (last - first).abs() as i32;
    let mut sum = 0.0;
    for step in 0..=steps {
        sum += (value(first + inwards * f64::from(step))? - black) / (white - black);
    }
    let found = first + inwards * (sum - 0.5);
    Some((found - exact) * inwards)
}

/// The point of a projected side where it crosses a row or column.
fn crossing(along: &impl Fn(f64) -> Option<Vector2<f64>>, line: usize, grid: f64) -> Option<Vector2<f64>> {
    let (mut low, mut high) = (0.2, 0.8);
    let rising = along(high)?[line] > along(low)?[line];
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if (along(middle)?[line] < grid) == rising { low = middle } else { high = middle }
    }
    along(low)
}

#[test]
fn a_picture_of_half_the_size_shows_the_same_at_half_the_place() {
    // (u + 0.5) scales, not u: the grid's edge, not its first pixel's centre, stays.
    let scene = bare(camera([0.05, -0.1, 0.0, 0.0, 0.0]), [6900.0, 1900.0, 1500.0], [4300.0, 300.0, 800.0]);
    let full = scene.corners(0);
    let half = scene.with_scale(0.5).corners(0);
    let mut compared = 0;
    for marker in &full {
        let Some(other) = half.iter().find(|m| m.id == marker.id) else { continue };
        for (a, b) in marker.corners_px.iter().flatten().zip(other.corners_px.iter().flatten()) {
            assert!(((a + 0.5) * 0.5 - 0.5 - b).abs() < 1e-9);
            compared += 1;
        }
    }
    assert!(compared > 80);
}

#[test]
fn corners_equal_the_kit_file_projected_through_the_lens() {
    let scene = bare(camera([0.08, -0.2, 0.0006, -0.0004, 0.11]), [6900.0, 1900.0, 1500.0], [4300.0, 300.0, 800.0]);
    let (view, placement) = (scene.view(0).unwrap(), scene.placement(0).unwrap());
    for seen in scene.corners(0) {
        let (index, marker) = scene.kit.marker(seen.id).unwrap();
        let carrier = placement.carriers.iter().find(|c| c.index == index).unwrap();
        for (corner, pixel) in marker.corners_mm().iter().zip(seen.corners_px) {
            let in_camera = (view.camera_from_world * carrier.pose).point(corner);
            let projected = scene.camera.lens.project(&in_camera.coords).unwrap().pixel;
            assert!((projected - Vector2::from(pixel)).norm() < 1e-8);
        }
    }
}

#[test]
fn what_hides_a_marker_is_in_its_visible_share() {
    use baywitness::synth::{ClutterKind, ClutterSpec, Stray};
    let mut scene = bare(camera([0.0; 5]), [9000.0, 0.0, 1500.0], [0.0, 0.0, 1500.0]);
    scene.spec.photo = Some(vec![PhotoSpec::new("a.jpg", [9000.0, -2000.0, 1500.0], [0.0, -2000.0, 1500.0])]);
    scene.spec.stray = vec![Stray { id: 300, size_mm: 200.0, at_mm: [6000.0, -2000.0, 1500.0], yaw_deg: 0.0 }];
    // A box before the half of the marker that lies to the camera's right (+y), close to it.
    scene.spec.clutter = Some(vec![ClutterSpec {
        kind: ClutterKind::Box,
        at_mm: [6060.0, -1750.0, 1000.0],
        yaw_deg: 0.0,
        size_mm: [20.0, 500.0, 1000.0],
        colour: None,
        text: String::new(),
    }]);
    let seen = scene.corners(0);
    let marker = seen.iter().find(|m| m.id == 300).unwrap();
    assert!((marker.visible - 0.5).abs() < 1e-9, "{}", marker.visible);
    assert_eq!(marker.corners_visible, [true, false, false, true]);
}
