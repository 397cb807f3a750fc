//! What 0.1 wrote is read: a kit was a rig, a kit's upkeep the kit, and two
//! verdicts had other names.

use std::fs;
use std::path::Path;
use std::process::Command;

use baywitness::record::{Context, JobRecord, KitUpkeep, Verdict};
use serde_json::{Value, json};

/// The good sample as 0.1 would have had it.
fn older_job(folder: &Path) {
    let sample = Path::new(env!("CARGO_MANIFEST_DIR")).join("samples/good");
    fs::create_dir_all(folder.join("photos")).unwrap();
    for name in ["camera.toml", "setup.toml", "scan-report.txt", "photos/a.jpg", "photos/b.jpg"] {
        fs::copy(sample.join(name), folder.join(name)).unwrap();
    }
    let text = |name: &str| fs::read_to_string(sample.join(name)).unwrap();
    let (job, kit) = (text("job.toml"), text("kit.toml"));
    assert!(job.contains("kit = \"kit.toml\"") && kit.starts_with("format = \"kit/1\""));
    fs::write(folder.join("job.toml"), job.replace("kit = \"kit.toml\"", "rig = \"rig.toml\"")).unwrap();
    fs::write(folder.join("rig.toml"), kit.replacen("kit/1", "rig/1", 1)).unwrap();
}

fn run(arguments: &[&str]) -> (i32, String, String) {
    let mut command = Command::new(env!("CARGO_BIN_EXE_baywitness"));
    let output = command.args(arguments).env_remove("BAYWITNESS_MODELS").env("LC_ALL", "C").output().unwrap();
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    (output.status.code().unwrap(), text(&output.stdout), text(&output.stderr))
}

#[test]
fn a_job_with_a_rig_is_verified_and_the_older_names_are_noted() {
    let folder = tempfile::tempdir().unwrap();
    older_job(folder.path());
    let path = folder.path().to_str().unwrap();
    let (code, record, notes) = run(&["verify", path, "--json", "-"]);
    assert_eq!(code, 0, "{notes}");
    let record: Value = serde_json::from_str(&record).unwrap();
    let roles: Vec<&Value> = record["inputs"].as_array().unwrap().iter().map(|i| &i["role"]).collect();
    assert!(record["verdict"] == "within" && roles.contains(&&json!("kit")), "{roles:?}");
    for noted in ["job.toml: `rig` is called `kit` now", "rig.toml: `rig/1` is called `kit/1` now"] {
        assert_eq!(notes.matches(noted).count(), 1, "{notes}");
    }

    let job = folder.path().join("job.toml");
    fs::write(&job, fs::read_to_string(&job).unwrap() + "\nkit = \"rig.toml\"\n").unwrap();
    let (code, _, error) = run(&["verify", path]);
    assert!(code == 2 && !error.is_empty(), "{code} {error}");
}

#[test]
fn a_record_of_before_is_the_same_record() {
    let record = JobRecord {
        verdict: Verdict::NotProven,
        context: Context {
            kit: "demo".to_owned(),
            kit_upkeep: Some(KitUpkeep { serial: Some("K-1".to_owned()), survey_due: None, survey_overdue: None }),
            ..Context::default()
        },
        ..sample_record()
    };
    let mut older = serde_json::to_value(&record).unwrap();
    let context = older["context"].as_object_mut().unwrap();
    let (name, upkeep) = (context.remove("kit").unwrap(), context.remove("kit_upkeep").unwrap());
    context.insert("rig".to_owned(), name);
    context.insert("kit".to_owned(), upkeep);
    older["verdict"] = json!("undecided");
    for input in older["inputs"].as_array_mut().unwrap() {
        if input["role"] == "kit" {
            input["role"] = json!("rig");
        }
    }
    let read: JobRecord = serde_json::from_value(older).unwrap();
    assert_eq!(read, record);
    assert_eq!(Verdict::of_name("unusable"), Some(Verdict::Retake));
    for verdict in [Verdict::Within, Verdict::Outside, Verdict::NotProven, Verdict::Retake] {
        assert_eq!(Verdict::of_name(verdict.name()), Some(verdict));
        assert_eq!(serde_json::to_value(verdict).unwrap(), json!(verdict.name()));
    }
}

fn sample_record() -> JobRecord {
    let sample = Path::new(env!("CARGO_MANIFEST_DIR")).join("samples/good");
    let (code, record, error) = run(&["verify", sample.to_str().unwrap(), "--json", "-"]);
    assert_eq!(code, 0, "{error}");
    serde_json::from_str(&record).unwrap()
}
