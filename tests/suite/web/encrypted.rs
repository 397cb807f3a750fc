//! The page over TLS: with a certificate of its own, with one that is exchanged,
//! and with whoever does not keep to the protocol.

use std::io::{Read, Write};
use std::net::{SocketAddr, TcpStream, UdpSocket};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use super::client::{Server, answer};
use super::tls_client::{Trust, ask, get};

const OWN: &str = ".baywitness-tls.pem";

fn own(jobs: &Path, listen: &str) -> Server {
    let mut server = Server::start_with(jobs, None, listen, &["--tls-own"]);
    server.at.set_ip("127.0.0.1".parse().unwrap());
    server
}

/// What the terminal shows behind some words.
fn shown<'a>(said: &'a str, words: &str) -> &'a str {
    said.split(words).nth(1).unwrap_or_else(|| panic!("{said}")).lines().next().unwrap().trim()
}

fn print(server: &Server) -> &str {
    shown(&server.said, "Certificate, SHA-256:")
}

#[test]
fn the_own_certificate_is_made_once_and_taken_by_its_fingerprint_or_its_root() {
    let jobs = tempfile::tempdir().unwrap();
    let server = own(jobs.path(), "127.0.0.1:0");
    let known = print(&server).to_owned();
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        let mode = std::fs::metadata(jobs.path().join(OWN)).unwrap().permissions().mode();
        assert_eq!(mode & 0o777, 0o600, "{mode:o}");
    }
    let page = get(server.at, "localhost", &Trust::Print(&known), "/", "").unwrap();
    assert_eq!(page.status, 200);
    let other = known.chars().rev().collect::<String>();
    let refused = get(server.at, "localhost", &Trust::Print(&other), "/", "").unwrap_err();
    assert!(refused.to_string().contains("another fingerprint"), "{refused}");
    // The root vouches for this machine's names, by another implementation of X.509 paths, and for no others.
    let root = get(server.at, "localhost", &Trust::Print(&known), "/root.crt", "").unwrap();
    assert_eq!(root.header("content-type"), Some("application/x-x509-ca-cert"));
    let digits = shown(&server.said, "on phones, SHA-256:").replace(':', "").to_lowercase();
    assert_eq!(super::client::sha256(&root.body), digits);
    for name in ["localhost", "127.0.0.1"] {
        assert_eq!(get(server.at, name, &Trust::Root(&root.body), "/", "").unwrap().status, 200);
    }
    let wrong = get(server.at, "other.example", &Trust::Root(&root.body), "/", "").unwrap_err();
    assert!(wrong.to_string().contains("not valid for name"), "{wrong}");
    server.kill();
    assert_eq!(print(&own(jobs.path(), "127.0.0.1:0")), known, "made once");
}

#[test]
fn tokens_travel_encrypted_only() {
    let jobs = tempfile::tempdir().unwrap();
    let server = own(jobs.path(), "0.0.0.0:0");
    assert!(server.said.contains("The connection is encrypted") && !server.said.contains("can read along"));
    let known = print(&server);
    let code = shown(&server.said, "/pair/");
    let form = format!("code={code}&name=left+bay");
    let post = |origin: &str| {
        let request = format!(
            "POST /pair HTTP/1.1\r\nHost: localhost:{port}\r\nOrigin: {origin}:{port}\r\nConnection: close\r\nContent-Type: \
             application/x-www-form-urlencoded\r\nContent-Length: {length}\r\n\r\n{form}",
            port = server.at.port(),
            length = form.len()
        );
        ask(server.at, "localhost", &Trust::Print(known), &request).unwrap()
    };
    assert_eq!(post("http://localhost").status, 403, "another origin than the encrypted one");
    let paired = post("https://localhost");
    let cookie = paired.header("set-cookie").unwrap();
    for word in ["HttpOnly", "SameSite=Strict", "Secure"] {
        assert!(cookie.contains(word), "{cookie}");
    }
    let cookie = cookie.split(';').next().unwrap();
    assert_eq!(get(server.at, "localhost", &Trust::Print(known), "/", cookie).unwrap().status, 200);
    // The page to connect shows what to compare, and does not speak of an open network.
    let page = get(server.at, "localhost", &Trust::Print(known), "/pair", "").unwrap().text();
    assert!(page.contains(known) && !page.contains("not encrypted"));
}

#[test]
fn plain_requests_are_sent_on_and_nothing_else_hangs() {
    let jobs = tempfile::tempdir().unwrap();
    let server = own(jobs.path(), "127.0.0.1:0");
    let plain = server.get("/new?q=a");
    assert_eq!(plain.status, 307);
    assert_eq!(plain.header("location"), Some(format!("https://{}/new?q=a", server.host()).as_str()));
    assert!(plain.header("set-cookie").is_none() && !plain.text().contains("<html"));
    for host in ["evil.example/x", "a b", "x\u{e4}", ""] {
        let answer = server.request("GET", "/", &[("Host", host)], &[]);
        assert_eq!((answer.status, answer.header("location")), (400, None), "{host}");
    }
    for garbage in
        [&b"\0\0\0\0"[..], b"\x16\x03\x01\0\x05hello", b"\x15\x03\x03\0\x02\x02\x28", b"\x80\x2e\x01\x03\x01"]
    {
        let began = Instant::now();
        let mut stream = TcpStream::connect(server.at).unwrap();
        stream.set_read_timeout(Some(Duration::from_secs(15))).unwrap();
        stream.write_all(garbage).unwrap();
        // What is half a line is hung up on by whoever sends it.
        stream.shutdown(std::net::Shutdown::Write).unwrap();
        let mut all = Vec::new();
        let _ = stream.read_to_end(&mut all);
        assert!(began.elapsed() < Duration::from_secs(5), "{garbage:?}");
        assert!(answer(&all).is_none_or(|a| a.status >= 400), "{garbage:?}");
    }
}

#[test]
fn a_certificate_that_changes_on_the_disk_needs_no_restart() {
    let folders = [tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap()];
    let made = folders.each_ref().map(|f| {
        let server = own(f.path(), "127.0.0.1:0");
        (print(&server).to_owned(), std::fs::read_to_string(f.path().join(OWN)).unwrap())
    });
    let held = tempfile::tempdir().unwrap();
    let (certificate, key) = (held.path().join("certificate.pem"), held.path().join("key.pem"));
    let write = |text: &str| {
        let at = text.find("-----BEGIN CERTIFICATE").unwrap();
        std::fs::write(&key, &text[..at]).unwrap();
        std::fs::write(&certificate, &text[at..]).unwrap();
    };
    write(&made[0].1);
    let jobs = tempfile::tempdir().unwrap();
    let files = ["--tls-cert", certificate.to_str().unwrap(), "--tls-key", key.to_str().unwrap()];
    let server = Server::start_with(jobs.path(), None, "127.0.0.1:0", &files);
    assert_eq!(print(&server), made[0].0);
    let shows = |print: &str| get(server.at, "localhost", &Trust::Print(print), "/", "").is_ok();
    assert!(shows(&made[0].0) && !shows(&made[1].0));
    // What can't be used changes nothing.
    std::fs::write(&certificate, "nothing").unwrap();
    std::thread::sleep(Duration::from_millis(2500));
    assert!(shows(&made[0].0));
    write(&made[1].1);
    let end = Instant::now() + Duration::from_secs(10);
    while !shows(&made[1].0) {
        assert!(Instant::now() < end, "it was not taken up");
        std::thread::sleep(Duration::from_millis(100));
    }
    assert!(!shows(&made[0].0));
    // A page that others vouch for offers no root of its own.
    assert_eq!(get(server.at, "localhost", &Trust::Print(&made[1].0), "/root.crt", "").unwrap().status, 404);
}

#[test]
fn files_that_are_no_pair_are_named() {
    let folders = [tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap()];
    for folder in &folders {
        drop(own(folder.path(), "127.0.0.1:0"));
    }
    let [a, b] = folders.each_ref().map(|f| f.path().join(OWN));
    let none = folders[0].path().join("none.pem");
    std::fs::write(&none, "no PEM").unwrap();
    let gone = folders[0].path().join("gone.pem");
    let jobs = tempfile::tempdir().unwrap();
    for (certificate, key, says) in [
        (&a, &b, "belongs together"),
        (&none, &a, "holds no certificate"),
        (&a, &none, "holds no private key"),
        (&gone, &a, "cannot read"),
    ] {
        let out = crate::program::program()
            .args(["serve", "--listen", "127.0.0.1:0", "--jobs"])
            .arg(jobs.path())
            .arg("--tls-cert")
            .arg(certificate)
            .arg("--tls-key")
            .arg(key)
            .stdin(Stdio::null())
            .output()
            .unwrap();
        let said = String::from_utf8_lossy(&out.stderr);
        assert!(out.status.code() == Some(2) && said.contains(says), "{said}");
        assert!(said.contains(".pem"), "{said}");
    }
}

/// This machine's address in a network, where it has one; nothing is sent (RFC 5737's address).
fn outward(port: u16) -> Option<SocketAddr> {
    let socket = UdpSocket::bind("0.0.0.0:0").ok()?;
    socket.connect("192.0.2.1:9").ok()?;
    let ip = socket.local_addr().ok()?.ip();
    (!ip.is_loopback() && !ip.is_unspecified()).then_some(SocketAddr::new(ip, port))
}

#[test]
fn slow_handshakes_and_floods_leave_the_page_alive() {
    let jobs = tempfile::tempdir().unwrap();
    let server = own(jobs.path(), "0.0.0.0:0");
    let known = print(&server);
    let mut held: Vec<TcpStream> = Vec::new();
    let begun = |i: usize| match i % 3 {
        0 => &b""[..],
        1 => b"\x16\x03\x01\x02\0\x01\0\x01\xfc\x03\x03",
        _ => b"GET / HTTP/1.1\r\nHost: x\r\n",
    };
    for i in 0..150 {
        let mut stream = TcpStream::connect(server.at).unwrap();
        stream.write_all(begun(i)).unwrap();
        held.push(stream);
    }
    for _ in 0..20 {
        let began = Instant::now();
        assert_eq!(get(server.at, "localhost", &Trust::Print(known), "/pair", "").unwrap().status, 200);
        assert!(began.elapsed() < Duration::from_secs(3), "{:?}", began.elapsed());
    }
    // More than all places together, from one address: others still find one.
    for i in 0..600 {
        let Ok(mut stream) = TcpStream::connect(server.at) else { continue };
        let _ = stream.write_all(begun(i));
        held.push(stream);
    }
    let Some(at) = outward(server.at.port()) else {
        eprintln!("skipped: this machine has one address only");
        return;
    };
    let began = Instant::now();
    assert_eq!(get(at, "localhost", &Trust::Print(known), "/pair", "").unwrap().status, 200);
    assert!(began.elapsed() < Duration::from_secs(3), "{:?}", began.elapsed());
}

/// Two clients that share no code with the server's library.
#[test]
fn openssl_and_curl_take_it() {
    let jobs = tempfile::tempdir().unwrap();
    let server = own(jobs.path(), "127.0.0.1:0");
    let known = print(&server);
    let root = jobs.path().join("root.pem");
    let all = std::fs::read_to_string(jobs.path().join(OWN)).unwrap();
    let at = all.rfind("-----BEGIN CERTIFICATE").unwrap();
    std::fs::write(&root, &all[at..]).unwrap();
    let run = |program: &str, args: &[&str]| match Command::new(program).args(args).stdin(Stdio::null()).output() {
        Ok(out) => {
            Some((out.status.success(), String::from_utf8_lossy(&[out.stdout, out.stderr].concat()).into_owned()))
        }
        Err(_) => {
            eprintln!("skipped: {program} is not installed");
            None
        }
    };
    let root = root.to_str().unwrap();
    let address = server.host();
    let strict =
        ["s_client", "-connect", &address, "-CAfile", root, "-verify_return_error", "-verify_hostname", "localhost"];
    if let Some((good, said)) = run("openssl", &strict) {
        assert!(good && said.contains("Verify return code: 0") && said.contains("TLSv1.3"), "{said}");
    }
    if let Some((_, said)) = run("openssl", &["s_client", "-connect", &address, "-tls1_2"]) {
        assert!(said.contains("alert") && !said.contains("BEGIN CERTIFICATE"), "{said}");
    }
    let of_page = jobs.path().join("page.pem");
    let begins = all.find("-----BEGIN CERTIFICATE").unwrap();
    std::fs::write(&of_page, &all[begins..at]).unwrap();
    let fingerprint = ["x509", "-in", of_page.to_str().unwrap(), "-noout", "-fingerprint", "-sha256"];
    if let Some((_, said)) = run("openssl", &fingerprint) {
        assert!(said.contains(known), "{said} is not {known}");
    }
    let url = format!("https://localhost:{}/", server.at.port());
    let curl = ["-sS", "--cacert", root, "--resolve", &format!("localhost:{}:127.0.0.1", server.at.port()), &url];
    if let Some((good, said)) = run("curl", &curl) {
        assert!(good && said.contains("<html"), "{said}");
    }
    let untrusted = ["-sS", &url];
    if let Some((good, said)) = run("curl", &untrusted) {
        assert!(!good, "{said}");
    }
}
