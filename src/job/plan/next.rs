//! "One more photo from here would decide this": the next station for a job
//! whose checks stay undecided.

use nalgebra::{Point3, Vector3};

use super::super::answers::check_asks;
use super::super::opened::Opened;
use super::bay::{ExpectedBay, Sizes};
use super::search::Reach;
use super::sight::{Sight, Station};
use crate::geom::{Pose, Vehicle, World};
use crate::measure::{Answer, Facts, Measurement, measure};
use crate::pose::{Problem, Scene, expect};
use crate::record::Verdict;
use crate::setup::Check;
use crate::verdict::{Checked, decide};

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
}

impl NextStation {
    /// As a person with the camera needs it.
    pub(in crate::job) fn words(&self) -> String {
        let [_, y, z] = self.position_mm;
        let side = match y.round() as i64 {
            -99..=99 => "in the middle".to_owned(),
            100.. => format!("{:.1} m to the vehicle's left", y / 1000.0),
            _ => format!("{:.1} m to the vehicle's right", -y / 1000.0),
        };
        format!(
            "from {:.1} m before the nose, {side} (as the vehicle faces), camera {:.1} m above the floor, showing stand and wheel plates",
            self.before_nose_mm / 1000.0,
            z / 1000.0
        )
    }
}

/// The station whose photo decides most of the undecided checks at their
/// present values; `None` where none decides any.
pub(in crate::job) fn next_station(
    opened: &Opened,
    scene: &Scene,
    measurement: &Measurement,
    checks: &[Checked],
) -> Option<NextStation> {
    let setup = &opened.folder.setup;
    let open: Vec<usize> =
        (0..checks.len()).filter(|i| checks[*i].verdict == Verdict::Undecided && checks[*i].answer.is_some()).collect();
    if open.is_empty() || opened.folder.setup.steps.len() > 1 {
        return None;
    }
    let candidates = Candidates::new(opened, scene, measurement)?;
    let mut best: Option<(usize, f64, NextStation)> = None;
    for eye in candidates.places() {
        let Some((station, predicted)) = candidates.with_photo_from(eye) else { continue };
        let decided = |i: &usize| decides(setup.checks.get(*i), &setup.decision, &checks[*i], predicted.get(*i));
        let decides: Vec<usize> = open.iter().copied().filter(|i| decided(i)).collect();
        let u: f64 = open.iter().filter_map(|i| relative(&checks[*i], predicted.get(*i))).sum();
        let better = best.as_ref().is_none_or(|(n, v, _)| (decides.len(), -u) > (*n, -*v));
        if better && !decides.is_empty() {
            let before_nose_mm = eye.x - candidates.sizes.nose;
            let next = NextStation {
                position_mm: station.eye.coords.into(),
                look_at_mm: station.look_at.coords.into(),
                before_nose_mm,
                decides: decides.clone(),
            };
            best = Some((decides.len(), u, next));
        }
    }
    best.map(|b| b.2)
}

fn relative(checked: &Checked, predicted: Option<&Option<Answer>>) -> Option<f64> {
    let before = checked.answer.as_ref()?.estimate.standard_uncertainty;
    Some(predicted?.as_ref()?.estimate.standard_uncertainty / before)
}

fn decides(
    check: Option<&Check>,
    decision: &crate::setup::Decision,
    checked: &Checked,
    predicted: Option<&Option<Answer>>,
) -> bool {
    let (Some(check), Some(Some(answer)), Some(now)) = (check, predicted, &checked.answer) else { return false };
    let estimate = crate::quantity::Estimate { value: now.estimate.value, ..answer.estimate };
    matches!(decide(decision, check.lower, check.upper, &estimate).verdict, Verdict::Within | Verdict::Outside)
}

/// The solved bay, in which one more photo can be thought.
struct Candidates<'a> {
    opened: &'a Opened,
    scene: &'a Scene,
    world_from_vehicle: Pose<World, Vehicle>,
    bay: ExpectedBay,
    sizes: Sizes,
}

impl<'a> Candidates<'a> {
    fn new(opened: &'a Opened, scene: &'a Scene, measurement: &Measurement) -> Option<Self> {
        let sizes = Sizes::of(&opened.folder.job.vehicle);
        // Any solved carrier tells how the vehicle's frame lies in the world's.
        let k = (0..measurement.carriers.len())
            .find(|k| measurement.carriers[*k].is_some() && scene.carriers[*k].is_some())?;
        let world_from_carrier = scene.carriers[k]?;
        let world_from_vehicle = world_from_carrier * measurement.carriers[k].as_ref()?.vehicle_from_carrier.inverse();
        let carriers = measurement.carriers.iter().map(|c| {
            let pose = c.as_ref()?.vehicle_from_carrier;
            Some(Pose::new(pose.rotation(), pose.origin_mm()))
        });
        let bay = ExpectedBay { sizes, carriers: carriers.collect() };
        Some(Candidates { opened, scene, world_from_vehicle, bay, sizes })
    }

    /// A coarse grid of places before the vehicle within a usual bay.
    fn places(&self) -> Vec<Point3<f64>> {
        let reach = Reach::default();
        let half = reach.width_mm / 2.0 - 300.0;
        let stands: Vec<Vector3<f64>> = self
            .opened
            .folder
            .rig
            .with_role(crate::marker::Role::Target)
            .filter_map(|k| self.bay.carriers[k])
            .map(|p| p.origin_mm())
            .collect();
        let free = |p: &Point3<f64>| !stands.iter().any(|o| (p.x - o.x).abs() < 500.0 && (p.y - o.y).abs() < 950.0);
        let ahead = [700.0, 1600.0, 2500.0, 3400.0, 4300.0, 5200.0].map(|d| self.sizes.nose + d);
        let grid = ahead.iter().flat_map(|x| [-1.0, -0.5, 0.0, 0.5, 1.0].map(|s| Point3::new(*x, s * half, 1550.0)));
        grid.filter(free).collect()
    }

    /// The checks' answers with one more photo from a place.
    fn with_photo_from(&self, eye: Point3<f64>) -> Option<(Station, Vec<Option<Answer>>)> {
        let folder = &self.opened.folder;
        let profile = self.opened.assignment.cameras.first()?;
        let sight = Sight::new(&folder.rig, &self.bay);
        let shots = sight.aims(eye, &|_| true).into_iter().map(|look_at| {
            let station = Station { eye, look_at };
            (station, sight.photo(&station, profile, &|_| true))
        });
        let (station, view) = shots.max_by_key(|(_, v)| v.views.len()).filter(|(_, v)| v.views.len() >= 4)?;
        let base = self.opened.problem();
        let mut photos = base.photos.clone();
        photos.push(view);
        let problem = Problem { rig: base.rig, cameras: base.cameras.clone(), photos };
        let vehicle_from_world: Pose<World, World> = Pose::from_isometry(*self.world_from_vehicle.inverse().isometry());
        let mut poses: Vec<_> = self.scene.photos.iter().map(|p| p.as_ref().map(|p| p.camera_from_world)).collect();
        poses.push(Some(station.camera_from_world() * vehicle_from_world));
        let scene = expect(&problem, &poses, &self.scene.carriers, self.scene.on_floor)?;
        let facts = Facts { rig: &folder.rig, setup: &folder.setup, vehicle: &folder.job.vehicle };
        let asks: Vec<_> = folder
            .setup
            .checks
            .iter()
            .filter_map(|c| check_asks(&self.opened.steps, &folder.setup, c).into_iter().next())
            .collect();
        let measured = measure(&facts, &scene, folder.setup.reference_line, &asks, &[]);
        Some((station, measured.answers.into_iter().map(Result::ok).collect()))
    }
}
