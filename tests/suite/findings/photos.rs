//! What is wrong with a picture, not with the bay.

use baywitness::detect::{Sighting, Sightings};
use baywitness::folder::JobFile;
use baywitness::marker::Role;
use baywitness::photo::{Edit, Exif, Traces};
use baywitness::verdict::Level;
use baywitness::verdict::findings::{Case, Finding, PhotoFacts, find, same_view};
use nalgebra::{Vector2, Vector6};
use time::macros::datetime;

use super::bench::{LINE, bay, en, facts, job, sheet, sightings};
use crate::sampled_bay::{Flaw, Noise, flawed, sample};

/// Findings that need nothing but the photos' own facts.
fn of_photos(photos: &[PhotoFacts], job: &JobFile) -> Vec<Finding> {
    after_moves(photos, job, &[])
}

/// The same of photos from after so many moves of the stand.
fn after_moves(photos: &[PhotoFacts], job: &JobFile, after_move: &[u32]) -> Vec<Finding> {
    let sample = sample(&bay(), 5);
    let (setup, measured) = (sheet(), std::collections::BTreeMap::new());
    find(&Case {
        phases: &[],
        after_move,
        kit: &sample.kit,
        setup: &setup,
        job,
        unlisted: &[],
        photos,
        scene: None,
        problem: None,
        measurement: None,
        checks: &[],
        line: LINE,
        suspects: &[],
        readings: &[],
        measured: &measured,
        elsewhere: &[],
        sensitivity: &[],
    })
}

fn seen() -> Vec<Sightings> {
    sample(&bay(), 5).photos.iter().map(sightings).collect()
}

/// Cropped by (300, 200) px, enlarged by 1.2, with noise of a second encoding.
fn cropped(original: &Sightings) -> Sightings {
    let mut copy = original.clone();
    for (i, corner) in copy.markers.iter_mut().flat_map(|m| &mut m.corners_px).enumerate() {
        let noise = 0.05 * Vector2::new((i as f64).sin(), (1.7 * i as f64).cos());
        *corner = (*corner - Vector2::new(300.0, 200.0)) * 1.2 + noise;
    }
    copy
}

#[test]
fn a_copy_is_known_however_it_was_saved() {
    let seen = seen();
    for i in 0..4 {
        assert!(same_view(&cropped(&seen[i]), &seen[i]));
        for j in 0..i {
            assert!(!same_view(&seen[i], &seen[j]), "photos {i} and {j} of a plain job");
        }
    }
    let exif = Exif::default();
    let none = Sightings::default();
    // Re-encoded and cropped; byte for byte; mirrored, so that no code is read.
    let doubled = vec![seen[0].clone(), cropped(&seen[0])];
    let crop = facts(&doubled, &exif);
    let bytes: Vec<PhotoFacts> =
        facts(&seen[..2], &exif).into_iter().map(|f| PhotoFacts { sha256: "ab", ..f }).collect();
    let mut mirrored = facts(&seen[..2], &exif);
    mirrored[1].sightings = &none;
    mirrored[1].mirrored = Some(&seen[0]);
    for (photos, how) in [(crop, "cropped"), (bytes, "byte for byte"), (mirrored, "mirrored")] {
        let findings = of_photos(&photos, &job());
        let reused = findings.iter().find(|f| f.code == "photo-reused").unwrap();
        assert!(
            crate::findings::bench::en(&reused.message).contains(how) && reused.photo.as_deref() == Some("b.jpg"),
            "{}",
            crate::findings::bench::en(&reused.message)
        );
    }
    assert!(of_photos(&facts(&seen, &exif), &job()).iter().all(|f| f.code != "photo-reused"));
}

/// The photo whose light was changed is named, with how well its corners are known and would be.
/// The first photo's station again, with the stand so far to the left, mm, and the noise of another picture.
fn of_tripod(left_mm: f64) -> Sightings {
    let place = |_: usize, name: &str, pose: crate::sampled_bay::At| match name {
        "stand" => pose.moved(&Vector6::new(0.0, left_mm, 0.0, 0.0, 0.0, 0.0)),
        _ => pose,
    };
    let mut seen = sightings(&flawed(&bay(), 5, &Flaw { place: &place, ..Flaw::default() }).photos[0]);
    let mut noise = Noise::new(17);
    for corner in seen.markers.iter_mut().flat_map(|m| &mut m.corners_px) {
        *corner += 0.03 * Vector2::new(noise.normal(), noise.normal());
    }
    seen
}

#[test]
fn a_copy_given_as_a_move_is_a_copy_and_a_tripods_photo_is_none() {
    let first = &seen()[0];
    let smaller = |original: &Sightings| {
        let mut copy = cropped(original);
        copy.markers.iter_mut().flat_map(|m| &mut m.corners_px).for_each(|c| *c *= 0.4);
        copy
    };
    let at = |seconds: i64| Exif {
        taken: Some(datetime!(2026-03-14 10:00 UTC) + time::Duration::seconds(seconds)),
        ..Exif::default()
    };
    let unknown = Exif::default();
    // Picture, when the first one and it were taken, after which move, and whether it proves nothing more.
    let cases: [(&str, Sightings, [&Exif; 2], u32, bool); 8] = [
        ("cropped", cropped(first), [&unknown, &unknown], 1, true),
        ("made smaller", smaller(first), [&unknown, &unknown], 1, true),
        ("saved with its time", cropped(first), [&at(0), &at(0)], 1, true),
        ("saved without its time", cropped(first), [&at(0), &unknown], 1, true),
        ("taken again, the stand as it was", of_tripod(0.0), [&unknown, &unknown], 1, true),
        ("of a stand 5 mm aside", of_tripod(5.0), [&unknown, &unknown], 1, false),
        ("of a stand 1 mm aside", of_tripod(1.0), [&unknown, &unknown], 1, false),
        ("of a stand 1 mm aside, said to be where it was", of_tripod(1.0), [&at(0), &at(9)], 0, true),
    ];
    for (what, second, taken, after_move, reused) in cases {
        let both = [first.clone(), second];
        let mut photos = facts(&both, &unknown);
        photos.iter_mut().zip(taken).for_each(|(photo, exif)| photo.exif = exif);
        let found = after_moves(&photos, &job(), &[0, after_move]);
        assert_eq!(found.iter().any(|f| f.code == "photo-reused"), reused, "{what}");
    }
}

/// One phone's clock tells which photo was first; two phones' clocks do as far as they agree.
#[test]
fn a_photo_given_as_after_a_move_that_is_older() {
    let phone = |model: &str, minute: u8, offset: bool| Exif {
        make: Some("Invented".into()),
        model: Some(model.into()),
        taken: offset.then(|| datetime!(2026-03-14 10:00 UTC) + time::Duration::minutes(minute.into())),
        // As records are read: the local time alone where there is no offset.
        taken_local: (!offset).then(|| format!("2026:03:14 10:{minute:02}:00")),
        ..Exif::default()
    };
    let both = [seen()[0].clone(), of_tripod(5.0)];
    // When the photos from before and after the move were taken, and what is said of it.
    let cases = [
        (phone("A", 10, true), phone("A", 12, true), None),
        (phone("A", 12, true), phone("A", 10, true), Some(Level::Stop)),
        (phone("A", 12, false), phone("A", 10, false), Some(Level::Stop)),
        (phone("A", 12, true), phone("A", 10, false), Some(Level::Stop)),
        (phone("A", 40, true), phone("B", 10, true), Some(Level::Warn)),
        (phone("A", 12, true), phone("B", 10, true), None),
        (phone("A", 40, false), phone("B", 10, false), None),
        (Exif::default(), Exif::default(), None),
    ];
    for (i, (before, after, level)) in cases.into_iter().enumerate() {
        let mut photos = facts(&both, &before);
        photos[1].exif = &after;
        let found = after_moves(&photos, &job(), &[0, 1]);
        let said: Vec<Level> = found.iter().filter(|f| en(&f.message).contains("move")).map(|f| f.level).collect();
        assert_eq!(said, Vec::from_iter(level), "case {i}: {found:?}");
    }
}

#[test]
fn a_photo_whose_light_the_phone_changed() {
    let mut seen = seen();
    seen[1].gain_spread = Some(0.25);
    seen[1].markers.iter_mut().for_each(|m| m.covariance_px2 *= 4.0);
    let exif = Exif::default();
    let findings = of_photos(&facts(&seen, &exif), &job());
    let changed: Vec<&Finding> = findings.iter().filter(|f| f.code == "photo-light-changed").collect();
    let [one] = changed[..] else { panic!("{changed:?}") };
    assert_eq!((one.photo.as_deref(), one.level), (Some("b.jpg"), Level::Note));
    let told = en(&one.message);
    assert!(told.contains("px") && told.contains("HDR"), "{told}");
}

#[test]
fn a_carrier_whose_prints_are_not_flat() {
    let mut seen = seen();
    let kit = sample(&bay(), 5).kit;
    let bent = kit.carriers.iter().position(|c| c.role == Role::Target).unwrap();
    let is_own = |id: u32| kit.marker(id).is_some_and(|(carrier, _)| carrier == bent);
    for marker in seen.iter_mut().flat_map(|s| &mut s.markers) {
        // What sheets taped to a wall show, and, of all other carriers, what nobody needs to be told.
        marker.warp_px = Some(if is_own(marker.id) { 0.0012 } else { 0.0008 } * marker.side_px());
    }
    let exif = Exif::default();
    let findings = of_photos(&facts(&seen, &exif), &job());
    let named: Vec<&Finding> = findings.iter().filter(|f| f.code == "print-not-flat").collect();
    let [one] = named[..] else { panic!("{named:?}") };
    assert_eq!((one.carrier.as_deref(), one.level), (Some(kit.carriers[bent].name.as_str()), Level::Note));
    let size = kit.carriers[bent].markers[0].size_mm[0];
    let told = crate::findings::bench::en(&one.message);
    assert!(told.contains(&format!("{:.2} mm", 0.0012 * size)), "{told}");
}

#[test]
fn a_photo_saved_at_another_size() {
    let seen = seen();
    let exif = Exif { pixel_size: Some([4032, 3024]), ..Exif::default() };
    let mut photos = facts(&seen[..2], &exif);
    assert!(of_photos(&photos, &job()).iter().all(|f| f.code != "photo-resized"));
    // Turned on its side by the software that stated the size: no fault.
    photos[0].size_px = [3024, 4032];
    assert!(of_photos(&photos, &job()).iter().all(|f| f.code != "photo-resized"));
    photos[1].size_px = [2016, 1512];
    let findings = of_photos(&photos, &job());
    assert!(findings.iter().any(|f| f.code == "photo-resized" && f.photo.as_deref() == Some("b.jpg")));
}

#[test]
fn times_that_contradict_each_other() {
    let seen = seen();
    let at = |taken| Exif { taken: Some(taken), ..Exif::default() };
    let (first, second) = (at(datetime!(2026-11-25 10:30 +1)), at(datetime!(2026-11-25 9:31 UTC)));
    let mut photos = facts(&seen[..2], &first);
    photos[1].exif = &second;
    let codes = |photos: &[PhotoFacts], job: &JobFile| -> Vec<String> {
        of_photos(photos, job)
            .into_iter()
            .filter(|f| f.code == "times-out-of-order")
            .map(|f| crate::findings::bench::en(&f.message))
            .collect()
    };
    let text = "format = \"job/1\"\njob = \"S\"\nsetup = \"s\"\nkit = \"r\"\ntaken = 2026-11-25T10:32:00+01:00\n\
                [calibration]\nresult = \"successful\"\nat = 2026-11-25T10:50:00+01:00\n";
    let plain = JobFile::from_toml(text, "job.toml").unwrap();
    assert!(codes(&photos, &plain).is_empty(), "one minute apart, whatever the offset");
    let early = JobFile::from_toml(&text.replace("T10:50", "T10:05"), "job.toml").unwrap();
    assert!(codes(&photos, &early)[0].contains("calibration ran 25 min before"));
    let other_day = JobFile::from_toml(&text.replace("taken = 2026-11-25", "taken = 2026-11-21"), "job.toml").unwrap();
    assert!(
        codes(&photos, &other_day)[0].contains("4 days before") || codes(&photos, &other_day)[0].contains("3 days")
    );
    let later = at(datetime!(2026-11-25 13:30 +1));
    photos[1].exif = &later;
    assert!(codes(&photos, &plain).iter().any(|m| m.contains("3 h after a.jpg")));
    // Photos of two phases: those from after may be later than the calibration, and must be.
    let phases = |text: &str, first: &str, second: &str| {
        let list = format!(
            "[[photo]]\nfile = \"a.jpg\"\nphase = \"{first}\"\n[[photo]]\nfile = \"b.jpg\"\nphase = \"{second}\"\n"
        );
        JobFile::from_toml(&format!("{text}{list}"), "job.toml").unwrap()
    };
    assert!(
        codes(&photos, &phases(text, "before", "after")).is_empty(),
        "three hours apart with the calibration between"
    );
    let late = text.replace("T10:50", "T14:50");
    assert!(
        codes(&photos, &phases(&late, "before", "after"))[0].contains("80 min before it ran"),
        "{:?}",
        codes(&photos, &phases(&late, "before", "after"))
    );
    let exchanged = codes(&photos, &phases(text, "after", "before"));
    assert!(exchanged.iter().any(|m| m.contains("other way round")), "{exchanged:?}");
    assert!(
        exchanged.iter().any(|m| m.contains("a.jpg is listed as taken after the calibration, but")),
        "{exchanged:?}"
    );
    assert!(exchanged.iter().any(|m| m.contains("calibration ran 2 h before")), "{exchanged:?}");
    // A time without its offset is not checkable.
    let unknown = Exif { taken_local: Some("2026:11:20 08:00:00".into()), ..Exif::default() };
    photos[1].exif = &unknown;
    assert!(codes(&photos, &plain).is_empty());
}

/// One phone's clock tells how far apart its photos are, whatever its time zone; clocks of two phones, or of a phone that
/// nobody knows, may be hours apart.
#[test]
fn local_times_of_one_phone_hours_apart() {
    let seen = seen();
    let at = |model: Option<&str>, time: &str| Exif {
        make: model.map(|_| "Invented".into()),
        model: model.map(str::to_owned),
        taken_local: Some(format!("2026:03:14 {time}:00")),
        ..Exif::default()
    };
    let cases = [
        (at(Some("A"), "08:04"), at(Some("A"), "22:00"), true),
        (at(Some("A"), "08:04"), at(Some("A"), "08:59"), false),
        (at(Some("A"), "08:04"), at(Some("B"), "22:00"), false),
        (at(None, "08:04"), at(None, "22:00"), false),
    ];
    for (i, (one, other, apart)) in cases.into_iter().enumerate() {
        let mut photos = facts(&seen[..2], &one);
        photos[1].exif = &other;
        let found = of_photos(&photos, &job());
        let told: Vec<String> =
            found.iter().filter(|f| f.code == "times-out-of-order").map(|f| en(&f.message)).collect();
        assert_eq!(told.len(), usize::from(apart), "case {i}: {told:?}");
        assert!(!apart || told[0].contains("13 h after a.jpg"), "{told:?}");
    }
}

/// A clock set back by days, and satellites that tell the day; no time zone is a day from theirs.
#[test]
fn a_photo_whose_satellites_tell_another_day() {
    let seen = seen();
    let at = |satellites| Exif {
        taken_local: Some("2026:03:14 08:04:00".into()),
        satellites: Some(satellites),
        ..Exif::default()
    };
    for (satellites, hours) in [
        (datetime!(2026-03-13 18:04 UTC), None),
        (datetime!(2026-03-15 09:04 UTC), None),
        (datetime!(2026-03-15 11:04 UTC), Some("27 h")),
        (datetime!(2026-02-20 08:04 UTC), Some("22 days")),
    ] {
        let exif = at(satellites);
        let found = of_photos(&facts(&seen[..2], &exif), &job());
        let told: Vec<String> =
            found.iter().filter(|f| f.code == "times-out-of-order").map(|f| en(&f.message)).collect();
        assert_eq!(told.len(), usize::from(hours.is_some()), "{satellites}: {told:?}");
        assert!(hours.is_none_or(|h| told[0].contains(h)), "{told:?}");
    }
}

#[test]
fn blur_and_darkness() {
    let exif = Exif::default();
    let mut all = seen();
    all[1].blur_px = 3.0;
    for marker in &mut all[2].markers {
        marker.contrast = 0.08;
    }
    let findings = of_photos(&facts(&all, &exif), &job());
    let about = |code: &str| -> Vec<&str> {
        findings.iter().filter(|f| f.code == code).filter_map(|f| f.photo.as_deref()).collect()
    };
    assert_eq!(about("photo-blurred"), ["b.jpg"]);
    assert_eq!(about("photo-badly-lit"), ["c.jpg"]);
}

#[test]
fn files_that_are_not_as_the_camera_wrote_them() {
    let seen = seen();
    let exif = Exif::default();
    let plain = Traces {
        edits: Vec::new(),
        compression: Some(1),
        thumbnail_likeness: Some(0.95),
        rendered: Vec::new(),
        steps: None,
    };
    let edited = Traces { edits: vec![Edit::History], ..plain.clone() };
    let other = Traces { compression: Some(2), ..edited.clone() };
    let replaced = Traces { thumbnail_likeness: Some(0.5), ..plain.clone() };
    let told = |second: &Traces| -> Vec<(String, String)> {
        let mut photos = facts(&seen[..2], &exif);
        photos[0].traces = Some(&plain);
        photos[1].traces = Some(second);
        let about = |f: &Finding| ["photo-edited", "thumbnail-differs"].contains(&f.code);
        of_photos(&photos, &job())
            .into_iter()
            .filter(about)
            .map(|f| (f.code.to_owned(), crate::findings::bench::en(&f.message)))
            .collect()
    };
    assert_eq!(told(&plain), []);
    let compressed = "compressed otherwise than the job's other photos";
    assert!(
        told(&edited).len() == 1 && told(&edited)[0].1.contains("history") && !told(&edited)[0].1.contains(compressed)
    );
    assert!(told(&other)[0].1.contains(compressed));
    assert_eq!(told(&replaced)[0].0, "thumbnail-differs");
    // Tables alone tell nothing.
    assert_eq!(told(&Traces { compression: Some(2), ..plain.clone() }), []);
}

#[test]
fn local_times_of_another_day() {
    let seen = seen();
    let at = |text: &str| Exif { taken_local: Some(text.to_owned()), ..Exif::default() };
    let text = "format = \"job/1\"\njob = \"S\"\nsetup = \"s\"\nkit = \"r\"\ntaken = 2026-11-25T00:10:00+01:00\n";
    let dated = JobFile::from_toml(text, "job.toml").unwrap();
    let codes = |exif: &Exif, first: &Exif, job: &JobFile| {
        let mut photos = facts(&seen[..2], first);
        photos[1].exif = exif;
        of_photos(&photos, job).into_iter().filter(|f| f.code == "photo-of-another-day").count()
    };
    let first = at("2026:11:25 00:05:00");
    for (time, days) in [
        ("2026:11:25 00:08:00", 0),
        // Before midnight, half an hour earlier: no other day's work.
        ("2026:11:24 23:40:00", 0),
        ("2026:11:24 09:00:00", 1),
        ("2026:11:26 15:00:00", 1),
        ("no time", 0),
    ] {
        assert_eq!(codes(&at(time), &first, &dated), days, "{time}");
        assert_eq!(codes(&at(time), &first, &job()), days, "{time} against the first photo");
    }
}

#[test]
fn markers_that_the_kit_does_not_have() {
    let exif = Exif::default();
    let told = |photos: &[(usize, &[u32])]| {
        let mut seen = seen();
        for (j, ids) in photos {
            let own = seen[*j].markers[0].clone();
            seen[*j].markers.extend(ids.iter().map(|id| Sighting { id: *id, ..own.clone() }));
        }
        let all = of_photos(&facts(&seen, &exif), &job());
        all.into_iter()
            .filter(|f| f.code == "markers-of-another-kit")
            .map(|f| crate::findings::bench::en(&f.message))
            .collect::<Vec<_>>()
    };
    // One misread marker, one stray print in two photos, a card: nothing of a kit.
    assert!(told(&[(0, &[400])]).is_empty() && told(&[(0, &[400]), (1, &[400])]).is_empty());
    assert!(told(&[(0, &[500, 510, 520]), (1, &[500, 510, 520])]).is_empty());
    assert!(told(&[(0, &[400, 401])]).is_empty());
    assert!(told(&[(0, &[400, 401]), (1, &[400, 401])])[0].contains("400, 401"));
    assert_eq!(told(&[(2, &[400, 401, 402])]).len(), 1);
}
