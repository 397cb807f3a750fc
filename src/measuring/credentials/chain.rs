//! Who may vouch for a signer: the certificates between a camera's and the
//! anchor (RFC 5280, 4.2.1.3, 4.2.1.9 and 6.1.4).
//!
//! The `c2pa` crate checks that each certificate signed the one before it; that
//! only authorities may do so is checked here. Else whoever has any certificate
//! below an anchor could make others in its name.

use std::time::Duration;

use x509_cert::Certificate;
use x509_cert::der::DecodePem;
use x509_cert::ext::pkix::{BasicConstraints, KeyUsage};

const BEGIN: &str = "-----BEGIN CERTIFICATE-----";
const END: &str = "-----END CERTIFICATE-----";

/// The certificates of a PEM text, whatever stands between them; `None` where
/// there is none, or one that cannot be read.
pub(super) fn certificates(pem: &str) -> Option<Vec<Certificate>> {
    let mut all = Vec::new();
    let mut rest = pem;
    while let Some(begin) = rest.find(BEGIN) {
        let end = begin + rest[begin..].find(END)? + END.len();
        all.push(Certificate::from_pem(&rest.as_bytes()[begin..end]).ok()?);
        rest = &rest[end..];
    }
    (!all.is_empty()).then_some(all)
}

/// Whether everybody behind the signer in this chain is an authority that may
/// vouch for as many as it does, at that time (since 1970).
pub(super) fn is_of_authorities(chain_pem: &str, at: Duration) -> bool {
    let Some(chain) = certificates(chain_pem) else { return false };
    chain.iter().enumerate().skip(1).all(|(place, certificate)| is_authority(certificate, place - 1, at))
}

/// `below`: authorities between this one and the signer.
fn is_authority(certificate: &Certificate, below: usize, at: Duration) -> bool {
    let body = &certificate.tbs_certificate;
    let constraints = body.get::<BasicConstraints>().ok().flatten();
    let may = constraints.is_some_and(|(_, c)| c.ca && c.path_len_constraint.is_none_or(|n| below <= usize::from(n)));
    // A key whose uses are not named may be used for everything.
    let may_sign = match body.get::<KeyUsage>() {
        Ok(usage) => usage.is_none_or(|(_, usage)| usage.key_cert_sign()),
        Err(_) => false,
    };
    let validity = &body.validity;
    may && may_sign && (validity.not_before.to_unix_duration()..=validity.not_after.to_unix_duration()).contains(&at)
}
