//! What is typed into a job: answers, sizes, readings, the calibration.

use std::path::Path;

use time::OffsetDateTime;

use super::alignment;
use super::named::named;
use crate::folder::{CARD_IDS, Calibration, INSTRUMENTS, Reading};
use crate::quantity::Quantity;
use crate::setup::{From, Setup};
use crate::web::app::App;
use crate::web::folders::edit;
use crate::web::forms::Fields;
use crate::web::limits;
use crate::web::trouble::Trouble;
use crate::words::phrase;

/// Markers of a card.
const CARD_MARKERS: usize = 3;

/// The page of preparation.
pub(in crate::web) fn prepare(app: &App, folder: &Path, fields: &Fields) -> Result<(), Trouble> {
    let setup = named(app, folder, &edit::read(folder)?).map_err(Trouble::typed)?.setup;
    edit::change(folder, |job| {
        for p in &setup.prerequisites {
            match fields.get(&format!("p:{}", p.id)) {
                Some("yes") => drop(job.prerequisites.insert(p.id.clone(), true.into())),
                Some("no") => drop(job.prerequisites.insert(p.id.clone(), false.into())),
                // Nobody's earlier words are lost.
                Some("none") => drop(job.prerequisites.remove(&p.id)),
                _ => {}
            }
        }
        let vehicle = &mut job.vehicle;
        vehicle.description = fields.line("description")?;
        vehicle.vin = fields.line("vin")?.map(|v| v.to_uppercase());
        vehicle.wheelbase_mm = fields.number("wheelbase")?;
        vehicle.nose_from_rear_axle_mm = fields.number("nose_from_rear_axle")?;
        vehicle.floor_below_hub_mm = fields.number("floor_below_hub")?;
        vehicle.rear_track_mm = fields.number("rear_track")?;
        vehicle.front_track_mm = fields.number("front_track")?;
        for (i, wanted) in readable(&setup).into_iter().enumerate() {
            let value = fields.number(&format!("reading:{i}"))?;
            // A reading that was typed elsewhere, of another instrument or to be used, stays.
            job.readings.retain(|r| !(wanted.is_of(r) && !r.use_in_adjustment && is_ours(r)));
            let Some(value) = value else { continue };
            let instrument = fields.get(&format!("instrument:{i}")).unwrap_or_default();
            let Some((name, u)) = instruments(wanted.quantity).into_iter().find(|(name, _)| *name == instrument) else {
                return Err(Trouble::typed(phrase!("page-trouble-instrument")));
            };
            job.readings.push(of_ours(wanted, value, (name, u)));
        }
        let is_thrust = |r: &Reading| r.quantity == Quantity::ThrustAngle;
        job.readings.retain(|r| !(is_thrust(r) && !r.use_in_adjustment && is_ours(r)));
        let rack = instruments(Quantity::ThrustAngle).into_iter().find(|(name, _)| *name == "alignment");
        if let Some((name, u)) = rack
            && let Some((value, u)) = alignment::thrust(fields, u)?
        {
            let thrust = Readable { quantity: Quantity::ThrustAngle, from: None, target: None, step: None };
            job.readings.push(of_ours(thrust, value, (name, u)));
        }
        if job.readings.len() > limits::READINGS {
            return Err(Trouble::typed(phrase!("page-trouble-many-readings", most = limits::READINGS)));
        }
        Ok(())
    })
}

/// What a reading may be of.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::web) struct Readable {
    pub(in crate::web) quantity: Quantity,
    pub(in crate::web) from: Option<From>,
    /// As the sheet's check names it.
    pub(in crate::web) target: Option<String>,
    /// Of a sheet with steps: one of those in which the check holds.
    pub(in crate::web) step: Option<String>,
}

impl Readable {
    /// Whether a reading is of it.
    pub(in crate::web) fn is_of(&self, reading: &Reading) -> bool {
        reading.quantity == self.quantity
            && reading.from == self.from
            && reading.target == self.target
            && reading.step == self.step
    }
}

/// A reading of one of the instruments that the page knows.
fn of_ours(of: Readable, value: f64, (name, u): (&str, f64)) -> Reading {
    let Readable { quantity, from, target, step } = of;
    Reading { quantity, from, target, step, value, u, instrument: Some(name.to_owned()), use_in_adjustment: false }
}

fn is_ours(reading: &Reading) -> bool {
    instruments(reading.quantity).iter().any(|(name, _)| reading.instrument.as_deref() == Some(*name))
}

/// What a sheet's readings may be of: its checks, each once in each of its steps. The thrust angle is typed as an
/// alignment sheet has it.
pub(in crate::web) fn readable(setup: &Setup) -> Vec<Readable> {
    let mut all: Vec<Readable> = Vec::new();
    for check in setup.checks.iter().filter(|c| c.quantity != Quantity::ThrustAngle) {
        for step in check.held_in(&setup.steps) {
            let one = Readable {
                quantity: check.quantity,
                from: check.from.clone(),
                target: check.target.clone(),
                step: step.map(str::to_owned),
            };
            if !all.contains(&one) {
                all.push(one);
            }
        }
    }
    all
}

/// Instruments that read a quantity and their usual standard uncertainty.
pub(in crate::web) fn instruments(quantity: Quantity) -> Vec<(&'static str, f64)> {
    INSTRUMENTS.iter().filter(|(_, _, unit)| *unit == quantity.unit()).map(|(name, u, _)| (*name, *u)).collect()
}

/// Gives the job a one-time code of its own.
pub(in crate::web) fn card(folder: &Path, taken: &[u32]) -> Result<(), Trouble> {
    edit::change(folder, |job| {
        if job.card.is_empty() {
            job.card = new_code(taken)?;
        }
        Ok(())
    })
}

/// Ids that no other open job's card has.
fn new_code(taken: &[u32]) -> Result<Vec<u32>, Trouble> {
    let mut free: Vec<u32> = (CARD_IDS[0]..=CARD_IDS[1]).filter(|id| !taken.contains(id)).collect();
    let mut code = Vec::new();
    while code.len() < CARD_MARKERS && !free.is_empty() {
        let mut random = [0; 4];
        let fault = |_| Trouble::fault(phrase!("page-trouble-random"));
        getrandom::fill(&mut random).map_err(fault)?;
        code.push(free.swap_remove(u32::from_le_bytes(random) as usize % free.len()));
    }
    if code.len() < CARD_MARKERS {
        return Err(Trouble::typed(phrase!("page-trouble-cards")));
    }
    code.sort_unstable();
    Ok(code)
}

/// The calibration's result; its time is when it was first typed.
pub(in crate::web) fn calibration(folder: &Path, fields: &Fields, now: OffsetDateTime) -> Result<(), Trouble> {
    edit::change(folder, |job| {
        let Some(result) = fields.get("result") else {
            job.calibration = None;
            return Ok(());
        };
        let before = job.calibration.take();
        let at = before.filter(|c| c.result == result).and_then(|c| c.at).or((result != "not-run").then_some(now));
        job.calibration = Some(Calibration {
            result: result.to_owned(),
            at,
            reported_azimuth_deg: fields.number("azimuth")?,
            reported_elevation_deg: fields.number("elevation")?,
        });
        Ok(())
    })
}
