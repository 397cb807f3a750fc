//! The board as an adjustable body: nominal points and the ways in which a
//! real print on a real plate departs from them.

use nalgebra::{Point2, Point3, Vector3};

use crate::marker::{Board, BoardKind};

/// 1 sigma of each slow bend of the board out of its plane, mm: the flatness
/// up to which a board may be used (twice this is found and allowed for).
const U_FLATNESS_MM: f64 = 0.2;
/// 1 sigma of one element's own place in the printed plane, mm (a laser or
/// inkjet print; common practice, no source).
const U_PRINT_MM: f64 = 0.02;
/// 1 sigma of one element's own height, mm (paper on a plate; likewise).
const U_LOCAL_HEIGHT_MM: f64 = 0.03;
/// Least 1 sigma of how differently a printer scales its two directions.
const LEAST_U_ASPECT: f64 = 2e-4;
/// Stretch of one direction against the other, and shear.
const STRETCHES: usize = 2;
/// Degrees along x and y of the bends: all polynomials of degree 2 to 4.
const BENDS: [[usize; 2]; 12] =
    [[2, 0], [1, 1], [0, 2], [3, 0], [2, 1], [1, 2], [0, 3], [4, 0], [3, 1], [2, 2], [1, 3], [0, 4]];
/// Of these, the ways in which a hand-held board bends differently each time: degree 2 and 3.
pub(super) const FLEXES: usize = 7;
/// An element's own shift in three directions: the last of its [`MOVES`].
pub(super) const OWN: usize = 3;
/// Unknowns of the board that move one point.
pub(super) const MOVES: usize = STRETCHES + BENDS.len() + OWN;

/// One element of the board: a marker with four corners, or one chessboard corner.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Spot {
    /// Marker id, or the corner's number.
    pub(super) id: u32,
    /// Its points, mm: x right, y up as seen, origin in the board's middle.
    pub(super) points_mm: Vec<Point2<f64>>,
}

/// The board's nominal geometry.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Target {
    pub(super) spots: Vec<Spot>,
    half_mm: [f64; 2],
    u_aspect: f64,
    /// Of each point of each spot: asked for at every step, so worked out once.
    ways: Vec<Vec<Ways>>,
}

/// The ways in which one point moves.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Ways {
    /// mm, for one prior sigma of each of its unknowns.
    pub(super) moves: [Vector3<f64>; MOVES],
    /// For one mm of each way in which a hand-held board flexes: the bends of degree 2 and 3.
    pub(super) flexes: [Vector3<f64>; FLEXES],
}

impl Target {
    pub(super) fn new(board: &Board) -> Self {
        let spots = match board.kind {
            BoardKind::Markers { columns, rows, first_id, size_mm, gap_mm } => {
                let h = size_mm / 2.0;
                let corners = [[-h, h], [h, h], [h, -h], [-h, -h]];
                grid(columns, rows, size_mm + gap_mm, first_id, &corners)
            }
            BoardKind::Chessboard { inner_corners: [columns, rows], square_mm } => {
                grid(columns, rows, square_mm, 0, &[[0.0, 0.0]])
            }
        };
        let all = || spots.iter().flat_map(|s| &s.points_mm);
        let half = |axis: usize| all().map(|p| p[axis].abs()).fold(1.0, f64::max);
        let half_mm = [half(0), half(1)];
        let mut target =
            Target { spots, half_mm, u_aspect: board.u_scale_relative.max(LEAST_U_ASPECT), ways: Vec::new() };
        let ways = |p: &Point2<f64>| Ways { moves: target.moves(p), flexes: target.flexes(p) };
        target.ways = target.spots.iter().map(|s| s.points_mm.iter().map(ways).collect()).collect();
        target
    }

    /// How a spot's point moves.
    pub(super) fn ways(&self, spot: usize, point: usize) -> &Ways {
        &self.ways[spot][point]
    }

    /// Number of unknowns of the board, each in units of its prior sigma.
    pub(super) fn unknowns(&self) -> usize {
        STRETCHES + BENDS.len() + OWN * self.spots.len()
    }

    /// Number of points in all.
    pub(super) fn points(&self) -> usize {
        self.spots.iter().map(|s| s.points_mm.len()).sum()
    }

    /// The column among the board's unknowns of each of a spot's [`MOVES`].
    pub(super) fn columns(&self, spot: usize) -> [usize; MOVES] {
        std::array::from_fn(|i| if i < MOVES - OWN { i } else { i + OWN * spot })
    }

    /// How a point moves, mm, for one prior sigma of each of its unknowns.
    fn moves(&self, point: &Point2<f64>) -> [Vector3<f64>; MOVES] {
        let (x, y) = (point.x, point.y);
        let (u, v) = (x / self.half_mm[0], y / self.half_mm[1]);
        let mut moves = [Vector3::zeros(); MOVES];
        moves[0] = Vector3::new(x, -y, 0.0) * (self.u_aspect / 2.0);
        moves[1] = Vector3::new(y, x, 0.0) * (self.u_aspect / 2.0);
        for (slot, [i, j]) in moves[STRETCHES..].iter_mut().zip(BENDS) {
            // A sheet bends less in short waves.
            let size = U_FLATNESS_MM / f64::from(1u32 << (i + j - 2));
            slot.z = size * legendre(i, u) * legendre(j, v);
        }
        moves[MOVES - 3].x = U_PRINT_MM;
        moves[MOVES - 2].y = U_PRINT_MM;
        moves[MOVES - 1].z = U_LOCAL_HEIGHT_MM;
        moves
    }

    /// A spot's point with the board's present shape, mm.
    pub(super) fn place(&self, spot: usize, point: usize, shape: &[f64]) -> Point3<f64> {
        let nominal = self.spots[spot].points_mm[point];
        let columns = self.columns(spot);
        let shift: Vector3<f64> =
            self.ways(spot, point).moves.iter().zip(columns).map(|(way, column)| way * shape[column]).sum();
        Point3::new(nominal.x, nominal.y, 0.0) + shift
    }

    fn flexes(&self, point: &Point2<f64>) -> [Vector3<f64>; FLEXES] {
        let (u, v) = (point.x / self.half_mm[0], point.y / self.half_mm[1]);
        std::array::from_fn(|i| Vector3::z() * legendre(BENDS[i][0], u) * legendre(BENDS[i][1], v))
    }

    /// A spot's point in one photo, mm.
    pub(super) fn place_in(&self, spot: usize, point: usize, shape: &[f64], flex_mm: &[f64; FLEXES]) -> Point3<f64> {
        let flexes = self.ways(spot, point).flexes.iter();
        self.place(spot, point, shape) + flexes.zip(flex_mm).map(|(way, mm)| way * *mm).sum::<Vector3<f64>>()
    }

    /// Peak to valley of the board's found bend, mm.
    pub(super) fn bend_mm(&self, shape: &[f64]) -> f64 {
        let (mut low, mut high) = (0.0_f64, 0.0_f64);
        for (spot, s) in self.spots.iter().enumerate() {
            for point in 0..s.points_mm.len() {
                let z = self.place(spot, point, shape).z;
                low = low.min(z);
                high = high.max(z);
            }
        }
        high - low
    }
}

fn grid(columns: u32, rows: u32, pitch_mm: f64, first_id: u32, points: &[[f64; 2]]) -> Vec<Spot> {
    let middle = |n: u32| f64::from(n - 1) / 2.0;
    let mut spots = Vec::new();
    for row in 0..rows {
        for column in 0..columns {
            let centre = [(f64::from(column) - middle(columns)) * pitch_mm, (middle(rows) - f64::from(row)) * pitch_mm];
            let points_mm = points.iter().map(|p| Point2::new(centre[0] + p[0], centre[1] + p[1])).collect();
            spots.push(Spot { id: first_id + row * columns + column, points_mm });
        }
    }
    spots
}

/// Legendre polynomials up to degree 4.
fn legendre(degree: usize, x: f64) -> f64 {
    let x2 = x * x;
    match degree {
        0 => 1.0,
        1 => x,
        2 => 1.5 * x2 - 0.5,
        3 => x * (2.5 * x2 - 1.5),
        _ => (35.0 * x2 * x2 - 30.0 * x2 + 3.0) / 8.0,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_run_left_to_right_and_top_to_bottom() {
        let board = Board {
            kind: BoardKind::Markers { columns: 3, rows: 2, first_id: 7, size_mm: 40.0, gap_mm: 10.0 },
            u_scale_relative: 5e-4,
        };
        let target = Target::new(&board);
        let last = &target.spots[5];
        assert_eq!(last.id, 12);
        let expected = [[30.0, -5.0], [70.0, -5.0], [70.0, -45.0], [30.0, -45.0]].map(Point2::from);
        assert_eq!(last.points_mm, expected);
        assert_eq!(target.unknowns(), 14 + 18);
    }

    #[test]
    fn a_spot_is_moved_by_its_own_unknowns_only() {
        let board =
            Board { kind: BoardKind::Chessboard { inner_corners: [4, 3], square_mm: 25.0 }, u_scale_relative: 5e-4 };
        let target = Target::new(&board);
        let mut shape = vec![0.0; target.unknowns()];
        shape[target.columns(5)[MOVES - 1]] = 2.0;
        assert!((target.place(5, 0, &shape).z - 2.0 * U_LOCAL_HEIGHT_MM).abs() < 1e-12);
        assert!(target.place(6, 0, &shape).z.abs() < 1e-12);
    }
}
