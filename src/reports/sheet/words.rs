//! Phrases that several pages share.

use nalgebra::Vector3;

use crate::marker::{Marker, Role};

use super::Paper;

/// The line at the foot of a page.
pub(super) fn folio(name: &str, page: usize, count: usize) -> String {
    format!("baywitness · {name} · page {page} of {count}")
}

/// What a carrier is, in the trade's words.
pub(super) fn role(role: Role) -> &'static str {
    match role {
        Role::Target => "target stand",
        Role::RearLeftWheel => "rear left wheel plate",
        Role::RearRightWheel => "rear right wheel plate",
        Role::FrontLeftWheel => "front left wheel plate",
        Role::FrontRightWheel => "front right wheel plate",
        Role::Floor => "floor sheet",
        Role::Nose => "nose mark",
        Role::RearLeftArch => "mark on the rear left wheel arch",
        Role::RearRightArch => "mark on the rear right wheel arch",
        Role::FrontLeftArch => "mark on the front left wheel arch",
        Role::FrontRightArch => "mark on the front right wheel arch",
        Role::Card => "job card",
    }
}

/// Where a carrier's dimensions start.
pub(super) fn datum(role: Role) -> &'static str {
    match role {
        Role::Target => "the aim point: the middle of the target face",
        Role::Floor => "the centre of the first marker; x-y is the floor",
        Role::Nose => "the middle of the sensor's cover, or the foremost point that distances are measured from",
        Role::Card => "the middle of the card",
        arch if arch.is_arch() => "the lower edge of the wheel arch, straight above the wheel's centre",
        _ => "the hub datum: where the wheel's spin axis meets the plane of its outer face",
    }
}

const DIRECTIONS: [(Vector3<f64>, &str); 6] = [
    (Vector3::new(1.0, 0.0, 0.0), "forward"),
    (Vector3::new(-1.0, 0.0, 0.0), "rearward"),
    (Vector3::new(0.0, 1.0, 0.0), "to the vehicle's left"),
    (Vector3::new(0.0, -1.0, 0.0), "to the vehicle's right"),
    (Vector3::new(0.0, 0.0, 1.0), "up"),
    (Vector3::new(0.0, 0.0, -1.0), "down"),
];

/// A direction on a perfectly set-up carrier, as said at the vehicle.
pub(super) fn direction(vector: Vector3<f64>) -> String {
    let mut parts: Vec<(f64, &str)> =
        DIRECTIONS.iter().map(|(axis, name)| (vector.dot(axis), *name)).filter(|(along, _)| *along > 0.05).collect();
    parts.sort_by(|a, b| b.0.total_cmp(&a.0));
    match parts.as_slice() {
        [] => "nowhere".to_owned(),
        [(_, only)] => (*only).to_owned(),
        [(first, name), (second, other), ..] => {
            format!("{name}, turned {:.0}° {other}", second.atan2(*first).to_degrees())
        }
    }
}

/// What a marker's up arrow points to.
pub(super) fn up(marker: &Marker) -> String {
    match direction(marker.up).as_str() {
        "up" => "UP".to_owned(),
        other => format!("UP = {other}"),
    }
}

/// A length without needless digits: at most a hundredth, no negative zero.
pub(super) fn mm(value: f64) -> String {
    let rounded = (value * 100.0).round() / 100.0 + 0.0;
    let text = format!("{rounded:.2}");
    let text = text.strip_suffix('0').unwrap_or(&text);
    if text == "-0.0" { "0.0".to_owned() } else { text.to_owned() }
}

/// A point in a carrier's frame.
pub(super) fn place(at: Vector3<f64>) -> String {
    format!("x {}  y {}  z {}", mm(at.x), mm(at.y), mm(at.z))
}

/// `1`, `1 and 2`, `1, 2 and 3`.
pub(super) fn list(ids: impl IntoIterator<Item = u32>) -> String {
    let ids: Vec<String> = ids.into_iter().map(|id| id.to_string()).collect();
    match ids.split_last() {
        Some((last, rest)) if !rest.is_empty() => format!("{} and {last}", rest.join(", ")),
        _ => ids.concat(),
    }
}

/// The remedy for something too large: the first paper that takes it, else another size.
pub(super) fn larger_paper(paper: Paper, fits: impl Fn(Paper) -> bool, smaller: &str) -> String {
    match Paper::ALL.into_iter().find(|&other| other != paper && fits(other)) {
        Some(other) => format!("print with --paper {other}, or {smaller}"),
        None => smaller.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_are_short() {
        assert_eq!(
            ["0.0", "126.0", "-40.0", "12.35"],
            [-0.001, 126.0, -40.0, 12.346].map(mm).each_ref().map(|s| s.as_str())
        );
    }

    #[test]
    fn directions_read_as_at_the_vehicle() {
        assert_eq!(direction(Vector3::x()), "forward");
        let turned = Vector3::new(30f64.to_radians().cos(), 0.5, 0.0);
        assert_eq!(direction(turned), "forward, turned 30° to the vehicle's left");
    }

    #[test]
    fn lists_read_well() {
        assert_eq!([list([1]), list([1, 2]), list([1, 2, 3])], ["1", "1 and 2", "1, 2 and 3"]);
    }
}
