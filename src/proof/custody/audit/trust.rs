//! Whom an auditor trusts.

use crate::evidence::{Certificates, Signers};
use crate::job::Options;

/// Whose word counts where an archive is judged.
#[derive(Debug, Clone, Copy)]
pub struct Trust<'a> {
    /// Cameras' signers among them, and the models.
    pub options: &'a Options,
    /// Who seals.
    pub signers: Option<&'a Signers>,
    /// Who signs PDF reports.
    pub certificates: Option<&'a Certificates>,
}
