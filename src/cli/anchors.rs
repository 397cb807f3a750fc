//! The option `--credential-anchors`: whose signatures on photos count.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use super::output::language;
use crate::credentials::{Anchors, Source};

/// The option as typed.
#[derive(Debug, Clone, clap::Args)]
pub(super) struct AnchorsOption {
    #[arg(long, value_name = "FILE")]
    pub(super) credential_anchors: Option<PathBuf>,
}

impl AnchorsOption {
    /// Credentials from the photos, by these anchors.
    pub(super) fn source(&self) -> Result<Source, String> {
        let read = |path: &Path| Anchors::read(path).map(Arc::new).map_err(|e| e.phrase().say(language()));
        Ok(Source::Photos(self.credential_anchors.as_deref().map(read).transpose()?))
    }
}
