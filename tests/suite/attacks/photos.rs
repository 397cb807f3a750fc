//! Attacks on photos: taken twice, taken elsewhere, changed, pasted into, invented.

use std::fs;
use std::path::{Path, PathBuf};

use image::imageops::{FilterType, crop_imm, flip_horizontal, replace, resize};
use image::{DynamicImage, RgbImage};

use super::{attacked, codes, judged, named, sample, stopped, unseen};

fn photo(job: &Path, name: &str) -> PathBuf {
    job.join("photos").join(name)
}

/// The segments of a JPEG that hold its camera's record (APP1).
fn record_of(jpeg: &[u8]) -> Vec<u8> {
    let (mut at, mut found) = (2, Vec::new());
    while jpeg[at + 1] != 0xda {
        let long = usize::from(u16::from_be_bytes([jpeg[at + 2], jpeg[at + 3]]));
        if jpeg[at + 1] == 0xe1 {
            found.extend_from_slice(&jpeg[at..at + 2 + long]);
        }
        at += 2 + long;
    }
    found
}

/// Saves a picture with the record of another file, as somebody does who knows that records are read.
pub(super) fn save_at(picture: &RgbImage, like: &Path, to: &Path, quality: u8) {
    let original = fs::read(like).unwrap();
    let mut jpeg = Vec::new();
    image::codecs::jpeg::JpegEncoder::new_with_quality(&mut jpeg, quality).encode_image(picture).unwrap();
    jpeg.splice(2..2, record_of(&original));
    fs::write(to, jpeg).unwrap();
}

fn save(picture: &RgbImage, like: &Path, to: &Path, with_record: bool) {
    if with_record {
        return save_at(picture, like, to, 92);
    }
    image::codecs::jpeg::JpegEncoder::new_with_quality(fs::File::create(to).unwrap(), 92)
        .encode_image(picture)
        .unwrap();
}

fn picture(file: &Path) -> RgbImage {
    image::open(file).unwrap().to_rgb8()
}

/// One photo changed, its record kept.
fn changed(job: &Path, name: &str, change: impl FnOnce(RgbImage) -> RgbImage) {
    let file = photo(job, name);
    save(&change(picture(&file)), &file, &file, true);
}

/// The middle of a picture at the picture's size, as a phone's zoom or a crop makes it.
fn enlarged(picture: &RgbImage, by: f64) -> RgbImage {
    let size = [picture.width(), picture.height()];
    let [w, h] = size.map(|n| (f64::from(n) / by).round() as u32);
    let cut = crop_imm(picture, (size[0] - w) / 2, (size[1] - h) / 2, w, h).to_image();
    resize(&cut, size[0], size[1], FilterType::CatmullRom)
}

/// Bytes of the same length exchanged in a photo's record.
fn redated(job: &Path, name: &str, from: &str, to: &str) {
    let mut bytes = fs::read(photo(job, name)).unwrap();
    let at = bytes.windows(from.len()).position(|w| w == from.as_bytes()).unwrap();
    bytes[at..at + from.len()].copy_from_slice(to.as_bytes());
    fs::write(photo(job, name), bytes).unwrap();
}

#[test]
fn one_photo_given_as_two() {
    let record = attacked("good", |job| {
        fs::copy(photo(job, "a.jpg"), photo(job, "b.jpg")).unwrap();
    });
    stopped(&record, "photo-reused");
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn one_photo_cropped_and_saved_again_as_two() {
    let record = attacked("good", |job| {
        let again = enlarged(&picture(&photo(job, "a.jpg")), 1.05);
        save(&again, &photo(job, "b.jpg"), &photo(job, "b.jpg"), true);
    });
    stopped(&record, "photo-reused");
}

#[test]
fn one_photo_mirrored_as_the_other_side() {
    let record = attacked("good", |job| {
        let again = flip_horizontal(&picture(&photo(job, "a.jpg")));
        save(&again, &photo(job, "b.jpg"), &photo(job, "b.jpg"), true);
    });
    stopped(&record, "photo-reused");
}

/// A stand that stands wrong gets one photo of an attempt in which it stood right.
#[test]
fn a_photo_of_another_attempt_beside_a_new_one() {
    let record = attacked("wrong", |job| {
        fs::copy(photo(&sample("good"), "b.jpg"), photo(job, "b.jpg")).unwrap();
    });
    stopped(&record, "stand-moved-between-photos");
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_photo_enlarged_to_bring_the_stand_nearer() {
    stopped(&attacked("good", |job| changed(job, "b.jpg", |p| enlarged(&p, 1.1))), "photo-zoomed");
}

#[test]
fn a_photo_made_smaller() {
    let half = |p: RgbImage| resize(&p, p.width() / 2, p.height() / 2, FilterType::CatmullRom);
    stopped(&attacked("good", |job| changed(job, "b.jpg", half)), "photo-resized");
}

/// Moves the part of a photo that shows the stand's markers by so many pixels to the right.
fn paste_stand(job: &Path, name: &str, by_px: i64) {
    let honest = judged(&sample("good"));
    let seen = honest.photos.iter().find(|p| p.file.ends_with(name)).unwrap();
    let stand = seen.markers.iter().filter(|m| m.carrier.as_deref() == Some("stand"));
    let corners: Vec<[f64; 2]> = stand.flat_map(|m| m.corners_px).collect();
    assert!(corners.len() >= 16, "{name} shows the stand");
    let low = [0, 1].map(|i| corners.iter().map(|c| c[i]).fold(f64::INFINITY, f64::min) as u32 - 30);
    let high = [0, 1].map(|i| corners.iter().map(|c| c[i]).fold(0.0, f64::max) as u32 + 30);
    changed(job, name, |mut whole| {
        let part = crop_imm(&whole, low[0], low[1], high[0] - low[0], high[1] - low[1]).to_image();
        replace(&mut whole, &part, i64::from(low[0]) + by_px, i64::from(low[1]));
        whole
    });
}

#[test]
fn a_stand_pasted_elsewhere_in_one_photo() {
    let record = attacked("good", |job| paste_stand(job, "b.jpg", 10));
    assert_ne!(record.verdict, baywitness::record::Verdict::Within);
    assert!(!codes(&record).is_empty(), "a reason is said");
}

/// Moved alike in both, it is where no stand of this size could be.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_stand_pasted_elsewhere_in_both_photos() {
    let record = attacked("good", |job| {
        paste_stand(job, "a.jpg", 10);
        paste_stand(job, "b.jpg", -10);
    });
    assert_ne!(record.verdict, baywitness::record::Verdict::Within);
    assert!(!codes(&record).is_empty(), "a reason is said");
}

#[test]
fn an_edited_photo_with_the_editors_marks() {
    let record = attacked("good", |job| {
        let file = photo(job, "a.jpg");
        let mut jpeg = fs::read(&file).unwrap();
        let block = b"Photoshop 3.0\0";
        let long = u16::try_from(block.len() + 2).unwrap().to_be_bytes();
        jpeg.splice(2..2, [&[0xff, 0xed], &long[..], block].concat());
        fs::write(file, jpeg).unwrap();
    });
    named(&record, "photo-edited");
}

#[test]
fn a_photo_of_another_day() {
    let record = attacked("good", |job| {
        redated(job, "b.jpg", "2026:02:03", "2026:01:20");
        // Without the calibration's own time, which alone would tell as well.
        super::rewrite(&job.join("job.toml"), |text| text.replace("at = 2026-02-03T10:47:30+01:00\n", ""));
    });
    assert!(
        ["photo-of-another-day", "times-out-of-order"].iter().any(|code| codes(&record).contains(code)),
        "{:?}",
        codes(&record)
    );
}

/// Phone, job and calibration all of the day that somebody wants.
#[test]
fn every_clock_moved_alike() {
    let record = attacked("good", |job| {
        for name in ["a.jpg", "b.jpg"] {
            redated(job, name, "2026:02:03", "2026:01:20");
        }
        super::rewrite(&job.join("job.toml"), |text| text.replace("2026-02-03", "2026-01-20"));
    });
    unseen(&record);
}

/// Somebody who knows which marks are read leaves none.
#[test]
fn an_edited_photo_without_marks() {
    unseen(&attacked("good", |job| changed(job, "a.jpg", |p| p)));
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn photos_without_any_record() {
    unseen(&attacked("good", |job| {
        for name in ["a.jpg", "b.jpg"] {
            let file = photo(job, name);
            save(&DynamicImage::ImageRgb8(picture(&file)).to_rgb8(), &file, &file, false);
        }
    }));
}

/// The renderer's photos carry a camera's record; the mark is put in by what the program writes.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_bay_that_another_program_invented() {
    let job = tempfile::tempdir().unwrap();
    crate::staged::scene(0.4).stage(job.path(), &mut |_| ()).unwrap();
    unseen(&judged(job.path()));
}
