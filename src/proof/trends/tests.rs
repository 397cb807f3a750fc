//! What the statistics cost by the number of jobs. Lines come through a pipe, so
//! that ten million of them need no disk.
//!
//! `BAYWITNESS_SCALE=100000,1000000 cargo test --release -p baywitness-proof --lib trends_at_scale -- --ignored --nocapture`

use std::fmt::Write as _;
use std::io::{BufWriter, Write as _};
use std::path::Path;

use rand::rngs::ChaCha8Rng;
use rand::{RngExt, SeedableRng};
use rayon::prelude::*;

use super::{Factor, Options, trends};
use crate::custody::tests::{sizes, told};

const CHECKS: [(&str, &str, f64, f64); 6] = [
    ("distance", "mm", 1500.0, 10.0),
    ("lateral_offset", "mm", 0.0, 8.0),
    ("height", "mm", 820.0, 8.0),
    ("yaw", "deg", 0.0, 0.3),
    ("pitch", "deg", 0.0, 0.5),
    ("roll", "deg", 0.0, 0.6),
];
/// Days that the archive covers.
const DAYS: u64 = 1500;

/// A line of an audit with its result in it.
fn line(n: u64) -> String {
    let mut random = ChaCha8Rng::seed_from_u64(n);
    let (person, bay, sheet, kit) = (
        random.random_range(0..60),
        random.random_range(0..40),
        random.random_range(0..80),
        random.random_range(0..30),
    );
    let mut text = format!(
        r#"{{"path":"archive/{}/J-{n}","exit":0,"digest":"{n:064x}","result":{{"format":"result/1","job":"J-{n}","#,
        n % 97
    );
    let date = time::Date::from_ordinal_date(2026, 1).unwrap() + time::Duration::days((n % DAYS) as i64);
    let _ = write!(
        text,
        r#""context":{{"setup":"sheet-{sheet}","kit":"kit-{kit}","cameras":["phone"],"vehicle":"invented {sheet}","series":"R-{}","attempt":{},"bay":"Bay {bay}","technician":"T-{person}","taken":"{date}T1{}:00:00+01:00"}},"checks":["#,
        n / 3 * 2 + n % 3 / 2,
        1 + n % 3 % 2,
        n % 9
    );
    let mut any = false;
    for (k, (quantity, unit, nominal, tolerance)) in CHECKS.into_iter().enumerate() {
        let mut z = 0.42 * crate::num::normal_quantile(random.random_range(1e-9..1.0 - 1e-9));
        if quantity == "yaw" && person == 3 {
            z += 0.5;
        }
        any |= z.abs() > 1.0;
        let _ = write!(
            text,
            r#"{}{{"quantity":"{quantity}","from":null,"target":null,"step":null,"unit":"{unit}","nominal":{nominal},"lower":{},"upper":{},"value":{:.4},"verdict":"{}"}}"#,
            if k > 0 { "," } else { "" },
            nominal - tolerance,
            nominal + tolerance,
            nominal + z * tolerance,
            if z.abs() > 1.0 { "outside" } else { "within" }
        );
    }
    let blurred = random.random_range(0.0..1.0) < 0.03;
    let finding = if blurred { r#"{"code":"photo-blurred","level":"warn","message":"invented"}"# } else { "" };
    let verdict = if any { "outside" } else { "within" };
    let _ = writeln!(text, r#"],"photos":[],"findings":[{finding}],"verdict":"{verdict}"}}}}"#);
    text
}

fn write(path: &Path, jobs: u64) {
    let mut pipe = BufWriter::new(std::fs::File::create(path).unwrap());
    let mut from = 0;
    while from < jobs {
        let some: Vec<String> = (from..jobs.min(from + 20_000)).into_par_iter().map(line).collect();
        some.iter().for_each(|text| pipe.write_all(text.as_bytes()).unwrap());
        from += 20_000;
    }
}

#[test]
#[ignore = "minutes and gigabytes: BAYWITNESS_SCALE=100000,1000000,10000000 says how many jobs"]
fn trends_at_scale() {
    for jobs in sizes() {
        let dir = tempfile::tempdir().unwrap();
        told("results made (the test's own)", jobs, || {
            assert!((0..jobs).into_par_iter().map(|n| line(n).len()).sum::<usize>() > 0);
        });
        let pipe = dir.path().join("audit.jsonl");
        assert!(std::process::Command::new("mkfifo").arg(&pipe).status().unwrap().success());
        let options = Options { by: Factor::Technician, out: dir.path(), reports: &[], people: None };
        let found = told("results made, read, compared", jobs, || {
            std::thread::scope(|scope| {
                scope.spawn(|| write(&pipe, jobs));
                trends(std::slice::from_ref(&pipe), &options).unwrap()
            })
        });
        assert_eq!(found.record.read.results as u64, jobs);
        let named: Vec<_> = found.record.effects.iter().map(|e| e.name.as_str()).collect();
        assert_eq!(named, ["T-3"], "what was planted is named, and nothing else");
        let rows = told("rows of the table", jobs, || found.rows().map(|row| row.concat().len()).sum::<usize>());
        assert!(rows > jobs as usize);
    }
}
