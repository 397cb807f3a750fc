//! Cholesky's factor of a large symmetric matrix and its inverse, block by
//! block, so that nearly all of the work is products of matrices (Golub and
//! Van Loan 2013, section 4.2.9).

use nalgebra::DMatrix;

/// Columns of a block: large enough for products to be fast, small enough for little waste above the diagonal.
const BLOCK: usize = 48;

/// First column and number of columns of each block of `n` columns.
fn blocks(n: usize) -> impl Iterator<Item = (usize, usize)> {
    (0..n).step_by(BLOCK).map(move |at| (at, BLOCK.min(n - at)))
}

/// A lower triangular matrix with the inverses of its diagonal blocks. Above the diagonal is anything.
#[derive(Debug, Clone)]
pub(super) struct Lower {
    pub(super) factor: DMatrix<f64>,
    diagonal: Vec<DMatrix<f64>>,
}

/// The factor of a matrix of which only the lower part is read. `None` where it is not positive definite.
pub(super) fn cholesky(mut matrix: DMatrix<f64>) -> Option<Lower> {
    let n = matrix.nrows();
    let mut diagonal = Vec::new();
    for (at, size) in blocks(n) {
        let end = at + size;
        let lower = matrix.view((at, at), (size, size)).into_owned().cholesky()?.unpack();
        let inverse = lower.solve_lower_triangular(&DMatrix::identity(size, size))?;
        matrix.view_mut((at, at), (size, size)).copy_from(&lower);
        let panel = matrix.view((end, at), (n - end, size)) * inverse.transpose();
        matrix.view_mut((end, at), (n - end, size)).copy_from(&panel);
        subtract_square(&mut matrix, end, &panel);
        diagonal.push(inverse);
    }
    Some(Lower { factor: matrix, diagonal })
}

/// `matrix -= factor factor'` in the lower part from row and column `first` on.
pub(super) fn subtract_square(matrix: &mut DMatrix<f64>, first: usize, factor: &DMatrix<f64>) {
    let n = factor.nrows();
    let transposed = factor.transpose();
    for (at, size) in blocks(n) {
        let mut into = matrix.view_mut((first + at, first + at), (n - at, size));
        into.gemm(-1.0, &factor.rows(at, n - at), &transposed.columns(at, size), 1.0);
    }
}

impl Lower {
    /// The inverse of the factor; zero above the diagonal.
    pub(super) fn inverse(&self) -> DMatrix<f64> {
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
pub(super) fn column_squares(lower: &DMatrix<f64>, right: &DMatrix<f64>) -> Vec<f64> {
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
            let all = &inverse * &right;
            for (square, column) in column_squares(&inverse, &right).iter().zip(all.column_iter()) {
                assert!((square - column.norm_squared()).abs() < 1e-9 * column.norm_squared());
            }
        }
        assert!(cholesky(-DMatrix::<f64>::identity(60, 60)).is_none());
    }
}
