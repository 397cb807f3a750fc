//! What to do first: which screw to turn which way, or which photo to take.

use super::screws::advice;
use crate::job::opening::Opened;
use crate::record::{FirstRecord, PositionRecord};
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
