//! From coefficients to pixels: the inverse cosine transform of eight blocks side by side.

use multiversion::multiversion;

/// Blocks that are transformed at once.
pub(super) const BLOCKS: usize = 8;
/// One number for each of the blocks.
type Lanes = [i32; BLOCKS];
/// Coefficients of the blocks, rows of the block from the top, dequantized.
pub(super) type Coefficients = [Lanes; 64];

/// Sets the pixels of eight blocks: for each row of them the blocks' pixels in turn, eight in a number, the left one lowest.
/// The coefficients are used up: zeros afterwards.
///
/// C. Loeffler, A. Ligtenberg and G. S. Moschytz, "Practical fast 1-D DCT algorithms with 11 multiplications", ICASSP 1989,
/// with constants of twelve bits; columns first, kept to four times the scale between, as the decoder for all other files
/// (zune-jpeg) has it: the same to the bit.
#[multiversion(targets("x86_64+avx2"))]
pub(super) fn pixels(blocks: &mut Coefficients, rows: &mut [[u64; BLOCKS]; 8]) {
    for column in 0..8 {
        let mut lines = [[0; BLOCKS]; 8];
        for k in 0..8 {
            lines[k] = blocks[8 * k + column];
        }
        pass(&mut lines, 1 << 9, 10);
        for k in 0..8 {
            blocks[8 * k + column] = lines[k];
        }
    }
    for (words, lines) in rows.iter_mut().zip(blocks.as_chunks_mut::<8>().0) {
        // Halves upwards, and 128 is grey.
        pass(lines, (1 << 9) + (1 << 16) + (128 << 17), 17);
        let mut bytes = [[0; BLOCKS]; 8];
        for (byte, x) in bytes.as_flattened_mut().iter_mut().zip(lines.as_flattened()) {
            *byte = (*x).clamp(0, 255) as u8;
        }
        for (word, bytes) in words.iter_mut().zip(bytes) {
            *word = u64::from_le_bytes(bytes);
        }
        *lines = [[0; BLOCKS]; 8];
        turn(words);
    }
}

/// Writes eight blocks to their place in rows of the picture, as far as they lie within it.
pub(super) fn put(group: &mut Coefficients, part: &mut [u8], width: usize, start: usize) {
    let mut rows = [[0; BLOCKS]; 8];
    pixels(group, &mut rows);
    for (line, words) in part.chunks_exact_mut(width).zip(&rows) {
        let (whole, rest) = line[start.min(width)..].as_chunks_mut::<8>();
        for (place, word) in whole.iter_mut().zip(words) {
            *place = word.to_le_bytes();
        }
        if let Some(word) = words.get(whole.len()) {
            rest.copy_from_slice(&word.to_le_bytes()[..rest.len()]);
        }
    }
}

/// One dimension, in place.
#[allow(clippy::needless_range_loop, reason = "a lane of all eight lines at once: this becomes vector instructions")]
#[inline(always)]
fn pass(lines: &mut [Lanes; 8], half: i32, shift: u32) {
    let times = |x: i32, constant: i32| x.wrapping_mul(constant);
    let (plus, less) = (i32::wrapping_add, i32::wrapping_sub);
    for l in 0..BLOCKS {
        let [x0, x1, x2, x3, x4, x5, x6, x7] = [0, 1, 2, 3, 4, 5, 6, 7].map(|k: usize| lines[k][l]);
        // Even part: a rotation by three sixteenths of pi, and sum and difference.
        let turned = times(plus(x2, x6), 2217);
        let (low, high) = (plus(turned, times(x2, 3135)), plus(turned, times(x6, -7567)));
        let (sum, difference) = (plus(plus(x0, x4) << 12, half), plus(less(x0, x4) << 12, half));
        let even = [plus(sum, low), plus(difference, high), less(difference, high), less(sum, low)];
        // Odd part.
        let all = times(plus(plus(x1, x5), plus(x3, x7)), 4816);
        let (a, b) = (plus(all, times(plus(x1, x7), -3685)), plus(all, times(plus(x3, x5), -10497)));
        let (c, d) = (times(plus(x3, x7), -8034), times(plus(x1, x5), -1597));
        let odd = [
            plus(times(x1, 6149), plus(a, d)),
            plus(times(x3, 12586), plus(b, c)),
            plus(times(x5, 8410), plus(b, d)),
            plus(times(x7, 1223), plus(a, c)),
        ];
        for k in 0..4 {
            lines[k][l] = plus(even[k], odd[k]) >> shift;
            lines[7 - k][l] = less(even[k], odd[k]) >> shift;
        }
    }
}

/// Exchanges rows and columns of eight times eight bytes: by halves, quarters and eighths.
#[inline(always)]
fn turn(words: &mut [u64; 8]) {
    for (apart, mask) in [(4, 0xffff_ffff), (2, 0x0000_ffff_0000_ffff), (1, 0x00ff_00ff_00ff_00ff_u64)] {
        let bits = 8 * apart as u32;
        for i in (0..8).filter(|i| i & apart == 0) {
            let moved = ((words[i] >> bits) ^ words[i + apart]) & mask;
            words[i] ^= moved << bits;
            words[i + apart] ^= moved;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The definition, T.81 A.3.3, in real numbers.
    fn defined(block: &[i32; 64]) -> [f64; 64] {
        let scale = |k: usize| if k == 0 { 0.5f64.sqrt() } else { 1.0 };
        let wave = |x: usize, k: usize| ((2 * x + 1) as f64 * k as f64 * std::f64::consts::PI / 16.0).cos() * scale(k);
        std::array::from_fn(|i| {
            let (y, x) = (i / 8, i % 8);
            let one = |j: usize| wave(x, j % 8) * wave(y, j / 8) * f64::from(block[j]);
            (0..64).map(one).sum::<f64>() / 4.0 + 128.0
        })
    }

    #[test]
    fn pixels_are_those_of_the_definition() {
        let mut state = 1u32;
        let mut random = |most: i32| {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (state >> 8) as i32 % (2 * most + 1) - most
        };
        for round in 0..200 {
            let blocks: [[i32; 64]; BLOCKS] = std::array::from_fn(|_| {
                std::array::from_fn(|k| {
                    if k == 0 {
                        random(900)
                    } else if k < 2 + round % 63 {
                        random(120 / k as i32 + 1)
                    } else {
                        0
                    }
                })
            });
            let mut together: Coefficients = std::array::from_fn(|k| blocks.map(|block| block[k]));
            let mut rows = [[0; BLOCKS]; 8];
            pixels(&mut together, &mut rows);
            assert!(together.iter().flatten().all(|x| *x == 0));
            for (b, block) in blocks.iter().enumerate() {
                for (i, wanted) in defined(block).into_iter().enumerate() {
                    let found = f64::from(rows[i / 8][b].to_le_bytes()[i % 8]);
                    // Rounding, and constants of twelve bits.
                    assert!((found - wanted.clamp(0.0, 255.0)).abs() < 0.65, "{found} {wanted}");
                }
            }
        }
    }
}
