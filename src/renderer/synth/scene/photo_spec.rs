//! The photos of a scene and how the camera develops them.

use serde::Deserialize;

use super::stand_error::StandError;

/// One photo. Positions are in the design frame.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PhotoSpec {
    /// File name, without folder.
    pub file: String,
    /// The set-up sheet's step that it shows; the stand stands as that step wants it.
    pub step: Option<String>,
    /// before or after the calibration; goes into the job file.
    pub phase: Option<String>,
    /// How often the stand had been moved: it stands where the scene's moves have brought it; goes into the job file.
    #[serde(default)]
    pub after_move: u32,
    /// Where the camera is, mm.
    pub eye_mm: [f64; 3],
    /// What it looks at, mm.
    pub look_at_mm: [f64; 3],
    /// How far the hand tilts the picture, degrees.
    #[serde(default)]
    pub tilt_deg: f64,
    /// EXIF orientation of the stored grid: 1, 3, 6 or 8 (6: held upright).
    #[serde(default = "one_u16")]
    pub orientation: u16,
    /// Digital zoom: the middle of the picture, enlarged.
    #[serde(default = "one")]
    pub digital_zoom: f64,
    /// Saved at this share of the camera's own size, while the record keeps the old one.
    #[serde(default = "one")]
    pub resized: f64,
    /// Focal length against the mean lens; left out: drawn with the camera file's `u_focal_relative`.
    pub focal_factor: Option<f64>,
    /// Shift of the principal point, px; left out: drawn with `u_centre_px`.
    pub centre_shift_px: Option<[f64; 2]>,
    /// How far the stabiliser has moved the principal point besides, px; left out: drawn as the insides say.
    pub stabiliser_shift_px: Option<[f64; 2]>,
    /// How fast the hand turns while rows are read, about the stored grid's axes by the right-hand rule: right (looks
    /// up), down (looks right), ahead (clockwise); degrees per second; left out: drawn as the insides say.
    pub turn_deg_s: Option<[f64; 3]>,
    /// From the first row's moment to the last one's, seconds; the pose is the middle row's.
    pub readout_s: Option<f64>,
    /// Brighter or darker than the automatic exposure, stops.
    #[serde(default)]
    pub exposure_stops: f64,
    /// Path of the picture during the exposure, px right and down.
    #[serde(default)]
    pub motion_px: [f64; 2],
    /// Where the stand is in this photo, against the scene's placement.
    #[serde(default)]
    pub stand_moved: StandError,
    /// How far the vehicle has rolled forward in this photo, mm.
    #[serde(default)]
    pub vehicle_rolled_mm: f64,
    /// Seconds after the scene's first photo.
    pub seconds_later: Option<f64>,
    /// Whether the file has an EXIF record at all.
    #[serde(default = "yes")]
    pub exif: bool,
    /// What its record says otherwise than the camera would.
    #[serde(default)]
    pub record: RecordChange,
    /// What was done to the picture afterwards.
    #[serde(default)]
    pub forged: Forgery,
    /// Changes to the scene's processing.
    #[serde(default)]
    pub processing: ProcessingChange,
}

fn one() -> f64 {
    1.0
}

fn one_u16() -> u16 {
    1
}

fn yes() -> bool {
    true
}

impl PhotoSpec {
    /// A plain photo from a place towards a point.
    pub fn new(file: &str, eye_mm: [f64; 3], look_at_mm: [f64; 3]) -> Self {
        PhotoSpec {
            file: file.to_owned(),
            step: None,
            phase: None,
            after_move: 0,
            eye_mm,
            look_at_mm,
            tilt_deg: 0.0,
            orientation: 1,
            digital_zoom: 1.0,
            resized: 1.0,
            focal_factor: None,
            centre_shift_px: None,
            stabiliser_shift_px: None,
            turn_deg_s: None,
            readout_s: None,
            exposure_stops: 0.0,
            motion_px: [0.0; 2],
            stand_moved: StandError::default(),
            vehicle_rolled_mm: 0.0,
            seconds_later: None,
            exif: true,
            record: RecordChange::default(),
            forged: Forgery::default(),
            processing: ProcessingChange::default(),
        }
    }
}

/// What a photo's record says otherwise than the camera would have written.
#[derive(Debug, Clone, PartialEq, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct RecordChange {
    /// A program that is said to have processed the picture.
    pub processing_software: Option<String>,
    /// Focal length for 35 mm film, mm.
    pub focal_35mm: Option<u16>,
    /// The thumbnail is that of this photo of the scene, by its file; left out: there is none.
    pub thumbnail_of: Option<String>,
    /// The time has no offset from UTC.
    pub without_offset: bool,
    /// The time is that many days later.
    pub days_later: i64,
}

/// How a picture was made another one.
#[derive(Debug, Clone, PartialEq, Eq, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Forgery {
    /// Its noise is that of this photo of the scene, by its file: it was made from that one.
    pub noise_of: Option<String>,
    /// The markers of this carrier were put in by a program: they have no noise.
    pub put_in: Option<String>,
    /// The markers of this carrier were put in after the rest had been saved as JPEG.
    pub put_in_later: Option<String>,
    /// The quality, 1 to 100, at which that was saved.
    pub saved_at: Option<u8>,
}

/// From light to display values.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Processing {
    /// Point spread of lens and sensor, a Gaussian's sigma on top of the pixel's own area, px.
    pub blur_px: f64,
    /// Loss of light in the far corners, share.
    pub vignetting: f64,
    /// Electrons at full scale: shot noise; zero: none.
    pub full_well: f64,
    /// Read noise, share of full scale.
    pub read_noise: f64,
    /// Error of the white balance per channel.
    pub white_balance: [f64; 3],
    /// sRGB tone curve; false keeps display values proportional to light.
    pub srgb: bool,
    /// Strength of the S-curve on top of it, 0 to 1.
    pub contrast: f64,
    /// Strength of noise reduction, 0 to 1.
    pub noise_reduction: f64,
    /// Strength of sharpening.
    pub sharpening: f64,
    /// JPEG quality, 1 to 100.
    pub jpeg_quality: u8,
}

impl Default for Processing {
    fn default() -> Self {
        Processing {
            blur_px: 0.55,
            vignetting: 0.3,
            full_well: 3500.0,
            read_noise: 0.003,
            white_balance: [0.98, 1.0, 1.03],
            srgb: true,
            contrast: 0.3,
            noise_reduction: 0.5,
            sharpening: 0.45,
            jpeg_quality: 88,
        }
    }
}

/// Processing keys that one photo changes.
#[derive(Debug, Clone, PartialEq, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ProcessingChange {
    /// See [`Processing::blur_px`].
    pub blur_px: Option<f64>,
    /// See [`Processing::vignetting`].
    pub vignetting: Option<f64>,
    /// See [`Processing::full_well`].
    pub full_well: Option<f64>,
    /// See [`Processing::read_noise`].
    pub read_noise: Option<f64>,
    /// See [`Processing::contrast`].
    pub contrast: Option<f64>,
    /// See [`Processing::noise_reduction`].
    pub noise_reduction: Option<f64>,
    /// See [`Processing::sharpening`].
    pub sharpening: Option<f64>,
    /// See [`Processing::jpeg_quality`].
    pub jpeg_quality: Option<u8>,
}

impl Processing {
    /// With one photo's changes.
    pub fn changed(&self, change: &ProcessingChange) -> Processing {
        let mut p = self.clone();
        p.blur_px = change.blur_px.unwrap_or(p.blur_px);
        p.vignetting = change.vignetting.unwrap_or(p.vignetting);
        p.full_well = change.full_well.unwrap_or(p.full_well);
        p.read_noise = change.read_noise.unwrap_or(p.read_noise);
        p.contrast = change.contrast.unwrap_or(p.contrast);
        p.noise_reduction = change.noise_reduction.unwrap_or(p.noise_reduction);
        p.sharpening = change.sharpening.unwrap_or(p.sharpening);
        p.jpeg_quality = change.jpeg_quality.unwrap_or(p.jpeg_quality);
        p
    }

    /// Light as it is: no blur, noise or curve; what exact tests look at.
    pub fn none() -> Processing {
        Processing {
            blur_px: 0.0,
            vignetting: 0.0,
            full_well: 0.0,
            read_noise: 0.0,
            white_balance: [1.0; 3],
            srgb: false,
            contrast: 0.0,
            noise_reduction: 0.0,
            sharpening: 0.0,
            jpeg_quality: 100,
        }
    }
}
