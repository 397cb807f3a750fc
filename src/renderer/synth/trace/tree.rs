//! Bounding volume hierarchy over facets (binned surface-area heuristic, Wald 2007).

use nalgebra::Vector3;

use super::facet::{Facet, Hit, Ray, Shape};

const BINS: usize = 12;
const LEAF: usize = 4;

#[derive(Debug, Clone, Copy)]
struct Node {
    low: [f32; 3],
    high: [f32; 3],
    /// Leaf: first facet; inner node: the second child (the first one follows its parent).
    first: u32,
    /// Number of facets; zero for an inner node.
    count: u16,
    /// Inner node: the axis along which its children lie apart.
    axis: u16,
}

/// Facets in an order and boxes that make the nearest one quick to find.
#[derive(Debug, Clone)]
pub(crate) struct Tree {
    nodes: Vec<Node>,
    /// What rays are tried against, side by side in memory as the leaves list them.
    leaves: Vec<Leaf>,
}

#[derive(Debug, Clone, Copy)]
struct Leaf {
    shape: Shape,
    facet: u32,
}

#[derive(Clone, Copy)]
struct Item {
    facet: u32,
    low: Vector3<f64>,
    high: Vector3<f64>,
}

impl Item {
    fn centre(&self, axis: usize) -> f64 {
        0.5 * (self.low[axis] + self.high[axis])
    }
}

fn surround(items: &[Item]) -> (Vector3<f64>, Vector3<f64>) {
    let mut low = Vector3::repeat(f64::INFINITY);
    let mut high = Vector3::repeat(f64::NEG_INFINITY);
    for item in items {
        low = low.inf(&item.low);
        high = high.sup(&item.high);
    }
    (low, high)
}

fn area(low: &Vector3<f64>, high: &Vector3<f64>) -> f64 {
    let d = high - low;
    d.x * d.y + d.y * d.z + d.z * d.x
}

impl Tree {
    /// Sorts the facets into boxes.
    pub(crate) fn over(facets: &[Facet]) -> Self {
        let mut items: Vec<Item> = facets
            .iter()
            .zip(0u32..)
            .map(|(f, facet)| {
                let (low, high) = f.bounds();
                Item { facet, low, high }
            })
            .collect();
        let mut tree = Tree { nodes: Vec::new(), leaves: Vec::with_capacity(items.len()) };
        if !items.is_empty() {
            tree.split(facets, &mut items);
        }
        tree
    }

    fn split(&mut self, facets: &[Facet], items: &mut [Item]) {
        let (low, high) = surround(items);
        let index = self.nodes.len();
        // Rounding to f32 must not shrink a box: 0.01 mm is far above f32's step at bay size.
        self.nodes.push(Node {
            low: [0, 1, 2].map(|i| low[i] as f32 - 0.01),
            high: [0, 1, 2].map(|i| high[i] as f32 + 0.01),
            first: self.leaves.len() as u32,
            count: items.len().min(usize::from(u16::MAX)) as u16,
            axis: 0,
        });
        let cut = if items.len() <= LEAF { None } else { best_cut(items) };
        let Some((middle, axis)) = cut else {
            let leaf = |i: &Item| Leaf { shape: facets[i.facet as usize].shape, facet: i.facet };
            self.leaves.extend(items.iter().map(leaf));
            return;
        };
        let (left, right) = items.split_at_mut(middle);
        self.split(facets, left);
        self.nodes[index].count = 0;
        self.nodes[index].axis = axis;
        self.nodes[index].first = self.nodes.len() as u32;
        self.split(facets, right);
    }

    /// The nearest facet that a ray meets between two parameters and that `takes` accepts;
    /// `hint` is one that it is likely to meet.
    pub(crate) fn nearest(
        &self,
        facets: &[Facet],
        ray: &Ray,
        (near, far): (f64, f64),
        hint: Option<u32>,
        takes: impl Fn(u32, f64) -> bool,
    ) -> Option<Hit> {
        let mut best: Option<Hit> = None;
        let mut limit = far;
        // What a neighbouring ray met is mostly met again: all beyond it is skipped.
        if let Some(facet) = hint
            && let Some((t, a, b)) = facets[facet as usize].shape.meet(ray)
            && t > near
            && t < far
            && takes(facet, t)
        {
            best = Some(Hit { t, facet, a, b });
            limit = t;
        }
        self.walk(ray, near, &mut limit, |facet, t, a, b, limit| {
            if takes(facet, t) {
                best = Some(Hit { t, facet, a, b });
                *limit = t;
            }
            false
        });
        best
    }

    /// Whether anything that `takes` accepts lies on the ray at `t` in `(near, far)`.
    pub(crate) fn blocked(&self, ray: &Ray, near: f64, far: f64, takes: impl Fn(u32, f64) -> bool) -> bool {
        let mut limit = far;
        self.walk(ray, near, &mut limit, |facet, t, _, _, _| takes(facet, t))
    }

    /// The facets that reach into a pyramid of four planes through `eye`
    /// (normals outwards): all that the rays inside of it can meet.
    pub(crate) fn within(&self, facets: &[Facet], eye: &Vector3<f64>, planes: &[Vector3<f64>; 4]) -> Vec<u32> {
        let mut inside = Vec::new();
        let mut stack = if self.nodes.is_empty() { Vec::new() } else { vec![0usize] };
        while let Some(index) = stack.pop() {
            let node = &self.nodes[index];
            let middle = Vector3::from_fn(|i, _| 0.5 * f64::from(node.low[i] + node.high[i])) - eye;
            let half = Vector3::from_fn(|i, _| 0.5 * f64::from(node.high[i] - node.low[i]));
            if planes.iter().any(|n| n.dot(&middle) > n.abs().dot(&half)) {
                continue;
            }
            if node.count == 0 {
                stack.extend([index + 1, node.first as usize]);
                continue;
            }
            inside.extend(
                self.leaves_of(node).iter().map(|l| l.facet).filter(|f| facets[*f as usize].reaches(eye, planes)),
            );
        }
        inside
    }

    fn leaves_of(&self, node: &Node) -> &[Leaf] {
        &self.leaves[node.first as usize..node.first as usize + usize::from(node.count)]
    }

    /// Calls `found` for each facet met within the limits; true from it ends the walk.
    fn walk(
        &self,
        ray: &Ray,
        near: f64,
        limit: &mut f64,
        mut found: impl FnMut(u32, f64, f64, f64, &mut f64) -> bool,
    ) -> bool {
        if self.nodes.is_empty() {
            return false;
        }
        let origin = [ray.origin.x as f32, ray.origin.y as f32, ray.origin.z as f32];
        let inverse = [0, 1, 2].map(|i| (1.0 / ray.direction[i]) as f32);
        let mut stack = [0u32; 64];
        let mut depth = 1;
        while depth > 0 {
            depth -= 1;
            let index = stack[depth] as usize;
            let node = &self.nodes[index];
            if !enters(node, &origin, &inverse, *limit as f32) {
                continue;
            }
            if node.count == 0 {
                let (first, second) = (index as u32 + 1, node.first);
                // The child on the ray's side is walked first, so that the limit shrinks early.
                let forwards = inverse[usize::from(node.axis)] >= 0.0;
                let (near_child, far_child) = if forwards { (first, second) } else { (second, first) };
                stack[depth] = far_child;
                stack[depth + 1] = near_child;
                depth += 2;
                continue;
            }
            for leaf in self.leaves_of(node) {
                if let Some((t, a, b)) = leaf.shape.meet(ray)
                    && t > near
                    && t < *limit
                    && found(leaf.facet, t, a, b, limit)
                {
                    return true;
                }
            }
        }
        false
    }
}

fn enters(node: &Node, origin: &[f32; 3], inverse: &[f32; 3], limit: f32) -> bool {
    let mut near = 0.0f32;
    let mut far = limit;
    for i in 0..3 {
        let t0 = (node.low[i] - origin[i]) * inverse[i];
        let t1 = (node.high[i] - origin[i]) * inverse[i];
        // Comparisons, not `min` and `max`: one instruction each, and what is no
        // number (a ray along a box's side) leaves the limits as they are.
        let (enter, leave) = if inverse[i] >= 0.0 { (t0, t1) } else { (t1, t0) };
        near = if enter > near { enter } else { near };
        far = if leave < far { leave } else { far };
    }
    // f32 slack: a box that is missed by rounding would show as a hole.
    near <= far * 1.00001 + 0.01
}

/// Box and number of the items whose centres fall into one bin.
#[derive(Clone, Copy)]
struct Bin {
    low: Vector3<f64>,
    high: Vector3<f64>,
    count: usize,
}

impl Bin {
    const EMPTY: Bin = Bin {
        low: Vector3::new(f64::INFINITY, f64::INFINITY, f64::INFINITY),
        high: Vector3::new(f64::NEG_INFINITY, f64::NEG_INFINITY, f64::NEG_INFINITY),
        count: 0,
    };

    fn with(self, other: &Bin) -> Bin {
        Bin { low: self.low.inf(&other.low), high: self.high.sup(&other.high), count: self.count + other.count }
    }

    fn cost(&self) -> f64 {
        if self.count == 0 { 0.0 } else { area(&self.low, &self.high) * self.count as f64 }
    }
}

/// Sorts the items about the best of the binned cuts; `None` where a leaf is cheaper.
fn best_cut(items: &mut [Item]) -> Option<(usize, u16)> {
    let mut best: Option<(f64, usize, f64)> = None;
    for axis in 0..3 {
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for item in items.iter() {
            low = low.min(item.centre(axis));
            high = high.max(item.centre(axis));
        }
        if high - low < 1e-6 {
            continue;
        }
        for (cut, cost) in (1..BINS).zip(costs(items, axis, low, high)) {
            let at = low + (high - low) * cut as f64 / BINS as f64;
            if best.is_none_or(|(c, _, _)| cost < c) {
                best = Some((cost, axis, at));
            }
        }
    }
    let (cost, axis, at) = best?;
    let (low, high) = surround(items);
    if items.len() <= 8 && cost > items.len() as f64 * area(&low, &high) {
        return None;
    }
    items.sort_by(|a, b| a.centre(axis).total_cmp(&b.centre(axis)));
    let middle = items.partition_point(|i| i.centre(axis) < at);
    Some((middle.clamp(1, items.len() - 1), axis as u16))
}

/// Cost of a cut before each bin but the first.
fn costs(items: &[Item], axis: usize, low: f64, high: f64) -> [f64; BINS - 1] {
    let mut bins = [Bin::EMPTY; BINS];
    for item in items {
        let place = ((item.centre(axis) - low) / (high - low) * BINS as f64) as usize;
        let bin = &mut bins[place.min(BINS - 1)];
        *bin = bin.with(&Bin { low: item.low, high: item.high, count: 1 });
    }
    let mut costs = [0.0; BINS - 1];
    let (mut below, mut above) = (Bin::EMPTY, Bin::EMPTY);
    for cut in 0..BINS - 1 {
        below = below.with(&bins[cut]);
        above = above.with(&bins[BINS - 1 - cut]);
        costs[cut] += below.cost();
        costs[BINS - 2 - cut] += above.cost();
    }
    costs
}

#[cfg(test)]
mod tests {
    use rand::RngExt;
    use rand::SeedableRng;
    use rand::rngs::ChaCha8Rng;

    use super::super::facet::Outline;
    use super::*;

    #[test]
    fn finds_what_a_search_through_all_facets_finds() {
        let mut random = ChaCha8Rng::seed_from_u64(5);
        let mut vector = |scale: f64| Vector3::from_fn(|_, _| (random.random::<f64>() - 0.5) * scale);
        let facets: Vec<Facet> = (0..300)
            .map(|i| {
                Facet::new(
                    vector(4000.0),
                    [vector(600.0), vector(600.0)],
                    if i % 2 == 0 { Outline::Triangle } else { Outline::Parallelogram },
                    0,
                    None,
                )
            })
            .collect();
        let tree = Tree::over(&facets);
        let mut hits = 0;
        for _ in 0..2000 {
            let ray = Ray { origin: vector(6000.0), direction: vector(1.0) };
            let slow = facets
                .iter()
                .filter_map(|f| f.shape.meet(&ray).map(|m| m.0))
                .filter(|t| *t > 1e-6)
                .fold(f64::INFINITY, f64::min);
            let quick =
                tree.nearest(&facets, &ray, (1e-6, f64::INFINITY), None, |_, _| true).map_or(f64::INFINITY, |h| h.t);
            assert!(slow.min(1e9) - quick.min(1e9) < 1e-9 && quick.min(1e9) - slow.min(1e9) < 1e-9, "{slow} {quick}");
            hits += u32::from(quick.is_finite());
            let hinted =
                tree.nearest(&facets, &ray, (1e-6, f64::INFINITY), Some(hits % 300), |_, _| true).map(|h| h.facet);
            assert_eq!(hinted, tree.nearest(&facets, &ray, (1e-6, f64::INFINITY), None, |_, _| true).map(|h| h.facet));
            assert_eq!(tree.blocked(&ray, 1e-6, f64::INFINITY, |_, _| true), quick.is_finite());
        }
        assert!(hits > 200, "{hits}");
    }
}
