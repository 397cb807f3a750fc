//! Normal equations with the photos' own unknowns eliminated one photo at a
//! time (the bordered block-diagonal form of bundle adjustment; Brown 1958,
//! Triggs et al. 2000).

use nalgebra::{DMatrix, DVector, SMatrix, SVector};

use super::equations::Rows;
use super::state::{FOCAL, PHOTO};
use super::target::OWN;
use crate::num::{Lower, add, cholesky, column_squares, inverse_factor, subtract_square};

/// The equations of all photos.
#[derive(Debug, Clone)]
pub(super) struct Normal {
    /// The lower part.
    shared: DMatrix<f64>,
    right: DVector<f64>,
    photos: Vec<PhotoNormal>,
}

/// What one photo contributes.
#[derive(Debug, Clone)]
pub(super) struct PhotoNormal {
    own: SMatrix<f64, PHOTO, PHOTO>,
    /// Own unknowns by shared ones.
    across: DMatrix<f64>,
    right: SVector<f64, PHOTO>,
    /// By what moves every element, with the right side as its last row.
    common: DMatrix<f64>,
    /// Where the own unknowns of each element stand that has any.
    elements: Vec<usize>,
    /// The products of these, [`OWN`] columns for each element, with all of its equations' columns.
    products: DMatrix<f64>,
}

/// A solution of the normal equations.
pub(super) struct Step {
    pub(super) shared: DVector<f64>,
    pub(super) photos: Vec<SVector<f64, PHOTO>>,
}

/// What a solution is worth (in the units of the equations).
#[derive(Debug, Clone)]
pub(super) struct Covariance {
    /// Covariance of the lens's parameters.
    pub(super) lens: DMatrix<f64>,
    /// Variances of the board's shape.
    pub(super) shape: Vec<f64>,
    /// Variances of each photo's unknowns; those of the pose are not asked for and left 0.
    pub(super) photos: Vec<SVector<f64, PHOTO>>,
}

impl PhotoNormal {
    /// The products of a photo's equations: what moves all elements in one product,
    /// what moves one alone element by element.
    pub(super) fn new(rows: &Rows, shared: usize) -> Self {
        let (common, width) = (rows.common, PHOTO + rows.common + 1);
        let main = rows.columns.rows(0, width);
        // A product with the transpose is far faster than `tr_mul` at this size.
        let all = main * main.transpose();
        let mut across = DMatrix::zeros(PHOTO, shared);
        across.columns_mut(0, common).copy_from(&all.view((0, PHOTO), (PHOTO, common)));
        let mut products = DMatrix::zeros(width + OWN, OWN * rows.elements.len());
        for (k, element) in rows.elements.iter().enumerate() {
            let mut of_element = products.columns_mut(OWN * k, OWN);
            let tall = width + OWN;
            let equations = &rows.columns.as_slice()[tall * element.first..tall * (element.first + element.count)];
            for equation in equations.chunks_exact(tall) {
                for i in 0..OWN {
                    add(of_element.column_mut(i).as_mut_slice(), equation[width + i], equation);
                }
            }
            across.columns_mut(element.own, OWN).copy_from(&of_element.rows(0, PHOTO));
        }
        PhotoNormal {
            own: all.fixed_view::<PHOTO, PHOTO>(0, 0).into_owned(),
            right: all.fixed_view::<PHOTO, 1>(0, width - 1).into_owned(),
            across,
            common: all.view((PHOTO, PHOTO), (common + 1, common + 1)).into_owned(),
            elements: rows.elements.iter().map(|e| e.own).collect(),
            products,
        }
    }

    /// A prior of unit variance at zero for an unknown that now has `value`.
    pub(super) fn prior(&mut self, column: usize, value: f64) {
        self.own[(column, column)] += 1.0;
        self.right[column] -= value;
    }
}

impl Normal {
    /// The equations of all photos, in their order.
    pub(super) fn new(shared: usize, photos: Vec<PhotoNormal>) -> Self {
        let mut normal = Normal { shared: DMatrix::zeros(shared, shared), right: DVector::zeros(shared), photos };
        for photo in &normal.photos {
            let common = photo.common.nrows() - 1;
            let mut into = normal.shared.view_mut((0, 0), (common, common));
            into += photo.common.view((0, 0), (common, common));
            let mut right = normal.right.rows_mut(0, common);
            right += photo.common.view((0, common), (common, 1));
            for (k, own) in photo.elements.iter().enumerate() {
                let products = photo.products.columns(OWN * k, OWN);
                for i in 0..OWN {
                    normal.right[own + i] += products[(PHOTO + common, i)];
                    for j in 0..OWN {
                        normal.shared[(own + i, own + j)] += products[(PHOTO + common + 1 + j, i)];
                    }
                }
                for j in 0..common {
                    let column = &mut normal.shared.as_mut_slice()[shared * j + own..shared * j + own + OWN];
                    column.iter_mut().enumerate().for_each(|(i, into)| *into += products[(PHOTO + j, i)]);
                }
            }
        }
        normal
    }

    /// A prior of unit variance at zero for a shared unknown that now has `value`.
    pub(super) fn prior_shared(&mut self, column: usize, value: f64) {
        self.shared[(column, column)] += 1.0;
        self.right[column] -= value;
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

    /// Eliminates every photo's unknowns, every diagonal element enlarged by the factor 1 + damping
    /// (Marquardt 1963). `None` where the equations don't determine the unknowns.
    pub(super) fn factor(&self, damping: f64) -> Option<Factor<'_>> {
        let n = self.shared.nrows();
        let mut reduced = self.shared.clone();
        for i in 0..n {
            reduced[(i, i)] *= 1.0 + damping;
        }
        // Side by side, the photos' parts are one large product.
        let mut eliminated = DMatrix::zeros(n, PHOTO * self.photos.len());
        let mut photos = Vec::with_capacity(self.photos.len());
        for (j, block) in self.photos.iter().enumerate() {
            let mut own = block.own;
            for i in 0..PHOTO {
                own[(i, i)] *= 1.0 + damping;
            }
            let inverse = inverse_factor(own)?;
            let part = block.across.transpose() * inverse.transpose();
            eliminated.columns_mut(PHOTO * j, PHOTO).copy_from(&part);
            photos.push(inverse);
        }
        subtract_square(&mut reduced, 0, &eliminated);
        Some(Factor { normal: self, shared: cholesky(reduced)?, photos, eliminated })
    }
}

/// The equations with all photos' unknowns eliminated.
pub(super) struct Factor<'a> {
    normal: &'a Normal,
    shared: Lower,
    /// Inverse of the factor of each photo's own block.
    photos: Vec<SMatrix<f64, PHOTO, PHOTO>>,
    /// Shared unknowns by all photos' own ones, times these inverses' transposes.
    eliminated: DMatrix<f64>,
}

impl Factor<'_> {
    /// The step that solves the equations.
    pub(super) fn solve(&self) -> Step {
        let parts = || self.normal.photos.iter().zip(&self.photos).enumerate();
        let mut whitened = DVector::zeros(self.eliminated.ncols());
        for (j, (block, inverse)) in parts() {
            whitened.rows_mut(PHOTO * j, PHOTO).copy_from(&(inverse * block.right));
        }
        let mut right = self.normal.right.clone();
        for (column, part) in self.eliminated.column_iter().zip(&whitened) {
            add(right.as_mut_slice(), -part, column.as_slice());
        }
        let shared = self.shared.solve(right);
        let left = whitened - self.eliminated.tr_mul(&shared);
        let photos = self.photos.iter().enumerate();
        let photos = photos.map(|(j, inverse)| inverse.tr_mul(&left.fixed_rows::<PHOTO>(PHOTO * j))).collect();
        Step { shared, photos }
    }

    /// The inverse of the whole matrix, as far as it is asked for; `p` parameters of the lens.
    pub(super) fn covariance(&self, p: usize) -> Covariance {
        const ASKED: usize = PHOTO - FOCAL;
        let inverse = self.shared.inverse();
        let n = inverse.nrows();
        let mut follows = DMatrix::zeros(n, ASKED * self.photos.len());
        for (j, of_photo) in self.photos.iter().enumerate() {
            let part = self.eliminated.columns(PHOTO * j, PHOTO) * of_photo.columns(FOCAL, ASKED);
            follows.columns_mut(ASKED * j, ASKED).copy_from(&part);
        }
        let back = column_squares(&inverse, &follows);
        let photo = |(j, of_photo): (usize, &SMatrix<f64, PHOTO, PHOTO>)| {
            let mut variances = SVector::<f64, PHOTO>::zeros();
            for i in FOCAL..PHOTO {
                variances[i] = of_photo.column(i).norm_squared() + back[ASKED * j + i - FOCAL];
            }
            variances
        };
        let of_lens = inverse.columns(0, p);
        Covariance {
            lens: of_lens.tr_mul(&of_lens),
            shape: (p..n).map(|i| inverse.column(i).norm_squared()).collect(),
            photos: self.photos.iter().enumerate().map(photo).collect(),
        }
    }
}
