//! What joins two jobs of an archive: copies of photos.

use std::fs;
use std::path::Path;

use super::{audit, copy, edit, lines, sample};

fn renamed(job: &Path, name: &str) {
    copy(&sample("good"), job);
    edit(&job.join("job.toml"), |text| {
        let lines = text.lines().map(|line| match line.split_once(" = ") {
            Some(("job", _)) => format!("job = \"{name}\""),
            Some(("vin" | "series", _)) => String::new(),
            _ => line.to_owned(),
        });
        lines.collect::<Vec<_>>().join("\n")
    });
}

/// Saves a photo again at another quality and a little larger, without its record.
fn save_again(photo: &Path) {
    let picture = image::open(photo).unwrap();
    let (w, h) = (picture.width() * 21 / 20, picture.height() * 21 / 20);
    let larger = picture.resize_exact(w, h, image::imageops::FilterType::Triangle).to_rgb8();
    let file = fs::File::create(photo).unwrap();
    image::codecs::jpeg::JpegEncoder::new_with_quality(file, 88).encode_image(&larger).unwrap();
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_photo_that_serves_two_jobs_is_named() {
    let dir = tempfile::tempdir().unwrap();
    let root = dir.path().join("archive");
    copy(&sample("good"), &root.join("a"));
    copy(&sample("wrong"), &root.join("b"));
    // The same job kept twice is no lead; the same photos under another name are.
    copy(&sample("good"), &root.join("c"));
    renamed(&root.join("d"), "OTHER-1");
    renamed(&root.join("e"), "OTHER-2");
    // All of them: a photo that is the same to the byte says more than one that was saved again.
    fs::read_dir(root.join("e/photos")).unwrap().for_each(|photo| save_again(&photo.unwrap().path()));
    let out = dir.path().join("out");
    assert!(audit(&root, &out).status().unwrap().code().is_some());
    let lines = lines(&out);
    let codes = |name: &str| -> Vec<(String, String)> {
        let leads = lines[&format!("archive/{name}")]["across"].as_array().cloned().unwrap_or_default();
        let text = |v: &serde_json::Value| v.as_str().unwrap().to_owned();
        leads.iter().map(|l| (text(&l["code"]), text(&l["other"]))).collect()
    };
    let named = |name: &str| codes(name).iter().any(|(code, _)| code == "photo-of-another-job");
    assert!(codes("a").is_empty() && codes("b").is_empty() && codes("c").is_empty(), "{lines:#?}");
    assert!(named("d") && named("e"), "{lines:#?}");
    let page = fs::read_to_string(out.join("report.html")).unwrap();
    assert!(page.contains("photo-of-another-job") && page.contains("byte for byte") && page.contains("saved again"));
    assert!(fs::read_to_string(out.join("audit.csv")).unwrap().contains("photo-of-another-job archive/"));
}

/// A kit that one job has otherwise than those before and after it.
#[test]
fn a_kit_changed_for_one_job_is_named() {
    let dir = tempfile::tempdir().unwrap();
    let root = dir.path().join("archive");
    for (n, name) in ["a", "b", "c", "d"].into_iter().enumerate() {
        renamed(&root.join(name), &format!("JOB-{n}"));
        edit(&root.join(name).join("job.toml"), |text| {
            let lines = text.lines().map(|line| match line.split_once(" = ") {
                Some(("taken", _)) => format!("taken = 2026-03-1{n}T10:00:00Z"),
                _ => line.to_owned(),
            });
            lines.collect::<Vec<_>>().join("\n")
        });
    }
    edit(&root.join("c/kit.toml"), |text| text.replace("u_turn_deg = 0.03", "u_turn_deg = 0.0"));
    let out = dir.path().join("out");
    assert!(audit(&root, &out).status().unwrap().code().is_some());
    let lines = lines(&out);
    let odd = |name: &str| {
        let leads = lines[&format!("archive/{name}")]["across"].as_array().cloned().unwrap_or_default();
        leads.into_iter().find(|l| l["code"] == "file-unlike-neighbours")
    };
    let lead = odd("c").unwrap();
    assert_eq!(lead["other"], "archive/b");
    assert!(lead["message"].as_str().unwrap().starts_with("Its kit file is another one"), "{lead}");
    assert!(["a", "b", "d"].iter().all(|name| odd(name).is_none()), "{lines:#?}");
}
