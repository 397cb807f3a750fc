//! The log of attempts on an engine that somebody else wrote: `siglog` 0.1.0 from crates.io, a server of the same format
//! (C2SP tlog-tiles). It takes the entries as they are, and what it publishes this program reads as a log.

use std::io::{Read, Write};
use std::net::{TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use base64::Engine;
use baywitness::transparency::{KeyKind, Log, LogFolder, NoteSigner, Vouched};

use crate::evidence::doors::run;
use crate::transparency::{attempts, names};

const ORIGIN: &str = "shop.example/attempts";
const SEED: [u8; 32] = [7; 32];

/// The server, which ends with the test.
struct Server {
    child: Child,
    port: u16,
}

impl Drop for Server {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

impl Server {
    fn start(program: &Path, dir: &Path, verifier: &str) -> Server {
        let port = TcpListener::bind("127.0.0.1:0").unwrap().local_addr().unwrap().port();
        // As golang.org/x/mod/sumdb/note writes a private key: the verifier's name and number, then kind and seed.
        let number = verifier.split('+').nth(1).unwrap();
        let secret = base64::engine::general_purpose::STANDARD.encode([&[1_u8][..], &SEED].concat());
        let log = std::fs::File::create(dir.join("server.txt")).unwrap();
        let child = Command::new(program)
            .env("DATABASE_URL", format!("sqlite:{}?mode=rwc", dir.join("server.db").display()))
            .env("LOG_PRIVATE_KEY", format!("PRIVATE+KEY+{ORIGIN}+{number}+{secret}"))
            .args(["--storage-backend", "fs", "--origin", ORIGIN, "--batch-max-age-ms", "50", "--fs-root"])
            .arg(dir.join("published"))
            .args(["--listen", &format!("127.0.0.1:{port}")])
            .stdout(log.try_clone().unwrap())
            .stderr(log)
            .stdin(Stdio::null())
            .spawn()
            .unwrap();
        let server = Server { child, port };
        server.wait(dir, |server| server.ask("GET", "/health", &[]).is_some_and(|(code, _)| code == 200));
        server
    }

    /// Until something is so; half a minute at most.
    fn wait(&self, dir: &Path, is_so: impl Fn(&Server) -> bool) {
        let end = Instant::now() + Duration::from_secs(30);
        while !is_so(self) {
            let said = std::fs::read_to_string(dir.join("server.txt")).unwrap_or_default();
            assert!(Instant::now() < end, "the server does not come so far: {said}");
            std::thread::sleep(Duration::from_millis(50));
        }
    }

    /// A request (RFC 9112) and its answer: code and body.
    fn ask(&self, method: &str, path: &str, body: &[u8]) -> Option<(u16, Vec<u8>)> {
        let mut stream = TcpStream::connect(("127.0.0.1", self.port)).ok()?;
        let head = format!(
            "{method} {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\nContent-Length: {}\r\n\r\n",
            body.len()
        );
        stream.write_all(&[head.as_bytes(), body].concat()).ok()?;
        let mut answer = Vec::new();
        stream.read_to_end(&mut answer).ok()?;
        let end = answer.windows(4).position(|w| w == b"\r\n\r\n")? + 4;
        let code = std::str::from_utf8(&answer[..end]).ok()?.split(' ').nth(1)?.parse().ok()?;
        Some((code, answer[end..].to_vec()))
    }
}

/// The files below a folder of tiles, by their names there.
fn tiles(folder: &Path) -> Vec<(PathBuf, Vec<u8>)> {
    let all = crate::evidence::files(&folder.join("tile"));
    all.into_iter().map(|f| (f.strip_prefix(folder).unwrap().to_path_buf(), std::fs::read(f).unwrap())).collect()
}

#[test]
#[ignore = "needs a log server: DEVELOPERS.md, Running"]
fn an_existing_log_server_takes_the_entries_unchanged() {
    let Ok(program) = std::env::var("BAYWITNESS_LOG_SERVER") else {
        return println!("skipped: BAYWITNESS_LOG_SERVER is not set (cargo install siglog --version 0.1.0 --locked)");
    };
    let dir = tempfile::tempdir().unwrap();
    let ours = dir.path().join("ours");
    let all = attempts(0, 300);
    Log::create(&ours, ORIGIN).unwrap().append(&all).unwrap();
    let verifier = NoteSigner::new(ORIGIN, &SEED).verifier(KeyKind::Log);
    let server = Server::start(Path::new(&program), dir.path(), &verifier.text());
    for (n, attempt) in all.iter().enumerate() {
        let answer = server.ask("POST", "/add", &attempt.bytes().unwrap()).unwrap();
        assert_eq!((answer.0, String::from_utf8_lossy(&answer.1).into_owned()), (200, n.to_string()));
    }
    let published = dir.path().join("published");
    let size = |folder: &Path| LogFolder::open(folder).map_or(0, |log| log.checkpoint.size);
    server.wait(dir.path(), |_| size(&published) == 300);
    // What it published is the same log: root, entries, a proof; signed by its key.
    let [theirs, own] = [&published, &ours].map(|folder| LogFolder::open(folder).unwrap());
    assert_eq!((theirs.checkpoint.origin.as_str(), theirs.checkpoint.root), (ORIGIN, own.checkpoint.root));
    assert_eq!(theirs.note.vouched_by(&verifier), Vouched::Yes(None));
    theirs.check_root().unwrap();
    assert_eq!(names(&theirs), names(&own));
    assert_eq!(
        theirs.inclusion(77, &all[77].bytes().unwrap()).unwrap(),
        own.inclusion(77, &all[77].bytes().unwrap()).unwrap()
    );
    // Full tiles and those of the newest checkpoint are the same bytes; it also keeps those of earlier ones.
    let kept = tiles(&published);
    for (name, bytes) in tiles(&ours) {
        let other = kept.iter().find(|(n, _)| *n == name);
        assert!(other.is_some_and(|(_, b)| *b == bytes), "{}", name.display());
    }
    // It serves them, and `log check` takes its folder for a log.
    let (code, bundle) = server.ask("GET", "/tile/entries/000", &[]).unwrap();
    assert_eq!((code, bundle), (200, std::fs::read(ours.join("tile/entries/000")).unwrap()));
    let keys = dir.path().join("keys");
    std::fs::write(&keys, verifier.text() + "\n").unwrap();
    let (code, said) = run(&[&published, Path::new("--keys"), &keys], &["log", "check"], None);
    assert_eq!(code, 0, "{said}");
    println!("siglog 0.1.0: 300 entries, the same root and tiles\n{said}");
}
