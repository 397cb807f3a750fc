//! Doors that no other test opens: completions, the manual, exit codes explained, watching.

#![cfg(test)]
#![allow(clippy::unwrap_used, reason = "test support: a panic is the message")]

use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

fn program() -> Command {
    let mut command = crate::program::program();
    command.env_remove("BAYWITNESS_MODELS").stdin(Stdio::null());
    command
}

fn output(arguments: &[&str]) -> (i32, String) {
    let out = program().args(arguments).output().unwrap();
    let text = [out.stdout, out.stderr].map(|b| String::from_utf8(b).unwrap()).concat();
    (out.status.code().unwrap(), text)
}

/// A shell that is installed takes its completions without a complaint.
#[test]
fn shells_take_their_completions() {
    for shell in ["bash", "zsh", "fish", "powershell"] {
        let (code, script) = output(&["completions", shell]);
        assert!(code == 0 && script.contains("verify") && script.contains("timestamp-ca"), "{shell}");
        let dir = tempfile::tempdir().unwrap();
        let file = dir.path().join("script");
        std::fs::write(&file, script).unwrap();
        if let Ok(checked) = Command::new(shell).arg("-n").arg(&file).output() {
            assert!(checked.status.success(), "{shell}: {}", String::from_utf8_lossy(&checked.stderr));
        } else {
            println!("{shell} is not installed: its script was not tried");
        }
    }
}

#[test]
fn every_command_has_a_page_in_the_manual() {
    let dir = tempfile::tempdir().unwrap();
    assert_eq!(output(&["man", "--out", dir.path().to_str().unwrap()]).0, 0);
    let command = baywitness::cli::command();
    let names: Vec<&str> = command.get_subcommands().map(|c| c.get_name()).filter(|n| *n != "help").collect();
    assert!(names.len() > 25, "{names:?}");
    for name in names {
        assert!(dir.path().join(format!("baywitness-{name}.1")).is_file(), "{name} has no page");
    }
    let page = std::fs::read_to_string(dir.path().join("baywitness-camera-fit.1")).unwrap();
    assert!(page.contains(".SH \"OPTIONS\"") && page.contains("board"), "{page}");
}

#[test]
fn exit_codes_are_explained() {
    for code in ["0", "1", "2", "3", "4"] {
        let (exit, words) = output(&["explain", code]);
        assert!(exit == 0 && words.starts_with(&format!("Exit code {code}\n")), "{words}");
    }
    assert_eq!(output(&["explain", "5"]).0, 2);
}

fn wait_for(file: &std::path::Path, words: &str, times: usize) {
    let start = Instant::now();
    loop {
        let text = std::fs::read_to_string(file).unwrap_or_default();
        if text.matches(words).count() >= times {
            return;
        }
        assert!(start.elapsed() < Duration::from_secs(60), "{text}");
        std::thread::sleep(Duration::from_millis(50));
    }
}

/// Photos are verified once they stopped changing, and again when one is added.
#[test]
fn watching_verifies_what_arrives() {
    let dir = tempfile::tempdir().unwrap();
    let job = dir.path().join("jobs/J-1");
    std::fs::create_dir_all(job.join("photos")).unwrap();
    let good: PathBuf = [env!("CARGO_MANIFEST_DIR"), "samples", "good"].iter().collect();
    for name in ["kit.toml", "setup.toml", "camera.toml"] {
        std::fs::copy(good.join(name), job.join(name)).unwrap();
    }
    let text =
        "format = \"job/1\"\njob = \"J-1\"\nsetup = \"setup.toml\"\nkit = \"kit.toml\"\ncamera = \"camera.toml\"\n";
    std::fs::write(job.join("job.toml"), text).unwrap();
    let log = dir.path().join("log");
    let mut watching = program()
        .args(["watch", "--every", "0.1"])
        .arg(dir.path().join("jobs"))
        .stdout(std::fs::File::create(&log).unwrap())
        .spawn()
        .unwrap();
    let photo = |name: &str, grey: u8| {
        image::GrayImage::from_pixel(320, 240, image::Luma([grey])).save(job.join("photos").join(name)).unwrap();
    };
    photo("a.png", 90);
    photo("b.png", 150);
    wait_for(&log, "J-1", 1);
    let before = std::fs::read_to_string(&log).unwrap().matches("J-1").count();
    photo("c.png", 120);
    wait_for(&log, "J-1", before + 1);
    watching.kill().unwrap();
    watching.wait().unwrap();
    let once = program().args(["watch", "--once"]).arg(dir.path().join("jobs")).output().unwrap();
    assert_eq!(once.status.code(), Some(4));
    assert_eq!(output(&["watch", "/no/such/folder"]).0, 2);
}
