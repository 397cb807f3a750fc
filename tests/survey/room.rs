//! Real photos of a room (skipped where `../shared/photos/real` is absent).
//! Nobody surveyed it: walls are flat and square, and halves must agree.

use std::path::{Path, PathBuf};

use baywitness::camera::{Lens, LensModel, PerPhoto, Profile};
use baywitness::marker::{Carrier, Marker, Rig, Role};
use baywitness::survey::{Options, Survey, SurveyPhoto, look, survey};
use nalgebra::{DMatrix, Vector3};

/// Neighbours along the walls.
const ROUND: [u32; 11] = [19, 13, 11, 0, 1, 2, 3, 4, 5, 6, 7];

fn photos() -> Option<Vec<PathBuf>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared/photos/real/room");
    if !folder.is_dir() {
        println!("skipped: {} is not here", folder.display());
        return None;
    }
    Some((1368..=1385).map(|n| folder.join(format!("IMG_{n}.JPG"))).collect())
}

/// The intrinsics that stand beside the photos, with what a phone's are worth.
fn camera() -> Profile {
    let u = [5.0, 5.0, 5.0, 5.0, 0.1, 0.2, 1e-3, 1e-3, 0.1];
    Profile {
        name: "room".into(),
        lens: Lens {
            model: LensModel::BrownConrady,
            focal_px: [765.0, 764.18],
            centre_px: [393.72, 304.66],
            distortion: [0.0; 5],
        },
        image_size_px: [816, 612],
        u_noise_px: None,
        covariance: Some(DMatrix::from_fn(9, 9, |i, j| if i == j { u[i] * u[i] } else { 0.0 })),
        per_photo: PerPhoto { u_focal_relative: 0.005, u_centre_px: 3.0 },
        exif: None,
    }
}

/// Nothing is known of the places: they stand in a row.
fn rig() -> Rig {
    let marker = |(i, id): (usize, &u32)| Marker {
        id: *id,
        size_mm: [127.0; 2],
        centre_mm: Vector3::new(0.0, 900.0 * i as f64, 0.0),
        right: Vector3::y(),
        up: Vector3::z(),
        u_centre_mm: None,
        u_size_mm: None,
    };
    let walls = Carrier {
        name: "walls".into(),
        role: Role::Target,
        u_seating_mm: 0.0,
        u_seating_deg: [0.0; 3],
        on_centreline: false,
        markers: ROUND.iter().enumerate().map(marker).collect(),
    };
    Rig {
        name: "room".into(),
        u_layout_mm: 0.3,
        u_scale_relative: 5e-4,
        serial: None,
        survey_due: None,
        carriers: vec![walls],
        layout: None,
    }
}

fn survey_of(photos: &[SurveyPhoto]) -> Survey {
    let options = Options { camera_named: true, ..Options::default() };
    survey(&rig(), &[camera()], photos, &options).unwrap()
}

fn marker(found: &Survey, id: u32) -> Option<&Marker> {
    let known = found.rig.layout.as_ref().is_some_and(|l| l.ids.contains(&id));
    found.rig.marker(id).map(|m| m.1).filter(|_| known)
}

#[test]
fn walls_are_flat_and_square_and_halves_agree() {
    let Some(paths) = photos() else { return };
    let photos = look(&paths, &|_| ()).unwrap();
    let whole = survey_of(&photos);
    println!("{}", baywitness::survey::words(&whole));
    let mut corners = 0;
    for pair in ROUND.windows(2) {
        let [a, b] = [pair[0], pair[1]].map(|id| marker(&whole, id).unwrap());
        let angle = a.normal().angle(&b.normal()).to_degrees();
        println!("{} to {}: walls at {angle:.2} deg", pair[0], pair[1]);
        corners += usize::from(angle > 45.0);
        // Sheets taped to a wall are not flat to better than a degree or two.
        assert!(angle < 2.5 || (angle - 90.0).abs() < 3.0, "{angle}");
    }
    assert_eq!(corners, 2);
    // Every second photo alone: neighbours that it links well lie equally far apart.
    let half: Vec<SurveyPhoto> = photos.iter().skip(1).step_by(2).cloned().collect();
    let half = survey_of(&half);
    let apart = |s: &Survey, a, b| Some((marker(s, a)?.centre_mm - marker(s, b)?.centre_mm).norm());
    let mut compared = 0;
    for pair in [[13, 11], [11, 0], [0, 1], [1, 2], [2, 3], [3, 4], [4, 5]] {
        // Two markers of one photo may leave both poses of one of them possible.
        let (Some(all), Some(part)) = (apart(&whole, pair[0], pair[1]), apart(&half, pair[0], pair[1])) else {
            continue;
        };
        compared += 1;
        println!("{pair:?}: {all:.1} mm, {part:.1} mm from every second photo");
        assert!((part / all - 1.0).abs() < 0.003, "{pair:?}: {all} {part}");
    }
    assert!(compared >= 5, "{compared}");
}
