//! A signed report read again: whose signature it bears, whether its bytes are
//! those that were signed, and its timestamp, also put in later.

use std::ops::Range;

use cms::cert::x509::Certificate;
use cms::signed_data::SignedData;
use der::Encode;
use der::oid::db::rfc5911;
use sha2::{Digest, Sha256};
use time::macros::format_description;
use time::{OffsetDateTime, PrimitiveDateTime};

use super::super::signed_data::{attributes, certificates, is_of};
use super::super::timestamp::{Token, TokenError, request, signed_by};
use super::content;
use super::error::{PadesError, Problem};
use super::identity::Certificates;
use super::syntax::{after_blanks, number};
use super::update::{Prepared, prepare};
use crate::input::hex;

/// A PDF with a signature over all of it; [`check`](SignedPdf::check) says whether it holds.
pub struct SignedPdf {
    pdf: Prepared,
    data: SignedData,
    signer: Certificate,
}

impl SignedPdf {
    /// Reads a PDF's last signature.
    ///
    /// # Errors
    /// There is none, it does not cover the whole file, or it cannot be read.
    pub fn read(bytes: Vec<u8>) -> Result<SignedPdf, PadesError> {
        let hole = hole(&bytes).map_err(PadesError::Pdf)?;
        let digits = &bytes[hole.start + 1..hole.end - 1];
        let data = content::read(&unhex(digits).ok_or(PadesError::Pdf(Problem::NoSignature))?)?;
        let by = content::signer(&data)?;
        let signer = certificates(&data).into_iter().find(|c| is_of(c, &by.sid));
        let signer = signer.ok_or(PadesError::Pdf(Problem::NoCertificate))?;
        Ok(SignedPdf { pdf: Prepared { bytes, hole }, data, signer })
    }

    /// Who signed, as the certificate that comes along names it (RFC 4514).
    pub fn signer(&self) -> String {
        self.signer.tbs_certificate.subject.to_string()
    }

    /// Whether the signer's certificate is one of these: itself, not its name, which anybody can write.
    pub fn is_by(&self, listed: &Certificates) -> bool {
        listed.0.contains(&self.signer)
    }

    /// Whether it is this report with nothing behind it but what signing it adds: the field of this name, the
    /// signature, and a timestamp in it.
    pub fn is_of(&self, report: &[u8], field: &str) -> bool {
        let room = (self.pdf.hole.len() - 2) / 2;
        let again = self.claimed().and_then(|moment| prepare(report, field, moment, room).ok());
        again.is_some_and(|again| again.hole == self.pdf.hole && again.signed() == self.pdf.signed())
    }

    /// SHA-256 of the signer's certificate.
    pub fn fingerprint(&self) -> String {
        hex(&Sha256::digest(self.signer.to_der().unwrap_or_default()))
    }

    /// When it was signed by the signer's own clock, which proves nothing.
    pub fn claimed(&self) -> Option<OffsetDateTime> {
        let before = &self.pdf.bytes[..self.pdf.hole.start];
        let at = memchr::memmem::rfind(before, b"/M(D:")? + 5;
        let text = std::str::from_utf8(before.get(at..at + 14)?).ok()?;
        let shape = format_description!("[year][month][day][hour][minute][second]");
        Some(PrimitiveDateTime::parse(text, &shape).ok()?.assume_utc())
    }

    /// Whether the file's bytes are those that this certificate's key signed.
    /// Whether the certificate can be trusted is for whoever reads to say.
    ///
    /// # Errors
    /// They are not.
    pub fn check(&self) -> Result<(), PadesError> {
        let by = content::signer(&self.data)?;
        let signed = attributes(by, (rfc5911::ID_DATA, &self.pdf.signed()), &self.signer)?;
        let methods = (by.signature_algorithm.oid, by.digest_alg.oid);
        signed_by(&self.signer, methods, &signed, by.signature.as_bytes())
            .map_err(|why| PadesError::Signature(TokenError::Signature(why)))
    }

    /// The timestamp of the signature, where there is one.
    ///
    /// # Errors
    /// It is none, or is for another signature.
    pub fn token(&self) -> Result<Option<Token>, PadesError> {
        let by = content::signer(&self.data)?;
        let Some(der) = content::token(by)? else { return Ok(None) };
        let token = Token::read(&der)?;
        token.check(by.signature.as_bytes())?;
        Ok(Some(token))
    }

    /// The request to send to a timestamp authority (RFC 3161).
    ///
    /// # Errors
    /// The signature does not hold, or has a timestamp.
    pub fn stamp_request(&self) -> Result<Vec<u8>, PadesError> {
        self.check()?;
        self.unstamped()?;
        Ok(request(content::signer(&self.data)?.signature.as_bytes())?)
    }

    fn unstamped(&self) -> Result<(), PadesError> {
        match content::token(content::signer(&self.data)?)? {
            Some(_) => Err(PadesError::Pdf(Problem::StampedAlready)),
            None => Ok(()),
        }
    }

    /// The file with an authority's answer put in (baseline B-T). All signed
    /// bytes stay as they are: the place for it was left when it was signed.
    ///
    /// # Errors
    /// The answer is none or for another signature, or is too large.
    pub fn stamped(mut self, answer: &[u8]) -> Result<(Vec<u8>, Token), PadesError> {
        self.check()?;
        self.unstamped()?;
        let token = Token::read(answer)?;
        token.check(content::signer(&self.data)?.signature.as_bytes())?;
        let signature = content::with_token(self.data, token.bare()?)?;
        self.pdf.fill(&signature)?;
        Ok((self.pdf.bytes, token))
    }
}

/// The place of the last signature, which must be all that its range leaves out.
fn hole(bytes: &[u8]) -> Result<Range<usize>, Problem> {
    if !bytes.starts_with(b"%PDF-") {
        return Err(Problem::NoPdf);
    }
    let said = memchr::memmem::rfind(bytes, b"/ByteRange").ok_or(Problem::Unsigned)?;
    let mut at = after_blanks(bytes, said + b"/ByteRange".len());
    let mut numbers = [0_usize; 4];
    if bytes.get(at) != Some(&b'[') {
        return Err(Problem::NoSignature);
    }
    at += 1;
    for one in &mut numbers {
        at = after_blanks(bytes, at);
        let text = bytes.get(at..).unwrap_or_default();
        *one = number(text).ok_or(Problem::NoSignature)?;
        at += text.iter().take_while(|b| b.is_ascii_digit()).count();
    }
    let [zero, from, to, rest] = numbers;
    let whole = zero == 0 && to.checked_add(rest) == Some(bytes.len());
    let hole = from..to;
    if !whole || hole.len() < 2 || bytes.get(hole.start) != Some(&b'<') || bytes.get(hole.end - 1) != Some(&b'>') {
        return Err(Problem::Range);
    }
    // The hole must be the signature that this range stands beside, not something else that nobody signed.
    let between = bytes.get(after_blanks(bytes, at)..hole.start).unwrap_or_default();
    if between.first() != Some(&b']') || !between.ends_with(b"/Contents") || between.len() > 64 {
        return Err(Problem::Range);
    }
    Ok(hole)
}

/// Bytes of an even number of hexadecimal digits.
fn unhex(digits: &[u8]) -> Option<Vec<u8>> {
    let digit = |b: u8| char::from(b).to_digit(16).and_then(|d| u8::try_from(d).ok());
    let pairs = digits.chunks(2);
    pairs.map(|pair| if let [a, b] = *pair { Some(digit(a)? << 4 | digit(b)?) } else { None }).collect()
}
