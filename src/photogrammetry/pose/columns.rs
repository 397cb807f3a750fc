//! Which unknown stands in which column of the equations.
//!
//! Every unknown with a prior is expressed in units of that prior's standard
//! uncertainty (a correlated prior through a factor of its covariance), so a
//! prior is always one equation `x = 0 +- 1` and a prior of zero uncertainty
//! needs no special case: its column is zero.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use nalgebra::{DMatrix, Vector3};

use super::order::Order;
use super::source::Source;
use super::unknowns::OF_STATION;
use super::views::{Problem, View};
use crate::camera::Profile;
use crate::geom::rad;
use crate::marker::{Marker, Role};

/// How one column deforms a marker, per unit of the unknown.
#[derive(Debug, Clone)]
pub(super) struct Mode {
    pub(super) column: usize,
    pub(super) centre_mm: Vector3<f64>,
    pub(super) turn_rad: Vector3<f64>,
    /// Relative change of size.
    pub(super) stretch: f64,
    /// Relative change of width over height.
    pub(super) aspect: f64,
}

impl Mode {
    /// Whether it moves the marker on its carrier.
    pub(super) fn moves_place(&self) -> bool {
        self.centre_mm != Vector3::zeros()
    }
}

/// A mode that does nothing yet, of a column.
fn mode(column: usize) -> Mode {
    Mode { column, centre_mm: Vector3::zeros(), turn_rad: Vector3::zeros(), stretch: 0.0, aspect: 0.0 }
}

/// What a relative change of width over height does to a corner, by its arm from the marker's centre.
pub(super) fn wider(marker: &Marker, arm: &Vector3<f64>) -> Vector3<f64> {
    (marker.right * marker.right.dot(arm) - marker.up * marker.up.dot(arm)) * 0.5
}

/// The calibration uncertainty of one camera as independent modes.
#[derive(Debug, Clone)]
pub(super) struct CameraModes {
    pub(super) start: usize,
    factor: DMatrix<f64>,
}

impl CameraModes {
    /// Lens parameters (9) by mode.
    pub(super) fn factor(&self) -> &DMatrix<f64> {
        &self.factor
    }

    pub(super) fn rank(&self) -> usize {
        self.factor.ncols()
    }
}

/// The columns of one problem.
#[derive(Debug, Clone)]
pub(super) struct Columns {
    /// Photos that take part, by index in the problem.
    pub(super) photos: Vec<usize>,
    /// 1 sigma of each taking photo's edge offset, px.
    pub(super) u_edge_px: Vec<f64>,
    /// 1 sigma of what comes on top for a marker of [`EDGE_SIDE_PX`], px.
    pub(super) u_edge_by_size_px: Vec<f64>,
    /// 1 sigma of each taking photo's turn about each axis from the first row to the last, rad.
    pub(super) u_turn_rad: Vec<f64>,
    /// By block the first of the columns that it has in common with the other photos of its station; `None` of a photo alone.
    pub(super) stations: Vec<Option<usize>>,
    /// By camera.
    pub(super) cameras: Vec<CameraModes>,
    /// By carrier: free axes of its step and their columns.
    pub(super) carriers: Vec<Vec<(usize, usize)>>,
    /// By carrier and marker.
    modes: Vec<Vec<Vec<Mode>>>,
    /// Shared columns that have a prior, ascending.
    pub(super) nuisance: Vec<usize>,
    /// The source of each of them.
    pub(super) sources: Vec<Source>,
    /// Number of shared columns.
    pub(super) shared: usize,
    /// The column of the common factor on all sizes.
    pub(super) common_scale: Option<usize>,
    /// Which unknowns are eliminated first.
    pub(super) order: Arc<Order>,
}

impl Columns {
    /// Lays out the unknowns. `placed` says which carriers have a pose,
    /// `flat` whether the floor sheets define the x-y plane. Without `stations`
    /// ([`super::station::stations`]): poses only, with everything that has a prior taken as stated.
    pub(super) fn new(
        problem: &Problem,
        photos: Vec<usize>,
        placed: &[bool],
        flat: bool,
        stations: Option<&[Option<usize>]>,
    ) -> Self {
        let full = stations.is_some();
        let mut columns = Columns {
            u_edge_px: photos.iter().map(|j| problem.photos[*j].u_edge_offset_px.max(LEAST_EDGE_PX)).collect(),
            u_edge_by_size_px: photos.iter().map(|j| problem.photos[*j].u_edge_by_size_px).collect(),
            u_turn_rad: photos
                .iter()
                .map(|j| if full { problem.cameras[problem.photos[*j].camera].read_out.u_turn_rad() } else { 0.0 })
                .collect(),
            stations: vec![None; photos.len()],
            photos,
            cameras: Vec::new(),
            carriers: Vec::new(),
            modes: problem.kit.carriers.iter().map(|c| vec![Vec::new(); c.markers.len()]).collect(),
            nuisance: Vec::new(),
            sources: Vec::new(),
            shared: 0,
            common_scale: None,
            order: Arc::default(),
        };
        columns.add_carriers(problem, placed, flat);
        for (i, profile) in problem.cameras.iter().enumerate() {
            let factor = if full { calibration_factor(profile) } else { DMatrix::zeros(9, 0) };
            let start = columns.shared;
            for _ in 0..factor.ncols() {
                columns.add_nuisance(Source::Calibration(i));
            }
            columns.cameras.push(CameraModes { start, factor });
        }
        if let Some(stations) = stations {
            columns.add_stations(stations);
            columns.add_layout(problem);
            columns.add_sizes(problem);
            columns.add_aspects(problem);
        }
        columns.order = Arc::new(Order::new(columns.photos.len(), &columns.of_one_marker(problem)));
        columns
    }

    /// All deformations of a view's marker.
    pub(super) fn modes(&self, view: &View) -> &[Mode] {
        self.of_marker(view.carrier, view.marker)
    }

    /// Likewise of a carrier's marker.
    pub(super) fn of_marker(&self, carrier: usize, marker: usize) -> &[Mode] {
        &self.modes[carrier][marker]
    }

    /// By column, the marker that it belongs to alone: a survey's modes and a common factor belong to several.
    fn of_one_marker(&self, problem: &Problem) -> Vec<Option<u32>> {
        let mut owners: Vec<BTreeSet<u32>> = vec![BTreeSet::new(); self.shared];
        for (carrier, of_carrier) in problem.kit.carriers.iter().zip(&self.modes) {
            for (marker, modes) in carrier.markers.iter().zip(of_carrier) {
                for mode in modes {
                    owners[mode.column].insert(marker.id);
                }
            }
        }
        owners.into_iter().map(|ids| if ids.len() == 1 { ids.into_iter().next() } else { None }).collect()
    }

    fn add_nuisance(&mut self, source: Source) -> usize {
        let column = self.shared;
        self.shared += 1;
        self.nuisance.push(column);
        self.sources.push(source);
        column
    }

    /// What all photos of a station have in common, as likely as what each has for itself.
    fn add_stations(&mut self, stations: &[Option<usize>]) {
        for (block, first) in stations.iter().enumerate() {
            self.stations[block] = match *first {
                Some(first) if first == block => {
                    let start = self.shared;
                    for source in &Source::of_photo(self.photos[block])[..OF_STATION] {
                        self.add_nuisance(*source);
                    }
                    Some(start)
                }
                first => first.and_then(|first| self.stations[first]),
            };
        }
    }

    fn add_carriers(&mut self, problem: &Problem, placed: &[bool], flat: bool) {
        // One body fixes the frame: the first floor sheet in the plane (its
        // height and tilt are the plane itself), else the first placed carrier.
        let is_flat = |k: usize| flat && problem.kit.carriers[k].role == Role::Floor;
        let fixed = (0..placed.len()).find(|k| placed[*k] && is_flat(*k)).or_else(|| placed.iter().position(|p| *p));
        for (k, here) in placed.iter().enumerate() {
            let axes: &[usize] = match () {
                () if !here || Some(k) == fixed => &[],
                () if is_flat(k) => &[0, 1, 5],
                () => &[0, 1, 2, 3, 4, 5],
            };
            let free = axes.iter().map(|axis| (*axis, self.shared + axes.iter().position(|a| a == axis).unwrap_or(0)));
            self.carriers.push(free.collect());
            self.shared += axes.len();
        }
    }

    fn seen_markers(&self, problem: &Problem) -> Vec<(usize, usize)> {
        let mut seen: Vec<(usize, usize)> =
            self.photos.iter().flat_map(|j| problem.photos[*j].views.iter().map(|v| (v.carrier, v.marker))).collect();
        seen.sort_unstable();
        seen.dedup();
        seen
    }

    /// Where markers sit: three independent coordinates and turns each, or the modes of a survey.
    ///
    /// A sheet is turned in its plane by whoever glues it, and out of it as far as its plate is not
    /// flat. Both count: turned in their planes, the stand's sheets pass for its roll and pitch; seen
    /// aslant, tilted ones turn plates about z, and floor sheets (one plane) tilt the floor.
    fn add_layout(&mut self, problem: &Problem) {
        let seen = self.seen_markers(problem);
        let surveyed = problem.kit.layout.as_ref();
        if let Some(layout) = surveyed {
            let rows = layout.rows();
            let factor = factor(layout.joint());
            for mode in 0..factor.ncols() {
                let column = self.add_nuisance(Source::Layout);
                for (k, m) in &seen {
                    let id = problem.kit.carriers[*k].markers[*m].id;
                    let Some(at) = layout.ids.iter().position(|i| *i == id) else { continue };
                    let part = factor.view((rows * at, mode), (rows, 1));
                    self.modes[*k][*m].push(Mode {
                        column,
                        centre_mm: Vector3::new(part[0], part[1], part[2]),
                        turn_rad: Vector3::new(part[3], part[4], part[5]),
                        stretch: if layout.knows_sizes() { part[6] } else { 0.0 },
                        aspect: 0.0,
                    });
                }
            }
        }
        // A carrier that stood in two places is two bodies with the same printed markers.
        let mut of_id: BTreeMap<u32, Vec<Mode>> = BTreeMap::new();
        for (k, m) in seen {
            let marker = &problem.kit.carriers[k].markers[m];
            if surveyed.is_some_and(|l| l.ids.contains(&marker.id)) {
                continue;
            }
            if let Some(modes) = of_id.get(&marker.id) {
                self.modes[k][m].extend(modes.iter().cloned());
                continue;
            }
            let first = self.modes[k][m].len();
            let u = marker.u_centre_mm.unwrap_or([problem.kit.u_layout_mm; 3]);
            for (axis, u) in u.into_iter().enumerate().filter(|(_, u)| *u > 0.0) {
                let column = self.add_nuisance(Source::Layout);
                let mut centre_mm = Vector3::zeros();
                centre_mm[axis] = u;
                self.modes[k][m].push(Mode { centre_mm, ..mode(column) });
            }
            let u_deg = marker.u_turn_deg.unwrap_or([problem.kit.u_turn_deg; 3]);
            for (axis, u_deg) in u_deg.into_iter().enumerate().filter(|(_, u)| *u > 0.0) {
                let column = self.add_nuisance(Source::Layout);
                let mut turn_rad = Vector3::zeros();
                turn_rad[axis] = rad(u_deg);
                self.modes[k][m].push(Mode { turn_rad, ..mode(column) });
            }
            of_id.insert(marker.id, self.modes[k][m][first..].to_vec());
        }
    }

    /// Width over height: alike for all prints, of one printer and one paper, but for what each carrier's differ by.
    ///
    /// Photos tell it well where several prints lie known distances apart. Taken for exact, it passes for another place: a tenth
    /// of a percent moves a stand's height by a millimetre.
    fn add_aspects(&mut self, problem: &Problem) {
        let aspect = problem.kit.u_aspect_relative;
        let seen = self.seen_markers(problem);
        if aspect <= 0.0 || seen.is_empty() {
            return;
        }
        let common = self.add_nuisance(Source::Scale);
        let mut of_carrier: BTreeMap<usize, usize> = BTreeMap::new();
        for (k, m) in seen {
            let own = *of_carrier.entry(k).or_insert_with(|| self.add_nuisance(Source::Scale));
            self.modes[k][m].push(Mode { aspect, ..mode(common) });
            self.modes[k][m].push(Mode { aspect: OWN_ASPECT * aspect, ..mode(own) });
        }
    }

    /// One common factor on all sizes, and each surveyed marker's own.
    fn add_sizes(&mut self, problem: &Problem) {
        // A survey that knows sizes has them among its modes.
        let known = |id: u32| problem.kit.layout.as_ref().is_some_and(|l| l.knows_sizes() && l.ids.contains(&id));
        let mut seen = self.seen_markers(problem);
        seen.retain(|(k, m)| !known(problem.kit.carriers[*k].markers[*m].id));
        let stretch = |column, stretch| Mode { stretch, ..mode(column) };
        if problem.kit.u_scale_relative > 0.0 && !seen.is_empty() {
            let column = self.add_nuisance(Source::Scale);
            self.common_scale = Some(column);
            for (k, m) in &seen {
                self.modes[*k][*m].push(stretch(column, problem.kit.u_scale_relative));
            }
        }
        let mut of_id: BTreeMap<u32, usize> = BTreeMap::new();
        for (k, m) in seen {
            let marker = &problem.kit.carriers[k].markers[m];
            if let Some(u) = marker.u_size_mm.filter(|u| *u > 0.0) {
                let column = *of_id.entry(marker.id).or_insert_with(|| self.add_nuisance(Source::Scale));
                self.modes[k][m].push(stretch(column, u / marker.size_mm[0]));
            }
        }
    }
}

/// By how much the width over height of one carrier's prints differs from that of all, share of its uncertainty: they come out of
/// one printer, on one paper (common practice, no source).
const OWN_ASPECT: f64 = 0.1;

/// No detector knows its edges better than this, px.
const LEAST_EDGE_PX: f64 = 0.02;

/// Lens parameters by independent mode, from a camera's covariance.
fn calibration_factor(profile: &Profile) -> DMatrix<f64> {
    let Some(covariance) = &profile.covariance else { return DMatrix::zeros(9, 0) };
    let small = factor(covariance);
    let mut full = DMatrix::zeros(9, small.ncols());
    full.rows_mut(0, small.nrows()).copy_from(&small);
    full
}

/// A factor `F` with `F F' = covariance`, one column for each mode that is
/// not negligible; the covariance is scaled to unit variances first, since
/// its units differ by many orders of magnitude.
pub(super) fn factor(covariance: &DMatrix<f64>) -> DMatrix<f64> {
    let n = covariance.nrows();
    if n == 0 {
        // A single carrier holds the frame: nothing is uncertain against it.
        return DMatrix::zeros(0, 0);
    }
    let sigma: Vec<f64> = (0..n).map(|i| covariance[(i, i)].max(0.0).sqrt()).collect();
    let correlation = DMatrix::from_fn(n, n, |i, j| {
        let s = sigma[i] * sigma[j];
        if s > 0.0 { (covariance[(i, j)] + covariance[(j, i)]) / (2.0 * s) } else { 0.0 }
    });
    let eigen = correlation.symmetric_eigen();
    let kept: Vec<usize> = (0..n).filter(|i| eigen.eigenvalues[*i] > 1e-12).collect();
    DMatrix::from_fn(n, kept.len(), |i, j| {
        sigma[i] * eigen.eigenvectors[(i, kept[j])] * eigen.eigenvalues[kept[j]].sqrt()
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn factor_restores_a_covariance_of_mixed_units() {
        let c = DMatrix::from_row_slice(3, 3, &[4.0, 1e-5, 0.0, 1e-5, 1e-9, 0.0, 0.0, 0.0, 0.0]);
        let f = factor(&c);
        assert!((&f * f.transpose() - &c).abs().max() < 1e-12);
        assert_eq!(f.ncols(), 2, "the certain parameter has no mode");
    }
}
