//! What a PDF signature holds: signed data of CMS without the content (RFC
//! 5652), with the attributes of a CAdES baseline signature (ETSI EN 319 122-1)
//! that PAdES allows: the time stands in the PDF, not here (EN 319 142-1, 6.3).

use cms::cert::x509::attr::{Attribute, Attributes};
use cms::cert::x509::spki::AlgorithmIdentifierOwned;
use cms::cert::{CertificateChoices, IssuerAndSerialNumber};
use cms::content_info::{CmsVersion, ContentInfo};
use cms::signed_data::{
    CertificateSet, EncapsulatedContentInfo, SignedData, SignerIdentifier, SignerInfo, SignerInfos,
};
use der::asn1::{Any, Null, ObjectIdentifier, OctetString, SetOfVec};
use der::oid::db::rfc5911;
use der::{Decode, Encode, Reader, Sequence, SliceReader};

use super::super::signed_data::{SIGNING_CERTIFICATE_V2, digest};
use super::error::{PadesError, Problem};
use super::identity::{Identity, Method};

/// Timestamps of one signature, at most.
const MOST_TOKENS: usize = 16;
/// `id-aa-timeStampToken` (RFC 3161, appendix A).
const TIME_STAMP_TOKEN: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.9.16.2.14");

/// RFC 5035; the digest is of SHA-256, which is left out as the default.
#[derive(Sequence)]
struct EssCertIdV2 {
    cert_hash: OctetString,
}

#[derive(Sequence)]
struct SigningCertificateV2 {
    certs: Vec<EssCertIdV2>,
}

/// The signature over some bytes, DER.
pub(super) fn signed_data(identity: &Identity, content: &[u8]) -> Result<Vec<u8>, PadesError> {
    let method = identity.method;
    let signer = &identity.certificates[0];
    let digest_alg = AlgorithmIdentifierOwned { oid: method.digest(), parameters: None };
    let by = |oid, bytes: &[u8]| digest(oid, bytes).ok_or(PadesError::Pdf(Problem::KeyKind));
    let cert_hash = OctetString::new(by(der::oid::db::rfc5912::ID_SHA_256, &signer.to_der()?)?)?;
    let signed_attrs: Attributes = SetOfVec::try_from(vec![
        attribute(rfc5911::ID_CONTENT_TYPE, Any::encode_from(&rfc5911::ID_DATA)?)?,
        attribute(rfc5911::ID_MESSAGE_DIGEST, Any::encode_from(&OctetString::new(by(method.digest(), content)?)?)?)?,
        attribute(
            SIGNING_CERTIFICATE_V2,
            Any::encode_from(&SigningCertificateV2 { certs: vec![EssCertIdV2 { cert_hash }] })?,
        )?,
    ])?;
    // Signed as a SET, whatever tag it has inside (RFC 5652, 5.4).
    let signature = identity.sign(&signed_attrs.to_der()?)?;
    // RFC 3279: RSA has NULL for parameters, ECDSA none.
    let parameters = (method == Method::Rsa).then(|| Any::from(Null));
    let info = SignerInfo {
        version: CmsVersion::V1,
        sid: SignerIdentifier::IssuerAndSerialNumber(IssuerAndSerialNumber {
            issuer: signer.tbs_certificate.issuer.clone(),
            serial_number: signer.tbs_certificate.serial_number.clone(),
        }),
        digest_alg: digest_alg.clone(),
        signed_attrs: Some(signed_attrs),
        signature_algorithm: AlgorithmIdentifierOwned { oid: method.signature(), parameters },
        signature: OctetString::new(signature)?,
        unsigned_attrs: None,
    };
    let certificates = identity.certificates.iter().cloned().map(CertificateChoices::Certificate).collect::<Vec<_>>();
    encoded(&SignedData {
        version: CmsVersion::V1,
        digest_algorithms: SetOfVec::try_from(vec![digest_alg])?,
        encap_content_info: EncapsulatedContentInfo { econtent_type: rfc5911::ID_DATA, econtent: None },
        certificates: Some(CertificateSet(SetOfVec::try_from(certificates)?)),
        crls: None,
        signer_infos: SignerInfos(SetOfVec::try_from(vec![info])?),
    })
}

fn attribute(oid: ObjectIdentifier, value: Any) -> Result<Attribute, der::Error> {
    Ok(Attribute { oid, values: SetOfVec::try_from(vec![value])? })
}

fn encoded(data: &SignedData) -> Result<Vec<u8>, PadesError> {
    Ok(ContentInfo { content_type: rfc5911::ID_SIGNED_DATA, content: Any::encode_from(data)? }.to_der()?)
}

/// Reads a signature; behind it may stand zeros that fill its place in a PDF.
pub(super) fn read(padded: &[u8]) -> Result<SignedData, PadesError> {
    let mut reader = SliceReader::new(padded)?;
    let content = ContentInfo::decode(&mut reader)?;
    // Nobody signs what lies behind: nothing may be hidden there.
    let behind = reader.read_slice(reader.remaining_len())?;
    if behind.iter().any(|&byte| byte != 0) {
        return Err(PadesError::Pdf(Problem::NoSignature));
    }
    if content.content_type != rfc5911::ID_SIGNED_DATA {
        return Err(PadesError::Pdf(Problem::NoSignature));
    }
    Ok(content.content.decode_as()?)
}

/// The only signer: PAdES and PDF/A allow one.
pub(super) fn signer(data: &SignedData) -> Result<&SignerInfo, PadesError> {
    match data.signer_infos.0.as_slice() {
        [one] => Ok(one),
        _ => Err(PadesError::Pdf(Problem::NoSignature)),
    }
}

/// The timestamps of the signature's value, DER.
pub(super) fn tokens(signer: &SignerInfo) -> Result<Vec<Vec<u8>>, PadesError> {
    let attributes = signer.unsigned_attrs.iter().flat_map(|a| a.iter());
    let tokens = attributes.filter(|a| a.oid == TIME_STAMP_TOKEN).flat_map(|a| a.values.iter());
    let tokens = tokens.take(MOST_TOKENS + 1).map(Encode::to_der).collect::<Result<Vec<_>, _>>()?;
    if tokens.len() > MOST_TOKENS { Err(PadesError::Pdf(Problem::NoSignature)) } else { Ok(tokens) }
}

/// The same signature with a timestamp of its value put in.
pub(super) fn with_token(mut data: SignedData, token: Any) -> Result<Vec<u8>, PadesError> {
    let mut signer = signer(&data)?.clone();
    let mut all: Vec<Attribute> = signer.unsigned_attrs.iter().flat_map(|a| a.iter()).cloned().collect();
    all.push(attribute(TIME_STAMP_TOKEN, token)?);
    signer.unsigned_attrs = Some(SetOfVec::try_from(all)?);
    data.signer_infos = SignerInfos(SetOfVec::try_from(vec![signer])?);
    encoded(&data)
}
