//! Normal equations with the photos' blocks eliminated first (Schur
//! complement): the cost grows linearly with the number of photos.

use std::collections::BTreeMap;

use nalgebra::{Cholesky, DMatrix, DVector, Dyn};

use super::columns::{Columns, NUISANCE, PHOTO};
use super::residual::Equations;
use super::state::State;

/// Factorised normal equations `N x = b`, priors included.
#[derive(Debug, Clone)]
pub(super) struct Normal {
    /// By photo: the inverse of its own block.
    inverse_blocks: Vec<DMatrix<f64>>,
    /// By photo: its coupling to the shared columns, `PHOTO` rows.
    coupling: Vec<DMatrix<f64>>,
    /// By photo: right-hand side.
    photo_right: Vec<DVector<f64>>,
    shared: Option<Cholesky<f64, Dyn>>,
    shared_right: DVector<f64>,
}

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
        blocks[e.block] += p.tr_mul(p) * w;
        photo_right[e.block] += p.tr_mul(&e.residual) * w;
        let (cross, own, right) = (p.tr_mul(s) * w, s.tr_mul(s) * w, s.tr_mul(&e.residual) * w);
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
        // A product with the transpose is far faster than `tr_mul` at this size.
        shared -= coupling[b].transpose() * &eliminated;
        shared_right -= eliminated.tr_mul(&photo_right[b]);
        inverse_blocks.push(inverse);
    }
    let shared = if columns.shared == 0 { None } else { Some(shared.cholesky()?) };
    Some(Normal { inverse_blocks, coupling, photo_right, shared, shared_right })
}

fn damp(block: &mut DMatrix<f64>, damping: f64) {
    for i in 0..block.nrows() {
        block[(i, i)] *= 1.0 + damping;
    }
}

impl Normal {
    /// The step: one vector for each photo, one for the shared columns.
    pub(super) fn solve(&self) -> (Vec<DVector<f64>>, DVector<f64>) {
        let right = DMatrix::from_column_slice(self.shared_right.len(), 1, self.shared_right.as_slice());
        let shared = DVector::from_column_slice(self.shared_solve(&right).as_slice());
        let photos = (0..self.coupling.len())
            .map(|b| &self.inverse_blocks[b] * (&self.photo_right[b] - &self.coupling[b] * &shared))
            .collect();
        (photos, shared)
    }

    /// The inverse's shared part times a matrix.
    pub(super) fn shared_solve(&self, right: &DMatrix<f64>) -> DMatrix<f64> {
        match &self.shared {
            Some(cholesky) => cholesky.solve(right),
            None => right.clone(),
        }
    }

    /// `N^-1` times right-hand sides that touch one photo and the shared columns:
    /// that photo's rows and the shared rows.
    pub(super) fn solve_one(
        &self,
        block: usize,
        photo: &DMatrix<f64>,
        shared: &DMatrix<f64>,
    ) -> (DMatrix<f64>, DMatrix<f64>) {
        let own = &self.inverse_blocks[block] * photo;
        let shared = self.shared_solve(&(shared - self.coupling[block].transpose() * &own));
        let photo = own + self.photo_part(block, &shared);
        (photo, shared)
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
        let n = columns.shared;
        let identity = DMatrix::<f64>::identity(n, n);
        let inverse = self.shared_solve(&identity);
        let mut trace: f64 = columns.nuisance.iter().map(|c| inverse[(*c, *c)]).sum();
        for b in 0..self.coupling.len() {
            let through = &self.inverse_blocks[b] * &self.coupling[b];
            let full = &self.inverse_blocks[b] + &through * &inverse * through.transpose();
            trace += (PHOTO - NUISANCE..PHOTO).map(|i| full[(i, i)]).sum::<f64>();
        }
        trace
    }
}
