//! What one element of the board in one photo contributes to the equations.

use nalgebra::{DMatrix, DVector, SMatrix, Vector2};

use super::seen::{BoardPhoto, Seen};
use super::state::{CENTRE, EDGE, FLEX, FOCAL, PHOTO, PhotoState, Spread, State, TURN};
use super::target::{MOVES, OWN, Target};
use crate::camera::{Lens, moment_of_read_out};
use crate::pose::EDGE_SIDE_PX;

/// Linearised, whitened equations of one element.
pub(super) struct Equations {
    pub(super) by_photo: DMatrix<f64>,
    /// By the shared unknowns that move every element (the lens's parameters,
    /// then the board's stretches and bends), then by the element's own.
    pub(super) by_shared: DMatrix<f64>,
    /// Where the element's own [`OWN`] stand among the shared unknowns.
    pub(super) own: usize,
    /// Found minus predicted, whitened.
    pub(super) residual: DVector<f64>,
}

/// Found minus predicted, px. `None` out of the lens's sight.
pub(super) fn residual_px(
    target: &Target,
    photo: &BoardPhoto,
    seen: &Seen,
    state: &State,
    own: &PhotoState,
    lens: &Lens,
) -> Option<DVector<f64>> {
    let edge_px = edge_px(photo, seen, own);
    let mut residual = DVector::zeros(2 * seen.points.len());
    for (row, &point) in seen.points.iter().enumerate() {
        let on_board = target.place_in(seen.spot, point, &state.shape, &own.flex_mm);
        let moment = moment_of_read_out(photo.size_px, &seen.found_px[row]);
        let pixel = lens.project(&own.point(&on_board, moment))?.pixel;
        let miss = seen.found_px[row] - pixel - seen.outward[row] * edge_px;
        residual.rows_mut(2 * row, 2).copy_from(&miss);
    }
    Some(residual)
}

fn edge_px(photo: &BoardPhoto, seen: &Seen, own: &PhotoState) -> f64 {
    photo.u_edge_offset_px * own.edge[0] + photo.u_edge_by_size_px * own.edge[1] * EDGE_SIDE_PX / seen.side_px
}

/// `None` where the state puts a point out of the lens's sight.
pub(super) fn equations(
    target: &Target,
    photo: &BoardPhoto,
    seen: &Seen,
    state: &State,
    own: &PhotoState,
    spread: &Spread,
) -> Option<Equations> {
    let lens = own.lens(&state.lens);
    let p = lens.model.parameters();
    let m = 2 * seen.points.len();
    let edge_px = edge_px(photo, seen, own);
    let rotation = own.camera_from_board.matrix();
    let mut by_photo = DMatrix::zeros(m, PHOTO);
    let mut by_shared = DMatrix::zeros(m, p + MOVES);
    let mut residual = DVector::zeros(m);
    for (row, &point) in seen.points.iter().enumerate() {
        let at = 2 * row;
        let on_board = target.place_in(seen.spot, point, &state.shape, &own.flex_mm);
        let moment = moment_of_read_out(photo.size_px, &seen.found_px[row]);
        let in_camera = own.point(&on_board, moment);
        let projection = lens.project(&in_camera)?;
        let outward = seen.outward[row];
        residual.rows_mut(at, 2).copy_from(&(seen.found_px[row] - projection.pixel - outward * edge_px));
        // Turns during the read-out are far below a degree: what they do to the other derivatives is left out.
        let by_point = projection.d_point * rotation;
        let mut own_columns = SMatrix::<f64, 2, PHOTO>::zeros();
        own_columns.fixed_view_mut::<2, 3>(0, 0).copy_from(&by_point);
        own_columns.fixed_view_mut::<2, 3>(0, 3).copy_from(&(-by_point * on_board.coords.cross_matrix()));
        let from_centre = projection.pixel - Vector2::from(lens.centre_px);
        own_columns.set_column(FOCAL, &(from_centre * (spread.focal_relative / (1.0 + own.focal_relative))));
        own_columns[(0, CENTRE)] = spread.centre_px;
        own_columns[(1, CENTRE + 1)] = spread.centre_px;
        own_columns.set_column(EDGE, &(outward * photo.u_edge_offset_px));
        own_columns.set_column(EDGE + 1, &(outward * (photo.u_edge_by_size_px * EDGE_SIDE_PX / seen.side_px)));
        let by_turn = -projection.d_point * in_camera.cross_matrix() * (moment * spread.turn_rad);
        own_columns.fixed_view_mut::<2, 3>(0, TURN).copy_from(&by_turn);
        for (i, way) in target.flexes(&target.spots[seen.spot].points_mm[point]).iter().enumerate() {
            own_columns.set_column(FLEX + i, &(by_point * way * spread.flex_mm));
        }
        by_photo.view_mut((at, 0), (2, PHOTO)).copy_from(&own_columns);
        let mut by_lens = projection.d_lens;
        for axis in 0..2 {
            by_lens[(axis, axis)] *= 1.0 + own.focal_relative;
        }
        by_shared.view_mut((at, 0), (2, p)).copy_from(&by_lens.columns(0, p));
        for (i, way) in target.moves(&target.spots[seen.spot].points_mm[point]).iter().enumerate() {
            by_shared.view_mut((at, p + i), (2, 1)).copy_from(&(by_point * way));
        }
    }
    let own = p + target.columns(seen.spot)[MOVES - OWN];
    let w = &seen.whitener;
    Some(Equations { by_photo: w * by_photo, by_shared: w * by_shared, own, residual: w * residual })
}
