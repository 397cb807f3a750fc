//! Everything that a ray can meet, with builders for boxes, turned and lofted bodies.

use nalgebra::{Isometry3, Point3, Vector3};

use super::facet::{Facet, Hit, Outline, Ray};
use super::paint::{Gloss, Paint, Surface};
use super::sheet::Sheet;
use super::tree::Tree;

/// A hole: what lies within `radius_mm` of an axis along `axis` and beyond
/// `from_mm` along it is not there (a wheel arch).
#[derive(Debug, Clone, Copy)]
pub(crate) struct Trim {
    /// A point of the axis.
    pub(crate) centre: Vector3<f64>,
    /// Unit direction of the axis, pointing out of the body.
    pub(crate) axis: Vector3<f64>,
    /// Radius, mm.
    pub(crate) radius_mm: f64,
    /// Where along the axis the hole begins, mm.
    pub(crate) from_mm: f64,
}

/// A rectangular lamp that shines along its normal.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Lamp {
    /// Centre.
    pub(crate) centre: Vector3<f64>,
    /// Half edges.
    pub(crate) half: [Vector3<f64>; 2],
    /// Unit direction that it shines to.
    pub(crate) towards: Vector3<f64>,
    /// Radiance times area, linear RGB.
    pub(crate) power: [f32; 3],
    /// An opening: too large for a few points, and for a highlight in one place.
    pub(crate) large: bool,
}

/// A scene to trace.
#[derive(Debug, Clone, Default)]
pub(crate) struct Model {
    facets: Vec<Facet>,
    surfaces: Vec<Surface>,
    bodies: u32,
    /// Holes in trimmed surfaces.
    pub(crate) trims: Vec<Trim>,
    /// Lamps.
    pub(crate) lamps: Vec<Lamp>,
    sheet_facets: Vec<(u32, u32)>,
    tree: Option<Tree>,
}

impl Model {
    /// The number of a new body.
    pub(crate) fn body(&mut self) -> u32 {
        self.bodies += 1;
        self.bodies
    }

    /// Adds a surface and returns its number.
    pub(crate) fn surface(&mut self, body: u32, paint: Paint, gloss: Gloss) -> u32 {
        self.surfaces.push(Surface { body, paint, gloss, trimmed: false });
        self.surfaces.len() as u32 - 1
    }

    /// A surface of a body of its own.
    pub(crate) fn new_surface(&mut self, paint: Paint, gloss: Gloss) -> u32 {
        let body = self.body();
        self.surface(body, paint, gloss)
    }

    /// Lets the trims cut holes into a surface.
    pub(crate) fn trim(&mut self, surface: u32) {
        self.surfaces[surface as usize].trimmed = true;
    }

    /// Adds a parallelogram.
    pub(crate) fn quad(&mut self, surface: u32, origin: Vector3<f64>, edges: [Vector3<f64>; 2]) {
        if edges[0].cross(&edges[1]).norm() > 1e-9 {
            self.facets.push(Facet::new(origin, edges, Outline::Parallelogram, surface, None));
        }
    }

    /// Adds a triangle.
    pub(crate) fn triangle(&mut self, surface: u32, p: [Vector3<f64>; 3], smooth: Option<[Vector3<f32>; 3]>) {
        let edges = [p[1] - p[0], p[2] - p[0]];
        if edges[0].cross(&edges[1]).norm() > 1e-9 {
            self.facets.push(Facet::new(p[0], edges, Outline::Triangle, surface, smooth));
        }
    }

    /// Adds a box: `pose` maps its centred frame to the world.
    pub(crate) fn block(&mut self, surface: u32, pose: &Isometry3<f64>, half: [f64; 3]) {
        for axis in 0..3 {
            let edge = |i: usize| {
                let mut e = Vector3::zeros();
                e[i] = 2.0 * half[i];
                pose * e
            };
            let (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
            for side in [-1.0, 1.0] {
                let mut corner = Vector3::new(-half[0], -half[1], -half[2]);
                corner[axis] = side * half[axis];
                self.quad(surface, (pose * Point3::from(corner)).coords, [edge(u), edge(v)]);
            }
        }
    }

    /// Adds a body turned about the y axis of `pose`; the profile lists radius and y.
    pub(crate) fn turned(&mut self, surface: u32, pose: &Isometry3<f64>, profile: &[[f64; 2]], segments: usize) {
        let rings: Vec<Vec<Vector3<f64>>> = profile
            .iter()
            .map(|[radius, y]| {
                (0..=segments)
                    .map(|i| {
                        let angle = std::f64::consts::TAU * (i % segments) as f64 / segments as f64;
                        (pose * Point3::new(radius * angle.cos(), *y, radius * angle.sin())).coords
                    })
                    .collect()
            })
            .collect();
        self.loft(surface, &rings);
    }

    /// Adds a smooth skin through sections of equally many points.
    pub(crate) fn loft(&mut self, surface: u32, sections: &[Vec<Vector3<f64>>]) {
        let normals = loft_normals(sections);
        for i in 1..sections.len() {
            for j in 1..sections[i].len() {
                let corner = |di: usize, dj: usize| (sections[i - di][j - dj], normals[i - di][j - dj]);
                let (a, b, c, d) = (corner(1, 1), corner(1, 0), corner(0, 0), corner(0, 1));
                self.triangle(surface, [a.0, b.0, c.0], Some([a.1, b.1, c.1]));
                self.triangle(surface, [a.0, c.0, d.0], Some([a.1, c.1, d.1]));
            }
        }
    }

    /// Sorts the facets; to be called once after the last one.
    pub(crate) fn finish(&mut self) {
        self.tree = Some(Tree::over(&self.facets));
    }

    /// The surface of a number.
    pub(crate) fn surface_of(&self, hit: &Hit) -> &Surface {
        &self.surfaces[self.facets[hit.facet as usize].surface as usize]
    }

    /// The number of the surface that was met.
    pub(crate) fn surface_number(&self, hit: &Hit) -> u32 {
        self.facets[hit.facet as usize].surface
    }

    /// The facet that was met.
    pub(crate) fn facet(&self, hit: &Hit) -> &Facet {
        &self.facets[hit.facet as usize]
    }

    /// The ray parameter of the first thing between two parameters.
    pub(crate) fn first_between(&self, ray: &Ray, near: f64, far: f64) -> Option<f64> {
        let tree = self.tree.as_ref()?;
        tree.nearest(&self.facets, ray, (near, far), None, |f, t| !self.cut_away(f, ray, t)).map(|h| h.t)
    }

    /// Whether a surface is a printed marker.
    pub(crate) fn is_sheet(&self, surface: u32) -> bool {
        self.surfaces.get(surface as usize).is_some_and(|s| s.sheet().is_some())
    }

    /// The printed marker of a surface and the facet that bears it.
    pub(crate) fn sheet(&self, surface: u32) -> Option<(&Sheet, &Facet)> {
        let sheet = self.surfaces.get(surface as usize)?.sheet()?;
        let facet = self.sheet_facets.iter().find(|(s, _)| *s == surface)?.1;
        Some((sheet, &self.facets[facet as usize]))
    }

    /// Adds a printed marker: its paper with the lower left corner at `origin`.
    pub(crate) fn paper(&mut self, body: u32, sheet: Sheet, origin: Vector3<f64>, edges: [Vector3<f64>; 2]) {
        let surface = self.surface(body, Paint::Sheet(Box::new(sheet)), Gloss::MATT);
        self.sheet_facets.push((surface, self.facets.len() as u32));
        self.quad(surface, origin, edges);
    }

    /// The nearest meeting point; `hint` is a facet that is likely met.
    pub(crate) fn nearest(&self, ray: &Ray, hint: Option<u32>) -> Option<Hit> {
        let tree = self.tree.as_ref()?;
        tree.nearest(&self.facets, ray, (0.0, f64::INFINITY), hint, |f, t| !self.cut_away(f, ray, t))
    }

    /// The facets that rays inside a pyramid of four planes through `eye` can meet.
    pub(crate) fn within(&self, eye: &Vector3<f64>, planes: &[Vector3<f64>; 4]) -> Vec<u32> {
        self.tree.as_ref().map_or_else(Vec::new, |tree| tree.within(&self.facets, eye, planes))
    }

    /// The nearest meeting point with some of the facets.
    pub(crate) fn nearest_of(&self, some: &[u32], ray: &Ray) -> Option<Hit> {
        let mut best: Option<Hit> = None;
        for &facet in some {
            if let Some((t, a, b)) = self.facets[facet as usize].shape.meet(ray)
                && t > 0.0
                && best.as_ref().is_none_or(|h| t < h.t)
                && !self.cut_away(facet, ray, t)
            {
                best = Some(Hit { t, facet, a, b });
            }
        }
        best
    }

    /// Whether anything lies on the ray between two parameters; lamps do not count.
    pub(crate) fn blocked(&self, ray: &Ray, near: f64, far: f64) -> bool {
        let Some(tree) = &self.tree else { return false };
        tree.blocked(ray, near, far, |f, t| {
            let surface = &self.surfaces[self.facets[f as usize].surface as usize];
            !matches!(surface.paint, Paint::Lamp(_)) && !self.cut_away(f, ray, t)
        })
    }

    fn cut_away(&self, facet: u32, ray: &Ray, t: f64) -> bool {
        if !self.surfaces[self.facets[facet as usize].surface as usize].trimmed {
            return false;
        }
        let point = ray.at(t);
        self.trims.iter().any(|trim| {
            let d = point - trim.centre;
            let along = d.dot(&trim.axis);
            along > trim.from_mm && (d - trim.axis * along).norm_squared() < trim.radius_mm * trim.radius_mm
        })
    }
}

/// Vertex normals of a grid of points: across the two diagonals of the neighbours.
fn loft_normals(sections: &[Vec<Vector3<f64>>]) -> Vec<Vec<Vector3<f32>>> {
    let rows = sections.len();
    let at = |i: usize, j: usize| sections[i][j];
    (0..rows)
        .map(|i| {
            let columns = sections[i].len();
            let closed = (at(i, 0) - at(i, columns - 1)).norm() < 1e-9;
            (0..columns)
                .map(|j| {
                    let (before, after) = match (closed, j) {
                        (true, 0) => (columns - 2, 1),
                        (true, j) if j == columns - 1 => (columns - 2, 1),
                        (_, j) => (j.saturating_sub(1), (j + 1).min(columns - 1)),
                    };
                    let along = at((i + 1).min(rows - 1), j) - at(i.saturating_sub(1), j);
                    let across = at(i, after) - at(i, before);
                    across.cross(&along).try_normalize(1e-9).unwrap_or(Vector3::z()).cast::<f32>()
                })
                .collect()
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_block_is_met_at_its_faces_and_a_trim_opens_it() {
        let mut model = Model::default();
        let surface = model.new_surface(Paint::Plain([0.5; 3]), Gloss::MATT);
        model.block(surface, &Isometry3::translation(10.0, 0.0, 0.0), [2.0, 3.0, 4.0]);
        model.finish();
        let ray = Ray { origin: Vector3::zeros(), direction: Vector3::x() };
        assert!((model.nearest(&ray, None).unwrap().t - 8.0).abs() < 1e-12);
        assert!(model.blocked(&ray, 0.0, 9.0) && !model.blocked(&ray, 0.0, 7.0));
        model.trim(surface);
        model.trims.push(Trim {
            centre: Vector3::new(10.0, 0.0, 0.0),
            axis: -Vector3::x(),
            radius_mm: 1.0,
            from_mm: 0.0,
        });
        assert!((model.nearest(&ray, None).unwrap().t - 12.0).abs() < 1e-12);
    }
}
