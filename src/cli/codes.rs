//! What commands end with.

/// What a judged job ends with.
pub(super) const JOB_CODES: &str = "Exit code: 0 within tolerance, 1 outside, 2 unreadable, 3 not proven, 4 photos to be taken again; of \
                         several jobs the worst of 2, 4, 1, 3, 0";

/// What bench work ends with.
pub(super) const FIT_CODES: &str = "Exit code: 0 done, 2 unreadable, 3 not fit for use, or too little to say";

/// Wrong usage, or an input that can't be read.
pub(super) const UNREADABLE: u8 = 2;
