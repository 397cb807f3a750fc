//! Two halves of the photos, fitted apart: they must agree within what both
//! state, else the stated uncertainty is too small.

use nalgebra::DVector;
use statrs::distribution::{ContinuousCDF, FisherSnedecor};

use super::adjust::{CLOSELY, NEAR};
use super::adjustment::Adjustment;
use super::field::Field;
use super::state::{State, parameters};

/// Two fits of one lens differ by no more than this, px, besides what differs from photo to photo.
pub(super) const MOST_SHAPE_PX: f64 = 0.5;

/// The comparison of two halves.
#[derive(Debug, Clone, PartialEq)]
pub struct Halves {
    /// Photos in each half.
    pub photos: [usize; 2],
    /// Squared difference of the two lenses over its stated covariance,
    /// divided by the number of parameters: about 1 when all is well.
    pub ratio: f64,
    /// Above this the halves disagree (95 % quantile).
    pub limit: f64,
    /// Largest difference of projection over the frame, turn taken out, px.
    pub largest_px: f64,
    /// Likewise with focal length and centre taken out too, of which each photo has its own.
    pub shape_px: f64,
}

impl Halves {
    /// Whether the halves show one lens: what is left of their difference is small anywhere in the frame.
    pub fn alike(&self) -> bool {
        self.shape_px <= MOST_SHAPE_PX
    }

    /// Whether the halves agree within what is stated.
    pub fn agree(&self) -> bool {
        self.ratio <= self.limit
    }
}

/// `None` with too few photos, or where a half determines no lens.
pub(super) fn compare(whole: &Adjustment, field: &Field, shape: &Field, spread_degrees: f64) -> Option<Halves> {
    const LEAST: usize = 4;
    if whole.photos.len() < 2 * LEAST {
        return None;
    }
    let p = whole.state.lens.model.parameters();
    let one = |half: usize| {
        let keep: Vec<usize> = (0..whole.photos.len()).filter(|i| i % 2 == half).collect();
        let mut part = whole.only(&keep);
        // The whole's solution is near.
        part.settle(20, NEAR, CLOSELY)?;
        Some((part.covariance()?.lens, part.state.lens, keep.len()))
    };
    let (first, second) = rayon::join(|| one(0), || one(1));
    let ((of_first, first, some), (of_second, second, others)) = (first?, second?);
    let (covariance, counts) = (of_first + of_second, [some, others]);
    let [a, b] = [parameters(&first), parameters(&second)];
    let difference = DVector::from_fn(p, |i, _| b[i] - a[i]);
    let ratio = difference.dot(&covariance.cholesky()?.solve(&difference)) / p as f64;
    let (largest_px, shape_px) = (field.largest_move_px(&difference), shape.largest_move_px(&difference));
    Some(Halves { photos: counts, ratio, limit: limit(p, spread_degrees), largest_px, shape_px })
}

/// The 95 % quantile of Fisher's distribution: the stated covariance itself
/// rests on sigmas with so many degrees of freedom.
fn limit(parameters: usize, degrees: f64) -> f64 {
    FisherSnedecor::new(parameters as f64, degrees.clamp(1.0, 1e4)).map_or(f64::INFINITY, |f| f.inverse_cdf(0.95))
}

impl<'a> Adjustment<'a> {
    /// The same adjustment with some of the photos.
    pub(super) fn only(&self, keep: &[usize]) -> Adjustment<'a> {
        Adjustment {
            target: self.target,
            photos: keep.iter().map(|i| self.photos[*i]).collect(),
            state: State {
                lens: self.state.lens,
                shape: self.state.shape.clone(),
                photos: keep.iter().map(|i| self.state.photos[*i]).collect(),
            },
            spread: self.spread,
            noise: self.noise,
            weights: keep.iter().map(|i| self.weights[*i].clone()).collect(),
            trust: keep.iter().map(|i| self.trust[*i].clone()).collect(),
            held: self.held,
            rigid_board: self.rigid_board,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn limit_is_that_of_the_tables() {
        // F(9, 14), 95 %: 2.646 (NIST/SEMATECH e-Handbook, section 1.3.6.7.3).
        assert!((limit(9, 14.0) - 2.646).abs() < 0.001);
    }
}
