//! What somebody may send who means no good.

use std::io::Write;
use std::net::TcpStream;

use super::bay::{BAY, SHEET, begin};
use super::client::{encoded, sha256};

const SCRIPT: &str = "\"'><script>alert(1)</script><img src=x onerror=alert(1)>&{0}";

#[test]
fn scripts_in_every_field_are_text() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let fields = [("description", SCRIPT), ("series", SCRIPT), ("technician", SCRIPT), ("bay", SCRIPT)];
    let name = begin(&server, &fields);
    server.upload(&format!("/jobs/{name}/files?kind=other&name={}", encoded(SCRIPT)), b"x");
    server.upload(&format!("/jobs/{name}/photos"), &BAY.photo("a.jpg"));
    server.upload(&format!("/jobs/{name}/photos"), &BAY.photo("b.jpg"));
    server.verdict(&name);
    let query = encoded(SCRIPT);
    let mut pages: Vec<String> = ["", "/prepare", "/photos", "/finish", "/live", "/report"]
        .iter()
        .map(|p| server.get(&format!("/jobs/{name}{p}")).text())
        .collect();
    for path in ["/", "/new", "/new/{q}", "/pair/{q}", "/{q}", "/jobs/{q}", "/?q={q}", "/new?q={q}"] {
        pages.push(server.get(&path.replace("{q}", &query)).text());
    }
    pages.push(server.form(&format!("/new/{SHEET}"), &[("kit", "test-kit"), ("vin", SCRIPT)]).text());
    pages.push(server.form(&format!("/jobs/{name}/prepare"), &[("vin", SCRIPT), ("wheelbase", SCRIPT)]).text());
    let mut held = 0;
    for page in pages {
        held += usize::from(page.contains("&lt;script&gt;alert"));
        assert!(!page.contains("<script>alert") && !page.contains("<img src=x"), "{page}");
    }
    assert!(held >= 7, "the text was shown on {held} pages");
}

#[test]
fn answers_forbid_what_a_page_does_not_need() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    for path in ["/", "/new", "/none", "/page.js"] {
        let answer = server.get(path);
        let policy = answer.header("content-security-policy").unwrap();
        assert!(policy.starts_with("default-src 'none'; script-src 'self';"), "{policy}");
        assert!(!policy.contains("unsafe"), "{policy}");
        assert_eq!(answer.header("x-content-type-options"), Some("nosniff"));
        assert_eq!(answer.header("x-frame-options"), Some("DENY"));
    }
    // No page has what the policy forbids.
    for path in ["/", "/new", &format!("/new/{SHEET}")] {
        let page = server.get(path).text();
        assert!(!page.contains("style=") && !page.contains(" onclick") && !page.contains("<style"), "{page}");
        assert_eq!(page.matches("<script").count(), 1, "{page}");
    }
}

#[test]
fn other_sites_can_neither_act_nor_read() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let name = begin(&server, &[]);
    let own = format!("http://{}", server.host());
    let body = b"result=successful";
    for path in ["/new/test-sheet", "calibration", "close", "aside", "attempt", "photos", "files", "prepare"] {
        let path = if path.starts_with('/') { path.to_owned() } else { format!("/jobs/{name}/{path}") };
        for headers in [
            vec![("Origin", "http://evil.example")],
            vec![("Origin", "null")],
            vec![],
            vec![("Origin", own.as_str()), ("Sec-Fetch-Site", "cross-site")],
        ] {
            let answer = server.request("POST", &path, &headers, body);
            assert_eq!(answer.status, 403, "{path} {headers:?}: {}", answer.text());
        }
    }
    // A name that somebody made to lead to this machine.
    let rebound = server.request("GET", "/", &[("Host", "evil.example")], &[]);
    assert_eq!(rebound.status, 421);
    assert!(!rebound.text().contains("/jobs/"));
}

#[test]
fn paths_lead_nowhere_else() {
    let jobs = tempfile::tempdir().unwrap();
    let inner = jobs.path().join("inner");
    std::fs::create_dir_all(&inner).unwrap();
    std::fs::write(jobs.path().join("job.toml"), "secret").unwrap();
    std::fs::write(jobs.path().join("secret.jpg"), "secret").unwrap();
    let server = BAY.serve(&inner);
    let name = begin(&server, &[]);
    for path in [
        "/jobs/..",
        "/jobs/%2e%2e/photos",
        "/jobs/..%2f",
        "/jobs/%2e%2e%2f%2e%2e/report",
        "/jobs/sealed",
        "/jobs/.",
        "/jobs/%00",
        "/new/..%2f..%2f..%2fetc%2fpasswd",
        "/new/%2fetc%2fpasswd",
        "/../../etc/passwd",
        "/page.css/../../secret",
    ] {
        let answer = server.get(path);
        assert_eq!(answer.status, 404, "{path}: {}", answer.text());
    }
    for file in [
        "../secret.jpg",
        "../../secret.jpg",
        "/etc/passwd",
        "photos/../../../secret.jpg",
        "job.toml",
        "aside/../job.toml",
    ] {
        let path = format!("/jobs/{name}/picture?file={}", encoded(file));
        assert_eq!(server.get(&path).status, 404, "{file}");
        for deed in ["aside", "back"] {
            assert_eq!(server.form(&format!("/jobs/{name}/{deed}"), &[("file", file)]).status, 404, "{file}");
        }
    }
    #[cfg(unix)]
    {
        // A link inside a job that leads outside shows nothing.
        let photos = inner.join(&name).join("photos");
        std::os::unix::fs::symlink(jobs.path().join("secret.jpg"), photos.join("x.jpg")).unwrap();
        assert_eq!(server.get(&format!("/jobs/{name}/picture?file=photos%2Fx.jpg")).status, 404);
    }
    // Names in attachments stay names.
    let sent = server.upload(&format!("/jobs/{name}/files?kind=other&name=..%2F..%2Fjob.toml"), b"x = 1");
    assert!(sent.json()["file"].as_str().unwrap().starts_with("attachments/"), "{}", sent.text());
    assert_eq!(server.upload(&format!("/jobs/{name}/files?kind=nothing&name=x"), b"x").status, 422);
}

#[test]
fn wrong_and_damaged_files_are_refused_with_the_reason() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let name = begin(&server, &[]);
    let to = format!("/jobs/{name}/photos");
    for (bytes, says) in [
        (&b"%PDF-1.7 x"[..], "PDF"),
        (b"PK\x03\x04 zip", "ZIP"),
        (b"<svg onload=alert(1)>", "text file"),
        (b"", "empty"),
    ] {
        let answer = server.upload(&to, bytes);
        assert_eq!(answer.status, 415, "{}", answer.text());
        assert!(answer.json()["message"].as_str().unwrap().contains(says), "{}", answer.text());
    }
    let photo = BAY.photo("a.jpg");
    let origin = format!("http://{}", server.host());
    let of_other = sha256(b"another");
    let head = |id: &'static str, digest: &str| {
        let headers = [("Origin", origin.as_str()), ("X-Upload-Id", id), ("X-Upload-Sha256", digest)];
        server.request("POST", &to, &headers, &photo).status
    };
    assert_eq!(head("0123456789abcdef", &of_other), 422, "the bytes are not those that were announced");
    assert_eq!(head("../../../../evil", &sha256(&photo)), 400);
    assert_eq!(head("0123456789abcdef", "0"), 400);
    // A PNG that states more pixels than are decoded, a PNG and a JPEG that are cut off: none comes
    // into the job, where it would keep everything else from being measured.
    for (bytes, says) in
        [(png(60_000), "pixels"), (png(2000), "cut off"), (photo[..photo.len() / 2].to_vec(), "cut off")]
    {
        let answer = server.upload(&to, &bytes);
        assert_eq!(answer.status, 422, "{}", answer.text());
        let words = answer.json()["message"].as_str().unwrap().to_owned();
        assert!(words.contains(says) && !words.contains("/photos/"), "{words}");
    }
    assert_eq!(server.upload(&to, &photo).status, 201);
    server.settles(&name);
    let left = jobs.path().join(&name).join("photos").read_dir().unwrap().count();
    assert_eq!(left, 1, "nothing refused is left");
    // One that somebody copied into the folder is named, without the server's path, and set aside.
    std::fs::write(jobs.path().join(&name).join("photos/copied.png"), png(2000)).unwrap();
    server.get(&to);
    server.settles(&name);
    let page = server.get(&format!("/jobs/{name}/live")).text();
    assert!(page.contains("judged bad") && page.contains("photo photos/copied.png is cut off"), "{page}");
    assert_eq!(server.form(&format!("/jobs/{name}/aside"), &[("file", "photos/copied.png")]).status, 303);
    server.settles(&name);
    assert!(!server.get(&format!("/jobs/{name}/live")).text().contains("is cut off"));
}

/// The head of a PNG (ISO/IEC 15948) of so many pixels squared, with its right check sum and nothing behind it.
fn png(side: u32) -> Vec<u8> {
    let mut chunk = b"IHDR".to_vec();
    chunk.extend(side.to_be_bytes());
    chunk.extend(side.to_be_bytes());
    chunk.extend([8, 2, 0, 0, 0]);
    let crc = chunk.iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |c, _| if c & 1 == 1 { (c >> 1) ^ 0xedb8_8320 } else { c >> 1 })
    });
    [b"\x89PNG\r\n\x1a\n\0\0\0\r".to_vec(), chunk, (!crc).to_be_bytes().to_vec()].concat()
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn floods_and_broken_requests_leave_the_page_alive() {
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let name = begin(&server, &[]);
    let to = format!("/jobs/{name}/prepare");
    let long = "x".repeat(100_000);
    let origin = format!("http://{}", server.host());
    assert_eq!(server.form(&to, &[("description", &long)]).status, 400);
    let line = "x".repeat(121);
    assert_eq!(server.form(&to, &[("description", &line)]).status, 422);
    let head = [("Origin", origin.as_str()), ("X-Long", &long)];
    assert!(server.try_request("GET", "/", &head, &[]).map_or(true, |a| a.status == 431 || a.status == 400));
    // A length that is announced and never comes, a body that is too large by its announcement.
    let large = format!(
        "POST /jobs/{name}/photos HTTP/1.1\r\nHost: {0}\r\nOrigin: http://{0}\r\nX-Upload-Id: 0123456789\r\nX-Upload-Sha256: {1}\r\nContent-Length: 99999999999\r\n\r\n\u{ff}\u{d8}",
        server.host(),
        "0".repeat(64)
    );
    let mut held: Vec<TcpStream> = Vec::new();
    for i in 0..150 {
        let mut stream = TcpStream::connect(server.at).unwrap();
        let begun = match i % 3 {
            0 => &large.as_bytes()[..large.len().min(60)],
            1 => large.as_bytes(),
            _ => b"\x16\x03\x01\0\xa5\x01",
        };
        // What is no HTTP is hung up on at once.
        let _ = stream.write_all(begun);
        held.push(stream);
    }
    for _ in 0..20 {
        assert_eq!(server.get("/").status, 200);
    }
    for garbage in [
        &b"\r\n\r\n"[..],
        b"GET\r\n\r\n",
        b"GET / HTTP/9.9\r\n\r\n",
        b"\0\0\0\0",
        b"POST / HTTP/1.1\r\nContent-Length: -1\r\n\r\n",
    ] {
        // Refused or hung up on.
        assert!(server.raw(garbage).map_or(true, |a| a.status >= 400));
    }
    let photo = BAY.photo("a.jpg");
    assert_eq!(server.upload(&format!("/jobs/{name}/photos"), &photo).status, 201);
}

#[test]
#[ignore = "waits for the server's own limits of time"]
fn slow_clients_are_hung_up_on() {
    use std::io::Read;
    let jobs = tempfile::tempdir().unwrap();
    let server = BAY.serve(jobs.path());
    let name = begin(&server, &[]);
    let mut head = TcpStream::connect(server.at).unwrap();
    head.write_all(b"GET / HTTP/1.1\r\nHost: x\r\n").unwrap();
    let mut body = TcpStream::connect(server.at).unwrap();
    let begun = format!(
        "POST /jobs/{name}/photos HTTP/1.1\r\nHost: {0}\r\nOrigin: http://{0}\r\nX-Upload-Id: 0123456789\r\nX-Upload-Sha256: {1}\r\nContent-Length: 5000\r\n\r\nabc",
        server.host(),
        "0".repeat(64)
    );
    body.write_all(begun.as_bytes()).unwrap();
    for (stream, seconds) in [(&mut head, 15), (&mut body, 30)] {
        stream.set_read_timeout(Some(std::time::Duration::from_secs(seconds))).unwrap();
        let mut answer = Vec::new();
        // Ended by the server, not by our own clock.
        stream.read_to_end(&mut answer).unwrap();
        assert!(answer.is_empty() || String::from_utf8_lossy(&answer).contains(" 408 "), "{answer:?}");
    }
    let photos = jobs.path().join(&name).join("photos").read_dir().unwrap().count();
    assert_eq!(photos, 0);
}
