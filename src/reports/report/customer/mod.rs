//! One page without jargon, for whoever owns or insures the vehicle: what was
//! proven, what was not, by which photos, whose limits, and what that means.

mod page;
mod series;
mod words;

pub use page::customer_html;
pub(super) use page::section;
pub use series::{by_series, file_stem, series_html, stem};
