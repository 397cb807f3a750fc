//! What can be drawn of a record: places in the vehicle frame, mm.

use nalgebra::{Quaternion, UnitQuaternion, Vector3};

use crate::quantity::Quantity;
use crate::record::{CarrierRecord, CheckRecord, JobRecord};

/// Nothing further from the rear axle than this is drawn; a bay is smaller.
const FARTHEST_MM: f64 = 30_000.0;

/// The set-up as places.
pub(super) struct Scene<'a> {
    /// Hub datums: rear left, rear right, front left, front right.
    pub(super) hubs: [Option<[f64; 3]>; 4],
    /// The foremost point of the vehicle.
    pub(super) nose: Option<[f64; 3]>,
    /// Whether a nose mark was seen there, not a typed length.
    pub(super) nose_seen: bool,
    /// Target stands.
    pub(super) targets: Vec<Stand<'a>>,
    /// Corners of every marker.
    pub(super) markers: Vec<[[f64; 3]; 4]>,
    /// Number of the photo, where it was taken, where it looked.
    pub(super) photos: Vec<(usize, [f64; 3], Option<[f64; 3]>)>,
}

/// A target stand.
pub(super) struct Stand<'a> {
    pub(super) name: &'a str,
    /// The aim point.
    pub(super) aim: [f64; 3],
    /// Unit vectors to its left end and to its top.
    pub(super) left: [f64; 3],
    pub(super) up: [f64; 3],
    /// Half its width and half its height, as far as its markers reach.
    pub(super) half_width: f64,
    pub(super) half_height: f64,
}

impl<'a> Scene<'a> {
    /// Everything that is finite and near.
    pub(super) fn of(record: &'a JobRecord) -> Scene<'a> {
        let carriers: Vec<&CarrierRecord> = record.carriers.iter().filter(|c| drawable(c.position_mm)).collect();
        let place = |role: &str| carriers.iter().find(|c| c.role == role).map(|c| c.position_mm);
        let hubs = ["rear_left_wheel", "rear_right_wheel", "front_left_wheel", "front_right_wheel"].map(place);
        let targets: Vec<Stand> = carriers.iter().filter(|c| c.role == "target").map(|c| stand(c)).collect();
        let seen = place("nose");
        let nose = seen.or_else(|| nose_from_distance(record, targets.first()));
        let markers = carriers.iter().flat_map(|c| &c.markers_mm).filter(|m| m.iter().all(|&p| drawable(p)));
        let photos = record.photos.iter().enumerate();
        Scene {
            hubs,
            nose,
            nose_seen: seen.is_some(),
            targets,
            markers: markers.copied().collect(),
            photos: photos
                .filter_map(|(i, p)| {
                    Some((i + 1, p.position_mm.filter(|&at| drawable(at))?, p.direction.filter(|&d| drawable(d))))
                })
                .collect(),
        }
    }

    /// Whether there is anything to draw.
    pub(super) fn is_empty(&self) -> bool {
        self.targets.is_empty() && self.hubs.iter().all(Option::is_none)
    }

    /// Half the vehicle's width at its wheels' outer faces.
    pub(super) fn half_width(&self) -> f64 {
        let widest = self.hubs.iter().flatten().map(|h| h[1].abs()).fold(0.0, f64::max);
        if widest > 300.0 { widest } else { 850.0 }
    }

    /// Where the front axle is, or would be on a middling car.
    pub(super) fn front_axle_x(&self) -> Option<f64> {
        let [_, _, left, right] = self.hubs;
        let seen: Vec<f64> = [left, right].into_iter().flatten().map(|h| h[0]).collect();
        if seen.is_empty() {
            self.nose.map(|n| n[0] - 860.0)
        } else {
            Some(seen.iter().sum::<f64>() / seen.len() as f64)
        }
    }
}

fn drawable(point: [f64; 3]) -> bool {
    point.iter().all(|v| v.is_finite() && v.abs() < FARTHEST_MM)
}

/// Where no nose mark was seen, the measured distance still says where its
/// datum is along the reference line.
fn nose_from_distance(record: &JobRecord, stand: Option<&Stand>) -> Option<[f64; 3]> {
    let distance = record.measured.get("distance_from_nose")?.value;
    let at = [stand?.aim[0] - distance, 0.0, 550.0];
    drawable(at).then_some(at)
}

fn stand(carrier: &CarrierRecord) -> Stand<'_> {
    let [w, x, y, z] = carrier.quaternion_wxyz;
    let rotation = UnitQuaternion::try_new(Quaternion::new(w, x, y, z), 1e-9).unwrap_or_default();
    let (left, up) = (rotation * Vector3::y(), rotation * Vector3::z());
    let aim = Vector3::from(carrier.position_mm);
    let reach = |axis: Vector3<f64>, least: f64| {
        let corners = carrier.markers_mm.iter().flatten().filter(|&&p| drawable(p));
        let far = corners.map(|&p| (Vector3::from(p) - aim).dot(&axis).abs()).fold(0.0, f64::max);
        if far > 10.0 { far } else { least }
    };
    Stand {
        name: &carrier.name,
        aim: carrier.position_mm,
        left: left.into(),
        up: up.into(),
        half_width: reach(left, 600.0),
        half_height: reach(up, 250.0),
    }
}

/// How far one target is from where the sheet wants it, with the tolerance and
/// the expanded uncertainty of each figure.
#[derive(Default)]
pub(super) struct Deviations<'a> {
    pub(super) target: Option<&'a str>,
    pub(super) step: Option<&'a str>,
    pub(super) away: Option<Deviation<'a>>,
    pub(super) left: Option<Deviation<'a>>,
    pub(super) up: Option<Deviation<'a>>,
    pub(super) yaw: Option<Deviation<'a>>,
    pub(super) pitch: Option<Deviation<'a>>,
    pub(super) roll: Option<Deviation<'a>>,
}

/// One figure against the wanted one, in the check's unit.
#[derive(Clone, Copy)]
pub(super) struct Deviation<'a> {
    pub(super) check: &'a CheckRecord,
    pub(super) quantity: Quantity,
    /// Measured minus wanted.
    pub(super) by: f64,
    /// Expanded uncertainty.
    pub(super) u: f64,
    /// The limits, against the wanted value.
    pub(super) lower: Option<f64>,
    pub(super) upper: Option<f64>,
}

/// The deviations of each target and step that has a check with a value.
pub(super) fn deviations(record: &JobRecord) -> Vec<Deviations<'_>> {
    let mut all: Vec<Deviations> = Vec::new();
    for check in &record.checks {
        let Some(found) = deviation(check) else { continue };
        let key = (check.target.as_deref(), check.step.as_deref());
        let i = all.iter().position(|d| (d.target, d.step) == key).unwrap_or_else(|| {
            all.push(Deviations { target: key.0, step: key.1, ..Default::default() });
            all.len() - 1
        });
        let group = &mut all[i];
        let slot = match found.quantity {
            Quantity::Distance | Quantity::Range => &mut group.away,
            Quantity::LateralOffset | Quantity::LateralFromNose => &mut group.left,
            Quantity::Height | Quantity::HeightFromNose => &mut group.up,
            Quantity::Yaw => &mut group.yaw,
            Quantity::Pitch => &mut group.pitch,
            Quantity::Roll => &mut group.roll,
            _ => continue,
        };
        slot.get_or_insert(found);
    }
    all.retain(|d| !d.is_empty());
    all
}

impl Deviations<'_> {
    fn is_empty(&self) -> bool {
        [self.away, self.left, self.up, self.yaw, self.pitch, self.roll].iter().all(Option::is_none)
    }
}

fn deviation(check: &CheckRecord) -> Option<Deviation<'_>> {
    let quantity = Quantity::from_name(&check.quantity)?;
    let by = check.value.filter(|v| v.is_finite())? - check.nominal;
    let u = check.expanded_uncertainty.filter(|u| u.is_finite()).unwrap_or(0.0);
    let against = |limit: Option<f64>| limit.map(|l| l - check.nominal);
    Some(Deviation { check, quantity, by, u, lower: against(check.lower), upper: against(check.upper) })
}
