//! What all photos see alike: a corner that is printed, glued or lit off its place is off in each of
//! them, and no number of photos averages it out.
//!
//! Residuals say how much of that there is. A marker's four corners have eight coordinates; the
//! adjustment can take up their common shift, turn and size, so that only the other four ways to
//! deform a square tell. Whatever two photos agree about in those is no noise of the picture: the
//! products of one photo's residuals with another's have the variance of the prints as their mean
//! (a variance component estimated from products, as in C. R. Rao's MINQUE, 1971, with weights that
//! are best where there is nothing in common).

use std::collections::BTreeMap;

use nalgebra::{DMatrix, Matrix2, Matrix3x2, SMatrix, SVector};

use super::residual::Equations;
use super::views::View;
use crate::marker::Marker;

/// Ways to deform a square that no shift, turn or size makes: aspect, shear and two trapezes, of
/// the corners' coordinates x0 y0 x1 y1 ..., each of length 1.
const DEFORMATIONS: usize = 4;

/// Fewer products than this say nothing.
const FEWEST: usize = 12;

/// One view with the derivatives of its corners by places in the marker's plane.
pub(super) struct Printed<'a> {
    pub(super) equations: &'a Equations,
    pub(super) marker: &'a Marker,
    pub(super) view: &'a View,
}

impl Printed<'_> {
    /// Pixels of the valid corners by each one's own place in the marker's plane, px/mm: two columns a corner.
    fn by_place(&self) -> DMatrix<f64> {
        let plane = Matrix3x2::from_columns(&[self.marker.right, self.marker.up]);
        let by_point = self.equations.by_carrier_px.columns(0, 3) * plane;
        let rows = by_point.nrows();
        DMatrix::from_fn(rows, rows, |r, c| if r / 2 == c / 2 { by_point[(r, c % 2)] } else { 0.0 })
    }

    /// Its residuals as deformations of the print, mm, and their variance from the picture's noise, mm^2.
    fn deformations(&self) -> Option<[(f64, f64); DEFORMATIONS]> {
        if !self.view.valid.iter().all(|v| *v) {
            return None;
        }
        let by_place = self.by_place();
        let mut inverse = SMatrix::<f64, 8, 8>::zeros();
        for i in 0..4 {
            let block: Matrix2<f64> = by_place.fixed_view::<2, 2>(2 * i, 2 * i).into_owned();
            inverse.fixed_view_mut::<2, 2>(2 * i, 2 * i).copy_from(&block.try_inverse()?);
        }
        let residual = SVector::<f64, 8>::from_fn(|k, _| self.equations.residual_px[k / 2][k % 2]);
        let place = inverse * residual;
        let covariance = inverse * self.view.covariance_px2 * inverse.transpose();
        Some(modes().map(|mode| (mode.dot(&place), mode.dot(&(covariance * mode)).max(f64::MIN_POSITIVE))))
    }

    /// How the solution moves (one column a coordinate) with each valid corner's place, per mm: its share
    /// of `N^-1 A' W B`, given the rows of `N^-1` of what is asked for.
    fn moves(&self, shared: &DMatrix<f64>, photo: &DMatrix<f64>, by_place: &DMatrix<f64>) -> DMatrix<f64> {
        let e = self.equations;
        let own: DMatrix<f64> = DMatrix::from_fn(e.shared.len(), shared.ncols(), |r, c| shared[(e.shared[r], c)]);
        let seen = &e.by_shared * own + &e.by_photo * photo;
        seen.tr_mul(by_place)
    }
}

/// The corners run clockwise from the top left: x is right, y is up.
fn modes() -> [SVector<f64, 8>; DEFORMATIONS] {
    const CORNERS: [[f64; 2]; 4] = [[-1.0, 1.0], [1.0, 1.0], [1.0, -1.0], [-1.0, -1.0]];
    let mode = |of: fn([f64; 2]) -> [f64; 2]| SVector::<f64, 8>::from_fn(|k, _| of(CORNERS[k / 2])[k % 2]).normalize();
    [mode(|[x, y]| [x, -y]), mode(|[x, y]| [y, x]), mode(|[x, y]| [x * y, 0.0]), mode(|[x, y]| [0.0, x * y])]
}

/// Variance of each coordinate of a printed corner about its place, mm^2: what photos agree about.
fn variance_mm2(of_marker: &BTreeMap<u32, Vec<&Printed>>) -> f64 {
    let (mut products, mut weights, mut count) = (0.0, 0.0, 0);
    for printed in of_marker.values() {
        let deformed: Vec<(usize, [(f64, f64); DEFORMATIONS])> =
            printed.iter().filter_map(|p| Some((p.equations.block, p.deformations()?))).collect();
        for (at, (block, a)) in deformed.iter().enumerate() {
            for (_, b) in deformed[at + 1..].iter().filter(|(other, _)| other != block) {
                for ((x, u), (y, v)) in a.iter().zip(b) {
                    products += x * y / (u * v);
                    weights += 1.0 / (u * v);
                    count += 1;
                }
            }
        }
    }
    if count < FEWEST { 0.0 } else { (products / weights).max(0.0) }
}

/// What the prints have to do with a solution.
pub(super) struct Share {
    /// Covariance that they add to what is asked for.
    pub(super) covariance: DMatrix<f64>,
    /// Their part of the variance of unit weight: it is the prints', not the pictures'.
    pub(super) variance: f64,
}

/// What the prints add to what is asked for, given the rows of `N^-1` that belong to it: of the
/// shared columns and of each photo. `variance` is that of unit weight.
pub(super) fn share(
    all: &[Printed],
    (shared, photos): (&DMatrix<f64>, &[DMatrix<f64>]),
    variance: f64,
) -> Option<Share> {
    let n = shared.ncols();
    let mut of_marker: BTreeMap<u32, Vec<&Printed>> = BTreeMap::new();
    for printed in all {
        of_marker.entry(printed.view.id).or_default().push(printed);
    }
    let variance_mm2 = variance_mm2(&of_marker);
    if variance_mm2 <= 0.0 {
        return None;
    }
    let mut covariance = DMatrix::zeros(n, n);
    let (mut squares, mut rows) = (0.0, 0);
    for printed in of_marker.values() {
        let mut moves = DMatrix::<f64>::zeros(n, 8);
        for p in printed {
            let by_place = p.equations.whitened(&p.by_place());
            squares += by_place.norm_squared();
            rows += by_place.nrows();
            let own = p.moves(shared, &photos[p.equations.block], &by_place);
            for (row, corner) in (0..4).filter(|i| p.view.valid[*i]).enumerate() {
                let mut into = moves.columns_mut(2 * corner, 2);
                into += own.columns(2 * row, 2);
            }
        }
        covariance += &moves * moves.transpose();
    }
    covariance *= variance_mm2 / (variance * variance);
    Some(Share { covariance, variance: squares * variance_mm2 / rows.max(1) as f64 })
}

#[cfg(test)]
mod tests {
    use nalgebra::Vector2;

    use super::*;

    #[test]
    fn no_shift_turn_or_size_is_a_deformation() {
        let corners = [[-1.0, 1.0], [1.0, 1.0], [1.0, -1.0], [-1.0, -1.0]].map(Vector2::from);
        let rigid: [fn(Vector2<f64>) -> Vector2<f64>; 4] =
            [|_| Vector2::x(), |_| Vector2::y(), |p| Vector2::new(-p.y, p.x), |p| p];
        for motion in rigid {
            let moved = SVector::<f64, 8>::from_fn(|k, _| motion(corners[k / 2])[k % 2]);
            for mode in modes() {
                assert!(mode.dot(&moved).abs() < 1e-12 && (mode.norm() - 1.0).abs() < 1e-12);
            }
        }
        for (i, a) in modes().iter().enumerate() {
            assert!(modes().iter().enumerate().all(|(j, b)| i == j || a.dot(b).abs() < 1e-12));
        }
    }
}
