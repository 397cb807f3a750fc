//! What a report's signature says, in one value: for whoever looks at many reports, signed or not.

use super::error::{PadesError, Problem};
use super::identity::Certificates;
use super::signed::SignedPdf;

/// How a PDF stands.
pub enum Standing {
    /// It bears no signature.
    Unsigned,
    /// It bears one that does not hold, or is not all that was signed.
    Broken(PadesError),
    /// Its bytes are those that were signed.
    Holds(Box<SignedPdf>),
}

impl Standing {
    /// Looks at a PDF.
    pub fn of(pdf: Vec<u8>) -> Standing {
        let read = SignedPdf::read(pdf);
        match read.and_then(|signed| signed.check().and_then(|()| signed.earlier()).map(|_| signed)) {
            Ok(signed) => Standing::Holds(Box::new(signed)),
            Err(PadesError::Pdf(Problem::Unsigned)) => Standing::Unsigned,
            Err(e) => Standing::Broken(e),
        }
    }

    /// Who signed, where the signature holds, and whether that certificate is one of these and counted when it was made,
    /// by the signer's own clock.
    pub fn signer(&self, listed: Option<&Certificates>) -> Option<(String, Option<bool>)> {
        let Standing::Holds(signed) = self else { return None };
        let counted = || signed.claimed().is_none_or(|moment| signed.counted_at(moment).is_ok());
        Some((signed.signer(), listed.map(|all| signed.is_by(all) && counted())))
    }
}
