//! A job from folder to record: alone, watched, or with others of its series.

mod judge;
mod series;
mod solve;
mod verify;

pub(super) use solve::why_no_scene;
pub use verify::{attempts_beside, verify, verify_all, verify_and, verify_watching};
