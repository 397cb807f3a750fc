//! Rendered photos with a flaw, through the detector.

use std::path::Path;

use baywitness::folder::Models;
use baywitness::job;
use baywitness::record::{JobRecord, Verdict};
use baywitness::synth::{PhotoSpec, Scene, Stray};
use baywitness::words::Language;

use crate::staged::scene;

const SCALE: f64 = 0.4;

fn stage(scene: &Scene) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    scene.stage(folder.path(), &mut |_| ()).unwrap();
    folder
}

fn verify(folder: &Path) -> JobRecord {
    let record = job::verify(folder, &job::Options::new(Models::embedded())).unwrap();
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
#[ignore = "keeps the default run short: the continuous checks run it"]
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
    // Cropped and enlarged to the old size.
    let (width, height) = again.dimensions();
    let part = image::imageops::crop_imm(&again, width / 25, height / 30, width * 9 / 10, height * 9 / 10).to_image();
    save(&image::imageops::resize(&part, width, height, image::imageops::FilterType::CatmullRom), &b, 90);
    let record = verify(folder.path());
    assert!(codes(&record).contains(&"photo-reused"), "{:?}", codes(&record));
    assert_ne!(record.verdict, Verdict::Within);
    std::fs::write(&b, &original).unwrap();
    // The second photo as it is, smaller; then out of focus by 3 px.
    let second = image::open(&b).unwrap().to_rgb8();
    let small = image::imageops::resize(&second, width / 2, height / 2, image::imageops::FilterType::Triangle);
    save(&small, &b, 95);
    let record = verify(folder.path());
    assert!(codes(&record).contains(&"photo-resized"), "{:?}", codes(&record));
    assert_ne!(record.verdict, Verdict::Within);
    save(&image::imageops::blur(&second, 3.0), &b, 95);
    let record = verify(folder.path());
    assert!(codes(&record).contains(&"photo-blurred"), "{:?}", codes(&record));
}

/// A spare print of a floor sheet on the wall: one photo shows both, the other the spare one alone. Measured as the sheet it
/// would look printed larger, and the plates be blamed.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_spare_print_that_one_photo_shows_alone() {
    let mut bay = scene(SCALE);
    bay.spec.stray = vec![Stray { id: SHEET, size_mm: 170.0, at_mm: [3000.0, 2100.0, 900.0], yaw_deg: 0.0 }];
    let folder = stage(&bay);
    let b = folder.path().join("photos/b.jpg");
    let record = verify(folder.path());
    let prints = |record: &JobRecord| -> Vec<_> {
        record.photos.iter().map(|p| p.markers.iter().filter(|m| m.id == SHEET).cloned().collect::<Vec<_>>()).collect()
    };
    assert_eq!(prints(&record).iter().map(Vec::len).collect::<Vec<_>>(), [2, 2]);
    // Something stands before the sheet, which is the lower one in the picture.
    let height = |m: &baywitness::record::MarkerRecord| m.corners_px.iter().map(|c| c[1]).sum::<f64>();
    let sheet = prints(&record)[1].iter().max_by(|m, n| height(m).total_cmp(&height(n))).cloned().unwrap();
    let mut picture = image::open(&b).unwrap().to_rgb8();
    let span = |i: usize| {
        let of = |better: fn(f64, f64) -> f64| sheet.corners_px.iter().map(|c| c[i]).reduce(better).unwrap();
        of(f64::min) - 8.0..of(f64::max) + 8.0
    };
    for (x, y, pixel) in picture.enumerate_pixels_mut() {
        if span(0).contains(&f64::from(x)) && span(1).contains(&f64::from(y)) {
            *pixel = image::Rgb([128; 3]);
        }
    }
    save(&picture, &b, 95);
    let record = verify(folder.path());
    assert_eq!(prints(&record).iter().map(Vec::len).collect::<Vec<_>>(), [2, 1]);
    assert!(prints(&record).iter().flatten().all(|m| !m.used), "{:?}", prints(&record));
    assert_eq!(record.verdict, Verdict::Within);
    let mut told = codes(&record);
    told.sort_unstable();
    assert_eq!(told, ["carrier-not-seen", "marker-duplicated"]);
    let duplicated = record.findings.iter().find(|f| f.code == "marker-duplicated").unwrap();
    assert!(duplicated.message.contains("left out of all photos"), "{}", duplicated.message);
}

/// A floor sheet of the sample's kit.
const SHEET: u32 = 60;

/// Checks that photos can't decide, and one that the sheet wants from an instrument.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn checks_decided_by_readings_say_so() {
    let folder = stage(&scene(SCALE));
    let append = |name: &str, text: &str| {
        let path = folder.path().join(name);
        std::fs::write(&path, std::fs::read_to_string(&path).unwrap() + text).unwrap();
    };
    let check = |quantity: &str, nominal: f64, tolerance: f64| {
        format!(
            "\n[[check]]\nquantity = \"{quantity}\"\nnominal = {nominal:.1}\ntolerance = {tolerance:.1}\nevidence = \"reading\"\n"
        )
    };
    let reading = |quantity: &str, value: f64, instrument: &str| {
        format!("\n[[reading]]\nquantity = \"{quantity}\"\nvalue = {value:.2}\ninstrument = \"{instrument}\"\n")
    };
    append("setup.toml", &check("arch_height_front_left", 680.0, 10.0));
    append("setup.toml", &check("arch_height_front_right", 680.0, 10.0));
    append("setup.toml", &check("arch_height_rear_left", 680.0, 10.0));
    append("setup.toml", &check("target_tilt_gravity", 0.0, 0.5));
    append("setup.toml", &check("side_range_difference", 0.0, 5.0));
    // A tape has 3 mm, a level 0.15 deg, a laser 1.5 mm.
    append("job.toml", &reading("arch_height_front_left", 683.0, "tape"));
    append("job.toml", &reading("arch_height_front_right", 688.0, "tape"));
    append("job.toml", &reading("target_tilt_gravity", -0.9, "level"));
    append("job.toml", &reading("side_range_difference", 1.0, "laser"));
    let record = verify(folder.path());
    let of = |quantity: &str| record.checks.iter().find(|c| c.quantity == quantity).unwrap();
    for (quantity, value, u, verdict) in [
        // (10 - 3) / 3 and (10 - 8) / 3 standard uncertainties inside: Phi is .990 and .748.
        ("arch_height_front_left", 683.0, 3.0, Verdict::Within),
        ("arch_height_front_right", 688.0, 3.0, Verdict::NotProven),
        // (0.9 - 0.5) / 0.15 outside: .996.
        ("target_tilt_gravity", -0.9, 0.15, Verdict::Outside),
        ("side_range_difference", 1.0, 1.5, Verdict::Within),
    ] {
        let check = of(quantity);
        assert_eq!((check.value, check.standard_uncertainty), (Some(value), Some(u)), "{quantity}");
        assert_eq!((check.verdict, check.evidence.as_str()), (verdict, "reading"), "{quantity}");
    }
    let p = |quantity: &str| of(quantity).conformance_probability.unwrap();
    assert!((p("arch_height_front_left") - 0.990).abs() < 5e-4, "{}", p("arch_height_front_left"));
    assert!((p("arch_height_front_right") - 0.748).abs() < 5e-4, "{}", p("arch_height_front_right"));
    // Nobody read it: no value, no verdict, and what would help.
    let missing = of("arch_height_rear_left");
    assert_eq!((missing.value, missing.verdict), (None, Verdict::Retake));
    assert!(missing.reason.as_deref().is_some_and(|r| r.contains("reading")), "{:?}", missing.reason);
    assert_eq!(of("distance").evidence, "photos");
    let page = baywitness::report::html(&record, &[], Language::English);
    assert!(page.contains("decided by a reading"));
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
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
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_photo_zoomed_by_a_tenth_of_which_exif_is_silent() {
    let mut s = scene(SCALE);
    let mut photos = s.photos();
    photos[1].digital_zoom = 1.1;
    photos[1].exif = false;
    s.spec.photo = Some(photos);
    let record = verify(stage(&s).path());
    assert!(codes(&record).contains(&"photo-zoomed"), "{:?}", codes(&record));
    assert_eq!(record.verdict, Verdict::Retake);
    // Nobody is told to move a stand by void figures.
    assert!(codes(&record).iter().all(|c| !["stand-turned", "stand-too-near", "stand-off-centre"].contains(c)));
}

/// A photo that was shaken so much that no marker is left of it is named, and so is why.
#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_photo_without_markers_is_named_with_its_reason() {
    let mut scene = scene(SCALE);
    let mut photos = scene.photos();
    photos[1].motion_px = [60.0, 34.0];
    scene.spec.photo = Some(photos.clone());
    let folder = stage(&scene);
    let record = verify(folder.path());
    assert_eq!(record.verdict, Verdict::Retake);
    assert!(record.reason.contains("b.jpg") && record.reason.contains("blurred"), "{}", record.reason);
    let blurred = record.findings.iter().find(|f| f.code == "photo-blurred").unwrap();
    assert_eq!(blurred.photo.as_deref(), Some("photos/b.jpg"));
    let unused = record.photos[1].unused_because.clone().unwrap();
    assert!(unused.contains("it is blurred"), "{unused}");
    // A sharp photo of a plain wall is not called so, nor one of the bay from which the stand was left out.
    let path = folder.path().join("photos/b.jpg");
    let [width, height] = scene.camera.image_size_px;
    save(&image::RgbImage::from_pixel(width, height, image::Rgb([171; 3])), &path, 95);
    let record = verify(folder.path());
    assert!(!codes(&record).contains(&"photo-blurred"), "{}", record.reason);
    assert!(record.reason.contains("either none was in view or it is blurred"), "{}", record.reason);
    photos[1].motion_px = [0.0; 2];
    photos[1].look_at_mm = photos[1].eye_mm.map(|x| 1.4 * x);
    photos[1].look_at_mm[2] = 900.0;
    scene.spec.photo = Some(photos);
    let folder = stage(&scene);
    let record = verify(folder.path());
    assert!(record.reason.contains("b.jpg") && !record.reason.contains("it is blurred;"), "{}", record.reason);
}
