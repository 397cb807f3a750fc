//! Rendered photos with a flaw, through the detector.

use std::path::Path;

use baywitness::folder::Models;
use baywitness::job;
use baywitness::record::{JobRecord, Verdict};
use baywitness::synth::{PhotoSpec, Scene};

use super::staged::scene;

const SCALE: f64 = 0.4;

fn stage(scene: &Scene) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    scene.stage(folder.path(), &mut |_| ()).unwrap();
    folder
}

fn verify(folder: &Path) -> JobRecord {
    let record = job::verify(folder, &job::Options { models: Models::embedded() }).unwrap();
    for f in &record.findings {
        println!("{} {:?}: {}", f.code, f.level, f.message);
    }
    record
}

fn save(picture: &image::RgbImage, to: &Path, quality: u8) {
    let file = std::fs::File::create(to).unwrap();
    image::codecs::jpeg::JpegEncoder::new_with_quality(file, quality).encode_image(picture).unwrap();
}

fn codes(record: &JobRecord) -> Vec<&str> {
    record.findings.iter().map(|f| f.code.as_str()).collect()
}

/// Two more photos from the sides.
fn four(scene: &mut Scene) -> Vec<PhotoSpec> {
    let mut photos = scene.photos();
    let nose = scene.spec.vehicle.nose_mm[0];
    for (file, side) in [("c.jpg", 1.0), ("d.jpg", -1.0)] {
        photos.push(PhotoSpec::new(file, [nose + 1900.0, side * 3900.0, 1600.0], [nose - 900.0, 0.0, 500.0]));
    }
    photos
}

#[test]
fn a_plain_job_and_what_is_done_to_its_photos() {
    let folder = stage(&scene(SCALE));
    let record = verify(folder.path());
    assert_eq!(codes(&record), Vec::<&str>::new());
    assert_eq!(record.verdict, Verdict::Within);
    assert!(record.detectable.iter().any(|d| d.code == "photo-zoomed" && d.size.is_some()));
    assert_eq!(record.sensitivity.len(), record.checks.len());
    let photos = folder.path().join("photos");
    let (a, b) = (photos.join("a.jpg"), photos.join("b.jpg"));
    let original = std::fs::read(&b).unwrap();
    // A lamp mirrored in one marker: a white spot over nearly all of it.
    let glared = record.photos[1].markers.iter().find(|m| m.carrier.as_deref() == Some("stand")).unwrap();
    let centre = [0, 1].map(|i| glared.corners_px.iter().map(|c| c[i]).sum::<f64>() / 4.0);
    let half = (glared.corners_px[0][0] - glared.corners_px[1][0])
        .hypot(glared.corners_px[0][1] - glared.corners_px[1][1])
        * 0.55;
    let mut picture = image::open(&b).unwrap().to_rgb8();
    for (x, y, pixel) in picture.enumerate_pixels_mut() {
        if (f64::from(x) - centre[0]).abs() < half && (f64::from(y) - centre[1]).abs() < half {
            *pixel = image::Rgb([255; 3]);
        }
    }
    save(&picture, &b, 95);
    let record = verify(folder.path());
    let lit = record.findings.iter().find(|f| f.code == "photo-badly-lit");
    let found = record.photos[1].markers.iter().any(|m| m.id == glared.id);
    assert!(
        lit.is_some_and(|f| f.message.contains(&glared.id.to_string())),
        "{:?}, found {found}: {glared:?}",
        codes(&record)
    );
    // The first photo again, mirrored.
    image::imageops::flip_horizontal(&image::open(&a).unwrap().to_rgb8()).save(&b).unwrap();
    let record = verify(folder.path());
    assert!(codes(&record).contains(&"photo-reused"), "{:?}", codes(&record));
    assert_ne!(record.verdict, Verdict::Within);
    // Re-encoded at low quality.
    let again = image::open(&a).unwrap().to_rgb8();
    save(&again, &b, 70);
    let record = verify(folder.path());
    assert!(codes(&record).contains(&"photo-reused"), "{:?}", codes(&record));
    assert_ne!(record.verdict, Verdict::Within);
    std::fs::write(&b, original).unwrap();
}

#[test]
fn a_stand_pushed_between_four_photos() {
    let mut s = scene(SCALE);
    let mut photos = four(&mut s);
    for photo in &mut photos[1..] {
        photo.stand_moved.distance_mm = 5.0;
    }
    s.spec.photo = Some(photos);
    let record = verify(stage(&s).path());
    assert!(codes(&record).contains(&"stand-moved-between-photos"), "{:?}", codes(&record));
    assert_ne!(record.verdict, Verdict::Within);
}

#[test]
fn a_photo_zoomed_by_a_tenth_of_which_exif_is_silent() {
    let mut s = scene(SCALE);
    let mut photos = s.photos();
    photos[1].digital_zoom = 1.1;
    photos[1].exif = false;
    s.spec.photo = Some(photos);
    let record = verify(stage(&s).path());
    assert!(codes(&record).contains(&"photo-zoomed"), "{:?}", codes(&record));
    assert_eq!(record.verdict, Verdict::Unusable);
    // Nobody is told to move a stand by void figures.
    assert!(codes(&record).iter().all(|c| !["stand-turned", "stand-too-near", "stand-off-centre"].contains(c)));
}
