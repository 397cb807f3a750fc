//! Surveys: sampled and rendered kits with hidden layout errors, real photos of a room.
#![cfg(test)]

mod rendered;
mod room;
mod sampled;
mod sampler;
