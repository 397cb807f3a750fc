//! A carrier that stood in several places: a body of its own for each.
//!
//! The stand is tilted between two steps, or may have moved between two
//! attempts. The working rig then has the carrier once for each state, with
//! the same markers: their places on it stay one unknown of the adjustment.

use crate::marker::{Carrier, Rig};
use crate::pose::PhotoView;

/// The working rig and what its carriers stand for.
#[derive(Debug, Clone)]
pub(super) struct Doubles {
    /// The rig with a carrier for each state of those that change.
    pub(super) rig: Rig,
    /// By carrier of the rig that was doubled: its carriers by state; one
    /// entry where it is the same in all.
    bodies: Vec<Vec<usize>>,
}

impl Doubles {
    /// A carrier for each state of those that `changes` names. The first state
    /// keeps the carrier itself.
    pub(super) fn new(rig: &Rig, states: &[&str], changes: impl Fn(&Carrier) -> bool) -> Self {
        let mut doubled = rig.clone();
        let mut bodies = Vec::new();
        for (k, carrier) in rig.carriers.iter().enumerate() {
            let mut own = vec![k];
            for state in states.iter().skip(1).filter(|_| changes(carrier)) {
                own.push(doubled.carriers.len());
                doubled.carriers.push(Carrier { name: format!("{} ({state})", carrier.name), ..carrier.clone() });
            }
            bodies.push(own);
        }
        Doubles { rig: doubled, bodies }
    }

    /// The carrier in one state.
    pub(super) fn body(&self, carrier: usize, state: usize) -> usize {
        let own = &self.bodies[carrier];
        own.get(state).copied().unwrap_or(own[0])
    }

    /// How many carriers the rig had before; they come first.
    pub(super) fn carriers(&self) -> usize {
        self.bodies.len()
    }

    /// The carrier of the rig that was doubled, and the state, of one of the working rig's.
    pub(super) fn origin(&self, body: usize) -> (usize, usize) {
        let of = |(k, own): (usize, &Vec<usize>)| own.iter().position(|b| *b == body).map(|state| (k, state));
        self.bodies.iter().enumerate().find_map(of).unwrap_or((body, 0))
    }

    /// The states of a carrier: one or all.
    pub(super) fn states(&self, carrier: usize) -> usize {
        self.bodies[carrier].len()
    }

    /// Says which state a photo shows; of no state: what changes is left out.
    pub(super) fn assign(&self, photo: &mut PhotoView, state: Option<usize>) {
        photo.views.retain(|v| state.is_some() || self.states(v.carrier) == 1);
        for view in &mut photo.views {
            view.carrier = self.body(view.carrier, state.unwrap_or(0));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::marker::Role;

    #[test]
    fn only_what_changes_is_doubled() {
        let text = crate::folder::Models::embedded().open(&[crate::folder::Kind::Rig], "demo-bay").unwrap();
        let rig = crate::marker::RigFile::from_toml(text.text().unwrap(), "rig").unwrap().rig;
        let doubles = Doubles::new(&rig, &["level", "tilted"], |c| c.role == Role::Target);
        let stand = rig.with_role(Role::Target).next().unwrap();
        assert_eq!(doubles.rig.carriers.len(), rig.carriers.len() + 1);
        assert_eq!(doubles.rig.carriers[doubles.body(stand, 1)].name, "stand (tilted)");
        assert_eq!((doubles.body(stand, 0), doubles.states(stand)), (stand, 2));
        let wheel = rig.with_role(Role::RearLeftWheel).next().unwrap();
        assert_eq!((doubles.body(wheel, 1), doubles.states(wheel)), (wheel, 1));
    }
}
