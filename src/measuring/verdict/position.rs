//! A stand that stood in several places, moved after its first verdict or in
//! several steps: what the photos of each prove, and how a move went against
//! what was asked.

use super::check::Checked;
use super::ladder::Verdict;
use super::words::amount;
use crate::quantity::Unit;
use crate::words::{Phrase, phrase};

/// What the photos of where a stand stands now are worth.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Proof {
    /// How many of them show stand and vehicle measured together, of several steps in that with fewest.
    pub photos: usize,
    /// How many are wanted.
    pub wanted: usize,
    /// That step, where the stand was photographed in several and not moved.
    pub step: Option<String>,
}

impl Proof {
    /// Whether they are enough for `within`.
    pub fn is_enough(&self) -> bool {
        self.photos >= self.wanted
    }

    /// A check of a stand that stood in several places, beside what proves it.
    ///
    /// One photo measures and has its uncertainty, but nothing contradicts it: a stand that was brushed against a
    /// moment later, a print that took a shadow, pass unseen. So `within` takes a second one. `outside` does not: where
    /// one photo allows two places the stand has no trusted place at all and the check no value, and a stand that is
    /// wrongly sent on its way costs a minute and is contradicted by the next photo; a wrong `within` goes on the road.
    #[must_use]
    pub fn weighed(&self, mut checked: Checked) -> Checked {
        if checked.verdict != Verdict::Within || self.is_enough() {
            return checked;
        }
        checked.verdict = Verdict::NotProven;
        checked.correction = leave_it();
        checked.reason = Some(self.reason());
        checked
    }

    /// Why it is not decided, and the remedy.
    pub fn reason(&self) -> Phrase {
        let more = phrase!("moves-take-more", photos = self.wanted - self.photos.min(self.wanted));
        match &self.step {
            Some(step) => {
                phrase!("moves-too-few-in-step", have = self.photos, wanted = self.wanted, step = step, more = more)
            }
            None => phrase!("moves-too-few-photos", have = self.photos, wanted = self.wanted, more = more),
        }
    }
}

/// What is said of a check that one more photo proves.
pub fn leave_it() -> Phrase {
    phrase!("moves-leave-it")
}

/// What is said of such a check while another one has the stand moved first.
pub fn later() -> Phrase {
    phrase!("moves-later")
}

/// While the stand is to be moved once more nobody is asked for the photo that would prove the other checks where it
/// stands now: it would prove a place that is left.
pub fn after_the_moves(checks: &mut [Checked], wanted: usize) {
    for checked in checks.iter_mut().filter(|c| c.correction == leave_it()) {
        checked.correction = later();
        checked.reason = Some(phrase!("moves-counts-later", photos = wanted));
    }
}

/// How a figure went in one move.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Went {
    /// What was asked, mm or degrees; `None` where nothing was.
    pub asked: Option<f64>,
    /// How far it went.
    pub moved: f64,
    /// Half the 95 % interval of that.
    pub expanded_u_moved: f64,
    /// What is left to the nominal.
    pub left: f64,
    /// Half the 95 % interval of the value now.
    pub expanded_u: f64,
    /// What the value now is.
    pub verdict: Verdict,
}

impl Went {
    /// In words: "asked 24 mm, moved 19 mm: 5 mm more"; `None` where there is nothing to tell.
    pub fn phrase(&self, unit: Unit) -> Option<Phrase> {
        let say = |x: f64| amount(x.abs(), unit, [0, 2]);
        let (moved, left) = (say(self.moved), say(self.left));
        let told = self.moved.abs() > self.expanded_u_moved;
        let Some(asked) = self.asked else {
            // What was not to move and did is told where it matters.
            return (told && self.verdict == Verdict::Outside)
                .then(|| phrase!("moves-unasked", moved = moved, left = left));
        };
        let wanted = say(asked);
        Some(match () {
            () if !told => phrase!("moves-not-seen", asked = wanted, left = left),
            () if self.moved * asked < 0.0 => {
                phrase!("moves-wrong-way", asked = wanted, moved = moved, left = left)
            }
            () if self.verdict == Verdict::Within => phrase!("moves-far-enough", asked = wanted, moved = moved),
            () if self.left.abs() <= self.expanded_u => {
                phrase!("moves-as-far-as-told", asked = wanted, moved = moved)
            }
            () if self.left * asked > 0.0 => phrase!("moves-more", asked = wanted, moved = moved, left = left),
            () => phrase!("moves-back", asked = wanted, moved = moved, left = left),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    fn went(asked: Option<f64>, moved: f64, left: f64, verdict: Verdict) -> Option<String> {
        Went { asked, moved, expanded_u_moved: 0.5, left, expanded_u: 1.0, verdict }
            .phrase(Unit::Millimetre)
            .map(|p| p.say(Language::English))
    }

    #[test]
    fn a_move_is_told_against_what_was_asked() {
        let told = |moved, left, verdict| went(Some(24.0), moved, left, verdict).unwrap();
        assert_eq!(told(19.0, 5.0, Verdict::Outside), "asked 24 mm, moved 19 mm: 5 mm more");
        assert_eq!(told(29.0, -5.0, Verdict::Outside), "asked 24 mm, moved 29 mm: 5 mm back");
        assert_eq!(told(-3.0, 27.0, Verdict::Outside), "asked 24 mm, moved 3 mm the wrong way: 27 mm to go");
        assert_eq!(told(0.2, 23.8, Verdict::Outside), "asked 24 mm, not moved that photos could tell: 24 mm to go");
        assert_eq!(told(23.0, 1.2, Verdict::Within), "asked 24 mm, moved 23 mm: far enough");
        assert_eq!(told(23.5, 0.5, Verdict::NotProven), "asked 24 mm, moved 24 mm: right as far as the photos tell");
        assert_eq!(went(None, -6.0, 6.0, Verdict::Outside).unwrap(), "moved 6 mm unasked: 6 mm back");
        assert_eq!(went(None, -6.0, 6.0, Verdict::Within), None);
        assert_eq!(went(None, 0.1, 6.0, Verdict::Outside), None);
    }

    #[test]
    fn one_photo_of_two_says_what_is_lacking() {
        let proof = |photos, wanted, step: Option<&str>| Proof { photos, wanted, step: step.map(str::to_owned) };
        let reason = proof(1, 2, None).reason().say(Language::English);
        assert!(reason.contains("one photo of where") && reason.contains("one more photo"), "{reason}");
        assert!(proof(1, 3, None).reason().say(Language::English).contains("2 more photos"));
        assert!(proof(3, 2, None).is_enough());
        let reason = proof(1, 2, Some("tilted")).reason().say(Language::English);
        assert!(reason.contains("one photo of step tilted") && reason.contains("one more photo"), "{reason}");
    }
}
