//! Whether a token's certificate can be trusted: a chain to an authority that
//! the reader names, valid at the time of the token and meant for timestamps.

use cms::cert::x509::Certificate;
use der::Encode;
use der::asn1::ObjectIdentifier;
use der::oid::db::rfc5912;
use rustls_pki_types::pem::PemObject;
use rustls_pki_types::{CertificateDer, SignatureVerificationAlgorithm, UnixTime};
use webpki::ring as by;
use webpki::{EndEntityCert, KeyUsage, anchor_from_trusted_cert};

use super::token::Token;

/// `id-kp-timeStamping` (RFC 3161, 2.3), as the bytes of the identifier.
const TIME_STAMPING: &[u8] = &[0x2b, 6, 1, 5, 5, 7, 3, 8];

/// Root certificates of timestamp authorities that the reader trusts.
#[derive(Debug, Clone)]
pub struct Authorities {
    roots: Vec<CertificateDer<'static>>,
}

/// Why a file of authorities cannot be used.
#[derive(Debug, thiserror::Error)]
#[error("{file} {why}: give the authority's root certificate in PEM")]
pub struct AuthoritiesError {
    file: String,
    why: String,
}

impl Authorities {
    /// Reads certificates in PEM; `file` is its name for messages.
    ///
    /// # Errors
    /// There is none, or one cannot be read.
    pub fn read(pem: &[u8], file: &str) -> Result<Self, AuthoritiesError> {
        let error = |why: String| AuthoritiesError { file: file.to_owned(), why };
        let roots = CertificateDer::pem_slice_iter(pem).collect::<Result<Vec<_>, _>>();
        let roots = roots.map_err(|e| error(format!("is no PEM file ({e:?})")))?;
        if roots.is_empty() {
            return Err(error("holds no certificate".to_owned()));
        }
        for root in &roots {
            anchor_from_trusted_cert(root).map_err(|e| error(format!("holds a bad certificate ({e})")))?;
        }
        Ok(Authorities { roots })
    }

    /// Whether the token's certificate leads to one of these roots.
    ///
    /// # Errors
    /// Why not, in words.
    pub fn vouch_for(&self, token: &Token) -> Result<(), String> {
        let words = |e: webpki::Error| format!("its certificate leads to none of the given authorities ({e})");
        let signer = encoded(&token.signer)?;
        let between = token.certificates.iter().map(encoded).collect::<Result<Vec<_>, _>>()?;
        let signer = EndEntityCert::try_from(&signer).map_err(words)?;
        let anchors: Vec<_> = self.roots.iter().filter_map(|root| anchor_from_trusted_cert(root).ok()).collect();
        let seconds = u64::try_from(token.time.unix_timestamp()).map_err(|_| "its time is before 1970".to_owned())?;
        let time = UnixTime::since_unix_epoch(std::time::Duration::from_secs(seconds));
        let usage = KeyUsage::required(TIME_STAMPING);
        signer
            .verify_for_usage(webpki::ALL_VERIFICATION_ALGS, &anchors, &between, time, usage, None, None)
            .map(|_| ())
            .map_err(words)
    }
}

fn encoded(certificate: &Certificate) -> Result<CertificateDer<'static>, String> {
    certificate.to_der().map(CertificateDer::from).map_err(|e| format!("its certificate cannot be read ({e})"))
}

/// Whether a certificate's key signed some bytes; algorithms of signature and digest (RFC 5652, 5.3).
pub(super) fn signed_by(
    certificate: &Certificate,
    (signature_kind, digest): (ObjectIdentifier, ObjectIdentifier),
    signed: &[u8],
    signature: &[u8],
) -> Result<(), String> {
    let certificate = encoded(certificate)?;
    let key = EndEntityCert::try_from(&certificate).map_err(|e| format!("its certificate cannot be read: {e}"))?;
    let fitting: &[&dyn SignatureVerificationAlgorithm] = match (signature_kind, digest) {
        (rfc5912::SHA_256_WITH_RSA_ENCRYPTION, _) | (rfc5912::RSA_ENCRYPTION, rfc5912::ID_SHA_256) => {
            &[by::RSA_PKCS1_2048_8192_SHA256]
        }
        (rfc5912::SHA_384_WITH_RSA_ENCRYPTION, _) | (rfc5912::RSA_ENCRYPTION, rfc5912::ID_SHA_384) => {
            &[by::RSA_PKCS1_2048_8192_SHA384]
        }
        (rfc5912::SHA_512_WITH_RSA_ENCRYPTION, _) | (rfc5912::RSA_ENCRYPTION, rfc5912::ID_SHA_512) => {
            &[by::RSA_PKCS1_2048_8192_SHA512]
        }
        (rfc5912::ECDSA_WITH_SHA_256, _) => &[by::ECDSA_P256_SHA256, by::ECDSA_P384_SHA256],
        (rfc5912::ECDSA_WITH_SHA_384, _) => &[by::ECDSA_P256_SHA384, by::ECDSA_P384_SHA384],
        _ => return Err(format!("by a method that this program does not know, {signature_kind}")),
    };
    if fitting.iter().any(|how| key.verify_signature(*how, signed, signature).is_ok()) {
        Ok(())
    } else {
        Err("its signature is not by its certificate's key".to_owned())
    }
}
