//! The mark of pictures that this program made: what the renderer writes and the photos' reader finds.
//!
//! In the record two texts. In the picture a spread-spectrum mark (Cox, Kilian, Leighton and Shamoon 1997, IEEE
//! Transactions on Image Processing 6, 1673-1687): the picture is parted into [`CELLS`] by [`CELLS`] cells, whatever its
//! size, and each cell is one grey level brighter or darker by a pseudo-random sign. Cells are shares of the picture, so
//! that the mark stays where it is when the whole picture is made smaller.

/// The record's `Software` (Exif 2.32).
pub const SOFTWARE: &str = "baywitness renderer";
/// The record's `ImageDescription` (Exif 2.32).
pub const DESCRIPTION: &str = "Rendered by baywitness: no camera took this picture";

/// Cells along each side of a picture.
pub const CELLS: usize = 160;

/// Where the signs begin; any other number would do as well.
const SEED: u64 = 0x6261_7977_6974;

/// The cell along one axis that holds a pixel of a side of so many.
pub fn cell(pixel: usize, side: usize) -> usize {
    pixel * CELLS / side.max(1)
}

/// The cells' signs, row after row: the bits of SplitMix64 (Steele, Lea and Flood 2014, OOPSLA), lowest first.
pub fn signs() -> Vec<i8> {
    let mut state = SEED;
    let mut next = || {
        state = state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let z = (state ^ (state >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    };
    let words = (0..(CELLS * CELLS).div_ceil(64)).map(|_| next());
    let bits = words.flat_map(|word| (0..64).map(move |i| if word >> i & 1 == 1 { 1 } else { -1 }));
    bits.take(CELLS * CELLS).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn signs_are_balanced_and_do_not_follow_each_other() {
        let signs = signs();
        let n = signs.len() as f64;
        // Four standard deviations of fair coins.
        let most = 4.0 * n.sqrt();
        assert!(f64::from(signs.iter().map(|s| i32::from(*s)).sum::<i32>()).abs() < most);
        for shift in [1, 2, CELLS - 1, CELLS, CELLS + 1] {
            let pairs = signs.iter().zip(&signs[shift..]).map(|(a, b)| i32::from(a * b)).sum::<i32>();
            assert!(f64::from(pairs).abs() < most, "{shift}: {pairs}");
        }
    }

    #[test]
    fn every_pixel_has_a_cell_and_every_cell_pixels() {
        for side in [160, 161, 640, 3023] {
            let cells: Vec<usize> = (0..side).map(|u| cell(u, side)).collect();
            assert!(cells.windows(2).all(|w| w[1] == w[0] || w[1] == w[0] + 1));
            assert_eq!((cells[0], cells[side - 1]), (0, CELLS - 1));
        }
    }
}
