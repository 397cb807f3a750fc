//! Real photos (skipped where `../shared/photos/real` is absent): eighteen of a room and seventeen of a chessboard by one
//! phone, saved at a quarter of its size, from the public repository `swatbotics/apriltag` (BSD-2-Clause, Matt Zucker);
//! strangers are OpenCV's chessboard (two cameras) and three photos of the AprilTag library's test data.

use std::path::{Path, PathBuf};

use baywitness::pattern::{Digest, Doubt, LIMIT_BYTES, MATCH_PCE, Says, Search, find, judge};
use baywitness::photo::{self, Luma};

use crate::program::program;

use super::{cut, grey, pattern, quarter, spread};

pub(super) fn photos(name: &str) -> Option<Vec<Luma>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared/photos/real").join(name);
    if !folder.is_dir() {
        println!("skipped: {} is not here", folder.display());
        return None;
    }
    Some(files(name).iter().map(|file| photo::read(file).unwrap().luma).collect())
}

fn files(name: &str) -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared/photos/real").join(name);
    let is_photo = |path: &PathBuf| path.extension().is_some_and(|e| e.eq_ignore_ascii_case("jpg"));
    let mut files: Vec<PathBuf> = std::fs::read_dir(folder).unwrap().map(|e| e.unwrap().path()).collect();
    files.retain(is_photo);
    files.sort();
    files
}

#[test]
fn a_phone_is_known_again_by_other_photos_of_another_scene_and_strangers_are_not() {
    let (Some(room), Some(board)) = (photos("room"), photos("room/calibration")) else { return };
    assert_eq!((room.len(), board.len()), (18, 17));
    let (of_board, of_room) = (pattern("phone", &board).unwrap(), pattern("phone", &room).unwrap());
    println!("pattern of 17: {} shown, median {}", of_board.shown, of_board.median_pce);
    println!("pattern of 18: {} shown, median {}", of_room.shown, of_room.median_pce);
    let look = |photo: &Luma, digest| find(&grey(photo), digest, Search::Plain);
    let own: Vec<_> = room.iter().map(|p| look(p, &of_board)).chain(board.iter().map(|p| look(p, &of_room))).collect();
    assert!(own.iter().all(|found| (found.shift_px, found.turn_deg) == ([0, 0], 0)));
    let mut own: Vec<f64> = own.iter().map(|found| found.pce).collect();
    let shown = own.iter().filter(|e| **e >= MATCH_PCE).count();
    println!("own: {shown} of {} at 100, lowest, middle, highest {:.0?}", own.len(), spread(&mut own));
    assert_eq!(shown, 35);
    let strangers = ["chessboard", "apriltag_test"].iter().filter_map(|name| photos(name)).flatten();
    let fitting = strangers.map(|p| cut(&p, [0, 0], [p.width(), p.height().min(612)]));
    let mut other: Vec<f64> = fitting.flat_map(|p| [look(&p, &of_room).pce, look(&p, &of_board).pce]).collect();
    println!("{} pairs with strangers: {:.0?}", other.len(), spread(&mut other));
    assert!(other.iter().all(|e| *e < MATCH_PCE));
}

#[test]
fn camera_fit_makes_the_pattern_from_the_photos_that_it_has() {
    let Some(room) = photos("room") else { return };
    let dir = tempfile::tempdir().unwrap();
    let at = |name: &str| dir.path().join(name);
    let board = "format = \"board/1\"\nkind = \"chessboard\"\ninner_corners = [7, 5]\nsquare_mm = 30.0\n";
    std::fs::write(at("board.toml"), board).unwrap();
    let mut fit = program();
    fit.args(["camera", "fit", "--board"]).arg(at("board.toml")).arg("--out").arg(at("phone.toml"));
    fit.arg("--pattern").arg(at("phone.pattern"));
    fit.args(files("room/calibration"));
    let out = fit.output().unwrap();
    let said = String::from_utf8_lossy(&out.stdout).into_owned() + &String::from_utf8_lossy(&out.stderr);
    assert!(said.contains("17 of 17 photos are found in the pattern of the others"), "{said}");
    let bytes = std::fs::read(at("phone.pattern")).unwrap();
    let digest = Digest::from_bytes(&bytes, "phone.pattern").unwrap();
    assert!(bytes.len() <= LIMIT_BYTES && digest.camera == "phone");
    assert!(find(&grey(&room[0]), &digest, Search::Plain).pce > MATCH_PCE);
}

#[test]
fn turned_cropped_shrunk_and_scaled_a_little_it_is_still_found() {
    let (Some(room), Some(board)) = (photos("room"), photos("room/calibration")) else { return };
    let digest = pattern("phone", &board).unwrap();
    // The one in which it shows best: what is lost on the way is lost by turning and cropping.
    let photo = room.iter().max_by_key(|p| find(&grey(p), &digest, Search::Plain).pce as u64).unwrap();
    let turned = quarter(photo);
    let found = find(&grey(&turned), &digest, Search::Plain);
    assert!(found.pce > MATCH_PCE && found.turn_deg == 90, "{found:?}");
    let found = find(&grey(&quarter(&quarter(&turned))), &digest, Search::Plain);
    assert!(found.pce > MATCH_PCE && found.turn_deg == 270, "{found:?}");
    let part = cut(photo, [200, 90], [500, 420]);
    let found = find(&grey(&part), &digest, Search::Plain);
    println!("cropped: {found:?}");
    // The photo lies left of and above where the pattern begins.
    assert!(found.pce > MATCH_PCE && found.shift_px == [-200, -90], "{found:?}");
    let other = judge(Some((&digest, find(&grey(&room[0].mirrored()), &digest, Search::Scaled))), []);
    assert_eq!(other, Says::CantTell(Doubt::Faint));
}
