//! Several readings of one thing as one.

use crate::folder::Reading;
use crate::quantity::Estimate;

/// Readings of one thing as one: their mean with the largest of their uncertainties, for nobody knows how far they
/// err together, and what errs together wholly gets no better by a mean (GUM F.1.2, 5.2.2 note 1). With it the
/// index of the reading whose uncertainty it is; `None` of none.
pub(super) fn as_one(readings: &[(usize, &Reading)]) -> Option<(usize, Estimate)> {
    let (index, least_sure) = readings.iter().max_by(|a, b| a.1.u.total_cmp(&b.1.u).then(b.0.cmp(&a.0)))?;
    let mean = readings.iter().map(|(_, r)| r.value).sum::<f64>() / readings.len() as f64;
    Some((*index, Estimate::known(mean, least_sure.u)))
}
