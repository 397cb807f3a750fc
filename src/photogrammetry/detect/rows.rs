//! A marker's model at all its pixels: grey levels and their derivatives, a batch of pixels at a time.
//!
//! Each stage is a plain loop over a batch's pixels without branches or calls, in single precision
//! about the marker's middle, so that the compiler turns it into vector instructions.

#![allow(clippy::needless_range_loop, reason = "loops over the same place of many arrays, as the compiler likes them")]

use std::cell::RefCell;

use multiversion::multiversion;
use nalgebra::SVector;

use super::lanes::{BATCH, Lane};
use super::legendre::{TERMS, Terms, displace};
use super::model::{ALL, Fixed, LIGHT, LOCAL, Model, Pixel};
use super::pattern::Pattern;
use super::profile::{Bend, SHAPE, bend};
use super::shade::{Geometry, Shade, shade};
use super::shared::{Common, LENS, SHARPENING};

/// Columns: derivatives by all parameters, then the residual.
pub(super) const COLUMNS: usize = ALL + 1;

/// With those by a warp's terms behind them, which are filled only where one is looked at.
pub(super) const WIDE: usize = COLUMNS + TERMS;

/// Derivatives and residuals of a batch of pixels, a column each.
pub(super) type Batch = [Lane; WIDE];

/// A marker's pixels, batch by batch; the last batch repeats its last pixel.
#[derive(Default)]
pub(super) struct Rows {
    batches: Vec<Batch>,
    count: usize,
}

thread_local! {
    /// Each thread fills its own again and again: they are large.
    static OWN: RefCell<Rows> = RefCell::default();
}

/// Works with this thread's rows. Nothing within may wait for other threads, which would work here meanwhile.
pub(super) fn with_rows<T>(work: impl FnOnce(&mut Rows) -> T) -> T {
    OWN.with_borrow_mut(work)
}

impl Rows {
    /// Evaluates a model at all its pixels; `None` where it has no inverse.
    pub(super) fn evaluate(&mut self, model: &Model, common: &Common) -> Option<()> {
        let fixed = model.fixed(common)?;
        self.count = model.pixels.len();
        let batches = self.count.div_ceil(BATCH);
        if self.batches.len() < batches {
            self.batches.resize(batches, [[0.0; BATCH]; WIDE]);
        }
        for (pixels, batch) in model.pixels.chunks(BATCH).zip(&mut self.batches) {
            evaluate(&fixed, model.pattern(), &Places::new(pixels, fixed.origin), batch);
        }
        Some(())
    }

    /// Fills the columns of a warp's terms, behind an evaluation of the same model.
    pub(super) fn displace(&mut self, model: &Model) {
        let (perspective, unit) = (model.perspective(), model.unit as f32);
        for (batch, _) in self.batches_mut() {
            let (values, terms) = batch.split_at_mut(COLUMNS);
            let (x, y) = (&values[LIGHT + 1], &values[LIGHT + 2]);
            // d grey level / d place, px: that by the homography's shift, in its units.
            let by_px = |k: usize| (perspective[0] * x[k] + perspective[1] * y[k] + 1.0) / unit;
            let along = [2, 5].map(|shift| std::array::from_fn(|k| values[shift][k] * by_px(k)));
            if let Ok(terms) = terms.try_into() {
                displace(&along, [x, y], terms);
            }
        }
    }

    /// Takes what a step of a marker's own parameters and a warp do off the residuals.
    pub(super) fn take_off(&mut self, own: &SVector<f64, LOCAL>, terms: &Terms) {
        let steps = own.iter().enumerate().chain((COLUMNS..).zip(terms.iter()));
        for (column, step) in steps {
            let step = *step as f32;
            for (batch, _) in self.batches_mut() {
                for k in 0..BATCH {
                    batch[ALL][k] -= step * batch[column][k];
                }
            }
        }
    }

    #[cfg(test)]
    pub(super) fn from_values(count: usize, value: impl Fn(usize, usize) -> f32) -> Self {
        let row = |batch: usize, k: usize| (batch * BATCH + k).min(count - 1);
        let batch = |b: usize| std::array::from_fn(|c| std::array::from_fn(|k| value(row(b, k), c)));
        Rows { batches: (0..count.div_ceil(BATCH)).map(batch).collect(), count }
    }

    /// Batches, each with the number of its pixels that count.
    pub(super) fn batches(&self) -> impl Iterator<Item = (&Batch, usize)> {
        let batches = self.batches.iter().take(self.count.div_ceil(BATCH)).enumerate();
        batches.map(|(i, batch)| (batch, (self.count - i * BATCH).min(BATCH)))
    }

    /// The same, to be changed.
    pub(super) fn batches_mut(&mut self) -> impl Iterator<Item = (&mut Batch, usize)> {
        let count = self.count;
        let batches = self.batches.iter_mut().take(count.div_ceil(BATCH));
        batches.enumerate().map(move |(i, batch)| (batch, (count - i * BATCH).min(BATCH)))
    }

    /// Grey levels measured minus predicted, pixel by pixel.
    pub(super) fn residuals(&self) -> impl Iterator<Item = f32> {
        self.batches().flat_map(|(batch, count)| batch[ALL][..count].iter().copied())
    }

    /// Derivatives by one parameter, pixel by pixel.
    pub(super) fn derivatives(&self, parameter: usize) -> impl Iterator<Item = f32> {
        self.batches().flat_map(move |(batch, count)| batch[parameter][..count].iter().copied())
    }
}

/// Where pixels lie from the marker's middle, px, and their grey levels.
struct Places {
    u: Lane,
    v: Lane,
    grey: Lane,
}

impl Places {
    #[inline(always)]
    fn new(pixels: &[Pixel], origin: [f64; 2]) -> Self {
        let mut places = Places { u: [0.0; BATCH], v: [0.0; BATCH], grey: [0.0; BATCH] };
        for k in 0..BATCH {
            let pixel = pixels[k.min(pixels.len() - 1)];
            places.u[k] = (f64::from(pixel.u) - origin[0]) as f32;
            places.v[k] = (f64::from(pixel.v) - origin[1]) as f32;
            places.grey[k] = pixel.grey;
        }
        places
    }
}

#[multiversion(targets("x86_64+avx2"))]
fn evaluate(fixed: &Fixed, pattern: &Pattern, places: &Places, out: &mut Batch) {
    let geometry = locate(fixed, places);
    let widest = geometry.sx.iter().chain(&geometry.sy).fold(0.0f32, |a, b| a.max(*b));
    // Lines beyond those are at least three standard deviations away.
    let shade = if widest < 0.16 {
        shade::<1, 2>(pattern, &geometry)
    } else if widest < 0.48 {
        shade::<3, 4>(pattern, &geometry)
    } else {
        shade::<5, 6>(pattern, &geometry)
    };
    let mut bent = bend(&fixed.shape, &shade.value);
    out[LOCAL + SHARPENING] = match &fixed.halo {
        Some(halo) => halo.add(pattern, &geometry, &shade, &mut bent),
        None => [0.0; BATCH],
    };
    derive(fixed, places, &geometry, &shade, &bent, out);
}

#[inline(always)]
fn locate(fixed: &Fixed, places: &Places) -> Geometry {
    const NONE: Lane = [0.0; BATCH];
    let mut g = Geometry {
        bow_u: [NONE; LENS],
        bow_v: [NONE; LENS],
        q_u: NONE,
        q_v: NONE,
        x: NONE,
        y: NONE,
        j: [NONE; 4],
        sx: NONE,
        sy: NONE,
        rho: NONE,
    };
    let (a, lens, inverse, blur) = (fixed.from_axis, fixed.lens, fixed.inverse, fixed.blur);
    let s = a[0] * a[0] + a[1] * a[1];
    for k in 0..BATCH {
        let (u, v) = (places.u[k], places.v[k]);
        let (du, dv) = (u / fixed.radius, v / fixed.radius);
        let ad = a[0] * du + a[1] * dv;
        let grown = s + 2.0 * ad + (du * du + dv * dv);
        let (mut power, mut grown_power, mut q_u, mut q_v) = (1.0, 1.0, u, v);
        for n in 0..LENS {
            // r^2n times the place, for n + 1: all of it, less value and slope at the middle.
            let along = 2.0 * (n + 1) as f32 * power * ad;
            power *= s;
            grown_power *= grown;
            let (more, less) = (grown_power - power, along);
            let bow_u = ((a[0] + du) * more - a[0] * less) * fixed.radius;
            let bow_v = ((a[1] + dv) * more - a[1] * less) * fixed.radius;
            g.bow_u[n][k] = bow_u;
            g.bow_v[n][k] = bow_v;
            q_u -= lens[n] * bow_u;
            q_v -= lens[n] * bow_v;
        }
        g.q_u[k] = q_u;
        g.q_v[k] = q_v;
        let (n_u, n_v) = (q_u / fixed.unit, q_v / fixed.unit);
        let w = 1.0 / (inverse[6] * n_u + inverse[7] * n_v + inverse[8]);
        let x = (inverse[0] * n_u + inverse[1] * n_v + inverse[2]) * w;
        let y = (inverse[3] * n_u + inverse[4] * n_v + inverse[5]) * w;
        g.x[k] = x;
        g.y[k] = y;
        let scale = 4.0 * w / fixed.unit;
        let j = [
            (inverse[0] - x * inverse[6]) * scale,
            (inverse[1] - x * inverse[7]) * scale,
            (inverse[3] - y * inverse[6]) * scale,
            (inverse[4] - y * inverse[7]) * scale,
        ];
        for (lane, value) in g.j.iter_mut().zip(j) {
            lane[k] = value;
        }
        let xx = j[0] * j[0] * blur[0] + 2.0 * j[0] * j[1] * blur[1] + j[1] * j[1] * blur[2];
        let yy = j[2] * j[2] * blur[0] + 2.0 * j[2] * j[3] * blur[1] + j[3] * j[3] * blur[2];
        let xy = j[0] * j[2] * blur[0] + (j[0] * j[3] + j[1] * j[2]) * blur[1] + j[1] * j[3] * blur[2];
        let (sx, sy) = (xx.max(1e-12).sqrt(), yy.max(1e-12).sqrt());
        g.sx[k] = sx;
        g.sy[k] = sy;
        g.rho[k] = xy / (sx * sy);
    }
    g
}

#[inline(always)]
fn derive(fixed: &Fixed, places: &Places, g: &Geometry, shade: &Shade, bent: &Bend, out: &mut Batch) {
    let (light, h) = (fixed.light, fixed.h);
    for k in 0..BATCH {
        let (x, y) = (g.x[k], g.y[k]);
        let contrast = light[3] + light[4] * x + light[5] * y;
        let black = light[0] + light[1] * x + light[2] * y;
        let scale = contrast * bent.slope[k];
        let j = [g.j[0][k], g.j[1][k], g.j[2][k], g.j[3][k]];
        let gradient_u = (j[0] * shade.x[k] + j[2] * shade.y[k]) * scale;
        let gradient_v = (j[1] * shade.x[k] + j[3] * shade.y[k]) * scale;
        // Second derivatives along pixel coordinates: what more blur adds.
        let (xx, xy, yy) = (shade.xx[k], shade.xy[k], shade.yy[k]);
        let bow_uu = (j[0] * j[0] * xx + 2.0 * j[0] * j[2] * xy + j[2] * j[2] * yy) * scale;
        let bow_uv = (j[0] * j[1] * xx + (j[0] * j[3] + j[1] * j[2]) * xy + j[2] * j[3] * yy) * scale;
        let bow_vv = (j[1] * j[1] * xx + 2.0 * j[1] * j[3] * xy + j[3] * j[3] * yy) * scale;
        let w = 1.0 / (h[6] * x + h[7] * y + 1.0);
        let (a, b) = (-gradient_u * fixed.unit * w, -gradient_v * fixed.unit * w);
        let c = (gradient_u * g.q_u[k] + gradient_v * g.q_v[k]) * w;
        let e = bent.value[k];
        out[0][k] = a * x;
        out[1][k] = a * y;
        out[2][k] = a;
        out[3][k] = b * x;
        out[4][k] = b * y;
        out[5][k] = b;
        out[6][k] = c * x;
        out[7][k] = c * y;
        out[8][k] = 1.0;
        out[9][k] = x;
        out[10][k] = y;
        out[11][k] = e;
        out[12][k] = x * e;
        out[13][k] = y * e;
        out[14][k] = 0.5 * bow_uu;
        out[15][k] = bow_uv;
        out[16][k] = 0.5 * bow_vv;
        out[17][k] = bent.by_shape[0][k] * contrast;
        out[LOCAL + SHARPENING][k] *= contrast;
        out[ALL][k] = places.grey[k] - (black + contrast * e);
    }
    for n in 0..SHAPE {
        for k in 0..BATCH {
            let contrast = light[3] + light[4] * g.x[k] + light[5] * g.y[k];
            out[LOCAL + n][k] = bent.by_shape[n][k] * contrast;
        }
    }
    for n in 0..LENS {
        for k in 0..BATCH {
            // d pixel place / d lens term moves the pattern the other way.
            let w = (h[6] * g.x[k] + h[7] * g.y[k] + 1.0) / fixed.unit;
            out[LOCAL + SHAPE + n][k] = (out[2][k] * g.bow_u[n][k] + out[5][k] * g.bow_v[n][k]) * w;
        }
    }
}
