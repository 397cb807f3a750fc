//! The camera's tone curve, as far as edges feel it.
//!
//! A camera blurs light and then bends it: grey levels are a curve of the light. The slope of
//! light over grey is modelled as exp(a s(I) + b (I - 1/2) + c (I - 1/2)^2), where s is the
//! log slope of the inverse sRGB curve (IEC 61966-2-1): a = 1, b = c = 0 is sRGB, all zero is
//! linear, c > 0 a contrast (S) curve. Scale and offset of light are free: fits have their own levels.

/// Number of shape parameters.
pub(super) const TONE: usize = 3;

/// A curve from grey levels to light, with derivatives by its parameters.
#[derive(Debug, Clone)]
pub(super) struct Tone {
    pub(super) shape: [f64; TONE],
    /// For each grey level.
    pub(super) entries: Vec<Entry>,
}

/// One grey level.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Entry {
    /// Light; 0 at middle grey.
    pub(super) light: f64,
    /// d light / d grey (grey from 0 to 1); 1 at middle grey.
    pub(super) slope: f64,
    /// d light / d shape.
    pub(super) by_shape: [f64; TONE],
}

impl Tone {
    /// What phones do more or less, before anything is known of a photo.
    pub(super) const TYPICAL: [f64; TONE] = [0.9, 0.0, 0.8];
    /// How far photos differ from that (1 sigma).
    pub(super) const SPREAD: [f64; TONE] = [0.5, 0.5, 1.5];

    pub(super) fn new(shape: [f64; TONE]) -> Self {
        let mut entries = vec![Entry::default(); 256];
        let slopes: Vec<_> = (0..=510).map(|i| slope(&shape, f64::from(i) / 510.0)).collect();
        for (i, entry) in entries.iter_mut().enumerate() {
            entry.slope = slopes[2 * i].0;
        }
        // Integrated by Simpson's rule from one grey level to the next.
        let simpson = |l: f64, m: f64, r: f64| (l + 4.0 * m + r) / (6.0 * 255.0);
        for i in 1..256 {
            let [l, m, r] = [slopes[2 * i - 2], slopes[2 * i - 1], slopes[2 * i]];
            entries[i].light = entries[i - 1].light + simpson(l.0, m.0, r.0);
            for k in 0..TONE {
                entries[i].by_shape[k] = entries[i - 1].by_shape[k] + simpson(l.1[k], m.1[k], r.1[k]);
            }
        }
        let middle = entries[128];
        for entry in &mut entries {
            entry.light -= middle.light;
            for k in 0..TONE {
                entry.by_shape[k] -= middle.by_shape[k];
            }
        }
        Tone { shape, entries }
    }

    /// Light at a grey level between 0 and 255.
    pub(super) fn light(&self, grey: f64) -> f64 {
        let grey = grey.clamp(0.0, 255.0);
        let i = (grey as usize).min(254);
        let t = grey - i as f64;
        self.entries[i].light * (1.0 - t) + self.entries[i + 1].light * t
    }

    /// Grey level (0 to 255) of a light.
    pub(super) fn grey(&self, light: f64) -> f64 {
        let above = self.entries.partition_point(|e| e.light < light).clamp(1, 255);
        let (l, r) = (self.entries[above - 1].light, self.entries[above].light);
        (above as f64 - 1.0 + (light - l) / (r - l)).clamp(0.0, 255.0)
    }
}

/// Slope at a grey (0 to 1) and its derivatives by the shape.
fn slope(shape: &[f64; TONE], grey: f64) -> (f64, [f64; TONE]) {
    let basis = [1.4 * ((grey + 0.055) / 0.555).ln(), grey - 0.5, (grey - 0.5) * (grey - 0.5)];
    let slope = basis.iter().zip(shape).map(|(b, s)| b * s).sum::<f64>().exp();
    (slope, basis.map(|b| b * slope))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// IEC 61966-2-1.
    fn srgb_light(grey: f64) -> f64 {
        if grey <= 0.04045 { grey / 12.92 } else { ((grey + 0.055) / 1.055).powf(2.4) }
    }

    #[test]
    fn holds_srgb() {
        let tone = Tone::new([1.0, 0.0, 0.0]);
        let scale = (srgb_light(0.9) - srgb_light(0.1)) / (tone.light(0.9 * 255.0) - tone.light(0.1 * 255.0));
        for i in 15..250 {
            let grey = f64::from(i);
            let truth = srgb_light(grey / 255.0) - srgb_light(0.1);
            let ours = scale * (tone.light(grey) - tone.light(0.1 * 255.0));
            assert!((truth - ours).abs() < 2e-4, "{i}: {truth} {ours}");
            assert!((tone.grey(tone.light(grey)) - grey).abs() < 1e-6);
        }
    }

    #[test]
    fn derivatives_agree_with_differences() {
        let shape = [0.7, 0.2, 0.5];
        let tone = Tone::new(shape);
        for k in 0..TONE {
            let mut other = shape;
            other[k] += 1e-5;
            let moved = Tone::new(other);
            for i in [0, 40, 128, 200, 255] {
                let numeric = (moved.entries[i].light - tone.entries[i].light) / 1e-5;
                assert!((numeric - tone.entries[i].by_shape[k]).abs() < 1e-4);
            }
        }
    }
}
