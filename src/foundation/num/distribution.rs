//! Normal and Student distributions; degrees of freedom may be infinite.

use statrs::distribution::{ContinuousCDF, FisherSnedecor, Normal, StudentsT};

/// Beyond this many degrees of freedom the Student distribution is taken as
/// normal: the 97.5 % quantiles differ by less than 1e-5.
const NORMAL_FROM: f64 = 1e6;

/// Standard deviations of a normal distribution beyond which one in twenty lies, on one side.
pub const ONE_SIDED_95: f64 = 1.645;

/// Probability that a standard normal variate is at most `x`.
pub fn normal_cdf(x: f64) -> f64 {
    Normal::standard().cdf(x)
}

/// The `p` quantile of the standard normal distribution, 0 < p < 1.
pub fn normal_quantile(p: f64) -> f64 {
    Normal::standard().inverse_cdf(p)
}

/// Probability that a Student variate is at most `x`.
pub fn student_cdf(x: f64, degrees_of_freedom: f64) -> f64 {
    match student(degrees_of_freedom) {
        Some(t) => t.cdf(x),
        None => normal_cdf(x),
    }
}

/// The `p` quantile of the Student distribution, 0 < p < 1.
pub fn student_quantile(p: f64, degrees_of_freedom: f64) -> f64 {
    match student(degrees_of_freedom) {
        Some(t) => t.inverse_cdf(p),
        None => normal_quantile(p),
    }
}

/// Probability that Fisher's variance ratio with these degrees of freedom
/// exceeds `ratio`; 1 where the degrees of freedom are none.
pub fn fisher_tail(ratio: f64, above: f64, below: f64) -> f64 {
    FisherSnedecor::new(above, below).map_or(1.0, |f| f.sf(ratio.max(0.0)))
}

fn student(degrees_of_freedom: f64) -> Option<StudentsT> {
    if degrees_of_freedom > NORMAL_FROM {
        return None;
    }
    StudentsT::new(0.0, 1.0, degrees_of_freedom.max(0.5)).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_match_the_gum_table_g2() {
        // JCGM 100:2008, table G.2, 95 % column (two-sided).
        for (nu, t) in [(1.0, 12.71), (4.0, 2.78), (10.0, 2.23), (30.0, 2.04), (f64::INFINITY, 1.96)] {
            let ours = student_quantile(0.975, nu);
            assert!((ours - t).abs() < 0.006, "nu {nu}: {ours} against {t}");
        }
    }
}
