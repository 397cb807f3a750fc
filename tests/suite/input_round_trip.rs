//! What is written is read back as it was, and no text makes a reader panic.

#![allow(clippy::unwrap_used, reason = "a test may stop where its own helper fails")]

use std::collections::BTreeMap;

use baywitness::camera::{ExifMatch, Lens, LensModel, PerPhoto, Profile, ReadOut};
use baywitness::folder::{Attachment, Calibration, JobFile, MoveEntry, Phase, PhotoEntry, Reading, Vehicle};
use baywitness::input::SourceFile;
use baywitness::marker::{Board, BoardKind, Carrier, Kit, KitFile, Layout, Marker, Role, read_layout};
use baywitness::quantity::{Quantity, Unit};
use baywitness::setup::{
    Check, Datum, Decision, DecisionRule, Evidence, From, Limits, Prerequisite, Procedure, ReferenceLine, Setup, Waiver,
};
use nalgebra::{DMatrix, UnitQuaternion, Vector3};
use proptest::prelude::*;
use proptest::sample::select;

fn config(cases: u32) -> ProptestConfig {
    ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() }
}

/// Names with everything that TOML must escape.
fn name() -> impl Strategy<Value = String> {
    "[a-zA-Z0-9äß\"'\\\\#=._-][a-zA-Z0-9äß\"'\\\\#= ._-]{0,12}[a-z0-9]"
}

fn text() -> impl Strategy<Value = String> {
    "[a-zA-Zäß\"'\\\\#=\n\t ._-]{0,30}[a-z]"
}

fn date() -> impl Strategy<Value = time::Date> {
    (2000..2100i32, 1..=366u16).prop_filter_map("a day that exists", |(y, d)| time::Date::from_ordinal_date(y, d).ok())
}

fn moment() -> impl Strategy<Value = time::OffsetDateTime> {
    (date(), 0..24u8, 0..60u8, 0..60u8, 0..1_000_000_000u32, -14 * 60..14 * 60i32).prop_map(
        |(d, h, m, s, ns, offset)| {
            let offset = time::UtcOffset::from_whole_seconds(offset * 60).unwrap();
            d.with_time(time::Time::from_hms_nano(h, m, s, ns).unwrap()).assume_offset(offset)
        },
    )
}

/// A covariance of full rank with small or large entries.
fn covariance(n: usize) -> impl Strategy<Value = DMatrix<f64>> {
    prop::collection::vec(-1.0..1.0f64, n * n).prop_map(move |v| {
        let a = DMatrix::from_vec(n, n, v);
        let c = &a * a.transpose() + DMatrix::identity(n, n) * 0.01;
        (&c + c.transpose()) * 0.5
    })
}

fn exif() -> impl Strategy<Value = ExifMatch> {
    (prop::option::of(name()), prop::option::of(name()), prop::option::of(1.0..100.0f64))
        .prop_map(|(make, model, focal_length_mm)| ExifMatch { make, model, focal_length_mm })
}

fn camera() -> impl Strategy<Value = Profile> {
    let model = select(vec![LensModel::BrownConrady, LensModel::KannalaBrandt]);
    model.prop_flat_map(|model| {
        (
            name(),
            (2000.0..9000.0f64, 0.9..1.1f64, 100.0..3000.0f64, prop::array::uniform5(-1.0..1.0f64)),
            prop::option::of(covariance(model.parameters())),
            prop::option::of(0.001..2.0f64),
            (0.0..0.1f64, 0.0..50.0f64),
            prop::option::of(exif()),
        )
            .prop_map(
                move |(name, (f, aspect, centre, mut distortion), covariance, u_noise_px, per_photo, exif)| {
                    distortion[model.coefficients()..].fill(0.0);
                    Profile {
                        name,
                        lens: Lens { model, focal_px: [f, f * aspect], centre_px: [centre, centre * 0.8], distortion },
                        image_size_px: [4000, 3000],
                        u_noise_px,
                        covariance,
                        per_photo: PerPhoto { u_focal_relative: per_photo.0, u_centre_px: per_photo.1 },
                        read_out: ReadOut::default(),
                        exif,
                    }
                },
            )
    })
}

fn marker(id: u32) -> impl Strategy<Value = Marker> {
    (
        prop::array::uniform2(5.0..500.0f64),
        prop::array::uniform3(-2000.0..2000.0f64),
        prop::array::uniform3(-3.0..3.0f64),
        prop::option::of(prop::array::uniform3(0.0..1.0f64)),
        prop::option::of(prop::array::uniform3(0.0..1.0f64)),
        prop::option::of(0.0..1.0f64),
    )
        .prop_map(move |(size_mm, centre, turn, u_centre_mm, u_turn_deg, u_size_mm)| {
            let rotation = UnitQuaternion::from_scaled_axis(Vector3::from(turn));
            let (right, up) = (rotation * Vector3::x(), rotation * Vector3::y());
            Marker { id, size_mm, centre_mm: Vector3::from(centre), right, up, u_centre_mm, u_turn_deg, u_size_mm }
        })
}

fn kit() -> impl Strategy<Value = Kit> {
    let carriers = Role::ALL.iter().enumerate().map(|(k, role)| {
        let first = if *role == Role::Card { 500 } else { 20 * k as u32 };
        let markers: Vec<_> = (0..3).map(|i| marker(first + i)).collect();
        (0.0..5.0f64, prop::array::uniform3(0.0..5.0f64), any::<bool>(), markers).prop_map(
            move |(mm, deg, on, markers)| Carrier {
                name: format!("{}-{k}", role.name()),
                role: *role,
                u_seating_mm: mm,
                u_seating_deg: deg,
                on_centreline: on && *role == Role::Nose,
                markers,
            },
        )
    });
    (
        name(),
        0.0..5.0f64,
        0.0..5.0f64,
        0.0..0.01f64,
        prop::option::of(name()),
        prop::option::of(date()),
        carriers.collect::<Vec<_>>(),
    )
        .prop_map(|(name, u_layout_mm, u_turn_deg, u_scale_relative, serial, survey_due, carriers)| Kit {
            name,
            u_layout_mm,
            u_turn_deg,
            u_scale_relative,
            u_aspect_relative: u_scale_relative,
            serial,
            survey_due,
            carriers,
            layout: None,
        })
}

fn check() -> impl Strategy<Value = Check> {
    let points = vec![From::Nose, From::FrontAxle, From::RearAxle, From::Datum("sensor".into())];
    (
        select(Quantity::ALL.to_vec()),
        select(points),
        (-100.0..100.0f64, 0.1..50.0f64, 0.1..50.0f64, 0..3u8),
        (prop::option::of(text()), any::<bool>(), prop::option::of(name())),
        prop::option::of(select(ReferenceLine::ALL.to_vec())),
        any::<bool>(),
    )
        .prop_map(|(quantity, from, (nominal, below, above, sides), (basis, inches, target), line, by_reading)| {
            let from = match quantity {
                Quantity::Distance | Quantity::Range => Some(from),
                Quantity::HeightFromNose | Quantity::LateralFromNose => Some(From::Nose),
                _ => None,
            };
            Check {
                quantity,
                from,
                nominal,
                lower: (sides != 1).then_some(nominal - below),
                upper: (sides != 2).then_some(nominal + above),
                tolerance_basis: basis,
                in_inches: inches && quantity.unit() == Unit::Millimetre,
                target: target.filter(|_| quantity.is_of_target()),
                reference_line: line,
                step: Some("level".into()).filter(|_| quantity.is_of_target()),
                evidence: if by_reading || quantity.is_reading_only() { Evidence::Reading } else { Evidence::Photos },
            }
        })
}

fn setup() -> impl Strategy<Value = Setup> {
    let rules = vec![DecisionRule::Guarded, DecisionRule::Simple, DecisionRule::Binary, DecisionRule::FourWay];
    let procedure = (prop::option::of(text()), prop::option::of(date())).prop_map(|(document, opened)| Procedure {
        document,
        opened,
        ..Procedure::default()
    });
    (
        (name(), text(), text(), select(ReferenceLine::ALL.to_vec())),
        (select(rules), 0.8..0.999f64),
        prop::option::of(procedure),
        prop::option::of(text()),
        check(),
        prop::option::of(0.1..5.0f64),
    )
        .prop_map(|((name, title, source, line), (rule, p), procedure, because, check, slope)| Setup {
            name,
            title,
            source,
            reference_line: line,
            decision: Decision { rule, conformance_probability: p, photos_after_move: 1 + (p * 1e6) as usize % 4 },
            procedure,
            steps: vec!["level".into(), "tilted".into()],
            datums: vec![Datum {
                name: "sensor".into(),
                carrier: "nose".into(),
                offset_mm: [0.0, 0.1, -35.0],
                u_mm: 1.0,
            }],
            prerequisites: vec![Prerequisite { id: "tyres".into(), text: "Tyres".into(), required: false }],
            waived: because
                .filter(|_| check.quantity != Quantity::Height)
                .map(|because| Waiver { quantity: Quantity::Height, because })
                .into_iter()
                .collect(),
            checks: vec![check],
            limits: Limits { floor_slope_deg: slope, ..Limits::default() },
            credentials_required: p > 0.75,
        })
}

fn reading() -> impl Strategy<Value = Reading> {
    (select(Quantity::ALL.to_vec()), -100.0..100.0f64, 0.001..10.0f64, prop::option::of(name()), any::<bool>())
        .prop_map(|(quantity, value, u, instrument, used)| Reading {
            quantity,
            from: matches!(quantity, Quantity::Distance | Quantity::Range).then_some(From::Nose),
            target: quantity.is_of_target().then(|| "stand".to_owned()),
            step: (quantity.is_of_target() && used).then(|| "level".to_owned()),
            value,
            u,
            instrument,
            use_in_adjustment: used
                && !quantity.is_reading_only()
                && baywitness::marker::Role::of_arch_height(quantity).is_none(),
        })
}

fn entries(files: std::collections::BTreeSet<String>) -> Vec<PhotoEntry> {
    let entry = |(i, file): (usize, String)| PhotoEntry {
        file,
        step: (i % 2 == 0).then(|| "level".to_owned()),
        phase: (i > 0).then_some(Phase::After),
        after_move: i as u32 / 2,
    };
    files.into_iter().enumerate().map(entry).collect()
}

fn job() -> impl Strategy<Value = JobFile> {
    let vehicle =
        (prop::option::of(text()), prop::option::of(1.0..5000.0f64), 0.1..10.0f64).prop_map(|(d, w, u)| Vehicle {
            description: d,
            vin: Some("11111111111111111".into()),
            wheelbase_mm: w,
            u_wheelbase_mm: u,
            rear_track_mm: w,
            u_rear_track_mm: u,
            u_front_track_mm: u,
            ..Vehicle::default()
        });
    let attested = prop_oneof![any::<bool>().prop_map(Into::into), text().prop_map(serde_json::Value::from)];
    (
        (name(), name(), name(), prop::option::of(name())),
        prop::option::of(prop::collection::btree_set(text(), 1..4)),
        (prop::option::of(1..9u32), prop::option::of(moment()), prop::option::of(date())),
        vehicle,
        prop::collection::btree_map("[a-z\"'\\\\ #.=]{0,8}[a-z\"]", attested, 0..3),
        prop::collection::vec(reading(), 0..3),
        prop::option::of((moment(), -5.0..5.0f64)),
    )
        .prop_map(
            |((job, setup, kit, camera), photos, (attempt, taken, keep), vehicle, prerequisites, readings, at)| {
                JobFile {
                    job,
                    setup,
                    kit,
                    stand: camera.clone(),
                    moves: attempt
                        .map(|a| MoveEntry { turned: [("the crank".to_owned(), f64::from(a) / 4.0)].into() })
                        .into_iter()
                        .collect(),
                    camera,
                    photos: photos.clone().filter(|_| attempt.is_some()).map(|p| p.into_iter().collect()),
                    photo_entries: photos.filter(|_| attempt.is_none()).map(entries),
                    series: None,
                    attempt,
                    card: attempt.map(|a| 500 + a).into_iter().collect(),
                    technician: Some("T1".into()),
                    bay: None,
                    taken,
                    keep_until: keep,
                    language: keep.map(|_| baywitness::words::Language::French),
                    rendered: false,
                    vehicle,
                    prerequisites,
                    readings,
                    attachments: vec![Attachment { file: "a.pdf".into(), kind: "other".into() }],
                    calibration: at.map(|(at, angle)| Calibration {
                        result: "not-run".into(),
                        at: Some(at),
                        reported_azimuth_deg: Some(angle),
                        reported_elevation_deg: None,
                    }),
                }
            },
        )
}

fn board() -> impl Strategy<Value = Board> {
    let markers =
        (1..10u32, 1..10u32, 0..400u32, 1.0..100.0f64, 1.0..50.0f64).prop_map(|(columns, rows, first_id, s, g)| {
            BoardKind::Markers { columns, rows, first_id, size_mm: s, gap_mm: g }
        });
    let chessboard = (prop::array::uniform2(2..20u32), 1.0..100.0f64)
        .prop_map(|(inner_corners, square_mm)| BoardKind::Chessboard { inner_corners, square_mm });
    (prop_oneof![markers, chessboard], 0.0..0.01f64)
        .prop_map(|(kind, u_scale_relative)| Board { kind, u_scale_relative })
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * (1.0 + a.abs())
}

proptest! {
    #![proptest_config(config(64))]

    #[test]
    fn cameras_survive(camera in camera()) {
        let text = camera.to_toml();
        prop_assert_eq!(Profile::from_toml(&text, "camera.toml").unwrap(), camera, "{}", text);
    }

    /// Axes are made exactly unit and square again, so they agree to rounding.
    #[test]
    fn kits_survive(kit in kit()) {
        let read = KitFile::from_toml(&kit.to_toml(Some("layout.json")), "kit.toml").unwrap();
        prop_assert_eq!(read.layout.as_deref(), Some("layout.json"));
        let mut back = read.kit;
        for (carrier, wanted) in back.carriers.iter_mut().zip(&kit.carriers) {
            for (marker, wanted) in carrier.markers.iter_mut().zip(&wanted.markers) {
                prop_assert!((marker.right - wanted.right).norm() < 1e-14 && (marker.up - wanted.up).norm() < 1e-14);
                (marker.right, marker.up) = (wanted.right, wanted.up);
            }
        }
        prop_assert_eq!(back, kit);
    }

    #[test]
    fn layouts_survive(covariance in covariance(12), kit in kit()) {
        let ids = vec![kit.carriers[0].markers[0].id, kit.carriers[3].markers[1].id];
        let layout = Layout { ids, covariance, with_sizes: None };
        let file = SourceFile::new("layout.json", layout.to_json("00ff").into_bytes());
        prop_assert_eq!(read_layout(&file, &kit, "00ff").unwrap(), layout);
    }

    /// Inches are divided and multiplied by 25.4 on the way.
    #[test]
    fn setups_survive(setup in setup()) {
        let text = setup.to_toml();
        let mut back = Setup::from_toml(&text, "setup.toml").unwrap();
        let (read, wanted) = (&mut back.checks[0], &setup.checks[0]);
        prop_assert!(close(read.nominal, wanted.nominal), "{}", text);
        prop_assert!(close(read.lower.unwrap_or(0.0), wanted.lower.unwrap_or(0.0)), "{}", text);
        prop_assert!(close(read.upper.unwrap_or(0.0), wanted.upper.unwrap_or(0.0)), "{}", text);
        (read.nominal, read.lower, read.upper) = (wanted.nominal, wanted.lower, wanted.upper);
        prop_assert_eq!(back, setup, "{}", text);
    }

    #[test]
    fn jobs_survive(job in job()) {
        let text = job.to_toml();
        prop_assert_eq!(JobFile::from_toml(&text, "job.toml").unwrap(), job, "{}", text);
    }

    #[test]
    fn boards_survive(board in board()) {
        let text = board.to_toml();
        prop_assert_eq!(Board::from_toml(&text, "board.toml").unwrap(), board, "{}", text);
    }
}

/// Every reader on one text: each may refuse it, none may panic, and no error
/// is longer than a person reads.
fn read_with_all(bytes: &[u8]) {
    let file = SourceFile::new("input.toml", bytes.to_vec());
    let text = match file.text() {
        Ok(text) => text,
        Err(e) => return assert!(e.place().is_some()),
    };
    let kit = KitFile::from_toml(text, "kit.toml");
    let errors = [
        Profile::from_toml(text, "camera.toml").err(),
        Setup::from_toml(text, "setup.toml").err(),
        JobFile::from_toml(text, "job.toml").err(),
        Board::from_toml(text, "board.toml").err(),
        kit.err(),
    ];
    for error in errors.into_iter().flatten() {
        let told = error.to_string();
        assert!(told.len() < 3000, "{told}");
        assert!(error.place().is_some(), "{told}");
    }
}

fn good_texts() -> Vec<String> {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("models");
    ["setups/demo-front-radar.toml", "kits/demo-bay.toml", "cameras/demo-phone.toml"]
        .iter()
        .map(|name| std::fs::read_to_string(folder.join(name)).unwrap())
        .chain([
            "format = \"job/1\"\njob = \"a\"\nsetup = \"s\"\nkit = \"r\"\ntaken = 2026-11-25T10:30:00Z\n\
             [vehicle]\nwheelbase_mm = 2700.0\n[prerequisites]\nx = true\n[[reading]]\nquantity = \"yaw\"\n\
             value = 0.1\ninstrument = \"alignment\"\n"
                .to_owned(),
            "format = \"board/1\"\nkind = \"chessboard\"\ninner_corners = [9, 6]\nsquare_mm = 25.0\n".to_owned(),
        ])
        .collect()
}

proptest! {
    #![proptest_config(config(400))]

    #[test]
    fn random_bytes_never_panic(bytes in prop::collection::vec(any::<u8>(), 0..300)) {
        read_with_all(&bytes);
    }

    #[test]
    fn random_toml_never_panics(
        format in select(vec!["kit/1", "setup/1", "job/1", "camera/1", "board/1"]),
        body in "([a-z_]{1,9}( = |\\.|\n|\\[\\[|\\]\\]|\\{|\\}|[0-9e.-]{1,6}|\"|nan|inf|true|, ){1,4}){0,12}",
    ) {
        read_with_all(format!("format = \"{format}\"\n{body}").as_bytes());
    }

    #[test]
    fn damaged_files_never_panic(
        which in 0..5usize,
        edits in prop::collection::vec((any::<prop::sample::Index>(), any::<u8>(), 0..3u8), 1..6),
    ) {
        let mut bytes = good_texts()[which].clone().into_bytes();
        for (at, byte, kind) in edits {
            let at = at.index(bytes.len());
            match kind {
                0 => bytes[at] = byte,
                1 => { bytes.remove(at); }
                _ => bytes.insert(at, byte),
            }
        }
        read_with_all(&bytes);
    }

    /// Swapping values between lines keeps the file TOML and makes it wrong.
    #[test]
    fn shuffled_values_never_panic(which in 0..5usize, swaps in prop::collection::vec(any::<[prop::sample::Index; 2]>(), 1..4)) {
        let text = &good_texts()[which];
        let mut lines: Vec<(String, String)> = text
            .lines()
            .map(|l| l.split_once(" = ").map_or((l.to_owned(), String::new()), |(k, v)| (k.to_owned(), v.to_owned())))
            .collect();
        for [a, b] in swaps {
            let (a, b) = (a.index(lines.len()), b.index(lines.len()));
            let kept = lines[a].1.clone();
            lines[a].1 = lines[b].1.clone();
            lines[b].1 = kept;
        }
        let shuffled: Vec<String> =
            lines.iter().map(|(k, v)| if v.is_empty() { k.clone() } else { format!("{k} = {v}") }).collect();
        read_with_all(shuffled.join("\n").as_bytes());
    }

    #[test]
    fn random_layouts_never_panic(body in "\\{(\"(format|ids|covariance|kit_sha256)\":(\"layout/1\"|[0-9]{1,3}|\\[|\\]|null|,|1e999){1,3},?){0,5}\\}?") {
        let kit = KitFile::from_toml(&good_texts()[1], "kit.toml").unwrap().kit;
        let error = read_layout(&SourceFile::new("layout.json", body.into_bytes()), &kit, "00").unwrap_err();
        prop_assert!(error.place().is_some());
    }
}

/// Absurd sizes: no reader may need more than a moment.
#[test]
fn large_hostile_files_end_quickly() {
    let start = std::time::Instant::now();
    let many_keys: String = (0..100_000).map(|i| format!("k{i} = {i}\n")).collect();
    let many_tables = "[[carrier]]\n".repeat(100_000);
    let many_ids = format!(
        "[[carrier]]\nname = \"a\"\nrole = \"target\"\n{}",
        "[[carrier.marker]]\nid = 1\nsize_mm = 1\ncentre_mm = [0, 0, 0]\nright = [0, 1, 0]\nup = [0, 0, 1]\n"
            .repeat(20_000)
    );
    let many_carriers: String = (0..20_000)
        .map(|i| {
            format!(
                "[[carrier]]\nname = \"c{i}\"\nrole = \"floor\"\nmarker = [{{id = {}, size_mm = 1, \
                 centre_mm = [0, 0, 0], right = [0, 1, 0], up = [0, 0, 1]}}]\n",
                i % 587
            )
        })
        .collect();
    let long_key = format!("{} = 1\n", "k".repeat(1_000_000));
    let long_value = format!("name = \"{}\"\n", "k".repeat(1_000_000));
    for body in [many_carriers, many_keys, many_tables, many_ids, long_key, long_value] {
        read_with_all(format!("format = \"kit/1\"\nfamily = \"36h11\"\n{body}").as_bytes());
    }
    assert!(start.elapsed().as_secs() < 20, "{:?}", start.elapsed());
}

/// What the reader of `prerequisites` gives back keeps its kind.
#[test]
fn attested_values_keep_their_kind() {
    let job = JobFile::from_toml(
        "format = \"job/1\"\njob = \"a\"\nsetup = \"s\"\nkit = \"r\"\n[prerequisites]\na = true\nb = \"12 bar\"\n",
        "job.toml",
    );
    let wanted = BTreeMap::from([("a".to_owned(), true.into()), ("b".to_owned(), "12 bar".into())]);
    assert_eq!(job.unwrap().prerequisites, wanted);
}
