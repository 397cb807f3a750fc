//! What a phone does inside, as a scene's `[insides]` table says it.

use serde::Deserialize;

/// A strength: one number, or two between which it is drawn from the scene's seed.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(untagged, expecting = "expected a number, or two between which it is drawn")]
pub enum Strength {
    /// Always this.
    Fixed(f64),
    /// Anything from the first to the second, evenly.
    Between([f64; 2]),
}

impl Strength {
    /// Lowest and highest value.
    pub fn ends(self) -> [f64; 2] {
        match self {
            Strength::Fixed(value) => [value; 2],
            Strength::Between(ends) => ends,
        }
    }

    /// The value at a share from the lowest (0) to the highest (1).
    pub(crate) fn at(self, share: f64) -> f64 {
        let [low, high] = self.ends();
        low + share * (high - low)
    }
}

/// How noise is taken out of the luma.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Denoise {
    /// As `processing.noise_reduction` says.
    #[default]
    None,
    /// Bilateral filter.
    Bilateral,
    /// Non-local means.
    NonLocalMeans,
}

/// The `[insides]` table: a preset, and keys that differ from it. Strengths are
/// drawn once for a scene, as all photos are one phone's; what the hand and the
/// lens do is drawn for each photo.
#[derive(Debug, Clone, PartialEq, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct InsidesSpec {
    /// What all other keys are where they are left out.
    pub preset: Preset,
    /// Each pixel measures one colour; the other two are interpolated.
    pub mosaic: Option<bool>,
    /// How much larger red is than green, as a share; blue is smaller, so that luma stays in place.
    pub fringes: Option<Strength>,
    /// Factor on the sensor's noise.
    pub noise: Option<Strength>,
    /// Frames that are merged (rounded).
    pub frames: Option<Strength>,
    /// Error of each frame's registration, 1 sigma, px.
    pub frame_shift_px: Option<Strength>,
    /// How far the picture wanders over the sensor from one merged frame to another, 1 sigma, px.
    pub frame_drift_px: Option<Strength>,
    /// How unequally the sensor's pixels answer the same light: standard deviation, as a share.
    pub pattern: Option<Strength>,
    /// Which sensor it is: another number is another pattern.
    pub sensor: Option<u64>,
    /// How noise is taken out.
    pub denoise: Option<Denoise>,
    /// Differences of display value that count as noise: the filter's range sigma, or its `h`.
    pub denoise_reach: Option<Strength>,
    /// Sigma of the colours' blur (luma stays), px.
    pub colour_blur_px: Option<Strength>,
    /// Share by which the light's large differences are compressed, in the logarithm.
    pub tone_compression: Option<Strength>,
    /// Factor on the small ones.
    pub tone_detail: Option<Strength>,
    /// Sharpening instead of `processing.sharpening`.
    pub sharpening: Option<Strength>,
    /// Sigma of its blur, px.
    pub sharpening_radius_px: Option<Strength>,
    /// The most that it changes a display value by.
    pub sharpening_clamp: Option<Strength>,
    /// JPEG quality instead of `processing.jpeg_quality`.
    pub jpeg_quality: Option<Strength>,
    /// How fast the hand turns about each of the camera's axes while rows are read, 1 sigma, degrees per second.
    pub turn_deg_s: Option<Strength>,
    /// From the first row's moment to the last one's, seconds.
    pub readout_s: Option<Strength>,
    /// How far the stabiliser has moved the picture along each side, 1 sigma, degrees.
    pub stabiliser_deg: Option<Strength>,
}

impl InsidesSpec {
    /// A preset as it is.
    pub fn preset(preset: Preset) -> Self {
        InsidesSpec { preset, ..InsidesSpec::default() }
    }

    /// The keys with the preset's where they are left out.
    pub(crate) fn complete(&self) -> InsidesSpec {
        let base = self.preset.keys();
        let own = self.clone();
        InsidesSpec {
            preset: self.preset,
            mosaic: own.mosaic.or(base.mosaic),
            fringes: own.fringes.or(base.fringes),
            noise: own.noise.or(base.noise),
            frames: own.frames.or(base.frames),
            frame_shift_px: own.frame_shift_px.or(base.frame_shift_px),
            frame_drift_px: own.frame_drift_px.or(base.frame_drift_px),
            pattern: own.pattern.or(base.pattern),
            sensor: own.sensor.or(base.sensor),
            denoise: own.denoise.or(base.denoise),
            denoise_reach: own.denoise_reach.or(base.denoise_reach),
            colour_blur_px: own.colour_blur_px.or(base.colour_blur_px),
            tone_compression: own.tone_compression.or(base.tone_compression),
            tone_detail: own.tone_detail.or(base.tone_detail),
            sharpening: own.sharpening.or(base.sharpening),
            sharpening_radius_px: own.sharpening_radius_px.or(base.sharpening_radius_px),
            sharpening_clamp: own.sharpening_clamp.or(base.sharpening_clamp),
            jpeg_quality: own.jpeg_quality.or(base.jpeg_quality),
            turn_deg_s: own.turn_deg_s.or(base.turn_deg_s),
            readout_s: own.readout_s.or(base.readout_s),
            stabiliser_deg: own.stabiliser_deg.or(base.stabiliser_deg),
        }
    }

    /// Each strength's key, value and limits.
    pub(crate) fn strengths(&self) -> Vec<(&'static str, Strength, [f64; 2])> {
        let all = [
            ("fringes", self.fringes, [-0.01, 0.01]),
            ("noise", self.noise, [0.0, 100.0]),
            ("frames", self.frames, [1.0, 64.0]),
            ("frame_shift_px", self.frame_shift_px, [0.0, 5.0]),
            ("frame_drift_px", self.frame_drift_px, [0.0, 1000.0]),
            ("pattern", self.pattern, [0.0, 0.1]),
            ("denoise_reach", self.denoise_reach, [0.001, 1.0]),
            ("colour_blur_px", self.colour_blur_px, [0.0, 20.0]),
            ("tone_compression", self.tone_compression, [0.0, 1.0]),
            ("tone_detail", self.tone_detail, [0.0, 4.0]),
            ("sharpening", self.sharpening, [0.0, 5.0]),
            ("sharpening_radius_px", self.sharpening_radius_px, [0.3, 20.0]),
            ("sharpening_clamp", self.sharpening_clamp, [0.0, 1.0]),
            ("jpeg_quality", self.jpeg_quality, [1.0, 100.0]),
            ("turn_deg_s", self.turn_deg_s, [0.0, 30.0]),
            ("readout_s", self.readout_s, [0.0, 0.2]),
            ("stabiliser_deg", self.stabiliser_deg, [0.0, 2.0]),
        ];
        all.into_iter().filter_map(|(key, value, limits)| Some((key, value?, limits))).collect()
    }
}

/// A phone's insides by name.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Preset {
    /// Nothing but the scene's own processing.
    #[default]
    Plain,
    /// Colour mosaic, interpolated, with colour fringes left over.
    Mosaic,
    /// Three times the noise, taken out again.
    Denoise,
    /// Strong sharpening whose overshoot is clamped.
    Halo,
    /// Compressed hard.
    Jpeg75,
    /// The hand turns while rows are read.
    Rolling,
    /// Local tone mapping.
    Hdr,
    /// All of it, moderate.
    Phone,
    /// All of it, strong.
    Night,
}
