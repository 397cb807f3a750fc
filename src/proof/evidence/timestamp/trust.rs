//! Whether a token's certificate can be trusted: a chain to an authority that
//! the reader names, valid at the time of the token and meant for timestamps.

use cms::cert::x509::ext::pkix::ExtendedKeyUsage;
use rustls_pki_types::pem::PemObject;
use rustls_pki_types::{CertificateDer, UnixTime};
use webpki::{EndEntityCert, KeyUsage, anchor_from_trusted_cert};

use super::super::signed_data::counts;
use super::certificate::encoded;
use super::token::Token;
use crate::words::{Language, Phrase, phrase};

/// `id-kp-timeStamping` (RFC 3161, 2.3), as the bytes of the identifier.
const TIME_STAMPING: &[u8] = &[0x2b, 6, 1, 5, 5, 7, 3, 8];

/// Why nobody vouches for a token.
#[derive(Debug)]
pub enum Distrust {
    /// It is not by an authority that the reader named: nothing is known of it.
    Unknown(Phrase),
    /// Whoever issued it, its certificate cannot have made it.
    Wrong(Phrase),
}

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

    /// Whether the token's certificate is one for timestamps and counted when it was made, and leads to one of these roots.
    ///
    /// # Errors
    /// Why not.
    pub fn vouch_for(&self, token: &Token) -> Result<(), Distrust> {
        let elsewhere = |_: webpki::Error| Distrust::Unknown(phrase!("evidence-authority-elsewhere"));
        may_stamp(token).map_err(Distrust::Wrong)?;
        let signer = encoded(&token.signer).map_err(Distrust::Wrong)?;
        let between = token.certificates.iter().map(encoded).collect::<Result<Vec<_>, _>>().map_err(Distrust::Wrong)?;
        let signer = EndEntityCert::try_from(&signer).map_err(elsewhere)?;
        let anchors: Vec<_> = self.roots.iter().filter_map(|root| anchor_from_trusted_cert(root).ok()).collect();
        let seconds = u64::try_from(token.time.unix_timestamp())
            .map_err(|_| Distrust::Wrong(phrase!("evidence-authority-early")))?;
        let time = UnixTime::since_unix_epoch(std::time::Duration::from_secs(seconds));
        let usage = KeyUsage::required(TIME_STAMPING);
        signer
            .verify_for_usage(webpki::ALL_VERIFICATION_ALGS, &anchors, &between, time, usage, None, None)
            .map(|_| ())
            .map_err(elsewhere)
    }
}

/// What holds of the certificate by itself: timestamps are its only use, which nobody may pass over (RFC 3161, 2.3), and
/// its own time. Looked at before who issued it, which the reader may not know.
fn may_stamp(token: &Token) -> Result<(), Phrase> {
    let only = |uses: &ExtendedKeyUsage| uses.0.len() == 1 && uses.0[0].as_bytes() == TIME_STAMPING;
    let wrong = |problem: &'static str| Err(phrase!("evidence-authority-wrong", problem = problem));
    match token.signer.tbs_certificate.get::<ExtendedKeyUsage>() {
        Ok(Some((true, uses))) if only(&uses) => {}
        _ => return wrong("usage"),
    }
    let [begins, ends] = counts(&token.signer);
    match token.time {
        time if time < begins => wrong("early"),
        time if time > ends => wrong("late"),
        _ => Ok(()),
    }
}
