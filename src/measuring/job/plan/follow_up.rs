//! What one photo is worth after the stand was moved, and from where most: the
//! photos before the move place vehicle and floor, the stand is another body.

use rayon::prelude::*;

use super::predict::{Predicted, Predictor, Shot};
use super::search::cost;
use crate::job::asking::check_asks;
use crate::job::opening::Doubles;
use crate::marker::Role;
use crate::measure::{Ask, Facts, measure};
use crate::pose::{PhotoView, Problem, expect};

/// A photo after a move with what it will be worth.
pub(super) struct FollowUp<'a> {
    pub(super) shot: &'a Shot,
    pub(super) predicted: Vec<Predicted>,
}

/// The best of some places for one photo after a move; `None` where none shows the stand with what stood still.
pub(super) fn best<'a>(predictor: &Predictor, before: &[Shot], places: &[&'a Shot]) -> Option<FollowUp<'a>> {
    let moved = Moved::new(predictor);
    let tried: Vec<FollowUp> = places
        .par_iter()
        .filter(|shot| ties(predictor, shot))
        .map(|shot| FollowUp { shot, predicted: moved.predict(before, shot) })
        .collect();
    tried.into_iter().min_by(|a, b| cost(&a.predicted).total_cmp(&cost(&b.predicted)))
}

/// Whether a photo shows a target, and something on the vehicle, which `within` takes.
fn ties(predictor: &Predictor, shot: &Shot) -> bool {
    let sees = predictor.sees(shot);
    let role = |wanted: &dyn Fn(Role) -> bool| sees.iter().any(|k| wanted(predictor.steps.kit.carriers[*k].role));
    role(&|r| r == Role::Target) && role(&Role::is_on_vehicle)
}

/// The bay before and after a move in which the stand comes to where it is wanted.
struct Moved<'p, 'a> {
    predictor: &'p Predictor<'a>,
    stands: Doubles,
    /// By check: its asks of where the stand stands now.
    asks: Vec<Vec<Ask>>,
}

/// Positions by their number: the last one first.
const NOW: usize = 0;
const BEFORE: usize = 1;

impl<'p, 'a> Moved<'p, 'a> {
    fn new(predictor: &'p Predictor<'a>) -> Self {
        let setup = predictor.wanted.setup;
        let names: Vec<&str> = setup.steps.iter().map(String::as_str).collect();
        let stands = Doubles::of_positions(predictor.wanted.kit, &names, &[1, 0]);
        let asks = setup.checks.iter().map(|c| check_asks(&stands, setup, c)).collect();
        Moved { predictor, stands, asks }
    }

    /// A photo with its stand in a position.
    fn photo(&self, view: &PhotoView, position: usize) -> PhotoView {
        let mut view = view.clone();
        for v in &mut view.views {
            let (carrier, step) = self.predictor.steps.origin(v.carrier);
            v.carrier = self.stands.body(carrier, self.stands.state(position, step));
        }
        view
    }

    fn predict(&self, before: &[Shot], after: &Shot) -> Vec<Predicted> {
        let (kit, of) = (&self.stands.kit, self.predictor);
        let shots = before.iter().map(|s| (s, BEFORE)).chain([(after, NOW)]);
        let (mut photos, mut poses) = (Vec::new(), Vec::new());
        for (shot, position) in shots {
            for view in &shot.views {
                poses.push((!view.views.is_empty()).then(|| shot.station.camera_from_world()));
                photos.push(self.photo(view, position));
            }
        }
        let seen = |k: usize| photos.iter().any(|p| p.shows(k));
        let place = |k: usize| {
            let (carrier, state) = self.stands.origin(k);
            of.bay.carriers[of.steps.body(carrier, state % self.stands.state(1, 0))].filter(|_| seen(k))
        };
        let carriers: Vec<_> = (0..kit.carriers.len()).map(place).collect();
        let on_floor = kit.with_role(Role::Floor).any(|k| carriers[k].is_some());
        let problem = Problem { kit, cameras: vec![of.wanted.camera], photos };
        let scene = expect(&problem, &poses, &carriers, on_floor, &of.presumed);
        let facts = Facts { kit, setup: of.wanted.setup, vehicle: of.typed() };
        let line = of.wanted.setup.reference_line;
        let measured = scene.map(|s| measure(&facts, &s, line, &self.asks.concat(), &[]));
        let mut answers = measured.map(|m| m.answers).unwrap_or_default().into_iter();
        let checks = of.wanted.setup.checks.iter().zip(&self.asks);
        checks
            .map(|(check, asks)| {
                let own: Vec<_> = answers.by_ref().take(asks.len()).collect();
                of.judge_worst(check, &own)
            })
            .collect()
    }
}
