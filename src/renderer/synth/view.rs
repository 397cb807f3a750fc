//! One photo's true camera: lens, pose and pixel grid.

use nalgebra::{DVector, Matrix3, Point3, Vector2, Vector3};

use super::place::{Purpose, normal};
use super::scene::{PhotoSpec, Scene};
use super::turning::Turning;
use crate::camera::Lens;
use crate::geom::{Camera, Pose, World, rad};

/// The true camera of one photo, on the stored grid.
#[derive(Debug, Clone, PartialEq)]
pub struct View {
    /// True lens of this photo.
    pub lens: Lens,
    /// Camera from design frame.
    pub camera_from_world: Pose<Camera, World>,
    /// Width and height of the stored grid.
    pub size_px: [u32; 2],
    /// How the camera turns while rows are read; `camera_from_world` is the middle row's.
    pub turning: Option<Turning>,
}

/// A corner's row is found to this, px.
const ROW_PX: f64 = 1e-11;
/// Each step brings it nearer by the share of the rows that the turn moves the picture by.
const MOST_STEPS: usize = 60;

impl View {
    /// The camera of a scene's photo.
    pub(crate) fn of(scene: &Scene, index: usize, photo: &PhotoSpec) -> Self {
        let handling = scene.handling(index, photo);
        let lens = photo_lens(scene, index, photo, handling.shift_px);
        let still =
            View { lens, camera_from_world: camera_pose(photo), size_px: scene.camera.image_size_px, turning: None };
        let mut view = still.scaled(scene.scale * photo.resized);
        // A zoomed picture is the middle of the sensor: it is read in that share of the time.
        let readout_s = handling.readout_s / photo.digital_zoom;
        view.turning = Turning::of(handling.turn_deg_s, readout_s, view.size_px[1]);
        view
    }

    /// The same view on a grid of another size.
    fn scaled(mut self, scale: f64) -> Self {
        if (scale - 1.0).abs() < 1e-12 {
            return self;
        }
        self.size_px = self.size_px.map(|s| (f64::from(s) * scale).round().max(1.0) as u32);
        self.lens.focal_px = self.lens.focal_px.map(|f| f * scale);
        // Pixel centres are whole numbers: the grid's edge at -0.5 stays where it is.
        self.lens.centre_px = self.lens.centre_px.map(|c| (c + 0.5) * scale - 0.5);
        self
    }

    /// Where the camera is, design frame, mm.
    pub fn eye_mm(&self) -> Vector3<f64> {
        self.camera_from_world.inverse().origin_mm()
    }

    /// The pixel that shows a point of the design frame, if the lens can show it: at its row's moment where rows are
    /// read in turn.
    pub fn project(&self, point_mm: &Point3<f64>) -> Option<Vector2<f64>> {
        let ahead = self.camera_from_world.point(point_mm).coords;
        let still = self.lens.project(&ahead).map(|p| p.pixel);
        match &self.turning {
            None => still,
            Some(turning) => self.project_turning(turning, &ahead, still?),
        }
    }

    /// The pixel whose row sees the point at its own moment.
    fn project_turning(&self, turning: &Turning, ahead: &Vector3<f64>, start: Vector2<f64>) -> Option<Vector2<f64>> {
        let mut pixel = start;
        for _ in 0..MOST_STEPS {
            let then = turning.middle_from_row(pixel.y).inverse() * ahead;
            let next = self.lens.project(&then)?.pixel;
            let step = (next - pixel).norm();
            pixel = next;
            if step < ROW_PX {
                break;
            }
        }
        Some(pixel)
    }

    /// Whether a pixel position lies on the grid.
    pub fn contains(&self, pixel: &Vector2<f64>) -> bool {
        let inside = |v: f64, n: u32| v >= -0.5 && v <= f64::from(n) - 0.5;
        inside(pixel.x, self.size_px[0]) && inside(pixel.y, self.size_px[1])
    }
}

/// The lens that took the photo: the true mean lens with this photo's variation.
fn photo_lens(scene: &Scene, index: usize, photo: &PhotoSpec, moved_px: [f64; 2]) -> Lens {
    let seed = scene.spec.seed;
    let mut lens = mean_lens(scene);
    let per_photo = &scene.camera.per_photo;
    let draw = |purpose, n| normal(seed, purpose, index as u64, n);
    let factor = photo.focal_factor.unwrap_or_else(|| 1.0 + per_photo.u_focal_relative * draw(Purpose::Focal, 0));
    let shift =
        photo.centre_shift_px.unwrap_or_else(|| [0, 1].map(|n| per_photo.u_centre_px * draw(Purpose::Centre, n)));
    for (i, shift) in shift.into_iter().enumerate() {
        let middle = 0.5 * (f64::from(scene.camera.image_size_px[i]) - 1.0);
        lens.focal_px[i] *= factor * photo.digital_zoom;
        lens.centre_px[i] = middle + (lens.centre_px[i] + (shift + moved_px[i]) - middle) * photo.digital_zoom;
    }
    lens
}

/// The true mean lens: as the scene says, else the camera file's with a draw from its covariance.
fn mean_lens(scene: &Scene) -> Lens {
    let mut lens = scene.camera.lens;
    if let Some(own) = &scene.spec.true_lens {
        lens.focal_px = own.focal_px;
        lens.centre_px = own.centre_px;
        lens.distortion = std::array::from_fn(|i| own.distortion.get(i).copied().unwrap_or(0.0));
        return lens;
    }
    let Some(root) = scene.camera.covariance.clone().and_then(nalgebra::Cholesky::new) else { return lens };
    let n = root.l().nrows();
    let draw = DVector::from_fn(n, |i, _| normal(scene.spec.seed, Purpose::Lens, 0, i as u64));
    let step = root.l() * draw;
    for (i, d) in step.iter().enumerate() {
        match i {
            0 | 1 => lens.focal_px[i] += d,
            2 | 3 => lens.centre_px[i - 2] += d,
            _ if i - 4 < lens.model.coefficients() => lens.distortion[i - 4] += d,
            _ => {}
        }
    }
    lens
}

/// Camera from design frame of a photo: looks from the eye at the point, held
/// as the orientation tag says, tilted by the hand.
fn camera_pose(photo: &PhotoSpec) -> Pose<Camera, World> {
    let eye = Vector3::from(photo.eye_mm);
    let ahead = (Vector3::from(photo.look_at_mm) - eye).try_normalize(1e-9).unwrap_or(-Vector3::x());
    let right = ahead.cross(&Vector3::z()).try_normalize(1e-9).unwrap_or(Vector3::y());
    let down = ahead.cross(&right);
    let (sin, cos) = rad(photo.tilt_deg).sin_cos();
    let (right, down) = (right * cos + down * sin, down * cos - right * sin);
    // TIFF 6.0, tag 274: 6 = the stored grid's left edge is the picture's top.
    let (x, y) = match photo.orientation {
        3 => (-right, -down),
        6 => (down, -right),
        8 => (-down, right),
        _ => (right, down),
    };
    let world_from_camera = Pose::<World, Camera>::from_matrix(Matrix3::from_columns(&[x, y, ahead]), eye);
    world_from_camera.inverse()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_picture_is_upright_and_orientation_six_is_stored_on_its_side() {
        let mut photo = PhotoSpec::new("a.jpg", [5000.0, 0.0, 1000.0], [0.0, 0.0, 1000.0]);
        let above_left_of_viewer = Point3::new(0.0, -100.0, 1200.0);
        // Looking back along -x, the vehicle's right (y < 0) is in the picture's left half.
        let p = camera_pose(&photo).point(&above_left_of_viewer);
        assert!(p.x < 0.0 && p.y < 0.0 && p.z > 0.0, "{p}");
        photo.orientation = 6;
        // Turning the stored grid clockwise by a quarter brings its left edge to the top:
        // what is up must be stored to the left, what is left must be stored at the bottom.
        let p = camera_pose(&photo).point(&above_left_of_viewer);
        assert!(p.x < 0.0 && p.y > 0.0 && p.z > 0.0, "{p}");
    }
}
