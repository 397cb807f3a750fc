//! How alike a thumbnail and its picture are.
//!
//! Cameras make thumbnails of their own shape: with black bars, cut at the
//! longer sides, or turned upright. So bars are cut off, the longer sides too,
//! and all four turns are tried; the best one counts.

use super::Luma;

/// Cells of the grid on which both are compared.
const COLUMNS: usize = 24;
const ROWS: usize = 18;
/// Black, and how even a bar is.
const BLACK: u8 = 20;
/// No bar is wider than this share of a side.
const BAR: f64 = 0.25;

/// A part of a picture: left, top, width and height, px.
type Part = [usize; 4];

/// The correlation of both pictures at low resolution, at the best turn; 1 where
/// one of them is even, for then nothing is told.
pub(super) fn likeness(thumbnail: &Luma, picture: &Luma) -> f64 {
    let small = without_bars(thumbnail);
    let whole = [0, 0, picture.width(), picture.height()];
    (0..4).map(|turns| at_turn((thumbnail, small), (picture, whole), turns)).fold(f64::MIN, f64::max)
}

/// The part within black bars.
fn without_bars(picture: &Luma) -> Part {
    let (width, height) = (picture.width(), picture.height());
    let dark_row = |v: usize| picture.row(v).iter().all(|p| *p <= BLACK);
    let dark_column = |u: usize| (0..height).all(|v| picture.at(u, v) <= BLACK);
    let most = |side: usize| (BAR * side as f64) as usize;
    let top = (0..most(height)).take_while(|v| dark_row(*v)).count();
    let bottom = (0..most(height)).take_while(|v| dark_row(height - 1 - v)).count();
    let left = (0..most(width)).take_while(|u| dark_column(*u)).count();
    let right = (0..most(width)).take_while(|u| dark_column(width - 1 - u)).count();
    [left, top, width - left - right, height - top - bottom]
}

/// The middle of a part with a wanted ratio of width to height.
fn middle([left, top, width, height]: Part, ratio: f64) -> Part {
    let wide = ((height as f64 * ratio).round() as usize).clamp(1, width);
    let high = ((width as f64 / ratio).round() as usize).clamp(1, height);
    [left + (width - wide) / 2, top + (height - high) / 2, wide, high]
}

fn at_turn(small: (&Luma, Part), whole: (&Luma, Part), turns: usize) -> f64 {
    let ratio = |part: Part| part[2] as f64 / part[3] as f64;
    let own = ratio(small.1);
    let turned = if turns.is_multiple_of(2) { own } else { 1.0 / own };
    // What both show: the picture is cut to the thumbnail's shape or the other way round.
    let large = middle(whole.1, turned);
    let large_ratio = ratio(large);
    let shown = middle(small.1, if turns.is_multiple_of(2) { large_ratio } else { 1.0 / large_ratio });
    correlation(&grid(small.0, shown, turns), &grid(whole.0, large, 0))
}

/// Mean grey of each cell of a part that is turned by quarters.
fn grid(picture: &Luma, [left, top, width, height]: Part, turns: usize) -> Vec<f64> {
    let mut cells = Vec::with_capacity(COLUMNS * ROWS);
    for row in 0..ROWS {
        for column in 0..COLUMNS {
            let share = |k: usize, n: usize| (k as f64 / n as f64, (k + 1) as f64 / n as f64);
            let (x, y) = (share(column, COLUMNS), share(row, ROWS));
            let turn = |(a, b): (f64, f64)| (1.0 - b, 1.0 - a);
            let (u, v) = match turns {
                0 => (x, y),
                1 => (y, turn(x)),
                2 => (turn(x), turn(y)),
                _ => (turn(y), x),
            };
            let range = |(a, b): (f64, f64), start: usize, side: usize| {
                let first = start + (a * side as f64) as usize;
                (first, (start + (b * side as f64) as usize).clamp(first + 1, start + side))
            };
            let (u, v) = (range(u, left, width), range(v, top, height));
            cells.push(mean(picture, u, v));
        }
    }
    cells
}

/// Mean grey, of some 16 by 16 samples where there are more pixels.
fn mean(picture: &Luma, (u0, u1): (usize, usize), (v0, v1): (usize, usize)) -> f64 {
    let step = |a: usize, b: usize| ((b - a) / 16).max(1);
    let (mut sum, mut count) = (0.0, 0.0);
    for v in (v0..v1).step_by(step(v0, v1)) {
        for u in (u0..u1).step_by(step(u0, u1)) {
            sum += f64::from(picture.at(u.min(picture.width() - 1), v.min(picture.height() - 1)));
            count += 1.0;
        }
    }
    sum / f64::max(count, 1.0)
}

fn correlation(a: &[f64], b: &[f64]) -> f64 {
    let n = a.len() as f64;
    let (mean_a, mean_b) = (a.iter().sum::<f64>() / n, b.iter().sum::<f64>() / n);
    let (mut both, mut own_a, mut own_b) = (0.0, 0.0, 0.0);
    for (x, y) in a.iter().zip(b) {
        let (x, y) = (x - mean_a, y - mean_b);
        both += x * y;
        own_a += x * x;
        own_b += y * y;
    }
    // Less than one grey level of contrast tells nothing.
    if own_a.min(own_b) < n { 1.0 } else { both / (own_a * own_b).sqrt() }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A made-up picture with features at many places; `seed` gives another one.
    fn picture(width: usize, height: usize, seed: f64) -> Luma {
        let grey = |i: usize| {
            let (x, y) = ((i % width) as f64 / width as f64, (i / width) as f64 / height as f64);
            let wave = (7.0 * x + seed).sin() + (5.0 * y + 2.0 * seed).cos() + (9.0 * x * y + 3.0 * seed).sin();
            (128.0 + 36.0 * wave) as u8
        };
        Luma::new(width, height, (0..width * height).map(grey).collect()).unwrap()
    }

    fn small(picture: &Luma, width: usize, height: usize, place: impl Fn(usize, usize) -> Option<(f64, f64)>) -> Luma {
        let at = |(x, y): (f64, f64)| {
            let (u, v) = (x * picture.width() as f64, y * picture.height() as f64);
            picture.at((u as usize).min(picture.width() - 1), (v as usize).min(picture.height() - 1))
        };
        let pixels = (0..width * height).map(|i| place(i % width, i / width).map_or(0, at)).collect();
        Luma::new(width, height, pixels).unwrap()
    }

    #[test]
    fn thumbnails_of_the_picture_are_alike_however_they_were_made() {
        let large = picture(1600, 1200, 0.3);
        let plain = small(&large, 160, 120, |u, v| Some((u as f64 / 160.0, v as f64 / 120.0)));
        let turned = small(&large, 120, 160, |u, v| Some((v as f64 / 160.0, 1.0 - (u as f64 + 1.0) / 120.0)));
        let upside =
            small(&large, 160, 120, |u, v| Some((1.0 - (u as f64 + 1.0) / 160.0, 1.0 - (v as f64 + 1.0) / 120.0)));
        let cut = small(&large, 160, 90, |u, v| Some((u as f64 / 160.0, 0.125 + 0.75 * v as f64 / 90.0)));
        let barred = small(&large, 160, 160, |u, v| {
            (20..140).contains(&v).then(|| (u as f64 / 160.0, (v as f64 - 20.0) / 120.0))
        });
        for (name, thumbnail) in
            [("plain", plain), ("turned", turned), ("upside down", upside), ("cut", cut), ("barred", barred)]
        {
            let found = likeness(&thumbnail, &large);
            assert!(found > 0.97, "{name}: {found}");
        }
    }

    #[test]
    fn thumbnails_of_other_pictures_are_not() {
        let large = picture(1600, 1200, 0.3);
        for seed in [1.4, 2.6, 4.4] {
            let other = picture(160, 120, seed);
            let found = likeness(&other, &large);
            assert!(found < 0.8, "{seed}: {found}");
        }
    }
}
