//! What is contradictory in a set-up sheet, and what is unusual enough to ask.

use crate::geom::rad;
use crate::quantity::{Quantity, Unit};
use crate::words::{Figure, Phrase, phrase};

use super::sheet::{Check, From, ReferenceLine, Setup};

/// A remark on a sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Doubt {
    /// The sheet cannot be met; else it is a question.
    pub contradiction: bool,
    /// What, why, and what to look at.
    pub message: Phrase,
}

/// Usual nominal values and tolerances: quantity, nominal from, to, tolerance
/// from, to (mm or degrees; from memory, common practice, no source).
const USUAL: [(Quantity, [f64; 4]); 8] = [
    (Quantity::Distance, [700.0, 7000.0, 5.0, 50.0]),
    (Quantity::Range, [700.0, 7000.0, 5.0, 50.0]),
    (Quantity::LateralOffset, [-2500.0, 2500.0, 3.0, 30.0]),
    (Quantity::Height, [0.0, 2200.0, 3.0, 20.0]),
    (Quantity::HeightFromNose, [-600.0, 1200.0, 3.0, 20.0]),
    (Quantity::Yaw, [-65.0, 65.0, 0.1, 5.0]),
    (Quantity::Pitch, [-10.0, 10.0, 0.1, 5.0]),
    (Quantity::Roll, [-3.0, 3.0, 0.2, 2.0]),
];

/// Rear tracks between hub datums that occur, mm (common practice, no source).
const TRACKS_MM: [f64; 2] = [1250.0, 2050.0];
/// The stand itself and somebody behind it need so much, mm.
const ROOM_BEHIND_MM: f64 = 800.0;
/// A tolerance of squareness against the thrust line that is closer than this takes more than one seat of the plates.
const CLOSE_DEG: f64 = 0.3;
/// How closely wheel plates seat (common practice, no source).
const SEAT_DEG: f64 = 0.1;

impl Setup {
    /// Contradictions first, then questions.
    pub fn doubts(&self) -> Vec<Doubt> {
        let mut all = Vec::new();
        self.contradictions(&mut all);
        self.steps_without_checks(&mut all);
        for check in &self.checks {
            unusual(check, &mut all);
        }
        if self.prerequisites.is_empty() {
            all.push(question(phrase!("doors-doubt-no-prerequisite")));
        }
        if self.uses(ReferenceLine::ThrustLine) {
            let tight = self.checks.iter().any(|c| {
                c.quantity == Quantity::Yaw
                    && c.reference_line.unwrap_or(self.reference_line) == ReferenceLine::ThrustLine
                    && half_width(c).is_some_and(|t| t < CLOSE_DEG)
            });
            if tight {
                let (least, seat) = (Figure::plain(CLOSE_DEG), Figure::plain(SEAT_DEG));
                all.push(question(phrase!("doors-doubt-thrust-line", least = least, seat = seat)));
            }
        }
        all
    }

    fn uses(&self, line: ReferenceLine) -> bool {
        self.reference_line == line || self.checks.iter().any(|c| c.reference_line == Some(line))
    }

    fn contradictions(&self, all: &mut Vec<Doubt>) {
        let targets: Vec<Option<&str>> = {
            let mut t: Vec<_> =
                self.checks.iter().filter(|c| c.quantity.is_of_target()).map(|c| c.target.as_deref()).collect();
            t.sort_unstable();
            t.dedup();
            t
        };
        for target in targets {
            let find = |q| self.checks.iter().find(|c| c.quantity == q && c.target.as_deref() == target);
            range_fits(find(Quantity::Range), find(Quantity::Distance), find(Quantity::LateralOffset), all);
            side_ranges_fit(find(Quantity::SideRangeDifference), find(Quantity::Yaw), all);
            nose_fits(find(Quantity::Height), find(Quantity::HeightFromNose), all);
            if let (Some(distance), Some(free)) = (find(Quantity::Distance), self.limits.free_ahead_mm) {
                let from_nose = matches!(distance.from, None | Some(From::Nose | From::Datum(_)));
                if from_nose && distance.nominal + ROOM_BEHIND_MM > free {
                    all.push(contradiction(phrase!(
                        "doors-doubt-no-room",
                        distance = whole(distance.nominal),
                        free = whole(free),
                        room = whole(ROOM_BEHIND_MM)
                    )));
                }
            }
        }
    }

    fn steps_without_checks(&self, all: &mut Vec<Doubt>) {
        for step in self.steps.iter().filter(|_| self.steps.len() > 1) {
            if !self.checks.iter().any(|c| c.step.as_ref() == Some(step)) {
                all.push(question(phrase!("doors-doubt-step", step = step)));
            }
        }
    }
}

fn question(message: Phrase) -> Doubt {
    Doubt { contradiction: false, message }
}

fn contradiction(message: Phrase) -> Doubt {
    Doubt { contradiction: true, message }
}

fn whole(value: f64) -> Figure {
    Figure::fixed(value, 0)
}

fn interval(check: &Check) -> [f64; 2] {
    [check.lower.unwrap_or(f64::NEG_INFINITY), check.upper.unwrap_or(f64::INFINITY)]
}

fn half_width(check: &Check) -> Option<f64> {
    Some((check.upper? - check.lower?) / 2.0)
}

/// The straight line from the same point can be no other than distance and offset make it.
fn range_fits(range: Option<&Check>, distance: Option<&Check>, lateral: Option<&Check>, all: &mut Vec<Doubt>) {
    let (Some(range), Some(lateral)) = (range, lateral) else { return };
    let Some(distance) = distance.filter(|d| d.from == range.from) else {
        if range.nominal < lateral.nominal.abs() {
            all.push(contradiction(phrase!(
                "doors-doubt-range-short",
                range = whole(range.nominal),
                offset = whole(lateral.nominal.abs())
            )));
        }
        return;
    };
    let [d_low, d_high] = interval(distance);
    let [y_low, y_high] = interval(lateral);
    let y_least = if y_low <= 0.0 && y_high >= 0.0 { 0.0 } else { y_low.abs().min(y_high.abs()) };
    let (least, most) = (d_low.max(0.0).hypot(y_least), d_high.hypot(y_low.abs().max(y_high.abs())));
    let [low, high] = interval(range);
    if low > most || high < least {
        all.push(contradiction(phrase!(
            "doors-doubt-range",
            least = whole(least),
            most = whole(most),
            low = whole(low),
            high = whole(high)
        )));
    }
}

/// Side ranges differ by the track times the tangent of the turn.
fn side_ranges_fit(side: Option<&Check>, yaw: Option<&Check>, all: &mut Vec<Doubt>) {
    let (Some(side), Some(yaw)) = (side, yaw) else { return };
    let [yaw_low, yaw_high] = interval(yaw);
    let ends = [yaw_low, yaw_high].map(|a| -rad(a.clamp(-80.0, 80.0)).tan());
    let products: Vec<f64> = TRACKS_MM.iter().flat_map(|t| ends.map(|e| e * t)).collect();
    let (least, most) = products.iter().fold((f64::MAX, f64::MIN), |(l, m), p| (l.min(*p), m.max(*p)));
    let [low, high] = interval(side);
    if low > most || high < least {
        all.push(contradiction(phrase!(
            "doors-doubt-sides",
            turn = Figure::fixed(yaw.nominal, 2),
            least = whole(least),
            most = whole(most),
            asked = whole(side.nominal)
        )));
    }
}

fn nose_fits(height: Option<&Check>, above: Option<&Check>, all: &mut Vec<Doubt>) {
    let (Some(height), Some(above)) = (height, above) else { return };
    let nose = height.nominal - above.nominal;
    if !(250.0..=1100.0).contains(&nose) {
        all.push(question(phrase!("doors-doubt-nose", nose = whole(nose))));
    }
}

fn unusual(check: &Check, all: &mut Vec<Doubt>) {
    let Some((_, [from, to, least, most])) = USUAL.iter().find(|(q, _)| *q == check.quantity) else { return };
    let (name, unit) = (check.quantity.phrase(), check.quantity.unit().symbol());
    let nominal = check.nominal;
    if nominal < *from || nominal > *to {
        let inches = check.quantity.unit() == Unit::Millimetre && !check.in_inches && (20.0..280.0).contains(&nominal);
        let hint = if inches && *from > 280.0 { "inches" } else { "none" };
        all.push(question(phrase!(
            "doors-doubt-nominal",
            quantity = name.clone(),
            nominal = Figure::fixed(nominal, 2),
            unit = unit,
            low = Figure::plain(*from),
            high = Figure::plain(*to),
            hint = hint
        )));
    }
    if let Some(half) = half_width(check)
        && (half < *least || half > *most)
    {
        all.push(question(phrase!(
            "doors-doubt-tolerance",
            quantity = name.clone(),
            half = Figure::fixed(half, 2),
            unit = unit,
            low = Figure::plain(*least),
            high = Figure::plain(*most)
        )));
    }
    if let (Some(l), Some(u)) = (check.lower, check.upper)
        && ((u - nominal) - (nominal - l)).abs() > 1e-6 * (u - l)
    {
        all.push(question(phrase!("doors-doubt-middle", quantity = name)));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    fn doubts(checks: &str) -> Vec<Doubt> {
        let text = format!(
            "format = \"setup/1\"\nname = \"x\"\ntitle = \"x\"\nsource = \"invented\"\nreference_line = \"centreline\"\n\
             [[prerequisite]]\nid = \"a\"\ntext = \"a\"\n{checks}"
        );
        Setup::from_toml(&text, "x.toml").unwrap().doubts()
    }

    fn check(quantity: &str, rest: &str) -> String {
        format!("[[check]]\nquantity = \"{quantity}\"\n{rest}\n")
    }

    #[test]
    fn three_four_five_fits_and_three_four_six_does_not() {
        let of = |range: f64| {
            doubts(
                &(check("distance", "from = \"front_axle\"\nnominal = 3000.0\ntolerance = 10.0")
                    + &check("lateral_offset", "nominal = 4000.0\ntolerance = 10.0")
                    + &check("range", &format!("from = \"front_axle\"\nnominal = {range}\ntolerance = 10.0"))),
            )
        };
        assert!(!of(5000.0).iter().any(|d| d.contradiction));
        assert!(
            of(6000.0).iter().any(|d| d.contradiction && d.message.say(Language::English).contains("straight line"))
        );
    }

    #[test]
    fn a_left_turn_makes_the_left_range_shorter() {
        let of = |side: f64| {
            doubts(
                &(check("yaw", "nominal = 2.0\ntolerance = 0.3")
                    + &check("side_range_difference", &format!("nominal = {side}\ntolerance = 10.0"))),
            )
        };
        // 1600 mm tan 2 deg = 56 mm, the left end nearer to the vehicle.
        assert!(!of(-56.0).iter().any(|d| d.contradiction), "{:?}", of(-56.0));
        assert!(of(56.0).iter().any(|d| d.contradiction && d.message.say(Language::English).contains("sign")));
    }

    #[test]
    fn inches_and_odd_tolerances_are_asked_about() {
        let found = doubts(&check("distance", "from = \"nose\"\nnominal = 59.0\ntolerance = 0.4"));
        assert!(
            found.iter().any(|d| d.message.say(Language::English).contains("inches"))
                && found.iter().all(|d| !d.contradiction),
            "{found:?}"
        );
        let found = doubts(&check("distance", "from = \"nose\"\nnominal = 1500.0\ntolerance = 10.0"));
        assert!(found.is_empty(), "{found:?}");
    }
}
