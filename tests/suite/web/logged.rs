//! The log of attempts behind the page: every verdict that says something new is
//! in it before it is shown.

use baywitness::transparency::{Attempt, Log, LogFolder};

use super::bay::{BAY, begin};
use super::client::Server;

fn attempts(log: &LogFolder) -> Vec<Attempt> {
    let mut found = Vec::new();
    log.each_entry(|_, entry| found.push(Attempt::read(&entry).unwrap())).unwrap();
    found
}

/// A result that lies beside its job is no entry: the page was served without the log before, or somebody laid it there.
#[test]
fn a_result_beside_the_job_is_logged_before_it_is_shown() {
    let dir = tempfile::tempdir().unwrap();
    let (jobs, log) = (dir.path().join("jobs"), dir.path().join("log"));
    let server = BAY.serve(&jobs);
    let name = begin(&server, &[]);
    for photo in ["a.jpg", "b.jpg"] {
        assert_eq!(server.upload(&format!("/jobs/{name}/photos"), &BAY.photo(photo)).status, 201);
    }
    let verdict = server.verdict(&name);
    drop(server);
    Log::create(&log, "shop.example/attempts").unwrap();
    let now = || attempts(&LogFolder::open(&log).unwrap());
    let options = ["--log", log.to_str().unwrap()];
    let result = std::fs::read(jobs.join(&name).join("result.json")).unwrap();
    for start in ["first", "again"] {
        let server = Server::start_with(&jobs, Some(&BAY.models()), "127.0.0.1:0", &options);
        assert_eq!(server.verdict(&name), verdict, "{start}");
        assert_eq!(std::fs::read(jobs.join(&name).join("result.json")).unwrap(), result, "{start}");
        // Started again with the log, nothing is new.
        assert_eq!(now().len(), 1, "{start}");
        assert_eq!((now()[0].verdict.as_str(), now()[0].by.as_str()), (verdict.as_str(), "serve"), "{start}");
    }
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn no_verdict_is_shown_that_is_not_in_the_log() {
    let dir = tempfile::tempdir().unwrap();
    let (jobs, log) = (dir.path().join("jobs"), dir.path().join("log"));
    let own = Log::create(&log, "shop.example/attempts").unwrap();
    let options = ["--log", log.to_str().unwrap()];
    let server = Server::start_with(&jobs, Some(&BAY.models()), "127.0.0.1:0", &options);
    let now = || attempts(&LogFolder::open(&log).unwrap());
    let name = begin(&server, &[("series", "INVENTED-R9")]);
    let to = format!("/jobs/{name}/photos");
    assert_eq!(server.upload(&to, &BAY.photo("a.jpg")).status, 201);
    server.verdict_or_second(&name);
    assert_eq!((now().len(), now()[0].files.photos.len()), (1, 1));
    assert_eq!(server.upload(&to, &BAY.photo("b.jpg")).status, 201);
    let second = server.verdict(&name);
    let found = now();
    let last = found.last().unwrap();
    assert_eq!((last.verdict.as_str(), last.by.as_str(), last.files.photos.len()), (second.as_str(), "serve", 2));
    // Nothing new, no entry.
    server.get(&format!("/jobs/{name}/live"));
    server.settles(&name);
    assert_eq!(now().len(), found.len());
    // Closed with the proof that it was logged.
    assert_eq!(server.form(&format!("/jobs/{name}/close"), &[]).status, 303);
    let keys = dir.path().join("keys");
    std::fs::write(&keys, own.verifier().text()).unwrap();
    let sealed = jobs.join("sealed").join(&name);
    let mut check = crate::program::program();
    let out = check.arg("check").arg(&sealed).arg("--log-keys").arg(&keys).output().unwrap();
    let said = String::from_utf8_lossy(&out.stdout).into_owned();
    assert!(said.contains(&format!("entry {} of shop.example/attempts", found.len())), "{said}");
    // A log that can't be written any more: no verdict.
    std::fs::remove_dir_all(log.join("tile")).unwrap();
    let other = begin(&server, &[]);
    assert_eq!(server.upload(&format!("/jobs/{other}/photos"), &BAY.photo("a.jpg")).status, 201);
    let verdict = |page: &str| page.contains("data-verdict") || page.contains("not shown");
    for _ in 0..600 {
        server.settles(&other);
        if verdict(&server.get(&format!("/jobs/{other}/live")).text()) {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(30));
    }
    let shown = server.get(&format!("/jobs/{other}/live")).text();
    assert!(shown.contains("the verdict is not shown, since"), "{shown}");
    assert!(!jobs.join(&other).join("result.json").exists());
}
