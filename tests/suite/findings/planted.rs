//! The flaws of a bay, each planted at the size that four photos must show.

use baywitness::camera::Lens;
use baywitness::geom::{self, Attitude, Pose, Vehicle, rad};
use baywitness::pose::View;
use nalgebra::{Vector3, Vector6};

use super::bench::bay;
use super::defect::Defect;
use crate::sampled_bay::{Flaw, Noise, Sample, flawed, sample};

pub(crate) type At = Pose<Vehicle, geom::Carrier>;

/// A flaw, drawn anew for each seed: which body, which photos, which way.
pub(crate) struct Planted {
    pub(crate) code: &'static str,
    pub(crate) what: &'static str,
    /// Whether a part of its size is a smaller flaw; else it is there or not.
    pub(crate) graded: bool,
    /// By seed and by the share of the size that must be shown.
    pub(crate) defect: fn(u64, f64) -> Defect,
}

impl Planted {
    /// A job with it at its full size.
    pub(crate) fn make(&self, seed: u64) -> Sample {
        (self.defect)(seed, 1.0).usual(seed)
    }
}

const fn graded(code: &'static str, what: &'static str, defect: fn(u64, f64) -> Defect) -> Planted {
    Planted { code, what, graded: true, defect }
}

const fn mixed_up(code: &'static str, what: &'static str, defect: fn(u64, f64) -> Defect) -> Planted {
    Planted { code, what, graded: false, defect }
}

pub(crate) const FLAWS: [Planted; 25] = [
    graded("stand-moved-between-photos", "stand pushed 5 mm", stand_pushed),
    graded("stand-moved-between-photos", "stand turned 0.2 deg", stand_turned),
    graded("vehicle-moved-between-photos", "vehicle rolled 5 mm", vehicle_rolled),
    graded("plate-not-seated", "a plate 1 deg askew", plate_askew),
    graded("plate-not-seated", "a plate slipped 1 deg", plate_slipped),
    mixed_up("plate-not-seated", "a plate upside down", |seed, _| upside_down(WHEELS[(seed % 4) as usize])),
    mixed_up("plates-swapped", "left and right plates swapped", |seed, _| {
        swapped(seed, [["rear-left", "rear-right"], ["front-left", "front-right"]][(seed % 2) as usize], 180.0)
    }),
    mixed_up("plates-swapped", "front and rear plates swapped", |seed, _| {
        swapped(seed, [["rear-left", "front-left"], ["rear-right", "front-right"]][(seed % 2) as usize], 0.0)
    }),
    mixed_up("plates-swapped", "two sheets in each other's place", |seed, _| sheets_exchanged(seed)),
    mixed_up("plates-swapped", "a sheet upside down", |seed, _| sheet_turned(seed)),
    mixed_up("stand-not-level", "the stand upside down", |_, _| upside_down("stand")),
    graded("print-scale-wrong", "prints 1 % off on one carrier", one_print_off),
    graded("print-scale-wrong", "prints 0.7 % off on all floor sheets", |seed, part| {
        prints_of_kind_off(seed, part, |name| name.starts_with("floor"))
    }),
    graded("print-scale-wrong", "prints 0.7 % off on all wheel plates", |seed, part| {
        prints_of_kind_off(seed, part, on_wheel)
    }),
    graded("print-scale-wrong", "all prints 2 % off", all_prints_off),
    graded("marker-displaced", "a marker 2 mm off on its carrier", marker_displaced),
    graded("marker-displaced", "a stand's end bent by 3 mm", end_bent),
    graded("photo-zoomed", "a photo zoomed by 1.1", zoomed),
    graded("camera-mismatch", "focal length 6 % off", |_, part| another_lens(1.0 + 0.06 * part, 0.0)),
    graded("camera-mismatch", "another distortion", |_, part| another_lens(1.0, part)),
    mixed_up("camera-mismatch", "one photo turned by 180 deg before it was saved", |seed, _| {
        let who = Chance::new(seed).below(4);
        half_turned(move |photo| photo == who)
    }),
    graded("camera-mismatch", "another phone took one photo", |seed, part| another_phone(seed, part, 4).1),
    graded("floor-not-level", "the floor bends by 0.3 deg", floor_bent),
    graded("floor-not-level", "a sheet lies 4 mm high", sheet_raised),
    graded("steering-not-straight", "steering 0.5 deg off", steering_off),
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

fn stand_pushed(seed: u64, part: f64) -> Defect {
    let mut chance = Chance::new(seed);
    let (photos, way) = (chance.some_photos(), chance.level().map(|x| 5.0 * part * x));
    Defect::placed(move |photo, name, pose| if photos(photo) && name == "stand" { shifted(pose, way) } else { pose })
}

fn stand_turned(seed: u64, part: f64) -> Defect {
    let mut chance = Chance::new(seed);
    let (photos, turn) = (chance.some_photos(), [0.0, 0.0, 0.2 * part * chance.sign()]);
    Defect::placed(
        move |photo, name, pose| {
            if photos(photo) && name == "stand" { stepped(pose, [0.0; 3], turn) } else { pose }
        },
    )
}

/// Plates turn with their wheels or are held by their weight: 5 mm on a radius of 310 mm.
fn vehicle_rolled(seed: u64, part: f64) -> Defect {
    let mut chance = Chance::new(seed);
    let (photos, mm, turning) = (chance.some_photos(), 5.0 * part * chance.sign(), chance.below(2) as f64);
    let turn = turning * (mm / 310.0).to_degrees();
    let vehicle_step_mm = if photos(3) { mm } else { 0.0 };
    let defect = Defect::placed(move |photo, name, pose| {
        if photos(photo) && on_wheel(name) {
            stepped(shifted(pose, [mm, 0.0, 0.0]), [0.0; 3], [0.0, turn, 0.0])
        } else {
            pose
        }
    });
    Defect { vehicle_step_mm, ..defect }
}

fn plate_askew(seed: u64, part: f64) -> Defect {
    let mut chance = Chance::new(seed);
    let (who, turn) = (WHEELS[chance.below(4)], [0.0, 0.0, part * chance.sign()]);
    Defect::placed(move |_, name, pose| if name == who { stepped(pose, [0.0; 3], turn) } else { pose })
}

fn plate_slipped(seed: u64, part: f64) -> Defect {
    let mut chance = Chance::new(seed);
    let (photos, who, sign) = (chance.some_photos(), WHEELS[chance.below(4)], chance.sign());
    let mut turn = [0.0; 3];
    turn[chance.below(3)] = part * sign;
    Defect::placed(
        move |photo, name, pose| {
            if photos(photo) && name == who { stepped(pose, [0.0; 3], turn) } else { pose }
        },
    )
}

fn upside_down(who: &'static str) -> Defect {
    Defect::placed(move |_, name, pose| if name == who { stepped(pose, [0.0; 3], [180.0, 0.0, 0.0]) } else { pose })
}

/// Two plates on each other's wheel; on the other side they only mount upside down.
fn swapped(seed: u64, who: [&'static str; 2], roll_deg: f64) -> Defect {
    let plain = sample(&bay(), seed);
    let bodies = who.map(|name| plain.bodies[plain.carrier(name)]);
    Defect::placed(move |_, name, pose| match who.iter().position(|w| *w == name) {
        Some(i) => stepped(bodies[1 - i], [0.0; 3], [roll_deg, 0.0, 0.0]),
        None => pose,
    })
}

fn sheets_exchanged(seed: u64) -> Defect {
    // Two of the stand's front, of one plate's front leaf, or one of either.
    let pairs = [(0, 2), (1, 5), (10, 13), (31, 32), (0, 21), (11, 42)];
    let (a, b) = pairs[Chance::new(seed).below(pairs.len())];
    let after = move |sample: &mut Sample| {
        let Sample { kit, photos, .. } = sample;
        for view in photos.iter_mut().flat_map(|p| &mut p.views) {
            let id = match view.id {
                id if id == a => b,
                id if id == b => a,
                _ => continue,
            };
            rename(kit, view, id);
        }
    };
    Defect { after: Box::new(after), ..Defect::default() }
}

fn rename(kit: &baywitness::marker::Kit, view: &mut View, id: u32) {
    let (carrier, marker) = kit.marker(id).unwrap();
    view.id = id;
    view.carrier = carrier;
    view.marker = kit.carriers[carrier].markers.iter().position(|m| m.id == marker.id).unwrap();
}

fn sheet_turned(seed: u64) -> Defect {
    let id = [0, 1, 4, 10, 12, 21, 33, 41][Chance::new(seed).below(8)];
    let after = move |sample: &mut Sample| {
        for view in sample.photos.iter_mut().flat_map(|p| &mut p.views).filter(|v| v.id == id) {
            view.corners_px.rotate_left(2);
        }
    };
    Defect { after: Box::new(after), ..Defect::default() }
}

/// The kit's file has markers elsewhere than they were photographed.
fn refiled(wanted: impl Fn(&str, &baywitness::marker::Marker) -> bool + Sync + 'static, mm: [f64; 3]) -> Defect {
    let after = move |sample: &mut Sample| {
        for carrier in &mut sample.kit.carriers {
            let name = carrier.name.clone();
            for marker in carrier.markers.iter_mut().filter(|m| wanted(&name, m)) {
                marker.centre_mm -= Vector3::from(mm);
            }
        }
    };
    Defect { after: Box::new(after), ..Defect::default() }
}

fn marker_displaced(seed: u64, part: f64) -> Defect {
    let mut chance = Chance::new(seed);
    let id = [0, 1, 4, 10, 12, 21, 33, 41][chance.below(8)];
    // Within the sheet or out of it.
    let mut mm = [0.0; 3];
    mm[chance.below(3)] = 2.0 * part * chance.sign();
    refiled(move |_, marker| marker.id == id, mm)
}

/// One end of the stand's beam, forward or rearward.
fn end_bent(seed: u64, part: f64) -> Defect {
    let mut chance = Chance::new(seed);
    let (side, mm) = (chance.sign(), 3.0 * part * chance.sign());
    refiled(move |name, marker| name == "stand" && side * marker.centre_mm.y > 200.0, [mm, 0.0, 0.0])
}

fn one_print_off(seed: u64, part: f64) -> Defect {
    let mut chance = Chance::new(seed);
    let who = ["stand", "rear-left", "front-right"][chance.below(3)];
    let factor = 1.0 + 0.01 * part * chance.sign();
    Defect { print: Box::new(move |name| if name == who { factor } else { 1.0 }), ..Defect::default() }
}

fn prints_of_kind_off(seed: u64, part: f64, of_kind: fn(&str) -> bool) -> Defect {
    let factor = 1.0 + 0.007 * part * Chance::new(seed).sign();
    Defect { print: Box::new(move |name| if of_kind(name) { factor } else { 1.0 }), ..Defect::default() }
}

fn all_prints_off(seed: u64, part: f64) -> Defect {
    let factor = 1.0 + 0.02 * part * Chance::new(seed).sign();
    Defect { print: Box::new(move |_| factor), ..Defect::default() }
}

fn zoomed(seed: u64, part: f64) -> Defect {
    let who = Chance::new(seed).below(4);
    let factor = 1.0 + 0.1 * part;
    Defect { focal: Box::new(move |photo| if photo == who { factor } else { 1.0 }), ..Defect::default() }
}

/// A longer lens, and its distortion a part of the way to another one's.
fn another_lens(longer: f64, part: f64) -> Defect {
    let other = [0.02, -0.1, 0.0, 0.0, 0.05];
    let lens = move |_, own: Lens| Lens {
        focal_px: own.focal_px.map(|f| f * longer),
        distortion: std::array::from_fn(|i| own.distortion[i] + part * (other[i] - own.distortion[i])),
        ..own
    };
    Defect { lens: Box::new(lens), ..Defect::default() }
}

/// Seen from the turned picture the lens's middle lies on the other side, and so does what it decentres.
pub(crate) fn half_turned(is_turned: impl Fn(usize) -> bool + Sync + 'static) -> Defect {
    let size_px = crate::sampled_bay::camera(&bay()).image_size_px.map(f64::from);
    let lens = move |photo, own: Lens| {
        if !is_turned(photo) {
            return own;
        }
        let mut turned = own;
        turned.centre_px = std::array::from_fn(|i| size_px[i] - 1.0 - own.centre_px[i]);
        turned.distortion[2] = -own.distortion[2];
        turned.distortion[3] = -own.distortion[3];
        turned
    };
    Defect { lens: Box::new(lens), ..Defect::default() }
}

/// One of the first so many photos taken by another phone of the same model: its k1 is .02 other.
pub(crate) fn another_phone(seed: u64, part: f64, photos: usize) -> (usize, Defect) {
    let mut chance = Chance::new(seed);
    let (who, step) = (chance.below(photos), 0.02 * part * chance.sign());
    let lens = move |photo, own: Lens| {
        let mut other = own;
        other.distortion[0] += if photo == who { step } else { 0.0 };
        other
    };
    (who, Defect { lens: Box::new(lens), ..Defect::default() })
}

/// Likewise with a focal length that is 1.2 % other.
pub(crate) fn another_focal(seed: u64, part: f64, photos: usize) -> (usize, Defect) {
    let mut chance = Chance::new(seed);
    let (who, factor) = (chance.below(photos), 1.0 + 0.012 * part * chance.sign());
    let focal = move |photo| if photo == who { factor } else { 1.0 };
    (who, Defect { focal: Box::new(focal), ..Defect::default() })
}

/// The floor rises or falls from 2.4 m before the stand on; sheets lie 3.4 m apart.
fn floor_bent(seed: u64, part: f64) -> Defect {
    let degrees = 0.3 * part * Chance::new(seed).sign();
    let kink = 2600.0;
    Defect::placed(move |_, name, pose| {
        let beyond = pose.origin_mm().x - kink;
        if beyond < 0.0 || !(name.starts_with("floor") || name == "stand") {
            return pose;
        }
        let rise = Attitude { pitch_deg: -degrees, ..Attitude::default() }.rotation();
        let lifted = pose.origin_mm() + Vector3::new(0.0, 0.0, beyond * rad(degrees).tan());
        Pose::new(rise * pose.rotation(), lifted)
    })
}

fn sheet_raised(seed: u64, part: f64) -> Defect {
    // The others may be in one photo only, where nothing contradicts them.
    let who = ["floor-2", "floor-3"][Chance::new(seed).below(2)];
    Defect::placed(move |_, name, pose| if name == who { shifted(pose, [0.0, 0.0, 4.0 * part]) } else { pose })
}

fn steering_off(seed: u64, part: f64) -> Defect {
    let turn = [0.0, 0.0, 0.5 * part * Chance::new(seed).sign()];
    let defect = Defect::placed(
        move |_, name, pose| {
            if name.starts_with("front") { stepped(pose, [0.0; 3], turn) } else { pose }
        },
    );
    // Toe would add to the half degree.
    Defect { no_toe: true, ..defect }
}

/// A carrier's step in some photos.
pub(crate) fn carrier_stepped(seed: u64, who: usize, photos: &[usize], mm: [f64; 3], degrees: [f64; 3]) -> Sample {
    let name_of = sample(&bay(), seed).kit.carriers[who].name.clone();
    let place = |photo: usize, name: &str, pose: At| {
        if photos.contains(&photo) && name == name_of { stepped(pose, mm, degrees) } else { pose }
    };
    flawed(&bay(), seed, &Flaw { place: &place, ..Flaw::default() })
}
