//! Noise taken out of the luma by looking at like pixels.

use rayon::prelude::*;

/// Reach of the bilateral filter, px each way, and its spatial sigma.
const NEAR: usize = 2;
const NEAR_SIGMA: f32 = 1.2;
/// Patches of non-local means are 5 x 5, looked for in 11 x 11.
const PATCH: usize = 2;
const SEARCH: usize = 5;
/// Rows that one thread works on: what it needs of the picture stays in its cache.
const BAND: usize = 32;

/// A plane with its edges repeated outwards.
struct Padded {
    values: Vec<f32>,
    width: usize,
}

impl Padded {
    fn of(plane: &[f32], width: usize, apron: usize) -> Self {
        let height = plane.len() / width;
        let wide = width + 2 * apron;
        let mut values = vec![0.0f32; wide * (height + 2 * apron)];
        values.par_chunks_mut(wide).enumerate().for_each(|(v, out)| {
            let row = v.saturating_sub(apron).min(height - 1);
            let line = &plane[row * width..][..width];
            out[..apron].fill(line[0]);
            out[apron..apron + width].copy_from_slice(line);
            out[apron + width..].fill(line[width - 1]);
        });
        Padded { values, width: wide }
    }

    /// `n` values from a place on.
    fn row(&self, v: usize, u: usize, n: usize) -> &[f32] {
        &self.values[v * self.width + u..][..n]
    }
}

/// The exponential of minus `x`, to .01: sixteen halvings that a processor does several of at once.
fn fading(x: f32) -> f32 {
    let mut w = (1.0 - x * (1.0 / 16.0)).max(0.0);
    for _ in 0..4 {
        w *= w;
    }
    w
}

/// Bilateral filter (Tomasi and Manduchi, Bilateral filtering for gray and
/// color images, 1998): neighbours weigh by their distance and by how far
/// their value is away, `reach` being the sigma of that.
pub(super) fn bilateral(plane: &[f32], width: usize, reach: f32) -> Vec<f32> {
    let padded = Padded::of(plane, width, NEAR);
    let scale = 0.5 / (reach * reach);
    let side = 2 * NEAR + 1;
    let mut out = vec![0.0f32; plane.len()];
    out.par_chunks_mut(width).enumerate().for_each(|(v, line)| {
        let own = padded.row(v + NEAR, NEAR, width);
        let (mut sum, mut weight) = (vec![0.0f32; width], vec![0.0f32; width]);
        for k in 0..side * side {
            let (dv, du) = (k / side, k % side);
            let far2 = ((dv as f32 - NEAR as f32).powi(2) + (du as f32 - NEAR as f32).powi(2)) / NEAR_SIGMA.powi(2);
            let place = (-0.5 * far2).exp();
            let other = padded.row(v + dv, du, width);
            for u in 0..width {
                let d = other[u] - own[u];
                let w = place * fading(d * d * scale);
                sum[u] += w * other[u];
                weight[u] += w;
            }
        }
        for (u, out) in line.iter_mut().enumerate() {
            *out = sum[u] / weight[u];
        }
    });
    out
}

/// Non-local means (Buades, Coll and Morel, A non-local algorithm for image
/// denoising, 2005): pixels weigh by how like their surroundings are, the
/// squared difference of two patches' values over `h` squared.
pub(super) fn non_local_means(plane: &[f32], width: usize, h: f32) -> Vec<f32> {
    let apron = PATCH + SEARCH;
    let padded = Padded::of(plane, width, apron);
    let patch = 2 * PATCH + 1;
    let scale = 1.0 / (h * h * (patch * patch) as f32);
    let mut out = vec![0.0f32; plane.len()];
    out.par_chunks_mut(BAND * width).enumerate().for_each(|(band, lines)| {
        let rows = lines.len() / width;
        let top = band * BAND;
        let mut weights = vec![0.0f32; lines.len()];
        // Rows of squared differences, summed over a patch's width.
        let mut across = vec![0.0f32; (rows + 2 * PATCH) * width];
        let mut squares = vec![0.0f32; width + 2 * PATCH];
        lines.fill(0.0);
        let side = 2 * SEARCH + 1;
        for k in 0..side * side {
            let (dv, du) = (k / side, k % side);
            for (r, sums) in across.chunks_mut(width).enumerate() {
                let own = padded.row(top + r + SEARCH, SEARCH, width + 2 * PATCH);
                let other = padded.row(top + r + dv, du, width + 2 * PATCH);
                for ((s, a), b) in squares.iter_mut().zip(own).zip(other) {
                    *s = (a - b) * (a - b);
                }
                for (u, sum) in sums.iter_mut().enumerate() {
                    *sum = squares[u] + squares[u + 1] + squares[u + 2] + squares[u + 3] + squares[u + 4];
                }
            }
            for (r, (line, weights)) in lines.chunks_mut(width).zip(weights.chunks_mut(width)).enumerate() {
                let d = [0, 1, 2, 3, 4].map(|j| &across[(r + j) * width..][..width]);
                let other = padded.row(top + r + PATCH + dv, PATCH + du, width);
                for u in 0..width {
                    let w = fading(scale * (d[0][u] + d[1][u] + d[2][u] + d[3][u] + d[4][u]));
                    line[u] += w * other[u];
                    weights[u] += w;
                }
            }
        }
        lines.iter_mut().zip(&weights).for_each(|(v, w)| *v /= w);
    });
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::synth::trace::{mix, normal_pair};

    const WIDTH: usize = 64;

    /// A step in the middle with noise on both sides.
    fn step(noise: f32) -> Vec<f32> {
        let value = |i: usize| (if i % WIDTH < WIDTH / 2 { 0.25 } else { 0.7 }) + noise * normal_pair(mix(i as u64))[0];
        (0..WIDTH * WIDTH).map(value).collect()
    }

    /// Mean and standard deviation of some columns.
    fn of_columns(plane: &[f32], columns: std::ops::Range<usize>) -> [f32; 2] {
        let values: Vec<f32> = (0..plane.len()).filter(|i| columns.contains(&(i % WIDTH))).map(|i| plane[i]).collect();
        let mean = values.iter().sum::<f32>() / values.len() as f32;
        [mean, (values.iter().map(|v| (v - mean).powi(2)).sum::<f32>() / values.len() as f32).sqrt()]
    }

    #[test]
    fn both_filters_keep_a_step_and_take_noise_away() {
        let (clean, noisy) = (step(0.0), step(0.015));
        for (name, filter) in [
            ("bilateral", bilateral as fn(&[f32], usize, f32) -> Vec<f32>),
            ("non-local means", non_local_means as fn(&[f32], usize, f32) -> Vec<f32>),
        ] {
            let kept = filter(&clean, WIDTH, 0.05);
            assert!(kept.iter().zip(&clean).all(|(a, b)| (a - b).abs() < 1e-5), "{name}");
            let quiet = filter(&noisy, WIDTH, 0.05);
            let ([left, noise], [right, _]) = (of_columns(&quiet, 0..28), of_columns(&quiet, 36..64));
            assert!((left - 0.25).abs() < 0.002 && (right - 0.7).abs() < 0.002, "{name}: {left} {right}");
            assert!(noise < 0.006, "{name}: {noise}");
            // At the very step, each side keeps its own mean.
            let [dark, _] = of_columns(&quiet, WIDTH / 2 - 1..WIDTH / 2);
            let [light, _] = of_columns(&quiet, WIDTH / 2..WIDTH / 2 + 1);
            assert!((dark - 0.25).abs() < 0.01 && (light - 0.7).abs() < 0.01, "{name}: {dark} {light}");
        }
    }

    /// The definition, pixel by pixel, with the exact exponential.
    fn plainly(plane: &[f32], h: f32, u: usize, v: usize) -> f32 {
        let at = |u: i32, v: i32| plane[v.clamp(0, 63) as usize * WIDTH + u.clamp(0, 63) as usize];
        let (u, v) = (u as i32, v as i32);
        let (mut sum, mut weights) = (0.0, 0.0);
        for dv in -5..=5 {
            for du in -5..=5 {
                let mut d2 = 0.0;
                for j in -2..=2 {
                    for i in -2..=2 {
                        d2 += (at(u + i, v + j) - at(u + du + i, v + dv + j)).powi(2);
                    }
                }
                let w = (-d2 / (25.0 * h * h)).exp();
                sum += w * at(u + du, v + dv);
                weights += w;
            }
        }
        sum / weights
    }

    #[test]
    fn non_local_means_is_what_its_definition_says() {
        let plane = step(0.02);
        let fast = non_local_means(&plane, WIDTH, 0.03);
        for (u, v) in [(20, 30), (31, 31), (32, 33), (50, 62), (9, 32), (40, 8)] {
            let wanted = plainly(&plane, 0.03, u, v);
            assert!((fast[v * WIDTH + u] - wanted).abs() < 1e-3, "{u} {v}: {} {wanted}", fast[v * WIDTH + u]);
        }
    }
}
