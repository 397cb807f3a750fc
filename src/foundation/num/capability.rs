//! How well a spread fits between limits.

use statrs::distribution::{ChiSquared, ContinuousCDF};

use super::distribution::normal_quantile;

/// Capability indices with two-sided intervals (ISO 22514-2; NIST/SEMATECH
/// e-Handbook 6.1.6), for a roughly normal spread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Capability {
    /// Width of the limits over six standard deviations.
    pub potential: f64,
    /// Its interval, by the chi-squared distribution.
    pub potential_interval: [f64; 2],
    /// Distance of the mean to the nearer limit over three standard deviations.
    pub actual: f64,
    /// Its interval, by the normal approximation (Bissell 1990).
    pub actual_interval: [f64; 2],
}

/// Of `count` values with this mean and standard deviation between two limits;
/// `None` for fewer than two values or no spread.
pub fn capability(count: usize, mean: f64, deviation: f64, limits: [f64; 2], confidence: f64) -> Option<Capability> {
    if count < 2 || deviation <= 0.0 || !deviation.is_finite() {
        return None;
    }
    let potential = (limits[1] - limits[0]) / (6.0 * deviation);
    let actual = (limits[1] - mean).min(mean - limits[0]) / (3.0 * deviation);
    let (n, below) = (count as f64, (1.0 - confidence) / 2.0);
    let chi = ChiSquared::new(n - 1.0).ok()?;
    let scale = |p: f64| (chi.inverse_cdf(p) / (n - 1.0)).sqrt();
    let half = normal_quantile(1.0 - below) * (1.0 / (9.0 * n) + actual * actual / (2.0 * (n - 1.0))).sqrt();
    Some(Capability {
        potential,
        potential_interval: [potential * scale(below), potential * scale(1.0 - below)],
        actual,
        actual_interval: [actual - half, actual + half],
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_example_of_the_nist_handbook() {
        // NIST/SEMATECH e-Handbook 6.1.6 (from memory): limits 8 and 20, mean 16, s 2: Cp 1.0, Cpk .6667.
        let c = capability(50, 16.0, 2.0, [8.0, 20.0], 0.95).unwrap();
        assert!((c.potential - 1.0).abs() < 1e-12 && (c.actual - 2.0 / 3.0).abs() < 1e-12);
        // chi-squared, 49 degrees of freedom: .025 and .975 quantiles 31.555 and 70.222 (tables, from memory).
        assert!((c.potential_interval[0] - (31.555f64 / 49.0).sqrt()).abs() < 1e-4);
        assert!((c.potential_interval[1] - (70.222f64 / 49.0).sqrt()).abs() < 1e-4);
    }

    #[test]
    fn without_spread_there_is_no_index() {
        assert_eq!(capability(9, 1.0, 0.0, [0.0, 2.0], 0.95), None);
        assert_eq!(capability(1, 1.0, 1.0, [0.0, 2.0], 0.95), None);
    }
}
