//! Timestamps by a third party (RFC 3161): an authority signs the tag
//! manifest's digest together with the time, and so proves that the folder was
//! sealed no later.
//!
//! This program asks nobody: it writes the request file, somebody sends it to an
//! authority of their choice, and the answer is put into the folder. A second
//! token is over the first one's file and so on, because an authority's
//! certificate ends: before it does, the newest token is stamped again.

mod certificate;
mod folder;
mod request;
mod token;
mod token_error;
mod trust;

pub(super) use folder::inspect_tokens;
pub use folder::{StampError, newest_token, stamp, stamp_request};
pub use token::Token;
pub use token_error::TokenError;
pub use trust::{Authorities, AuthoritiesError, Distrust};

pub(super) use certificate::signed_by;
pub(super) use request::request;

use super::TAG_MANIFEST;

/// Tokens of one folder, at most: centuries of renewals.
const MOST_TOKENS: usize = 99;
/// The largest token file, bytes.
const MOST_TOKEN: u64 = 1 << 20;

/// The file of a folder's n-th token, from 0.
pub(super) fn token_name(n: usize) -> String {
    match n {
        0 => format!("{TAG_MANIFEST}.tsr"),
        n => format!("{TAG_MANIFEST}.{}.tsr", n + 1),
    }
}

/// Whether a name in the folder's top is one of a token.
pub(super) fn is_token_name(name: &str) -> bool {
    name.ends_with(".tsr") && (0..MOST_TOKENS).any(|n| token_name(n) == name)
}
