//! A certificate of the workshop's own, where nobody has given it one: it
//! vouches for itself, so that whoever reads must have got it from the workshop.

use der::Decode;
use der::EncodePem;
use der::pem::{LineEnding, encode_string};
use rcgen::{CertificateParams, DnType, IsCa, KeyPair, KeyUsagePurpose};
use sha2::{Digest, Sha256};
use time::{Duration, OffsetDateTime};

use super::error::{PadesError, Problem};
use crate::input::{hex, turns_writing};

/// RFC 5280, upper bound of a common name.
const LONGEST_NAME: usize = 64;
/// Most years: methods of today are trusted for some ten (common practice, no source).
const MOST_YEARS: u32 = 10;

/// What was made.
#[derive(Debug)]
pub struct OwnCertificate {
    /// Private key and certificate, PEM: nobody else may read it.
    pub private_pem: String,
    /// The certificate alone, PEM: for whoever reads reports.
    pub public_pem: String,
    /// SHA-256 of the certificate.
    pub fingerprint: String,
    /// When it ends.
    pub ends: OffsetDateTime,
}

/// Makes a key (ECDSA P-256) and a certificate that vouches for itself.
///
/// # Errors
/// The name or the years are of no use, or no random numbers can be had.
pub fn own_certificate(name: &str, years: u32, now: OffsetDateTime) -> Result<OwnCertificate, PadesError> {
    let name = name.trim();
    if name.is_empty()
        || name.chars().count() > LONGEST_NAME
        || name.chars().any(|c| c.is_control() || turns_writing(c))
    {
        return Err(PadesError::Pdf(Problem::Name));
    }
    if years == 0 || years > MOST_YEARS {
        return Err(PadesError::Pdf(Problem::Years));
    }
    let failed = |e: rcgen::Error| PadesError::Sign(e.to_string());
    let mut params = CertificateParams::default();
    params.distinguished_name = rcgen::DistinguishedName::new();
    params.distinguished_name.push(DnType::CommonName, name);
    // Clocks differ: a report signed in the same minute must not be too early elsewhere.
    params.not_before = now - Duration::hours(1);
    params.not_after = now + Duration::days(365) * years;
    params.is_ca = IsCa::ExplicitNoCa;
    params.key_usages = vec![KeyUsagePurpose::DigitalSignature, KeyUsagePurpose::ContentCommitment];
    let key = KeyPair::generate().map_err(failed)?;
    let made = params.self_signed(&key).map_err(failed)?;
    let certificate = cms::cert::x509::Certificate::from_der(made.der())?;
    let public_pem = certificate.to_pem(LineEnding::LF)?;
    let secret = encode_string("PRIVATE KEY", LineEnding::LF, key.serialized_der());
    let secret = secret.map_err(|e| PadesError::Sign(e.to_string()))?;
    Ok(OwnCertificate {
        private_pem: secret + &public_pem,
        public_pem,
        fingerprint: hex(&Sha256::digest(made.der())),
        ends: params.not_after,
    })
}
