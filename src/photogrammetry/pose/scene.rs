//! The answer: poses with their joint covariance, by source.

use std::collections::BTreeSet;

use nalgebra::{DMatrix, Vector2};

use super::inverse::Inverse;
use super::prints;
use super::source::Source;
use super::unknowns::{NUISANCE, PHOTO};
use super::work::{Linearized, Work};
use crate::camera::Lens;
use crate::geom::{Camera, Carrier, Pose, World};

/// One photo after the adjustment.
#[derive(Debug, Clone)]
pub struct SolvedPhoto {
    /// Its pose.
    pub camera_from_world: Pose<Camera, World>,
    /// Its lens: the camera's mean lens with this photo's changes.
    pub lens: Lens,
    /// Edge offset that was left in its corners, px (of a large marker).
    pub edge_offset_px: f64,
    /// Deviation of focal factor, principal point u, v, edge offset and its size
    /// dependence, and turn about x, y, z while rows were read from their priors, in standard uncertainties.
    pub nuisance: [f64; 8],
    /// How far the camera turned about its x, y and z from the first row to the last, rad.
    pub turn_rad: [f64; 3],
    /// How large such turns are taken to be, 1 sigma, in units of what the camera file states: what all photos of the job leave
    /// possible. `None` where nothing turns.
    pub turn_ratio: Option<f64>,
    /// In the order of the problem's views.
    pub views: Vec<SolvedView>,
    /// Root mean square residual per coordinate of the corners used, px.
    pub rms_px: f64,
}

/// One marker in one photo after the adjustment.
#[derive(Debug, Clone)]
pub struct SolvedView {
    /// Marker id.
    pub id: u32,
    /// Found minus reprojected, px.
    pub residual_px: [Vector2<f64>; 4],
    /// Which corners took part.
    pub used: [bool; 4],
    /// Edge offset of this marker, px.
    pub edge_offset_px: f64,
}

/// All poses of one job and their joint uncertainty.
#[derive(Debug, Clone)]
pub struct Scene {
    /// By photo of the problem; `None`: not linked to the others.
    pub photos: Vec<Option<SolvedPhoto>>,
    /// By carrier of the kit; `None`: not seen.
    pub carriers: Vec<Option<Pose<World, Carrier>>>,
    /// Carriers for which two poses fit equally well.
    pub ambiguous: Vec<bool>,
    /// Whether the floor sheets define the world's x-y plane.
    pub on_floor: bool,
    /// A-posteriori variance of unit weight of the image residuals.
    pub variance: f64,
    /// Its degrees of freedom.
    pub degrees_of_freedom: f64,
    /// Uncertainty of all carriers' steps ([`Pose::moved`], six rows each in
    /// the kit's order): the product with its transpose is their joint
    /// covariance, each column is one independent source of unit variance.
    pub factor: DMatrix<f64>,
    /// The source of each column.
    pub sources: Vec<Source>,
    /// Kept for further questions ([`super::Extra`]).
    pub(super) linear: std::sync::Arc<Solved>,
}

/// The settled equations.
#[derive(Debug)]
pub(super) struct Solved {
    pub(super) columns: super::columns::Columns,
    /// Values of all unknowns.
    pub(super) state: super::state::State,
    pub(super) equations: Vec<super::residual::Equations>,
    pub(super) normal: super::normal::Normal,
    /// Whose each equation is.
    pub(super) owners: Vec<Owner>,
}

/// Whose equation it is: a carrier's, of one marker's code, in a photo of the problem.
#[derive(Debug, Clone, Copy)]
pub(super) struct Owner {
    pub(super) carrier: usize,
    pub(super) marker: usize,
    pub(super) id: u32,
    pub(super) photo: usize,
}

impl Work<'_> {
    /// Ends the adjustment. `None` where the covariance does not exist.
    pub(super) fn into_scene(self, ambiguous: Vec<bool>) -> Option<Scene> {
        let linear = self.linearized()?;
        self.scene_of(linear, ambiguous)
    }

    /// Likewise, linearised there already.
    pub(super) fn scene_of(self, linear: Linearized, ambiguous: Vec<bool>) -> Option<Scene> {
        let (factor, sources) = self.factor(&linear);
        if !factor.iter().all(|x| x.is_finite()) {
            return None;
        }
        let mut photos = vec![None; self.problem.photos.len()];
        let mut owners = Vec::new();
        for (block, j) in self.columns.photos.iter().enumerate() {
            let own: Vec<_> = linear.equations.iter().filter(|e| e.block == block).collect();
            photos[*j] = Some(self.solved_photo(block, *j, &own));
            owners.extend(self.problem.photos[*j].views.iter().map(|v| Owner {
                carrier: v.carrier,
                marker: v.marker,
                id: v.id,
                photo: *j,
            }));
        }
        Some(Scene {
            photos,
            carriers: self.state.carriers.clone(),
            ambiguous,
            on_floor: self.flat,
            variance: self.variance,
            degrees_of_freedom: self.redundancy.max(0.0),
            factor,
            sources,
            linear: std::sync::Arc::new(Solved {
                columns: self.columns,
                state: self.state,
                equations: linear.equations,
                normal: linear.normal,
                owners,
            }),
        })
    }

    fn solved_photo(&self, block: usize, j: usize, equations: &[&super::residual::Equations]) -> SolvedPhoto {
        let (mut squares, mut count) = (0.0, 0);
        let views = self.problem.photos[j]
            .views
            .iter()
            .zip(equations)
            .map(|(view, e)| {
                for i in (0..4).filter(|i| view.valid[*i]) {
                    squares += e.residual_px[i].norm_squared();
                    count += 2;
                }
                let edge_offset_px = self.state.edge_of_px(&self.columns, block, view.side_px());
                SolvedView { id: view.id, residual_px: e.residual_px, used: view.valid, edge_offset_px }
            })
            .collect();
        let stated = self.problem.cameras[self.problem.photos[j].camera].read_out.u_turn_rad();
        SolvedPhoto {
            camera_from_world: self.state.photos[block].camera_from_world,
            lens: self.state.lens(&self.problem, &self.columns, block),
            edge_offset_px: self.state.edge_offset_px(&self.columns, block),
            nuisance: self.state.of_photo(&self.columns, block),
            turn_rad: self.state.turned(&self.columns, block, 1.0).scaled_axis().into(),
            turn_ratio: (stated > 0.0).then(|| self.columns.u_turn_rad[block] / stated),
            views,
            rms_px: if count > 0 { (squares / f64::from(count)).sqrt() } else { 0.0 },
        }
    }

    /// Each view's equations with what is printed there.
    fn printed<'a>(&'a self, linear: &'a Linearized) -> Vec<prints::Printed<'a>> {
        let views = self.columns.photos.iter().flat_map(|j| &self.problem.photos[*j].views);
        let printed = views.zip(&linear.equations).map(|(view, equations)| {
            let marker = &self.problem.kit.carriers[view.carrier].markers[view.marker];
            prints::Printed { equations, marker, view }
        });
        printed.collect()
    }

    /// Splits the carriers' covariance into independent columns: one for each
    /// prior, the rest is image noise.
    fn factor(&self, linear: &Linearized) -> (DMatrix<f64>, Vec<Source>) {
        let rows = 6 * self.state.carriers.len();
        // Columns of the inverse that belong to carriers.
        let free: Vec<(usize, usize)> = self
            .columns
            .carriers
            .iter()
            .enumerate()
            .flat_map(|(k, axes)| axes.iter().map(move |(axis, column)| (6 * k + axis, *column)))
            .collect();
        let unit = DMatrix::from_fn(self.columns.shared, free.len(), |r, c| f64::from(u8::from(free[c].1 == r)));
        let Inverse { shared, photos } = linear.normal.of_shared(&unit);
        let mut priors: Vec<(Source, nalgebra::DVector<f64>)> = Vec::new();
        for (source, column) in self.columns.sources.iter().zip(&self.columns.nuisance) {
            priors.push((*source, shared.row(*column).transpose()));
        }
        for (j, own) in self.columns.photos.iter().zip(&photos) {
            for (i, source) in Source::of_photo(*j).into_iter().enumerate() {
                priors.push((source, own.row(PHOTO - NUISANCE + i).transpose()));
            }
        }
        let mut image = DMatrix::from_fn(free.len(), free.len(), |r, c| shared[(free[r].1, c)]);
        for (_, column) in &priors {
            image -= column * column.transpose();
        }
        if let Some(prints) = prints::share(&self.printed(linear), (&shared, &photos), self.variance) {
            // What the prints made of the misfit is counted with them, not as noise that photos average out.
            image *= (self.variance - prints.variance).max(1.0) / self.variance;
            image += prints.covariance;
        }
        let image = super::columns::factor(&image);
        if let Some(besides) = self.of_unknown_tremor(linear, &photos) {
            // One size for all photos: counted with the first one's turn.
            let turn = Source::Turn(self.columns.photos[0]);
            priors.extend(besides.column_iter().map(|c| (turn, c.into_owned())));
        }
        let mut factor = DMatrix::zeros(rows, image.ncols() + priors.len());
        let mut sources = vec![Source::Image; image.ncols()];
        for (at, (row, _)) in free.iter().enumerate() {
            for c in 0..image.ncols() {
                factor[(*row, c)] = image[(at, c)];
            }
        }
        for (p, (source, column)) in priors.into_iter().enumerate() {
            sources.push(source);
            for (at, (row, _)) in free.iter().enumerate() {
                factor[(*row, image.ncols() + p)] = column[at];
            }
        }
        (factor, sources)
    }
}

impl Scene {
    /// Markers in a photo that fit worse than their noise has it: carrier, code and photo.
    pub fn odd_markers(&self) -> Vec<(usize, u32, usize)> {
        let of = self.linear.equations.iter().zip(&self.linear.owners);
        let odd = of.filter(|(e, _)| e.residual.norm_squared() > self.variance * e.residual.len() as f64);
        odd.map(|(_, o)| (o.carrier, o.id, o.photo)).collect()
    }

    /// Markers whose place on their carrier had to give way by more standard uncertainties than `least`: carrier and code.
    pub fn strained_markers(&self, least: f64) -> Vec<(usize, u32)> {
        let Solved { columns, state, owners, .. } = &*self.linear;
        let strained = |o: &&Owner| {
            let modes = columns.of_marker(o.carrier, o.marker).iter();
            let mut layout = modes.filter(|m| m.moves_place());
            layout.any(|mode| state.shared[mode.column].abs() > least)
        };
        let all: BTreeSet<(usize, u32)> = owners.iter().filter(strained).map(|o| (o.carrier, o.id)).collect();
        all.into_iter().collect()
    }

    /// How far the places of a carrier's markers had to give way: the sum of squares of its layout's unknowns, each in its
    /// standard uncertainties, and their number. Where the kit is right the sum is at most a chi-square of so many degrees of freedom.
    pub fn layout_strain(&self, carrier: usize) -> (f64, usize) {
        let Solved { columns, state, owners, .. } = &*self.linear;
        let own = owners.iter().filter(|o| o.carrier == carrier);
        let modes = own.flat_map(|o| columns.of_marker(o.carrier, o.marker));
        let layout: BTreeSet<usize> = modes.filter(|m| m.moves_place()).map(|m| m.column).collect();
        (layout.iter().map(|column| state.shared[*column].powi(2)).sum(), layout.len())
    }

    /// Whether a carrier has one trusted pose.
    pub fn knows(&self, carrier: usize) -> bool {
        self.carriers[carrier].is_some() && !self.ambiguous[carrier]
    }
}
