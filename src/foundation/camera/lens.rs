//! One lens: from camera coordinates to pixels and back.

use nalgebra::{Matrix2x3, SMatrix, Vector2, Vector3};

use super::{brown_conrady, kannala_brandt};

/// Which distortion model a lens has; both with OpenCV's conventions.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LensModel {
    /// `k1 k2 p1 p2 k3` (Brown 1971; OpenCV `projectPoints`).
    BrownConrady,
    /// `k1 k2 k3 k4` (Kannala and Brandt 2006; OpenCV `fisheye`).
    KannalaBrandt,
}

impl LensModel {
    /// The name in camera files.
    pub fn name(self) -> &'static str {
        match self {
            LensModel::BrownConrady => "brown-conrady",
            LensModel::KannalaBrandt => "kannala-brandt",
        }
    }

    /// How many distortion coefficients the model has.
    pub fn coefficients(self) -> usize {
        match self {
            LensModel::BrownConrady => 5,
            LensModel::KannalaBrandt => 4,
        }
    }

    /// How many parameters the model has in all: two focal lengths, the
    /// centre's two coordinates and the distortion.
    pub fn parameters(self) -> usize {
        4 + self.coefficients()
    }
}

/// A lens on a pixel grid (the centre of the top-left pixel is 0, 0).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lens {
    /// Distortion model.
    pub model: LensModel,
    /// Focal lengths along u and v, px.
    pub focal_px: [f64; 2],
    /// Principal point, px.
    pub centre_px: [f64; 2],
    /// Distortion coefficients in the model's order; unused ones are zero.
    pub distortion: [f64; 5],
}

/// A projected point with its derivatives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Projection {
    /// Pixel position u, v.
    pub pixel: Vector2<f64>,
    /// Derivative by the point in the camera frame, px/mm.
    pub d_point: Matrix2x3<f64>,
    /// Derivative by the lens parameters: focal u, v, centre u, v, distortion
    /// (the columns past the model's own count are zero).
    pub d_lens: SMatrix<f64, 2, 9>,
}

impl Lens {
    /// Projects a point of the camera frame, mm (z forward).
    ///
    /// `None` behind the camera and where the distortion model folds over, so
    /// that no pixel is claimed that the lens cannot show.
    #[inline]
    pub fn project(&self, point_mm: &Vector3<f64>) -> Option<Projection> {
        if point_mm.z <= 1e-9 || !point_mm.iter().all(|c| c.is_finite()) {
            return None;
        }
        let inverse_z = 1.0 / point_mm.z;
        let flat = Vector2::new(point_mm.x * inverse_z, point_mm.y * inverse_z);
        let distorted = match self.model {
            LensModel::BrownConrady => brown_conrady::distort(&flat, &self.distortion)?,
            LensModel::KannalaBrandt => kannala_brandt::distort(&flat, &self.distortion)?,
        };
        let [fu, fv] = self.focal_px;
        let d = &distorted.point;
        let pixel = Vector2::new(fu * d.x + self.centre_px[0], fv * d.y + self.centre_px[1]);
        // Written out by rows: products of matrices as small as these are calls that cost more than they compute.
        let mut d_point = Matrix2x3::zeros();
        let mut d_lens = SMatrix::<f64, 2, 9>::zeros();
        for (axis, focal) in self.focal_px.into_iter().enumerate() {
            let by_flat = [0, 1].map(|i| focal * distorted.d_undistorted[(axis, i)]);
            d_point[(axis, 0)] = by_flat[0] * inverse_z;
            d_point[(axis, 1)] = by_flat[1] * inverse_z;
            d_point[(axis, 2)] = by_flat[0] * (-flat.x * inverse_z) + by_flat[1] * (-flat.y * inverse_z);
            d_lens[(axis, axis)] = d[axis];
            d_lens[(axis, 2 + axis)] = 1.0;
            for i in 0..5 {
                d_lens[(axis, 4 + i)] = focal * distorted.d_coefficients[(axis, i)];
            }
        }
        Some(Projection { pixel, d_point, d_lens })
    }

    /// Where [`Self::project`] puts a point, px, without derivatives.
    pub fn pixel(&self, point_mm: &Vector3<f64>) -> Option<Vector2<f64>> {
        self.project(point_mm).map(|projection| projection.pixel)
    }

    /// The viewing ray of a pixel: a direction with z = 1 in the camera frame.
    ///
    /// `None` where no ray of the model reaches the pixel.
    pub fn ray(&self, pixel: &Vector2<f64>) -> Option<Vector3<f64>> {
        let wanted = Vector2::new(
            (pixel.x - self.centre_px[0]) / self.focal_px[0],
            (pixel.y - self.centre_px[1]) / self.focal_px[1],
        );
        let flat = match self.model {
            LensModel::BrownConrady => brown_conrady::undistort(&wanted, &self.distortion)?,
            LensModel::KannalaBrandt => kannala_brandt::undistort(&wanted, &self.distortion)?,
        };
        Some(Vector3::new(flat.x, flat.y, 1.0))
    }
}
