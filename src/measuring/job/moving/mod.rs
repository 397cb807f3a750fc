//! A stand that was moved between photos: its positions, its screws, what to do first.

mod first;
mod last_position;
mod screws;
mod track;

pub(super) use first::first;
pub(super) use track::track;
