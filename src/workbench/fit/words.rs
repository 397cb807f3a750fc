//! The fit in words for the terminal.

use super::camera_fit::CameraFit;
use crate::camera::LensModel;

/// A lens model's parameters with their units, in the covariance's order.
pub(super) fn names(model: LensModel) -> Vec<(&'static str, &'static str)> {
    let mut names = vec![("focal u", " px"), ("focal v", " px"), ("centre u", " px"), ("centre v", " px")];
    let distortion: &[&str] = match model {
        LensModel::BrownConrady => &["k1", "k2", "p1", "p2", "k3"],
        LensModel::KannalaBrandt => &["k1", "k2", "k3", "k4"],
    };
    names.extend(distortion.iter().map(|name| (*name, "")));
    names
}

/// Each parameter with its value and standard uncertainty, as people read them.
pub(super) fn parameter_rows(fit: &CameraFit) -> Vec<[String; 3]> {
    let values = super::state::parameters(&fit.profile.lens);
    let one = |((name, unit), (value, u)): ((&str, &str), (&f64, &f64))| {
        let places = (1 - u.max(1e-9).log10().floor() as i32).clamp(0, 9) as usize;
        [name.to_owned(), format!("{value:.places$}{unit}"), format!("{u:.places$}{unit}")]
    };
    names(fit.profile.lens.model).into_iter().zip(values.iter().zip(&fit.u_parameters)).map(one).collect()
}

/// Everything that the terminal says of a fit.
pub fn words(fit: &CameraFit) -> String {
    let p = &fit.profile;
    let [width, height] = p.image_size_px;
    let mut text = format!(
        "{}: {} lens, {width} x {height} px, from {} photos\nRMS {:.3} px per coordinate, corner noise {:.3} px ({:.2} \
         times what the detector states), {:.0} degrees of freedom\n\n",
        p.name,
        p.lens.model.name(),
        fit.photos.len(),
        fit.rms_px,
        p.u_noise_px.unwrap_or(f64::NAN),
        fit.noise_factor,
        fit.degrees_of_freedom
    );
    for [name, value, u] in parameter_rows(fit) {
        text += &format!("  {name:<9} {value:>14}  +- {u} (1 sigma)\n");
    }
    text += &format!(
        "\nPhoto to photo (1 sigma): focal length {:.3} % ({:.0} degrees of freedom), centre {:.2} px ({:.0})\n",
        100.0 * p.per_photo.u_focal_relative,
        fit.per_photo_degrees[0],
        p.per_photo.u_centre_px,
        fit.per_photo_degrees[1]
    );
    text += &format!("While rows were read the camera turned by {:.3} deg about each axis (1 sigma)\n", fit.turn_deg);
    text += &format!(
        "Board: bent by {:.2} mm from peak to valley, and by {:.2} mm differently in each photo (1 sigma); allowed for\n",
        fit.bend_mm, fit.flex_mm
    );
    text += &format!(
        "Seen in {:.0} % of the frame, tilted by up to {:.0} deg against each other, turned by up to {:.0} deg\n",
        100.0 * fit.coverage.share(),
        fit.coverage.tilt_deg,
        fit.coverage.turn_deg
    );
    if let Some(halves) = &fit.halves {
        text += &format!(
            "Two halves ({} and {} photos): projections differ by up to {:.2} px ({:.2} px besides focal length and \
             centre), {:.2} times what is stated ({})\n",
            halves.photos[0],
            halves.photos[1],
            halves.largest_px,
            halves.shape_px,
            halves.ratio.sqrt(),
            if halves.agree() { "they agree" } else { "they disagree" }
        );
    }
    for photo in &fit.rejected {
        text += &format!("Left out: {}: {}\n", photo.file, photo.why);
    }
    for advice in &fit.advice {
        text += &format!("{}: {}\n", if advice.forbids { "Not fit for use" } else { "Note" }, advice.text);
    }
    text += if fit.fit_for_use() { "Fit for use: yes\n" } else { "Fit for use: NO\n" };
    text
}
