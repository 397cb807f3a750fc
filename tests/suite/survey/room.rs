//! Real photos of a room (skipped where `../shared/photos/real` is absent).
//! Nobody surveyed it: walls are flat and square, and halves must agree.

use std::path::{Path, PathBuf};

use baywitness::camera::{Lens, LensModel, PerPhoto, Profile, ReadOut};
use baywitness::marker::{Carrier, Kit, Marker, Role};
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
        read_out: ReadOut::default(),
        exif: None,
    }
}

/// Nothing is known of the places: they stand in a row.
fn kit() -> Kit {
    let marker = |(i, id): (usize, &u32)| Marker {
        id: *id,
        size_mm: [127.0; 2],
        centre_mm: Vector3::new(0.0, 900.0 * i as f64, 0.0),
        right: Vector3::y(),
        up: Vector3::z(),
        u_centre_mm: None,
        u_turn_deg: None,
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
    Kit {
        name: "room".into(),
        u_layout_mm: 0.3,
        u_turn_deg: 0.03,
        u_scale_relative: 5e-4,
        u_aspect_relative: 0.002,
        serial: None,
        survey_due: None,
        carriers: vec![walls],
        layout: None,
    }
}

fn survey_of(photos: &[SurveyPhoto]) -> Survey {
    survey_from(&kit(), photos)
}

fn survey_from(kit: &Kit, photos: &[SurveyPhoto]) -> Survey {
    let options = Options { camera_named: true, ..Options::default() };
    survey(kit, &[camera()], photos, &options).unwrap()
}

/// Distance of two markers, mm, and its standard uncertainty: what neither
/// frame nor file has a part in.
fn apart(found: &Survey, [a, b]: [u32; 2]) -> Option<[f64; 2]> {
    let (p, q) = (marker(found, a)?, marker(found, b)?);
    let layout = found.kit.layout.as_ref()?;
    let way = q.centre_mm - p.centre_mm;
    let along = way.normalize();
    let mut by = DMatrix::zeros(1, layout.covariance.nrows());
    for (id, sign) in [(a, -1.0), (b, 1.0)] {
        let at = layout.ids.iter().position(|i| *i == id)?;
        for axis in 0..3 {
            by[(0, 6 * at + axis)] = sign * along[axis];
        }
    }
    Some([way.norm(), (&by * &layout.covariance * by.transpose())[(0, 0)].sqrt()])
}

fn marker(found: &Survey, id: u32) -> Option<&Marker> {
    let known = found.kit.layout.as_ref().is_some_and(|l| l.ids.contains(&id));
    found.kit.marker(id).map(|m| m.1).filter(|_| known)
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn walls_are_flat_and_square_and_halves_agree() {
    let Some(paths) = photos() else { return };
    let photos = look(&paths, &|_| ()).unwrap();
    let whole = survey_of(&photos);
    println!("{}", baywitness::survey::words(&whole, baywitness::words::Language::English));
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
    let apart = |s: &Survey, a, b| apart(s, [a, b]).map(|d| d[0]);
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

/// Nothing is tuned here: the kit file knows nothing, and what halves state must cover their difference.
#[test]
#[ignore = "a minute: thirty surveys from several starts each"]
fn disjoint_halves_differ_by_what_they_state() {
    let Some(paths) = photos() else { return };
    let photos = look(&paths, &|_| ()).unwrap();
    let whole = survey_of(&photos);
    let own = whole.halves.as_ref().unwrap();
    println!("the survey's own halves: {:.2} times stated, limit {:.2}", own.ratio.sqrt(), own.limit.sqrt());
    assert!(own.agree(), "{own:?}");
    // Markers in a row are not where the file has them: no frame follows, and that is said.
    assert!(!whole.fit_for_use());
    assert!(
        whole
            .advice
            .iter()
            .any(|a| a.forbids && a.said.say(baywitness::words::Language::English).contains("survey again")),
        "{:?}",
        whole.advice
    );
    let again = survey_from(&whole.kit, &photos);
    let repeated = again.halves.as_ref().unwrap();
    println!("from the found places: {:.2} times stated", repeated.ratio.sqrt());
    assert!(repeated.agree() && (repeated.ratio / own.ratio - 1.0).abs() < 0.2, "{repeated:?} {own:?}");

    let (mut squares, mut count) = (0.0, 0);
    // Most halves leave two solutions open, and are refused: halves are drawn until enough of them
    // place the same markers without doubt. Every one that is drawn counts, none is chosen.
    let (mut tried, mut draw) = (0, 0_u32);
    while count < 8 && tried < 40 {
        tried += 1;
        let mut first: Vec<usize> = (0..photos.len()).collect();
        while first.len() > photos.len() / 2 {
            // Multiplier and increment of Numerical Recipes' quick generator (Press et al. 2007, 7.1).
            draw = draw.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            first.swap_remove((draw >> 16) as usize % first.len());
        }
        let (a, b): (Vec<_>, Vec<_>) = photos.iter().cloned().enumerate().partition(|(i, _)| first.contains(i));
        let options = Options { camera_named: true, ..Options::default() };
        let of = |part: Vec<(usize, SurveyPhoto)>| {
            let photos: Vec<SurveyPhoto> = part.into_iter().map(|p| p.1).collect();
            survey(&kit(), &[camera()], &photos, &options)
        };
        let (Ok(a), Ok(b)) = (of(a), of(b)) else {
            println!("split {tried}: refused");
            continue;
        };
        for pair in ROUND.windows(2).chain(ROUND.windows(3)) {
            let ends = [pair[0], pair[pair.len() - 1]];
            let (Some([p, u]), Some([q, v])) = (apart(&a, ends), apart(&b, ends)) else { continue };
            // One camera took all of them: the whole knows its noise better than nine photos.
            let [u, v] = [(u, &a), (v, &b)].map(|(u, half)| u * (whole.noise_factor / half.noise_factor).max(1.0));
            let ratio = (p - q) / u.hypot(v);
            println!("split {tried}, {ends:?}: {p:.1} and {q:.1} mm, {ratio:+.2} times {:.1} mm", u.hypot(v));
            squares += ratio * ratio;
            count += 1;
        }
    }
    let rms = (squares / f64::from(count)).sqrt();
    println!("{count} distances in {tried} splits, RMS {rms:.2} times stated");
    // The 95 % quantile of chi squared with 8 degrees of freedom is 15.51 (NIST/SEMATECH e-Handbook, 1.3.6.7.4),
    // 1.39 squared of each. A marker taken the wrong way round would give 10 and more.
    assert!(count >= 8 && rms < 1.39, "{rms} of {count}");
}
