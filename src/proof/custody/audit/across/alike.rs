//! Finding the jobs that may share a set-up without looking at every pair: a tree
//! of boxes over their values (k-d tree; Bentley 1975, Communications of the ACM
//! 18(9), 509), each box with the largest uncertainty in it. A box is left aside
//! where no job in it can reach the odds that are wanted, so nothing is missed.

use super::values::{Group, Spread, Value, same};

/// Jobs of a box that is not split any further.
const LEAF: usize = 12;

/// One check's values in a box; infinite where a job has none.
#[derive(Debug, Clone, Copy)]
struct Side {
    least: f64,
    most: f64,
    /// The largest uncertainty.
    u: f64,
}

/// Jobs `from..to` of the tree's own order, in one box.
#[derive(Debug)]
struct Node {
    from: u32,
    to: u32,
    /// The first and the last of its jobs in the order of the best value.
    ends: [u32; 2],
    /// The second of the two halves; the first stands behind its node. 0 for a leaf.
    second: u32,
}

/// The jobs of a group that have the value that tells most.
pub(super) struct Tree<'a> {
    group: &'a Group,
    spreads: &'a [Spread],
    wanted: f64,
    /// Places in the group, by the best value.
    sorted: Vec<u32>,
    /// Places in `sorted`, box after box.
    boxed: Vec<u32>,
    nodes: Vec<Node>,
    /// For each node a side for each spread.
    sides: Vec<Side>,
    /// The best odds that a job can have with any other, by its place in `sorted`.
    hope: Vec<f64>,
}

impl<'a> Tree<'a> {
    pub(super) fn new(group: &'a Group, spreads: &'a [Spread], best: u32, wanted: f64) -> Self {
        let hope = |n: usize| hope(group.of(n), spreads);
        let value = |n: u32| group.value(n as usize, best).map_or(f64::NAN, |v| v.value);
        // Who can't reach the odds with anybody is not looked at.
        let mut sorted: Vec<u32> = (0..group.len())
            .filter(|n| group.value(*n, best).is_some() && hope(*n) > wanted)
            .map(|n| n as u32)
            .collect();
        sorted.sort_by(|a, b| value(*a).total_cmp(&value(*b)));
        let hopes = sorted.iter().map(|n| hope(*n as usize)).collect();
        let boxed = (0..sorted.len() as u32).collect();
        let mut tree =
            Tree { group, spreads, wanted, sorted, boxed, nodes: Vec::new(), sides: Vec::new(), hope: hopes };
        if !tree.sorted.is_empty() {
            tree.split(0, tree.sorted.len());
        }
        tree
    }

    pub(super) fn len(&self) -> usize {
        self.sorted.len()
    }

    /// Where a job of the sorted ones stands in the group.
    pub(super) fn order(&self, n: usize) -> usize {
        self.sorted[n] as usize
    }

    fn values(&self, n: usize) -> &'a [Value] {
        self.group.of(self.order(n))
    }

    /// Makes the node of a part of `boxed`, halved where its values lie furthest apart.
    fn split(&mut self, from: usize, to: usize) {
        let sides: Vec<Side> = (0..self.spreads.len()).map(|k| self.side(k, from, to)).collect();
        let extent = |k: &usize| (sides[*k].most - sides[*k].least) / self.spreads[*k].sigma;
        let widest = (0..sides.len())
            .filter(|k| extent(k).is_finite() && extent(k) > 0.0)
            .max_by(|a, b| extent(a).total_cmp(&extent(b)));
        let own = self.boxed[from..to].iter().copied();
        let ends = own.fold([u32::MAX, 0], |[first, last], n| [first.min(n), last.max(n)]);
        let here = self.nodes.len();
        self.nodes.push(Node { from: from as u32, to: to as u32, ends, second: 0 });
        self.sides.extend(sides);
        let Some(k) = widest.filter(|_| to - from > LEAF) else {
            self.boxed[from..to].sort_unstable();
            return;
        };
        let (group, sorted, check) = (self.group, &self.sorted, self.spreads[k].check);
        let value = |n: &u32| group.value(sorted[*n as usize] as usize, check).map_or(0.0, |v| v.value);
        let middle = (to - from) / 2;
        self.boxed[from..to].select_nth_unstable_by(middle, |a, b| value(a).total_cmp(&value(b)));
        self.split(from, from + middle);
        self.nodes[here].second = self.nodes.len() as u32;
        self.split(from + middle, to);
    }

    fn side(&self, k: usize, from: usize, to: usize) -> Side {
        let mut side = Side { least: f64::INFINITY, most: f64::NEG_INFINITY, u: 0.0 };
        for n in &self.boxed[from..to] {
            let Some(v) = self.group.value(self.order(*n as usize), self.spreads[k].check) else {
                return Side { least: f64::NEG_INFINITY, most: f64::INFINITY, u: f64::INFINITY };
            };
            side = Side { least: side.least.min(v.value), most: side.most.max(v.value), u: side.u.max(v.u) };
        }
        side
    }

    /// The first job behind `a`, by the best value, that shares its set-up, and the checks that say so.
    pub(super) fn next_alike(&self, a: usize) -> Option<(usize, Vec<u32>)> {
        let mut found: Option<(usize, Vec<u32>)> = None;
        let mut open = vec![0_u32];
        while let Some(place) = open.pop() {
            let node = &self.nodes[place as usize];
            let before = found.as_ref().map_or(usize::MAX, |f| f.0);
            let [first, last] = node.ends.map(|n| n as usize);
            if last <= a || first >= before || !self.may_hold(place as usize, a) {
                continue;
            }
            if node.second > 0 {
                open.extend([node.second, place + 1]);
                continue;
            }
            let own = self.boxed[node.from as usize..node.to as usize].iter().map(|b| *b as usize);
            let behind = own.skip_while(|b| *b <= a).take_while(|b| *b < before);
            let alike = |b| Some((b, same(self.values(a), self.values(b), self.spreads, self.wanted)?));
            found = behind.map(alike).find(Option::is_some).flatten().or(found);
        }
        found
    }

    /// Whether some job of a box can be alike: odds at its nearest place with its largest uncertainty.
    fn may_hold(&self, place: usize, a: usize) -> bool {
        let mut odds = self.hope[a];
        let sides = &self.sides[place * self.spreads.len()..][..self.spreads.len()];
        for (spread, side) in self.spreads.iter().zip(sides) {
            let Some(v) = self.values(a).iter().find(|v| v.check == spread.check) else { continue };
            let gap = (side.least - v.value).max(v.value - side.most);
            let (noise, chance) = (v.u.powi(2) + side.u.powi(2), 2.0 * spread.sigma * spread.sigma);
            if gap > 0.0 && noise < chance {
                odds -= 0.5 * gap * gap * (1.0 / noise - 1.0 / chance);
            }
        }
        odds > self.wanted
    }
}

/// No other job can be likelier the same than one at the same place that is known exactly.
fn hope(values: &[Value], spreads: &[Spread]) -> f64 {
    let one = |spread: &Spread| {
        let v = values.iter().find(|v| v.check == spread.check)?;
        Some((2_f64.sqrt() * spread.sigma / v.u).ln().max(0.0))
    };
    spreads.iter().filter_map(one).sum()
}
