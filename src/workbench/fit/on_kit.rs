//! A phone without a board: a camera from ordinary photos of a surveyed kit,
//! through the adjustment of `pose` with a lens of which next to nothing is known.

use std::path::PathBuf;

use nalgebra::{DMatrix, DVector};
use rayon::prelude::*;

use super::Error;
use super::field::{Field, TakenOut};
use super::words::{fit_for_use, names, row, table};
use crate::camera::{ExifMatch, Lens, LensModel, PerPhoto, Profile, ReadOut};
use crate::detect::{Sightings, find_markers};
use crate::marker::{Dictionary, Kit};
use crate::photo::{self, Exif};
use crate::pose::{self, PhotoView, Problem, Scene, adjust};
use crate::words::{Figure, Language, Phrase, phrase, say};

/// Few photos of a kit say little of a lens.
const LEAST_PHOTOS: usize = 6;
/// As for boards: most of the frame, and the mean focal length.
const MOST_U_PX: f64 = 0.5;
const MOST_U_FOCAL: f64 = 2e-3;
/// How a phone's photos differ from each other (common practice, no source):
/// too few photos of a kit say anything of it.
const PER_PHOTO: PerPhoto = PerPhoto { u_focal_relative: 0.002, u_centre_px: 5.0 };
/// What is known of a lens before the first photo, 1 sigma: focal lengths
/// relative and their ratio, centre as a part of the longer side, distortion.
const U_FOCAL: f64 = 0.08;
const U_ASPECT: f64 = 0.002;
const U_CENTRE: f64 = 0.02;
const U_BROWN: [f64; 5] = [0.3, 0.6, 0.003, 0.003, 0.6];
const U_KANNALA: [f64; 4] = [0.2, 0.2, 0.1, 0.1];

/// What one photo shows.
#[derive(Debug, Clone)]
pub struct KitPhoto {
    /// Its path.
    pub file: String,
    size_px: [u32; 2],
    exif: Exif,
    sightings: Sightings,
}

/// A camera from photos of a kit.
#[derive(Debug, Clone, PartialEq)]
pub struct KitFit {
    /// The camera.
    pub profile: Profile,
    /// Root mean square residual per coordinate, px.
    pub rms_px: f64,
    /// Noise found over noise that the detector states.
    pub noise_factor: f64,
    /// Photos used and given.
    pub photos: [usize; 2],
    /// Standard uncertainty of the projection, px, that nine tenths of the
    /// frame do not exceed; focal length and centre taken out, which every photo has its own of.
    pub u_frame_px: f64,
    /// Why it is not fit for use; empty where it is.
    pub objections: Vec<Phrase>,
}

/// Reads the photos and finds markers in them.
///
/// # Errors
/// A photo that can't be read.
pub fn look_at_kit(photos: &[PathBuf]) -> Result<Vec<KitPhoto>, Error> {
    let one = |path: &PathBuf| -> Result<KitPhoto, Error> {
        let photo = photo::read(path)?;
        let sightings = find_markers(&photo.luma, Dictionary::tag36h11());
        let size_px = [photo.width as u32, photo.height as u32];
        Ok(KitPhoto { file: path.display().to_string(), size_px, exif: photo.exif, sightings })
    };
    photos.par_iter().map(one).collect()
}

/// Fits a camera to photos of a kit, all by one camera at one zoom.
///
/// # Errors
/// Photos of several sizes, or photos that do not fix the kit.
pub fn fit_on_kit(kit: &Kit, photos: &[KitPhoto], name: &str, model: LensModel) -> Result<KitFit, Error> {
    let first = photos.first().ok_or_else(|| Error::Kit(phrase!("fit-no-photo")))?;
    if let Some(other) = photos.iter().find(|p| p.size_px != first.size_px) {
        let [w, h] = first.size_px;
        let (file, first) = (&other.file, &first.file);
        let why = phrase!("fit-no-same-size", file = file, width = w, height = h, first = first);
        return Err(Error::Kit(why));
    }
    let longer = f64::from(first.size_px[0].max(first.size_px[1]));
    let stated = first.exif.focal_length_35mm.map(|f| vec![f / 36.0 * longer]);
    let guesses = stated.unwrap_or_else(|| [0.65, 0.78, 0.95].map(|part| part * longer).to_vec());
    let mut best: Option<(Profile, Scene)> = None;
    let mut why = phrase!("fit-no-photo");
    for focal in guesses {
        let start = start(name, model, focal, first);
        let views = photos.iter().map(|p| PhotoView::from_sightings(kit, 0, &p.sightings)).collect();
        let problem = Problem { kit, cameras: vec![&start], photos: views };
        match adjust(&problem, &pose::Options::default()) {
            Ok(scene) if best.as_ref().is_none_or(|(_, b)| scene.variance < b.variance) => best = Some((start, scene)),
            Ok(_) => {}
            Err(e) => why = e.phrase(),
        }
    }
    let (start, scene) = best.ok_or(Error::Kit(why))?;
    Ok(told(start, &scene, photos.len()))
}

fn start(name: &str, model: LensModel, focal: f64, photo: &KitPhoto) -> Profile {
    let centre_px = photo.size_px.map(|n| (f64::from(n) - 1.0) / 2.0);
    let longer = f64::from(photo.size_px[0].max(photo.size_px[1]));
    let p = model.parameters();
    let mut covariance = DMatrix::zeros(p, p);
    let common = (U_FOCAL * focal).powi(2);
    for i in 0..2 {
        covariance[(i, i)] = common + (U_ASPECT * focal).powi(2);
        covariance[(i, 1 - i)] = common;
        covariance[(2 + i, 2 + i)] = (U_CENTRE * longer).powi(2);
    }
    let of_distortion: &[f64] = if model == LensModel::BrownConrady { &U_BROWN } else { &U_KANNALA };
    for (i, u) in of_distortion.iter().enumerate() {
        covariance[(4 + i, 4 + i)] = u * u;
    }
    let exif = ExifMatch {
        make: photo.exif.make.clone(),
        model: photo.exif.model.clone(),
        focal_length_mm: photo.exif.focal_length_mm,
    };
    Profile {
        name: name.to_owned(),
        lens: Lens { model, focal_px: [focal; 2], centre_px, distortion: [0.0; 5] },
        image_size_px: photo.size_px,
        u_noise_px: None,
        covariance: Some(covariance),
        per_photo: PER_PHOTO,
        read_out: ReadOut::default(),
        exif: (exif != ExifMatch::default()).then_some(exif),
    }
}

fn told(mut profile: Profile, scene: &Scene, given: usize) -> KitFit {
    let p = profile.lens.model.parameters();
    let (change, covariance) = scene.calibration(0);
    let covariance = covariance.view((0, 0), (p, p)).into_owned();
    let moved: DVector<f64> = DVector::from_column_slice(&super::state::parameters(&profile.lens)) + change;
    let mut values = [0.0; 9];
    values.copy_from_slice(moved.as_slice());
    profile.lens = super::state::with_parameters(&profile.lens, &values);
    let used: Vec<_> = scene.photos.iter().flatten().collect();
    let rms_px = (used.iter().map(|s| s.rms_px * s.rms_px).sum::<f64>() / used.len().max(1) as f64).sqrt();
    profile.u_noise_px = (rms_px > 0.0).then_some(rms_px);
    let field = Field::new(&profile.lens, profile.image_size_px, TakenOut::TurnFocalCentre);
    let mut u: Vec<f64> = field.uncertainties(&covariance).iter().map(|f| f.u_px.unwrap_or(f64::INFINITY)).collect();
    u.sort_by(f64::total_cmp);
    let u_frame_px = u.get(u.len() * 9 / 10).copied().unwrap_or(f64::INFINITY);
    let u_focal = (0..2).map(|i| covariance[(i, i)].sqrt() / profile.lens.focal_px[i]).fold(0.0, f64::max);
    let mut objections = Vec::new();
    if used.len() < LEAST_PHOTOS {
        objections.push(phrase!("fit-kit-too-few", count = used.len(), least = LEAST_PHOTOS));
    }
    if u_focal > MOST_U_FOCAL {
        let (u, most) = (Figure::fixed(100.0 * u_focal, 2), Figure::fixed(100.0 * MOST_U_FOCAL, 1));
        objections.push(phrase!("fit-kit-focal", u = u, most = most));
    }
    if u_frame_px > MOST_U_PX {
        let (u, most) = (Figure::fixed(u_frame_px, 2), Figure::plain(MOST_U_PX));
        objections.push(phrase!("fit-kit-frame", u = u, most = most));
    }
    profile.covariance = Some(covariance);
    KitFit { profile, rms_px, noise_factor: scene.variance.sqrt(), photos: [used.len(), given], u_frame_px, objections }
}

impl KitFit {
    /// What the terminal says.
    pub fn words(&self, language: Language) -> String {
        let p = &self.profile;
        let mut text = say!(
            language,
            "fit-kit-head",
            name = &p.name,
            model = p.lens.model.name(),
            used = self.photos[0],
            count = self.photos[1],
        );
        let (rms, factor) = (Figure::fixed(self.rms_px, 3), Figure::fixed(self.noise_factor, 2));
        text += &format!("\n{}\n\n", say!(language, "fit-kit-noise", rms = rms, factor = factor));
        text += &format!("{}\n", say!(language, "fit-parameters-head"));
        let values = super::state::parameters(&p.lens);
        let u = |i: usize| p.covariance.as_ref().map_or(f64::NAN, |c| c[(i, i)].max(0.0).sqrt());
        let names = names(p.lens.model, language).into_iter().enumerate();
        let rows: Vec<[String; 3]> = names.map(|(i, name)| row(name, values[i], u(i), language)).collect();
        text += &table(&rows);
        text += &format!("\n{}\n", say!(language, "fit-kit-known", u = Figure::fixed(self.u_frame_px, 2)));
        for why in &self.objections {
            text += &format!("{}\n", say!(language, "fit-advice", kind = "forbids", advice = why.clone()));
        }
        text + &fit_for_use(self.objections.is_empty(), language) + "\n"
    }
}
