//! Reports signed as PDF signatures: PAdES baseline B-B, and B-T once a
//! timestamp is put in (ETSI EN 319 142-1 on ISO 32000, CAdES after
//! ETSI EN 319 122-1), so that an ordinary reader says who signed.
//!
//! `identity` is a key with its certificate, `own` makes one where a workshop
//! has none; `syntax` and `update` append the signature's objects to a finished
//! report, `content` makes what is signed, `signed` reads a signed
//! report again, `standing` says in one value how a report stands.

mod content;
mod error;
mod identity;
mod own;
mod signed;
mod standing;
mod syntax;
mod update;

pub use error::{PadesError, Problem};
pub use identity::{Certificates, Identity};
pub use own::{OwnCertificate, own_certificate};
pub use signed::{Earlier, SignedPdf};
pub use standing::Standing;

use time::OffsetDateTime;

/// Bytes that a timestamp may take later: an authority's answer with its
/// certificates is 2 to 8 kB (common practice, no source).
const ROOM_FOR_TOKEN: usize = 16_384;

/// Whether a file's name says that it is a PDF.
pub fn is_pdf(path: &std::path::Path) -> bool {
    path.extension().is_some_and(|e| e.eq_ignore_ascii_case("pdf"))
}

/// The report with a signature over all its bytes (baseline B-B). It stays
/// PDF/A-2a and PDF/UA-1: the field shows nothing on a page. `field` names it
/// to a screen reader; `moment` is when, by the signer's clock.
///
/// # Errors
/// The certificate does not count at `moment`, or `report` is not a PDF that
/// this program has just written.
pub fn sign_pdf(
    report: &[u8],
    identity: &Identity,
    field: &str,
    moment: OffsetDateTime,
) -> Result<Vec<u8>, PadesError> {
    identity.counts_at(moment)?;
    // A trial tells how long a signature with these certificates is; an ECDSA value varies by a few bytes.
    let room = content::signed_data(identity, &[])?.len() + 64 + ROOM_FOR_TOKEN;
    let mut prepared = update::prepare(report, field, moment, room).map_err(PadesError::Pdf)?;
    let signature = content::signed_data(identity, &prepared.signed())?;
    prepared.fill(&signature)?;
    Ok(prepared.bytes)
}
