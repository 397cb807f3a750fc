//! The board as an adjustable body: nominal points and the ways in which a
//! real print on a real plate departs from them.

use nalgebra::{Point2, Point3, Vector2, Vector3};

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
    u_aspect: f64,
    /// How far each bend lifts each point of each spot, as a part of its own size: asked for at every step, so
    /// worked out once.
    lifts: Vec<Vec<[f64; BENDS.len()]>>,
}

/// The board as it is in one photo.
pub(super) struct Shape<'a> {
    target: &'a Target,
    stretches: [f64; STRETCHES],
    /// mm.
    bends: [f64; BENDS.len()],
    /// Of all spots, in units of prior sigmas.
    own: &'a [f64],
}

impl Shape<'_> {
    /// Where a spot's point is, mm.
    pub(super) fn place(&self, spot: usize, point: usize) -> Point3<f64> {
        let target = self.target;
        let Point2 { coords: p } = target.spots[spot].points_mm[point];
        let [wider, sheared] = self.stretches;
        let own = &self.own[OWN * spot..OWN * spot + OWN];
        let lift: f64 = self.bends.iter().zip(&target.lifts[spot][point]).map(|(mm, part)| mm * part).sum();
        Point3::new(
            p.x + wider * p.x + sheared * p.y + own[0] * U_PRINT_MM,
            p.y - wider * p.y + sheared * p.x + own[1] * U_PRINT_MM,
            lift + own[2] * U_LOCAL_HEIGHT_MM,
        )
    }
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
        let lift = |p: &Point2<f64>| {
            let (u, v) = (p.x / half_mm[0], p.y / half_mm[1]);
            BENDS.map(|[i, j]| legendre(i, u) * legendre(j, v))
        };
        let lifts = spots.iter().map(|s| s.points_mm.iter().map(lift).collect()).collect();
        Target { spots, u_aspect: board.u_scale_relative.max(LEAST_U_ASPECT), lifts }
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

    /// The board with its unknowns in units of prior sigmas, flexed in one photo by so many mm.
    pub(super) fn shape<'a>(&'a self, unknowns: &'a [f64], flex_mm: &[f64; FLEXES]) -> Shape<'a> {
        let (common, own) = unknowns.split_at(MOVES - OWN);
        let bend = |i: usize| u_bend_mm(i) * common[STRETCHES + i] + flex_mm.get(i).copied().unwrap_or(0.0);
        Shape {
            target: self,
            stretches: [0, 1].map(|i| self.u_aspect / 2.0 * common[i]),
            bends: std::array::from_fn(bend),
            own,
        }
    }

    /// How a point's picture moves with each of its unknowns, for one prior sigma, and with each of the ways in
    /// which a hand-held board flexes, for one mm; from how it moves with the point.
    pub(super) fn moves(
        &self,
        spot: usize,
        point: usize,
        by_point: &[Vector3<f64>; 2],
    ) -> ([Vector2<f64>; MOVES], [Vector2<f64>; FLEXES]) {
        let [x, y, z] = [0, 1, 2].map(|i| Vector2::new(by_point[0][i], by_point[1][i]));
        let at = self.spots[spot].points_mm[point];
        let lifts = &self.lifts[spot][point];
        let mut moves = [Vector2::zeros(); MOVES];
        moves[0] = (x * at.x - y * at.y) * (self.u_aspect / 2.0);
        moves[1] = (x * at.y + y * at.x) * (self.u_aspect / 2.0);
        for (i, slot) in moves[STRETCHES..MOVES - OWN].iter_mut().enumerate() {
            *slot = z * (u_bend_mm(i) * lifts[i]);
        }
        moves[MOVES - 3] = x * U_PRINT_MM;
        moves[MOVES - 2] = y * U_PRINT_MM;
        moves[MOVES - 1] = z * U_LOCAL_HEIGHT_MM;
        (moves, std::array::from_fn(|i| z * lifts[i]))
    }

    /// Peak to valley of the board's found bend, mm.
    pub(super) fn bend_mm(&self, unknowns: &[f64]) -> f64 {
        let shape = self.shape(unknowns, &[0.0; FLEXES]);
        let (mut low, mut high) = (0.0_f64, 0.0_f64);
        for (spot, s) in self.spots.iter().enumerate() {
            for point in 0..s.points_mm.len() {
                let z = shape.place(spot, point).z;
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

/// 1 sigma of a bend, mm: a sheet bends less in short waves.
fn u_bend_mm(bend: usize) -> f64 {
    let [i, j] = BENDS[bend];
    U_FLATNESS_MM / f64::from(1u32 << (i + j - 2))
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
        let place = |spot: usize| target.shape(&shape, &[0.0; FLEXES]).place(spot, 0);
        assert!((place(5).z - 2.0 * U_LOCAL_HEIGHT_MM).abs() < 1e-12);
        assert!(place(6).z.abs() < 1e-12);
    }
}
