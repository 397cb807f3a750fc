//! "One more photo from here would decide this": the next station for a job
//! whose checks stay not proven.

use nalgebra::{Point3, Vector3};

use super::bay::{ExpectedBay, Sizes};
use super::noise::ratio_by_views;
use super::search::Reach;
use super::sight::{Sight, Station};
use crate::geom::{Camera, Pose, Vehicle, World};
use crate::job::asking::check_asks;
use crate::job::opening::Opened;
use crate::measure::{Answer, Facts, Measurement, Undetermined, measure};
use crate::pose::{Presumed, Problem, Scene, expect};
use crate::quantity::Estimate;
use crate::record::Verdict;
use crate::setup::Check;
use crate::verdict::{Checked, decide, figure, later};
use crate::words::{Phrase, phrase};

/// Where one more photo helps, and what it would decide.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::job) struct NextStation {
    /// Camera, vehicle frame, mm.
    pub(in crate::job) position_mm: [f64; 3],
    /// What it looks at, mm.
    pub(in crate::job) look_at_mm: [f64; 3],
    /// Before the nose (or the rear axle, where the nose is unknown), mm.
    pub(in crate::job) before_nose_mm: f64,
    /// By check: what would be decided if the value stays.
    pub(in crate::job) decides: Vec<usize>,
    /// The step of the sheet that the photo has to show, where it has several.
    pub(in crate::job) step: Option<String>,
}

impl NextStation {
    /// As a person with the camera needs it.
    pub(in crate::job) fn phrase(&self) -> Phrase {
        let [_, y, z] = self.position_mm;
        let side = match y.round() as i64 {
            -99..=99 => "middle",
            100.. => "left",
            _ => "right",
        };
        let metres = |mm: f64| figure(mm / 1000.0, 1);
        let (ahead, aside, up) = (metres(self.before_nose_mm), metres(y.abs()), metres(z));
        match &self.step {
            None => phrase!("advice-next-photo", side = side, ahead = ahead, aside = aside, up = up),
            Some(step) => {
                phrase!("advice-next-photo-in-step", side = side, ahead = ahead, aside = aside, up = up, step = step)
            }
        }
    }
}

/// What the checks came to: what is decided, and each check's answers, one for
/// each step that it holds in.
#[derive(Debug, Clone, Copy)]
pub(in crate::job) struct Standing<'a> {
    /// In the sheet's order.
    pub(in crate::job) checks: &'a [Checked],
    /// Likewise.
    pub(in crate::job) answers: &'a [Vec<Result<Answer, Undetermined>>],
}

/// The station whose photo decides most of the not proven checks at their
/// present values; `None` where none decides any.
pub(in crate::job) fn next_station(
    opened: &Opened,
    scene: &Scene,
    measurement: &Measurement,
    now: Standing,
) -> Option<NextStation> {
    let setup = &opened.folder.setup;
    let by_photos = |i: &usize| !setup.checks[*i].is_decided_by_reading(&opened.folder.kit);
    let sound = |i: usize| now.checks[i].answer.is_some() && now.checks[i].untrusted.is_empty();
    // What waits for a move takes its photo after it.
    let waits = |i: usize| now.checks[i].correction == later();
    let not_proven = |i: &usize| now.checks[*i].verdict == Verdict::NotProven && sound(*i) && !waits(*i);
    let open: Vec<usize> = (0..now.checks.len()).filter(not_proven).filter(by_photos).collect();
    if open.is_empty() {
        return None;
    }
    let states = setup.steps.len().max(1);
    let proves: Vec<Vec<bool>> = (0..states).map(|state| opened.proves_with_one_more(scene, state)).collect();
    let candidates = Candidates::new(opened, scene, measurement)?;
    let places = candidates.places();
    let tries = (0..states).flat_map(|state| places.iter().map(move |eye| (state, *eye)));
    let mut best: Option<(usize, f64, NextStation)> = None;
    for (state, eye) in tries {
        let Some((station, predicted)) = candidates.with_photo_from(eye, state) else { continue };
        let decided = |i: &usize| decides(&setup.checks[*i], &setup.decision, &now.answers[*i], &predicted[*i]);
        let decides: Vec<usize> = open.iter().copied().filter(|i| proves[state][*i]).filter(decided).collect();
        let u: f64 = open.iter().filter_map(|i| relative(&now.answers[*i], &predicted[*i])).sum();
        let better = best.as_ref().is_none_or(|(n, v, _)| (decides.len(), -u) > (*n, -*v));
        if better && !decides.is_empty() {
            let next = NextStation {
                position_mm: station.eye.coords.into(),
                look_at_mm: station.look_at.coords.into(),
                before_nose_mm: eye.x - candidates.sizes.nose,
                decides: decides.clone(),
                step: setup.steps.get(state).filter(|_| setup.steps.len() > 1).cloned(),
            };
            best = Some((decides.len(), u, next));
        }
    }
    best.map(|b| b.2)
}

/// How much of its uncertainty a check keeps, of its steps the worst.
fn relative(now: &[Result<Answer, Undetermined>], predicted: &[Option<Answer>]) -> Option<f64> {
    let one = |(now, then): (&Result<Answer, Undetermined>, &Option<Answer>)| {
        Some(then.as_ref()?.estimate.standard_uncertainty / now.as_ref().ok()?.estimate.standard_uncertainty)
    };
    now.iter().zip(predicted).filter_map(one).reduce(f64::max)
}

/// Whether a check is decided once each of its steps is within, or one outside.
fn decides(
    check: &Check,
    decision: &crate::setup::Decision,
    now: &[Result<Answer, Undetermined>],
    predicted: &[Option<Answer>],
) -> bool {
    let of = |(now, then): (&Result<Answer, Undetermined>, &Option<Answer>)| {
        let estimate = Estimate { value: now.as_ref().ok()?.estimate.value, ..then.as_ref()?.estimate };
        Some(decide(decision, check, &estimate).verdict)
    };
    let verdicts: Vec<Option<Verdict>> = now.iter().zip(predicted).map(of).collect();
    !verdicts.is_empty()
        && (verdicts.contains(&Some(Verdict::Outside)) || verdicts.iter().all(|v| *v == Some(Verdict::Within)))
}

/// The solved bay, in which one more photo can be thought.
struct Candidates<'a> {
    opened: &'a Opened,
    scene: &'a Scene,
    world_from_vehicle: Pose<World, Vehicle>,
    bay: ExpectedBay,
    sizes: Sizes,
    /// Corner noise of the photos that were taken, in units of what is expected of plain ones.
    noise: f64,
}

impl<'a> Candidates<'a> {
    fn new(opened: &'a Opened, scene: &'a Scene, measurement: &Measurement) -> Option<Self> {
        let sizes = Sizes::of(&opened.folder.job.vehicle);
        // Any solved carrier tells how the vehicle's frame lies in the world's.
        let k = (0..measurement.carriers.len())
            .find(|k| measurement.carriers[*k].is_some() && scene.carriers[*k].is_some())?;
        let world_from_carrier = scene.carriers[k]?;
        let world_from_vehicle = world_from_carrier * measurement.carriers[k].as_ref()?.vehicle_from_carrier.inverse();
        let carriers = measurement.carriers.iter().enumerate().map(|(k, c)| {
            // Where the stand stood before it was moved nothing stands in the way now.
            let c = c.as_ref().filter(|_| !opened.steps.is_earlier(k));
            let pose = c?.vehicle_from_carrier;
            Some(Pose::new(pose.rotation(), pose.origin_mm()))
        });
        let bay = ExpectedBay { sizes, carriers: carriers.collect() };
        let taken = opened.problem();
        let noise = ratio_by_views(taken.photos.iter().flat_map(|p| &p.views)).unwrap_or(1.0);
        Some(Candidates { opened, scene, world_from_vehicle, bay, sizes, noise })
    }

    /// A coarse grid of places before the vehicle within a usual bay.
    fn places(&self) -> Vec<Point3<f64>> {
        let reach = Reach::default();
        let half = reach.width_mm / 2.0 - 300.0;
        let stands: Vec<Vector3<f64>> = self
            .opened
            .folder
            .kit
            .with_role(crate::marker::Role::Target)
            .filter_map(|k| self.bay.carriers[k])
            .map(|p| p.origin_mm())
            .collect();
        let free = |p: &Point3<f64>| !stands.iter().any(|o| (p.x - o.x).abs() < 500.0 && (p.y - o.y).abs() < 950.0);
        let ahead = [700.0, 1600.0, 2500.0, 3400.0, 4300.0, 5200.0].map(|d| self.sizes.nose + d);
        let grid = ahead.iter().flat_map(|x| [-1.0, -0.5, 0.0, 0.5, 1.0].map(|s| Point3::new(*x, s * half, 1550.0)));
        grid.filter(free).collect()
    }

    /// By check, its answers with one more photo from a place, the stand being as in a step.
    fn with_photo_from(&self, eye: Point3<f64>, state: usize) -> Option<(Station, Vec<Vec<Option<Answer>>>)> {
        let (folder, steps) = (&self.opened.folder, &self.opened.steps);
        let profile = self.opened.assignment.cameras.first()?;
        let sight = Sight::new(&folder.kit, &self.bay, self.noise);
        let is_there = |k: usize| {
            let (carrier, of) = steps.origin(k);
            steps.states(carrier) == 1 || of == state
        };
        let shots = sight.aims(eye, &is_there).into_iter().map(|look_at| {
            let station = Station { eye, look_at };
            (station, sight.photo(&station, profile, &is_there))
        });
        let (station, view) = shots.max_by_key(|(_, v)| v.views.len()).filter(|(_, v)| v.views.len() >= 4)?;
        let mut problem = self.opened.problem();
        problem.photos.push(view);
        let vehicle_from_world: Pose<World, World> = Pose::from_isometry(*self.world_from_vehicle.inverse().isometry());
        let mut poses: Vec<_> = self.scene.photos.iter().map(|p| p.as_ref().map(|p| p.camera_from_world)).collect();
        poses.push(Some(station.camera_from_world() * vehicle_from_world));
        let by_check = predicted(self.opened, self.scene, &problem, &poses)?;
        Some((station, by_check))
    }
}

/// By check, its answers were the photos so: the scene's places with the problem's covariances.
pub(super) fn predicted(
    opened: &Opened,
    scene: &Scene,
    problem: &Problem,
    poses: &[Option<Pose<Camera, World>>],
) -> Option<Vec<Vec<Option<Answer>>>> {
    let (folder, steps) = (&opened.folder, &opened.steps);
    // The same hand takes the next photo.
    let turn_ratio = scene.photos.iter().flatten().find_map(|p| p.turn_ratio).unwrap_or(0.0);
    let presumed = Presumed { variance: scene.variance, turn_ratio };
    let expected = expect(problem, poses, &scene.carriers, scene.on_floor, &presumed)?;
    let facts = Facts { kit: &folder.kit, setup: &folder.setup, vehicle: &folder.job.vehicle };
    let of_checks: Vec<_> = folder.setup.checks.iter().map(|c| check_asks(steps, &folder.setup, c)).collect();
    let measured = measure(&facts, &expected, folder.setup.reference_line, &of_checks.concat(), &[]);
    let mut answers = measured.answers.into_iter().map(Result::ok);
    Some(of_checks.iter().map(|asks| answers.by_ref().take(asks.len()).collect()).collect())
}
