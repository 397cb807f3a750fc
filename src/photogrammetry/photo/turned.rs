//! The mark of rendered pictures ([`crate::rendered`]) in one that was turned by some degrees: a roll of the camera, which
//! leaves all that is measured as it was if it is about the principal point.

use crate::rendered::CELLS;

/// The statistic from which on the mark is there. The signs know nothing of a picture that is not marked: its statistic is
/// a sum of independent random signs, which reaches this with a chance below exp(-8^2 / 2) = 1.3e-14 (Hoeffding 1963, Journal
/// of the American Statistical Association 58, 13-30), for each of the places and turns at which the mark is looked for.
pub(super) const MARKED: f64 = 8.0;
/// Parts of a cell along each axis, so that a mark between cells is seen too.
pub(super) const PARTS: usize = 2;
/// Parts of all cells along each axis.
const SIDE: usize = PARTS * CELLS;
/// The largest turn that is looked for, and by how much turns differ, degrees: one that is rolled by more looks odd to anyone.
const MOST: f64 = 15.0;
const STEP: f64 = 0.75;
/// How far the principal point lies from the middle, share of the longer side.
const OFF: f64 = 0.03;
/// The mark is looked for so far around the middle: share of the longer side, and of the shorter one at most.
const AROUND: (f64, f64) = (0.26, 0.46);
/// One cell in so many is looked at first, and all where their statistic is this.
const SOME: usize = 5;
const PROMISING: f64 = 4.5;

/// A cell's place among the parts before it is shifted, row after row, and its sign.
type Signed = (usize, f32);

/// Whether a picture of such a size bears the mark, its parts against their neighbours given.
pub(super) fn is_marked(apart: &[f32], size: [usize; 2], signs: &[i8]) -> bool {
    let longer = size[0].max(size[1]) as f64;
    let steps = (MOST / STEP) as i32;
    (0..4).any(|quarters| {
        let cells = Cells::new(signs, size.map(|n| n as f64), quarters);
        let rms = rms(apart, &cells.turned(0.0, 1), 0);
        (-steps..=steps).filter(|k| *k != 0).map(|k| f64::from(k) * STEP).any(|degrees| {
            // The middle of the turn is not the picture's: it goes elsewhere meanwhile.
            let off = 2.0 * OFF * longer * (degrees.to_radians() / 2.0).sin().abs();
            let most = (off * SIDE as f64 / longer).round() as isize;
            let some = cells.turned(degrees, SOME);
            let enough = PROMISING * rms * (some.len() as f64).sqrt();
            let shifts = (-most..=most).flat_map(|down| (-most..=most).map(move |right| down * SIDE as isize + right));
            let mut promising = shifts.filter(|shift| f64::from(sum(apart, &some, *shift)) > enough);
            promising.any(|shift| statistic(apart, &cells.turned(degrees, 1), shift) > MARKED)
        })
    })
}

/// The cells near the middle of a picture that was turned by quarters.
struct Cells {
    /// The turned picture's sides, px.
    size: [f64; 2],
    quarters: u8,
    /// Place from the middle before any turn, px, and sign.
    all: Vec<([f64; 2], f32)>,
}

impl Cells {
    fn new(signs: &[i8], size: [f64; 2], quarters: u8) -> Self {
        let before = if quarters.is_multiple_of(2) { size } else { [size[1], size[0]] };
        let [width, height] = size;
        let reach = (AROUND.0 * width.max(height)).min(AROUND.1 * width.min(height));
        let middle = |k: usize, side: f64| ((k as f64 + 0.5) / CELLS as f64 - 0.5) * side;
        let one = |(i, sign): (usize, &i8)| {
            let (x, y) = (middle(i % CELLS, before[0]), middle(i / CELLS, before[1]));
            (x.hypot(y) < reach).then(|| ([x, y], f32::from(*sign)))
        };
        Cells { size, quarters, all: signs.iter().enumerate().filter_map(one).collect() }
    }

    /// Where one in so many lies after a further turn.
    fn turned(&self, degrees: f64, one_in: usize) -> Vec<Signed> {
        let (sin, cos) = (f64::from(self.quarters) * 90.0 + degrees).to_radians().sin_cos();
        let part = |place: f64, side: f64| ((place / side + 0.5) * SIDE as f64) as usize;
        let one = |([x, y], sign): &([f64; 2], f32)| {
            let (column, row) = (part(cos * x - sin * y, self.size[0]), part(sin * x + cos * y, self.size[1]));
            (row * SIDE + column, *sign)
        };
        self.all.iter().step_by(one_in).map(one).collect()
    }
}

fn values(apart: &[f32], cells: &[Signed], shift: isize) -> impl Iterator<Item = (f32, f32)> {
    cells.iter().map(move |(place, sign)| (apart.get(place.wrapping_add_signed(shift)).copied().unwrap_or(0.0), *sign))
}

fn sum(apart: &[f32], cells: &[Signed], shift: isize) -> f32 {
    values(apart, cells, shift).map(|(value, sign)| value * sign).sum()
}

fn rms(apart: &[f32], cells: &[Signed], shift: isize) -> f64 {
    let squares: f32 = values(apart, cells, shift).map(|(value, _)| value * value).sum();
    (f64::from(squares) / cells.len().max(1) as f64).sqrt()
}

/// The sum of cells times signs in units of what random signs scatter by.
fn statistic(apart: &[f32], cells: &[Signed], shift: isize) -> f64 {
    let scatter = rms(apart, cells, shift) * (cells.len() as f64).sqrt();
    if scatter > 0.0 { f64::from(sum(apart, cells, shift)) / scatter } else { 0.0 }
}
