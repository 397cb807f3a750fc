//! Archives: every good job right, every broken one named, whatever happens meanwhile.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]
#![allow(clippy::print_stdout, reason = "the judged archive prints its figures")]

use std::collections::BTreeMap;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Duration;

use serde_json::Value;

mod across;
#[cfg(unix)]
mod judged;
#[cfg(unix)]
mod large;
mod recompute;
#[cfg(feature = "parquet")]
mod table;

fn sample(name: &str) -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "samples", name].iter().collect()
}

pub(crate) fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for entry in fs::read_dir(from).unwrap().map(Result::unwrap) {
        let (path, name) = (entry.path(), entry.file_name());
        if path.is_dir() {
            copy(&path, &to.join(name));
        } else {
            fs::copy(path, to.join(name)).unwrap();
        }
    }
}

/// A job whose photos show nothing: measured quickly, ends as retake.
fn empty_job(folder: &Path, number: usize) {
    fs::create_dir_all(folder.join("photos")).unwrap();
    for name in ["kit.toml", "setup.toml", "camera.toml"] {
        fs::copy(sample("good").join(name), folder.join(name)).unwrap();
    }
    let text = format!(
        "format = \"job/1\"\njob = \"N-{number}\"\nsetup = \"setup.toml\"\nkit = \"kit.toml\"\ncamera = \"camera.toml\"\ntechnician = \"T{}\"\n",
        number % 3
    );
    fs::write(folder.join("job.toml"), text).unwrap();
    for (name, grey) in [("a.png", 90), ("b.png", 150)] {
        let grey = grey + (number % 40) as u8;
        image::GrayImage::from_pixel(400, 300, image::Luma([grey])).save(folder.join("photos").join(name)).unwrap();
    }
}

/// A way to break a job, and words that its message must have.
type Harm = (&'static str, fn(&Path), &'static str);

fn edit(path: &Path, change: impl Fn(String) -> String) {
    let text = fs::read_to_string(path).unwrap();
    fs::write(path, change(text)).unwrap();
}

const HARMS: [Harm; 20] = [
    ("no-kit", |j| fs::remove_file(j.join("kit.toml")).unwrap(), "kit.toml"),
    ("no-setup", |j| fs::remove_file(j.join("setup.toml")).unwrap(), "setup.toml"),
    ("no-camera", |j| fs::remove_file(j.join("camera.toml")).unwrap(), "camera.toml"),
    ("no-photos", |j| fs::remove_dir_all(j.join("photos")).unwrap(), "photos"),
    (
        "empty-photos",
        |j| {
            for p in ["a.png", "b.png"] {
                fs::remove_file(j.join("photos").join(p)).unwrap()
            }
        },
        "photos",
    ),
    ("empty-photo", |j| fs::write(j.join("photos/a.png"), "").unwrap(), "a.png"),
    ("text-photo", |j| fs::write(j.join("photos/a.png"), "not a picture").unwrap(), "a.png"),
    (
        "cut-photo",
        |j| {
            let b = fs::read(j.join("photos/a.png")).unwrap();
            fs::write(j.join("photos/a.png"), &b[..b.len() / 2]).unwrap()
        },
        "a.png",
    ),
    (
        "folder-photo",
        |j| {
            fs::remove_file(j.join("photos/a.png")).unwrap();
            fs::create_dir(j.join("photos/a.png")).unwrap()
        },
        "a.png",
    ),
    ("empty-job", |j| fs::write(j.join("job.toml"), "").unwrap(), "job.toml"),
    ("binary-job", |j| fs::write(j.join("job.toml"), [0xff, 0xfe, 0]).unwrap(), "job.toml"),
    ("no-toml", |j| edit(&j.join("job.toml"), |t| t + "= = ="), "job.toml"),
    ("unknown-key", |j| edit(&j.join("job.toml"), |t| t + "tecnician = \"T\"\n"), "tecnician"),
    ("wrong-format", |j| edit(&j.join("job.toml"), |t| t.replace("job/1", "job/9")), "job/9"),
    ("listed-photo", |j| edit(&j.join("job.toml"), |t| t + "photos = [\"photos/z.png\"]\n"), "z.png"),
    ("outside-photo", |j| edit(&j.join("job.toml"), |t| t + "photos = [\"../../x.png\"]\n"), "outside"),
    ("nan-size", |j| edit(&j.join("kit.toml"), |t| t.replacen("size_xy_mm = ", "size_mm = nan #", 1)), "kit.toml"),
    (
        "negative-size",
        |j| edit(&j.join("kit.toml"), |t| t.replacen("size_xy_mm = ", "size_mm = -1.0 #", 1)),
        "kit.toml",
    ),
    ("broken-camera", |j| edit(&j.join("camera.toml"), |t| t.replacen("focal_px", "focal_pixel", 1)), "camera.toml"),
    ("broken-setup", |j| edit(&j.join("setup.toml"), |t| t.replacen("[[check]]", "[[cheque]]", 1)), "setup.toml"),
];

/// `empty` jobs without markers, two real ones, one broken in each way.
fn archive(root: &Path, empty: usize) {
    for n in 0..empty {
        empty_job(&root.join(format!("2026/w{}/N-{n}", n % 5)), n);
    }
    copy(&sample("good"), &root.join("good"));
    copy(&sample("wrong"), &root.join("wrong"));
    for (n, (name, harm, _)) in HARMS.iter().enumerate() {
        let job = root.join("broken").join(name);
        empty_job(&job, n);
        harm(&job);
    }
}

fn audit(root: &Path, out: &Path) -> Command {
    let mut command = crate::program::program();
    command.current_dir(root.parent().unwrap()).arg("audit").arg(root.file_name().unwrap()).arg("--out").arg(out);
    command.env_remove("BAYWITNESS_MODELS").stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    command
}

fn lines(out: &Path) -> BTreeMap<String, Value> {
    let text = fs::read_to_string(out.join("audit.jsonl")).unwrap();
    let parsed = text.lines().map(|l| serde_json::from_str::<Value>(l).unwrap());
    parsed.map(|v| (v["path"].as_str().unwrap().to_owned(), v)).collect()
}

/// Every file that an audit leaves, but what only this run has.
fn everything(out: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut found = BTreeMap::new();
    let mut open = vec![out.to_path_buf()];
    while let Some(folder) = open.pop() {
        for path in fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()) {
            if path.is_dir() {
                open.push(path);
            } else if path.file_name().unwrap() != "audit.lock" {
                found.insert(path.strip_prefix(out).unwrap().to_path_buf(), fs::read(&path).unwrap());
            }
        }
    }
    found
}

#[test]
fn good_jobs_are_right_and_broken_ones_are_named() {
    let dir = tempfile::tempdir().unwrap();
    let (root, out) = (dir.path().join("archive"), dir.path().join("out"));
    archive(&root, 6);
    assert_eq!(audit(&root, &out).status().unwrap().code(), Some(2));
    let found = lines(&out);
    assert_eq!(found.len(), 6 + 2 + HARMS.len());
    for (path, verdict, exit) in
        [("archive/good", "within", 0), ("archive/wrong", "outside", 1), ("archive/2026/w1/N-1", "retake", 4)]
    {
        assert_eq!(
            (found[path]["verdict"].as_str(), found[path]["exit"].as_u64()),
            (Some(verdict), Some(exit)),
            "{path}"
        );
    }
    for (name, _, words) in HARMS {
        let line = &found[&format!("archive/broken/{name}")];
        let result: Value =
            serde_json::from_slice(&fs::read(out.join(line["result"].as_str().unwrap())).unwrap()).unwrap();
        let message = result["message"].as_str().unwrap_or_default();
        assert!(line["exit"] == 2 && result["format"] == "error/1" && message.contains(words), "{name}: {result}");
    }
    let page = fs::read_to_string(out.join("report.html")).unwrap();
    let table = fs::read_to_string(out.join("audit.csv")).unwrap();
    assert!(page.matches("<tr data-v=").count() == found.len() && table.lines().count() > found.len());
}

#[test]
fn a_killed_audit_goes_on_and_ends_the_same() {
    let dir = tempfile::tempdir().unwrap();
    let root = dir.path().join("archive");
    archive(&root, 40);
    let (whole, cut) = (dir.path().join("whole"), dir.path().join("cut"));
    audit(&root, &whole).arg("--threads").arg("2").status().unwrap();
    let mut done = 0;
    for n in 0..20 {
        let mut running = audit(&root, &cut).arg("--threads").arg("1").spawn().unwrap();
        std::thread::sleep(Duration::from_millis(15 + 17 * (n % 7)));
        running.kill().unwrap();
        running.wait().unwrap();
        // What was acknowledged stays.
        let now = fs::read_to_string(cut.join("audit.jsonl")).map_or(0, |t| t.matches('\n').count());
        assert!(now >= done, "{done} lines became {now}");
        done = now;
    }
    audit(&root, &cut).arg("--threads").arg("2").status().unwrap();
    let (a, b) = (everything(&whole), everything(&cut));
    let left: Vec<_> = b.keys().filter(|k| !a.contains_key(*k)).collect();
    assert!(left.iter().all(|k| k.extension().is_some_and(|e| e == "part")), "{left:?}");
    for (path, bytes) in &a {
        assert!(b.get(path) == Some(bytes), "{} differs", path.display());
    }
}

#[test]
fn only_what_changed_is_judged_again() {
    let dir = tempfile::tempdir().unwrap();
    let (root, out) = (dir.path().join("archive"), dir.path().join("out"));
    for n in 0..4 {
        empty_job(&root.join(format!("N-{n}")), n);
    }
    let run = || {
        let output = audit(&root, &out).stdout(Stdio::piped()).output().unwrap();
        String::from_utf8(output.stdout).unwrap()
    };
    assert!(run().starts_with("4 jobs, 0 of them kept"));
    assert!(run().starts_with("4 jobs, 4 of them kept"));
    empty_job(&root.join("N-1"), 9);
    fs::remove_dir_all(root.join("N-0")).unwrap();
    assert!(run().starts_with("4 jobs, 2 of them kept"));
    assert_eq!(lines(&out)["archive/N-0"]["evidence"], "gone", "a job that is gone is named");
    // A line that a crash cut off is done again.
    let path = out.join("audit.jsonl");
    let text = fs::read_to_string(&path).unwrap();
    fs::write(&path, &text[..text.len() - 40]).unwrap();
    assert!(run().starts_with("4 jobs, 2 of them kept"));
    assert_eq!(fs::read_to_string(&path).unwrap(), text);
}

#[test]
fn lines_on_stdout_answer_paths_on_stdin() {
    let dir = tempfile::tempdir().unwrap();
    for n in 0..3 {
        empty_job(&dir.path().join(format!("N {n}")), n);
    }
    let mut child = crate::program::program()
        .args(["audit", "--stdin"])
        .current_dir(dir.path())
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    child.stdin.take().unwrap().write_all(b"N 2\nnone\n\nN 0\n").unwrap();
    let output = child.wait_with_output().unwrap();
    assert_eq!(output.status.code(), Some(0));
    let text = String::from_utf8(output.stdout).unwrap();
    let answers: Vec<Value> = text.lines().map(|l| serde_json::from_str(l).unwrap()).collect();
    let short: Vec<_> = answers
        .iter()
        .map(|a| (a["path"].as_str().unwrap(), a["exit"].as_u64().unwrap(), a["result"]["format"].as_str().unwrap()))
        .collect();
    assert_eq!(short, [("N 2", 4, "result/1"), ("none", 2, "error/1"), ("N 0", 4, "result/1")]);
}
