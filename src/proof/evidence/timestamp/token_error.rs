//! What is wrong with a token.

use crate::words::{Language, Phrase, phrase};

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
