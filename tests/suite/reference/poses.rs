//! Poses of a solid and a flat body, each in two photos through a lens with
//! distortion, against OpenCV's solvePnP on the same corners.
//!
//! One body and no unknowns but poses: the adjustment of two photos then is
//! two separate least-squares problems, and each photo's pose against the body
//! is what solvePnP finds from that photo alone. Corners are exact: the
//! adjustment always keeps a small edge offset free, which would take a share
//! of any noise that solvePnP puts into the pose.

use baywitness::camera::Profile;
use baywitness::marker::{Carrier, Kit, Marker, Role};
use baywitness::pose::{Options, PhotoView, Problem, View, adjust};
use nalgebra::{Matrix3, SMatrix, Vector2, Vector3};
use serde_json::{Value, json};

use super::harness::answer;
use crate::sampled_bay::{self, Bay};

/// Largest deviations allowed: both iterate to their own end, so the last
/// digits differ.
const MOST_MM: f64 = 1e-3;
const MOST_RAD: f64 = 1e-6;
/// 1 sigma that the corners state; they carry none.
const U_CORNER_PX: f64 = 0.1;

/// Nothing is unknown but the poses: every prior is as good as exact.
fn exact() -> Bay {
    Bay { u_layout_mm: 1e-9, u_scale: 0.0, u_focal: 0.0, u_centre_px: 0.0, ..Bay::default() }
}

fn kit(markers: Vec<Marker>) -> Kit {
    let mut kit = sampled_bay::kit(&exact());
    kit.carriers.truncate(1);
    kit.carriers[0] =
        Carrier { name: "body".into(), role: Role::Target, on_centreline: false, markers, ..kit.carriers[0].clone() };
    kit
}

fn photo(kit: &Kit, camera: &Profile, eye: Vector3<f64>) -> PhotoView {
    let stand = sampled_bay::look(eye, Vector3::new(0.0, 30.0, 20.0));
    let views = kit.carriers[0].markers.iter().enumerate().filter_map(|(m, marker)| {
        if (eye - marker.centre_mm).normalize().dot(&marker.normal()) < 0.25 {
            return None;
        }
        let corner = |p| Some(camera.lens.project(&stand.point(p).coords)?.pixel);
        let corners: Option<Vec<Vector2<f64>>> = marker.corners_mm().iter().map(corner).collect();
        let corners = corners?;
        Some(View {
            id: marker.id,
            carrier: 0,
            marker: m,
            corners_px: [corners[0], corners[1], corners[2], corners[3]],
            valid: [true; 4],
            covariance_px2: SMatrix::identity() * U_CORNER_PX.powi(2),
        })
    });
    PhotoView { camera: 0, views: views.collect(), u_edge_offset_px: 0.0, u_edge_by_size_px: 0.0 }
}

fn case(kit: &Kit, camera: &Profile, photo: &PhotoView) -> Value {
    let points: Vec<[f64; 3]> = photo
        .views
        .iter()
        .flat_map(|v| kit.carriers[0].markers[v.marker].corners_mm())
        .map(|p| p.coords.into())
        .collect();
    let pixels: Vec<[f64; 2]> = photo.views.iter().flat_map(|v| v.corners_px).map(Into::into).collect();
    json!({ "focal_px": camera.lens.focal_px, "centre_px": camera.lens.centre_px,
            "distortion": camera.lens.distortion, "points_mm": points, "pixels": pixels })
}

#[test]
fn poses_agree_with_solve_pnp() {
    let camera = sampled_bay::camera(&exact());
    let solid = sampled_bay::kit(&exact()).carriers[0].markers.clone();
    let flat: Vec<Marker> = solid.iter().take(4).cloned().collect();
    let eyes = [[2600.0, 1500.0, 700.0], [2300.0, -1700.0, 500.0], [3900.0, 900.0, 900.0], [1500.0, -1200.0, -200.0]];
    let (mut ours, mut cases) = (Vec::new(), Vec::new());
    for markers in [solid, flat] {
        let kit = kit(markers);
        for pair in eyes.chunks(2) {
            let photos: Vec<PhotoView> = pair.iter().map(|eye| photo(&kit, &camera, Vector3::from(*eye))).collect();
            assert!(photos.iter().all(|p| p.views.len() >= 4));
            cases.extend(photos.iter().map(|p| case(&kit, &camera, p)));
            let problem = Problem { kit: &kit, cameras: vec![&camera], photos };
            let scene = adjust(&problem, &Options { one_floor: true, drop_corners: false }).unwrap();
            let body = scene.carriers[0].unwrap();
            ours.extend(scene.photos.iter().map(|p| p.as_ref().unwrap().camera_from_world * body));
        }
    }
    let Some(answer) = answer("poses.py", &["cv2", "numpy"], &json!({ "cases": cases })) else { return };
    let theirs: Vec<[[f64; 4]; 3]> = serde_json::from_value(answer["poses"].clone()).unwrap();
    assert_eq!(theirs.len(), ours.len());
    for (i, (ours, theirs)) in ours.iter().zip(&theirs).enumerate() {
        let shift = Vector3::new(theirs[0][3], theirs[1][3], theirs[2][3]);
        let turn = Matrix3::from_fn(|r, c| theirs[r][c]);
        let (mm, rad) = ((ours.origin_mm() - shift).norm(), (ours.matrix() - turn).norm());
        let kind = if i < 4 { "solid" } else { "flat" };
        println!("{kind} body, photo {i}: {mm:.1e} mm, {rad:.1e} rad from OpenCV {}", answer["opencv"]);
        assert!(mm < MOST_MM && rad < MOST_RAD, "{kind} body, photo {i}: {mm} mm, {rad} rad");
    }
}
