//! Tone mapping that looks at a pixel's surroundings.

use rayon::prelude::*;

use crate::synth::trace::Light;

/// Width of the base layer's blur, share of the picture's longer side (as in the paper).
const BASE_SHARE: f64 = 0.02;
/// Differences beyond which two places are different surfaces, stops (the paper: .4 in the decimal logarithm).
const RANGE_STOPS: f32 = 1.33;
/// Sigma of the base layer's blur in its own cells: it is so smooth that it is computed on a coarser grid.
const BASE_CELLS: f64 = 6.0;
/// Darker light counts as this, share of full scale.
const DARKEST: f32 = 1e-3;
/// Where the brightest hundredth is brought to, and from where on light is rolled off.
const BRIGHT: f32 = 0.9;
const SHOULDER: f32 = 0.7;

/// Fast bilateral tone mapping (Durand and Dorsey, Fast bilateral filtering for
/// the display of high-dynamic-range images, 2002): the logarithm of luma is
/// split by a bilateral filter into a base and the rest; the base's distance
/// from its mean is compressed, the rest is multiplied.
pub(super) fn local_tone(light: &mut Light, compression: f32, detail: f32) {
    map_tones(light, compression, detail);
    brighten(light);
}

fn map_tones(light: &mut Light, compression: f32, detail: f32) {
    let logs: Vec<f32> = light.rgb.par_iter().map(|c| (luma(c).max(0.0) + DARKEST).log2()).collect();
    let base = base_layer(&logs, light.width);
    let mean = base.iter().map(|b| f64::from(*b)).sum::<f64>() / base.len().max(1) as f64;
    let mean = mean as f32;
    light.rgb.par_iter_mut().zip(&logs).zip(&base).for_each(|((c, log), base)| {
        let wanted = mean + (base - mean) * (1.0 - compression) + (log - base) * detail;
        let gain = (wanted - log).exp2();
        *c = c.map(|x| x * gain);
    });
}

fn luma(c: &[f32; 3]) -> f32 {
    0.299 * c[0] + 0.587 * c[1] + 0.114 * c[2]
}

/// Light above the shoulder never reaches full scale: x / (1 + x) there
/// (Reinhard et al., Photographic tone reproduction for digital images, 2002).
fn roll_off(x: f32) -> f32 {
    let above = (x - SHOULDER) / (1.0 - SHOULDER);
    if above <= 0.0 { x } else { SHOULDER + (1.0 - SHOULDER) * above / (1.0 + above) }
}

/// Brings the brightest hundredth to the same place in every picture, so that white paper keeps its texture.
fn brighten(light: &mut Light) {
    let mut brightest: Vec<f32> = light.rgb.iter().step_by(7).map(|c| c[0].max(c[1]).max(c[2])).collect();
    let rank = brightest.len() * 99 / 100;
    if brightest.is_empty() {
        return;
    }
    let (_, bright, _) = brightest.select_nth_unstable_by(rank, f32::total_cmp);
    let gain = BRIGHT / bright.max(DARKEST);
    light.rgb.par_iter_mut().for_each(|c| *c = c.map(|x| roll_off(x * gain)));
}

/// The smooth part of a plane that does not cross its large steps.
fn base_layer(plane: &[f32], width: usize) -> Vec<f32> {
    let height = plane.len() / width;
    let sigma_px = BASE_SHARE * width.max(height) as f64;
    let cell = ((sigma_px / BASE_CELLS).round() as usize).max(1);
    let (columns, rows) = (width.div_ceil(cell), height.div_ceil(cell));
    let cells: Vec<f32> = (0..columns * rows)
        .into_par_iter()
        .map(|i| {
            let (u, v) = (i % columns * cell, i / columns * cell);
            let (right, bottom) = ((u + cell).min(width), (v + cell).min(height));
            let sum: f32 = (v..bottom).map(|v| plane[v * width + u..v * width + right].iter().sum::<f32>()).sum();
            sum / ((right - u) * (bottom - v)) as f32
        })
        .collect();
    let smooth = bilateral_cells(&cells, columns, (sigma_px / cell as f64) as f32);
    let place = |p: usize, n: usize| {
        let g = ((p as f32 + 0.5) / cell as f32 - 0.5).clamp(0.0, n as f32 - 1.0);
        (g as usize, (g as usize + 1).min(n - 1), g.fract())
    };
    let mut out = vec![0.0f32; plane.len()];
    out.par_chunks_mut(width).enumerate().for_each(|(v, line)| {
        let (above, below, fv) = place(v, rows);
        for (u, out) in line.iter_mut().enumerate() {
            let (left, right, fu) = place(u, columns);
            let at = |row: usize| smooth[row * columns + left] * (1.0 - fu) + smooth[row * columns + right] * fu;
            *out = at(above) * (1.0 - fv) + at(below) * fv;
        }
    });
    out
}

/// A bilateral filter of two sigmas' reach over a coarse grid.
fn bilateral_cells(cells: &[f32], columns: usize, sigma: f32) -> Vec<f32> {
    let rows = cells.len() / columns;
    let reach = (2.0 * sigma).ceil() as usize;
    let side = 2 * reach + 1;
    let place: Vec<f32> = (0..side).map(|k| (-0.5 * ((k as f32 - reach as f32) / sigma).powi(2)).exp()).collect();
    let scale = 0.5 / (RANGE_STOPS * RANGE_STOPS);
    (0..cells.len())
        .into_par_iter()
        .map(|i| {
            let (u, v) = (i % columns, i / columns);
            let own = cells[i];
            let (mut sum, mut weights) = (0.0f32, 0.0f32);
            for row in v.saturating_sub(reach)..=(v + reach).min(rows - 1) {
                for column in u.saturating_sub(reach)..=(u + reach).min(columns - 1) {
                    let other = cells[row * columns + column];
                    let near = place[row + reach - v] * place[column + reach - u];
                    let w = near * (-(other - own).powi(2) * scale).exp();
                    sum += w * other;
                    weights += w;
                }
            }
            sum / weights
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const WIDTH: usize = 400;

    /// Two large patches, `stops` apart, with fine stripes of a tenth of a stop.
    fn patches(stops: f32) -> Light {
        let value = |i: usize| {
            let (u, v) = (i % WIDTH, i / WIDTH);
            let level = if u < WIDTH / 2 { -2.0 } else { -2.0 + stops };
            let stripe = if v % 2 == 0 { 0.05 } else { -0.05 };
            [(level + stripe).exp2(); 3]
        };
        Light { width: WIDTH, height: 200, rgb: (0..WIDTH * 200).map(value).collect() }
    }

    fn log_at(light: &Light, u: usize, v: usize) -> f32 {
        luma(&light.rgb[v * WIDTH + u]).log2()
    }

    #[test]
    fn large_differences_are_compressed_and_small_ones_multiplied_as_told() {
        // Far beyond the range sigma: the filter gives the other patch hardly any weight.
        let (stops, compression, detail) = (7.0f32, 0.4f32, 1.5f32);
        let mut light = patches(stops);
        let before = light.clone();
        map_tones(&mut light, compression, detail);
        let between = |l: &Light| {
            let level = |u| 0.5 * (log_at(l, u, 100) + log_at(l, u, 101));
            level(330) - level(70)
        };
        let ratio = between(&light) / between(&before);
        assert!((ratio - (1.0 - compression)).abs() < 0.015, "{ratio}");
        let stripe = |l: &Light| log_at(l, 70, 100) - log_at(l, 70, 101);
        let ratio = stripe(&light) / stripe(&before);
        assert!((ratio - detail).abs() < 0.02, "{ratio}");
    }

    #[test]
    fn nothing_to_compress_changes_nothing() {
        let mut light = patches(2.0);
        let before = light.clone();
        map_tones(&mut light, 0.0, 1.0);
        assert!(light.rgb.iter().zip(&before.rgb).all(|(a, b)| (a[1] / b[1] - 1.0).abs() < 1e-4));
    }

    #[test]
    fn white_stays_below_full_scale_and_in_order() {
        let mut light = patches(5.0);
        light.rgb[WIDTH * 90 + 380] = [900.0; 3];
        let before = light.clone();
        brighten(&mut light);
        assert!(light.rgb.iter().flatten().all(|x| *x < 1.0));
        let at = |l: &Light, u: usize, v: usize| l.rgb[WIDTH * v + u][1];
        for (dark, bright) in [((330, 101), (330, 100)), ((330, 100), (380, 90)), ((70, 100), (330, 101))] {
            let ordered = |l: &Light| at(l, dark.0, dark.1) < at(l, bright.0, bright.1);
            assert!(ordered(&before) && ordered(&light));
        }
        // Two thirds of the way from the shoulder to full scale: two fifths of it are left.
        assert!((at(&light, 330, 100) - (0.7 + 0.3 * 0.4)).abs() < 1e-3, "{}", at(&light, 330, 100));
    }
}
