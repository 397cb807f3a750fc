//! What to do first: which screw to turn which way, or which photo to take.

use super::screws::advice;
use crate::job::opening::Opened;
use crate::quantity::Quantity;
use crate::record::{FirstRecord, PositionFigure, PositionRecord};
use crate::setup::Setup;
use crate::verdict::{Checked, Verdict, leave_it};
use crate::words::{Language, Phrase, phrase};

/// The one thing to do first: of the moves that are ordered the one that disturbs the others most, so that it is not
/// to be done again; where none is, the photo that is wanted.
pub(in crate::job) fn first(opened: &Opened, checks: &[Checked], track: &[PositionRecord]) -> Option<FirstRecord> {
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
        let quantities: Vec<Quantity> = setup.checks.iter().map(|c| c.quantity).collect();
        let last = last_move(&quantities, i, track);
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

/// How the last move went. What was first before it is what it was made for: where it is done and another check is first
/// now, which was not touched yet, that the latter did not move is nobody's fault.
fn last_move(quantities: &[Quantity], now: usize, track: &[PositionRecord]) -> Option<Phrase> {
    let [.., before, last] = track else { return None };
    let of = |i: usize| last.figures.iter().find(|f| f.check == i);
    let touched = |f: &PositionFigure| f.moved.zip(f.expanded_u_moved).is_some_and(|(moved, u)| moved.abs() > u);
    let was_outside = before.figures.iter().filter(|f| f.verdict == Verdict::Outside).map(|f| f.check);
    let was_first = was_outside.min_by_key(|i| quantities[*i].move_order());
    match was_first.filter(|was| *was != now && !of(now).is_some_and(touched)) {
        Some(was) => {
            let words = of(was)?.words_phrase.clone()?;
            Some(phrase!("moves-of-check", quantity = quantities[was].phrase(), words = words))
        }
        None => of(now)?.words_phrase.clone(),
    }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Unit;
    use crate::verdict::Went;

    const CHECKS: [Quantity; 2] = [Quantity::Distance, Quantity::Yaw];

    /// A check after a move: what was asked, how far it went, what is left.
    fn figure(check: usize, [asked, moved, left]: [f64; 3], verdict: Verdict) -> PositionFigure {
        let unit = CHECKS[check].unit();
        let u = if unit == Unit::Degree { 0.02 } else { 0.8 };
        let went = Went { asked: Some(asked), moved, expanded_u_moved: u, left, expanded_u: u, verdict };
        let words = went.phrase(unit);
        PositionFigure {
            check,
            value: Some(-left),
            standard_uncertainty: Some(u / 2.0),
            expanded_uncertainty: Some(u),
            verdict,
            asked: Some(asked),
            moved: Some(moved),
            u_moved: Some(u / 2.0),
            expanded_u_moved: Some(u),
            words: words.as_ref().map(|p| p.say(Language::English)),
            words_phrase: words,
        }
    }

    fn position(figures: Vec<PositionFigure>) -> PositionRecord {
        PositionRecord {
            after_move: 0,
            photos: Vec::new(),
            proven_by: Vec::new(),
            taken: None,
            aims: Vec::new(),
            figures,
            turned: Vec::new(),
        }
    }

    /// The distance is first now; before, both were outside, or the distance alone.
    fn told(yaw_before: Verdict, yaw: [f64; 3], distance: [f64; 3]) -> String {
        let before = vec![figure(0, [0.0, 0.0, 24.0], Verdict::Outside), figure(1, [0.0, 0.0, 0.6], yaw_before)];
        let now = vec![figure(0, distance, Verdict::Outside), figure(1, yaw, Verdict::Within)];
        last_move(&CHECKS, 0, &[position(before), position(now)]).unwrap().say(Language::English)
    }

    #[test]
    fn the_last_move_is_told_by_what_was_first_before_it() {
        // Only the turn was made, as it was asked first: the distance is not held against it.
        let turned = told(Verdict::Outside, [0.6, 0.6, 0.0], [24.0, 0.1, 24.0]);
        assert!(turned.ends_with(": asked 0.60 deg, moved 0.60 deg: far enough"), "{turned}");
        // Both were moved at once: the distance went too short.
        let both = told(Verdict::Outside, [0.6, 0.6, 0.0], [24.0, 19.0, 5.0]);
        assert_eq!(both, "asked 24 mm, moved 19 mm: 5 mm more");
        // The distance alone was asked, and nobody moved it.
        let idle = told(Verdict::Within, [0.0, 0.0, 0.0], [24.0, 0.1, 24.0]);
        assert_eq!(idle, "asked 24 mm, not moved that photos could tell: 24 mm to go");
        // With one position nothing was moved.
        assert!(last_move(&CHECKS, 0, &[position(Vec::new())]).is_none());
    }
}
