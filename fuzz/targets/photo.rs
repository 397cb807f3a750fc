//! Any bytes as a photo: decoded, looked at, shown small; a clear error or a picture.

#![no_main]

use baywitness::photo;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    if let Ok(photo) = photo::decode(bytes, "photo.jpg") {
        assert_eq!(photo.luma.pixels().len(), photo.luma.width() * photo.luma.height());
        let _ = photo::preview(bytes, "photo.jpg", 64);
    }
});
