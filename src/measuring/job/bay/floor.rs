//! Heights of floor sheets over the plane of the wheels.

use nalgebra::{DMatrix, Matrix3, Point3, Vector3, Vector6};

use crate::geom::{Carrier, Pose, World, deg};

/// What is known of a bay at one point of the unknowns.
#[derive(Debug, Clone)]
pub(super) struct Bodies {
    /// Hub datums: rear left, rear right, front left, front right.
    pub(super) hubs: [Option<Pose<World, Carrier>>; 4],
    pub(super) nose: Option<Pose<World, Carrier>>,
    pub(super) sheets: Vec<Pose<World, Carrier>>,
}

/// The floor in the wheels' frame: x along the vehicle, z up, lengths mm,
/// angles degrees. Without wheels the sheets' own plane is the frame.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Floor {
    /// Sheets: x, y, height over the wheels' plane.
    pub(super) sheets: Vec<[f64; 3]>,
    /// Each sheet's rise to the front and to the left.
    pub(super) tilts: Vec<[f64; 2]>,
    /// The sheets' best plane: rise to the front and to the left.
    pub(super) slope: [f64; 2],
    /// Each sheet's height over that plane.
    pub(super) off_plane: Vec<f64>,
    /// Distance from the nose to the farthest sheet before it.
    pub(super) ahead: Option<f64>,
    /// How far the fourth wheel is off the plane of the other three, as half of the twist.
    pub(super) twist: Option<f64>,
}

impl Bodies {
    /// The floor, or `None` where neither wheels nor three sheets make a plane.
    pub(super) fn floor(&self, hub_height_mm: Option<f64>, nose_mm: Option<f64>) -> Option<Floor> {
        let frame = self.frame()?;
        let local = |p: &Pose<World, Carrier>| frame.inverse().point(&Point3::from(p.origin_mm()));
        let mut sheets: Vec<[f64; 3]> = self.sheets.iter().map(|s| local(s).coords.into()).collect();
        // Hub height as typed, else the floor under the wheels is taken as zero.
        let below = hub_height_mm.unwrap_or_else(|| -nearest_to_wheels(&sheets));
        for s in &mut sheets {
            s[2] += below;
        }
        let slope = plane(&sheets)?;
        let off_plane = sheets.iter().map(|s| s[2] - slope[0] * s[0] - slope[1] * s[1] - slope[2]).collect();
        let tilts = self.sheets.iter().map(|s| {
            let up = frame.inverse().direction(&s.direction(&Vector3::z()));
            [deg((-up.x / up.z).atan()), deg((-up.y / up.z).atan())]
        });
        let nose = self.nose.as_ref().map(|n| local(n).x).or(nose_mm);
        let far = sheets.iter().map(|s| s[0]).fold(f64::MIN, f64::max);
        Some(Floor {
            tilts: tilts.collect(),
            slope: [deg(slope[0].atan()), deg(slope[1].atan())],
            off_plane,
            ahead: nose.map(|n| far - n).filter(|a| *a > 0.0),
            twist: self.twist(&frame),
            sheets,
        })
    }

    /// Origin between the rear hubs, z normal to the plane of the hubs, x forward.
    fn frame(&self) -> Option<Pose<World, Carrier>> {
        let hubs: Vec<Vector3<f64>> = self.hubs.iter().flatten().map(Pose::origin_mm).collect();
        if let ([Some(l), Some(r), front_left, front_right], 3..) = (&self.hubs, hubs.len()) {
            let rear = (l.origin_mm() + r.origin_mm()) / 2.0;
            let fronts: Vec<Vector3<f64>> =
                [front_left, front_right].into_iter().flatten().map(Pose::origin_mm).collect();
            let mut normal = normal_of(&hubs)?;
            let up = l.direction(&Vector3::z());
            normal *= normal.dot(&up).signum();
            let ahead = match fronts.as_slice() {
                [a, b] => (a + b) / 2.0 - rear,
                _ => l.direction(&Vector3::x()),
            };
            let x = (ahead - normal * ahead.dot(&normal)).try_normalize(1e-9)?;
            return Some(Pose::from_matrix(Matrix3::from_columns(&[x, normal.cross(&x), normal]), rear));
        }
        let points: Vec<Vector3<f64>> = self.sheets.iter().map(Pose::origin_mm).collect();
        let mut normal = normal_of(&points)?;
        normal *= normal.dot(&self.sheets.first()?.direction(&Vector3::z())).signum();
        let ahead = self.sheets.first()?.direction(&Vector3::x());
        let x = (ahead - normal * ahead.dot(&normal)).try_normalize(1e-9)?;
        let middle = points.iter().sum::<Vector3<f64>>() / points.len() as f64;
        Some(Pose::from_matrix(Matrix3::from_columns(&[x, normal.cross(&x), normal]), middle))
    }

    fn twist(&self, frame: &Pose<World, Carrier>) -> Option<f64> {
        let z = |i: usize| Some(frame.inverse().point(&Point3::from(self.hubs[i]?.origin_mm())).z);
        Some((z(0)? + z(3)? - z(1)? - z(2)?) / 2.0)
    }

    /// The bodies moved by one column of the covariance's factor; `rows` gives
    /// each body's first row: hubs, nose, sheets.
    pub(super) fn moved(&self, rows: &Rows, factor: &DMatrix<f64>, column: usize) -> Bodies {
        let step = |row: usize| Vector6::from_fn(|i, _| factor[(row + i, column)]);
        let mut moved = self.clone();
        for (hub, row) in moved.hubs.iter_mut().zip(rows.hubs) {
            *hub = hub.zip(row).map(|(p, r)| p.moved(&step(r)));
        }
        moved.nose = self.nose.zip(rows.nose).map(|(p, r)| p.moved(&step(r)));
        for (sheet, row) in moved.sheets.iter_mut().zip(&rows.sheets) {
            *sheet = sheet.moved(&step(*row));
        }
        moved
    }
}

/// Rows of the factor by body.
#[derive(Debug, Clone)]
pub(super) struct Rows {
    pub(super) hubs: [Option<usize>; 4],
    pub(super) nose: Option<usize>,
    pub(super) sheets: Vec<usize>,
}

/// Unit normal of the best plane through points.
fn normal_of(points: &[Vector3<f64>]) -> Option<Vector3<f64>> {
    if points.len() < 3 {
        return None;
    }
    let middle = points.iter().sum::<Vector3<f64>>() / points.len() as f64;
    let spread = points.iter().fold(Matrix3::zeros(), |m, p| m + (p - middle) * (p - middle).transpose());
    let eigen = spread.symmetric_eigen();
    let (least, _) = eigen.eigenvalues.argmin();
    // Points on one line have no plane.
    let mut sorted: Vec<f64> = eigen.eigenvalues.iter().copied().collect();
    sorted.sort_by(f64::total_cmp);
    (sorted[1] > 1e-6 * sorted[2]).then(|| eigen.eigenvectors.column(least).into_owned())
}

/// z = a x + b y + c, least squares.
fn plane(points: &[[f64; 3]]) -> Option<[f64; 3]> {
    if points.len() < 3 {
        return None;
    }
    let n = points.len() as f64;
    let mean = |i: usize| points.iter().map(|p| p[i]).sum::<f64>() / n;
    let m = [mean(0), mean(1), mean(2)];
    let sum = |i: usize, j: usize| points.iter().map(|p| (p[i] - m[i]) * (p[j] - m[j])).sum::<f64>();
    let (xx, xy, yy, xz, yz) = (sum(0, 0), sum(0, 1), sum(1, 1), sum(0, 2), sum(1, 2));
    let d = xx * yy - xy * xy;
    if d.abs() < 1e-6 * xx * yy || d.abs() < 1e-9 {
        return None;
    }
    let (a, b) = ((xz * yy - yz * xy) / d, (yz * xx - xz * xy) / d);
    Some([a, b, m[2] - a * m[0] - b * m[1]])
}

/// Mean height of the three sheets that lie nearest to the rear axle.
fn nearest_to_wheels(sheets: &[[f64; 3]]) -> f64 {
    let mut sorted: Vec<&[f64; 3]> = sheets.iter().collect();
    sorted.sort_by(|a, b| a[0].hypot(a[1]).total_cmp(&b[0].hypot(b[1])));
    let near = &sorted[..sorted.len().min(3)];
    near.iter().map(|s| s[2]).sum::<f64>() / near.len().max(1) as f64
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::UnitQuaternion;

    fn at(x: f64, y: f64, z: f64) -> Pose<World, Carrier> {
        Pose::new(UnitQuaternion::identity(), Vector3::new(x, y, z))
    }

    #[test]
    fn a_ramp_of_one_degree_before_level_wheels() {
        let rise = 1f64.to_radians().tan();
        let places = [[3000.0, 900.0], [3000.0, -900.0], [5000.0, 800.0], [5000.0, -800.0], [7000.0, 0.0]];
        let bodies = Bodies {
            hubs: [[0.0, 800.0], [0.0, -800.0], [2600.0, 800.0], [2600.0, -800.0]].map(|[x, y]| Some(at(x, y, 320.0))),
            nose: None,
            sheets: places.iter().map(|[x, y]| at(*x, *y, (x - 3000.0) * rise)).collect(),
        };
        let floor = bodies.floor(Some(320.0), Some(3500.0)).unwrap();
        assert!((floor.slope[0] - 1.0).abs() < 1e-9 && floor.slope[1].abs() < 1e-9, "{floor:?}");
        assert!(floor.off_plane.iter().all(|d| d.abs() < 1e-9));
        assert!((floor.sheets[4][2] - 4000.0 * rise).abs() < 1e-9);
        assert_eq!((floor.ahead, floor.twist.map(|t| t.abs() < 1e-9)), (Some(3500.0), Some(true)));
    }

    #[test]
    fn one_sheet_on_a_bump_is_off_the_plane() {
        let mut sheets: Vec<_> = [[0.0, 0.0], [2000.0, 0.0], [0.0, 2000.0], [2000.0, 2000.0], [1000.0, 1000.0]]
            .map(|[x, y]| at(x, y, 0.0))
            .to_vec();
        sheets[4] = at(1000.0, 1000.0, 10.0);
        let floor = Bodies { hubs: [None; 4], nose: None, sheets }.floor(None, None).unwrap();
        // Four corners at -2, the middle at 8 over the mean plane.
        assert!((floor.off_plane[4] - 8.0).abs() < 1e-6 && (floor.off_plane[0] + 2.0).abs() < 1e-6, "{floor:?}");
    }
}
