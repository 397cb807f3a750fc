//! Who changed what of a job, and devices that are shown out.

use super::bay::{BAY, begin};
use super::client::Server;

/// Connects a device under a name; its cookie.
fn connect(server: &Server, name: &str) -> String {
    let code = server.said.split("/pair/").nth(1).unwrap().split_whitespace().next().unwrap();
    let paired = server.form("/pair", &[("code", code), ("name", name)]);
    paired.header("set-cookie").unwrap().split(';').next().unwrap().to_owned()
}

#[test]
fn every_change_is_noted_with_its_device_and_sealed_with_the_job() {
    let jobs = tempfile::tempdir().unwrap();
    let mut server = Server::start_at(jobs.path(), Some(&BAY.models()), "0.0.0.0:0");
    server.at.set_ip("127.0.0.1".parse().unwrap());
    assert!(server.said.contains("can read along"), "{}", server.said);
    assert!(server.get("/pair").text().contains("not encrypted"));
    let [left, right] = ["left <bay>", "right"].map(|name| connect(&server, name));
    server.cookie.clone_from(&left);
    let name = begin(&server, &[("technician", "T1")]);
    assert_eq!(server.upload(&format!("/jobs/{name}/photos"), &BAY.photo("a.jpg")).status, 201);
    server.cookie.clone_from(&right);
    assert_eq!(server.upload(&format!("/jobs/{name}/photos"), &BAY.photo("b.jpg")).status, 201);
    server.form(&format!("/jobs/{name}/prepare"), &[("description", "invented, blue")]);
    // The same again changes nothing, and is no change.
    server.form(&format!("/jobs/{name}/prepare"), &[("description", "invented, blue")]);
    server.verdict(&name);
    let page = server.get(&format!("/jobs/{name}/finish")).text();
    assert!(page.contains("left &lt;bay&gt;") && page.contains("Not encrypted"), "{page}");
    assert_eq!(server.form(&format!("/jobs/{name}/close"), &[]).status, 303);
    let list = std::fs::read_to_string(jobs.path().join(&name).join("changes.jsonl")).unwrap();
    let lines: Vec<serde_json::Value> = list.lines().map(|l| serde_json::from_str(l).unwrap()).collect();
    let told: Vec<_> = lines.iter().map(|l| (l["did"].as_str().unwrap(), l["by"].as_str().unwrap())).collect();
    let wanted = [
        ("begin", "left <bay>"),
        ("photo", "left <bay>"),
        ("photo", "right"),
        ("prepare", "right"),
        ("close", "right"),
    ];
    assert_eq!(told, wanted);
    let prepared = serde_json::to_string(&lines[3]).unwrap();
    assert!(
        prepared.contains("description = \\\"invented\\\"")
            && prepared.contains("description = \\\"invented, blue\\\""),
        "{prepared}"
    );
    let sealed = jobs.path().join("sealed").join(&name);
    assert_eq!(std::fs::read_to_string(sealed.join("data/job/changes.jsonl")).unwrap(), list);
    // The sealed folder is whole with it: 3, since nobody signed.
    let check = crate::program::program().arg("check").arg(&sealed).output().unwrap();
    assert_eq!(check.status.code(), Some(3), "{}", String::from_utf8_lossy(&check.stdout));
    // A copy for others' eyes has no names of devices.
    let copy = jobs.path().join("copy");
    let mut redact = crate::program::program();
    let made = redact.arg("redact").arg(&sealed).arg("--out").arg(&copy).output().unwrap();
    assert!(made.status.success(), "{}", String::from_utf8_lossy(&made.stderr));
    assert!(!copy.join("data/job/changes.jsonl").exists());
    assert!(std::fs::read_to_string(copy.join("data/redaction.json")).unwrap().contains("data/job/changes.jsonl"));
}

#[test]
fn a_device_that_is_shown_out_is_refused_at_once_and_after_a_restart() {
    let jobs = tempfile::tempdir().unwrap();
    let start = || {
        let mut server = Server::start_at(jobs.path(), None, "0.0.0.0:0");
        server.at.set_ip("127.0.0.1".parse().unwrap());
        server
    };
    let mut server = start();
    let [gone, desk] = ["mislaid", "desk"].map(|name| connect(&server, name));
    server.cookie.clone_from(&gone);
    assert_eq!(server.get("/").status, 200);
    server.cookie.clone_from(&desk);
    let page = server.get("/devices").text();
    let (before, _) = page.split_once(": mislaid<").unwrap();
    let id = before.rsplit("value=\"").next().unwrap().split('"').next().unwrap();
    assert!(!page.contains(gone.split('=').nth(1).unwrap()), "no token is shown");
    assert_eq!(server.form("/devices", &[("device", "0000")]).status, 404);
    assert_eq!(server.form("/devices", &[("device", id)]).status, 303);
    assert!(!server.get("/devices").text().contains("mislaid"));
    for restarted in [false, true] {
        if restarted {
            server.kill();
            server = start();
        }
        server.cookie.clone_from(&gone);
        assert_eq!((server.get("/").status, server.get("/devices").status), (303, 303));
        assert_eq!(server.form("/devices", &[("device", id)]).status, 401);
        server.cookie.clone_from(&desk);
        assert_eq!(server.get("/").status, 200);
    }
}
