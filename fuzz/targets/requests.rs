//! Any bytes as what a browser sends: requests as they come off the wire, and
//! well-formed ones with any path, query, headers and body.

#![no_main]

use std::io::{ErrorKind, Read, Write};
use std::net::{Shutdown, SocketAddr, TcpStream};
use std::sync::OnceLock;
use std::time::Duration;

use baywitness::folder::Models;
use baywitness::web::{Options, Server};
use libfuzzer_sys::{Corpus, fuzz_target};
use sha2::{Digest, Sha256};

/// The page, served from this process so that its code counts, and a job.
struct Page {
    at: SocketAddr,
    job: String,
}

/// How long an answer usually takes, at most.
const PATIENCE: Duration = Duration::from_millis(400);

static PAGE: OnceLock<Page> = OnceLock::new();

fn page() -> Page {
    let jobs = tempfile::tempdir_in("/dev/shm").expect("a folder in memory").keep();
    let server = Server::bind(Options {
        tls: None,
        names: Vec::new(),
        note: |_| (),
        listen: "127.0.0.1:0".parse().expect("an address"),
        jobs,
        models: Models::embedded(),
        key: None,
        pdf_signer: None,
        log: None,
        offset: time::UtcOffset::UTC,
    })
    .expect("a free port");
    let at = server.address();
    std::thread::spawn(|| server.run());
    let form = "kit=demo-bay&camera=demo-phone&description=invented";
    let head = format!("Content-Length: {}\r\nContent-Type: application/x-www-form-urlencoded\r\n", form.len());
    let asked = request(at, "POST", "/new/demo-front-radar", &head, form.as_bytes());
    let answer = ask(at, &asked, Duration::from_secs(30)).expect("an answer");
    let answer = String::from_utf8_lossy(&answer).into_owned();
    let to = answer.lines().find_map(|l| l.strip_prefix("location: /jobs/")).unwrap_or_else(|| panic!("{answer}"));
    Page { at, job: to.split('/').next().expect("a name").to_owned() }
}

fn request(at: SocketAddr, method: &str, path: &str, head: &str, body: &[u8]) -> Vec<u8> {
    let head =
        format!("{method} {path} HTTP/1.1\r\nHost: {at}\r\nOrigin: http://{at}\r\nConnection: close\r\n{head}\r\n");
    [head.as_bytes(), body].concat()
}

/// What comes back; none where the connection was ended in between. A browser does
/// not end its side: that is done once nothing came for a while, as where a body is
/// shorter than was announced.
fn ask(at: SocketAddr, bytes: &[u8], patience: Duration) -> Option<Vec<u8>> {
    let mut stream = TcpStream::connect(at).expect("the page is there");
    stream.write_all(bytes).ok()?;
    let mut answer = Vec::new();
    for wait in [patience, Duration::from_secs(40)] {
        stream.set_read_timeout(Some(wait)).ok()?;
        match stream.read_to_end(&mut answer) {
            Err(e) if matches!(e.kind(), ErrorKind::WouldBlock | ErrorKind::TimedOut) => {
                stream.shutdown(Shutdown::Write).ok()?;
            }
            Ok(_) => return Some(answer),
            Err(_) => return None,
        }
    }
    panic!("no answer in forty seconds")
}

/// First byte: off the wire, a page, a form, a file. Then path, a line break, headers, an empty line, the body.
fuzz_target!(|bytes: &[u8]| -> Corpus {
    let page = PAGE.get_or_init(page);
    let Some((pick, rest)) = bytes.split_first() else { return Corpus::Reject };
    if pick % 4 == 0 {
        let _ = ask(page.at, rest, PATIENCE);
        return Corpus::Keep;
    }
    let (path, rest) = rest.split_at(rest.iter().position(|b| *b == b'\n').unwrap_or(rest.len()));
    let rest = rest.strip_prefix(b"\n").unwrap_or(rest);
    let split = rest.windows(2).position(|w| w == b"\n\n");
    let (head, body) = split.map_or((&[][..], rest), |at| (&rest[..at], &rest[at + 2..]));
    let path = String::from_utf8_lossy(path).replace("JOB", &page.job);
    // A closed job takes nothing more; a stream of events has no end.
    let place = path.split('?').next().unwrap_or_default();
    if place.contains('%') || ["clos", "attem", "event"].iter().any(|w| place.contains(w)) {
        return Corpus::Reject;
    }
    let mut head: String = String::from_utf8_lossy(head).lines().map(|l| format!("{l}\r\n")).collect();
    let method = if pick % 4 == 1 { "GET" } else { "POST" };
    match pick % 4 {
        2 => head += &format!("Content-Type: application/x-www-form-urlencoded\r\nContent-Length: {}\r\n", body.len()),
        3 => {
            let digest: String = Sha256::digest(body).iter().map(|b| format!("{b:02x}")).collect();
            head += &format!(
                "X-Upload-Id: {}\r\nX-Upload-Sha256: {digest}\r\nContent-Length: {}\r\n",
                &digest[..16],
                body.len()
            );
        }
        _ => {}
    }
    if let Some(answer) = ask(page.at, &request(page.at, method, &path, &head, body), PATIENCE) {
        let first = answer.get(..13).unwrap_or_default();
        assert!(!first.starts_with(b"HTTP/1.1 500"), "the page failed: {}", String::from_utf8_lossy(&answer));
    }
    Corpus::Keep
});
