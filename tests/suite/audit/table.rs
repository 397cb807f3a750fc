//! The table of an audit as Parquet (feature `parquet`): `trends` reads it as it
//! reads the lines, and no damaged file ends it.

use std::fs;
use std::path::Path;
use std::process::{Output, Stdio};

use rand::{RngExt, SeedableRng};

use super::{HARMS, archive, audit};

fn trends(input: &Path, out: &Path) -> Output {
    let mut command = crate::program::program();
    command.arg("trends").arg(input).arg("--names").arg("--out").arg(out).stdin(Stdio::null()).output().unwrap()
}

#[test]
fn trends_are_the_same_from_the_table_and_from_the_lines() {
    let dir = tempfile::tempdir().unwrap();
    let (root, out) = (dir.path().join("archive"), dir.path().join("out"));
    archive(&root, 5);
    audit(&root, &out).status().unwrap();
    let (a, b) = (dir.path().join("a"), dir.path().join("b"));
    let (lines, table) = (trends(&out, &a), trends(&out.join("audit.parquet"), &b));
    assert!(lines.status.success() && table.status.success());
    let heads = [lines, table].map(|o| String::from_utf8(o.stdout).unwrap().lines().next().unwrap().to_owned());
    assert_eq!(heads[0], heads[1]);
    assert!(heads[1].contains(&format!("{} could not be judged", HARMS.len())), "{}", heads[1]);
    for name in ["trends.json", "trends.csv", "jobs.csv", "report.html"] {
        assert!(fs::read(a.join(name)).unwrap() == fs::read(b.join(name)).unwrap(), "{name} differs");
    }
}

#[test]
fn damaged_tables_are_one_clear_error() {
    let dir = tempfile::tempdir().unwrap();
    let (root, out) = (dir.path().join("archive"), dir.path().join("out"));
    archive(&root, 1);
    audit(&root, &out).status().unwrap();
    let whole = fs::read(out.join("audit.parquet")).unwrap();
    let file = dir.path().join("x.parquet");
    let mut random = rand::rngs::StdRng::seed_from_u64(5);
    let mut refused = 0;
    for n in 0..60 {
        let mut bytes = whole.clone();
        match n {
            0 => bytes.clear(),
            1 => bytes = b"PAR1".to_vec(),
            2 => bytes.truncate(whole.len() / 2),
            // The footer's length, then anything in the footer, then anything at all.
            3 => bytes[whole.len() - 5] = 0x7f,
            4..30 => bytes[random.random_range(whole.len() - 4000..whole.len() - 8)] ^= random.random_range(1..=255_u8),
            _ => bytes[random.random_range(4..whole.len())] ^= random.random_range(1..=255_u8),
        }
        fs::write(&file, &bytes).unwrap();
        let run = trends(&file, &dir.path().join("t"));
        let said = String::from_utf8(run.stderr).unwrap();
        assert!(!said.contains("panicked"), "change {n}: {said}");
        match run.status.code() {
            Some(0) => {}
            Some(2) => {
                assert!(said.contains("x.parquet") && said.lines().count() <= 2, "change {n}: {said}");
                refused += 1;
            }
            other => panic!("change {n}: {other:?} {said}"),
        }
    }
    assert!(refused > 10, "{refused}");
}
