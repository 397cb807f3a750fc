//! Phones' insides by name. The strengths are invented: of the sizes that the
//! methods' own papers use, and nobody's product.

use super::insides_spec::{Denoise, InsidesSpec, Preset, Strength};

impl Preset {
    /// All of them.
    pub const ALL: [Preset; 9] = [
        Preset::Plain,
        Preset::Mosaic,
        Preset::Denoise,
        Preset::Halo,
        Preset::Jpeg75,
        Preset::Rolling,
        Preset::Hdr,
        Preset::Phone,
        Preset::Night,
    ];

    /// Its name in a scene file.
    pub fn name(self) -> &'static str {
        match self {
            Preset::Plain => "plain",
            Preset::Mosaic => "mosaic",
            Preset::Denoise => "denoise",
            Preset::Halo => "halo",
            Preset::Jpeg75 => "jpeg75",
            Preset::Rolling => "rolling",
            Preset::Hdr => "hdr",
            Preset::Phone => "phone",
            Preset::Night => "night",
        }
    }

    /// The keys that it sets.
    pub(crate) fn keys(self) -> InsidesSpec {
        let between = |low: f64, high: f64| Some(Strength::Between([low, high]));
        let fixed = |value: f64| Some(Strength::Fixed(value));
        let none = InsidesSpec::default();
        match self {
            Preset::Plain => none,
            Preset::Mosaic => InsidesSpec { mosaic: Some(true), fringes: between(8e-5, 1.6e-4), ..none },
            Preset::Denoise => InsidesSpec {
                noise: between(2.5, 3.5),
                denoise: Some(Denoise::NonLocalMeans),
                denoise_reach: between(0.025, 0.035),
                colour_blur_px: fixed(1.5),
                ..none
            },
            Preset::Halo => InsidesSpec {
                sharpening: between(1.2, 1.6),
                sharpening_radius_px: fixed(1.2),
                sharpening_clamp: between(0.05, 0.07),
                ..none
            },
            Preset::Jpeg75 => InsidesSpec { jpeg_quality: fixed(75.0), ..none },
            Preset::Rolling => InsidesSpec { turn_deg_s: fixed(0.6), readout_s: between(0.015, 0.025), ..none },
            Preset::Hdr => {
                InsidesSpec { tone_compression: between(0.5, 0.6), tone_detail: between(1.15, 1.35), ..none }
            }
            Preset::Phone => InsidesSpec {
                frames: between(2.0, 4.0),
                frame_shift_px: fixed(0.15),
                tone_compression: between(0.3, 0.4),
                tone_detail: between(1.1, 1.2),
                denoise: Some(Denoise::Bilateral),
                denoise_reach: between(0.03, 0.05),
                jpeg_quality: between(85.0, 91.0),
                turn_deg_s: fixed(0.35),
                stabiliser_deg: fixed(0.03),
                ..both()
            },
            Preset::Night => InsidesSpec {
                noise: between(4.0, 5.0),
                frames: between(4.0, 6.0),
                frame_shift_px: fixed(0.25),
                tone_compression: between(0.55, 0.65),
                tone_detail: between(1.15, 1.25),
                denoise: Some(Denoise::NonLocalMeans),
                denoise_reach: between(0.03, 0.04),
                jpeg_quality: between(82.0, 88.0),
                turn_deg_s: fixed(0.6),
                stabiliser_deg: fixed(0.06),
                ..both()
            },
        }
    }
}

/// What `phone` and `night` have in common.
fn both() -> InsidesSpec {
    InsidesSpec {
        mosaic: Some(true),
        colour_blur_px: Some(Strength::Fixed(1.5)),
        fringes: Some(Strength::Between([4e-5, 8e-5])),
        sharpening: Some(Strength::Between([0.75, 1.05])),
        sharpening_radius_px: Some(Strength::Fixed(1.2)),
        sharpening_clamp: Some(Strength::Between([0.04, 0.06])),
        readout_s: Some(Strength::Between([0.015, 0.025])),
        ..InsidesSpec::default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_preset_is_read_by_its_name_and_keeps_to_the_limits() {
        for preset in Preset::ALL {
            let spec: InsidesSpec = toml::from_str(&format!("preset = \"{}\"", preset.name())).unwrap();
            assert_eq!(spec, InsidesSpec::preset(preset));
            for (key, strength, [low, high]) in spec.complete().strengths() {
                let [from, to] = strength.ends();
                assert!(low <= from && from <= to && to <= high, "{}: {key}", preset.name());
            }
        }
    }

    #[test]
    fn a_key_beside_a_preset_wins() {
        let spec: InsidesSpec = toml::from_str("preset = \"hdr\"\ntone_detail = 1.0\nframes = [2, 4]\n").unwrap();
        let complete = spec.complete();
        assert_eq!(complete.tone_detail, Some(Strength::Fixed(1.0)));
        assert_eq!(complete.tone_compression, Some(Strength::Between([0.5, 0.6])));
        assert_eq!(complete.frames, Some(Strength::Between([2.0, 4.0])));
        assert_eq!(InsidesSpec::default().complete(), InsidesSpec::default());
    }
}
