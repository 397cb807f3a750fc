//! Which single unknown would explain the misfit of the photos best.
//!
//! A stand that moved makes every other body fit worse too; so all suspects
//! are tried with the same test and the one that explains most is named.

use crate::marker::{Rig, Role};
use crate::pose::{Extra, Problem, Scene, ScoreTest};

/// A tried unknown.
#[derive(Debug, Clone)]
pub struct Suspect {
    /// What might be wrong.
    pub extra: Extra,
    /// The test's figures.
    pub test: ScoreTest,
    /// Chance of such a misfit in a job without fault.
    pub chance: f64,
    /// Misfit explained, in units of its noise, less two for each unknown.
    pub weight: f64,
}

/// All suspects, the best explanation first.
pub fn suspects(rig: &Rig, problem: &Problem, scene: &Scene) -> Vec<Suspect> {
    let mut extras = Vec::new();
    for (k, carrier) in rig.carriers.iter().enumerate() {
        if scene.carriers[k].is_none() {
            continue;
        }
        extras.push(Extra::CarrierScale { carrier: k });
        let seen: Vec<usize> = (0..problem.photos.len()).filter(|j| problem.photos[*j].shows(k)).collect();
        if seen.len() >= 2 {
            // With two photos it is the same question for either.
            let asked = if seen.len() == 2 { &seen[1..] } else { &seen[..] };
            extras.extend(asked.iter().map(|j| Extra::CarrierMoved { carrier: k, photo: *j }));
        }
        if carrier.role == Role::Floor && scene.on_floor {
            extras.push(Extra::SheetOffFloor { carrier: k });
        }
    }
    extras.extend((0..problem.photos.len()).map(|photo| Extra::PhotoFocal { photo }));
    let mut suspects: Vec<Suspect> = extras
        .into_iter()
        .filter_map(|extra| {
            let test = scene.score(extra)?;
            let chance = test.chance(scene);
            let rest = scene.variance.max(1e-12);
            let weight = test.drop / rest - 2.0 * test.unknowns as f64;
            Some(Suspect { extra, test, chance, weight })
        })
        .collect();
    suspects.sort_by(|a, b| b.weight.total_cmp(&a.weight));
    suspects
}

/// A suspect counts only when chance is this unlikely to have made it; some
/// fifty suspects of a job share the rate of false alarms.
pub(super) const LEVEL: f64 = 1e-4;

impl super::Case<'_> {
    /// The best explanation, when it is significant and of the wanted kind.
    pub(super) fn culprit(&self, wanted: impl Fn(&Extra) -> bool) -> Option<&Suspect> {
        self.suspects.first().filter(|s| s.chance < LEVEL && wanted(&s.extra))
    }
}
