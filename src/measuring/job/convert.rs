//! From the rooms' types to the record's.

use std::collections::BTreeMap;

use time::format_description::well_known::Rfc3339;

use super::assign::Assignment;
use super::doubts::{detectable_records, sensitivity_records};
use super::look::Looked;
use super::outline::outlines;
use super::plan::ratio_by_photo;
use super::ride_height::ride_height;
use crate::folder::{Calibration, InputFile, JobFolder, Origin};
use crate::geom::Pose;
use crate::marker::Role;
use crate::measure::{self, Measurement};
use crate::pose::{Problem, Scene, SolvedPhoto, Source};
use crate::quantity::{Estimate, Quantity};
use crate::record::{
    AttachmentRecord, BudgetLine, CarrierRecord, CarrierUncertainty, CheckRecord, Context, FindingRecord, InputRecord,
    JobRecord, KitUpkeep, MarkerRecord, MeasuredRecord, MovedRecord, OtherwiseRecord, PhotoRecord, PrerequisiteRecord,
    ReadingRecord, SheetRecord, Tool, Verdict, WaiverRecord,
};
use crate::setup::{Check, DecisionRule};
use crate::verdict::findings::{Compared, Detectable, Moved, not_checked};
use crate::verdict::{Checked, Finding, Level, Otherwise, Sensitivity};

/// Everything that one verification produced.
pub(super) struct Parts<'a> {
    pub(super) folder: &'a JobFolder,
    pub(super) photos: &'a [Looked],
    pub(super) assignment: &'a Assignment,
    pub(super) problem: &'a Problem<'a>,
    pub(super) scene: Option<&'a Scene>,
    pub(super) why_no_scene: Option<&'a str>,
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
    JobRecord {
        reason_phrase: None,
        format: "result/1".into(),
        tool: Tool { name: "baywitness".into(), version: env!("CARGO_PKG_VERSION").into() },
        job: folder.job.job.clone(),
        context: context(parts),
        sheet: sheet(folder),
        inputs: inputs(parts),
        verdict,
        reason: reason(parts, verdict),
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
        message_phrase: None,
        code: f.code.into(),
        level: f.level,
        carrier: f.carrier.clone(),
        photo: f.photo.clone(),
        message: f.message.clone(),
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

fn context(parts: &Parts) -> Context {
    let job = &parts.folder.job;
    let incomplete = parts.findings.iter().any(|f| f.code == "record-incomplete");
    Context {
        setup: parts.folder.setup.name.clone(),
        kit: parts.folder.kit.name.clone(),
        cameras: parts.assignment.cameras.iter().map(|c| c.name.clone()).collect(),
        vehicle: job.vehicle.description.clone(),
        vin: job.vehicle.vin.clone(),
        series: job.series.clone(),
        attempt: job.attempt,
        bay: job.bay.clone(),
        technician: job.technician.clone(),
        taken: job.taken.and_then(|t| t.format(&Rfc3339).ok()),
        prerequisites: job.prerequisites.clone(),
        record_complete: !incomplete,
        calibration: job.calibration.as_ref().map(calibration),
        kit_upkeep: kit_upkeep(parts),
        language: job.language,
    }
}

/// Serial and survey of the kit, against the day of the photos.
fn kit_upkeep(parts: &Parts) -> Option<KitUpkeep> {
    let kit = &parts.folder.kit;
    if kit.serial.is_none() && kit.survey_due.is_none() {
        return None;
    }
    let taken = parts.folder.job.taken.or_else(|| parts.photos.iter().find_map(|p| p.exif.taken));
    Some(KitUpkeep {
        serial: kit.serial.clone(),
        survey_due: kit.survey_due.map(|d| d.to_string()),
        survey_overdue: kit.survey_due.and_then(|due| taken.map(|t| t.date() > due)),
    })
}

fn calibration(c: &Calibration) -> BTreeMap<String, serde_json::Value> {
    let mut map = BTreeMap::new();
    map.insert("result".into(), c.result.clone().into());
    if let Some(at) = c.at.and_then(|t| t.format(&Rfc3339).ok()) {
        map.insert("at".into(), at.into());
    }
    let angles =
        [("reported_azimuth_deg", c.reported_azimuth_deg), ("reported_elevation_deg", c.reported_elevation_deg)];
    for (key, value) in angles {
        if let Some(value) = value {
            map.insert(key.into(), value.into());
        }
    }
    map
}

fn sheet(folder: &JobFolder) -> SheetRecord {
    let setup = &folder.setup;
    let mut procedure = BTreeMap::new();
    if let Some(p) = &setup.procedure {
        let opened = p.opened.map(|d| d.to_string());
        let lines =
            [("document", &p.document), ("revision", &p.revision), ("opened", &opened), ("applies to", &p.applies_to)];
        for (key, value) in lines {
            if let Some(value) = value {
                procedure.insert(key.to_owned(), value.clone());
            }
        }
    }
    SheetRecord {
        title: setup.title.clone(),
        source: setup.source.clone(),
        decision_rule: match setup.decision.rule {
            DecisionRule::Guarded => "guarded",
            DecisionRule::Simple => "simple",
            DecisionRule::Binary => "binary",
            DecisionRule::FourWay => "four_way",
        }
        .into(),
        conformance_probability: setup.decision.conformance_probability,
        procedure,
        waived: setup
            .waived
            .iter()
            .map(|w| WaiverRecord { quantity: w.quantity.name().into(), because: w.because.clone() })
            .collect(),
        not_checked: not_checked(setup).into_iter().map(|q| q.name().to_owned()).collect(),
        prerequisites: setup
            .prerequisites
            .iter()
            .map(|p| PrerequisiteRecord {
                id: p.id.clone(),
                text: p.text.clone(),
                required: p.required,
                answer: folder.job.prerequisites.get(&p.id).cloned(),
            })
            .collect(),
    }
}

fn inputs(parts: &Parts) -> Vec<InputRecord> {
    let file = |f: &InputFile| InputRecord {
        role: f.role.into(),
        file: f.name.clone(),
        found_in: (f.origin != Origin::Job).then(|| f.origin.words().to_owned()),
        sha256: f.sha256.clone(),
    };
    let named = |role: &str, name: &str, sha256: &str| InputRecord {
        role: role.into(),
        file: name.into(),
        found_in: None,
        sha256: sha256.into(),
    };
    let mut all: Vec<InputRecord> =
        parts.folder.inputs.iter().chain(&parts.assignment.chosen_files).map(file).collect();
    all.extend(parts.photos.iter().take(parts.folder.photos.len()).map(|p| named("photo", &p.name, &p.sha256)));
    all.extend(parts.folder.attachments.iter().map(|a| named("attachment", &a.name, &a.sha256)));
    all
}

/// One sentence for people.
fn reason(parts: &Parts, verdict: Verdict) -> String {
    if let Some(why) = parts.why_no_scene {
        return format!("Nothing could be measured: {why}.");
    }
    if let Some(f) = parts.findings.iter().find(|f| f.level == Level::Void) {
        return f.message.clone();
    }
    let with = |v: Verdict| parts.folder.setup.checks.iter().zip(parts.checks).filter(move |(_, c)| c.verdict == v);
    match verdict {
        Verdict::Within => format!("All {} checks are proven to be within tolerance.", parts.checks.len()),
        Verdict::Outside => {
            let mut outside: Vec<_> = with(Verdict::Outside).collect();
            outside.sort_by_key(|(check, _)| check.quantity.move_order());
            let names: Vec<&str> = outside.iter().map(|(check, _)| check.quantity.trade_name()).collect();
            let names = names.join(", ");
            // Outside in any case, but the finding comes first: nothing is moved before it is settled.
            let first = parts.findings.iter().find(|f| f.level == Level::Stop && f.holds_moves());
            match first {
                Some(f) if f.spoils_any() => {
                    format!("{} Proven to be outside tolerance whatever the cause of that: {names}.", f.message)
                }
                Some(f) => format!("{} Proven to be outside tolerance: {names}.", f.message),
                None => format!("Proven to be outside tolerance: {names}."),
            }
        }
        Verdict::Retake => {
            let why = |(check, c): (&Check, &Checked)| {
                format!(
                    "{} could not be measured: {}",
                    check.quantity.trade_name(),
                    c.reason.as_deref().unwrap_or("no value")
                )
            };
            with(Verdict::Retake).next().map_or_else(|| "Not every check could be measured.".into(), |c| why(c) + ".")
        }
        Verdict::NotProven => {
            if let Some(f) = parts.findings.iter().find(|f| f.level == Level::Stop) {
                return f.message.clone();
            }
            let why = |(check, c): (&Check, &Checked)| {
                format!(
                    "Not proven for {}: {}.",
                    check.quantity.trade_name(),
                    c.reason.as_deref().unwrap_or("not decided")
                )
            };
            with(Verdict::NotProven).next().map_or_else(|| "The sheet has no checks: nothing was proven.".into(), why)
        }
    }
}

fn checks(parts: &Parts, checked: &[Checked]) -> Vec<CheckRecord> {
    parts.folder.setup.checks.iter().zip(checked).map(|(check, c)| check_record(parts, check, c)).collect()
}

fn check_record(parts: &Parts, check: &Check, c: &Checked) -> CheckRecord {
    let estimate = c.answer.as_ref().map(|a| a.estimate);
    let by_reading = check.is_decided_by_reading(&parts.folder.kit);
    CheckRecord {
        correction_phrase: None,
        reason_phrase: None,
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
        correction: c.correction.clone(),
        reason: c.reason.clone(),
        untrusted: c.untrusted.iter().map(|code| (*code).to_owned()).collect(),
        otherwise: c.otherwise.iter().map(otherwise).collect(),
        budget: c.answer.as_ref().map(|a| budget(parts, a)).unwrap_or_default(),
    }
}

fn otherwise(o: &Otherwise) -> OtherwiseRecord {
    OtherwiseRecord {
        assuming_phrase: None,
        assuming: o.assuming.clone(),
        value: o.estimate.map(|e| e.value),
        expanded_uncertainty: o.estimate.map(|e| e.expanded_uncertainty()),
        verdict: o.verdict,
    }
}

/// Contributions by source, those of one kind together, largest first.
fn budget(parts: &Parts, answer: &measure::Answer) -> Vec<BudgetLine> {
    let mut by_name: BTreeMap<String, f64> = BTreeMap::new();
    for (origin, u) in &answer.contributions {
        *by_name.entry(origin_words(parts, origin)).or_default() += u * u;
    }
    let total: f64 = by_name.values().sum();
    let mut lines: Vec<BudgetLine> = by_name
        .into_iter()
        .filter(|(_, v)| *v > 1e-6 * total)
        .map(|(source, v)| BudgetLine { source_phrase: None, source, standard_uncertainty: v.sqrt(), share: v / total })
        .collect();
    lines.sort_by(|a, b| b.share.total_cmp(&a.share));
    lines
}

fn origin_words(parts: &Parts, origin: &measure::Origin) -> String {
    use measure::Origin as O;
    let carrier = |k: usize| parts.folder.kit.carriers[k].name.as_str();
    match origin {
        O::Photos(Source::Image) => "noise of the marker corners in the photos".into(),
        O::Photos(Source::Calibration(_)) => "calibration of the camera".into(),
        O::Photos(Source::Focal(_)) => "focal length of each photo".into(),
        O::Photos(Source::Centre(_)) => "principal point of each photo".into(),
        O::Photos(Source::Edge(_)) => "edge offset of each photo".into(),
        O::Photos(Source::Turn(_)) => "turn of the camera while each photo was read row by row".into(),
        O::Photos(Source::Layout) => "places and turns of the markers on their carriers".into(),
        O::Photos(Source::Scale) => "sizes of the printed markers".into(),
        O::SeatingOffset(k) | O::SeatingAngle(k) => format!("seating of {}", carrier(*k)),
        O::Wheelbase => "typed wheelbase".into(),
        O::NoseFromRearAxle => "typed nose position".into(),
        O::FloorBelowHub => "typed hub height".into(),
        O::Datum(i) => format!("offset of the datum {}", parts.folder.setup.datums[*i].name),
        O::Reading(i) => format!("reading of {}", parts.folder.job.readings[*i].quantity.trade_name()),
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
        unused_because_phrase: None,
        file: looked.name.clone(),
        step: parts.folder.photos[j].step.map(|s| parts.folder.setup.steps[s].clone()),
        phase: parts.folder.photos[j].phase.map(|p| p.name().to_owned()),
        camera: camera.ok().map(|c| parts.assignment.cameras[*c].name.clone()),
        unused_because: camera.err().map(ToString::to_string),
        width_px: looked.width as u32,
        height_px: looked.height as u32,
        orientation: looked.exif.orientation.map_or(1, |o| o.0),
        taken: looked.exif.taken.and_then(|t| t.format(&Rfc3339).ok()),
        private: looked.exif.private.iter().map(|&kind| kind.to_owned()).collect(),
        private_values: Vec::new(),
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
