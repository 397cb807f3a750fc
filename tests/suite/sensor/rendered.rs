//! Photos of sensors that are known, rendered.

use baywitness::photo::{self, Luma};
use baywitness::synth::{InsidesSpec, LinearPicture, PhotoSpec, Scene, Strength};
use jpeg_encoder::{ColorType, Encoder, SamplingFactor};
use rayon::prelude::*;

use crate::staged;

/// How unequally the pixels of the rendered sensors answer, as a share.
pub(super) const STRENGTH: f64 = 0.007;

/// A bay seen from so many places, and the light of each photo.
pub(super) struct Lit {
    scene: Scene,
    light: Vec<LinearPicture>,
    pub(super) strength: f64,
}

/// What becomes of the light.
#[derive(Clone)]
pub(super) struct Developed {
    pub(super) insides: InsidesSpec,
    pub(super) quality: u8,
}

impl Lit {
    pub(super) fn new(scale: f64, photos: usize) -> Lit {
        let mut scene = staged::scene(scale);
        let eye = |i: usize| {
            let side = if i.is_multiple_of(2) { 1.0 } else { -1.0 };
            let step = (i / 2) as f64;
            [6000.0 + 170.0 * step, side * (1500.0 + 110.0 * step), 1250.0 + 45.0 * step]
        };
        let photo = |i: usize| PhotoSpec::new(&format!("{i}.jpg"), eye(i), [3500.0, 0.0, 600.0]);
        scene.spec.photo = Some((0..photos).map(photo).collect());
        let light = (0..photos).into_par_iter().map(|i| scene.render_linear(i).unwrap()).collect();
        Lit { scene, light, strength: STRENGTH }
    }

    /// Photo `index` as the camera with this sensor would store it; `draw` is another one for each shot.
    pub(super) fn shot(&self, index: usize, sensor: u64, draw: u64, developed: &Developed) -> Luma {
        self.moved_shot(index, sensor, draw, developed, [0, 0])
    }

    /// The same from a sensor on which the picture was cut out so far right and down.
    pub(super) fn moved_shot(
        &self,
        index: usize,
        sensor: u64,
        draw: u64,
        developed: &Developed,
        moved: [usize; 2],
    ) -> Luma {
        let mut scene = self.scene.clone().with_seed(draw);
        scene.spec.insides = developed.insides.clone();
        scene.spec.insides.pattern = Some(Strength::Fixed(self.strength));
        scene.spec.insides.sensor = Some(sensor);
        let picture = scene.develop(index, &self.light[index]).unwrap();
        let (width, height) = (picture.width - moved[0], picture.height - moved[1]);
        let rows = (moved[1]..picture.height).map(|v| &picture.rgb[v * picture.width + moved[0]..][..width]);
        let rgb: Vec<u8> = rows.flat_map(|row| row.as_flattened().iter().copied()).collect();
        jpeg(&rgb, [width, height], scene.spec.insides.jpeg(developed.quality))
    }
}

trait Quality {
    fn jpeg(&self, otherwise: u8) -> u8;
}

impl Quality for InsidesSpec {
    fn jpeg(&self, otherwise: u8) -> u8 {
        match self.jpeg_quality {
            Some(Strength::Fixed(quality)) => quality as u8,
            _ => otherwise,
        }
    }
}

/// Compressed as phones do, with 4:2:0 colour, and decoded again.
fn jpeg(rgb: &[u8], [width, height]: [usize; 2], quality: u8) -> Luma {
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, quality);
    encoder.set_sampling_factor(SamplingFactor::R_4_2_0);
    encoder.encode(rgb, width as u16, height as u16, ColorType::Rgb).unwrap();
    photo::decode(&bytes, "rendered").unwrap().luma
}
