//! Normal equations with the photos' blocks eliminated first (Schur
//! complement): the cost grows linearly with the number of photos.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use nalgebra::{DMatrix, DVector, Dyn};

use super::columns::{Columns, NUISANCE, PHOTO};
use super::residual::Equations;
use super::state::State;
use crate::num::{Lower, cholesky};

/// Factorised normal equations `N x = b`, priors included.
#[derive(Debug, Clone)]
pub(super) struct Normal {
    /// By photo: the inverse of its own block.
    inverse_blocks: Vec<DMatrix<f64>>,
    /// By photo: its coupling to the shared columns, `PHOTO` rows.
    coupling: Vec<DMatrix<f64>>,
    /// By photo: right-hand side.
    photo_right: Vec<DVector<f64>>,
    shared: Option<Lower>,
    shared_right: DVector<f64>,
    /// Inverse of the shared part's lower factor, made when it is first worth it.
    lower_inverse: OnceLock<DMatrix<f64>>,
}

/// Right-hand sides from which on an inverse by blocks, all of it products of
/// matrices, is cheaper than substitution: this share of the unknowns.
const WIDE: usize = 4;

/// Sums the equations. `weights` has one factor for each view (robust start);
/// `variance` is the variance of unit weight that scales image noise;
/// `damping` is added relatively to every diagonal element.
pub(super) fn normal(
    columns: &Columns,
    state: &State,
    equations: &[Equations],
    weights: &[f64],
    variance: f64,
    damping: f64,
) -> Option<Normal> {
    let photos = columns.photos.len();
    let mut blocks = vec![DMatrix::<f64>::zeros(PHOTO, PHOTO); photos];
    let mut coupling = vec![DMatrix::<f64>::zeros(PHOTO, columns.shared); photos];
    let mut photo_right = vec![DVector::<f64>::zeros(PHOTO); photos];
    let mut shared = DMatrix::<f64>::zeros(columns.shared, columns.shared);
    let mut shared_right = DVector::<f64>::zeros(columns.shared);
    for (e, w) in equations.iter().zip(weights) {
        let w = w / variance;
        let (p, s) = (&e.by_photo, &e.by_shared);
        blocks[e.block] += crossed(p, p) * w;
        photo_right[e.block] += crossed(p, &e.residual) * w;
        let (cross, own, right) = (crossed(p, s) * w, crossed(s, s) * w, crossed(s, &e.residual) * w);
        for (j, column) in e.shared.iter().enumerate() {
            let mut into = coupling[e.block].column_mut(*column);
            into += cross.column(j);
            shared_right[*column] += right[j];
            for (i, row) in e.shared.iter().enumerate() {
                shared[(*row, *column)] += own[(i, j)];
            }
        }
    }
    for (b, photo) in state.photos.iter().enumerate() {
        for i in 0..NUISANCE {
            blocks[b][(6 + i, 6 + i)] += 1.0;
            photo_right[b][6 + i] -= photo.nuisance[i];
        }
    }
    for column in &columns.nuisance {
        shared[(*column, *column)] += 1.0;
        shared_right[*column] -= state.shared[*column];
    }
    for block in &mut blocks {
        damp(block, damping);
    }
    damp(&mut shared, damping);
    let mut inverse_blocks = Vec::with_capacity(photos);
    for b in 0..photos {
        let inverse = blocks[b].clone().cholesky()?.inverse();
        let eliminated = &inverse * &coupling[b];
        shared -= coupling[b].transpose() * &eliminated;
        shared_right -= eliminated.tr_mul(&photo_right[b]);
        inverse_blocks.push(inverse);
    }
    let shared = if columns.shared == 0 { None } else { Some(cholesky(shared)?) };
    Some(Normal { inverse_blocks, coupling, photo_right, shared, shared_right, lower_inverse: OnceLock::new() })
}

/// `a' b` of matrices with as many rows as a marker has coordinates: at this
/// size plain loops over columns are faster than products made for large ones.
fn crossed<C: nalgebra::Dim, S>(
    a: &DMatrix<f64>,
    b: &nalgebra::Matrix<f64, Dyn, C, S>,
) -> nalgebra::OMatrix<f64, Dyn, C>
where
    S: nalgebra::Storage<f64, Dyn, C> + nalgebra::IsContiguous,
    nalgebra::DefaultAllocator: nalgebra::allocator::Allocator<Dyn, C>,
{
    let rows = a.nrows();
    let (left, right) = (a.as_slice(), b.as_slice());
    nalgebra::OMatrix::from_fn_generic(Dyn(a.ncols()), b.shape_generic().1, |i, j| {
        let (x, y) = (&left[i * rows..(i + 1) * rows], &right[j * rows..(j + 1) * rows]);
        match (<&[f64; 8]>::try_from(x), <&[f64; 8]>::try_from(y)) {
            (Ok(x), Ok(y)) => dot8(x, y),
            _ => x.iter().zip(y).map(|(x, y)| x * y).sum(),
        }
    })
}

/// In pairs, so that one sum does not wait for the other.
fn dot8(x: &[f64; 8], y: &[f64; 8]) -> f64 {
    let p: [f64; 8] = std::array::from_fn(|i| x[i] * y[i]);
    ((p[0] + p[4]) + (p[2] + p[6])) + ((p[1] + p[5]) + (p[3] + p[7]))
}

fn damp(block: &mut DMatrix<f64>, damping: f64) {
    for i in 0..block.nrows() {
        block[(i, i)] *= 1.0 + damping;
    }
}

impl Normal {
    /// The step: one vector for each photo, one for the shared columns.
    pub(super) fn solve(&self) -> (Vec<DVector<f64>>, DVector<f64>) {
        let shared = match &self.shared {
            Some(lower) => lower.solve(self.shared_right.clone()),
            None => self.shared_right.clone(),
        };
        let photos = (0..self.coupling.len())
            .map(|b| &self.inverse_blocks[b] * (&self.photo_right[b] - &self.coupling[b] * &shared))
            .collect();
        (photos, shared)
    }

    /// The inverse's shared part times a matrix.
    pub(super) fn shared_solve(&self, right: &DMatrix<f64>) -> DMatrix<f64> {
        let Some(lower) = &self.shared else { return right.clone() };
        let wide = WIDE * right.ncols() >= right.nrows();
        if wide || (self.lower_inverse.get().is_some() && right.ncols() > 1) {
            let inverse = self.lower_inverse();
            return inverse.transpose() * (inverse * right);
        }
        lower.solve(right.clone())
    }

    fn lower_inverse(&self) -> &DMatrix<f64> {
        self.lower_inverse.get_or_init(|| match &self.shared {
            Some(lower) => lower.inverse(),
            None => DMatrix::zeros(0, 0),
        })
    }

    /// `A' N^-1 A` for right-hand sides that touch one photo and the shared columns.
    pub(super) fn quadratic_of_one(&self, block: usize, photo: &DMatrix<f64>, shared: &DMatrix<f64>) -> DMatrix<f64> {
        let own = &self.inverse_blocks[block] * photo;
        let reduced = shared - self.coupling[block].transpose() * &own;
        let through = match &self.shared {
            Some(lower) => lower.solve_lower(reduced),
            None => reduced,
        };
        photo.tr_mul(&own) + through.tr_mul(&through)
    }

    /// `A' N^-1 A` for right-hand sides given by some photos' blocks and the
    /// shared columns; the other photos' are zero and cost nothing.
    pub(super) fn quadratic(&self, photos: &BTreeMap<usize, DMatrix<f64>>, shared: &DMatrix<f64>) -> DMatrix<f64> {
        let mut reduced = shared.clone();
        let mut own = DMatrix::zeros(shared.ncols(), shared.ncols());
        for (b, photo) in photos {
            let solved = &self.inverse_blocks[*b] * photo;
            reduced -= self.coupling[*b].tr_mul(&solved);
            own += photo.tr_mul(&solved);
        }
        own + reduced.tr_mul(&self.shared_solve(&reduced))
    }

    /// The photo's rows of `N^-1` times a right-hand side without photo part, given its shared rows.
    pub(super) fn photo_part(&self, block: usize, shared_part: &DMatrix<f64>) -> DMatrix<f64> {
        -(&self.inverse_blocks[block] * (&self.coupling[block] * shared_part))
    }

    /// The inverse's part that belongs to some consecutive unknowns of every photo, all photos jointly.
    pub(super) fn of_photos(&self, first: usize, count: usize) -> DMatrix<f64> {
        let n = self.coupling.len();
        let shared = self.coupling.first().map_or(0, DMatrix::ncols);
        let mut across = DMatrix::zeros(shared, count * n);
        let mut all = DMatrix::zeros(count * n, count * n);
        for (b, inverse) in self.inverse_blocks.iter().enumerate() {
            across
                .columns_mut(count * b, count)
                .copy_from(&(inverse.rows(first, count) * &self.coupling[b]).transpose());
            all.view_mut((count * b, count * b), (count, count))
                .copy_from(&inverse.view((first, first), (count, count)));
        }
        let through = self.lower_inverse() * across;
        all + through.tr_mul(&through)
    }

    /// How much the quadratic model expects a step to gain.
    pub(super) fn decrement(&self, photos: &[DVector<f64>], shared: &DVector<f64>) -> f64 {
        let own: f64 = photos.iter().zip(&self.photo_right).map(|(x, b)| x.dot(b)).sum();
        // The shared right-hand side was reduced by the photos; undo it.
        let mut right = self.shared_right.clone();
        for b in 0..self.coupling.len() {
            right += self.coupling[b].tr_mul(&(&self.inverse_blocks[b] * &self.photo_right[b]));
        }
        own + shared.dot(&right)
    }

    /// Sum over all prior equations of the share that the data left them:
    /// the trace of the inverse over the columns that have a prior.
    pub(super) fn prior_trace(&self, columns: &Columns) -> f64 {
        let inverse = self.lower_inverse();
        let mut trace: f64 = columns.nuisance.iter().map(|c| inverse.column(*c).norm_squared()).sum();
        for b in 0..self.coupling.len() {
            let own = self.inverse_blocks[b].rows(PHOTO - NUISANCE, NUISANCE);
            trace += (0..NUISANCE).map(|i| own[(i, PHOTO - NUISANCE + i)]).sum::<f64>();
            trace += (inverse * (own * &self.coupling[b]).transpose()).norm_squared();
        }
        trace
    }
}
