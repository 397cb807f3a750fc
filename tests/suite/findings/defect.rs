//! What is wrong with a bay in values of its own, so that two defects can be one job's.

use baywitness::camera::Lens;
use baywitness::geom::{Attitude, Pose};
use nalgebra::Vector3;

use super::bench::bay;
use super::planted::At;
use crate::sampled_bay::{Bay, Flaw, Sample, flawed};

type Place = Box<dyn Fn(usize, &str, At) -> At + Sync>;

/// Where carriers stand, how they are printed, which lens took the photos, and
/// what was mixed up afterwards.
pub(crate) struct Defect {
    pub(crate) place: Place,
    pub(crate) print: Box<dyn Fn(&str) -> f64 + Sync>,
    pub(crate) focal: Box<dyn Fn(usize) -> f64 + Sync>,
    /// The lens that really took a photo, of the one that the camera file states.
    pub(crate) lens: Box<dyn Fn(usize, Lens) -> Lens + Sync>,
    pub(crate) after: Box<dyn Fn(&mut Sample) + Sync>,
    /// The vehicle's true step when the last photo was taken, mm.
    pub(crate) vehicle_step_mm: f64,
    /// Toe would hide it.
    pub(crate) no_toe: bool,
}

impl Default for Defect {
    fn default() -> Self {
        Defect {
            place: Box::new(|_, _, pose| pose),
            print: Box::new(|_| 1.0),
            focal: Box::new(|_| 1.0),
            lens: Box::new(|_, lens| lens),
            after: Box::new(|_| ()),
            vehicle_step_mm: 0.0,
            no_toe: false,
        }
    }
}

/// The photo after which the calibration would run.
const LAST: usize = 3;

impl Defect {
    pub(crate) fn placed(place: impl Fn(usize, &str, At) -> At + Sync + 'static) -> Self {
        Defect { place: Box::new(place), ..Defect::default() }
    }

    /// Both at once, this one first.
    pub(crate) fn and(self, other: Defect) -> Self {
        Defect {
            place: Box::new(move |photo, name, pose| (other.place)(photo, name, (self.place)(photo, name, pose))),
            print: Box::new(move |name| (self.print)(name) * (other.print)(name)),
            focal: Box::new(move |photo| (self.focal)(photo) * (other.focal)(photo)),
            lens: Box::new(move |photo, lens| (other.lens)(photo, (self.lens)(photo, lens))),
            after: Box::new(move |sample| {
                (self.after)(sample);
                (other.after)(sample);
            }),
            vehicle_step_mm: self.vehicle_step_mm + other.vehicle_step_mm,
            no_toe: self.no_toe || other.no_toe,
        }
    }

    /// One job of a bay with it.
    pub(crate) fn sample(&self, of: &Bay, seed: u64) -> Sample {
        let bay = Bay { toe_deg: if self.no_toe { 0.0 } else { of.toe_deg }, ..of.clone() };
        let flaw = Flaw { place: &*self.place, print: &*self.print, focal: &*self.focal, lens: &*self.lens };
        let mut sample = flawed(&bay, seed, &flaw);
        (self.after)(&mut sample);
        sample
    }

    /// One job of the usual bay with it.
    pub(crate) fn usual(&self, seed: u64) -> Sample {
        self.sample(&bay(), seed)
    }

    /// What is true against the vehicle's centreline and the floor under the
    /// vehicle when the last photo was taken: distance from the rear axle, centring,
    /// height, yaw, pitch, roll. A plate that sits badly changes nothing of it.
    pub(crate) fn truth(&self, sample: &Sample) -> [f64; 6] {
        let rolled = Vector3::new(self.vehicle_step_mm, 0.0, 0.0);
        let hub = |name: &str| sample.bodies[sample.carrier(name)].origin_mm() + rolled;
        let flat = |v: Vector3<f64>| Vector3::new(v.x, v.y, 0.0);
        let rear = (hub("rear-left") + hub("rear-right")) / 2.0;
        let line = flat((hub("front-left") + hub("front-right")) / 2.0 - rear).normalize();
        let stand: At = (self.place)(LAST, "stand", sample.bodies[sample.carrier("stand")]);
        let aim = stand.origin_mm() - rear;
        let back = Attitude { yaw_deg: -line.y.atan2(line.x).to_degrees(), ..Attitude::default() }.rotation();
        let turned: At = Pose::new(back * stand.rotation(), stand.origin_mm());
        let attitude = Attitude::from_rotation(&turned.rotation());
        [
            aim.dot(&line),
            aim.dot(&Vector3::z().cross(&line)),
            stand.origin_mm().z,
            attitude.yaw_deg,
            attitude.pitch_deg,
            attitude.roll_deg,
        ]
    }
}
