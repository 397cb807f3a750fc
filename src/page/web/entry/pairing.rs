//! Which devices may use a page that the network can reach: a code on the
//! server's terminal gives each device a token of its own.

use std::collections::VecDeque;
use std::fmt::Write as _;
use std::io;
use std::net::{IpAddr, SocketAddr, UdpSocket};
use std::path::Path;
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

use qrcodegen::{QrCode, QrCodeEcc};
use sha2::{Digest, Sha256};
use time::OffsetDateTime;

use super::devices::{Devices, Who};
use crate::web::limits;

/// The cookie that bears a device's token.
pub(in crate::web) const TOKEN_COOKIE: &str = "baywitness-device";
/// Letters and digits that can't be mistaken for one another.
const LETTERS: &[u8; 32] = b"ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
const CODE_LETTERS: usize = 10;

/// Who may use the page.
pub(in crate::web) struct Pairing {
    /// None: only this machine can reach the page.
    code: Option<String>,
    /// Those that have a token.
    pub(in crate::web) devices: Devices,
    wrong: Mutex<VecDeque<Instant>>,
}

/// Why a code opens nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::web) enum Refused {
    /// It is another one.
    Wrong,
    /// There were too many wrong ones.
    Wait,
    /// The token can't be kept.
    Disk,
}

impl Pairing {
    /// Needed unless the address can be reached from this machine only.
    pub(in crate::web) fn new(address: SocketAddr, jobs: &Path) -> io::Result<Self> {
        let code = if address.ip().is_loopback() { None } else { Some(random_code()?) };
        Ok(Pairing { code, devices: Devices::read(jobs), wrong: Mutex::default() })
    }

    /// The code, where one is needed.
    pub(in crate::web) fn code(&self) -> Option<&str> {
        self.code.as_deref()
    }

    /// Whose token it is; where only this machine can ask, nobody needs one.
    pub(in crate::web) fn who(&self, token: Option<&str>) -> Option<Who> {
        if self.code.is_none() {
            return Some(Who::here());
        }
        self.devices.of(token?)
    }

    /// A token for a device that knows the code.
    pub(in crate::web) fn token_for(
        &self,
        typed: &str,
        name: impl FnOnce(&str) -> String,
        at: OffsetDateTime,
    ) -> Result<String, Refused> {
        let mut wrong = self.wrong.lock().unwrap_or_else(PoisonError::into_inner);
        while wrong.front().is_some_and(|at| at.elapsed() > Duration::from_secs(60)) {
            wrong.pop_front();
        }
        if wrong.len() >= limits::WRONG_CODES {
            return Err(Refused::Wait);
        }
        let plain: String = typed.chars().filter(char::is_ascii_alphanumeric).collect();
        if !self.code.as_deref().is_some_and(|code| same(&plain.to_ascii_uppercase(), code)) {
            wrong.push_back(Instant::now());
            return Err(Refused::Wrong);
        }
        drop(wrong);
        self.devices.connect(name, at).map_err(|_| Refused::Disk)
    }
}

/// Whether two codes are the same, in a time that does not depend on where they differ.
fn same(a: &str, b: &str) -> bool {
    Sha256::digest(a) == Sha256::digest(b)
}

fn random_code() -> io::Result<String> {
    let mut bytes = [0; CODE_LETTERS];
    getrandom::fill(&mut bytes).map_err(io::Error::other)?;
    Ok(bytes.iter().map(|b| char::from(LETTERS[usize::from(*b) % LETTERS.len()])).collect())
}

/// The address that other devices reach this machine at, where it listens on all of its own.
pub(in crate::web) fn reachable(address: SocketAddr) -> SocketAddr {
    if !address.ip().is_unspecified() {
        return address;
    }
    // Nothing is sent: the system only says which of its addresses it would use
    // (192.0.2.1 is kept for documentation, RFC 5737).
    let outward = || -> io::Result<IpAddr> {
        let socket = UdpSocket::bind("0.0.0.0:0")?;
        socket.connect("192.0.2.1:9")?;
        Ok(socket.local_addr()?.ip())
    };
    SocketAddr::new(outward().unwrap_or(address.ip()), address.port())
}

/// A QR code (ISO/IEC 18004) for a terminal, two rows in a line, dark on light
/// whatever the terminal's colours; `None` where the text is too long for one.
pub fn qr_text(text: &str) -> Option<String> {
    const QUIET: i32 = 3;
    let code = QrCode::encode_text(text, QrCodeEcc::Low).ok()?;
    let light = |x: i32, y: i32| !code.get_module(x, y);
    let mut lines = String::new();
    for y in (-QUIET..code.size() + QUIET).step_by(2) {
        // White on black, so that a filled half is light.
        lines.push_str("\u{1b}[97;40m");
        for x in -QUIET..code.size() + QUIET {
            lines.push(match (light(x, y), light(x, y + 1)) {
                (true, true) => '█',
                (true, false) => '▀',
                (false, true) => '▄',
                (false, false) => ' ',
            });
        }
        let _ = writeln!(lines, "\u{1b}[0m");
    }
    Some(lines)
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOW: OffsetDateTime = OffsetDateTime::UNIX_EPOCH;

    #[test]
    fn a_code_gives_each_device_its_own_token_which_outlives_a_restart() {
        let jobs = tempfile::tempdir().unwrap();
        let open: SocketAddr = "0.0.0.0:1".parse().unwrap();
        let pairing = Pairing::new(open, jobs.path()).unwrap();
        let code = pairing.code().unwrap().to_owned();
        assert!(pairing.who(None).is_none() && pairing.who(Some("")).is_none());
        let a = pairing.token_for(&code, |_| "a".into(), NOW).unwrap();
        let b =
            pairing.token_for(&format!(" {}-{} ", code[..5].to_lowercase(), &code[5..]), |_| "b".into(), NOW).unwrap();
        assert!(a != b && pairing.who(Some(&a)).is_some() && pairing.who(Some(&b)).is_some());
        let again = Pairing::new(open, jobs.path()).unwrap();
        assert!(again.who(Some(&a)).is_some() && again.code() != Some(&code));
        let kept = std::fs::read_to_string(jobs.path().join(".baywitness-devices")).unwrap();
        assert!(!kept.contains(&a));
    }

    #[test]
    fn guesses_are_few() {
        let jobs = tempfile::tempdir().unwrap();
        let pairing = Pairing::new("10.0.0.1:1".parse().unwrap(), jobs.path()).unwrap();
        for _ in 0..limits::WRONG_CODES {
            assert_eq!(pairing.token_for("AAAAAAAAAA", str::to_owned, NOW), Err(Refused::Wrong));
        }
        let code = pairing.code().unwrap().to_owned();
        assert_eq!(pairing.token_for(&code, str::to_owned, NOW), Err(Refused::Wait));
    }

    #[test]
    fn this_machine_alone_needs_no_code() {
        let jobs = tempfile::tempdir().unwrap();
        for local in ["127.0.0.1:1", "[::1]:1"] {
            assert!(Pairing::new(local.parse().unwrap(), jobs.path()).unwrap().who(None).is_some());
        }
    }
}
