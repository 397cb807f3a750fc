//! Normal equations with the photos' own unknowns eliminated one photo at a
//! time (the bordered block-diagonal form of bundle adjustment; Brown 1958,
//! Triggs et al. 2000).

use nalgebra::{DMatrix, DVector, SMatrix, SVector};

use super::equations::Equations;
use super::state::PHOTO;

/// The equations of all photos.
#[derive(Debug, Clone)]
pub(super) struct Normal {
    shared: DMatrix<f64>,
    right: DVector<f64>,
    photos: Vec<PhotoNormal>,
}

#[derive(Debug, Clone)]
struct PhotoNormal {
    own: SMatrix<f64, PHOTO, PHOTO>,
    /// Own unknowns by shared ones.
    across: DMatrix<f64>,
    right: SVector<f64, PHOTO>,
}

/// A solution of the normal equations.
pub(super) struct Step {
    pub(super) shared: DVector<f64>,
    pub(super) photos: Vec<SVector<f64, PHOTO>>,
}

/// Covariances of the unknowns (in the units of the equations).
#[derive(Debug, Clone)]
pub(super) struct Covariance {
    pub(super) shared: DMatrix<f64>,
    pub(super) photos: Vec<SMatrix<f64, PHOTO, PHOTO>>,
}

impl Normal {
    pub(super) fn new(shared: usize, photos: usize) -> Self {
        let photo =
            PhotoNormal { own: SMatrix::zeros(), across: DMatrix::zeros(PHOTO, shared), right: SVector::zeros() };
        Normal { shared: DMatrix::zeros(shared, shared), right: DVector::zeros(shared), photos: vec![photo; photos] }
    }

    /// Adds one element's equations with a weight.
    pub(super) fn add(&mut self, photo: usize, e: &Equations, weight: f64) {
        let block = &mut self.photos[photo];
        block.own += e.by_photo.tr_mul(&e.by_photo) * weight;
        block.right += e.by_photo.tr_mul(&e.residual) * weight;
        let across = e.by_photo.tr_mul(&e.by_shared) * weight;
        let shared = e.by_shared.tr_mul(&e.by_shared) * weight;
        let right = e.by_shared.tr_mul(&e.residual) * weight;
        for (i, &a) in e.columns.iter().enumerate() {
            let mut column = block.across.column_mut(a);
            column += across.column(i);
            self.right[a] += right[i];
            for (j, &b) in e.columns.iter().enumerate() {
                self.shared[(a, b)] += shared[(i, j)];
            }
        }
    }

    /// A prior of unit variance at zero for a shared unknown that now has `value`.
    pub(super) fn prior_shared(&mut self, column: usize, value: f64) {
        self.shared[(column, column)] += 1.0;
        self.right[column] -= value;
    }

    /// Likewise for a photo's unknown.
    pub(super) fn prior_photo(&mut self, photo: usize, column: usize, value: f64) {
        let block = &mut self.photos[photo];
        block.own[(column, column)] += 1.0;
        block.right[column] -= value;
    }

    /// Holds a shared unknown where it is.
    pub(super) fn hold(&mut self, column: usize) {
        self.shared.row_mut(column).fill(0.0);
        self.shared.column_mut(column).fill(0.0);
        self.shared[(column, column)] = 1.0;
        self.right[column] = 0.0;
        for block in &mut self.photos {
            block.across.column_mut(column).fill(0.0);
        }
    }

    /// Solves with every diagonal element enlarged by the factor 1 + damping
    /// (Marquardt 1963). `None` where the equations don't determine the unknowns.
    pub(super) fn solve(&self, damping: f64) -> Option<Step> {
        let mut reduced = self.shared.clone();
        enlarge(&mut reduced, damping);
        let mut right = self.right.clone();
        let mut kept = Vec::with_capacity(self.photos.len());
        for block in &self.photos {
            let mut own = block.own;
            for i in 0..PHOTO {
                own[(i, i)] *= 1.0 + damping;
            }
            let cholesky = own.cholesky()?;
            let solved = cholesky.solve(&block.across);
            reduced -= block.across.tr_mul(&solved);
            right -= solved.tr_mul(&block.right);
            kept.push((cholesky, solved));
        }
        let shared = reduced.cholesky()?.solve(&right);
        let photos = self
            .photos
            .iter()
            .zip(&kept)
            .map(|(block, (cholesky, solved))| cholesky.solve(&block.right) - solved * &shared)
            .collect();
        Some(Step { shared, photos })
    }

    /// The inverse of the whole matrix: the shared block and each photo's own.
    pub(super) fn covariance(&self) -> Option<Covariance> {
        let mut reduced = self.shared.clone();
        let mut kept = Vec::with_capacity(self.photos.len());
        for block in &self.photos {
            let cholesky = block.own.cholesky()?;
            let solved = cholesky.solve(&block.across);
            reduced -= block.across.tr_mul(&solved);
            kept.push((cholesky.inverse(), solved));
        }
        let shared = reduced.cholesky()?.inverse();
        let photos = kept
            .into_iter()
            .map(|(inverse, solved)| {
                let back: SMatrix<f64, PHOTO, PHOTO> =
                    (&solved * &shared * solved.transpose()).fixed_view::<PHOTO, PHOTO>(0, 0).into_owned();
                inverse + back
            })
            .collect();
        Some(Covariance { shared, photos })
    }
}

fn enlarge(matrix: &mut DMatrix<f64>, damping: f64) {
    for i in 0..matrix.nrows() {
        matrix[(i, i)] *= 1.0 + damping;
    }
}
