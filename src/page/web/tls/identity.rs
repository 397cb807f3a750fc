//! A certificate with its key, read from PEM files.

use std::path::Path;
use std::sync::Arc;
use std::time::{SystemTime, UNIX_EPOCH};

use rustls::client::verify_server_name;
use rustls::crypto::ring::default_provider;
use rustls::server::ParsedCertificate;
use rustls::sign::CertifiedKey;
use rustls_pki_types::pem::PemObject;
use rustls_pki_types::{CertificateDer, PrivateKeyDer, ServerName};
use sha2::{Digest, Sha256};
use x509_cert::der::Decode;

use super::Error;

/// What the page proves itself with.
#[derive(Debug, Clone)]
pub(in crate::web) struct Identity {
    pub(super) key: Arc<CertifiedKey>,
    /// Digest of the page's certificate, as browsers and `openssl` state it.
    pub(in crate::web) fingerprint: String,
    /// The last time it counts.
    pub(super) until: Option<SystemTime>,
}

impl Identity {
    /// Reads a certificate with those behind it, and its key; one file may hold both.
    pub(super) fn read(certificate: &Path, key: &Path) -> Result<Self, Error> {
        let chain = certificates(certificate)?;
        let held = PrivateKeyDer::from_pem_slice(&bytes(key)?)
            .map_err(|_| Error::Holds { file: key.to_path_buf(), what: "key" })?;
        let (fingerprint, until) = (fingerprint(&chain[0]), until(&chain[0]));
        let pair = CertifiedKey::from_der(chain, held, &default_provider()).map_err(|e| Error::Pair {
            certificate: certificate.to_path_buf(),
            key: key.to_path_buf(),
            problem: e.to_string(),
        })?;
        Ok(Identity { key: Arc::new(pair), fingerprint, until })
    }

    /// Whole days that it still counts; none where that is over or not stated.
    pub(super) fn days_left(&self, now: SystemTime) -> Option<u64> {
        Some(self.until?.duration_since(now).ok()?.as_secs() / 86_400)
    }
}

impl Identity {
    /// Whether a browser that was sent to this name or address takes the certificate for it.
    pub(super) fn names(&self, name: &str) -> bool {
        let (Ok(name), Some(end)) = (ServerName::try_from(name.to_owned()), self.key.cert.first()) else {
            return false;
        };
        ParsedCertificate::try_from(end).is_ok_and(|end| verify_server_name(&end, &name).is_ok())
    }

    /// The last certificate, which vouches for the others where it is a root.
    pub(super) fn root(&self) -> Option<&CertificateDer<'static>> {
        self.key.cert.last()
    }
}

fn bytes(file: &Path) -> Result<Vec<u8>, Error> {
    std::fs::read(file).map_err(|source| Error::File { writing: false, file: file.to_path_buf(), source })
}

/// The certificates of a PEM file, at least one.
pub(super) fn certificates(file: &Path) -> Result<Vec<CertificateDer<'static>>, Error> {
    let all: Result<Vec<_>, _> = CertificateDer::pem_slice_iter(&bytes(file)?).collect();
    all.ok()
        .filter(|chain| !chain.is_empty())
        .ok_or_else(|| Error::Holds { file: file.to_path_buf(), what: "certificate" })
}

/// SHA-256 of a certificate, pairs of digits between digits.
pub(super) fn fingerprint(certificate: &CertificateDer) -> String {
    Sha256::digest(certificate).iter().map(|b| format!("{b:02X}")).collect::<Vec<_>>().join(":")
}

/// The digits of a fingerprint alone, for an address.
pub(in crate::web) fn digits(fingerprint: &str) -> String {
    fingerprint.replace(':', "").to_ascii_lowercase()
}

fn until(certificate: &CertificateDer) -> Option<SystemTime> {
    let read = x509_cert::Certificate::from_der(certificate).ok()?;
    Some(UNIX_EPOCH + read.tbs_certificate.validity.not_after.to_unix_duration())
}
