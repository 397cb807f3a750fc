//! What somebody laid beside a job, or where it is sealed: another job's result, one from before the photos, another
//! job's evidence. The page takes none of it for this job's.

use std::fs;
use std::path::Path;
use std::time::{Duration, SystemTime};

use super::bay::{BAY, begin};
use super::client::Server;
use crate::audit::copy;

const TO_BE_MEASURED: &str = "to be measured";

/// A job with both photos, measured: its folder's name, and its verdict as the list has it.
fn measured(server: &Server, series: &str) -> (String, &'static str) {
    let name = begin(server, &[("series", series)]);
    for photo in ["a.jpg", "b.jpg"] {
        assert_eq!(server.upload(&format!("/jobs/{name}/photos"), &BAY.photo(photo)).status, 201);
    }
    let words = match server.verdict(&name).as_str() {
        "within" => "Within tolerance",
        "not_proven" => "Not proven",
        other => panic!("the stand is right, and the page says {other}"),
    };
    (name, words)
}

/// The job's line in the list of jobs, once the list looked at the disk again.
fn listed(server: &Server, series: &str) -> String {
    std::thread::sleep(Duration::from_millis(1100));
    let page = server.get(&format!("/?q={series}")).text();
    assert!(page.contains("One job"), "{page}");
    page.split("<ul class=\"jobs\">").nth(1).unwrap().split("</ul>").next().unwrap().to_owned()
}

/// As a file that was written so many seconds after another one.
fn date(file: &Path, after: &Path, seconds: i64) {
    let base = fs::metadata(after).unwrap().modified().unwrap();
    let by = Duration::from_secs(seconds.unsigned_abs());
    let at: SystemTime = if seconds < 0 { base - by } else { base + by };
    fs::File::options().write(true).open(file).unwrap().set_modified(at).unwrap();
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn the_list_takes_no_verdict_of_another_job_or_of_other_photos() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let (name, verdict) = measured(&server, "INVENTED-L1");
    let folder = jobs.path().join(&name);
    let line = listed(&server, "INVENTED-L1");
    assert!(line.contains(verdict) && !line.contains(TO_BE_MEASURED), "{line}");
    // Laid beside another job, which has no photo.
    let other = begin(&server, &[("series", "INVENTED-L2")]);
    fs::copy(folder.join("result.json"), jobs.path().join(&other).join("result.json")).unwrap();
    let line = listed(&server, "INVENTED-L2");
    assert!(line.contains(TO_BE_MEASURED) && !line.contains(verdict), "{line}");
    // A photo that is newer than the result, as one that was exchanged.
    let photo = fs::read_dir(folder.join("photos")).unwrap().next().unwrap().unwrap().path();
    date(&photo, &folder.join("result.json"), 5);
    assert!(listed(&server, "INVENTED-L1").contains(TO_BE_MEASURED));
    date(&photo, &folder.join("result.json"), -5);
    assert!(listed(&server, "INVENTED-L1").contains(verdict));
    // One more photo, which nobody measured yet.
    let more = folder.join("photos").join("more.jpg");
    fs::copy(&photo, &more).unwrap();
    date(&more, &folder.join("result.json"), -5);
    assert!(listed(&server, "INVENTED-L1").contains(TO_BE_MEASURED));
    fs::remove_file(&more).unwrap();
    // The page started again still knows it, without measuring.
    drop(server);
    let server = BAY.serve(jobs.path());
    assert!(listed(&server, "INVENTED-L1").contains(verdict));
}

#[test]
fn evidence_of_another_job_seals_nothing() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let (first, verdict) = measured(&server, "INVENTED-L3");
    let close = |name: &str| server.form(&format!("/jobs/{name}/close"), &[]).status;
    assert_eq!(close(&first), 303);
    let finish = |name: &str| server.get(&format!("/jobs/{name}/finish")).text();
    assert!(finish(&first).contains("Closed and sealed"), "{}", finish(&first));
    let (second, _) = measured(&server, "INVENTED-L4");
    let sealed = jobs.path().join("sealed");
    copy(&sealed.join(&first), &sealed.join(&second));
    for what in ["another job's evidence", "an empty folder"] {
        let page = finish(&second);
        assert!(page.contains("Something else lies in") && !page.contains("Closed and sealed"), "{what}: {page}");
        let line = listed(&server, "INVENTED-L4");
        assert!(line.contains(" · open") && !line.contains("closed and sealed"), "{what}: {line}");
        assert_eq!(server.get(&format!("/jobs/{second}/evidence.tar")).status, 404, "{what}");
        assert_eq!(close(&second), 409, "{what}");
        fs::remove_dir_all(sealed.join(&second)).unwrap();
        fs::create_dir(sealed.join(&second)).unwrap();
    }
    // Moved away, the job closes; closed twice, it stays as it is.
    fs::remove_dir(sealed.join(&second)).unwrap();
    assert_eq!((close(&second), close(&second)), (303, 303));
    assert!(finish(&second).contains("Closed and sealed"));
    // The list has a closed job's verdict from its evidence, whatever lies beside the job.
    let beside = jobs.path().join(&first).join("result.json");
    let text = fs::read_to_string(&beside).unwrap();
    let name = if verdict == "Not proven" { "not_proven" } else { "within" };
    let other = text.replace(&format!("\"verdict\": \"{name}\""), "\"verdict\": \"outside\"");
    assert_ne!(text, other);
    fs::write(&beside, other).unwrap();
    let line = listed(&server, "INVENTED-L3");
    assert!(line.contains(verdict) && line.contains("closed and sealed"), "{line}");
}
