//! What is asked of the measurement, and what besides is computed so that answers can be doubted.

mod answers;
mod as_one;
mod doubts;
mod ride_height;

pub(super) use answers::{Questions, check_asks, line_of};
pub(super) use doubts::{detectable_records, elsewhere, photo_facts, sensitivity_records};
pub(super) use ride_height::ride_height;
