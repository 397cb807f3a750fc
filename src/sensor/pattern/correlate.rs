//! Correlation of a photo's noise with a pattern, for every shift at once.

use rustfft::num_complex::Complex32;

use super::fourier::Rectangle;

/// Side of the blocks that are correlated each for itself, px: shifts of up to half of it are found.
pub(super) const BLOCK: usize = 256;
/// Half the side of the square about a peak that does not count as noise, px (Goljan, Fridrich and Filler 2009: 11 by 11).
const NEAR: usize = 5;

/// Correlation by shift: how far the photo lies right of and below the
/// pattern, modulo the surface's own size.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Surface {
    pub(super) width: usize,
    pub(super) height: usize,
    pub(super) values: Vec<f32>,
}

/// The highest point of a surface.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Peak {
    /// Peak-to-correlation energy: the peak's square over the mean square away from it (Goljan, Fridrich and Filler,
    /// Large scale test of sensor fingerprint camera identification, 2009, equation 7).
    pub(super) pce: f64,
    /// Shift right and down, px.
    pub(super) shift: [i32; 2],
}

/// A number at each place of a picture; what is outside is nothing.
pub(super) trait Values {
    fn size(&self) -> [usize; 2];
    fn at(&self, index: usize) -> f32;
}

impl Values for super::plane::Plane {
    fn size(&self) -> [usize; 2] {
        [self.width, self.height]
    }
    fn at(&self, index: usize) -> f32 {
        self.values[index]
    }
}

/// Correlates blocks of one size; shared by all of a photo.
pub(super) struct Correlator {
    plan: Rectangle,
    packed: Vec<Complex32>,
    sum: Vec<Complex32>,
}

impl Correlator {
    pub(super) fn new(width: usize, height: usize) -> Self {
        let none = |count: usize| vec![Complex32::new(0.0, 0.0); count];
        let half = none((width / 2 + 1) * height);
        Correlator { plan: Rectangle::new(width, height), packed: none(width * height), sum: half }
    }

    /// The blocks' first pixels in a picture of that size.
    pub(super) fn blocks(&self, [width, height]: [usize; 2]) -> Vec<[usize; 2]> {
        let (across, down) = (self.plan.width, self.plan.height);
        (0..height).step_by(down).flat_map(|v| (0..width).step_by(across).map(move |u| [u, v])).collect()
    }

    /// Adds one block's cross-spectrum.
    fn add(&mut self, photo: &impl Values, pattern: &impl Values, [left, top]: [usize; 2]) {
        let block = [self.plan.width, self.plan.height];
        self.packed.fill(Complex32::new(0.0, 0.0));
        place(photo, [left, top], block, |at, x| self.packed[at].re = x);
        place(pattern, [left, top], block, |at, x| self.packed[at].im = x);
        self.plan.forward(&mut self.packed);
        self.multiply(|photo, pattern| photo * pattern.conj());
    }

    /// Adds products of the two spectra that were transformed last. Two real pictures are transformed as one complex
    /// one: the first's spectrum is the part of it that is even, the second's the odd one. Correlation is real, so half
    /// of its spectrum tells all.
    fn multiply(&mut self, product: impl Fn(Complex32, Complex32) -> Complex32) {
        let (width, height) = (self.plan.width, self.plan.height);
        for u in 0..=width / 2 {
            let column = u * height;
            let mirror = if u == 0 { 0 } else { (width - u) * height };
            for v in 0..height {
                let z = self.packed[column + v];
                let back = self.packed[mirror + if v == 0 { 0 } else { height - v }].conj();
                // a = (z + back) / 2, b = (z - back) / 2i; four times a * conj(b) is added.
                self.sum[column + v] += product(z + back, (z - back) * Complex32::new(0.0, -1.0));
            }
        }
    }

    /// Turns what was added into correlation by shift, and begins anew.
    fn surface(&mut self) -> Surface {
        let values = self.plan.back(&mut self.sum);
        self.sum.fill(Complex32::new(0.0, 0.0));
        Surface { width: self.plan.width, height: self.plan.height, values }
    }

    /// A photo against a pattern that both fit into one block, and then against the pattern turned by half a turn, of which
    /// the spectrum is known: that of a picture turned so is the conjugate one.
    pub(super) fn both_ways(
        &mut self,
        photo: &impl Values,
        pattern: &impl Values,
        mut take: impl FnMut(&Surface, bool) -> bool,
    ) {
        self.add(photo, pattern, [0, 0]);
        let mut upright = self.surface();
        upright.even_out(photo.size(), pattern.size());
        if take(&upright, false) {
            return;
        }
        drop(upright);
        self.multiply(|photo, pattern| photo * pattern);
        let mut turned = self.surface().from([0, 1].map(|i| pattern.size()[i] - 1));
        turned.even_out(photo.size(), pattern.size());
        take(&turned, true);
    }

    /// All blocks of a photo against those of a pattern at the same places.
    pub(super) fn whole(&mut self, photo: &impl Values, pattern: &impl Values) -> Surface {
        let size = [0, 1].map(|i| photo.size()[i].max(pattern.size()[i]));
        for block in self.blocks(size) {
            self.add(photo, pattern, block);
        }
        let mut surface = self.surface();
        surface.even_out(photo.size(), pattern.size());
        surface
    }

    /// One block, not evened out.
    pub(super) fn one(&mut self, photo: &impl Values, pattern: &impl Values, block: [usize; 2]) -> Surface {
        self.add(photo, pattern, block);
        self.surface()
    }
}

/// Hands on what a picture has in a block, with its place there.
fn place(picture: &impl Values, [left, top]: [usize; 2], block: [usize; 2], mut take: impl FnMut(usize, f32)) {
    let [width, height] = picture.size();
    let across = width.saturating_sub(left).min(block[0]);
    for v in 0..height.saturating_sub(top).min(block[1]) {
        let from = (top + v) * width + left;
        (0..across).for_each(|u| take(v * block[0] + u, picture.at(from + u)));
    }
}

/// How many pixels meet at each shift along one side, in blocks of that length, which go round.
fn meeting(photo: usize, pattern: usize, block: usize) -> Vec<f32> {
    let mut count = vec![0usize; block];
    for start in (0..photo.max(pattern)).step_by(block) {
        let [a, b] = [photo, pattern].map(|n| n.saturating_sub(start).min(block));
        for (s, count) in count.iter_mut().enumerate() {
            *count += a.min(s + b).saturating_sub(s) + a.min((s + b).saturating_sub(block));
        }
    }
    count.iter().map(|n| *n as f32).collect()
}

/// Shifts at which fewer than this share of the most pixels meet are not looked at.
const LEAST_MEETING: f32 = 0.25;

impl Surface {
    /// Makes noise as large at every shift: correlation of noise grows with the root of how many pixels meet there. Without
    /// this the shifts that most pixels share stand out of the others without any pattern.
    pub(super) fn even_out(&mut self, photo: [usize; 2], pattern: [usize; 2]) {
        let across = meeting(photo[0], pattern[0], self.width);
        let down = meeting(photo[1], pattern[1], self.height);
        let most = |side: &[f32]| side.iter().fold(0.0f32, |a, b| a.max(*b));
        let all = most(&across) * most(&down);
        for (row, down) in self.values.chunks_mut(self.width).zip(&down) {
            for (x, across) in row.iter_mut().zip(&across) {
                let share = across * down / all.max(1.0);
                *x = if share < LEAST_MEETING { 0.0 } else { *x / share.sqrt() };
            }
        }
    }

    /// The same, begun at another place.
    fn from(self, [left, top]: [usize; 2]) -> Self {
        let (width, height) = (self.width, self.height);
        let mut values = Vec::with_capacity(self.values.len());
        for v in 0..height {
            let (before, after) = self.values[(v + top) % height * width..][..width].split_at(left % width);
            values.extend_from_slice(after);
            values.extend_from_slice(before);
        }
        Surface { values, ..self }
    }

    /// The highest point, and what it stands out by.
    pub(super) fn peak(&self) -> Peak {
        let highest = self.values.iter().enumerate().max_by(|a, b| a.1.total_cmp(b.1));
        let (index, value) = highest.map_or((0, 0.0), |(i, v)| (i, f64::from(*v)));
        let (u, v) = (index % self.width, index / self.width);
        let energy = |x: f32| f64::from(x) * f64::from(x);
        let all: f64 = self.values.iter().map(|x| energy(*x)).sum();
        let side = 2 * NEAR + 1;
        let around = |p: usize, k: usize, n: usize| (p + n + k - NEAR) % n;
        let near: f64 = (0..side * side)
            .map(|k| {
                let (x, y) = (around(u, k % side, self.width), around(v, k / side, self.height));
                energy(self.values[y * self.width + x])
            })
            .sum();
        let looked_at = self.values.iter().filter(|x| **x != 0.0).count();
        let rest = looked_at.saturating_sub(side * side).max(1) as f64;
        let noise = (all - near).max(0.0) / rest;
        let pce = if value > 0.0 && noise > 0.0 { value * value / noise } else { 0.0 };
        let signed = |p: usize, n: usize| if 2 * p >= n { p as i32 - n as i32 } else { p as i32 };
        Peak { pce, shift: [signed(u, self.width), signed(v, self.height)] }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::pattern::plane::Plane;

    fn noise(width: usize, height: usize, seed: u64) -> Plane {
        let draw = |i: usize| {
            let mut z = (i as u64 + seed * 1_000_003).wrapping_mul(0x9E37_79B9_7F4A_7C15);
            z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
            z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
            ((z ^ (z >> 31)) >> 40) as f32 / (1u64 << 24) as f32 - 0.5
        };
        Plane { width, height, values: (0..width * height).map(draw).collect() }
    }

    #[test]
    fn correlation_is_the_sum_of_products_at_every_shift() {
        let (width, height) = (16, 12);
        let (a, b) = (noise(width, height, 1), noise(width, height, 2));
        let surface = Correlator::new(width, height).whole(&a, &b);
        for [du, dv] in [[0, 0], [1, 0], [0, 1], [5, 7], [15, 11]] {
            let product = |i: usize| {
                let (u, v) = ((i % width + du) % width, (i / width + dv) % height);
                a.values[v * width + u] * b.values[i]
            };
            let wanted: f32 = (0..width * height).map(product).sum();
            // All pixels meet at every shift here, as it goes round.
            // Four times, and times their count: nothing is divided where only ratios count.
            let found = surface.values[dv * width + du] / (4 * width * height) as f32;
            assert!((found - wanted).abs() < 1e-4, "{du} {dv}: {found} {wanted}");
        }
    }

    #[test]
    fn half_a_turn_is_found_by_the_same_spectra() {
        let (pattern, photo) = (noise(21, 17, 1), noise(12, 9, 2));
        let mut correlator = Correlator::new(24, 20);
        let mut found = Vec::new();
        correlator.both_ways(&photo, &pattern, |surface, _| {
            found.push(surface.clone());
            false
        });
        for (surface, quarters) in found.iter().zip([0, 2]) {
            let alone = Correlator::new(24, 20).whole(&photo, &pattern.clone().turned(quarters));
            let far = surface.values.iter().zip(&alone.values).map(|(a, b)| (a - b).abs()).fold(0.0, f32::max);
            assert!(far < 1e-2, "{quarters}: {far}");
        }
        assert_eq!(found.len(), 2);
    }

    #[test]
    fn pixels_that_meet_are_counted_and_noise_is_even() {
        // One block of ten, a photo of six and a pattern of four: counted by hand.
        assert_eq!(meeting(6, 4, 10), [4.0, 4.0, 4.0, 3.0, 2.0, 1.0, 0.0, 1.0, 2.0, 3.0]);
        assert_eq!(meeting(20, 20, 10), [20.0; 10]);
        // Noise of a crop in a larger pattern: its square is the same where all of it meets as where half does.
        let surface = Correlator::new(512, 512).whole(&noise(260, 200, 8), &noise(400, 380, 9));
        let square = |u: std::ops::Range<usize>, v: std::ops::Range<usize>| {
            let n = (u.len() * v.len()) as f64;
            v.flat_map(|v| u.clone().map(move |u| v * 512 + u))
                .map(|i| f64::from(surface.values[i]).powi(2))
                .sum::<f64>()
                / n
        };
        let (whole, half) = (square(380..500, 340..500), square(100..140, 340..500));
        assert!((whole / half - 1.0).abs() < 0.1, "{whole} {half}");
        let peak = surface.peak();
        assert!((12.0..40.0).contains(&peak.pce), "{peak:?}");
    }

    #[test]
    fn a_shifted_pattern_is_found_where_it_is_and_noise_stays_low() {
        let pattern = noise(700, 500, 3);
        let mut photo = noise(700, 500, 4);
        for v in 0..500 {
            for u in 0..700 {
                let (x, y) = ((u as i32 - 9).clamp(0, 699) as usize, (v as i32 + 4).clamp(0, 499) as usize);
                photo.values[v * 700 + u] += 0.05 * pattern.values[y * 700 + x];
            }
        }
        let mut correlator = Correlator::new(BLOCK, BLOCK);
        let peak = correlator.whole(&photo, &pattern).peak();
        assert_eq!(peak.shift, [9, -4]);
        // Energy: count of pixels times .05 squared, less the blocks' margins.
        assert!((500.0..900.0).contains(&peak.pce), "{}", peak.pce);
        let stranger = correlator.whole(&noise(700, 500, 5), &pattern).peak();
        // The highest of 65,536 squares of normal numbers is near 2 ln 65,536 - 3 = 19.
        assert!((12.0..40.0).contains(&stranger.pce), "{}", stranger.pce);
    }
}
