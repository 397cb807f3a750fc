//! A certificate and what its key signed.

use cms::cert::x509::Certificate;
use der::Encode;
use der::asn1::ObjectIdentifier;
use der::oid::db::rfc5912;
use rustls_pki_types::{CertificateDer, SignatureVerificationAlgorithm};
use webpki::EndEntityCert;
use webpki::ring as by;

use crate::words::{Phrase, phrase};

fn unreadable(why: String) -> Phrase {
    phrase!("evidence-certificate-unreadable", why = why)
}

pub(super) fn encoded(certificate: &Certificate) -> Result<CertificateDer<'static>, Phrase> {
    certificate.to_der().map(CertificateDer::from).map_err(|e| unreadable(e.to_string()))
}

/// Whether a certificate's key signed some bytes; algorithms of signature and digest (RFC 5652, 5.3).
pub(super) fn signed_by(
    certificate: &Certificate,
    (signature_kind, digest): (ObjectIdentifier, ObjectIdentifier),
    signed: &[u8],
    signature: &[u8],
) -> Result<(), Phrase> {
    let certificate = encoded(certificate)?;
    let key = EndEntityCert::try_from(&certificate).map_err(|e| unreadable(e.to_string()))?;
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
        _ => return Err(phrase!("evidence-token-method", method = signature_kind.to_string())),
    };
    if fitting.iter().any(|how| key.verify_signature(*how, signed, signature).is_ok()) {
        Ok(())
    } else {
        Err(phrase!("evidence-token-key"))
    }
}
