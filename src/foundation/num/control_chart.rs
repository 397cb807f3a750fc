//! Shewhart's charts: single values with their moving ranges, and shares.

/// Three standard deviations of a single value over the mean moving range:
/// 3 / d2, d2 = 1.128 for two values.
const INDIVIDUALS: f64 = 2.660;
/// Upper limit of the moving range over its mean: D4 for two values.
const RANGES: f64 = 3.267;

/// A chart's centre and limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// Centre line.
    pub centre: f64,
    /// Lower limit.
    pub lower: f64,
    /// Upper limit.
    pub upper: f64,
}

/// Chart of single values and of the differences between neighbours.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct IndividualsChart {
    /// For the values.
    pub values: Limits,
    /// For the moving ranges.
    pub ranges: Limits,
}

/// Limits from values in the order of time; `None` for fewer than two.
pub fn individuals_chart(values: &[f64]) -> Option<IndividualsChart> {
    if values.len() < 2 {
        return None;
    }
    let mean = values.iter().sum::<f64>() / values.len() as f64;
    let range = values.windows(2).map(|w| (w[1] - w[0]).abs()).sum::<f64>() / (values.len() - 1) as f64;
    Some(IndividualsChart {
        values: Limits { centre: mean, lower: mean - INDIVIDUALS * range, upper: mean + INDIVIDUALS * range },
        ranges: Limits { centre: range, lower: 0.0, upper: RANGES * range },
    })
}

/// Limits of the share of a group of `size` where the mean share is `mean`:
/// three standard deviations of the binomial, within 0 and 1.
pub fn share_limits(mean: f64, size: usize) -> Limits {
    let half = 3.0 * (mean * (1.0 - mean) / size.max(1) as f64).sqrt();
    Limits { centre: mean, lower: (mean - half).max(0.0), upper: (mean + half).min(1.0) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_flow_rates_of_the_nist_handbook() {
        // NIST/SEMATECH e-Handbook 6.3.2.2 (figures from memory; data and limits agree with each other).
        let flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
        let chart = individuals_chart(&flow).unwrap();
        assert!((chart.values.centre - 50.81).abs() < 1e-9);
        assert!((chart.ranges.centre - 1.8778).abs() < 5e-5);
        // It divides by d2 = 1.128: 3 / 1.128 = 2.6596 against the table's 2.660.
        assert!((chart.values.upper - 55.8041).abs() < 2e-3 && (chart.values.lower - 45.8159).abs() < 2e-3);
    }

    #[test]
    fn the_wafers_of_the_nist_handbook() {
        // NIST/SEMATECH e-Handbook 6.3.3.2: 30 wafers of 50 chips, mean share .2313; limits computed from it.
        let wafers = [
            12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6,
        ];
        let mean = f64::from(wafers.iter().sum::<i32>()) / 1500.0;
        assert!((mean - 0.2313).abs() < 5e-5);
        let limits = share_limits(mean, 50);
        assert!((limits.upper - 0.4102).abs() < 5e-5 && (limits.lower - 0.0524).abs() < 5e-5, "{limits:?}");
    }
}
