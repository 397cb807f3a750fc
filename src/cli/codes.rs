//! What commands end with.

/// Wrong usage, or an input that can't be read.
pub(super) const UNREADABLE: u8 = 2;
