//! Whether a token's certificate can be trusted: a chain to an authority that
//! the reader names, valid at the time of the token and meant for timestamps.

use rustls_pki_types::pem::PemObject;
use rustls_pki_types::{CertificateDer, UnixTime};
use webpki::{EndEntityCert, KeyUsage, anchor_from_trusted_cert};

use super::certificate::encoded;
use super::token::Token;
use crate::words::{Language, Phrase, phrase};

/// `id-kp-timeStamping` (RFC 3161, 2.3), as the bytes of the identifier.
const TIME_STAMPING: &[u8] = &[0x2b, 6, 1, 5, 5, 7, 3, 8];

/// Root certificates of timestamp authorities that the reader trusts.
#[derive(Debug, Clone)]
pub struct Authorities {
    roots: Vec<CertificateDer<'static>>,
}

/// Why a file of authorities cannot be used.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub struct AuthoritiesError {
    file: String,
    why: Phrase,
}

impl AuthoritiesError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        phrase!("evidence-authorities", file = &self.file, why = self.why.clone())
    }
}

impl Authorities {
    /// Reads certificates in PEM; `file` is its name for messages.
    ///
    /// # Errors
    /// There is none, or one cannot be read.
    pub fn read(pem: &[u8], file: &str) -> Result<Self, AuthoritiesError> {
        let error = |why: Phrase| AuthoritiesError { file: file.to_owned(), why };
        let roots = CertificateDer::pem_slice_iter(pem).collect::<Result<Vec<_>, _>>();
        let roots = roots.map_err(|e| error(phrase!("evidence-authorities-no-pem", why = format!("{e:?}"))))?;
        if roots.is_empty() {
            return Err(error(phrase!("evidence-authorities-empty")));
        }
        for root in &roots {
            let bad = |e: webpki::Error| error(phrase!("evidence-authorities-bad", why = e.to_string()));
            anchor_from_trusted_cert(root).map_err(bad)?;
        }
        Ok(Authorities { roots })
    }

    /// Whether the token's certificate leads to one of these roots.
    ///
    /// # Errors
    /// Why not.
    pub fn vouch_for(&self, token: &Token) -> Result<(), Phrase> {
        let words = |e: webpki::Error| phrase!("evidence-authority-elsewhere", why = e.to_string());
        let signer = encoded(&token.signer)?;
        let between = token.certificates.iter().map(encoded).collect::<Result<Vec<_>, _>>()?;
        let signer = EndEntityCert::try_from(&signer).map_err(words)?;
        let anchors: Vec<_> = self.roots.iter().filter_map(|root| anchor_from_trusted_cert(root).ok()).collect();
        let seconds = u64::try_from(token.time.unix_timestamp()).map_err(|_| phrase!("evidence-authority-early"))?;
        let time = UnixTime::since_unix_epoch(std::time::Duration::from_secs(seconds));
        let usage = KeyUsage::required(TIME_STAMPING);
        signer
            .verify_for_usage(webpki::ALL_VERIFICATION_ALGS, &anchors, &between, time, usage, None, None)
            .map(|_| ())
            .map_err(words)
    }
}
