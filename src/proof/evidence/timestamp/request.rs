//! The request that is sent to a timestamp authority (RFC 3161, 2.4.1).

use cms::cert::x509::spki::AlgorithmIdentifierOwned;
use der::asn1::{Null, OctetString};
use der::oid::db::rfc5912::ID_SHA_512;
use der::{Any, Encode, Sequence};
use sha2::{Digest, Sha512};

/// What is stamped: a digest and how it was made.
#[derive(Debug, Clone, PartialEq, Eq, Sequence)]
pub(super) struct MessageImprint {
    pub(super) hash_algorithm: AlgorithmIdentifierOwned,
    pub(super) hashed_message: OctetString,
}

#[derive(Debug, Sequence)]
struct TimeStampReq {
    version: u8,
    message_imprint: MessageImprint,
    cert_req: bool,
}

/// The request for a timestamp of some bytes, DER (`application/timestamp-query`).
/// It carries no nonce: the same folder asks with the same bytes, and the digest
/// alone tells which answer belongs to it.
///
/// # Errors
/// None that a digest's encoding can raise; the type is the encoder's.
pub(in super::super) fn request(stamped: &[u8]) -> Result<Vec<u8>, der::Error> {
    let imprint = MessageImprint {
        hash_algorithm: AlgorithmIdentifierOwned { oid: ID_SHA_512, parameters: Some(Any::from(Null)) },
        hashed_message: OctetString::new(Sha512::digest(stamped).as_slice())?,
    };
    TimeStampReq { version: 1, message_imprint: imprint, cert_req: true }.to_der()
}
