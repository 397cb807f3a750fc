//! The way through a job, and that its folder is everybody's.

use baywitness::folder::JobFile;
use baywitness::quantity::Quantity;

use super::bay::{BAY, SHEET, begin, with_comment};
use super::client::{Server, sha256};
use crate::staged;

fn program(arguments: &[&str]) -> (i32, String) {
    let mut command = crate::program::program();
    let out = command.args(arguments).env_remove("BAYWITNESS_MODELS").output().unwrap();
    let said = format!("{}{}", String::from_utf8_lossy(&out.stdout), String::from_utf8_lossy(&out.stderr));
    (out.status.code().unwrap(), said)
}

fn job_file(server: &Server, name: &str) -> JobFile {
    let text = std::fs::read_to_string(server.jobs.join(name).join("job.toml")).unwrap();
    JobFile::from_toml(&text, "job.toml").unwrap()
}

#[test]
fn what_the_page_makes_the_commands_read() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let name = begin(&server, &[("vin", "11111111111111111"), ("series", "INVENTED-R9"), ("technician", "T1")]);
    let typed = [
        ("p:tyre_pressures_set", "yes"),
        ("p:vehicle_unloaded", "no"),
        ("description", "invented"),
        ("vin", "11111111111111111"),
        ("wheelbase", "2640"),
        ("rear_track", "1700"),
        ("front_track", "1705,5"),
        ("reading:0", "1500,5"),
        ("instrument:0", "laser"),
        ("thrust:side", "left"),
        ("thrust:deg", "0"),
        ("thrust:min", "10"),
    ];
    // A sign says nothing about the side.
    let signed = [("thrust:side", "right"), ("thrust:min", "-10")];
    assert_eq!(server.form(&format!("/jobs/{name}/prepare"), &signed).status, 422);
    assert_eq!(server.form(&format!("/jobs/{name}/prepare"), &typed).status, 303);
    let shown = server.get(&format!("/jobs/{name}/prepare")).text();
    assert!(shown.contains("value=\"10\"") && shown.contains("value=\"left\" selected"), "{shown}");
    let to = format!("/jobs/{name}/photos");
    for photo in ["a.jpg", "b.jpg"] {
        let bytes = BAY.photo(photo);
        let kept = server.upload(&to, &bytes);
        assert_eq!((kept.status, kept.json()["kept"].as_str()), (201, Some("new")), "{}", kept.text());
        let file = kept.json()["file"].as_str().unwrap().to_owned();
        assert_eq!(sha256(&std::fs::read(jobs.path().join(&name).join(file)).unwrap()), sha256(&bytes));
    }
    let verdict = server.verdict(&name);
    let job = job_file(&server, &name);
    assert_eq!(job.attempt, Some(1));
    assert_eq!(job.series.as_deref(), Some("INVENTED-R9"));
    assert_eq!(job.prerequisites["vehicle_unloaded"], false);
    assert_eq!((job.vehicle.rear_track_mm, job.vehicle.front_track_mm), (Some(1700.0), Some(1705.5)));
    assert_eq!(job.readings.len(), 2);
    let thrust = job.readings.iter().find(|r| r.quantity == Quantity::ThrustAngle).unwrap();
    assert!((thrust.value - 1.0 / 6.0).abs() < 1e-9 && thrust.instrument.as_deref() == Some("alignment"));
    assert_eq!(job.photo_entries.as_ref().map(Vec::len), Some(2));
    // The page's result is that of the command, to the last digit.
    let folder = jobs.path().join(&name);
    let (code, said) = program(&[
        "verify",
        folder.to_str().unwrap(),
        "--models",
        BAY.models().to_str().unwrap(),
        "--json",
        jobs.path().join("verify.json").to_str().unwrap(),
    ]);
    assert!(code != 2, "{said}");
    let of_command = std::fs::read_to_string(jobs.path().join("verify.json")).unwrap();
    let of_page = std::fs::read_to_string(folder.join("result.json")).unwrap();
    assert_eq!(of_page, of_command);
    assert!(of_page.contains(&format!("\"verdict\": \"{verdict}\"")));
    // Closed: sealed, checked by the command, and changed no more.
    assert_eq!(server.form(&format!("/jobs/{name}/close"), &[]).status, 303);
    let sealed = jobs.path().join("sealed").join(&name);
    let (code, said) = program(&["check", sealed.to_str().unwrap()]);
    assert_eq!(code, 3, "intact and unsigned: {said}");
    assert_eq!(server.upload(&to, &with_comment(&BAY.photo("a.jpg"), "late")).status, 409);
    assert_eq!(server.form(&format!("/jobs/{name}/prepare"), &typed).status, 409);
    assert_eq!(job_file(&server, &name), job);
}

#[test]
fn what_others_made_the_page_reads_and_changes() {
    let jobs = tempfile::tempdir().unwrap();
    // With its sheet, kit and camera in its own folder and a name of its own kind.
    let folder = jobs.path().join("täglich (2)");
    staged::copy(&BAY.job(), &folder, true);
    let server = Server::start(jobs.path(), None);
    let list = server.get("/").text();
    assert!(list.contains("/jobs/t%C3%A4glich%20%282%29"), "{list}");
    let name = "t%C3%A4glich%20%282%29";
    server.verdict(name);
    let before = std::fs::read_to_string(folder.join("job.toml")).unwrap();
    let before = JobFile::from_toml(&before, "job.toml").unwrap();
    let kept = server.upload(&format!("/jobs/{name}/photos?phase=after"), &with_comment(&BAY.photo("a.jpg"), "x"));
    assert_eq!(kept.status, 201, "{}", kept.text());
    let after = std::fs::read_to_string(folder.join("job.toml")).unwrap();
    let after = JobFile::from_toml(&after, "job.toml").unwrap();
    let entries = after.photo_entries.clone().unwrap();
    let listed = BAY.job().join("photos").read_dir().unwrap().count();
    assert_eq!(entries.len(), listed + 1);
    // Nothing else of the job was touched.
    let plain = |job: &JobFile| JobFile { photos: None, photo_entries: None, ..job.clone() };
    assert_eq!(plain(&after), plain(&before));
    // The next attempt takes the job's own files along.
    let next = server.form(&format!("/jobs/{name}/attempt"), &[]);
    assert_eq!(next.status, 303, "{}", next.text());
    let next = next.header("location").unwrap().split('/').nth(2).unwrap().to_owned();
    let twice = server.form(&format!("/jobs/{name}/attempt"), &[]);
    assert_eq!(twice.header("location").unwrap().split('/').nth(2), Some(next.as_str()));
    let made = job_file(&server, &next);
    assert_eq!(made.attempt, before.attempt.map(|n| n + 1));
    assert_eq!((made.series.as_ref(), made.photo_entries.as_ref()), (before.series.as_ref(), None));
    assert!(jobs.path().join(&next).join("setup.toml").exists());
    for photo in ["a.jpg", "b.jpg"] {
        server.upload(&format!("/jobs/{next}/photos"), &BAY.photo(photo));
    }
    server.verdict(&next);
}

#[test]
fn sent_twice_is_kept_once_and_set_aside_stays_aside() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let name = begin(&server, &[]);
    let to = format!("/jobs/{name}/photos");
    let a = BAY.photo("a.jpg");
    let file = server.upload(&to, &a).json()["file"].as_str().unwrap().to_owned();
    let again = server.upload(&to, &a);
    assert_eq!((again.status, again.json()["kept"].as_str()), (200, Some("already")));
    assert_eq!(job_file(&server, &name).photo_entries.unwrap().len(), 1);
    assert_eq!(server.form(&format!("/jobs/{name}/aside"), &[("file", &file)]).status, 303);
    assert_eq!(job_file(&server, &name).photo_entries, None);
    // A late copy from a phone's queue does not undo what a person did.
    assert_eq!(server.upload(&to, &a).json()["kept"].as_str(), Some("aside"));
    let aside = file.replace("photos/", "");
    assert!(server.get(&to).text().contains(&aside));
    assert_eq!(server.form(&format!("/jobs/{name}/back"), &[("file", &aside)]).status, 303);
    assert_eq!(job_file(&server, &name).photo_entries.unwrap().len(), 1);
    // Two at the same time are one.
    let b = BAY.photo("b.jpg");
    let kept: Vec<String> = std::thread::scope(|s| {
        let all: Vec<_> = (0..6).map(|_| s.spawn(|| server.upload(&to, &b))).collect();
        all.into_iter().map(|t| t.join().unwrap().json()["kept"].as_str().unwrap().to_owned()).collect()
    });
    assert_eq!(kept.iter().filter(|k| *k == "new").count(), 1, "{kept:?}");
    assert_eq!(job_file(&server, &name).photo_entries.unwrap().len(), 2);
    let files = jobs.path().join(&name).join("photos").read_dir().unwrap().count();
    assert_eq!(files, 2, "no part of an upload is left");
    // "Moved it: one photo"; what comes then shows the stand where it stands now, and stays so if it is set aside.
    let moved = server.upload(&format!("{to}?phase=before&moved=yes"), &with_comment(&a, "moved"));
    server.upload(&to, &with_comment(&b, "more"));
    let moves = || job_file(&server, &name).photo_entries.unwrap().iter().map(|e| e.after_move).collect::<Vec<_>>();
    assert_eq!(moves(), [0, 0, 1, 1]);
    let file = moved.json()["file"].as_str().unwrap().to_owned();
    assert_eq!(server.form(&format!("/jobs/{name}/aside"), &[("file", &file)]).status, 303);
    let aside = format!("after-1-{}", file.replace("photos/", ""));
    assert_eq!(server.form(&format!("/jobs/{name}/back"), &[("file", &aside)]).status, 303);
    assert_eq!(moves(), [0, 0, 1, 1]);
}

#[test]
fn a_photo_is_judged_on_its_own_the_moment_it_arrives() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let name = begin(&server, &[]);
    let to = format!("/jobs/{name}/photos");
    server.upload(&to, &BAY.photo("a.jpg"));
    server.verdict_or_second(&name);
    let page = server.get(&format!("/jobs/{name}/live")).text();
    assert!(page.contains("judged good") && page.contains("markers found"), "{page}");
    // Grey, of the camera's size: nothing is in it.
    let grey = {
        let photo = image::load_from_memory(&BAY.photo("a.jpg")).unwrap();
        let mut bytes = Vec::new();
        let plain = image::GrayImage::from_pixel(photo.width(), photo.height(), image::Luma([120]));
        image::codecs::jpeg::JpegEncoder::new(&mut bytes).encode_image(&plain).unwrap();
        bytes
    };
    server.upload(&to, &grey);
    server.verdict(&name);
    let page = server.get(&format!("/jobs/{name}/live")).text();
    assert!(page.contains("judged bad") && page.contains("Take it again"), "{page}");
    // Another size than the camera's: said with the remedy.
    let small = image::load_from_memory(&BAY.photo("b.jpg")).unwrap().thumbnail(800, 800).to_rgb8();
    let mut bytes = Vec::new();
    image::codecs::jpeg::JpegEncoder::new(&mut bytes).encode_image(&small).unwrap();
    server.upload(&to, &bytes);
    server.verdict(&name);
    let page = server.get(&format!("/jobs/{name}/live")).text();
    assert!(page.contains("use the photo as the camera stored it"), "{page}");
}

#[test]
fn both_languages_and_the_sheet_library() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let german = server.request("GET", "/", &[("Accept-Language", "de-AT,en;q=0.5")], &[]).text();
    assert!(german.contains("<html lang=\"de\">") && german.contains("Neuer Auftrag"));
    assert!(server.get("/new").text().contains(SHEET));
    assert!(!server.get("/new?q=nothing-like-it").text().contains(SHEET));
    let chosen = server.request("GET", "/language/de", &[("Referer", "http://x.example//evil.example/")], &[]);
    assert_eq!((chosen.status, chosen.header("location")), (303, Some("/")));
}

#[test]
fn a_card_is_a_code_that_no_other_open_job_has() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let mut seen = std::collections::BTreeSet::new();
    for _ in 0..8 {
        let name = begin(&server, &[]);
        assert_eq!(server.form(&format!("/jobs/{name}/card"), &[]).status, 303);
        let card = job_file(&server, &name).card;
        assert_eq!(card.len(), 3);
        assert!(card.iter().all(|id| (500..=586).contains(id) && seen.insert(*id)), "{card:?} {seen:?}");
        // Asked again it stays.
        server.form(&format!("/jobs/{name}/card"), &[]);
        assert_eq!(job_file(&server, &name).card, card);
        let page = server.get(&format!("/jobs/{name}/card")).text();
        assert_eq!(page.matches("role=\"img\"").count(), 3);
    }
}
