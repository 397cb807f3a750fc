//! The sizes that a job states as found with .95, against what is found.

use baywitness::geom::{Attitude, Pose};
use baywitness::pose::{Extra, Options, ScoreTest, adjust};
use baywitness::verdict::findings::{Suspect, suspects};
use nalgebra::Vector3;
use rayon::prelude::*;

use super::bench::{Judged, bay, job, judge, samples, sheet};
use super::campaign::{interval, least};
use super::planted::{At, carrier_stepped, on_wheel, shifted, stepped};
use crate::sampled_bay::{Bay, Flaw, Sample, flawed, sample};

/// A kind of flaw whose size a job states.
struct Kind {
    what: &'static str,
    code: &'static str,
    carrier: Option<&'static str>,
    unit: &'static str,
    /// A job with the flaw at that size in the direction and the photos that show it worst.
    plant: fn(u64, f64) -> Sample,
}

const STAND: usize = 0;
const PLATE: usize = 1;

const SHEET: &str = "floor-2";

const KINDS: [Kind; 11] = [
    Kind {
        what: "stand moved",
        code: "stand-moved-between-photos",
        carrier: Some("stand"),
        unit: "mm",
        plant: |s, x| moved(s, x, STAND, 0),
    },
    Kind {
        what: "stand turned",
        code: "stand-moved-between-photos",
        carrier: Some("stand"),
        unit: "deg",
        plant: |s, x| moved(s, x, STAND, 3),
    },
    Kind {
        what: "a plate moved",
        code: "plate-not-seated",
        carrier: Some("rear-left"),
        unit: "mm",
        plant: |s, x| moved(s, x, PLATE, 0),
    },
    Kind {
        what: "a plate turned",
        code: "plate-not-seated",
        carrier: Some("rear-left"),
        unit: "deg",
        plant: |s, x| moved(s, x, PLATE, 3),
    },
    Kind { what: "vehicle rolled", code: "vehicle-moved-between-photos", carrier: None, unit: "mm", plant: rolled },
    Kind {
        what: "prints of the stand",
        code: "print-scale-wrong",
        carrier: Some("stand"),
        unit: "%",
        plant: |s, x| print(s, x, Some("stand")),
    },
    Kind { what: "all prints", code: "print-scale-wrong", carrier: None, unit: "%", plant: |s, x| print(s, x, None) },
    Kind { what: "a photo zoomed", code: "photo-zoomed", carrier: None, unit: "%", plant: zoomed },
    Kind { what: "a floor sheet raised", code: "floor-not-level", carrier: Some(SHEET), unit: "mm", plant: raised },
    Kind { what: "the floor bends", code: "floor-not-level", carrier: None, unit: "deg", plant: bent },
    Kind { what: "steering", code: "steering-not-straight", carrier: None, unit: "deg", plant: steering },
];

/// What a plain job states.
fn stated(judged: &Judged, kind: &Kind) -> Option<f64> {
    let own = |d: &&baywitness::verdict::findings::Detectable| {
        d.code == kind.code && d.unit == kind.unit && d.carrier.as_deref() == kind.carrier
    };
    judged.detectable.iter().find(own)?.size
}

/// The suspect of a kind that shows worst, with the worst direction of some components.
fn worst(seed: u64, components: std::ops::Range<usize>, wanted: impl Fn(&Extra) -> bool) -> (Extra, Vec<f64>) {
    let sample = sample(&bay(), seed);
    let problem = sample.problem();
    let scene = adjust(&problem, &Options::default()).unwrap();
    let least = |t: &ScoreTest| {
        let n = components.len();
        let block = t.information.view((components.start, components.start), (n, n)).into_owned();
        let eigen = ((&block + block.transpose()) / 2.0).symmetric_eigen();
        let at = eigen.eigenvalues.imin();
        (eigen.eigenvalues[at], eigen.eigenvectors.column(at).iter().copied().collect::<Vec<f64>>())
    };
    suspects(&sample.kit, &problem, &scene, &sample.after_move)
        .into_iter()
        .filter(|s: &Suspect| wanted(&s.extra))
        .map(|s| (least(&s.test), s.extra))
        .min_by(|a, b| a.0.0.total_cmp(&b.0.0))
        .map(|((_, direction), extra)| (extra, direction))
        .unwrap()
}

fn moved(seed: u64, size: f64, who: usize, first: usize) -> Sample {
    let of = |e: &Extra| matches!(e, Extra::CarrierMoved { carrier, .. } if *carrier == who);
    let (Extra::CarrierMoved { photos, .. }, d) = worst(seed, first..first + 3, of) else { unreachable!() };
    let step = [d[0] * size, d[1] * size, d[2] * size];
    let (mm, degrees) = if first == 0 { (step, [0.0; 3]) } else { ([0.0; 3], step) };
    carrier_stepped(seed, who, &photos, mm, degrees)
}

fn rolled(seed: u64, size: f64) -> Sample {
    let of = |e: &Extra| matches!(e, Extra::GroupRolled { .. });
    let (Extra::GroupRolled { photos, .. }, _) = worst(seed, 0..1, of) else { unreachable!() };
    let place = |photo: usize, name: &str, pose: At| {
        if photos.contains(&photo) && on_wheel(name) { shifted(pose, [size, 0.0, 0.0]) } else { pose }
    };
    flawed(&bay(), seed, &Flaw { place: &place, ..Flaw::default() })
}

fn print(seed: u64, percent: f64, who: Option<&str>) -> Sample {
    let factor = 1.0 + percent / 100.0;
    let print = |name: &str| if who.is_none_or(|w| w == name) { factor } else { 1.0 };
    flawed(&bay(), seed, &Flaw { print: &print, ..Flaw::default() })
}

fn zoomed(seed: u64, percent: f64) -> Sample {
    let of = |e: &Extra| matches!(e, Extra::Focal { photos } if photos.len() == 1);
    let (Extra::Focal { photos }, _) = worst(seed, 0..1, of) else { unreachable!() };
    let focal = |photo: usize| if photos.contains(&photo) { 1.0 + percent / 100.0 } else { 1.0 };
    flawed(&bay(), seed, &Flaw { focal: &focal, ..Flaw::default() })
}

fn raised(seed: u64, size: f64) -> Sample {
    let place = |_: usize, name: &str, pose: At| if name == SHEET { shifted(pose, [0.0, 0.0, size]) } else { pose };
    flawed(&bay(), seed, &Flaw { place: &place, ..Flaw::default() })
}

/// The sheets by the stand lie in a plane of their own.
fn bent(seed: u64, degrees: f64) -> Sample {
    let turn = Attitude { pitch_deg: degrees, ..Attitude::default() }.rotation();
    let centre = Vector3::new(4250.0, 0.0, 0.0);
    let place = |_: usize, name: &str, pose: At| match name {
        "floor-2" | "floor-3" => Pose::new(turn * pose.rotation(), centre + turn * (pose.origin_mm() - centre)),
        _ => pose,
    };
    flawed(&bay(), seed, &Flaw { place: &place, ..Flaw::default() })
}

fn steering(seed: u64, size: f64) -> Sample {
    let place = |_: usize, name: &str, pose: At| {
        if name.starts_with("front") { stepped(pose, [0.0; 3], [0.0, 0.0, size]) } else { pose }
    };
    flawed(&Bay { toe_deg: 0.0, ..bay() }, seed, &Flaw { place: &place, ..Flaw::default() })
}

const FACTORS: [f64; 3] = [0.7, 1.0, 1.3];

/// Prints what each kind's stated size is and how often it is found there, below and above it.
pub(crate) fn table(n: u64) -> Vec<String> {
    let mut short = Vec::new();
    println!(
        "{:24} {:>14}   found of {n} at 0.7, 1 and 1.3 of the size stated as found with .95",
        "flaw", "median size"
    );
    for kind in KINDS {
        let one = |seed: u64| {
            let seed = 74_000 + seed;
            let size = stated(&judge(&sample(&bay(), seed), &sheet(), &job()), &kind)?;
            let hit = |factor: f64| {
                let judged = judge(&(kind.plant)(seed, factor * size), &sheet(), &job());
                if factor >= 1.0 && !judged.has(kind.code) {
                    let words: Vec<String> =
                        judged.findings.iter().map(|f| crate::findings::bench::en(&f.message)).collect();
                    println!("   missed {} of {:.2} {}: {words:?}", kind.what, factor * size, kind.unit);
                }
                usize::from(judged.has(kind.code))
            };
            Some((size, FACTORS.map(hit)))
        };
        let all: Vec<(f64, [usize; 3])> = (0..n).into_par_iter().filter_map(one).collect();
        let hits = [0, 1, 2].map(|i| all.iter().map(|(_, h)| h[i]).sum::<usize>());
        let mut sizes: Vec<f64> = all.iter().map(|a| a.0).collect();
        sizes.sort_by(f64::total_cmp);
        let median = sizes.get(sizes.len() / 2).copied().unwrap_or(f64::NAN);
        let (low, high) = interval(hits[1], all.len().max(1));
        println!(
            "{:24} {median:10.3} {:3}   {hits:?} of {} (at 1: {low:.3} to {high:.3})",
            kind.what,
            kind.unit,
            all.len()
        );
        if hits[1] < least(all.len()) {
            short.push(format!("{} at the stated size: {} of {}", kind.what, hits[1], all.len()));
        }
    }
    short
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn stated_sizes_are_found() {
    let short = table(samples(3));
    assert!(short.is_empty(), "{short:?}");
}

/// A stand that is the only common body of two photos: whether it moved can't be told.
#[test]
fn what_has_no_redundancy_is_not_checkable() {
    let mut sample = flawed(&Bay { four_photos: false, ..bay() }, 3, &Flaw::default());
    let stand = sample.carrier("stand");
    let kit = sample.kit.clone();
    for (j, side) in [(0, "left"), (1, "right")] {
        sample.photos[j].views.retain(|v| v.carrier == stand || kit.carriers[v.carrier].name.ends_with(side));
    }
    let judged = judge(&sample, &sheet(), &job());
    let moved = judged.detectable.iter().find(|d| d.code == "stand-moved-between-photos").unwrap();
    assert_eq!(moved.size, None, "{moved:?}");
    assert!(crate::findings::bench::en(moved.remedy.as_ref().unwrap()).contains("a.jpg and b.jpg"), "{moved:?}");
}

/// One marker on each carrier: nothing tells the size of all prints from the size of the bay.
#[test]
fn the_size_of_all_prints_is_not_checkable_without_spacing() {
    let lone = Bay { most_markers: 1, ..bay() };
    let of_all = |bay: &Bay| {
        let judged = judge(&flawed(bay, 75_000, &Flaw::default()), &sheet(), &job());
        let wanted = judged.detectable.into_iter().find(|d| d.code == "print-scale-wrong" && d.carrier.is_none());
        wanted.unwrap()
    };
    assert_eq!(of_all(&lone).size, None);
    assert!(of_all(&bay()).size.is_some_and(|percent| percent < 1.0));
}
