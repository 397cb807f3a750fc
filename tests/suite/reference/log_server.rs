//! The log of attempts on an engine that somebody else wrote: `siglog` 0.1.0 from crates.io, a server of the same format
//! (C2SP tlog-tiles). It takes the entries as they are and comes to the same root; what it publishes besides is not all as the
//! specification has it, and is refused.

use std::io::{Read, Write};
use std::net::{TcpListener, TcpStream};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use base64::Engine;
use baywitness::transparency::{KeyKind, Log, LogFolder, NoteSigner, Vouched};

use crate::evidence::doors::run;
use crate::transparency::attempts;

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
    fn wait(&self, dir: &Path, mut is_so: impl FnMut(&Server) -> bool) {
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
        // Its SQLite is locked at times by its own publishing (500): nothing was taken then, and it is asked again.
        let mut answer = (500, Vec::new());
        server.wait(dir.path(), |server| {
            answer = server.ask("POST", "/add", &attempt.bytes().unwrap()).unwrap();
            answer.0 != 500
        });
        assert_eq!((answer.0, String::from_utf8_lossy(&answer.1).into_owned()), (200, n.to_string()));
    }
    let published = dir.path().join("published");
    let size = |folder: &Path| LogFolder::open(folder).map_or(0, |log| log.checkpoint.size);
    server.wait(dir.path(), |_| size(&published) == 300);
    // It has the same log: origin, root, signed by its key; the newest bundle of entries is the same bytes.
    let [theirs, own] = [&published, &ours].map(|folder| LogFolder::open(folder).unwrap());
    assert_eq!((theirs.checkpoint.origin.as_str(), theirs.checkpoint.root), (ORIGIN, own.checkpoint.root));
    assert_eq!(theirs.note.vouched_by(&verifier), Vouched::Yes(None));
    let (code, bundle) = server.ask("GET", "/tile/entries/001.p/44", &[]).unwrap();
    assert_eq!((code, bundle), (200, std::fs::read(ours.join("tile/entries/001.p/44")).unwrap()));
    // Its tiles of hashes are not those of the specification: a full one holds the nodes between its leaves and its
    // root too (510 hashes, not 256). A reader by the specification has to refuse them, and says which.
    assert_eq!(std::fs::metadata(published.join("tile/0/000")).unwrap().len(), 510 * 32);
    let refused = theirs.check_root().unwrap_err().to_string();
    assert!(refused.contains("tile/0/0"), "{refused}");
    let keys = dir.path().join("keys");
    std::fs::write(&keys, verifier.text() + "\n").unwrap();
    let (code, said) = run(&[&published, Path::new("--keys"), &keys], &["log", "check"], None);
    // Nor is its first bundle whole: the 256 entries that it should hold are one.
    assert!(code == 1 && said.contains("tile/entries/000: it does not hold 256 entries"), "{code}: {said}");
    println!("siglog 0.1.0: 300 entries taken, the same root; what it publishes is refused: {said}");
}
