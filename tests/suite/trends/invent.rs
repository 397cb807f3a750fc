//! Invented archives: results as `verify` writes their keys, with effects that
//! are known because they were put in.

use std::fmt::Write;

use rand::rngs::ChaCha8Rng;
use rand::{RngExt, SeedableRng};

/// How an archive is made.
#[derive(Clone)]
pub(crate) struct Plan {
    pub(crate) jobs: usize,
    pub(crate) seed: u64,
    pub(crate) people: usize,
    pub(crate) bays: usize,
    pub(crate) sheets: usize,
    pub(crate) kits: usize,
    /// Whether a bay has its own kit.
    pub(crate) kit_of_bay: bool,
    /// Some people and bays have far more jobs than others.
    pub(crate) uneven: bool,
    /// Now and then a job is far off.
    pub(crate) tails: bool,
    /// The effects of [`PLANTED`].
    pub(crate) planted: bool,
}

impl Plan {
    pub(crate) fn new(jobs: usize, seed: u64) -> Self {
        Plan {
            jobs,
            seed,
            people: 9,
            bays: 6,
            sheets: 12,
            kits: 5,
            kit_of_bay: false,
            uneven: true,
            tails: true,
            planted: false,
        }
    }
}

/// Name, quantity, factor of what is planted.
pub(crate) const PLANTED: [(&str, &str, &str); 4] = [
    ("T-3", "yaw", "technician"),
    ("Bay 2", "pitch", "bay"),
    ("kit-4", "lateral_offset", "kit"),
    ("sheet-7", "distance", "setup"),
];

const CHECKS: [(&str, &str, f64, f64); 6] = [
    ("distance", "mm", 1500.0, 10.0),
    ("lateral_offset", "mm", 0.0, 8.0),
    ("height", "mm", 820.0, 8.0),
    ("yaw", "deg", 0.0, 0.3),
    ("pitch", "deg", 0.0, 0.5),
    ("roll", "deg", 0.0, 0.6),
];

fn normal(rng: &mut ChaCha8Rng) -> f64 {
    let (u, v): (f64, f64) = (rng.random_range(1e-12..1.0), rng.random_range(0.0..1.0));
    (-2.0 * u.ln()).sqrt() * (std::f64::consts::TAU * v).cos()
}

fn pick(rng: &mut ChaCha8Rng, n: usize, uneven: bool) -> usize {
    let u: f64 = rng.random_range(0.0..1.0);
    ((if uneven { u.powf(1.7) } else { u }) * n as f64) as usize
}

/// Code of a check that is outside.
fn code(quantity: &str, too_much: bool) -> &'static str {
    match (quantity, too_much) {
        ("distance", false) => "stand-too-near",
        ("distance", true) => "stand-too-far",
        ("lateral_offset", _) => "stand-off-centre",
        ("height", false) => "stand-too-low",
        ("height", true) => "stand-too-high",
        ("yaw", _) => "stand-turned",
        ("pitch", _) => "stand-tilted",
        _ => "stand-not-level",
    }
}

/// The archive, one result a line.
pub(crate) fn archive(plan: &Plan) -> String {
    let mut rng = ChaCha8Rng::seed_from_u64(plan.seed);
    let mut text = String::new();
    let mut made = 0;
    while made < plan.jobs {
        let person = pick(&mut rng, plan.people, plan.uneven) + 1;
        let bay = pick(&mut rng, plan.bays, plan.uneven) + 1;
        let sheet = pick(&mut rng, plan.sheets, plan.uneven) + 1;
        let kit = if plan.kit_of_bay { bay } else { pick(&mut rng, plan.kits, false) + 1 };
        let day: i64 = rng.random_range(0..364);
        let series = made;
        for attempt in 1..=3 {
            let outside = job(plan, &mut rng, &mut text, [person, bay, sheet, kit], day, series, attempt);
            made += 1;
            if !outside || rng.random_range(0.0..1.0) < 0.3 || made >= plan.jobs {
                break;
            }
        }
    }
    text
}

fn job(
    plan: &Plan,
    rng: &mut ChaCha8Rng,
    text: &mut String,
    who: [usize; 4],
    day: i64,
    series: usize,
    attempt: u32,
) -> bool {
    let [person, bay, sheet, kit] = who;
    let (mut checks, mut findings, mut any) = (Vec::new(), Vec::new(), false);
    for (quantity, unit, nominal, tolerance) in CHECKS {
        let mut z = 0.42 * normal(rng);
        if plan.tails && rng.random_range(0.0..1.0) < 0.02 {
            z *= 5.0;
        }
        if plan.planted {
            match quantity {
                "yaw" if person == 3 => z += 0.5,
                "pitch" if bay == 2 => z -= 0.4,
                "lateral_offset" if kit == 4 && day / 7 + 1 >= 30 => z += 0.4,
                _ => {}
            }
        }
        // The sheet says 1050, everybody sets up at 1500 as the service information says.
        let typed = if plan.planted && quantity == "distance" && sheet == 7 { 1050.0 } else { nominal };
        let value = nominal + z * tolerance;
        let off = value - typed;
        let outside = off.abs() > tolerance;
        any |= outside;
        if outside {
            findings.push(format!(r#"{{"code":"{}","level":"warn","message":"invented"}}"#, code(quantity, off > 0.0)));
        }
        checks.push(format!(
            r#"{{"quantity":"{quantity}","from":null,"target":null,"step":null,"reference_line":"centreline","unit":"{unit}","nominal":{typed},"lower":{},"upper":{},"value":{value:.4},"standard_uncertainty":{},"verdict":"{}","can_decide":true,"move":{:.4},"correction":"invented"}}"#,
            typed - tolerance,
            typed + tolerance,
            tolerance / 8.0,
            if outside { "outside" } else { "within" },
            -off
        ));
    }
    if rng.random_range(0.0..1.0) < 0.03 {
        findings.push(r#"{"code":"photo-blurred","level":"warn","message":"invented"}"#.to_owned());
    }
    // 2026 begins in ISO week 1 on a Thursday: day 0 is the Monday of week 2.
    let date = time::Date::from_ordinal_date(2026, 5).unwrap() + time::Duration::days(day);
    let _ = writeln!(
        text,
        r#"{{"format":"result/1","tool":{{"name":"baywitness","version":"0.1.0"}},"job":"J-{series}-{attempt}","context":{{"setup":"sheet-{sheet}","kit":"kit-{kit}","cameras":["phone"],"vehicle":"invented {sheet}","vin":null,"series":"R-{series}","attempt":{attempt},"bay":"Bay {bay}","technician":"T-{person}","taken":"{date}T1{attempt}:00:00+01:00","prerequisites":{{}},"record_complete":true,"calibration":null}},"inputs":[],"verdict":"{}","reference_line":"centreline","checks":[{}],"measured":{{}},"carriers":[],"photos":[],"readings":[],"attachments":[],"findings":[{}]}}"#,
        if any { "outside" } else { "within" },
        checks.join(","),
        findings.join(",")
    );
    any
}

/// The ISO week from which on the kit is off: day 203 is in the week that begins on 27 July.
pub(crate) const DRIFT_WEEK: &str = "2026-W31";
