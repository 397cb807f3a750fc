//! Any bytes as evidence in one file, with every header's check sum made right,
//! so that what lies behind it is reached.

#![no_main]

use baywitness::evidence::{inspect, unpack};
use libfuzzer_sys::fuzz_target;

const BLOCK: usize = 512;

/// POSIX.1-2017, pax, ustar: the sum of the header's bytes, its own eight as blanks.
fn with_sums(bytes: &[u8]) -> Vec<u8> {
    let mut all = bytes.to_vec();
    let mut at = 0;
    while let Some(header) = all.get_mut(at..at + BLOCK) {
        header[148..156].fill(b' ');
        let sum: u32 = header.iter().map(|b| u32::from(*b)).sum();
        header[148..156].copy_from_slice(format!("{sum:06o}\0 ").as_bytes());
        let size = header[124..136]
            .iter()
            .take_while(|b| matches!(b, b'0'..=b'7'))
            .fold(0usize, |n, b| n.saturating_mul(8).saturating_add(usize::from(b - b'0')));
        at = at.saturating_add(BLOCK).saturating_add(size.div_ceil(BLOCK).saturating_mul(BLOCK));
    }
    all
}

fuzz_target!(|bytes: &[u8]| {
    let room = tempfile::tempdir_in("/dev/shm").expect("a folder in memory");
    let (file, into) = (room.path().join("evidence.tar"), room.path().join("inside/into"));
    std::fs::write(&file, with_sums(bytes)).expect("room in memory");
    std::fs::create_dir_all(&into).expect("room in memory");
    if let Ok(folder) = unpack(&file, &into) {
        assert!(folder.starts_with(&into));
        let _ = inspect(&folder);
    }
    // Nothing came out of the folder that it was unpacked into.
    let beside = |at: &std::path::Path| std::fs::read_dir(at).expect("a folder").count();
    assert_eq!((beside(room.path()), beside(&room.path().join("inside"))), (2, 1));
});
