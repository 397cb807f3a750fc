//! What is asked of the inverse of the normal equations.

use nalgebra::DMatrix;

use super::normal::Normal;
use super::residual::Equations;
use super::sides::Sides;
use crate::num::column_squares;

/// Some columns of the inverse.
pub(super) struct Inverse {
    /// Their shared rows.
    pub(super) shared: DMatrix<f64>,
    /// By photo, its rows.
    pub(super) photos: Vec<DMatrix<f64>>,
}

impl Normal {
    /// Right-hand sides of the shared columns.
    fn sides_of(&self, right: &DMatrix<f64>) -> Sides {
        let mut sides = Sides::zeros(&self.order, right.ncols());
        for (column, row) in right.row_iter().enumerate() {
            for (c, value) in row.iter().enumerate().filter(|(_, value)| **value != 0.0) {
                *sides.at(self.order.of_shared(column), c) = *value;
            }
        }
        sides
    }

    /// The inverse times right-hand sides of the shared columns.
    pub(super) fn of_shared(&self, right: &DMatrix<f64>) -> Inverse {
        let solution = self.applied(&self.sides_of(right));
        Inverse {
            shared: solution.shared(&self.order),
            photos: (0..self.order.photos()).map(|b| solution.photo(&self.order, b)).collect(),
        }
    }

    /// `B' N^-1 B` for right-hand sides of the shared columns.
    pub(super) fn quadratic_of_shared(&self, right: &DMatrix<f64>) -> DMatrix<f64> {
        self.quadratic(&self.sides_of(right))
    }

    /// `B' N^-1 B`.
    pub(super) fn quadratic(&self, sides: &Sides) -> DMatrix<f64> {
        let mut sum = DMatrix::zeros(sides.columns(), sides.columns());
        for (block, side) in self.blocks.iter().zip(&sides.blocks) {
            if let Some(side) = side {
                sum += side.tr_mul(&(&block.inverse * side));
            }
        }
        let reduced = self.reduced(sides);
        let through = match &self.rest {
            Some(lower) => lower.solve_lower(reduced),
            None => reduced,
        };
        sum + through.tr_mul(&through)
    }

    /// `A N^-1 A'` of one view's equations `A`.
    pub(super) fn of_view(&self, e: &Equations) -> DMatrix<f64> {
        let rows = e.residual.len();
        let mut sides = Sides::zeros(&self.order, rows);
        sides.add(&self.order, e, &DMatrix::identity(rows, rows));
        self.quadratic(&sides)
    }

    /// The inverse's part that belongs to some consecutive unknowns of every photo, all photos jointly.
    pub(super) fn of_photos(&self, first: usize, count: usize) -> DMatrix<f64> {
        let mut sides = Sides::zeros(&self.order, count * self.order.photos());
        for b in 0..self.order.photos() {
            for i in 0..count {
                *sides.at(self.order.of_photo(b, first + i), count * b + i) = 1.0;
            }
        }
        self.quadratic(&sides)
    }

    /// Sum over all prior equations of the share that the data left them:
    /// the trace of the inverse over the unknowns that have a prior.
    pub(super) fn prior_trace(&self) -> f64 {
        let mut through = DMatrix::zeros(self.order.rest, self.priors.len());
        let mut trace = 0.0;
        for (c, place) in self.priors.iter().enumerate() {
            let Some(b) = place.block else {
                through[(place.at, c)] = 1.0;
                continue;
            };
            let block = &self.blocks[b];
            trace += block.inverse[(place.at, place.at)];
            let taken = block.coupling.tr_mul(&block.inverse.column(place.at));
            for (row, value) in block.touched.iter().zip(taken.iter()) {
                through[(*row, c)] = *value;
            }
        }
        trace + column_squares(self.lower_inverse(), &through).iter().sum::<f64>()
    }
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use nalgebra::DVector;
    use rand::rngs::ChaCha8Rng;
    use rand::{RngExt, SeedableRng};

    use super::*;
    use crate::pose::normal::factorised;
    use crate::pose::order::Order;
    use crate::pose::unknowns::PHOTO;

    const MARKERS: usize = 9;
    const OF_MARKER: usize = 5;
    /// A carrier's columns, then each marker's own, then one for all.
    const SHARED: usize = 6 + MARKERS * OF_MARKER + 1;

    struct Case {
        normal: Normal,
        /// All unknowns: photos', then the shared ones.
        dense: DMatrix<f64>,
        right: DVector<f64>,
        equations: Vec<Equations>,
    }

    /// One row of a view's equations over all unknowns.
    fn spread(e: &Equations, photos: usize) -> DMatrix<f64> {
        let mut rows = DMatrix::zeros(e.residual.len(), PHOTO * photos + SHARED);
        rows.columns_mut(PHOTO * e.block, PHOTO).copy_from(&e.by_photo);
        for (c, column) in e.shared.iter().enumerate() {
            rows.set_column(PHOTO * photos + column, &e.by_shared.column(c));
        }
        rows
    }

    fn case(photos: usize) -> Case {
        let mut random = ChaCha8Rng::seed_from_u64(3);
        let mut number = move || random.random_range(-1.0..1.0);
        let own = |c: usize| (6..SHARED - 1).contains(&c).then(|| ((c - 6) / OF_MARKER) as u32);
        let order = Arc::new(Order::new(photos, &(0..SHARED).map(own).collect::<Vec<_>>()));
        let mut equations = Vec::new();
        for block in 0..photos {
            // Not every marker in every photo, and one that lost a corner.
            for marker in (0..MARKERS).filter(|m| (m + block) % 4 != 0) {
                let rows = if marker == 2 { 6 } else { 8 };
                let first = 6 + OF_MARKER * marker;
                let shared: Vec<usize> = (0..6).chain(first..first + OF_MARKER).chain([SHARED - 1]).collect();
                let by_photo = DMatrix::from_fn(rows, PHOTO, |_, _| number());
                let by_shared = DMatrix::from_fn(rows, shared.len(), |_, _| number());
                let residual = DVector::from_fn(rows, |_, _| number());
                equations.push(Equations::of(block, by_photo, by_shared, shared, residual));
            }
        }
        let n = PHOTO * photos + SHARED;
        let (mut dense, mut right) = (DMatrix::zeros(n, n), DVector::zeros(n));
        for (k, e) in equations.iter().enumerate() {
            let a = spread(e, photos);
            dense += a.tr_mul(&a) * (1.0 + k as f64);
            right += a.tr_mul(&e.residual) * (1.0 + k as f64);
        }
        let mut priors = Vec::new();
        for c in (0..photos).flat_map(|b| (6..PHOTO).map(move |i| PHOTO * b + i)).chain(PHOTO * photos + 6..n) {
            dense[(c, c)] += 1.0;
            right[c] -= 0.1;
            let place = match c.checked_sub(PHOTO * photos) {
                None => order.of_photo(c / PHOTO, c % PHOTO),
                Some(column) => order.of_shared(column),
            };
            priors.push((place, 0.1));
        }
        let weighted = equations.iter().enumerate().map(|(k, e)| (e, 1.0 + k as f64));
        let normal = factorised(&order, weighted, priors.into_iter(), 0.0).unwrap();
        Case { normal, dense, right, equations }
    }

    /// Whichever kind goes first: all as nalgebra has it from the whole matrix.
    #[test]
    fn both_orders_have_what_the_whole_matrix_has() {
        for (photos, blocks) in [(2, MARKERS), (5, 5)] {
            let Case { normal, dense, right, equations } = case(photos);
            assert_eq!(normal.order.blocks.len(), blocks);
            let inverse = dense.try_inverse().unwrap();
            let first = PHOTO * photos;
            let close = |ours: &DMatrix<f64>, theirs: &DMatrix<f64>| {
                assert!((ours - theirs).abs().max() < 1e-9 * theirs.abs().max(), "{photos}: {ours} {theirs}");
            };
            let whole = &inverse * &right;
            let step = normal.solve();
            let ours: Vec<f64> = step.photos.iter().flat_map(|p| p.iter()).chain(step.shared.iter()).copied().collect();
            close(
                &DMatrix::from_column_slice(ours.len(), 1, &ours),
                &DMatrix::from_columns(std::slice::from_ref(&whole)),
            );
            assert!((step.gain / whole.dot(&right) - 1.0).abs() < 1e-9);
            let unit = DMatrix::from_fn(SHARED, 3, |r, c| f64::from(u8::from(r == 20 * c)));
            let asked = normal.of_shared(&unit);
            let columns = inverse.columns(first, SHARED) * &unit;
            close(&asked.shared, &columns.rows(first, SHARED).into_owned());
            close(&normal.quadratic_of_shared(&unit), &unit.tr_mul(&columns.rows(first, SHARED)));
            close(&asked.photos[1], &columns.rows(PHOTO, PHOTO).into_owned());
            let a = spread(&equations[4], photos);
            close(&normal.of_view(&equations[4]), &(&a * &inverse * a.transpose()));
            let turns: Vec<usize> = (0..photos).flat_map(|b| (11..14).map(move |i| PHOTO * b + i)).collect();
            close(&normal.of_photos(11, 3), &inverse.select_rows(&turns).select_columns(&turns));
            let prior = |c: &usize| if *c < first { c % PHOTO >= 6 } else { *c >= first + 6 };
            let trace: f64 = (0..first + SHARED).filter(prior).map(|c| inverse[(c, c)]).sum();
            assert!((normal.prior_trace() / trace - 1.0).abs() < 1e-9);
        }
    }
}
