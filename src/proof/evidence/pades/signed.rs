//! A signed report read again: whose signature it bears, whether its bytes are
//! those that were signed, and its timestamp, also put in later.

use std::ops::Range;

use cms::cert::x509::Certificate;
use cms::signed_data::SignedData;
use der::Encode;
use der::oid::db::rfc5911;
use sha2::{Digest, Sha256};
use time::macros::format_description;
use time::{OffsetDateTime, PrimitiveDateTime, UtcOffset};

use super::super::signed_data::{attributes, certificates, is_of, name};
use super::super::timestamp::{Token, TokenError, request, signed_by};
use super::content;
use super::error::{PadesError, Problem};
use super::identity::{Certificates, counted_at, may_sign};
use super::syntax::{after_blanks, number};
use super::update::{Prepared, prepare};
use crate::input::hex;

/// A PDF with a signature over all of it; [`check`](SignedPdf::check) says whether it holds.
pub struct SignedPdf {
    pdf: Prepared,
    data: SignedData,
    signer: Certificate,
    /// What earlier signatures cover, the first of them first.
    before: Vec<Covered>,
}

/// A signature before the last one, which holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Earlier {
    /// Whose it is, as its certificate names him.
    pub who: String,
    /// So many of the file's first bytes are what it covers.
    pub bytes: usize,
}

/// Signatures of one file, at most: each is over almost all of it.
const MOST_SIGNATURES: usize = 16;

impl SignedPdf {
    /// Reads a PDF's last signature.
    ///
    /// # Errors
    /// There is none, it does not cover the whole file, or it cannot be read.
    pub fn read(bytes: Vec<u8>) -> Result<SignedPdf, PadesError> {
        let (hole, before) = holes(&bytes).map_err(PadesError::Pdf)?;
        let (data, signer) = signature(&bytes[hole.clone()])?;
        Ok(SignedPdf { pdf: Prepared { bytes, hole }, data, signer, before })
    }

    /// Who signed, as the certificate that comes along names it (RFC 4514).
    pub fn signer(&self) -> String {
        name(&self.signer)
    }

    /// The signatures before the last one: a later one covers them, whoever made it, and vouches for none.
    ///
    /// # Errors
    /// One does not hold.
    pub fn earlier(&self) -> Result<Vec<Earlier>, PadesError> {
        self.before.iter().map(|covered| self.earlier_one(covered)).collect()
    }

    fn earlier_one(&self, Covered { hole, end }: &Covered) -> Result<Earlier, PadesError> {
        let bytes = &self.pdf.bytes;
        let broken = |who: &str, source| {
            let (who, last) = (who.to_owned(), self.signer());
            PadesError::Earlier { who, last, source: Box::new(source) }
        };
        let (data, signer) = signature(&bytes[hole.clone()]).map_err(|e| broken("?", e))?;
        let who = name(&signer);
        let signed = [&bytes[..hole.start], &bytes[hole.end..*end]].concat();
        holds(&data, &signer, &signed).map_err(|e| broken(&who, e))?;
        Ok(Earlier { who, bytes: *end })
    }

    /// Whether the signer's certificate is one of these: itself, not its name, which anybody can write.
    pub fn is_by(&self, listed: &Certificates) -> bool {
        listed.0.contains(&self.signer)
    }

    /// Whether the signer's certificate is one for signatures, and counted at a moment.
    ///
    /// # Errors
    /// It is not, or did not.
    pub fn counted_at(&self, moment: OffsetDateTime) -> Result<(), Problem> {
        may_sign(&self.signer).and_then(|()| counted_at(&self.signer, moment))
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
        let time = PrimitiveDateTime::parse(text, &shape).ok()?;
        // An offset as `+01'00`, or none, which other programs write (ISO 32000-1, 7.9.4).
        let offset = before.get(at + 14..at + 20).and_then(offset).unwrap_or(UtcOffset::UTC);
        time.assume_offset(offset).checked_to_offset(UtcOffset::UTC)
    }

    /// Whether the file's bytes are those that this certificate's key signed.
    /// Whether the certificate can be trusted is for whoever reads to say.
    ///
    /// # Errors
    /// They are not.
    pub fn check(&self) -> Result<(), PadesError> {
        holds(&self.data, &self.signer, &self.pdf.signed())
    }

    /// The timestamps of the signature: each is over its value, by whichever authority.
    ///
    /// # Errors
    /// One is none, or is for another signature.
    pub fn tokens(&self) -> Result<Vec<Token>, PadesError> {
        let by = content::signer(&self.data)?;
        let one = |der: &Vec<u8>| -> Result<Token, PadesError> {
            let token = Token::read(der)?;
            token.check(by.signature.as_bytes())?;
            Ok(token)
        };
        content::tokens(by)?.iter().map(one).collect()
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
        match content::tokens(content::signer(&self.data)?)?.as_slice() {
            [] => Ok(()),
            _ => Err(PadesError::Pdf(Problem::StampedAlready)),
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

fn offset(text: &[u8]) -> Option<UtcOffset> {
    let [sign @ (b'+' | b'-'), rest @ ..] = text else { return None };
    let two = |at: usize| std::str::from_utf8(rest.get(at..at + 2)?).ok()?.parse::<i8>().ok();
    let (hours, minutes) = (two(0)?, two(3)?);
    let turn = if *sign == b'-' { -1 } else { 1 };
    UtcOffset::from_hms(turn * hours, turn * minutes, 0).ok()
}

/// A signature's data and its signer's certificate, from the place that its range leaves out.
fn signature(place: &[u8]) -> Result<(SignedData, Certificate), PadesError> {
    let digits = &place[1..place.len() - 1];
    let data = content::read(&unhex(digits).ok_or(PadesError::Pdf(Problem::NoSignature))?)?;
    let by = content::signer(&data)?;
    let signer = certificates(&data).into_iter().find(|c| is_of(c, &by.sid));
    let signer = signer.ok_or(PadesError::Pdf(Problem::NoCertificate))?;
    Ok((data, signer))
}

/// Whether bytes are those that a certificate's key signed.
fn holds(data: &SignedData, signer: &Certificate, bytes: &[u8]) -> Result<(), PadesError> {
    let by = content::signer(data)?;
    let signed = attributes(by, (rfc5911::ID_DATA, bytes), signer)?;
    let methods = (by.signature_algorithm.oid, by.digest_alg.oid);
    signed_by(signer, methods, &signed, by.signature.as_bytes())
        .map_err(|why| PadesError::Signature(TokenError::Signature(why)))
}

/// What a signature covers: the file up to an end, but for the place of the signature.
struct Covered {
    hole: Range<usize>,
    end: usize,
}

/// The places of the last signature and of those before it.
fn holes(bytes: &[u8]) -> Result<(Range<usize>, Vec<Covered>), Problem> {
    if !bytes.starts_with(b"%PDF-") {
        return Err(Problem::NoPdf);
    }
    let last = memchr::memmem::rfind(bytes, RANGE).ok_or(Problem::Unsigned)?;
    let hole = last_hole(bytes, last)?;
    let said = memchr::memmem::find_iter(&bytes[..last], RANGE);
    // Whatever is no range of a place in brackets is a word in the report, and no signature.
    let before: Vec<Covered> =
        said.filter_map(|said| Some(covered(bytes, said).ok()?.0)).take(MOST_SIGNATURES).collect();
    if before.len() < MOST_SIGNATURES { Ok((hole, before)) } else { Err(Problem::NoSignature) }
}

const RANGE: &[u8] = b"/ByteRange";

/// What the range at a place of the file covers, and where its four numbers end.
fn covered(bytes: &[u8], said: usize) -> Result<(Covered, usize), Problem> {
    let mut at = after_blanks(bytes, said + RANGE.len());
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
    let end = to.checked_add(rest).filter(|end| zero == 0 && *end <= bytes.len()).ok_or(Problem::Range)?;
    let hole = from..to;
    if hole.len() < 2 || bytes.get(hole.start) != Some(&b'<') || bytes.get(hole.end - 1) != Some(&b'>') {
        return Err(Problem::Range);
    }
    Ok((Covered { hole, end }, at))
}

/// The place of the last signature, which must be all that its range leaves out.
fn last_hole(bytes: &[u8], said: usize) -> Result<Range<usize>, Problem> {
    let (Covered { hole, end }, at) = covered(bytes, said)?;
    if end != bytes.len() {
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
