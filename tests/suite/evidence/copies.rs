//! Masked copies that still check against the sealed digests, and what is due.

use std::fs;
use std::path::{Path, PathBuf};

use super::doors::{run, seal_with};

fn sample() -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "samples", "good"].iter().collect()
}

#[test]
fn a_masked_copy_checks_against_the_sealed_digests() {
    let dir = tempfile::tempdir().unwrap();
    let key = super::fresh_key(dir.path(), "");
    let (sealed, copy) = (dir.path().join("sealed"), dir.path().join("copy"));
    assert_eq!(seal_with(&sample(), &sealed, &key, None).0, 0);
    let (code, text) = run(&[&sealed, Path::new("--out"), &copy], &["redact", "--show", "0,0,5,5"], None);
    assert_eq!(code, 0, "{text}");
    let list = dir.path().join("signers");
    fs::write(&list, format!("T1 {}", fs::read_to_string(key.with_extension("pub")).unwrap())).unwrap();
    let (code, text) = run(&[&copy, Path::new("--signers"), &list], &["check"], None);
    assert_eq!(code, 0, "{text}");
    assert!(text.contains("2 photos masked") && text.contains("passed          measured again"), "{text}");
    // Markers can still be found where they were; the rest is grey and the record is gone.
    let photo = copy.join("data/job/photos/a.jpg");
    let picture = image::open(&photo).unwrap().to_rgb8();
    let grey = picture.pixels().filter(|p| p.0.iter().all(|v| v.abs_diff(128) < 6)).count();
    assert!(grey * 10 > (picture.width() * picture.height()) as usize * 7);
    let found = crate::program::program().arg("detect").arg(&photo).args(["--json", "-"]).output();
    let markers = |json: &[u8]| {
        let value: serde_json::Value = serde_json::from_slice(json).unwrap();
        value[0]["markers"].as_array().unwrap().len()
    };
    let whole = crate::program::program()
        .arg("detect")
        .arg(sample().join("photos/a.jpg"))
        .args(["--json", "-"])
        .output()
        .unwrap();
    assert_eq!(markers(&found.unwrap().stdout), markers(&whole.stdout));
    assert!(!copy.join("data/report.html").exists() && !copy.join("data/job/scan-report.txt").exists());
    // A file that was exchanged, with the copy's own manifests made to fit, is not the sealed one.
    let job = copy.join("data/job/job.toml");
    fs::write(&job, fs::read_to_string(&job).unwrap().replace("T1", "T9")).unwrap();
    assert_eq!(run(&[&copy], &["check"], None).0, 1);
    let redone = dir.path().join("redone");
    super::sealed_anew(&copy, &redone, None, |_| ());
    let (code, text) = run(&[&redone], &["check"], None);
    assert!(code == 1 && text.contains("data/job/job.toml is not as it was sealed"), "{text}");
    // A copy is not copied again, an altered folder not at all.
    assert_eq!(run(&[&copy, Path::new("--out"), &dir.path().join("x")], &["redact"], None).0, 2);
}

/// The photos' own records chose the camera, and masked ones bear none. A copy beside an index is none of its folders.
#[test]
fn a_masked_copy_of_a_job_whose_photos_chose_their_camera() {
    let dir = tempfile::tempdir().unwrap();
    let (job, models) = (dir.path().join("job"), dir.path().join("models"));
    crate::staged::copy(&sample(), &job, true);
    fs::create_dir_all(models.join("cameras")).unwrap();
    fs::rename(job.join("camera.toml"), models.join("cameras/chosen.toml")).unwrap();
    let file = job.join("job.toml");
    let text = fs::read_to_string(&file).unwrap();
    let without: Vec<&str> = text.lines().filter(|line| !line.starts_with("camera = ")).collect();
    assert_eq!(without.len() + 1, text.lines().count());
    fs::write(&file, without.join("\n")).unwrap();
    let sealed = dir.path().join("sealed");
    let other = dir.path().join("other");
    crate::staged::copy(&sample(), &other, true);
    fs::write(
        other.join("job.toml"),
        fs::read_to_string(other.join("job.toml")).unwrap().replace("SAMPLE-GOOD", "OTHER"),
    )
    .unwrap();
    let (code, text) =
        run(&[&job, &other, Path::new("--out"), &sealed, Path::new("--models"), &models], &["seal"], None);
    assert_eq!(code, 0, "{text}");
    let member = |name: &str| {
        let all = fs::read_dir(&sealed).unwrap().map(|e| e.unwrap().path());
        all.into_iter().find(|p| p.file_name().unwrap().to_string_lossy().starts_with(name)).unwrap()
    };
    let (original, copy) = (member("SAMPLE-GOOD"), sealed.join("copy"));
    let (code, text) = run(&[&original, Path::new("--out"), &copy], &["redact"], None);
    assert_eq!(code, 0, "{text}");
    for folder in [&copy, &original, &member("OTHER")] {
        let (code, text) = run(&[folder], &["check"], None);
        assert!(code != 1 && text.contains("passed          measured again"), "{text}");
    }
}

#[test]
fn what_is_due_is_listed_and_nothing_is_deleted() {
    let dir = tempfile::tempdir().unwrap();
    let sealed = dir.path().join("archive/sealed");
    fs::create_dir(dir.path().join("archive")).unwrap();
    assert_eq!(run(&[&sample(), Path::new("--out"), &sealed], &["seal"], None).0, 0);
    let before = super::files(dir.path());
    let archive = dir.path().join("archive");
    // The sample is kept until 2036-02-03, that day included.
    for (day, words) in [("2036-02-03", "0 due on 2036-02-03, 1 not yet"), ("2036-02-04", "may be deleted")] {
        let (code, text) = run(&[&archive], &["due", "--on", day], None);
        assert!(code == 0 && text.contains(words), "{text}");
    }
    assert_eq!(super::files(dir.path()), before);
    assert_eq!(run(&[&archive], &["due", "--on", "soon"], None).0, 2);
}

#[test]
fn one_file_is_masked_into_one_file() {
    let dir = tempfile::tempdir().unwrap();
    let key = super::fresh_key(dir.path(), "");
    let (sealed, copy) = (dir.path().join("sealed.tar"), dir.path().join("copy.tar"));
    assert_eq!(seal_with(&super::doors::small_job(&dir.path().join("in")), &sealed, &key, None).0, 0);
    let (code, text) = run(&[&sealed, Path::new("--out"), &copy], &["redact"], None);
    assert_eq!(code, 0, "{text}");
    let (code, text) = run(&[&copy], &["check"], None);
    assert!(code == 3 && text.contains("2 photos masked"), "{text}");
    // A copy is no source of copies; whoever named the file reads of the file.
    let (code, text) = run(&[&copy, Path::new("--out"), &dir.path().join("again")], &["redact"], None);
    assert!(code == 2 && text.contains("copy.tar is a copy already"), "{text}");
}
