//! Sums of the products of the columns of a marker's rows: the weighted normal equations.

use nalgebra::{SMatrix, SVector};

use super::model::ALL;
use super::rows::{BATCH, Batch, COLUMNS, Lane, Rows};

/// Partial sums side by side, as wide as a vector register.
const WIDTH: usize = 8;
/// Batches summed in single precision before they are added to the total.
const RUN: usize = 16;
const PAIRS: usize = COLUMNS * (COLUMNS + 1) / 2;

type Sums = [[f32; WIDTH]; PAIRS];

/// Batches that are enough for a matrix: of larger markers every other one or fewer are taken.
const ENOUGH: usize = 24;

/// Upper triangle of the weighted sum over rows of the products of `columns` (ascending, the residuals last).
/// Every row counts for products with residuals; those of two derivatives are scaled up from some of the rows.
pub(super) fn squares(rows: &Rows, columns: &[usize], weight: impl Fn(f32) -> f32) -> SMatrix<f64, COLUMNS, COLUMNS> {
    let mut total = SMatrix::zeros();
    let mut right = SVector::<f64, COLUMNS>::zeros();
    let mut sums: Sums = [[0.0; WIDTH]; PAIRS];
    let every = (rows.batches().count() / ENOUGH).max(1);
    let (mut all, mut taken) = (0.0, 0.0);
    for (i, (batch, count)) in rows.batches().enumerate() {
        let weights = weights(batch, count, &weight);
        let sum = f64::from(weights.iter().sum::<f32>());
        all += sum;
        if i.is_multiple_of(every) {
            taken += sum;
            add(batch, columns, &weights, &mut sums);
        }
        let weighted: Lane = std::array::from_fn(|k| batch[ALL][k] * weights[k]);
        for column in columns {
            right[*column] += f64::from(dot(&weighted, &batch[*column]).iter().sum::<f32>());
        }
        if (i + 1).is_multiple_of(RUN) {
            flush(&mut sums, columns, &mut total);
        }
    }
    flush(&mut sums, columns, &mut total);
    total *= all / taken;
    total.set_column(ALL, &right);
    total
}

/// Weights of a batch's rows; those that fill it up have none.
fn weights(batch: &Batch, count: usize, weight: impl Fn(f32) -> f32) -> Lane {
    let mut weights: Lane = [0.0; BATCH];
    for (w, r) in weights.iter_mut().zip(&batch[ALL]).take(count) {
        *w = weight(*r);
    }
    weights
}

fn add(batch: &Batch, columns: &[usize], weights: &Lane, sums: &mut Sums) {
    let mut sums = sums.iter_mut();
    for (i, first) in columns.iter().enumerate() {
        let weighted: Lane = std::array::from_fn(|k| batch[*first][k] * weights[k]);
        for (other, sum) in columns[i..].iter().zip(sums.by_ref()) {
            let more = dot(&weighted, &batch[*other]);
            for (s, m) in sum.iter_mut().zip(more) {
                *s += m;
            }
        }
    }
}

/// Partial sums of products.
fn dot(a: &Lane, b: &Lane) -> [f32; WIDTH] {
    let mut partial = [0.0; WIDTH];
    for (a, b) in a.chunks_exact(WIDTH).zip(b.chunks_exact(WIDTH)) {
        for ((p, a), b) in partial.iter_mut().zip(a).zip(b) {
            *p += a * b;
        }
    }
    partial
}

fn flush(sums: &mut Sums, columns: &[usize], total: &mut SMatrix<f64, COLUMNS, COLUMNS>) {
    let mut sums = sums.iter_mut();
    for (i, first) in columns.iter().enumerate() {
        for (other, sum) in columns[i..].iter().zip(sums.by_ref()) {
            total[(*first, *other)] += sum.iter().map(|s| f64::from(*s)).sum::<f64>();
            *sum = [0.0; WIDTH];
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sums_are_those_of_plain_loops() {
        let value = |row: usize, column: usize| ((row * 37 + column * 101) % 89) as f32 / 40.0 - 1.0;
        // Three batches, the last one not full.
        let (rows, count) = (Rows::from_values(150, value), 150);
        let weight = |r: f32| 1.0 + r.abs();
        let all: Vec<usize> = (0..COLUMNS).collect();
        let total = squares(&rows, &all, weight);
        for i in [0, 5, 25, ALL] {
            for j in [7, 20, 26, ALL] {
                let product = |row| f64::from(weight(value(row, ALL)) * value(row, i) * value(row, j));
                let plain: f64 = (0..count).map(product).sum();
                assert!((total[(i.min(j), i.max(j))] - plain).abs() < 1e-4, "{i} {j}");
            }
        }
        // Of many batches some are enough for the matrix, not for the residuals.
        let many = squares(&Rows::from_values(64 * 3 * ENOUGH, value), &all, weight);
        let product = |row, j| f64::from(weight(value(row, ALL)) * value(row, 3) * value(row, j));
        let plain = |j| (0..64 * 3 * ENOUGH).map(|row| product(row, j)).sum::<f64>();
        assert!((many[(3, 3)] / plain(3) - 1.0).abs() < 0.02 && (many[(3, ALL)] - plain(ALL)).abs() < 0.01);
        let some = squares(&rows, &[2, 9, ALL], weight);
        assert!((some[(2, 9)] - total[(2, 9)]).abs() < 1e-9 && some[(2, 3)].abs() < 1e-12);
    }
}
