//! Processor time beside OpenCV's for reading the same files as grey, by turns, so that what else the machine does hits both.

use std::path::{Path, PathBuf};

use baywitness::detect::find_markers;
use baywitness::marker::Dictionary;
use baywitness::photo;

use crate::cpu;
use crate::detect_support::render::Camera;
use crate::peers;
use crate::photos::{self, Group};

/// Rounds of both; the least time of each file counts.
const ROUNDS: usize = 5;

/// Prints a line for each file, and the ratio of the sums.
pub(crate) fn compare(folder: &Path, quick: bool) {
    let files =
        std::env::var_os("BENCH_PHOTOS").map_or_else(|| rendered(folder, quick), |given| jpegs(Path::new(&given)));
    let mut least = vec![[f64::INFINITY; 3]; files.len()];
    for _ in 0..ROUNDS {
        for (least, file) in least.iter_mut().zip(&files) {
            let start = cpu();
            let photo = photo::read(file).unwrap();
            let read = cpu();
            let found = find_markers(&photo.luma, Dictionary::tag36h11());
            let all = cpu();
            std::hint::black_box(found);
            (least[0], least[1]) = (least[0].min(read - start), least[1].min(all - start));
        }
        let Some(seconds) = peers::read(&files) else { continue };
        least.iter_mut().zip(seconds).for_each(|(least, s)| least[2] = least[2].min(s));
    }
    println!("| file | read, ms | read and found, ms | OpenCV reads, ms | ratio |\n|---|---|---|---|---|");
    for ([read, all, other], file) in least.iter().zip(&files) {
        let name = file.file_name().unwrap_or_default().to_string_lossy();
        println!("| {name} | {:.1} | {:.1} | {:.1} | {:.2} |", read * 1e3, all * 1e3, other * 1e3, all / other);
    }
    let sum = |k: usize| least.iter().map(|l| l[k]).sum::<f64>();
    println!("| all | {:.1} | {:.1} | {:.1} | {:.2} |", sum(0) * 1e3, sum(1) * 1e3, sum(2) * 1e3, sum(1) / sum(2));
}

fn rendered(folder: &Path, quick: bool) -> Vec<PathBuf> {
    let wanted = |group: Group| group == Group::Speed || group == Group::Other("progressive 12 MP");
    let shots = photos::render_all(folder, Camera::Phone, quick, wanted);
    shots.into_iter().map(|shot| shot.file).collect()
}

fn jpegs(folder: &Path) -> Vec<PathBuf> {
    let mut files: Vec<_> = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    files.retain(|file| file.extension().is_some_and(|e| e.eq_ignore_ascii_case("jpg")));
    files.sort();
    files
}
