//! The detector on real photos (skipped where `../shared/photos/real` is
//! absent): every marker that a person sees is found, and nothing else.
//!
//! Sources: the room is `images/mapping_feb_2014` of the public repository `swatbotics/apriltag` (BSD-2-Clause,
//! Matt Zucker); the three single photos are test data of the AprilTag library (photos CC BY-SA 2.0); the
//! chessboard is sample data of OpenCV. None of them is part of this project.

#![cfg(test)]

use std::path::{Path, PathBuf};

use baywitness::detect::{Sightings, find_markers};
use baywitness::marker::Dictionary;
use baywitness::photo;
use nalgebra::Vector2;

fn real(name: &str) -> Option<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared/photos/real").join(name);
    if folder.is_dir() {
        return Some(folder);
    }
    println!("skipped: {} is not here", folder.display());
    None
}

fn find(path: &Path) -> Sightings {
    find_markers(&photo::read(path).unwrap().luma, Dictionary::tag36h11())
}

/// Seen by eye, as the room's notes list them.
const ROOM: [(u32, &[u32]); 18] = [
    (1368, &[13, 19]),
    (1369, &[11, 13, 19]),
    (1370, &[11, 13]),
    (1371, &[0, 11, 13]),
    (1372, &[0, 11]),
    (1373, &[0, 1, 11]),
    (1374, &[0, 1]),
    (1375, &[0, 1, 2]),
    (1376, &[1, 2]),
    (1377, &[1, 2, 3]),
    (1378, &[2, 3]),
    (1379, &[2, 3, 4]),
    (1380, &[3, 4]),
    (1381, &[4, 5]),
    (1382, &[4, 5, 6]),
    (1383, &[5, 6]),
    (1384, &[5, 6, 7]),
    (1385, &[6, 7]),
];

#[test]
fn every_marker_of_the_room_is_found_and_nothing_else() {
    let Some(room) = real("room") else { return };
    let mut wrong = Vec::new();
    for (number, wanted) in ROOM {
        let path = room.join(format!("IMG_{number}.JPG"));
        let mut found: Vec<u32> = find(&path).markers.iter().map(|m| m.id).collect();
        found.sort_unstable();
        if found != wanted {
            wrong.push(format!("IMG_{number}: found {found:?}, a person sees {wanted:?}"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn the_chessboards_bear_no_markers() {
    let Some(boards) = real("chessboard") else { return };
    for name in ["left01.jpg", "left05.jpg", "right08.jpg", "right14.jpg"] {
        assert_eq!(find(&boards.join(name)).markers, Vec::new(), "{name}");
    }
}

/// Middles of the markers that a person sees in the AprilTag library's test photos, px: each was
/// looked at, enlarged. All bear id 0, so only places tell them apart. Not everything that a person
/// makes out is listed: markers smaller than 16 px or turned beyond 75 degrees are not promised.
const SEEN: [(&str, &[[f64; 2]]); 3] = [
    (
        "33369213973_9d9bb4cc96_c",
        &[
            [352.0, 335.0],
            [389.0, 345.0],
            [599.0, 353.0],
            [687.0, 442.0],
            [603.0, 334.0],
            [607.0, 343.0],
            [703.0, 331.0],
            [711.0, 346.0],
            [714.0, 358.0],
            [264.0, 342.0],
            [341.0, 360.0],
            [370.0, 356.0],
            [409.0, 350.0],
            [427.0, 327.0],
            [435.0, 350.0],
            [457.0, 340.0],
            [472.0, 358.0],
            [492.0, 324.0],
            [498.0, 358.0],
            [526.0, 329.0],
            [530.0, 376.0],
            [540.0, 338.0],
            [549.0, 353.0],
            [558.0, 378.0],
            [585.0, 318.0],
            [636.0, 389.0],
            [643.0, 348.0],
            [650.0, 336.0],
            [655.0, 444.0],
            [667.0, 327.0],
            [675.0, 354.0],
            [678.0, 341.0],
            [732.0, 337.0],
            [737.0, 366.0],
            [743.0, 445.0],
            [752.0, 349.0],
            [776.0, 360.0],
        ],
    ),
    (
        "34085369442_304b6bafd9_c",
        &[
            [749.0, 114.0],
            [37.0, 347.0],
            [610.0, 105.0],
            [703.0, 302.0],
            [14.0, 378.0],
            [33.0, 377.0],
            [56.0, 347.0],
            [66.0, 386.0],
            [127.0, 396.0],
            [128.0, 341.0],
            [222.0, 335.0],
            [225.0, 403.0],
            [309.0, 401.0],
            [319.0, 334.0],
            [365.0, 338.0],
            [408.0, 291.0],
            [423.0, 344.0],
            [441.0, 343.0],
            [462.0, 278.0],
            [476.0, 332.0],
            [478.0, 280.0],
            [499.0, 254.0],
            [534.0, 342.0],
            [622.0, 284.0],
            [635.0, 108.0],
            [638.0, 339.0],
            [655.0, 111.0],
            [671.0, 293.0],
            [688.0, 294.0],
            [702.0, 114.0],
            [703.0, 329.0],
            [742.0, 317.0],
        ],
    ),
    (
        "34139872896_defdb2f8d9_c",
        &[
            [271.0, 418.0],
            [626.0, 357.0],
            [393.0, 392.0],
            [257.0, 363.0],
            [301.0, 386.0],
            [308.0, 423.0],
            [314.0, 370.0],
            [344.0, 412.0],
            [362.0, 427.0],
            [370.0, 378.0],
            [389.0, 278.0],
            [399.0, 429.0],
            [422.0, 305.0],
            [427.0, 262.0],
            [464.0, 383.0],
            [482.0, 414.0],
            [536.0, 365.0],
            [596.0, 409.0],
            [601.0, 348.0],
            [637.0, 409.0],
            [680.0, 365.0],
            [686.0, 438.0],
            [695.0, 351.0],
            [702.0, 379.0],
            [716.0, 402.0],
            [730.0, 441.0],
            [752.0, 367.0],
            [773.0, 348.0],
        ],
    ),
];

/// Lines of `id, (x y), (x y), (x y), (x y)`: id and middle of the corners,
/// pixel edges at whole numbers as the AprilTag library has it.
fn recorded(path: &Path) -> Vec<(u32, Vector2<f64>)> {
    let text = std::fs::read_to_string(path).unwrap();
    let line = |line: &str| {
        let numbers: Vec<f64> = line.split([',', '(', ')', ' ']).filter_map(|w| w.parse().ok()).collect();
        assert_eq!(numbers.len(), 9, "{line}");
        let corners: Vec<Vector2<f64>> = numbers[1..].chunks(2).map(|c| Vector2::new(c[0] - 0.5, c[1] - 0.5)).collect();
        (numbers[0] as u32, corners.iter().sum::<Vector2<f64>>() / 4.0)
    };
    text.lines().filter(|l| !l.trim().is_empty()).map(line).collect()
}

fn middle(corners: &[Vector2<f64>; 4]) -> Vector2<f64> {
    corners.iter().sum::<Vector2<f64>>() / 4.0
}

/// Whether one of the places is a marker's middle.
fn is_at(places: &[[f64; 2]], at: Vector2<f64>) -> bool {
    places.iter().any(|p| (Vector2::from(*p) - at).norm() < 2.5)
}

/// The AprilTag library's test photos: what is recorded there is found with its id, and what is
/// found stands where a person sees a marker.
#[test]
fn recorded_markers_are_found_and_only_what_a_person_sees() {
    let Some(folder) = real("apriltag_test") else { return };
    let (mut missed, mut strays) = (Vec::new(), Vec::new());
    let mut count = 0;
    for (name, seen) in SEEN {
        let found = find(&folder.join(format!("{name}.jpg"))).markers;
        for (id, at) in recorded(&folder.join(format!("{name}.txt"))) {
            count += 1;
            let hit = found.iter().any(|m| m.id == id && (middle(&m.corners_px) - at).norm() < 2.0);
            if !hit {
                missed.push(format!("{name}: id {id} at {:.0} {:.0}", at.x, at.y));
            }
        }
        let places: Vec<_> = found.iter().map(|m| (m.id, middle(&m.corners_px))).collect();
        println!("{name}: {} found of {} seen by eye", places.len(), seen.len());
        let is_stray = |(id, at): &&(u32, Vector2<f64>)| *id != 0 || !is_at(seen, *at);
        strays.extend(places.iter().filter(is_stray).map(|(id, at)| format!("{name}: id {id} at {at}")));
        let twice = |i: usize| places[..i].iter().any(|p| (p.1 - places[i].1).norm() < 4.0);
        assert!(!(0..places.len()).any(twice), "{name}: one marker, two sightings");
    }
    assert!(strays.is_empty(), "nobody sees a marker there: {strays:#?}");
    assert!(missed.is_empty(), "{} of {count} missed: {missed:#?}", missed.len());
}
