//! Why a PDF is not signed, or its signature does not hold.

use std::path::PathBuf;

use super::super::cannot;
use super::super::timestamp::TokenError;
use crate::words::{Language, Phrase, phrase};

/// What is wrong with a key, a certificate or a PDF.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Problem {
    /// There is no private key in PEM.
    NoKey,
    /// The key is encrypted.
    Locked,
    /// Neither ECDSA P-256 or P-384 nor RSA of 2048 to 4096 bits.
    KeyKind,
    /// There is no certificate in PEM.
    NoCertificate,
    /// A certificate cannot be read, or is not in DER.
    Unreadable,
    /// None of the certificates is the key's.
    OtherKey,
    /// The certificate is for other uses than signatures.
    Usage,
    /// Its time has not begun.
    Early,
    /// Its time is over.
    Late,
    /// Not a PDF with a cross-reference table from this program.
    NoPdf,
    /// Signed already.
    SignedAlready,
    /// No signature.
    Unsigned,
    /// The signature does not cover the whole file.
    Range,
    /// The signature is none.
    NoSignature,
    /// Stamped already.
    StampedAlready,
    /// The timestamp is larger than what was left for it.
    NoRoom,
    /// The name of a certificate's owner is empty or too long.
    Name,
    /// A certificate's years are none or too many.
    Years,
}

impl Problem {
    /// As messages name it.
    fn name(self) -> &'static str {
        match self {
            Problem::NoKey => "no-key",
            Problem::Locked => "locked",
            Problem::KeyKind => "key-kind",
            Problem::NoCertificate => "no-certificate",
            Problem::Unreadable => "unreadable",
            Problem::OtherKey => "other-key",
            Problem::Usage => "usage",
            Problem::Early => "early",
            Problem::Late => "late",
            Problem::NoPdf => "no-pdf",
            Problem::SignedAlready => "signed-already",
            Problem::Unsigned => "unsigned",
            Problem::Range => "range",
            Problem::NoSignature => "no-signature",
            Problem::StampedAlready => "stamped-already",
            Problem::NoRoom => "no-room",
            Problem::Name => "name",
            Problem::Years => "years",
        }
    }
}

/// Why a PDF is not signed, or its signature does not hold.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub enum PadesError {
    /// A file cannot be read.
    Read {
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// A key or certificate is of no use.
    File {
        /// Which file.
        path: PathBuf,
        /// Why.
        problem: Problem,
    },
    /// A PDF or its signature.
    Pdf(Problem),
    /// A signature before the last one does not hold.
    Earlier {
        /// Whose it is, as its certificate names him; `?` where that cannot be read.
        who: String,
        /// Whose the last one is.
        last: String,
        /// Why it does not hold.
        source: Box<PadesError>,
    },
    /// The signature's parts do not belong together, or its timestamp is none.
    Signature(#[from] TokenError),
    /// The structure cannot be written or read.
    Form(#[from] der::Error),
    /// The cipher failed.
    Sign(String),
}

impl PadesError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        match self {
            PadesError::Read { path, source } => cannot("read", path, source),
            PadesError::File { path, problem } => {
                let why = phrase!("evidence-pdf-problem", problem = problem.name());
                phrase!("evidence-file-wrong", file = path.display().to_string(), why = why)
            }
            PadesError::Pdf(problem) => phrase!("evidence-pdf-problem", problem = problem.name()),
            PadesError::Earlier { who, last, source } => {
                phrase!("evidence-pdf-earlier-false", who = who, last = last, why = source.phrase())
            }
            PadesError::Signature(e) => phrase!("evidence-pdf-signature", why = e.phrase()),
            PadesError::Form(e) => phrase!("evidence-pdf-form", why = e.to_string()),
            PadesError::Sign(why) => phrase!("evidence-key-sign", why = why),
        }
    }
}
