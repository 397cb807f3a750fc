//! Reading an authority's answer and what holds of it by itself.

use cms::cert::x509::Certificate;
use cms::content_info::ContentInfo;
use cms::signed_data::SignedData;
use der::asn1::{BitString, Int, ObjectIdentifier, OctetString};
use der::oid::db::rfc5911;
use der::{Any, Decode, Encode, Reader, Sequence, SliceReader, Tag, TagNumber, Tagged};
use time::format_description::well_known::Rfc3339;
use time::macros::format_description;
use time::{OffsetDateTime, PrimitiveDateTime};

use super::super::signed_data::{attributes, certificates, counts, digest, is_of, name};
use super::request::MessageImprint;
use super::token_error::TokenError;

/// `id-ct-TSTInfo` (RFC 3161, 2.4.2).
const TST_INFO: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.9.16.1.4");
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
        let certificates = certificates(&data);
        let signer =
            certificates.iter().find(|c| is_of(c, &by.sid)).ok_or(TokenError::Content("no-certificate"))?.clone();
        let signed_attributes = attributes(by, (TST_INFO, info.as_bytes()), &signer)?;
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

    /// The token alone, as other signatures carry it, byte for byte as the authority made it.
    ///
    /// # Errors
    /// None for an answer that was read.
    pub fn bare(&self) -> Result<Any, TokenError> {
        let mut reader = SliceReader::new(&self.answer)?;
        Ok(reader.sequence(|answer| {
            Any::decode(answer)?;
            Any::decode(answer)
        })?)
    }

    /// Who stamped, as the certificate names it.
    pub fn authority(&self) -> String {
        name(&self.signer)
    }

    /// When the authority's certificate ends: until then a newer token must cover this one.
    pub fn ends(&self) -> OffsetDateTime {
        counts(&self.signer)[1]
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
