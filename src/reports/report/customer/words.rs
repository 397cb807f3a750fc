//! The statements of the customer's page.

use crate::quantity::Quantity;
use crate::record::{CheckRecord, JobRecord, Level, PhotoRecord, Verdict};
use crate::report::figures::{Measured, moment, plain, wanted, with_side};
use crate::report::label::{Label, datum, sentence};
use crate::report::todo::figures_are_void;

/// The answer in one sentence.
pub(super) fn answer(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Within => "The target stood where it had to stand, in everything that was checked.",
        Verdict::Outside => "The target did not stand where it had to stand.",
        Verdict::NotProven => "It is not proven that the target stood where it had to stand.",
        Verdict::Retake => "These photos do not prove where the target stood.",
    }
}

/// What the answer is for.
pub(super) const WHY: &str = "Cameras and radars that help the driver are adjusted in the workshop with a target that stands before \
     the vehicle. It has to stand at the right place, or the sensor learns a wrong direction. This page says where the \
     target stood, measured from photos.";

/// Whether anything forbids to rely on the single checks.
fn held_up(record: &JobRecord) -> bool {
    record.findings.iter().any(|f| matches!(f.level, Level::Void | Level::Stop) && !names_a_check(record, &f.code))
}

/// A stand that is off is said by its check; everything else that stops a job
/// is about the photos or the set-up as a whole.
fn names_a_check(record: &JobRecord, code: &str) -> bool {
    code.starts_with("stand-")
        && code != "stand-moved-between-photos"
        && record.checks.iter().any(|c| c.verdict == Verdict::Outside)
}

/// Proven, one statement each.
pub(super) fn proven(record: &JobRecord) -> Vec<String> {
    if held_up(record) {
        return Vec::new();
    }
    record.checks.iter().filter(|c| c.verdict == Verdict::Within).map(|c| format!("{}.", figures(c))).collect()
}

/// Not proven, or not looked at, one statement each.
pub(super) fn not_proven(record: &JobRecord) -> Vec<String> {
    let mut all = Vec::new();
    if figures_are_void(record) {
        all.push("The figures of these photos can't be trusted. The technician's report says why.".to_owned());
    } else if held_up(record) {
        all.push("Something has to be cleared up first. The technician's report says what.".to_owned());
    }
    all.extend(record.checks.iter().filter_map(|c| open(record, c)));
    let name = |quantity: &str| plain_name(quantity, None);
    let waived = record.sheet.waived.iter();
    all.extend(
        waived.map(|w| format!("{}: not checked, because {}.", name(&w.quantity), w.because.trim_end_matches('.'))),
    );
    all.extend(record.sheet.not_checked.iter().map(|q| format!("{}: not checked.", name(q))));
    if record.checks.is_empty() {
        all.push("The set-up sheet asks for no check.".to_owned());
    }
    all
}

fn open(record: &JobRecord, check: &CheckRecord) -> Option<String> {
    let name = plain_name(&check.quantity, Some(check));
    match check.verdict {
        Verdict::Retake if check.value.is_none() => Some(format!("{name}: the photos do not show it.")),
        _ if figures_are_void(record) => Some(format!("{name}: no figure that can be trusted.")),
        Verdict::NotProven if !check.untrusted.is_empty() => Some(format!("{name}: no figure that can be trusted.")),
        Verdict::Within => held_up(record).then(|| format!("{name}: not proven as long as that is open.")),
        Verdict::Outside => Some(format!("{}: this is outside what is allowed.", figures(check))),
        Verdict::NotProven | Verdict::Retake => {
            Some(format!("{}: too close to call with these photos.", figures(check)))
        }
    }
}

/// `How far the target stood from the nose: 1301.8 mm, give or take 1.8 mm; wanted 1300 ± 10 mm`.
fn figures(check: &CheckRecord) -> String {
    let quantity = Quantity::from_name(&check.quantity);
    let name = plain_name(&check.quantity, Some(check));
    let read = if check.evidence == "reading" { " (read off an instrument, not seen in the photos)" } else { "" };
    let Some(m) = Measured::of_check(check, quantity) else { return format!("{name}{read}: no value") };
    let side = m.side.map_or_else(String::new, |side| format!(" {}", side.long));
    let unit = plain_unit(&m.unit);
    let inches = m.inches.as_ref().map_or_else(String::new, |i| format!(" ({})", i.replace('±', "give or take")));
    let u = m.uncertainty.as_ref().map_or_else(String::new, |u| format!(", give or take {u} {unit}"));
    format!("{name}{read}: {} {unit}{side}{u}{inches}; required: {}", m.amount, allowed(check, quantity))
}

/// `1500 mm, at most 10 mm off`; limits that are not the same both ways as the sheet has them.
fn allowed(check: &CheckRecord, quantity: Option<Quantity>) -> String {
    let unit = plain_unit(&check.unit);
    match (check.lower, check.upper) {
        (Some(lower), Some(upper)) if (upper + lower - 2.0 * check.nominal).abs() < 1e-6 * (upper - lower).abs() => {
            format!("{}, at most {} {unit} off", with_side(quantity, check.nominal, unit), plain((upper - lower) / 2.0))
        }
        _ => wanted(check, quantity).replace(" deg", " degrees"),
    }
}

fn plain_unit(unit: &str) -> &str {
    if unit == "deg" { "degrees" } else { unit }
}

/// What a check is about in everybody's words.
fn plain_name(quantity: &str, check: Option<&CheckRecord>) -> String {
    use Quantity as Q;
    let from = check.and_then(|c| c.from.as_deref());
    let name = match Quantity::from_name(quantity) {
        Some(Q::Distance) => match from {
            Some(from) => format!("How far the target stood from {}", datum(from)),
            None => "How far the target stood from the vehicle".to_owned(),
        },
        Some(Q::LateralOffset | Q::LateralFromNose) => "How far the target stood off to one side".to_owned(),
        Some(Q::Height | Q::HeightFromNose) => "How high the target stood".to_owned(),
        Some(Q::Yaw) => "How squarely the target faced the vehicle".to_owned(),
        Some(Q::Pitch) => "How far the target leant towards or away from the vehicle".to_owned(),
        Some(Q::Roll) => "How level the target stood from side to side".to_owned(),
        _ => sentence(&Label::new(quantity, from).trade),
    };
    let extras = check.map(|c| Label::of_check(c).extras()).unwrap_or_default();
    if extras.is_empty() { name } else { format!("{name} ({})", extras.join(", ")) }
}

/// More photos than this are one sentence, so that the page stays one page.
const FEW_PHOTOS: usize = 4;

/// Which photos it rests on.
pub(super) fn photos(record: &JobRecord) -> Vec<String> {
    let one = |(i, photo): (usize, &PhotoRecord)| {
        let taken = photo.taken.as_deref().map_or_else(String::new, |t| format!(", taken {}", moment(t)));
        let unused = if photo.unused_because.is_some() { " (could not be used)" } else { "" };
        format!("Photo {}: {}{taken}{unused}", i + 1, photo.file)
    };
    let all: Vec<String> = record.photos.iter().enumerate().map(one).collect();
    if all.len() <= FEW_PHOTOS { all } else { vec![format!("{} photos. {}", all.len(), all.join("; "))] }
}

/// Whose limits they are.
pub(super) fn whose(record: &JobRecord) -> String {
    match record.sheet.source.trim() {
        "" => {
            "Nobody: the set-up sheet names no source for its limits. Ask the workshop where they come from.".to_owned()
        }
        source => source.to_owned(),
    }
}

/// What it means, and what it does not.
pub(super) fn meaning(record: &JobRecord) -> Vec<String> {
    let mut all = vec![
        "It is about the moment at which the photos were taken, and about the target's place only.".to_owned(),
        "It does not say that the adjustment itself succeeded, that the sensor works, or that the vehicle is safe."
            .to_owned(),
        "“Give or take” is the measurement's own uncertainty: the true figure lies within it in 95 of 100 cases.".to_owned(),
        "Whether the limits are the right ones for this vehicle is for the vehicle maker's service information and local \
         rules to say; they govern."
            .to_owned(),
        "The work is for trained people; this page replaces no step of the procedure. Lasers and lifted vehicles need \
         precautions of their own."
            .to_owned(),
    ];
    if let Some(result) = record.context.calibration.as_ref().and_then(|c| c.get("result")).and_then(|r| r.as_str()) {
        all.insert(
            2,
            format!("The technician noted “{result}” as what the scan tool said. That is no part of this proof."),
        );
    }
    all
}

/// Vehicle, order, date: what stands at the top.
pub(super) fn subject(record: &JobRecord) -> Vec<(&'static str, String)> {
    let c = &record.context;
    let sensor = if record.sheet.title.is_empty() { &c.setup } else { &record.sheet.title };
    let all = [
        ("What was set up", Some(sensor.clone())),
        ("Vehicle", c.vehicle.clone()),
        ("Vehicle identification number", c.vin.clone()),
        ("Repair order", c.series.clone()),
        ("Photos taken", c.taken.as_deref().map(moment)),
        ("Job", Some(record.job.clone())),
    ];
    all.into_iter().filter_map(|(name, value)| Some((name, value.filter(|v| !v.is_empty())?))).collect()
}
