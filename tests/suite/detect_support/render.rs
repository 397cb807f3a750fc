//! Marker scenes with exact truth, for the detector's own tests: flat markers under true
//! perspective on a cluttered wall, supersampled, blurred, with noise, tone curve and sharpening.

use baywitness::marker::Dictionary;
use baywitness::photo::Luma;
use nalgebra::{Matrix3, Rotation3, Vector2, Vector3};
use rand::rngs::ChaCha8Rng;
use rand::{Rng, RngExt, SeedableRng};

use super::TrueMarker;

/// How light becomes grey levels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Camera {
    /// Grey levels as light: no tone curve, no sharpening.
    Linear,
    /// sRGB, contrast curve and sharpening, as phones do.
    Phone,
}

/// What may trouble a marker.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Trouble {
    None,
    /// Surroundings lighter than the margin.
    DarkMargin,
    /// A shadow's edge across the marker.
    Shadow,
    /// A bright spot on one code cell.
    Glare,
    /// Something dark over the top-left corner.
    CoveredCorner,
}

/// One photo full of markers of a kind.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Kind {
    /// Side without foreshortening, px, and tilt, degrees: from and to.
    pub(crate) side: (f64, f64),
    pub(crate) tilt: (f64, f64),
    /// White minus black, grey levels, from and to.
    pub(crate) contrast: (f64, f64),
    pub(crate) trouble: Trouble,
    pub(crate) camera: Camera,
    /// Standard deviation of the optics' blur, px (the pixel's own area comes on top), and of the noise, grey levels.
    pub(crate) blur: f64,
    pub(crate) noise: f64,
    pub(crate) jpeg: u8,
    /// Most markers in a photo, spread evenly.
    pub(crate) most: usize,
    /// Things that resemble markers, over everything.
    pub(crate) clutter: bool,
    pub(crate) progressive: bool,
}

impl Default for Kind {
    fn default() -> Self {
        Kind {
            side: (40.0, 40.0),
            tilt: (0.0, 45.0),
            contrast: (60.0, 200.0),
            trouble: Trouble::None,
            camera: Camera::Linear,
            blur: 0.64,
            noise: 2.0,
            jpeg: 93,
            most: 500,
            clutter: false,
            progressive: false,
        }
    }
}

pub(crate) struct Rendered {
    pub(crate) luma: Luma,
    pub(crate) jpeg: Vec<u8>,
    pub(crate) markers: Vec<TrueMarker>,
    /// Standard deviation of the noise at edges as stored, grey levels; of use for cameras without tone curve.
    pub(crate) noise: f64,
}

/// Renders a photo; the same seed gives the same photo.
pub(crate) fn render(kind: &Kind, width: usize, height: usize, seed: u64) -> Rendered {
    let mut random = ChaCha8Rng::seed_from_u64(seed);
    let mut light = backdrop(width, height, &mut random);
    let pitch = kind.side.1 * 1.75 + 14.0;
    let mut markers = Vec::new();
    let mut id = random.random_range(0..587);
    let (columns, rows) = ((width as f64 / pitch) as usize, (height as f64 / pitch) as usize);
    let places = columns * rows;
    let count = places.min(kind.most);
    for i in (0..count).map(|k| k * places / count) {
        let centre = Vector2::new(((i % columns) as f64 + 0.5) * pitch, ((i / columns) as f64 + 0.5) * pitch);
        id = (id + 1) % 587;
        markers.push(paint(kind, &mut light, width, height, centre, id, &mut random));
    }
    if kind.clutter {
        super::clutter::scatter(&mut light, width, height, &mut random);
    }
    let blurred = blur(&light, width, height, kind.blur);
    let clean: Vec<f64> = blurred.iter().map(|l| 255.0 * develop(kind.camera, *l)).collect();
    let mut grey = clean.clone();
    for g in &mut grey {
        *g += kind.noise * normal(&mut random);
    }
    if kind.camera == Camera::Phone {
        let soft = blur(&grey, width, height, 1.0);
        for (g, s) in grey.iter_mut().zip(soft) {
            *g += 0.5 * (*g - s);
        }
    }
    let pixels: Vec<u8> = grey.iter().map(|g| g.round().clamp(0.0, 255.0) as u8).collect();
    let mut jpeg = Vec::new();
    let mut encoder = jpeg_encoder::Encoder::new(&mut jpeg, kind.jpeg);
    encoder.set_progressive(kind.progressive);
    encoder.encode(&pixels, width as u16, height as u16, jpeg_encoder::ColorType::Luma).unwrap();
    let luma = super::decode(jpeg.clone());
    let noise = stored_noise(&clean, &luma);
    Rendered { luma, jpeg, markers, noise }
}

/// Standard deviation of a stored photo's noise where grey levels run steeply, which is what edges are
/// measured by: the camera's, that of rounding, and that of JPEG.
fn stored_noise(clean: &[f64], stored: &Luma) -> f64 {
    let (width, height) = (stored.width(), stored.height());
    let (mut squares, mut weights) = (0.0, 0.0);
    for v in 1..height - 1 {
        for u in 1..width - 1 {
            let i = v * width + u;
            let rise = (clean[i + 1] - clean[i - 1]).powi(2) + (clean[i + width] - clean[i - width]).powi(2);
            squares += rise * (f64::from(stored.at(u, v)) - clean[i]).powi(2);
            weights += rise;
        }
    }
    (squares / weights).sqrt()
}

/// The light that shows as a grey level.
fn expose(camera: Camera, grey: f64) -> f64 {
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..40 {
        let middle = (low + high) / 2.0;
        if develop(camera, middle) < grey { low = middle } else { high = middle }
    }
    (low + high) / 2.0
}

fn develop(camera: Camera, light: f64) -> f64 {
    let light = light.clamp(0.0, 1.0);
    match camera {
        Camera::Linear => light,
        Camera::Phone => {
            let srgb = if light <= 0.003_130_8 { 12.92 * light } else { 1.055 * light.powf(1.0 / 2.4) - 0.055 };
            srgb + 0.35 * (srgb * srgb * (3.0 - 2.0 * srgb) - srgb)
        }
    }
}

/// A wall with soft stains, some boards, stripes and discs.
fn backdrop(width: usize, height: usize, random: &mut impl Rng) -> Vec<f64> {
    let mut light = vec![0.0; width * height];
    let waves: Vec<[f64; 4]> = (0..6)
        .map(|_| {
            [random.random_range(0.002..0.03), random.random_range(0.002..0.03), random.random_range(0.0..6.0), 0.012]
        })
        .collect();
    let base = random.random_range(0.2..0.45);
    for (i, l) in light.iter_mut().enumerate() {
        let (u, v) = ((i % width) as f64, (i / width) as f64);
        *l = base + waves.iter().map(|w| w[3] * (u * w[0] + v * w[1] + w[2]).sin()).sum::<f64>();
    }
    for _ in 0..width * height / 40_000 {
        let (u, v) = (random.random_range(0.0..width as f64), random.random_range(0.0..height as f64));
        let (a, b) = (random.random_range(5.0..60.0), random.random_range(5.0..60.0));
        let (turn, value): (f64, f64) = (random.random_range(0.0..3.0), random.random_range(0.03..0.9));
        let (s, c) = turn.sin_cos();
        let reach = (a + b) as usize;
        for y in (v as usize).saturating_sub(reach)..(v as usize + reach).min(height) {
            for x in (u as usize).saturating_sub(reach)..(u as usize + reach).min(width) {
                let (p, q) = (x as f64 - u, y as f64 - v);
                if (p * c + q * s).abs() < a && (q * c - p * s).abs() < b {
                    light[y * width + x] = value;
                }
            }
        }
    }
    light
}

/// Paints one marker and tells where it is.
fn paint(
    kind: &Kind,
    light: &mut [f64],
    width: usize,
    height: usize,
    centre: Vector2<f64>,
    id: u32,
    random: &mut impl Rng,
) -> TrueMarker {
    let pick = |r: &mut dyn FnMut() -> f64, range: (f64, f64)| range.0 + (range.1 - range.0) * r();
    let mut uniform = || random.random_range(0.0..1.0);
    let side = pick(&mut uniform, kind.side);
    let tilt = pick(&mut uniform, kind.tilt).to_radians();
    let contrast = pick(&mut uniform, kind.contrast);
    let black_grey = pick(&mut uniform, (15.0, (235.0 - contrast).clamp(16.0, 70.0)));
    let (axis, roll) =
        (pick(&mut uniform, (0.0, std::f64::consts::TAU)), pick(&mut uniform, (0.0, std::f64::consts::TAU)));
    let shift = Vector2::new(uniform(), uniform());
    let shadow = pick(&mut uniform, (0.0, std::f64::consts::TAU));
    let glare = ((uniform() * 6.0) as usize + 1, (uniform() * 6.0) as usize + 1);
    // Eight cells of unit length, seen from far enough that the side is as wanted.
    let focal = 3000.0;
    let rotation =
        Rotation3::from_axis_angle(&nalgebra::Unit::new_normalize(Vector3::new(axis.cos(), axis.sin(), 0.0)), tilt)
            * Rotation3::from_axis_angle(&Vector3::z_axis(), roll);
    let r = rotation.matrix();
    let depth = focal * 8.0 / side;
    let h = Matrix3::new(focal, 0.0, centre.x + shift.x, 0.0, focal, centre.y + shift.y, 0.0, 0.0, 1.0)
        * Matrix3::from_columns(&[r.column(0).into_owned(), r.column(1).into_owned(), Vector3::new(0.0, 0.0, depth)]);
    // Plain numbers: this is called for each of 36 spots of a pixel.
    let inverse = h.try_inverse().unwrap();
    let back: [f64; 9] = std::array::from_fn(|i| inverse[(i / 3, i % 3)]);
    let unproject = |u: f64, v: f64| {
        let z = back[6] * u + back[7] * v + back[8];
        [(back[0] * u + back[1] * v + back[2]) / z + 4.0, (back[3] * u + back[4] * v + back[5]) / z + 4.0]
    };
    let project = |x: f64, y: f64| {
        let p = h * Vector3::new(x - 4.0, y - 4.0, 1.0);
        Vector2::new(p.x / p.z, p.y / p.z)
    };
    let black = expose(kind.camera, black_grey / 255.0);
    let white = expose(kind.camera, (black_grey + contrast) / 255.0);
    let dictionary = Dictionary::tag36h11();
    let shade = |x: f64, y: f64| -> Option<f64> {
        let rim = if kind.trouble == Trouble::DarkMargin { 1.6 } else { 1.0 };
        if !(-rim..8.0 + rim).contains(&x) || !(-rim..8.0 + rim).contains(&y) {
            return None;
        }
        let within = (-1.0..9.0).contains(&x) && (-1.0..9.0).contains(&y);
        if !within {
            return Some((white * 1.6).min(1.0));
        }
        let inside = (0.0..8.0).contains(&x) && (0.0..8.0).contains(&y);
        let mut value = if !inside || dictionary.is_white(id, x as usize, y as usize) { white } else { black };
        match kind.trouble {
            Trouble::Shadow if (x - 4.0) * shadow.cos() + (y - 4.0) * shadow.sin() > 0.7 => value *= 0.4,
            Trouble::Glare if inside && (x as usize, y as usize) == glare => value = (white * 1.3).min(1.0),
            Trouble::CoveredCorner if x < 1.4 && y < 1.4 => value = black * 1.2,
            _ => {}
        }
        Some(value)
    };
    let reach = (side * 1.05 + 3.0) as usize;
    for v in (centre.y as usize).saturating_sub(reach)..(centre.y as usize + reach).min(height) {
        for u in (centre.x as usize).saturating_sub(reach)..(centre.x as usize + reach).min(width) {
            const N: usize = 6;
            let (mut sum, mut hits) = (0.0, 0);
            for k in 0..N * N {
                let spot = |i: usize| (i as f64 + 0.5) / N as f64 - 0.5;
                let [x, y] = unproject(u as f64 + spot(k % N), v as f64 + spot(k / N));
                if let Some(value) = shade(x, y) {
                    sum += value;
                    hits += 1;
                }
            }
            let pixel = &mut light[v * width + u];
            *pixel = (sum + *pixel * (N * N - hits) as f64) / (N * N) as f64;
        }
    }
    let corners = [project(0.0, 0.0), project(8.0, 0.0), project(8.0, 8.0), project(0.0, 8.0)];
    TrueMarker { id, corners, visible: 1.0, side, facing: tilt.cos(), contrast }
}

/// Gaussian blur, separable.
fn blur(picture: &[f64], width: usize, height: usize, sigma: f64) -> Vec<f64> {
    let reach = (4.0 * sigma).ceil() as isize;
    let weights: Vec<f64> = (-reach..=reach).map(|i| (-0.5 * (i as f64 / sigma).powi(2)).exp()).collect();
    let sum: f64 = weights.iter().sum();
    let pass = |picture: &[f64], step: isize, at: &dyn Fn(usize) -> (isize, isize)| -> Vec<f64> {
        (0..picture.len())
            .map(|i| {
                let (place, most) = at(i);
                let tap = |k: isize| (place + k).clamp(0, most - 1) - place;
                (-reach..=reach)
                    .zip(&weights)
                    .map(|(k, w)| w * picture[(i as isize + tap(k) * step) as usize])
                    .sum::<f64>()
                    / sum
            })
            .collect()
    };
    let across = pass(picture, 1, &|i| ((i % width) as isize, width as isize));
    pass(&across, width as isize, &|i| ((i / width) as isize, height as isize))
}

fn normal(random: &mut impl Rng) -> f64 {
    let (a, b): (f64, f64) = (random.random_range(1e-12..1.0), random.random_range(0.0..1.0));
    (-2.0 * a.ln()).sqrt() * (2.0 * std::f64::consts::PI * b).cos()
}
