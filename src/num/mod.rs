//! Distributions and other numerics that know nothing of photos.

mod distribution;

pub use distribution::{normal_cdf, normal_quantile, student_cdf, student_quantile};
