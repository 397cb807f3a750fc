//! Sums of the products of the columns of a marker's rows: the weighted normal equations.

use multiversion::multiversion;
use nalgebra::SMatrix;

use super::lanes::{BATCH, Lane};
use super::model::ALL;
use super::rows::{Batch, Rows};

/// Partial sums side by side, as wide as a vector register.
const WIDTH: usize = 8;
/// Batches summed in single precision before they are added to the total.
const RUN: usize = 16;

type Sums = [[f32; WIDTH]];

/// Upper triangle of the weighted sum over rows of the products of `columns` (ascending).
pub(super) fn squares<const N: usize>(
    rows: &Rows,
    columns: &[usize],
    weight: impl Fn(f32) -> f32,
) -> SMatrix<f64, N, N> {
    let mut total = SMatrix::zeros();
    let mut sums = vec![[0.0; WIDTH]; columns.len() * (columns.len() + 1) / 2];
    for (i, (batch, count)) in rows.batches().enumerate() {
        add(batch, columns, &weights(batch, count, &weight), &mut sums);
        if (i + 1).is_multiple_of(RUN) {
            flush(&mut sums, columns, &mut total);
        }
    }
    flush(&mut sums, columns, &mut total);
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

#[multiversion(targets("x86_64+avx2"))]
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
#[inline(always)]
fn dot(a: &Lane, b: &Lane) -> [f32; WIDTH] {
    let mut partial = [0.0; WIDTH];
    for (a, b) in a.chunks_exact(WIDTH).zip(b.chunks_exact(WIDTH)) {
        for ((p, a), b) in partial.iter_mut().zip(a).zip(b) {
            *p += a * b;
        }
    }
    partial
}

fn flush<const N: usize>(sums: &mut Sums, columns: &[usize], total: &mut SMatrix<f64, N, N>) {
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
    use super::super::rows::WIDE;
    use super::*;

    #[test]
    fn sums_are_those_of_plain_loops() {
        let value = |row: usize, column: usize| ((row * 37 + column * 101) % 89) as f32 / 40.0 - 1.0;
        // Three batches, the last one not full.
        let (rows, count) = (Rows::from_values(150, value), 150);
        let weight = |r: f32| 1.0 + r.abs();
        let all: Vec<usize> = (0..WIDE).collect();
        let total = squares::<WIDE>(&rows, &all, weight);
        for i in [0, 5, 25, ALL] {
            for j in [7, 20, 26, ALL] {
                let product = |row| f64::from(weight(value(row, ALL)) * value(row, i) * value(row, j));
                let plain: f64 = (0..count).map(product).sum();
                assert!((total[(i.min(j), i.max(j))] - plain).abs() < 1e-4, "{i} {j}");
            }
        }
        let some = squares::<WIDE>(&rows, &[2, 9, ALL], weight);
        assert!((some[(2, 9)] - total[(2, 9)]).abs() < 1e-9 && some[(2, 3)].abs() < 1e-12);
    }
}
