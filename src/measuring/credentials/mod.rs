//! Content credentials (C2PA technical specification 2.x): what a camera signed
//! about a photo's bytes, and whether it still holds.
//!
//! Credentials are read and validated where the program was built with the
//! feature `credentials` ([`BUILT_IN`]), without any network: a manifest that a
//! file only names somewhere else is none. Everything else here (what a record
//! says of them, whether a file carries any) is there in every build.

mod anchors;
mod carrier;
#[cfg(feature = "credentials")]
mod chain;
#[cfg(feature = "credentials")]
mod read;
mod source;
mod state;
mod summary;

pub use anchors::{Anchors, AnchorsError};
pub use carrier::carries;
pub use source::Source;
pub use state::{Credentials, Edit, Failure, State};
pub use summary::{counts, summary};

/// What reads them; who signs photos (tests do) signs with the same.
#[cfg(feature = "credentials")]
pub use c2pa;

/// Whether this program can read and validate content credentials.
pub const BUILT_IN: bool = cfg!(feature = "credentials");
