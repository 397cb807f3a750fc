//! Whether a picture bears the mark of rendered ones ([`crate::rendered`]).

use multiversion::multiversion;

use crate::rendered::{CELLS, cell, signs};

use super::Luma;

/// The statistic from which on the mark is there. The signs know nothing of a picture that is not marked: its statistic is
/// a sum of independent random signs, which reaches this with a chance below exp(-8^2 / 2) = 1.3e-14 (Hoeffding 1963, Journal
/// of the American Statistical Association 58, 13-30), for each of the eight turns.
const MARKED: f64 = 8.0;
/// A cell against its neighbours, grey levels: what differs by more is the picture's own.
const MOST: f32 = 2.0;
/// Rows of a cell that are looked at, at least.
const ROWS: usize = 6;

/// Whether the picture was rendered, as its pixels say; also where it was mirrored or turned by quarters.
pub(super) fn is_marked(picture: &Luma) -> bool {
    let Some(cells) = cells(picture) else { return false };
    let apart = apart(&cells);
    let norm = apart.iter().map(|x| f64::from(x * x)).sum::<f64>().sqrt();
    let signs = signs();
    let sum = |turn: u8| -> f64 {
        let place = |row: usize, column: usize| {
            let (row, column) = if turn & 1 == 1 { (column, row) } else { (row, column) };
            let flipped = |k: usize, flip: bool| if flip { CELLS - 1 - k } else { k };
            flipped(row, turn & 2 != 0) * CELLS + flipped(column, turn & 4 != 0)
        };
        let one = |row: usize| -> f32 {
            (0..CELLS).map(|column| apart[row * CELLS + column] * f32::from(signs[place(row, column)])).sum()
        };
        (0..CELLS).map(|row| f64::from(one(row))).sum()
    };
    norm > 0.0 && (0..8).any(|turn| sum(turn) > MARKED * norm)
}

/// Mean grey of each cell, of some of its rows; `None` for a picture with fewer pixels than cells.
fn cells(picture: &Luma) -> Option<Vec<f32>> {
    let (width, height) = (picture.width(), picture.height());
    if width < CELLS || height < CELLS {
        return None;
    }
    let step = (height / CELLS / ROWS).max(1);
    let starts: Vec<usize> = (0..=CELLS).map(|k| (k * width).div_ceil(CELLS)).collect();
    let (mut sums, mut rows) = (vec![0_u32; CELLS * CELLS], [0_u32; CELLS]);
    for v in (0..height).step_by(step) {
        let (line, row) = (cell(v, height), picture.row(v));
        rows[line] += 1;
        add(&mut sums[line * CELLS..], row, &starts);
    }
    let mean = |(i, sum): (usize, u32)| {
        let column = i % CELLS;
        sum as f32 / ((starts[column + 1] - starts[column]) as u32 * rows[i / CELLS]).max(1) as f32
    };
    Some(sums.into_iter().enumerate().map(mean).collect())
}

/// Adds the pixels of a row to the sums of its cells.
#[multiversion(targets("x86_64+avx2"))]
fn add(sums: &mut [u32], row: &[u8], starts: &[usize]) {
    for (sum, span) in sums.iter_mut().zip(starts.windows(2)) {
        *sum += row[span[0]..span[1]].iter().fold(0u32, |sum, p| sum.wrapping_add(u32::from(*p)));
    }
}

/// How much brighter each cell is than the mean of its four neighbours, within [`MOST`].
fn apart(cells: &[f32]) -> Vec<f32> {
    let at = |row: usize, column: usize| cells[row * CELLS + column];
    let last = CELLS - 1;
    let one = |i: usize| {
        let (row, column) = (i / CELLS, i % CELLS);
        let around = at(row.saturating_sub(1), column)
            + at((row + 1).min(last), column)
            + at(row, column.saturating_sub(1))
            + at(row, (column + 1).min(last));
        (at(row, column) - around / 4.0).clamp(-MOST, MOST)
    };
    (0..cells.len()).map(one).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A soft made-up picture, marked by so many levels.
    fn picture(width: usize, height: usize, level: i32) -> Luma {
        let signs = signs();
        let grey = |i: usize| {
            let (u, v) = (i % width, i / width);
            let soft = 90.0 + 60.0 * (9.0 * u as f64 / width as f64).sin() * (7.0 * v as f64 / height as f64).cos();
            let noise = (i.wrapping_mul(2_654_435_761) >> 7) % 9;
            let sign = i32::from(signs[cell(v, height) * CELLS + cell(u, width)]);
            (soft as i32 + noise as i32 + level * sign) as u8
        };
        Luma::new(width, height, (0..width * height).map(grey).collect()).unwrap()
    }

    fn turned(p: &Luma) -> Luma {
        let (width, height) = (p.height(), p.width());
        let pixels = (0..width * height).map(|i| p.at(i / width, width - 1 - i % width)).collect();
        Luma::new(width, height, pixels).unwrap()
    }

    #[test]
    fn the_mark_is_found_in_any_turn_and_nowhere_else() {
        for (width, height) in [(640, 480), (1333, 1000)] {
            let marked = picture(width, height, 1);
            for p in [marked.clone(), marked.mirrored(), turned(&marked), turned(&turned(&marked))] {
                assert!(is_marked(&p), "{width}");
            }
            assert!(!is_marked(&picture(width, height, 0)));
        }
        assert!(!is_marked(&Luma::new(640, 480, vec![7; 640 * 480]).unwrap()));
        assert!(!is_marked(&Luma::new(3, 2, vec![7; 6]).unwrap()));
    }
}
