//! What a tired hand types, and what the program says to it: what is wrong, and what to do.

#![cfg(test)]

use std::fs;
use std::path::{Path, PathBuf};

use tempfile::TempDir;

use crate::program::{run, told};

fn sample() -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "samples", "good"].iter().collect()
}

/// It ends with 2, says all of these and none of those.
fn refused(folder: &Path, arguments: &[&str], says: &[&str], never: &[&str]) {
    let output = run(folder, arguments);
    let told = told(&output);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}: {told}");
    for word in says {
        assert!(told.contains(word), "{arguments:?} should say {word:?}: {told}");
    }
    for word in never {
        assert!(!told.contains(word), "{arguments:?} should not say {word:?}: {told}");
    }
}

/// The good sample without its photos.
fn job() -> TempDir {
    let room = tempfile::tempdir().unwrap();
    crate::staged::copy(&sample(), &room.path().join("job"), false);
    room
}

/// A gauge study of two people, three parts and two trials, its value written by `number`.
fn readings(separator: &str, number: impl Fn(f64) -> String) -> String {
    let mut text = ["operator", "part", "value"].join(separator) + "\n";
    for (i, deviation) in [0.1, -0.1, 0.2, 0.0, 0.1, 0.3, -0.2, 0.1, 0.2, 0.1, 0.0, -0.1].into_iter().enumerate() {
        let (operator, part) = (["A", "B"][i / 6], i / 2 % 3);
        text += &[operator.to_owned(), part.to_string(), number(part as f64 + deviation)].join(separator);
        text += "\n";
    }
    text
}

#[test]
fn a_decimal_comma_is_a_decimal_comma_or_refused() {
    let room = tempfile::tempdir().unwrap();
    let at = |name: &str, bytes: &[u8]| fs::write(room.path().join(name), bytes).unwrap();
    let with_comma = |v: f64| format!("{v:.1}").replace('.', ",");
    at("points.csv", readings(",", |v| format!("{v:.1}")).as_bytes());
    at("commas.csv", readings(";", with_comma).as_bytes());
    at("marked.csv", format!("\u{feff}{}", readings(";", with_comma)).as_bytes());
    at("mixed.csv", readings(",", with_comma).as_bytes());
    at("alike.csv", readings(",", |v| format!("{v:.0}")).as_bytes());
    let utf16: Vec<u8> = readings(",", |v| format!("{v:.1}")).encode_utf16().flat_map(u16::to_le_bytes).collect();
    at("plain16.csv", &utf16);
    at("utf16.csv", &[&[0xFF, 0xFE][..], &utf16].concat());
    let right = run(room.path(), &["gauge", "points.csv"]);
    assert!(right.status.success() && !told(&right).contains("repeatability 0.00000"), "{}", told(&right));
    for same in ["commas.csv", "marked.csv"] {
        let found = run(room.path(), &["gauge", same]);
        assert!(found.status.success() && found.stdout == right.stdout, "{same}: {}", told(&found));
    }
    refused(room.path(), &["gauge", "mixed.csv"], &["mixed.csv, line 2", "4 cells", "decimal point"], &["spread"]);
    for utf16 in ["utf16.csv", "plain16.csv"] {
        refused(room.path(), &["gauge", utf16], &[utf16, "save it as UTF-8"], &["stream"]);
    }
    let alike = run(room.path(), &["gauge", "alike.csv"]);
    assert!(alike.status.success() && told(&alike).contains("cannot be told"), "{}", told(&alike));
    assert!(!told(&alike).contains("enough") && !told(&alike).contains("NaN"), "{}", told(&alike));
}

#[test]
fn only_what_can_be_meant_is_offered() {
    let never = ["\"job.toml\"", "\"setup.toml\"", "\"kit.toml\""].map(|name| format!("did you mean {name}"));
    let wrong: Vec<&str> = never.iter().map(String::as_str).collect();
    for lacking in ["kit.toml", "setup.toml"] {
        let room = job();
        fs::remove_file(room.path().join("job").join(lacking)).unwrap();
        refused(room.path(), &["verify", "job"], &["job.toml, line ", lacking], &wrong);
        // Another file of the right kind is.
        let other = format!("{}s.toml", lacking.trim_end_matches(".toml"));
        fs::copy(sample().join(lacking), room.path().join("job").join(&other)).unwrap();
        refused(room.path(), &["verify", "job"], &[&format!("did you mean \"{other}\"")], &[]);
    }
}

#[test]
fn a_job_file_with_a_hidden_ending_is_named() {
    let room = job();
    let file = |name: &str| room.path().join("job").join(name);
    fs::rename(file("job.toml"), file("job.toml.txt")).unwrap();
    refused(room.path(), &["verify", "job"], &["job/job.toml: does not exist", "rename job.toml.txt to job.toml"], &[]);
    // Plain letters in UTF-16 look like text with a byte of nothing in between.
    let text = fs::read_to_string(file("job.toml.txt")).unwrap();
    let utf16: Vec<u8> = text.encode_utf16().flat_map(u16::to_le_bytes).collect();
    fs::write(file("job.toml"), utf16).unwrap();
    refused(room.path(), &["verify", "job"], &["job/job.toml", "UTF-8"], &["TOML ("]);
}

#[test]
fn numbers_are_answered_as_numbers() {
    let room = tempfile::tempdir().unwrap();
    let measured = |typed: &'static str| ["sheet", "bay-a4", "--measured-mm", typed, "--corrected", "kit.toml"];
    refused(room.path(), &measured("159,8;160,1"), &["decimal point", "comma between", "159.6,160.1"], &[]);
    refused(room.path(), &measured("159,8,160,1"), &["--measured-mm", "decimal point"], &[]);
    refused(room.path(), &measured("-159.8,160.1"), &["ruler to the right"], &["unknown"]);
    let alone = run(room.path(), &["sheet", "bay-a4", "--measured-mm", "159.8,160.1"]);
    let missing = String::from_utf8_lossy(&alone.stderr).lines().next().unwrap_or_default().to_owned();
    assert!(missing.contains("still missing: --corrected") && !missing.contains("--out"), "{missing}");
    refused(room.path(), &["verify", "job", "--threads", "-1"], &["-1", "whole number"], &["unknown"]);
    let width = ["plan", "--kit", "bay-a4", "--setup", "radar-plate", "--width", "-4000"];
    refused(room.path(), &width, &["-4000", "500 to 50000"], &["unknown"]);
    assert!(!room.path().join("kit.toml").exists());
}

#[test]
fn names_that_miss_by_a_little_are_put_right() {
    let room = job();
    fs::copy(sample().join("photos/a.jpg"), room.path().join("job/photos/a.jpg")).unwrap();
    let seating = ["seating", "job", "--kit", "bay-a4", "--plate", "rear-left"];
    refused(room.path(), &seating, &["the folder job has no photo", "name its job/photos"], &[]);
    refused(room.path(), &["verify", "job", "./job/"], &["same job", "name each job once"], &["photo-reused"]);
    fs::write(room.path().join("note.jpg"), "a text, no photo\n").unwrap();
    refused(room.path(), &["detect", "note.jpg"], &["JPEG, PNG or HEIC"], &[]);
    fs::write(room.path().join("file"), "").unwrap();
    refused(room.path(), &["sheet", "bay-a4", "--out", "file/kit.pdf"], &["check the folder's permissions"], &[]);
}

/// A photo is named from where the job was named, as every other file is.
#[test]
fn a_bad_photo_is_named_as_the_job_was() {
    let room = job();
    for name in ["a.jpg", "b.jpg"] {
        fs::write(room.path().join("job/photos").join(name), b"").unwrap();
    }
    let whole = room.path().canonicalize().unwrap().display().to_string();
    refused(room.path(), &["verify", "job"], &["job/photos/a.jpg", "empty"], &[&whole]);
}

/// A reference on the wall has no stand to take photos of.
#[test]
fn a_wall_reference_is_no_kit_of_a_sheet() {
    let room = tempfile::tempdir().unwrap();
    let check = |kit: &[&str]| told(&run(room.path(), &[&["setup", "check", "radar-plate"], kit].concat()));
    assert!(check(&["--kit", "reference"]).contains("No kit among the models"), "{}", check(&["--kit", "reference"]));
    let all = check(&[]);
    assert!(all.contains("With the kit bay-a4") && !all.contains("With the kit reference"), "{all}");
}

/// Jobs that cannot be kept are told at the start, not with the first photo.
#[cfg(target_os = "linux")]
#[test]
fn a_folder_of_jobs_that_cannot_be_written_is_told_at_the_start() {
    let room = tempfile::tempdir().unwrap();
    // Nobody makes a file in /proc, not even root.
    let mut command = crate::program::program();
    command.args(["serve", "--listen", "127.0.0.1:0", "--jobs", "/proc"]).current_dir(room.path());
    command.stdout(std::process::Stdio::null()).stderr(std::process::Stdio::piped());
    let mut child = command.spawn().unwrap();
    let until = std::time::Instant::now() + std::time::Duration::from_secs(30);
    while child.try_wait().unwrap().is_none() && std::time::Instant::now() < until {
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    let _ = child.kill();
    let output = child.wait_with_output().unwrap();
    assert_eq!(output.status.code(), Some(2), "{}", told(&output));
    assert!(told(&output).contains("cannot write /proc"), "{}", told(&output));
}

/// A drill's folder with one job and a table of answers.
fn drill(answers: &str) -> TempDir {
    let room = tempfile::tempdir().unwrap();
    let file = "format = \"drill/1\"\nlevel = 1\njobs = [\"DRILL-01\", \"DRILL-02\"]\nanswers_sha256 = \"\"\n";
    fs::write(room.path().join("drill.toml"), file).unwrap();
    fs::write(room.path().join("answers.csv"), answers).unwrap();
    room
}

#[test]
fn an_answer_of_a_drill_is_repeated_and_its_comma_is_never_cut_off() {
    let answer = ["drill", "answer", ".", "DRILL-01", "stand-turned", "left-end-away", "-0.4"];
    let head = "job,finding,way,size\n";
    let room = drill(head);
    let output = run(room.path(), &answer);
    assert!(output.status.success(), "{}", told(&output));
    assert_eq!(told(&output), "Noted for DRILL-01: stand-turned, left-end-away, 0.4.");
    let kept = |room: &TempDir| fs::read_to_string(room.path().join("answers.csv")).unwrap();
    assert_eq!(kept(&room), format!("{head}DRILL-01,stand-turned,left-end-away,0.4\n"));
    // A table of a spreadsheet with decimal commas, as it should be and as it must not be read.
    let room = drill("\u{feff}job;finding;way;size\nDRILL-02;stand-too-low;raise;45,5\n");
    assert!(run(room.path(), &answer).status.success());
    assert!(kept(&room).contains("DRILL-02,stand-too-low,raise,45.5\n"), "{}", kept(&room));
    let cut = format!("{head}DRILL-02,stand-too-low,raise,45,5\n");
    let room = drill(&cut);
    refused(room.path(), &answer, &["answers.csv, line 2", "5 cells", "point"], &[]);
    assert_eq!(kept(&room), cut);
    // Empty cells at the end are a spreadsheet's own.
    assert!(run(drill(&format!("{head}DRILL-02,none,,,,\n")).path(), &answer).status.success());
}
