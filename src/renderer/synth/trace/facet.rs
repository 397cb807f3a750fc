//! Flat pieces that rays hit: parallelograms and triangles.

use nalgebra::Vector3;

/// A ray; `direction` need not be a unit vector, distances count in its length.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Ray {
    /// Start, mm.
    pub(crate) origin: Vector3<f64>,
    /// Direction.
    pub(crate) direction: Vector3<f64>,
}

impl Ray {
    /// The point at a parameter.
    pub(crate) fn at(&self, t: f64) -> Vector3<f64> {
        self.origin + self.direction * t
    }
}

/// Outline of a facet in its own two edge coordinates.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Outline {
    /// `0 <= a, b <= 1`.
    Parallelogram,
    /// `a, b >= 0`, `a + b <= 1`.
    Triangle,
}

/// A parallelogram or triangle `origin + a edge[0] + b edge[1]`.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Shape {
    /// First corner, mm.
    pub(crate) origin: Vector3<f64>,
    /// The two edges from it, mm.
    pub(crate) edges: [Vector3<f64>; 2],
    /// Which of the two shapes.
    pub(crate) outline: Outline,
}

/// A shape with what it looks like.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Facet {
    /// Where it lies.
    pub(crate) shape: Shape,
    /// Index of the surface that it belongs to.
    pub(crate) surface: u32,
    /// Unit normal of the flat piece.
    pub(crate) flat: Vector3<f64>,
    /// Normals at the three corners `origin`, `+ edge 0`, `+ edge 1` for smooth shading.
    pub(crate) smooth: Option<[Vector3<f32>; 3]>,
}

/// Where a ray meets a facet.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Hit {
    /// Ray parameter.
    pub(crate) t: f64,
    /// Index of the facet.
    pub(crate) facet: u32,
    /// Edge coordinates of the point.
    pub(crate) a: f64,
    /// Edge coordinates of the point.
    pub(crate) b: f64,
}

impl Shape {
    /// Ray parameter and edge coordinates of the meeting point (Möller and
    /// Trumbore 1997), from either side.
    pub(crate) fn meet(&self, ray: &Ray) -> Option<(f64, f64, f64)> {
        let p = ray.direction.cross(&self.edges[1]);
        let determinant = self.edges[0].dot(&p);
        if determinant.abs() < 1e-12 {
            return None;
        }
        let s = ray.origin - self.origin;
        // Most rays pass on the side where a is below 0 or above 1: no division for them.
        let along = s.dot(&p);
        if along * determinant < 0.0 || along.abs() > determinant.abs() * (1.0 + 1e-9) {
            return None;
        }
        let inverse = 1.0 / determinant;
        let a = along * inverse;
        if !(0.0..=1.0).contains(&a) {
            return None;
        }
        let q = s.cross(&self.edges[0]);
        let b = ray.direction.dot(&q) * inverse;
        let limit = match self.outline {
            Outline::Parallelogram => 1.0,
            Outline::Triangle => 1.0 - a,
        };
        if b < 0.0 || b > limit {
            return None;
        }
        Some((self.edges[1].dot(&q) * inverse, a, b))
    }

    /// Its corners; a triangle's first one is there twice.
    fn corners(&self) -> [Vector3<f64>; 4] {
        let far = match self.outline {
            Outline::Parallelogram => self.origin + self.edges[0] + self.edges[1],
            Outline::Triangle => self.origin,
        };
        [self.origin, self.origin + self.edges[0], self.origin + self.edges[1], far]
    }
}

impl Facet {
    /// A facet; edges must not be parallel.
    pub(crate) fn new(
        origin: Vector3<f64>,
        edges: [Vector3<f64>; 2],
        outline: Outline,
        surface: u32,
        smooth: Option<[Vector3<f32>; 3]>,
    ) -> Self {
        let flat = edges[0].cross(&edges[1]).normalize();
        Facet { shape: Shape { origin, edges, outline }, surface, flat, smooth }
    }

    /// Normal for shading: blended over the corners where the surface is curved.
    pub(crate) fn shading_normal(&self, a: f64, b: f64) -> Vector3<f64> {
        match &self.smooth {
            None => self.flat,
            Some([n0, n1, n2]) => {
                let (a, b) = (a as f32, b as f32);
                let n = n0 * (1.0 - a - b) + n1 * a + n2 * b;
                n.cast::<f64>().try_normalize(1e-9).unwrap_or(self.flat)
            }
        }
    }

    /// Whether it may reach into a pyramid of planes through `eye` with normals outwards.
    pub(crate) fn reaches(&self, eye: &Vector3<f64>, planes: &[Vector3<f64>; 4]) -> bool {
        let corners = self.shape.corners().map(|c| c - eye);
        !planes.iter().any(|n| corners.iter().all(|c| n.dot(c) > 0.0))
    }

    /// Least and greatest coordinates.
    pub(crate) fn bounds(&self) -> (Vector3<f64>, Vector3<f64>) {
        let corners = self.shape.corners();
        let low = corners.iter().fold(self.shape.origin, |m, c| m.inf(c));
        let high = corners.iter().fold(self.shape.origin, |m, c| m.sup(c));
        (low, high)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_triangle_is_half_of_its_parallelogram() {
        let mut facet =
            Facet::new(Vector3::new(1.0, 0.0, 0.0), [Vector3::y(), Vector3::z()], Outline::Parallelogram, 0, None);
        let ray = Ray { origin: Vector3::new(0.0, 0.7, 0.6), direction: Vector3::x() * 0.5 };
        let (t, a, b) = facet.shape.meet(&ray).unwrap();
        assert!((t - 2.0).abs() < 1e-12 && (a - 0.7).abs() < 1e-12 && (b - 0.6).abs() < 1e-12);
        facet.shape.outline = Outline::Triangle;
        assert!(facet.shape.meet(&ray).is_none());
    }
}
