//! What an audit's own work costs by the number of jobs, without photos: results
//! are invented, as an archive of some workshops would hold them.
//!
//! `BAYWITNESS_SCALE=100000,1000000 cargo test --release -p baywitness-proof --lib audit_at_scale -- --ignored --nocapture`

use std::sync::LazyLock;

use rand::rngs::ChaCha8Rng;
use rand::{Rng, RngExt, SeedableRng};
use rayon::prelude::*;
use serde_json::{Value, json};

use super::across::Jobs;
use super::judged::{Judged, Outcome};
use super::ledger::Ledger;
use super::lines::{LineFile, text_of};
use crate::custody::tests::{sizes, told};
use crate::record::{JobRecord, PhotoRecord, Verdict};

const KITS: u64 = 40;
const SHEETS: u64 = 60;
const CHECKS: [(&str, &str, f64, f64, f64); 6] = [
    ("distance", "mm", 1500.0, 5.0, 0.12),
    ("lateral_offset", "mm", 0.0, 5.0, 0.25),
    ("height", "mm", 820.0, 5.0, 0.1),
    ("yaw", "deg", 0.0, 0.2, 0.0012),
    ("pitch", "deg", 0.0, 0.2, 0.0034),
    ("roll", "deg", 0.0, 0.2, 0.0034),
];
/// One job in so many has a photo of an earlier one.
const COPIED: u64 = 10_000;
/// One in so many has no result.
const BROKEN: u64 = 50;

fn normal(random: &mut impl Rng) -> f64 {
    crate::num::normal_quantile(random.random_range(1e-9..1.0 - 1e-9))
}

fn random(n: u64) -> ChaCha8Rng {
    ChaCha8Rng::seed_from_u64(n.wrapping_mul(0x9e37_79b9_7f4a_7c15))
}

/// What all results of the invented archive have in common, read once: reading JSON costs more than all else here.
static COMMON: LazyLock<JobRecord> = LazyLock::new(|| {
    let checks: Vec<Value> = CHECKS
        .iter()
        .map(|(quantity, unit, nominal, spread, u)| {
            let limit = 2.0 * spread;
            json!({ "quantity": quantity, "from": null, "target": null, "step": null, "reference_line": "centreline",
                "unit": unit, "nominal": nominal, "lower": nominal - limit, "upper": nominal + limit, "evidence": "photos",
                "value": nominal, "standard_uncertainty": 2.0 * u, "degrees_of_freedom": 50.0,
                "coverage_factor": 2.0, "expanded_uncertainty": 4.0 * u, "conformance_probability": 0.9,
                "verdict": "within", "can_decide": true, "grade": null, "move": 0.0, "correction": "invented",
                "budget": [{ "source": "noise of the photos", "standard_uncertainty": u, "share": 0.25 }] })
        })
        .collect();
    let markers: Vec<Value> = ["stand", "floor", "left", "right"]
        .iter()
        .enumerate()
        .map(|(id, carrier)| {
            json!({ "id": 10 * id, "carrier": carrier, "corners_px": [[0.0, 0.0], [0.0, 0.0], [0.0, 0.0], [0.0, 0.0]],
                "residual_px": 0.1, "used": true })
        })
        .collect();
    let photo = |k: usize| {
        json!({ "file": format!("photos/{k}.jpg"), "camera": "phone", "width_px": 4000, "height_px": 3000, "orientation": 1,
            "rms_px": 0.1, "focal_px": null, "edge_offset_px": 0.0, "markers": markers })
    };
    let input = |k: usize| json!({ "role": "photo", "file": format!("photos/{k}.jpg"), "sha256": "" });
    let record = json!({ "format": "result/1", "tool": { "name": "baywitness", "version": env!("CARGO_PKG_VERSION") },
        "job": "",
        "sheet": { "title": "invented", "source": "invented", "decision_rule": "guarded", "conformance_probability": 0.95,
            "procedure": {}, "waived": [], "not_checked": [], "prerequisites": [] },
        "context": { "setup": "", "kit": "", "cameras": ["phone"], "vehicle": "invented", "vin": null, "series": null,
            "attempt": 1, "bay": null, "technician": null, "taken": null, "prerequisites": {},
            "record_complete": true, "calibration": null },
        "inputs": [input(0), input(1)], "verdict": "within", "reason": "invented", "reference_line": "centreline",
        "checks": checks, "checks_without_readings": null, "measured": {}, "carriers": [],
        "photos": [photo(0), photo(1)], "readings": [], "attachments": [], "findings": [] });
    serde_json::from_value(record).unwrap()
});

/// A job of one repair order by a sheet of this name, which wants its target so much farther away and higher.
pub(super) fn by_sheet(setup: &str, farther_mm: f64) -> JobRecord {
    let mut record = COMMON.clone();
    (record.context.setup, record.context.series) = (setup.to_owned(), Some("R-7".to_owned()));
    for check in record.checks.iter_mut().filter(|check| matches!(check.quantity.as_str(), "distance" | "height")) {
        check.nominal += farther_mm;
        check.lower = check.lower.map(|limit| limit + farther_mm);
        check.upper = check.upper.map(|limit| limit + farther_mm);
    }
    record
}

/// Job `n` of the invented archive: the same each time it is asked for.
fn outcome(n: u64) -> Outcome {
    if n % BROKEN == BROKEN - 1 {
        return Err("invented: kit.toml is missing".to_owned());
    }
    let mut random = random(n);
    let sheet = random.random_range(0..SHEETS);
    let mut record = COMMON.clone();
    let mut worst = 0.0_f64;
    for (check, (_, _, nominal, spread, _)) in record.checks.iter_mut().zip(&CHECKS) {
        let z = normal(&mut random);
        worst = worst.max(z.abs() / 2.0);
        check.value = Some(nominal + z * spread);
        check.verdict = if z.abs() > 2.0 { Verdict::Outside } else { Verdict::Within };
    }
    record.verdict = if worst > 1.0 { Verdict::Outside } else { Verdict::Within };
    for k in 0..2 {
        // The second may be copied from a job somewhat before.
        let (of, from) = if k == 1 && n % COPIED == 77 { (n - 70, 0) } else { (n, k as u64) };
        record.inputs[k].sha256 = format!("{:016x}{from:02x}{of:046x}", random_number(of));
        place_markers(&mut record.photos[k], of, from);
    }
    record.job = format!("J-{n}");
    let context = &mut record.context;
    context.setup = format!("sheet-{sheet}");
    context.kit = format!("kit-{}", n % KITS);
    context.series = Some(format!("R-{n}"));
    context.bay = Some(format!("Bay {}", n % 7));
    context.technician = Some(format!("T-{}", n % 11));
    let day = time::Date::from_ordinal_date(2026, 1).unwrap() + time::Duration::days((n % 700) as i64);
    context.taken = Some(format!("{day}T10:00:00+01:00"));
    Ok(Box::new(record))
}

fn random_number(n: u64) -> u64 {
    random(n).next_u64()
}

/// Four carriers with a marker each, seen from somewhere.
fn place_markers(photo: &mut PhotoRecord, n: u64, which: u64) {
    let mut random = random(2 * n + which + 1);
    for (at, marker) in photo.markers.iter_mut().enumerate() {
        let (side, u, v) = (random.random_range(55.0..75.0), 700.0 * at as f64, random.random_range(300.0..2500.0));
        let u: f64 = u + random.random_range(0.0..900.0);
        marker.corners_px = [[u, v], [u + side, v], [u + side, v + side], [u, v + side]];
    }
}

/// The line of a job, its result beside it or, as here, made again when it is asked for.
fn line(n: u64, outcome: &Outcome) -> Judged {
    let record = outcome.as_ref().ok();
    Judged {
        path: format!("archive/{}/{:02}/J-{n}", 2026 + n % 3, n % 97),
        exit: record.map_or(2, |r| r.verdict.exit_code()),
        verdict: record.map(|r| r.verdict),
        result: Value::String(format!(
            "results/archive_{}_{:02}_J-{n}-{:016x}.json",
            2026 + n % 3,
            n % 97,
            random_number(n)
        )),
        digest: format!("{:016x}{:048x}", random_number(n), n),
        evidence: None,
        signer: None,
        report: None,
        version: env!("CARGO_PKG_VERSION").to_owned(),
        changed: Vec::new(),
        across: Vec::new(),
    }
}

#[test]
#[ignore = "minutes and gigabytes: BAYWITNESS_SCALE=100000,1000000,10000000 says how many jobs"]
fn audit_at_scale() {
    for jobs in sizes() {
        let dir = tempfile::tempdir().unwrap();
        let path = dir.path().join("audit.jsonl");
        told("lines written", jobs, || {
            let mut file = std::io::BufWriter::new(std::fs::File::create(&path).unwrap());
            let mut from = 0;
            while from < jobs {
                let some = from..jobs.min(from + 10_000);
                let text: Vec<String> = some.into_par_iter().map(|n| text_of(&line(n, &Err(String::new())))).collect();
                text.iter().for_each(|t| std::io::Write::write_all(&mut file, t.as_bytes()).unwrap());
                from += 10_000;
            }
        });
        println!("{jobs:9}  {:.0} bytes of lines a job", std::fs::metadata(&path).unwrap().len() as f64 / jobs as f64);
        // A run that goes on: every line is found by its path.
        let places = told("opened, every line looked up", jobs, || {
            let lines = LineFile::open(&path).unwrap();
            let place = |n: u64| lines.of(&line(n, &Err(String::new())).path).unwrap().0;
            (0..jobs).into_par_iter().map(place).collect::<Vec<u64>>()
        });
        let made = told("results made (the test's own)", jobs, || {
            (0..jobs).into_par_iter().map(|n| usize::from(outcome(n).is_ok())).sum::<usize>()
        });
        assert_eq!(made as u64, jobs - jobs / BROKEN);
        let found = told("results made, then compared", jobs, || {
            let mut index = Jobs::default();
            let mut from = 0;
            while from < jobs {
                let some: Vec<Outcome> = (from..jobs.min(from + 1000)).into_par_iter().map(outcome).collect();
                some.iter().enumerate().for_each(|(k, outcome)| index.add(from as usize + k, outcome));
                from += 1000;
            }
            index.pairs(|n| Ok::<_, ()>(outcome(n as u64).ok().map(|r| *r))).unwrap()
        });
        let copied = (0..jobs).filter(|n| n % COPIED == 77).count();
        let photos: Vec<_> = found.iter().filter(|j| j.code == "photo-of-another-job").collect();
        assert_eq!(photos.len(), copied, "each copied photo leads to its job and no other does");
        assert!(photos.iter().all(|j| j.jobs[0] + 70 == j.jobs[1]));
        println!("{jobs:9}  {} leads to set-ups", found.len() - photos.len());
        told("lines in their order", jobs, || {
            let ledger = Ledger::open(dir.path(), false).unwrap();
            ledger.finish(places.iter().map(|place| ledger.line(*place))).unwrap()
        });
    }
}
