//! How level and flat a bay's floor is, from photos of floor sheets all over it.

mod floor;

use std::path::PathBuf;

use super::error::Error;
use crate::camera::Profile;
use crate::folder::{PhotoFile, Vehicle};
use crate::geom::{Carrier, Pose, World};
use crate::job::opening::{Looked, look};
use crate::job::verifying::why_no_scene;
use crate::marker::{Kit, Role};
use crate::num::student_quantile;
use crate::pose::{Options, PhotoView, Problem, Scene, adjust, doubled};
use crate::record::{BayLimit, BayPhoto, BayRecord, BaySheet, Verdict};
use crate::setup::Limits;
use crate::words::{Language, Phrase, phrase};
use floor::{Bodies, Floor, Rows};

/// What a bay check is about.
#[derive(Debug, Clone, Copy)]
pub struct BayWanted<'a> {
    /// The kit; each floor sheet is a carrier of role floor.
    pub kit: &'a Kit,
    /// The camera.
    pub camera: &'a Profile,
    /// Typed sizes of the vehicle that stands in the bay.
    pub vehicle: &'a Vehicle,
    /// Limits of the set-up sheet.
    pub limits: &'a Limits,
}

const WHEELS: [Role; 4] = [Role::RearLeftWheel, Role::RearRightWheel, Role::FrontLeftWheel, Role::FrontRightWheel];
/// Sheets farther apart than this are no neighbours, mm.
const NEIGHBOURS_MM: f64 = 3000.0;

/// Measures the floor.
///
/// # Errors
/// A photo that can't be read; [`Error::Bay`] where the photos show no floor.
pub fn check_bay(photos: &[PathBuf], wanted: &BayWanted) -> Result<BayRecord, Error> {
    let files: Vec<PhotoFile> = photos
        .iter()
        .map(|p| PhotoFile { name: p.display().to_string(), path: p.clone(), step: None, phase: None, after_move: 0 })
        .collect();
    let looked = look(&files)?;
    for photo in &looked {
        let size = [photo.width as u32, photo.height as u32];
        if size != wanted.camera.image_size_px {
            return Err(Error::Bay(phrase!(
                "advice-bay-wrong-camera",
                photo = &photo.name,
                width = size[0].to_string(),
                height = size[1].to_string(),
                camera = &wanted.camera.name
            )));
        }
    }
    let doubled = doubled(wanted.kit, looked.iter().map(|p| &p.sightings));
    let view = |p: &Looked| PhotoView::from_sightings(wanted.kit, 0, &p.sightings).without(&doubled);
    let views = looked.iter().map(view).collect();
    let problem = Problem { kit: wanted.kit, cameras: vec![wanted.camera], photos: views };
    let options = Options { one_floor: false, ..Options::default() };
    let scene = adjust(&problem, &options).map_err(|e| Error::Bay(why_no_scene(&e)))?;
    let (bodies, rows, names) = bodies(wanted.kit, &scene);
    let typed = (wanted.vehicle.floor_below_hub_mm, wanted.vehicle.nose_from_rear_axle_mm);
    let floor_of = |b: &Bodies| b.floor(typed.0, typed.1);
    let floor = floor_of(&bodies)
        .ok_or_else(|| Error::Bay(phrase!("advice-bay-too-few-sheets", sheets = bodies.sheets.len())))?;
    let moved: Vec<Floor> =
        (0..scene.factor.ncols()).filter_map(|c| floor_of(&bodies.moved(&rows, &scene.factor, c))).collect();
    let factor = student_quantile(0.975, scene.degrees_of_freedom.max(1.0));
    let spread = Spread { floor: &floor, moved: &moved, factor };
    Ok(record(wanted, &looked, &scene, &names, &bodies, &spread))
}

/// Poses with their rows in the factor, and the sheets' names.
fn bodies(kit: &Kit, scene: &Scene) -> (Bodies, Rows, Vec<String>) {
    let known = |k: usize| -> Option<(Pose<World, Carrier>, usize)> {
        Some((scene.carriers[k].filter(|_| scene.knows(k))?, 6 * k))
    };
    let first = |role: Role| kit.with_role(role).find_map(known);
    let hubs = WHEELS.map(first);
    let nose = first(Role::Nose);
    let floors: Vec<usize> = kit.with_role(Role::Floor).filter(|k| known(*k).is_some()).collect();
    let sheets: Vec<_> = floors.iter().filter_map(|k| known(*k)).collect();
    let names = floors.iter().map(|k| kit.carriers[*k].name.clone()).collect();
    (
        Bodies {
            hubs: hubs.map(|h| h.map(|x| x.0)),
            nose: nose.map(|x| x.0),
            sheets: sheets.iter().map(|s| s.0).collect(),
        },
        Rows {
            hubs: hubs.map(|h| h.map(|x| x.1)),
            nose: nose.map(|x| x.1),
            sheets: sheets.iter().map(|s| s.1).collect(),
        },
        names,
    )
}

/// The floor and how it moves with each independent source.
struct Spread<'a> {
    floor: &'a Floor,
    moved: &'a [Floor],
    factor: f64,
}

impl Spread<'_> {
    /// A figure of the floor with its expanded uncertainty (first order).
    fn of(&self, figure: impl Fn(&Floor) -> f64) -> (f64, f64) {
        let value = figure(self.floor);
        let variance: f64 = self.moved.iter().map(|m| (figure(m) - value).powi(2)).sum();
        (value, self.factor * variance.sqrt())
    }
}

fn record(
    wanted: &BayWanted,
    looked: &[Looked],
    scene: &Scene,
    names: &[String],
    bodies: &Bodies,
    spread: &Spread,
) -> BayRecord {
    let floor = spread.floor;
    let sheets = names.iter().enumerate().map(|(i, name)| {
        let (height, u_height) = spread.of(|f| f.sheets[i][2]);
        BaySheet {
            name: name.clone(),
            position_mm: [floor.sheets[i][0], floor.sheets[i][1]],
            height_mm: height,
            expanded_uncertainty_mm: u_height,
            off_plane_mm: floor.off_plane[i],
            rise_deg: floor.tilts[i],
        }
    });
    let steepest = |f: &Floor| f.slope[0].hypot(f.slope[1]);
    let (slope, u_slope) = spread.of(steepest);
    let wheels = bodies.hubs.iter().flatten().count() >= 3;
    let mut limits =
        vec![limit(phrase!("verdict-bay-slope"), "deg", slope, u_slope, wanted.limits.floor_slope_deg, true)];
    if !wheels {
        limits.clear();
    }
    if let Some((flat, u_flat)) = flatness(spread) {
        limits.push(limit(
            phrase!("verdict-bay-flatness"),
            "mm/m",
            flat,
            u_flat,
            wanted.limits.floor_flatness_mm_per_m,
            true,
        ));
    }
    if floor.ahead.is_some() {
        let (ahead, u) = spread.of(|f| f.ahead.unwrap_or(0.0));
        limits.push(limit(phrase!("verdict-bay-ahead"), "mm", ahead, u, wanted.limits.free_ahead_mm, false));
    }
    let photos = looked.iter().zip(&scene.photos).map(|(p, s)| BayPhoto {
        file: p.name.clone(),
        sha256: p.sha256.clone(),
        rms_px: s.as_ref().map(|s| s.rms_px),
        markers: p.sightings.markers.len(),
    });
    BayRecord {
        format: "bay/1".into(),
        kit: wanted.kit.name.clone(),
        camera: wanted.camera.name.clone(),
        against_wheels: wheels,
        hub_height_typed: wanted.vehicle.floor_below_hub_mm.is_some(),
        slope_deg: floor.slope,
        wheel_twist_mm: floor.twist,
        sheets: sheets.collect(),
        limits,
        photos: photos.collect(),
        nose_mm: wanted.vehicle.nose_from_rear_axle_mm,
    }
}

/// The worst height difference, the best plane taken out, for each metre between neighbours.
fn flatness(spread: &Spread) -> Option<(f64, f64)> {
    let floor = spread.floor;
    let n = floor.sheets.len();
    let pairs = (0..n).flat_map(|i| (i + 1..n).map(move |j| (i, j)));
    let apart = |i: usize, j: usize| {
        let (a, b) = (&floor.sheets[i], &floor.sheets[j]);
        (a[0] - b[0]).hypot(a[1] - b[1])
    };
    let each = pairs.filter(|(i, j)| (300.0..NEIGHBOURS_MM).contains(&apart(*i, *j)));
    each.map(|(i, j)| spread.of(|f| (f.off_plane[i] - f.off_plane[j]).abs() / (apart(i, j) / 1000.0)))
        .max_by(|a, b| a.0.total_cmp(&b.0))
}

/// Guarded both ways by the expanded uncertainty; no limit, no verdict.
fn limit(what: Phrase, unit: &str, value: f64, u: f64, limit: Option<f64>, at_most: bool) -> BayLimit {
    let verdict = limit.map(|l| {
        let room = if at_most { l - value } else { value - l };
        match () {
            () if room >= u => Verdict::Within,
            () if room <= -u => Verdict::Outside,
            () => Verdict::NotProven,
        }
    });
    BayLimit {
        what: what.say(Language::English),
        what_phrase: Some(what),
        unit: unit.into(),
        value,
        expanded_uncertainty: u,
        limit,
        at_most,
        verdict,
    }
}
