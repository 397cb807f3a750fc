//! Signed data (RFC 5652) as timestamps and PDF signatures hold it: who signed,
//! and whether the signed attributes are of the content and of the certificate.

use cms::cert::{CertificateChoices, IssuerAndSerialNumber, x509::Certificate};
use cms::signed_data::{SignedData, SignerIdentifier, SignerInfo};
use der::asn1::{ObjectIdentifier, OctetString};
use der::oid::db::{rfc5911, rfc5912};
use der::{Any, Decode, Encode, Reader, SliceReader, Tag};
use sha2::{Digest, Sha256, Sha384, Sha512};
use time::OffsetDateTime;

use super::timestamp::TokenError;
use crate::input::printable;
use crate::words::phrase;

/// `id-aa-signingCertificateV2` (RFC 5035) and its older form with SHA-1 (RFC 2634).
pub(super) const SIGNING_CERTIFICATE_V2: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.9.16.2.47");
const SIGNING_CERTIFICATE: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.9.16.2.12");

/// All certificates that come along.
pub(super) fn certificates(data: &SignedData) -> Vec<Certificate> {
    let all = data.certificates.iter().flat_map(|set| set.0.iter());
    all.filter_map(|c| if let CertificateChoices::Certificate(c) = c { Some(c.clone()) } else { None }).collect()
}

/// Whom a certificate names (RFC 4514), as it can be shown: anybody writes his own certificate, and a name in it must
/// not turn or break the line that says who signed.
pub(super) fn name(certificate: &Certificate) -> String {
    printable(certificate.tbs_certificate.subject.to_string())
}

/// From when and until when a certificate counts.
pub(super) fn counts(certificate: &Certificate) -> [OffsetDateTime; 2] {
    let validity = &certificate.tbs_certificate.validity;
    [validity.not_before, validity.not_after].map(|time| {
        let seconds = i64::try_from(time.to_unix_duration().as_secs()).ok();
        let moment = seconds.and_then(|s| OffsetDateTime::from_unix_timestamp(s).ok());
        moment.unwrap_or(OffsetDateTime::UNIX_EPOCH)
    })
}

/// Whether a certificate is the one that a signer names.
pub(super) fn is_of(certificate: &Certificate, signer: &SignerIdentifier) -> bool {
    let tbs = &certificate.tbs_certificate;
    match signer {
        SignerIdentifier::IssuerAndSerialNumber(IssuerAndSerialNumber { issuer, serial_number }) => {
            *issuer == tbs.issuer && *serial_number == tbs.serial_number
        }
        SignerIdentifier::SubjectKeyIdentifier(wanted) => {
            let extensions = tbs.extensions.iter().flatten();
            let mut own = extensions.filter(|e| e.extn_id == rfc5912::ID_CE_SUBJECT_KEY_IDENTIFIER);
            own.any(|e| wanted.0.to_der().is_ok_and(|der| der == e.extn_value.as_bytes()))
        }
    }
}

/// The bytes that are signed (RFC 5652, 5.4), after what they say was compared
/// with the content, its kind and the certificate.
pub(super) fn attributes(
    by: &SignerInfo,
    (content_kind, content): (ObjectIdentifier, &[u8]),
    signer: &Certificate,
) -> Result<Vec<u8>, TokenError> {
    let attributes = by.signed_attrs.as_ref().ok_or(TokenError::Content("no-attributes"))?;
    let one = |oid: ObjectIdentifier| {
        let mut values = attributes.iter().filter(|a| a.oid == oid).flat_map(|a| a.values.iter());
        values.next().filter(|_| values.next().is_none())
    };
    let kind = one(rfc5911::ID_CONTENT_TYPE).ok_or(TokenError::Content("no-kind"))?;
    if kind.decode_as::<ObjectIdentifier>()? != content_kind {
        return Err(TokenError::Content("other-kind"));
    }
    let listed = one(rfc5911::ID_MESSAGE_DIGEST).ok_or(TokenError::Content("no-digest"))?;
    let own = digest(by.digest_alg.oid, content).ok_or(TokenError::Content("digest"))?;
    if listed.decode_as::<OctetString>()?.as_bytes() != own {
        return Err(TokenError::Signature(phrase!("evidence-token-altered")));
    }
    let der = signer.to_der()?;
    let names_signer = match (one(SIGNING_CERTIFICATE_V2), one(SIGNING_CERTIFICATE)) {
        (Some(v2), _) => {
            let (oid, listed) = certificate_id(v2)?;
            let own = digest(oid, &der).ok_or(TokenError::Content("digest"))?;
            own == listed
        }
        // The older form tells the certificate by SHA-1, which binds nothing more than its name does:
        // the certificate is the one that issuer and serial number name, and must verify the signature.
        (None, Some(_)) => true,
        (None, None) => false,
    };
    if !names_signer {
        return Err(TokenError::Content("unnamed-signer"));
    }
    Ok(attributes.to_der()?)
}

/// Algorithm (left out: SHA-256) and digest of the first certificate that a
/// `SigningCertificateV2` names.
fn certificate_id(attribute: &Any) -> Result<(ObjectIdentifier, Vec<u8>), der::Error> {
    let whole = attribute.to_der()?;
    let mut reader = SliceReader::new(&whole)?;
    reader.sequence(|signing| {
        let ids = Any::decode(signing)?;
        while !signing.is_finished() {
            Any::decode(signing)?;
        }
        let mut list = SliceReader::new(ids.value())?;
        let id = Any::decode(&mut list)?;
        let mut parts = SliceReader::new(id.value())?;
        let mut oid = rfc5912::ID_SHA_256;
        if parts.peek_tag()? == Tag::Sequence {
            let algorithm = Any::decode(&mut parts)?;
            oid = ObjectIdentifier::decode(&mut SliceReader::new(algorithm.value())?)?;
        }
        Ok((oid, OctetString::decode(&mut parts)?.as_bytes().to_vec()))
    })
}

/// A digest by a method that is trusted.
pub(super) fn digest(oid: ObjectIdentifier, bytes: &[u8]) -> Option<Vec<u8>> {
    match oid {
        rfc5912::ID_SHA_256 => Some(Sha256::digest(bytes).to_vec()),
        rfc5912::ID_SHA_384 => Some(Sha384::digest(bytes).to_vec()),
        rfc5912::ID_SHA_512 => Some(Sha512::digest(bytes).to_vec()),
        _ => None,
    }
}
