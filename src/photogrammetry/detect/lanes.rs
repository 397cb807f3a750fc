//! Many pixels side by side.

/// Pixels in a batch.
pub(super) const BATCH: usize = 64;
/// One value for each pixel of a batch.
pub(super) type Lane = [f32; BATCH];
