//! Taking photos of a scene.

use super::build;
use super::develop::{Exposure, Picture, develop, expose, put_in, saved};
use super::place::{Placement, Purpose, counter};
use super::scene::{PhotoSpec, Processing, Scene};
use super::trace::{Light, Model, Near, render};
use super::truth::{self, SeenMarker, Shown, Truth};
use super::view::View;

/// Light per pixel before the camera's processing, in arbitrary linear units.
#[derive(Debug, Clone, PartialEq)]
pub struct LinearPicture {
    /// Width in pixels.
    pub width: usize,
    /// Height in pixels.
    pub height: usize,
    /// Linear red, green and blue: the mean over each pixel's area.
    pub rgb: Vec<[f32; 3]>,
}

/// A bay ready for one photo.
struct Take {
    photo: PhotoSpec,
    view: View,
    placement: Placement,
    model: Model,
}

impl Scene {
    fn take(&self, index: usize) -> Option<Take> {
        let photo = self.photos().into_iter().nth(index)?;
        let placement = Placement::of(self, &photo);
        let model = build::model(self, &photo, &placement);
        let view = View::of(self, index, &photo);
        Some(Take { photo, view, placement, model })
    }

    /// Light that comes from everywhere, before exposure.
    fn ambient(&self) -> [f32; 3] {
        [0.42, 0.43, 0.45].map(|c| c * self.spec.room.ambient)
    }

    /// The bay at the moment of a photo: poses of all bodies with every hidden error.
    pub fn placement(&self, index: usize) -> Option<Placement> {
        Some(Placement::of(self, self.photos().get(index)?))
    }

    /// The true camera of a photo.
    pub fn view(&self, index: usize) -> Option<View> {
        Some(View::of(self, index, self.photos().get(index)?))
    }

    /// Exact corners of the markers that a photo shows; nothing is rendered.
    pub fn corners(&self, index: usize) -> Vec<SeenMarker> {
        self.take(index).map_or_else(Vec::new, |t| truth::seen(&t.model, &t.view, t.placement.markers()))
    }

    /// A photo's light before any processing.
    pub fn render_linear(&self, index: usize) -> Option<LinearPicture> {
        let Light { width, height, rgb } = self.light(&self.take(index)?);
        Some(LinearPicture { width, height, rgb })
    }

    /// The same about the markers alone, and so many pixels beyond them; elsewhere it is a draft in squares of
    /// one colour, by which a picture is exposed and its tones are mapped. Many times as quick.
    pub fn render_linear_about_markers(&self, index: usize, beyond_px: f64) -> Option<LinearPicture> {
        let take = self.take(index)?;
        let about = |m: SeenMarker| {
            let ends = |k: usize| {
                let at = m.corners_px.iter().map(move |c| c[k]);
                (at.clone().fold(f64::INFINITY, f64::min) - beyond_px, at.fold(f64::NEG_INFINITY, f64::max) + beyond_px)
            };
            let ((left, right), (top, bottom)) = (ends(0), ends(1));
            [left, top, right, bottom]
        };
        let seen = truth::seen(&take.model, &take.view, take.placement.markers());
        let near = Near::within(take.view.size_px, seen.into_iter().map(about));
        let Light { width, height, rgb } = render(&take.model, self.ambient(), &take.view, near);
        Some(LinearPicture { width, height, rgb })
    }

    /// A photo as the camera develops it, before compression.
    pub fn render_photo(&self, index: usize) -> Option<Picture> {
        let take = self.take(index)?;
        let light = self.light(&take);
        Some(self.developed(index, &take.photo, light))
    }

    /// A photo developed from light that was traced before: the same as [`Scene::render_photo`] where nothing but
    /// processing and insides has changed since, and of these no turn of the hand and no stabiliser.
    pub fn develop(&self, index: usize, light: &LinearPicture) -> Option<Picture> {
        let photo = self.photos().into_iter().nth(index)?;
        let LinearPicture { width, height, rgb } = light.clone();
        Some(self.developed(index, &photo, Light { width, height, rgb }))
    }

    fn light(&self, take: &Take) -> Light {
        render(&take.model, self.ambient(), &take.view, Near::all(take.view.size_px))
    }

    fn developed(&self, index: usize, photo: &PhotoSpec, light: Light) -> Picture {
        let processing = self.spec.processing.changed(&photo.processing);
        let own = self.exposed(index, photo, &processing, light.clone());
        let markers = |carrier: &str| {
            let of_carrier = |id: u32| self.kit.marker(id).is_some_and(|(k, _)| self.kit.carriers[k].name == carrier);
            let seen: Vec<_> =
                self.corners(index).into_iter().filter(|m| of_carrier(m.id)).map(|m| m.corners_px).collect();
            seen.into_iter()
        };
        let later = photo.forged.put_in_later.as_ref().map(|carrier| (own.clone(), markers(carrier)));
        let mut own = match photo.forged.saved_at {
            Some(quality) => saved(own, quality),
            None => own,
        };
        if let Some((from, markers)) = later {
            own = put_in(own, &from, markers);
        }
        let Some(carrier) = &photo.forged.put_in else { return own };
        let quiet = Processing { full_well: 0.0, read_noise: 0.0, ..processing };
        put_in(own, &self.exposed(index, photo, &quiet, light), markers(carrier))
    }

    fn exposed(&self, index: usize, photo: &PhotoSpec, processing: &Processing, mut light: Light) -> Picture {
        let insides = self.insides();
        let noise = photo.forged.noise_of.as_ref().and_then(|f| self.photos().iter().position(|p| p.file == *f));
        let noise = noise.unwrap_or(index) as u64;
        let exposure = Exposure {
            processing,
            insides: &insides,
            stops: photo.exposure_stops,
            motion_px: photo.motion_px,
            counter: counter(self.spec.seed, Purpose::Sensor, noise),
            frames: counter(self.spec.seed, Purpose::Frames, noise),
        };
        expose(&mut light, &exposure);
        develop(light, processing, &insides)
    }

    /// All that is true of the scene's photos; nothing is rendered.
    pub fn truth(&self) -> Truth {
        let shown: Vec<Shown> = (0..self.photos().len()).filter_map(|i| Some(self.shown(&self.take(i)?))).collect();
        truth::truth(&self.kit, &self.setup, &shown)
    }

    fn shown(&self, take: &Take) -> Shown {
        Shown {
            file: format!("photos/{}", take.photo.file),
            step: take.photo.step.clone(),
            view: take.view.clone(),
            placement: take.placement.clone(),
            markers: truth::seen(&take.model, &take.view, take.placement.markers()),
        }
    }
}
