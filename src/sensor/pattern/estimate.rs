//! A sensor's pattern from its photos.

use rustfft::num_complex::Complex32;

use super::correlate::{BLOCK, Correlator};
use super::digest::Digest;
use super::error::Error;
use super::fourier::Rectangle;
use super::plane::{Grey, Plane};
use super::residual::{filtered, light, residual};
use super::search::MATCH_PCE;

/// Fewer photos show too much of their scenes.
pub const LEAST_PHOTOS: usize = 8;
/// A pattern is kept if so large a share of its photos is found in the pattern of the others.
const LEAST_SHOWN: f64 = 0.5;

/// Sums over photos of one camera, for two halves, so that each half's photos can be looked for in the other's pattern.
#[derive(Debug, Default)]
pub struct Estimate {
    halves: [Sums; 2],
    photos: usize,
}

/// Numerator and denominator of the maximum-likelihood estimate.
#[derive(Debug, Default, Clone)]
struct Sums {
    size: [usize; 2],
    product: Vec<f32>,
    square: Vec<f32>,
}

impl Sums {
    fn add(&mut self, photo: &Grey<'_>) {
        if self.product.is_empty() {
            self.size = [photo.width, photo.height];
            self.product = vec![0.0; photo.pixels.len()];
            self.square = vec![0.0; photo.pixels.len()];
        }
        let noise = filtered(photo);
        let sums = self.product.iter_mut().zip(&mut self.square);
        for ((x, pixel), (product, square)) in noise.values.iter().zip(photo.pixels).zip(sums) {
            let light = light(*pixel);
            *product += x * light;
            *square += light * light;
        }
    }

    fn with(mut self, other: &Sums) -> Sums {
        self.product.iter_mut().zip(&other.product).for_each(|(a, b)| *a += b);
        self.square.iter_mut().zip(&other.square).for_each(|(a, b)| *a += b);
        self
    }

    /// The pattern: noise times light over light squared, summed over the photos (Chen, Fridrich, Goljan and Lukas,
    /// 2008, equation 6), levelled and freed from what repeats.
    fn pattern(&self) -> Plane {
        let ratio = |(a, b): (&f32, &f32)| if *b > 0.0 { a / b } else { 0.0 };
        let values = self.product.iter().zip(&self.square).map(ratio).collect();
        let mut plane = Plane { width: self.size[0], height: self.size[1], values };
        plane.level();
        without_waves(&plane)
    }
}

impl Estimate {
    /// Adds a photo, `name` for messages.
    ///
    /// # Errors
    /// Where its size is not the first one's.
    pub fn add(&mut self, photo: &Grey<'_>, name: &str) -> Result<(), Error> {
        let (size, first) = ([photo.width, photo.height], self.halves[0].size);
        if self.photos > 0 && size != first {
            return Err(Error::Sizes { photo: name.to_owned(), size, first });
        }
        self.halves[self.photos % 2].add(photo);
        self.photos += 1;
        Ok(())
    }

    /// The pattern's digest. `again` hands the photos over once more, in the order in which they were added: each is
    /// looked for in the pattern of the half that it is not in.
    ///
    /// # Errors
    /// Where there are too few photos, or too few of them show the pattern of the others; or what `again` says.
    pub fn digest<E: From<Error>>(
        self,
        camera: &str,
        mut again: impl FnMut(&mut dyn FnMut(&Grey<'_>)) -> Result<(), E>,
    ) -> Result<Digest, E> {
        if self.photos < LEAST_PHOTOS {
            return Err(Error::Few { photos: self.photos, least: LEAST_PHOTOS }.into());
        }
        let others = [1, 0].map(|half: usize| Digest::of(&self.halves[half].pattern(), camera));
        let mut correlator = Correlator::new(BLOCK, BLOCK);
        let mut energies = Vec::new();
        again(&mut |photo| {
            let other = &others[energies.len() % 2];
            let peak = correlator.whole(&residual(photo), other).peak();
            energies.push(if peak.shift == [0, 0] { peak.pce } else { 0.0 });
        })?;
        energies.sort_by(f64::total_cmp);
        let shown = energies.iter().filter(|e| **e >= MATCH_PCE).count();
        if (shown as f64) < LEAST_SHOWN * self.photos as f64 {
            return Err(Error::Faint { shown, photos: self.photos }.into());
        }
        let [a, b] = self.halves;
        let whole = Digest::of(&a.with(&b).pattern(), camera);
        let median_pce = energies[energies.len() / 2] as u32;
        Ok(whole.with_quality(self.photos, shown, median_pce))
    }
}

/// Windows in which a frequency is compared with its neighbours.
const WINDOWS: [usize; 4] = [3, 5, 7, 9];

/// Takes away what stands out of a pattern's spectrum: blocks of the compression, interpolation of the colours and other
/// things that repeat, which cameras of a kind have in common. Each frequency's size is filtered as the photos are: what a
/// local Wiener filter would keep as signal goes, what it would take for noise stays (Chen et al. 2008, section III).
fn without_waves(plane: &Plane) -> Plane {
    let (width, height) = (plane.width, plane.height);
    let mut values: Vec<Complex32> = plane.values.iter().map(|x| Complex32::new(*x, 0.0)).collect();
    let mut rectangle = Rectangle::new(width, height);
    rectangle.forward(&mut values);
    let count = values.len() as f32;
    let squares: Vec<f32> = values.iter().map(|z| z.norm_sqr() / count).collect();
    let noise = plane.values.iter().map(|x| x * x).sum::<f32>() / count;
    // Columns of frequencies: a row of this array is a column of the picture's.
    let mut signal = vec![f32::MAX; values.len()];
    for side in WINDOWS {
        let means = means(&squares, height, width, side);
        signal.iter_mut().zip(means).for_each(|(s, m)| *s = s.min((m - noise).max(0.0)));
    }
    for (z, s) in values.iter_mut().zip(&signal) {
        *z *= noise / (s + noise).max(f32::MIN_POSITIVE) / count;
    }
    // Means are as even as squares are: what is left is of real numbers still.
    Plane { width, height, values: rectangle.back(&mut values[..(width / 2 + 1) * height]) }
}

/// Means over squares of odd `side`; frequencies go round.
fn means(values: &[f32], width: usize, height: usize, side: usize) -> Vec<f32> {
    let reach = side / 2;
    let around = |p: usize, k: usize, n: usize| (p + n * side + k - reach) % n;
    let mut means = Vec::with_capacity(values.len());
    let mut columns = vec![0.0f32; width];
    for v in 0..height {
        columns.fill(0.0);
        for k in 0..side {
            let row = &values[around(v, k, height) * width..][..width];
            columns.iter_mut().zip(row).for_each(|(c, x)| *c += x);
        }
        let sum = |u: usize| (0..side).map(|k| columns[around(u, k, width)]).sum::<f32>();
        means.extend((0..width).map(|u| sum(u) / (side * side) as f32));
    }
    means
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn waves_go_and_what_is_unlike_them_stays() {
        let noise = |i: usize| ((i.wrapping_mul(2_654_435_761) >> 7) % 1000) as f32 / 1000.0 - 0.5;
        let wave = |i: usize| 3.0 * (std::f32::consts::TAU * (i % 128) as f32 / 8.0).cos();
        let plane = |f: &dyn Fn(usize) -> f32| Plane { width: 128, height: 96, values: (0..12_288).map(f).collect() };
        let found = without_waves(&plane(&|i| noise(i) + wave(i)));
        let energy = |f: &dyn Fn(usize) -> f32| (0..12_288).map(|i| f64::from(f(i)).powi(2)).sum::<f64>();
        let left = (0..12_288).map(|i| f64::from(found.values[i] * wave(i))).sum::<f64>() / energy(&wave);
        let kept = (0..12_288).map(|i| f64::from(found.values[i] * noise(i))).sum::<f64>() / energy(&noise);
        assert!(left.abs() < 0.05 && kept > 0.9, "{left} {kept}");
    }

    #[test]
    fn too_few_photos_and_other_sizes_are_refused() {
        let pixels = vec![9u8; 600];
        let mut estimate = Estimate::default();
        estimate.add(&Grey { width: 30, height: 20, pixels: &pixels }, "a.jpg").unwrap();
        let other = estimate.add(&Grey { width: 20, height: 30, pixels: &pixels }, "b.jpg").unwrap_err();
        assert!(other.to_string().contains("b.jpg"));
        let few = estimate.digest("camera", |_| Ok::<(), Error>(())).unwrap_err();
        assert_eq!(few, Error::Few { photos: 1, least: LEAST_PHOTOS });
    }
}
