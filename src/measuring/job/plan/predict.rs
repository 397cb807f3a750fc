//! What `verify` will state for photos from given stations: the adjustment's
//! own equations at the wanted place, then the measurement's own budget.

use nalgebra::Point3;

use super::bay::{ExpectedBay, Sizes};
use super::sight::{Sight, Station};
use crate::camera::Profile;
use crate::folder::Vehicle;
use crate::job::asking::{check_asks, line_of};
use crate::job::opening::Doubles;
use crate::marker::{Kit, Role};
use crate::measure::{Answer, Ask, Facts, Undetermined, measure};
use crate::pose::{PhotoView, Presumed, Problem, expect};
use crate::quantity::Estimate;
use crate::setup::{Check, Setup};
use crate::verdict::{Verdict, decide, widest_tolerated};

/// What plan and prediction are about.
#[derive(Debug, Clone, Copy)]
pub struct Wanted<'a> {
    /// The marker kit.
    pub kit: &'a Kit,
    /// The set-up sheet.
    pub setup: &'a Setup,
    /// The camera.
    pub camera: &'a Profile,
    /// What is typed about the vehicle.
    pub vehicle: &'a Vehicle,
}

/// One check's prediction.
#[derive(Debug, Clone)]
pub(super) struct Predicted {
    /// `None` where the photos would not determine it.
    pub(super) answer: Option<Answer>,
    /// Whether a value at the nominal would be proven.
    pub(super) can_decide: bool,
    /// Standard uncertainty against the largest one that could prove anything.
    pub(super) ratio: f64,
}

/// A bay in which photos can be predicted.
#[derive(Debug, Clone)]
pub(super) struct Predictor<'a> {
    pub(super) wanted: Wanted<'a>,
    /// The working kit: a stand for each step.
    pub(super) steps: Doubles,
    pub(super) bay: ExpectedBay,
    /// Corner noise in units of what is expected of a plain photo.
    pub(super) noise: f64,
    /// What else is presumed of the photos.
    pub(super) presumed: Presumed,
    typed: Vehicle,
    asks: Vec<Ask>,
    /// By check: its asks.
    of_check: Vec<std::ops::Range<usize>>,
}

/// A station with what its photo shows, one photo for each step.
#[derive(Debug, Clone)]
pub(super) struct Shot {
    pub(super) station: Station,
    pub(super) views: Vec<PhotoView>,
}

impl<'a> Predictor<'a> {
    pub(super) fn new(wanted: Wanted<'a>, noise: f64, presumed: Presumed) -> Self {
        let names: Vec<&str> = wanted.setup.steps.iter().map(String::as_str).collect();
        let steps = Doubles::new(wanted.kit, &names, |c| c.role == Role::Target);
        let sizes = Sizes::of(wanted.vehicle);
        let bay = ExpectedBay::new(&steps, wanted.setup, sizes);
        let (mut asks, mut of_check) = (Vec::new(), Vec::new());
        for check in &wanted.setup.checks {
            let start = asks.len();
            asks.extend(check_asks(&steps, wanted.setup, check));
            of_check.push(start..asks.len());
        }
        Predictor { wanted, steps, bay, noise, presumed, typed: sizes.typed(wanted.vehicle), asks, of_check }
    }

    pub(super) fn sight(&self) -> Sight<'_> {
        Sight::new(&self.steps.kit, &self.bay, self.noise)
    }

    fn states(&self) -> usize {
        self.wanted.setup.steps.len().max(1)
    }

    /// Whether a carrier is there in photos of a step.
    fn is_there(&self, carrier: usize, state: usize) -> bool {
        let changes = self.states() > 1 && self.steps.kit.carriers[carrier].role == Role::Target;
        !changes || self.steps.origin(carrier).1 == state
    }

    /// The photos from a station that looks at a point.
    pub(super) fn shot(&self, sight: &Sight, station: Station) -> Shot {
        let photo = |state| sight.photo(&station, self.wanted.camera, &|k| self.is_there(k, state));
        Shot { station, views: (0..self.states()).map(photo).collect() }
    }

    /// The best photo from a place: the direction that shows most.
    pub(super) fn best_shot(&self, sight: &Sight, eye: Point3<f64>) -> Option<Shot> {
        let aims = sight.aims(eye, &|k| self.is_there(k, 0));
        let shots = aims.into_iter().map(|look_at| self.shot(sight, Station { eye, look_at }));
        shots.max_by_key(|s| (self.sees(s).len(), s.views[0].views.len()))
    }

    /// Carriers that a shot shows in any step, by index in the working kit.
    pub(super) fn sees(&self, shot: &Shot) -> Vec<usize> {
        (0..self.steps.kit.carriers.len()).filter(|k| shot.views.iter().any(|v| v.shows(*k))).collect()
    }

    /// The predictions of all checks, in the sheet's order.
    pub(super) fn predict(&self, shots: &[&Shot]) -> Vec<Predicted> {
        let photos: Vec<PhotoView> = shots.iter().flat_map(|s| s.views.iter().cloned()).collect();
        let states = self.states();
        let pose_of = |j: usize| (!photos[j].views.is_empty()).then(|| shots[j / states].station.camera_from_world());
        let poses: Vec<_> = (0..photos.len()).map(pose_of).collect();
        let kit = &self.steps.kit;
        let seen = |k: usize| photos.iter().any(|p| p.shows(k));
        let carriers: Vec<_> = (0..kit.carriers.len()).map(|k| self.bay.carriers[k].filter(|_| seen(k))).collect();
        let on_floor = kit.with_role(Role::Floor).any(|k| carriers[k].is_some());
        let problem = Problem { kit, cameras: vec![self.wanted.camera], photos };
        let scene = expect(&problem, &poses, &carriers, on_floor, &self.presumed);
        let facts = Facts { kit, setup: self.wanted.setup, vehicle: &self.typed };
        let measurement = scene.map(|s| measure(&facts, &s, self.wanted.setup.reference_line, &self.asks, &[]));
        let checks = self.wanted.setup.checks.iter().zip(&self.of_check);
        checks
            .map(|(check, asks)| {
                let answers = measurement.as_ref().map(|m| &m.answers[asks.clone()]);
                self.judge_worst(check, answers.unwrap_or_default())
            })
            .collect()
    }

    /// What is typed of the vehicle, with what is usual for the rest.
    pub(super) fn typed(&self) -> &Vehicle {
        &self.typed
    }

    /// A check by its answers, of its steps the worst.
    pub(super) fn judge_worst(&self, check: &Check, answers: &[Result<Answer, Undetermined>]) -> Predicted {
        if check.is_decided_by_reading(self.wanted.kit) {
            return Predicted { answer: None, can_decide: true, ratio: 0.0 };
        }
        let all = answers.iter().map(|a| self.judge(check, a.as_ref().ok()));
        let worst = all.max_by(|a, b| a.ratio.total_cmp(&b.ratio));
        worst.unwrap_or_else(|| self.judge(check, None))
    }

    fn judge(&self, check: &Check, answer: Option<&Answer>) -> Predicted {
        let Some(answer) = answer.filter(|a| a.estimate.standard_uncertainty.is_finite()) else {
            return Predicted { answer: None, can_decide: false, ratio: f64::INFINITY };
        };
        let e = &answer.estimate;
        let at_nominal = Estimate { value: check.nominal, ..*e };
        let decided = decide(&self.wanted.setup.decision, check, &at_nominal);
        let widest = widest_tolerated(&self.wanted.setup.decision, check.nominal, check.lower, check.upper);
        Predicted {
            answer: Some(answer.clone()),
            can_decide: decided.can_decide,
            ratio: e.standard_uncertainty / widest.max(1e-9),
        }
    }
}

/// How far from the nominal a value may lie, to the nearer limit's side, and still be proven.
pub(super) fn room(setup: &Setup, check: &Check, estimate: &Estimate) -> Option<f64> {
    let nearest = nearest_limit(check)?;
    let side = if check.upper.is_some_and(|u| u - check.nominal <= nearest) { 1.0 } else { -1.0 };
    let proven = |off: f64| {
        let e = Estimate { value: check.nominal + side * off, ..*estimate };
        decide(&setup.decision, check, &e).verdict == Verdict::Within
    };
    if !proven(0.0) {
        return None;
    }
    let (mut low, mut high) = (0.0, nearest);
    for _ in 0..30 {
        let middle = f64::midpoint(low, high);
        if proven(middle) { low = middle } else { high = middle }
    }
    Some(low)
}

/// From the nominal to the nearer limit.
pub(super) fn nearest_limit(check: &Check) -> Option<f64> {
    let limits = [check.lower, check.upper].into_iter().flatten();
    limits.map(|l| (l - check.nominal).abs()).min_by(f64::total_cmp)
}

/// The reference line of a check, for words.
pub(super) fn line_words(setup: &Setup, check: &Check) -> String {
    line_of(setup, check).trade_name()
}
