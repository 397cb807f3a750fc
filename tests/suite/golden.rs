//! The record of each sample against a checked-in one (`tests/suite/golden/NAME.json`).
//!
//! A number that stands beside its standard uncertainty may differ by a
//! thousandth of that, any other by a thousandth of itself, so that another
//! processor's rounding changes nothing. `BAYWITNESS_GOLDEN=rewrite` writes
//! the files anew.

#![cfg(test)]

use std::path::{Path, PathBuf};

use baywitness::folder::Models;
use baywitness::job;
use baywitness::record::JobRecord;
use serde_json::{Value, json};

const SHARE: f64 = 1e-3;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn samples() -> Vec<PathBuf> {
    let entries = std::fs::read_dir(root().join("samples")).unwrap().map(|e| e.unwrap().path());
    let mut samples: Vec<PathBuf> = entries.filter(|p| p.join("job.toml").is_file()).collect();
    samples.sort();
    samples
}

/// `x` to four significant figures of `u`.
fn rounded(x: f64, u: f64) -> f64 {
    if u <= 0.0 || !u.is_finite() {
        return x;
    }
    let digits = (3.0 - u.log10().floor()) as i32;
    let scale = 10f64.powi(digits.abs());
    if digits >= 0 { (x * scale).round() / scale } else { (x / scale).round() * scale }
}

/// What a sample must keep saying: verdicts, numbers, words, markers.
fn kept(record: &JobRecord) -> Value {
    let estimate = |value: f64, u: f64| json!({ "value": rounded(value, u), "standard_uncertainty": rounded(u, u) });
    let checks: Vec<Value> = record
        .checks
        .iter()
        .map(|c| {
            json!({
                "quantity": c.quantity,
                "from": c.from,
                "verdict": c.verdict,
                "can_decide": c.can_decide,
                "correction": c.correction,
                "estimate": c.value.zip(c.standard_uncertainty).map(|(v, u)| estimate(v, u)),
            })
        })
        .collect();
    let measured: serde_json::Map<String, Value> =
        record.measured.iter().map(|(k, m)| (k.clone(), estimate(m.value, m.standard_uncertainty))).collect();
    let findings: Vec<Value> =
        record.findings.iter().map(|f| json!([f.code, f.level, f.carrier, f.photo, f.message])).collect();
    let photos: Vec<Value> = record
        .photos
        .iter()
        .map(|p| json!({ "file": p.file, "markers": p.markers.iter().map(|m| m.id).collect::<Vec<_>>() }))
        .collect();
    json!({
        "format": record.format,
        "job": record.job,
        "inputs": record.inputs,
        "verdict": record.verdict,
        "reason": record.reason,
        "reference_line": record.reference_line,
        "checks": checks,
        "measured": measured,
        "photos": photos,
        "findings": findings,
    })
}

/// Where two records differ by more than rounding.
fn differences(at: &str, wanted: &Value, found: &Value, out: &mut Vec<String>) {
    match (wanted, found) {
        (Value::Object(a), Value::Object(b)) if a.keys().eq(b.keys()) => {
            let u = a.get("standard_uncertainty").and_then(Value::as_f64);
            for (key, x) in a {
                let place = format!("{at}/{key}");
                match (x.as_f64().zip(b[key].as_f64()), u) {
                    (Some((x, y)), Some(u)) if (x - y).abs() <= SHARE * u => {}
                    _ => differences(&place, x, &b[key], out),
                }
            }
        }
        (Value::Array(a), Value::Array(b)) if a.len() == b.len() => {
            for (i, (x, y)) in a.iter().zip(b).enumerate() {
                differences(&format!("{at}/{i}"), x, y, out);
            }
        }
        (Value::Number(a), Value::Number(b)) => {
            let (a, b) = (a.as_f64().unwrap(), b.as_f64().unwrap());
            if at.ends_with("/value") || (a - b).abs() > SHARE * a.abs() {
                out.push(format!("{at}: {a} became {b}"));
            }
        }
        (a, b) if a == b => {}
        (a, b) => out.push(format!("{at}: {a} became {b}")),
    }
}

#[test]
fn samples_keep_their_records() {
    let samples = samples();
    if samples.is_empty() {
        println!("skipped: samples/ holds no job folder");
        return;
    }
    let rewrite = std::env::var("BAYWITNESS_GOLDEN").is_ok_and(|v| v == "rewrite");
    let mut all = Vec::new();
    for sample in samples {
        let record = job::verify(&sample, &job::Options::new(Models::embedded())).unwrap();
        let name = sample.file_name().unwrap().to_str().unwrap().to_owned();
        let golden = root().join("tests/golden").join(format!("{name}.json"));
        let found = kept(&record);
        if rewrite {
            std::fs::create_dir_all(golden.parent().unwrap()).unwrap();
            std::fs::write(&golden, serde_json::to_string_pretty(&found).unwrap() + "\n").unwrap();
            continue;
        }
        let text = std::fs::read_to_string(&golden)
            .unwrap_or_else(|_| panic!("no record of sample {name}: run this test with BAYWITNESS_GOLDEN=rewrite"));
        differences(&name, &serde_json::from_str(&text).unwrap(), &found, &mut all);
    }
    assert!(all.is_empty(), "{all:#?}");
}

#[test]
fn differences_are_told_by_the_uncertainty() {
    let record = |value: f64| json!({ "a": [{ "value": value, "standard_uncertainty": 0.5 }], "n": 3 });
    let count = |b: Value| {
        let mut out = Vec::new();
        differences("", &record(100.0), &b, &mut out);
        out.len()
    };
    assert_eq!([count(record(100.0004)), count(record(100.001)), count(json!({ "a": [], "n": 3 }))], [0, 1, 1]);
    assert!((rounded(1234.56789, 0.0123) - 1234.56789).abs() <= 5e-6);
    assert!((rounded(1234.56789, 1.23) - 1234.568).abs() < 1e-9);
}
