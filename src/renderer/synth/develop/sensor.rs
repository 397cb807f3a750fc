//! Exposure, vignetting and sensor noise, still in linear light.

use rayon::prelude::*;

use super::mosaic::mosaic;
use super::pattern::Pattern;
use super::{blur, resample};
use crate::synth::scene::{Insides, Processing};
use crate::synth::trace::{Light, mix, normal_pair};

/// Mean of the picture after automatic exposure, share of full scale.
const KEY: f32 = 0.185;

/// What one photo's exposure is made of.
#[derive(Debug, Clone)]
pub(crate) struct Exposure<'a> {
    /// The camera's processing.
    pub(crate) processing: &'a Processing,
    /// The phone's insides.
    pub(crate) insides: &'a Insides,
    /// Brighter or darker than automatic, stops.
    pub(crate) stops: f64,
    /// Path of the picture during the exposure, px.
    pub(crate) motion_px: [f64; 2],
    /// Start of this photo's random numbers.
    pub(crate) counter: u64,
    /// Start of those of its frames.
    pub(crate) frames: u64,
}

/// Exposes the sensor: full scale is one.
pub(crate) fn expose(light: &mut Light, exposure: &Exposure<'_>) {
    let gain = automatic_gain(light) * exposure.stops.exp2() as f32;
    blur::motion(light, exposure.motion_px);
    blur::gaussian(light, exposure.processing.blur_px);
    resample::fringes(light, exposure.insides.fringes);
    resample::merge(light, exposure.insides.frames, exposure.insides.frame_shift_px, exposure.frames);
    let p = exposure.processing;
    // The mean of equal frames has the noise of one over the root of their number.
    let loud = (exposure.insides.noise / f64::from(exposure.insides.frames).sqrt()) as f32;
    let (width, height) = (light.width, light.height);
    let middle = [0.5 * (width as f64 - 1.0), 0.5 * (height as f64 - 1.0)];
    let corner2 = middle[0].powi(2) + middle[1].powi(2);
    let balance = p.white_balance.map(|w| w as f32);
    let pattern = Pattern::of(exposure.insides, exposure.frames);
    light.rgb.par_chunks_mut(width).enumerate().for_each(|(v, row)| {
        for (u, out) in row.iter_mut().enumerate() {
            let r2 = ((u as f64 - middle[0]).powi(2) + (v as f64 - middle[1]).powi(2)) / corner2.max(1.0);
            let scale = gain * (1.0 - p.vignetting * r2) as f32;
            let pixel = (v * width + u) as u64;
            let noise = noise_of(p, exposure.counter, pixel);
            let own = pattern.as_ref().map_or([1.0; 3], |p| p.gain(u, v));
            for i in 0..3 {
                let level = out[i] * scale * own[i];
                out[i] = balance[i] * (level + loud * noise(i, level));
            }
        }
    });
    if exposure.insides.mosaic {
        mosaic(light);
    }
}

/// The gain that brings the mean to the key value; very bright spots count little.
fn automatic_gain(light: &Light) -> f32 {
    let luma = |c: &[f32; 3]| 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2];
    let n = light.rgb.len().max(1) as f64;
    let mean = light.rgb.iter().map(|c| f64::from(luma(c))).sum::<f64>() / n;
    let capped = light.rgb.iter().map(|c| f64::from(luma(c)).min(3.0 * mean)).sum::<f64>() / n;
    KEY / (capped as f32).max(1e-6)
}

/// Noise of one pixel by channel and level: shot noise of the electrons and read noise.
fn noise_of(p: &Processing, counter: u64, pixel: u64) -> impl Fn(usize, f32) -> f32 {
    let shot = if p.full_well > 0.0 { 1.0 / p.full_well as f32 } else { 0.0 };
    let read = p.read_noise as f32;
    let quiet = shot <= 0.0 && read <= 0.0;
    let draws = match quiet {
        true => [0.0; 4],
        false => {
            let base = mix(counter ^ mix(pixel));
            let ([a, b], [c, d]) = (normal_pair(base), normal_pair(base ^ 0x5555));
            [a, b, c, d]
        }
    };
    move |channel, level| draws[channel] * (level.max(0.0) * shot + read * read).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn noise_has_the_stated_variance_and_is_the_same_for_the_same_counter() {
        let processing =
            Processing { full_well: 1000.0, read_noise: 0.01, vignetting: 0.0, blur_px: 0.0, ..Processing::none() };
        let shoot_with = |counter, insides: &Insides| {
            let mut light = Light { width: 400, height: 400, rgb: vec![[0.4; 3]; 160_000] };
            let exposure =
                Exposure { processing: &processing, insides, stops: 0.0, motion_px: [0.0; 2], counter, frames: 3 };
            expose(&mut light, &exposure);
            light
        };
        let shoot = |counter| shoot_with(counter, &Insides::default());
        let light = shoot(7);
        let spread = |light: &Light| {
            let values: Vec<f64> = light.rgb.iter().map(|c| f64::from(c[1])).collect();
            let mean = values.iter().sum::<f64>() / values.len() as f64;
            (mean, values.iter().map(|v| (v - mean).powi(2)).sum::<f64>() / values.len() as f64)
        };
        let (mean, variance) = spread(&light);
        let wanted = f64::from(KEY) / 1000.0 + 1e-4;
        assert!((mean - f64::from(KEY)).abs() < 2e-4, "{mean}");
        assert!((variance / wanted - 1.0).abs() < 0.02, "{variance} {wanted}");
        assert_eq!(light, shoot(7));
        assert_ne!(light, shoot(8));
        // The mean of nine frames of six times the noise: twice that of one.
        let merged = shoot_with(7, &Insides { noise: 6.0, frames: 9, ..Insides::default() });
        let (_, variance) = spread(&merged);
        assert!((variance / (4.0 * wanted) - 1.0).abs() < 0.02, "{variance} {wanted}");
    }
}
