//! From board photos to a camera: the order of the work.

use nalgebra::DMatrix;

use super::Error;
use super::adjustment::Adjustment;
use super::advice::{advice, better};
use super::coverage::Coverage;
use super::field::{Field, TakenOut};
use super::fitted::{CameraFit, FittedPhoto};
use super::halves::compare;
use super::normal::Covariance;
use super::record::{common_exif, sort_out};
use super::reject::{Rejected, worst};
use super::seen::BoardPhoto;
use super::start::{approach, start};
use super::target::Target;
use crate::camera::{LensModel, PerPhoto, Profile, ReadOut};
use crate::marker::Board;
use crate::words::phrase;

/// What is wanted.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Options {
    /// The profile's name.
    pub name: String,
    /// The lens model.
    pub model: LensModel,
}

/// Fits a camera to photos of a board. Where two halves of the photos do not
/// agree on the lens, the other lens model is tried and named where it fits better.
///
/// # Errors
/// No photo, or too few, show the board; or no lens explains them.
pub fn fit_camera(board: &Board, photos: &[BoardPhoto], options: &Options) -> Result<CameraFit, Error> {
    let mut fit = fit_model(board, photos, options, &Rival { rms_px: f64::INFINITY, photos: 0, focal_px: None })?;
    if fit.halves.as_ref().is_some_and(|h| !h.agree() || !h.alike()) {
        let model = match options.model {
            LensModel::BrownConrady => LensModel::KannalaBrandt,
            LensModel::KannalaBrandt => LensModel::BrownConrady,
        };
        let focal_px = Some(fit.profile.lens.focal_px.iter().sum::<f64>() / 2.0);
        let rival = Rival { rms_px: fit.rms_px, photos: fit.photos.len(), focal_px };
        let other = fit_model(board, photos, &Options { name: options.name.clone(), model }, &rival).ok();
        fit.advice.extend(other.and_then(|other| better(&fit, &other)));
    }
    Ok(fit)
}

/// Of its rival's residuals a fit may have this part when its weights are found; what follows
/// changes them by a hundredth or so, and a tenth less is asked for in the end.
const NEARLY: f64 = 0.95;
/// Noise that still moves by more than this, relative, may fall far.
const STILL: f64 = 0.05;

/// What a fit has to beat, and may begin from.
struct Rival {
    rms_px: f64,
    photos: usize,
    focal_px: Option<f64>,
}

/// Fits one lens model; gives up where it leaves larger residuals than its rival, or fits fewer photos.
fn fit_model(board: &Board, photos: &[BoardPhoto], options: &Options, rival: &Rival) -> Result<CameraFit, Error> {
    let target = Target::new(board);
    let (kept, mut rejected) = sort_out(photos);
    let few = |left: usize, rejected: &[Rejected]| Error::TooFew {
        left,
        photos: photos.len(),
        why: rejected.iter().map(|r| phrase!("fit-of", what = &r.file, why = r.why.clone())).collect(),
    };
    if kept.len() < 3 {
        return Err(few(kept.len(), &rejected));
    }
    let size_px = kept[0].size_px;
    let guess =
        start(&target, &kept, options.model, size_px, rival.focal_px).ok_or(Error::NoStart { photos: kept.len() })?;
    let mut usable = Vec::new();
    let mut found = Vec::new();
    for (photo, pose) in kept.into_iter().zip(guess.poses) {
        match pose {
            Some(pose) => {
                usable.push(photo);
                found.push(pose);
            }
            None => rejected.push(Rejected { file: photo.file.clone(), why: phrase!("fit-out-no-pose") }),
        }
    }
    if usable.len() < 3 {
        return Err(few(usable.len(), &rejected));
    }
    let not_settled = || Error::NotSettled { photos: photos.len() };
    let mut work = approach(&target, usable, guess.lens, found).ok_or_else(not_settled)?;
    let covariance = finish_without_strangers(&mut work, &mut rejected, rival).ok_or_else(not_settled)?;
    report(&work, &covariance, rejected, options, size_px).ok_or_else(not_settled)
}

/// Adjusts, leaving out one photo after the other that disagrees with the rest.
fn finish_without_strangers(work: &mut Adjustment, rejected: &mut Vec<Rejected>, rival: &Rival) -> Option<Covariance> {
    let most = work.photos.len() / 3;
    for left_out in 0.. {
        let noise_moved = work.weigh()?;
        // What is left to do hardly changes residuals, unless it is a photo that is left out.
        if rms_px(&residuals(work)) > NEARLY * rival.rms_px && noise_moved < STILL && worst(work).is_none() {
            return None;
        }
        let covariance = work.converge()?;
        let Some((photo, why)) = worst(work).filter(|_| left_out < most) else { return Some(covariance) };
        rejected.push(Rejected { file: work.photos[photo].file.clone(), why });
        let keep: Vec<usize> = (0..work.photos.len()).filter(|i| *i != photo).collect();
        if keep.len() < rival.photos {
            return None;
        }
        *work = work.only(&keep);
    }
    None
}

/// Everything about a finished adjustment.
fn report(
    work: &Adjustment,
    covariance: &Covariance,
    rejected: Vec<Rejected>,
    options: &Options,
    size_px: [u32; 2],
) -> Option<CameraFit> {
    let lens = work.state.lens;
    let p = lens.model.parameters();
    let per_photo_degrees = work.spread_degrees(covariance);
    let field = Field::new(&lens, size_px, TakenOut::Turn);
    let shape = Field::new(&lens, size_px, TakenOut::TurnFocalCentre);
    let halves = compare(work, &field, &shape, per_photo_degrees[0].min(per_photo_degrees[1]));
    // Where the halves differ by more than is stated, their difference says what
    // the uncertainty is: residuals alone do not see errors of the model.
    let enlarge = halves.as_ref().map_or(1.0, |h| h.ratio.max(1.0));
    let of_lens: DMatrix<f64> = &covariance.lens * enlarge;
    let of_lens = (&of_lens + of_lens.transpose()) * 0.5;
    let misfit = work.misfit(&work.state)?;
    let degrees_of_freedom = misfit.rows - work.determined(covariance);
    let photos = fitted_photos(work);
    let residuals_px = residuals(work);
    let rms_px = rms_px(&residuals_px);
    let profile = Profile {
        name: options.name.clone(),
        lens,
        image_size_px: size_px,
        u_noise_px: Some(rms_px * (misfit.rows / degrees_of_freedom.max(1.0)).sqrt()),
        covariance: Some(of_lens.clone()),
        per_photo: per_photo(work, per_photo_degrees),
        read_out: ReadOut::of_turns(work.spread.turn_rad),
        exif: common_exif(&work.photos),
    };
    let mut fit = CameraFit {
        profile,
        u_parameters: (0..p).map(|i| of_lens[(i, i)].max(0.0).sqrt()).collect(),
        rms_px,
        noise_factor: work.noise,
        degrees_of_freedom,
        per_photo_degrees,
        photos,
        rejected,
        bend_mm: work.target.bend_mm(&work.state.shape),
        flex_mm: work.spread.flex_mm,
        turn_deg: work.spread.turn_rad.to_degrees(),
        coverage: Coverage::new(work, size_px),
        field: field.uncertainties(&of_lens),
        shape_field: shape.uncertainties(&of_lens),
        halves,
        residuals_px,
        advice: Vec::new(),
    };
    fit.advice = advice(&fit);
    Some(fit)
}

/// The sigmas from the photos; where too few photos say anything, not less
/// than a phone's common ones (as for a camera file that states none).
fn per_photo(work: &Adjustment, degrees: [f64; 2]) -> PerPhoto {
    const LEAST_DEGREES: f64 = 3.0;
    let (focal, centre) = (work.spread.focal_relative, work.spread.centre_px);
    PerPhoto {
        u_focal_relative: if degrees[0] < LEAST_DEGREES { focal.max(2e-3) } else { focal },
        u_centre_px: if degrees[1] < LEAST_DEGREES { centre.max(5.0) } else { centre },
    }
}

fn fitted_photos(work: &Adjustment) -> Vec<FittedPhoto> {
    let one = |j: usize| {
        let (mut sum, mut count) = (0.0, 0);
        let eye = work.eye(j);
        for (_, seen) in work.photos[j].seen.iter().enumerate().filter(|(k, _)| work.weights[j][*k] > 0.0) {
            if let Some(r) = eye.residual_px(seen) {
                sum += r.norm_squared();
                count += r.len();
            }
        }
        FittedPhoto {
            file: work.photos[j].file.clone(),
            points: [work.photos[j].points(), work.target.points()],
            rms_px: (sum / f64::max(count as f64, 1.0)).sqrt(),
            focal_relative: work.state.photos[j].focal_relative,
            centre_px: work.state.photos[j].centre_px,
        }
    };
    (0..work.photos.len()).map(one).collect()
}

/// Root mean square per coordinate.
fn rms_px(residuals_px: &[([f64; 2], [f64; 2])]) -> f64 {
    let squares: f64 = residuals_px.iter().map(|(_, r)| r[0] * r[0] + r[1] * r[1]).sum();
    (squares / (2.0 * residuals_px.len() as f64)).sqrt()
}

fn residuals(work: &Adjustment) -> Vec<([f64; 2], [f64; 2])> {
    let mut all = Vec::new();
    for (j, photo) in work.photos.iter().enumerate() {
        let eye = work.eye(j);
        for (_, seen) in photo.seen.iter().enumerate().filter(|(k, _)| work.weights[j][*k] > 0.0) {
            let Some(r) = eye.residual_px(seen) else { continue };
            for (i, found) in seen.found_px.iter().enumerate() {
                all.push(([found.x, found.y], [r[2 * i], r[2 * i + 1]]));
            }
        }
    }
    all
}
