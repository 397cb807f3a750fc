//! PNG variants, and files that state what they do not hold.

#![allow(clippy::unwrap_used, reason = "a test may stop where its own helper fails")]

use baywitness::photo::{self, Error, Kind};
use png::{BitDepth, ColorType, Encoder};

const WIDTH: usize = 53;
const HEIGHT: usize = 37;

fn png(colours: ColorType, depth: BitDepth, change: impl FnOnce(&mut Encoder<&mut Vec<u8>>), data: &[u8]) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, WIDTH as u32, HEIGHT as u32);
    encoder.set_color(colours);
    encoder.set_depth(depth);
    change(&mut encoder);
    encoder.write_header().unwrap().write_image_data(data).unwrap();
    bytes
}

fn grey() -> Vec<u8> {
    (0..HEIGHT).flat_map(|v| (0..WIDTH).map(move |u| (u * 4 + v) as u8)).collect()
}

fn luma(bytes: &[u8]) -> Vec<u8> {
    let photo = photo::decode(bytes, "wrongly-named.jpg").unwrap();
    assert_eq!((photo.kind, photo.width, photo.height), (Kind::Png, WIDTH, HEIGHT));
    photo.luma.pixels().to_vec()
}

#[test]
fn every_depth_and_colour_type_decodes() {
    let grey = grey();
    let each = |f: &dyn Fn(u8) -> Vec<u8>| grey.iter().flat_map(|&y| f(y)).collect::<Vec<u8>>();
    assert_eq!(luma(&png(ColorType::Grayscale, BitDepth::Eight, |_| {}, &grey)), grey);
    assert_eq!(luma(&png(ColorType::GrayscaleAlpha, BitDepth::Eight, |_| {}, &each(&|y| vec![y, 7]))), grey);
    assert_eq!(luma(&png(ColorType::Rgb, BitDepth::Eight, |_| {}, &each(&|y| vec![y, y, y]))), grey);
    assert_eq!(luma(&png(ColorType::Rgba, BitDepth::Eight, |_| {}, &each(&|y| vec![y, y, y, 0]))), grey);
    assert_eq!(luma(&png(ColorType::Grayscale, BitDepth::Sixteen, |_| {}, &each(&|y| vec![y, 99]))), grey);
    assert_eq!(luma(&png(ColorType::Rgba, BitDepth::Sixteen, |_| {}, &each(&|y| [y, 1].repeat(4)))), grey);
    let palette: Vec<u8> = (0..=255).flat_map(|i| [255 - i; 3]).collect();
    let inverted: Vec<u8> = grey.iter().map(|y| 255 - y).collect();
    let change = |e: &mut Encoder<&mut Vec<u8>>| e.set_palette(palette.clone());
    assert_eq!(luma(&png(ColorType::Indexed, BitDepth::Eight, change, &grey)), inverted);
    // Two grey levels, eight pixels a byte.
    let bits = vec![0b1010_1010; WIDTH.div_ceil(8) * HEIGHT];
    let stripes: Vec<u8> = (0..HEIGHT).flat_map(|_| (0..WIDTH).map(|u| if u % 2 == 0 { 255 } else { 0 })).collect();
    assert_eq!(luma(&png(ColorType::Grayscale, BitDepth::One, |_| {}, &bits)), stripes);
}

#[test]
fn colours_weigh_as_in_bt_601() {
    let red = [255, 0, 0].repeat(WIDTH * HEIGHT);
    let green = [0, 255, 0].repeat(WIDTH * HEIGHT);
    let blue = [0, 0, 255].repeat(WIDTH * HEIGHT);
    for (data, weight) in [(red, 0.299), (green, 0.587), (blue, 0.114)] {
        let found = luma(&png(ColorType::Rgb, BitDepth::Eight, |_| {}, &data))[0];
        assert!((f64::from(found) - 255.0 * weight).abs() <= 0.5, "{found} for {weight}");
    }
}

/// An interlaced PNG, written by hand because no encoder at hand writes one:
/// the seven passes of Adam7 (ISO/IEC 15948, 8.2), each row unfiltered.
fn interlaced(grey: &[u8]) -> Vec<u8> {
    let passes = [(0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2), (0, 1, 1, 2)];
    let mut raw = Vec::new();
    for (u0, v0, du, dv) in passes {
        for v in (v0..HEIGHT).step_by(dv) {
            raw.push(0);
            raw.extend((u0..WIDTH).step_by(du).map(|u| grey[v * WIDTH + u]));
        }
    }
    // zlib with one stored block (RFC 1950, RFC 1951).
    let length = raw.len() as u16;
    let mut zlib = vec![0x78, 0x01, 0x01];
    zlib.extend(length.to_le_bytes());
    zlib.extend((!length).to_le_bytes());
    let (mut a, mut b) = (1_u32, 0_u32);
    for byte in &raw {
        a = (a + u32::from(*byte)) % 65521;
        b = (b + a) % 65521;
    }
    zlib.extend(&raw);
    zlib.extend(((b << 16) | a).to_be_bytes());
    container(WIDTH as u32, HEIGHT as u32, [8, 0, 0, 0, 1], &zlib)
}

/// A PNG file of one header, one IDAT and the end.
fn container(width: u32, height: u32, rest: [u8; 5], idat: &[u8]) -> Vec<u8> {
    let header = [&width.to_be_bytes()[..], &height.to_be_bytes(), &rest].concat();
    let mut bytes = b"\x89PNG\r\n\x1a\n".to_vec();
    for (kind, body) in [(b"IHDR", &header[..]), (b"IDAT", idat), (b"IEND", &[])] {
        bytes.extend((body.len() as u32).to_be_bytes());
        let start = bytes.len();
        bytes.extend(kind);
        bytes.extend(body);
        bytes.extend(crc32(&bytes[start..]).to_be_bytes());
    }
    bytes
}

/// ISO/IEC 15948, annex D.
fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0, |crc, &byte| {
        (0..8).fold(crc ^ u32::from(byte), |c, _| if c & 1 == 1 { 0xedb8_8320 ^ (c >> 1) } else { c >> 1 })
    })
}

#[test]
fn an_interlaced_picture_decodes() {
    let grey = grey();
    assert_eq!(luma(&interlaced(&grey)), grey);
}

#[test]
fn a_cut_off_png_is_an_error_wherever_it_ends() {
    for bytes in [png(ColorType::Grayscale, BitDepth::Eight, |_| {}, &grey()), interlaced(&grey())] {
        for end in 8..bytes.len() {
            let error = photo::decode(&bytes[..end], "b.png").map(|_| ()).unwrap_err();
            assert!(matches!(error, Error::CutOff { .. } | Error::Damaged { .. }), "{end} of {}: {error}", bytes.len());
        }
    }
}

#[test]
fn stated_sizes_are_limited_before_memory_is_taken() {
    // A few bytes that state 65535 x 65535 and more.
    let bomb = container(65_535, 65_535, [8, 2, 0, 0, 0], &[0x78, 0x01, 0x03, 0, 0, 0, 0, 1]);
    assert!(matches!(photo::decode(&bomb, "bomb.png"), Err(Error::TooManyPixels { .. })));
    let bomb = container(u32::MAX / 2, u32::MAX / 2, [16, 6, 0, 0, 0], &[]);
    assert!(photo::decode(&bomb, "bomb.png").is_err());
    let zero = container(0, 10, [8, 0, 0, 0, 0], &[]);
    assert!(photo::decode(&zero, "zero.png").is_err());
    let mut jpeg = Vec::new();
    jpeg_encoder::Encoder::new(&mut jpeg, 90).encode(&[0; 64], 8, 8, jpeg_encoder::ColorType::Luma).unwrap();
    let frame = jpeg.windows(2).position(|w| w == [0xff, 0xc0]).unwrap();
    for (width, height) in [(65_535_u16, 65_535_u16), (60_000, 2_000)] {
        jpeg[frame + 5..frame + 7].copy_from_slice(&height.to_be_bytes());
        jpeg[frame + 7..frame + 9].copy_from_slice(&width.to_be_bytes());
        let error = photo::decode(&jpeg, "bomb.jpg").map(|_| ()).unwrap_err();
        assert!(matches!(error, Error::TooManyPixels { .. }), "{error}");
    }
    // Within the limit, but with one block of data.
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0x1f, 0x40, 0x1a, 0x90]);
    assert!(matches!(photo::decode(&jpeg, "bomb.jpg"), Err(Error::Damaged { .. })));
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0, 0, 0, 8]);
    assert!(matches!(photo::decode(&jpeg, "zero.jpg"), Err(Error::Damaged { .. })));
}

#[test]
fn one_pixel_decodes() {
    let mut jpeg = Vec::new();
    jpeg_encoder::Encoder::new(&mut jpeg, 90).encode(&[200], 1, 1, jpeg_encoder::ColorType::Luma).unwrap();
    let photo = photo::decode(&jpeg, "dot.jpg").unwrap();
    assert_eq!((photo.width, photo.height), (1, 1));
    assert!(photo.luma.at(0, 0).abs_diff(200) <= 2);
    assert_eq!(photo.sha256.len(), 64);
}

mod hostile {
    use proptest::prelude::*;

    use super::*;

    proptest! {
        #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

        /// Bytes changed anywhere give a photo or an error: nothing panics.
        #[test]
        fn changed_bytes_never_panic(changes in prop::collection::vec((any::<prop::sample::Index>(), any::<u8>()), 1..6),
                                     progressive: bool, restart in 0_u16..4, which in 0_usize..2) {
            let bytes = if which == 0 {
                let mut jpeg = Vec::new();
                let mut encoder = jpeg_encoder::Encoder::new(&mut jpeg, 80);
                encoder.set_progressive(progressive);
                if restart > 0 {
                    encoder.set_restart_interval(restart);
                }
                let rgb: Vec<u8> = grey().iter().flat_map(|&y| [y, y / 2, 255 - y]).collect();
                encoder.encode(&rgb, WIDTH as u16, HEIGHT as u16, jpeg_encoder::ColorType::Rgb).unwrap();
                jpeg
            } else {
                interlaced(&grey())
            };
            let mut bytes = bytes;
            for (place, value) in changes {
                let place = place.index(bytes.len());
                bytes[place] = value;
            }
            let _ = photo::decode(&bytes, "hostile");
            let _ = photo::preview(&bytes, "hostile", 40);
        }
    }
}
