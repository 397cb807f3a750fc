//! How to verify.

use crate::folder::Models;

/// How to verify.
#[derive(Debug, Clone)]
pub struct Options {
    /// Where set-up sheets, kits and cameras are found by name.
    pub models: Models,
}
