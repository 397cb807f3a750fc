//! Wheel plates on the wrong wheel or upside down; marker sheets exchanged or turned.

use nalgebra::{Vector2, Vector3};

use super::{Case, Explanation, Finding, Rule, Touches};
use crate::marker::{Marker, Role};
use crate::pose::{Scene, View};
use crate::verdict::Level;
use crate::words::{Value, phrase};

pub(super) const RULE: Rule = Rule {
    codes: &["plates-swapped"],
    title: "Plates or sheets swapped, or upside down",
    rationale: "Each plate knows which side of the vehicle it belongs to, each sheet where it sits on its carrier; exchanged, they measure another body.",
    method: "The left plate must be on the left of the line from the rear wheels to the stand, the front one before the rear one of \
             its side, and every plate's up must point up. Sheets: in every photo a marker lies where the kit puts another one, four times nearer than to its own place, or on its own place but turned. \
             Exact; no false alarms. Floor sheets that are bodies of their own may lie anywhere: exchanging them changes nothing.",
    touches: Touches::Everything,
    find,
};

pub(super) const EXPLAIN: &[Explanation] = &[Explanation {
    code: "plates-swapped",
    level: Level::Void,
    title: "Plates or sheets swapped",
    meaning: "Two plates are on each other's wheel, or marker sheets sit where the kit's file has others, or turned.",
    cause: "The left and right plate were mixed up when they were clamped on; or sheets were mounted in the wrong place when the kit was made or mended.",
    look: "Each plate's label names its wheel and shows which way is up; compare the numbers on the sheets with the kit's drawing.",
    remedy: "Put each where it belongs, the right way up, and take the photos again.",
}];

fn find(case: &Case) -> Vec<Finding> {
    let Some(scene) = case.scene else { return Vec::new() };
    let mut found = exchanged(case, scene);
    if found.is_empty() {
        found = wrong_side(case, scene);
    }
    if found.is_empty()
        && let Some(up) = upwards(case, scene)
    {
        found.extend(upside_down(case, scene, &up));
    }
    found
}

/// The direction up in the world, from the floor or the stand.
fn upwards(case: &Case, scene: &Scene) -> Option<Vector3<f64>> {
    let stand = case.kit.with_role(Role::Target).find_map(|k| scene.carriers[k])?;
    Some(if scene.on_floor { Vector3::z() } else { stand.direction(&Vector3::z()) })
}

fn wrong_side(case: &Case, scene: &Scene) -> Vec<Finding> {
    let pose = |role: Role| case.kit.with_role(role).find_map(|k| scene.carriers[k]);
    let (Some(stand), Some(up)) = (pose(Role::Target), upwards(case, scene)) else { return Vec::new() };
    let swapped = |(left, right, axle): &(Role, Role, &str)| {
        let (l, r) = (pose(*left)?, pose(*right)?);
        let ahead = stand.origin_mm() - (l.origin_mm() + r.origin_mm()) / 2.0;
        let to_left = up.cross(&ahead);
        ((l.origin_mm() - r.origin_mm()).dot(&to_left) < 0.0).then(|| {
            let message = phrase!("findings-plates-swapped-sides", axle = *axle);
            Finding::new("plates-swapped", Level::Void, message)
        })
    };
    super::plate_not_seated::AXLES.iter().filter_map(swapped).chain(wrong_end(case, scene)).collect()
}

/// A front plate that is behind the rear one of its side, by where both say that forward is.
fn wrong_end(case: &Case, scene: &Scene) -> Vec<Finding> {
    let pose = |role: Role| case.kit.with_role(role).find_map(|k| scene.carriers[k]);
    let swapped = |(front, rear, side): &(Role, Role, &str)| {
        let (f, r) = (pose(*front)?, pose(*rear)?);
        let forward = f.direction(&Vector3::x()) + r.direction(&Vector3::x());
        ((f.origin_mm() - r.origin_mm()).dot(&forward) < 0.0).then(|| {
            let message = phrase!("findings-plates-swapped-ends", side = *side);
            Finding::new("plates-swapped", Level::Void, message)
        })
    };
    SIDES.iter().filter_map(swapped).collect()
}

/// Sides of the vehicle by their plates.
const SIDES: [(Role, Role, &str); 2] =
    [(Role::FrontLeftWheel, Role::RearLeftWheel, "left"), (Role::FrontRightWheel, Role::RearRightWheel, "right")];

fn upside_down(case: &Case, scene: &Scene, up: &Vector3<f64>) -> Vec<Finding> {
    let carriers = case.kit.carriers.iter().enumerate();
    carriers
        .filter(|(_, c)| c.role.is_wheel() || c.role == Role::Target)
        .filter(|(k, _)| scene.carriers[*k].is_some_and(|p| p.direction(&Vector3::z()).dot(up) < 0.0))
        .map(|(k, c)| {
            let message = phrase!("findings-upside-down", body = case.body_first(k));
            // An upside-down target is no target; an upside-down plate still marks its hub.
            let (code, level) = if c.role == Role::Target {
                ("stand-not-level", Level::Void)
            } else {
                ("plate-not-seated", Level::Stop)
            };
            Finding::new(code, level, message).on_carrier(&c.name)
        })
        .collect()
}

/// Nearer to another place than to its own by this factor.
const NEARER: f64 = 0.25;
/// Shifts below half a marker are other faults.
const FAR: f64 = 0.5;

/// A marker's place in one photo: where it was found and where the kit puts it.
struct Place {
    photo: usize,
    id: u32,
    carrier: usize,
    found: [Vector2<f64>; 4],
    expected: [Vector2<f64>; 4],
}

impl Place {
    /// Root mean square distance of the corners to others that begin `turn` corners later.
    fn distance(&self, to: &[Vector2<f64>; 4], turn: usize) -> f64 {
        ((0..4).map(|i| (self.found[i] - to[(i + turn) % 4]).norm_squared()).sum::<f64>() / 4.0).sqrt()
    }

    fn off(&self) -> bool {
        let side = (0..4).map(|i| (self.found[(i + 1) % 4] - self.found[i]).norm()).fold(1.0, f64::max);
        self.distance(&self.expected, 0) > FAR * side
    }
}

fn exchanged(case: &Case, scene: &Scene) -> Vec<Finding> {
    let places = places(case, scene);
    let mut off: Vec<u32> = places.iter().filter(|p| p.off()).map(|p| p.id).collect();
    off.sort_unstable();
    off.dedup();
    let of = |id: u32| places.iter().filter(move |p| p.id == id);
    let carrier = |id: u32| of(id).next().map_or("", |p| case.kit.carriers[p.carrier].name.as_str());
    let body = |id: u32| of(id).next().map_or_else(|| Value::from(""), |p| case.body(p.carrier).into());
    let mut found = Vec::new();
    for (i, a) in off.iter().enumerate() {
        let turned =
            (1..4).find(|turn| of(*a).all(|p| p.distance(&p.expected, *turn) < NEARER * p.distance(&p.expected, 0)));
        if turned.is_some() {
            let message = phrase!("findings-marker-turned", marker = a.to_string(), body = body(*a));
            found.push(Finding::new("plates-swapped", Level::Void, message).on_carrier(carrier(*a)));
        }
        for b in &off[i + 1..] {
            let at_other = |x: u32, y: u32| {
                let mut pairs = of(x).filter_map(|p| Some((p, of(y).find(|q| q.photo == p.photo)?))).peekable();
                pairs.peek().is_some()
                    && pairs.all(|(p, q)| p.distance(&q.expected, 0) < NEARER * p.distance(&p.expected, 0))
            };
            if at_other(*a, *b) && at_other(*b, *a) {
                let message = phrase!(
                    "findings-markers-exchanged",
                    one = a.to_string(),
                    body = body(*a),
                    other = b.to_string(),
                    other_body = body(*b)
                );
                found.push(Finding::new("plates-swapped", Level::Void, message).on_carrier(carrier(*a)));
            }
        }
    }
    found
}

fn places(case: &Case, scene: &Scene) -> Vec<Place> {
    let Some(problem) = case.problem else { return Vec::new() };
    let mut places = Vec::new();
    for (photo, (view_of, solved)) in problem.photos.iter().zip(&scene.photos).enumerate() {
        let Some(solved) = solved else { continue };
        for view in &view_of.views {
            let Some(expected) = expected(case, scene, solved, view) else { continue };
            places.push(Place { photo, id: view.id, carrier: view.carrier, found: view.corners_px, expected });
        }
    }
    places
}

fn expected(case: &Case, scene: &Scene, solved: &crate::pose::SolvedPhoto, view: &View) -> Option<[Vector2<f64>; 4]> {
    let marker: &Marker = &case.kit.carriers[view.carrier].markers[view.marker];
    let camera_from_carrier = solved.camera_from_world * scene.carriers[view.carrier]?;
    let [a, b, c, d] =
        marker.corners_mm().map(|p| Some(solved.lens.project(&camera_from_carrier.point(&p).coords)?.pixel));
    Some([a?, b?, c?, d?])
}
