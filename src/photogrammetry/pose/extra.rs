//! Unknowns that an adjustment does not have and a bay may: what each would do
//! to every corner.

use nalgebra::{DMatrix, DVector, Vector3};

use super::residual::Equations;
use super::scene::Owner;
use crate::camera::{LensModel, Profile};

/// An unknown that the adjustment did not have.
#[derive(Debug, Clone, PartialEq)]
pub enum Extra {
    /// A carrier stood elsewhere in some photos: its step there, x y z mm, about x y z rad, own axes.
    CarrierMoved {
        /// Index in the kit.
        carrier: usize,
        /// Indices in the problem.
        photos: Vec<usize>,
    },
    /// Several carriers moved together along one direction in some photos, mm;
    /// the wheels among them may have turned about their own y axis by one angle, rad.
    GroupRolled {
        /// Indices in the kit.
        carriers: Vec<usize>,
        /// Those of them that turn.
        wheels: Vec<usize>,
        /// Unit vector in the world frame.
        along: [f64; 3],
        /// Indices in the problem.
        photos: Vec<usize>,
    },
    /// Several carriers moved together over the floor in some photos: x and y mm in the world frame, about its z rad
    /// through `centre_mm`; the wheels among them may have turned about their own y axis by one angle, rad.
    GroupMoved {
        /// Indices in the kit.
        carriers: Vec<usize>,
        /// Those of them that turn.
        wheels: Vec<usize>,
        /// A point amid them in the world frame, mm.
        centre_mm: [f64; 3],
        /// Indices in the problem.
        photos: Vec<usize>,
    },
    /// All markers of some carriers have another size: relative.
    Scale {
        /// Indices in the kit; all that are seen: one factor on all prints.
        carriers: Vec<usize>,
    },
    /// Some photos have another focal length than their priors allow, all by one factor: relative.
    Focal {
        /// Indices in the problem.
        photos: Vec<usize>,
    },
    /// The photos were taken through another lens: fu fv cu cv relative to the
    /// focal length, then the model's coefficients.
    Lens {
        /// Indices in the problem.
        photos: Vec<usize>,
    },
    /// The photos were turned by half a turn before they were saved: the share of that which they show, 1 where they were.
    HalfTurned {
        /// Indices in the problem.
        photos: Vec<usize>,
        /// What it does to the lens, as of [`Extra::Lens`].
        change: [f64; LENS],
    },
    /// Some floor sheets do not lie in the plane of the others: z mm, about x and y rad;
    /// of one sheet in its own frame, of several in the world's about `centre_mm`.
    OffFloor {
        /// Indices in the kit.
        carriers: Vec<usize>,
        /// A point amid them in the world frame, mm.
        centre_mm: [f64; 3],
    },
    /// A marker sits elsewhere on its carrier than the kit has it, in all photos: x y z mm, the carrier's axes.
    Displaced {
        /// Index of its carrier in the kit.
        carrier: usize,
        /// Its code.
        id: u32,
    },
    /// One marker's corners were found wrong in one photo, each on its own: px, two for each that was used.
    MarkerOff {
        /// Index of its carrier in the kit.
        carrier: usize,
        /// Its code.
        id: u32,
        /// Index in the problem.
        photo: usize,
    },
}

/// Number of unknowns of a lens.
const LENS: usize = 9;

impl Extra {
    /// Photos of one camera that were turned by half a turn before they were saved.
    pub fn half_turned(photos: Vec<usize>, camera: &Profile) -> Extra {
        let mut change = [0.0; LENS];
        let size_px = camera.image_size_px.map(f64::from);
        for i in 0..2 {
            // The principal point goes to the other side of the middle.
            change[2 + i] = (size_px[i] - 1.0 - 2.0 * camera.lens.centre_px[i]) / camera.lens.focal_px[0];
        }
        if camera.lens.model == LensModel::BrownConrady {
            // Of the coefficients only the decentring ones know which way is up.
            for i in [2, 3] {
                change[4 + i] = -2.0 * camera.lens.distortion[i];
            }
        }
        Extra::HalfTurned { photos, change }
    }

    /// Number of unknowns.
    pub(super) fn count(&self) -> usize {
        match self {
            Extra::CarrierMoved { .. } => 6,
            Extra::GroupRolled { .. } => 2,
            Extra::GroupMoved { .. } => 4,
            Extra::Scale { .. } | Extra::Focal { .. } | Extra::HalfTurned { .. } => 1,
            Extra::Lens { .. } => LENS,
            Extra::OffFloor { .. } | Extra::Displaced { .. } => 3,
            Extra::MarkerOff { .. } => 8,
        }
    }

    /// Whitened derivatives of one view's corners by the unknowns; `None`
    /// where they have no influence on it.
    pub(super) fn columns(&self, e: &Equations, owner: Owner) -> Option<DMatrix<f64>> {
        let Owner { carrier, photo, .. } = owner;
        let whitened = |columns: &DMatrix<f64>| Some(e.whitened(columns));
        match self {
            Extra::CarrierMoved { carrier: k, photos } => {
                if *k == carrier && photos.contains(&photo) {
                    whitened(&e.by_carrier_px)
                } else {
                    None
                }
            }
            Extra::GroupRolled { carriers, wheels, along, photos } => {
                if !carriers.contains(&carrier) || !photos.contains(&photo) {
                    return None;
                }
                let mut columns = DMatrix::zeros(e.residual.len(), 2);
                // A step of the world before a photo is the same as one of the bodies in it.
                columns.set_column(0, &(e.by_photo.columns(0, 3) * Vector3::from(*along)));
                if wheels.contains(&carrier) {
                    columns.set_column(1, &e.whitened(&e.by_carrier_px).column(4));
                }
                Some(columns)
            }
            Extra::GroupMoved { carriers, wheels, centre_mm, photos } => {
                if !carriers.contains(&carrier) || !photos.contains(&photo) {
                    return None;
                }
                let mut columns = DMatrix::zeros(e.residual.len(), 4);
                let step = e.by_photo.columns(0, 2);
                columns.columns_mut(0, 2).copy_from(&step);
                columns.set_column(2, &turn_about(e, Vector3::z(), centre_mm));
                if wheels.contains(&carrier) {
                    columns.set_column(3, &e.whitened(&e.by_carrier_px).column(4));
                }
                Some(columns)
            }
            Extra::Scale { carriers } if carriers.contains(&carrier) => whitened(&one(&e.by_size_px)),
            Extra::Focal { photos } if photos.contains(&photo) => whitened(&one(&e.by_focal_px)),
            Extra::Lens { photos } if photos.contains(&photo) => whitened(&e.by_lens_px),
            Extra::HalfTurned { photos, change } if photos.contains(&photo) => {
                whitened(&one(&(&e.by_lens_px * DVector::from_column_slice(change))))
            }
            Extra::OffFloor { carriers, centre_mm } if carriers.contains(&carrier) => match carriers.len() {
                1 => whitened(&e.by_carrier_px.columns(2, 3).into_owned()),
                _ => Some(about(e, centre_mm)),
            },
            Extra::Displaced { id, .. } if *id == owner.id => whitened(&e.by_carrier_px.columns(0, 3).into_owned()),
            Extra::MarkerOff { id, photo: j, .. } if *id == owner.id && *j == photo => {
                let rows = e.residual.len();
                whitened(&DMatrix::from_fn(rows, 8, |r, c| f64::from(u8::from(r == c))))
            }
            _ => None,
        }
    }
}

fn one(column: &DVector<f64>) -> DMatrix<f64> {
    DMatrix::from_column_slice(column.len(), 1, column.as_slice())
}

/// Height and tilt of a group in the world frame about a point of it.
fn about(e: &Equations, centre_mm: &[f64; 3]) -> DMatrix<f64> {
    let mut columns = DMatrix::zeros(e.residual.len(), 3);
    columns.set_column(0, &e.by_photo.column(2));
    columns.set_column(1, &turn_about(e, Vector3::x(), centre_mm));
    columns.set_column(2, &turn_about(e, Vector3::y(), centre_mm));
    columns
}

/// A turn about a point is one about the origin less what it does to the point.
fn turn_about(e: &Equations, axis: Vector3<f64>, centre_mm: &[f64; 3]) -> DVector<f64> {
    let (step, turn) = (e.by_photo.columns(0, 3), e.by_photo.columns(3, 3));
    turn * axis - step * axis.cross(&Vector3::from(*centre_mm))
}
