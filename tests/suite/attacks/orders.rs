//! Attacks on what joins jobs: an attempt filed for another repair order, one set-up called that of another sensor, another
//! vehicle or another job, and what keeps a job's folder from being read.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use serde_json::Value;

use super::{rewrite, sample};
use crate::audit::copy;
use crate::evidence::doors::{run, small_job};

fn path(text: &str) -> &Path {
    Path::new(text)
}

/// A workshop with a log and an archive.
pub(super) struct Workshop {
    pub(super) dir: tempfile::TempDir,
    pub(super) keys: PathBuf,
}

/// What an audit says: exit code, words, and the log's findings by code and path below the archive.
pub(super) type Said = (i32, String, Vec<(String, String)>);

impl Workshop {
    pub(super) fn new() -> Self {
        let dir = tempfile::tempdir().unwrap();
        let shop = Workshop { keys: dir.path().join("keys"), dir };
        let (code, said) = run(&[&shop.log(), path("--origin"), path("shop.example/attempts")], &["log", "new"], None);
        assert_eq!(code, 0, "{said}");
        let key = said.lines().find(|line| line.starts_with("shop.example/attempts+")).unwrap();
        fs::write(&shop.keys, key).unwrap();
        fs::create_dir(shop.archive()).unwrap();
        shop
    }

    pub(super) fn log(&self) -> PathBuf {
        self.dir.path().join("log")
    }

    pub(super) fn archive(&self) -> PathBuf {
        self.dir.path().join("archive")
    }

    /// For an audit that knows of none before it.
    pub(super) fn new_folder(&self) -> PathBuf {
        tempfile::tempdir_in(self.dir.path()).unwrap().keep()
    }

    /// A job of attempt 1 of repair order R-7 outside of the archive, grey all over: retake.
    pub(super) fn job(&self, name: &str, grey: u8) -> PathBuf {
        let job = small_job(&self.dir.path().join(name));
        rewrite(&job.join("job.toml"), |text| {
            text.replace("job = \"J 1\"", &format!("job = \"{name}\"\nseries = \"R-7\"\nattempt = 1"))
        });
        for (file, grey) in [("a.png", grey), ("b.png", grey + 1)] {
            image::GrayImage::from_pixel(320, 240, image::Luma([grey])).save(job.join("photos").join(file)).unwrap();
        }
        job
    }

    /// The same photos as another job.
    fn again(&self, job: &Path, name: &str, change: impl FnOnce(&str) -> String) -> PathBuf {
        let to = self.dir.path().join(name);
        copy(job.parent().unwrap(), &to);
        let job = to.join(job.file_name().unwrap());
        rewrite(&job.join("job.toml"), change);
        job
    }

    pub(super) fn verify(&self, job: &Path) {
        let (code, said) = run(&[job, path("--log"), &self.log()], &["verify"], None);
        assert!(code != 2 && said.contains("Logged as"), "{code}: {said}");
    }

    /// Seals into the archive; logged.
    pub(super) fn seal(&self, job: &Path, name: &str) -> PathBuf {
        let out = self.archive().join(name);
        let (code, said) = run(&[job, path("--out"), &out, path("--log"), &self.log()], &["seal"], None);
        assert_eq!(code, 0, "{said}");
        out
    }

    pub(super) fn audit(&self) -> Said {
        let (code, said, json) = self.audit_with(&[]);
        (code, said, self.listed(&json["findings"]))
    }

    /// The same with more options: exit code, words, and what was found of the log.
    pub(super) fn audit_with(&self, more: &[&Path]) -> (i32, String, Value) {
        let out = self.new_folder();
        let (archive, log) = (self.archive(), self.log());
        let arguments = [archive.as_path(), path("--out"), &out, path("--log"), &log, path("--log-keys"), &self.keys];
        let (code, said) = run(&[&arguments[..], more].concat(), &["audit"], None);
        (code, said, serde_json::from_slice(&fs::read(out.join("log.json")).unwrap()).unwrap())
    }

    /// Findings by code and path below the archive.
    pub(super) fn listed(&self, findings: &Value) -> Vec<(String, String)> {
        let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
        let below = |path: &Value| text(path).replace(&format!("{}/", self.archive().display()), "");
        findings.as_array().unwrap().iter().map(|f| (text(&f["code"]), below(&f["path"]))).collect()
    }

    /// What leads from each job of the archive to an earlier one, by code.
    fn leads(&self) -> BTreeMap<String, Vec<String>> {
        let (out, archive) = (self.new_folder(), self.archive());
        run(&[&archive, path("--out"), &out], &["audit"], None);
        let text = |value: &Value| value.as_str().unwrap().to_owned();
        let line = |line: &str| {
            let line: Value = serde_json::from_str(line).unwrap();
            let leads = line["across"].as_array().cloned().unwrap_or_default();
            let below = text(&line["path"]).replace(&format!("{}/", archive.display()), "");
            (below, leads.iter().map(|lead| text(&lead["code"])).collect())
        };
        fs::read_to_string(out.join("audit.jsonl")).unwrap().lines().map(line).collect()
    }
}

pub(super) fn found(code: &str, path: &str) -> Vec<(String, String)> {
    vec![(code.to_owned(), path.to_owned())]
}

/// Attempts that nobody wants go; their photos lie in the archive as another order's or another attempt's.
#[test]
fn an_attempt_filed_for_another_repair_order() {
    let shop = Workshop::new();
    let good = shop.job("good", 90);
    rewrite(&good.join("job.toml"), |text| text.replace("attempt = 1", "attempt = 2"));
    shop.seal(&good, "good");
    let cases = [
        ("order", "series = \"R-7\"", "series = \"R-9\""),
        ("number", "attempt = 1", "attempt = 9"),
        ("none", "attempt = 1\n", ""),
    ];
    for ((name, typed, filed), grey) in cases.into_iter().zip([100, 110, 120]) {
        let tried = shop.job(&format!("tried {name}"), grey);
        shop.verify(&tried);
        let filler = shop.seal(&shop.again(&tried, name, |text| text.replace(typed, filed)), name);
        let (code, said, findings) = shop.audit();
        let refiled: Vec<&str> = findings.iter().filter(|f| f.0 == "attempt-refiled").map(|f| f.1.as_str()).collect();
        assert_eq!((code, refiled), (4, vec![name]), "{said}");
        assert!(said.contains("attempt 1 of repair order R-7: its 2 photos are in"), "{said}");
        fs::remove_dir_all(filler).unwrap();
    }
}

/// A masked copy states which photos it was made of; the log says whether that is so.
#[test]
fn an_attempt_that_a_masked_copy_states() {
    let shop = Workshop::new();
    let tried = shop.job("tried", 60);
    shop.verify(&tried);
    let redact = |from: &Path, to: &str| {
        let (code, said) = run(&[from, path("--out"), &shop.archive().join(to)], &["redact"], None);
        assert_eq!(code, 0, "{said}");
        fs::remove_dir_all(from).unwrap();
    };
    let unlogged = shop.dir.path().join("unlogged");
    assert_eq!(run(&[&tried, path("--out"), &unlogged], &["seal"], None).0, 0);
    redact(&unlogged, "copy");
    let (code, said, findings) = shop.audit();
    assert_eq!((code, findings), (4, found("attempt-as-stated", "copy")), "{said}");
    assert!(said.contains("by digests as it states them"), "{said}");
    redact(&shop.seal(&tried, "whole"), "proven");
    let (_, said, findings) = shop.audit();
    assert!(findings.is_empty() && said.contains("every attempt is in the archive"), "{said}");
    // The proof of another job's attempt is none of this one's.
    let good = shop.seal(&shop.job("good", 90), "good");
    let copy = shop.archive().join("copy");
    crate::evidence::sealed_anew(&copy, &shop.archive().join("forged"), None, |files| {
        let proof = fs::read(good.join("data/attempt.tlog-proof")).unwrap();
        assert!(files.insert("attempt.tlog-proof".to_owned(), proof).is_none());
    });
    for gone in [&copy, &shop.archive().join("proven")] {
        fs::remove_dir_all(gone).unwrap();
    }
    let (_, said, findings) = shop.audit();
    assert!(findings.iter().any(|(code, _)| code.starts_with("attempt-")), "{said}");
}

/// What was outside is within by the same sheet with another name and wider limits, "another sensor".
#[test]
fn a_sensor_that_is_another_by_its_sheets_name_alone() {
    let shop = Workshop::new();
    let (own, other) = (shop.archive().join("a"), shop.archive().join("b"));
    copy(&sample("wrong"), &own);
    copy(&own, &other);
    rewrite(&other.join("job.toml"), |text| text.replace("SAMPLE-WRONG", "OTHER-SENSOR"));
    rewrite(&other.join("setup.toml"), |text| {
        let line = |line: &str| match line.split_once(" = ") {
            Some(("name", _)) => "name = \"invented-windscreen-camera\"\n".to_owned(),
            Some((key @ ("lower" | "upper"), number)) => {
                let wider = if key == "lower" { -30.0 } else { 30.0 };
                format!("{key} = {:.1}\n", number.parse::<f64>().unwrap() + wider)
            }
            _ => format!("{line}\n"),
        };
        text.lines().map(line).collect()
    });
    shop.verify(&own);
    shop.verify(&other);
    let (code, said, findings) = shop.audit();
    assert!(code == 3 || code == 1, "{code}: {said}");
    assert!(findings.contains(&found("verdict-restated", "b")[0]), "{said}");
    assert_eq!(shop.leads()["b"], ["photo-of-another-job"]);
}

/// Another place for the target: a sheet of another sensor.
fn of_another_sensor(sheet: &Path) {
    rewrite(sheet, |text| {
        let far = text.replace("= 1500.0", "= 2600.0").replace("= 1490.0", "= 2590.0").replace("= 1510.0", "= 2610.0");
        let high = far.replace("= 820.0", "= 1320.0").replace("= 815.0", "= 1315.0").replace("= 825.0", "= 1325.0");
        high.replace("name = \"invented-front-radar\"", "name = \"invented-windscreen-camera\"")
    });
}

fn vehicle(text: &str, vin: &str) -> String {
    format!("{text}[vehicle]\nvin = \"{vin}\"\n")
}

const VINS: [&str; 2] = ["1NVENTED000000001", "1NVENTED000000002"];

/// One vehicle's photos serve another one: as another sensor's of the same order, or as the same job once more.
#[test]
fn photos_of_one_vehicle_for_another_in_one_repair_order() {
    let shop = Workshop::new();
    let first = shop.job("first", 60);
    rewrite(&first.join("job.toml"), |text| vehicle(text, VINS[0]));
    let kept = shop.archive().join("1");
    copy(first.parent().unwrap(), &kept);
    let put = |name: &str, sensor: bool, change: &dyn Fn(&str) -> String| {
        let job = shop.again(&first, name, |text| change(text));
        if sensor {
            of_another_sensor(&job.with_file_name("setup.toml"));
        }
        let home = shop.archive().join("2");
        copy(job.parent().unwrap(), &home);
        let leads = shop.leads();
        assert_eq!(leads["1/J 1"], Vec::<String>::new());
        fs::remove_dir_all(home).unwrap();
        leads["2/J 1"].clone()
    };
    let another = |text: &str| text.replace("job = \"first\"", "job = \"second\"");
    let lead = ["photo-of-another-job"];
    // Honest: another sensor of the vehicle; the job again, with what was typed since.
    assert_eq!(put("sensor", true, &another), Vec::<String>::new());
    assert_eq!(put("copy", false, &|text| format!("{text}description = \"invented\"\n")), Vec::<String>::new());
    // Another vehicle, by its number.
    assert_eq!(put("sensor of another", true, &|text| another(text).replace(VINS[0], VINS[1])), lead);
    assert_eq!(put("job of another", false, &|text| text.replace(VINS[0], VINS[1])), lead);
    assert_eq!(put("order of another", false, &|text| text.replace("R-7", "R-8")), lead);
}

/// Job files by names that no reader knows, pictures without one, archives by any name.
#[test]
fn a_job_without_a_job_file_of_that_name() {
    let shop = Workshop::new();
    let out = shop.dir.path().join("out");
    copy(shop.job("first", 60).parent().unwrap(), &shop.archive().join("1"));
    let (hidden, whole) = (shop.archive().join("2"), shop.job("second", 90));
    copy(whole.parent().unwrap(), &hidden);
    let job = hidden.join("J 1");
    let audit = || run(&[&shop.archive(), path("--out"), &out], &["audit"], None);
    let named = |words: &str, what: &Path| {
        let (code, said) = audit();
        assert!(said.contains(&what.display().to_string()) && said.contains(words), "{words}: {said}");
        assert_eq!(code, 2, "{said}");
    };
    assert_eq!(audit().0, 4);
    for name in ["j\u{43e}b.toml", "_job.toml", "job .toml", "notes"] {
        fs::rename(job.join("job.toml"), job.join(name)).unwrap();
        named("looks like a job file", &job.join(name));
        named("no job file", &job.join("photos"));
        fs::rename(job.join(name), job.join("job.toml")).unwrap();
    }
    // A second job in the folder of the first.
    fs::write(job.join("more.toml"), "format = \"job/1\"\n").unwrap();
    named("looks like a job file", &job.join("more.toml"));
    fs::remove_file(job.join("more.toml")).unwrap();
    let tar = |magic: &[u8]| [&[b'x'; 257][..], magic].concat();
    for (n, head) in [&b"PK\x03\x04"[..], b"\x1f\x8b\x08", b"\xfd7zXZ\x00", &tar(b"ustar")].into_iter().enumerate() {
        let packed = shop.archive().join(format!("photo-{n}.jpg"));
        fs::write(&packed, head).unwrap();
        named("unpack it", &packed);
        fs::remove_file(packed).unwrap();
    }
    // Pictures that are no job's, and what a job keeps.
    for apart in ["cameras/one", "reports", "models/kits/one"] {
        let folder = shop.archive().join(apart);
        fs::create_dir_all(&folder).unwrap();
        fs::copy(job.join("photos/a.png"), folder.join("a.png")).unwrap();
        fs::write(folder.join("camera.toml"), "format = \"camera/1\"\n").unwrap();
    }
    fs::write(shop.archive().join("notes.odt"), [&b"PK\x03\x04"[..], &[0; 26], b"mimetype"].concat()).unwrap();
    fs::write(job.join("scan.bin"), b"PK\x03\x04").unwrap();
    let (code, said) = audit();
    assert!(code == 4 && said.contains("2 jobs"), "{code}: {said}");
}
