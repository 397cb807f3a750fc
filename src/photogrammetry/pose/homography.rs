//! The projective map between a plane and the image.

use nalgebra::{DMatrix, Matrix3, Point2, Vector3};

/// The homography that maps `from` to `to` (four or more points, no three on
/// a line), scaled so that its last element is 1; direct linear transformation
/// with normalised coordinates (Hartley 1997). `None` for degenerate points.
pub fn homography(from: &[Point2<f64>], to: &[Point2<f64>]) -> Option<Matrix3<f64>> {
    let (na, nb) = (normalizer(from)?, normalizer(to)?);
    let mut rows = DMatrix::<f64>::zeros(2 * from.len().max(5), 9);
    for (i, (a, b)) in from.iter().zip(to).enumerate() {
        let p = na * Vector3::new(a.x, a.y, 1.0);
        let q = nb * Vector3::new(b.x, b.y, 1.0);
        rows.row_mut(2 * i).copy_from_slice(&[p.x, p.y, 1.0, 0.0, 0.0, 0.0, -q.x * p.x, -q.x * p.y, -q.x]);
        rows.row_mut(2 * i + 1).copy_from_slice(&[0.0, 0.0, 0.0, p.x, p.y, 1.0, -q.y * p.x, -q.y * p.y, -q.y]);
    }
    let svd = rows.svd(false, true);
    let v = svd.v_t?;
    let smallest = svd.singular_values.imin();
    let h = v.row(smallest);
    let normalized = Matrix3::from_row_slice(&[h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], h[8]]);
    let map = nb.try_inverse()? * normalized * na;
    let scale = map[(2, 2)];
    (scale.abs() > 1e-12 && map.iter().all(|x| x.is_finite())).then(|| map / scale)
}

/// Moves the centroid to the origin and the mean distance to the square root of 2.
fn normalizer(points: &[Point2<f64>]) -> Option<Matrix3<f64>> {
    if points.len() < 4 {
        return None;
    }
    let n = points.len() as f64;
    let centre = points.iter().fold(nalgebra::Vector2::zeros(), |s, p| s + p.coords) / n;
    let spread = points.iter().map(|p| (p.coords - centre).norm()).sum::<f64>() / n;
    if spread.is_nan() || spread <= 1e-12 {
        return None;
    }
    let s = std::f64::consts::SQRT_2 / spread;
    Some(Matrix3::new(s, 0.0, -s * centre.x, 0.0, s, -s * centre.y, 0.0, 0.0, 1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn four_points_are_met_exactly() {
        let from = [[-1.0, 1.0], [1.0, 1.0], [1.0, -1.0], [-1.0, -1.0]].map(Point2::from);
        let to = [[0.1, 0.2], [0.6, 0.25], [0.55, 0.7], [0.05, 0.66]].map(Point2::from);
        let h = homography(&from, &to).unwrap();
        for (a, b) in from.iter().zip(&to) {
            let q = h * Vector3::new(a.x, a.y, 1.0);
            assert!((Point2::new(q.x / q.z, q.y / q.z) - b).norm() < 1e-12);
        }
    }

    #[test]
    fn points_in_one_place_have_none() {
        let same = [Point2::new(1.0, 1.0); 4];
        assert!(homography(&same, &same).is_none());
    }
}
