//! Blur in linear light.

use rayon::prelude::*;

use crate::synth::trace::Light;

/// Gaussian blur of a standard deviation in pixels, edges repeated.
pub(super) fn gaussian(light: &mut Light, sigma: f64) {
    if sigma < 0.02 {
        return;
    }
    let kernel = gaussian_kernel(sigma);
    let (width, height) = (light.width, light.height);
    light.rgb.par_chunks_mut(width).for_each_init(
        || vec![[0.0f32; 3]; width],
        |copy, row| {
            copy.copy_from_slice(row);
            for (u, out) in row.iter_mut().enumerate() {
                *out = weigh(&kernel, |k| copy[near(u, k, kernel.len() / 2, width)]);
            }
        },
    );
    let source = light.rgb.clone();
    light.rgb.par_chunks_mut(width).enumerate().for_each(|(v, row)| {
        for (u, out) in row.iter_mut().enumerate() {
            *out = weigh(&kernel, |k| source[near(v, k, kernel.len() / 2, height) * width + u]);
        }
    });
}

/// The same of one plane, from a kernel's first weight to its last in that order.
pub(super) fn gaussian_plane(plane: &[f32], width: usize, sigma: f64) -> Vec<f32> {
    let kernel = gaussian_kernel(sigma);
    let height = plane.len() / width;
    let half = kernel.len() / 2;
    let mut across = vec![0.0f32; plane.len()];
    across.par_chunks_mut(width).zip(plane.par_chunks(width)).for_each(|(out, line)| {
        for (u, out) in out.iter_mut().enumerate() {
            *out = kernel.iter().enumerate().map(|(k, w)| w * line[near(u, k, half, width)]).sum();
        }
    });
    let mut out = vec![0.0f32; plane.len()];
    out.par_chunks_mut(width).enumerate().for_each(|(v, out)| {
        for (k, w) in kernel.iter().enumerate() {
            let line = &across[near(v, k, half, height) * width..][..width];
            out.iter_mut().zip(line).for_each(|(o, x)| *o += w * x);
        }
    });
    out
}

/// Weights of whole-pixel steps: the Gaussian averaged over each pixel.
fn gaussian_kernel(sigma: f64) -> Vec<f32> {
    let reach = (3.5 * sigma).ceil() as i32;
    let sub = 16;
    let raw: Vec<f64> = (-reach..=reach)
        .map(|i| {
            (0..sub)
                .map(|s| {
                    let x = f64::from(i) + (f64::from(s) + 0.5) / f64::from(sub) - 0.5;
                    (-0.5 * (x / sigma).powi(2)).exp()
                })
                .sum()
        })
        .collect();
    let sum: f64 = raw.iter().sum();
    raw.iter().map(|w| (w / sum) as f32).collect()
}

/// The place of a kernel's weight `k` that reaches so far each way; beyond an edge its last pixel.
pub(super) fn near(at: usize, k: usize, reach: usize, size: usize) -> usize {
    (at + k).saturating_sub(reach).min(size - 1)
}

fn weigh(kernel: &[f32], sample: impl Fn(usize) -> [f32; 3]) -> [f32; 3] {
    let mut sum = [0.0f32; 3];
    for (k, weight) in kernel.iter().enumerate() {
        let colour = sample(k);
        for i in 0..3 {
            sum[i] += weight * colour[i];
        }
    }
    sum
}

/// Uniform motion along a straight path, centred on the middle of the exposure.
pub(super) fn motion(light: &mut Light, path_px: [f64; 2]) {
    let length = path_px[0].hypot(path_px[1]);
    if length < 0.05 {
        return;
    }
    let steps = (length * 3.0).ceil() as usize + 1;
    let (width, height) = (light.width, light.height);
    let source = light.rgb.clone();
    light.rgb.par_chunks_mut(width).enumerate().for_each(|(v, row)| {
        for (u, out) in row.iter_mut().enumerate() {
            let mut sum = [0.0f32; 3];
            for step in 0..steps {
                let t = (step as f64 + 0.5) / steps as f64 - 0.5;
                let colour = between(&source, width, height, u as f64 + t * path_px[0], v as f64 + t * path_px[1]);
                for i in 0..3 {
                    sum[i] += colour[i];
                }
            }
            *out = sum.map(|s| s / steps as f32);
        }
    });
}

fn between(source: &[[f32; 3]], width: usize, height: usize, u: f64, v: f64) -> [f32; 3] {
    let (u, v) = (u.clamp(0.0, (width - 1) as f64), v.clamp(0.0, (height - 1) as f64));
    let (i, j) = ((u as usize).min(width.saturating_sub(2)), (v as usize).min(height.saturating_sub(2)));
    let (fu, fv) = ((u - i as f64) as f32, (v - j as f64) as f32);
    let at = |di: usize, dj: usize| source[(j + dj).min(height - 1) * width + (i + di).min(width - 1)];
    let (a, b, c, d) = (at(0, 0), at(1, 0), at(0, 1), at(1, 1));
    [0, 1, 2].map(|k| (a[k] * (1.0 - fu) + b[k] * fu) * (1.0 - fv) + (c[k] * (1.0 - fu) + d[k] * fu) * fv)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn blur_keeps_the_light_and_spreads_it_by_its_variance() {
        let n = 41;
        let mut light = Light { width: n, height: n, rgb: vec![[0.0; 3]; n * n] };
        light.rgb[20 * n + 20] = [1.0; 3];
        gaussian(&mut light, 1.3);
        let moment = |power: i32| -> f64 {
            let weight = |i: usize| f64::from(light.rgb[i][0]);
            (0..n * n).map(|i| weight(i) * ((i % n) as f64 - 20.0).powi(power)).sum()
        };
        assert!((moment(0) - 1.0).abs() < 1e-5 && moment(1).abs() < 1e-5);
        // Averaging over the pixel adds 1/12; cutting the tails at 3.5 sigma takes a little.
        assert!((moment(2) - (1.3f64 * 1.3 + 1.0 / 12.0)).abs() < 0.02, "{}", moment(2));
    }

    #[test]
    fn motion_spreads_along_its_path_and_stays_centred() {
        let n = 31;
        let mut light = Light { width: n, height: n, rgb: vec![[0.0; 3]; n * n] };
        light.rgb[15 * n + 15] = [1.0; 3];
        motion(&mut light, [6.0, 0.0]);
        let row: Vec<f64> = (0..n).map(|u| f64::from(light.rgb[15 * n + u][0])).collect();
        let mean: f64 = row.iter().enumerate().map(|(u, w)| w * (u as f64 - 15.0)).sum();
        let square: f64 = row.iter().enumerate().map(|(u, w)| w * (u as f64 - 15.0).powi(2)).sum();
        assert!((row.iter().sum::<f64>() - 1.0).abs() < 1e-5 && mean.abs() < 1e-5);
        // Variance of a uniform path: length^2 / 12, plus up to 1/4 of linear interpolation.
        assert!((square - 3.0).abs() < 0.3, "{square}");
    }
}
