//! Light at a point: soft shadows of the lamps, and light from everywhere
//! that nearby bodies take away.

use nalgebra::Vector3;

use super::facet::Ray;
use super::model::Model;

/// Points on all lamps together.
const LAMP_RAYS: usize = 24;
/// Points on an opening: more, as it is larger and its shadows are wider.
const OPENING_RAYS: usize = 48;
/// Directions of the surrounding light.
const SKY_RAYS: usize = 12;
/// Bodies beyond this distance take no surrounding light away, mm.
const SKY_REACH_MM: f64 = 900.0;
/// Nor do steps and edges nearer than this: they would show as fringes, mm.
const SKY_FROM_MM: f64 = 15.0;
/// Start of a shadow ray above the surface, mm.
const LIFT_MM: f64 = 0.05;

/// A point of a lamp that stands for a share of it.
#[derive(Debug, Clone, Copy)]
struct LampPoint {
    at: Vector3<f64>,
    towards: Vector3<f64>,
    power: [f32; 3],
    /// Nearer than this it counts as this far: it stands for a patch of that size, not for a point, mm^2.
    least2: f64,
}

/// Light of a bay.
#[derive(Debug, Clone)]
pub(crate) struct Lighting {
    lamp_points: Vec<LampPoint>,
    sky: Vec<Vector3<f64>>,
    ambient: [f32; 3],
}

/// The `i`-th of `n` well spread points of the unit square (Fibonacci lattice).
pub(crate) fn spread(i: usize, n: usize) -> [f64; 2] {
    const GOLDEN: f64 = 0.618_033_988_749_894_9;
    [(i as f64 + 0.5) / n as f64, (0.5 + i as f64 * GOLDEN).fract()]
}

impl Lighting {
    /// The light of a model's lamps and of its surroundings.
    pub(crate) fn of(model: &Model, ambient: [f32; 3]) -> Self {
        let small = model.lamps.iter().filter(|l| !l.large).count();
        let small_each = LAMP_RAYS.div_ceil(small.max(1)).max(4);
        let mut lamp_points = Vec::new();
        for lamp in &model.lamps {
            let area = 4.0 * lamp.half[0].norm() * lamp.half[1].norm();
            let each = if lamp.large { OPENING_RAYS } else { small_each };
            for i in 0..each {
                let [a, b] = spread(i, each).map(|x| 2.0 * x - 1.0);
                let at = lamp.centre + lamp.half[0] * a + lamp.half[1] * b;
                lamp_points.push(LampPoint {
                    at,
                    towards: lamp.towards,
                    power: lamp.power.map(|p| p / each as f32),
                    least2: if lamp.large { area / each as f64 } else { 0.0 },
                });
            }
        }
        let sky = (0..SKY_RAYS)
            .map(|i| {
                // Cosine-weighted over the hemisphere about z (Malley's method).
                let [r2, turn] = spread(i, SKY_RAYS);
                let (sin, cos) = (std::f64::consts::TAU * turn).sin_cos();
                Vector3::new(r2.sqrt() * cos, r2.sqrt() * sin, (1.0 - r2).sqrt())
            })
            .collect();
        Lighting { lamp_points, sky, ambient }
    }

    /// Light that falls on a surface with this normal, over pi: reflectance times it is radiance.
    pub(crate) fn falls_on(&self, model: &Model, point: &Vector3<f64>, normal: &Vector3<f64>) -> [f32; 3] {
        let origin = point + normal * LIFT_MM;
        let mut sum = [0.0f32; 3];
        for lamp in &self.lamp_points {
            let to = lamp.at - origin;
            let distance2 = to.norm_squared().max(lamp.least2);
            let facing = to.dot(normal);
            // Cosine at the lamp times the distance.
            let shining = -to.dot(&lamp.towards);
            if facing <= 0.0 || shining <= 0.0 || model.blocked(&Ray { origin, direction: to }, 0.0, 1.0) {
                continue;
            }
            let weight = (facing * shining / (distance2 * distance2) * 1e6) as f32;
            for (s, p) in sum.iter_mut().zip(&lamp.power) {
                *s += weight * p;
            }
        }
        let open = self.openness(model, &origin, normal) * (0.75 + 0.25 * normal.z) as f32;
        [0, 1, 2].map(|i| sum[i] + open * self.ambient[i])
    }

    fn openness(&self, model: &Model, origin: &Vector3<f64>, normal: &Vector3<f64>) -> f32 {
        let side = if normal.z.abs() < 0.9 { Vector3::z() } else { Vector3::x() };
        let u = normal.cross(&side).normalize();
        let v = normal.cross(&u);
        let taken = |d: &Vector3<f64>| {
            let direction = u * d.x + v * d.y + normal * d.z;
            let met = model.first_between(&Ray { origin: *origin, direction }, SKY_FROM_MM, SKY_REACH_MM);
            // The farther the body, the less it takes: no step where the reach ends.
            met.map_or(0.0, |t| 1.0 - t / SKY_REACH_MM)
        };
        let share = self.sky.iter().map(taken).sum::<f64>() / SKY_RAYS as f64;
        1.0 - 0.85 * share as f32
    }

    /// Highlights of the lamps (Blinn 1977) for a viewing direction; shadows are left out, and openings, which
    /// only what mirrors shows.
    pub(crate) fn highlight(
        &self,
        model: &Model,
        point: &Vector3<f64>,
        normal: &Vector3<f64>,
        view: &Vector3<f64>,
        sharpness: f32,
    ) -> [f32; 3] {
        let mut sum = [0.0f32; 3];
        for lamp in model.lamps.iter().filter(|l| !l.large) {
            let to = (lamp.centre - point).normalize();
            let half = to - view;
            let cosine = (half.dot(normal) / half.norm().max(1e-9)).max(0.0) as f32;
            let strength = cosine.powf(sharpness) * (sharpness + 8.0) * 0.02;
            for (s, p) in sum.iter_mut().zip(&lamp.power) {
                *s += strength * p * 0.12;
            }
        }
        sum
    }
}

#[cfg(test)]
mod tests {
    use super::super::model::Lamp;
    use super::*;

    /// View factor of a small level face from an upright rectangle that it looks along, opposite to a lower corner of
    /// it: Howell's catalog of radiation configuration factors, C-4.
    fn from_upright_rectangle(width: f64, height: f64, distance: f64) -> f64 {
        let (x, y) = (height / width, distance / width);
        let root = x.hypot(y);
        ((1.0 / y).atan() - y / root * (1.0 / root).atan()) / std::f64::consts::TAU
    }

    #[test]
    fn an_opening_lights_the_floor_as_its_view_factor_says() {
        let half = [Vector3::x() * 1500.0, Vector3::z() * 1300.0];
        let (centre, radiance) = (Vector3::new(0.0, 4000.0, 1300.0), 3.0f32);
        let power = [radiance * 3.0 * 2.6 / std::f32::consts::PI; 3];
        let mut model = Model::default();
        model.lamps.push(Lamp { centre, half, towards: -Vector3::y(), power, large: true });
        let lighting = Lighting::of(&model, [0.0; 3]);
        for y in [-2000.0, 0.0, 1500.0] {
            let light = lighting.falls_on(&model, &Vector3::new(0.0, y, 0.0), &Vector3::z());
            // Two corners: the point lies before the middle of the lower edge.
            let wanted = 2.0 * from_upright_rectangle(1500.0, 2600.0, 4000.0 - y) * f64::from(radiance);
            assert!((f64::from(light[1]) / wanted - 1.0).abs() < 0.01, "{y}: {} {wanted}", light[1]);
        }
        // Nothing falls on what looks away, nor on what is behind the opening.
        for (y, normal) in [(0.0, -Vector3::y()), (5000.0, Vector3::z())] {
            let light = lighting.falls_on(&model, &Vector3::new(0.0, y, 0.0), &normal);
            assert!(light.iter().all(|l| *l <= 0.0), "{y}: {light:?}");
        }
    }
}
