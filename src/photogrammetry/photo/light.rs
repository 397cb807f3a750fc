//! Where a photo is at the end of its scale.

use nalgebra::Vector2;

use super::Luma;

/// Side of the blocks that are counted, px.
const BLOCK: usize = 8;
/// From here on a pixel is at full scale: JPEG rounds a little below 255.
const FULL: u8 = 253;

/// The share of pixels at full scale by blocks of 8 x 8 px, so that a photo's
/// pixels need not be kept.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Light {
    width: usize,
    height: usize,
    /// Pixels at full scale, 0 to 64, rows of blocks from the top.
    full: Vec<u8>,
}

impl Light {
    /// Counts a photo's blocks; what is left over at the right and lower edge is ignored.
    pub fn of(luma: &Luma) -> Self {
        let (width, height) = (luma.width() / BLOCK, luma.height() / BLOCK);
        let mut full = vec![0u8; width * height];
        for v in 0..height * BLOCK {
            let row = luma.row(v);
            let blocks = &mut full[(v / BLOCK) * width..(v / BLOCK + 1) * width];
            for (count, pixels) in blocks.iter_mut().zip(row.chunks_exact(BLOCK)) {
                *count += pixels.iter().map(|p| u8::from(*p >= FULL)).sum::<u8>();
            }
        }
        Light { width, height, full }
    }

    /// Share of pixels at full scale within a convex quadrilateral on the
    /// stored grid; `None` where it is smaller than a block.
    pub fn full_scale_share(&self, corners_px: &[Vector2<f64>; 4]) -> Option<f64> {
        let block = |x: f64, most: usize| ((x / BLOCK as f64).max(0.0) as usize).min(most);
        let range = |axis: usize, count: usize| {
            let values = corners_px.map(|c| c[axis]);
            let (low, high) = values.iter().fold((f64::MAX, f64::MIN), |(a, b), x| (a.min(*x), b.max(*x)));
            block(low, count)..block(high + BLOCK as f64, count)
        };
        let (mut pixels, mut full) = (0usize, 0usize);
        for v in range(1, self.height) {
            for u in range(0, self.width) {
                let centre = Vector2::new(u as f64 + 0.5, v as f64 + 0.5) * BLOCK as f64;
                if inside(corners_px, &centre) {
                    pixels += BLOCK * BLOCK;
                    full += usize::from(self.full[v * self.width + u]);
                }
            }
        }
        (pixels > 0).then(|| full as f64 / pixels as f64)
    }
}

/// On the same side of all four edges, whichever way round they run.
fn inside(corners: &[Vector2<f64>; 4], p: &Vector2<f64>) -> bool {
    let side = |i: usize| (corners[(i + 1) % 4] - corners[i]).perp(&(p - corners[i]));
    let sides = [side(0), side(1), side(2), side(3)];
    sides.iter().all(|s| *s >= 0.0) || sides.iter().all(|s| *s <= 0.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_what_is_at_full_scale() {
        // The left half of a picture of 64 x 32 is at full scale.
        let pixels = (0..64 * 32).map(|i| if i % 64 < 32 { 255 } else { 200 }).collect();
        let light = Light::of(&Luma::new(64, 32, pixels).unwrap());
        let quad =
            |l: f64, r: f64| [Vector2::new(l, 0.0), Vector2::new(r, 0.0), Vector2::new(r, 32.0), Vector2::new(l, 32.0)];
        assert!((light.full_scale_share(&quad(0.0, 32.0)).unwrap() - 1.0).abs() < 1e-12);
        assert!((light.full_scale_share(&quad(0.0, 64.0)).unwrap() - 0.5).abs() < 1e-12);
        assert!(light.full_scale_share(&quad(40.0, 64.0)).unwrap() < 1e-12);
        assert!(light.full_scale_share(&quad(1.0, 2.0)).is_none());
        assert!(light.full_scale_share(&quad(900.0, 990.0)).is_none());
    }
}
