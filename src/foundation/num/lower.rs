//! Cholesky's factor of a large symmetric matrix and its inverse, block by
//! block, so that nearly all of the work is products of matrices (Golub and
//! Van Loan 2013, section 4.2.9).

use nalgebra::allocator::Allocator;
use nalgebra::{DMatrix, DefaultAllocator, Dim, Dyn, OMatrix, SMatrix};

/// Columns of a block: large enough for products to be fast, small enough for little waste above the diagonal.
const BLOCK: usize = 48;

/// First column and number of columns of each block of `n` columns.
fn blocks(n: usize) -> impl DoubleEndedIterator<Item = (usize, usize)> + ExactSizeIterator {
    (0..n).step_by(BLOCK).map(move |at| (at, BLOCK.min(n - at)))
}

/// A lower triangular matrix with the inverses of its diagonal blocks. Above the diagonal is anything.
#[derive(Debug, Clone)]
pub struct Lower {
    factor: DMatrix<f64>,
    diagonal: Vec<DMatrix<f64>>,
}

/// The factor of a matrix of which only the lower part is read. `None` where it is not positive definite.
pub fn cholesky(mut matrix: DMatrix<f64>) -> Option<Lower> {
    let n = matrix.nrows();
    let mut diagonal = Vec::new();
    for (at, size) in blocks(n) {
        let end = at + size;
        let mut lower = matrix.view((at, at), (size, size)).into_owned();
        factorize(lower.as_mut_slice(), size)?;
        let mut inverse = DMatrix::identity(size, size);
        invert(lower.as_slice(), inverse.as_mut_slice(), size);
        matrix.view_mut((at, at), (size, size)).copy_from(&lower);
        let panel = matrix.view((end, at), (n - end, size)) * inverse.transpose();
        matrix.view_mut((end, at), (n - end, size)).copy_from(&panel);
        subtract_square(&mut matrix, end, &panel);
        diagonal.push(inverse);
    }
    Some(Lower { factor: matrix, diagonal })
}

/// The inverse of Cholesky's factor of a small matrix of which only the lower part is read; zero above the
/// diagonal. `None` where it is not positive definite.
pub fn inverse_factor<const N: usize>(mut matrix: SMatrix<f64, N, N>) -> Option<SMatrix<f64, N, N>> {
    factorize(matrix.as_mut_slice(), N)?;
    let mut inverse = SMatrix::<f64, N, N>::identity();
    invert(matrix.as_slice(), inverse.as_mut_slice(), N);
    Some(inverse)
}

/// `into += by * column`, element by element.
pub fn add(into: &mut [f64], by: f64, column: &[f64]) {
    for (x, y) in into.iter_mut().zip(column) {
        *x += by * y;
    }
}

/// A block's factor in its lower part, column by column. `None` where it is not positive definite.
fn factorize(block: &mut [f64], n: usize) -> Option<()> {
    for j in 0..n {
        let (done, rest) = block.split_at_mut((j + 1) * n);
        let column = &mut done[j * n + j..];
        let root = column[0].sqrt();
        (root > 0.0).then_some(())?;
        column.iter_mut().for_each(|x| *x /= root);
        for (k, other) in rest.chunks_exact_mut(n).enumerate() {
            add(&mut other[j + 1 + k..], -column[1 + k], &column[1 + k..]);
        }
    }
    Some(())
}

/// The inverse of a lower triangle, from an identity matrix.
fn invert(lower: &[f64], inverse: &mut [f64], n: usize) {
    for (c, column) in inverse.chunks_exact_mut(n).enumerate() {
        for j in c..n {
            let (solved, below) = column.split_at_mut(j + 1);
            solved[j] /= lower[j * n + j];
            add(below, -solved[j], &lower[j * n + j + 1..(j + 1) * n]);
        }
    }
}

/// `matrix -= factor factor'` in the lower part from row and column `first` on.
pub fn subtract_square(matrix: &mut DMatrix<f64>, first: usize, factor: &DMatrix<f64>) {
    let n = factor.nrows();
    let transposed = factor.transpose();
    for (at, size) in blocks(n) {
        let mut into = matrix.view_mut((first + at, first + at), (n - at, size));
        into.gemm(-1.0, &factor.rows(at, n - at), &transposed.columns(at, size), 1.0);
    }
}

impl Lower {
    /// `L^-1 right`.
    pub fn solve_lower<C: Dim>(&self, mut right: OMatrix<f64, Dyn, C>) -> OMatrix<f64, Dyn, C>
    where
        DefaultAllocator: Allocator<Dyn, C>,
    {
        let n = self.factor.nrows();
        for ((at, size), diagonal) in blocks(n).zip(&self.diagonal) {
            let (before, mut own) = right.rows_range_pair_mut(..at, at..at + size);
            own.gemm(-1.0, &self.factor.view((at, 0), (size, at)), &before, 1.0);
            let solved = diagonal * &own;
            own.copy_from(&solved);
        }
        right
    }

    /// `(L L')^-1 right`, with the matrix that was factorized.
    pub fn solve<C: Dim>(&self, right: OMatrix<f64, Dyn, C>) -> OMatrix<f64, Dyn, C>
    where
        DefaultAllocator: Allocator<Dyn, C>,
    {
        let n = self.factor.nrows();
        let mut right = self.solve_lower(right);
        for ((at, size), diagonal) in blocks(n).zip(&self.diagonal).rev() {
            let end = at + size;
            let (mut own, after) = right.rows_range_pair_mut(at..end, end..);
            own.gemm_tr(-1.0, &self.factor.view((end, at), (n - end, size)), &after, 1.0);
            let solved = diagonal.tr_mul(&own);
            own.copy_from(&solved);
        }
        right
    }

    /// The inverse of the factor; zero above the diagonal.
    pub fn inverse(&self) -> DMatrix<f64> {
        let n = self.factor.nrows();
        let mut inverse = DMatrix::zeros(n, n);
        for ((at, size), diagonal) in blocks(n).zip(&self.diagonal) {
            let before = self.factor.view((at, 0), (size, at)) * inverse.view((0, 0), (at, at));
            inverse.view_mut((at, 0), (size, at)).gemm(-1.0, diagonal, &before, 0.0);
            inverse.view_mut((at, at), (size, size)).copy_from(diagonal);
        }
        inverse
    }
}

/// Sum of squares of each column of `lower * right`, `lower` being zero above its diagonal.
pub fn column_squares(lower: &DMatrix<f64>, right: &DMatrix<f64>) -> Vec<f64> {
    let mut squares = vec![0.0; right.ncols()];
    for (at, size) in blocks(lower.nrows()) {
        let end = at + size;
        let rows = lower.view((at, 0), (size, end)) * right.rows(0, end);
        for (sum, column) in squares.iter_mut().zip(rows.column_iter()) {
            *sum += column.norm_squared();
        }
    }
    squares
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Against nalgebra's own factor, over several blocks and a part of one.
    #[test]
    fn factor_and_inverse_are_those_of_the_whole_matrix() {
        for n in [5, 48, 131] {
            let part = DMatrix::from_fn(n, n, |i, j| ((3 * i + 7 * j * j + i * j) % 11) as f64 - 5.0);
            let matrix = &part * part.transpose() + DMatrix::identity(n, n) * 3.0;
            let expected = matrix.clone().cholesky().unwrap();
            let found = cholesky(matrix.clone()).unwrap();
            assert!((found.factor.lower_triangle() - expected.l()).amax() < 1e-9);
            let inverse = found.inverse();
            assert!((inverse.tr_mul(&inverse) - expected.inverse()).amax() < 1e-9);
            let right = DMatrix::from_fn(n, 3, |i, j| (i + j) as f64 % 4.0);
            assert!((found.solve(right.clone()) - expected.solve(&right)).amax() < 1e-9);
            assert!((found.solve_lower(right.clone()) - &inverse * &right).amax() < 1e-9);
            let all = &inverse * &right;
            for (square, column) in column_squares(&inverse, &right).iter().zip(all.column_iter()) {
                assert!((square - column.norm_squared()).abs() < 1e-9 * column.norm_squared());
            }
        }
        assert!(cholesky(-DMatrix::<f64>::identity(60, 60)).is_none());
    }

    #[test]
    fn a_small_factor_s_inverse() {
        let part = SMatrix::<f64, 7, 7>::from_fn(|i, j| ((3 * i + 7 * j * j + i * j) % 11) as f64 - 5.0);
        let matrix = part * part.transpose() + SMatrix::identity() * 3.0;
        let found = inverse_factor(matrix).unwrap();
        assert!((found.transpose() * found - matrix.try_inverse().unwrap()).amax() < 1e-9);
        assert!(inverse_factor(-matrix).is_none());
    }
}
