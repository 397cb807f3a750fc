//! The page without its script, and what it hands out.

use super::bay::{BAY, begin};
use super::client::{Answer, Server};

/// A form with files as a browser without script sends it (RFC 7578).
fn multipart(server: &Server, path: &str, fields: &[(&str, &str)], files: &[(&str, &str, &[u8])]) -> Answer {
    let mut body = Vec::new();
    for (name, value) in fields {
        body.extend(
            format!("--edge\r\nContent-Disposition: form-data; name=\"{name}\"\r\n\r\n{value}\r\n").into_bytes(),
        );
    }
    for (name, file, bytes) in files {
        let head = format!(
            "--edge\r\nContent-Disposition: form-data; name=\"{name}\"; filename=\"{file}\"\r\nContent-Type: application/octet-stream\r\n\r\n"
        );
        body.extend(head.into_bytes());
        body.extend(*bytes);
        body.extend(b"\r\n");
    }
    body.extend(b"--edge--\r\n");
    let origin = format!("http://{}", server.host());
    let headers = [("Origin", origin.as_str()), ("Content-Type", "multipart/form-data; boundary=edge")];
    server.request("POST", path, &headers, &body)
}

#[test]
fn photos_and_files_come_without_script_and_evidence_goes() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let name = begin(&server, &[]);
    let to = format!("/jobs/{name}/sent");
    let page = server.get(&format!("/jobs/{name}/photos")).text();
    assert!(page.contains("<noscript><p") && page.contains(&to), "{page}");
    let (a, b) = (BAY.photo("a.jpg"), BAY.photo("b.jpg"));
    let sent = multipart(&server, &to, &[("phase", "before")], &[("photo", "a.jpg", &a), ("photo", "b.jpg", &b)]);
    assert_eq!(
        (sent.status, sent.header("location")),
        (303, Some(format!("/jobs/{name}/photos").as_str())),
        "{}",
        sent.text()
    );
    server.verdict(&name);
    let folder = jobs.path().join(&name);
    assert_eq!(std::fs::read_dir(folder.join("photos")).unwrap().count(), 2);
    // What is no photo, what is empty, what is cut and what is too much.
    let wrong = multipart(&server, &to, &[], &[("photo", "x.jpg", b"no picture")]);
    assert_eq!(wrong.status, 415, "{}", wrong.text());
    assert_eq!(multipart(&server, &to, &[], &[("photo", "", b"")]).status, 303);
    let origin = format!("http://{}", server.host());
    let headers = [("Origin", origin.as_str()), ("Content-Type", "multipart/form-data; boundary=edge")];
    assert_eq!(server.request("POST", &to, &headers, b"--edge\r\nContent-Dis").status, 400);
    let many: Vec<(&str, &str)> = vec![("x", "y"); 30];
    assert_eq!(multipart(&server, &to, &many, &[]).status, 400);
    let cross = [("Origin", "http://evil.example"), ("Content-Type", "multipart/form-data; boundary=edge")];
    assert_eq!(server.request("POST", &to, &cross, b"--edge--\r\n").status, 403);
    let report =
        multipart(&server, &to, &[("page", "finish"), ("kind", "scan-before")], &[("file", "../r.pdf", b"%PDF")]);
    assert_eq!(report.header("location"), Some(format!("/jobs/{name}/finish").as_str()), "{}", report.text());
    assert_eq!(std::fs::read_dir(folder.join("photos")).unwrap().count(), 2);
    assert_eq!(std::fs::read_dir(folder.join("attachments")).unwrap().count(), 1);

    // Nothing to hand out before the job is closed; then one file that `check` reads.
    let tar = format!("/jobs/{name}/evidence.tar");
    assert_eq!(server.get(&tar).status, 404);
    assert_eq!(server.form(&format!("/jobs/{name}/close"), &[]).status, 303);
    let evidence = server.get(&tar);
    assert_eq!((evidence.status, evidence.header("content-type")), (200, Some("application/x-tar")));
    let file = jobs.path().join("taken.tar");
    std::fs::write(&file, &evidence.body).unwrap();
    let out = crate::program::program().arg("check").arg(&file).output().unwrap();
    assert_eq!(out.status.code(), Some(3), "intact and unsigned: {}", String::from_utf8_lossy(&out.stdout));
    assert_eq!(server.get(&tar).body, evidence.body, "the same bytes each time");
    let left: Vec<_> = std::fs::read_dir(jobs.path().join("sealed")).unwrap().map(|e| e.unwrap().file_name()).collect();
    assert_eq!(left, [std::ffi::OsString::from(&name)], "nothing is left behind");
}
