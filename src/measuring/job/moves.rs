//! The stand's positions: where it stood before each move and where it stands
//! now, how each move went, what to do first.

use std::collections::BTreeSet;

use time::format_description::well_known::Rfc3339;

use super::answers::check_asks;
use super::opened::Opened;
use super::screws::advice;
use crate::folder::JobFolder;
use crate::geom::deg;
use crate::marker::Role;
use crate::measure::{Answer, Ask, Facts, Measurement, Undetermined, UsedReading, differences, measure};
use crate::pose::{Problem, Scene};
use crate::quantity::{Estimate, with_uncertainty};
use crate::record::{AimRecord, FirstRecord, PositionFigure, PositionRecord, TurnedRecord};
use crate::setup::{Check, Setup};
use crate::verdict::findings::PhotoProblem;
use crate::verdict::{Checked, Proof, Verdict, Went, decide, figure, leave_it, sentences, with_unit};
use crate::words::{Figure, Language, Phrase, Value, phrase};

/// Photos in which a stand and something on the vehicle were both measured: sheets alone would not show that the
/// vehicle was nudged meanwhile.
fn proving(problem: &Problem, scene: &Scene, stand: usize) -> Vec<usize> {
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
    pub(super) fn was_moved(&self) -> bool {
        self.moves.len() > 1
    }

    /// By photo, how often the stand had been moved when it was taken; empty where it was not moved.
    pub(super) fn after_moves(&self) -> Vec<u32> {
        if self.was_moved() { self.folder.photos.iter().map(|p| p.after_move).collect() } else { Vec::new() }
    }

    /// Names of the bodies that are where a stand stood before it was moved.
    pub(super) fn earlier_stands(&self) -> Vec<String> {
        let kit = &self.folder.kit;
        (0..kit.carriers.len()).filter(|k| self.steps.is_earlier(*k)).map(|k| kit.carriers[k].name.clone()).collect()
    }

    /// A check of a stand that was moved: what proves it, or why there is no value where it stands now.
    pub(super) fn of_last_position(
        &self,
        checked: Checked,
        check: &Check,
        asks: &[Ask],
        scene: Option<&Scene>,
    ) -> Checked {
        let Some(scene) = scene else { return checked };
        let Some(proof) = self.proof(scene, check, asks) else { return checked };
        if checked.answer.is_none() && asks.iter().any(|a| !scene.knows(a.target)) {
            return Checked { reason: Some(self.no_last_position()), ..checked };
        }
        proof.weighed(checked)
    }

    /// What the photos of the stand's last position prove of a check's asks; `None` of a job without moves, or of
    /// what is no matter of the stand.
    pub(super) fn proof(&self, scene: &Scene, check: &Check, asks: &[Ask]) -> Option<Proof> {
        if !self.was_moved() || !check.quantity.is_of_target() || check.is_decided_by_reading(&self.folder.kit) {
            return None;
        }
        let problem = self.problem();
        let photos = asks.iter().map(|a| proving(&problem, scene, a.target).len()).min().unwrap_or(0);
        Some(Proof { photos, wanted: self.folder.setup.decision.photos_after_move })
    }

    /// Why the stand has no place where it stands now, and the remedy.
    pub(super) fn no_last_position(&self) -> Phrase {
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
    pub(super) fn name_untied(&mut self) {
        let moved = self.was_moved();
        for (photo, state) in self.folder.photos.iter().zip(&mut self.assignment.photos) {
            if moved && *state == Err(PhotoProblem::NotLinked) {
                *state = Err(PhotoProblem::NotTied { after_move: photo.after_move });
            }
        }
    }
}

/// All positions of a job whose stand was moved, the first one first; empty where it was not.
pub(super) fn track(opened: &Opened, scene: &Scene, readings: &[UsedReading]) -> Vec<PositionRecord> {
    if !opened.was_moved() {
        return Vec::new();
    }
    let track = Track::new(opened, scene, readings);
    (0..opened.moves.len()).rev().map(|position| track.record(position)).collect()
}

struct Track<'a> {
    opened: &'a Opened,
    scene: &'a Scene,
    measurement: Measurement,
    /// The checks that are about the stand, by their index, with the ask of each of their steps.
    checks: Vec<(usize, Vec<Ask>)>,
    /// By position and check: the answer, of its steps the one farthest from what is wanted.
    figures: Vec<Vec<Option<Answer>>>,
    /// By position but the first, and check: how far it went since the one before.
    went: Vec<Vec<Option<Estimate>>>,
}

/// The same question of an earlier position.
fn earlier(opened: &Opened, ask: &Ask, position: usize) -> Ask {
    let (carrier, step) = opened.steps.origin(ask.target);
    Ask { target: opened.steps.body(carrier, opened.steps.state(position, step)), ..ask.clone() }
}

impl<'a> Track<'a> {
    fn new(opened: &'a Opened, scene: &'a Scene, readings: &[UsedReading]) -> Self {
        let folder = &opened.folder;
        let facts = facts(folder);
        let of_stand = |c: &Check| c.quantity.is_of_target() && !c.is_decided_by_reading(&folder.kit);
        let setup = &folder.setup;
        let checks: Vec<(usize, Vec<Ask>)> = (0..setup.checks.len())
            .filter(|i| of_stand(&setup.checks[*i]))
            .map(|i| (i, check_asks(&opened.steps, setup, &setup.checks[i])))
            .collect();
        let positions = opened.moves.len();
        let asks_at =
            |p: usize| checks.iter().flat_map(move |(_, asks)| asks.iter().map(move |a| earlier(opened, a, p)));
        let all: Vec<Ask> = (0..positions).flat_map(asks_at).collect();
        let measurement = measure(&facts, scene, setup.reference_line, &all, readings);
        let pairs: Vec<(Ask, Ask)> = (0..positions - 1).flat_map(|p| asks_at(p + 1).zip(asks_at(p))).collect();
        let changes = differences(&facts, scene, &pairs, readings);
        let each: usize = checks.iter().map(|(_, asks)| asks.len()).sum();
        let (mut figures, mut went) = (Vec::new(), Vec::new());
        for p in 0..positions {
            let (mut here, mut since) = (Vec::new(), Vec::new());
            let mut at = p * each;
            for (i, asks) in &checks {
                let worst = (at..at + asks.len()).max_by(|a, b| {
                    let off = |k: usize| off_by(&setup.checks[*i], &measurement.answers[k]);
                    off(*a).total_cmp(&off(*b))
                });
                let answer = worst.and_then(|k| measurement.answers[k].as_ref().ok());
                here.push(answer.cloned());
                since.push(worst.and_then(|k| changes.get(k)?.as_ref().ok()).map(|a| a.estimate));
                at += asks.len();
            }
            figures.push(here);
            went.push(since);
        }
        Track { opened, scene, measurement, checks, figures, went }
    }

    fn record(&self, position: usize) -> PositionRecord {
        let opened = self.opened;
        let number = opened.moves[position];
        let of_it: Vec<usize> =
            (0..opened.folder.photos.len()).filter(|j| opened.folder.photos[*j].after_move == number).collect();
        let name = |j: usize| opened.folder.photos[j].name.clone();
        let problem = opened.problem();
        let stands = self.stands(position);
        let proven: BTreeSet<usize> = stands.iter().flat_map(|(_, _, k)| proving(&problem, self.scene, *k)).collect();
        let taken = of_it.iter().filter_map(|j| opened.photos[*j].exif.taken).max();
        PositionRecord {
            after_move: number,
            photos: of_it.iter().map(|j| name(*j)).collect(),
            proven_by: proven.into_iter().filter(|j| *j < opened.folder.photos.len()).map(name).collect(),
            taken: taken.and_then(|t| t.format(&Rfc3339).ok()),
            aims: stands.iter().filter_map(|(name, step, k)| self.aim(name, step.as_deref(), *k)).collect(),
            figures: (0..self.checks.len()).map(|i| self.figure(position, i)).collect(),
            turned: self.turned(position),
        }
    }

    /// Targets with their steps and bodies in a position.
    fn stands(&self, position: usize) -> Vec<(String, Option<String>, usize)> {
        let (steps, setup) = (&self.opened.steps, &self.opened.folder.setup);
        let targets = (0..steps.carriers()).filter(|k| steps.kit.carriers[*k].role == Role::Target);
        let each = move |k: usize| {
            (0..steps.judged(k)).map(move |s| {
                (
                    steps.kit.carriers[k].name.clone(),
                    setup.steps.get(s).cloned(),
                    steps.body(k, steps.state(position, s)),
                )
            })
        };
        targets.flat_map(each).collect()
    }

    fn aim(&self, target: &str, step: Option<&str>, body: usize) -> Option<AimRecord> {
        let pose = self.measurement.carriers[body].as_ref()?.vehicle_from_carrier;
        let ahead = pose.direction(&nalgebra::Vector3::x());
        Some(AimRecord {
            target: target.to_owned(),
            step: step.map(str::to_owned),
            position_mm: pose.origin_mm().into(),
            heading_deg: deg(ahead.y.atan2(ahead.x)),
        })
    }

    fn verdict(&self, position: usize, i: usize) -> Verdict {
        let check = &self.opened.folder.setup.checks[self.checks[i].0];
        match &self.figures[position][i] {
            Some(a) => decide(&self.opened.folder.setup.decision, check.lower, check.upper, &a.estimate).verdict,
            None => Verdict::Retake,
        }
    }

    fn figure(&self, position: usize, i: usize) -> PositionFigure {
        let check = &self.opened.folder.setup.checks[self.checks[i].0];
        let estimate = self.figures[position][i].as_ref().map(|a| a.estimate);
        let before = self.figures.get(position + 1).and_then(|f| f[i].as_ref());
        let outside = before.is_some() && self.verdict(position + 1, i) == Verdict::Outside;
        let asked = before.filter(|_| outside).map(|a| check.nominal - a.estimate.value);
        let moved = before.and(self.went[position][i]);
        let words = estimate.zip(moved).and_then(|(now, moved)| {
            let went = Went {
                asked,
                moved: moved.value,
                expanded_u_moved: moved.expanded_uncertainty(),
                left: check.nominal - now.value,
                expanded_u: now.expanded_uncertainty(),
                verdict: self.verdict(position, i),
            };
            went.phrase(check.quantity.unit())
        });
        PositionFigure {
            check: self.checks[i].0,
            value: estimate.map(|e| e.value),
            standard_uncertainty: estimate.map(|e| e.standard_uncertainty),
            expanded_uncertainty: estimate.map(|e| e.expanded_uncertainty()),
            verdict: self.verdict(position, i),
            asked,
            moved: moved.map(|m| m.value),
            u_moved: moved.map(|m| m.standard_uncertainty),
            expanded_u_moved: moved.map(|m| m.expanded_uncertainty()),
            words: words.as_ref().map(|p| p.say(Language::English)),
            words_phrase: words,
        }
    }

    /// What the screws that were turned before this position gave.
    fn turned(&self, position: usize) -> Vec<TurnedRecord> {
        let folder = &self.opened.folder;
        let number = self.opened.moves[position] as usize;
        let Some((stand, made)) =
            folder.stand.as_ref().zip(number.checked_sub(1).and_then(|n| folder.job.moves.get(n)))
        else {
            return Vec::new();
        };
        // Of moves that were not photographed one by one no screw's part can be told.
        let before = self.opened.moves.get(position + 1).copied();
        let alone = before.is_some_and(|b| b as usize + 1 == number);
        made.turned
            .iter()
            .filter_map(|(name, turns)| {
                let screw = stand.screw(name)?;
                // Two screws for one figure: neither's part can be told.
                let shared = made.turned.keys().filter_map(|n| stand.screw(n)).filter(|s| s.quantity == screw.quantity);
                let one = alone && shared.count() == 1 && turns.abs() > 1e-6;
                let of_it = |(i, _): &(usize, Vec<Ask>)| folder.setup.checks[*i].quantity == screw.quantity;
                let went = self.checks.iter().position(of_it).filter(|_| one).and_then(|i| self.went[position][i]);
                Some(turned(screw, *turns, went))
            })
            .collect()
    }
}

fn turned(screw: &crate::setup::Screw, turns: f64, went: Option<Estimate>) -> TurnedRecord {
    let (screw_name, of) = (&screw.name, Figure::plain(turns));
    let words = match went {
        None => phrase!("moves-screw-unknown", turns = of, screw = screw_name),
        Some(went) => {
            let (gave, u) = with_uncertainty(went.value, went.expanded_uncertainty());
            let (gave, u) = (Value::digits(&gave), Value::digits(&u));
            let (per_turn, stated) = (figure(went.value / turns, 2), figure(screw.per_turn, 2));
            let of_unit = |x| with_unit(x, screw.quantity.unit());
            phrase!(
                "moves-screw-gave",
                turns = of,
                screw = screw_name,
                gave = of_unit(gave),
                uncertainty = u,
                per_turn = of_unit(per_turn),
                stated = stated
            )
        }
    };
    TurnedRecord {
        screw: screw.name.clone(),
        turns,
        stated_per_turn: screw.per_turn,
        per_turn: went.map(|w| w.value / turns),
        u_per_turn: went.map(|w| w.standard_uncertainty / turns.abs()),
        words: words.say(Language::English),
        words_phrase: Some(words),
    }
}

fn facts(folder: &JobFolder) -> Facts<'_> {
    Facts { kit: &folder.kit, setup: &folder.setup, vehicle: &folder.job.vehicle }
}

/// How far a value is from what is wanted; what has none is farthest.
fn off_by(check: &Check, answer: &Result<Answer, Undetermined>) -> f64 {
    answer.as_ref().map_or(f64::INFINITY, |a| (a.estimate.value - check.nominal).abs())
}

/// The one thing to do first: of the moves that are ordered the one that disturbs the others most, so that it is not
/// to be done again; where none is, the photo that is wanted.
pub(super) fn first(opened: &Opened, checks: &[Checked], track: &[PositionRecord]) -> Option<FirstRecord> {
    let setup: &Setup = &opened.folder.setup;
    let ordered = |i: &usize| {
        setup.checks[*i].quantity.is_of_target()
            && checks[*i].verdict == Verdict::Outside
            && checks[*i].move_by.is_some()
    };
    let next = (0..checks.len()).filter(ordered).min_by_key(|i| setup.checks[*i].quantity.move_order());
    if let Some(i) = next {
        let (check, move_by) = (&setup.checks[i], checks[i].move_by?);
        let screw = opened.folder.stand.as_ref().and_then(|s| advice(s, check.quantity, move_by, track));
        let last = track.last().and_then(|p| p.figures.iter().find(|f| f.check == i)?.words_phrase.clone());
        return Some(FirstRecord {
            screw: screw.as_ref().map(|p| p.say(Language::English)),
            screw_phrase: screw,
            last_move: last.as_ref().map(|p| p.say(Language::English)),
            last_move_phrase: last,
            ..to_do(Some(i), checks[i].correction.clone())
        });
    }
    let lacking = |c: &Checked| c.verdict == Verdict::NotProven && c.correction == leave_it();
    let held = checks.iter().find(|c| lacking(c))?;
    let reason = held.reason.clone().unwrap_or_else(|| phrase!("moves-one-more-photo"));
    (!checks.iter().any(|c| c.verdict == Verdict::Outside || !c.untrusted.is_empty()))
        .then(|| to_do(None, phrase!("moves-leave-stand", reason = reason)))
}

fn to_do(check: Option<usize>, words: Phrase) -> FirstRecord {
    FirstRecord {
        check,
        words: words.say(Language::English),
        words_phrase: Some(words),
        screw: None,
        screw_phrase: None,
        last_move: None,
        last_move_phrase: None,
    }
}
