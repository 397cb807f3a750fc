//! From what the check rulers read to the sizes that were printed.

use crate::marker::{Board, BoardKind, Kit};

use super::paper::Paper;
use super::piece::pieces;
use super::{Error, RULER_MM};

/// A reading further off is a misreading; scaling to fit a page stays within it.
const LIMIT: f64 = 0.1;

/// What the two check rulers of 160 mm read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RulerReading {
    scale: [f64; 2],
}

impl RulerReading {
    /// From the readings along right and up, mm.
    ///
    /// # Errors
    /// A reading that is more than a tenth off.
    pub fn new(right_mm: f64, up_mm: f64) -> Result<Self, Error> {
        let scale = [right_mm / RULER_MM, up_mm / RULER_MM];
        for (axis, direction) in ["right", "up"].into_iter().enumerate() {
            if !((1.0 - LIMIT)..=(1.0 + LIMIT)).contains(&scale[axis]) {
                return Err(Error::Reading {
                    direction,
                    read_mm: [right_mm, up_mm][axis],
                    nominal_mm: RULER_MM,
                    limit_percent: 100.0 * LIMIT,
                });
            }
        }
        Ok(RulerReading { scale })
    }

    /// Printed over true size along right and up.
    pub fn scale(&self) -> [f64; 2] {
        self.scale
    }
}

/// The kit as it was printed on `paper`: sizes along right and up, and the places of markers
/// that share a sheet about its centre. The sheets' centres stay where the drawings put
/// them, since each sheet is glued by its centre.
///
/// # Errors
/// As for printing the kit.
pub fn corrected_kit(kit: &Kit, paper: Paper, reading: &RulerReading) -> Result<Kit, Error> {
    let mut corrected = kit.clone();
    for (carrier, before) in corrected.carriers.iter_mut().zip(&kit.carriers) {
        for piece in pieces(before, paper)? {
            for (marker, offset) in piece.markers.iter().zip(&piece.offsets_mm) {
                let [right, up] = [0, 1].map(|axis| offset[axis] * reading.scale[axis]);
                let Some(changed) = carrier.markers.iter_mut().find(|m| m.id == marker.id) else { continue };
                changed.centre_mm = piece.centre_mm + marker.right * right + marker.up * up;
                changed.size_mm = [0, 1].map(|axis| marker.size_mm[axis] * reading.scale[axis]);
            }
        }
    }
    Ok(corrected)
}

/// The board as it was printed: both lengths with the mean scale; half the difference
/// between the directions, which a board can't state, goes into the scale's uncertainty.
pub fn corrected_board(board: &Board, reading: &RulerReading) -> Board {
    let [right, up] = reading.scale;
    let mean = 0.5 * (right + up);
    let kind = match board.kind.clone() {
        BoardKind::Markers { columns, rows, first_id, size_mm, gap_mm } => {
            BoardKind::Markers { columns, rows, first_id, size_mm: size_mm * mean, gap_mm: gap_mm * mean }
        }
        BoardKind::Chessboard { inner_corners, square_mm } => {
            BoardKind::Chessboard { inner_corners, square_mm: square_mm * mean }
        }
    };
    Board { kind, u_scale_relative: board.u_scale_relative.hypot(0.5 * (right - up).abs() / mean) }
}

#[cfg(test)]
mod tests {
    use nalgebra::Vector3;

    use super::*;
    use crate::marker::{Carrier, Marker, Role};

    fn kit() -> Kit {
        let marker = |id, z| Marker {
            id,
            size_mm: [100.0, 100.0],
            centre_mm: Vector3::new(-40.0, 60.0, z),
            right: -Vector3::x(),
            up: Vector3::z(),
            u_centre_mm: None,
            u_turn_deg: None,
            u_size_mm: None,
        };
        let carrier = Carrier {
            name: "rear-left".into(),
            role: Role::RearLeftWheel,
            u_seating_mm: 0.5,
            u_seating_deg: [0.1; 3],
            on_centreline: false,
            markers: vec![marker(1, 80.0), marker(2, -60.0)],
        };
        Kit {
            name: "kit".into(),
            u_layout_mm: 0.3,
            u_turn_deg: 0.03,
            u_scale_relative: 0.0005,
            u_aspect_relative: 0.002,
            serial: None,
            survey_due: None,
            carriers: vec![carrier],
            layout: None,
        }
    }

    #[test]
    fn sizes_follow_their_direction_and_a_shared_sheet_keeps_its_centre() {
        let reading = RulerReading::new(159.2, 160.8).unwrap();
        let corrected = corrected_kit(&kit(), Paper::A3, &reading).unwrap();
        let [first, second] = &corrected.carriers[0].markers[..] else { panic!("two markers") };
        assert!((first.size_mm[0] - 99.5).abs() < 1e-9 && (first.size_mm[1] - 100.5).abs() < 1e-9);
        // Sheet centre at z = 10; 70 mm up and down become 70.35 mm.
        assert!((first.centre_mm - Vector3::new(-40.0, 60.0, 80.35)).norm() < 1e-9);
        assert!((second.centre_mm - Vector3::new(-40.0, 60.0, -60.35)).norm() < 1e-9);
    }

    #[test]
    fn a_sheet_alone_keeps_its_place() {
        let mut apart = kit();
        apart.carriers[0].markers[1].centre_mm.y = 61.0;
        let reading = RulerReading::new(155.2, 155.2).unwrap();
        let corrected = corrected_kit(&apart, Paper::A4, &reading).unwrap();
        assert_eq!(corrected.carriers[0].markers[0].centre_mm, apart.carriers[0].markers[0].centre_mm);
        assert!((corrected.carriers[0].markers[0].size_mm[0] - 97.0).abs() < 1e-9);
    }

    #[test]
    fn readings_that_can_not_be_are_refused() {
        for bad in [16.0, 0.0, -160.0, f64::NAN, f64::INFINITY, 180.0] {
            let error = RulerReading::new(160.0, bad).unwrap_err().to_string();
            assert!(error.contains("upright ruler") && error.contains("100 %"), "{error}");
        }
    }

    #[test]
    fn a_board_takes_the_mean_and_owns_up_to_the_difference() {
        let kind = BoardKind::Chessboard { inner_corners: [9, 6], square_mm: 25.0 };
        let board = Board { kind, u_scale_relative: 0.0 };
        let corrected = corrected_board(&board, &RulerReading::new(159.84, 160.16).unwrap());
        assert_eq!(corrected.kind, board.kind);
        assert!((corrected.u_scale_relative - 0.001).abs() < 1e-9);
    }
}
