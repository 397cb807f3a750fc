//! What a photo holds besides its scene.

use super::plane::{Grey, Plane};

/// Side of the window that is looked at, px.
const SIDE: usize = 5;
const REACH: usize = SIDE / 2;
/// Variance of noise that the filter takes away, levels squared: of the eight bits of a phone's photo in good light.
/// Half and twice as much give the same within a tenth (`docs/sensor-pattern.md`).
const NOISE: f32 = 3.0;
/// Pixels beyond say nothing: they were cut off.
const USABLE: std::ops::RangeInclusive<u8> = 4..=250;

/// The noise that a local Wiener filter takes away: the difference from the
/// window's mean, times noise variance over the window's variance where that is
/// larger (Lee, Digital image enhancement and noise filtering by use of local
/// statistics, 1980). Where the scene has edges nearly nothing is left of them.
/// Beyond the edge the picture is mirrored.
pub fn filtered(photo: &Grey<'_>) -> Plane {
    let (width, height) = (photo.width, photo.height);
    let mut values = Vec::with_capacity(width * height);
    // Sums over the window's rows, for columns mirrored by its reach on both sides.
    let padded = width + 2 * REACH;
    let (mut sums, mut squares) = (vec![0u32; padded], vec![0u32; padded]);
    let count = (SIDE * SIDE) as u32;
    for v in 0..height {
        sums.fill(0);
        squares.fill(0);
        for k in 0..SIDE {
            let row = &photo.pixels[mirrored(v + k, height) * width..][..width];
            let inner = sums[REACH..].iter_mut().zip(&mut squares[REACH..]);
            for (x, (sum, square)) in row.iter().map(|x| u32::from(*x)).zip(inner) {
                *sum += x;
                *square += x * x;
            }
        }
        for k in (0..REACH).chain(width + REACH..padded) {
            let from = REACH + mirrored(k, width);
            (sums[k], squares[k]) = (sums[from], squares[from]);
        }
        let row = &photo.pixels[v * width..][..width];
        for (u, pixel) in row.iter().enumerate() {
            let sum: u32 = sums[u..u + SIDE].iter().sum();
            let square: u32 = squares[u..u + SIDE].iter().sum();
            // Whole numbers: the variance is exact. 25 squares of 255 are 40 million.
            let variance = (count * square - sum * sum) as f32 / (count * count) as f32;
            let difference = f32::from(*pixel) - sum as f32 / count as f32;
            values.push(difference * NOISE / variance.max(NOISE));
        }
    }
    Plane { width, height, values }
}

/// The place `REACH` before `p`, mirrored about the first and the last pixel.
fn mirrored(p: usize, n: usize) -> usize {
    let place = p.abs_diff(REACH);
    if place >= n { (2 * (n - 1)).saturating_sub(place) } else { place }
}

/// How much a pixel's light can say about its own gain: the light, zero where it was cut off.
pub(super) fn light(pixel: u8) -> f32 {
    if USABLE.contains(&pixel) { f32::from(pixel) } else { 0.0 }
}

/// The noise of a photo, levelled, times its light: what correlates with the sensor's pattern, as the pattern
/// multiplies the light (Chen et al. 2008, equation 8).
pub fn residual(photo: &Grey<'_>) -> Plane {
    let mut noise = filtered(photo);
    noise.level();
    noise.values.iter_mut().zip(photo.pixels).for_each(|(x, pixel)| *x *= light(*pixel) * (1.0 / 255.0));
    noise
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_flat_picture_has_none_and_an_edge_leaves_little() {
        let flat = vec![100u8; 64 * 40];
        assert!(filtered(&Grey { width: 64, height: 40, pixels: &flat }).values.iter().all(|x| *x == 0.0));
        let edge: Vec<u8> = (0..64 * 40).map(|i| if i % 64 < 30 { 40 } else { 200 }).collect();
        let left = filtered(&Grey { width: 64, height: 40, pixels: &edge });
        assert!(left.values.iter().all(|x| x.abs() < 0.1), "{:?}", &left.values[26..34]);
    }

    #[test]
    fn a_lone_bright_pixel_is_worked_out_by_hand() {
        let mut spot = vec![100u8; 11 * 11];
        spot[5 * 11 + 5] = 125;
        let found = filtered(&Grey { width: 11, height: 11, pixels: &spot });
        // Mean 101, variance 25 - 1 = 24: (125 - 101) * 3 / 24.
        assert!((found.values[60] - 3.0).abs() < 1e-6);
        assert!((found.values[59] + 1.0 / 8.0).abs() < 1e-6);
        // Pictures smaller than the window are mirrored on both sides.
        assert_eq!(filtered(&Grey { width: 1, height: 2, pixels: &[7, 7] }).values, [0.0, 0.0]);
    }
}
