//! Decision rules: a value with its uncertainty against limits.
//!
//! JCGM 106:2012 for the guarded rule and the conformance probability,
//! ILAC-G8:09/2019 for simple acceptance, binary with guard band, and the
//! four-way (non-binary) statement. Simple acceptance presumes an agreed limit
//! for the uncertainty (JCGM 106:2012, 8.2); here it is the tolerance itself:
//! half of what lies between two limits, or what lies between one and the nominal.

use super::ladder::Verdict;
use crate::num::{student_cdf, student_quantile};
use crate::quantity::Estimate;
use crate::setup::{Check, Decision, DecisionRule};
use crate::words::{Phrase, phrase};

/// The statement of the binary and four-way rules.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grade {
    /// Inside the limits by the guard band or more.
    Pass,
    /// Inside the limits, but within the guard band.
    ConditionalPass,
    /// Outside the limits, but within the guard band.
    ConditionalFail,
    /// Outside the limits by the guard band or more; for the binary rule: not a pass.
    Fail,
}

impl Grade {
    /// The words of the rule, in a reader's language.
    pub fn phrase(self) -> Phrase {
        match self {
            Grade::Pass => phrase!("verdict-grade", grade = "pass"),
            Grade::ConditionalPass => phrase!("verdict-grade", grade = "conditional_pass"),
            Grade::ConditionalFail => phrase!("verdict-grade", grade = "conditional_fail"),
            Grade::Fail => phrase!("verdict-grade", grade = "fail"),
        }
    }

    /// The grade of a record's words.
    pub fn of_words(words: &str) -> Option<Self> {
        let all = [Grade::Pass, Grade::ConditionalPass, Grade::ConditionalFail, Grade::Fail];
        all.into_iter().find(|g| g.words() == words)
    }

    /// The words of the rule, as records have them.
    pub fn words(self) -> &'static str {
        match self {
            Grade::Pass => "pass",
            Grade::ConditionalPass => "conditional pass",
            Grade::ConditionalFail => "conditional fail",
            Grade::Fail => "fail",
        }
    }
}

/// What a value is held against. A missing limit is no limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tolerance {
    /// Where the value should be.
    pub nominal: f64,
    /// The lower limit.
    pub lower: Option<f64>,
    /// The upper limit.
    pub upper: Option<f64>,
}

impl From<&Check> for Tolerance {
    fn from(check: &Check) -> Self {
        Tolerance { nominal: check.nominal, lower: check.lower, upper: check.upper }
    }
}

impl Tolerance {
    /// What may be allowed for: half of what lies between two limits, or what lies between the nominal and one.
    pub(super) fn half_width(&self) -> f64 {
        match (self.lower, self.upper) {
            (Some(l), Some(u)) => (u - l) / 2.0,
            (Some(limit), None) | (None, Some(limit)) => (limit - self.nominal).abs(),
            (None, None) => f64::INFINITY,
        }
    }
}

/// The decision on one value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Decided {
    /// The verdict.
    pub verdict: Verdict,
    /// Probability that the true value lies within the limits.
    pub conformance_probability: f64,
    /// Whether any value could be within at this uncertainty.
    pub can_decide: bool,
    /// The statement, for the rules that make one.
    pub grade: Option<Grade>,
}

/// Decides on an estimate.
pub fn decide(decision: &Decision, tolerance: impl Into<Tolerance>, estimate: &Estimate) -> Decided {
    let tolerance: Tolerance = tolerance.into();
    let Tolerance { lower, upper, .. } = tolerance;
    let below = |limit: Option<f64>| limit.map_or(0.0, |l| probability_below(estimate, l));
    let above = |limit: Option<f64>| limit.map_or(0.0, |l| 1.0 - probability_below(estimate, l));
    let (too_low, too_high) = (below(lower), above(upper));
    let conformance_probability = (1.0 - too_low - too_high).clamp(0.0, 1.0);
    let wanted = decision.conformance_probability;
    let value = estimate.value;
    let inside = lower.is_none_or(|l| value >= l) && upper.is_none_or(|l| value <= l);
    let guard = estimate.expanded_uncertainty();
    let grade = graded(value, lower, upper, guard);
    let guarded = match () {
        () if conformance_probability >= wanted => Verdict::Within,
        () if too_low >= wanted || too_high >= wanted => Verdict::Outside,
        () => Verdict::NotProven,
    };
    let by_grade = match grade {
        Grade::Pass => Verdict::Within,
        Grade::Fail => Verdict::Outside,
        Grade::ConditionalPass | Grade::ConditionalFail => Verdict::NotProven,
    };
    let (verdict, can_decide, grade) = match decision.rule {
        // So little a probability is no proof, and nearly any value has it where nearly nothing is known.
        DecisionRule::Guarded if decision.is_likely_only() && tolerance.half_width() < guard => {
            let surely = Decision { conformance_probability: Decision::PROVEN, ..*decision };
            (decide(&surely, tolerance, estimate).verdict, false, None)
        }
        DecisionRule::Guarded => (guarded, best_possible(estimate, lower, upper) >= wanted, None),
        DecisionRule::Simple => {
            let room = tolerance.half_width();
            let one_limit = lower.is_some() != upper.is_some();
            let can_decide = room >= guard;
            let verdict = match () {
                // Not even the whole interval would touch the limits: that needs no limit of the uncertainty.
                () if grade == Grade::Fail => Verdict::Outside,
                // Of one limit there is a side on which the value is far enough from it, however little is known.
                () if !can_decide && one_limit => guarded,
                () if !can_decide => Verdict::NotProven,
                () if inside => Verdict::Within,
                () => Verdict::Outside,
            };
            // Where the nominal is the limit no uncertainty would be small enough for it, but other values are decided.
            (verdict, can_decide || (one_limit && room <= 0.0), None)
        }
        DecisionRule::Binary => {
            // Whatever is no pass is a fail, but outside is proven only beyond the guard band on the other side.
            let stated = if grade == Grade::Pass { Grade::Pass } else { Grade::Fail };
            (by_grade, room_for_guard(lower, upper, guard), Some(stated))
        }
        DecisionRule::FourWay => (by_grade, room_for_guard(lower, upper, guard), Some(grade)),
    };
    if value.is_finite() && estimate.standard_uncertainty.is_finite() {
        Decided { verdict, conformance_probability, can_decide, grade }
    } else {
        Decided { verdict: Verdict::Retake, conformance_probability: 0.0, can_decide: false, grade: None }
    }
}

/// Probability that the true value is below a limit (Student).
fn probability_below(estimate: &Estimate, limit: f64) -> f64 {
    let distance = limit - estimate.value;
    if estimate.standard_uncertainty > 0.0 {
        return student_cdf(distance / estimate.standard_uncertainty, estimate.degrees_of_freedom);
    }
    // A value without uncertainty on the limit itself is within.
    if distance > 0.0 { 1.0 } else { 0.0 }
}

/// The conformance probability of the most favourable value.
fn best_possible(estimate: &Estimate, lower: Option<f64>, upper: Option<f64>) -> f64 {
    match (lower, upper) {
        (Some(l), Some(u)) if estimate.standard_uncertainty > 0.0 => {
            let half = (u - l) / 2.0 / estimate.standard_uncertainty;
            2.0 * student_cdf(half, estimate.degrees_of_freedom) - 1.0
        }
        _ => 1.0,
    }
}

/// Whether a value can be inside by the guard band, which by one limit alone it always can.
fn room_for_guard(lower: Option<f64>, upper: Option<f64>, guard: f64) -> bool {
    match (lower, upper) {
        (Some(l), Some(u)) => u - l >= 2.0 * guard,
        _ => true,
    }
}

fn graded(value: f64, lower: Option<f64>, upper: Option<f64>, guard: f64) -> Grade {
    // Depth inside the nearer limit; negative outside.
    let depth = lower.map_or(f64::INFINITY, |l| value - l).min(upper.map_or(f64::INFINITY, |u| u - value));
    match () {
        () if depth >= guard => Grade::Pass,
        () if depth >= 0.0 => Grade::ConditionalPass,
        () if depth > -guard => Grade::ConditionalFail,
        () => Grade::Fail,
    }
}

/// Half-width, in standard uncertainties, below which no value can be within
/// tolerance at a conformance probability (JCGM 106:2012, 8.3).
pub(super) fn least_half_width(probability: f64, degrees_of_freedom: f64) -> f64 {
    student_quantile((1.0 + probability) / 2.0, degrees_of_freedom)
}

/// The largest standard uncertainty at which a value at the nominal could
/// still be proven (many degrees of freedom); for rules without a guard the
/// same figure serves as a goal.
pub fn widest_tolerated(decision: &Decision, nominal: f64, lower: Option<f64>, upper: Option<f64>) -> f64 {
    // Where less is asked for, the uncertainty must not be larger than the tolerance.
    let probability = decision.conformance_probability.max(Decision::PROVEN);
    match (lower, upper) {
        (Some(l), Some(u)) => (u - l) / 2.0 / least_half_width(probability, f64::INFINITY),
        (Some(limit), None) | (None, Some(limit)) => {
            let factor = student_quantile(probability, f64::INFINITY);
            ((limit - nominal).abs() / factor).max(1e-6)
        }
        (None, None) => f64::INFINITY,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rule(rule: DecisionRule) -> Decision {
        Decision { rule, conformance_probability: 0.95, photos_after_move: 2 }
    }

    fn about(half_width: f64) -> Tolerance {
        Tolerance { nominal: 0.0, lower: Some(-half_width), upper: Some(half_width) }
    }

    fn at_most(nominal: f64, limit: f64) -> Tolerance {
        Tolerance { nominal, lower: None, upper: Some(limit) }
    }

    /// The guard factor g at which a two-sided tolerance of half-width T is
    /// just accepted: y = T - g u.
    fn guard_factor(half_width: f64) -> f64 {
        let accepted = |g: f64| {
            let e = Estimate::known(half_width - g, 1.0);
            decide(&rule(DecisionRule::Guarded), about(half_width), &e).verdict == Verdict::Within
        };
        let (mut low, mut high) = (0.0, half_width);
        for _ in 0..60 {
            let middle = f64::midpoint(low, high);
            if accepted(middle) { high = middle } else { low = middle }
        }
        high
    }

    #[test]
    fn guard_factors_follow_jcgm_106() {
        // Computed from JCGM 106:2012 equation (7) for P = .95; 1.645 is its one-sided limit.
        for (t, g) in [(1.97, 1.869), (2.0, 1.796), (2.5, 1.649), (3.0, 1.645), (10.0, 1.645)] {
            let ours = guard_factor(t);
            assert!((ours - g).abs() < 0.002, "T/u {t}: {ours} against {g}");
        }
    }

    #[test]
    fn conformance_of_1_40_sigma_is_9192() {
        // JCGM 106:2012, 7.3: Phi(1.40) = 0.9192.
        let d = decide(&rule(DecisionRule::Guarded), at_most(0.0, 1.4), &Estimate::known(0.0, 1.0));
        assert!((d.conformance_probability - 0.9192).abs() < 5e-5);
        assert_eq!(d.verdict, Verdict::NotProven);
    }

    #[test]
    fn a_tolerance_below_1_96_u_cannot_be_proven() {
        let at = |t: f64| decide(&rule(DecisionRule::Guarded), about(t), &Estimate::known(0.0, 1.0));
        assert!(!at(1.95).can_decide && at(1.95).verdict == Verdict::NotProven);
        assert!(at(1.97).can_decide && at(1.97).verdict == Verdict::Within);
        assert!((least_half_width(0.95, f64::INFINITY) - 1.96).abs() < 1e-3);
    }

    #[test]
    fn ilac_g8_grades() {
        let at = |y: f64, r| decide(&rule(r), about(10.0), &Estimate::known(y, 1.0));
        for (y, grade, verdict) in [
            (7.9, Grade::Pass, Verdict::Within),
            (9.0, Grade::ConditionalPass, Verdict::NotProven),
            (10.5, Grade::ConditionalFail, Verdict::NotProven),
            (-12.5, Grade::Fail, Verdict::Outside),
        ] {
            let d = at(y, DecisionRule::FourWay);
            assert_eq!((d.grade, d.verdict), (Some(grade), verdict), "at {y}");
        }
        assert_eq!(at(9.0, DecisionRule::Binary).grade, Some(Grade::Fail));
        assert_eq!(at(9.0, DecisionRule::Binary).verdict, Verdict::NotProven);
        assert_eq!(at(10.0, DecisionRule::Simple).verdict, Verdict::Within, "limits are inclusive");
        assert_eq!(at(10.1, DecisionRule::Simple).verdict, Verdict::Outside);
    }

    /// A probability that is no proof decides nothing where nearly any value would have it.
    #[test]
    fn less_than_a_proof_decides_only_where_the_uncertainty_is_no_larger_than_the_tolerance() {
        let at = |p: f64, y: f64, u: f64| {
            let rule = Decision { conformance_probability: p, ..rule(DecisionRule::Guarded) };
            let d = decide(&rule, about(10.0), &Estimate::known(y, u));
            (d.verdict, d.can_decide)
        };
        // Phi(10/7) - Phi(-10/7) = 0.847; U = 1.96 u.
        assert_eq!(at(0.8, 5.0, 5.0), (Verdict::Within, true), "Phi(1) - Phi(-3) = 0.840");
        assert_eq!(at(0.95, 5.0, 5.0), (Verdict::NotProven, true));
        assert_eq!(at(0.8, 0.0, 5.104), (Verdict::NotProven, false), "U is 10.004");
        assert_eq!(at(0.8, 0.0, 7.0), (Verdict::NotProven, false));
        assert_eq!(at(0.8, 17.0, 7.0), (Verdict::NotProven, false), "0.841 outside");
        assert_eq!(at(0.8, 30.0, 7.0), (Verdict::Outside, false));
        assert_eq!(at(0.8, 15.0, 5.0), (Verdict::Outside, true), "0.841 outside");
    }

    /// JCGM 106:2012, 8.2: simple acceptance presumes that the uncertainty has a limit. Ours is the tolerance.
    #[test]
    fn simple_acceptance_ends_where_the_uncertainty_is_larger_than_the_tolerance() {
        let at = |y: f64, u: f64| {
            let d = decide(&rule(DecisionRule::Simple), about(10.0), &Estimate::known(y, u));
            (d.verdict, d.can_decide)
        };
        // U = 1.96 u: 9.996 and 10.004.
        assert_eq!(at(9.9, 5.1), (Verdict::Within, true));
        assert_eq!(at(10.1, 5.1), (Verdict::Outside, true));
        assert_eq!(at(0.0, 5.104), (Verdict::NotProven, false));
        assert_eq!(at(6.0, 48.0), (Verdict::NotProven, false));
        assert_eq!(at(60.0, 48.0), (Verdict::NotProven, false));
        assert_eq!(at(110.0, 48.0), (Verdict::Outside, false), "110 - 94 is outside as well");
    }

    /// With one limit the tolerance is what lies between the nominal and it.
    #[test]
    fn simple_acceptance_by_one_limit_needs_an_uncertainty_below_what_lies_before_it() {
        let at = |y: f64, u: f64, nominal: f64| {
            let d = decide(&rule(DecisionRule::Simple), at_most(nominal, 825.0), &Estimate::known(y, u));
            (d.verdict, d.can_decide)
        };
        // U = 1.96 u: 9.996 and 10.004 before 10; 68.6 is far beyond.
        assert_eq!(at(824.9, 5.1, 815.0), (Verdict::Within, true));
        assert_eq!(at(825.1, 5.1, 815.0), (Verdict::Outside, true));
        assert_eq!(at(824.9, 5.104, 815.0), (Verdict::NotProven, false));
        assert_eq!(at(820.0, 35.0, 815.0), (Verdict::NotProven, false));
        assert_eq!(at(835.0, 35.0, 815.0), (Verdict::NotProven, false));
        // What the guarded rule decides is decided: by 1.645 u at .95.
        assert_eq!(at(767.0, 35.0, 815.0).0, Verdict::Within);
        assert_eq!(at(883.0, 35.0, 815.0).0, Verdict::Outside);
        // With the nominal on the limit there is no room: likewise.
        assert_eq!(at(824.9, 1.0, 825.0).0, Verdict::NotProven);
        assert_eq!(at(823.3, 1.0, 825.0).0, Verdict::Within);
    }

    /// ILAC-G8:2019, binary statement with guard band: what is no pass is a fail, which does not say that it is outside.
    #[test]
    fn binary_calls_outside_only_what_is_proven_to_be() {
        let at = |y: f64| {
            let d = decide(&rule(DecisionRule::Binary), at_most(0.0, 10.0), &Estimate::known(y, 1.0));
            (d.grade, d.verdict)
        };
        assert_eq!(at(8.0), (Some(Grade::Pass), Verdict::Within));
        assert_eq!(at(9.0), (Some(Grade::Fail), Verdict::NotProven));
        // A twentieth of a standard uncertainty beyond the limit, 48 % within: Phi(-0.05) = 0.4801.
        assert_eq!(at(10.05), (Some(Grade::Fail), Verdict::NotProven));
        assert_eq!(at(11.9), (Some(Grade::Fail), Verdict::NotProven));
        assert_eq!(at(12.0), (Some(Grade::Fail), Verdict::Outside));
    }

    #[test]
    fn risk_of_false_acceptance_matches_published_figures() {
        // Consumer's risk for a normal process, test sd = process sd / 4, limits
        // +-1 at in-tolerance probabilities .6 to .99, simple acceptance; the
        // percentages are the published ones of the metrology literature.
        for (itp, percent) in
            [(0.6, 4.838603), (0.7, 3.922341), (0.8, 2.855831), (0.9, 1.599953), (0.95, 0.871009), (0.99, 0.199917)]
        {
            let sd = 1.0 / crate::num::normal_quantile((1.0 + itp) / 2.0);
            let u = sd / 4.0;
            // Probability of a true value outside times that of a reading inside.
            let steps = 200_000;
            let (from, to) = (1.0, 9.0_f64.mul_add(sd, 1.0));
            let h = (to - from) / f64::from(steps);
            let risk: f64 = (0..steps)
                .map(|i| {
                    let x = from + h * (f64::from(i) + 0.5);
                    let density = (-0.5 * (x / sd).powi(2)).exp() / (sd * std::f64::consts::TAU.sqrt());
                    let inside = crate::num::normal_cdf((1.0 - x) / u) - crate::num::normal_cdf((-1.0 - x) / u);
                    2.0 * density * inside * h
                })
                .sum();
            assert!((100.0 * risk - percent).abs() < 2e-4, "itp {itp}: {} against {percent}", 100.0 * risk);
        }
    }
}
