//! `audit --stdin` spread by engines that others built: Spark's `RDD.pipe` on a
//! local cluster, xargs, and GNU parallel. Each must give the lines of one machine.

use std::io::Write;
use std::path::PathBuf;
use std::process::{Command, Stdio};

use serde_json::json;

use super::harness::answer;

/// Paths of folders of every kind: measured, without markers, broken, none at all.
fn archive(folder: &std::path::Path) -> Vec<String> {
    let sample = |name: &str| -> PathBuf { [env!("CARGO_MANIFEST_DIR"), "samples", name].iter().collect() };
    let mut paths = vec![sample("good"), sample("wrong"), folder.join("none")];
    for n in 0..21_u8 {
        let job = folder.join(format!("job {n}"));
        std::fs::create_dir_all(job.join("photos")).unwrap();
        for name in ["kit.toml", "setup.toml", "camera.toml"] {
            std::fs::copy(sample("good").join(name), job.join(name)).unwrap();
        }
        let kit = if n % 7 == 3 { "absent.toml" } else { "kit.toml" };
        let text = format!(
            "format = \"job/1\"\njob = \"N-{n}\"\nsetup = \"setup.toml\"\nkit = \"{kit}\"\ncamera = \"camera.toml\"\n"
        );
        std::fs::write(job.join("job.toml"), text).unwrap();
        for (name, grey) in [("a.png", 90 + n), ("b.png", 150 + n)] {
            image::GrayImage::from_pixel(320, 240, image::Luma([grey])).save(job.join("photos").join(name)).unwrap();
        }
        paths.push(job);
    }
    paths.iter().map(|p| p.to_str().unwrap().to_owned()).collect()
}

fn program() -> &'static str {
    env!("CARGO_BIN_EXE_baywitness")
}

/// What a command answers to the paths on its standard input.
fn lines(command: &mut Command, paths: &[String]) -> Vec<String> {
    let mut child = command.stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().unwrap();
    child.stdin.take().unwrap().write_all((paths.join("\n") + "\n").as_bytes()).unwrap();
    let out = child.wait_with_output().unwrap();
    assert!(out.status.success());
    String::from_utf8(out.stdout).unwrap().lines().map(str::to_owned).collect()
}

fn one_machine(paths: &[String]) -> Vec<String> {
    let lines = lines(crate::program::program().args(["audit", "--stdin"]), paths);
    assert_eq!(lines.len(), paths.len());
    lines
}

#[test]
fn spark_pipes_the_same_lines() {
    let dir = tempfile::tempdir().unwrap();
    let paths = archive(dir.path());
    let command = format!("{} audit --stdin --threads 1", program());
    let asked = json!({ "command": command, "paths": paths, "parts": 5 });
    let Some(answer) = answer("spark.py", &["pyspark"], &asked) else { return };
    assert_eq!(answer["lines"], json!(one_machine(&paths)));
}

/// Two workers of one core each beside one process with two threads, then with a worker that is killed in the middle.
#[test]
#[ignore = "a quarter of an hour, and figures of time: BAYWITNESS_SPARK_JOBS=2000 cargo test --test suite reference::engines -- --ignored --nocapture"]
fn a_killed_worker_costs_time_and_no_line() {
    let jobs = crate::planned::number("BAYWITNESS_SPARK_JOBS", 2000.0) as usize;
    let dir = tempfile::tempdir().unwrap();
    let bays: Vec<String> = (0..4)
        .map(|n| {
            let folder = dir.path().join(format!("bay-{n}"));
            let mut scene = crate::staged::scene(0.36);
            scene.spec.seed = 300 + n;
            scene.stage(&folder, &mut |_| ()).unwrap();
            folder.to_str().unwrap().to_owned()
        })
        .collect();
    let paths: Vec<String> = bays.iter().cycle().take(jobs).cloned().collect();
    let start = std::time::Instant::now();
    let wanted = lines(crate::program::program().args(["audit", "--stdin", "--threads", "2"]), &paths);
    let alone = start.elapsed().as_secs_f64();
    println!("one process with two threads: {jobs} jobs in {alone:.1} s");
    let command = format!("{} audit --stdin --threads 1", program());
    let mut asked = json!({ "command": command, "paths": paths, "parts": jobs.div_ceil(25), "workers": 2 });
    let Some(whole) = answer("spark.py", &["pyspark"], &asked) else { return };
    assert_eq!(whole["lines"], json!(wanted));
    let seconds = whole["seconds"].as_f64().unwrap();
    println!("Spark, two workers, packs of 25: {seconds:.1} s, {:.0} % of one process", 100.0 * alone / seconds);
    asked["kill_after_s"] = json!(seconds / 3.0);
    let harmed = answer("spark.py", &["pyspark"], &asked).unwrap();
    assert_eq!(harmed["killed"].as_array().map(Vec::len), Some(1), "a worker was there to be killed");
    assert_eq!(harmed["lines"], json!(wanted), "what a killed worker had is done again, once");
    let seconds = harmed["seconds"].as_f64().unwrap();
    println!("one worker killed after a third of that: {seconds:.1} s, no line lost or twice");
}

#[test]
fn xargs_and_parallel_spread_the_same_lines() {
    let dir = tempfile::tempdir().unwrap();
    let paths = archive(dir.path());
    let mut wanted = one_machine(&paths);
    wanted.sort();
    let script = format!("printf '%s\\n' \"$@\" | {} audit --stdin --threads 1", program());
    let mut xargs = Command::new("xargs");
    // A line is one write of a process, so lines of several do not mix while they fit a pipe's block.
    xargs.args(["-d", "\n", "-n", "6", "-P", "1", "sh", "-c", &script, "_"]);
    let mut spread = lines(&mut xargs, &paths);
    spread.sort();
    assert_eq!(spread, wanted);
    if Command::new("parallel").arg("--version").output().is_err() {
        println!("skipped: GNU parallel is not installed");
        return;
    }
    let mut parallel = Command::new("parallel");
    parallel.args(["--will-cite", "--pipe", "-N", "6", "-j", "2", program(), "audit", "--stdin", "--threads", "1"]);
    let mut spread = lines(&mut parallel, &paths);
    spread.sort();
    assert_eq!(spread, wanted);
}
