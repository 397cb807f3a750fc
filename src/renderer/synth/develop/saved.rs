//! What saving a picture as JPEG leaves of its luma: coefficients that are whole multiples of their steps.
//! ITU-T T.81, A.3.3 (transform) and K.1 (the example's table, which many programs scale by a quality; the scale is that of
//! the Independent JPEG Group's library). Chroma stays as it is.

use std::f32::consts::PI;

use super::tone::Picture;

/// T.81, table K.1.
const STEPS: [[f32; 8]; 8] = [
    [16.0, 11.0, 10.0, 16.0, 24.0, 40.0, 51.0, 61.0],
    [12.0, 12.0, 14.0, 19.0, 26.0, 58.0, 60.0, 55.0],
    [14.0, 13.0, 16.0, 24.0, 40.0, 57.0, 69.0, 56.0],
    [14.0, 17.0, 22.0, 29.0, 51.0, 87.0, 80.0, 62.0],
    [18.0, 22.0, 37.0, 56.0, 68.0, 109.0, 103.0, 77.0],
    [24.0, 35.0, 55.0, 64.0, 81.0, 104.0, 113.0, 92.0],
    [49.0, 64.0, 78.0, 87.0, 103.0, 121.0, 120.0, 101.0],
    [72.0, 92.0, 95.0, 98.0, 112.0, 100.0, 103.0, 99.0],
];

/// The picture as it is read again after it was saved at a quality of 1 to 100.
pub(crate) fn saved(mut picture: Picture, quality: u8) -> Picture {
    let quality = f32::from(quality.clamp(1, 100));
    let scale = if quality < 50.0 { 50.0 / quality } else { 2.0 - quality / 50.0 };
    let steps = STEPS.map(|row| row.map(|s| (s * scale + 0.5).floor().max(1.0)));
    let waves: [[f32; 8]; 8] = std::array::from_fn(|frequency| {
        let norm = if frequency == 0 { 0.125_f32.sqrt() } else { 0.5 };
        std::array::from_fn(|x| norm * ((2 * x + 1) as f32 * frequency as f32 * PI / 16.0).cos())
    });
    let width = picture.width;
    for top in (0..picture.height / 8).map(|row| 8 * row) {
        for left in (0..width / 8).map(|column| 8 * column) {
            let own = |v: usize, u: usize| (top + v) * width + left + u;
            let mut luma = [[0.0; 8]; 8];
            for (v, row) in luma.iter_mut().enumerate() {
                for (u, value) in row.iter_mut().enumerate() {
                    let [r, g, b] = picture.rgb[own(v, u)].map(f32::from);
                    *value = 0.299 * r + 0.587 * g + 0.114 * b - 128.0;
                }
            }
            let again = rounded(&luma, &steps, &waves);
            for v in 0..8 {
                for u in 0..8 {
                    let brighter = again[v][u] - luma[v][u];
                    let pixel = &mut picture.rgb[own(v, u)];
                    *pixel = pixel.map(|c| (f32::from(c) + brighter).round().clamp(0.0, 255.0) as u8);
                }
            }
        }
    }
    picture
}

/// A block with its coefficients rounded to their steps.
fn rounded(block: &[[f32; 8]; 8], steps: &[[f32; 8]; 8], waves: &[[f32; 8]; 8]) -> [[f32; 8]; 8] {
    let product = |a: &dyn Fn(usize, usize) -> f32, b: &dyn Fn(usize, usize) -> f32| -> [[f32; 8]; 8] {
        std::array::from_fn(|i| std::array::from_fn(|j| (0..8).map(|k| a(i, k) * b(k, j)).sum()))
    };
    let half = product(&|i, k| waves[i][k], &|k, j| block[k][j]);
    let mut all = product(&|i, k| half[i][k], &|k, j| waves[j][k]);
    for (row, steps) in all.iter_mut().zip(steps) {
        for (value, step) in row.iter_mut().zip(steps) {
            *value = (*value / step).round() * step;
        }
    }
    let half = product(&|i, k| waves[k][i], &|k, j| all[k][j]);
    product(&|i, k| half[i][k], &|k, j| waves[k][j])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fine_steps_change_next_to_nothing_and_coarse_ones_leave_a_block_s_mean() {
        let grey = |i: usize| [((i * 37) % 200) as u8 + 20; 3];
        let picture = Picture { width: 16, height: 8, rgb: (0..128).map(grey).collect() };
        let fine = saved(picture.clone(), 100);
        let farthest = picture.rgb.iter().zip(&fine.rgb).map(|(a, b)| a[0].abs_diff(b[0])).max();
        assert!(farthest <= Some(2), "{farthest:?}");
        let flat = Picture { width: 8, height: 8, rgb: vec![[77; 3]; 64] };
        // 8 * (77 - 128) = -408 is rounded to a multiple of 20: -400 is -50, which is 78.
        assert_eq!(saved(flat, 40).rgb, vec![[78; 3]; 64]);
    }
}
