//! The stand's positions: where it stood before each move and where it stands
//! now, and how each move went.

use std::collections::BTreeSet;

use time::format_description::well_known::Rfc3339;

use super::last_position::proving;
use crate::folder::JobFolder;
use crate::geom::deg;
use crate::job::asking::check_asks;
use crate::job::opening::Opened;
use crate::marker::Role;
use crate::measure::{Answer, Ask, Facts, Measurement, Undetermined, UsedReading, differences, measure};
use crate::pose::Scene;
use crate::quantity::{Estimate, with_uncertainty};
use crate::record::{AimRecord, PositionFigure, PositionRecord, TurnedRecord};
use crate::setup::Check;
use crate::verdict::{Verdict, Went, decide, figure, with_unit};
use crate::words::{Figure, Language, Value, phrase};

/// All positions of a job whose stand was moved, the first one first; empty where it was not.
pub(in crate::job) fn track(opened: &Opened, scene: &Scene, readings: &[UsedReading]) -> Vec<PositionRecord> {
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
            Some(a) => decide(&self.opened.folder.setup.decision, check, &a.estimate).verdict,
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
