//! Whether a size that a file states can be decoded.

use super::error::Fault;
use super::limits::MAX_PIXELS;
use crate::words::phrase;

/// Whether a stated size can be decoded.
pub(super) fn check_size(width: usize, height: usize) -> Result<usize, Fault> {
    if width == 0 || height == 0 {
        return Err(Fault::Damaged(phrase!("doors-fault-pixels", width = width, height = height)));
    }
    width.checked_mul(height).filter(|&n| n <= MAX_PIXELS).ok_or(Fault::TooManyPixels(width, height))
}
