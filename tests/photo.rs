//! Photos: every variant decodes right or ends with one clear error.

#![allow(clippy::unwrap_used, reason = "a test may stop where its own helper fails")]

use std::path::Path;

use baywitness::photo::{self, Error, Kind};
use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

/// A picture of smooth waves with some texture, red, green, blue.
fn scene(width: usize, height: usize) -> Vec<u8> {
    let wave = |u: usize, v: usize, k: f64| {
        (128.0 + 90.0 * (u as f64 * k).sin() * (v as f64 * 0.05).cos() + ((u * 7 + v * 13) % 17) as f64) as u8
    };
    (0..height)
        .flat_map(|v| (0..width).flat_map(move |u| [wave(u, v, 0.03), wave(u, v, 0.05), wave(v, u, 0.04)]))
        .collect()
}

fn jpeg(width: usize, height: usize, change: impl FnOnce(&mut Encoder<&mut Vec<u8>>)) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, 92);
    change(&mut encoder);
    encoder.encode(&scene(width, height), width as u16, height as u16, ColorType::Rgb).unwrap();
    bytes
}

/// BT.601 luma in floating point.
fn luma_of(rgb: &[u8]) -> Vec<f64> {
    rgb.chunks_exact(3).map(|p| 0.299 * f64::from(p[0]) + 0.587 * f64::from(p[1]) + 0.114 * f64::from(p[2])).collect()
}

fn rms(ours: &[u8], wanted: &[f64]) -> f64 {
    assert_eq!(ours.len(), wanted.len());
    let sum: f64 = ours.iter().zip(wanted).map(|(a, b)| (f64::from(*a) - b).powi(2)).sum();
    (sum / wanted.len() as f64).sqrt()
}

#[test]
fn every_usual_jpeg_decodes_to_its_luma() {
    let wanted = luma_of(&scene(203, 117));
    for sampling in [
        SamplingFactor::F_1_1,
        SamplingFactor::F_2_2,
        SamplingFactor::F_2_1,
        SamplingFactor::F_1_2,
        SamplingFactor::F_4_1,
        SamplingFactor::F_4_2,
        SamplingFactor::F_1_4,
        SamplingFactor::F_2_4,
    ] {
        for progressive in [false, true] {
            for restart in [None, Some(1), Some(5)] {
                let bytes = jpeg(203, 117, |e| {
                    e.set_sampling_factor(sampling);
                    e.set_progressive(progressive);
                    if let Some(n) = restart {
                        e.set_restart_interval(n);
                    }
                });
                let photo = photo::decode(&bytes, "a.jpg")
                    .unwrap_or_else(|e| panic!("{sampling:?} progressive {progressive} restart {restart:?}: {e}"));
                assert_eq!((photo.width, photo.height, photo.kind), (203, 117, Kind::Jpeg));
                let error = rms(photo.luma.pixels(), &wanted);
                assert!(error < 3.0, "{sampling:?} progressive {progressive} restart {restart:?}: {error}");
            }
        }
    }
}

#[test]
fn a_cut_off_jpeg_is_an_error_wherever_it_ends() {
    for progressive in [false, true] {
        let bytes = jpeg(203, 117, |e| e.set_progressive(progressive));
        for end in (2..bytes.len()).step_by(97).chain(bytes.len() - 30..bytes.len()) {
            let error = photo::decode(&bytes[..end], "a.jpg").unwrap_err();
            assert!(matches!(error, Error::CutOff { .. } | Error::Foreign { .. }), "{end} of {}: {error}", bytes.len());
            assert!(error.to_string().contains("a.jpg"));
        }
    }
}

#[test]
fn files_that_are_no_photos_say_what_they_are() {
    let cases: [(&[u8], &str); 4] = [
        (b"", "is empty"),
        (b"\0\0\0\x18ftypheic\0\0\0\0mif1heic", "HEIC"),
        (b"RIFF\x10\0\0\0WEBPVP8 ", "WebP"),
        (b"%PDF-1.4\n", "PDF"),
    ];
    for (bytes, what) in cases {
        let message = photo::decode(bytes, "photos/b.jpg").unwrap_err().to_string();
        assert!(message.contains(what) && message.contains("photos/b.jpg"), "{message}");
    }
    assert!(matches!(photo::read(Path::new("no/such.jpg")), Err(Error::Open { .. })));
    assert!(photo::read(Path::new(".")).unwrap_err().to_string().contains("cannot read photo ."));
}
