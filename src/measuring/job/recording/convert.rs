//! From the rooms' types to the record's.

use super::checks::{checks, finite};
use super::context::{context, inputs, sheet};
use super::parts::Parts;
use super::photos::photos;
use super::reason::reason;
use crate::job::asking::{detectable_records, ride_height, sensitivity_records};
use crate::marker::Role;
use crate::quantity::{Estimate, Quantity};
use crate::record::{
    AttachmentRecord, CarrierRecord, CarrierUncertainty, FindingRecord, JobRecord, MeasuredRecord, MovedRecord,
    ReadingRecord, Tool, Verdict,
};
use crate::verdict::Finding;
use crate::verdict::findings::Moved;
use crate::words::Language;

/// The record of a job.
pub(in crate::job) fn record(parts: &Parts) -> JobRecord {
    let folder = parts.folder;
    let of_checks = Verdict::of_checks(parts.checks.iter().map(|c| c.verdict));
    let unmeasured = if parts.scene.is_none() { Verdict::Retake } else { of_checks };
    let verdict = unmeasured.limited_by(parts.findings.iter().map(|f| f.level));
    let reason = reason(parts, verdict);
    JobRecord {
        format: "result/1".into(),
        tool: Tool::this(),
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

pub(in crate::job) fn finding(f: &Finding) -> FindingRecord {
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
            used: reading.use_in_adjustment,
        })
        .collect()
}
