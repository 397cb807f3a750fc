//! How large a photo may be.

/// Most pixels that a photo may state: phones that are sold as "50 megapixels"
/// store up to 50.2 million, and a little room is left.
pub const MAX_PIXELS: usize = 60_000_000;

/// Most bytes that a photo's file may have: an incompressible PNG of
/// [`MAX_PIXELS`] with three channels of 16 bits, and room for its record.
pub const MAX_BYTES: u64 = 400_000_000;
