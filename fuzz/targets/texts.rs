//! Any text as each of the project's own text formats; the first byte picks one.

#![no_main]

use baywitness::camera::Profile;
use baywitness::evidence::{Manifest, Signature};
use baywitness::folder::JobFile;
use baywitness::marker::{Board, KitFile};
use baywitness::setup::Setup;
use baywitness::transparency::{AttemptProof, Checkpoint};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let Some((pick, rest)) = bytes.split_first() else { return };
    let Ok(text) = std::str::from_utf8(rest) else { return };
    match pick % 9 {
        0 => drop(JobFile::from_toml(text, "job.toml")),
        1 => drop(KitFile::from_toml(text, "kit.toml")),
        2 => drop(Setup::from_toml(text, "setup.toml")),
        3 => drop(Profile::from_toml(text, "camera.toml")),
        4 => drop(Board::from_toml(text, "board.toml")),
        5 => drop(Manifest::read(text)),
        6 => drop(Signature::read(text)),
        7 => drop(Checkpoint::read(text)),
        _ => drop(AttemptProof::read(text).map(|proof| proof.check().map(drop))),
    }
});
