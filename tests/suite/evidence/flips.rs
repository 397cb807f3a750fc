//! A thousand changed bytes in the evidence folder of a real job.

use std::fs;

use baywitness::evidence::inspect;
use rand::{RngExt, SeedableRng};

use super::doors::{run, seal_with};
use super::{files, fresh_key};

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_thousand_flips_of_a_real_folder_are_all_found() {
    let dir = tempfile::tempdir().unwrap();
    let job = [env!("CARGO_MANIFEST_DIR"), "samples", "good"].iter().collect::<std::path::PathBuf>();
    let (key, folder) = (fresh_key(dir.path(), ""), dir.path().join("sealed"));
    let (code, text) = seal_with(&job, &folder, &key, None);
    assert_eq!(code, 0, "{text}");
    let files = files(&folder);
    assert!(files.len() > 15, "{files:?}");
    let mut random = rand::rngs::StdRng::seed_from_u64(1000);
    let mut flip = |file: &std::path::Path| {
        let whole = fs::read(file).unwrap();
        let (at, bit) = (random.random_range(0..whole.len()), random.random_range(0..8_u8));
        let mut flipped = whole.clone();
        flipped[at] ^= 1 << bit;
        fs::write(file, &flipped).unwrap();
        let found = inspect(&folder).unwrap();
        assert!(!found.intact(), "bit {bit} of byte {at} of {} went unseen", file.display());
        fs::write(file, &whole).unwrap();
    };
    // Each file again and again, so that small ones are not left out for large ones.
    files.iter().cycle().take(1000).for_each(|file| flip(file));
    assert!(inspect(&folder).unwrap().intact());
    // The command says the same, and names the file.
    let photo = folder.join("data/job/photos/a.jpg");
    let mut bytes = fs::read(&photo).unwrap();
    bytes[9000] ^= 16;
    fs::write(&photo, bytes).unwrap();
    let (code, text) = run(&[&folder], &["check"], None);
    assert!(code == 1 && text.contains("data/job/photos/a.jpg was altered"), "{text}");
}
