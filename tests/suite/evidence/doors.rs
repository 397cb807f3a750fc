//! `seal` and `check` as people run them.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A job in a folder below `shared`, with its kit and set-up sheet beside it and
/// photos that show nothing: it ends as retake, quickly.
pub(crate) fn small_job(shared: &Path) -> PathBuf {
    let good: PathBuf = [env!("CARGO_MANIFEST_DIR"), "samples", "good"].iter().collect();
    let job = shared.join("J 1");
    fs::create_dir_all(job.join("photos")).unwrap();
    for name in ["kit.toml", "setup.toml", "camera.toml"] {
        fs::copy(good.join(name), shared.join(name)).unwrap();
    }
    let text = "format = \"job/1\"\njob = \"J 1\"\nsetup = \"../setup.toml\"\nkit = \"../kit\"\ncamera = \"../camera.toml\"\n\
                [[attachment]]\nfile = \"notes (ä).txt\"\nkind = \"other\"\n";
    fs::write(job.join("job.toml"), text).unwrap();
    fs::write(job.join("notes (ä).txt"), "invented").unwrap();
    for (name, grey) in [("a.png", 90), ("b.png", 150)] {
        image::GrayImage::from_pixel(320, 240, image::Luma([grey])).save(job.join("photos").join(name)).unwrap();
    }
    job
}

pub(crate) fn run(arguments: &[&Path], options: &[&str], agent: Option<&Path>) -> (i32, String) {
    let mut command = crate::program::program();
    command.args(options).args(arguments).env_remove("SSH_AUTH_SOCK").env_remove("BAYWITNESS_MODELS");
    if let Some(socket) = agent {
        command.env("SSH_AUTH_SOCK", socket);
    }
    let output = command.stdin(std::process::Stdio::null()).output().unwrap();
    let text = [output.stdout, output.stderr].map(|b| String::from_utf8(b).unwrap()).concat();
    (output.status.code().unwrap(), text)
}

pub(crate) fn seal_with(job: &Path, out: &Path, key: &Path, agent: Option<&Path>) -> (i32, String) {
    run(&[job, Path::new("--out"), out, Path::new("--key"), key], &["seal"], agent)
}

fn check(folder: &Path, signers: Option<&Path>) -> (i32, String) {
    match signers {
        None => run(&[folder], &["check"], None),
        Some(list) => run(&[folder, Path::new("--signers"), list], &["check"], None),
    }
}

pub(crate) fn rewrite(path: &Path, change: impl FnOnce(&str) -> String) {
    let text = fs::read_to_string(path).unwrap();
    let changed = change(&text);
    assert_ne!(text, changed, "{} stays as it was", path.display());
    fs::write(path, changed).unwrap();
}

#[test]
fn exit_codes_tell_intact_altered_and_unsigned_apart() {
    let dir = tempfile::tempdir().unwrap();
    let job = small_job(&dir.path().join("in"));
    let key = super::fresh_key(dir.path(), "");
    let (signed, unsigned) = (dir.path().join("signed"), dir.path().join("unsigned"));
    let (code, text) = seal_with(&job, &signed, &key, None);
    assert_eq!(code, 0, "{text}");
    assert!(text.contains("retake"), "{text}");
    assert_eq!(run(&[&job, Path::new("--out"), &unsigned], &["seal"], None).0, 0);
    assert!(signed.join("data/job/notes (ä).txt").is_file() && signed.join("data/kit.toml").is_file());
    let list = dir.path().join("signers");
    fs::write(&list, format!("T1 {}", fs::read_to_string(key.with_extension("pub")).unwrap())).unwrap();
    let (code, text) = check(&signed, Some(&list));
    assert_eq!(code, 0, "{text}");
    assert!(text.contains("T1") && text.contains("measured again"), "{text}");
    assert_eq!(check(&signed, None).0, 3);
    assert_eq!(check(&unsigned, Some(&list)).0, 3);
    let other = dir.path().join("others");
    fs::write(
        &other,
        "T1 valid-before=\"20200101\" ".to_owned() + &fs::read_to_string(key.with_extension("pub")).unwrap(),
    )
    .unwrap();
    let (code, text) = check(&signed, Some(&other));
    assert!(code == 3 && text.contains("no longer"), "{code}: {text}");
    fs::write(signed.join("data/job/photos/a.png"), "x").unwrap();
    let (code, text) = check(&signed, Some(&list));
    assert!(code == 1 && text.contains("data/job/photos/a.png was altered"), "{code}: {text}");
    for (path, words) in [(dir.path().join("none"), "cannot read"), (job, "no evidence folder"), (key, "cannot read")] {
        let (code, text) = check(&path, None);
        assert!(code == 2 && text.contains(words), "{code}: {text}");
    }
    fs::write(&list, "T1 nonsense").unwrap();
    let (code, text) = check(&unsigned, Some(&list));
    assert!(code == 2 && text.contains("line 1"), "{code}: {text}");
}

/// Whoever holds a key can seal anything: a result that the photos don't give is found by measuring.
#[test]
fn a_result_that_does_not_follow_from_the_photos_is_found() {
    let dir = tempfile::tempdir().unwrap();
    let good: PathBuf = [env!("CARGO_MANIFEST_DIR"), "samples", "good"].iter().collect();
    let (honest, forged) = (dir.path().join("honest"), dir.path().join("forged"));
    let (code, text) = run(&[&good, Path::new("--out"), &honest], &["seal"], None);
    assert_eq!(code, 0, "{text}");
    let (code, text) = check(&honest, None);
    assert!(code == 3 && text.contains("within tolerance"), "{code}: {text}");
    rewrite(&honest.join("data/result.json"), |text| {
        let mut record: serde_json::Value = serde_json::from_str(text).unwrap();
        let value = record["checks"][0]["value"].as_f64().unwrap();
        record["checks"][0]["value"] = serde_json::json!(value - 1.0);
        record.to_string()
    });
    super::sealed_anew(&honest, &forged, None, |_| ());
    let (code, text) = check(&forged, None);
    assert!(code == 1 && text.contains("distance") && text.contains("recorded"), "{code}: {text}");
}

/// What a report's digest is of is the file that lies beside it.
#[test]
fn the_pdf_carries_the_digest_of_the_sealed_result() {
    let dir = tempfile::tempdir().unwrap();
    let job = small_job(&dir.path().join("in"));
    let (sealed, reports) = (dir.path().join("sealed"), dir.path().join("reports"));
    assert_eq!(run(&[&job, Path::new("--out"), &sealed], &["seal"], None).0, 0);
    assert_eq!(run(&[&job, Path::new("--report"), &reports], &["verify"], None).0, 4);
    let data = sealed.join("data");
    let digest = |path: &Path| baywitness::report::digest(&fs::read(path).unwrap());
    let result = digest(&data.join("result.json"));
    assert!(fs::read_to_string(data.join("for-the-customer.html")).unwrap().contains(&result));
    let written = super::files(&reports);
    let page = written.iter().find(|p| p.parent().unwrap().ends_with("for-the-customer")).unwrap();
    assert!(fs::read_to_string(page).unwrap().contains(&result));
    let one = |ending: &str| written.iter().find(|p| p.extension().is_some_and(|e| e == ending)).unwrap();
    assert_eq!(digest(one("json")), result, "verify and seal write the same result");
    assert_eq!(fs::read(one("pdf")).unwrap(), fs::read(data.join("report.pdf")).unwrap());
    match Command::new("pdftotext").arg(data.join("report.pdf")).arg("-").output() {
        Ok(output) => {
            let text: String = String::from_utf8_lossy(&output.stdout).split_whitespace().collect();
            assert!(text.contains(&result), "{text}");
        }
        Err(_) => eprintln!("skipped: pdftotext is not installed"),
    }
}

/// Jobs of one repair order: a folder each that checks alone, and an index that binds them.
#[test]
fn a_repair_order_is_sealed_as_folders_with_an_index() {
    let dir = tempfile::tempdir().unwrap();
    let key = super::fresh_key(dir.path(), "");
    let jobs: Vec<PathBuf> = ["R-7", "R-7", "R-8"]
        .iter()
        .enumerate()
        .map(|(i, series)| {
            let job = small_job(&dir.path().join(i.to_string()));
            let words = format!("job = \"J {i}\"\nseries = \"{series}\"\nattempt = {}", i + 1);
            rewrite(&job.join("job.toml"), |text| text.replace("job = \"J 1\"", &words));
            job
        })
        .collect();
    let out = dir.path().join("order");
    let reports = dir.path().join("reports");
    assert_eq!(run(&[&jobs[0], &jobs[1], &jobs[2], Path::new("--report"), &reports], &["verify"], None).0, 4);
    let names: Vec<String> = super::files(&reports.join("for-the-customer"))
        .iter()
        .map(|p| p.file_name().unwrap().to_str().unwrap().to_owned())
        .collect();
    assert_eq!(names.len(), 4, "{names:?}");
    assert!(names.contains(&"repair-order-R-7.html".to_owned()), "{names:?}");
    let (code, text) = run(&[&jobs[0], &jobs[2], Path::new("--out"), &out], &["seal"], None);
    assert!(code == 2 && text.contains("same repair order") && !out.exists(), "{code}: {text}");
    let (code, text) = run(&[&jobs[0], &jobs[1], Path::new("--out"), &out, Path::new("--key"), &key], &["seal"], None);
    assert_eq!(code, 0, "{text}");
    let page = fs::read_to_string(out.join("repair-order.html")).unwrap();
    assert!(page.contains("Repair order R-7") && page.contains("attempt 2"));
    let list = dir.path().join("signers");
    fs::write(&list, format!("T1 {}", fs::read_to_string(key.with_extension("pub")).unwrap())).unwrap();
    let folders: Vec<PathBuf> = fs::read_dir(&out).unwrap().map(|e| e.unwrap().path()).filter(|p| p.is_dir()).collect();
    assert_eq!(folders.len(), 2);
    for folder in &folders {
        let (code, text) = check(folder, Some(&list));
        assert_eq!(code, 0, "{text}");
    }
    let (code, text) = check(&out, Some(&list));
    assert!(code == 2 && text.contains("check each of them"), "{code}: {text}");
    let sums = || {
        let mut command = Command::new("sha512sum");
        command.args(["-c", "index-sha512.txt"]).current_dir(&out);
        command.output().map(|o| o.status.success())
    };
    match sums() {
        Ok(good) => assert!(good, "sha512sum reads the index"),
        Err(_) => return eprintln!("skipped: sha512sum is not installed"),
    }
    rewrite(&folders[0].join("tagmanifest-sha512.txt"), |text| text.replacen('a', "b", 1));
    assert!(!sums().unwrap(), "a folder that is no longer the one of the index is seen");
}
