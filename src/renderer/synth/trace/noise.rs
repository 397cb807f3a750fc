//! Repeatable noise: textures by position and random numbers by counter.

use nalgebra::Vector3;

/// A well-mixed 64-bit number for a counter (SplitMix64, Steele et al. 2014).
pub(crate) fn mix(counter: u64) -> u64 {
    let mut z = counter.wrapping_add(0x9E37_79B9_7F4A_7C15);
    z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    z ^ (z >> 31)
}

/// Two standard normal numbers for a counter (Box and Muller 1958).
pub(crate) fn normal_pair(counter: u64) -> [f32; 2] {
    let bits = mix(counter);
    let u = ((bits >> 32) as f32 + 0.5) * (1.0 / 4_294_967_296.0);
    let v = (bits & 0xFFFF_FFFF) as f32 * (std::f32::consts::TAU / 4_294_967_296.0);
    let radius = (-2.0 * u.min(0.999_999_9).ln()).sqrt();
    let (sin, cos) = v.sin_cos();
    [radius * cos, radius * sin]
}

fn lattice(x: i64, y: i64, z: i64) -> f32 {
    let mut h = (x as u32).wrapping_mul(0x8DA6_B343) ^ (y as u32).wrapping_mul(0xD816_3841);
    h ^= (z as u32).wrapping_mul(0xCB1A_B31F);
    h = (h ^ (h >> 15)).wrapping_mul(0x2C1B_3C6D);
    h = (h ^ (h >> 12)).wrapping_mul(0x297A_2D39);
    (h ^ (h >> 15)) as f32 * (2.0 / 4_294_967_295.0) - 1.0
}

/// The whole number below, both ways; `f64::floor` is a call into the C library
/// on processors that a build may not presume to be newer.
fn floor(x: f64) -> (f64, i64) {
    let cut = x as i64;
    let whole = cut - i64::from(cut as f64 > x);
    (whole as f64, whole)
}

/// Smooth noise in -1..1 that changes over a length of one.
fn value(x: f64, y: f64, z: f64) -> f32 {
    let ((fx, ix), (fy, iy), (fz, iz)) = (floor(x), floor(y), floor(z));
    let ease = |t: f64| {
        let t = t as f32;
        t * t * (3.0 - 2.0 * t)
    };
    let (sx, sy, sz) = (ease(x - fx), ease(y - fy), ease(z - fz));
    let line = |dy, dz| {
        let a = lattice(ix, iy + dy, iz + dz);
        a + (lattice(ix + 1, iy + dy, iz + dz) - a) * sx
    };
    let face = |dz| {
        let a = line(0, dz);
        a + (line(1, dz) - a) * sy
    };
    let a = face(0);
    a + (face(1) - a) * sz
}

/// Sum of noise octaves from `size_mm` downwards; octaves finer than the
/// pixel's own width fade out, as a sensor would average them.
pub(crate) fn fractal(p: &Vector3<f64>, size_mm: f64, pixel_mm: f64) -> f32 {
    let mut sum = 0.0;
    let mut weight = 0.5f32;
    let mut length = size_mm;
    for octave in 0..5 {
        let fade = ((length / pixel_mm.max(1e-6) - 2.0) / 4.0).clamp(0.0, 1.0) as f32;
        if fade <= 0.0 {
            break;
        }
        let shift = 17.3 * f64::from(octave);
        sum += weight * fade * value(p.x / length + shift, p.y / length - shift, p.z / length + 0.37);
        weight *= 0.62;
        length *= 0.42;
    }
    sum
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn normal_numbers_have_mean_zero_and_variance_one() {
        let n = 200_000u64;
        let (mut sum, mut square, mut fourth) = (0.0f64, 0.0f64, 0.0f64);
        for i in 0..n {
            for x in normal_pair(i) {
                let x = f64::from(x);
                sum += x;
                square += x * x;
                fourth += x.powi(4);
            }
        }
        let count = 2.0 * n as f64;
        // Standard errors: 1 / sqrt(count), sqrt(2 / count), sqrt(96 / count).
        assert!((sum / count).abs() < 0.008);
        assert!((square / count - 1.0).abs() < 0.012);
        assert!((fourth / count - 3.0).abs() < 0.08);
    }
}
