//! A grey picture.

/// Display-referred luma, eight bits a pixel, rows from the top, on the
/// stored (unrotated) grid.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Luma {
    width: usize,
    height: usize,
    pixels: Vec<u8>,
}

impl Luma {
    /// From rows of pixels; `None` where the count is not `width * height` or a side is zero.
    pub fn new(width: usize, height: usize, pixels: Vec<u8>) -> Option<Self> {
        let count = width.checked_mul(height)?;
        (count == pixels.len() && count > 0).then_some(Luma { width, height, pixels })
    }

    /// Pixels in a row.
    pub fn width(&self) -> usize {
        self.width
    }

    /// Rows.
    pub fn height(&self) -> usize {
        self.height
    }

    /// All pixels, row after row.
    pub fn pixels(&self) -> &[u8] {
        &self.pixels
    }

    /// One row from the top.
    pub fn row(&self, v: usize) -> &[u8] {
        &self.pixels[v * self.width..(v + 1) * self.width]
    }

    /// The picture with left and right exchanged.
    #[must_use]
    pub fn mirrored(&self) -> Luma {
        let pixels = self.pixels.chunks_exact(self.width).flat_map(|row| row.iter().rev().copied()).collect();
        Luma { width: self.width, height: self.height, pixels }
    }

    /// One pixel.
    pub fn at(&self, u: usize, v: usize) -> u8 {
        self.pixels[v * self.width + u]
    }
}
