//! What the trainee is given besides the photos: what a careful technician
//! reads off tapes, lasers and levels at the stand, rounded as instruments show it.

use std::collections::BTreeMap;
use std::fmt::Write;

use crate::quantity::rounded;
use crate::words::{Figure, Language, say};

/// Half of the stand's width, where the ends are measured, mm.
const HALF_WIDTH_MM: f64 = 700.0;
/// Half of the target's height, where the plumb line is read, mm.
const HALF_HEIGHT_MM: f64 = 300.0;

/// The sheet of readings of one job, from its truth.
pub(super) fn sheet(job: &str, truth: &BTreeMap<String, f64>, language: Language) -> String {
    let of = |key: &str| truth.get(key).copied().unwrap_or(f64::NAN);
    let (distance, yaw, pitch, roll) = (of("distance_from_nose"), of("yaw"), of("pitch"), of("roll"));
    let end = HALF_WIDTH_MM * yaw.to_radians().sin();
    let top = 2.0 * HALF_HEIGHT_MM * pitch.to_radians().sin();
    let fall = 2.0 * HALF_WIDTH_MM * roll.to_radians().sin();
    let lines = [
        (say!(language, "training-read-distance"), distance),
        (say!(language, "training-read-left-end"), distance - end),
        (say!(language, "training-read-right-end"), distance + end),
        (say!(language, "training-read-centring"), of("lateral_offset")),
        (say!(language, "training-read-height"), of("height")),
        (say!(language, "training-read-plumb-line"), top),
        (say!(language, "training-read-water-level"), fall),
    ];
    let widest = lines.iter().map(|(what, _)| what.chars().count()).max().unwrap_or(0);
    let mut text = say!(language, "training-read-head", job = job) + "\n\n";
    for (what, value) in lines {
        let _ = writeln!(text, "{what:<widest$}{:>9} mm", rounded(value, 0));
    }
    let (ends, points) = (Figure::fixed(2.0 * HALF_WIDTH_MM, 0), Figure::fixed(2.0 * HALF_HEIGHT_MM, 0));
    let _ = writeln!(text, "\n{}", say!(language, "training-read-bases", ends = ends, points = points));
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    // ISO 8855: positive yaw brings the left end nearer, positive pitch leans the
    // top away, positive roll lowers the right end. One degree over 1400 mm is 24 mm.
    #[test]
    fn readings_lean_the_way_the_stand_does() {
        let truth = [("distance_from_nose", 1500.0), ("yaw", 1.0), ("pitch", 1.0), ("roll", 1.0)];
        let truth = truth.iter().map(|(k, v)| ((*k).to_owned(), *v)).collect();
        let text = sheet("D", &truth, Language::English);
        let value = |words: &str| -> f64 {
            let line = text.lines().find(|l| l.contains(words)).unwrap();
            line.trim_end_matches(" mm").rsplit(' ').next().unwrap().parse().unwrap()
        };
        assert!((value("left in front") - 1488.0).abs() < 1e-9 && (value("right in front") - 1512.0).abs() < 1e-9);
        assert!((value("Plumb") - 10.0).abs() < 1e-9 && (value("Water") - 24.0).abs() < 1e-9);
    }
}
