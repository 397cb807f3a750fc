//! The command as a user types it.

use std::fs;
use std::path::Path;
use std::process::Output;
use std::time::{Duration, Instant};

use super::invent::{Plan, archive};

fn baywitness(args: &[&str]) -> Output {
    crate::program::program().args(args).output().unwrap()
}

/// An audit's folder: a file for each result, a line for each job.
fn audit(folder: &Path, plan: &Plan) {
    fs::create_dir_all(folder.join("results")).unwrap();
    let mut lines = String::new();
    for (i, result) in archive(plan).lines().enumerate() {
        fs::write(folder.join(format!("results/j-{i}.json")), result).unwrap();
        lines.push_str(&format!(
            "{{\"path\":\"jobs/j-{i}\",\"exit\":0,\"verdict\":\"within\",\"result\":\"results/j-{i}.json\",\"digest\":\"\"}}\n"
        ));
    }
    lines.push_str("{\"path\":\"jobs/bad\",\"exit\":2,\"verdict\":null,\"result\":{\"format\":\"error/1\",\"path\":\"jobs/bad\",\"message\":\"invented\"},\"digest\":\"\"}\n");
    fs::write(folder.join("audit.jsonl"), lines).unwrap();
    fs::write(folder.join("results/J-7-1-0123abcd.html"), "invented report").unwrap();
}

fn text(folder: &Path, name: &str) -> String {
    fs::read_to_string(folder.join(name)).unwrap()
}

#[test]
fn an_audit_becomes_a_page_without_names_unless_asked() {
    let folder = tempfile::tempdir().unwrap();
    let (from, out) = (folder.path().join("audit"), folder.path().join("out"));
    audit(&from, &Plan::new(300, 3));
    let (from_text, out_text) = (from.to_str().unwrap(), out.to_str().unwrap());
    let run = baywitness(&["trends", from_text, "--out", out_text, "--by", "bay"]);
    assert_eq!(run.status.code(), Some(0), "{run:?}");
    let json: serde_json::Value = serde_json::from_str(&text(&out, "trends.json")).unwrap();
    assert_eq!((&json["format"], &json["by"]), (&"trends/1".into(), &"bay".into()));
    assert_eq!((&json["read"]["results"], &json["read"]["errors"]), (&300.into(), &1.into()));
    let counts: u64 = json["verdicts"].as_array().unwrap().iter().map(|v| v["count"].as_u64().unwrap()).sum();
    assert_eq!(counts, 300);
    for name in ["report.html", "trends.json", "trends.csv", "jobs.csv"] {
        assert!(!text(&out, name).contains("T-1"), "{name} names people");
        assert!(text(&out, name).contains("Bay 2"));
    }
    let page = text(&out, "report.html");
    assert!(page.contains("../audit/results/J-7-1-0123abcd.html#photos"), "the report beside the result is linked");
    assert!(page.find("By bay").unwrap() < page.find("By technician").unwrap());
    assert_eq!(text(&out, "jobs.csv").lines().count(), 301);
    // The same people have the same pseudonyms next time.
    let before = text(&out, "trends.csv");
    assert_eq!(baywitness(&["trends", from_text, "--out", out_text]).status.code(), Some(0));
    assert_eq!(before, text(&out, "trends.csv"));
    assert_eq!(baywitness(&["trends", from_text, "--out", out_text, "--names"]).status.code(), Some(0));
    assert!(text(&out, "report.html").contains("T-1"));
    // In German the page is German, tables and records are as before.
    let german = baywitness(&["trends", from_text, "--out", out_text, "--language", "de"]);
    assert!(String::from_utf8_lossy(&german.stdout).contains("300 Aufträge"), "{german:?}");
    let page = text(&out, "report.html");
    assert!(page.contains("lang=\"de\"") && page.contains("Nach Kalibrierplatz") && !page.contains("first attempts"));
    assert_eq!(before, text(&out, "trends.csv"));
}

#[test]
fn arrays_single_files_and_broken_ones_are_read_or_told() {
    let folder = tempfile::tempdir().unwrap();
    let lines = archive(&Plan::new(60, 4));
    let array = format!(
        "[{}, {{\"format\": \"error/1\", \"path\": \"x\", \"message\": \"y\"}}]",
        lines.trim().replace('\n', ",")
    );
    fs::write(folder.path().join("all.json"), array).unwrap();
    fs::write(folder.path().join("again.json"), lines.lines().next().unwrap()).unwrap();
    fs::write(folder.path().join("broken.json"), "{\"format\": \"result/1\", \"job\": ").unwrap();
    fs::write(folder.path().join("truth.json"), "{\"format\": \"truth/1\"}").unwrap();
    fs::write(folder.path().join("words.json"), "no json").unwrap();
    let out = folder.path().join("out");
    let run = baywitness(&["trends", folder.path().to_str().unwrap(), "--out", out.to_str().unwrap()]);
    let said = String::from_utf8(run.stdout).unwrap();
    assert!(said.contains("60 jobs, 1 copy counted once, 1 could not be judged, 2 unreadable, 1 other JSON"), "{said}");
    assert!(said.contains("broken.json") && said.contains("words.json"), "{said}");

    let empty = folder.path().join("empty");
    fs::create_dir(&empty).unwrap();
    for wrong in [empty.to_str().unwrap(), "/nowhere/at/all"] {
        let run = baywitness(&["trends", wrong, "--out", out.to_str().unwrap()]);
        assert_eq!(run.status.code(), Some(2));
        assert!(String::from_utf8(run.stderr).unwrap().starts_with("error: "));
    }
}

/// Largest memory that a running process has had, MB; from the kernel's own count.
fn peak_mb(process: u32) -> f64 {
    let status = fs::read_to_string(format!("/proc/{process}/status")).unwrap_or_default();
    let line = status.lines().find_map(|l| l.strip_prefix("VmHWM:")).unwrap_or("0");
    line.trim().trim_end_matches(" kB").trim().parse::<f64>().unwrap_or(0.0) / 1024.0
}

/// Processor time that a running process has used on all cores, s; a tick is a hundredth.
fn processor_s(process: u32) -> f64 {
    let stat = fs::read_to_string(format!("/proc/{process}/stat")).unwrap_or_default();
    let after = stat.rsplit(')').next().unwrap_or_default();
    after.split_whitespace().skip(11).take(2).filter_map(|t| t.parse::<f64>().ok()).sum::<f64>() / 100.0
}

/// Processor time is held to the limit: time on the wall would judge what else the machine does.
#[test]
#[ignore = "half a minute: cargo test --test suite trends:: -- --ignored --nocapture"]
fn a_hundred_thousand_results_in_seconds() {
    let folder = tempfile::tempdir().unwrap();
    let lines = archive(&Plan { planted: true, people: 40, bays: 12, sheets: 60, kits: 10, ..Plan::new(100_000, 9) });
    let one = folder.path().join("results.jsonl");
    fs::write(&one, &lines).unwrap();
    let many = folder.path().join("many");
    fs::create_dir_all(many.join("results")).unwrap();
    for (i, line) in lines.lines().enumerate() {
        fs::write(many.join(format!("results/{i}.json")), line).unwrap();
    }
    for from in [&one, &many] {
        let start = Instant::now();
        let mut child = crate::program::program()
            .args(["trends".as_ref(), from.as_os_str(), "--out".as_ref(), folder.path().join("out").as_os_str()])
            .spawn()
            .unwrap();
        let (mut peak, mut processor) = (0.0f64, 0.0f64);
        while child.try_wait().unwrap().is_none() {
            peak = peak.max(peak_mb(child.id()));
            processor = processor.max(processor_s(child.id()));
            std::thread::sleep(Duration::from_millis(10));
        }
        let seconds = start.elapsed().as_secs_f64();
        println!(
            "{}: {seconds:.1} s, {processor:.1} s of processors, {peak:.0} MB for {} MB of results",
            from.display(),
            lines.len() >> 20
        );
        assert!(processor > 0.0 && processor < 5.0 && peak < 500.0);
    }
}
