//! Halved copies of a photo and where in them there is contrast.

use crate::photo::Luma;

/// Side of the tiles that are tested for contrast, px.
pub(super) const TILE: usize = 8;

/// One level of the pyramid: every pixel is the mean of `scale` x `scale` pixels of the photo.
pub(super) struct Level<'a> {
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) scale: f64,
    pixels: Pixels<'a>,
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

/// The photo and its halvings, down to some 30 pixels a side.
pub(super) fn pyramid(photo: &Luma) -> Vec<Level<'_>> {
    let mut levels =
        vec![Level { width: photo.width(), height: photo.height(), scale: 1.0, pixels: Pixels::Photo(photo.pixels()) }];
    while let Some(last) = levels.last() {
        let (width, height) = (last.width / 2, last.height / 2);
        if width < 4 || height < 4 {
            break;
        }
        let mut pixels = vec![0; width * height];
        for (v, out) in pixels.chunks_exact_mut(width).enumerate() {
            halve(last.row(2 * v), last.row(2 * v + 1), out);
        }
        let scale = last.scale * 2.0;
        levels.push(Level { width, height, scale, pixels: Pixels::Own(pixels) });
    }
    levels
}

fn halve(top: &[u8], bottom: &[u8], out: &mut [u8]) {
    for ((o, t), b) in out.iter_mut().zip(top.chunks_exact(2)).zip(bottom.chunks_exact(2)) {
        *o = ((u16::from(t[0]) + u16::from(t[1]) + u16::from(b[0]) + u16::from(b[1]) + 2) / 4) as u8;
    }
}

/// Tiles of a level whose darkest and lightest pixel differ by at least `contrast`, and
/// their neighbours: a grid of `width.div_ceil(TILE)` columns.
pub(super) fn active_tiles(level: &Level<'_>, contrast: u8) -> Vec<bool> {
    let columns = level.width.div_ceil(TILE);
    let rows = level.height.div_ceil(TILE);
    let mut own = vec![false; columns * rows];
    let (mut low, mut high) = (vec![0u8; level.width], vec![0u8; level.width]);
    for (r, flags) in own.chunks_exact_mut(columns).enumerate() {
        low.fill(255);
        high.fill(0);
        for v in r * TILE..((r + 1) * TILE).min(level.height) {
            for ((l, h), p) in low.iter_mut().zip(&mut high).zip(level.row(v)) {
                *l = (*l).min(*p);
                *h = (*h).max(*p);
            }
        }
        for ((flag, l), h) in flags.iter_mut().zip(low.chunks(TILE)).zip(high.chunks(TILE)) {
            let (min, max) = (l.iter().min().copied().unwrap_or(0), h.iter().max().copied().unwrap_or(0));
            *flag = max - min >= contrast;
        }
    }
    dilate(&own, columns)
}

fn dilate(own: &[bool], columns: usize) -> Vec<bool> {
    let mut wide = own.to_vec();
    for (row, out) in own.chunks_exact(columns).zip(wide.chunks_exact_mut(columns)) {
        for i in 0..columns {
            out[i] = row[i] || (i > 0 && row[i - 1]) || (i + 1 < columns && row[i + 1]);
        }
    }
    let mut tall = wide.clone();
    for i in 0..wide.len() {
        tall[i] = wide[i] || (i >= columns && wide[i - columns]) || wide.get(i + columns).copied().unwrap_or(false);
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
        let count = tiles.iter().filter(|t| **t).count();
        assert_eq!(count, 9);
        assert!(tiles[5 * 10 + 5] && tiles[4 * 10 + 4] && !tiles[3 * 10 + 5]);
    }
}
