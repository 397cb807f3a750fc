//! Numbers for texts that are only compared.

use std::hash::{BuildHasher, Hash, RandomState};

/// A number for each text, by a function that nobody knows before the audit runs; never 0.
pub(super) fn hashed(numbers: &RandomState, what: &(impl Hash + ?Sized)) -> u64 {
    numbers.hash_one(what).max(1)
}
