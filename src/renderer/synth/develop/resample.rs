//! What moves light by parts of a pixel: colour fringes and merged frames.

use rayon::prelude::*;

use super::blur::near;
use crate::synth::trace::{Light, mix, normal_pair};

/// Share of red and blue in luma (ITU-R BT.601).
const RED: f64 = 0.299;
const BLUE: f64 = 0.114;
/// No frame is off by more, px: what a phone can't register it leaves out.
const FARTHEST_PX: f32 = 3.0;

/// Weights of the pixels at -1, 0, 1, 2 for a place `t` after pixel 0 (Keys,
/// Cubic convolution interpolation for digital image processing, 1981, a = -1/2).
fn cubic(t: f32) -> [f32; 4] {
    let near = |x: f32| (1.5 * x - 2.5) * x * x + 1.0;
    let far = |x: f32| ((-0.5 * x + 2.5) * x - 4.0) * x + 2.0;
    [far(1.0 + t), near(t), near(1.0 - t), far(2.0 - t)]
}

/// Four neighbours and their weights.
type Taps = ([usize; 4], [f32; 4]);

/// For each of `n` places: where a picture that is `factor` times as large about its middle has its light from.
fn scaled_taps(n: usize, factor: f64) -> Vec<Taps> {
    let middle = 0.5 * (n as f64 - 1.0);
    (0..n)
        .map(|i| {
            let from = middle + (i as f64 - middle) / factor;
            let base = from.floor();
            let places = [-1.0, 0.0, 1.0, 2.0].map(|k| (base + k).clamp(0.0, n as f64 - 1.0) as usize);
            (places, cubic((from - base) as f32))
        })
        .collect()
}

/// Lateral colour that a phone's correction leaves over (Mallon and Whelan,
/// Calibration and removal of lateral chromatic aberration in images, 2007:
/// a radial scale of each colour against green does nearly all of it): red
/// `1 + share` times as large, blue smaller by so much that luma's mean stays.
pub(super) fn fringes(light: &mut Light, share: f64) {
    if share == 0.0 {
        return;
    }
    for (channel, factor) in [(0, 1.0 + share), (2, 1.0 - share * RED / BLUE)] {
        let (width, height) = (light.width, light.height);
        let (columns, rows) = (scaled_taps(width, factor), scaled_taps(height, factor));
        let source: Vec<f32> = light.rgb.par_iter().map(|c| c[channel]).collect();
        light.rgb.par_chunks_mut(width).zip(&rows).for_each(|(line, (places, down))| {
            let upright: Vec<f32> =
                (0..width).map(|u| (0..4).map(|k| down[k] * source[places[k] * width + u]).sum()).collect();
            for (out, (places, across)) in line.iter_mut().zip(&columns) {
                out[channel] = (0..4).map(|k| across[k] * upright[places[k]]).sum();
            }
        });
    }
}

/// How far each of `n` frames is off after registration, px. The mean is taken
/// away: what all frames share is where the picture is.
fn registration(n: u32, sigma: f64, counter: u64) -> Vec<[f32; 2]> {
    let draw = |i: u32| normal_pair(mix(counter.wrapping_add(u64::from(i)))).map(|x| x * sigma as f32);
    let all: Vec<[f32; 2]> = (0..n).map(draw).collect();
    let mean = [0, 1].map(|k| all.iter().map(|s| s[k]).sum::<f32>() / n as f32);
    all.iter().map(|s| [0, 1].map(|k| (s[k] - mean[k]).clamp(-FARTHEST_PX, FARTHEST_PX))).collect()
}

/// The mean of `n` frames that are a little off each other (Hasinoff et al.,
/// Burst photography for high dynamic range and low-light imaging on mobile
/// cameras, 2016); their noise is the sensor's business.
pub(super) fn merge(light: &mut Light, n: u32, sigma_px: f64, counter: u64) {
    if n < 2 || sigma_px <= 0.0 {
        return;
    }
    merge_shifted(light, &registration(n, sigma_px, counter));
}

fn merge_shifted(light: &mut Light, shifts: &[[f32; 2]]) {
    let farthest = shifts.iter().flatten().fold(0.0f32, |a, s| a.max(s.abs()));
    let reach = farthest.ceil() as usize + 2;
    let side = 2 * reach + 1;
    let mut kernel = vec![0.0f32; side * side];
    for [du, dv] in shifts {
        // Content moved by d comes from p - d.
        let line = |d: f32| {
            let base = (-d).floor();
            (reach as i32 + base as i32 - 1, cubic(-d - base))
        };
        let ((u, across), (v, down)) = (line(*du), line(*dv));
        for (j, wv) in down.iter().enumerate() {
            for (i, wu) in across.iter().enumerate() {
                kernel[(v as usize + j) * side + u as usize + i] += wv * wu / shifts.len() as f32;
            }
        }
    }
    let (width, height) = (light.width, light.height);
    let source = light.rgb.clone();
    light.rgb.par_chunks_mut(width).enumerate().for_each(|(v, line)| {
        line.fill([0.0; 3]);
        for (j, weights) in kernel.chunks(side).enumerate() {
            let row = &source[near(v, j, reach, height) * width..][..width];
            for (i, weight) in weights.iter().enumerate().filter(|(_, w)| **w != 0.0) {
                for (u, out) in line.iter_mut().enumerate() {
                    let from = row[near(u, i, reach, width)];
                    *out = [0, 1, 2].map(|k| out[k] + weight * from[k]);
                }
            }
        }
    });
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ramp(width: usize, height: usize) -> Light {
        let rgb = (0..width * height)
            .map(|i| {
                let (u, v) = ((i % width) as f32, (i / width) as f32);
                [0.2 + 0.003 * u - 0.001 * v, 0.5 + 0.002 * v, 0.9 - 0.002 * u]
            })
            .collect();
        Light { width, height, rgb }
    }

    fn moment(light: &Light, channel: usize) -> [f64; 2] {
        let mut sum = [0.0; 3];
        for (i, c) in light.rgb.iter().enumerate() {
            let w = f64::from(c[channel]);
            let place = [1.0, (i % light.width) as f64, (i / light.width) as f64];
            sum.iter_mut().zip(place).for_each(|(s, p)| *s += w * p);
        }
        [sum[1] / sum[0], sum[2] / sum[0]]
    }

    /// A round spot, wide enough that cubic interpolation keeps its centre.
    fn spot(width: usize, height: usize, at: [f32; 2]) -> Light {
        let value = |i: usize| {
            let (u, v) = ((i % width) as f32 - at[0], (i / width) as f32 - at[1]);
            [(-0.5 * (u * u + v * v) / 9.0).exp(); 3]
        };
        Light { width, height, rgb: (0..width * height).map(value).collect() }
    }

    #[test]
    fn fringes_move_red_outwards_and_blue_inwards_and_luma_not_at_all() {
        let (middle, place) = ([99.5, 74.5], [150.0f32, 110.0]);
        let mut light = spot(200, 150, place);
        let share = 0.004;
        fringes(&mut light, share);
        for axis in 0..2 {
            let off = f64::from(place[axis]) - middle[axis];
            let moved = [0, 1, 2].map(|c| moment(&light, c)[axis] - f64::from(place[axis]));
            assert!((moved[0] - share * off).abs() < 1e-3, "{moved:?}");
            assert!(moved[1].abs() < 1e-6);
            assert!((moved[2] + share * off * RED / BLUE).abs() < 1e-3, "{moved:?}");
            let luma = RED * moved[0] + BLUE * moved[2];
            assert!(luma.abs() < 5e-4, "{luma}");
        }
    }

    #[test]
    fn merging_keeps_even_ramps_and_the_centre_and_spreads_by_the_shifts_variance() {
        let mut light = ramp(60, 40);
        let before = light.clone();
        merge(&mut light, 5, 0.3, 77);
        for v in 8..32 {
            for u in 8..52 {
                let (a, b) = (light.rgb[v * 60 + u], before.rgb[v * 60 + u]);
                assert!((0..3).all(|k| (a[k] - b[k]).abs() < 2e-6));
            }
        }
        let mut light = spot(90, 90, [45.0, 44.0]);
        merge(&mut light, 6, 0.4, 5);
        let [u, v] = moment(&light, 1);
        assert!((u - 45.0).abs() < 1e-4 && (v - 44.0).abs() < 1e-4, "{u} {v}");
        // Two frames a pixel apart: the mean of both.
        let mut light = spot(90, 90, [45.0, 44.0]);
        merge_shifted(&mut light, &[[-0.5, 0.0], [0.5, 0.0]]);
        let variance: f64 = (0..8100).map(|i| f64::from(light.rgb[i][0]) * ((i % 90) as f64 - 45.0).powi(2)).sum();
        let total: f64 = light.rgb.iter().map(|c| f64::from(c[0])).sum();
        assert!((variance / total - 9.25).abs() < 0.01, "{}", variance / total);
    }
}
