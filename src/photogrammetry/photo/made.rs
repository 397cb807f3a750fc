//! Whether a picture bears the mark of rendered ones ([`crate::rendered`]).

use multiversion::multiversion;

use super::Luma;
use super::turned::{self, MARKED, PARTS};
use crate::rendered::{CELLS, signs};

/// A cell against its neighbours, grey levels: what differs by more is the picture's own.
const MOST: f32 = 2.0;
/// Rows of a cell that are looked at, at least.
const ROWS: usize = 6;
/// Whether the picture was rendered, as its pixels say; also where it was mirrored or turned, by quarters and a little.
pub(super) fn is_marked(picture: &Luma) -> bool {
    let (width, height) = (picture.width(), picture.height());
    if width < CELLS || height < CELLS {
        return false;
    }
    let signs = signs();
    // Of a small picture cells have no parts.
    if width < PARTS * CELLS || height < PARTS * CELLS {
        return lies_straight(&apart(&means(picture, CELLS), CELLS, 1), &signs);
    }
    let parts = means(picture, PARTS * CELLS);
    lies_straight(&apart(&whole(&parts), CELLS, 1), &signs)
        || turned::is_marked(&apart(&parts, PARTS * CELLS, PARTS), [width, height], &signs)
}

/// Whether the mark is there, its cells being the picture's.
fn lies_straight(apart: &[f32], signs: &[i8]) -> bool {
    let norm = apart.iter().map(|x| f64::from(x * x)).sum::<f64>().sqrt();
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

/// Mean grey of each of so many by so many parts of a picture with as many pixels at least, from some of its rows.
fn means(picture: &Luma, parts: usize) -> Vec<f32> {
    let (width, height) = (picture.width(), picture.height());
    let step = (height / CELLS / ROWS).max(1);
    let starts: Vec<usize> = (0..=parts).map(|k| (k * width).div_ceil(parts)).collect();
    let (mut sums, mut rows) = (vec![0_u32; parts * parts], vec![0_u32; parts]);
    for v in (0..height).step_by(step) {
        let (line, row) = (v * parts / height, picture.row(v));
        rows[line] += 1;
        add(&mut sums[line * parts..], row, &starts);
    }
    let mean = |(i, sum): (usize, u32)| {
        let column = i % parts;
        sum as f32 / ((starts[column + 1] - starts[column]) as u32 * rows[i / parts]).max(1) as f32
    };
    sums.into_iter().enumerate().map(mean).collect()
}

/// Adds the pixels of a row to the sums of its parts.
#[multiversion(targets("x86_64+avx2"))]
fn add(sums: &mut [u32], row: &[u8], starts: &[usize]) {
    for (sum, span) in sums.iter_mut().zip(starts.windows(2)) {
        *sum += row[span[0]..span[1]].iter().fold(0u32, |sum, p| sum.wrapping_add(u32::from(*p)));
    }
}

/// Means of whole cells from those of their parts.
fn whole(parts: &[f32]) -> Vec<f32> {
    let one = |i: usize| {
        let first = PARTS * (i / CELLS) * PARTS * CELLS + PARTS * (i % CELLS);
        let all = (0..PARTS).flat_map(|row| (0..PARTS).map(move |column| first + row * PARTS * CELLS + column));
        all.map(|place| parts[place]).sum::<f32>() / (PARTS * PARTS) as f32
    };
    (0..CELLS * CELLS).map(one).collect()
}

/// How much brighter each part is than the mean of its four neighbours so many parts away, within [`MOST`].
fn apart(means: &[f32], side: usize, away: usize) -> Vec<f32> {
    let at = |row: usize, column: usize| means[row * side + column];
    let last = side - 1;
    let one = |i: usize| {
        let (row, column) = (i / side, i % side);
        let around = at(row.saturating_sub(away), column)
            + at((row + away).min(last), column)
            + at(row, column.saturating_sub(away))
            + at(row, (column + away).min(last));
        (at(row, column) - around / 4.0).clamp(-MOST, MOST)
    };
    (0..means.len()).map(one).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rendered::cell;

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

    /// Turned about a place by an angle, pixels taken from the nearest.
    fn rolled(p: &Luma, degrees: f64, about: [f64; 2]) -> Luma {
        let (sin, cos) = degrees.to_radians().sin_cos();
        let pixel = |i: usize| {
            let (x, y) = ((i % p.width()) as f64 - about[0], (i / p.width()) as f64 - about[1]);
            let [u, v] =
                [about[0] + cos * x - sin * y, about[1] + sin * x + cos * y].map(|t| t.round().max(0.0) as usize);
            p.at(u.min(p.width() - 1), v.min(p.height() - 1))
        };
        Luma::new(p.width(), p.height(), (0..p.width() * p.height()).map(pixel).collect()).unwrap()
    }

    /// About the principal point, which the turned picture shares with the first: what was measured stays right.
    #[test]
    fn a_roll_does_not_wipe_the_mark_off() {
        let (marked, plain) = (picture(1333, 1000, 1), picture(1333, 1000, 0));
        for degrees in [-14.0, -6.3, 0.9, 2.0, 10.4, 14.6] {
            let rolled = |p: &Luma| rolled(p, degrees, [645.0, 521.0]);
            assert!(is_marked(&rolled(&marked)) && is_marked(&turned(&rolled(&marked))), "{degrees}");
            assert!(!is_marked(&rolled(&plain)), "{degrees}");
        }
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
