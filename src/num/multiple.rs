//! Many tests at once.

/// Holm's adjusted probabilities (1979): named where below a level, the chance
/// of naming anything that is not there stays below that level, however the
/// tests hang together.
pub fn holm(p_values: &[f64]) -> Vec<f64> {
    let mut order: Vec<usize> = (0..p_values.len()).collect();
    order.sort_by(|a, b| p_values[*a].total_cmp(&p_values[*b]));
    let mut adjusted = vec![1.0; p_values.len()];
    let mut largest = 0.0f64;
    for (rank, i) in order.iter().enumerate() {
        largest = largest.max((p_values[*i] * (p_values.len() - rank) as f64).min(1.0));
        adjusted[*i] = largest;
    }
    adjusted
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn four_tests_by_hand() {
        // .005 x 4, .01 x 3, .03 x 2, then .04 x 1 lifted to its forerunner.
        let ours = holm(&[0.01, 0.04, 0.03, 0.005]);
        for (a, b) in ours.iter().zip([0.03, 0.06, 0.06, 0.02]) {
            assert!((a - b).abs() < 1e-12, "{ours:?}");
        }
    }
}
