//! The attack that pays: the stand's markers of another photo, turned and moved to where the stand should be.

use std::fs;
use std::path::{Path, PathBuf};

use image::{Rgb, RgbImage};
use nalgebra::{Matrix3, SMatrix, SVector, Vector2, Vector3};

use baywitness::detect::find_markers;
use baywitness::folder::{JobFolder, Models};
use baywitness::marker::Dictionary;
use baywitness::photo::read;
use baywitness::record::JobRecord;

use super::{codes, judged, sample};

/// The place in the source of each place of the target, by four or more pairs (least squares).
fn homography(pairs: &[(Vector2<f64>, Vector2<f64>)]) -> Matrix3<f64> {
    let (mut normal, mut right) = (SMatrix::<f64, 8, 8>::zeros(), SVector::<f64, 8>::zeros());
    for (to, from) in pairs.iter().map(|(to, from)| (to / 1000.0, from / 1000.0)) {
        for (axis, wanted) in [from.x, from.y].into_iter().enumerate() {
            let mut row = SVector::<f64, 8>::zeros();
            for (k, value) in [to.x, to.y, 1.0].into_iter().enumerate() {
                row[3 * axis + k] = value;
            }
            (row[6], row[7]) = (-wanted * to.x, -wanted * to.y);
            normal += row * row.transpose();
            right += row * wanted;
        }
    }
    let h = normal.lu().solve(&right).unwrap();
    let scale = Matrix3::from_diagonal(&Vector3::new(1000.0, 1000.0, 1.0));
    scale * Matrix3::new(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1.0) * scale.try_inverse().unwrap()
}

/// Between four pixels.
fn between(from: &RgbImage, at: Vector2<f64>) -> Option<[f64; 3]> {
    let (u, v) = (at.x.floor(), at.y.floor());
    let fits = u >= 0.0 && v >= 0.0 && u + 1.0 < f64::from(from.width()) && v + 1.0 < f64::from(from.height());
    let (a, b) = (at.x - u, at.y - v);
    let pixel = |du: u32, dv: u32| from.get_pixel(u as u32 + du, v as u32 + dv).0.map(f64::from);
    fits.then(|| {
        let [p, q, r, s] = [pixel(0, 0), pixel(1, 0), pixel(0, 1), pixel(1, 1)];
        std::array::from_fn(|c| (1.0 - b) * ((1.0 - a) * p[c] + a * q[c]) + b * ((1.0 - a) * r[c] + a * s[c]))
    })
}

/// How it is pasted.
#[derive(Debug, Clone, Copy, Default)]
struct Paste {
    /// Width of the soft edge, px; outside of the markers.
    feather_px: f64,
    /// Noise that is put back, grey levels.
    noise: f64,
}

/// Room about the markers that is pasted with them, px.
const ABOUT: f64 = 24.0;

/// The stand's markers of `source` pasted into `target`, `by` from where its stand is; `None` where one of them hardly shows it.
fn pasted(
    target: &Path,
    source: &Path,
    is_stand: impl Fn(u32) -> bool,
    by: Vector2<f64>,
    how: Paste,
) -> Option<RgbImage> {
    let found = |file: &Path| find_markers(&read(file).unwrap().luma, Dictionary::tag36h11()).markers;
    let (there, here) = (found(source), found(target));
    let mut pairs = Vec::new();
    for marker in here.iter().filter(|m| is_stand(m.id)) {
        let Some(other) = there.iter().find(|m| m.id == marker.id) else { continue };
        pairs.extend(marker.corners_px.iter().zip(&other.corners_px).map(|(to, from)| (to + by, *from)));
    }
    if pairs.len() < 16 {
        return None;
    }
    let map = homography(&pairs);
    let hull = hull(&pairs.iter().map(|(to, _)| *to).collect::<Vec<_>>());
    let (from, mut picture) = (image::open(source).unwrap().to_rgb8(), image::open(target).unwrap().to_rgb8());
    let mut state = 7_u64;
    let mut even = || {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        (state >> 11) as f64 / (1_u64 << 53) as f64 - 0.5
    };
    let around = |axis: usize, most: u32| {
        let places = hull.iter().map(|p| p[axis]);
        let low = places.clone().fold(f64::MAX, f64::min) - ABOUT - how.feather_px;
        let high = places.fold(0.0, f64::max) + ABOUT + how.feather_px;
        low.max(0.0) as u32..(high.max(0.0) as u32 + 1).min(most)
    };
    let [columns, rows] = [around(0, picture.width()), around(1, picture.height())];
    for (u, v) in rows.flat_map(|v| columns.clone().map(move |u| (u, v))) {
        let pixel = picture.get_pixel_mut(u, v);
        let at = Vector2::new(f64::from(u), f64::from(v));
        let beyond = outside(&hull, at);
        let share = 1.0 - ((beyond - ABOUT) / how.feather_px.max(0.5)).clamp(0.0, 1.0);
        if share == 0.0 {
            continue;
        }
        let p = map * Vector3::new(at.x, at.y, 1.0);
        let Some(new) = between(&from, Vector2::new(p.x / p.z, p.y / p.z)) else { continue };
        // The sum of twelve even numbers is as good as normal.
        let noise = if how.noise > 0.0 { how.noise * (0..12).map(|_| even()).sum::<f64>() } else { 0.0 };
        let mix =
            |c: usize| ((1.0 - share) * f64::from(pixel.0[c]) + share * (new[c] + noise)).round().clamp(0.0, 255.0);
        *pixel = Rgb(std::array::from_fn(|c| mix(c) as u8));
    }
    Some(picture)
}

/// Corners of the convex hull, all turning the same way (Andrew 1979, Information Processing Letters 9, 216-219).
fn hull(points: &[Vector2<f64>]) -> Vec<Vector2<f64>> {
    let mut points = points.to_vec();
    points.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    let half = |all: &mut dyn Iterator<Item = &Vector2<f64>>| {
        let mut chain: Vec<Vector2<f64>> = Vec::new();
        for p in all {
            while let [.., a, b] = chain[..]
                && (b - a).perp(&(p - b)) <= 0.0
            {
                chain.pop();
            }
            chain.push(*p);
        }
        chain.pop();
        chain
    };
    [half(&mut points.iter()), half(&mut points.iter().rev())].concat()
}

/// How far a place is outside of a hull, px; 0 within.
fn outside(hull: &[Vector2<f64>], at: Vector2<f64>) -> f64 {
    let side = |i: usize| {
        let (a, b) = (hull[i], hull[(i + 1) % hull.len()]);
        -(b - a).perp(&(at - a)) / (b - a).norm()
    };
    (0..hull.len()).map(side).fold(0.0, f64::max)
}

/// Saves a picture with the record of another file.
fn save(picture: &RgbImage, like: &Path, to: &Path, quality: u8) {
    super::photos::save_at(picture, like, to, quality);
}

/// A job in a folder of its own, one of its photos with the stand of another job's photo.
fn attacked(job: &Path, other: &Path, by: Vector2<f64>, how: Paste, quality: u8) -> Option<JobRecord> {
    let dir = tempfile::tempdir().unwrap();
    let copy = dir.path().join("job");
    copy_all(job, &copy);
    let kit = JobFolder::open(&copy, &Models::embedded()).unwrap().kit;
    let is_stand = |id: u32| kit.marker(id).is_some_and(|(k, _)| kit.carriers[k].name == "stand");
    let target = job.join("photos/b.jpg");
    let picture = pasted(&target, &other.join("photos/b.jpg"), is_stand, by, how)?;
    save(&picture, &target, &copy.join("photos/b.jpg"), quality);
    Some(judged(&copy))
}

fn copy_all(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for entry in fs::read_dir(from).unwrap().map(Result::unwrap) {
        let (path, to) = (entry.path(), to.join(entry.file_name()));
        if path.is_dir() {
            copy_all(&path, &to);
        } else {
            fs::write(to, fs::read(path).unwrap()).unwrap();
        }
    }
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn the_stand_of_another_photo_pasted_in_and_saved_finely() {
    let how = Paste { feather_px: 12.0, noise: 1.0 };
    let record = attacked(&sample("good"), &sample("wrong"), Vector2::new(0.4, 0.3), how, 97).unwrap();
    assert!(codes(&record).contains(&"compression-differs"), "{:?}", codes(&record));
    let finding = record.findings.iter().find(|f| f.code == "compression-differs").unwrap();
    assert_eq!((finding.photo.as_deref(), finding.carrier.as_deref()), (Some("photos/b.jpg"), Some("stand")));
}

/// Jobs of the shared photos that have a stand and two photos.
fn shared() -> Vec<PathBuf> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared/photos");
    let mut all: Vec<PathBuf> = ["bay/jobs", "phone/jobs"]
        .iter()
        .flat_map(|below| fs::read_dir(root.join(below)).into_iter().flatten().map(|e| e.unwrap().path()))
        .filter(|job| job.join("job.toml").is_file() && job.join("photos/b.jpg").is_file())
        .collect();
    all.sort();
    all
}

/// Of every third shared job the second photo gets the stand of another job's, in two ways, saved at five qualities.
#[test]
#[ignore = "many minutes: cargo test --test suite attacks::pasted -- --ignored --nocapture"]
fn how_often_a_pasted_stand_is_seen() {
    let step: usize = std::env::var("BAYWITNESS_PASTED_STEP").map_or(3, |n| n.parse().unwrap());
    let jobs = shared();
    if jobs.is_empty() {
        return println!("skipped: no shared photos");
    }
    let ways = [("plain", Paste::default()), ("feathered, noise put back", Paste { feather_px: 12.0, noise: 1.0 })];
    for (name, how) in ways {
        for quality in [88, 92, 95, 97, 99] {
            let (mut seen, mut other, mut tried) = (0, 0, 0);
            for (n, job) in jobs.iter().enumerate().step_by(step) {
                let same_kind = |o: &&PathBuf| o.parent() == job.parent() && *o != job;
                let Some(source) = jobs.iter().cycle().skip(n + 1).take(jobs.len()).find(same_kind) else { continue };
                let Some(record) = attacked(job, source, Vector2::new(5.0, -3.0), how, quality) else { continue };
                tried += 1;
                seen += u32::from(codes(&record).contains(&"compression-differs"));
                other += u32::from(!codes(&record).is_empty());
            }
            println!("{name}, quality {quality}: {seen} of {tried} by compression, any finding {other}");
        }
    }
}
