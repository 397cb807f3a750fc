//! An invented bay: records as one verification might write them, and grey
//! pictures of their markers.

use std::collections::BTreeMap;

use baywitness::geom::Attitude;
use baywitness::record::*;
use baywitness::report::PhotoPicture;
use image::{GrayImage, Luma};
use nalgebra::{Rotation3, UnitQuaternion, Vector3};
use serde_json::json;
use statrs::distribution::{ContinuousCDF, Normal};

const NOSE_X: f64 = 3560.0;
const WANTED_DISTANCE: f64 = 1300.0;
const WANTED_HEIGHT: f64 = 640.0;
const STORED: [u32; 2] = [4032, 3024];
const FOCAL_PX: f64 = 3050.0;

/// How the stand stands and how well that is known.
#[derive(Clone, Copy)]
pub(crate) struct Stance {
    pub(crate) away_mm: f64,
    pub(crate) left_mm: f64,
    pub(crate) up_mm: f64,
    pub(crate) attitude: Attitude,
    /// Standard uncertainties: lengths, angles.
    pub(crate) u_mm: f64,
    pub(crate) u_deg: f64,
}

pub(crate) const GOOD: Stance = Stance {
    away_mm: 1.8,
    left_mm: -1.4,
    up_mm: 2.2,
    attitude: Attitude { yaw_deg: 0.11, pitch_deg: -0.08, roll_deg: 0.05 },
    u_mm: 0.9,
    u_deg: 0.021,
};

pub(crate) const WRONG: Stance = Stance {
    away_mm: -22.0,
    left_mm: 12.4,
    up_mm: -3.0,
    attitude: Attitude { yaw_deg: -0.82, pitch_deg: 0.64, roll_deg: -0.2 },
    ..GOOD
};

pub(crate) const NOT_PROVEN: Stance = Stance { away_mm: 8.6, u_mm: 2.6, u_deg: 0.3, ..GOOD };

/// Centre, right and up on the carrier, and size.
type Marker = ([f64; 3], [f64; 3], [f64; 3], f64);

struct Body {
    name: &'static str,
    role: &'static str,
    origin: [f64; 3],
    attitude: Attitude,
    first_id: u32,
    markers: Vec<Marker>,
}

impl Body {
    fn corners(&self) -> Vec<[[f64; 3]; 4]> {
        let rotation = self.attitude.rotation();
        let corner = |&(centre, right, up, size): &Marker| {
            [[-1.0, 1.0], [1.0, 1.0], [1.0, -1.0], [-1.0, -1.0]].map(|[r, u]| {
                let local = Vector3::from(centre) + (Vector3::from(right) * r + Vector3::from(up) * u) * (size / 2.0);
                (Vector3::from(self.origin) + rotation * local).into()
            })
        };
        self.markers.iter().map(corner).collect()
    }
}

const FACING: ([f64; 3], [f64; 3]) = ([0.0, 1.0, 0.0], [0.0, 0.0, 1.0]);

fn stand(name: &'static str, stance: &Stance, centre_y: f64, first_id: u32) -> Body {
    let face = |y: f64, z: f64, x: f64| ([x, y, z], FACING.0, FACING.1, 150.0);
    let mut markers: Vec<_> =
        [640.0, -640.0].iter().flat_map(|&y| [face(y, 165.0, 40.0), face(y, -165.0, 40.0)]).collect();
    markers.extend([face(240.0, 0.0, 120.0), face(-240.0, 0.0, 120.0)]);
    for (y, right) in [(775.0, [-1.0, 0.0, 0.0]), (-775.0, [1.0, 0.0, 0.0])] {
        markers.push(([-25.0, y, 110.0], right, FACING.1, 120.0));
    }
    let origin = [NOSE_X + WANTED_DISTANCE + stance.away_mm, centre_y + stance.left_mm, WANTED_HEIGHT + stance.up_mm];
    Body { name, role: "target", origin, attitude: stance.attitude, first_id, markers }
}

fn plate(name: &'static str, role: &'static str, x: f64, left: bool, first_id: u32) -> Body {
    let out = if left { 1.0 } else { -1.0 };
    let markers = [105.0, -105.0]
        .iter()
        .flat_map(|&z| {
            [
                ([126.0, out * 139.0, z], FACING.0, FACING.1, 120.0),
                ([30.0, out * 60.0, z], [-out, 0.0, 0.0], FACING.1, 120.0),
            ]
        })
        .collect();
    let attitude = Attitude { yaw_deg: out * 0.07, roll_deg: -out * 0.9, ..Default::default() };
    Body { name, role, origin: [x, out * 790.0, 318.0], attitude, first_id, markers }
}

fn floor() -> Body {
    let markers = [0.0, 400.0]
        .iter()
        .flat_map(|&x| [-300.0, 300.0].map(|y| ([x, y, 0.0], [0.0, 1.0, 0.0], [-1.0, 0.0, 0.0], 180.0)))
        .collect();
    Body {
        name: "floor",
        role: "floor",
        origin: [5450.0, 0.0, 0.0],
        attitude: Attitude::default(),
        first_id: 60,
        markers,
    }
}

fn nose() -> Body {
    let markers = vec![([0.0, 0.0, 0.0], FACING.0, FACING.1, 80.0)];
    let origin = [NOSE_X, 3.0, 552.0];
    Body { name: "nose", role: "nose", origin, attitude: Attitude::default(), first_id: 70, markers }
}

fn bodies(stance: &Stance) -> Vec<Body> {
    vec![
        stand("stand", stance, 0.0, 10),
        plate("rear-left", "rear_left_wheel", 0.0, true, 20),
        plate("rear-right", "rear_right_wheel", 0.0, false, 30),
        plate("front-left", "front_left_wheel", 2700.0, true, 40),
        plate("front-right", "front_right_wheel", 2700.0, false, 50),
        floor(),
        nose(),
    ]
}

/// A pinhole camera: where it is, where it looks.
struct Camera {
    at: Vector3<f64>,
    /// Columns: right, down, forward in the vehicle frame.
    axes: Rotation3<f64>,
    /// Turned a quarter, so that the stored picture lies on its side.
    portrait: bool,
}

impl Camera {
    fn new(at: [f64; 3], look_at: [f64; 3], portrait: bool) -> Camera {
        let at = Vector3::from(at);
        let forward = (Vector3::from(look_at) - at).normalize();
        let right = forward.cross(&Vector3::z()).normalize();
        let down = forward.cross(&right);
        // Orientation 6: the stored picture's top is the scene's right side.
        let (u, v) = if portrait { (down, -right) } else { (right, down) };
        let matrix = nalgebra::Matrix3::from_columns(&[u, v, forward]);
        Camera { at, axes: Rotation3::from_matrix_unchecked(matrix), portrait }
    }

    fn project(&self, p: [f64; 3]) -> Option<[f64; 2]> {
        let c = self.axes.inverse() * (Vector3::from(p) - self.at);
        let centre = [f64::from(STORED[0]) / 2.0, f64::from(STORED[1]) / 2.0];
        (c.z > 100.0).then(|| [centre[0] + FOCAL_PX * c.x / c.z, centre[1] + FOCAL_PX * c.y / c.z])
    }

    fn sees(&self, quad: &[[f64; 3]; 4]) -> Option<[[f64; 2]; 4]> {
        let corners: Vec<[f64; 2]> = quad.iter().filter_map(|&p| self.project(p)).collect();
        let corners: [[f64; 2]; 4] = corners.try_into().ok()?;
        let inside = corners.iter().all(|c| c[0] > 20.0 && c[1] > 20.0 && c[0] < 4012.0 && c[1] < 3004.0);
        let [a, b, c, _] = corners;
        // Turns clockwise on the stored grid (v down) when its face is seen.
        let turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
        (inside && turn > 400.0).then_some(corners)
    }
}

fn cameras(count: usize) -> Vec<Camera> {
    let spots =
        [([7600.0, 1900.0], false), ([7400.0, -2100.0], true), ([6200.0, 3300.0], false), ([8300.0, 100.0], false)];
    (0..count)
        .map(|i| {
            let ([x, y], portrait) = spots[i % 4];
            let round = (i / 4) as f64;
            Camera::new(
                [x + 150.0 * round, y * (1.0 - 0.1 * round), 1450.0 - 100.0 * round],
                [3600.0, 0.0, 450.0],
                portrait,
            )
        })
        .collect()
}

/// Small repeatable numbers between -1 and 1.
fn wobble(seed: u32) -> f64 {
    let mut x = seed.wrapping_mul(2_654_435_761).wrapping_add(97);
    x ^= x >> 15;
    x = x.wrapping_mul(2_246_822_519);
    x ^= x >> 13;
    f64::from(x % 20_001) / 10_000.0 - 1.0
}

fn photo(index: usize, camera: &Camera, bodies: &[Body]) -> PhotoRecord {
    let mut markers = Vec::new();
    for body in bodies {
        for (k, quad) in body.corners().iter().enumerate() {
            let Some(corners) = camera.sees(quad) else { continue };
            let id = body.first_id + k as u32;
            let seed = id * 31 + index as u32 * 7919;
            let residuals = [0, 1, 2, 3].map(|c| [0.06 * wobble(seed + c), 0.06 * wobble(seed + 100 + c)]);
            let used = id != 15;
            markers.push(MarkerRecord {
                id,
                carrier: Some(body.name.into()),
                corners_px: [0, 1, 2, 3].map(|c| [0, 1].map(|a| corners[c][a] + residuals[c][a])),
                residual_px: Some(0.05),
                residuals_px: used.then_some(residuals),
                used,
                corners_used: [used; 4],
            });
        }
    }
    let stand = &bodies[0];
    let rotation = stand.attitude.rotation();
    let at = |y: f64, z: f64| {
        let p: [f64; 3] = (Vector3::from(stand.origin) + rotation * Vector3::new(0.0, y, z)).into();
        camera.project(p)
    };
    let line = |points: &[(f64, f64)]| points.iter().filter_map(|&(y, z)| at(y, z)).collect::<Vec<_>>();
    let outline = line(&[(720.0, 250.0), (-720.0, 250.0), (-720.0, -250.0), (720.0, -250.0), (720.0, 250.0)]);
    let cross = [line(&[(-60.0, 0.0), (60.0, 0.0)]), line(&[(0.0, -60.0), (0.0, 60.0)])];
    PhotoRecord {
        unused_because_phrase: None,
        file: format!("photos/{}.jpg", (b'a' + index as u8) as char),
        step: None,
        phase: None,
        camera: Some("phone-12m-main".into()),
        unused_because: None,
        width_px: STORED[0],
        height_px: STORED[1],
        orientation: if camera.portrait { 6 } else { 1 },
        taken: Some("2026-11-25T10:28:41+01:00".into()),
        credentials: None,
        private: Vec::new(),
        private_values: Vec::new(),
        rendered: Vec::new(),
        rms_px: Some(0.052),
        focal_px: Some([3051.2, 3050.8]),
        centre_px: Some([2014.9, 1508.3]),
        edge_offset_px: -0.31,
        noise_ratio: None,
        turn_ratio: None,
        gain_spread: None,
        blur_px: 0.74,
        position_mm: Some(camera.at.into()),
        direction: Some((camera.axes * Vector3::z()).into()),
        outlines: vec![Outline { carrier: "stand".into(), lines_px: std::iter::once(outline).chain(cross).collect() }],
        markers,
    }
}

struct Wanted {
    quantity: &'static str,
    from: Option<&'static str>,
    nominal: f64,
    tolerance: f64,
    value: f64,
}

fn check(wanted: &Wanted, stance: &Stance) -> CheckRecord {
    let unit = if matches!(wanted.quantity, "yaw" | "pitch" | "roll") { "deg" } else { "mm" };
    let u = if unit == "deg" { stance.u_deg } else { stance.u_mm };
    let (lower, upper) = (wanted.nominal - wanted.tolerance, wanted.nominal + wanted.tolerance);
    let normal = Normal::new(wanted.value, u).unwrap();
    let (below, above) = (normal.cdf(lower), 1.0 - normal.cdf(upper));
    let inside = 1.0 - below - above;
    let verdict = match (inside >= 0.95, below.max(above) >= 0.95) {
        (true, _) => Verdict::Within,
        (_, true) => Verdict::Outside,
        _ => Verdict::NotProven,
    };
    let move_by = wanted.nominal - wanted.value;
    CheckRecord {
        correction_phrase: None,
        reason_phrase: None,
        quantity: wanted.quantity.into(),
        from: wanted.from.map(Into::into),
        target: None,
        step: None,
        reference_line: "thrust_line".into(),
        unit: unit.into(),
        nominal: wanted.nominal,
        lower: Some(lower),
        upper: Some(upper),
        tolerance_basis: (wanted.quantity == "roll").then(|| "shop rule".into()),
        in_inches: false,
        evidence: "photos".into(),
        value: Some(wanted.value),
        standard_uncertainty: Some(u),
        degrees_of_freedom: Some(61.0),
        coverage_factor: Some(2.0),
        expanded_uncertainty: Some(2.0 * u),
        conformance_probability: Some(inside),
        verdict,
        can_decide: wanted.tolerance > 1.96 * u,
        grade: None,
        move_by: Some(move_by),
        correction: if verdict == Verdict::Outside {
            correction(wanted.quantity, move_by)
        } else {
            "none needed".into()
        },
        reason: (verdict == Verdict::NotProven).then(|| not_proven_reason(wanted.tolerance, u, unit)),
        untrusted: Vec::new(),
        otherwise: Vec::new(),
        budget: budget(u),
    }
}

fn not_proven_reason(tolerance: f64, u: f64, unit: &str) -> String {
    if tolerance > 1.96 * u {
        format!(
            "the value lies within {:.1} {unit} of a limit: take two more photos from further to the sides",
            2.0 * u
        )
    } else {
        format!(
            "U is {:.2} {unit} and the limits are {tolerance} {unit} away: no reading could be proven within",
            2.0 * u
        )
    }
}

fn budget(u: f64) -> Vec<BudgetLine> {
    let shares = [
        ("wheel plate seating", 0.58),
        ("corner noise in the photos", 0.27),
        ("marker layout", 0.11),
        ("camera", 0.04),
    ];
    let line = |(source, share): (&str, f64)| BudgetLine {
        source_phrase: None,
        source: source.into(),
        standard_uncertainty: u * share.sqrt(),
        share,
    };
    shares.into_iter().map(line).collect()
}

fn correction(quantity: &str, move_by: f64) -> String {
    let amount = move_by.abs();
    let positive = move_by > 0.0;
    match quantity {
        "yaw" => format!(
            "turn the stand by {amount:.2} deg: its end on the vehicle's {} {:.0} mm towards the vehicle",
            if positive { "left" } else { "right" },
            1440.0 * amount.to_radians()
        ),
        "lateral_offset" => {
            format!("move the stand {amount:.1} mm to the vehicle's {}", if positive { "left" } else { "right" })
        }
        "distance" => {
            format!("move the stand {amount:.1} mm {} the vehicle", if positive { "away from" } else { "towards" })
        }
        "height" => format!("{} the target by {amount:.1} mm", if positive { "raise" } else { "lower" }),
        "pitch" => {
            format!("tilt the top {amount:.2} deg {} the vehicle", if positive { "away from" } else { "towards" })
        }
        _ => format!("lower the end on the vehicle's {} by {amount:.2} deg", if positive { "right" } else { "left" }),
    }
}

fn wanted(stance: &Stance) -> Vec<Wanted> {
    let w = |quantity, from, nominal, tolerance, by| Wanted { quantity, from, nominal, tolerance, value: nominal + by };
    let a = stance.attitude;
    vec![
        w("distance", Some("nose"), WANTED_DISTANCE, 10.0, stance.away_mm),
        w("lateral_offset", None, 0.0, 10.0, stance.left_mm),
        w("height", None, WANTED_HEIGHT, 10.0, stance.up_mm),
        w("yaw", None, 0.0, 0.5, a.yaw_deg),
        w("pitch", None, 0.0, 0.5, a.pitch_deg),
        w("roll", None, 0.0, 1.0, a.roll_deg),
    ]
}

fn measured(checks: &[CheckRecord], stance: &Stance) -> BTreeMap<String, MeasuredRecord> {
    let one = |unit: &str, value, u| MeasuredRecord {
        unit: unit.into(),
        value,
        standard_uncertainty: u,
        degrees_of_freedom: Some(61.0),
    };
    let mut all: BTreeMap<String, MeasuredRecord> = checks
        .iter()
        .filter_map(|c| {
            let key = c.from.as_ref().map_or_else(|| c.quantity.clone(), |from| format!("{}_from_{from}", c.quantity));
            Some((key, one(&c.unit, c.value?, c.standard_uncertainty?)))
        })
        .collect();
    for (key, value, u) in [
        ("wheelbase", 2700.4, 0.8),
        ("rear_track", 1580.2, 0.6),
        ("setback", -1.9, 1.1),
        ("height_from_nose", 88.3, 1.0),
    ] {
        all.insert(key.into(), one("mm", value, u));
    }
    for (key, value) in [
        ("rear_toe_left", 0.07),
        ("rear_toe_right", 0.07),
        ("thrust_angle", 0.004),
        ("camber_left", -0.9),
        ("steering_angle", -0.12),
    ] {
        all.insert(key.into(), one("deg", value, 0.04));
    }
    all.insert("distance_from_rear_axle".into(), one("mm", NOSE_X + WANTED_DISTANCE + stance.away_mm, 1.2));
    all
}

fn carrier(body: &Body) -> CarrierRecord {
    let q: UnitQuaternion<f64> = body.attitude.rotation();
    CarrierRecord {
        name: body.name.into(),
        role: body.role.into(),
        position_mm: body.origin,
        quaternion_wxyz: [q.w, q.i, q.j, q.k],
        standard_uncertainty: CarrierUncertainty { position_mm: [0.9; 3], rotation_deg: [0.02; 3] },
        markers_mm: body.corners(),
    }
}

fn context() -> Context {
    Context {
        setup: "demo-front-radar".into(),
        kit: "demo-bay".into(),
        cameras: vec!["phone-12m-main".into()],
        vehicle: Some("demo hatchback".into()),
        series: Some("R-2291".into()),
        attempt: Some(1),
        bay: Some("2".into()),
        technician: Some("T1".into()),
        taken: Some("2026-11-25T10:30:00+01:00".into()),
        prerequisites: BTreeMap::from([
            ("tyre_pressures_set".into(), json!(true)),
            ("fuel".into(), json!("half full")),
        ]),
        record_complete: true,
        calibration: Some(BTreeMap::from([
            ("result".into(), json!("successful")),
            ("reported_azimuth_deg".into(), json!(0.2)),
        ])),
        ..Context::default()
    }
}

fn sheet() -> SheetRecord {
    let prerequisite = |id: &str, text: &str, required, answer| PrerequisiteRecord {
        id: id.into(),
        text: text.into(),
        required,
        answer,
    };
    SheetRecord {
        title: "Front radar, static, flat reflector (invented demo)".into(),
        source:
            "Invented for demonstration. A real sheet names the vehicle maker's service information, document and date."
                .into(),
        decision_rule: "guarded".into(),
        conformance_probability: 0.95,
        procedure: BTreeMap::from([("document".into(), "Demo procedure 7".into()), ("revision".into(), "B".into())]),
        waived: vec![WaiverRecord {
            quantity: "height_from_nose".into(),
            because: "the sheet gives the height above the floor".into(),
        }],
        credentials_required: false,
        not_checked: vec![],
        prerequisites: vec![
            prerequisite("tyre_pressures_set", "Tyre pressures as the vehicle's plate says", true, Some(json!(true))),
            prerequisite("unloaded", "Nothing heavy in the vehicle", false, None),
        ],
    }
}

fn inputs(photos: usize) -> Vec<InputRecord> {
    let mut files: Vec<(String, String)> =
        ["job", "setup", "kit", "camera"].map(|r| (r.into(), format!("{r}.toml"))).into();
    files.extend((0..photos).map(|i| ("photo".into(), format!("photos/{}.jpg", (b'a' + i as u8) as char))));
    let input = |(i, (role, file)): (usize, (String, String))| InputRecord {
        role,
        sha256: digest(&file),
        file,
        found_in: (i == 2).then(|| "models folder".into()),
    };
    files.into_iter().enumerate().map(input).collect()
}

fn digest(text: &str) -> String {
    use sha2::{Digest, Sha256};
    Sha256::digest(text).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// A record of that stance with that many photos, and its pictures.
pub(crate) fn job(stance: &Stance, photos: usize) -> (JobRecord, Vec<PhotoPicture>) {
    let bodies = bodies(stance);
    let cameras = cameras(photos);
    let checks: Vec<CheckRecord> = wanted(stance).iter().map(|w| check(w, stance)).collect();
    let verdict = [Verdict::Outside, Verdict::Retake, Verdict::NotProven]
        .into_iter()
        .find(|&v| checks.iter().any(|c| c.verdict == v))
        .unwrap_or(Verdict::Within);
    let reason = match verdict {
        Verdict::Within => "All six checks are proven to be within tolerance.",
        Verdict::Outside => {
            "The stand is turned, off centre, too near and tilted: four of six checks are outside tolerance."
        }
        _ => "The photos do not decide the checks: the uncertainty is too large for the tolerances.",
    };
    let records: Vec<PhotoRecord> = cameras.iter().enumerate().map(|(i, c)| photo(i, c, &bodies)).collect();
    let pictures = records.iter().zip(&cameras).map(|(r, c)| picture(r, c, &bodies)).collect();
    let record = JobRecord {
        reason_phrase: None,
        format: "result/1".into(),
        tool: Tool { name: "baywitness".into(), version: "0.1.0".into(), edition: None },
        job: "D-0001".into(),
        context: context(),
        sheet: sheet(),
        inputs: inputs(photos),
        verdict,
        reason: reason.into(),
        reference_line: "thrust_line".into(),
        measured: measured(&checks, stance),
        checks,
        checks_without_readings: None,
        carriers: bodies.iter().map(carrier).collect(),
        photos: records,
        readings: readings(stance),
        attachments: vec![AttachmentRecord {
            file: "before.pdf".into(),
            kind: "scan-before".into(),
            sha256: digest("before.pdf"),
        }],
        findings: findings(verdict),
        detectable: Vec::new(),
        sensitivity: Vec::new(),
        phases: Vec::new(),
        attempts: Vec::new(),
        next_photo: None,
        positions: Vec::new(),
        first: None,
        ride_height: None,
    };
    (record, pictures)
}

fn readings(stance: &Stance) -> Vec<ReadingRecord> {
    let photo = WANTED_DISTANCE + stance.away_mm;
    vec![ReadingRecord {
        quantity: "distance".into(),
        from: Some("nose".into()),
        unit: "mm".into(),
        value: 1301.0,
        standard_uncertainty: 1.5,
        instrument: Some("laser".into()),
        photo_value: Some(photo),
        photo_standard_uncertainty: Some(stance.u_mm),
        normalized_error: Some((1301.0 - photo) / (2.0 * 1.5_f64.hypot(stance.u_mm))),
        agrees: Some((1301.0 - photo).abs() <= 2.0 * 1.5_f64.hypot(stance.u_mm)),
        used: false,
    }]
}

pub(crate) fn finding(code: &str, level: Level, message: &str) -> FindingRecord {
    FindingRecord {
        message_phrase: None,
        code: code.into(),
        level,
        carrier: None,
        photo: None,
        message: message.into(),
    }
}

fn findings(verdict: Verdict) -> Vec<FindingRecord> {
    let mut all = vec![];
    if verdict == Verdict::Outside {
        all.push(finding(
            "stand-too-near",
            Level::Warn,
            "The stand is 22.0 mm too near: move it 22.0 mm away from the vehicle.",
        ));
        all.push(finding(
            "reading-disagrees",
            Level::Warn,
            "The laser reads 1301.0 mm from the nose, the photos say 1278.0 mm (E_n 6.6). Read the laser again and check from where it measures.",
        ));
    }
    if verdict == Verdict::NotProven {
        let message = "The photos were taken from almost the same side. Take two more from further left and right.";
        all.push(finding("weak-geometry", Level::Stop, message));
    }
    all.push(finding("not-checked", Level::Note, "The floor's slope was not checked: the sheet states no limit."));
    all
}

/// A job of which almost nothing could be measured.
pub(crate) fn retake() -> (JobRecord, Vec<PhotoPicture>) {
    let (mut record, mut pictures) = job(&GOOD, 1);
    record.verdict = Verdict::Retake;
    record.reason = "The stand was not found in any photo.".into();
    for check in &mut record.checks {
        *check = CheckRecord {
            value: None,
            standard_uncertainty: None,
            degrees_of_freedom: None,
            coverage_factor: None,
            expanded_uncertainty: None,
            conformance_probability: None,
            verdict: Verdict::Retake,
            move_by: None,
            correction: String::new(),
            reason: Some("the stand was not seen in two photos".into()),
            budget: vec![],
            ..check.clone()
        };
    }
    record.measured.clear();
    record.carriers.clear();
    record.readings[0].photo_value = None;
    record.readings[0].photo_standard_uncertainty = None;
    record.readings[0].normalized_error = None;
    record.readings[0].agrees = None;
    record.context.record_complete = false;
    record.context.calibration = None;
    let photo = &mut record.photos[0];
    photo.unused_because = Some("only one photo shows the stand; two are needed".into());
    photo.position_mm = None;
    photo.direction = None;
    photo.rms_px = None;
    photo.focal_px = None;
    photo.outlines.clear();
    for marker in &mut photo.markers {
        marker.used = false;
        marker.residuals_px = None;
    }
    photo.markers[0].carrier = None;
    record.findings = vec![finding(
        "carrier-not-seen",
        Level::Void,
        "The stand was seen in one photo only. Take a second photo from the other front corner of the bay with the whole stand in it.",
    )];
    pictures.truncate(1);
    (record, pictures)
}

/// Two targets, a sheet in inches, one-sided limits and a second step.
pub(crate) fn two_targets() -> (JobRecord, Vec<PhotoPicture>) {
    let (mut record, pictures) = job(&GOOD, 2);
    let left = Stance { left_mm: 4.0, attitude: Attitude { yaw_deg: 30.2, ..GOOD.attitude }, ..GOOD };
    record.carriers.push(carrier(&stand("left-board", &left, 1900.0, 80)));
    let mut more = record.checks.clone();
    for (check, by) in more.iter_mut().zip([0.0, 1900.0, 0.0, 30.0, 0.0, 0.0]) {
        check.target = Some("left-board".into());
        check.nominal += by;
        check.lower = check.lower.map(|l| l + by);
        check.upper = check.upper.map(|l| l + by);
        check.value = check.value.map(|v| v + by);
    }
    more[0].in_inches = true;
    more[2].upper = None;
    more[4].lower = None;
    more[5].step = Some("tilted".into());
    for check in &mut record.checks {
        check.target = Some("stand".into());
    }
    record.checks.extend(more);
    (record, pictures)
}

/// Grey ground, light boards, dark markers: enough to see whether the drawn
/// lines lie where the markers are.
fn picture(record: &PhotoRecord, camera: &Camera, bodies: &[Body]) -> PhotoPicture {
    const SHRINK: f64 = 4.0;
    let size = [STORED[0] / SHRINK as u32, STORED[1] / SHRINK as u32];
    let mut stored = GrayImage::from_fn(size[0], size[1], |x, y| {
        let along = if camera.portrait { size[0] - x } else { y };
        Luma([(120 + along * 60 / size[1]).min(220) as u8])
    });
    for body in bodies {
        for quad in body.corners() {
            let Some(corners) = camera.sees(&quad) else { continue };
            let centre = [0, 1].map(|a| corners.iter().map(|c| c[a]).sum::<f64>() / 4.0);
            for (grow, tone) in [(1.25, 235), (1.0, 25), (0.4, 200)] {
                let points = corners.map(|c| {
                    let at = |a: usize| (((centre[a] + (c[a] - centre[a]) * grow) + 0.5) / SHRINK).round() as i32;
                    [at(0), at(1)]
                });
                fill(&mut stored, &points, tone);
            }
        }
    }
    let mut turned = image::DynamicImage::ImageLuma8(stored);
    turned.apply_orientation(image::metadata::Orientation::from_exif(record.orientation).unwrap());
    let upright = turned.into_luma8();
    let mut jpeg_bytes = Vec::new();
    image::codecs::jpeg::JpegEncoder::new_with_quality(&mut jpeg_bytes, 70).encode_image(&upright).unwrap();
    PhotoPicture {
        file: record.file.clone(),
        jpeg_bytes,
        width: upright.width(),
        height: upright.height(),
        stored_width: STORED[0],
        stored_height: STORED[1],
        orientation: record.orientation,
    }
}

/// Fills a convex outline, its border included.
fn fill(picture: &mut GrayImage, outline: &[[i32; 2]; 4], tone: u8) {
    let span = |axis: usize, most: u32| {
        let values = outline.map(|point| point[axis]);
        let last = most as i32 - 1;
        values.iter().copied().fold(last, i32::min).max(0)..=values.iter().copied().fold(0, i32::max).min(last)
    };
    for y in span(1, picture.height()) {
        for x in span(0, picture.width()) {
            let sides = [0, 1, 2, 3].map(|n| {
                let ([ax, ay], [bx, by]) = (outline[n], outline[(n + 1) % 4]);
                (bx - ax) * (y - ay) - (by - ay) * (x - ax)
            });
            if sides.iter().all(|side| *side >= 0) || sides.iter().all(|side| *side <= 0) {
                picture.put_pixel(x as u32, y as u32, Luma([tone]));
            }
        }
    }
}
