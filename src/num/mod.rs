//! Distributions and other numerics that know nothing of photos.

mod distribution;
mod gauge_study;
mod median;

pub use distribution::{fisher_tail, normal_cdf, normal_quantile, student_cdf, student_quantile};
pub use gauge_study::{GaugeMethod, GaugeStudy, Reading, gauge_study};
pub use median::median;
