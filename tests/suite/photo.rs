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

/// All combinations of coding and restart interval at one chroma sampling.
fn variants(sampling: SamplingFactor) -> impl Iterator<Item = (String, Vec<u8>)> {
    [false, true].into_iter().flat_map(move |progressive| {
        [None, Some(1), Some(5)].into_iter().map(move |restart| {
            let bytes = jpeg(203, 117, |e| {
                e.set_sampling_factor(sampling);
                e.set_progressive(progressive);
                if let Some(interval) = restart {
                    e.set_restart_interval(interval);
                }
            });
            (format!("{sampling:?}, progressive {progressive}, restart {restart:?}"), bytes)
        })
    })
}

use SamplingFactor::{F_1_1, F_1_2, F_1_4, F_2_1, F_2_2, F_2_4, F_4_1, F_4_2};

#[test]
fn every_usual_jpeg_decodes_to_its_luma() {
    let wanted = luma_of(&scene(203, 117));
    for (what, bytes) in [F_1_1, F_2_2, F_2_1, F_1_2, F_4_1].into_iter().flat_map(variants) {
        let photo = photo::decode(&bytes, "a.jpg").unwrap_or_else(|e| panic!("{what}: {e}"));
        assert_eq!((photo.width, photo.height, photo.kind), (203, 117, Kind::Jpeg));
        let error = rms(photo.luma.pixels(), &wanted);
        assert!(error < 3.0, "{what}: {error}");
    }
}

#[test]
fn sampling_that_the_decoder_gets_wrong_is_refused() {
    for (what, bytes) in [F_4_2, F_1_4, F_2_4].into_iter().flat_map(variants) {
        let error = photo::decode(&bytes, "a.jpg").unwrap_err();
        assert!(matches!(error, Error::Unsupported { .. }), "{what}: {error}");
    }
}

#[test]
fn grey_and_four_channel_jpegs_decode() {
    let grey: Vec<u8> = luma_of(&scene(203, 117)).into_iter().map(|y| y.round() as u8).collect();
    let wanted: Vec<f64> = grey.iter().map(|&y| f64::from(y)).collect();
    let mut bytes = Vec::new();
    Encoder::new(&mut bytes, 92).encode(&grey, 203, 117, ColorType::Luma).unwrap();
    assert!(rms(photo::decode(&bytes, "grey").unwrap().luma.pixels(), &wanted) < 3.0);
    // A lone component's sampling factors mean nothing (T.81, A.2.2): some cameras write 2 x 2.
    let frame = bytes.windows(2).position(|w| w == [0xff, 0xc0]).unwrap();
    bytes[frame + 11] = 0x22;
    assert!(rms(photo::decode(&bytes, "grey").unwrap().luma.pixels(), &wanted) < 3.0);
    for (colours, progressive) in [
        (ColorType::Cmyk, false),
        (ColorType::Cmyk, true),
        (ColorType::CmykAsYcck, false),
        (ColorType::CmykAsYcck, true),
    ] {
        let mut bytes = Vec::new();
        let mut encoder = Encoder::new(&mut bytes, 95);
        encoder.set_progressive(progressive);
        // No coloured ink: the picture is the black channel's.
        let inks: Vec<u8> = grey.iter().flat_map(|&y| [0, 0, 0, 255 - y]).collect();
        encoder.encode(&inks, 203, 117, colours).unwrap();
        let error = rms(photo::decode(&bytes, "cmyk").unwrap().luma.pixels(), &wanted);
        assert!(error < 3.0, "{colours:?} progressive {progressive}: {error}");
    }
}

#[test]
fn a_cut_off_jpeg_is_an_error_wherever_it_ends() {
    for (what, bytes) in [F_2_2, F_1_1].into_iter().flat_map(variants) {
        for end in (2..bytes.len()).step_by(97).chain(bytes.len() - 30..bytes.len()) {
            let error = photo::decode(&bytes[..end], "a.jpg").unwrap_err();
            assert!(
                matches!(error, Error::CutOff { .. } | Error::Foreign { .. }),
                "{what}, {end} of {}: {error}",
                bytes.len()
            );
            assert!(error.to_string().contains("a.jpg"));
        }
    }
}

/// Where the picture data of a single scan starts.
fn scan_start(bytes: &[u8]) -> usize {
    bytes.windows(2).position(|w| w == [0xff, 0xda]).unwrap() + 14
}

#[test]
fn missing_data_before_the_end_marker_is_found() {
    for restart in [0, 1, 13, 40] {
        let bytes = jpeg(407, 311, |e| {
            e.set_sampling_factor(F_2_2);
            if restart > 0 {
                e.set_restart_interval(restart);
            }
        });
        let (start, end) = (scan_start(&bytes), bytes.len() - 2);
        // A tool that "repairs" a cut-off file puts an end marker behind it.
        for cut in (start..end - 40).step_by(211) {
            let mut repaired = bytes[..cut].to_vec();
            repaired.extend([0xff, 0xd9]);
            let error = photo::decode(&repaired, "a.jpg").map(|_| ()).unwrap_err();
            assert!(matches!(error, Error::CutOff { .. } | Error::Damaged { .. }), "{cut}: {error}");
        }
        // A copy that lost its end shows zeros there.
        let mut zeros = bytes.clone();
        zeros[(start + end) / 2..].fill(0);
        assert!(matches!(photo::decode(&zeros, "a.jpg"), Err(Error::CutOff { .. })));
    }
}

#[test]
fn damaged_restart_markers_are_found() {
    let bytes = jpeg(407, 311, |e| e.set_restart_interval(7));
    let places: Vec<usize> = (scan_start(&bytes)..bytes.len() - 2)
        .filter(|&i| bytes[i] == 0xff && (0xd0..0xd8).contains(&bytes[i + 1]))
        .collect();
    assert!(places.len() > 20);
    for &place in &places {
        let mut other = bytes.clone();
        other[place + 1] = 0xd0 | ((other[place + 1] + 1) & 7);
        let mut lost = bytes.clone();
        lost.drain(place..place + 2);
        let mut blank = bytes.clone();
        blank[place + 1] = 0;
        for damaged in [other, lost, blank] {
            assert!(matches!(photo::decode(&damaged, "a.jpg"), Err(Error::Damaged { .. })), "at {place}");
        }
    }
    // Eight intervals gone: the numbers still follow each other.
    let mut lost = bytes.clone();
    lost.drain(places[4]..places[12]);
    assert!(matches!(photo::decode(&lost, "a.jpg"), Err(Error::Damaged { .. })));
}

#[test]
fn what_follows_the_picture_is_left_alone() {
    // Phones append a gain map, a second picture or a film clip.
    let plain = jpeg(203, 117, |_| {});
    let mut more = plain.clone();
    more.extend(jpeg(31, 17, |_| {}));
    more.extend(b"\0\0\0\x18ftypmp42");
    assert_eq!(photo::decode(&more, "a").unwrap().luma, photo::decode(&plain, "a").unwrap().luma);
}

#[test]
fn files_that_are_no_photos_say_what_they_are() {
    let cases: [(&[u8], &str); 4] = [
        (b"", "is empty"),
        (b"\0\0\0\x18ftypavif\0\0\0\0mif1avif", "AVIF"),
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
