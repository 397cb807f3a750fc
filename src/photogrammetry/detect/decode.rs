//! Reading a candidate's code.

use nalgebra::{Matrix3, Vector2, Vector3};

use super::homography::Homography;
use super::pyramid::Level;
use super::quad::Quad;
use crate::marker::{CELLS, CODE_CELLS, Dictionary};

/// Cells along a side with the white margin.
const GRID: usize = CELLS + 2;
/// Most bits that may be wrong; such readings must also look like the pattern.
const MOST_WRONG_BITS: u32 = 2;
/// Least correlation of the cells' grey values with the pattern, by wrong bits.
const MIN_CORRELATION: [f64; 3] = [0.72, 0.80, 0.85];
/// Share of a cell's contrast to its neighbours that blur takes from small markers, or rather what
/// gives it back.
const CARRIED: f64 = 0.5;
/// How far from a border's black, share of the contrast, not all cells of a code lie.
const PLAIN: f64 = 0.2;
/// Least difference of white and black, grey levels.
const MIN_CONTRAST: f64 = 18.0;

/// A candidate that carries a code.
#[derive(Debug, Clone)]
pub(super) struct Reading {
    pub(super) id: u32,
    pub(super) wrong_bits: u32,
    /// Clockwise from the upright code's top-left corner.
    pub(super) quad: Quad,
    pub(super) correlation: f64,
    /// Grey levels of black and white in its middle.
    pub(super) greys: (f64, f64),
}

/// A candidate without a code.
#[derive(Debug, Clone, Copy)]
pub(super) struct Unread {
    /// It still has a marker's black border and white margin, nearly all around, and within them something like cells.
    pub(super) promising: bool,
}

impl Reading {
    /// Whether nothing speaks against it.
    pub(super) fn is_clean(&self) -> bool {
        self.wrong_bits == 0 && self.correlation > 0.9
    }

    /// The smaller the better.
    pub(super) fn rank(&self) -> (u32, i64) {
        (self.wrong_bits, -(1e6 * self.correlation) as i64)
    }
}

/// The code within a quadrilateral on a level, if it is one of the dictionary's.
pub(super) fn read(level: &Level<'_>, quad: &Quad, dictionary: &Dictionary) -> Result<Reading, Unread> {
    let no_marker = Unread { promising: false };
    let cells = sample_cells(level, &Homography::from_corners(quad).ok_or(no_marker)?);
    let planes = Planes::fit(&cells).ok_or(no_marker)?;
    let promising = || is_framed(&cells, &planes) && may_hold_a_code(&cells, &planes);
    read_cells(&cells, &planes, quad, dictionary).ok_or_else(|| Unread { promising: promising() })
}

/// Whether at least 52 of the 64 cells of border and margin are on their side of the middle.
fn is_framed(cells: &Cells, planes: &Planes) -> bool {
    let right = |(c, r): (usize, usize)| match (is_margin(c, r), is_border(c, r)) {
        (true, _) => cells[r][c] > planes.middle(c, r),
        (_, true) => cells[r][c] < planes.middle(c, r),
        _ => false,
    };
    (0..GRID * GRID).filter(|i| right((i % GRID, i / GRID))).count() >= 52
}

/// Whether not all that lies within a border is as black as it, on the scale of the border's black and the margin's white: a
/// black square shows no code, however closely it is looked at.
fn may_hold_a_code(cells: &Cells, planes: &Planes) -> bool {
    let inner = 2..2 + CODE_CELLS;
    let places = inner.clone().flat_map(|r| inner.clone().map(move |c| (c, r)));
    let (low, high) = places.fold((f64::MAX, f64::MIN), |(low, high), (c, r)| {
        let (black, white) = (planes.black.dot(&position(c, r)), planes.white.dot(&position(c, r)));
        let share = (cells[r][c] - black) / (white - black).max(1.0);
        (low.min(share), high.max(share))
    });
    !(low > -PLAIN && high < PLAIN)
}

fn read_cells(cells: &Cells, planes: &Planes, quad: &Quad, dictionary: &Dictionary) -> Option<Reading> {
    let by_planes = bits(|c, r| cells[r][c] > planes.middle(c, r));
    let clear = deblurred(cells);
    let matched = dictionary.find(by_planes, MOST_WRONG_BITS).or_else(|| {
        let near = bits(|c, r| cells[r][c] > neighbourhood_middle(cells, c, r));
        let clear = || bits(|c, r| clear[r][c] > planes.middle(c, r));
        dictionary.find(near, MOST_WRONG_BITS).or_else(|| dictionary.find(clear(), MOST_WRONG_BITS))
    })?;
    let turns = matched.turns as usize;
    let white = |c, r| {
        let (c, r) = turned(c, r, turns);
        dictionary.is_white(matched.id, c, r)
    };
    let best = [cells, &evened(cells), &clear].map(|cells| correlation(cells, white));
    let correlation = best.into_iter().fold(f64::MIN, f64::max);
    if correlation < MIN_CORRELATION[matched.wrong_bits as usize] {
        return None;
    }
    // Turning the picture clockwise once brings the corner read as bottom left to the top left.
    let quad = std::array::from_fn(|i| quad[(i + 4 - turns) % 4]);
    Some(Reading {
        id: matched.id,
        wrong_bits: matched.wrong_bits,
        quad,
        correlation,
        greys: (planes.black.x, planes.white.x),
    })
}

/// Where an 8x8 cell of the picture as read lands once the picture is turned clockwise.
fn turned(column: usize, row: usize, turns: usize) -> (usize, usize) {
    (0..turns).fold((column, row), |(c, r), _| (CELLS - 1 - r, c))
}

type Cells = [[f64; GRID]; GRID];

/// Mean grey in the middle of each cell, margin included: `[row][column]`, border at 1 and 8.
fn sample_cells(level: &Level<'_>, h: &Homography) -> Cells {
    const SPOTS: [(f64, f64); 5] = [(0.0, 0.0), (-0.2, -0.2), (0.2, -0.2), (-0.2, 0.2), (0.2, 0.2)];
    // The outermost spots; what lies between them lies within as they do.
    let (near, far) = (-0.6, CELLS as f64 + 0.6);
    let is_within =
        [(near, near), (far, near), (far, far), (near, far)].iter().all(|(x, y)| level.is_within(h.to_photo(*x, *y)));
    let grey = |p: Vector2<f64>| if is_within { level.sample_within(p) } else { level.sample(p.x, p.y) };
    let mut cells = [[0.0; GRID]; GRID];
    for (r, row) in cells.iter_mut().enumerate() {
        for (c, cell) in row.iter_mut().enumerate() {
            // The margin is sampled near the border: it may be narrow.
            let centre = |i: usize| (i as f64 - 0.5).clamp(-0.4, CELLS as f64 + 0.4);
            let spot = |(x, y): (f64, f64)| h.to_photo(centre(c) + x, centre(r) + y);
            *cell = SPOTS.map(spot).iter().map(|p| grey(*p)).sum::<f64>() / SPOTS.len() as f64;
        }
    }
    cells
}

fn is_margin(c: usize, r: usize) -> bool {
    c == 0 || r == 0 || c == GRID - 1 || r == GRID - 1
}

fn is_border(c: usize, r: usize) -> bool {
    !is_margin(c, r) && (c == 1 || r == 1 || c == GRID - 2 || r == GRID - 2)
}

/// Grey of black and white as planes over the marker, from border and margin.
struct Planes {
    black: Vector3<f64>,
    white: Vector3<f64>,
}

impl Planes {
    fn fit(cells: &Cells) -> Option<Self> {
        let planes = Planes { black: plane(cells, is_border)?, white: plane(cells, is_margin)? };
        let ends = [(1, 1), (8, 1), (8, 8), (1, 8)];
        let contrast = |(c, r)| planes.white.dot(&position(c, r)) - planes.black.dot(&position(c, r));
        let mean = ends.iter().map(|e| contrast(*e)).sum::<f64>() / 4.0;
        (mean >= MIN_CONTRAST).then_some(planes)
    }

    fn middle(&self, c: usize, r: usize) -> f64 {
        (self.white + self.black).dot(&position(c, r)) / 2.0
    }
}

fn position(c: usize, r: usize) -> Vector3<f64> {
    Vector3::new(1.0, c as f64 - 4.5, r as f64 - 4.5)
}

fn plane(cells: &Cells, belongs: fn(usize, usize) -> bool) -> Option<Vector3<f64>> {
    let (mut n, mut g) = (Matrix3::zeros(), Vector3::zeros());
    for (r, row) in cells.iter().enumerate() {
        for (c, grey) in row.iter().enumerate().filter(|(c, _)| belongs(*c, r)) {
            let p = position(c, r);
            n += p * p.transpose();
            g += p * *grey;
        }
    }
    n.cholesky().map(|n| n.solve(&g))
}

/// Geometric mean of the darkest and the lightest cell of the 5x5 around: a shadow divides light.
fn neighbourhood_middle(cells: &Cells, c: usize, r: usize) -> f64 {
    let (low, high) = neighbourhood_range(cells, c, r);
    (low.max(1.0) * high.max(1.0)).sqrt()
}

fn neighbourhood_range(cells: &Cells, c: usize, r: usize) -> (f64, f64) {
    let (mut low, mut high) = (f64::MAX, f64::MIN);
    for row in &cells[r.saturating_sub(2)..=(r + 2).min(GRID - 1)] {
        for grey in &row[c.saturating_sub(2)..=(c + 2).min(GRID - 1)] {
            low = low.min(*grey);
            high = high.max(*grey);
        }
    }
    (low, high)
}

/// Grey values with what blur carried over from the neighbours taken off again.
fn deblurred(cells: &Cells) -> Cells {
    let at = |c: usize, r: usize| cells[r.min(GRID - 1)][c.min(GRID - 1)];
    std::array::from_fn(|r| {
        std::array::from_fn(|c| {
            let around = at(c.saturating_sub(1), r) + at(c + 1, r) + at(c, r.saturating_sub(1)) + at(c, r + 1);
            cells[r][c] + CARRIED * (cells[r][c] - around / 4.0)
        })
    })
}

/// Grey values on the scale of their neighbourhood, -1 to 1: takes shadows out.
fn evened(cells: &Cells) -> Cells {
    std::array::from_fn(|r| {
        std::array::from_fn(|c| {
            let (low, high) = neighbourhood_range(cells, c, r);
            let (low, high) = (low.max(1.0).ln(), high.max(1.0).ln());
            (2.0 * cells[r][c].max(1.0).ln() - low - high) / (high - low).max(0.1)
        })
    })
}

fn bits(white: impl Fn(usize, usize) -> bool) -> u64 {
    let mut bits = 0;
    for r in 0..CODE_CELLS {
        for c in 0..CODE_CELLS {
            bits = bits << 1 | u64::from(white(c + 2, r + 2));
        }
    }
    bits
}

/// Correlation of grey values with the pattern over border and code, both after their own plane is taken off.
fn correlation(cells: &Cells, white: impl Fn(usize, usize) -> bool) -> f64 {
    let mut pattern = [[1.0; GRID]; GRID];
    for r in 0..CELLS {
        for c in 0..CELLS {
            pattern[r + 1][c + 1] = if white(c, r) { 1.0 } else { 0.0 };
        }
    }
    let flat = |grid: &Cells| {
        let level = plane(grid, |_, _| true).unwrap_or_default();
        let mut flat = *grid;
        for (r, row) in flat.iter_mut().enumerate() {
            for (c, grey) in row.iter_mut().enumerate() {
                *grey -= level.dot(&position(c, r));
            }
        }
        flat
    };
    let (a, b) = (flat(cells), flat(&pattern));
    let dot = |a: &Cells, b: &Cells| a.iter().flatten().zip(b.iter().flatten()).map(|(x, y)| x * y).sum::<f64>();
    dot(&a, &b) / (dot(&a, &a) * dot(&b, &b)).sqrt().max(1e-9)
}

/// Mean of the corners.
pub(super) fn centre(quad: &Quad) -> Vector2<f64> {
    (quad[0] + quad[1] + quad[2] + quad[3]) / 4.0
}

#[cfg(test)]
mod tests {
    use super::super::pyramid::pyramid;
    use super::*;
    use crate::photo::Luma;

    /// A marker of 4 px cells at (10, 12), turned clockwise.
    fn picture(id: u32, turns: usize, shade: impl Fn(usize, usize, bool) -> u8) -> Luma {
        let d = Dictionary::tag36h11();
        let pixels = (0..64 * 64).map(|i| {
            let (u, v) = (i % 64, i / 64);
            let inside = (10..42).contains(&u) && (12..44).contains(&v);
            let white = !inside || {
                let (c, r) = turned((u - 10) / 4, (v - 12) / 4, (4 - turns) % 4);
                d.is_white(id, c, r)
            };
            shade(u, v, white)
        });
        Luma::new(64, 64, pixels.collect()).unwrap()
    }

    fn quad() -> Quad {
        [(9.5, 11.5), (41.5, 11.5), (41.5, 43.5), (9.5, 43.5)].map(|(u, v)| Vector2::new(u, v))
    }

    #[test]
    fn reads_every_turn_and_names_the_upright_corner_first() {
        let flat = |_, _, white| if white { 180 } else { 50 };
        for turns in 0..4 {
            let photo = picture(77, turns, flat);
            let reading = read(&pyramid(&photo)[0], &quad(), Dictionary::tag36h11()).unwrap();
            assert_eq!((reading.id, reading.wrong_bits), (77, 0));
            // A picture turned clockwise once has its top-left corner at the top right.
            assert_eq!(reading.quad[0], quad()[turns]);
        }
    }

    #[test]
    fn reads_across_a_shadow() {
        let shade = |u, v, white| {
            let grey: u8 = if white { 220 } else { 60 };
            if u + v > 52 { (grey as u16 * 2 / 5) as u8 } else { grey }
        };
        let photo = picture(300, 0, shade);
        let reading = read(&pyramid(&photo)[0], &quad(), Dictionary::tag36h11());
        assert_eq!(reading.map(|r| r.id).ok(), Some(300));
    }

    #[test]
    fn refuses_noise() {
        let mut state = 7u32;
        let mut random = || {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (state >> 24) as u8
        };
        for _ in 0..300 {
            let photo = Luma::new(64, 64, (0..64 * 64).map(|_| random()).collect()).unwrap();
            assert!(read(&pyramid(&photo)[0], &quad(), Dictionary::tag36h11()).is_err());
        }
    }

    /// A white cell that blur has brought down among black ones, and a black one among white.
    #[test]
    fn lone_cells_get_their_contrast_back() {
        let lone = |alone: f64, others: f64| {
            let mut cells = [[others; GRID]; GRID];
            cells[4][5] = alone;
            deblurred(&cells)
        };
        assert!(lone(95.0, 60.0)[4][5] > 110.0 && lone(145.0, 180.0)[4][5] < 130.0);
        assert!((lone(100.0, 100.0)[4][5] - 100.0).abs() < 1e-12);
        // The grid's corner has neighbours on two sides only.
        assert!((lone(95.0, 60.0)[0][0] - 60.0).abs() < 1e-12);
    }
}
