//! One lens: from camera coordinates to pixels and back.

use nalgebra::{Matrix2, Matrix2x3, SMatrix, Vector2, Vector3};

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
        let focal = Matrix2::new(fu, 0.0, 0.0, fv);
        let d_flat = Matrix2x3::new(inverse_z, 0.0, -flat.x * inverse_z, 0.0, inverse_z, -flat.y * inverse_z);
        let mut d_lens = SMatrix::<f64, 2, 9>::zeros();
        d_lens[(0, 0)] = d.x;
        d_lens[(1, 1)] = d.y;
        d_lens[(0, 2)] = 1.0;
        d_lens[(1, 3)] = 1.0;
        let coefficients = focal * distorted.d_coefficients;
        d_lens.fixed_view_mut::<2, 5>(0, 4).copy_from(&coefficients);
        Some(Projection { pixel, d_point: focal * distorted.d_undistorted * d_flat, d_lens })
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
