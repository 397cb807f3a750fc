//! Names in any script, names that are no text, links and loops.

use std::ffi::OsStr;
use std::fs;
use std::os::unix::ffi::OsStrExt;
use std::os::unix::fs::symlink;

use super::bay::{MEASURED, a_job, below, ended, program, refused, run, text};

#[test]
fn names_may_be_in_any_script() {
    let room = tempfile::tempdir().unwrap();
    let name = "Prüfstand '3' & $(b) 整備-一号 مرآب 🚗";
    let job = a_job(&room.path().join(name));
    fs::rename(job.join("photos/a.jpg"), job.join("photos").join(format!("{name}.jpg"))).unwrap();
    let file = fs::read_to_string(job.join("job.toml")).unwrap();
    fs::write(job.join("job.toml"), file.replace("photos/a.jpg", &format!("photos/{name}.jpg"))).unwrap();
    let (code, said) = run(&["verify", text(&job), "--report", text(&room.path().join("report"))]);
    assert_eq!(code, MEASURED, "{name}: {said}");
    let sealed = room.path().join(format!("{name}-sealed"));
    let (code, said) = run(&["seal", text(&job), "--out", text(&sealed)]);
    assert_eq!(code, Some(0), "{name}: {said}");
    let (code, said) = run(&["check", text(&sealed)]);
    assert_eq!(code, Some(3), "{name}: {said}");
    let (code, said) = run(&["audit", text(room.path()), "--out", text(&room.path().join("out"))]);
    assert_eq!(code, MEASURED, "{said}");
}

#[test]
fn names_that_are_no_text_are_named_and_end_nothing_else() {
    let room = tempfile::tempdir().unwrap();
    let strange = OsStr::from_bytes(b"str\xff\xfenge");
    let good = room.path().join("jobs/good");
    a_job(&good);
    a_job(&room.path().join("jobs").join(strange));
    let photos = room.path().join("jobs/photos");
    let job = a_job(&photos);
    fs::write(job.join("photos").join(OsStr::from_bytes(b"\xe9t\xe9.jpg")), "x").unwrap();
    let file = fs::read_to_string(job.join("job.toml")).unwrap();
    let listed: String = file.lines().filter(|l| !l.starts_with("photos")).map(|l| format!("{l}\n")).collect();
    fs::write(job.join("job.toml"), listed).unwrap();
    let (code, said) = run(&["verify", text(&job)]);
    assert_eq!(code, Some(2), "{said}");
    assert!(said.contains("photos"), "{said}");
    let mut command = program(&["verify"]);
    let (code, said) = ended(&command.arg(room.path().join("jobs").join(strange)).output().unwrap());
    assert!(matches!(code, MEASURED | Some(2)), "{code:?} {said}");
    let out = room.path().join("out");
    let (code, said) = run(&["audit", text(&room.path().join("jobs")), "--out", text(&out)]);
    assert_eq!(code, Some(2), "the bad one is told: {said}");
    let lines = fs::read_to_string(out.join("audit.jsonl")).unwrap();
    assert!(lines.lines().any(|l| l.contains("jobs/good") && l.contains("\"not_proven\"")), "{lines}");
}

#[test]
fn links_lead_neither_out_nor_in_circles() {
    let room = tempfile::tempdir().unwrap();
    let jobs = room.path().join("jobs");
    let job = a_job(&jobs.join("a"));
    symlink(&jobs, jobs.join("loop")).unwrap();
    symlink("self", jobs.join("self")).unwrap();
    let out = room.path().join("out");
    let (code, said) = run(&["audit", text(&jobs), "--out", text(&out)]);
    assert_eq!(code, MEASURED, "{said}");
    assert_eq!(below(&out.join("results")).len(), 1, "each job once");
    let photo = job.join("photos/a.jpg");
    fs::remove_file(&photo).unwrap();
    symlink("a.jpg", &photo).unwrap();
    refused(&["verify", text(&job)], "a.jpg");
    fs::remove_file(&photo).unwrap();
    symlink("/etc/passwd", &photo).unwrap();
    refused(&["verify", text(&job)], "a.jpg");
    fs::remove_file(&photo).unwrap();
    fs::create_dir(&photo).unwrap();
    refused(&["verify", text(&job)], "a.jpg");
    // A pipe that nobody writes to would be waited for without end.
    fs::remove_dir(&photo).unwrap();
    assert!(std::process::Command::new("mkfifo").arg(&photo).status().unwrap().success());
    refused(&["verify", text(&job)], "a.jpg");
}
