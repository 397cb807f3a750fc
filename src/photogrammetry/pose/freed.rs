//! A problem with something in it set free: what the photos say when one
//! thing that may be wrong is taken for unknown.
//!
//! Unlike [`super::Extra`], which asks the settled equations, this adjusts
//! anew: a print at 97 % or a stand that was rolled aside is no small step.

use nalgebra::DMatrix;

use super::adjust::adjust;
use super::extra::Extra;
use super::scene::Scene;
use super::views::{PhotoView, Problem};
use super::work::Options;
use crate::camera::Profile;
use crate::marker::{Carrier, Kit, Role};

/// A focal length that nothing is known of but its order, relative (1 sigma).
const U_FREE_FOCAL: f64 = 0.2;
/// Likewise a principal point, part of the focal length.
const U_FREE_CENTRE: f64 = 0.03;
/// Likewise each coefficient of distortion.
const U_FREE_DISTORTION: f64 = 0.3;
/// Rounds in which a size is found.
const ROUNDS: usize = 4;
/// A size that moves by less than this is found, relative.
const FOUND: f64 = 1e-5;

/// The changed problem. Bodies and photos keep their indices; new bodies come last.
#[derive(Debug, Clone)]
pub struct Freed {
    kit: Kit,
    cameras: Vec<Profile>,
    photos: Vec<PhotoView>,
}

/// A size that was found, and what the photos say at it and a standard uncertainty beside it.
#[derive(Debug, Clone)]
pub struct Resized {
    /// At the size found.
    pub at: (Freed, Scene),
    /// One standard uncertainty larger.
    pub beside: (Freed, Scene),
    /// Size over the kit file's.
    pub factor: f64,
}

impl Freed {
    /// A problem as it is.
    pub fn new(problem: &Problem) -> Self {
        let cameras = problem.cameras.iter().map(|c| (*c).clone()).collect();
        Freed { kit: problem.kit.clone(), cameras, photos: problem.photos.clone() }
    }

    /// The kit with the bodies that came to it.
    pub fn kit(&self) -> &Kit {
        &self.kit
    }

    /// Adjusts it; `None` where it does not settle, or photos fall out of `like`'s.
    pub fn adjust(&self, like: &Scene) -> Option<Scene> {
        let problem = Problem { kit: &self.kit, cameras: self.cameras.iter().collect(), photos: self.photos.clone() };
        let scene = adjust(&problem, &Options::default()).ok()?;
        let lost = |j: usize| like.photos[j].is_some() && scene.photos[j].is_none() && !self.photos[j].views.is_empty();
        (0..self.photos.len()).all(|j| !lost(j)).then_some(scene)
    }

    /// Some carriers are bodies of their own in some photos.
    #[must_use]
    pub fn apart(mut self, carriers: &[usize], photos: &[usize]) -> Self {
        for k in carriers {
            let other = self.kit.carriers.len();
            let carrier = &self.kit.carriers[*k];
            let name = format!("{} (elsewhere)", carrier.name);
            self.kit.carriers.push(Carrier { name, ..carrier.clone() });
            for j in photos {
                for view in self.photos[*j].views.iter_mut().filter(|v| v.carrier == *k) {
                    view.carrier = other;
                }
            }
        }
        self
    }

    /// Some sheets lie anywhere.
    #[must_use]
    pub fn off_floor(mut self, carriers: &[usize]) -> Self {
        for k in carriers {
            // A card is a body of no meaning.
            self.kit.carriers[*k].role = Role::Card;
        }
        self
    }

    /// A photo takes no part.
    #[must_use]
    pub fn without_photo(mut self, photo: usize) -> Self {
        self.photos[photo].views.clear();
        self
    }

    /// Each of some photos has a focal length of its own that nothing is known of.
    #[must_use]
    pub fn any_focal(self, photos: &[usize]) -> Self {
        self.through(photos, |camera| camera.per_photo.u_focal_relative = U_FREE_FOCAL)
    }

    /// Some photos were taken through one lens that nothing is known of.
    #[must_use]
    pub fn any_lens(self, photos: &[usize]) -> Self {
        self.through(photos, |camera| {
            let n = camera.lens.model.parameters();
            let f = camera.lens.focal_px[0];
            let u = |i: usize| match i {
                0 | 1 => U_FREE_FOCAL * f,
                2 | 3 => U_FREE_CENTRE * f,
                _ => U_FREE_DISTORTION,
            };
            camera.covariance = Some(DMatrix::from_fn(n, n, |i, j| if i == j { u(i).powi(2) } else { 0.0 }));
        })
    }

    /// A camera of their own for some photos, one for each that they have.
    fn through(mut self, photos: &[usize], change: impl Fn(&mut Profile)) -> Self {
        let own: std::collections::BTreeSet<usize> = photos.iter().map(|j| self.photos[*j].camera).collect();
        for camera in own {
            let other = self.cameras.len();
            let mut changed = self.cameras[camera].clone();
            change(&mut changed);
            self.cameras.push(changed);
            for j in photos {
                if self.photos[*j].camera == camera {
                    self.photos[*j].camera = other;
                }
            }
        }
        self
    }

    fn scaled(&self, carriers: &[usize], factor: f64) -> Self {
        let mut scaled = self.clone();
        for k in carriers {
            for marker in &mut scaled.kit.carriers[*k].markers {
                marker.size_mm = marker.size_mm.map(|s| s * factor);
            }
        }
        scaled
    }

    /// The markers on some carriers have one other size, which is found.
    pub fn resized(&self, carriers: &[usize], like: &Scene) -> Option<Resized> {
        let extra = Extra::Scale { carriers: carriers.to_vec() };
        let (mut factor, mut scene) = (1.0, self.adjust(like)?);
        for _ in 0..ROUNDS {
            let test = scene.score(&extra)?;
            let step = test.estimate[0];
            factor *= 1.0 + step;
            let at = self.scaled(carriers, factor);
            scene = at.adjust(like)?;
            if step.abs() < FOUND {
                break;
            }
        }
        let u = scene.score(&extra)?.covariance[(0, 0)].max(0.0).sqrt();
        let (at, beside) = (self.scaled(carriers, factor), self.scaled(carriers, factor * (1.0 + u)));
        // A size that is not known is no answer.
        let other = beside.adjust(like).filter(|_| u.is_finite() && u < 0.1)?;
        Some(Resized { at: (at, scene), beside: (beside, other), factor })
    }
}
