//! The edge of a shadow across a marker.
//!
//! Light is modelled as even or evenly sloping; a shadow's edge is neither. Where one line parts a
//! marker into two kinds of light, the lit part is brought to the scale of the shaded one and what
//! lies along the line is left out.

/// Directions that are tried for the line, then finer ones to either side of the best; distances from the middle.
const DIRECTIONS: usize = 18;
const FINER: usize = 5;
const DISTANCES: usize = 104;
const FARTHEST: f64 = 1.3;
/// Least pixels on either side, share of all.
const LEAST_PART: f64 = 0.12;
/// Most misfit with two kinds of light, share of that with one.
const MOST_LEFT: f64 = 0.4;
/// Half the width that is left out, in units of the pattern and of the blur.
const BAND: (f64, f64) = (0.03, 2.0);

/// The line, and how grey levels on its lit side are brought to the scale of the other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Shadow {
    normal: [f64; 2],
    distance: f64,
    band: f64,
    gain: f64,
    shift: f64,
    /// Black and contrast in the shade, grey levels.
    pub(super) light: (f64, f64),
}

impl Shadow {
    /// The grey level of a pixel at pattern coordinates as if all were in the shade; `None` along the line.
    pub(super) fn evened(&self, x: f64, y: f64, grey: f32) -> Option<f32> {
        let side = self.normal[0] * x + self.normal[1] * y - self.distance;
        if side.abs() < self.band {
            return None;
        }
        Some(if side > 0.0 { (self.shift + self.gain * f64::from(grey)) as f32 } else { grey })
    }
}

/// Sums for a straight line through grey levels over the white share.
#[derive(Debug, Clone, Copy, Default)]
struct Sums {
    n: f64,
    e: f64,
    ee: f64,
    g: f64,
    ge: f64,
    gg: f64,
}

impl Sums {
    fn add(&mut self, e: f64, g: f64) {
        self.n += 1.0;
        self.e += e;
        self.ee += e * e;
        self.g += g;
        self.ge += g * e;
        self.gg += g * g;
    }

    fn and(&self, other: &Sums) -> Sums {
        Sums {
            n: self.n + other.n,
            e: self.e + other.e,
            ee: self.ee + other.ee,
            g: self.g + other.g,
            ge: self.ge + other.ge,
            gg: self.gg + other.gg,
        }
    }

    fn without(&self, other: &Sums) -> Sums {
        let less = Sums { n: -other.n, e: -other.e, ee: -other.ee, g: -other.g, ge: -other.ge, gg: -other.gg };
        self.and(&less)
    }

    /// Black, contrast, and the sum of squares that they leave.
    fn line(&self) -> Option<(f64, f64, f64)> {
        let spread = self.n * self.ee - self.e * self.e;
        if spread < 1e-3 * self.n * self.n {
            return None;
        }
        let contrast = (self.n * self.ge - self.e * self.g) / spread;
        let black = (self.g - contrast * self.e) / self.n;
        Some((black, contrast, self.gg - black * self.g - contrast * self.ge))
    }
}

/// A pixel: pattern coordinates, white share, grey level.
pub(super) type Spot = [f64; 4];

/// The shadow's edge across a marker's pixels, whose blur is so many units of the pattern, if there is one.
pub(super) fn shadow(spots: &[Spot], blur: f64) -> Option<Shadow> {
    let mut all = Sums::default();
    spots.iter().for_each(|[_, _, e, grey]| all.add(*e, *grey));
    let least = |angles: &mut dyn Iterator<Item = f64>| {
        angles.filter_map(|a| best_line(spots, &all, a)).min_by(|a, b| a.0.total_cmp(&b.0))
    };
    let step = std::f64::consts::PI / DIRECTIONS as f64;
    let (_, _, coarse) = least(&mut (0..DIRECTIONS).map(|i| i as f64 * step))?;
    let fine = (0..=2 * FINER).map(|i| coarse + (i as f64 / FINER as f64 - 1.0) * step);
    let (left, mut shadow, _) = least(&mut fine.into_iter())?;
    shadow.band = BAND.0 + BAND.1 * blur;
    (left < MOST_LEFT * all.line()?.2).then_some(shadow)
}

/// The best line across a direction: the sum of squares that two kinds of light leave, the line, its direction.
fn best_line(spots: &[Spot], all: &Sums, angle: f64) -> Option<(f64, Shadow, f64)> {
    let normal = [angle.cos(), angle.sin()];
    let step = 2.0 * FARTHEST / (DISTANCES - 1) as f64;
    // Sums by distance along the normal; then everything up to a line is a running total.
    let mut bins = [Sums::default(); DISTANCES + 1];
    for [x, y, e, grey] in spots {
        let t = (normal[0] * x + normal[1] * y + FARTHEST) / step;
        bins[(t.max(0.0) as usize).min(DISTANCES)].add(*e, *grey);
    }
    let mut below = Sums::default();
    let mut best: Option<(f64, Shadow, f64)> = None;
    for (i, bin) in bins.iter().enumerate().take(DISTANCES) {
        below = below.and(bin);
        let above = all.without(&below);
        if below.n.min(above.n) < LEAST_PART * all.n {
            continue;
        }
        let (Some(a), Some(b)) = (below.line(), above.line()) else { continue };
        if a.1.min(b.1) <= 0.0 || best.is_some_and(|(least, _, _)| a.2 + b.2 >= least) {
            continue;
        }
        let distance = (i + 1) as f64 * step - FARTHEST;
        // The lit side is the one above; turned around where it is the other.
        let (normal, distance, shade, lit) =
            if b.1 > a.1 { (normal, distance, a, b) } else { (normal.map(|n| -n), -distance, b, a) };
        let gain = shade.1 / lit.1;
        let shift = shade.0 - gain * lit.0;
        let shadow = Shadow { normal, distance, band: 0.0, gain, shift, light: (shade.0, shade.1) };
        best = Some((a.2 + b.2, shadow, angle));
    }
    best
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Black and white spots, darker beyond a slanting line.
    #[test]
    fn the_line_between_two_kinds_of_light_is_found() {
        let spots: Vec<Spot> = (0..900)
            .map(|i| {
                let (x, y) = (f64::from(i % 30) / 14.5 - 1.0, f64::from(i / 30) / 14.5 - 1.0);
                let e = f64::from((i * 7 + i / 30) % 2);
                let shaded = 0.8 * x + 0.6 * y > 0.2;
                [x, y, e, if shaded { 20.0 + 60.0 * e } else { 40.0 + 150.0 * e }]
            })
            .collect();
        let mut all = Sums::default();
        spots.iter().for_each(|[_, _, e, grey]| all.add(*e, *grey));
        let (left, found, _) = best_line(&spots, &all, 0.6f64.atan2(0.8)).unwrap();
        // Spots within a bin of the line count to its one side.
        assert!(left < 0.03 * all.line().unwrap().2, "{left}");
        // The lit side lies before the line.
        assert!((found.normal[0] + 0.8).abs() < 1e-9 && (found.distance + 0.2).abs() < 0.05);
        let even = |grey: f32| found.evened(-0.9, -0.9, grey).unwrap();
        assert!((even(40.0) - 20.0).abs() < 2.0 && (even(190.0) - 80.0).abs() < 2.0);
    }
}
