//! The general-purpose libraries, run by a Python script on the same files.

use std::path::{Path, PathBuf};
use std::process::Command;

use nalgebra::Vector2;

use crate::photos::Shot;

/// Ids and corners.
pub(crate) type Found = Vec<(u32, [Vector2<f64>; 4])>;

/// One method's findings and CPU time, s, for each file.
pub(crate) struct Outcome {
    pub(crate) name: String,
    pub(crate) seconds: Vec<f64>,
    pub(crate) found: Vec<Found>,
}

/// CPU time of OpenCV reading each file as grey, s, and what each method found.
pub(crate) fn run(shots: &[Shot]) -> Option<(Vec<f64>, Vec<Outcome>)> {
    let output = script().args(shots.iter().map(|s| &s.file)).output().ok()?;
    if !output.status.success() {
        let complaint = String::from_utf8_lossy(&output.stderr);
        println!("peers left out ({}): {}", output.status, complaint.lines().last().unwrap_or_default());
        return None;
    }
    let json: serde_json::Value = serde_json::from_slice(&output.stdout).ok()?;
    let numbers = |value: &serde_json::Value| value.as_array().unwrap().iter().map(|s| s.as_f64().unwrap()).collect();
    let outcome = |(name, seconds): (&String, &serde_json::Value)| Outcome {
        name: name.clone(),
        seconds: numbers(seconds),
        found: json["found"][name]
            .as_array()
            .unwrap()
            .iter()
            .map(|f| f.as_array().unwrap().iter().map(marker).collect())
            .collect(),
    };
    Some((numbers(&json["read_s"]), json["seconds"].as_object()?.iter().map(outcome).collect()))
}

/// CPU time of OpenCV reading each file as grey, s; says nothing else.
pub(crate) fn read(files: &[PathBuf]) -> Option<Vec<f64>> {
    let output = script().arg("--read").args(files).output().ok().filter(|output| output.status.success())?;
    serde_json::from_slice(&output.stdout).ok()
}

fn script() -> Command {
    let python = std::env::var("BAYWITNESS_PYTHON").unwrap_or_else(|_| "python3".to_owned());
    let mut command = Command::new(python);
    command.arg(Path::new(env!("CARGO_MANIFEST_DIR")).join("benches/detector/peers.py"));
    command
}

fn marker(value: &serde_json::Value) -> (u32, [Vector2<f64>; 4]) {
    let corner = |k: usize| Vector2::new(value[1][k][0].as_f64().unwrap(), value[1][k][1].as_f64().unwrap());
    (value[0].as_u64().unwrap() as u32, [corner(0), corner(1), corner(2), corner(3)])
}
