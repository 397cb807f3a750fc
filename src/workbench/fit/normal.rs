//! Normal equations with the photos' own unknowns eliminated one photo at a
//! time (the bordered block-diagonal form of bundle adjustment; Brown 1958,
//! Triggs et al. 2000).

use nalgebra::{DMatrix, DVector, SMatrix, SVector};

use super::equations::Equations;
use super::state::PHOTO;
use super::target::OWN;

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

    /// Adds a photo's elements, each with its weight: what moves all elements
    /// in one product for the whole photo, what moves one alone element by element.
    pub(super) fn add(&mut self, photo: usize, elements: &[(Equations, f64)]) {
        let Some((first, _)) = elements.first() else { return };
        // A board that is taken as rigid has lens columns only.
        let common = (first.by_shared.ncols() - OWN).min(self.shared.nrows());
        let has_own = common < self.shared.nrows();
        let rows: usize = elements.iter().map(|(e, _)| e.residual.len()).sum();
        let (mut by_photo, mut by_common) = (DMatrix::zeros(rows, PHOTO), DMatrix::zeros(rows, common));
        let mut residual = DVector::zeros(rows);
        let mut at = 0;
        for (e, weight) in elements {
            let (n, root) = (e.residual.len(), weight.sqrt());
            for (mut into, from) in by_photo.column_iter_mut().zip(e.by_photo.column_iter()) {
                into.rows_mut(at, n).zip_apply(&from, |i, f| *i = f * root);
            }
            for (mut into, from) in by_common.column_iter_mut().zip(e.by_shared.column_iter()) {
                into.rows_mut(at, n).zip_apply(&from, |i, f| *i = f * root);
            }
            residual.rows_mut(at, n).zip_apply(&e.residual, |i, f| *i = f * root);
            at += n;
            if has_own {
                self.add_own(photo, e, *weight, common);
            }
        }
        // A product with the transpose is far faster than `tr_mul` at this size.
        let (photo_t, common_t) = (by_photo.transpose(), by_common.transpose());
        let block = &mut self.photos[photo];
        block.own += &photo_t * &by_photo;
        block.right += &photo_t * &residual;
        block.across.columns_mut(0, common).gemm(1.0, &photo_t, &by_common, 1.0);
        self.shared.view_mut((0, 0), (common, common)).gemm(1.0, &common_t, &by_common, 1.0);
        self.right.rows_mut(0, common).gemv(1.0, &common_t, &residual, 1.0);
    }

    /// The columns of an element's own unknowns; of the shared matrix the
    /// upper part only, see [`Normal::mirror`].
    fn add_own(&mut self, photo: usize, e: &Equations, weight: f64, common: usize) {
        let n = e.residual.len();
        let (by_shared, by_photo) = (e.by_shared.as_slice(), e.by_photo.as_slice());
        for i in 0..OWN {
            let column = e.own + i;
            let mine = &by_shared[(common + i) * n..(common + i + 1) * n];
            let dot = |other: &[f64]| other.iter().zip(mine).map(|(a, b)| a * b).sum::<f64>() * weight;
            self.right[column] += dot(e.residual.as_slice());
            let mut into = self.shared.column_mut(column);
            for (into, other) in into.iter_mut().zip(by_shared.chunks_exact(n).take(common)) {
                *into += dot(other);
            }
            for j in 0..=i {
                into[e.own + j] += dot(&by_shared[(common + j) * n..(common + j + 1) * n]);
            }
            let mut across = self.photos[photo].across.column_mut(column);
            for (into, other) in across.iter_mut().zip(by_photo.chunks_exact(n)) {
                *into += dot(other);
            }
        }
    }

    /// Fills the lower part of the shared matrix from the upper one.
    pub(super) fn mirror(&mut self) {
        self.shared.fill_lower_triangle_with_upper_triangle();
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
            take_away(&mut reduced, &block.across, &solved);
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
            take_away(&mut reduced, &block.across, &solved);
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

/// `matrix -= across' solved`: a product of blocks, where `tr_mul` would take
/// one scalar product after the other (half of a fit's time).
fn take_away(matrix: &mut DMatrix<f64>, across: &DMatrix<f64>, solved: &DMatrix<f64>) {
    matrix.gemm(-1.0, &across.transpose(), solved, 1.0);
}

fn enlarge(matrix: &mut DMatrix<f64>, damping: f64) {
    for i in 0..matrix.nrows() {
        matrix[(i, i)] *= 1.0 + damping;
    }
}
