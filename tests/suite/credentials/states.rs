//! Each state of a photo's credentials, from photos that are signed, flipped,
//! stripped and swapped here.

use std::fs;
use std::path::Path;
use std::sync::Arc;

use baywitness::credentials::{Anchors, Credentials, Source, State};
use baywitness::photo;
use serde_json::json;
use time::{Duration, OffsetDateTime};

use super::signing::Maker;
use super::{job, run, verified};

/// The credentials of a photo's bytes, by a maker's root or by nobody's.
fn read(bytes: &[u8], trusted: Option<&Maker>) -> Option<Credentials> {
    read_by(bytes, trusted.map(|m| Arc::new(Anchors::from_pem(m.root_pem.clone()).unwrap())))
}

fn read_by(bytes: &[u8], anchors: Option<Arc<Anchors>>) -> Option<Credentials> {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("photo");
    fs::write(&path, bytes).unwrap();
    Source::Photos(anchors).of(&path, &photo::sha256(bytes)).unwrap()
}

fn state(bytes: &[u8], trusted: Option<&Maker>) -> Option<State> {
    read(bytes, trusted).map(|c| c.state)
}

fn small_jpeg() -> Vec<u8> {
    let picture = image::RgbImage::from_fn(96, 64, |x, y| image::Rgb([(x * 2) as u8, (y * 3) as u8, 90]));
    let mut bytes = Vec::new();
    jpeg_encoder::Encoder::new(&mut bytes, 90).encode(picture.as_raw(), 96, 64, jpeg_encoder::ColorType::Rgb).unwrap();
    bytes
}

fn small_png() -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    image::RgbImage::from_pixel(40, 30, image::Rgb([9, 80, 200]))
        .write_to(&mut bytes, image::ImageFormat::Png)
        .unwrap();
    bytes.into_inner()
}

fn heic() -> Vec<u8> {
    fs::read(Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data/wave.heic")).unwrap()
}

#[test]
fn signed_photos_of_each_format_are_trusted_by_their_root_alone() {
    let (maker, other) = (Maker::new("Invented Optics"), Maker::new("Other Invented Optics"));
    for (plain, format) in [(small_jpeg(), "image/jpeg"), (small_png(), "image/png"), (heic(), "image/heic")] {
        assert_eq!(read(&plain, Some(&maker)), None, "{format}");
        let signed = maker.sign(&plain, format);
        let found = read(&signed, Some(&maker)).unwrap();
        assert_eq!(found.state, State::Trusted, "{format}: {found:?}");
        assert!(found.suffice() && found.edits.is_empty() && found.failures.is_empty(), "{format}: {found:?}");
        assert_eq!(found.signer.as_deref(), Some("Invented Optics camera 1"), "{format}");
        assert_eq!(found.generator.as_deref(), Some("Invented Camera 3"), "{format}");
        assert_eq!(state(&signed, None), Some(State::UnknownSigner), "{format}");
        assert_eq!(state(&signed, Some(&other)), Some(State::UnknownSigner), "{format}");
    }
}

/// RFC 5280, 4.2.1.9: only an authority vouches for others, though every signature of the chain holds.
#[test]
fn a_camera_s_certificate_vouches_for_nobody() {
    let maker = Maker::new("Invented Optics");
    let trusted = Arc::new(Anchors::from_pem(maker.root_pem.clone()).unwrap());
    let signed = maker.forger().sign(&small_jpeg(), "image/jpeg");
    assert_eq!(read_by(&signed, Some(trusted)).map(|c| c.state), Some(State::UnknownSigner));
}

#[test]
fn a_certificate_out_of_its_time_is_neither_trusted_nor_broken() {
    // Nobody signs with one whose time is over: it ends while this test waits.
    let ends = OffsetDateTime::now_utc() + Duration::seconds(12);
    let maker = Maker::until("Invented Optics", ends);
    let signed = maker.sign(&small_jpeg(), "image/jpeg");
    assert_eq!(state(&signed, Some(&maker)), Some(State::Trusted));
    let left = ends - OffsetDateTime::now_utc() + Duration::seconds(2);
    std::thread::sleep(left.try_into().unwrap_or_default());
    let found = read(&signed, Some(&maker)).unwrap();
    assert_eq!(found.state, State::Expired, "{found:?}");
    assert!(!found.suffice() && !found.failures.is_empty());
    // An altered byte is not hidden by it.
    let mut flipped = signed.clone();
    let last = flipped.len() - 20;
    flipped[last] ^= 1;
    assert_eq!(state(&flipped, Some(&maker)), Some(State::Broken));
}

/// No flipped byte leaves a photo trusted: in the picture the hash over its
/// bytes fails, in the manifest something does.
#[test]
fn no_flipped_byte_stays_trusted() {
    let maker = Maker::new("Invented Optics");
    let signed = maker.sign(&small_jpeg(), "image/jpeg");
    let [first, count] = {
        let mut flipped = signed.clone();
        let last = flipped.len() - 20;
        flipped[last] ^= 1;
        let found = read(&flipped, Some(&maker)).unwrap();
        assert_eq!(found.state, State::Broken, "{found:?}");
        let codes: Vec<&str> = found.failures.iter().map(|f| f.code.as_str()).collect();
        assert!(codes.contains(&"assertion.dataHash.mismatch"), "{codes:?}");
        assert!(found.failures.iter().any(|f| f.about.as_deref() == Some("c2pa.hash.data")), "{found:?}");
        // The manifest is what the hash leaves out, and it lies there.
        assert_eq!(found.not_hashed.len(), 1, "{found:?}");
        found.not_hashed[0].map(|n| n as usize)
    };
    assert_eq!(signed[first..first + 2], [0xff, 0xeb]);
    assert!(first + count < signed.len());
    let mut trusted = Vec::new();
    for at in (2..signed.len()).step_by(signed.len() / 150) {
        let mut flipped = signed.clone();
        flipped[at] ^= 0x10;
        if photo::recognise(&flipped, "flipped").is_ok() && state(&flipped, Some(&maker)) == Some(State::Trusted) {
            trusted.push(at);
        }
    }
    // Padding of the signature's box is hashed by nothing: room that C2PA reserves for a timestamp.
    let is_padding =
        |at: &usize| (first..first + count).contains(at) && signed[at - 8..at + 8].iter().all(|byte| *byte == 0);
    trusted.retain(|at| !is_padding(at));
    assert!(trusted.is_empty(), "trusted with a flipped byte at {trusted:?}");
}

#[test]
fn a_stripped_photo_has_none_and_anothers_manifest_does_not_fit() {
    let maker = Maker::new("Invented Optics");
    let a = maker.sign(&small_jpeg(), "image/jpeg");
    let mut other = small_jpeg();
    let last = other.len() - 20;
    other[last] ^= 1;
    let b = maker.sign(&other, "image/jpeg");
    let store = |signed: &[u8]| read(signed, None).map(|_| segments(signed, true)).unwrap();
    assert_eq!(read(&segments(&a, false), Some(&maker)), None);
    // b's picture with a's manifest, where b's was.
    let swapped = [&b[..2], &store(&a), &segments(&b, false)[2..]].concat();
    let found = read(&swapped, Some(&maker)).unwrap();
    assert_eq!(found.state, State::Broken, "{found:?}");
    assert!(found.failures.iter().any(|f| f.code == "assertion.dataHash.mismatch"), "{found:?}");
}

/// A JPEG's APP11 segments alone, or everything but them.
fn segments(bytes: &[u8], app11: bool) -> Vec<u8> {
    let mut kept = if app11 { Vec::new() } else { bytes[..2].to_vec() };
    let mut at = 2;
    while bytes[at + 1] != 0xda {
        let length = 2 + usize::from(u16::from_be_bytes([bytes[at + 2], bytes[at + 3]]));
        if (bytes[at + 1] == 0xeb) == app11 {
            kept.extend(&bytes[at..at + length]);
        }
        at += length;
    }
    if !app11 {
        kept.extend(&bytes[at..]);
    }
    kept
}

#[test]
fn edits_that_the_manifest_lists_are_told_and_do_not_suffice() {
    let maker = Maker::new("Invented Optics");
    let created = |kind: &str| json!({ "action": "c2pa.created", "digitalSourceType": format!("http://cv.iptc.org/newscodes/digitalsourcetype/{kind}") });
    let edited = json!([created("digitalCapture"), { "action": "c2pa.color_adjustments", "softwareAgent": "Invented Darkroom" }]);
    let made = json!([created("trainedAlgorithmicMedia")]);
    for (actions, named) in
        [(edited, "c2pa.color_adjustments (Invented Darkroom)"), (made, "c2pa.created (trainedAlgorithmicMedia)")]
    {
        let found = read(&maker.sign_with(&small_jpeg(), "image/jpeg", actions), Some(&maker)).unwrap();
        assert_eq!((found.state, found.suffice()), (State::Trusted, false), "{found:?}");
        assert_eq!(found.edits_named(), [named]);
    }
}

#[test]
fn cut_off_anywhere_it_is_no_fault_and_never_trusted() {
    let maker = Maker::new("Invented Optics");
    for (plain, format) in [(small_jpeg(), "image/jpeg"), (small_png(), "image/png"), (heic(), "image/heic")] {
        let signed = maker.sign(&plain, format);
        for end in (12..signed.len()).step_by(signed.len() / 40) {
            if photo::recognise(&signed[..end], "cut").is_ok() {
                assert_ne!(state(&signed[..end], Some(&maker)), Some(State::Trusted), "{format} to {end}");
            }
        }
    }
}

#[test]
fn a_job_is_within_where_all_photos_are_trusted_and_not_proven_where_one_is_not() {
    let dir = tempfile::tempdir().unwrap();
    let maker = Maker::new("Invented Optics");
    let anchors = maker.anchors(dir.path());
    let job = job(dir.path(), true);
    maker.sign_job(&job);
    let by_anchors = ["--credential-anchors", &anchors];
    let (code, record) = verified(&job, &by_anchors);
    assert_eq!((code, &record["verdict"]), (0, &"within".into()), "{}", record["reason"]);
    assert_eq!(record["photos"][1]["credentials"]["state"], "trusted");
    let (code, record) = verified(&job, &[]);
    assert_eq!(code, 3);
    let said = record["reason"].as_str().unwrap();
    assert!(said.contains("for whom no trust anchor vouches"), "{said}");
    // A byte in the entropy-coded data: the picture still decodes.
    let path = job.join("photos/b.jpg");
    let mut bytes = fs::read(&path).unwrap();
    let end = bytes.len() - 2;
    bytes[end - 1] ^= 1;
    fs::write(&path, &bytes).unwrap();
    let (code, record) = verified(&job, &by_anchors);
    assert_eq!(code, 3, "{}", record["reason"]);
    assert_eq!(record["photos"][1]["credentials"]["state"], "broken");
    let codes: Vec<&str> = record["findings"].as_array().unwrap().iter().map(|f| f["code"].as_str().unwrap()).collect();
    assert_eq!(codes, ["credentials-lacking", "photo-edited"]);
    let said = record["reason"].as_str().unwrap();
    assert!(
        said.contains("photos/b.jpg (broken: assertion.dataHash.mismatch (c2pa.hash.data)") && !said.contains("a.jpg"),
        "{said}"
    );
    let out = dir.path().join("report");
    let (_, text, error) =
        run(&["verify", job.to_str().unwrap(), "--report", out.to_str().unwrap(), "--credential-anchors", &anchors]);
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(text.contains("Content credentials of the photos: 1 valid and trusted and 1 broken."), "{text} {error}");
    let page = fs::read_to_string(out.join("SAMPLE-GOOD.html")).or_else(|_| {
        let one =
            fs::read_dir(&out).unwrap().map(|e| e.unwrap().path()).find(|p| p.extension().is_some_and(|e| e == "html"));
        fs::read_to_string(one.unwrap())
    });
    let page = page.unwrap();
    assert!(page.contains("valid, signed by Invented Optics camera 1, for whom a trust anchor vouches"));
    assert!(page.contains("hashed were all bytes but "));
}
