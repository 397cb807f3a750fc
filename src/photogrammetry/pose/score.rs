//! Would one more unknown explain the misfit? Answered from the settled
//! equations without solving again (Lagrange multiplier or score test, Rao
//! 1948), with the size of it and the least size that would be noticed.

use nalgebra::{DMatrix, DVector};
use statrs::distribution::{ChiSquared, ContinuousCDF};

use super::extra::Extra;
use super::scene::Scene;
use super::sides::Sides;

/// What the test found.
#[derive(Debug, Clone)]
pub struct ScoreTest {
    /// Drop of the weighted sum of squares that the unknown would bring, in
    /// units of the a-priori image noise (not divided by the variance factor).
    pub drop: f64,
    /// Number of unknowns that can be told from the others.
    pub unknowns: usize,
    /// The unknown's estimate, in its own units.
    pub estimate: DVector<f64>,
    /// Covariance of the estimate with the a-posteriori variance.
    pub covariance: DMatrix<f64>,
    /// What the photos tell of the unknown once everything else is adjusted
    /// with it, in the inverse square of its units, at the a-posteriori variance.
    pub information: DMatrix<f64>,
}

impl ScoreTest {
    /// Probability of such a drop, or a larger one, by chance, with the image
    /// noise estimated from what the unknown does not explain.
    pub fn chance(&self, scene: &Scene) -> f64 {
        let freedom = scene.degrees_of_freedom - self.unknowns as f64;
        if self.unknowns == 0 || freedom < 1.0 {
            return 1.0;
        }
        let rest = (scene.variance * scene.degrees_of_freedom - self.drop).max(1e-12) / freedom;
        let f = self.drop / self.unknowns as f64 / rest;
        statrs::distribution::FisherSnedecor::new(self.unknowns as f64, freedom).map_or(1.0, |d| d.sf(f))
    }

    /// Standard uncertainty of some components along their worst direction.
    pub fn worst_u(&self, components: std::ops::Range<usize>) -> f64 {
        let n = components.len();
        let block = self.covariance.view((components.start, components.start), (n, n)).into_owned();
        if !block.iter().all(|x| x.is_finite()) {
            return f64::INFINITY;
        }
        ((&block + block.transpose()) / 2.0).symmetric_eigenvalues().max().max(0.0).sqrt()
    }

    /// The size along the worst direction of some components, the others being
    /// zero, that a test of this level finds with probability .95. `None`
    /// where a direction among them shows in no photo.
    pub fn detectable(&self, components: std::ops::Range<usize>, level: f64) -> Option<f64> {
        let n = components.len();
        let block = self.information.view((components.start, components.start), (n, n)).into_owned();
        let block = (&block + block.transpose()) / 2.0;
        let largest = block.diagonal().max();
        let least = block.symmetric_eigenvalues().min();
        if largest.is_nan() || least <= UNSEEN * largest || self.unknowns == 0 {
            return None;
        }
        Some((noncentrality(self.unknowns as f64, level)? / least).sqrt())
    }
}

/// A direction with less than this share of the best one's information is not seen.
const UNSEEN: f64 = 1e-7;

/// Noncentrality at which a chi-square test of `k` unknowns exceeds its
/// threshold with probability .95 (after Sankaran 1959: the square root of a
/// noncentral chi-square less its mean is nearly normal).
fn noncentrality(k: f64, level: f64) -> Option<f64> {
    let threshold = ChiSquared::new(k).ok()?.inverse_cdf(1.0 - level);
    // P(chi' < threshold) falls with lambda: bisection.
    let missed = |lambda: f64| {
        let (a, b) = (k + lambda, k + 2.0 * lambda);
        let h = 1.0 - 2.0 * a * (k + 3.0 * lambda) / (3.0 * b * b);
        let p = b / (a * a);
        let m = (h - 1.0) * (1.0 - 3.0 * h);
        let mean = 1.0 + h * p * (h - 1.0 - 0.5 * (2.0 - h) * m * p);
        let sd = h * (2.0 * p).sqrt() * (1.0 + 0.5 * m * p);
        crate::num::normal_cdf(((threshold / a).powf(h) - mean) / sd)
    };
    let (mut low, mut high) = (0.0, 4.0 * threshold + 100.0);
    for _ in 0..60 {
        let middle = f64::midpoint(low, high);
        if missed(middle) > 0.05 { low = middle } else { high = middle }
    }
    Some(high)
}

impl Scene {
    /// Tests one extra unknown. `None` where no photo could show it or where
    /// it can't be told from what the adjustment already has.
    pub fn score(&self, extra: &Extra) -> Option<ScoreTest> {
        let solved = &self.linear;
        let n = extra.count();
        let mut sides = Sides::zeros(&solved.normal.order, n);
        let mut shown = false;
        let (mut own, mut right) = (DMatrix::<f64>::zeros(n, n), DVector::<f64>::zeros(n));
        for (e, owner) in solved.equations.iter().zip(&solved.owners) {
            let Some(a) = extra.columns(e, *owner) else { continue };
            sides.add(&solved.normal.order, e, &a);
            shown = true;
            own += a.tr_mul(&a);
            right += a.tr_mul(&e.residual);
        }
        if !shown {
            return None;
        }
        let explained = solved.normal.quadratic(&sides);
        let information = &own - explained / self.variance;
        self.test(&own, &information, &right)
    }

    /// Estimate, covariance and drop from the information that is left.
    fn test(&self, own: &DMatrix<f64>, information: &DMatrix<f64>, right: &DVector<f64>) -> Option<ScoreTest> {
        let scale: Vec<f64> = own.diagonal().iter().map(|d| if *d > 0.0 { d.sqrt().recip() } else { 0.0 }).collect();
        let n = scale.len();
        let scaled =
            DMatrix::from_fn(n, n, |i, j| scale[i] * scale[j] * (information[(i, j)] + information[(j, i)]) / 2.0);
        let eigen = scaled.symmetric_eigen();
        // Directions that other unknowns absorb carry no information.
        let kept: Vec<usize> = (0..n).filter(|i| eigen.eigenvalues[*i] > 1e-7).collect();
        if kept.is_empty() {
            return None;
        }
        let mut inverse = DMatrix::zeros(n, n);
        for i in &kept {
            let v = eigen.eigenvectors.column(*i);
            inverse += v * v.transpose() / eigen.eigenvalues[*i];
        }
        let inverse = DMatrix::from_fn(n, n, |i, j| scale[i] * inverse[(i, j)] * scale[j]);
        let estimate = &inverse * right;
        let mut covariance = &inverse * self.variance;
        // A component with an unseen direction in it is not known at all.
        for i in 0..n {
            let unseen = (0..n).filter(|e| !kept.contains(e)).any(|e| eigen.eigenvectors[(i, e)].abs() > 0.1);
            if unseen {
                covariance[(i, i)] = f64::INFINITY;
            }
        }
        let information = information / self.variance;
        Some(ScoreTest { drop: right.dot(&estimate), unknowns: kept.len(), estimate, covariance, information })
    }
}

#[cfg(test)]
mod tests {
    use super::noncentrality;

    #[test]
    fn power_of_a_chi_square_test() {
        // SciPy 1.x, ncx2.sf(chi2.ppf(1 - level, k), k, lambda) = 0.95 solved for lambda.
        for (k, level, lambda) in [(1.0, 0.05, 12.995), (1.0, 1e-4, 30.641), (2.0, 1e-4, 34.066), (6.0, 1e-4, 42.175)] {
            let ours = noncentrality(k, level).unwrap();
            assert!((ours / lambda - 1.0).abs() < 0.01, "{k} at {level}: {ours} against {lambda}");
        }
    }
}
