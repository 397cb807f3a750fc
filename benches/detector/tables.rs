//! What the bench prints.

use baywitness::detect::Sightings;
use nalgebra::Vector2;

use crate::bound::bound;
use crate::detect_support::render::{Camera, Kind};
use crate::detect_support::{Score, TrueMarker};
use crate::peers::{Found, Outcome};
use crate::photos::{Group, SIDES, Shot, TILTS};

/// From here up an error beyond `GROSS_PX` is a gross one.
const LARGE_PX: f64 = 45.0;
const GROSS_PX: f64 = 0.3;

/// Counts and errors of one cell of a table.
#[derive(Default)]
struct Cell {
    shown: usize,
    found: usize,
    squares: f64,
    worst: f64,
    gross: usize,
}

impl Cell {
    fn rms(&self) -> f64 {
        (self.squares / self.found as f64).sqrt()
    }
}

fn middle(corners: &[Vector2<f64>; 4]) -> Vector2<f64> {
    corners.iter().sum::<Vector2<f64>>() / 4.0
}

fn hit<'a>(found: &'a Found, marker: &TrueMarker) -> Option<&'a [Vector2<f64>; 4]> {
    let same = |f: &&(u32, [Vector2<f64>; 4])| {
        f.0 == marker.id && (middle(&f.1) - middle(&marker.corners)).norm() < marker.side / 4.0
    };
    found.iter().find(same).map(|f| &f.1)
}

/// Sums up the markers of the photos that `wanted` picks.
fn cell(shots: &[Shot], outcome: &Outcome, wanted: impl Fn(&Shot) -> bool) -> Cell {
    let mut cell = Cell::default();
    for (shot, found) in shots.iter().zip(&outcome.found).filter(|(shot, _)| wanted(shot)) {
        for marker in &shot.markers {
            cell.shown += 1;
            let Some(corners) = hit(found, marker) else { continue };
            cell.found += 1;
            let errors = corners.iter().zip(&marker.corners).map(|(a, b)| (a - b).norm());
            let worst = errors.clone().fold(0.0, f64::max);
            cell.squares += errors.map(|e| e * e).sum::<f64>() / 8.0;
            cell.worst = cell.worst.max(worst);
            cell.gross += usize::from(worst > GROSS_PX);
        }
    }
    cell
}

type Column = (String, Box<dyn Fn(&Shot) -> bool>);

fn print(shots: &[Shot], outcomes: &[Outcome], what: &str, columns: &[Column], show: impl Fn(&Cell) -> String) {
    let titles: Vec<_> = columns.iter().map(|c| c.0.as_str()).collect();
    println!("\n| {what} | {} |\n|---|{}", titles.join(" | "), "---|".repeat(columns.len()));
    for outcome in outcomes {
        let values: Vec<_> = columns.iter().map(|c| show(&cell(shots, outcome, &c.1))).collect();
        println!("| {} | {} |", outcome.name, values.join(" | "));
    }
}

fn recall(cell: &Cell) -> String {
    format!("{:.3}", cell.found as f64 / cell.shown as f64)
}

fn accuracy(cell: &Cell) -> String {
    if cell.found == 0 { "-".to_owned() } else { format!("{:.3} ({:.2})", cell.rms(), cell.worst) }
}

pub(crate) fn by_size_and_tilt(shots: &[Shot], outcomes: &[Outcome]) {
    let upright: Vec<Column> = SIDES
        .map(|side| -> Column {
            (format!("{side} px"), Box::new(move |s| matches!(s.group, Group::Grid(0 | 1)) && is(s, side)))
        })
        .into();
    print(shots, outcomes, "recall, tilt to 45 deg", &upright, recall);
    print(shots, outcomes, "corner RMS (worst), px, tilt to 45 deg", &upright, accuracy);
    let mut tilted: Vec<Column> = Vec::new();
    for (side, tilt) in [(32.0, 2), (45.0, 2), (45.0, 3), (70.0, 2), (70.0, 3), (100.0, 2), (100.0, 3), (200.0, 3)] {
        let (from, to) = TILTS[tilt];
        let title = format!("{side} px, {from} to {to} deg");
        tilted.push((title, Box::new(move |s| s.group == Group::Grid(tilt) && is(s, side))));
    }
    print(shots, outcomes, "recall, tilted", &tilted, recall);
    print(shots, outcomes, "corner RMS (worst), px, tilted", &tilted, accuracy);
    let faint: Vec<Column> = [16.0, 20.0, 25.0, 32.0, 45.0]
        .map(|side| -> Column { (format!("{side} px"), Box::new(move |s| s.group == Group::Faint && is(s, side))) })
        .into();
    print(shots, outcomes, "recall, contrast 40 grey levels", &faint, recall);
    let mut troubled: Vec<Column> = Vec::new();
    for shot in shots {
        if let Group::Troubled(trouble) = shot.group {
            let side = shot.side;
            let wanted = move |s: &Shot| s.group == Group::Troubled(trouble) && is(s, side);
            troubled.push((format!("{trouble:?} {side} px"), Box::new(wanted)));
        }
    }
    print(shots, outcomes, "recall, troubled", &troubled, recall);
    print(shots, outcomes, "corner RMS (worst), px, troubled", &troubled, accuracy);
    let large: Vec<Column> = vec![(
        format!("of all to 60 deg, {LARGE_PX} px and up"),
        Box::new(|s| matches!(s.group, Group::Grid(0..=2)) && s.side >= LARGE_PX),
    )];
    print(shots, outcomes, "errors beyond 0.3 px", &large, |c| format!("{} of {}", c.gross, c.found));
}

fn is(shot: &Shot, side: f64) -> bool {
    (shot.side - side).abs() < 0.5
}

/// Corner RMS in units of the Cramer-Rao bound: for the noise of the photos as stored, and for the camera's alone,
/// as if JPEG had added none.
pub(crate) fn bounds(shots: &[Shot], outcomes: &[Outcome], camera: Camera) {
    if camera != Camera::Linear {
        return;
    }
    let kind = Kind::default();
    // The pixel's own area and the rounding to whole grey levels come on top.
    let (blur, noise) = (kind.blur.hypot(12f64.sqrt().recip()), kind.noise.hypot(12f64.sqrt().recip()));
    let titles = SIDES.map(|s| format!("{s} px")).join(" | ");
    println!("\n| corner RMS / bound, tilt to 45 deg | {titles} |\n|---|{}", "---|".repeat(SIDES.len()));
    let least: Vec<Vec<Option<f64>>> = shots
        .iter()
        .map(|shot| {
            let counts = matches!(shot.group, Group::Grid(0 | 1));
            let one = |m: &TrueMarker| bound(m.id, &m.corners, m.contrast, blur, 1.0);
            shot.markers.iter().map(|m| one(m).filter(|_| counts)).collect()
        })
        .collect();
    let row = |name: &str, decimals: usize, square: &dyn Fn(usize, usize, f64) -> Option<f64>| {
        let value = |side: f64| {
            let (mut sum, mut count) = (0.0, 0);
            for (i, bounds) in least.iter().enumerate().filter(|(i, _)| is(&shots[*i], side)) {
                for (k, least) in bounds.iter().enumerate() {
                    if let Some(square) = least.and_then(|least| square(i, k, least)) {
                        sum += square;
                        count += 1;
                    }
                }
            }
            (sum / f64::from(count)).sqrt()
        };
        println!("| {name} | {} |", SIDES.map(|s| format!("{:.decimals$}", value(s))).join(" | "));
    };
    row("the bound, px", 4, &|i, _, least| Some((least * shots[i].noise).powi(2)));
    row("the bound without JPEG, px", 4, &|_, _, least| Some((least * noise).powi(2)));
    for outcome in outcomes {
        let error = |i: usize, k: usize| {
            let m = &shots[i].markers[k];
            let corners = hit(&outcome.found[i], m)?;
            Some(corners.iter().zip(&m.corners).map(|(a, b)| (a - b).norm_squared()).sum::<f64>() / 8.0)
        };
        row(&outcome.name, 2, &|i, k, least| Some(error(i, k)? / (least * shots[i].noise).powi(2)));
        row(&format!("{}, without JPEG", outcome.name), 2, &|i, k, least| Some(error(i, k)? / (least * noise).powi(2)));
    }
}

/// Errors in units of the stated uncertainty, by size and tilt.
pub(crate) fn uncertainty(shots: &[Shot], sightings: &[Sightings]) {
    let titles = SIDES.map(|s| format!("{s} px")).join(" | ");
    println!("\n| error / stated u (RMS) | {titles} |\n|---|{}", "---|".repeat(SIDES.len()));
    let row = |title: String, wanted: &dyn Fn(Group) -> bool| {
        let value = |side: f64| {
            let mut score = Score::default();
            for (shot, found) in shots.iter().zip(sightings).filter(|(s, _)| wanted(s.group) && is(s, side)) {
                score.add(&shot.markers, found, |_| true);
            }
            format!("{:.2}", score.normalized())
        };
        println!("| {title} | {} |", SIDES.map(value).join(" | "));
    };
    for (i, (from, to)) in TILTS.into_iter().enumerate() {
        row(format!("{from} to {to} deg"), &|group| group == Group::Grid(i));
    }
    row("all".to_owned(), &|group| matches!(group, Group::Grid(_)));
}

/// What was found where no such marker is.
pub(crate) fn false_ones(shots: &[Shot], outcomes: &[Outcome]) {
    let clutter = shots.iter().filter(|s| s.group == Group::Clutter).count();
    println!("\n| false detections | {clutter} photos of clutter, 0.76 MP | the others |\n|---|---|---|");
    for outcome in outcomes {
        let count = |is_clutter: bool| -> usize {
            let chosen = shots.iter().zip(&outcome.found).filter(|(s, _)| (s.group == Group::Clutter) == is_clutter);
            let strays = |(shot, found): (&Shot, &Found)| {
                let own = |f: &(u32, [Vector2<f64>; 4])| {
                    let near = |m: &TrueMarker| (middle(&f.1) - middle(&m.corners)).norm() < m.side / 4.0;
                    shot.markers.iter().any(|m| m.id == f.0 && near(m))
                };
                found.iter().filter(|f| !own(f)).count()
            };
            chosen.map(strays).sum()
        };
        println!("| {} | {} | {} |", outcome.name, count(true), count(false));
    }
}

/// CPU time against OpenCV's reading, memory, and recall at other sizes.
pub(crate) fn speed(shots: &[Shot], outcomes: &[Outcome], read: &[f64], alone: &[Option<(f64, f64)>]) {
    let sum = |seconds: &[f64], group: Group| -> f64 {
        shots.iter().zip(seconds).filter(|(s, _)| s.group == group).map(|(_, t)| t).sum()
    };
    let mut groups = vec![Group::Speed];
    groups.extend(shots.iter().map(|s| s.group).filter(|g| matches!(g, Group::Other(_))));
    let name = |group: &Group| if let Group::Other(name) = *group { name } else { "12 MP" };
    let titles: Vec<_> = groups.iter().map(name).collect();
    println!("\n| | {} |\n|---|{}", titles.join(" | "), "---|".repeat(groups.len()));
    let line = |title: &str, value: &dyn Fn(Group) -> String| {
        println!("| {title} | {} |", groups.iter().map(|g| value(*g)).collect::<Vec<_>>().join(" | "));
    };
    line("OpenCV reads as grey, s", &|g| {
        let count = shots.iter().filter(|s| s.group == g).count() as f64;
        if read.is_empty() { "-".to_owned() } else { format!("{:.3}", sum(read, g) / count) }
    });
    for outcome in outcomes {
        line(&format!("{}, CPU / that; recall", outcome.name), &|g| {
            let found = cell(shots, outcome, |s| s.group == g);
            let ratio = if read.is_empty() { f64::NAN } else { sum(&outcome.seconds, g) / sum(read, g) };
            format!("{ratio:.1}; {}", recall(&found))
        });
    }
    let own = |g: Group| shots.iter().zip(alone).filter(move |(s, _)| s.group == g);
    line("baywitness, whole process, CPU / that", &|g| {
        let seconds: f64 = own(g).filter_map(|(_, a)| a.map(|a| a.0)).sum();
        if read.is_empty() { "-".to_owned() } else { format!("{:.1}", seconds / sum(read, g)) }
    });
    line("baywitness, peak memory / luma", &|g| {
        let share = |(s, a): (&Shot, &Option<(f64, f64)>)| a.map(|a| a.1 * 1024.0 / s.pixels as f64);
        format!("{:.1}", own(g).filter_map(share).fold(0.0, f64::max))
    });
}
