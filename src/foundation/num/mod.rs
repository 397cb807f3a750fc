//! Distributions and other numerics that know nothing of photos.

mod additive;
mod capability;
mod change_point;
mod control_chart;
mod cusum;
mod distribution;
mod gauge_study;
mod lower;
mod median;
mod proportion;
mod stratified;

pub use additive::{Additive, Factor, Shift};
pub use capability::{Capability, capability};
pub use change_point::{ChangePoint, change_point, kolmogorov_tail};
pub use control_chart::{IndividualsChart, Limits, individuals_chart, share_limits};
pub use cusum::CusumDesign;
pub use distribution::{ONE_SIDED_95, fisher_tail, normal_cdf, normal_quantile, student_cdf, student_quantile};
pub use gauge_study::{GaugeMethod, GaugeStudy, Reading, gauge_study};
pub use lower::{Lower, add, cholesky, column_squares, inverse_factor, subtract_square};
pub use median::median;
pub use proportion::wilson;
pub use stratified::{Excess, Stratum, excess};
