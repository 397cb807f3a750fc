//! Results of an earlier audit judged again, and evidence as one file.

use std::fs;
use std::path::Path;
use std::process::Stdio;

use serde_json::Value;

use super::{audit, copy, edit, empty_job, lines, sample};

fn differences(out: &Path) -> Value {
    serde_json::from_slice(&fs::read(out.join("differences.json")).unwrap()).unwrap()
}

/// Another verdict, a value two standard uncertainties away and another version,
/// as an older program might have left them.
fn age(out: &Path, line: &Value) {
    let path = out.join(line["result"].as_str().unwrap());
    let mut result: Value = serde_json::from_slice(&fs::read(&path).unwrap()).unwrap();
    let check = &mut result["checks"][0];
    let (value, u) = (check["value"].as_f64().unwrap(), check["standard_uncertainty"].as_f64().unwrap());
    check["value"] = (value - 2.0 * u).into();
    check["verdict"] = "outside".into();
    result["verdict"] = "outside".into();
    fs::write(path, result.to_string()).unwrap();
}

#[test]
fn what_a_recomputation_changes_is_listed() {
    let dir = tempfile::tempdir().unwrap();
    let (root, out) = (dir.path().join("archive"), dir.path().join("out"));
    copy(&sample("good"), &root.join("good"));
    for n in 0..3 {
        empty_job(&root.join(format!("N-{n}")), n);
    }
    audit(&root, &out).status().unwrap();
    let first = lines(&out);
    age(&out, &first["archive/good"]);
    edit(&out.join("audit.jsonl"), |text| {
        let old = |line: &str| line.replace("\"exit\":0,\"verdict\":\"within\"", "\"exit\":1,\"verdict\":\"outside\"");
        text.lines()
            .map(|l| {
                old(l).replace(concat!("\"version\":\"", env!("CARGO_PKG_VERSION"), "\""), "\"version\":\"0.0.9\"")
                    + "\n"
            })
            .collect()
    });
    // Kept until somebody asks, and said so.
    let text = audit(&root, &out).stdout(Stdio::piped()).output().unwrap().stdout;
    let text = String::from_utf8(text).unwrap();
    assert!(text.contains("4 of them kept") && text.contains("4  were judged by another version"), "{text}");
    assert_eq!(lines(&out)["archive/good"]["verdict"], "outside");
    // Cut off three times, then ended: the differences are those from before.
    for n in 0..3 {
        let mut running = audit(&root, &out).arg("--recompute").spawn().unwrap();
        std::thread::sleep(std::time::Duration::from_millis(20 + 40 * n));
        running.kill().unwrap();
        running.wait().unwrap();
    }
    audit(&root, &out).arg("--recompute").status().unwrap();
    let now = lines(&out);
    assert_eq!(
        (&now["archive/good"]["verdict"], &now["archive/good"]["version"]),
        (&"within".into(), &env!("CARGO_PKG_VERSION").into())
    );
    let found = differences(&out);
    assert_eq!(found["format"], "differences/1");
    let jobs = found["jobs"].as_array().unwrap();
    assert_eq!(jobs.len(), 1, "{found}");
    let changed = jobs[0]["changed"].as_array().unwrap();
    let short: Vec<(&str, &str, &str)> = changed
        .iter()
        .map(|c| (c["what"].as_str().unwrap(), c["earlier"].as_str().unwrap(), c["now"].as_str().unwrap()))
        .collect();
    assert_eq!(short[0], ("verdict", "outside", "within"));
    assert_eq!(short[1], ("distance (nose)", "outside", "within"));
    assert!((changed[2]["in_u"].as_f64().unwrap() - 2.0).abs() < 1e-9 && short.len() == 3, "{changed:?}");
    let page = fs::read_to_string(out.join("report.html")).unwrap();
    assert!(page.contains("verdict: outside before, now within") && page.contains("+2.00 u"));
    // The earlier results stay readable beside the new ones; another run changes nothing.
    assert!(out.join("earlier/audit.jsonl").is_file() && !out.join("recomputing").exists());
    audit(&root, &out).status().unwrap();
    assert_eq!(differences(&out), found);
    audit(&root, &out).arg("--recompute").status().unwrap();
    assert_eq!(differences(&out)["jobs"].as_array().unwrap().len(), 0);
}

#[test]
fn evidence_as_one_file_is_judged_where_it_lies() {
    let dir = tempfile::tempdir().unwrap();
    let (root, out) = (dir.path().join("archive"), dir.path().join("out"));
    fs::create_dir_all(&root).unwrap();
    let job = dir.path().join("job");
    empty_job(&job, 1);
    let seal = |to: &Path| {
        let sealed = crate::program::program().arg("seal").arg(&job).arg("--out").arg(to).output();
        assert!(sealed.unwrap().status.success());
    };
    seal(&root.join("whole.tar"));
    seal(&root.join("altered.tar"));
    let mut bytes = fs::read(root.join("altered.tar")).unwrap();
    let place = bytes.len() / 2;
    bytes[place] ^= 1;
    fs::write(root.join("altered.tar"), &bytes).unwrap();
    fs::write(root.join("other.tar"), "no tar at all").unwrap();
    let before: Vec<_> = fs::read_dir(&root).unwrap().map(|e| e.unwrap().file_name()).collect();
    assert_eq!(audit(&root, &out).status().unwrap().code(), Some(2));
    let found = lines(&out);
    let whole = &found["archive/whole.tar"];
    assert_eq!((&whole["verdict"], &whole["evidence"]), (&"retake".into(), &"intact, unsigned".into()));
    for name in ["altered", "other"] {
        let line = &found[&format!("archive/{name}.tar")];
        let result = fs::read_to_string(out.join(line["result"].as_str().unwrap())).unwrap();
        assert!(line["exit"] == 2 && result.contains(&format!("{name}.tar")), "{result}");
        assert!(!result.contains(std::env::temp_dir().join(".tmp").to_str().unwrap()), "{result}");
    }
    assert_eq!(found["archive/altered.tar"]["evidence"], "altered");
    let after: Vec<_> = fs::read_dir(&root).unwrap().map(|e| e.unwrap().file_name()).collect();
    assert_eq!(before, after, "nothing is unpacked beside them");
}
