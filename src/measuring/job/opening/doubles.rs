//! A carrier that stood in several places: a body of its own for each.
//!
//! The stand is tilted between two steps, was moved after the first verdict, or
//! may have moved between two attempts. The working kit then has the carrier once
//! for each state, with the same markers: their places on it stay one unknown of
//! the adjustment.
//!
//! Positions of a stand that was moved are counted backwards: where it stands now
//! has the states of a job without moves, and so the carrier's own name.

use crate::marker::{Carrier, Kit, Role};
use crate::pose::PhotoView;
use crate::verdict::AFTER_MOVE;

/// The working kit and what its carriers stand for.
#[derive(Debug, Clone)]
pub struct Doubles {
    /// The kit with a carrier for each state of those that change.
    pub kit: Kit,
    /// By carrier of the kit that was doubled: its carriers by state; one
    /// entry where it is the same in all.
    bodies: Vec<Vec<usize>>,
    /// States of one position: the steps, or one.
    steps: usize,
}

impl Doubles {
    /// A carrier for each state of those that `changes` names. The first state
    /// keeps the carrier itself.
    pub fn new(kit: &Kit, states: &[&str], changes: impl Fn(&Carrier) -> bool) -> Self {
        let suffixes: Vec<String> = states.iter().map(|state| format!(" ({state})")).collect();
        Doubles::of_suffixes(kit, &suffixes, changes)
    }

    /// The same; `suffixes` tell the names of a carrier's states apart.
    fn of_suffixes(kit: &Kit, suffixes: &[String], changes: impl Fn(&Carrier) -> bool) -> Self {
        let mut doubled = kit.clone();
        let mut bodies = Vec::new();
        for (k, carrier) in kit.carriers.iter().enumerate() {
            let mut own = vec![k];
            for suffix in suffixes.iter().skip(1).filter(|_| changes(carrier)) {
                own.push(doubled.carriers.len());
                doubled.carriers.push(Carrier { name: format!("{}{suffix}", carrier.name), ..carrier.clone() });
            }
            bodies.push(own);
        }
        Doubles { kit: doubled, bodies, steps: suffixes.len().max(1) }
    }

    /// A stand for each of `steps` (none: the sheet has one position) in each position; `moves` has the number of
    /// moves before each, the last position first.
    pub fn of_positions(kit: &Kit, steps: &[&str], moves: &[u32]) -> Self {
        let plain: Vec<String> = match steps {
            [] => vec![String::new()],
            _ => steps.iter().map(|step| format!(" ({step})")).collect(),
        };
        let earlier = moves.iter().skip(1).flat_map(|n| plain.iter().map(move |step| format!("{step}{AFTER_MOVE}{n}")));
        let suffixes: Vec<String> = plain.iter().cloned().chain(earlier).collect();
        Doubles { steps: plain.len(), ..Doubles::of_suffixes(kit, &suffixes, |c| c.role == Role::Target) }
    }

    /// The state of a step in a position; the last position is 0.
    pub fn state(&self, position: usize, step: usize) -> usize {
        position * self.steps + step
    }

    /// The states of a carrier that the sheet is about: where it stands now, in each step.
    pub(in crate::job) fn judged(&self, carrier: usize) -> usize {
        self.states(carrier).min(self.steps)
    }

    /// Whether one of the working kit's carriers is where a stand stood before it was moved.
    pub fn is_earlier(&self, body: usize) -> bool {
        self.origin(body).1 >= self.steps
    }

    /// The carrier in one state.
    pub fn body(&self, carrier: usize, state: usize) -> usize {
        let own = &self.bodies[carrier];
        own.get(state).copied().unwrap_or(own[0])
    }

    /// How many carriers the kit had before; they come first.
    pub(in crate::job) fn carriers(&self) -> usize {
        self.bodies.len()
    }

    /// The carrier of the kit that was doubled, and the state, of one of the working kit's.
    pub(in crate::job) fn origin(&self, body: usize) -> (usize, usize) {
        let of = |(k, own): (usize, &Vec<usize>)| own.iter().position(|b| *b == body).map(|state| (k, state));
        self.bodies.iter().enumerate().find_map(of).unwrap_or((body, 0))
    }

    /// The states of a carrier: one or all.
    pub fn states(&self, carrier: usize) -> usize {
        self.bodies[carrier].len()
    }

    /// Says which state a photo shows; of no state: what changes is left out.
    pub fn assign(&self, photo: &mut PhotoView, state: Option<usize>) {
        photo.views.retain(|v| state.is_some() || self.states(v.carrier) == 1);
        for view in &mut photo.views {
            view.carrier = self.body(view.carrier, state.unwrap_or(0));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_changes_is_doubled() {
        let text = crate::folder::Models::embedded().open(&[crate::folder::Kind::Kit], "demo-bay").unwrap();
        let kit = crate::marker::KitFile::from_toml(text.text().unwrap(), "kit").unwrap().kit;
        let doubles = Doubles::new(&kit, &["level", "tilted"], |c| c.role == Role::Target);
        let stand = kit.with_role(Role::Target).next().unwrap();
        assert_eq!(doubles.kit.carriers.len(), kit.carriers.len() + 1);
        assert_eq!(doubles.kit.carriers[doubles.body(stand, 1)].name, "stand (tilted)");
        assert_eq!((doubles.body(stand, 0), doubles.states(stand)), (stand, 2));
        let wheel = kit.with_role(Role::RearLeftWheel).next().unwrap();
        assert_eq!((doubles.body(wheel, 1), doubles.states(wheel)), (wheel, 1));
    }

    #[test]
    fn where_the_stand_stands_now_keeps_its_name() {
        let text = crate::folder::Models::embedded().open(&[crate::folder::Kind::Kit], "demo-bay").unwrap();
        let kit = crate::marker::KitFile::from_toml(text.text().unwrap(), "kit").unwrap().kit;
        let stand = kit.with_role(Role::Target).next().unwrap();
        let moved = Doubles::of_positions(&kit, &[], &[2, 1, 0]);
        let name = |position| moved.kit.carriers[moved.body(stand, moved.state(position, 0))].name.as_str();
        assert_eq!([name(0), name(1), name(2)], ["stand", "stand @1", "stand @0"]);
        assert_eq!((moved.states(stand), moved.judged(stand)), (3, 1));
        let stepped = Doubles::of_positions(&kit, &["level", "tilted"], &[1, 0]);
        let body = stepped.body(stand, stepped.state(1, 1));
        assert_eq!(stepped.kit.carriers[body].name, "stand (tilted) @0");
        assert!(stepped.is_earlier(body) && !stepped.is_earlier(stepped.body(stand, 1)));
        assert_eq!(stepped.judged(stand), 2);
    }
}
