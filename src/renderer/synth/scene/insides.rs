//! One phone's insides, with every strength drawn.

use super::insides_spec::{Denoise, Strength};
use super::{PhotoSpec, Processing, Scene};
use crate::synth::place::{Purpose, normal, uniform};

/// How a phone develops, drawn from a scene's `[insides]`; [`Insides::default`] does nothing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Insides {
    /// Each pixel measures one colour.
    pub mosaic: bool,
    /// How much larger red is, as a share.
    pub fringes: f64,
    /// Factor on the sensor's noise.
    pub noise: f64,
    /// Frames that are merged.
    pub frames: u32,
    /// Error of each frame's registration, 1 sigma, px.
    pub frame_shift_px: f64,
    /// How far the picture wanders over the sensor between merged frames, 1 sigma, px.
    pub frame_drift_px: f64,
    /// How unequally the pixels answer, standard deviation as a share.
    pub pattern: f64,
    /// Which sensor it is.
    pub sensor: u64,
    /// How noise is taken out.
    pub denoise: Denoise,
    /// Differences that count as noise.
    pub denoise_reach: f64,
    /// Sigma of the colours' blur, px.
    pub colour_blur_px: f64,
    /// Share by which large differences are compressed.
    pub tone_compression: f64,
    /// Factor on small ones.
    pub tone_detail: f64,
    /// Sharpening; none: the processing's.
    pub sharpening: Option<f64>,
    /// Sigma of its blur, px.
    pub sharpening_radius_px: f64,
    /// The most that it changes a display value by.
    pub sharpening_clamp: f64,
    /// JPEG quality; none: the processing's.
    pub jpeg_quality: Option<u8>,
}

impl Default for Insides {
    fn default() -> Self {
        Insides {
            mosaic: false,
            fringes: 0.0,
            noise: 1.0,
            frames: 1,
            frame_shift_px: 0.0,
            frame_drift_px: 0.0,
            pattern: 0.0,
            sensor: 0,
            denoise: Denoise::None,
            denoise_reach: 0.03,
            colour_blur_px: 0.0,
            tone_compression: 0.0,
            tone_detail: 1.0,
            sharpening: None,
            sharpening_radius_px: 1.2,
            sharpening_clamp: 1.0,
            jpeg_quality: None,
        }
    }
}

impl Insides {
    /// Whether the light is mapped anew from place to place.
    pub(crate) fn maps_tones(&self) -> bool {
        self.tone_compression > 0.0 || (self.tone_detail - 1.0).abs() > 1e-9
    }
}

/// What hand and stabiliser do while one photo is taken.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(crate) struct Handling {
    /// About the stored grid's axes: right, down, ahead; degrees per second.
    pub(crate) turn_deg_s: [f64; 3],
    /// From the first row's moment to the last one's, seconds.
    pub(crate) readout_s: f64,
    /// Shift of the principal point, px of the camera's own grid.
    pub(crate) shift_px: [f64; 2],
}

impl Scene {
    /// How the scene's phone develops.
    pub fn insides(&self) -> Insides {
        let keys = self.spec.insides.complete();
        let off = Insides::default();
        // Each key has a number of its own: adding one to a scene leaves the others as they were.
        let draw = |key: u64, strength: Option<Strength>| {
            strength.map(|s| s.at(uniform(self.spec.seed, Purpose::Insides, 0, key)))
        };
        Insides {
            mosaic: keys.mosaic.unwrap_or(off.mosaic),
            fringes: draw(0, keys.fringes).unwrap_or(off.fringes),
            noise: draw(1, keys.noise).unwrap_or(off.noise),
            frames: draw(2, keys.frames).map_or(off.frames, |n| n.round().max(1.0) as u32),
            frame_shift_px: draw(3, keys.frame_shift_px).unwrap_or(off.frame_shift_px),
            frame_drift_px: draw(15, keys.frame_drift_px).unwrap_or(off.frame_drift_px),
            pattern: draw(16, keys.pattern).unwrap_or(off.pattern),
            sensor: keys.sensor.unwrap_or(off.sensor),
            denoise: keys.denoise.unwrap_or(off.denoise),
            denoise_reach: draw(4, keys.denoise_reach).unwrap_or(off.denoise_reach),
            colour_blur_px: draw(14, keys.colour_blur_px).unwrap_or(off.colour_blur_px),
            tone_compression: draw(5, keys.tone_compression).unwrap_or(off.tone_compression),
            tone_detail: draw(6, keys.tone_detail).unwrap_or(off.tone_detail),
            sharpening: draw(7, keys.sharpening),
            sharpening_radius_px: draw(8, keys.sharpening_radius_px).unwrap_or(off.sharpening_radius_px),
            sharpening_clamp: draw(9, keys.sharpening_clamp).unwrap_or(off.sharpening_clamp),
            jpeg_quality: draw(10, keys.jpeg_quality).map(|q| q.round().clamp(1.0, 100.0) as u8),
        }
    }

    /// What hand and stabiliser do in a photo: as the photo says, else drawn.
    pub(crate) fn handling(&self, index: usize, photo: &PhotoSpec) -> Handling {
        let keys = self.spec.insides.complete();
        let seed = self.spec.seed;
        let of = |strength: Option<Strength>, key: u64| {
            strength.map_or(0.0, |s| s.at(uniform(seed, Purpose::Insides, 0, key)))
        };
        let (turn, readout, shift) = (of(keys.turn_deg_s, 11), of(keys.readout_s, 12), of(keys.stabiliser_deg, 13));
        let step = |n: u64| normal(seed, Purpose::Hand, index as u64, n);
        let px = |i: usize| self.camera.lens.focal_px[i] * shift.to_radians().tan();
        Handling {
            turn_deg_s: photo.turn_deg_s.unwrap_or_else(|| [0, 1, 2].map(|n| turn * step(n))),
            readout_s: photo.readout_s.unwrap_or(readout),
            shift_px: photo.stabiliser_shift_px.unwrap_or_else(|| [0, 1].map(|i| px(i) * step(3 + i as u64))),
        }
    }

    /// The quality that a photo is compressed with.
    pub(crate) fn jpeg_quality(&self, processing: &Processing) -> u8 {
        self.insides().jpeg_quality.unwrap_or(processing.jpeg_quality)
    }
}
