//! The certificate in use. Its files are looked at once a second, so that one
//! that was renewed needs no restart; what can't be used leaves the old one in use.

use std::net::IpAddr;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError, RwLock};
use std::time::{Duration, SystemTime};

use rustls::server::{ClientHello, ResolvesServerCert};
use rustls::sign::CertifiedKey;

use super::identity::{Identity, fingerprint};
use super::{Error, Tls, own};
use crate::photo::sha256;
use crate::words::{Phrase, phrase};

/// How often the files are looked at.
const EVERY: Duration = Duration::from_secs(1);
/// Who runs the page is told so many days before the certificate's end.
const SOON_DAYS: u64 = 30;

/// The certificate and what it was read from.
#[derive(Debug)]
pub(in crate::web) struct Keeper {
    certificate: PathBuf,
    key: PathBuf,
    /// Whether the page made it itself.
    own: bool,
    in_use: RwLock<Identity>,
    looked: Mutex<Looked>,
    note: fn(&Phrase),
}

/// Digests of both files.
type Stamp = [Option<String>; 2];

#[derive(Debug)]
struct Looked {
    /// What is in use.
    taken: Stamp,
    /// What could not be used, and whether that was said.
    failed: Option<(Stamp, bool)>,
}

impl Keeper {
    /// Reads the certificate; makes the page's own where there is none yet.
    pub(in crate::web) fn open(tls: &Tls, jobs: &Path, names: &[String], note: fn(&Phrase)) -> Result<Self, Error> {
        let (certificate, key, own) = match tls {
            Tls::Files { certificate, key } => (certificate.clone(), key.clone(), false),
            Tls::Own => {
                own::make_once(jobs, names, SystemTime::now())?;
                (own::file(jobs), own::file(jobs), true)
            }
        };
        let taken = stamp(&certificate, &key);
        let identity = Identity::read(&certificate, &key)?;
        let looked = Mutex::new(Looked { taken, failed: None });
        Ok(Keeper { certificate, key, own, in_use: RwLock::new(identity), looked, note })
    }

    /// Names and addresses for an own certificate: typed ones first.
    pub(in crate::web) fn names(typed: &[String], address: IpAddr) -> Result<Vec<String>, Error> {
        own::names_of(typed, address, host_name().as_deref())
    }

    /// What the page proves itself with now.
    fn now(&self) -> Identity {
        self.in_use.read().unwrap_or_else(PoisonError::into_inner).clone()
    }

    /// SHA-256 of the page's certificate.
    pub(in crate::web) fn fingerprint(&self) -> String {
        self.now().fingerprint
    }

    /// The root that a phone can be told to trust, where the page made it: DER and SHA-256.
    pub(in crate::web) fn root(&self) -> Option<(Vec<u8>, String)> {
        let now = self.now();
        let root = now.root().filter(|_| self.own && now.key.cert.len() > 1)?;
        Some((root.to_vec(), fingerprint(root)))
    }

    /// What whoever runs the page should know of the certificate.
    pub(in crate::web) fn doubts(&self, name: &str) -> Vec<Phrase> {
        let now = self.now();
        let (own, file) = (if self.own { "yes" } else { "no" }, self.key.display().to_string());
        let mut doubts = Vec::new();
        if !now.names(name) {
            doubts.push(phrase!("page-tls-other-name", name = name, own = own, file = &file));
        }
        match now.days_left(SystemTime::now()) {
            None => doubts.push(phrase!("page-tls-over", own = own, file = file)),
            Some(days) if days < SOON_DAYS => {
                doubts.push(phrase!("page-tls-ends", days = days, own = own, file = file))
            }
            Some(_) => {}
        }
        doubts
    }

    /// Looks at the files for ever.
    pub(in crate::web) async fn watch(self: Arc<Self>) {
        loop {
            tokio::time::sleep(EVERY).await;
            let keeper = Arc::clone(&self);
            // A look that fails is followed by the next one.
            let _ = tokio::task::spawn_blocking(move || keeper.look()).await;
        }
    }

    /// Takes up what is new. Certificate and key are often written one after
    /// the other: what can't be used is named only at the second look.
    fn look(&self) {
        let now = stamp(&self.certificate, &self.key);
        let mut looked = self.looked.lock().unwrap_or_else(PoisonError::into_inner);
        if looked.taken == now {
            looked.failed = None;
            return;
        }
        match Identity::read(&self.certificate, &self.key) {
            Ok(identity) => {
                (self.note)(&phrase!("page-tls-changed", print = &identity.fingerprint));
                *self.in_use.write().unwrap_or_else(PoisonError::into_inner) = identity;
                *looked = Looked { taken: now, failed: None };
            }
            Err(e) => {
                let again = looked.failed.as_ref().filter(|(stamp, _)| *stamp == now).map(|(_, told)| *told);
                if again == Some(false) {
                    (self.note)(&phrase!("page-tls-kept", why = e.phrase()));
                }
                looked.failed = Some((now, again.is_some()));
            }
        }
    }
}

impl ResolvesServerCert for Keeper {
    fn resolve(&self, _: ClientHello<'_>) -> Option<Arc<CertifiedKey>> {
        Some(self.now().key)
    }
}

fn stamp(certificate: &Path, key: &Path) -> Stamp {
    [certificate, key].map(|file| std::fs::read(file).ok().map(|bytes| sha256(&bytes)))
}

/// This machine's name, where the system says it.
fn host_name() -> Option<String> {
    let kept = std::fs::read_to_string("/proc/sys/kernel/hostname").ok();
    let name = kept.or_else(|| std::env::var("COMPUTERNAME").ok()).or_else(|| std::env::var("HOSTNAME").ok())?;
    let name = name.trim().to_ascii_lowercase();
    (!name.is_empty()).then_some(name)
}
