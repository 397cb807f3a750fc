//! What a finding leaves of the checks. Where a figure is not to be trusted a
//! check is not within, and outside only if it would be under every explanation
//! that the finding leaves open: each is measured with what is suspected set
//! free. Nobody is told to move anything before the finding is settled.

use nalgebra::Vector6;

use super::check::{Checked, Otherwise};
use super::decision::decide;
use super::findings::{Case, Finding, Open, misplaced};
use super::ladder::{Level, Verdict};
use crate::geom::rad;
use crate::marker::Kit;
use crate::measure::{Ask, Facts, UsedReading, measure};
use crate::pose::{Freed, Scene};
use crate::quantity::Estimate;
use crate::setup::Check;
use crate::words::{Phrase, Value, phrase};

/// How far a plate's wheel centre may be from its rim contact, mm (common practice, no source).
const RIM_MM: f64 = 200.0;

/// Findings and checks as they stand once each finding of level stop or void
/// has had its say. `asks` has what was asked for each check, in the sheet's order.
pub fn settle(
    case: &Case,
    mut findings: Vec<Finding>,
    asks: &[Vec<Ask>],
    readings: &[UsedReading],
) -> (Vec<Finding>, Vec<Checked>) {
    if !findings.iter().any(Finding::holds_moves) {
        return (findings, case.checks.to_vec());
    }
    let checks: Vec<Checked> = {
        let again = Again { case, findings: &findings, asks, readings };
        let outside = case.setup.checks.iter().zip(case.checks).any(|(check, c)| {
            c.verdict == Verdict::Outside && again.touching(check).next().is_some_and(|f| f.level == Level::Stop)
        });
        let opened = if outside { again.opened() } else { Vec::new() };
        case.checks.iter().enumerate().map(|(i, c)| again.weigh(i, c, &opened)).collect()
    };
    if findings.iter().all(|f| f.level != Level::Void) {
        findings.extend(misplaced(&Case { checks: &checks, ..*case }));
        findings.sort_by_key(|f| f.level);
    }
    (findings, checks)
}

/// Checks of which the findings' say is taken, and nothing is measured again.
pub fn mark(case: &Case, findings: &[Finding], checks: &[Checked]) -> Vec<Checked> {
    let again = Again { case, findings, asks: &[], readings: &[] };
    checks.iter().enumerate().map(|(i, c)| again.weigh(i, c, &[])).collect()
}

struct Again<'a> {
    case: &'a Case<'a>,
    findings: &'a [Finding],
    asks: &'a [Vec<Ask>],
    readings: &'a [UsedReading],
}

/// One explanation and, by check, its asks' answers.
struct Opened<'a> {
    finding: &'a Finding,
    assuming: Phrase,
    answers: Option<Vec<Vec<Option<Estimate>>>>,
}

impl<'a> Again<'a> {
    /// The findings that spoil a check's figure, worst first.
    fn touching(&self, check: &'a Check) -> impl Iterator<Item = &'a Finding> + use<'a> {
        let read = check.is_decided_by_reading(self.case.kit);
        let by_reading = move |f: &&Finding| !read || f.code == "reading-disagrees";
        self.findings.iter().filter(|f| f.spoils(check.quantity)).filter(by_reading)
    }

    /// What was measured with each explanation that a finding leaves open.
    fn opened(&self) -> Vec<Opened<'a>> {
        let spoiling = self.findings.iter().filter(|f| f.level == Level::Stop && f.spoils_any());
        let all = spoiling.flat_map(|finding| finding.open.iter().map(move |open| (finding, open)));
        all.map(|(finding, open)| Opened {
            finding,
            assuming: self.case.open_words(open),
            answers: self.with(open).map(|answers| self.by_check(&answers)),
        })
        .collect()
    }

    fn weigh(&self, i: usize, c: &Checked, opened: &[Opened]) -> Checked {
        let case = self.case;
        let check = &case.setup.checks[i];
        let mut weighed = Checked { move_by: None, ..c.clone() };
        let touching: Vec<&Finding> = self.touching(check).collect();
        let Some(first) = touching.first() else {
            if let Some(holding) =
                self.findings.iter().find(|f| f.holds_moves()).filter(|_| c.verdict == Verdict::Outside)
            {
                weighed.correction = held(holding);
            }
            return weighed;
        };
        if c.answer.is_none() {
            return weighed;
        }
        weighed.untrusted = touching.iter().map(|f| f.code).collect();
        weighed.untrusted.dedup();
        weighed.otherwise = match c.verdict {
            Verdict::Outside => {
                opened.iter().filter(|o| touching.contains(&o.finding)).map(|o| self.otherwise(i, o)).collect()
            }
            _ => Vec::new(),
        };
        // Two faults at once are not set free one by one.
        let proven = touching.len() == 1
            && !weighed.otherwise.is_empty()
            && weighed.otherwise.iter().all(|o| o.verdict == Verdict::Outside);
        weighed.correction = held(first);
        weighed.verdict = match () {
            () if first.level == Level::Void => Verdict::Retake,
            () if proven => Verdict::Outside,
            () => Verdict::NotProven,
        };
        let finding = title(first);
        weighed.reason = Some(match c.verdict {
            _ if proven => phrase!("advice-outside-anyway", finding = finding),
            Verdict::Outside if first.level == Level::Stop => phrase!("advice-untrusted-outside", finding = finding),
            _ => phrase!("advice-untrusted", finding = finding),
        });
        weighed
    }

    fn otherwise(&self, i: usize, opened: &Opened) -> Otherwise {
        let check = &self.case.setup.checks[i];
        let judged = |e: &Option<Estimate>| match e {
            Some(e) => (decide(&self.case.setup.decision, check, e).verdict, Some(*e)),
            None => (Verdict::Retake, None),
        };
        let rank = |v: Verdict| {
            [Verdict::Outside, Verdict::Retake, Verdict::NotProven, Verdict::Within].iter().position(|x| *x == v)
        };
        let answers = opened.answers.as_ref().map_or(&[][..], |a| a[i].as_slice());
        let worst = answers.iter().map(judged).min_by_key(|(v, _)| rank(*v)).unwrap_or((Verdict::Retake, None));
        Otherwise { assuming: opened.assuming.clone(), estimate: worst.1, verdict: worst.0 }
    }

    fn by_check(&self, answers: &[Option<Estimate>]) -> Vec<Vec<Option<Estimate>>> {
        let mut rest = answers.iter().copied();
        self.asks.iter().map(|asks| rest.by_ref().take(asks.len()).collect()).collect()
    }

    fn measured(&self, kit: &Kit, scene: &Scene, readings: &[UsedReading]) -> Vec<Option<Estimate>> {
        let facts = Facts { kit, setup: self.case.setup, vehicle: &self.case.job.vehicle };
        let asks = self.asks.concat();
        let answers = measure(&facts, scene, self.case.line, &asks, readings).answers;
        answers.into_iter().map(|a| Some(a.ok()?.estimate)).collect()
    }

    /// The answers to everything that was asked, under one explanation; `None`
    /// where nothing can be measured with it.
    fn with(&self, open: &Open) -> Option<Vec<Option<Estimate>>> {
        let (problem, scene) = (self.case.problem?, self.case.scene?);
        let as_is = Freed::new(problem);
        let adjusted = |freed: Freed| {
            let again = freed.adjust(scene)?;
            Some(self.measured(freed.kit(), &again, self.readings))
        };
        match open {
            Open::Apart { carriers, photos } => adjusted(as_is.apart(carriers, photos)),
            Open::Focal(photos) => adjusted(as_is.any_focal(photos)),
            Open::Lens(photos) => adjusted(as_is.any_lens(photos)),
            Open::OffFloor(sheets) => adjusted(as_is.off_floor(sheets)),
            Open::WithoutPhoto(photo) => adjusted(as_is.without_photo(*photo)),
            Open::Size(carriers) => {
                let resized = as_is.resized(carriers, scene)?;
                let [at, beside] =
                    [&resized.at, &resized.beside].map(|(freed, s)| self.measured(freed.kit(), s, self.readings));
                Some(at.into_iter().zip(beside).map(|(a, b)| Some(less_sure(a?, b?))).collect())
            }
            Open::NotFlush { carrier, turn_deg } => {
                let mut freed = (problem.kit.clone(), scene.clone());
                let seat = &mut freed.0.carriers[*carrier];
                seat.u_seating_deg[2] = seat.u_seating_deg[2].hypot(super::findings::U_TOTAL_TOE_DEG);
                seat.u_seating_mm = seat.u_seating_mm.hypot(RIM_MM * rad(turn_deg.abs()).sin());
                let turn = Vector6::new(0.0, 0.0, 0.0, 0.0, 0.0, rad(*turn_deg));
                freed.1.carriers[*carrier] = freed.1.carriers[*carrier].map(|pose| pose.moved(&turn));
                Some(self.measured(&freed.0, &freed.1, self.readings))
            }
            Open::WithoutReadings => Some(self.measured(problem.kit, scene, &[])),
            Open::AsMeasured => Some(self.measured(problem.kit, scene, self.readings)),
        }
    }
}

/// A value with the uncertainty of a size: how far it moves by a standard uncertainty of it.
fn less_sure(at: Estimate, beside: Estimate) -> Estimate {
    Estimate { standard_uncertainty: at.standard_uncertainty.hypot(beside.value - at.value), ..at }
}

/// A finding's title, as `explain` has it.
fn title(finding: &Finding) -> Value {
    Phrase::new(format!("finding-{}.title", finding.code)).into()
}

fn held(finding: &Finding) -> Phrase {
    phrase!("moves-held", finding = title(finding))
}
