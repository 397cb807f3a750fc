//! How far a screw of the stand really goes by a turn, learned from the moves so far.

use crate::quantity::{Quantity, with_uncertainty};
use crate::record::PositionRecord;
use crate::setup::{Screw, Stand};
use crate::verdict::{figure, with_unit};
use crate::words::{Phrase, Value, phrase};

/// So many turns together, before what they gave counts for more than the stand file.
const LEAST_TURNS: f64 = 2.0;
/// Only where its standard uncertainty is this small against it.
const MOST_U_RELATIVE: f64 = 0.1;
/// Only where it differs from the stand file by more than so many of its standard uncertainties.
const LEAST_SIGMAS: f64 = 2.0;

/// What one turn gave, with 1 sigma.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Learned {
    per_turn: f64,
    u: f64,
}

/// Turns of the screw for a quantity that change it by so much: by what its turns really gave where that is known
/// well and is something else than the stand file says, which the words then tell.
pub(in crate::job) fn advice(
    stand: &Stand,
    quantity: Quantity,
    change: f64,
    track: &[PositionRecord],
) -> Option<Phrase> {
    let screw = stand.screw_for(quantity)?;
    let Some(learned) = learned(screw, track) else { return screw.phrase(change) };
    let turns = Screw { per_turn: learned.per_turn, ..screw.clone() }.phrase(change)?;
    let (gives, _) = with_uncertainty(learned.per_turn.abs(), 2.0 * learned.u);
    let [gives, stated] =
        [Value::digits(&gives), figure(screw.per_turn.abs(), 2)].map(|x| with_unit(x, quantity.unit()));
    let way = if learned.per_turn * screw.per_turn < 0.0 { "other" } else { "same" };
    Some(phrase!("moves-screw-learned", turns = turns, gives = gives, way = way, stated = stated))
}

/// The mean of all moves in which the screw's own part can be told, each by its weight. Differences between
/// neighbouring positions share a position, and the play of a thread is in all of them: they are taken to err
/// together, and by how far they disagree besides.
fn learned(screw: &Screw, track: &[PositionRecord]) -> Option<Learned> {
    let of_it = track.iter().flat_map(|p| &p.turned).filter(|t| t.screw == screw.name);
    let told: Vec<(f64, Learned)> = of_it
        .filter_map(|t| Some((t.turns.abs(), Learned { per_turn: t.per_turn?, u: t.u_per_turn.filter(|u| *u > 0.0)? })))
        .collect();
    if told.iter().map(|(turns, _)| turns).sum::<f64>() < LEAST_TURNS {
        return None;
    }
    let weight = |l: &Learned| l.u.powi(-2);
    let all: f64 = told.iter().map(|(_, l)| weight(l)).sum();
    let mean = |of: &dyn Fn(&Learned) -> f64| told.iter().map(|(_, l)| weight(l) * of(l)).sum::<f64>() / all;
    let per_turn = mean(&|l| l.per_turn);
    let spread = mean(&|l| (l.per_turn - per_turn).powi(2)).sqrt();
    let u = mean(&|l| l.u).hypot(spread);
    let counts = u < MOST_U_RELATIVE * per_turn.abs() && (per_turn - screw.per_turn).abs() > LEAST_SIGMAS * u;
    counts.then_some(Learned { per_turn, u })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::TurnedRecord;
    use crate::words::Language;

    fn stand() -> Stand {
        let screw = Screw { name: "the spindle".into(), quantity: Quantity::LateralOffset, per_turn: -4.0 };
        Stand { name: "frame".into(), screws: vec![screw] }
    }

    /// Positions after moves by so many turns, each with what a turn gave and 1 sigma of it.
    fn track(moves: &[(f64, f64, f64)]) -> Vec<PositionRecord> {
        let turned = |&(turns, per_turn, u): &(f64, f64, f64)| TurnedRecord {
            screw: "the spindle".into(),
            turns,
            stated_per_turn: -4.0,
            per_turn: Some(per_turn),
            u_per_turn: Some(u),
            words: String::new(),
            words_phrase: None,
        };
        let position = |t: TurnedRecord| PositionRecord {
            after_move: 1,
            photos: Vec::new(),
            proven_by: Vec::new(),
            taken: None,
            aims: Vec::new(),
            figures: Vec::new(),
            turned: vec![t],
        };
        moves.iter().map(turned).map(position).collect()
    }

    fn said(moves: &[(f64, f64, f64)]) -> String {
        advice(&stand(), Quantity::LateralOffset, -8.0, &track(moves)).unwrap().say(Language::English)
    }

    #[test]
    fn a_screw_that_goes_less_far_is_turned_farther() {
        // 8 mm at 1.6 mm a turn: five turns, where the file's 4 mm would make two.
        let words = said(&[(2.5, -1.6, 0.05)]);
        assert!(words.starts_with("5 turns of the spindle, clockwise; one turn really gives 1.6"), "{words}");
        assert!(words.contains("the stand file says 4.00 mm"), "{words}");
        // The other way round: the file has the wrong sign.
        let words = said(&[(3.0, 4.0, 0.05)]);
        assert!(words.starts_with("2 turns of the spindle, counter-clockwise; ") && words.contains("the other way"));
    }

    #[test]
    fn the_stand_files_figure_stays_where_less_is_known() {
        let stated = "2 turns of the spindle, clockwise";
        // Too few turns, too uncertain, no different, and two moves that disagree.
        let lacking: [&[(f64, f64, f64)]; 4] =
            [&[(1.5, -1.6, 0.05)], &[(3.0, -1.6, 0.2)], &[(3.0, -3.8, 0.15)], &[(2.0, -1.6, 0.05), (2.0, -3.0, 0.05)]];
        for moves in lacking {
            assert_eq!(said(moves), stated, "{moves:?}");
        }
        assert_eq!(advice(&stand(), Quantity::LateralOffset, -8.0, &[]).unwrap().say(Language::English), stated);
        assert_eq!(advice(&stand(), Quantity::Height, -8.0, &[]), None);
    }
}
