//! Who signs a PDF: a private key and the certificate that names its owner.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use cms::cert::x509::Certificate;
use cms::cert::x509::ext::pkix::KeyUsage;
use der::asn1::ObjectIdentifier;
use der::oid::db::rfc5912;
use der::{Decode, Encode};
use rustls::SignatureScheme;
use rustls::crypto::ring::sign::any_supported_type;
use rustls::sign::SigningKey;
use rustls_pki_types::pem::PemObject;
use rustls_pki_types::{CertificateDer, PrivateKeyDer};
use sha2::{Digest, Sha256};
use time::OffsetDateTime;

use super::super::signed_data::{counts, name};
use super::error::{PadesError, Problem};
use crate::input::hex;

/// Most certificates of one file: a signer's and those that vouch for it, or an auditor's list.
const MOST_CERTIFICATES: usize = 1000;

/// A key with its certificate.
#[derive(Debug)]
pub struct Identity {
    /// Where the certificate was read.
    file: PathBuf,
    key: Arc<dyn SigningKey>,
    pub(super) method: Method,
    /// The signer's first, then those that vouch for it.
    pub(super) certificates: Vec<Certificate>,
}

/// How a key signs (ETSI TS 119 312 names all of them; from memory).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Method {
    P256,
    P384,
    Rsa,
}

impl Method {
    fn scheme(self) -> SignatureScheme {
        match self {
            Method::P256 => SignatureScheme::ECDSA_NISTP256_SHA256,
            Method::P384 => SignatureScheme::ECDSA_NISTP384_SHA384,
            Method::Rsa => SignatureScheme::RSA_PKCS1_SHA256,
        }
    }

    /// The digest's algorithm.
    pub(super) fn digest(self) -> ObjectIdentifier {
        match self {
            Method::P256 | Method::Rsa => rfc5912::ID_SHA_256,
            Method::P384 => rfc5912::ID_SHA_384,
        }
    }

    /// The signature's algorithm.
    pub(super) fn signature(self) -> ObjectIdentifier {
        match self {
            Method::P256 => rfc5912::ECDSA_WITH_SHA_256,
            Method::P384 => rfc5912::ECDSA_WITH_SHA_384,
            Method::Rsa => rfc5912::SHA_256_WITH_RSA_ENCRYPTION,
        }
    }
}

impl Identity {
    /// Reads a private key and certificates, PEM; both may lie in one file.
    ///
    /// # Errors
    /// A file lacks them, they do not belong together, or the certificate is
    /// for other uses.
    pub fn open(key_file: &Path, certificate_file: &Path) -> Result<Identity, PadesError> {
        let read =
            |path: &Path| std::fs::read(path).map_err(|source| PadesError::Read { path: path.to_path_buf(), source });
        let no_key = |problem| PadesError::File { path: key_file.to_path_buf(), problem };
        let no_certificate = |problem| PadesError::File { path: certificate_file.to_path_buf(), problem };
        let (key, method) = signing_key(&read(key_file)?).map_err(no_key)?;
        let all = certificates(&read(certificate_file)?).map_err(no_certificate)?;
        let certificates = own_first(&*key, all).map_err(no_certificate)?;
        Ok(Identity { file: certificate_file.to_path_buf(), key, method, certificates })
    }

    /// Who signs, as the certificate names it (RFC 4514).
    pub fn name(&self) -> String {
        name(&self.certificates[0])
    }

    /// When the certificate ends.
    pub fn ends(&self) -> OffsetDateTime {
        counts(&self.certificates[0])[1]
    }

    /// Refuses a time at which the certificate does not count.
    pub(super) fn counts_at(&self, now: OffsetDateTime) -> Result<(), PadesError> {
        counted_at(&self.certificates[0], now).map_err(|problem| PadesError::File { path: self.file.clone(), problem })
    }

    /// The signature of some bytes.
    pub(super) fn sign(&self, bytes: &[u8]) -> Result<Vec<u8>, PadesError> {
        let failed = |why: &dyn ToString| PadesError::Sign(why.to_string());
        let scheme = self.method.scheme();
        let signer = self.key.choose_scheme(&[scheme]).ok_or_else(|| failed(&format!("{scheme:?}")))?;
        signer.sign(bytes).map_err(|e| failed(&e))
    }
}

/// Certificates of signers whom somebody trusts, each by itself.
#[derive(Debug)]
pub struct Certificates(pub(super) Vec<Certificate>);

impl Certificates {
    /// Reads certificates, PEM.
    ///
    /// # Errors
    /// There is none, or one cannot be read.
    pub fn open(file: &Path) -> Result<Certificates, PadesError> {
        let pem = std::fs::read(file).map_err(|source| PadesError::Read { path: file.to_path_buf(), source })?;
        let all = certificates(&pem).map_err(|problem| PadesError::File { path: file.to_path_buf(), problem })?;
        Ok(Certificates(all))
    }

    /// SHA-256 over all of them, in their order: other certificates, other signers.
    pub fn sha256(&self) -> String {
        let mut all = Sha256::new();
        for certificate in &self.0 {
            all.update(certificate.to_der().unwrap_or_default());
        }
        hex(&all.finalize())
    }
}

/// Whether a certificate counted at a moment.
pub(super) fn counted_at(certificate: &Certificate, moment: OffsetDateTime) -> Result<(), Problem> {
    match counts(certificate) {
        [begins, _] if moment < begins => Err(Problem::Early),
        [_, ends] if moment > ends => Err(Problem::Late),
        _ => Ok(()),
    }
}

/// Whether a certificate is for signatures.
pub(super) fn may_sign(certificate: &Certificate) -> Result<(), Problem> {
    match certificate.tbs_certificate.get::<KeyUsage>() {
        Ok(Some((_, usage))) if !usage.digital_signature() && !usage.non_repudiation() => Err(Problem::Usage),
        Ok(_) => Ok(()),
        Err(_) => Err(Problem::Unreadable),
    }
}

fn signing_key(pem: &[u8]) -> Result<(Arc<dyn SigningKey>, Method), Problem> {
    let locked = ["ENCRYPTED PRIVATE KEY", "Proc-Type: 4,ENCRYPTED"];
    if locked.iter().any(|mark| memchr::memmem::find(pem, mark.as_bytes()).is_some()) {
        return Err(Problem::Locked);
    }
    let der = PrivateKeyDer::from_pem_slice(pem).map_err(|_| Problem::NoKey)?;
    let key = any_supported_type(&der).map_err(|_| Problem::KeyKind)?;
    let fitting = [Method::P256, Method::P384, Method::Rsa];
    let method = fitting.into_iter().find(|m| key.choose_scheme(&[m.scheme()]).is_some());
    Ok((key, method.ok_or(Problem::KeyKind)?))
}

fn certificates(pem: &[u8]) -> Result<Vec<Certificate>, Problem> {
    let all: Vec<_> =
        CertificateDer::pem_slice_iter(pem).collect::<Result<_, _>>().map_err(|_| Problem::NoCertificate)?;
    if all.is_empty() || all.len() > MOST_CERTIFICATES {
        return Err(Problem::NoCertificate);
    }
    let read = |der: &CertificateDer| {
        let certificate = Certificate::from_der(der).map_err(|_| Problem::Unreadable)?;
        // It goes into the PDF as it is encoded here, and its digest is signed.
        let same = certificate.to_der().is_ok_and(|again| again == der.as_ref());
        if same { Ok(certificate) } else { Err(Problem::Unreadable) }
    };
    all.iter().map(read).collect()
}

/// The key's own certificate first.
fn own_first(key: &dyn SigningKey, mut all: Vec<Certificate>) -> Result<Vec<Certificate>, Problem> {
    let public = key.public_key().ok_or(Problem::KeyKind)?;
    let is_own =
        |c: &Certificate| c.tbs_certificate.subject_public_key_info.to_der().is_ok_and(|spki| spki == public.as_ref());
    let own = all.iter().position(is_own).ok_or(Problem::OtherKey)?;
    all.swap(0, own);
    may_sign(&all[0])?;
    Ok(all)
}
