//! From linear light to display values: tone curve, noise reduction, sharpening.

use rayon::prelude::*;

use super::blur::gaussian_plane;
use super::denoise::{bilateral, non_local_means};
use super::halo::unsharp;
use super::local_tone::local_tone;
use crate::synth::scene::{Denoise, Insides, Processing};
use crate::synth::trace::Light;

/// A finished picture, 8 bits per channel, row by row.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Picture {
    /// Width in pixels.
    pub width: usize,
    /// Height in pixels.
    pub height: usize,
    /// Red, green, blue.
    pub rgb: Vec<[u8; 3]>,
}

impl Picture {
    /// Luma by ITU-R BT.601 weights, as a JPEG's Y has it.
    pub fn luma(&self) -> Vec<u8> {
        let luma =
            |[r, g, b]: &[u8; 3]| (0.299 * f32::from(*r) + 0.587 * f32::from(*g) + 0.114 * f32::from(*b)).round() as u8;
        self.rgb.iter().map(luma).collect()
    }
}

/// Display value of linear light (IEC 61966-2-1).
pub(super) fn srgb(linear: f32) -> f32 {
    if linear <= 0.003_130_8 { 12.92 * linear } else { 1.055 * linear.powf(1.0 / 2.4) - 0.055 }
}

/// Develops exposed light.
pub(crate) fn develop(mut light: Light, p: &Processing, insides: &Insides) -> Picture {
    if insides.maps_tones() {
        local_tone(&mut light, insides.tone_compression as f32, insides.tone_detail as f32);
    }
    let (width, height) = (light.width, light.height);
    let mut display = light.rgb;
    let contrast = p.contrast as f32;
    let curve = |v: f32| {
        let v = v.clamp(0.0, 1.0);
        let v = if p.srgb { srgb(v) } else { v };
        v + contrast * (v * v * (3.0 - 2.0 * v) - v)
    };
    display.par_iter_mut().for_each(|c| *c = c.map(curve));
    let luma: Vec<f32> = display.par_iter().map(|[r, g, b]| 0.299 * r + 0.587 * g + 0.114 * b).collect();
    if insides.colour_blur_px > 0.02 {
        blur_colours(&mut display, &luma, width, insides.colour_blur_px);
    }
    let reach = insides.denoise_reach as f32;
    let quiet = match insides.denoise {
        Denoise::Bilateral => bilateral(&luma, width, reach),
        Denoise::NonLocalMeans => non_local_means(&luma, width, reach),
        Denoise::None if p.noise_reduction > 0.0 => reduce_noise(&luma, width, p),
        Denoise::None => luma.clone(),
    };
    let sharp = match insides.sharpening {
        Some(s) => {
            let (radius, clamp) = (insides.sharpening_radius_px, insides.sharpening_clamp as f32);
            unsharp(&quiet, width, s as f32, radius, clamp)
        }
        None if p.sharpening > 0.0 => sharpen(&quiet, width, p.sharpening as f32),
        None => quiet,
    };
    let quantise = |v: f32| (v * 255.0).round().clamp(0.0, 255.0) as u8;
    let finish = |(i, c): (usize, &[f32; 3])| {
        let change = sharp[i] - luma[i];
        c.map(|v| quantise(v + change))
    };
    Picture { width, height, rgb: display.par_iter().enumerate().map(finish).collect() }
}

/// Blurs what a picture has besides its luma: an eye hardly sees it, and noise
/// is mostly there (the colour-difference signals of ITU-R BT.601).
fn blur_colours(display: &mut [[f32; 3]], luma: &[f32], width: usize, sigma: f64) {
    let plane = |channel: usize| -> Vec<f32> { display.iter().zip(luma).map(|(c, y)| c[channel] - y).collect() };
    let [red, blue] = [0, 2].map(|channel| gaussian_plane(&plane(channel), width, sigma));
    display.par_iter_mut().enumerate().for_each(|(i, c)| {
        let green = -(0.299 * red[i] + 0.114 * blue[i]) / 0.587;
        *c = [red[i], green, blue[i]].map(|d| luma[i] + d);
    });
}

/// Averages neighbours that differ by no more than noise does (Lee 1983, sigma filter).
fn reduce_noise(luma: &[f32], width: usize, p: &Processing) -> Vec<f32> {
    let strength = p.noise_reduction as f32;
    let reach = 0.035f32;
    near(luma, width, |window| {
        let own = window[4];
        let (mut sum, mut weight) = (0.0f32, 0.0f32);
        for v in window {
            let w = (1.0 - ((v - own) / reach).powi(2)).max(0.0);
            sum += w * v;
            weight += w;
        }
        own + strength * (sum / weight - own)
    })
}

/// Unsharp mask with a 3 x 3 binomial blur.
fn sharpen(luma: &[f32], width: usize, strength: f32) -> Vec<f32> {
    const BINOMIAL: [f32; 9] = [1.0, 2.0, 1.0, 2.0, 4.0, 2.0, 1.0, 2.0, 1.0];
    near(luma, width, |window| {
        let blurred: f32 = window.iter().zip(BINOMIAL).map(|(v, w)| v * w / 16.0).sum();
        window[4] + strength * 2.0 * (window[4] - blurred)
    })
}

/// A function of each pixel's 3 x 3 neighbourhood, edges repeated.
fn near(values: &[f32], width: usize, f: impl Fn(&[f32; 9]) -> f32 + Sync) -> Vec<f32> {
    let height = values.len() / width;
    let mut out = vec![0.0f32; values.len()];
    out.par_chunks_mut(width).enumerate().for_each(|(v, row)| {
        let rows = [v.saturating_sub(1), v, (v + 1).min(height - 1)].map(|r| &values[r * width..(r + 1) * width]);
        for (u, out) in row.iter_mut().enumerate() {
            let columns = [u.saturating_sub(1), u, (u + 1).min(width - 1)];
            let window = std::array::from_fn(|i| rows[i / 3][columns[i % 3]]);
            *out = f(&window);
        }
    });
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn srgb_follows_the_standard() {
        // IEC 61966-2-1: both branches meet at 0.0031308; 0.2140 linear is 0.5 displayed.
        assert!((srgb(0.003_130_8) - 0.040_45).abs() < 1e-5);
        assert!((srgb(0.214_041) - 0.5).abs() < 1e-5);
    }

    #[test]
    fn without_processing_the_light_is_only_rounded() {
        let light = Light { width: 3, height: 1, rgb: vec![[0.0; 3], [0.5; 3], [1.0, 0.2, 2.0]] };
        let picture = develop(light, &Processing::none(), &Insides::default());
        assert_eq!(picture.rgb, [[0; 3], [128; 3], [255, 51, 255]]);
    }

    #[test]
    fn blurred_colours_keep_the_luma_and_lose_their_noise() {
        let noise = |i: usize| crate::synth::trace::normal_pair(i as u64);
        let light = Light {
            width: 60,
            height: 60,
            rgb: (0..3600).map(|i| [0.5 + 0.05 * noise(i)[0], 0.5, 0.5 + 0.05 * noise(i)[1]]).collect(),
        };
        let luma = |p: &Picture| -> Vec<f32> {
            p.rgb.iter().map(|c| 0.299 * f32::from(c[0]) + 0.587 * f32::from(c[1]) + 0.114 * f32::from(c[2])).collect()
        };
        let colour = |p: &Picture| -> f32 {
            p.rgb.iter().map(|c| (f32::from(c[0]) - f32::from(c[2])).powi(2)).sum::<f32>().sqrt() / 60.0
        };
        let plain = develop(light.clone(), &Processing::none(), &Insides::default());
        let quiet = develop(light, &Processing::none(), &Insides { colour_blur_px: 1.5, ..Insides::default() });
        // Each channel is rounded to whole levels.
        assert!(luma(&plain).iter().zip(luma(&quiet)).all(|(a, b)| (a - b).abs() <= 1.0));
        // White noise after a Gaussian: 1 / (2 sqrt(pi) sigma) of it, one fifth, and what rounding adds.
        let left = colour(&quiet) / colour(&plain);
        assert!((0.15..0.25).contains(&left), "{left}");
    }

    #[test]
    fn sharpening_overshoots_an_edge_on_both_sides() {
        let luma = [0.2f32, 0.2, 0.2, 0.8, 0.8, 0.8].repeat(3);
        let sharp = sharpen(&luma, 6, 0.5);
        assert!(sharp[8] < 0.2 && sharp[9] > 0.8);
        assert!((sharp[7] - 0.2).abs() < 1e-6);
    }
}
