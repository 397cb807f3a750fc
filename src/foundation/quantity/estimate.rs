//! One measured value with its uncertainty.

use crate::num::student_quantile;

/// A measured value with its standard uncertainty and effective degrees of
/// freedom, in the unit of its quantity (GUM 7.2).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate {
    /// Best estimate.
    pub value: f64,
    /// Combined standard uncertainty (1 sigma).
    pub standard_uncertainty: f64,
    /// Effective degrees of freedom (Welch-Satterthwaite, GUM G.4); infinite
    /// where no part of the uncertainty was estimated from a small sample.
    pub degrees_of_freedom: f64,
}

impl Estimate {
    /// A value whose uncertainty is known, not estimated from a sample.
    pub fn known(value: f64, standard_uncertainty: f64) -> Self {
        Estimate { value, standard_uncertainty, degrees_of_freedom: f64::INFINITY }
    }

    /// The Student factor for a 95 % interval.
    pub fn coverage_factor(&self) -> f64 {
        student_quantile(0.975, self.degrees_of_freedom)
    }

    /// Half the width of the 95 % interval.
    pub fn expanded_uncertainty(&self) -> f64 {
        self.coverage_factor() * self.standard_uncertainty
    }

    /// E_n after ISO/IEC 17043: difference over the root of the summed squares
    /// of both expanded uncertainties; `None` where neither has any.
    pub fn normalized_error(&self, other: &Estimate) -> Option<f64> {
        let expanded = self.expanded_uncertainty().hypot(other.expanded_uncertainty());
        Some((self.value - other.value) / expanded).filter(|e| e.is_finite())
    }
}
