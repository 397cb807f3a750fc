//! Reading an authority's answer and what holds of it by itself.

use cms::cert::{CertificateChoices, IssuerAndSerialNumber, x509::Certificate};
use cms::content_info::ContentInfo;
use cms::signed_data::{SignedData, SignerIdentifier, SignerInfo};
use der::asn1::{BitString, Int, ObjectIdentifier, OctetString};
use der::oid::db::{rfc5911, rfc5912};
use der::{Any, Decode, Encode, Reader, Sequence, SliceReader, Tag, TagNumber, Tagged};
use sha2::{Digest, Sha256, Sha384, Sha512};
use time::format_description::well_known::Rfc3339;
use time::macros::format_description;
use time::{OffsetDateTime, PrimitiveDateTime};

use super::request::MessageImprint;
use crate::words::{Language, Phrase, phrase};

/// `id-ct-TSTInfo` (RFC 3161, 2.4.2).
const TST_INFO: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.9.16.1.4");
/// `id-aa-signingCertificateV2` (RFC 5035) and its older form with SHA-1 (RFC 2634).
const SIGNING_CERTIFICATE_V2: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.9.16.2.47");
const SIGNING_CERTIFICATE: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.9.16.2.12");

/// Why a token is none, or not one for these bytes.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum TokenError {
    /// Not a timestamp in DER.
    Form(#[from] der::Error),
    /// The authority said no.
    Refused(u8),
    /// Something that a token must have is missing or more than one.
    Content(&'static str),
    /// Made for something else.
    OtherBytes,
    /// The signature does not hold.
    Signature(Phrase),
}

impl TokenError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            TokenError::Form(e) => phrase!("evidence-token-form", why = e.to_string()),
            TokenError::Refused(status) => phrase!("evidence-token-refused", status = u32::from(*status)),
            TokenError::Content(problem) => phrase!("evidence-token", problem = *problem),
            TokenError::OtherBytes => phrase!("evidence-token-other"),
            TokenError::Signature(why) => phrase!("evidence-token-unsigned", why = why.clone()),
        }
    }
}

#[derive(Debug, Sequence)]
struct StatusInfo {
    status: u8,
    #[asn1(optional = "true")]
    words: Option<Vec<Any>>,
    #[asn1(optional = "true")]
    failure: Option<BitString>,
}

#[derive(Debug, Sequence)]
struct Response {
    status: StatusInfo,
    #[asn1(optional = "true")]
    token: Option<ContentInfo>,
}

/// A timestamp token, read.
#[derive(Debug, Clone)]
pub struct Token {
    /// The answer as a file: status "granted" and the token.
    answer: Vec<u8>,
    imprint: MessageImprint,
    /// When the authority says it was.
    pub time: OffsetDateTime,
    pub(super) certificates: Vec<Certificate>,
    pub(super) signer: Certificate,
    signed_attributes: Vec<u8>,
    signature: Vec<u8>,
    algorithms: (ObjectIdentifier, ObjectIdentifier),
}

impl Token {
    /// Reads an answer (`TimeStampResp`) or a bare token, DER.
    ///
    /// # Errors
    /// It is neither, or lacks what RFC 3161 asks for.
    pub fn read(bytes: &[u8]) -> Result<Token, TokenError> {
        let (content, answer) = match ContentInfo::from_der(bytes) {
            Ok(token) => (token, wrapped(bytes)?),
            Err(_) => {
                let response = Response::from_der(bytes)?;
                // 0 granted, 1 granted with changes (RFC 3161, 2.4.2).
                if response.status.status > 1 {
                    return Err(TokenError::Refused(response.status.status));
                }
                let token = response.token.ok_or(TokenError::Content("no-token"))?;
                (token, bytes.to_vec())
            }
        };
        if content.content_type != rfc5911::ID_SIGNED_DATA {
            return Err(TokenError::Content("no-signed-data"));
        }
        let data: SignedData = content.content.decode_as()?;
        if data.encap_content_info.econtent_type != TST_INFO {
            return Err(TokenError::Content("no-timestamp"));
        }
        let info = data.encap_content_info.econtent.as_ref().ok_or(TokenError::Content("no-time"))?;
        let info = info.decode_as::<OctetString>()?;
        let (imprint, time) = read_info(info.as_bytes())?;
        let [by] = data.signer_infos.0.as_slice() else {
            return Err(TokenError::Content("signers"));
        };
        let certificates: Vec<Certificate> = data
            .certificates
            .iter()
            .flat_map(|set| set.0.iter())
            .filter_map(|c| if let CertificateChoices::Certificate(c) = c { Some(c.clone()) } else { None })
            .collect();
        let signer =
            certificates.iter().find(|c| is_of(c, &by.sid)).ok_or(TokenError::Content("no-certificate"))?.clone();
        let signed_attributes = attributes(by, info.as_bytes(), &signer)?;
        Ok(Token {
            answer,
            imprint,
            time,
            certificates,
            signer,
            signed_attributes,
            signature: by.signature.as_bytes().to_vec(),
            algorithms: (by.signature_algorithm.oid, by.digest_alg.oid),
        })
    }

    /// The answer's bytes, as they are kept in a folder.
    pub fn answer(&self) -> &[u8] {
        &self.answer
    }

    /// Who stamped, as the certificate names it.
    pub fn authority(&self) -> String {
        self.signer.tbs_certificate.subject.to_string()
    }

    /// When the authority's certificate ends: until then a newer token must cover this one.
    pub fn ends(&self) -> OffsetDateTime {
        let end = self.signer.tbs_certificate.validity.not_after.to_unix_duration();
        i64::try_from(end.as_secs())
            .ok()
            .and_then(|s| OffsetDateTime::from_unix_timestamp(s).ok())
            .unwrap_or(OffsetDateTime::UNIX_EPOCH)
    }

    /// When, RFC 3339.
    pub fn when(&self) -> String {
        self.time.format(&Rfc3339).unwrap_or_else(|_| self.time.to_string())
    }

    /// Whether it is a true timestamp of some bytes by the key of the
    /// certificate that it carries. Whether that certificate can be trusted is
    /// for [`Authorities`](super::Authorities) to say.
    ///
    /// # Errors
    /// It is for other bytes, or its signature does not hold.
    pub fn check(&self, stamped: &[u8]) -> Result<(), TokenError> {
        let digest = digest(self.imprint.hash_algorithm.oid, stamped).ok_or(TokenError::Content("digest"))?;
        if digest != self.imprint.hashed_message.as_bytes() {
            return Err(TokenError::OtherBytes);
        }
        super::certificate::signed_by(&self.signer, self.algorithms, &self.signed_attributes, &self.signature)
            .map_err(TokenError::Signature)
    }
}

/// A bare token as a granted answer, so that every folder keeps the same kind of file.
fn wrapped(token: &[u8]) -> Result<Vec<u8>, der::Error> {
    let token = ContentInfo::from_der(token)?;
    let status = StatusInfo { status: 0, words: None, failure: None };
    Response { status, token: Some(token) }.to_der()
}

/// `TSTInfo` by hand: a `GeneralizedTime` with fractions of a second is allowed
/// here (RFC 3161, 2.4.2) and refused by the general reader of DER.
fn read_info(bytes: &[u8]) -> Result<(MessageImprint, OffsetDateTime), TokenError> {
    let mut reader = SliceReader::new(bytes)?;
    let (version, imprint, time, rest) = reader.sequence(|r| {
        let version = u8::decode(r)?;
        let _policy = ObjectIdentifier::decode(r)?;
        let imprint = MessageImprint::decode(r)?;
        let _serial = Int::decode(r)?;
        let time = Any::decode(r)?;
        let mut rest = Vec::new();
        while !r.is_finished() {
            rest.push(Any::decode(r)?);
        }
        Ok((version, imprint, time, rest))
    })?;
    reader.finish(())?;
    if version != 1 || time.tag() != Tag::GeneralizedTime {
        return Err(TokenError::Content("version"));
    }
    let extensions = Tag::ContextSpecific { constructed: true, number: TagNumber::N1 };
    if rest.iter().any(|any| any.tag() == extensions) {
        return Err(TokenError::Content("extensions"));
    }
    Ok((imprint, time_of(time.value()).ok_or(TokenError::Content("bad-time"))?))
}

fn time_of(text: &[u8]) -> Option<OffsetDateTime> {
    let text = std::str::from_utf8(text).ok()?.strip_suffix('Z')?;
    let whole = format_description!("[year][month][day][hour][minute][second]");
    let parts = format_description!("[year][month][day][hour][minute][second].[subsecond]");
    let time = PrimitiveDateTime::parse(text, &whole).or_else(|_| PrimitiveDateTime::parse(text, &parts));
    Some(time.ok()?.assume_utc())
}

fn is_of(certificate: &Certificate, signer: &SignerIdentifier) -> bool {
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
/// with the content and the certificate.
fn attributes(by: &SignerInfo, content: &[u8], signer: &Certificate) -> Result<Vec<u8>, TokenError> {
    let attributes = by.signed_attrs.as_ref().ok_or(TokenError::Content("no-attributes"))?;
    let one = |oid: ObjectIdentifier| {
        let mut values = attributes.iter().filter(|a| a.oid == oid).flat_map(|a| a.values.iter());
        values.next().filter(|_| values.next().is_none())
    };
    let kind = one(rfc5911::ID_CONTENT_TYPE).ok_or(TokenError::Content("no-kind"))?;
    if kind.decode_as::<ObjectIdentifier>()? != TST_INFO {
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

fn digest(oid: ObjectIdentifier, bytes: &[u8]) -> Option<Vec<u8>> {
    match oid {
        rfc5912::ID_SHA_256 => Some(Sha256::digest(bytes).to_vec()),
        rfc5912::ID_SHA_384 => Some(Sha384::digest(bytes).to_vec()),
        rfc5912::ID_SHA_512 => Some(Sha512::digest(bytes).to_vec()),
        _ => None,
    }
}
