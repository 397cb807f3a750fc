//! JPEGs with one scan for each component (ITU-T T.81, A.2.2): read as
//! the same picture in one scan, or refused, never as another picture.

#![cfg(test)]

use baywitness::photo;
use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

const SIDE: u16 = 200;

/// The encoder writes separate scans exactly where it optimizes its tables.
fn jpeg(sampling: SamplingFactor, separate: bool) -> Vec<u8> {
    let pixel = |x: u16, y: u16| [(x * 7 % 251) as u8, ((x / 9 + y / 11) % 2 * 200) as u8, (y % 256) as u8];
    let rgb: Vec<u8> = (0..SIDE).flat_map(|y| (0..SIDE).flat_map(move |x| pixel(x, y))).collect();
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, 90);
    encoder.set_sampling_factor(sampling);
    encoder.set_optimized_huffman_tables(separate);
    encoder.encode(&rgb, SIDE, SIDE, ColorType::Rgb).unwrap();
    let scans = bytes.windows(2).filter(|w| *w == [0xff, 0xda]).count();
    assert_eq!(scans, if separate { 3 } else { 1 });
    bytes
}

#[test]
fn separate_scans_give_the_same_picture_or_an_error() {
    for (name, sampling) in
        [("4:4:4", SamplingFactor::R_4_4_4), ("4:2:2", SamplingFactor::R_4_2_2), ("4:2:0", SamplingFactor::R_4_2_0)]
    {
        let one = photo::decode(&jpeg(sampling, false), "one.jpg").unwrap().luma;
        match photo::decode(&jpeg(sampling, true), "many.jpg") {
            Ok(many) => assert!(many.luma == one, "{name}: another picture"),
            Err(e) => {
                println!("{name}: {e}");
                assert!(e.to_string().contains("many.jpg") && e.to_string().contains("save it as"), "{name}: {e}");
                assert_ne!(name, "4:4:4");
            }
        }
    }
}
