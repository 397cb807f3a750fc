//! Whose signatures count: trust anchors from a file.

use std::path::Path;

use super::BUILT_IN;
use crate::photo;
use crate::words::{Language, Phrase, phrase};

/// Root and intermediate certificates (PEM) that vouch for signers.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Anchors {
    #[cfg_attr(not(feature = "credentials"), allow(dead_code, reason = "only read by what validates"))]
    pub(super) pem: String,
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
}

/// Why a file of trust anchors cannot be used.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum AnchorsError {
    /// The program was built without the feature.
    NotBuiltIn,
    /// It cannot be read.
    Read(String, String),
    /// It holds no certificate, or one that is damaged.
    NoCertificate(String),
}

impl AnchorsError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            AnchorsError::NotBuiltIn => phrase!("doors-anchors-not-built-in"),
            AnchorsError::Read(file, why) => phrase!("doors-anchors-unreadable", file = file, why = why),
            AnchorsError::NoCertificate(file) => phrase!("doors-anchors-no-certificate", file = file),
        }
    }
}

/// Lists of anchors are some ten kilobytes.
const MAX_BYTES: u64 = 16 << 20;

impl Anchors {
    /// Reads a file of certificates.
    ///
    /// # Errors
    /// The program was built without the feature; the file cannot be read, or a
    /// certificate in it cannot.
    pub fn read(path: &Path) -> Result<Self, AnchorsError> {
        let file = path.display().to_string();
        if !BUILT_IN {
            return Err(AnchorsError::NotBuiltIn);
        }
        let unreadable = |e: std::io::Error| AnchorsError::Read(file.clone(), e.to_string());
        let meta = path.metadata().map_err(unreadable)?;
        if !meta.is_file() || meta.len() > MAX_BYTES {
            return Err(AnchorsError::NoCertificate(file));
        }
        let bytes = std::fs::read(path).map_err(unreadable)?;
        let pem = String::from_utf8(bytes).map_err(|_| AnchorsError::NoCertificate(file.clone()))?;
        Anchors::from_pem(pem).ok_or(AnchorsError::NoCertificate(file))
    }

    /// Certificates as PEM; `None` where there is none, or one that is damaged.
    pub fn from_pem(pem: String) -> Option<Self> {
        if !holds_certificates(&pem) {
            return None;
        }
        let sha256 = photo::sha256(pem.as_bytes());
        Some(Anchors { pem, sha256 })
    }
}

#[cfg(feature = "credentials")]
fn holds_certificates(pem: &str) -> bool {
    super::chain::certificates(pem).is_some()
}

#[cfg(not(feature = "credentials"))]
fn holds_certificates(pem: &str) -> bool {
    pem.contains("-----BEGIN CERTIFICATE-----")
}
