//! Normal equations with the photos' or the markers' blocks eliminated first:
//! the cost grows linearly with their number.

use std::sync::{Arc, OnceLock};

use multiversion::multiversion;
use nalgebra::{DMatrix, DVector};

use super::columns::Columns;
use super::order::{Order, Place};
use super::residual::Equations;
use super::sides::{Column, Own, Sides, column, split};
use super::state::State;
use super::unknowns::{NUISANCE, PHOTO};
use crate::cores;
use crate::num::{Lower, cholesky};

/// Factorised normal equations `N x = b`, priors included.
#[derive(Debug, Clone)]
pub(super) struct Normal {
    pub(super) order: Arc<Order>,
    pub(super) blocks: Vec<Block>,
    /// The rest, once the blocks are eliminated.
    pub(super) rest: Option<Lower>,
    /// Right-hand side of the rest before anything was eliminated.
    right: DVector<f64>,
    /// The unknowns that have a prior.
    pub(super) priors: Vec<Place>,
    /// Inverse of the rest's lower factor, made when it is first worth it.
    inverse: OnceLock<DMatrix<f64>>,
}

/// What was eliminated.
#[derive(Debug, Clone)]
pub(super) struct Block {
    /// Inverse of its own part.
    pub(super) inverse: DMatrix<f64>,
    /// Places of the rest that it is coupled to, ascending.
    pub(super) touched: Vec<usize>,
    /// Its coupling to those.
    pub(super) coupling: DMatrix<f64>,
    right: DVector<f64>,
}

/// One step from where the equations were linearised.
pub(super) struct Step {
    /// By photo.
    pub(super) photos: Vec<DVector<f64>>,
    pub(super) shared: DVector<f64>,
    /// How much the quadratic model expects it to gain.
    pub(super) gain: f64,
}

/// Right-hand sides from which on an inverse by blocks, all of it products of
/// matrices, is cheaper than substitution: this share of the unknowns.
const WIDE: usize = 4;

/// Sums the equations. `weights` has one factor for each view (robust start);
/// `variance` is the variance of unit weight that scales image noise;
/// `damping` is added relatively to every diagonal element.
pub(super) fn normal(
    columns: &Columns,
    state: &State,
    equations: &[Equations],
    weights: &[f64],
    variance: f64,
    damping: f64,
) -> Option<Normal> {
    let order = &columns.order;
    let of_photo = |b: usize| (0..NUISANCE).map(move |i| (order.of_photo(b, PHOTO - NUISANCE + i), i));
    let photos = state.photos.iter().enumerate();
    let of_photos = photos.flat_map(|(b, photo)| of_photo(b).map(|(place, i)| (place, photo.nuisance[i])));
    let of_shared = columns.nuisance.iter().map(|c| (order.of_shared(*c), state.shared[*c]));
    let weighted = equations.iter().zip(weights.iter().map(|w| w / variance));
    factorised(order, weighted, of_photos.chain(of_shared), damping)
}

/// Likewise, with each unknown that has a prior of one unit about zero, and its present value.
pub(super) fn factorised<'e>(
    order: &Arc<Order>,
    equations: impl Iterator<Item = (&'e Equations, f64)>,
    priors: impl Iterator<Item = (Place, f64)>,
    damping: f64,
) -> Option<Normal> {
    let equations: Vec<(&Equations, f64)> = equations.collect();
    let split = cores::map(&equations, |(e, weight)| Split::new(order, e, *weight));
    let (blocks, rest) = cores::join(|| blocks_of(order, &split), || rest_of(order, &split));
    let mut sums = Sums { blocks, rest: rest.0, right: rest.1, priors: Vec::new() };
    priors.for_each(|(place, value)| sums.add_prior(place, value));
    sums.damp(damping);
    sums.eliminated(Arc::clone(order))
}

/// A view's weighted equations.
struct Split {
    block: Option<usize>,
    own: Own,
    others: Own,
    residual: Column,
    weight: f64,
}

impl Split {
    fn new(order: &Order, e: &Equations, weight: f64) -> Self {
        let (block, own, others) = split(order, e);
        Split { block, own, others, residual: column(e.residual.as_slice()), weight }
    }
}

/// A block's own part, its coupling to the whole rest, its right-hand side.
type BlockSums = (DMatrix<f64>, DMatrix<f64>, DVector<f64>);

fn blocks_of(order: &Order, equations: &[Split]) -> Vec<BlockSums> {
    let zeros = |n: &usize| (DMatrix::zeros(*n, *n), DMatrix::zeros(*n, order.rest), DVector::zeros(*n));
    let mut blocks: Vec<BlockSums> = order.blocks.iter().map(zeros).collect();
    for e in equations {
        if let Some((sum, coupling, right)) = e.block.map(|b| &mut blocks[b]) {
            add_square(&e.own, &e.residual, e.weight, sum, right);
            add_products(&e.own, &e.others, e.weight, coupling);
        }
    }
    blocks
}

/// The lower part of the rest, and its right-hand side.
fn rest_of(order: &Order, equations: &[Split]) -> (DMatrix<f64>, DVector<f64>) {
    let (mut rest, mut right) = (DMatrix::zeros(order.rest, order.rest), DVector::zeros(order.rest));
    for e in equations {
        add_square(&e.others, &e.residual, e.weight, &mut rest, &mut right);
    }
    (rest, right)
}

/// Blocks that are eliminated side by side: what they take off the rest has to be kept meanwhile.
const SIDE_BY_SIDE: usize = 16;

/// Sums before anything is eliminated.
struct Sums {
    blocks: Vec<BlockSums>,
    /// The lower part.
    rest: DMatrix<f64>,
    right: DVector<f64>,
    priors: Vec<Place>,
}

impl Sums {
    /// An unknown with a prior of one unit about zero, at its present value.
    fn add_prior(&mut self, place: Place, value: f64) {
        let (sum, right) = match place.block.map(|b| &mut self.blocks[b]) {
            Some((sum, _, right)) => (sum, right),
            None => (&mut self.rest, &mut self.right),
        };
        self.priors.push(place);
        sum[(place.at, place.at)] += 1.0;
        right[place.at] -= value;
    }

    fn damp(&mut self, damping: f64) {
        for sum in self.blocks.iter_mut().map(|b| &mut b.0).chain([&mut self.rest]) {
            for i in 0..sum.nrows() {
                sum[(i, i)] *= 1.0 + damping;
            }
        }
    }

    fn eliminated(mut self, order: Arc<Order>) -> Option<Normal> {
        let mut rest = self.rest;
        let mut blocks = Vec::with_capacity(self.blocks.len());
        for some in self.blocks.chunks_mut(SIDE_BY_SIDE) {
            for eliminated in cores::map_mut(some, |_, sums| eliminate(std::mem::take(sums))) {
                let (block, taken) = eliminated?;
                for (c, column) in block.touched.iter().enumerate() {
                    for (row, value) in block.touched[c..].iter().zip(&taken.column(c).as_slice()[c..]) {
                        rest[(*row, *column)] -= value;
                    }
                }
                blocks.push(block);
            }
        }
        let rest = if order.rest == 0 { None } else { Some(cholesky(rest)?) };
        Some(Normal { order, blocks, rest, right: self.right, priors: self.priors, inverse: OnceLock::new() })
    }
}

/// A block and what it takes off the places of the rest that it touches.
fn eliminate((sum, coupling, right): BlockSums) -> Option<(Block, DMatrix<f64>)> {
    let inverse = sum.cholesky()?.inverse();
    let touched: Vec<usize> = (0..coupling.ncols()).filter(|c| coupling.column(*c).iter().any(|x| *x != 0.0)).collect();
    let coupling = coupling.select_columns(&touched);
    let taken = coupling.transpose() * (&inverse * &coupling);
    Some((Block { inverse, touched, coupling, right }, taken))
}

/// Adds the products of columns with each other (the lower part) and with the residual.
#[multiversion(targets("x86_64+avx2"))]
fn add_square(own: &Own, residual: &Column, weight: f64, sum: &mut DMatrix<f64>, right: &mut DVector<f64>) {
    for (at, (i, x)) in own.iter().enumerate() {
        right[*i] += weight * dot8(x, residual);
        for (j, y) in &own[..=at] {
            sum[(*i.max(j), *i.min(j))] += weight * dot8(x, y);
        }
    }
}

/// Adds the products of columns with others.
#[multiversion(targets("x86_64+avx2"))]
fn add_products(own: &Own, others: &Own, weight: f64, sum: &mut DMatrix<f64>) {
    for (j, y) in others {
        for (i, x) in own {
            sum[(*i, *j)] += weight * dot8(x, y);
        }
    }
}

/// In pairs, so that one sum does not wait for the other.
#[inline(always)]
fn dot8(x: &Column, y: &Column) -> f64 {
    let p: Column = std::array::from_fn(|i| x[i] * y[i]);
    ((p[0] + p[4]) + (p[2] + p[6])) + ((p[1] + p[5]) + (p[3] + p[7]))
}

impl Normal {
    /// The step.
    pub(super) fn solve(&self) -> Step {
        let mut sides = Sides::zeros(&self.order, 1);
        sides.rest.copy_from(&self.right);
        for (side, block) in sides.blocks.iter_mut().zip(&self.blocks) {
            *side = Some(DMatrix::from_column_slice(block.right.len(), 1, block.right.as_slice()));
        }
        let solution = self.applied(&sides);
        let own = |(x, block): (&Option<DMatrix<f64>>, &Block)| x.as_ref().map_or(0.0, |x| x.dot(&block.right));
        let gain = solution.rest.dot(&self.right) + solution.blocks.iter().zip(&self.blocks).map(own).sum::<f64>();
        let vector = |m: DMatrix<f64>| m.column(0).into_owned();
        Step {
            photos: (0..self.order.photos()).map(|b| vector(solution.photo(&self.order, b))).collect(),
            shared: vector(solution.shared(&self.order)),
            gain,
        }
    }

    /// What right-hand sides leave of the rest once the blocks are eliminated.
    pub(super) fn reduced(&self, sides: &Sides) -> DMatrix<f64> {
        let mut rest = sides.rest.clone();
        for (block, side) in self.blocks.iter().zip(&sides.blocks) {
            let Some(side) = side else { continue };
            let taken = block.coupling.tr_mul(&(&block.inverse * side));
            for (r, row) in block.touched.iter().enumerate() {
                let mut into = rest.row_mut(*row);
                into -= taken.row(r);
            }
        }
        rest
    }

    /// `N^-1` times right-hand sides.
    pub(super) fn applied(&self, sides: &Sides) -> Sides {
        let mut solution = Sides::zeros(&self.order, sides.columns());
        solution.rest = self.solve_rest(self.reduced(sides));
        for ((block, side), into) in self.blocks.iter().zip(&sides.blocks).zip(&mut solution.blocks) {
            let mut own = -(&block.coupling * solution.rest.select_rows(&block.touched));
            if let Some(side) = side {
                own += side;
            }
            *into = Some(&block.inverse * own);
        }
        solution
    }

    fn solve_rest(&self, right: DMatrix<f64>) -> DMatrix<f64> {
        let Some(lower) = &self.rest else { return right };
        let wide = WIDE * right.ncols() >= right.nrows();
        if wide || (self.inverse.get().is_some() && right.ncols() > 1) {
            let inverse = self.lower_inverse();
            return inverse.transpose() * (inverse * right);
        }
        lower.solve(right)
    }

    pub(super) fn lower_inverse(&self) -> &DMatrix<f64> {
        self.inverse.get_or_init(|| match &self.rest {
            Some(lower) => lower.inverse(),
            None => DMatrix::zeros(0, 0),
        })
    }
}
