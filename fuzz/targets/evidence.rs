//! Any bytes as evidence in one file, as a timestamp and as an authority's certificates.

#![no_main]

use baywitness::evidence::{Authorities, Token, inspect, unpack};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let Some((pick, rest)) = bytes.split_first() else { return };
    match pick % 3 {
        0 => {
            if let Ok(token) = Token::read(rest) {
                let _ = token.check(b"stamped");
            }
        }
        1 => drop(Authorities::read(rest, "ca.pem")),
        _ => {
            let room = tempfile::tempdir().expect("a folder for temporary files");
            let file = room.path().join("evidence.tar");
            std::fs::write(&file, rest).expect("room on the disk");
            let into = room.path().join("into");
            std::fs::create_dir(&into).expect("room on the disk");
            if let Ok(folder) = unpack(&file, &into) {
                let _ = inspect(&folder);
            }
        }
    }
});
