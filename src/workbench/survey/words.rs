//! The survey in words for the terminal.

use super::compose::{CarrierSurvey, MarkerSurvey, Survey};
use super::length::LengthCheck;

/// Found minus stated of one marker, as people read it.
pub(super) fn marker_row(marker: &MarkerSurvey) -> [String; 6] {
    let three = |v: &nalgebra::Vector3<f64>| format!("{:+.2} {:+.2} {:+.2}", v.x, v.y, v.z);
    let plain = |v: &nalgebra::Vector3<f64>| format!("{:.2} {:.2} {:.2}", v.x, v.y, v.z);
    [
        marker.id.to_string(),
        marker.photos.to_string(),
        three(&marker.moved_mm),
        plain(&marker.u_shape_mm),
        plain(&marker.u_centre_mm),
        format!("{:+.2}", marker.turned_rad.norm().to_degrees()),
    ]
}

/// Heads of [`marker_row`].
pub(super) const HEADS: [&str; 6] =
    ["Marker", "Photos", "Found - file, mm (x y z)", "u among markers, mm", "u in the carrier, mm", "Turned, deg"];

/// One length and what the others say of it.
pub(super) fn length_words(check: &LengthCheck) -> String {
    let against = if check.alone { "marker sizes as stated" } else { "the others" };
    format!(
        "{}: {against} say {:.2} mm +- {:.2}, E_n {:+.2}: {}",
        check.length,
        check.expected_mm,
        check.u_expected_mm,
        check.normalized_error,
        if check.agrees() { "agrees" } else { "DISAGREES" }
    )
}

/// Where the scale comes from and what the printer did.
pub(super) fn scale_words(survey: &Survey) -> String {
    let [scale, u] = survey.print_scale.map(|s| 100.0 * s);
    let source = if survey.measured_scale { "the measured lengths" } else { "the stated marker sizes" };
    format!("Scale from {source}; markers are printed {scale:+.3} % +- {u:.3} % (1 sigma) of their stated sizes")
}

fn carrier_words(carrier: &CarrierSurvey) -> String {
    let rms = |f: &dyn Fn(&MarkerSurvey) -> f64| {
        (carrier.markers.iter().map(f).sum::<f64>() / (3.0 * carrier.markers.len() as f64)).sqrt()
    };
    let moved = rms(&|m| m.moved_mm.norm_squared());
    let known = rms(&|m| m.u_shape_mm.norm_squared());
    let mut text = format!(
        "{}: {} markers, off by {moved:.2} mm per coordinate, now known to {known:.3} mm among themselves\n",
        carrier.name,
        carrier.markers.len()
    );
    text += &format!(
        "  {:>6} {:>6}  {:<24}  {:<19}  {:<20}  {}\n",
        HEADS[0], HEADS[1], HEADS[2], HEADS[3], HEADS[4], HEADS[5]
    );
    for marker in &carrier.markers {
        let [id, photos, moved, shape, full, turned] = marker_row(marker);
        text += &format!("  {id:>6} {photos:>6}  {moved:<24}  {shape:<19}  {full:<20}  {turned:>7}\n");
    }
    text
}

/// Everything that the terminal says of a survey.
pub fn words(survey: &Survey) -> String {
    let used = survey.photos.iter().filter(|p| p.rms_px.is_some()).count();
    let mut text = format!(
        "{}: {} markers on {} carriers from {used} of {} photos; corners scatter {:.2} times what the detector states, \
         {:.0} degrees of freedom\n\n",
        survey.kit.name,
        survey.markers().count(),
        survey.carriers.len(),
        survey.photos.len(),
        survey.noise_factor,
        survey.degrees_of_freedom
    );
    for carrier in &survey.carriers {
        text += &carrier_words(carrier);
    }
    text += &format!("\n{}\n", scale_words(survey));
    for check in &survey.lengths {
        text += &format!("Length {}\n", length_words(check));
    }
    text += &format!(
        "The file's places were off by {:.2} mm per coordinate (1 sigma); each carrier's own frame is known to that \
         over the root of its markers\n",
        survey.u_found_mm
    );
    if let Some(halves) = &survey.halves {
        text += &format!(
            "Two halves ({} and {} photos): centres differ by {:.3} mm per coordinate, {:.2} mm at most (marker {}), \
             {:.2} times what is stated ({})\n",
            halves.photos[0],
            halves.photos[1],
            halves.rms_mm,
            halves.largest_mm.0,
            halves.largest_mm.1,
            halves.ratio.sqrt(),
            if halves.agree() { "they agree" } else { "they disagree" }
        );
    }
    for photo in survey.photos.iter().filter(|p| p.rms_px.is_none()) {
        text += &format!("Left out: {}: it shares no marker with the others\n", photo.file);
    }
    for left in &survey.left_out {
        text += &format!("Not surveyed: {}: {}\n", left.what, left.why);
    }
    for advice in &survey.advice {
        text += &format!("{}: {}\n", if advice.forbids { "Not fit for use" } else { "Note" }, advice.text);
    }
    text += if survey.fit_for_use() { "Fit for use: yes\n" } else { "Fit for use: NO\n" };
    text
}
