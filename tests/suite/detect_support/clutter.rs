//! What stands and hangs in a workshop and resembles markers without being any: chequered tape,
//! grilles, number plates, boards with frames, squares with random cells in them.

use rand::{Rng, RngExt};

/// One flat thing: where it lies and how it is turned and foreshortened.
struct Place {
    centre: (f64, f64),
    /// Half width and half height, px.
    half: (f64, f64),
    turn: f64,
    /// Dark and light.
    light: (f64, f64),
}

/// Scatters things over a picture.
pub(crate) fn scatter(light: &mut [f64], width: usize, height: usize, random: &mut impl Rng) {
    for i in 0..width * height / 12_000 {
        let dark = random.random_range(0.01..0.12);
        let half = random.random_range(8.0..70.0);
        let place = Place {
            centre: (random.random_range(0.0..width as f64), random.random_range(0.0..height as f64)),
            half: (half, half * random.random_range(0.35..1.1)),
            turn: random.random_range(0.0..std::f64::consts::TAU),
            light: (dark, dark + random.random_range(0.1..0.8)),
        };
        let bits: u64 = random.random();
        match i % 5 {
            0 => draw(light, width, height, &place, |x, y| chequers(x * 6.0, y * 2.0)),
            1 => draw(light, width, height, &place, grille),
            2 => draw(light, width, height, &place, |x, y| plate(x, y, bits)),
            3 => draw(light, width, height, &place, |x, y| framed(x, y, bits, true)),
            _ => draw(light, width, height, &place, |x, y| framed(x, y, bits, false)),
        }
    }
}

/// Draws a thing whose lightness is a function of (-1..1, -1..1).
fn draw(light: &mut [f64], width: usize, height: usize, place: &Place, shade: impl Fn(f64, f64) -> bool) {
    let (s, c) = place.turn.sin_cos();
    let reach = (place.half.0 + place.half.1) as usize + 1;
    let (u0, v0) = place.centre;
    for v in (v0 as usize).saturating_sub(reach)..(v0 as usize + reach).min(height) {
        for u in (u0 as usize).saturating_sub(reach)..(u0 as usize + reach).min(width) {
            const N: usize = 3;
            let (mut sum, mut hits) = (0.0, 0);
            for k in 0..N * N {
                let spot = |i: usize| (i as f64 + 0.5) / N as f64 - 0.5;
                let (p, q) = (u as f64 + spot(k % N) - u0, v as f64 + spot(k / N) - v0);
                let (x, y) = ((p * c + q * s) / place.half.0, (q * c - p * s) / place.half.1);
                if x.abs() < 1.0 && y.abs() < 1.0 {
                    sum += if shade(x, y) { place.light.1 } else { place.light.0 };
                    hits += 1;
                }
            }
            let pixel = &mut light[v * width + u];
            *pixel = (sum + *pixel * (N * N - hits) as f64) / (N * N) as f64;
        }
    }
}

fn chequers(x: f64, y: f64) -> bool {
    (x.floor() as i64 + y.floor() as i64) % 2 == 0
}

/// Slats in a dark frame on a light rim.
fn grille(x: f64, y: f64) -> bool {
    x.abs().max(y.abs()) > 0.85 || x.abs().max(y.abs()) < 0.7 && (y * 7.0).floor() as i64 % 2 == 0
}

/// Light with a dark rim and two rows of dark strokes.
fn plate(x: f64, y: f64, bits: u64) -> bool {
    let (column, row) = (((x + 1.0) * 8.0) as u64, ((y + 1.0) * 3.0) as u64);
    let stroke = row % 2 == 1 && column % 3 != 2 && bits >> ((column + 16 * row) % 64) & 1 == 1;
    x.abs() < 0.94 && y.abs() < 0.88 && !stroke
}

/// A black square on white, as a marker's: with six by six random cells, or five by five as other
/// families have.
fn framed(x: f64, y: f64, bits: u64, six: bool) -> bool {
    let cells = if six { 6.0 } else { 5.0 };
    let (a, b) = ((x * 0.5 + 0.5) * (cells + 4.0) - 2.0, (y * 0.5 + 0.5) * (cells + 4.0) - 2.0);
    if !(-1.0..cells + 1.0).contains(&a) || !(-1.0..cells + 1.0).contains(&b) {
        return true;
    }
    let inside = (0.0..cells).contains(&a) && (0.0..cells).contains(&b);
    inside && bits >> (a as u64 + cells as u64 * b as u64) & 1 == 1
}
