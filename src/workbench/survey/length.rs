//! Measured lengths between marker corners: they give the scale and check it.

use std::str::FromStr;

use nalgebra::{DMatrix, DVector, Point3, RowDVector, Vector3, Vector6};

use super::Error;
use super::apart::Cluster;
use crate::marker::Kit;
use crate::pose::BODY;
use crate::words::{Phrase, phrase};

/// A length measured with a tape or a caliper, from corner to corner.
#[derive(Debug, Clone, PartialEq)]
pub struct Length {
    /// Marker id and corner (0 top-left, 1 top-right, 2 bottom-right, 3 bottom-left) of both ends.
    pub ends: [(u32, usize); 2],
    /// Measured length, mm.
    pub mm: f64,
    /// Its standard uncertainty, mm.
    pub u_mm: f64,
}

/// A length against everything else.
#[derive(Debug, Clone, PartialEq)]
pub struct LengthCheck {
    /// The length.
    pub length: Length,
    /// What photos, marker sizes and the other lengths say it is, mm; where it
    /// is the only length, the marker sizes as the kit file states them.
    pub expected_mm: f64,
    /// Standard uncertainty of that, mm.
    pub u_expected_mm: f64,
    /// (measured - expected) over the root sum of squares of both expanded
    /// uncertainties (k = 2): above 1 they disagree (ISO/IEC 17043).
    pub normalized_error: f64,
    /// Whether it is compared with marker sizes, being the only length.
    pub alone: bool,
}

impl LengthCheck {
    /// Whether the length fits the others.
    pub fn agrees(&self) -> bool {
        self.normalized_error.abs() <= 1.0
    }
}

const CORNERS: [[&str; 3]; 4] =
    [["0", "tl", "top-left"], ["1", "tr", "top-right"], ["2", "br", "bottom-right"], ["3", "bl", "bottom-left"]];

impl FromStr for Length {
    type Err = Phrase;

    fn from_str(text: &str) -> Result<Self, Phrase> {
        let no = |problem: &str| phrase!("fit-no-length-text", text = text, problem = problem);
        let wrong = || no("form");
        let (ends, value) = text.split_once('=').ok_or_else(wrong)?;
        let (mm, u_mm) = value.split_once('~').ok_or_else(wrong)?;
        let (a, b) = ends.split_once(',').ok_or_else(wrong)?;
        let end = |end: &str| {
            let (id, corner) = end.trim().split_once(':')?;
            let corner = corner.trim().to_lowercase();
            let corner = CORNERS.iter().position(|names| names.contains(&corner.as_str()))?;
            Some((id.trim().parse().ok()?, corner))
        };
        let number = |n: &str| n.trim().parse::<f64>().ok().filter(|n| n.is_finite() && *n > 0.0);
        let length = Length {
            ends: [end(a).ok_or_else(wrong)?, end(b).ok_or_else(wrong)?],
            mm: number(mm).ok_or_else(wrong)?,
            u_mm: number(u_mm).ok_or_else(wrong)?,
        };
        if length.ends[0] == length.ends[1] {
            return Err(no("same"));
        }
        Ok(length)
    }
}

impl std::fmt::Display for Length {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let [(a, i), (b, j)] = self.ends;
        let plain = |mm: f64| (mm * 1e3).round() / 1e3;
        write!(f, "{a}:{},{b}:{}={}~{}", CORNERS[i][1], CORNERS[j][1], plain(self.mm), plain(self.u_mm))
    }
}

impl Length {
    pub(super) fn within(&self, ids: &[u32]) -> bool {
        self.ends.iter().all(|(id, _)| ids.contains(id))
    }
}

/// Lengths as linear equations over a cluster's unknowns.
struct Equations {
    /// Measured minus found, mm.
    misfit: DVector<f64>,
    by_unknown: DMatrix<f64>,
    variance: DVector<f64>,
}

/// Brings measured lengths into a cluster by the best linear unbiased update,
/// which is the joint adjustment: lengths only stretch the whole, and that is
/// linear. Returns each length's check.
pub(super) fn apply(kit: &Kit, cluster: &mut Cluster, lengths: &[Length]) -> Result<Vec<LengthCheck>, Error> {
    if lengths.is_empty() {
        return Ok(Vec::new());
    }
    let equations = equations(kit, cluster, lengths)?;
    let mut checks = Vec::new();
    for i in 0..lengths.len() {
        let others: Vec<usize> = (0..lengths.len()).filter(|j| *j != i).collect();
        let (expected_mm, u_expected_mm) = predict(cluster, &equations, &others, i, lengths);
        let normalized_error =
            (lengths[i].mm - expected_mm) / (2.0 * lengths[i].u_mm.hypot(u_expected_mm)).max(f64::MIN_POSITIVE);
        checks.push(LengthCheck {
            length: lengths[i].clone(),
            expected_mm,
            u_expected_mm,
            normalized_error,
            alone: others.is_empty(),
        });
    }
    if let [check] = checks.as_mut_slice() {
        against_sizes(kit, cluster, check);
    }
    let all: Vec<usize> = (0..lengths.len()).collect();
    update(cluster, &equations, &all).ok_or_else(|| Error::NotMeasured(phrase!("fit-no-length-contradicts")))?;
    Ok(checks)
}

/// The only length has nothing but the stated marker sizes to be compared with.
fn against_sizes(kit: &Kit, cluster: &Cluster, check: &mut LengthCheck) {
    // The prediction without lengths is that of stated sizes; its own
    // uncertainty has the scale left free.
    if cluster.free_scale {
        let of_scale = super::apart::U_FREE_SCALE * check.expected_mm;
        let rest = (check.u_expected_mm.powi(2) - of_scale.powi(2)).max(0.0);
        check.u_expected_mm = (rest + (kit.u_scale_relative * check.expected_mm).powi(2)).sqrt();
    }
    check.normalized_error =
        (check.length.mm - check.expected_mm) / (2.0 * check.length.u_mm.hypot(check.u_expected_mm));
}

/// A length from everything but itself, mm, and its standard uncertainty.
fn predict(cluster: &Cluster, equations: &Equations, others: &[usize], i: usize, lengths: &[Length]) -> (f64, f64) {
    let row = equations.by_unknown.row(i).into_owned();
    let found = lengths[i].mm - equations.misfit[i];
    let (step, covariance) = updated(cluster, equations, others)
        .unwrap_or_else(|| (DVector::zeros(cluster.covariance.nrows()), cluster.covariance.clone()));
    let variance = (&row * covariance * row.transpose())[(0, 0)];
    (found + (row * step)[(0, 0)], variance.max(0.0).sqrt())
}

/// The step and covariance of a cluster with some of the lengths.
fn updated(cluster: &Cluster, equations: &Equations, rows: &[usize]) -> Option<(DVector<f64>, DMatrix<f64>)> {
    let by = equations.by_unknown.select_rows(rows);
    let misfit = DVector::from_fn(rows.len(), |i, _| equations.misfit[rows[i]]);
    let across = &cluster.covariance * by.transpose();
    let mut spread = &by * &across;
    for (i, row) in rows.iter().enumerate() {
        spread[(i, i)] += equations.variance[*row];
    }
    let cholesky = spread.cholesky()?;
    let step = &across * cholesky.solve(&misfit);
    let covariance = &cluster.covariance - &across * cholesky.solve(&across.transpose());
    Some((step, (&covariance + covariance.transpose()) * 0.5))
}

fn update(cluster: &mut Cluster, equations: &Equations, rows: &[usize]) -> Option<()> {
    let (step, covariance) = updated(cluster, equations, rows)?;
    for k in 0..cluster.ids.len() {
        let own: Vector6<f64> = step.fixed_rows::<6>(BODY * k).into_owned();
        cluster.world_from_marker[k] = cluster.world_from_marker[k].moved(&own);
        cluster.stretch[k] += step[BODY * k + BODY - 1];
    }
    cluster.covariance = covariance;
    Some(())
}

fn equations(kit: &Kit, cluster: &Cluster, lengths: &[Length]) -> Result<Equations, Error> {
    let mut equations = Equations {
        misfit: DVector::zeros(lengths.len()),
        by_unknown: DMatrix::zeros(lengths.len(), cluster.covariance.nrows()),
        variance: DVector::from_iterator(lengths.len(), lengths.iter().map(|l| l.u_mm * l.u_mm)),
    };
    for (row, length) in lengths.iter().enumerate() {
        let ends = length.ends.map(|(id, corner)| end(kit, cluster, id, corner));
        let [Some(a), Some(b)] = ends else {
            let why = phrase!("fit-no-length-unmeasured");
            return Err(Error::Length { length: length.to_string(), why });
        };
        let difference = b.point - a.point;
        let along = difference.normalize();
        equations.misfit[row] = length.mm - difference.norm();
        for (end, sign) in [(a, -1.0), (b, 1.0)] {
            let mut own = equations.by_unknown.view_mut((row, BODY * end.at), (1, BODY));
            own += RowDVector::from_row_slice(&end.by_unknown.map(|d| sign * along.dot(&d)));
        }
    }
    Ok(equations)
}

struct End {
    at: usize,
    point: Point3<f64>,
    by_unknown: [Vector3<f64>; BODY],
}

/// A corner in the cluster's frame with its derivatives.
fn end(kit: &Kit, cluster: &Cluster, id: u32, corner: usize) -> Option<End> {
    let at = cluster.index(id)?;
    let (_, marker) = kit.marker(id)?;
    let [right, up] = marker.size_mm.map(|s| s / 2.0);
    let arm = [[-right, up], [right, up], [right, -up], [-right, -up]][corner];
    let stretched = Vector3::new(arm[0], arm[1], 0.0) * (1.0 + cluster.stretch[at]);
    let pose = &cluster.world_from_marker[at];
    let turn = pose.matrix();
    let by_turn = -turn * stretched.cross_matrix();
    let by_unknown = std::array::from_fn(|i| match i {
        0..=2 => turn.column(i).into_owned(),
        3..=5 => by_turn.column(i - 3).into_owned(),
        _ => turn * Vector3::new(arm[0], arm[1], 0.0),
    });
    Some(End { at, point: pose.point(&Point3::from(stretched)), by_unknown })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_are_read_as_typed() {
        let wanted = Length { ends: [(10, 0), (13, 1)], mm: 1200.4, u_mm: 0.3 };
        for text in ["10:0,13:1=1200.4~0.3", "10:tl, 13:TR = 1200.4 ~ 0.3", "10:top-left,13:top-right=1200.4~.3"] {
            assert_eq!(text.parse::<Length>().unwrap(), wanted, "{text}");
        }
        assert_eq!(wanted.to_string(), "10:tl,13:tr=1200.4~0.3");
        for text in
            ["", "10:0,13:1=1200", "10:4,13:1=1200~1", "10:0=12~1", "1:0,1:0=5~1", "1:0,2:0=-5~1", "1:0,2:0=5~nan"]
        {
            let error = text.parse::<Length>().unwrap_err().say(crate::words::Language::English);
            assert!(error.contains("ID:CORNER"), "{error}");
        }
    }
}
