//! What is asked of the measurement, and the readings against its answers.

use std::collections::BTreeMap;
use std::ops::Range;

use crate::folder::{JobFile, Reading};
use crate::job::opening::Doubles;
use crate::marker::{Kit, Role};
use crate::measure::{Answer, Ask, Measurement, Origin, Undetermined, UsedReading};
use crate::quantity::{Estimate, Quantity};
use crate::setup::{Check, From, ReferenceLine, Setup};
use crate::verdict::findings::Compared;

/// All questions of one job: the checks' first, then the readings', then
/// every quantity for the record.
#[derive(Debug, Clone)]
pub(in crate::job) struct Questions {
    pub(in crate::job) asks: Vec<Ask>,
    /// By check: its asks, one for each step that it holds in.
    checks: Vec<Range<usize>>,
    readings: usize,
    /// Keys of the record's `measured`, in step with the last asks.
    keys: Vec<String>,
}

impl Questions {
    pub(in crate::job) fn new(steps: &Doubles, setup: &Setup, job: &JobFile) -> Self {
        let mut asks: Vec<Ask> = Vec::new();
        let mut checks = Vec::new();
        for check in &setup.checks {
            let start = asks.len();
            asks.extend(check_asks(steps, setup, check));
            checks.push(start..asks.len());
        }
        let readings = asks.len();
        asks.extend(job.readings.iter().map(|r| reading_ask(&steps.kit, setup, r)));
        let mut keys = Vec::new();
        let targets: Vec<usize> =
            (0..steps.carriers()).filter(|k| steps.kit.carriers[*k].role == Role::Target).collect();
        for target in &targets {
            let suffix =
                if targets.len() > 1 { format!("@{}", steps.kit.carriers[*target].name) } else { String::new() };
            for state in 0..steps.judged(*target) {
                // The first step has the plain keys.
                let step = setup.steps.get(state).filter(|_| state > 0).map(|s| format!("#{s}")).unwrap_or_default();
                for (key, quantity, from) in
                    everything(setup).into_iter().filter(|(_, q, _)| state == 0 || q.is_of_target())
                {
                    asks.push(Ask { quantity, from, target: steps.body(*target, state), line: setup.reference_line });
                    keys.push(format!("{key}{suffix}{step}"));
                }
            }
        }
        Questions { asks, checks, readings, keys }
    }

    /// The asks of each check, in the sheet's order.
    pub(in crate::job) fn asks_of_checks(&self) -> Vec<Vec<Ask>> {
        self.checks.iter().map(|asks| self.asks[asks.clone()].to_vec()).collect()
    }

    /// One ask for each check, in the sheet's order: of several steps the first.
    pub(in crate::job) fn first_asks(&self) -> Vec<Ask> {
        self.checks.iter().filter_map(|asks| self.asks.get(asks.start).cloned()).collect()
    }

    /// The answers to the checks, in the sheet's order; several where a check
    /// holds in every step. A check that a reading decides gets the reading.
    pub(in crate::job) fn checks(
        &self,
        kit: &Kit,
        setup: &Setup,
        job: &JobFile,
        measurement: Option<&Measurement>,
    ) -> Vec<Vec<Result<Answer, Undetermined>>> {
        let answer = |(i, check): (usize, &Check)| {
            if check.is_decided_by_reading(kit) {
                return vec![by_reading(check, job)];
            }
            let of = |at: usize| measurement.map_or(Err(Undetermined::NothingMeasured), |m| m.answers[at].clone());
            self.checks[i].clone().map(of).collect()
        };
        setup.checks.iter().enumerate().map(answer).collect()
    }

    /// Every determined quantity under its key.
    pub(in crate::job) fn measured(&self, measurement: &Measurement) -> BTreeMap<String, (Quantity, Estimate)> {
        let start = self.asks.len() - self.keys.len();
        let all = self.keys.iter().zip(&self.asks[start..]).zip(&measurement.answers[start..]);
        all.filter_map(|((key, ask), answer)| Some((key.clone(), (ask.quantity, answer.as_ref().ok()?.estimate))))
            .collect()
    }

    /// The readings against what the photos say without them.
    pub(in crate::job) fn compared(&self, job: &JobFile, photos_alone: Option<&Measurement>) -> Vec<Compared> {
        let answers = job.readings.iter().enumerate().map(|(i, reading)| {
            let photo = photos_alone.and_then(|m| m.answers[self.readings + i].as_ref().ok()).map(|a| a.estimate);
            compare(reading, photo)
        });
        answers.collect()
    }

    /// The readings that enter the adjustment.
    pub(in crate::job) fn used(&self, job: &JobFile) -> Vec<UsedReading> {
        let readings = job.readings.iter().enumerate().filter(|(_, r)| r.use_in_adjustment);
        readings
            .map(|(index, r)| UsedReading {
                ask: self.asks[self.readings + index].clone(),
                value: r.value,
                u: r.u,
                index,
            })
            .collect()
    }
}

/// Keys of `measured` with what they ask; distances once for each datum.
fn everything(setup: &Setup) -> Vec<(String, Quantity, Option<From>)> {
    let mut all = Vec::new();
    let datums: Vec<From> = setup.datums.iter().map(|d| From::Datum(d.name.clone())).collect();
    for quantity in Quantity::ALL.iter().copied().filter(|q| !q.is_reading_only()) {
        if matches!(quantity, Quantity::Distance | Quantity::Range) {
            for from in [From::Nose, From::FrontAxle, From::RearAxle].into_iter().chain(datums.iter().cloned()) {
                all.push((format!("{}_from_{}", quantity.name(), from.name()), quantity, Some(from)));
            }
        } else {
            all.push((quantity.name().to_owned(), quantity, None));
            if matches!(quantity, Quantity::HeightFromNose | Quantity::LateralFromNose) {
                let of = |d: &From| (format!("{}@{}", quantity.name(), d.name()), quantity, Some(d.clone()));
                all.extend(datums.iter().map(of));
            }
        }
    }
    all
}

fn target_of(kit: &Kit, name: Option<&str>) -> usize {
    let named = name.and_then(|n| kit.carriers.iter().position(|c| c.name == n));
    named.or_else(|| kit.with_role(Role::Target).next()).unwrap_or(0)
}

/// One ask, or one for each step where the check names none.
pub(in crate::job) fn check_asks(steps: &Doubles, setup: &Setup, check: &Check) -> Vec<Ask> {
    let target = target_of(&steps.kit, check.target.as_deref());
    let named = check.step.as_ref().and_then(|s| setup.steps.iter().position(|x| x == s));
    let states = match named {
        Some(state) => state..state + 1,
        None if check.quantity.is_of_target() => 0..steps.judged(target),
        None => 0..1,
    };
    let ask = |state| Ask {
        quantity: check.quantity,
        from: check.from.clone(),
        target: steps.body(target, state),
        line: line_of(setup, check),
    };
    states.map(ask).collect()
}

/// The line that a check refers to.
pub(in crate::job) fn line_of(setup: &Setup, check: &Check) -> ReferenceLine {
    check.reference_line.unwrap_or(setup.reference_line)
}

fn reading_ask(kit: &Kit, setup: &Setup, reading: &Reading) -> Ask {
    Ask {
        quantity: reading.quantity,
        from: reading.from.clone(),
        target: target_of(kit, None),
        line: setup.reference_line,
    }
}

/// A check that photos don't decide.
fn by_reading(check: &Check, job: &JobFile) -> Result<Answer, Undetermined> {
    let mut readings = job.readings.iter().enumerate();
    let reading = readings.find(|(_, r)| r.quantity == check.quantity && r.from == check.from);
    let (index, reading) = reading.ok_or(Undetermined::ReadingOnly)?;
    let contributions = vec![(Origin::Reading(index), reading.u)];
    Ok(Answer { estimate: Estimate::known(reading.value, reading.u), contributions })
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
