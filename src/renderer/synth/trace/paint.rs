//! What a surface looks like at a point: plain, mottled, printed, or with
//! shapes projected onto it.

use nalgebra::{Isometry3, Point3, Vector3};

use super::colour::Colour;
use super::noise::fractal;
use super::sheet::Sheet;

/// How a surface mirrors light.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(crate) struct Gloss {
    /// Weight of the lamps' highlights.
    pub(crate) highlight: f32,
    /// Exponent of the highlights (Blinn 1977).
    pub(crate) sharpness: f32,
    /// Share of the mirrored surroundings at square view; grows at grazing view (Schlick 1994).
    pub(crate) mirror: f32,
}

impl Gloss {
    /// No gloss at all.
    pub(crate) const MATT: Gloss = Gloss { highlight: 0.0, sharpness: 1.0, mirror: 0.0 };
    /// Semi-matt paint or plastic.
    pub(crate) const SATIN: Gloss = Gloss { highlight: 0.06, sharpness: 18.0, mirror: 0.0 };
    /// Car paint.
    pub(crate) const LACQUER: Gloss = Gloss { highlight: 0.5, sharpness: 120.0, mirror: 0.045 };
    /// Window glass.
    pub(crate) const GLASS: Gloss = Gloss { highlight: 0.8, sharpness: 400.0, mirror: 0.06 };
}

/// A surface: colour, gloss and which body it belongs to.
#[derive(Debug, Clone)]
pub(crate) struct Surface {
    /// Bodies with different numbers have a silhouette against each other.
    pub(crate) body: u32,
    /// Colour by position.
    pub(crate) paint: Paint,
    /// Default gloss.
    pub(crate) gloss: Gloss,
    /// Whether the model's trims cut holes into it (wheel arches).
    pub(crate) trimmed: bool,
}

/// Colour by position.
#[derive(Debug, Clone)]
pub(crate) enum Paint {
    /// One colour.
    Plain(Colour),
    /// A colour with stains and grain (floors and walls).
    Mottled {
        /// Mean colour.
        colour: Colour,
        /// Relative depth of the stains.
        depth: f32,
        /// Size of the largest stains, mm.
        size_mm: f64,
        /// Colour below a height (a painted skirt), if any.
        skirt: Option<(f64, Colour)>,
    },
    /// A light.
    Lamp(Colour),
    /// A printed marker.
    Sheet(Box<Sheet>),
    /// Shapes on a base colour.
    Decorated(Box<Decorated>),
    /// A wheel's face.
    Rim(Box<Rim>),
}

/// What a point looks like.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Look {
    /// Reflectance, or radiance of a lamp.
    pub(crate) colour: Colour,
    /// Gloss.
    pub(crate) gloss: Gloss,
    /// Shines by itself.
    pub(crate) lamp: bool,
}

/// Direction from which shapes are projected, in the body's own frame.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum From {
    /// Seen from before (+x); coordinates |y|, z.
    Front,
    /// Seen from behind (-x); coordinates |y|, z.
    Rear,
    /// Seen from both sides; coordinates x, z.
    Side,
    /// Seen from above; coordinates x, |y|.
    Above,
}

/// A polygon of another colour.
#[derive(Debug, Clone)]
pub(crate) struct Shape {
    /// Projection.
    pub(crate) from: From,
    /// Corners in the projection's coordinates, mm.
    pub(crate) polygon: Vec<[f64; 2]>,
    /// Colour inside.
    pub(crate) colour: Colour,
    /// Gloss inside.
    pub(crate) gloss: Gloss,
}

/// A base colour with shapes on it, later ones on top.
#[derive(Debug, Clone)]
pub(crate) struct Decorated {
    /// World to the frame of the shapes.
    pub(crate) local_from_world: Isometry3<f64>,
    /// Base colour.
    pub(crate) base: Colour,
    /// The shapes.
    pub(crate) shapes: Vec<Shape>,
}

/// A wheel's face with spokes, about the y axis of its frame.
#[derive(Debug, Clone)]
pub(crate) struct Rim {
    /// World to wheel.
    pub(crate) local_from_world: Isometry3<f64>,
    /// Radius of the rim, mm.
    pub(crate) radius_mm: f64,
    /// Number of spokes.
    pub(crate) spokes: u32,
    /// Colour of the metal.
    pub(crate) metal: Colour,
}

fn matt(colour: Colour, gloss: Gloss) -> Look {
    Look { colour, gloss, lamp: false }
}

impl Surface {
    /// The look at a world point with its normal; `a`, `b` are the facet's
    /// edge coordinates and `grain_mm` the width that one pixel covers there.
    pub(crate) fn look(&self, point: &Vector3<f64>, normal: &Vector3<f64>, a: f64, b: f64, grain_mm: f64) -> Look {
        match &self.paint {
            Paint::Plain(colour) => matt(*colour, self.gloss),
            Paint::Mottled { colour, depth, size_mm, skirt } => {
                let base = match skirt {
                    Some((height, below)) if point.z < *height => *below,
                    _ => *colour,
                };
                let stain = 1.0 + depth * fractal(point, *size_mm, grain_mm);
                matt(base.map(|c| (c * stain).clamp(0.01, 0.95)), self.gloss)
            }
            Paint::Lamp(colour) => Look { colour: *colour, gloss: Gloss::MATT, lamp: true },
            Paint::Sheet(sheet) => matt(sheet.colour(sheet.position(a, b)), self.gloss),
            Paint::Decorated(d) => d.look(point, normal, self.gloss),
            Paint::Rim(rim) => rim.look(point),
        }
    }

    /// The printed marker on it.
    pub(crate) fn sheet(&self) -> Option<&Sheet> {
        match &self.paint {
            Paint::Sheet(sheet) => Some(sheet),
            _ => None,
        }
    }
}

impl Decorated {
    fn look(&self, point: &Vector3<f64>, normal: &Vector3<f64>, gloss: Gloss) -> Look {
        let p = self.local_from_world * Point3::from(*point);
        let n = self.local_from_world * *normal;
        let top = self.shapes.iter().rev().find(|s| s.covers(&p, &n));
        top.map_or(matt(self.base, gloss), |s| matt(s.colour, s.gloss))
    }
}

impl Shape {
    fn covers(&self, p: &Point3<f64>, n: &Vector3<f64>) -> bool {
        let at = match self.from {
            From::Front if n.x > 0.12 => [p.y.abs(), p.z],
            From::Rear if n.x < -0.12 => [p.y.abs(), p.z],
            From::Side if n.y * p.y.signum() > 0.45 => [p.x, p.z],
            From::Above if n.z > 0.5 => [p.x, p.y.abs()],
            _ => return false,
        };
        inside(&self.polygon, at)
    }
}

/// Whether a point lies inside a polygon (even-odd rule).
fn inside(polygon: &[[f64; 2]], [x, y]: [f64; 2]) -> bool {
    let mut within = false;
    let mut previous = polygon.len().wrapping_sub(1);
    for (i, [xi, yi]) in polygon.iter().enumerate() {
        let [xj, yj] = polygon[previous];
        if (*yi > y) != (yj > y) && x < (xj - xi) * (y - yi) / (yj - yi) + xi {
            within = !within;
        }
        previous = i;
    }
    within
}

impl Rim {
    fn look(&self, point: &Vector3<f64>) -> Look {
        let p = self.local_from_world * Point3::from(*point);
        let radius = p.x.hypot(p.z) / self.radius_mm;
        let turn = p.z.atan2(p.x) * f64::from(self.spokes) / std::f64::consts::TAU;
        let from_spoke = (turn - turn.round()).abs();
        let spoke = 0.10 + 0.10 * radius;
        let metal = !(0.22..=0.93).contains(&radius) || from_spoke < spoke;
        match metal {
            true => matt(self.metal, Gloss { highlight: 0.35, sharpness: 60.0, mirror: 0.05 }),
            false => matt([0.012, 0.012, 0.013], Gloss::MATT),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_polygon_knows_its_inside() {
        let triangle = [[0.0, 0.0], [4.0, 0.0], [0.0, 4.0]];
        assert!(inside(&triangle, [1.0, 1.0]));
        assert!(!inside(&triangle, [3.0, 3.0]));
        assert!(!inside(&[], [0.0, 0.0]));
    }
}
