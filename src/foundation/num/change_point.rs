//! Whether the mean of a series changed once, and when.

/// The most likely single change of a series' mean.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChangePoint {
    /// Values before it.
    pub before: usize,
    /// Means before and after.
    pub means: [f64; 2],
    /// Largest cumulated deviation over s sqrt(n).
    pub statistic: f64,
    /// Probability of at least this statistic without a change.
    pub p_value: f64,
}

/// Fewest values that are looked at.
const LEAST: usize = 20;

/// The largest cumulated deviation from the mean (Page 1954), held against the
/// supremum of a Brownian bridge (the Kolmogorov distribution, which counts a
/// finite series as a little less unusual than it is). `None` for fewer than 20
/// values or no spread.
pub fn change_point(values: &[f64]) -> Option<ChangePoint> {
    let n = values.len();
    if n < LEAST {
        return None;
    }
    let mean = values.iter().sum::<f64>() / n as f64;
    let square = values.iter().map(|v| (v - mean).powi(2)).sum::<f64>() / (n - 1) as f64;
    if square <= 0.0 {
        return None;
    }
    let (mut sum, mut largest, mut before) = (0.0f64, 0.0f64, 1);
    for (i, v) in values[..n - 1].iter().enumerate() {
        sum += v - mean;
        if sum.abs() > largest {
            (largest, before) = (sum.abs(), i + 1);
        }
    }
    let mean_of = |part: &[f64]| part.iter().sum::<f64>() / part.len() as f64;
    let statistic = largest / (square * n as f64).sqrt();
    Some(ChangePoint {
        before,
        means: [mean_of(&values[..before]), mean_of(&values[before..])],
        statistic,
        p_value: kolmogorov_tail(statistic),
    })
}

/// Probability that the supremum of a Brownian bridge's modulus exceeds `x`.
pub fn kolmogorov_tail(x: f64) -> f64 {
    if x < 0.2 {
        return 1.0;
    }
    let term = |k: i32| f64::from(if k % 2 == 1 { 2 } else { -2 }) * (-2.0 * f64::from(k * k) * x * x).exp();
    (1..=100).map(term).sum::<f64>().clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_kolmogorov_distribution_s_usual_quantiles() {
        // Tables since Smirnov (1948), from memory: 1.224 at 10 %, 1.358 at 5 %, 1.628 at 1 %.
        for (x, p) in [(1.224, 0.10), (1.358, 0.05), (1.628, 0.01)] {
            assert!((kolmogorov_tail(x) - p).abs() < 5e-4, "{x}");
        }
        assert!((kolmogorov_tail(0.0) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_step_is_found_where_it_is() {
        let noise = |i: usize| f64::from(((i * 7919) % 101) as u32) / 50.0 - 1.0;
        let values: Vec<f64> = (0..200).map(|i| noise(i) + if i >= 120 { 1.5 } else { 0.0 }).collect();
        let change = change_point(&values).unwrap();
        assert!(change.before.abs_diff(120) <= 3 && change.p_value < 1e-9, "{change:?}");
        assert!((change.means[1] - change.means[0] - 1.5).abs() < 0.2);
        let flat: Vec<f64> = (0..200).map(noise).collect();
        assert!(change_point(&flat).unwrap().p_value > 0.2);
    }
}
