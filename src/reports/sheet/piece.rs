//! What is cut out of one paper and glued on in one go: markers of one carrier in
//! one plane, upright alike and near enough to share a sheet. Printed together, they
//! stand to each other as exactly as the printer prints.

use nalgebra::Vector3;

use crate::marker::{Carrier, Dictionary, Marker};
use crate::words::{Figure, phrase};

use super::code::CELLS;
use super::paper::{Paper, UNPRINTABLE_MM};
use super::{Error, words};

/// Height of the label strip below the white margin, mm.
pub(super) const STRIP_MM: f64 = 8.0;
/// Height for the page's heading, mm.
pub(super) const HEAD_MM: f64 = 16.0;
/// Height for the horizontal ruler and the footer, mm.
pub(super) const FOOT_MM: f64 = 22.0;
/// Width for a vertical ruler beside the piece, mm.
pub(super) const SIDE_MM: f64 = 13.0;
/// Room for crop marks on each side, mm.
pub(super) const CROP_MM: f64 = 4.0;
/// Planes and directions that differ less are the same (mm; directions are unit vectors).
const SAME: f64 = 1e-6;

/// Where the vertical ruler goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum RulerPlace {
    /// Beside the piece, full length.
    Beside,
    /// Below the piece, shorter: the piece is as wide as the paper.
    Below,
}

/// One sheet's markers.
#[derive(Debug, Clone)]
pub(super) struct Piece<'a> {
    pub(super) markers: Vec<&'a Marker>,
    /// Middle of the markers' margin box in the carrier's frame, mm.
    pub(super) centre_mm: Vector3<f64>,
    /// Each marker's centre from there along right and up, mm.
    pub(super) offsets_mm: Vec<[f64; 2]>,
    /// Width and height of the markers with their white margin (one cell), without the strip, mm.
    pub(super) size_mm: [f64; 2],
    pub(super) ruler: RulerPlace,
}

impl<'a> Piece<'a> {
    fn new(markers: Vec<&'a Marker>) -> Self {
        let first = markers[0];
        let mut low = [f64::INFINITY; 2];
        let mut high = [f64::NEG_INFINITY; 2];
        let flat: Vec<[f64; 2]> = markers.iter().map(|m| on_face(first, m.centre_mm - first.centre_mm)).collect();
        for (marker, at) in markers.iter().zip(&flat) {
            for axis in 0..2 {
                let reach = marker.size_mm[axis] * (0.5 + 1.0 / CELLS as f64);
                low[axis] = low[axis].min(at[axis] - reach);
                high[axis] = high[axis].max(at[axis] + reach);
            }
        }
        let middle = [0.5 * (low[0] + high[0]), 0.5 * (low[1] + high[1])];
        Piece {
            centre_mm: first.centre_mm + first.right * middle[0] + first.up * middle[1],
            offsets_mm: flat.iter().map(|at| [at[0] - middle[0], at[1] - middle[1]]).collect(),
            size_mm: [high[0] - low[0], high[1] - low[1]],
            ruler: RulerPlace::Beside,
            markers,
        }
    }

    /// Width and height of what is cut out, mm.
    pub(super) fn cut_mm(&self) -> [f64; 2] {
        [self.size_mm[0], self.size_mm[1] + STRIP_MM]
    }

    pub(super) fn first(&self) -> &'a Marker {
        self.markers[0]
    }

    fn placed(mut self, paper: Paper) -> Option<Self> {
        let ruler = [RulerPlace::Beside, RulerPlace::Below]
            .into_iter()
            .find(|&place| (0..2).all(|axis| self.cut_mm()[axis] <= room_mm(paper, place)[axis] + SAME))?;
        self.ruler = ruler;
        Some(self)
    }

    fn accepts(&self, marker: &Marker) -> bool {
        let first = self.first();
        let apart = marker.centre_mm - first.centre_mm;
        (marker.right - first.right).norm() < SAME
            && (marker.up - first.up).norm() < SAME
            && apart.dot(&first.normal()).abs() < SAME
    }
}

/// A vector's components along a marker's right and up.
pub(super) fn on_face(marker: &Marker, vector: Vector3<f64>) -> [f64; 2] {
    [vector.dot(&marker.right), vector.dot(&marker.up)]
}

/// Width and height for what is cut out, mm.
pub(super) fn room_mm(paper: Paper, place: RulerPlace) -> [f64; 2] {
    let [width, height] = paper.size_mm();
    let [printable_width, printable_height] = [width - 2.0 * UNPRINTABLE_MM, height - 2.0 * UNPRINTABLE_MM];
    match place {
        RulerPlace::Beside => {
            [printable_width - SIDE_MM - 2.0 * CROP_MM, printable_height - HEAD_MM - FOOT_MM - 2.0 * CROP_MM]
        }
        RulerPlace::Below => {
            let ruler = super::ruler::SHORT_RULER_MM;
            [printable_width, printable_height - HEAD_MM - ruler - CROP_MM]
        }
    }
}

/// The pieces of a carrier on a paper, in the file's order.
pub(super) fn pieces(carrier: &Carrier, paper: Paper) -> Result<Vec<Piece<'_>>, Error> {
    let mut pieces: Vec<Piece<'_>> = Vec::new();
    for marker in &carrier.markers {
        check(marker)?;
        let joined = pieces.last().filter(|piece| piece.accepts(marker)).and_then(|piece| {
            let together = Piece::new(piece.markers.iter().copied().chain([marker]).collect());
            together.placed(paper).filter(|piece| piece.ruler == RulerPlace::Beside)
        });
        if let Some(piece) = joined {
            pieces.pop();
            pieces.push(piece);
        } else {
            let alone = Piece::new(vec![marker]);
            let needs_mm = alone.cut_mm();
            pieces.push(alone.placed(paper).ok_or_else(|| too_large(carrier, marker, needs_mm, paper))?);
        }
    }
    Ok(pieces)
}

fn check(marker: &Marker) -> Result<(), Error> {
    let dictionary = Dictionary::tag36h11();
    if marker.id as usize >= dictionary.len() {
        return Err(Error::UnknownMarker { id: marker.id, family: dictionary.name(), last: dictionary.len() - 1 });
    }
    match marker.size_mm.into_iter().find(|size| !(size.is_finite() && *size > 0.0)) {
        Some(value) => Err(Error::BadSize { what: phrase!("print-the-marker", id = marker.id), value }),
        None => Ok(()),
    }
}

fn too_large(carrier: &Carrier, marker: &Marker, needs_mm: [f64; 2], paper: Paper) -> Error {
    let fits = |paper: Paper| {
        let room = room_mm(paper, RulerPlace::Below);
        (0..2).all(|axis| needs_mm[axis] <= room[axis] + SAME)
    };
    let offers_mm = room_mm(paper, RulerPlace::Below);
    let largest = (offers_mm[0].min(offers_mm[1] - STRIP_MM) / (1.0 + 2.0 / CELLS as f64)).floor();
    let size = Figure::plain(largest);
    let remedy = match words::larger_paper(paper, fits) {
        Some(paper) => phrase!("print-larger-paper-or-marker", paper = paper, size = size),
        None => phrase!("print-smaller-marker", size = size),
    };
    Error::MarkerTooLarge { id: marker.id, carrier: carrier.name.clone(), needs_mm, offers_mm, paper, remedy }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::marker::Role;

    fn marker(id: u32, y: f64, z: f64, size: f64) -> Marker {
        Marker {
            id,
            size_mm: [size; 2],
            centre_mm: Vector3::new(100.0, y, z),
            right: Vector3::y(),
            up: Vector3::z(),
            u_centre_mm: None,
            u_turn_deg: None,
            u_size_mm: None,
        }
    }

    fn carrier(markers: Vec<Marker>) -> Carrier {
        Carrier {
            name: "plate".into(),
            role: Role::RearLeftWheel,
            u_seating_mm: 0.5,
            u_seating_deg: [0.1; 3],
            on_centreline: false,
            markers,
        }
    }

    #[test]
    fn neighbours_in_one_plane_share_a_sheet() {
        let carrier =
            carrier(vec![marker(1, 150.0, 60.0, 80.0), marker(2, 150.0, -60.0, 80.0), marker(3, 0.0, 0.0, 80.0)]);
        let found = pieces(&carrier, Paper::A4).unwrap();
        assert_eq!(found.iter().map(|p| p.markers.len()).collect::<Vec<_>>(), [2, 1]);
        assert!((found[0].centre_mm - Vector3::new(100.0, 150.0, 0.0)).norm() < 1e-12);
        assert!((found[0].offsets_mm[0][1] - 60.0).abs() < 1e-12 && (found[0].offsets_mm[1][1] + 60.0).abs() < 1e-12);
        assert!((found[0].size_mm[0] - 100.0).abs() < 1e-12 && (found[0].size_mm[1] - 220.0).abs() < 1e-12);
    }

    #[test]
    fn another_plane_or_turn_needs_its_own_sheet() {
        let mut turned = marker(2, 150.0, -60.0, 80.0);
        (turned.right, turned.up) = (Vector3::z(), -Vector3::y());
        let mut behind = marker(3, 150.0, -60.0, 80.0);
        behind.centre_mm.x = 99.0;
        let carrier = carrier(vec![marker(1, 150.0, 60.0, 80.0), turned, behind]);
        assert_eq!(pieces(&carrier, Paper::A3).unwrap().len(), 3);
    }

    #[test]
    fn a_wide_marker_moves_the_ruler_below_and_a_wider_one_is_refused_with_the_remedy() {
        let wide = carrier(vec![marker(1, 0.0, 0.0, 160.0)]);
        assert_eq!(pieces(&wide, Paper::A4).unwrap()[0].ruler, RulerPlace::Below);
        let too_wide = carrier(vec![marker(7, 0.0, 0.0, 180.0)]);
        let error = pieces(&too_wide, Paper::A4).unwrap_err().to_string();
        for part in ["marker 7 of plate", "a4", "--paper a3", "160"] {
            assert!(error.contains(part), "{part}: {error}");
        }
        let hopeless = carrier(vec![marker(7, 0.0, 0.0, 400.0)]);
        let error = pieces(&hopeless, Paper::A3).unwrap_err().to_string();
        assert!(!error.contains("--paper") && error.contains("size_mm of 230"), "{error}");
    }

    #[test]
    fn sizes_that_are_none_are_refused() {
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(matches!(pieces(&carrier(vec![marker(1, 0.0, 0.0, bad)]), Paper::A4), Err(Error::BadSize { .. })));
        }
    }
}
