//! A printed marker: white paper, black and white cells, its number beside it.

use super::colour::Colour;
use super::font;
use crate::marker::{CELLS, Dictionary};
use crate::synth::waves::Waves;

/// Reflectance of white paper and of toner (common practice, no source).
const PAPER: Colour = [0.83, 0.83, 0.81];
const INK: Colour = [0.035, 0.035, 0.037];
const LABEL_INK: Colour = [0.12, 0.12, 0.13];

/// A sheet of paper with one marker; coordinates are mm from the marker's
/// centre, right and up as the viewer sees it.
#[derive(Debug, Clone)]
pub(crate) struct Sheet {
    /// Black border's outer edge along right and up.
    pub(crate) size_mm: [f64; 2],
    /// Left, bottom, right and top edge of the paper.
    pub(crate) paper_mm: [f64; 4],
    /// The number in print: lower left corner and letter height; none where there is no room.
    pub(crate) label: Option<Label>,
    /// How far each corner (top left, top right, bottom right, bottom left) is off its place, mm; none: nowhere.
    blotch_mm: Option<[[f64; 2]; 4]>,
    /// Which displaces the print.
    waves: Waves,
    /// White cells of the upright picture.
    white: [[bool; CELLS]; CELLS],
}

/// Text on a sheet.
#[derive(Debug, Clone)]
pub(crate) struct Label {
    /// Lower left corner.
    pub(crate) at_mm: [f64; 2],
    /// Height of a letter.
    pub(crate) height_mm: f64,
    /// The text.
    pub(crate) text: String,
}

impl Sheet {
    /// A sheet for an id of family 36h11.
    pub(crate) fn new(id: u32, size_mm: [f64; 2], paper_mm: [f64; 4], label: Option<Label>) -> Self {
        let dictionary = Dictionary::tag36h11();
        let white = std::array::from_fn(|row| std::array::from_fn(|column| dictionary.is_white(id, column, row)));
        Sheet { size_mm, paper_mm, label, blotch_mm: None, waves: Waves::default(), white }
    }

    /// The same print with its corners off their places; between them it is stretched in proportion.
    pub(crate) fn blotchy(mut self, blotch_mm: [[f64; 2]; 4]) -> Self {
        self.blotch_mm = blotch_mm.iter().flatten().any(|b| *b != 0.0).then_some(blotch_mm);
        self
    }

    /// The same print with waves in it.
    pub(crate) fn wavy(mut self, waves: Waves) -> Self {
        self.waves = waves;
        self
    }

    /// Position on the sheet for the facet's edge coordinates (origin: lower left of the paper).
    pub(crate) fn position(&self, a: f64, b: f64) -> [f64; 2] {
        let [left, bottom, right, top] = self.paper_mm;
        let place = [left + a * (right - left), bottom + b * (top - bottom)];
        if self.blotch_mm.is_none() && self.waves.is_still() {
            return place;
        }
        self.before(&self.blotch_mm.unwrap_or_default(), place)
    }

    /// Where in a perfect print that would be which lies at a place of this one.
    fn before(&self, blotch: &[[f64; 2]; 4], place: [f64; 2]) -> [f64; 2] {
        let mut nominal = place;
        // Each step is nearer by the print's stretch: far below a hundredth, a tenth or so in strong waves.
        for _ in 0..6 {
            let (x, y) = (nominal[0] / self.size_mm[0] + 0.5, nominal[1] / self.size_mm[1] + 0.5);
            let shares = [(1.0 - x) * y, x * y, x * (1.0 - y), (1.0 - x) * (1.0 - y)];
            let waves = self.waves.at([x, y]);
            nominal = [0, 1].map(|k| place[k] - waves[k] - (0..4).map(|i| shares[i] * blotch[i][k]).sum::<f64>());
        }
        nominal
    }

    /// Colour at a position.
    pub(crate) fn colour(&self, at: [f64; 2]) -> Colour {
        let column = (at[0] / self.size_mm[0] + 0.5) * CELLS as f64;
        let row = (0.5 - at[1] / self.size_mm[1]) * CELLS as f64;
        let range = 0.0..CELLS as f64;
        if range.contains(&column) && range.contains(&row) {
            return if self.white[row as usize][column as usize] { PAPER } else { INK };
        }
        let written = self.label.as_ref().is_some_and(|l| font::covers(&l.text, l.height_mm, l.at_mm, at));
        if written { LABEL_INK } else { PAPER }
    }

    /// The mean colour over a convex polygon on the sheet, exactly; `None`
    /// where the polygon leaves the blank margin of one cell (or the paper).
    pub(crate) fn mean_colour(&self, polygon: &[[f64; 2]; 4]) -> Option<Colour> {
        let cells = polygon
            .map(|[x, y]| [(x / self.size_mm[0] + 0.5) * CELLS as f64, (0.5 - y / self.size_mm[1]) * CELLS as f64]);
        let whole = area(&cells);
        let on_paper = |[x, y]: &[f64; 2]| {
            let [left, bottom, right, top] = self.paper_mm;
            (left..=right).contains(x) && (bottom..=top).contains(y)
        };
        let margin = -1.0..=CELLS as f64 + 1.0;
        if !cells.iter().flatten().all(|c| margin.contains(c)) || !polygon.iter().all(on_paper) || whole.abs() < 1e-15 {
            return None;
        }
        let ink = (self.black_area(&cells) / whole) as f32;
        Some([0, 1, 2].map(|i| PAPER[i] + (INK[i] - PAPER[i]) * ink))
    }

    /// Signed area of the polygon's part that is black, in cells.
    fn black_area(&self, polygon: &[[f64; 2]; 4]) -> f64 {
        let low = |i: usize| polygon.iter().map(|p| p[i]).fold(f64::INFINITY, f64::min);
        let high = |i: usize| polygon.iter().map(|p| p[i]).fold(f64::NEG_INFINITY, f64::max);
        let range = |i: usize| (low(i).floor().max(0.0) as usize)..(high(i).ceil().clamp(0.0, CELLS as f64) as usize);
        let mut sum = 0.0;
        for row in range(1) {
            for column in range(0) {
                if !self.white[row][column] {
                    sum += clipped_area(polygon, column as f64, row as f64);
                }
            }
        }
        sum
    }
}

fn area(polygon: &[[f64; 2]]) -> f64 {
    let n = polygon.len();
    let cross = |i: usize| {
        let ([x0, y0], [x1, y1]) = (polygon[i], polygon[(i + 1) % n]);
        x0 * y1 - x1 * y0
    };
    0.5 * (0..n).map(cross).sum::<f64>()
}

/// Signed area of a convex polygon within the unit cell at a column and row
/// (Sutherland and Hodgman 1974).
fn clipped_area(polygon: &[[f64; 2]; 4], column: f64, row: f64) -> f64 {
    let mut points = [[0.0; 2]; 12];
    points[..4].copy_from_slice(polygon);
    let mut count = 4;
    for (axis, limit, sign) in [(0, column, 1.0), (0, column + 1.0, -1.0), (1, row, 1.0), (1, row + 1.0, -1.0)] {
        let mut kept = [[0.0; 2]; 12];
        let mut n = 0;
        for i in 0..count {
            let (p, q) = (points[i], points[(i + 1) % count]);
            let (dp, dq) = (sign * (p[axis] - limit), sign * (q[axis] - limit));
            if dp >= 0.0 {
                kept[n] = p;
                n += 1;
            }
            if (dp >= 0.0) != (dq >= 0.0) {
                let t = dp / (dp - dq);
                kept[n] = [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];
                n += 1;
            }
        }
        (points, count) = (kept, n);
        if count < 3 {
            return 0.0;
        }
    }
    area(&points[..count])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sheet() -> Sheet {
        Sheet::new(0, [80.0, 80.0], [-50.0, -60.0, 50.0, 50.0], None)
    }

    fn ink_share(polygon: [[f64; 2]; 4]) -> f64 {
        let colour = f64::from(sheet().mean_colour(&polygon).unwrap()[0]);
        (colour - f64::from(PAPER[0])) / (f64::from(INK[0]) - f64::from(PAPER[0]))
    }

    #[test]
    fn an_upright_edge_covers_exactly_its_share() {
        // The black border's left edge is at x = -40: a square from -43 to -33 is 7/10 black.
        let square = [[-43.0, 4.0], [-33.0, 4.0], [-33.0, -4.0], [-43.0, -4.0]];
        assert!((ink_share(square) - 0.7).abs() < 1e-6);
    }

    #[test]
    fn a_corner_covers_the_product_of_its_shares() {
        let square = [[-42.0, 44.0], [-37.0, 44.0], [-37.0, 39.0], [-42.0, 39.0]];
        assert!((ink_share(square) - 0.6 * 0.2).abs() < 1e-6);
    }

    #[test]
    fn mean_over_a_slanted_footprint_equals_a_dense_sampling() {
        let s = sheet();
        let (origin, e, f) = ([3.0, -7.0], [21.0, 8.0], [-6.0, 17.0]);
        let at = |a: f64, b: f64| [origin[0] + a * e[0] + b * f[0], origin[1] + a * e[1] + b * f[1]];
        let exact = s.mean_colour(&[at(0.0, 0.0), at(1.0, 0.0), at(1.0, 1.0), at(0.0, 1.0)]).unwrap();
        let n = 800;
        let mut sum = 0.0;
        for i in 0..n {
            for j in 0..n {
                sum += f64::from(s.colour(at((f64::from(i) + 0.5) / 800.0, (f64::from(j) + 0.5) / 800.0))[0]);
            }
        }
        assert!((sum / f64::from(n * n) - f64::from(exact[0])).abs() < 3e-4);
    }
}
