//! The samples that a newcomer runs first: their photos hold what their truth
//! says, and the program's verdict on them is the right one.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "tests stop and tell")]

use std::collections::BTreeMap;
use std::path::Path;

use baywitness::detect::find_markers;
use baywitness::marker::Dictionary;
use serde_json::Value;

fn truth(sample: &str) -> Value {
    serde_json::from_slice(&std::fs::read(format!("samples/{sample}/truth.json")).unwrap()).unwrap()
}

fn corners(marker: &Value) -> Vec<[f64; 2]> {
    serde_json::from_value(marker["corners_px"].clone()).unwrap()
}

#[test]
fn photos_show_the_markers_where_the_truth_says() {
    for sample in ["good", "wrong"] {
        for photo in truth(sample)["photos"].as_array().unwrap() {
            let path = Path::new("samples").join(sample).join(photo["file"].as_str().unwrap());
            let luma = baywitness::photo::read(&path).unwrap().luma;
            let found: BTreeMap<u64, _> = find_markers(&luma, Dictionary::tag36h11())
                .markers
                .into_iter()
                .map(|m| (u64::from(m.id), m.corners_px))
                .collect();
            let mut squares = Vec::new();
            for marker in photo["markers"].as_array().unwrap() {
                let id = marker["id"].as_u64().unwrap();
                let easy = marker["visible"] == 1.0 && marker["tilt_deg"].as_f64().unwrap() < 70.0;
                let Some(seen) = found.get(&id) else {
                    assert!(!easy, "{}: marker {id} is not found", path.display());
                    continue;
                };
                for (a, b) in seen.iter().zip(corners(marker)) {
                    squares.extend([(a.x - b[0]).powi(2), (a.y - b[1]).powi(2)]);
                }
            }
            let known = photo["markers"].as_array().unwrap().iter().map(|m| m["id"].as_u64().unwrap());
            assert!(found.keys().all(|id| known.clone().any(|k| k == *id)), "{}: {:?}", path.display(), found.keys());
            let rms = (squares.iter().sum::<f64>() / squares.len() as f64).sqrt();
            println!("{}: {} markers, RMS {rms:.3} px", path.display(), found.len());
            assert!(found.len() >= 25 && rms < 0.1, "{}: {} markers, RMS {rms}", path.display(), found.len());
        }
    }
}

/// Runs `verify` on a sample: exit code and record.
fn verify(sample: &str) -> (i32, Value) {
    let folder = Path::new("samples").join(sample);
    let run = crate::program::program()
        .args(["verify", folder.to_str().unwrap(), "--json", "-", "--threads", "2"])
        .output()
        .unwrap();
    (run.status.code().unwrap(), serde_json::from_slice(&run.stdout).unwrap())
}

#[test]
fn the_good_one_is_within_and_the_wrong_one_is_not() {
    for (sample, code, verdict) in [("good", 0, "within"), ("wrong", 1, "outside")] {
        let (exit, record) = verify(sample);
        let truth = truth(sample);
        assert_eq!((exit, record["verdict"].as_str()), (code, Some(verdict)), "{sample}: {:#}", record["findings"]);
        for (name, measured) in record["measured"].as_object().unwrap() {
            let Some(exact) = truth["measured"][name].as_f64() else { continue };
            let (Some(value), Some(u)) = (measured["value"].as_f64(), measured["standard_uncertainty"].as_f64()) else {
                continue;
            };
            // Four standard uncertainties: none of some eighty figures may miss by more.
            println!("{sample} {name}: {value:.3} against {exact:.3}, u {u:.3}");
            assert!((value - exact).abs() < 4.0 * u, "{sample} {name}: {value} +- {u} against {exact}");
        }
    }
    let (_, wrong) = verify("wrong");
    let codes: Vec<&str> = wrong["findings"].as_array().unwrap().iter().filter_map(|f| f["code"].as_str()).collect();
    assert!(codes.contains(&"stand-turned") && codes.contains(&"stand-too-near"), "{codes:?}");
}
