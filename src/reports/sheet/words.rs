//! Phrases that several pages share.

use nalgebra::Vector3;

use crate::marker::{Marker, Role};
use crate::words::{Figure, Language, Phrase, Value, phrase, say};

use super::Paper;

/// The line at the foot of a page.
pub(super) fn folio(name: &str, page: usize, count: usize, language: Language) -> String {
    say!(language, "print-folio", name = name, page = page, count = count)
}

/// What a carrier is, in the trade's words.
pub(super) fn role(role: Role, language: Language) -> String {
    say!(language, "print-role", role = role.name())
}

/// Where a carrier's dimensions start.
pub(super) fn datum(role: Role) -> Phrase {
    let kind = match role {
        Role::Target => "target",
        Role::Floor => "floor",
        Role::Nose => "nose",
        Role::Card => "card",
        arch if arch.is_arch() => "arch",
        _ => "wheel",
    };
    phrase!("print-datum-of", kind = kind)
}

const DIRECTIONS: [(Vector3<f64>, &str); 6] = [
    (Vector3::new(1.0, 0.0, 0.0), "forward"),
    (Vector3::new(-1.0, 0.0, 0.0), "rearward"),
    (Vector3::new(0.0, 1.0, 0.0), "left"),
    (Vector3::new(0.0, -1.0, 0.0), "right"),
    (Vector3::new(0.0, 0.0, 1.0), "up"),
    (Vector3::new(0.0, 0.0, -1.0), "down"),
];

/// The axes that a direction has a part along, the largest first.
fn parts(vector: Vector3<f64>) -> Vec<(f64, &'static str)> {
    let along = DIRECTIONS.iter().map(|(axis, name)| (vector.dot(axis), *name));
    let mut parts: Vec<(f64, &str)> = along.filter(|(along, _)| *along > 0.05).collect();
    parts.sort_by(|a, b| b.0.total_cmp(&a.0));
    parts
}

/// A direction on a perfectly set-up carrier, as said at the vehicle.
pub(super) fn direction(vector: Vector3<f64>) -> Phrase {
    let way = |name: &str| phrase!("print-direction", way = name);
    match parts(vector).as_slice() {
        [] => way("nowhere"),
        [(_, only)] => way(only),
        [(first, name), (second, other), ..] => phrase!(
            "print-direction-turned",
            first = way(name),
            turn = Figure::fixed(second.atan2(*first).to_degrees(), 0),
            second = way(other),
        ),
    }
}

/// What a marker's up arrow points to.
pub(super) fn up(marker: &Marker, language: Language) -> String {
    match parts(marker.up).as_slice() {
        [(_, "up")] => say!(language, "print-up"),
        _ => say!(language, "print-up-is", direction = direction(marker.up)),
    }
}

/// A length without needless digits: at most a hundredth, no negative zero.
pub(super) fn mm(value: f64) -> Value {
    let rounded = (value * 100.0).round() / 100.0 + 0.0;
    let text = format!("{rounded:.2}");
    Value::digits(text.strip_suffix('0').unwrap_or(&text))
}

/// A point in a carrier's frame.
pub(super) fn place(at: Vector3<f64>) -> Phrase {
    phrase!("print-place", x = mm(at.x), y = mm(at.y), z = mm(at.z))
}

/// `1`, `1 and 2`, `1, 2 and 3`.
pub(super) fn list(ids: impl IntoIterator<Item = u32>, language: Language) -> String {
    let ids: Vec<String> = ids.into_iter().map(|id| id.to_string()).collect();
    Value::from(ids).say(language)
}

/// The first paper that takes what is too large for another.
pub(super) fn larger_paper(paper: Paper, fits: impl Fn(Paper) -> bool) -> Option<&'static str> {
    Paper::ALL.into_iter().find(|&other| other != paper && fits(other)).map(Paper::name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_are_short() {
        let english = [-0.001, 126.0, -40.0, 12.346].map(|v| mm(v).say(Language::English));
        assert_eq!(english, ["0.0", "126.0", "-40.0", "12.35"]);
        assert_eq!(mm(12.346).say(Language::German), "12,35");
    }

    #[test]
    fn directions_read_as_at_the_vehicle() {
        assert_eq!(direction(Vector3::x()).say(Language::English), "forward");
        let turned = Vector3::new(30f64.to_radians().cos(), 0.5, 0.0);
        assert_eq!(direction(turned).say(Language::English), "forward, turned 30° to the vehicle's left");
        assert_eq!(direction(turned).say(Language::German), "nach vorn, um 30° nach links gedreht");
    }

    #[test]
    fn lists_read_well() {
        let english =
            [list([1], Language::English), list([1, 2], Language::English), list([1, 2, 3], Language::English)];
        assert_eq!(english, ["1", "1 and 2", "1, 2 and 3"]);
    }
}
