//! A client that says exactly what a test wants, and the program under test.

use std::io::{BufRead, BufReader, Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use sha2::{Digest, Sha256};

/// The program, serving.
pub(crate) struct Server {
    child: Child,
    pub(crate) at: SocketAddr,
    /// What it said when it started.
    pub(crate) said: String,
    pub(crate) jobs: PathBuf,
    /// Sent with every request.
    pub(crate) cookie: String,
}

/// An answer.
#[derive(Debug)]
pub(crate) struct Answer {
    pub(crate) status: u16,
    pub(crate) head: String,
    pub(crate) body: Vec<u8>,
}

impl Answer {
    pub(crate) fn text(&self) -> String {
        String::from_utf8_lossy(&self.body).into_owned()
    }

    pub(crate) fn json(&self) -> serde_json::Value {
        serde_json::from_slice(&self.body).unwrap_or_else(|e| panic!("{e}: {}", self.text()))
    }

    /// A header's value.
    pub(crate) fn header(&self, name: &str) -> Option<&str> {
        let named = |line: &&str| line.split_once(':').is_some_and(|(n, _)| n.eq_ignore_ascii_case(name));
        self.head.lines().find(named).and_then(|line| Some(line.split_once(':')?.1.trim()))
    }
}

impl Server {
    pub(crate) fn start(jobs: &Path, models: Option<&Path>) -> Server {
        Server::start_at(jobs, models, "127.0.0.1:0")
    }

    pub(crate) fn start_at(jobs: &Path, models: Option<&Path>, listen: &str) -> Server {
        Server::start_with(jobs, models, listen, &[])
    }

    pub(crate) fn start_with(jobs: &Path, models: Option<&Path>, listen: &str, more: &[&str]) -> Server {
        let mut command = crate::program::program();
        command.args(["serve", "--listen", listen, "--jobs"]).arg(jobs).env_remove("BAYWITNESS_MODELS");
        if let Some(models) = models {
            command.arg("--models").arg(models);
        }
        let mut child = command.args(more).stdout(Stdio::piped()).spawn().unwrap();
        let mut lines = BufReader::new(child.stdout.take().unwrap());
        let mut said = String::new();
        let encrypted = more.iter().any(|m| m.starts_with("--tls"));
        let begins = if encrypted { "https://" } else { "http://" };
        while !said.contains(begins) {
            assert!(lines.read_line(&mut said).unwrap() > 0, "{said}");
        }
        // The rest, such as the code, comes with the same write.
        let mut rest = String::new();
        if said.ends_with('\n') && !said.contains("this machine alone") {
            lines.read_line(&mut rest).unwrap();
        }
        // The certificate's line, and its root's.
        for _ in 0..if more.contains(&"--tls-own") { 2 } else { usize::from(encrypted) } {
            lines.read_line(&mut rest).unwrap();
        }
        said.push_str(&rest);
        let link = said.split(begins).nth(1).unwrap();
        let at: SocketAddr = link.split(['/', ' ']).next().unwrap().parse().unwrap();
        Server { child, at, said, jobs: jobs.to_path_buf(), cookie: String::new() }
    }

    /// Ends it at once (SIGKILL), as a power cut does; dropping it does the same.
    pub(crate) fn kill(self) {
        drop(self);
    }

    /// The same while others still hold it.
    pub(crate) fn interrupt(&self) {
        let killed = Command::new("kill").args(["-KILL", &self.child.id().to_string()]).status().unwrap();
        assert!(killed.success());
    }

    pub(crate) fn host(&self) -> String {
        self.at.to_string()
    }

    /// Bytes as they are, and the answer.
    pub(crate) fn raw(&self, bytes: &[u8]) -> std::io::Result<Answer> {
        let mut stream = TcpStream::connect(self.at)?;
        stream.set_read_timeout(Some(Duration::from_secs(60)))?;
        // It may hang up before it has read everything.
        let written = stream.write_all(bytes);
        let mut all = Vec::new();
        let read = stream.read_to_end(&mut all);
        if all.is_empty() {
            written?;
            read?;
        }
        answer(&all).ok_or_else(|| std::io::Error::other("no answer"))
    }

    pub(crate) fn request(&self, method: &str, path: &str, headers: &[(&str, &str)], body: &[u8]) -> Answer {
        self.try_request(method, path, headers, body).unwrap()
    }

    pub(crate) fn try_request(
        &self,
        method: &str,
        path: &str,
        headers: &[(&str, &str)],
        body: &[u8],
    ) -> std::io::Result<Answer> {
        let mut head = format!("{method} {path} HTTP/1.1\r\nConnection: close\r\nContent-Length: {}\r\n", body.len());
        if headers.iter().all(|(name, _)| *name != "Host") {
            head.push_str(&format!("Host: {}\r\n", self.host()));
        }
        if !self.cookie.is_empty() {
            head.push_str(&format!("Cookie: {}\r\n", self.cookie));
        }
        for (name, value) in headers {
            head.push_str(&format!("{name}: {value}\r\n"));
        }
        head.push_str("\r\n");
        self.raw(&[head.as_bytes(), body].concat())
    }

    pub(crate) fn get(&self, path: &str) -> Answer {
        self.request("GET", path, &[("Accept", "text/html")], &[])
    }

    /// A form of the page itself.
    pub(crate) fn form(&self, path: &str, fields: &[(&str, &str)]) -> Answer {
        let origin = format!("http://{}", self.host());
        let body: Vec<String> = fields.iter().map(|(n, v)| format!("{}={}", encoded(n), encoded(v))).collect();
        let headers = [("Origin", origin.as_str()), ("Content-Type", "application/x-www-form-urlencoded")];
        self.request("POST", path, &headers, body.join("&").as_bytes())
    }

    /// A file, as the page's script sends it.
    pub(crate) fn upload(&self, path: &str, bytes: &[u8]) -> Answer {
        self.try_upload(path, bytes).unwrap()
    }

    pub(crate) fn try_upload(&self, path: &str, bytes: &[u8]) -> std::io::Result<Answer> {
        let (origin, digest) = (format!("http://{}", self.host()), sha256(bytes));
        let headers =
            [("Origin", origin.as_str()), ("X-Upload-Id", &digest[..32]), ("X-Upload-Sha256", digest.as_str())];
        self.try_request("POST", path, &headers, bytes)
    }

    /// The verdict that the page shows, once it measures no more.
    pub(crate) fn verdict(&self, job: &str) -> String {
        let end = Instant::now() + Duration::from_secs(60);
        loop {
            let page = self.get(&format!("/jobs/{job}/live")).text();
            if !page.contains("data-working")
                && let Some(rest) = page.split("data-verdict=\"").nth(1)
            {
                return rest.split('"').next().unwrap().to_owned();
            }
            assert!(Instant::now() < end, "no verdict: {page}");
            std::thread::sleep(Duration::from_millis(30));
        }
    }
}

impl Server {
    /// Waits until nothing is measured any more.
    pub(crate) fn settles(&self, job: &str) {
        let end = Instant::now() + Duration::from_secs(60);
        while self.get(&format!("/jobs/{job}/live")).text().contains("data-working") {
            assert!(Instant::now() < end, "it measures for ever");
            std::thread::sleep(Duration::from_millis(30));
        }
    }

    /// Waits until a first photo was looked at: with one there is no verdict yet.
    pub(crate) fn verdict_or_second(&self, job: &str) {
        let end = Instant::now() + Duration::from_secs(60);
        while Instant::now() < end {
            let page = self.get(&format!("/jobs/{job}/live")).text();
            if !page.contains("data-working") && page.contains("judged") && !page.contains("judged wait") {
                return;
            }
            std::thread::sleep(Duration::from_millis(30));
        }
        panic!("the photo was not looked at");
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        // Killed already, in some tests.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

pub(crate) fn answer(bytes: &[u8]) -> Option<Answer> {
    let end = bytes.windows(4).position(|w| w == b"\r\n\r\n")?;
    let head = String::from_utf8_lossy(&bytes[..end]).into_owned();
    let status = head.split(' ').nth(1)?.parse().ok()?;
    let answer = Answer { status, head, body: bytes[end + 4..].to_vec() };
    let chunked = answer.header("transfer-encoding").is_some_and(|t| t.contains("chunked"));
    let body = if chunked { unchunked(&answer.body) } else { answer.body.clone() };
    Some(Answer { body, ..answer })
}

/// RFC 9112, 7.1.
fn unchunked(mut rest: &[u8]) -> Vec<u8> {
    let mut body = Vec::new();
    while let Some(line) = rest.windows(2).position(|w| w == b"\r\n") {
        let size = usize::from_str_radix(std::str::from_utf8(&rest[..line]).unwrap_or("0").trim(), 16).unwrap_or(0);
        if size == 0 || rest.len() < line + 2 + size {
            break;
        }
        body.extend(&rest[line + 2..line + 2 + size]);
        rest = &rest[(line + 4 + size).min(rest.len())..];
    }
    body
}

/// Percent-encoded for forms and paths.
pub(crate) fn encoded(text: &str) -> String {
    text.bytes()
        .map(|b| if b.is_ascii_alphanumeric() || b == b'-' { char::from(b).to_string() } else { format!("%{b:02X}") })
        .collect()
}

pub(crate) fn sha256(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|b| format!("{b:02x}")).collect()
}
