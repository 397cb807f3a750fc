//! How to verify.

use crate::credentials::Source;
use crate::folder::Models;

/// How to verify.
#[derive(Debug, Clone)]
pub struct Options {
    /// Where set-up sheets, kits and cameras are found by name.
    pub models: Models,
    /// Where the photos' content credentials come from, and who is trusted.
    pub credentials: Source,
}

impl Options {
    /// With credentials from the photos, whose signers nobody vouches for.
    pub fn new(models: Models) -> Self {
        Options { models, credentials: Source::default() }
    }
}
