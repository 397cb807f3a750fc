//! HEIC photos, where the build decodes them.

#![cfg(feature = "heic")]
#![allow(clippy::unwrap_used, reason = "a test may stop where its own helper fails")]

use baywitness::photo::{self, Error, Kind, Orientation};

/// Written by tests/data/make_heic.py with another project's encoder.
const WAVE: &[u8] = include_bytes!("../data/wave.heic");

#[test]
fn a_heic_photo_decodes_on_its_coded_grid() {
    let photo = photo::decode(WAVE, "IMG_1.HEIC").unwrap();
    assert_eq!((photo.kind, photo.width, photo.height), (Kind::Heic, 200, 120));
    let mut sum = 0.0;
    for v in 0..photo.height {
        for u in 0..photo.width {
            let wanted = 128.0 + 90.0 * (u as f64 * 0.07).sin() * (v as f64 * 0.05).cos();
            sum += (f64::from(photo.luma.at(u, v)) - wanted).powi(2);
        }
    }
    let rms = (sum / (200.0 * 120.0)).sqrt();
    assert!(rms < 2.0, "{rms}");
    assert_eq!(photo.exif.make.as_deref(), Some("Example"));
    assert_eq!(photo.exif.orientation, Some(Orientation(6)));
}

#[test]
fn its_preview_is_upright() {
    let preview = photo::preview(WAVE, "IMG_1.HEIC", 1000).unwrap();
    assert_eq!(preview.picture.dimensions(), (120, 200));
    let full = photo::decode(WAVE, "IMG_1.HEIC").unwrap();
    for (u, v) in [(22, 3), (67, 100), (150, 60)] {
        let [x, y] = preview.from_stored([u as f64, v as f64]);
        let seen = preview.picture.get_pixel(x.round() as u32, y.round() as u32).0[1];
        assert!(seen.abs_diff(full.luma.at(u, v)) <= 3, "{u} {v}: {seen}");
    }
}

#[test]
fn a_cut_off_heic_is_an_error_wherever_it_ends() {
    for end in (12..WAVE.len()).step_by(7).chain(WAVE.len() - 16..WAVE.len()) {
        let error = photo::decode(&WAVE[..end], "IMG_1.HEIC").map(|_| ());
        assert!(
            matches!(
                error,
                Err(Error::CutOff { .. } | Error::Damaged { .. } | Error::Foreign { .. } | Error::Unsupported { .. })
            ),
            "{end} of {}: {error:?}",
            WAVE.len()
        );
    }
}
