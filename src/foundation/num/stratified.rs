//! Two-by-two tables in strata (Mantel and Haenszel 1959): whether something
//! happens more often in a group than beside it, like against like.

/// One stratum: of `size` cases `hits` show it; `own` of them belong to the group.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stratum {
    /// Cases.
    pub size: usize,
    /// Cases that show it.
    pub hits: usize,
    /// Cases of the group.
    pub own: usize,
}

/// The group against what its strata let expect.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Excess {
    /// Expected number in the group without a difference.
    pub expected: f64,
    /// Standard deviation of that number.
    pub deviation: f64,
    /// Probability of at least the number that was seen.
    pub p_value: f64,
}

/// Below so many standard deviations the probability is the normal one: it is
/// nowhere near anything that would be named.
const FAR: f64 = 3.0;

/// Probability of `seen` or more hits in the group where hits fall at random
/// among each stratum's cases: exact, the sum of independent hypergeometric
/// numbers. `None` where no stratum tells the group from the rest.
pub fn excess(strata: &[Stratum], seen: usize) -> Option<Excess> {
    let telling: Vec<Stratum> = strata.iter().copied().filter(|s| s.own > 0 && s.own < s.size).collect();
    // Where a whole stratum is the group's own, its hits are fixed.
    let fixed: usize = strata.iter().filter(|s| s.own == s.size).map(|s| s.hits).sum();
    let (mut mean, mut variance) = (0.0, 0.0);
    for s in &telling {
        let (n, k, m) = (s.size as f64, s.hits as f64, s.own as f64);
        mean += m * k / n;
        variance += if s.size > 1 { m * k * (n - k) * (n - m) / (n * n * (n - 1.0)) } else { 0.0 };
    }
    if variance <= 0.0 {
        return None;
    }
    let (seen, deviation) = (seen.saturating_sub(fixed), variance.sqrt());
    let away = (seen as f64 - mean) / deviation;
    let p_value = if away < FAR { super::normal_cdf(0.5 / deviation - away) } else { tail(&telling, seen) };
    Some(Excess { expected: mean + fixed as f64, deviation, p_value })
}

/// P(sum >= seen) by convolution; what lies beyond `seen` is kept as one sum.
fn tail(strata: &[Stratum], seen: usize) -> f64 {
    let mut exact = vec![1.0f64];
    let mut beyond = 0.0f64;
    for s in strata.iter().filter(|s| s.hits > 0) {
        let (least, one) = hypergeometric(s);
        let mut next = vec![0.0; (exact.len() + least + one.len() - 1).min(seen)];
        for (i, p) in exact.iter().enumerate() {
            for (j, q) in one.iter().enumerate() {
                match next.get_mut(i + least + j) {
                    Some(cell) => *cell += p * q,
                    None => beyond += p * q,
                }
            }
        }
        exact = next;
    }
    if seen == 0 { 1.0 } else { beyond.min(1.0) }
}

/// The least possible number of the group's hits, and the probabilities from it on.
fn hypergeometric(s: &Stratum) -> (usize, Vec<f64>) {
    let least = (s.own + s.hits).saturating_sub(s.size);
    let most = s.own.min(s.hits);
    // Ratios of neighbours, from the least on; then scaled to sum 1.
    let mut logs = vec![0.0f64];
    for x in least..most {
        let up = ((s.hits - x) * (s.own - x)) as f64;
        let down = ((x + 1) * (s.size + x + 1 - s.hits - s.own)) as f64;
        logs.push(logs[logs.len() - 1] + (up / down).ln());
    }
    let top = logs.iter().copied().fold(f64::MIN, f64::max);
    let weights: Vec<f64> = logs.iter().map(|l| (l - top).exp()).collect();
    let sum: f64 = weights.iter().sum();
    (least, weights.into_iter().map(|w| w / sum).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_stratum_is_fisher_s_tea_tasting() {
        // Fisher (1935): eight cups, four with milk first, all four named: 1 / 70.
        let p = tail(&[Stratum { size: 8, hits: 4, own: 4 }], 4);
        assert!((p - 1.0 / 70.0).abs() < 1e-12);
        let p = tail(&[Stratum { size: 8, hits: 4, own: 4 }], 3);
        assert!((p - 17.0 / 70.0).abs() < 1e-12);
    }

    #[test]
    fn strata_add_and_whole_ones_say_nothing() {
        let cups = Stratum { size: 8, hits: 4, own: 4 };
        // Both tables full: the product.
        assert!((tail(&[cups, cups], 8) - 1.0 / 4900.0).abs() < 1e-12);
        let own = Stratum { size: 5, hits: 3, own: 5 };
        assert_eq!(excess(&[own], 3), None);
        let with = excess(&[cups, cups, own], 11).unwrap();
        assert!((with.expected - 7.0).abs() < 1e-12, "{with:?}");
        assert!((with.p_value - 1.0 / 4900.0).abs() < 1e-9 || with.p_value > 1e-3, "{with:?}");
    }
}
