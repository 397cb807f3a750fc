//! Where the program writes: never over what is evidence or input, never so that it waits
//! for ever, and never in the place of a link, a pipe or a device.

#![cfg(test)]

use std::fs;
use std::path::{Path, PathBuf};

use tempfile::TempDir;

use crate::program::{run, told};

/// The good sample's folder.
fn sample() -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "samples", "good"].iter().collect()
}

fn refused(folder: &Path, arguments: &[&str], says: &str) {
    let output = run(folder, arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}: {}", told(&output));
    assert!(told(&output).contains(says), "{arguments:?} should say {says:?}: {}", told(&output));
}

/// A quick command that writes JSON.
const CHECK: [&str; 6] = ["setup", "check", "radar-plate", "--kit", "bay-a4", "--json"];

fn is_a_setup_check(json: &str) -> bool {
    serde_json::from_str::<serde_json::Value>(json).is_ok_and(|json| json["format"] == "setup-check/1")
}

/// What a shell makes of `--out *.jpg`: the first photo is the file to write.
#[test]
fn no_output_is_written_over_a_photo() {
    let room = tempfile::tempdir().unwrap();
    let photo = room.path().join("keep.jpg");
    fs::copy(sample().join("photos/a.jpg"), &photo).unwrap();
    let before = fs::read(&photo).unwrap();
    for option in [["sheet", "bay-a4", "--out", "keep.jpg"], ["setup", "check", "radar-plate", "--json=keep.jpg"]] {
        refused(room.path(), &option, "keep.jpg is a photo and stays as it is");
        assert_eq!(fs::read(&photo).unwrap(), before, "{option:?}");
    }
    // What it wrote itself it writes again.
    for _ in 0..2 {
        assert!(run(room.path(), &["sheet", "bay-a4", "--out", "kit.pdf"]).status.success());
    }
    assert!(fs::read(room.path().join("kit.pdf")).unwrap().starts_with(b"%PDF-"));
}

fn job() -> TempDir {
    let room = tempfile::tempdir().unwrap();
    let at = room.path().join("job");
    crate::staged::copy(&sample(), &at, true);
    fs::write(at.join("scan-report.json"), "{}\n").unwrap();
    let file = fs::read_to_string(at.join("job.toml")).unwrap();
    fs::write(at.join("job.toml"), file.replace("scan-report.txt", "scan-report.json")).unwrap();
    room
}

#[test]
fn a_result_is_never_written_over_a_file_of_the_job() {
    let room = job();
    let file = |name: &str| room.path().join("job").join(name);
    for (name, says) in [
        ("job.toml", "job/job.toml is there and is no JSON file"),
        ("kit.toml", "is no JSON file"),
        ("scan-report.json", "job/scan-report.json is a file of the job job"),
    ] {
        let before = fs::read(file(name)).unwrap();
        refused(room.path(), &["verify", "job", "--json", &format!("job/{name}")], says);
        assert_eq!(fs::read(file(name)).unwrap(), before, "{name}");
    }
    // A job that cannot be read gives an error as JSON, which must not take its file either.
    let broken = fs::read_to_string(file("job.toml")).unwrap().replace("setup = ", "sutep = ");
    fs::write(file("job.toml"), &broken).unwrap();
    refused(room.path(), &["verify", "job", "--json", "job/job.toml"], "is no JSON file");
    assert_eq!(fs::read_to_string(file("job.toml")).unwrap(), broken);
    // An earlier result is written over, and an empty file is nobody's.
    for earlier in ["{\"format\": \"result/1\"}\n", ""] {
        fs::write(room.path().join("result.json"), earlier).unwrap();
        run(room.path(), &[&CHECK[..], &["result.json"]].concat());
        assert!(is_a_setup_check(&fs::read_to_string(room.path().join("result.json")).unwrap()));
    }
}

#[cfg(unix)]
mod unix {
    use std::io::Read;
    use std::os::unix::fs::FileTypeExt;
    use std::process::{Command, Stdio};
    use std::time::{Duration, Instant};

    use super::*;

    /// Waits no longer than anybody would; whether it ended, with its code.
    fn ended(mut child: std::process::Child) -> Option<i32> {
        let until = Instant::now() + Duration::from_secs(120);
        while Instant::now() < until {
            if let Some(status) = child.try_wait().unwrap() {
                return status.code();
            }
            std::thread::sleep(Duration::from_millis(20));
        }
        child.kill().unwrap();
        child.wait().unwrap();
        None
    }

    fn start(folder: &Path, target: &str) -> std::process::Child {
        let mut command = crate::program::program();
        command.args(CHECK).arg(target).current_dir(folder).env_remove("BAYWITNESS_MODELS");
        command.stdout(Stdio::piped()).stderr(Stdio::null()).spawn().unwrap()
    }

    #[test]
    fn a_pipe_gets_the_result_and_stays_a_pipe() {
        let room = tempfile::tempdir().unwrap();
        let pipe = room.path().join("pipe");
        assert!(Command::new("mkfifo").arg(&pipe).status().unwrap().success());
        let code = run(room.path(), &[&CHECK[..], &["file.json"]].concat()).status.code();
        // All of it, and only its beginning: who leaves early is no fault.
        for most in [u64::MAX, 40] {
            let from = pipe.clone();
            let reader = std::thread::spawn(move || {
                let mut text = String::new();
                fs::File::open(from).unwrap().take(most).read_to_string(&mut text).unwrap();
                text
            });
            let mut child = start(room.path(), "pipe");
            drop(child.stdout.take());
            assert_eq!(ended(child), code, "waits for ever, or fails");
            let text = reader.join().unwrap();
            assert!(most == 40 && text.starts_with('{') || is_a_setup_check(&text), "{text}");
        }
        assert!(fs::symlink_metadata(&pipe).unwrap().file_type().is_fifo());
    }

    #[test]
    fn a_link_stays_a_link() {
        let room = tempfile::tempdir().unwrap();
        let [kept, link] = ["kept.json", "link.json"].map(|name| room.path().join(name));
        fs::write(&kept, "{}").unwrap();
        std::os::unix::fs::symlink("kept.json", &link).unwrap();
        run(room.path(), &[&CHECK[..], &["link.json"]].concat());
        assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
        assert!(is_a_setup_check(&fs::read_to_string(&kept).unwrap()));
        // Neither is a photo at the end of a link written over.
        fs::copy(sample().join("photos/a.jpg"), room.path().join("a.jpg")).unwrap();
        std::os::unix::fs::symlink("a.jpg", room.path().join("way.pdf")).unwrap();
        refused(room.path(), &["sheet", "bay-a4", "--out", "way.pdf"], "is a photo");
    }

    #[test]
    fn a_reader_of_json_who_leaves_is_no_fault() {
        let room = tempfile::tempdir().unwrap();
        let code = run(room.path(), &[&CHECK[..], &["file.json"]].concat()).status.code();
        let mut child = start(room.path(), "-");
        drop(child.stdout.take());
        assert_eq!(ended(child), code);
    }
}
