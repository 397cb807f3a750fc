//! The devices that are connected: each with a token of its own, a name, and a
//! way to show it out.

use std::collections::HashMap;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::SystemTime;

use axum::extract::FromRequestParts;
use axum::http::StatusCode;
use axum::http::request::Parts;
use sha2::{Digest, Sha256};
use time::OffsetDateTime;
use time::format_description::well_known::Rfc3339;

use crate::folder::write_durably;
use crate::input::hex;
use crate::web::limits;

/// Digests of the tokens, in the folder of jobs; the tokens themselves are only
/// on the devices.
const KEPT: &str = ".baywitness-devices";
/// So many digits of a digest name a device on the page.
const ID_DIGITS: usize = 16;

/// A connected device.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(in crate::web) struct Device {
    /// SHA-256 of its token.
    digest: String,
    /// When it was connected, RFC 3339; unknown for devices of earlier versions.
    pub(in crate::web) since: Option<String>,
    /// What its user calls it.
    pub(in crate::web) name: String,
}

/// Who asks for something.
#[derive(Debug, Clone)]
pub(in crate::web) struct Who {
    /// Its name, for the list of changes.
    pub(in crate::web) name: Arc<str>,
    /// None: this machine itself.
    pub(in crate::web) id: Option<Arc<str>>,
}

impl Who {
    /// Whoever sits at this machine.
    pub(in crate::web) fn here() -> Self {
        Who { name: "this machine".into(), id: None }
    }
}

/// The guard has put it there.
impl<S: Sync> FromRequestParts<S> for Who {
    type Rejection = StatusCode;

    async fn from_request_parts(parts: &mut Parts, _: &S) -> Result<Self, StatusCode> {
        parts.extensions.get::<Who>().cloned().ok_or(StatusCode::UNAUTHORIZED)
    }
}

impl Device {
    /// What names it on the page.
    pub(in crate::web) fn id(&self) -> &str {
        &self.digest[..ID_DIGITS]
    }

    /// A line of the file: digest, and since version 0.3 when and whose.
    fn read(line: &str) -> Option<Self> {
        let mut parts = line.splitn(3, '\t');
        let digest = parts.next().filter(|d| d.len() == 64 && d.bytes().all(|b| b.is_ascii_hexdigit()))?.to_owned();
        let since = parts.next().map(str::to_owned);
        let name = parts.next().map_or_else(|| format!("#{}", &digest[..4]), str::to_owned);
        Some(Device { digest, since, name })
    }

    fn line(&self) -> String {
        match &self.since {
            Some(since) => format!("{}\t{since}\t{}\n", self.digest, self.name),
            None => format!("{}\n", self.digest),
        }
    }
}

/// All of them, as they are on the disk.
pub(in crate::web) struct Devices {
    kept: PathBuf,
    known: Mutex<Vec<Device>>,
    /// When each was last here; forgotten at a restart.
    seen: Mutex<HashMap<String, SystemTime>>,
}

impl Devices {
    pub(in crate::web) fn read(jobs: &Path) -> Self {
        let kept = jobs.join(KEPT);
        let text = std::fs::read_to_string(&kept).unwrap_or_default();
        Devices { kept, known: Mutex::new(text.lines().filter_map(Device::read).collect()), seen: Mutex::default() }
    }

    fn known(&self) -> MutexGuard<'_, Vec<Device>> {
        self.known.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn seen(&self) -> MutexGuard<'_, HashMap<String, SystemTime>> {
        self.seen.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Whose token this is.
    pub(in crate::web) fn of(&self, token: &str) -> Option<Who> {
        // Digests are compared, so that the time taken says nothing of a token.
        let digest = hex(&Sha256::digest(token));
        let known = self.known();
        let device = known.iter().find(|d| d.digest == digest)?;
        let who = Who { name: device.name.as_str().into(), id: Some(device.id().into()) };
        self.seen().insert(device.id().to_owned(), SystemTime::now());
        Some(who)
    }

    /// Whether a device is still connected.
    pub(in crate::web) fn is_connected(&self, id: &str) -> bool {
        self.known().iter().any(|d| d.id() == id)
    }

    /// A token for a new device, named knowing the first digits of its digest; over the limit the oldest one loses its own.
    pub(in crate::web) fn connect(&self, name: impl FnOnce(&str) -> String, at: OffsetDateTime) -> io::Result<String> {
        let mut bytes = [0; 32];
        getrandom::fill(&mut bytes).map_err(io::Error::other)?;
        let token = hex(&bytes);
        let digest = hex(&Sha256::digest(&token));
        let name = name(&digest[..4]);
        let since = Some(at.format(&Rfc3339).map_err(io::Error::other)?);
        self.change(|all| {
            all.push(Device { digest, since, name });
            if all.len() > limits::PHONES {
                all.remove(0);
            }
        })?;
        Ok(token)
    }

    /// Shows a device out: what it sends from now on is refused. Its name, where it was there.
    pub(in crate::web) fn show_out(&self, id: &str) -> io::Result<Option<String>> {
        let mut name = None;
        self.change(|all| {
            name = all.iter().find(|d| d.id() == id).map(|d| d.name.clone());
            all.retain(|d| d.id() != id);
        })?;
        Ok(name)
    }

    /// On the disk before it counts; one at a time.
    fn change(&self, change: impl FnOnce(&mut Vec<Device>)) -> io::Result<()> {
        let mut known = self.known();
        let mut all = known.clone();
        change(&mut all);
        if all != *known {
            let text: String = all.iter().map(Device::line).collect();
            write_durably(&self.kept, text.as_bytes())?;
            *known = all;
        }
        Ok(())
    }

    /// The devices and when each was last here, the latest connected first.
    pub(in crate::web) fn list(&self) -> Vec<(Device, Option<SystemTime>)> {
        let seen = self.seen().clone();
        self.known().iter().rev().map(|d| (d.clone(), seen.get(d.id()).copied())).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn devices_of_earlier_versions_are_read_and_kept_as_they_were() {
        let jobs = tempfile::tempdir().unwrap();
        let digest = hex(&Sha256::digest("token"));
        std::fs::write(jobs.path().join(KEPT), format!("{digest}\nno digest\n")).unwrap();
        let devices = Devices::read(jobs.path());
        assert_eq!(devices.list().len(), 1);
        let who = devices.of("token").unwrap();
        assert_eq!(who.id.as_deref(), Some(&digest[..ID_DIGITS]));
        let at = OffsetDateTime::UNIX_EPOCH;
        let token = devices.connect(|_| "the left bay's phone".into(), at).unwrap();
        let again = Devices::read(jobs.path());
        assert!(again.of("token").is_some());
        assert_eq!(&*again.of(&token).unwrap().name, "the left bay's phone");
    }

    #[test]
    fn whoever_is_shown_out_stays_out() {
        let jobs = tempfile::tempdir().unwrap();
        let devices = Devices::read(jobs.path());
        let [a, b] = ["a", "b"].map(|name| devices.connect(|_| name.into(), OffsetDateTime::UNIX_EPOCH).unwrap());
        let id = devices.of(&a).unwrap().id.unwrap();
        assert_eq!(devices.show_out(&id).unwrap().as_deref(), Some("a"));
        assert_eq!(devices.show_out(&id).unwrap(), None);
        for devices in [&devices, &Devices::read(jobs.path())] {
            assert!(devices.of(&a).is_none() && devices.of(&b).is_some() && !devices.is_connected(&id));
        }
    }
}
