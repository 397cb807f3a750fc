//! Would one more unknown explain the misfit? Answered from the settled
//! equations without solving again (Lagrange multiplier or score test, Rao
//! 1948), with the size of it and the least size that would be noticed.

use nalgebra::{DMatrix, DVector};
use statrs::distribution::{ChiSquared, ContinuousCDF};

use super::columns::PHOTO;
use super::scene::Scene;

/// An unknown that the adjustment did not have.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Extra {
    /// A carrier stood elsewhere in one photo: its step there, x y z mm, about x y z rad.
    CarrierMoved {
        /// Index in the rig.
        carrier: usize,
        /// Index in the problem.
        photo: usize,
    },
    /// All markers of a carrier have another size: relative.
    CarrierScale {
        /// Index in the rig.
        carrier: usize,
    },
    /// One photo has another focal length than its prior allows: relative.
    PhotoFocal {
        /// Index in the problem.
        photo: usize,
    },
    /// One floor sheet does not lie in the plane of the others: z mm, about x and y rad.
    SheetOffFloor {
        /// Index in the rig.
        carrier: usize,
    },
}

impl Extra {
    fn count(self) -> usize {
        match self {
            Extra::CarrierMoved { .. } => 6,
            Extra::CarrierScale { .. } | Extra::PhotoFocal { .. } => 1,
            Extra::SheetOffFloor { .. } => 3,
        }
    }
}

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

    /// Standard uncertainty of each component.
    pub fn u(&self) -> DVector<f64> {
        self.covariance.diagonal().map(|v| v.max(0.0).sqrt())
    }

    /// The size of component `i`, alone, that a test of this level finds with
    /// probability .95 (noncentral chi-square by its normal approximation).
    pub fn detectable(&self, i: usize, level: f64) -> Option<f64> {
        let u = self.u().get(i).copied().filter(|u| *u > 0.0 && u.is_finite())?;
        let k = self.unknowns.max(1) as f64;
        let threshold = ChiSquared::new(k).ok()?.inverse_cdf(1.0 - level);
        // Patnaik: noncentrality with which threshold is exceeded in 95 %.
        let mut lambda = threshold;
        for _ in 0..60 {
            let (mean, variance) = (k + lambda, 2.0 * (k + 2.0 * lambda));
            let miss = mean - 1.645 * variance.sqrt() - threshold;
            lambda -= miss / (1.0 - 1.645 * 2.0 / variance.sqrt()).max(0.2);
            lambda = lambda.max(1e-3);
        }
        Some(u * lambda.sqrt())
    }
}

impl Scene {
    /// Tests one extra unknown. `None` where no photo could show it or where
    /// it can't be told from what the adjustment already has.
    pub fn score(&self, extra: Extra) -> Option<ScoreTest> {
        let solved = &self.linear;
        let n = extra.count();
        let mut photos = vec![DMatrix::<f64>::zeros(PHOTO, n); solved.columns.photos.len()];
        let mut shared = DMatrix::<f64>::zeros(solved.columns.shared, n);
        let (mut own, mut right) = (DMatrix::<f64>::zeros(n, n), DVector::<f64>::zeros(n));
        let mut touched = false;
        for (e, owner) in solved.equations.iter().zip(&solved.owners) {
            let Some(columns) = columns(extra, e, *owner) else { continue };
            touched = true;
            let a = e.whitened(&columns)?;
            photos[e.block] += e.by_photo.tr_mul(&a);
            let cross = e.by_shared.tr_mul(&a);
            for (r, column) in e.shared.iter().enumerate() {
                let mut row = shared.row_mut(*column);
                row += cross.row(r);
            }
            own += a.tr_mul(&a);
            right += a.tr_mul(&e.residual);
        }
        if !touched {
            return None;
        }
        let (photo_part, shared_part) = solved.normal.solve_many(&photos, &shared);
        let mut explained = shared.tr_mul(&shared_part);
        for (p, q) in photos.iter().zip(&photo_part) {
            explained += p.tr_mul(q);
        }
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
        Some(ScoreTest { drop: right.dot(&estimate), unknowns: kept.len(), estimate, covariance })
    }
}

/// Derivatives of one view's corners by the extra unknown, px; `None` where it has none.
fn columns(extra: Extra, e: &super::residual::Equations, (carrier, photo): (usize, usize)) -> Option<DMatrix<f64>> {
    let m = e.residual.len();
    match extra {
        Extra::CarrierMoved { carrier: k, photo: j } => (k == carrier && j == photo).then(|| e.by_carrier_px.clone()),
        Extra::CarrierScale { carrier: k } => {
            (k == carrier).then(|| DMatrix::from_column_slice(m, 1, e.by_size_px.as_slice()))
        }
        Extra::PhotoFocal { photo: j } => {
            (j == photo).then(|| DMatrix::from_column_slice(m, 1, e.by_focal_px.as_slice()))
        }
        Extra::SheetOffFloor { carrier: k } => (k == carrier).then(|| e.by_carrier_px.columns(2, 3).into_owned()),
    }
}
