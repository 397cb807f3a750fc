//! The cumulative sum chart (Page 1954) and how long it runs.

use nalgebra::{DMatrix, DVector};

use super::distribution::normal_cdf;

/// A two-sided chart of standardised values.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CusumDesign {
    /// Allowance: half of the shift that it is made for, in standard deviations.
    pub allowance: f64,
    /// Decision interval, in standard deviations.
    pub interval: f64,
}

/// States of the chain that stands for the sum's place between zero and the interval.
const STATES: usize = 80;

impl CusumDesign {
    /// The upper and the lower sum after each value.
    pub fn sums(&self, values: &[f64]) -> Vec<[f64; 2]> {
        let mut sums = [0.0f64; 2];
        let step = |value: &f64| {
            sums = [(sums[0] + value - self.allowance).max(0.0), (sums[1] - value - self.allowance).max(0.0)];
            sums
        };
        values.iter().map(step).collect()
    }

    /// Mean number of values until one of the sums passes the interval, where
    /// the mean is off by `shift` standard deviations: 1 / ARL = 1 / ARL+ + 1 / ARL-
    /// (Van Dobben de Bruyn 1968).
    pub fn mean_run_length(&self, shift: f64) -> f64 {
        1.0 / (1.0 / self.one_sided(shift) + 1.0 / self.one_sided(-shift))
    }

    /// The upper sum alone, as a Markov chain (Brook and Evans 1972).
    fn one_sided(&self, shift: f64) -> f64 {
        let width = 2.0 * self.interval / (2 * STATES - 1) as f64;
        // From the middle of state i to state j: what the next value must be.
        let below = |edge: f64| normal_cdf(edge + self.allowance - shift);
        let chance = |i: usize, j: usize| {
            let step = (j as f64 - i as f64) * width;
            if j == 0 { below(step + width / 2.0) } else { below(step + width / 2.0) - below(step - width / 2.0) }
        };
        let stay = DMatrix::from_fn(STATES, STATES, |i, j| f64::from(u8::from(i == j)) - chance(i, j));
        stay.lu().solve(&DVector::from_element(STATES, 1.0)).map_or(f64::INFINITY, |runs| runs[0])
    }

    /// The chart of this allowance whose mean run length without a shift is `wanted`.
    pub fn with_run_length(allowance: f64, wanted: f64) -> Self {
        let (mut low, mut high) = (0.1, 20.0);
        for _ in 0..40 {
            let interval = f64::midpoint(low, high);
            if (CusumDesign { allowance, interval }).mean_run_length(0.0) < wanted {
                low = interval;
            } else {
                high = interval;
            }
        }
        CusumDesign { allowance, interval: f64::midpoint(low, high) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn run_lengths_of_the_usual_design() {
        // Two-sided, allowance .5, interval 4 and 5: the figures found in every textbook of
        // statistical process control (from memory).
        let four = [(0.0, 168.0), (0.5, 26.6), (1.0, 8.38), (2.0, 3.34)];
        let five = [(0.0, 465.0), (0.5, 38.0), (1.0, 10.4), (2.0, 4.01)];
        for (interval, table) in [(4.0, four), (5.0, five)] {
            for (shift, known) in table {
                let ours = CusumDesign { allowance: 0.5, interval }.mean_run_length(shift);
                assert!(
                    (ours / known - 1.0).abs() < 0.01,
                    "interval {interval}, shift {shift}: {ours} against {known}"
                );
            }
        }
    }

    #[test]
    fn a_wanted_run_length_is_designed() {
        let design = CusumDesign::with_run_length(0.5, 370.0);
        // 4.77 is the usual interval for 370 (from memory).
        assert!((design.interval - 4.77).abs() < 0.02, "{design:?}");
    }

    #[test]
    fn simulated_runs_are_as_long_as_computed() {
        use rand::SeedableRng;
        let mut rng = rand::rngs::ChaCha8Rng::seed_from_u64(5);
        let design = CusumDesign { allowance: 0.5, interval: 3.0 };
        let runs = 3000;
        let mut total = 0usize;
        for _ in 0..runs {
            let mut sums = [0.0f64; 2];
            while sums[0].max(sums[1]) <= design.interval {
                let value =
                    super::super::distribution::normal_quantile(rand::RngExt::random_range(&mut rng, 1e-12..1.0));
                sums = [(sums[0] + value - 0.5).max(0.0), (sums[1] - value - 0.5).max(0.0)];
                total += 1;
            }
        }
        let (seen, computed) = (total as f64 / f64::from(runs), design.mean_run_length(0.0));
        // Run lengths spread about as much as they are long: 1 sigma is computed / sqrt(3000).
        assert!((seen / computed - 1.0).abs() < 0.08, "{seen} against {computed}");
    }
}
