//! How far a sheet on the floor has slid where its markers were left out of the
//! adjustment: what strikes one marker alone is taken for a blunder there, and a
//! sheet that was kicked aside looks just so. A kick keeps the print's shape, a
//! shadow or a boot does not.

use nalgebra::{DMatrix, DVector, Vector2, Vector6};

use super::scene::Scene;
use super::views::Problem;
use crate::geom::deg;

/// A sheet's step in the floor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slide {
    /// Of its first marker's place, mm.
    pub mm: f64,
    /// About the vertical, degrees.
    pub degrees: f64,
    /// The farthest step of one of its corners, mm.
    pub corner_mm: f64,
    /// What is left of the corners' misfit once it has slid: root mean square, px.
    pub rest_px: f64,
    /// What it was before.
    pub misfit_px: f64,
}

const ROUNDS: usize = 5;

impl Scene {
    /// The slide of a sheet that explains its corners in some photos in which none of them was used; `None` where one
    /// was used, or none is seen.
    pub fn slide(&self, problem: &Problem, carrier: usize, photos: &[usize]) -> Option<Slide> {
        let pose = self.carriers[carrier]?;
        // By corner: photo, its place on the sheet, where it was found.
        let mut corners = Vec::new();
        for j in photos {
            let Some(solved) = &self.photos[*j] else { continue };
            for (view, found) in problem.photos[*j].views.iter().zip(&solved.views) {
                if view.carrier != carrier {
                    continue;
                }
                if found.used.contains(&true) {
                    return None;
                }
                let places = problem.kit.carriers[carrier].markers[view.marker].corners_mm();
                for i in (0..4).filter(|i| view.valid[*i]) {
                    let outward = view.outward()[i] * found.edge_offset_px;
                    corners.push((solved, places[i], view.corners_px[i] - outward));
                }
            }
        }
        if corners.len() < 3 {
            return None;
        }
        let misfit = |step: &Vector6<f64>| -> Option<DVector<f64>> {
            let at = pose.moved(step);
            let mut all = DVector::zeros(2 * corners.len());
            for (n, (photo, place, found)) in corners.iter().enumerate() {
                let seen = photo.lens.project(&photo.camera_from_world.point(&at.point(place)).coords)?;
                let r: Vector2<f64> = found - seen.pixel;
                all[2 * n] = r.x;
                all[2 * n + 1] = r.y;
            }
            Some(all)
        };
        let mut step = Vector6::zeros();
        let first = misfit(&step)?;
        let mut now = first.clone();
        for _ in 0..ROUNDS {
            let mut by = DMatrix::zeros(now.len(), FREE.len());
            for (c, (axis, h)) in FREE.iter().enumerate() {
                let mut beside = step;
                beside[*axis] += h;
                by.set_column(c, &((&now - misfit(&beside)?) / *h));
            }
            let change = by.tr_mul(&by).cholesky()?.solve(&by.tr_mul(&now));
            for (c, (axis, _)) in FREE.iter().enumerate() {
                step[*axis] += change[c];
            }
            now = misfit(&step)?;
        }
        let moved = pose.moved(&step);
        let farthest = corners.iter().map(|(_, p, _)| (moved.point(p) - pose.point(p)).norm()).fold(0.0, f64::max);
        let rms = |r: &DVector<f64>| (r.norm_squared() / corners.len() as f64).sqrt();
        Some(Slide {
            mm: step.fixed_rows::<2>(0).norm(),
            degrees: deg(step[5].abs()),
            corner_mm: farthest,
            rest_px: rms(&now),
            misfit_px: rms(&first),
        })
    }
}

/// Axes in which a sheet slides, each with a small step of it, mm and rad.
const FREE: [(usize, f64); 3] = [(0, 0.1), (1, 0.1), (5, 1e-4)];
