//! How the corners of one carrier went from one photo to the next.

use nalgebra::{DMatrix, DVector, Matrix6, Vector2, Vector6};

use crate::pose::View;

/// Added to every coordinate's variance, px^2: what corners of one spot differ by from photo to photo besides noise
/// (interpolation, the coding of the picture), 1 sigma 0.005 px.
const FLOOR_PX2: f64 = 0.005 * 0.005;
/// A shift and a linear change of the picture: what a small move of a rigid body does to it, but for perspective.
const AFFINE: usize = 6;
/// Fewer corners than these tell no linear change.
const LEAST_CORNERS: usize = 4;

/// A carrier's corners that both photos show, as a shift and a linear change. A shift that all corners share is seen far
/// below one corner's own uncertainty; noise that they do not share is not taken for a move.
#[derive(Debug, Clone)]
pub(super) struct Body {
    /// Index of the carrier in the kit.
    pub(super) carrier: usize,
    /// Shift of the corners' middle along both sides, then the linear change over their reach, px.
    pub(super) went: Vector6<f64>,
    /// Its covariance, px^2.
    pub(super) covariance: Matrix6<f64>,
    /// What each change of the whole picture makes of it.
    pub(super) by_common: Matrix6<f64>,
}

impl Body {
    /// Fits the corners of one carrier's markers; `None` where there are too few.
    pub(super) fn of(carrier: usize, pairs: &[(&View, &View)], u2_edge: f64, size_px: [usize; 2]) -> Option<Self> {
        let both: Vec<(usize, usize)> = pairs
            .iter()
            .enumerate()
            .flat_map(|(m, (a, b))| (0..4).filter(move |i| a.valid[*i] && b.valid[*i]).map(move |i| (m, i)))
            .collect();
        if both.len() < LEAST_CORNERS {
            return None;
        }
        let n = 2 * both.len();
        let stacked = |of: &dyn Fn(&(usize, usize)) -> Vector2<f64>| {
            DVector::from_iterator(n, both.iter().map(of).flat_map(|v| [v.x, v.y]))
        };
        let step = stacked(&|(m, i)| pairs[*m].1.corners_px[*i] - pairs[*m].0.corners_px[*i]);
        let outward = stacked(&|(m, i)| pairs[*m].0.outward()[*i]);
        let covariance = covariance(&both, pairs) + u2_edge * &outward * outward.transpose();
        let at: Vec<Vector2<f64>> = both.iter().map(|(m, i)| pairs[*m].0.corners_px[*i]).collect();
        let design = design(&at);
        let root = covariance.cholesky()?;
        let weighted = root.solve(&design);
        let fitted = (design.transpose() * &weighted).cholesky()?.inverse();
        let fit = &fitted * weighted.transpose();
        let common = common_columns(&at, size_px);
        Some(Body {
            carrier,
            went: Vector6::from_column_slice((&fit * step).as_slice()),
            covariance: Matrix6::from_column_slice(fitted.as_slice()),
            by_common: Matrix6::from_column_slice((fit * common).as_slice()),
        })
    }
}

/// Both photos' covariances, marker by marker.
fn covariance(both: &[(usize, usize)], pairs: &[(&View, &View)]) -> DMatrix<f64> {
    let n = 2 * both.len();
    let mut all = DMatrix::from_diagonal_element(n, n, FLOOR_PX2);
    for (r, (m, i)) in both.iter().enumerate() {
        for (c, (_, j)) in both.iter().enumerate().filter(|(_, (other, _))| other == m) {
            let (a, b) = (&pairs[*m].0.covariance_px2, &pairs[*m].1.covariance_px2);
            let sum = a.fixed_view::<2, 2>(2 * i, 2 * j) + b.fixed_view::<2, 2>(2 * i, 2 * j);
            let mut block = all.fixed_view_mut::<2, 2>(2 * r, 2 * c);
            block += sum;
        }
    }
    all
}

/// Columns of a shift, and of a linear change about the corners' middle.
fn design(at: &[Vector2<f64>]) -> DMatrix<f64> {
    let middle = at.iter().sum::<Vector2<f64>>() / at.len() as f64;
    let reach = at.iter().map(|p| (p - middle).norm()).fold(1.0, f64::max);
    DMatrix::from_fn(2 * at.len(), AFFINE, |row, column| {
        let p = (at[row / 2] - middle) / reach;
        match (column % 2 == row % 2, column / 2) {
            (false, _) => 0.0,
            (true, 0) => 1.0,
            (true, 1) => p.x,
            (true, _) => p.y,
        }
    })
}

// The two are of one size by chance; where one grows the products above no longer fit.
const _: () = assert!(AFFINE == COMMON);

/// Changes of the whole picture: shift along both sides, turn, scale, and tilt about both sides.
pub(super) const COMMON: usize = 6;

/// How points go where each change of the whole picture is one pixel at the picture's edge.
pub(super) fn common_columns(at_px: &[Vector2<f64>], size_px: [usize; 2]) -> DMatrix<f64> {
    let middle = Vector2::new(size_px[0] as f64, size_px[1] as f64) / 2.0;
    let reach = middle.norm().max(1.0);
    DMatrix::from_fn(2 * at_px.len(), COMMON, |row, column| {
        let p = (at_px[row / 2] - middle) / reach;
        let along_u = row % 2 == 0;
        let way = match column {
            0 => Vector2::x(),
            1 => Vector2::y(),
            2 => Vector2::new(-p.y, p.x),
            3 => p,
            // A camera that is turned a little: shift, and these (small-angle homography).
            4 => p * p.x,
            _ => p * p.y,
        };
        if along_u { way.x } else { way.y }
    })
}
