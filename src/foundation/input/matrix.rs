//! Covariance matrices in input files.

use nalgebra::{Cholesky, DMatrix};

use crate::words::{Phrase, phrase};

/// Builds a covariance matrix from its rows.
///
/// Accepts what rounding in a text file leaves behind: an asymmetry of up to
/// 1e-6 of the standard deviations is averaged out, and an eigenvalue of the
/// correlation matrix may be as low as -1e-9.
///
/// # Errors
/// Not `size` x `size`, a value not finite, a negative variance, not
/// symmetric, or not positive semi-definite: says what, without a place.
pub fn covariance(rows: &[Vec<f64>], size: usize) -> Result<DMatrix<f64>, Phrase> {
    if rows.len() != size || rows.iter().any(|r| r.len() != size) {
        let widths = rows.iter().map(Vec::len);
        let width = widths.clone().find(|w| *w != size).or(widths.max()).unwrap_or(0);
        return Err(phrase!("doors-matrix-size", size = size, rows = rows.len(), width = width));
    }
    if rows.iter().flatten().any(|x| !x.is_finite()) {
        return Err(phrase!("doors-matrix-not-finite"));
    }
    let matrix = DMatrix::from_fn(size, size, |i, j| rows[i][j]);
    let sigma = matrix.diagonal().map(f64::sqrt);
    if let Some(i) = sigma.iter().position(|s| !s.is_finite()) {
        return Err(phrase!("doors-matrix-negative", row = i + 1));
    }
    for i in 0..size {
        for j in 0..i {
            let scale = sigma[i] * sigma[j];
            if (matrix[(i, j)] - matrix[(j, i)]).abs() > 1e-6 * scale {
                return Err(phrase!("doors-matrix-not-symmetric", first = j + 1, second = i + 1));
            }
            if matrix[(i, j)].abs() > scale * (1.0 + 1e-6) {
                return Err(phrase!("doors-matrix-correlation", first = j + 1, second = i + 1));
            }
        }
    }
    let symmetric = (&matrix + matrix.transpose()) * 0.5;
    let correlation = DMatrix::from_fn(size, size, |i, j| match sigma[i] * sigma[j] {
        _ if i == j => 1.0 + 1e-9,
        scale if scale > 0.0 => symmetric[(i, j)] / scale,
        _ => 0.0,
    });
    match Cholesky::new(correlation) {
        Some(_) => Ok(symmetric),
        None => Err(phrase!("doors-matrix-not-semidefinite")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    #[test]
    fn only_matrices_that_errors_can_have_are_accepted() {
        assert!(covariance(&[vec![4.0, 1.0], vec![1.0, 9.0]], 2).is_ok());
        // Fully correlated and fixed parameters are legitimate.
        assert!(covariance(&[vec![4.0, 6.0], vec![6.0, 9.0]], 2).is_ok());
        assert!(covariance(&[vec![0.0, 0.0], vec![0.0, 9.0]], 2).is_ok());
        let wrong = |rows: &[Vec<f64>], n| covariance(rows, n).unwrap_err().say(Language::English);
        assert!(wrong(&[vec![4.0, 1.0]], 2).contains("2 x 2 values, not 1 x 2"));
        assert!(wrong(&[vec![4.0], vec![1.0, 9.0]], 2).contains("not 2 x 1"));
        assert!(wrong(&[vec![4.0, 1.0], vec![2.0, 9.0]], 2).contains("not symmetric"));
        assert!(wrong(&[vec![-4.0, 0.0], vec![0.0, 9.0]], 2).contains("negative variance in row 1"));
        assert!(wrong(&[vec![4.0, 7.0], vec![7.0, 9.0]], 2).contains("beyond 1"));
        assert!(wrong(&[vec![0.0, 1.0], vec![1.0, 9.0]], 2).contains("beyond 1"));
        assert!(wrong(&[vec![f64::NAN]], 1).contains("not finite"));
        let three = [vec![1.0, 0.9, -0.9], vec![0.9, 1.0, 0.9], vec![-0.9, 0.9, 1.0]];
        assert!(wrong(&three, 3).contains("positive semi-definite"));
    }
}
