//! Varied bays: places, light, sizes of picture and what is wrong at the stand, drawn from a seed.

use baywitness::synth::{InsidesSpec, LampSpec, OpeningSpec, PhotoSpec, Preset, Scene, Strength};

use crate::planned::{STANCES, number};
use crate::sampled_bay::Noise;
use crate::staged;

/// Megapixels of the photos: the smaller, the more jobs can be counted; markers are 20 to 90 px wide in them.
const LEAST_MP: f64 = 2.0;
const MOST_MP: f64 = 5.0;
/// Megapixels of the sample's camera.
const SAMPLE_MP: f64 = 11.06;
/// The sample sheet's tolerances: distance, offset, height (mm), squareness, tilt, level (degrees).
const TOLERANCES: [f64; 6] = [10.0, 5.0, 5.0, 0.15, 0.5, 0.5];
/// Which stances of `planned`: not the far one, in which three megapixels show no marker well.
const NEAR: [usize; 5] = [0, 1, 2, 4, 5];

/// A bay with a stand set up by a hand that is not always careful.
pub(super) fn varied(seed: u64) -> Scene {
    let mut noise = Noise::new(seed ^ 0x7068_6f6e_6500);
    let megapixels = LEAST_MP * (MOST_MP / LEAST_MP).powf(noise.uniform());
    let mut scene = staged::scene((megapixels / SAMPLE_MP).sqrt());
    scene.spec.seed = 9000 + seed;
    scene.spec.kit_errors.print_wave_mm = number("BAY_PHONE_WAVE_MM", 0.0);
    scene.spec.job.remove("reading");
    scene.spec.stand.error = TOLERANCES.map(|t| 0.7 * t * noise.normal()).into();
    let stance = &STANCES[NEAR[(noise.uniform() * NEAR.len() as f64) as usize % NEAR.len()]];
    let orientation = if noise.uniform() < 0.3 { 3 } else { 1 };
    let mut photos = Vec::new();
    for (i, from) in stance.from_mm.iter().enumerate() {
        let eye = from.map(|x| x + 120.0 * noise.normal());
        let at = [3600.0 + 80.0 * noise.normal(), 120.0 * from[1].signum(), 600.0 + 40.0 * noise.normal()];
        let mut photo = PhotoSpec::new(&format!("{i}.jpg"), eye, at);
        photo.tilt_deg = noise.normal();
        photo.orientation = orientation;
        photos.push(photo);
    }
    scene.spec.photo = Some(photos);
    light(&mut scene, &mut noise);
    scene
}

/// A lamp overhead; in two of three bays a door on one side, which leaves the other in its own shadow.
fn light(scene: &mut Scene, noise: &mut Noise) {
    let lamp = |x: f64, strength: f32| LampSpec {
        at_mm: [x, 0.0, 3400.0],
        size_mm: [1300.0, 260.0],
        colour: [strength, 0.98 * strength, 0.93 * strength],
    };
    let side = noise.uniform();
    let x = 4500.0 + 800.0 * noise.normal();
    scene.spec.lamp = Some(vec![lamp(x, if side < 0.33 { 1.0 } else { 0.6 })]);
    if side >= 0.33 {
        let left = side < 0.67;
        let wall = if left { scene.spec.room.sides_mm[0] } else { -scene.spec.room.sides_mm[1] };
        let strength = (0.3 + 0.7 * noise.uniform()) as f32;
        scene.spec.opening = vec![OpeningSpec {
            at_mm: [2500.0 + 4000.0 * noise.uniform(), wall * 0.998, 1300.0],
            size_mm: [3000.0, 2600.0],
            facing_deg: if left { -90.0 } else { 90.0 },
            colour: [0.93, 1.0, 1.12].map(|c| c * strength),
        }];
        scene.spec.room.ambient = 0.6;
    }
}

/// The same bay, developed as a preset would. Those whose hand turns turn alike, so that one tracing of light
/// serves them all: at .6 deg/s (1 sigma), with a stabiliser that is off by .03 deg.
pub(super) fn developed(scene: &Scene, preset: Preset) -> Scene {
    let mut scene = scene.clone();
    scene.spec.insides = InsidesSpec::preset(preset);
    if turns(preset) {
        scene.spec.insides.turn_deg_s = Some(Strength::Fixed(0.6));
        scene.spec.insides.stabiliser_deg = Some(Strength::Fixed(0.03));
    }
    scene
}

/// Whether the hand or the stabiliser changes what each pixel sees.
pub(super) fn turns(preset: Preset) -> bool {
    matches!(preset, Preset::Rolling | Preset::Phone | Preset::Night)
}

/// A bay in a line.
pub(super) fn told(scene: &Scene) -> String {
    let [width, height] = scene.camera.image_size_px;
    let door =
        scene.spec.opening.first().map_or("no door", |o| if o.at_mm[1] > 0.0 { "door left" } else { "door right" });
    format!("{} photos of {:.1} MP, {door}", scene.photos().len(), f64::from(width) * f64::from(height) * 1e-6)
}
