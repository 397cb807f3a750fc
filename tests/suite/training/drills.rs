//! A drill from its making to its mark, as a trainee types it.

use std::fs;
use std::path::Path;
use std::process::Output;

use baywitness::folder::Models;
use baywitness::job::{Options, verify};

fn baywitness(args: &[&str]) -> Output {
    crate::program::program().args(args).output().unwrap()
}

fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stdout).into_owned() + &String::from_utf8_lossy(&output.stderr)
}

/// Every file of a drill before it is marked.
fn all_text(folder: &Path) -> String {
    let mut text = String::new();
    let mut open = vec![folder.to_path_buf()];
    while let Some(path) = open.pop() {
        for entry in fs::read_dir(&path).unwrap().map(Result::unwrap) {
            if entry.path().is_dir() {
                open.push(entry.path());
            } else {
                text += &String::from_utf8_lossy(&fs::read(entry.path()).unwrap());
            }
        }
    }
    text
}

/// The value that a line of the readings ends with.
fn reading(folder: &Path, words: &str) -> f64 {
    let text = fs::read_to_string(folder.join("readings.txt")).unwrap();
    let line = text.lines().find(|l| l.contains(words)).unwrap();
    line.trim_end_matches(" mm").rsplit(' ').next().unwrap().parse().unwrap()
}

/// What somebody who can read the readings says: finding, way, size.
fn by_readings(folder: &Path) -> (&'static str, &'static str, f64) {
    let turned = ((reading(folder, "right in front") - reading(folder, "left in front")) / 1400.0).asin().to_degrees();
    let tilted = (reading(folder, "Plumb") / 600.0).asin().to_degrees();
    let fall = (reading(folder, "Water") / 1400.0).asin().to_degrees();
    let all = [
        (reading(folder, "in the middle") - 1500.0, 10.0, ["stand-too-near", "stand-too-far"], ["away", "towards"]),
        (reading(folder, "off the centreline"), 6.0, ["stand-off-centre"; 2], ["left", "right"]),
        (reading(folder, "above the floor") - 820.0, 6.0, ["stand-too-low", "stand-too-high"], ["raise", "lower"]),
        (turned, 0.3, ["stand-turned"; 2], ["left-end-towards", "left-end-away"]),
        (tilted, 0.5, ["stand-tilted"; 2], ["top-away", "top-towards"]),
        (fall, 0.5, ["stand-not-level"; 2], ["right-end-lower", "right-end-raise"]),
    ];
    let worst = all.into_iter().max_by(|a, b| (a.0.abs() / a.1).total_cmp(&(b.0.abs() / b.1))).unwrap();
    let which = usize::from(worst.0 > 0.0);
    (worst.2[which], worst.3[which], worst.0.abs())
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_trainee_who_reads_the_readings_wins_every_point() {
    let folder = tempfile::tempdir().unwrap();
    let dir = folder.path().join("drill");
    let d = dir.to_str().unwrap();
    let made = baywitness(&["drill", "new", "--level", "1", "--count", "2", "--out", d, "--seed", "4"]);
    assert_eq!(made.status.code(), Some(0), "{}", said(&made));
    // Neither truth nor kit lies about, and the answers are not to be read.
    assert!(!dir.join("DRILL-01/truth.json").exists() && !dir.join("DRILL-01/kit.toml").exists());
    assert!(!fs::read_to_string(dir.join("answers.sealed")).unwrap().contains("stand"));
    assert!(!all_text(&dir).contains("yaw_deg"));
    for job in ["DRILL-01", "DRILL-02"] {
        let (finding, way, size) = by_readings(&dir.join(job));
        let size = size.to_string();
        let run = baywitness(&["drill", "answer", d, job, finding, way, &size]);
        assert_eq!(run.status.code(), Some(0), "{}", said(&run));
    }
    let marked = baywitness(&["drill", "mark", d, "--trainee", "A", "--day", "2026-05-04"]);
    assert_eq!(marked.status.code(), Some(0), "{}", said(&marked));
    assert!(
        said(&marked).contains("findings 2 of 2, directions 2 of 2, sizes 2 of 2, false alarms 0: 8 of 8 points"),
        "{}",
        said(&marked)
    );
    // The kit is back: what was hidden is what the photos say.
    let record = verify(&dir.join("DRILL-01"), &Options::new(Models::embedded())).unwrap();
    let (finding, ..) = by_readings(&dir.join("DRILL-01"));
    assert!(record.findings.iter().any(|f| f.code == finding), "{:?}", record.findings);
    // Again: it is said that the answers were known, and the progress keeps both.
    let again = baywitness(&["drill", "mark", d, "--trainee", "A", "--day", "2026-05-05"]);
    assert!(said(&again).contains("marked before"));
    assert_eq!(fs::read_to_string(folder.path().join("drills.jsonl")).unwrap().lines().count(), 2);
    assert!(fs::read_to_string(folder.path().join("drills.html")).unwrap().contains("2026-05-04"));
    wrong_words(d);
    // A changed answer is seen.
    let sealed = dir.join("answers.sealed");
    let text = fs::read_to_string(&sealed).unwrap();
    let (salt, content) = text.split_once('\n').unwrap();
    // The salt is drawn: one in 64 of these texts begins with an A already.
    let other = if content.starts_with('A') { 'B' } else { 'A' };
    fs::write(&sealed, format!("{salt}\n{other}{}", &content[1..])).unwrap();
    let run = baywitness(&["drill", "mark", d]);
    assert!(run.status.code() == Some(2) && said(&run).contains("changed"), "{}", said(&run));
}

fn wrong_words(d: &str) {
    for (args, word) in [
        (&["drill", "answer", d, "DRILL-07", "none"][..], "DRILL-0"),
        (&["drill", "answer", d, "DRILL-01", "stand-tuned"][..], "stand-turned"),
        (&["drill", "answer", d, "DRILL-01", "stand-turned", "leftwards"][..], "no way"),
        (&["drill", "answer", d, "DRILL-01", "stand-turned", "left-end-away", "much"][..], "no size"),
        (&["drill", "new", "--level", "9", "--out", d][..], "no level 9"),
        (&["drill", "new", "--level", "1", "--out", d][..], "already"),
        (&["drill", "mark", "/nowhere"][..], "drill.toml"),
    ] {
        let run = baywitness(args);
        assert!(run.status.code() == Some(2) && said(&run).contains(word), "{args:?}: {}", said(&run));
    }
}
