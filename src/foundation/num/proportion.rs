//! A share with its interval.

use super::distribution::normal_quantile;

/// Wilson's score interval (1927) for `hits` of `of` at a two-sided confidence;
/// 0 to 1 where nothing was counted. It stays within 0 and 1 and is fair for
/// small counts, unlike the share plus or minus its standard error.
pub fn wilson(hits: usize, of: usize, confidence: f64) -> [f64; 2] {
    if of == 0 {
        return [0.0, 1.0];
    }
    let (n, share) = (of as f64, hits as f64 / of as f64);
    let z = normal_quantile(0.5 + confidence / 2.0);
    let grown = 1.0 + z * z / n;
    let middle = (share + z * z / (2.0 * n)) / grown;
    let half = z * (share * (1.0 - share) / n + z * z / (4.0 * n * n)).sqrt() / grown;
    [if hits == 0 { 0.0 } else { middle - half }, if hits == of { 1.0 } else { middle + half }]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_handbook_s_formula_for_four_of_twenty() {
        // NIST/SEMATECH e-Handbook 7.2.4.1 gives the formula; its example 4 of 20 at 90 %
        // is solved here by hand: z = 1.644854, z^2 = 2.705543.
        let [low, high] = wilson(4, 20, 0.9);
        let z2: f64 = 2.705_543;
        let by_hand = |sign: f64| {
            (0.2 + z2 / 40.0 + sign * (z2 * (0.2 * 0.8 / 20.0) + z2 * z2 / 1600.0).sqrt()) / (1.0 + z2 / 20.0)
        };
        assert!((low - by_hand(-1.0)).abs() < 1e-6 && (high - by_hand(1.0)).abs() < 1e-6, "{low} {high}");
        // Each end is where the score test just rejects: |p - .2| = z sqrt(p (1 - p) / 20).
        for end in [low, high] {
            assert!(((end - 0.2).powi(2) - z2 * end * (1.0 - end) / 20.0).abs() < 1e-6);
        }
    }

    #[test]
    fn the_ends_are_kept() {
        assert!(wilson(0, 0, 0.95)[0].abs() < 1e-15 && (wilson(0, 0, 0.95)[1] - 1.0).abs() < 1e-15);
        assert!(wilson(0, 9, 0.95)[0].abs() < 1e-15 && (wilson(9, 9, 0.95)[1] - 1.0).abs() < 1e-15);
    }
}
