//! Which camera took a photo, by the pattern of its sensor.
//!
//! No two pixels answer the same light quite alike, and how they differ stays
//! with a sensor for years: `pattern` estimates that from a camera's own
//! photos and looks for it in others, in a build with the feature of that name. What is known of its errors is in
//! `docs/sensor-pattern.md`.

#[cfg(feature = "pattern")]
pub(crate) use baywitness_words as words;

#[cfg(feature = "pattern")]
pub mod pattern;
