//! What proves where a stand that was moved stands now: the photos of its last position, and of each step.

use crate::job::asking::check_asks;
use crate::job::opening::Opened;
use crate::measure::Ask;
use crate::pose::{Problem, Scene};
use crate::setup::{Check, Decision};
use crate::verdict::findings::PhotoProblem;
use crate::verdict::{Checked, Proof, sentences};
use crate::words::{Phrase, phrase};

/// Photos in which a stand and something on the vehicle were both measured: sheets alone would not show that the
/// vehicle was nudged meanwhile.
pub(super) fn proving(problem: &Problem, scene: &Scene, stand: usize) -> Vec<usize> {
    let measured = |j: usize, wanted: &dyn Fn(usize) -> bool| {
        let Some(solved) = &scene.photos[j] else { return false };
        let views = problem.photos[j].views.iter().zip(&solved.views);
        views.filter(|(view, _)| wanted(view.carrier)).any(|(_, s)| s.used.contains(&true))
    };
    let on_vehicle = |k: usize| problem.kit.carriers[k].role.is_on_vehicle();
    (0..problem.photos.len()).filter(|j| measured(*j, &|k| k == stand) && measured(*j, &on_vehicle)).collect()
}

impl Opened {
    /// Whether the stand was moved between the job's photos.
    pub(in crate::job) fn was_moved(&self) -> bool {
        self.moves.len() > 1
    }

    /// By photo, how often the stand had been moved when it was taken; empty where it was not moved.
    pub(in crate::job) fn after_moves(&self) -> Vec<u32> {
        if self.was_moved() { self.folder.photos.iter().map(|p| p.after_move).collect() } else { Vec::new() }
    }

    /// Names of the bodies that are where a stand stood before it was moved.
    pub(in crate::job) fn earlier_stands(&self) -> Vec<String> {
        let kit = &self.folder.kit;
        (0..kit.carriers.len()).filter(|k| self.steps.is_earlier(*k)).map(|k| kit.carriers[k].name.clone()).collect()
    }

    /// A check of a stand that stood in several places: what proves it, or why there is no value where it stands now.
    pub(in crate::job) fn of_last_position(
        &self,
        checked: Checked,
        check: &Check,
        asks: &[Ask],
        scene: Option<&Scene>,
    ) -> Checked {
        let Some(scene) = scene else { return checked };
        let Some(proof) = self.proof(scene, check, asks) else { return checked };
        if checked.answer.is_none() && self.was_moved() && asks.iter().any(|a| !scene.knows(a.target)) {
            return Checked { reason: Some(self.no_last_position()), ..checked };
        }
        proof.weighed(checked)
    }

    /// What the photos of the stand's last position prove of a check's asks; `None` of a job with one place of the
    /// stand, or of what is no matter of the stand.
    pub(in crate::job) fn proof(&self, scene: &Scene, check: &Check, asks: &[Ask]) -> Option<Proof> {
        let photos = self.proving_by_ask(scene, check, asks);
        let (photos, body) = photos.into_iter().min_by_key(|(photos, _)| *photos)?;
        let step = self.folder.setup.steps.get(self.steps.origin(body).1).filter(|_| !self.was_moved());
        Some(Proof { photos, wanted: self.photos_wanted(), step: step.cloned() })
    }

    /// By check, whether its steps have photos enough once there is one more of that state.
    pub(in crate::job) fn proves_with_one_more(&self, scene: &Scene, state: usize) -> Vec<bool> {
        let setup = &self.folder.setup;
        let lacking = |(photos, body): &(usize, usize)| {
            photos + usize::from(self.steps.origin(*body).1 == state) < self.photos_wanted()
        };
        let proven = |check: &Check| {
            let asks = check_asks(&self.steps, setup, check);
            setup.steps.len() <= 1 || !self.proving_by_ask(scene, check, &asks).iter().any(lacking)
        };
        setup.checks.iter().map(proven).collect()
    }

    /// By ask, how many photos prove it and of which body; none of a job with one place of the stand.
    fn proving_by_ask(&self, scene: &Scene, check: &Check, asks: &[Ask]) -> Vec<(usize, usize)> {
        let several = self.was_moved() || self.folder.setup.steps.len() > 1;
        if !several || !check.quantity.is_of_target() || check.is_decided_by_reading(&self.folder.kit) {
            return Vec::new();
        }
        let problem = self.problem();
        asks.iter().map(|a| (proving(&problem, scene, a.target).len(), a.target)).collect()
    }

    /// How many photos have to show the stand in each of its places. A step is no move: nothing asks for fewer than two.
    fn photos_wanted(&self) -> usize {
        let wanted = self.folder.setup.decision.photos_after_move;
        if self.was_moved() { wanted } else { Decision::PHOTOS_AFTER_MOVE }
    }

    /// Why the stand has no place where it stands now, and the remedy.
    pub(in crate::job) fn no_last_position(&self) -> Phrase {
        let last = self.moves[0];
        let own = self.folder.photos.iter().zip(&self.assignment.photos).filter(|(p, _)| p.after_move == last);
        let whys: Vec<Phrase> = own
            .filter_map(|(p, a)| {
                let why = a.as_ref().err()?.phrase();
                Some(phrase!("findings-of-photo", photo = &p.name, why = why))
            })
            .collect();
        if whys.is_empty() {
            return phrase!("moves-no-place", move = last);
        }
        sentences(phrase!("moves-no-place-because", move = last), whys)
    }

    /// Photos of a moved stand that nothing ties to those before.
    pub(in crate::job) fn name_untied(&mut self) {
        let moved = self.was_moved();
        for (photo, state) in self.folder.photos.iter().zip(&mut self.assignment.photos) {
            if moved && *state == Err(PhotoProblem::NotLinked) {
                *state = Err(PhotoProblem::NotTied { after_move: photo.after_move });
            }
        }
    }
}
