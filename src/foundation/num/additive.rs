//! A mean made of one part for each factor: what one level adds, the other
//! factors taken out (Frisch and Waugh 1933).

use nalgebra::{Cholesky, DMatrix, DVector, Dyn};

use super::distribution::{normal_cdf, student_cdf};

/// A factor: each case's level, counted from 0.
#[derive(Debug, Clone, Copy)]
pub struct Factor<'a> {
    /// One for each case.
    pub codes: &'a [u32],
    /// How many levels there are.
    pub levels: usize,
}

/// The other factors' parts, ready to be taken out of anything.
#[derive(Debug)]
pub struct Additive<'a> {
    factors: Vec<Factor<'a>>,
    starts: Vec<usize>,
    unknowns: usize,
    normal: Cholesky<f64, Dyn>,
    cases: usize,
}

/// What a level adds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shift {
    /// Mean of the level's cases against the others', the other factors taken out.
    pub value: f64,
    /// 1 sigma: the larger of the pooled one and the one with the level's own spread (HC3 over
    /// its cases, MacKinnon and White 1985; the others' share is pooled).
    pub standard_error: f64,
    /// Degrees of freedom: the level's cases less one.
    pub degrees_of_freedom: f64,
    /// How much of the level the other factors leave to be told apart, 0 to 1.
    pub separable: f64,
}

impl Shift {
    /// Value over standard error.
    pub fn score(&self) -> f64 {
        self.value / self.standard_error
    }

    /// Two-sided probability of at least this shift where there is none.
    pub fn p_value(&self) -> f64 {
        let t = self.score().abs();
        if !t.is_finite() {
            return 1.0;
        }
        // Far out the two tails are nearer to zero than 1 less a distribution can say.
        let tail =
            if self.degrees_of_freedom > 1e6 { normal_cdf(-t) } else { student_cdf(-t, self.degrees_of_freedom) };
        (2.0 * tail).min(1.0)
    }
}

impl<'a> Additive<'a> {
    /// Over `cases` cases. Directions that the factors share are settled by a
    /// ridge of 1e-9, which changes no fitted value that counts.
    pub fn new(factors: Vec<Factor<'a>>, cases: usize) -> Option<Self> {
        let mut starts = vec![];
        let mut unknowns = 1;
        for f in &factors {
            starts.push(unknowns);
            unknowns += f.levels;
        }
        let mut matrix = DMatrix::<f64>::zeros(unknowns, unknowns);
        let mut own = vec![0usize; factors.len() + 1];
        for case in 0..cases {
            for (slot, (f, start)) in own[1..].iter_mut().zip(factors.iter().zip(&starts)) {
                *slot = start + f.codes[case] as usize;
            }
            for a in &own {
                for b in &own {
                    matrix[(*a, *b)] += 1.0;
                }
            }
        }
        for i in 0..unknowns {
            matrix[(i, i)] += 1e-9 * cases as f64 + 1e-9;
        }
        Some(Additive { normal: Cholesky::new(matrix)?, factors, starts, unknowns, cases })
    }

    /// `values` less what the factors explain.
    pub fn rest(&self, values: &[f64]) -> Vec<f64> {
        let mut right = DVector::<f64>::zeros(self.unknowns);
        for (case, value) in values.iter().enumerate() {
            right[0] += value;
            for (f, start) in self.factors.iter().zip(&self.starts) {
                right[start + f.codes[case] as usize] += value;
            }
        }
        let parts = self.normal.solve(&right);
        values.iter().enumerate().map(|(case, v)| v - self.fitted(&parts, case)).collect()
    }

    /// What the cases of `level` of another factor add to `rest`, which is what
    /// [`Additive::rest`] left of the values. The rest is square to everything that
    /// the factors explain, so that only the level's own cases need be looked at.
    pub fn shift(&self, rest: &[f64], codes: &[u32], level: u32) -> Option<Shift> {
        let own: Vec<usize> = (0..codes.len()).filter(|i| codes[*i] == level).collect();
        let count = own.len() as f64;
        if own.len() < 2 || own.len() >= self.cases {
            return None;
        }
        let mut right = DVector::<f64>::zeros(self.unknowns);
        right[0] = count;
        for case in &own {
            for (f, start) in self.factors.iter().zip(&self.starts) {
                right[start + f.codes[*case] as usize] += 1.0;
            }
        }
        let parts = self.normal.solve(&right);
        // 1 less what the other factors make of being in the level.
        let apart: Vec<f64> = own.iter().map(|case| 1.0 - self.fitted(&parts, *case)).collect();
        let square: f64 = apart.iter().sum();
        let separable = square / (count * (1.0 - count / self.cases as f64));
        if separable < 1e-6 {
            return Some(Shift { value: 0.0, standard_error: f64::INFINITY, degrees_of_freedom: 1.0, separable: 0.0 });
        }
        let value = own.iter().map(|case| rest[*case]).sum::<f64>() / square;
        let free = (self.cases.saturating_sub(self.unknowns + 1)).max(1) as f64;
        let total: f64 = rest.iter().map(|y| y * y).sum();
        let pooled = (total - value * value * square).max(0.0) / free;
        let (mut ours, mut weight) = (0.0, 0.0);
        for (x, case) in apart.iter().zip(&own) {
            let error = rest[*case] - value * x;
            ours += (x * error / (1.0 - x * x / square).max(1e-3)).powi(2);
            weight += x * x;
        }
        let mixed = ours + pooled * (square - weight).max(0.0);
        let standard_error = (pooled / square).sqrt().max(mixed.sqrt() / square);
        Some(Shift { value, standard_error, degrees_of_freedom: count - 1.0, separable })
    }

    fn fitted(&self, parts: &DVector<f64>, case: usize) -> f64 {
        let own = self.factors.iter().zip(&self.starts).map(|(f, s)| parts[s + f.codes[case] as usize]);
        parts[0] + own.sum::<f64>()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Two people, two bays, unbalanced; the person adds 2, the bay 10.
    const PEOPLE: [u32; 8] = [0, 0, 0, 1, 1, 1, 1, 0];
    const BAYS: [u32; 8] = [0, 0, 1, 1, 1, 1, 0, 0];

    fn values() -> Vec<f64> {
        let noise = [0.1, -0.1, 0.05, -0.05, 0.1, -0.1, 0.05, -0.05];
        (0..8).map(|i| 2.0 * f64::from(PEOPLE[i]) + 10.0 * f64::from(BAYS[i]) + noise[i]).collect()
    }

    #[test]
    fn a_person_is_told_from_the_bay() {
        let bays = Additive::new(vec![Factor { codes: &BAYS, levels: 2 }], 8).unwrap();
        let rest = bays.rest(&values());
        let shift = bays.shift(&rest, &PEOPLE, 1).unwrap();
        assert!((shift.value - 2.0).abs() < 0.1, "{shift:?}");
        // The plain difference of means would be 7.
        let mean = |who: u32| {
            let own: Vec<f64> = (0..8).filter(|i| PEOPLE[*i] == who).map(|i| values()[i]).collect();
            own.iter().sum::<f64>() / own.len() as f64
        };
        assert!(mean(1) - mean(0) > 6.0);
        assert!(shift.separable > 0.5 && shift.separable < 1.0);
    }

    #[test]
    fn what_always_goes_together_is_not_told_apart() {
        let bays = Additive::new(vec![Factor { codes: &BAYS, levels: 2 }], 8).unwrap();
        let shift = bays.shift(&bays.rest(&values()), &BAYS, 1).unwrap();
        assert!(shift.separable < 1e-6 && shift.p_value() > 0.99, "{shift:?}");
    }

    #[test]
    fn two_groups_give_the_welch_like_t() {
        let codes: Vec<u32> = (0..40).map(|i| u32::from(i >= 20)).collect();
        let y: Vec<f64> = (0..40).map(|i| f64::from((i * 37) % 11) + if i >= 20 { 3.0 } else { 0.0 }).collect();
        let plain = Additive::new(vec![], 40).unwrap();
        let shift = plain.shift(&plain.rest(&y), &codes, 1).unwrap();
        let mean = |r: std::ops::Range<usize>| y[r.clone()].iter().sum::<f64>() / r.len() as f64;
        assert!((shift.value - (mean(20..40) - mean(0..20))).abs() < 1e-6);
        assert!((shift.degrees_of_freedom - 19.0).abs() < 1e-12);
    }
}
