//! How often photos that nobody touched are called made or mended: each doubt's statistic over photos that took no part in
//! choosing its limit, and of doubts that were tried and left out what they would have said.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use baywitness::detect::{Coefficients, Earlier, Grain, Share, Sighting, find_markers};
use baywitness::folder::{JobFolder, Models};
use baywitness::marker::{Dictionary, Kit};
use baywitness::num::median;
use baywitness::photo::{Luma, Photo, decode, read};
use baywitness::synth::{InsidesSpec, Preset, Scene};

use super::{judged, of, pictures, saved_again, shared};

/// As the findings have them.
const SMOOTH: f64 = 0.4;
const LACKS: f64 = 0.35;
const SURE: f64 = 3.0;

/// What one marker holder's markers say beside the rest of a photo.
#[derive(Debug, Default)]
struct Beside {
    noise: Option<f64>,
    share: Option<Share>,
    /// Of doubts that are left out: logarithms of blur, of white minus black, of the noise's size and of its colour.
    left_out: BTreeMap<&'static str, f64>,
}

/// The photo's markers by holder; where no kit is known, four groups from left to right.
fn holders(markers: &[Sighting], kit: Option<&Kit>) -> Vec<Vec<usize>> {
    let mut all: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    let mut order: Vec<usize> = (0..markers.len()).collect();
    order.sort_by(|a, b| markers[*a].corners_px[0].x.total_cmp(&markers[*b].corners_px[0].x));
    for (place, n) in order.into_iter().enumerate() {
        let holder = match kit {
            Some(kit) => kit.marker(markers[n].id).map(|(k, _)| k),
            None => Some(4 * place / markers.len()),
        };
        if let Some(holder) = holder {
            all.entry(holder).or_default().push(n);
        }
    }
    all.into_values().collect()
}

fn beside(photo: &Photo, kit: Option<&Kit>) -> Vec<Beside> {
    let markers = find_markers(&photo.luma, Dictionary::tag36h11()).markers;
    let steps = photo.traces.steps.as_ref();
    let grains: Vec<Option<Grain>> = markers.iter().map(|m| Grain::of(&photo.luma, &m.corners_px)).collect();
    let coefficients: Vec<_> = markers.iter().map(|m| Coefficients::of(&photo.luma, steps, &m.corners_px)).collect();
    let colours: Vec<Option<f64>> = markers.iter().map(|m| colour(&photo.luma, m)).collect();
    let together = |of: &[usize]| of.iter().map(|n| coefficients[*n].clone()).reduce(|a, b| a.with(&b));
    let of_holder = |own: &Vec<usize>| -> Option<Beside> {
        let others: Vec<usize> = (0..markers.len()).filter(|n| !own.contains(n)).collect();
        if own.len() < 2 || others.len() < 4 {
            return None;
        }
        let mut said = Beside { noise: noise(&grains, own, &others), ..Beside::default() };
        let whole = together(&(0..markers.len()).collect::<Vec<_>>())?;
        let earlier = whole.earlier().and_then(|_| together(&others)?.earlier());
        said.share = earlier.as_ref().and_then(|e: &Earlier| e.share_of(&together(own)?));
        let log_ratio = |of: &dyn Fn(usize) -> Option<f64>| {
            let middle = |all: &[usize]| median(all.iter().filter_map(|n| of(*n)).collect::<Vec<f64>>());
            Some((middle(own)? / middle(&others)?).ln()).filter(|r| r.is_finite())
        };
        let tried: [(&str, Option<f64>); 4] = [
            ("blur", log_ratio(&|n| Some(markers[n].blur_px))),
            ("white minus black", log_ratio(&|n| Some(markers[n].contrast))),
            ("size of the noise", log_ratio(&|n| grains[n].as_ref()?.white)),
            ("colour of the noise", log_ratio(&|n| colours[n])),
        ];
        said.left_out = tried.into_iter().filter_map(|(name, value)| Some((name, value?))).collect();
        Some(said)
    };
    holders(&markers, kit).iter().filter_map(of_holder).collect()
}

/// As `markers-without-noise` has it.
fn noise(grains: &[Option<Grain>], own: &[usize], others: &[usize]) -> Option<f64> {
    let of_colour = |white: bool, n: usize| grains[n].as_ref().and_then(|g| if white { g.white } else { g.black });
    let usual = [true, false].map(|white| {
        let all: Vec<f64> = others.iter().filter_map(|n| of_colour(white, *n)).collect();
        if all.len() < 4 { None } else { median(all).filter(|m| *m >= 0.3) }
    });
    let share = |n: &usize| {
        let both = [true, false].into_iter().zip(usual);
        both.filter_map(|(white, usual)| Some(of_colour(white, *n)? / usual?)).reduce(f64::max)
    };
    let shares: Vec<f64> = own.iter().filter_map(share).collect();
    if shares.len() < 2 { None } else { median(shares) }
}

/// Neighbours' differences against those of pixels two apart, white: 1 for noise that knows nothing of its neighbours, less
/// for what was resampled (in the spirit of Popescu and Farid 2005, IEEE Transactions on Signal Processing 53, 758-767).
fn colour(luma: &Luma, marker: &Sighting) -> Option<f64> {
    let middle = marker.corners_px.iter().sum::<nalgebra::Vector2<f64>>() / 4.0;
    let (mut near, mut far, mut count) = (0.0, 0.0, 0);
    // The border of a marker is black, one cell wide and as flat as anything: its sides' middle lines.
    for side in 0..4 {
        let (a, b) = (marker.corners_px[side], marker.corners_px[(side + 1) % 4]);
        let cell = (b - a).norm() / 8.0;
        let inward = ((middle - (a + b) / 2.0) / (middle - (a + b) / 2.0).norm()) * (cell / 2.0);
        let (start, along) = (a + (b - a) / 8.0 + inward, (b - a) * 0.75);
        let steps = along.norm() as usize;
        let horizontal = along.x.abs() > along.y.abs();
        for k in 0..steps {
            let p = start + along * (k as f64 / steps as f64);
            let at = |d: usize| {
                let (u, v) = (p.x.round() as usize, p.y.round() as usize);
                let (u, v) = if horizontal { (u + d, v) } else { (u, v + d) };
                (u < luma.width() && v < luma.height()).then(|| f64::from(luma.at(u, v)))
            };
            let (Some(x), Some(y), Some(z)) = (at(0), at(1), at(2)) else { continue };
            near += (x - y).powi(2);
            far += (x - z).powi(2);
            count += 1;
        }
    }
    (count > 60 && far > 0.0).then(|| near / far)
}

/// One row of the table.
#[derive(Debug, Default)]
struct Row {
    photos: usize,
    all: Vec<Beside>,
}

impl Row {
    fn add(&mut self, photo: &Photo, kit: Option<&Kit>) {
        self.photos += 1;
        self.all.extend(beside(photo, kit));
    }

    fn print(&self, name: &str) {
        let noise: Vec<f64> = self.all.iter().filter_map(|b| b.noise).collect();
        let shares: Vec<Share> = self.all.iter().filter_map(|b| b.share).collect();
        let raised = |of: usize, all: usize, least: f64| format!("{of} of {all} (least {least:.2})");
        let least = |all: &mut dyn Iterator<Item = f64>| all.fold(f64::INFINITY, f64::min);
        let smooth = noise.iter().filter(|s| **s < SMOOTH).count();
        let lacking = shares.iter().filter(|s| s.value < LACKS && s.value + SURE * s.u < 0.5).count();
        println!(
            "{name}: {} photos, {} holders; without noise {}; other compression {}",
            self.photos,
            self.all.len(),
            raised(smooth, noise.len(), least(&mut noise.iter().copied())),
            raised(lacking, shares.len(), least(&mut shares.iter().map(|s| s.value))),
        );
        for doubt in ["blur", "white minus black", "size of the noise", "colour of the noise"] {
            let mut values: Vec<f64> = self.all.iter().filter_map(|b| b.left_out.get(doubt).copied()).collect();
            if values.is_empty() {
                continue;
            }
            values.sort_by(f64::total_cmp);
            let at = |q: f64| values[((values.len() - 1) as f64 * q).round() as usize].exp();
            println!(
                "    {doubt}, own to others: {} holders, 1 % to 99 %: {:.2} to {:.2}",
                values.len(),
                at(0.01),
                at(0.99)
            );
        }
    }
}

/// A photo as it is, and saved again finely: then there is an earlier compression to be found.
fn add_both(rows: &mut [Row; 2], photo: &Photo, kit: Option<&Kit>) {
    rows[0].add(photo, kit);
    rows[1].add(&of(&saved_again(&photo.luma, 97)), kit);
}

/// The shared photos in two halves, every other job; the limit of the noise was chosen on all of them.
#[test]
#[ignore = "minutes: cargo test --test suite made::rates -- --ignored --nocapture"]
fn of_shared_photos() {
    let mut halves: [[Row; 2]; 2] = Default::default();
    let mut jobs: Vec<PathBuf> = ["bay/jobs", "phone/jobs"]
        .into_iter()
        .flat_map(|below| {
            shared(below).into_iter().flat_map(|f| std::fs::read_dir(f).unwrap().map(|e| e.unwrap().path()))
        })
        .filter(|job| job.join("job.toml").is_file())
        .collect();
    jobs.sort();
    for (n, job) in jobs.iter().enumerate() {
        let folder = JobFolder::open(job, &Models::embedded()).unwrap();
        for photo in &folder.photos {
            add_both(&mut halves[n % 2], &read(&photo.path).unwrap(), Some(&folder.kit));
        }
    }
    let mut real: [Row; 2] = Default::default();
    for below in ["real/room", "real/apriltag_test"] {
        for path in shared(below).map_or_else(Vec::new, |folder| real_pictures(&folder)) {
            add_both(&mut real, &read(&path).unwrap(), None);
        }
    }
    for (name, rows) in [("shared, first half", &halves[0]), ("shared, second half", &halves[1]), ("real", &real)] {
        rows[0].print(name);
        rows[1].print(&format!("{name}, saved again"));
        for b in rows.iter().flat_map(|r| &r.all) {
            assert!(b.noise.is_none_or(|s| s >= SMOOTH), "{name}: {b:?}");
            assert!(b.share.is_none_or(|s| s.value >= LACKS), "{name}: {b:?}");
        }
    }
}

fn real_pictures(folder: &Path) -> Vec<PathBuf> {
    let mut all = pictures(folder);
    all.sort();
    all
}

/// Fresh bays as nine phones develop them, which chose no limit. `BAYWITNESS_MADE_SEEDS` bays of each.
#[test]
#[ignore = "minutes: cargo test --test suite made::rates -- --ignored --nocapture"]
fn of_fresh_photos_as_nine_phones_develop_them() {
    let seeds: u64 = std::env::var("BAYWITNESS_MADE_SEEDS").map_or(3, |n| n.parse().unwrap());
    let file: PathBuf =
        [env!("CARGO_MANIFEST_DIR"), "samples", "scenes", "mistakes", "noise-repeated.toml"].iter().collect();
    let (mut all, mut jobs, mut copied) = (<[Row; 2]>::default(), 0, 0);
    for preset in Preset::ALL {
        for seed in 0..seeds {
            let mut scene = Scene::read(&file).unwrap();
            scene.spec.seed = 1000 + seed;
            scene.spec.insides = InsidesSpec::preset(preset);
            for photo in scene.spec.photo.iter_mut().flatten() {
                photo.forged.noise_of = None;
            }
            let folder = tempfile::tempdir().unwrap();
            scene.stage(folder.path(), &mut |_| ()).unwrap();
            let opened = JobFolder::open(folder.path(), &Models::embedded()).unwrap();
            for photo in &opened.photos {
                add_both(&mut all, &decode(&std::fs::read(&photo.path).unwrap(), "a.jpg").unwrap(), Some(&opened.kit));
            }
            // Photos of a tripod, before and after a move: the same prints from the same place.
            jobs += 1;
            let repeated = judged(folder.path()).findings.iter().any(|f| f.code == "noise-repeated");
            copied += u32::from(repeated);
        }
        println!("{}: {copied} of {jobs} jobs of a tripod so far have noise that repeats", preset.name());
    }
    all[0].print("fresh");
    all[1].print("fresh, saved again");
    assert_eq!(copied, 0);
    for b in all.iter().flat_map(|r| &r.all) {
        assert!(b.noise.is_none_or(|s| s >= SMOOTH) && b.share.is_none_or(|s| s.value >= LACKS), "{b:?}");
    }
}
