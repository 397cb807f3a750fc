//! Any bytes as a HEIC photo: the container, its record and its coded pictures.

#![no_main]

use baywitness::photo::{self, Kind};
use libfuzzer_sys::{Corpus, fuzz_target};

fuzz_target!(|bytes: &[u8]| -> Corpus {
    if !matches!(photo::recognise(bytes, "photo.heic"), Ok(Kind::Heic)) {
        return Corpus::Reject;
    }
    let _ = photo::exif(bytes, Kind::Heic);
    if let Ok(photo) = photo::decode(bytes, "photo.heic") {
        assert_eq!(photo.luma.pixels().len(), photo.width * photo.height);
        let _ = photo::preview(bytes, "photo.heic", 64);
    }
    Corpus::Keep
});
