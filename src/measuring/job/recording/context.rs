//! What a record says of the job itself: who, what, where, the set-up sheet's
//! own words, and every file that was read.

use std::collections::BTreeMap;

use time::format_description::well_known::Rfc3339;

use super::parts::Parts;
use crate::folder::{Calibration, InputFile, JobFolder, Origin};
use crate::record::{Context, InputRecord, KitUpkeep, PrerequisiteRecord, SheetRecord, WaiverRecord};
use crate::setup::DecisionRule;
use crate::verdict::findings::not_checked;

pub(in crate::job) fn context(parts: &Parts) -> Context {
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

pub(in crate::job) fn sheet(folder: &JobFolder) -> SheetRecord {
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

pub(in crate::job) fn inputs(parts: &Parts) -> Vec<InputRecord> {
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
