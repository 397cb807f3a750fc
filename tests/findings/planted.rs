//! The flaws of a bay, each planted at the size that four photos must show.

use baywitness::camera::Lens;
use baywitness::geom::{self, Attitude, Pose, Vehicle, rad};
use baywitness::pose::View;
use nalgebra::{Vector3, Vector6};

use super::bench::bay;
use super::common::{Bay, Flaw, Noise, Sample, camera, flawed, sample};

pub(crate) type At = Pose<Vehicle, geom::Carrier>;

/// A flaw, drawn anew for each seed: which body, which photos, which way.
pub(crate) struct Planted {
    pub(crate) code: &'static str,
    pub(crate) what: &'static str,
    pub(crate) make: fn(u64) -> Sample,
}

const fn planted(code: &'static str, what: &'static str, make: fn(u64) -> Sample) -> Planted {
    Planted { code, what, make }
}

pub(crate) const FLAWS: [Planted; 19] = [
    planted("stand-moved-between-photos", "stand pushed 5 mm", stand_pushed),
    planted("stand-moved-between-photos", "stand turned 0.2 deg", stand_turned),
    planted("vehicle-moved-between-photos", "vehicle rolled 5 mm", vehicle_rolled),
    planted("plate-not-seated", "a plate 1 deg askew", plate_askew),
    planted("plate-not-seated", "a plate slipped 1 deg", plate_slipped),
    planted("plate-not-seated", "a plate upside down", |seed| upside_down(seed, WHEELS[(seed % 4) as usize])),
    planted("plates-swapped", "left and right plates swapped", |seed| {
        swapped(seed, [["rear-left", "rear-right"], ["front-left", "front-right"]][(seed % 2) as usize], 180.0)
    }),
    planted("plates-swapped", "front and rear plates swapped", |seed| {
        swapped(seed, [["rear-left", "front-left"], ["rear-right", "front-right"]][(seed % 2) as usize], 0.0)
    }),
    planted("plates-swapped", "two sheets in each other's place", sheets_exchanged),
    planted("plates-swapped", "a sheet upside down", sheet_turned),
    planted("stand-not-level", "the stand upside down", |seed| upside_down(seed, "stand")),
    planted("print-scale-wrong", "prints 1 % off on one carrier", one_print_off),
    planted("print-scale-wrong", "all prints 2 % off", all_prints_off),
    planted("photo-zoomed", "a photo zoomed by 1.1", zoomed),
    planted("camera-mismatch", "focal length 6 % off", |seed| another_lens(seed, 1.06, None)),
    planted("camera-mismatch", "another distortion", |seed| {
        another_lens(seed, 1.0, Some([0.02, -0.1, 0.0, 0.0, 0.05]))
    }),
    planted("floor-not-level", "the floor bends by 0.3 deg", floor_bent),
    planted("floor-not-level", "a sheet lies 4 mm high", sheet_raised),
    planted("steering-not-straight", "steering 0.5 deg off", steering_off),
];

const WHEELS: [&str; 4] = ["rear-left", "rear-right", "front-left", "front-right"];

pub(crate) fn stepped(pose: At, mm: [f64; 3], degrees: [f64; 3]) -> At {
    let r = degrees.map(rad);
    pose.moved(&Vector6::new(mm[0], mm[1], mm[2], r[0], r[1], r[2]))
}

/// In the vehicle's frame.
pub(crate) fn shifted(pose: At, mm: [f64; 3]) -> At {
    Pose::new(pose.rotation(), pose.origin_mm() + Vector3::from(mm))
}

pub(crate) fn on_wheel(name: &str) -> bool {
    WHEELS.contains(&name)
}

/// How a flaw turns out in one job.
struct Chance(Noise);

impl Chance {
    fn new(seed: u64) -> Self {
        Chance(Noise::new(seed ^ 0x0f1a_3000))
    }

    fn below(&mut self, n: usize) -> usize {
        ((self.0.uniform() * n as f64) as usize).min(n - 1)
    }

    fn sign(&mut self) -> f64 {
        if self.0.uniform() < 0.5 { -1.0 } else { 1.0 }
    }

    /// One photo, or from one on.
    fn some_photos(&mut self) -> impl Fn(usize) -> bool + use<> {
        let (first, alone) = (1 + self.below(3), self.0.uniform() < 0.5);
        move |photo| if alone { photo == first } else { photo >= first }
    }

    /// A unit vector in the floor.
    fn level(&mut self) -> [f64; 3] {
        let angle = std::f64::consts::TAU * self.0.uniform();
        [angle.cos(), angle.sin(), 0.0]
    }
}

fn placed(seed: u64, bay: &Bay, place: &(dyn Fn(usize, &str, At) -> At + Sync)) -> Sample {
    flawed(bay, seed, &Flaw { place, ..Flaw::default() })
}

fn stand_pushed(seed: u64) -> Sample {
    let mut chance = Chance::new(seed);
    let (photos, way) = (chance.some_photos(), chance.level().map(|x| 5.0 * x));
    placed(seed, &bay(), &|photo, name, pose| if photos(photo) && name == "stand" { shifted(pose, way) } else { pose })
}

fn stand_turned(seed: u64) -> Sample {
    let mut chance = Chance::new(seed);
    let (photos, turn) = (chance.some_photos(), [0.0, 0.0, 0.2 * chance.sign()]);
    placed(seed, &bay(), &|photo, name, pose| {
        if photos(photo) && name == "stand" { stepped(pose, [0.0; 3], turn) } else { pose }
    })
}

/// Plates turn with their wheels or are held by their weight: 5 mm on a radius of 310 mm.
fn vehicle_rolled(seed: u64) -> Sample {
    let mut chance = Chance::new(seed);
    let (photos, mm, turning) = (chance.some_photos(), 5.0 * chance.sign(), chance.below(2) as f64);
    let turn = turning * (mm / 310.0).to_degrees();
    placed(seed, &bay(), &|photo, name, pose| {
        if photos(photo) && on_wheel(name) {
            stepped(shifted(pose, [mm, 0.0, 0.0]), [0.0; 3], [0.0, turn, 0.0])
        } else {
            pose
        }
    })
}

fn plate_askew(seed: u64) -> Sample {
    let mut chance = Chance::new(seed);
    let (who, turn) = (WHEELS[chance.below(4)], [0.0, 0.0, chance.sign()]);
    placed(seed, &bay(), &|_, name, pose| if name == who { stepped(pose, [0.0; 3], turn) } else { pose })
}

fn plate_slipped(seed: u64) -> Sample {
    let mut chance = Chance::new(seed);
    let (photos, who, sign) = (chance.some_photos(), WHEELS[chance.below(4)], chance.sign());
    let mut turn = [0.0; 3];
    turn[chance.below(3)] = sign;
    placed(seed, &bay(), &|photo, name, pose| {
        if photos(photo) && name == who { stepped(pose, [0.0; 3], turn) } else { pose }
    })
}

fn upside_down(seed: u64, who: &'static str) -> Sample {
    placed(seed, &bay(), &|_, name, pose| {
        if name == who { stepped(pose, [0.0; 3], [180.0, 0.0, 0.0]) } else { pose }
    })
}

/// Two plates on each other's wheel; on the other side they only mount upside down.
fn swapped(seed: u64, who: [&str; 2], roll_deg: f64) -> Sample {
    let plain = sample(&bay(), seed);
    let bodies = who.map(|name| plain.bodies[plain.carrier(name)]);
    placed(seed, &bay(), &move |_, name, pose| match who.iter().position(|w| *w == name) {
        Some(i) => stepped(bodies[1 - i], [0.0; 3], [roll_deg, 0.0, 0.0]),
        None => pose,
    })
}

fn sheets_exchanged(seed: u64) -> Sample {
    let mut chance = Chance::new(seed);
    let mut sample = sample(&bay(), seed);
    // Two of the stand's front, of one plate's front leaf, or one of either.
    let pairs = [(0, 2), (1, 5), (10, 13), (31, 32), (0, 21), (11, 42)];
    let (a, b) = pairs[chance.below(pairs.len())];
    let Sample { rig, photos, .. } = &mut sample;
    for view in photos.iter_mut().flat_map(|p| &mut p.views) {
        let id = match view.id {
            id if id == a => b,
            id if id == b => a,
            _ => continue,
        };
        rename(rig, view, id);
    }
    sample
}

fn rename(rig: &baywitness::marker::Rig, view: &mut View, id: u32) {
    let (carrier, marker) = rig.marker(id).unwrap();
    view.id = id;
    view.carrier = carrier;
    view.marker = rig.carriers[carrier].markers.iter().position(|m| m.id == marker.id).unwrap();
}

fn sheet_turned(seed: u64) -> Sample {
    let mut chance = Chance::new(seed);
    let mut sample = sample(&bay(), seed);
    let id = [0, 1, 4, 10, 12, 21, 33, 41][chance.below(8)];
    for view in sample.photos.iter_mut().flat_map(|p| &mut p.views).filter(|v| v.id == id) {
        view.corners_px.rotate_left(2);
    }
    sample
}

fn one_print_off(seed: u64) -> Sample {
    let mut chance = Chance::new(seed);
    let (who, factor) = (["stand", "rear-left", "front-right"][chance.below(3)], 1.0 + 0.01 * chance.sign());
    flawed(&bay(), seed, &Flaw { print: &|name| if name == who { factor } else { 1.0 }, ..Flaw::default() })
}

fn all_prints_off(seed: u64) -> Sample {
    let factor = 1.0 + 0.02 * Chance::new(seed).sign();
    flawed(&bay(), seed, &Flaw { print: &|_| factor, ..Flaw::default() })
}

fn zoomed(seed: u64) -> Sample {
    let who = Chance::new(seed).below(4);
    flawed(&bay(), seed, &Flaw { focal: &|photo| if photo == who { 1.1 } else { 1.0 }, ..Flaw::default() })
}

fn another_lens(seed: u64, longer: f64, distortion: Option<[f64; 5]>) -> Sample {
    let own: Lens = camera(&bay()).lens;
    let lens =
        Lens { focal_px: own.focal_px.map(|f| f * longer), distortion: distortion.unwrap_or(own.distortion), ..own };
    flawed(&bay(), seed, &Flaw { lens: Some(lens), ..Flaw::default() })
}

/// The floor rises or falls from 2.4 m before the stand on; sheets lie 3.4 m apart.
fn floor_bent(seed: u64) -> Sample {
    let degrees = 0.3 * Chance::new(seed).sign();
    let kink = 2600.0;
    placed(seed, &bay(), &|_, name, pose| {
        let beyond = pose.origin_mm().x - kink;
        if beyond < 0.0 || !(name.starts_with("floor") || name == "stand") {
            return pose;
        }
        let rise = Attitude { pitch_deg: -degrees, ..Attitude::default() }.rotation();
        let lifted = pose.origin_mm() + Vector3::new(0.0, 0.0, beyond * rad(degrees).tan());
        Pose::new(rise * pose.rotation(), lifted)
    })
}

fn sheet_raised(seed: u64) -> Sample {
    // The others may be in one photo only, where nothing contradicts them.
    let who = ["floor-2", "floor-3"][Chance::new(seed).below(2)];
    placed(seed, &bay(), &|_, name, pose| if name == who { shifted(pose, [0.0, 0.0, 4.0]) } else { pose })
}

fn steering_off(seed: u64) -> Sample {
    let turn = [0.0, 0.0, 0.5 * Chance::new(seed).sign()];
    // Toe would add to the half degree.
    placed(seed, &Bay { toe_deg: 0.0, ..bay() }, &|_, name, pose| {
        if name.starts_with("front") { stepped(pose, [0.0; 3], turn) } else { pose }
    })
}

/// A carrier's step in some photos.
pub(crate) fn carrier_stepped(seed: u64, who: usize, photos: &[usize], mm: [f64; 3], degrees: [f64; 3]) -> Sample {
    let name_of = sample(&bay(), seed).rig.carriers[who].name.clone();
    placed(seed, &bay(), &|photo, name, pose| {
        if photos.contains(&photo) && name == name_of { stepped(pose, mm, degrees) } else { pose }
    })
}
