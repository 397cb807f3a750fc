//! What a scene file's values must keep to, beyond their kinds.

use super::{ClutterKind, PhotoSpec, Scene};
use crate::input::{Problem, did_you_mean};
use crate::marker::Dictionary;
use crate::words::{Figure, Phrase, phrase};

/// No bay is larger, mm.
const FARTHEST_MM: f64 = 50_000.0;
/// More photos than any job has.
const MOST_PHOTOS: usize = 200;
const MOST_THINGS: usize = 500;
/// Of a sign.
const MOST_LETTERS: usize = 200;
/// Keys of the job file that `stage` writes itself.
const OWN_JOB_KEYS: [&str; 6] = ["format", "setup", "kit", "camera", "photos", "photo"];

fn problem(key: impl Into<String>, problem: Phrase, remedy: Phrase) -> Problem {
    Problem { key: key.into(), problem, remedy }
}

fn between_words(low: f64, high: f64, found: f64) -> Phrase {
    let [low, high, found] = [low, high, found].map(Figure::plain);
    phrase!("doors-scene-value", low = low, high = high, found = found)
}

fn between(key: &str, value: f64, low: f64, high: f64) -> Result<(), Problem> {
    match value >= low && value <= high {
        true => Ok(()),
        false => Err(problem(key, between_words(low, high, value), phrase!("doors-scene-value-remedy"))),
    }
}

fn all_between(key: &str, values: &[f64], low: f64, high: f64) -> Result<(), Problem> {
    values.iter().try_for_each(|v| between(key, *v, low, high))
}

/// The first thing that is wrong.
pub(super) fn check(scene: &Scene) -> Result<(), Problem> {
    vehicle(scene)?;
    bay(scene)?;
    names(scene)?;
    let photos = scene.photos();
    if photos.is_empty() || photos.len() > MOST_PHOTOS {
        let found = phrase!("doors-scene-photos", count = photos.len());
        return Err(problem("photo", found, phrase!("doors-scene-photos-remedy", most = MOST_PHOTOS)));
    }
    for (i, photo) in photos.iter().enumerate() {
        check_photo(photo, &format!("photo[{i}]"))?;
        check_step(scene, photo, &format!("photo[{i}]"))?;
        check_forgery(scene, &photos, i)?;
        if photos[..i].iter().any(|p| p.file == photo.file) {
            return Err(problem(
                format!("photo[{i}].file"),
                phrase!("doors-scene-name-twice"),
                phrase!("doors-scene-name-twice-remedy"),
            ));
        }
    }
    insides(scene)?;
    let p = &scene.spec.processing;
    between("processing.blur_px", p.blur_px, 0.0, 20.0)?;
    between("processing.vignetting", p.vignetting, 0.0, 1.0)?;
    between("processing.full_well", p.full_well, 0.0, 1e9)?;
    between("processing.read_noise", p.read_noise, 0.0, 1.0)?;
    all_between("processing.white_balance", &p.white_balance, 0.1, 10.0)?;
    between("processing.contrast", p.contrast, 0.0, 1.0)?;
    between("processing.noise_reduction", p.noise_reduction, 0.0, 1.0)?;
    between("processing.sharpening", p.sharpening, 0.0, 5.0)?;
    between("processing.jpeg_quality", f64::from(p.jpeg_quality), 1.0, 100.0)
}

/// Strengths and their order.
/// What a forgery names is there.
fn check_forgery(scene: &Scene, photos: &[PhotoSpec], i: usize) -> Result<(), Problem> {
    let forged = &photos[i].forged;
    let files: Vec<&str> = photos.iter().map(|p| p.file.as_str()).collect();
    if let Some(file) = forged.noise_of.as_deref().filter(|f| !files.contains(f)) {
        let remedy = did_you_mean(file, files.iter().copied());
        return Err(problem(
            format!("photo[{i}].forged.noise_of"),
            phrase!("doors-scene-no-photo", file = file),
            remedy,
        ));
    }
    let carriers = scene.kit.carriers.iter().map(|c| c.name.as_str());
    for (key, name) in [("put_in", &forged.put_in), ("put_in_later", &forged.put_in_later)] {
        if let Some(name) = name.as_deref().filter(|name| !carriers.clone().any(|c| c == *name)) {
            let remedy = did_you_mean(name, carriers.clone());
            let key = format!("photo[{i}].forged.{key}");
            return Err(problem(key, phrase!("doors-scene-no-carrier", name = name), remedy));
        }
    }
    let quality = forged.saved_at.map_or(1.0, f64::from);
    between(&format!("photo[{i}].forged.saved_at"), quality, 1.0, 100.0)
}

fn insides(scene: &Scene) -> Result<(), Problem> {
    for (key, strength, [low, high]) in scene.spec.insides.strengths() {
        let key = format!("insides.{key}");
        let [from, to] = strength.ends();
        all_between(&key, &[from, to], low, high)?;
        if from > to {
            return Err(problem(
                key,
                phrase!("doors-scene-order", from = Figure::plain(from), to = Figure::plain(to)),
                phrase!("doors-scene-order-remedy"),
            ));
        }
    }
    Ok(())
}

fn vehicle(scene: &Scene) -> Result<(), Problem> {
    let v = &scene.spec.vehicle;
    for (key, value) in [
        ("vehicle.wheelbase_mm", v.wheelbase_mm),
        ("vehicle.rear_track_mm", v.rear_track_mm),
        ("vehicle.front_track_mm", v.front_track_mm),
        ("vehicle.hub_height_mm", v.hub_height_mm),
        ("vehicle.width_mm", v.width_mm),
        ("vehicle.height_mm", v.height_mm),
        ("vehicle.rear_overhang_mm", v.rear_overhang_mm),
    ] {
        between(key, value, 100.0, 10_000.0)?;
    }
    between("vehicle.nose_mm", v.nose_mm[0], v.wheelbase_mm, 15_000.0)?;
    between("vehicle.nose_mm", v.nose_mm[1], 0.0, 3_000.0)?;
    for (key, values) in [
        ("vehicle.rear_toe_deg", v.rear_toe_deg),
        ("vehicle.front_toe_deg", v.front_toe_deg),
        ("vehicle.rear_camber_deg", v.rear_camber_deg),
        ("vehicle.front_camber_deg", v.front_camber_deg),
        ("vehicle.rear_plumb_deg", v.rear_plumb_deg),
        ("vehicle.front_plumb_deg", v.front_plumb_deg),
    ] {
        all_between(key, &values, -90.0, 90.0)?;
    }
    all_between("vehicle.thrust_deg", &[v.thrust_deg], -45.0, 45.0)?;
    all_between("vehicle.steering_deg", &[v.steering_deg], -45.0, 45.0)?;
    all_between("vehicle.rear_axle_skew_deg", &[v.rear_axle_skew_deg], -45.0, 45.0)?;
    all_between("vehicle.front_axle_skew_deg", &[v.front_axle_skew_deg], -45.0, 45.0)?;
    all_between("vehicle.nose_offset_mm", &v.nose_offset_mm, -1000.0, 1000.0)?;
    all_between("vehicle.rear_axle_shift_mm", &[v.rear_axle_shift_mm], -1000.0, 1000.0)?;
    all_between("vehicle.front_axle_shift_mm", &[v.front_axle_shift_mm], -1000.0, 1000.0)?;
    all_between("vehicle.arch_heights_mm", &v.arch_heights_mm, 100.0, 1000.0)?;
    all_between("vehicle.raised_mm", &v.raised_mm, -500.0, 2000.0)
}

fn bay(scene: &Scene) -> Result<(), Problem> {
    let spec = &scene.spec;
    let e = &spec.stand.error;
    all_between("stand.error", &[e.distance_mm, e.lateral_mm, e.height_mm], -FARTHEST_MM, FARTHEST_MM)?;
    all_between("stand.error", &[e.yaw_deg, e.pitch_deg, e.roll_deg], -360.0, 360.0)?;
    all_between("stand.distance_mm", &[spec.stand.distance_mm], -FARTHEST_MM, FARTHEST_MM)?;
    all_between("stand.height_mm", &[spec.stand.height_mm], -FARTHEST_MM, FARTHEST_MM)?;
    between("kit_errors.print_noise_mm", spec.kit_errors.print_noise_mm, 0.0, 5.0)?;
    between("kit_errors.print_wave_mm", spec.kit_errors.print_wave_mm, 0.0, 1.0)?;
    between("floor.slope_deg", spec.floor.slope_deg, -30.0, 30.0)?;
    for sheet in &spec.floor.sheets {
        all_between("floor.sheets", sheet, -FARTHEST_MM, FARTHEST_MM)?;
    }
    between("floor.stains", f64::from(spec.floor.stains), 0.0, 1.0)?;
    all_between("room.sides_mm", &spec.room.sides_mm, 500.0, FARTHEST_MM)?;
    all_between("room.behind_mm", &[spec.room.behind_mm], 500.0, FARTHEST_MM)?;
    all_between("room.ahead_mm", &[spec.room.ahead_mm], 500.0, FARTHEST_MM)?;
    between("room.height_mm", spec.room.height_mm, 500.0, FARTHEST_MM)?;
    between("room.ambient", f64::from(spec.room.ambient), 0.0, 100.0)?;
    let things = spec.clutter.as_deref().unwrap_or_default();
    if things.len() > MOST_THINGS {
        let found = phrase!("doors-scene-things", count = things.len());
        return Err(problem("clutter", found, phrase!("doors-scene-things-remedy", most = MOST_THINGS)));
    }
    for (i, thing) in things.iter().enumerate() {
        let key = format!("clutter[{i}]");
        all_between(&format!("{key}.at_mm"), &thing.at_mm, -FARTHEST_MM, FARTHEST_MM)?;
        all_between(&format!("{key}.size_mm"), &thing.size_mm, 0.0, FARTHEST_MM)?;
        if thing.kind == ClutterKind::Sign && thing.text.chars().count() > MOST_LETTERS {
            return Err(problem(
                format!("{key}.text"),
                phrase!("doors-scene-long"),
                phrase!("doors-scene-long-remedy", most = MOST_LETTERS),
            ));
        }
    }
    for (i, lamp) in spec.lamp.iter().flatten().enumerate() {
        all_between(&format!("lamp[{i}].at_mm"), &lamp.at_mm, -FARTHEST_MM, FARTHEST_MM)?;
        all_between(&format!("lamp[{i}].size_mm"), &lamp.size_mm, 1.0, FARTHEST_MM)?;
    }
    for (i, opening) in spec.opening.iter().enumerate() {
        all_between(&format!("opening[{i}].at_mm"), &opening.at_mm, -FARTHEST_MM, FARTHEST_MM)?;
        all_between(&format!("opening[{i}].size_mm"), &opening.size_mm, 1.0, FARTHEST_MM)?;
        between(&format!("opening[{i}].facing_deg"), opening.facing_deg, -360.0, 360.0)?;
    }
    Ok(())
}

/// Carriers, job keys and strays that the scene names.
fn names(scene: &Scene) -> Result<(), Problem> {
    let carriers: Vec<&str> = scene.kit.carriers.iter().map(|c| c.name.as_str()).collect();
    let known = |key: String, name: &str| match carriers.contains(&name) {
        true => Ok(()),
        false => {
            let what = phrase!("doors-scene-no-carrier", name = name);
            Err(problem(key, what, did_you_mean(name, carriers.iter().copied())))
        }
    };
    for (i, mistake) in scene.spec.carrier.iter().enumerate() {
        known(format!("carrier[{i}].name"), &mistake.name)?;
        if let Some(other) = &mistake.mounted_on {
            known(format!("carrier[{i}].mounted_on"), other)?;
        }
        all_between(&format!("carrier[{i}].off_mm"), &mistake.off_mm, -FARTHEST_MM, FARTHEST_MM)?;
        all_between(&format!("carrier[{i}].off_deg"), &mistake.off_deg, -360.0, 360.0)?;
        all_between(&format!("carrier[{i}].displaced_mm"), &mistake.displaced_mm, -FARTHEST_MM, FARTHEST_MM)?;
        if let Some(scale) = mistake.print_scale {
            between(&format!("carrier[{i}].print_scale"), scale, 0.1, 10.0)?;
        }
    }
    for (i, stray) in scene.spec.stray.iter().enumerate() {
        let family = Dictionary::tag36h11();
        between(&format!("stray[{i}].id"), f64::from(stray.id), 0.0, family.len() as f64 - 1.0)?;
        between(&format!("stray[{i}].size_mm"), stray.size_mm, 1.0, 2000.0)?;
        all_between(&format!("stray[{i}].at_mm"), &stray.at_mm, -FARTHEST_MM, FARTHEST_MM)?;
    }
    match OWN_JOB_KEYS.into_iter().find(|key| scene.spec.job.contains_key(*key)) {
        Some(key) => Err(problem(format!("job.{key}"), phrase!("doors-scene-own-key"), phrase!("doors-remove-it"))),
        None => Ok(()),
    }
}

/// Step and phase must be what the job's reader knows.
fn check_step(scene: &Scene, photo: &PhotoSpec, key: &str) -> Result<(), Problem> {
    let steps = &scene.setup.steps;
    if let Some(step) = photo.step.as_ref().filter(|s| !steps.contains(s)) {
        let remedy = did_you_mean(step, steps.iter().map(String::as_str));
        return Err(problem(format!("{key}.step"), phrase!("doors-scene-no-step", step = step), remedy));
    }
    let moves = scene.spec.moves.len() as u32;
    if photo.after_move > moves {
        let found = phrase!("doors-scene-moves", found = photo.after_move, count = moves);
        return Err(problem(format!("{key}.after_move"), found, phrase!("doors-scene-moves-remedy")));
    }
    let phases = ["before", "after"];
    match photo.phase.as_deref().filter(|p| !phases.contains(p)) {
        Some(phase) => {
            let found = phrase!("doors-scene-no-phase", phase = phase);
            Err(problem(format!("{key}.phase"), found, did_you_mean(phase, phases)))
        }
        None => Ok(()),
    }
}

fn check_photo(photo: &PhotoSpec, key: &str) -> Result<(), Problem> {
    let name = &photo.file;
    let plain = name.chars().all(|c| c.is_ascii_alphanumeric() || "-_.".contains(c)) && !name.starts_with('.');
    if !plain || !(name.ends_with(".jpg") || name.ends_with(".jpeg")) || name.len() > 100 {
        let remedy = phrase!("doors-scene-file-remedy");
        return Err(problem(format!("{key}.file"), phrase!("doors-scene-file", name = name), remedy));
    }
    all_between(&format!("{key}.eye_mm"), &photo.eye_mm, -FARTHEST_MM, FARTHEST_MM)?;
    all_between(&format!("{key}.look_at_mm"), &photo.look_at_mm, -FARTHEST_MM, FARTHEST_MM)?;
    if ![1, 3, 6, 8].contains(&photo.orientation) {
        let found = phrase!("doors-scene-orientation", found = u32::from(photo.orientation));
        return Err(problem(format!("{key}.orientation"), found, phrase!("doors-scene-orientation-remedy")));
    }
    between(&format!("{key}.digital_zoom"), photo.digital_zoom, 1.0, 20.0)?;
    between(&format!("{key}.resized"), photo.resized, 0.02, 2.0)?;
    between(&format!("{key}.focal_factor"), photo.focal_factor.unwrap_or(1.0), 0.5, 2.0)?;
    between(&format!("{key}.exposure_stops"), photo.exposure_stops, -10.0, 10.0)?;
    all_between(&format!("{key}.motion_px"), &photo.motion_px, -200.0, 200.0)?;
    all_between(&format!("{key}.centre_shift_px"), &photo.centre_shift_px.unwrap_or_default(), -1000.0, 1000.0)?;
    all_between(
        &format!("{key}.stabiliser_shift_px"),
        &photo.stabiliser_shift_px.unwrap_or_default(),
        -1000.0,
        1000.0,
    )?;
    all_between(&format!("{key}.turn_deg_s"), &photo.turn_deg_s.unwrap_or_default(), -100.0, 100.0)?;
    between(&format!("{key}.readout_s"), photo.readout_s.unwrap_or(0.0), 0.0, 0.2)?;
    between(&format!("{key}.vehicle_rolled_mm"), photo.vehicle_rolled_mm, -FARTHEST_MM, FARTHEST_MM)?;
    between(&format!("{key}.seconds_later"), photo.seconds_later.unwrap_or(0.0), -1e7, 1e7)
}
