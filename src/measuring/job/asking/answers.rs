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

use super::as_one::as_one;

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
        asks.extend(job.readings.iter().map(|r| reading_ask(steps, setup, r)));
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
                let in_step = |step| by_reading(|r| r.is_of(check, step, setup, kit), job);
                return check.held_in(&setup.steps).into_iter().map(in_step).collect();
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

    /// The readings against what the photos say without them; of which it is not plain what they are of are not.
    pub(in crate::job) fn compared(
        &self,
        kit: &Kit,
        setup: &Setup,
        job: &JobFile,
        photos_alone: Option<&Measurement>,
    ) -> Vec<Compared> {
        let answers = job.readings.iter().enumerate().map(|(i, reading)| {
            let photos_alone = photos_alone.filter(|_| reading.is_of_one(setup, kit));
            let photo = photos_alone.and_then(|m| m.answers[self.readings + i].as_ref().ok()).map(|a| a.estimate);
            Compared::of(reading, photo)
        });
        answers.collect()
    }

    /// The readings that enter the adjustment: those that agree with the photos, each instrument's of one
    /// thing as one. What one instrument reads again errs as it did before.
    pub(in crate::job) fn used(&self, compared: &[Compared]) -> Vec<UsedReading> {
        let mut sets: Vec<Vec<(usize, &Reading)>> = Vec::new();
        for (index, c) in compared.iter().enumerate().filter(|(_, c)| c.reading.use_in_adjustment && c.agrees()) {
            let reading = &c.reading;
            let alike = |r: &Reading| r.is_of_the_same(reading) && r.instrument == reading.instrument;
            match sets.iter_mut().find(|set| alike(set[0].1)) {
                Some(set) => set.push((index, reading)),
                None => sets.push(vec![(index, reading)]),
            }
        }
        let one = |set: &Vec<(usize, &Reading)>| {
            let (index, estimate) = as_one(set)?;
            let ask = self.asks[self.readings + index].clone();
            Some(UsedReading { ask, value: estimate.value, u: estimate.standard_uncertainty, index })
        };
        sets.iter().filter_map(one).collect()
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

/// A body's state in a step of the sheet.
fn state_in(setup: &Setup, step: Option<&String>) -> Option<usize> {
    step.and_then(|step| setup.steps.iter().position(|x| x == step))
}

/// One ask, or one for each step where the check names none.
pub(in crate::job) fn check_asks(steps: &Doubles, setup: &Setup, check: &Check) -> Vec<Ask> {
    let target = target_of(&steps.kit, check.target.as_deref());
    let named = state_in(setup, check.step.as_ref());
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

fn reading_ask(steps: &Doubles, setup: &Setup, reading: &Reading) -> Ask {
    let target = target_of(&steps.kit, reading.target.as_deref());
    let state = state_in(setup, reading.step.as_ref()).unwrap_or(0);
    Ask {
        quantity: reading.quantity,
        from: reading.from.clone(),
        target: steps.body(target, state),
        line: setup.reference_line,
    }
}

/// A check that photos don't decide, by all its readings. Whether they exclude each other is a finding's to say.
fn by_reading(is_wanted: impl Fn(&Reading) -> bool, job: &JobFile) -> Result<Answer, Undetermined> {
    let readings: Vec<(usize, &Reading)> = job.readings.iter().enumerate().filter(|(_, r)| is_wanted(r)).collect();
    let (index, estimate) = as_one(&readings).ok_or(Undetermined::ReadingOnly)?;
    Ok(Answer { contributions: vec![(Origin::Reading(index), estimate.standard_uncertainty)], estimate })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn reading(value: f64, u: f64) -> Reading {
        Reading {
            quantity: Quantity::Distance,
            from: None,
            target: None,
            step: None,
            value,
            u,
            instrument: None,
            use_in_adjustment: false,
        }
    }

    #[test]
    fn e_n_of_two_equal_uncertainties() {
        let c = Compared::of(&reading(1003.0, 1.0), Some(Estimate::known(1000.0, 1.0)));
        // 3 / (1.96 * sqrt 2)
        assert!((c.normalized_error.unwrap() - 1.0823).abs() < 1e-4);
    }

    /// A kit and a sheet that are built in, its checks of the distance decided by readings.
    fn wanted(kit: &str, sheet: &str) -> (Kit, Setup) {
        use crate::folder::{Kind, Models};
        let text = |kind, name| Models::embedded().open(&[kind], name).unwrap().text().unwrap().to_owned();
        let kit = crate::marker::KitFile::from_toml(&text(Kind::Kit, kit), kit).unwrap().kit;
        let mut setup = Setup::from_toml(&text(Kind::Setup, sheet), sheet).unwrap();
        setup.checks.retain(|c| c.quantity == Quantity::Distance);
        setup.checks.iter_mut().for_each(|c| c.evidence = crate::setup::Evidence::Reading);
        (kit, setup)
    }

    fn questions((kit, setup): &(Kit, Setup), readings: Vec<Reading>) -> (Questions, JobFile) {
        let text = "format = \"job/1\"\njob = \"x\"\nsetup = \"x\"\nkit = \"x\"\n";
        let job = JobFile { readings, ..JobFile::from_toml(text, "j").unwrap() };
        let steps: Vec<&str> = setup.steps.iter().map(String::as_str).collect();
        (Questions::new(&Doubles::of_positions(kit, &steps, &[0]), setup, &job), job)
    }

    /// By check and step: the value, where a reading decides.
    fn decided(of: &(Kit, Setup), readings: Vec<Reading>) -> Vec<Vec<Option<f64>>> {
        let (questions, job) = questions(of, readings);
        let answers = questions.checks(&of.0, &of.1, &job, None);
        answers.into_iter().map(|all| all.into_iter().map(|a| Some(a.ok()?.estimate.value)).collect()).collect()
    }

    fn distance(of: &(Kit, Setup), value: f64) -> Reading {
        Reading { from: of.1.checks[0].from.clone(), ..reading(value, 1.0) }
    }

    /// One reading decided the checks of both boards.
    #[test]
    fn a_reading_decides_its_own_target_alone() {
        let of = wanted("two-boards", "camera-boards-two");
        let names: Vec<&str> = of.1.checks.iter().filter_map(|c| c.target.as_deref()).collect();
        assert_eq!(names, ["left-board", "right-board"]);
        let right = Reading { target: Some("right-board".into()), ..distance(&of, 2620.0) };
        assert_eq!(decided(&of, vec![distance(&of, 2600.0)]), [[None], [None]]);
        assert_eq!(decided(&of, vec![right.clone()]), [[None], [Some(2620.0)]]);
        let (questions, _) = questions(&of, vec![right]);
        let carrier = questions.asks[questions.readings].target;
        assert_eq!(of.0.carriers[carrier].name, "right-board");
    }

    /// One reading decided the check in every step.
    #[test]
    fn a_reading_decides_its_own_step_alone() {
        let of = wanted("bay-a4", "radar-plate-two-tilts");
        assert_eq!(of.1.steps, ["up", "down"]);
        let down = Reading { step: Some("down".into()), ..distance(&of, 1522.0) };
        let up = Reading { step: Some("up".into()), ..distance(&of, 1500.0) };
        assert_eq!(decided(&of, vec![distance(&of, 1500.5)]), [[None, None]]);
        assert_eq!(decided(&of, vec![down.clone()]), [[None, Some(1522.0)]]);
        assert_eq!(decided(&of, vec![down.clone(), up]), [[Some(1500.0), Some(1522.0)]]);
        let (questions, _) = questions(&of, vec![down]);
        assert_eq!(questions.asks[questions.readings].target, questions.asks[1].target);
    }

    #[test]
    fn a_reading_of_the_only_target_need_not_name_it() {
        let mut of = wanted("bay-a4", "radar-plate-two-tilts");
        of.1.steps.clear();
        let stand = of.0.with_role(Role::Target).map(|k| of.0.carriers[k].name.clone()).next();
        let named = Reading { target: stand, ..distance(&of, 1500.0) };
        assert_eq!(decided(&of, vec![distance(&of, 1500.0)]), [[Some(1500.0)]]);
        assert_eq!(decided(&of, vec![named]), [[Some(1500.0)]]);
    }

    /// What names no target was compared with the first, and called a reversed sign.
    #[test]
    fn of_one_is_what_names_its_target_and_step_where_there_are_several() {
        let (kit, sheet) = wanted("two-boards", "camera-boards-two");
        let of = distance(&(kit.clone(), sheet.clone()), 2600.0);
        let named = Reading { target: Some("right-board".into()), ..of.clone() };
        let toe = Reading { quantity: Quantity::RearToeLeft, from: None, ..of.clone() };
        assert_eq!([&of, &named, &toe].map(|r| r.is_of_one(&sheet, &kit)), [false, true, true]);
        let (kit, mut sheet) = wanted("bay-a4", "radar-plate-two-tilts");
        let down = Reading { step: Some("down".into()), ..of.clone() };
        assert_eq!([&of, &down].map(|r| r.is_of_one(&sheet, &kit)), [false, true]);
        sheet.steps.clear();
        assert!(of.is_of_one(&sheet, &kit));
    }

    /// The mean of what agrees is no better known than the least sure reading (GUM F.1.2).
    #[test]
    fn readings_that_agree_decide_by_their_mean() {
        let mut of = wanted("bay-a4", "radar-plate-two-tilts");
        of.1.steps.clear();
        let tape = Reading { u: 3.0, ..distance(&of, 1503.0) };
        let (questions, job) = questions(&of, vec![distance(&of, 1500.0), tape]);
        let answer = questions.checks(&of.0, &of.1, &job, None)[0][0].clone().unwrap();
        assert!((answer.estimate.value - 1501.5).abs() < 1e-9);
        assert!((answer.estimate.standard_uncertainty - 3.0).abs() < 1e-9);
        assert_eq!(answer.contributions, [(Origin::Reading(1), 3.0)]);
    }

    /// By used reading: value, u, index.
    fn used(of: &(Kit, Setup), readings: Vec<Reading>, photo: f64) -> Vec<(f64, f64, usize)> {
        let (questions, job) = questions(of, readings);
        let compared: Vec<Compared> =
            job.readings.iter().map(|r| Compared::of(r, Some(Estimate::known(photo, 1.0)))).collect();
        questions.used(&compared).iter().map(|u| (u.value, u.u, u.index)).collect()
    }

    /// A laser read twenty times made u smaller by the root of twenty.
    #[test]
    fn one_instrument_read_again_is_one_observation() {
        let of = wanted("bay-a4", "radar-plate-two-tilts");
        let laser = |value: f64, u: f64| Reading {
            instrument: Some("laser".into()),
            use_in_adjustment: true,
            u,
            ..distance(&of, value)
        };
        assert_eq!(used(&of, vec![laser(1509.0, 1.5); 20], 1510.0), [(1509.0, 1.5, 0)]);
        assert_eq!(used(&of, vec![laser(1509.0, 1.5), laser(1511.0, 2.0)], 1510.0), [(1510.0, 2.0, 1)]);
        // Another instrument and another step are observations of their own.
        let tape = Reading { instrument: Some("tape".into()), ..laser(1509.0, 3.0) };
        let down = Reading { step: Some("down".into()), ..laser(1511.0, 1.5) };
        assert_eq!(used(&of, vec![laser(1509.0, 1.5), tape, down], 1510.0).len(), 3);
    }

    /// Inches typed as mm bent the distance, and plates were blamed.
    #[test]
    fn what_the_photos_exclude_is_not_taken_in() {
        let of = wanted("bay-a4", "radar-plate-two-tilts");
        let one = |value: f64| Reading { use_in_adjustment: true, ..distance(&of, value) };
        assert_eq!(used(&of, vec![one(59.06), one(1501.0)], 1500.0), [(1501.0, 1.0, 1)]);
    }
}
