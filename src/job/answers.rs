//! What is asked of the measurement, and the readings against its answers.

use std::collections::BTreeMap;

use crate::folder::{JobFile, Reading};
use crate::marker::{Rig, Role};
use crate::measure::{Answer, Ask, Measurement, Undetermined, UsedReading};
use crate::quantity::{Estimate, Quantity};
use crate::setup::{Check, Evidence, From, ReferenceLine, Setup};
use crate::verdict::findings::Compared;

/// All questions of one job: the checks' first, then the readings', then
/// every quantity for the record.
#[derive(Debug, Clone)]
pub(super) struct Questions {
    pub(super) asks: Vec<Ask>,
    checks: usize,
    /// Keys of the record's `measured`, in step with the last asks.
    keys: Vec<String>,
}

impl Questions {
    pub(super) fn new(rig: &Rig, setup: &Setup, job: &JobFile) -> Self {
        let mut asks: Vec<Ask> = setup.checks.iter().map(|c| check_ask(rig, setup, c)).collect();
        let checks = asks.len();
        asks.extend(job.readings.iter().map(|r| reading_ask(rig, setup, r)));
        let mut keys = Vec::new();
        let targets: Vec<usize> = rig.with_role(Role::Target).collect();
        for target in &targets {
            let suffix = if targets.len() > 1 { format!("@{}", rig.carriers[*target].name) } else { String::new() };
            for (key, quantity, from) in everything() {
                asks.push(Ask { quantity, from, target: *target, line: setup.reference_line });
                keys.push(format!("{key}{suffix}"));
            }
        }
        Questions { asks, checks, keys }
    }

    /// The answers to the checks, in the sheet's order. A check that a reading
    /// decides gets the reading.
    pub(super) fn checks(
        &self,
        setup: &Setup,
        job: &JobFile,
        measurement: Option<&Measurement>,
    ) -> Vec<Result<Answer, Undetermined>> {
        let answer = |(i, check): (usize, &Check)| {
            if check.evidence == Evidence::Reading || check.quantity.is_reading_only() {
                return by_reading(check, job);
            }
            measurement.map_or(Err(Undetermined::NotSeen(Role::Target)), |m| m.answers[i].clone())
        };
        setup.checks.iter().enumerate().map(answer).collect()
    }

    /// Every determined quantity under its key.
    pub(super) fn measured(&self, measurement: &Measurement) -> BTreeMap<String, (Quantity, Estimate)> {
        let start = self.asks.len() - self.keys.len();
        let all = self.keys.iter().zip(&self.asks[start..]).zip(&measurement.answers[start..]);
        all.filter_map(|((key, ask), answer)| Some((key.clone(), (ask.quantity, answer.as_ref().ok()?.estimate))))
            .collect()
    }

    /// The readings against what the photos say without them.
    pub(super) fn compared(&self, job: &JobFile, photos_alone: Option<&Measurement>) -> Vec<Compared> {
        let answers = job.readings.iter().enumerate().map(|(i, reading)| {
            let photo = photos_alone.and_then(|m| m.answers[self.checks + i].as_ref().ok()).map(|a| a.estimate);
            compare(reading, photo)
        });
        answers.collect()
    }

    /// The readings that enter the adjustment.
    pub(super) fn used(&self, job: &JobFile) -> Vec<UsedReading> {
        let readings = job.readings.iter().enumerate().filter(|(_, r)| r.use_in_adjustment);
        readings
            .map(|(index, r)| UsedReading {
                ask: self.asks[self.checks + index].clone(),
                value: r.value,
                u: r.u,
                index,
            })
            .collect()
    }
}

/// Keys of `measured` with what they ask; distances once for each datum.
fn everything() -> Vec<(String, Quantity, Option<From>)> {
    let mut all = Vec::new();
    for quantity in Quantity::ALL.iter().copied().filter(|q| !q.is_reading_only()) {
        if matches!(quantity, Quantity::Distance | Quantity::Range) {
            for from in [From::Nose, From::FrontAxle, From::RearAxle] {
                all.push((format!("{}_from_{}", quantity.name(), from.name()), quantity, Some(from)));
            }
        } else {
            all.push((quantity.name().to_owned(), quantity, None));
        }
    }
    all
}

fn target_of(rig: &Rig, name: Option<&str>) -> usize {
    let named = name.and_then(|n| rig.carriers.iter().position(|c| c.name == n));
    named.or_else(|| rig.with_role(Role::Target).next()).unwrap_or(0)
}

fn check_ask(rig: &Rig, setup: &Setup, check: &Check) -> Ask {
    Ask {
        quantity: check.quantity,
        from: check.from.clone(),
        target: target_of(rig, check.target.as_deref()),
        line: line_of(setup, check),
    }
}

/// The line that a check refers to.
pub(super) fn line_of(setup: &Setup, check: &Check) -> ReferenceLine {
    check.reference_line.unwrap_or(setup.reference_line)
}

fn reading_ask(rig: &Rig, setup: &Setup, reading: &Reading) -> Ask {
    Ask {
        quantity: reading.quantity,
        from: reading.from.clone(),
        target: target_of(rig, None),
        line: setup.reference_line,
    }
}

/// A check that photos don't decide.
fn by_reading(check: &Check, job: &JobFile) -> Result<Answer, Undetermined> {
    let reading = job.readings.iter().find(|r| r.quantity == check.quantity && r.from == check.from);
    let reading = reading.ok_or(Undetermined::ReadingOnly)?;
    Ok(Answer { estimate: Estimate::known(reading.value, reading.u), contributions: Vec::new() })
}

/// E_n after ISO/IEC 17043: difference over the root of the summed squares of
/// both expanded uncertainties.
fn compare(reading: &Reading, photo: Option<Estimate>) -> Compared {
    let expanded = Estimate::known(reading.value, reading.u).expanded_uncertainty();
    let normalized_error =
        photo.map(|p| (reading.value - p.value) / expanded.hypot(p.expanded_uncertainty())).filter(|e| e.is_finite());
    Compared {
        quantity: reading.quantity,
        from: reading.from.clone(),
        value: reading.value,
        u: reading.u,
        photo,
        normalized_error,
        used: reading.use_in_adjustment,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn e_n_of_two_equal_uncertainties() {
        let reading = Reading {
            quantity: Quantity::Distance,
            from: None,
            value: 1003.0,
            u: 1.0,
            instrument: None,
            use_in_adjustment: false,
        };
        let c = compare(&reading, Some(Estimate::known(1000.0, 1.0)));
        // 3 / (1.96 * sqrt 2)
        assert!((c.normalized_error.unwrap() - 1.0823).abs() < 1e-4);
    }
}
