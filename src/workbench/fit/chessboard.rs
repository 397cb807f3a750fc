//! A chessboard's inner corners in a photo: saddle points, put in rows.

use std::collections::HashMap;

use nalgebra::Vector2;

use super::saddle::{Grey, refined, saddles};
use crate::photo::Luma;

/// The finest picture in which the board is looked for has this longer side at most.
const LARGE: usize = 1300;
/// The coarsest has at least this.
const SMALL: usize = 300;
/// How far a corner may lie from where its neighbours put it, part of a step.
const SLACK: f64 = 0.3;

/// All inner corners, row by row from the top left as seen, px; `None` where
/// the board is not seen whole.
pub(super) fn find(luma: &Luma, inner_corners: [u32; 2]) -> Option<Vec<Vector2<f64>>> {
    let full = Grey {
        width: luma.width(),
        height: luma.height(),
        pixels: luma.pixels().iter().map(|p| f32::from(*p)).collect(),
    };
    let [columns, rows] = inner_corners.map(|n| n as usize);
    let mut level = full.clone();
    let mut scale = 1.0;
    loop {
        let longer = level.width.max(level.height);
        let wanted = longer <= LARGE || longer / 2 < SMALL;
        if wanted && let Some(grid) = grid(&saddles(&level, 4 * columns * rows + 100), columns, rows) {
            // Pixel centre u of a level of scale s lies at s u + (s - 1) / 2.
            let found: Vec<_> = grid.iter().map(|p| p * scale + Vector2::repeat((scale - 1.0) / 2.0)).collect();
            return precise(&full, &found, columns, scale);
        }
        if longer / 2 < SMALL {
            return None;
        }
        level = level.halved();
        scale *= 2.0;
    }
}

/// Every corner to a small part of a pixel; `None` where one runs away.
fn precise(full: &Grey, found: &[Vector2<f64>], columns: usize, scale: f64) -> Option<Vec<Vector2<f64>>> {
    let nearest = |i: usize| {
        let others = [i.checked_sub(1), Some(i + 1), i.checked_sub(columns), Some(i + columns)];
        let steps = others.into_iter().flatten().filter_map(|o| found.get(o)).map(|o| (o - found[i]).norm());
        steps.fold(f64::INFINITY, f64::min)
    };
    let one = |i: usize| {
        // Half of the way to a neighbour stays clear of it; blur seldom spreads over 5 px of a level.
        let radius = (0.45 * nearest(i)).min(5.0 * scale.min(2.0)).max(2.0) as usize;
        let place = refined(full, &found[i], radius)?;
        ((place - found[i]).norm() < 0.3 * nearest(i)).then_some(place)
    };
    (0..found.len()).map(one).collect()
}

/// The points as a whole grid, row by row.
fn grid(points: &[Vector2<f64>], columns: usize, rows: usize) -> Option<Vec<Vector2<f64>>> {
    if points.len() < columns * rows {
        return None;
    }
    points.iter().take(120).find_map(|seed| in_order(&grown(points, seed)?, columns, rows))
}

type Cells = HashMap<(i32, i32), Vector2<f64>>;

/// Goes from corner to corner as far as there is one where it is expected.
fn grown(points: &[Vector2<f64>], seed: &Vector2<f64>) -> Option<Cells> {
    let mut around: Vec<Vector2<f64>> = points.iter().map(|p| p - seed).filter(|d| d.norm() > 1e-9).collect();
    around.sort_by(|a, b| a.norm().total_cmp(&b.norm()));
    let a = *around.first()?;
    let across = |d: &&Vector2<f64>| a.perp(d).abs() > 0.45 * a.norm() * d.norm();
    let b = **around.iter().take(8).filter(across).collect::<Vec<_>>().first()?;
    let mut cells = Cells::from([((0, 0), *seed)]);
    let mut queue = std::collections::VecDeque::from([((0, 0), a, b)]);
    while let Some(((i, j), a, b)) = queue.pop_front() {
        let here = cells[&(i, j)];
        for (di, dj) in [(1, 0), (-1, 0), (0, 1), (0, -1)] {
            let step = a * f64::from(di) + b * f64::from(dj);
            let key = (i + di, j + dj);
            if cells.contains_key(&key) || cells.len() > 4 * points.len() {
                continue;
            }
            let expected = here + step;
            let nearest = points.iter().min_by(|p, q| (*p - expected).norm().total_cmp(&(*q - expected).norm()))?;
            if (nearest - expected).norm() > SLACK * step.norm() || cells.values().any(|c| c == nearest) {
                continue;
            }
            cells.insert(key, *nearest);
            // The way just gone is the best guess for the next one in its direction.
            let gone = (nearest - here) * f64::from(di + dj);
            queue.push_back(if dj == 0 { (key, gone, b) } else { (key, a, gone) });
        }
    }
    Some(cells)
}

/// Cells as rows from the top left as seen. A stray point may lengthen a row;
/// `None` where the wanted grid is not there whole, or in more than one place.
fn in_order(cells: &Cells, columns: usize, rows: usize) -> Option<Vec<Vector2<f64>>> {
    let mut found = windows(cells, columns, rows, false);
    if columns != rows {
        found.extend(windows(cells, columns, rows, true));
    }
    let mut grid = found.pop().filter(|_| found.is_empty())?;
    // A printed face is never seen from behind: right, then down, is clockwise.
    let right = grid[columns - 1] - grid[0];
    let down = grid[columns * (rows - 1)] - grid[0];
    if right.perp(&down) < 0.0 {
        grid = grid.chunks(columns).rev().flatten().copied().collect();
    }
    // Of the two ways round that look the same, the one with right to the right.
    let right = grid[columns - 1] - grid[0];
    if right.x + 0.01 * right.y < 0.0 {
        grid.reverse();
    }
    Some(grid)
}

/// Every place where a whole grid of this size lies; `turned` swaps the directions.
fn windows(cells: &Cells, columns: usize, rows: usize, turned: bool) -> Vec<Vec<Vector2<f64>>> {
    let whole = |(low_i, low_j): &(i32, i32)| -> Option<Vec<Vector2<f64>>> {
        let place = |k: usize| {
            let (column, row) = ((k % columns) as i32, (k / columns) as i32);
            let (i, j) = if turned { (row, column) } else { (column, row) };
            cells.get(&(low_i + i, low_j + j)).copied()
        };
        (0..columns * rows).map(place).collect()
    };
    cells.keys().filter_map(whole).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A tilted chessboard, each pixel the mean of 4 x 4 samples.
    fn picture(map: impl Fn(f64, f64) -> [f64; 2]) -> Luma {
        let (w, h) = (640, 480);
        let mut pixels = Vec::new();
        for v in 0..h {
            for u in 0..w {
                let mut sum = 0.0;
                for k in 0..16 {
                    let [x, y] = map(
                        f64::from(u) + f64::from(k % 4) / 4.0 - 0.375,
                        f64::from(v) + f64::from(k / 4) / 4.0 - 0.375,
                    );
                    let board = (-1.0..6.0).contains(&x) && (-1.0..5.0).contains(&y);
                    let black = board && (x.floor() + y.floor()).rem_euclid(2.0) < 0.5;
                    sum += if black { 40.0 } else { 210.0 };
                }
                pixels.push((sum / 16.0) as u8);
            }
        }
        Luma::new(w as usize, h as usize, pixels).unwrap()
    }

    #[test]
    fn corners_of_a_tilted_board_are_found_in_order() {
        // From the picture to squares: affine, turned by 20 degrees and sheared.
        let back = nalgebra::Matrix2::new(48.0, -20.0, 14.0, 42.0);
        let origin = Vector2::new(220.0, 120.0);
        let inverse = back.try_inverse().unwrap();
        let luma = picture(|u, v| (inverse * (Vector2::new(u, v) - origin)).into());
        let found = find(&luma, [6, 5]).unwrap();
        for (i, p) in found.iter().enumerate() {
            let expected = origin + back * Vector2::new((i % 6) as f64, (i / 6) as f64);
            assert!((p - expected).norm() < 0.05, "{i}: {p} for {expected}");
        }
        assert!(find(&luma, [7, 5]).is_none(), "another board");
    }
}
