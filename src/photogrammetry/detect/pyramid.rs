//! Halved copies of a photo and where in them there is contrast.

use multiversion::multiversion;
use nalgebra::Vector2;

use crate::photo::Luma;

/// Side of the tiles that are tested for contrast, px.
pub(super) const TILE: usize = 8;

/// One level of the pyramid: every pixel is the mean of `scale` x `scale` pixels of the photo.
pub(super) struct Level<'a> {
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) scale: f64,
    pixels: Pixels<'a>,
    /// Lightest minus darkest pixel of each tile, rows of `width.div_ceil(TILE)`.
    contrasts: Vec<u8>,
    /// Darkest pixel of each tile.
    darkest: Vec<u8>,
}

enum Pixels<'a> {
    Photo(&'a [u8]),
    Own(Vec<u8>),
}

impl Level<'_> {
    pub(super) fn pixels(&self) -> &[u8] {
        match &self.pixels {
            Pixels::Photo(p) => p,
            Pixels::Own(p) => p,
        }
    }

    pub(super) fn row(&self, v: usize) -> &[u8] {
        &self.pixels()[v * self.width..(v + 1) * self.width]
    }

    /// Coordinate on the photo's grid of a coordinate on this level.
    pub(super) fn on_photo(&self, x: f64) -> f64 {
        x * self.scale + (self.scale - 1.0) / 2.0
    }

    /// Coordinate on this level of a coordinate on the photo's grid.
    pub(super) fn on_level(&self, x: f64) -> f64 {
        (x - (self.scale - 1.0) / 2.0) / self.scale
    }

    /// Grey value between pixels (bilinear); the border's value beyond it.
    pub(super) fn sample(&self, u: f64, v: f64) -> f64 {
        let u = u.clamp(0.0, (self.width - 1) as f64);
        let v = v.clamp(0.0, (self.height - 1) as f64);
        let (i, j) = ((u as usize).min(self.width.saturating_sub(2)), (v as usize).min(self.height.saturating_sub(2)));
        let (a, b) = (u - i as f64, v - j as f64);
        let at =
            |i: usize, j: usize| f64::from(self.pixels()[j.min(self.height - 1) * self.width + i.min(self.width - 1)]);
        let top = at(i, j) * (1.0 - a) + at(i + 1, j) * a;
        let bottom = at(i, j + 1) * (1.0 - a) + at(i + 1, j + 1) * a;
        top * (1.0 - b) + bottom * b
    }
}

impl Level<'_> {
    /// Whether a place has four pixels around it.
    pub(super) fn is_within(&self, p: Vector2<f64>) -> bool {
        (0.0..(self.width - 1) as f64).contains(&p.x) && (0.0..(self.height - 1) as f64).contains(&p.y)
    }

    /// [`Level::sample`] where [`Level::is_within`].
    #[inline(always)]
    pub(super) fn sample_within(&self, p: Vector2<f64>) -> f64 {
        let (i, j) = (p.x as usize, p.y as usize);
        let (a, b) = (p.x - i as f64, p.y - j as f64);
        let first = j * self.width + i;
        let pixels = self.pixels();
        let mix = |at: usize| match pixels.get(at..).and_then(|rest| rest.first_chunk::<2>()) {
            Some([left, right]) => f64::from(*left) * (1.0 - a) + f64::from(*right) * a,
            None => 0.0,
        };
        mix(first) * (1.0 - b) + mix(first + self.width) * b
    }

    /// Grey values at equal steps from a place.
    pub(super) fn sample_line(&self, from: Vector2<f64>, step: Vector2<f64>, greys: &mut [f64]) {
        let to = from + step * (greys.len() - 1) as f64;
        let mut p = from;
        if !self.is_within(from) || !self.is_within(to) {
            for grey in greys {
                *grey = self.sample(p.x, p.y);
                p += step;
            }
            return;
        }
        let pixels = self.pixels();
        for grey in greys {
            // No pixel beyond the last is asked for: rounding may carry the last step onto it.
            let (i, j) = (p.x as usize, (p.y as usize).min(self.height - 2));
            let (a, b) = (p.x - i as f64, p.y - j as f64);
            let first = (j * self.width + i).min(pixels.len() - self.width - 2);
            let (top, bottom) = (&pixels[first..first + 2], &pixels[first + self.width..first + self.width + 2]);
            let mix = |pair: &[u8]| f64::from(pair[0]) + (f64::from(pair[1]) - f64::from(pair[0])) * a;
            let (top, bottom) = (mix(top), mix(bottom));
            *grey = top + (bottom - top) * b;
            p += step;
        }
    }
}

/// The photo and its halvings, down to some 30 pixels a side.
pub(super) fn pyramid(photo: &Luma) -> Vec<Level<'_>> {
    let (mut width, mut height, mut scale) = (photo.width(), photo.height(), 1.0);
    let mut pixels = Pixels::Photo(photo.pixels());
    let mut levels = Vec::new();
    loop {
        let mut level = Level { width, height, scale, pixels, contrasts: Vec::new(), darkest: Vec::new() };
        let half = look_over(&mut level);
        levels.push(level);
        (width, height, scale, pixels) = (width / 2, height / 2, scale * 2.0, Pixels::Own(half));
        if width < 4 || height < 4 {
            return levels;
        }
    }
}

/// Sets what a level knows of its tiles and returns the level of half the size, in one go over the pixels.
fn look_over(level: &mut Level<'_>) -> Vec<u8> {
    let (columns, rows) = (level.width.div_ceil(TILE), level.height.div_ceil(TILE));
    let (half_width, half_height) = (level.width / 2, level.height / 2);
    let (mut contrasts, mut darkest) = (vec![0u8; columns * rows], vec![0u8; columns * rows]);
    let mut half = vec![0u8; half_width * half_height];
    let (mut low, mut high) = (vec![0u8; columns * TILE], vec![0u8; columns * TILE]);
    for r in 0..rows {
        // What lies beyond the last column neither darkens nor lightens.
        low.fill(255);
        high.fill(0);
        for v in r * TILE..((r + 1) * TILE).min(level.height) {
            extend(&mut low, &mut high, level.row(v));
            if v % 2 == 1 {
                halve(level.row(v - 1), level.row(v), &mut half[v / 2 * half_width..][..half_width]);
            }
        }
        let tiles = r * columns..(r + 1) * columns;
        range(&mut low, &mut high, &mut contrasts[tiles.clone()], &mut darkest[tiles]);
    }
    (level.contrasts, level.darkest) = (contrasts, darkest);
    half
}

/// Takes a row into the darkest and the lightest pixel of each column.
#[multiversion(targets("x86_64+avx2"))]
fn extend(low: &mut [u8], high: &mut [u8], row: &[u8]) {
    for ((l, h), p) in low.iter_mut().zip(high).zip(row) {
        *l = (*l).min(*p);
        *h = (*h).max(*p);
    }
}

/// The range and the darkest of every eight columns, whose own ones are used up.
#[multiversion(targets("x86_64+avx2"))]
fn range(low: &mut [u8], high: &mut [u8], contrasts: &mut [u8], darkest: &mut [u8]) {
    // Halved three times: of each pair the lower and the higher one.
    let mut count = low.len();
    while count > contrasts.len() {
        count /= 2;
        for i in 0..count {
            low[i] = low[2 * i].min(low[2 * i + 1]);
        }
        for i in 0..count {
            high[i] = high[2 * i].max(high[2 * i + 1]);
        }
    }
    for (((contrast, dark), l), h) in contrasts.iter_mut().zip(darkest).zip(low).zip(high) {
        (*contrast, *dark) = (*h - *l, *l);
    }
}

#[multiversion(targets("x86_64+avx2"))]
fn halve(top: &[u8], bottom: &[u8], out: &mut [u8]) {
    // Two pixels in one number: the even and the odd ones are told apart without moving any.
    let sum = |pair: &[u8; 2]| {
        let both = u16::from_le_bytes(*pair);
        (both & 0xff) + (both >> 8)
    };
    for ((o, t), b) in out.iter_mut().zip(top.as_chunks::<2>().0).zip(bottom.as_chunks::<2>().0) {
        *o = ((sum(t) + sum(b) + 2) / 4) as u8;
    }
}

/// Contrast of each tile of a level, the largest of it and its eight neighbours, where that is at
/// least so much; 0 elsewhere.
pub(super) fn active_tiles(level: &Level<'_>, least: u8) -> Vec<u8> {
    let own: Vec<u8> = level.contrasts.iter().map(|c| if *c >= least { *c } else { 0 }).collect();
    dilate(&own, level.width.div_ceil(TILE))
}

/// Darkest pixel of each tile and its eight neighbours.
pub(super) fn darkest_around(level: &Level<'_>) -> Vec<u8> {
    let light: Vec<u8> = level.darkest.iter().map(|d| !d).collect();
    dilate(&light, level.width.div_ceil(TILE)).into_iter().map(|d| !d).collect()
}

fn dilate(own: &[u8], columns: usize) -> Vec<u8> {
    let mut wide = own.to_vec();
    for (row, out) in own.chunks_exact(columns).zip(wide.chunks_exact_mut(columns)) {
        for ((o, a), b) in out[1..].iter_mut().zip(row).zip(&row[1..]) {
            *o = (*a).max(*b);
        }
        for ((o, a), b) in out.iter_mut().zip(&row[1..]).zip(row) {
            *o = (*o).max(*a).max(*b);
        }
    }
    let mut tall = wide.clone();
    let rows = wide.len() / columns;
    for r in 0..rows {
        for other in [r.checked_sub(1), Some(r + 1).filter(|n| *n < rows)].into_iter().flatten() {
            for (o, a) in tall[r * columns..(r + 1) * columns].iter_mut().zip(&wide[other * columns..]) {
                *o = (*o).max(*a);
            }
        }
    }
    tall
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn halving_keeps_the_grid() {
        // A step edge at u = 9.5 of the photo lies there on every level.
        let pixels = (0..40 * 40).map(|i| if i % 40 < 10 { 20 } else { 220 }).collect();
        let photo = Luma::new(40, 40, pixels).unwrap();
        let levels = pyramid(&photo);
        assert_eq!((levels[1].width, levels[2].width), (20, 10));
        for level in &levels[..3] {
            // Where the bilinear profile crosses the middle.
            let n = (0..4000).find(|n| level.sample(f64::from(*n) * 0.01, 5.0) >= 120.0).unwrap();
            let crossing = level.on_photo(f64::from(n) * 0.01);
            assert!((crossing - 9.5).abs() < 0.05 * level.scale, "{crossing} at {}", level.scale);
            assert!((level.on_level(level.on_photo(3.25)) - 3.25).abs() < 1e-12);
        }
    }

    #[test]
    fn flat_tiles_are_idle() {
        let mut pixels = vec![100u8; 80 * 80];
        pixels[40 * 80 + 40] = 160;
        let photo = Luma::new(80, 80, pixels).unwrap();
        let tiles = active_tiles(&pyramid(&photo)[0], 40);
        let count = tiles.iter().filter(|t| **t > 0).count();
        assert_eq!(count, 9);
        assert!(tiles[5 * 10 + 5] == 60 && tiles[4 * 10 + 4] == 60 && tiles[3 * 10 + 5] == 0);
    }

    #[test]
    fn greys_along_a_line_are_those_of_its_places() {
        let photo = Luma::new(40, 30, (0..1200).map(|i| (i * 37 % 251) as u8).collect()).unwrap();
        let level = &pyramid(&photo)[0];
        // Within the picture, along its last row and column, and out of it.
        for (from, step) in
            [((3.2, 4.7), (1.3, 0.6)), ((20.0, 28.9), (0.9, 0.0)), ((38.9, 2.0), (0.0, 1.1)), ((-3.0, 5.0), (2.0, 1.9))]
        {
            let (from, step) = (Vector2::new(from.0, from.1), Vector2::new(step.0, step.1));
            let mut greys = [0.0; 12];
            level.sample_line(from, step, &mut greys);
            for (i, grey) in greys.iter().enumerate() {
                let p = from + step * i as f64;
                assert!((grey - level.sample(p.x, p.y)).abs() < 1e-6, "{p}");
            }
        }
    }
}
