//! From the rooms' types to the record's.

use std::collections::BTreeMap;

use time::format_description::well_known::Rfc3339;

use super::assign::Assignment;
use super::context::{context, inputs, sheet};
use super::doubts::{detectable_records, sensitivity_records};
use super::look::Looked;
use super::outline::outlines;
use super::plan::ratio_by_photo;
use super::ride_height::ride_height;
use crate::folder::JobFolder;
use crate::geom::Pose;
use crate::marker::Role;
use crate::measure::{self, Measurement};
use crate::pose::{Problem, Scene, SolvedPhoto, Source};
use crate::quantity::{Estimate, Quantity};
use crate::record::{
    AttachmentRecord, BudgetLine, CarrierRecord, CarrierUncertainty, CheckRecord, FindingRecord, JobRecord,
    MarkerRecord, MeasuredRecord, MovedRecord, OtherwiseRecord, PhotoRecord, ReadingRecord, Tool, Verdict,
};
use crate::setup::Check;
use crate::verdict::findings::{Compared, Detectable, Moved, PhotoProblem};
use crate::verdict::{Checked, Finding, Level, Otherwise, Sensitivity, body, sentences};
use crate::words::{Language, Phrase, phrase};

/// Everything that one verification produced.
pub(super) struct Parts<'a> {
    pub(super) folder: &'a JobFolder,
    pub(super) photos: &'a [Looked],
    pub(super) assignment: &'a Assignment,
    pub(super) problem: &'a Problem<'a>,
    pub(super) scene: Option<&'a Scene>,
    pub(super) why_no_scene: Option<&'a Phrase>,
    pub(super) measurement: Option<&'a Measurement>,
    pub(super) measured: BTreeMap<String, (Quantity, Estimate)>,
    pub(super) checks: &'a [Checked],
    pub(super) without: Option<&'a [Checked]>,
    pub(super) readings: &'a [Compared],
    pub(super) findings: &'a [Finding],
    pub(super) detectable: &'a [Detectable],
    pub(super) sensitivity: &'a [Sensitivity],
    pub(super) phases: &'a [Moved],
    /// Names of bodies that are where a stand stood before it was moved.
    pub(super) earlier_stands: &'a [String],
}

/// The record of a job.
pub(super) fn record(parts: &Parts) -> JobRecord {
    let folder = parts.folder;
    let of_checks = Verdict::of_checks(parts.checks.iter().map(|c| c.verdict));
    let unmeasured = if parts.scene.is_none() { Verdict::Retake } else { of_checks };
    let verdict = unmeasured.limited_by(parts.findings.iter().map(|f| f.level));
    let reason = reason(parts, verdict);
    JobRecord {
        format: "result/1".into(),
        tool: Tool { name: "baywitness".into(), version: env!("CARGO_PKG_VERSION").into() },
        job: folder.job.job.clone(),
        context: context(parts),
        sheet: sheet(folder),
        inputs: inputs(parts),
        verdict,
        reason: reason.say(Language::English),
        reason_phrase: Some(reason),
        reference_line: folder.setup.reference_line.name().into(),
        checks: checks(parts, parts.checks),
        checks_without_readings: parts.without.map(|c| checks(parts, c)),
        measured: parts.measured.iter().map(|(key, (q, e))| (key.clone(), measured(*q, e))).collect(),
        carriers: carriers(parts),
        photos: photos(parts),
        readings: readings(parts),
        attachments: folder
            .attachments
            .iter()
            .map(|a| AttachmentRecord { file: a.name.clone(), kind: a.kind.clone(), sha256: a.sha256.clone() })
            .collect(),
        findings: parts.findings.iter().map(finding).collect(),
        detectable: detectable_records(parts.detectable, parts.earlier_stands),
        sensitivity: sensitivity_records(folder, parts.photos, parts.sensitivity),
        phases: parts.phases.iter().map(moved).collect(),
        ride_height: ride_height(&folder.setup, &folder.job, &parts.measured, wheelbase(parts)),
        next_photo: None,
        positions: Vec::new(),
        first: None,
        attempts: Vec::new(),
    }
}

pub(super) fn finding(f: &Finding) -> FindingRecord {
    FindingRecord {
        code: f.code.into(),
        level: f.level,
        carrier: f.carrier.clone(),
        photo: f.photo.clone(),
        message: f.message.say(Language::English),
        message_phrase: Some(f.message.clone()),
    }
}

/// The measured wheelbase, else the typed one.
fn wheelbase(parts: &Parts) -> Option<f64> {
    let measured = parts.measured.get(Quantity::Wheelbase.name()).map(|(_, e)| e.value);
    measured.or(parts.folder.job.vehicle.wheelbase_mm)
}

fn moved(m: &Moved) -> MovedRecord {
    MovedRecord {
        body: m.name.clone(),
        moved_mm: m.mm,
        moved_deg: m.degrees,
        u_mm: m.u_mm,
        u_deg: m.u_degrees,
        chance: m.chance,
        moved: m.is_proven(),
    }
}

fn finite(x: f64) -> Option<f64> {
    x.is_finite().then_some(x)
}

/// One sentence for people.
fn reason(parts: &Parts, verdict: Verdict) -> Phrase {
    if let Some(why) = parts.why_no_scene {
        return phrase!("verdict-why-nothing", reason = why.clone());
    }
    if let Some(f) = parts.findings.iter().find(|f| f.level == Level::Void) {
        return f.message.clone();
    }
    match verdict {
        Verdict::Within => phrase!("verdict-why-within", checks = parts.checks.len()),
        Verdict::Outside => why_outside(parts),
        Verdict::Retake => match of_verdict(parts, verdict).next() {
            Some((check, c)) => phrase!("verdict-why-retake", quantity = check.quantity.phrase(), reason = why(c)),
            None => phrase!("verdict-why-retake-bare"),
        },
        Verdict::NotProven => {
            if let Some(f) = parts.findings.iter().find(|f| f.level == Level::Stop) {
                return f.message.clone();
            }
            match of_verdict(parts, verdict).next() {
                Some((check, c)) => {
                    phrase!("verdict-why-not-proven", quantity = check.quantity.phrase(), reason = why(c))
                }
                None => phrase!("verdict-why-no-checks"),
            }
        }
    }
}

fn of_verdict<'a>(parts: &'a Parts, verdict: Verdict) -> impl Iterator<Item = (&'a Check, &'a Checked)> {
    parts.folder.setup.checks.iter().zip(parts.checks).filter(move |(_, c)| c.verdict == verdict)
}

fn why(checked: &Checked) -> Phrase {
    checked.reason.clone().unwrap_or_else(|| phrase!("verdict-no-value"))
}

fn why_outside(parts: &Parts) -> Phrase {
    let mut outside: Vec<_> = of_verdict(parts, Verdict::Outside).collect();
    outside.sort_by_key(|(check, _)| check.quantity.move_order());
    let names: Vec<Phrase> = outside.iter().map(|(check, _)| check.quantity.phrase()).collect();
    // Outside in any case, but the finding comes first: nothing is moved before it is settled.
    match parts.findings.iter().find(|f| f.level == Level::Stop && f.holds_moves()) {
        Some(f) if f.spoils_any() => {
            sentences(f.message.clone(), [phrase!("verdict-why-outside-anyway", quantities = names)])
        }
        Some(f) => sentences(f.message.clone(), [phrase!("verdict-why-outside", quantities = names)]),
        None => phrase!("verdict-why-outside", quantities = names),
    }
}

fn checks(parts: &Parts, checked: &[Checked]) -> Vec<CheckRecord> {
    parts.folder.setup.checks.iter().zip(checked).map(|(check, c)| check_record(parts, check, c)).collect()
}

fn check_record(parts: &Parts, check: &Check, c: &Checked) -> CheckRecord {
    let estimate = c.answer.as_ref().map(|a| a.estimate);
    let by_reading = check.is_decided_by_reading(&parts.folder.kit);
    CheckRecord {
        quantity: check.quantity.name().into(),
        from: check.from.as_ref().map(|f| f.name().to_owned()),
        target: check.target.clone(),
        step: check.step.clone(),
        reference_line: c.line.name().into(),
        unit: check.quantity.unit().symbol().into(),
        nominal: check.nominal,
        lower: check.lower,
        upper: check.upper,
        tolerance_basis: check.tolerance_basis.clone(),
        in_inches: check.in_inches,
        evidence: if by_reading { "reading" } else { "photos" }.into(),
        value: estimate.map(|e| e.value),
        standard_uncertainty: estimate.map(|e| e.standard_uncertainty),
        degrees_of_freedom: estimate.and_then(|e| finite(e.degrees_of_freedom)),
        coverage_factor: estimate.map(|e| e.coverage_factor()),
        expanded_uncertainty: estimate.map(|e| e.expanded_uncertainty()),
        conformance_probability: c.decided.filter(|_| c.untrusted.is_empty()).map(|d| d.conformance_probability),
        verdict: c.verdict,
        can_decide: c.decided.is_some_and(|d| d.can_decide),
        grade: c.decided.filter(|_| c.untrusted.is_empty()).and_then(|d| d.grade).map(|g| g.words().to_owned()),
        move_by: c.move_by,
        correction: c.correction.say(Language::English),
        correction_phrase: Some(c.correction.clone()),
        reason: c.reason.as_ref().map(|r| r.say(Language::English)),
        reason_phrase: c.reason.clone(),
        untrusted: c.untrusted.iter().map(|code| (*code).to_owned()).collect(),
        otherwise: c.otherwise.iter().map(otherwise).collect(),
        budget: c.answer.as_ref().map(|a| budget(parts, a)).unwrap_or_default(),
    }
}

fn otherwise(o: &Otherwise) -> OtherwiseRecord {
    OtherwiseRecord {
        assuming: o.assuming.say(Language::English),
        assuming_phrase: Some(o.assuming.clone()),
        value: o.estimate.map(|e| e.value),
        expanded_uncertainty: o.estimate.map(|e| e.expanded_uncertainty()),
        verdict: o.verdict,
    }
}

/// Contributions by source, those of one kind together, largest first.
fn budget(parts: &Parts, answer: &measure::Answer) -> Vec<BudgetLine> {
    let mut by_name: BTreeMap<String, (Phrase, f64)> = BTreeMap::new();
    for (origin, u) in &answer.contributions {
        let phrase = origin_words(parts, origin);
        by_name.entry(phrase.say(Language::English)).or_insert((phrase, 0.0)).1 += u * u;
    }
    let total: f64 = by_name.values().map(|(_, v)| v).sum();
    let mut lines: Vec<BudgetLine> = by_name
        .into_iter()
        .filter(|(_, (_, v))| *v > 1e-6 * total)
        .map(|(source, (phrase, v))| BudgetLine {
            source,
            source_phrase: Some(phrase),
            standard_uncertainty: v.sqrt(),
            share: v / total,
        })
        .collect();
    lines.sort_by(|a, b| b.share.total_cmp(&a.share));
    lines
}

fn origin_words(parts: &Parts, origin: &measure::Origin) -> Phrase {
    use measure::Origin as O;
    match origin {
        O::Photos(Source::Image) => phrase!("verdict-budget-corners"),
        O::Photos(Source::Calibration(_)) => phrase!("verdict-budget-calibration"),
        O::Photos(Source::Focal(_)) => phrase!("verdict-budget-focal"),
        O::Photos(Source::Centre(_)) => phrase!("verdict-budget-centre"),
        O::Photos(Source::Edge(_)) => phrase!("verdict-budget-edge"),
        O::Photos(Source::Turn(_)) => phrase!("verdict-budget-turn"),
        O::Photos(Source::Layout) => phrase!("verdict-budget-layout"),
        O::Photos(Source::Scale) => phrase!("verdict-budget-scale"),
        O::SeatingOffset(k) | O::SeatingAngle(k) => {
            phrase!("verdict-budget-seating", body = body(&parts.folder.kit, *k))
        }
        O::Wheelbase => phrase!("verdict-budget-wheelbase"),
        O::NoseFromRearAxle => phrase!("verdict-budget-nose"),
        O::FloorBelowHub => phrase!("verdict-budget-hub-height"),
        O::Datum(i) => phrase!("verdict-budget-datum", datum = &parts.folder.setup.datums[*i].name),
        O::Reading(i) => phrase!("verdict-budget-reading", quantity = parts.folder.job.readings[*i].quantity.phrase()),
    }
}

fn measured(quantity: Quantity, e: &Estimate) -> MeasuredRecord {
    MeasuredRecord {
        unit: quantity.unit().symbol().into(),
        value: e.value,
        standard_uncertainty: e.standard_uncertainty,
        degrees_of_freedom: finite(e.degrees_of_freedom),
    }
}

fn carriers(parts: &Parts) -> Vec<CarrierRecord> {
    let Some(measurement) = parts.measurement else { return Vec::new() };
    let solved = parts.folder.kit.carriers.iter().zip(&measurement.carriers);
    solved
        .filter(|(c, _)| c.role != Role::Card && !parts.earlier_stands.contains(&c.name))
        .filter_map(|(c, pose)| {
            let pose = pose.as_ref()?;
            let (t, q) = (pose.vehicle_from_carrier.origin_mm(), pose.vehicle_from_carrier.rotation());
            let in_vehicle = |p: nalgebra::Point3<f64>| {
                let p = pose.vehicle_from_carrier.point(&p);
                [p.x, p.y, p.z]
            };
            Some(CarrierRecord {
                name: c.name.clone(),
                role: c.role.name().into(),
                position_mm: [t.x, t.y, t.z],
                quaternion_wxyz: [q.w, q.i, q.j, q.k],
                standard_uncertainty: CarrierUncertainty {
                    position_mm: pose.u_position_mm,
                    rotation_deg: pose.u_rotation_deg,
                },
                markers_mm: c.markers.iter().map(|m| m.corners_mm().map(in_vehicle)).collect(),
            })
        })
        .collect()
}

fn photos(parts: &Parts) -> Vec<PhotoRecord> {
    // Photos of other attempts are in those attempts' records.
    (0..parts.folder.photos.len()).map(|j| photo(parts, j)).collect()
}

fn photo(parts: &Parts, j: usize) -> PhotoRecord {
    let looked = &parts.photos[j];
    let solved = parts.scene.and_then(|s| s.photos[j].as_ref());
    let camera = parts.assignment.photos[j].as_ref();
    let station = parts.measurement.and_then(|m| m.photos[j].as_ref());
    PhotoRecord {
        file: looked.name.clone(),
        step: parts.folder.photos[j].step.map(|s| parts.folder.setup.steps[s].clone()),
        phase: parts.folder.photos[j].phase.map(|p| p.name().to_owned()),
        camera: camera.ok().map(|c| parts.assignment.cameras[*c].name.clone()),
        unused_because: camera.err().map(|p| p.phrase().say(Language::English)),
        unused_because_phrase: camera.err().map(PhotoProblem::phrase),
        width_px: looked.width as u32,
        height_px: looked.height as u32,
        orientation: looked.exif.orientation.map_or(1, |o| o.0),
        taken: looked.exif.taken.and_then(|t| t.format(&Rfc3339).ok()),
        private: looked.exif.private.iter().map(|&kind| kind.to_owned()).collect(),
        private_values: Vec::new(),
        rendered: looked.traces.rendered.iter().map(|mark| mark.name().to_owned()).collect(),
        rms_px: solved.map(|s| s.rms_px),
        focal_px: solved.map(|s| s.lens.focal_px),
        centre_px: solved.map(|s| s.lens.centre_px),
        edge_offset_px: looked.sightings.edge_offset_px + solved.map_or(0.0, |s| s.edge_offset_px),
        blur_px: looked.sightings.blur_px,
        noise_ratio: parts.scene.and_then(|s| ratio_by_photo(parts.problem, s, j)),
        gain_spread: looked.sightings.gain_spread,
        position_mm: station.map(|p| p.origin_mm().into()),
        direction: station.map(|p: &Pose<_, _>| p.direction(&nalgebra::Vector3::z()).into()),
        outlines: match (parts.scene, solved) {
            (Some(scene), Some(solved)) => outlines(&parts.folder.kit, scene, solved),
            _ => Vec::new(),
        },
        markers: markers(parts, j, solved),
    }
}

fn markers(parts: &Parts, j: usize, solved: Option<&SolvedPhoto>) -> Vec<MarkerRecord> {
    let views = &parts.problem.photos[j].views;
    parts.photos[j]
        .sightings
        .markers
        .iter()
        .map(|m| {
            let at = views.iter().position(|v| v.id == m.id);
            let view = at.map(|i| &views[i]);
            let result = at.and_then(|i| solved?.views.get(i));
            let offset = result.map_or(0.0, |r| r.edge_offset_px);
            let outward = view.map(|v| v.outward());
            let used = result.map_or([false; 4], |r| r.used);
            let squares: Vec<f64> = result
                .map(|r| (0..4).filter(|i| used[*i]).map(|i| r.residual_px[i].norm_squared()).collect())
                .unwrap_or_default();
            let count = 2 * squares.len();
            MarkerRecord {
                id: m.id,
                carrier: parts.folder.kit.marker(m.id).map(|(k, _)| parts.folder.kit.carriers[k].name.clone()),
                corners_px: std::array::from_fn(|i| {
                    let shift = outward.as_ref().map_or_else(nalgebra::Vector2::zeros, |o| o[i] * offset);
                    (m.corners_px[i] - shift).into()
                }),
                residual_px: (count > 0).then(|| (squares.iter().sum::<f64>() / count as f64).sqrt()),
                residuals_px: result.map(|r| r.residual_px.map(Into::into)),
                used: count > 0,
                corners_used: used,
            }
        })
        .collect()
}

fn readings(parts: &Parts) -> Vec<ReadingRecord> {
    parts
        .folder
        .job
        .readings
        .iter()
        .zip(parts.readings)
        .map(|(reading, c)| ReadingRecord {
            quantity: reading.quantity.name().into(),
            from: reading.from.as_ref().map(|f| f.name().to_owned()),
            unit: reading.quantity.unit().symbol().into(),
            value: reading.value,
            standard_uncertainty: reading.u,
            instrument: reading.instrument.clone(),
            photo_value: c.photo.map(|p| p.value),
            photo_standard_uncertainty: c.photo.map(|p| p.standard_uncertainty),
            normalized_error: c.normalized_error,
            agrees: c.normalized_error.map(|e| e.abs() <= 1.0),
            used: c.used,
        })
        .collect()
}
