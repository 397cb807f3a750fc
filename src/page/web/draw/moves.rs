//! One picture that shows which way to move what by how much. Not to scale:
//! solid is where the stand stands, dashed where it must be.

use maud::{Markup, html};

use crate::quantity::Quantity;
use crate::record::CheckRecord;
use crate::words::{Figure, Language, Phrase, phrase, say};

/// Which way, as somebody at the stand acts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Way {
    Turn,
    Sideways,
    Along,
    Height,
    Tilt,
    Level,
}

/// One move.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::web) struct Move {
    quantity: Quantity,
    way: Way,
    /// Towards the positive side of the vehicle frame: left end nearer, left,
    /// away, up, top away, right end down.
    positive: bool,
    amount: Figure,
    /// The check's target and step, where the sheet has several.
    of: Vec<String>,
    /// The measuring room's own sentence in English, which knows how far the ends go, and its phrase.
    sentence: String,
    phrase: Option<Phrase>,
}

impl Move {
    /// The move that a check outside its limits asks for; `None` where nothing
    /// at the stand is moved by it.
    pub(in crate::web) fn of(quantity: Quantity, check: &CheckRecord) -> Option<Self> {
        use Quantity as Q;
        let by = check.move_by.filter(|m| m.is_finite())?;
        let (way, places) = match quantity {
            Q::Yaw => (Way::Turn, 2),
            Q::LateralOffset | Q::LateralFromNose => (Way::Sideways, 0),
            Q::Distance | Q::Range => (Way::Along, 0),
            Q::Height | Q::HeightFromNose => (Way::Height, 0),
            Q::Pitch => (Way::Tilt, 2),
            Q::Roll => (Way::Level, 2),
            _ => return None,
        };
        Some(Move {
            quantity,
            way,
            positive: by > 0.0,
            amount: Figure::fixed(by.abs(), places),
            of: check.target.iter().chain(&check.step).cloned().collect(),
            sentence: check.correction.clone(),
            phrase: check.correction_phrase.clone(),
        })
    }

    /// Its sign, which needs no words.
    pub(in crate::web) fn icon(&self) -> Markup {
        crate::report::move_icon(self.quantity, self.positive).unwrap_or_default()
    }

    /// What to do, as the measuring room says it where it can in this language.
    pub(in crate::web) fn in_words(&self, language: Language) -> String {
        let english = || (language == Language::English && !self.sentence.is_empty()).then(|| self.sentence.clone());
        let said = self.phrase.as_ref().and_then(|p| p.known(language)).or_else(english);
        let said = said.unwrap_or_else(|| self.short(language));
        if self.of.is_empty() {
            return said;
        }
        say!(language, "page-name-of", name = self.of.join(", "), of = said)
    }

    fn short(&self, language: Language) -> String {
        let amount = self.amount;
        let text: Phrase = match (self.way, self.positive) {
            (Way::Turn, true) => phrase!("page-turn-left-end", amount = amount),
            (Way::Turn, false) => phrase!("page-turn-right-end", amount = amount),
            (Way::Sideways, true) => phrase!("page-move-left", amount = amount),
            (Way::Sideways, false) => phrase!("page-move-right", amount = amount),
            (Way::Along, true) => phrase!("page-move-away", amount = amount),
            (Way::Along, false) => phrase!("page-move-towards", amount = amount),
            (Way::Height, true) => phrase!("page-move-up", amount = amount),
            (Way::Height, false) => phrase!("page-move-down", amount = amount),
            (Way::Tilt, true) => phrase!("page-tilt-away", amount = amount),
            (Way::Tilt, false) => phrase!("page-tilt-towards", amount = amount),
            (Way::Level, true) => phrase!("page-level-right-down", amount = amount),
            (Way::Level, false) => phrase!("page-level-left-down", amount = amount),
        };
        text.say(language)
    }

    fn label(&self, language: Language) -> String {
        let amount = self.amount.say(language);
        match self.way {
            Way::Sideways | Way::Along | Way::Height => format!("{amount} mm"),
            _ => format!("{amount}°"),
        }
    }

    /// 1 or -1.
    fn sign(&self) -> f64 {
        if self.positive { 1.0 } else { -1.0 }
    }
}

/// The picture: a view for each kind of move that there is. Where several
/// targets or steps are to be moved, the first one's is drawn and all are listed.
pub(in crate::web) fn drawing(language: Language, moves: &[Move]) -> Markup {
    let first = moves.first().map(|m| m.of.clone()).unwrap_or_default();
    let of_first: Vec<&Move> = moves.iter().filter(|m| m.of == first).collect();
    let find = |way: Way| of_first.iter().copied().find(|m| m.way == way);
    let above = [find(Way::Turn), find(Way::Sideways), find(Way::Along)];
    let beside = [find(Way::Height), find(Way::Tilt)];
    let said: Vec<String> = of_first.iter().map(|m| m.short(language)).collect();
    html! {
        figure.movepicture role="img" aria-label=(said.join("; ")) {
            @if !first.is_empty() { p.of { (first.join(", ")) } }
            @if above.iter().any(Option::is_some) { (from_above(language, above)) }
            @if beside.iter().any(Option::is_some) { (from_beside(language, beside)) }
            @if let Some(level) = find(Way::Level) { (from_vehicle(language, level)) }
            figcaption { (say!(language, "page-not-to-scale")) }
        }
    }
}

/// The vehicle drives upwards; its left is left.
fn from_above(language: Language, [turn, sideways, along]: [Option<&Move>; 3]) -> Markup {
    let (u, v) = (170.0, 96.0);
    let now_u = u + sideways.map_or(0.0, |m| 44.0 * m.sign());
    let now_v = v + along.map_or(0.0, |m| 50.0 * m.sign());
    // Clockwise on the screen, where a counter-clockwise turn is to be made.
    let angle = turn.map_or(0.0, |m| 9.0 * m.sign());
    html! {
        svg viewBox="0 0 340 262" aria-hidden="true" focusable="false" {
            text.small x="4" y="14" { (say!(language, "page-from-above")) }
            path.body d="M70 262V232C74 204 118 196 170 196C222 196 266 204 270 232V262" {}
            text.small text-anchor="middle" x="170" y="246" { (say!(language, "page-vehicle-word")) }
            text.small x="4" y="256" { (say!(language, "page-left-word")) }
            text.small text-anchor="end" x="336" y="256" { (say!(language, "page-right-word")) }
            g transform={ "translate(" (u) " " (v) ")" } { path.wanted d="M-78 0H78M0 0V16" {} }
            g transform={ "translate(" (now_u) " " (now_v) ") rotate(" (angle) ")" } { path.now d="M-78 0H78M0 0V16" {} }
            @if let Some(m) = sideways {
                (arrow([now_u, now_v + 26.0], [u, now_v + 26.0]))
                (label([f64::midpoint(now_u, u), now_v + 48.0], "middle", &m.label(language)))
            }
            @if let Some(m) = along {
                // On the side that the stand leaves, beside the arrows of a turn; its figure at the tip, where none of them is.
                @let at = u + 56.0 * sideways.map_or(-1.0, |m| m.sign());
                (arrow([at, now_v], [at, v]))
                (label([at, if m.positive { v - 8.0 } else { v + 20.0 }], "middle", &m.label(language)))
            }
            @if let Some(m) = turn {
                @let reach = 92.0;
                @let bend = 24.0 * m.sign();
                (arrow([now_u - reach, now_v - bend], [now_u - reach, now_v + bend]))
                (arrow([now_u + reach, now_v + bend], [now_u + reach, now_v - bend]))
                (label([now_u + reach, now_v + 46.0], "middle", &m.label(language)))
            }
        }
    }
}

/// Seen from the vehicle's right: it drives to the right.
fn from_beside(language: Language, [height, tilt]: [Option<&Move>; 2]) -> Markup {
    let (u, v) = (206.0, 84.0);
    let now_v = v + height.map_or(0.0, |m| 34.0 * m.sign());
    // A top that must go away, to the right, leans to the left now.
    let angle = tilt.map_or(0.0, |m| -10.0 * m.sign());
    html! {
        svg viewBox="0 -28 340 222" aria-hidden="true" focusable="false" {
            text.small x="4" y="-13" { (say!(language, "page-from-side")) }
            path.body d="M0 70C30 74 78 92 92 108C104 118 106 140 100 158H82A24 24 0 0 0 34 158H0" {}
            circle.wheel cx="58" cy="160" r="20" {}
            path.floor d="M0 181H340" {}
            path.mast d={ "M" (u) " " (now_v) "V180M" (u - 22.0) " 180H" (u + 22.0) } {}
            path.wanted d={ "M" (u) " " (v - 42.0) "V" (v + 42.0) } {}
            g transform={ "translate(" (u) " " (now_v) ") rotate(" (angle) ")" } { path.now d="M0 -42V42" {} }
            @if let Some(m) = height {
                (arrow([u + 36.0, now_v], [u + 36.0, v]))
                (label([u + 46.0, f64::midpoint(now_v, v) + 5.0], "start", &m.label(language)))
            }
            @if let Some(m) = tilt {
                @let reach = 24.0 * m.sign();
                (arrow([u - reach, now_v - 54.0], [u + reach, now_v - 54.0]))
                (label([u + 34.0, now_v - 48.0], "start", &m.label(language)))
            }
        }
    }
}

/// Seen from the driver's seat: the vehicle's left is left.
fn from_vehicle(language: Language, level: &Move) -> Markup {
    let (u, v) = (170.0, 74.0);
    // The right end is to go down: it is high now.
    let angle = -7.0 * level.sign();
    let bend = 22.0 * level.sign();
    html! {
        svg viewBox="0 0 340 150" aria-hidden="true" focusable="false" {
            text.small x="4" y="14" { (say!(language, "page-from-vehicle")) }
            path.floor d="M0 138H340" {}
            path.mast d="M170 74V137M140 137H200" {}
            g transform={ "translate(" (u) " " (v) ")" } { path.wanted d="M-96 0H96" {} }
            g transform={ "translate(" (u) " " (v) ") rotate(" (angle) ")" } { path.now d="M-96 0H96" {} }
            (arrow([u + 116.0, v - bend], [u + 116.0, v + bend]))
            (arrow([u - 116.0, v + bend], [u - 116.0, v - bend]))
            (label([u, v - 26.0], "middle", &level.label(language)))
            text.small x="4" y="132" { (say!(language, "page-left-word")) }
            text.small text-anchor="end" x="336" y="132" { (say!(language, "page-right-word")) }
        }
    }
}

fn arrow(from: [f64; 2], to: [f64; 2]) -> Markup {
    let (du, dv) = (to[0] - from[0], to[1] - from[1]);
    let length = du.hypot(dv).max(1.0);
    let (du, dv) = (du / length, dv / length);
    let foot = [to[0] - 14.0 * du, to[1] - 14.0 * dv];
    let side = [-8.0 * dv, 8.0 * du];
    html! {
        path.shaft d={ "M" (from[0]) " " (from[1]) "L" (foot[0]) " " (foot[1]) } {}
        path.tip d={ "M" (to[0]) " " (to[1]) "L" (foot[0] + side[0]) " " (foot[1] + side[1]) "L" (foot[0] - side[0]) " " (foot[1] - side[1]) "Z" } {}
    }
}

fn label(at: [f64; 2], anchor: &str, text: &str) -> Markup {
    html! { text.amount text-anchor=(anchor) x=(at[0]) y=(at[1]) { (text) } }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn one(way: Way, sign: i8) -> Option<Move> {
        let quantity = Quantity::Yaw;
        let (positive, amount) = (sign > 0, Figure::fixed(24.0, 0));
        let of = Vec::new();
        (sign != 0).then(|| Move { quantity, way, positive, amount, of, sentence: String::new(), phrase: None })
    }

    /// The numbers of an attribute or a path.
    fn numbers(text: &str) -> Vec<f64> {
        text.split(|c: char| !(c.is_ascii_digit() || c == '.' || c == '-')).filter_map(|n| n.parse().ok()).collect()
    }

    fn behind<'a>(part: &'a str, key: &str) -> &'a str {
        part.split(key).nth(1).and_then(|rest| rest.split('"').next()).unwrap_or_default()
    }

    #[test]
    fn no_arrow_crosses_a_figure_whatever_is_moved_from_above() {
        let mut tried = 0;
        for (turn, sideways, along) in (0..27).map(|i| (i % 3 - 1, i / 3 % 3 - 1, i / 9 - 1)) {
            let moves = [one(Way::Turn, turn), one(Way::Sideways, sideways), one(Way::Along, along)];
            let picture = from_above(Language::English, [0, 1, 2].map(|i: usize| moves[i].as_ref())).into_string();
            let shafts: Vec<Vec<f64>> =
                picture.split("class=\"shaft\"").skip(1).map(|part| numbers(behind(part, " d=\""))).collect();
            for part in picture.split("class=\"amount\"").skip(1) {
                let (x, y) = (numbers(behind(part, " x=\""))[0], numbers(behind(part, " y=\""))[0]);
                for s in &shafts {
                    tried += 1;
                    // A figure of five letters of 17 px is some 50 px wide and 14 px high above its line.
                    let beside = s[0].max(s[2]) < x - 26.0 || s[0].min(s[2]) > x + 26.0;
                    let above = s[1].max(s[3]) < y - 14.0 || s[1].min(s[3]) > y + 2.0;
                    assert!(beside || above, "{turn} {sideways} {along}: {s:?} crosses the figure at {x}, {y}");
                }
            }
        }
        assert!(tried > 100, "{tried}");
    }
}
