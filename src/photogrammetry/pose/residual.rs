//! What one marker in one photo contributes to the equations.

use nalgebra::{DMatrix, DVector, Matrix2x3, SMatrix, Vector2};

use super::columns::{Columns, wider};
use super::state::State;
use super::unknowns::{NUISANCE, OF_STATION, PHOTO, TURN};
use super::views::{EDGE_SIDE_PX, Problem, View};
use crate::camera::Lens;

/// Linearised, whitened equations of one view: `by_photo dx_photo +
/// by_shared dx_shared = residual`, noise of unit variance.
#[derive(Debug, Clone)]
pub(super) struct Equations {
    /// Block of the photo.
    pub(super) block: usize,
    /// Two rows for each valid corner by [`PHOTO`].
    pub(super) by_photo: DMatrix<f64>,
    /// By the columns in `shared`.
    pub(super) by_shared: DMatrix<f64>,
    /// Shared columns that take part.
    pub(super) shared: Vec<usize>,
    /// Found minus predicted, whitened.
    pub(super) residual: DVector<f64>,
    /// Found minus predicted, px; two for each of the four corners.
    pub(super) residual_px: [Vector2<f64>; 4],
    /// Lower Cholesky factor of the valid corners' covariance, px.
    noise_px: DMatrix<f64>,
    /// By extra unknowns of findings, not whitened: derivative of each valid
    /// corner by the carrier's own step (6) and by its marker's size (relative).
    pub(super) by_carrier_px: DMatrix<f64>,
    /// Likewise by the marker's relative size.
    pub(super) by_size_px: DVector<f64>,
    /// Likewise by the photo's relative focal length.
    pub(super) by_focal_px: DVector<f64>,
    /// Likewise by the lens: focal lengths and principal point relative to the
    /// focal length, then the model's coefficients.
    pub(super) by_lens_px: DMatrix<f64>,
}

impl Equations {
    /// Of a carrier without a pose: no rows, as of a marker whose corners were all left out.
    pub(super) fn none(block: usize) -> Self {
        let of = |columns| DMatrix::zeros(0, columns);
        Equations::of(block, of(PHOTO), of(0), Vec::new(), DVector::zeros(0))
    }

    /// Of given rows alone.
    pub(super) fn of(
        block: usize,
        by_photo: DMatrix<f64>,
        by_shared: DMatrix<f64>,
        shared: Vec<usize>,
        residual: DVector<f64>,
    ) -> Self {
        let m = residual.len();
        Equations {
            block,
            by_photo,
            by_shared,
            shared,
            residual,
            residual_px: [Vector2::zeros(); 4],
            noise_px: DMatrix::identity(m, m),
            by_carrier_px: DMatrix::zeros(m, 6),
            by_size_px: DVector::zeros(m),
            by_focal_px: DVector::zeros(m),
            by_lens_px: DMatrix::zeros(m, 9),
        }
    }

    /// Root mean square of the whitened residuals.
    pub(super) fn misfit(&self) -> f64 {
        (self.residual.norm_squared() / self.residual.len().max(1) as f64).sqrt()
    }

    /// Rows in px of the valid corners, brought to unit variance and no correlation.
    pub(super) fn whitened(&self, px: &DMatrix<f64>) -> DMatrix<f64> {
        let mut rows = px.clone();
        whiten(&self.noise_px, &mut rows);
        rows
    }
}

/// Derivatives of one corner.
struct Corner {
    pixel: Vector2<f64>,
    by_photo: SMatrix<f64, 2, PHOTO>,
    by_carrier: SMatrix<f64, 2, 6>,
    /// By a point of the carrier, px/mm.
    by_point: Matrix2x3<f64>,
    by_lens: SMatrix<f64, 2, 9>,
    arm: nalgebra::Vector3<f64>,
    by_focal: Vector2<f64>,
}

/// `None` where the state puts a corner out of the lens's sight.
pub(super) fn equations(
    problem: &Problem,
    columns: &Columns,
    state: &State,
    lens: &Lens,
    block: usize,
    view: &View,
) -> Option<Equations> {
    let corners = corners(problem, columns, state, lens, block, view)?;
    let valid: Vec<usize> = (0..4).filter(|i| view.valid[*i]).collect();
    let noise_px = noise(view, &valid)?;
    let m = 2 * valid.len();
    let free = &columns.carriers[view.carrier];
    let camera = problem.photos[columns.photos[block]].camera;
    let lens_modes = &columns.cameras[camera];
    let modes = columns.modes(view);
    let marker = &problem.kit.carriers[view.carrier].markers[view.marker];
    let mut shared: Vec<usize> = free.iter().map(|(_, c)| *c).collect();
    shared.extend(lens_modes.start..lens_modes.start + lens_modes.rank());
    let station = columns.stations[block];
    shared.extend(station.into_iter().flat_map(|start| start..start + OF_STATION));
    shared.extend(modes.iter().map(|m| m.column));
    // By the photo, by the shared columns, and the residual: whitened together.
    let mut rows = DMatrix::zeros(m, PHOTO + shared.len() + 1);
    let mut by_carrier_px = DMatrix::zeros(m, 6);
    let (mut by_size_px, mut by_focal_px) = (DVector::zeros(m), DVector::zeros(m));
    let mut by_lens_px = DMatrix::zeros(m, 9);
    for (row, i) in valid.iter().enumerate() {
        let corner = &corners[*i];
        by_carrier_px.fixed_view_mut::<2, 6>(2 * row, 0).copy_from(&corner.by_carrier);
        by_size_px.fixed_rows_mut::<2>(2 * row).copy_from(&(corner.by_point * corner.arm));
        by_focal_px.fixed_rows_mut::<2>(2 * row).copy_from(&corner.by_focal);
        by_lens_px.fixed_view_mut::<2, 9>(2 * row, 0).copy_from(&corner.by_lens);
        rows.fixed_view_mut::<2, PHOTO>(2 * row, 0).copy_from(&corner.by_photo);
        let mut column = PHOTO;
        let mut put = |value: Vector2<f64>| {
            rows.fixed_view_mut::<2, 1>(2 * row, column).copy_from(&value);
            column += 1;
        };
        for (axis, _) in free {
            put(corner.by_carrier.column(*axis).into_owned());
        }
        for mode in 0..lens_modes.rank() {
            put(corner.by_lens * lens_modes.factor().fixed_view::<9, 1>(0, mode));
        }
        for i in station.into_iter().flat_map(|_| PHOTO - NUISANCE..PHOTO - NUISANCE + OF_STATION) {
            put(corner.by_photo.column(i).into_owned());
        }
        for mode in modes {
            let moves = mode.centre_mm
                + mode.turn_rad.cross(&corner.arm)
                + corner.arm * mode.stretch
                + wider(marker, &corner.arm) * mode.aspect;
            put(corner.by_point * moves);
        }
        put(view.corners_px[*i] - corner.pixel);
    }
    whiten(&noise_px, &mut rows);
    let (photo, others) = rows.as_slice().split_at(m * PHOTO);
    let (by_shared, residual) = others.split_at(m * shared.len());
    Some(Equations {
        block,
        by_photo: DMatrix::from_vec(m, PHOTO, photo.to_vec()),
        by_shared: DMatrix::from_vec(m, shared.len(), by_shared.to_vec()),
        residual: DVector::from_vec(residual.to_vec()),
        shared,
        residual_px: std::array::from_fn(|i| view.corners_px[i] - corners[i].pixel),
        noise_px,
        by_carrier_px,
        by_size_px,
        by_lens_px: relative(by_lens_px, lens.focal_px[0]),
        by_focal_px,
    })
}

/// Focal lengths and principal point in units of the focal length.
fn relative(mut by_lens_px: DMatrix<f64>, focal_px: f64) -> DMatrix<f64> {
    by_lens_px.columns_mut(0, 4).scale_mut(focal_px);
    by_lens_px
}

fn corners(
    problem: &Problem,
    columns: &Columns,
    state: &State,
    lens: &Lens,
    block: usize,
    view: &View,
) -> Option<[Corner; 4]> {
    let photo = &state.photos[block];
    let world_from_carrier = state.carriers[view.carrier]?;
    let profile = problem.cameras[problem.photos[columns.photos[block]].camera];
    let per_photo = &profile.per_photo;
    let camera_from_carrier = photo.camera_from_world * world_from_carrier;
    let (by_world, by_body) = (photo.camera_from_world.matrix(), camera_from_carrier.matrix());
    let side_px = view.side_px();
    let offset_px = state.edge_of_px(columns, block, side_px);
    let outward = view.outward();
    let points = state.corners_mm(problem, columns, view);
    let one = |i: usize| -> Option<Corner> {
        let (point, arm) = points[i];
        // Found corners say when they were read well enough: what they err by is no part of a row's time.
        let moment = profile.moment(&view.corners_px[i]);
        let turned = state.turned(columns, block, moment);
        let seen = turned * camera_from_carrier.point(&point).coords;
        let p = lens.project(&seen)?;
        let d_point = p.d_point * turned.to_rotation_matrix().into_inner();
        let world = world_from_carrier.point(&point).coords;
        let mut by_photo = SMatrix::<f64, 2, PHOTO>::zeros();
        let by_world_point = d_point * by_world;
        by_photo.fixed_view_mut::<2, 3>(0, 0).copy_from(&by_world_point);
        by_photo.fixed_view_mut::<2, 3>(0, 3).copy_from(&(-by_world_point * world.cross_matrix()));
        let by_focal = Vector2::new(p.pixel.x - lens.centre_px[0], p.pixel.y - lens.centre_px[1]);
        by_photo.set_column(6, &(by_focal * per_photo.u_focal_relative));
        by_photo[(0, 7)] = per_photo.u_centre_px;
        by_photo[(1, 8)] = per_photo.u_centre_px;
        by_photo.set_column(9, &(outward[i] * columns.u_edge_px[block]));
        by_photo.set_column(10, &(outward[i] * (columns.u_edge_by_size_px[block] * EDGE_SIDE_PX / side_px)));
        let by_turn = -p.d_point * seen.cross_matrix() * (columns.u_turn_rad[block] * moment);
        by_photo.fixed_view_mut::<2, 3>(0, PHOTO - NUISANCE + TURN).copy_from(&by_turn);
        let by_point = d_point * by_body;
        let mut by_carrier = SMatrix::<f64, 2, 6>::zeros();
        by_carrier.fixed_view_mut::<2, 3>(0, 0).copy_from(&by_point);
        by_carrier.fixed_view_mut::<2, 3>(0, 3).copy_from(&(-by_point * point.coords.cross_matrix()));
        Some(Corner {
            pixel: p.pixel + outward[i] * offset_px,
            by_photo,
            by_carrier,
            by_point,
            by_lens: p.d_lens,
            arm,
            by_focal,
        })
    };
    Some([one(0)?, one(1)?, one(2)?, one(3)?])
}

/// Lower Cholesky factor of the valid corners' covariance.
fn noise(view: &View, valid: &[usize]) -> Option<DMatrix<f64>> {
    let index: Vec<usize> = valid.iter().flat_map(|i| [2 * i, 2 * i + 1]).collect();
    let n = index.len();
    if n == 0 {
        return Some(DMatrix::zeros(0, 0));
    }
    let covariance = DMatrix::from_fn(n, n, |r, c| {
        let value = view.covariance_px2[(index[r], index[c])];
        if r == c { value + LEAST_U_PX * LEAST_U_PX } else { value }
    });
    Some(covariance.cholesky()?.unpack())
}

/// Brings rows to unit variance and no correlation: `L^-1 rows`.
fn whiten(factor: &DMatrix<f64>, rows: &mut DMatrix<f64>) {
    let n = factor.nrows();
    if n == 0 {
        return;
    }
    let factor = factor.as_slice();
    for column in rows.as_mut_slice().chunks_exact_mut(n) {
        // All four corners nearly always take part: loops of known length are several times as fast.
        match (<&[f64; 64]>::try_from(factor), <&mut [f64; 8]>::try_from(&mut *column)) {
            (Ok(factor), Ok(column)) => substitute(8, factor, column),
            _ => substitute(n, factor, column),
        }
    }
}

#[inline(always)]
fn substitute(n: usize, factor: &[f64], column: &mut [f64]) {
    for j in 0..n {
        let solved = column[j] / factor[j * n + j];
        column[j] = solved;
        for i in j + 1..n {
            column[i] -= solved * factor[j * n + i];
        }
    }
}

/// Keeps a covariance invertible; far below any detector's noise, px.
const LEAST_U_PX: f64 = 1e-4;
