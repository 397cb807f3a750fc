//! Whether the photos show what a lens can be fitted from: the board
//! everywhere in the frame, and from different sides.

use nalgebra::Vector3;

use super::adjustment::Adjustment;

/// Columns and rows of the cells that are counted.
pub const CELLS: [usize; 2] = [12, 9];

/// Where the board's points were seen.
#[derive(Debug, Clone, PartialEq)]
pub struct Coverage {
    /// Points in each of the [`CELLS`], row by row.
    pub counts: Vec<usize>,
    /// Largest angle between the board's directions in two photos, degrees.
    pub tilt_deg: f64,
    /// Largest turn about the viewing direction between two photos, degrees.
    pub turn_deg: f64,
}

impl Coverage {
    pub(super) fn new(work: &Adjustment, size_px: [u32; 2]) -> Self {
        let mut counts = vec![0; CELLS[0] * CELLS[1]];
        let cell = |value: f64, axis: usize| {
            let part = (value + 0.5) / f64::from(size_px[axis]) * CELLS[axis] as f64;
            (part.max(0.0) as usize).min(CELLS[axis] - 1)
        };
        for (photo, weights) in work.photos.iter().zip(&work.weights) {
            for (seen, _) in photo.seen.iter().zip(weights).filter(|(_, w)| **w > 0.0) {
                for found in &seen.found_px {
                    counts[cell(found.y, 1) * CELLS[0] + cell(found.x, 0)] += 1;
                }
            }
        }
        let poses = || work.state.photos.iter().map(|p| &p.camera_from_board);
        let normals: Vec<Vector3<f64>> = poses().map(|p| p.direction(&Vector3::z())).collect();
        let rights: Vec<f64> =
            poses().map(|p| p.direction(&Vector3::x())).map(|x| x.y.atan2(x.x).to_degrees()).collect();
        let turn = |a: &f64, b: &f64| {
            let d = (a - b).abs() % 360.0;
            d.min(360.0 - d)
        };
        Coverage { counts, tilt_deg: widest(&normals, |a, b| a.angle(b).to_degrees()), turn_deg: widest(&rights, turn) }
    }

    /// Share of the frame that the board was seen in, 0 to 1.
    pub fn share(&self) -> f64 {
        self.counts.iter().filter(|c| **c > 0).count() as f64 / self.counts.len() as f64
    }

    /// Parts of the stored picture of which less than half was covered.
    pub fn empty_parts(&self) -> Vec<&'static str> {
        const NAMES: [[&str; 3]; 3] = [
            ["upper-left", "upper", "upper-right"],
            ["left", "middle", "right"],
            ["lower-left", "lower", "lower-right"],
        ];
        let mut empty = Vec::new();
        for (i, row) in NAMES.iter().enumerate() {
            for (j, name) in row.iter().enumerate() {
                let rows = i * CELLS[1] / 3..(i + 1) * CELLS[1] / 3;
                let columns = j * CELLS[0] / 3..(j + 1) * CELLS[0] / 3;
                let inside = rows.flat_map(|r| columns.clone().map(move |c| r * CELLS[0] + c));
                let (seen, all) = inside.fold((0, 0), |(s, a), k| (s + usize::from(self.counts[k] > 0), a + 1));
                if 2 * seen < all {
                    empty.push(*name);
                }
            }
        }
        empty
    }
}

fn widest<T>(all: &[T], angle: impl Fn(&T, &T) -> f64) -> f64 {
    let mut widest = 0.0_f64;
    for (i, a) in all.iter().enumerate() {
        for b in &all[i + 1..] {
            widest = widest.max(angle(a, b));
        }
    }
    widest
}
