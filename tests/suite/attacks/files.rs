//! Attacks on what is typed or handed in beside the photos: set-up sheet, kit,
//! camera, sizes, readings, names.

use baywitness::record::{JobRecord, Level, Verdict};

use super::{attacked, codes, judged, named, rewrite, sample, stopped, unseen};

/// Lines `key = [a, b, ...]` with every number times a factor.
fn scaled(text: &str, key: &str, by: f64) -> String {
    let line = |line: &str| match line.split_once(" = [") {
        Some((name, numbers)) if name == key => {
            let numbers = numbers.trim_end_matches(']').split(',').map(|n| n.trim().parse::<f64>().unwrap() * by);
            format!("{key} = [{}]\n", numbers.map(|n| format!("{n:.4}")).collect::<Vec<_>>().join(", "))
        }
        _ => format!("{line}\n"),
    };
    text.lines().map(line).collect()
}

fn digest<'a>(record: &'a JobRecord, role: &str) -> &'a str {
    &record.inputs.iter().find(|i| i.role == role).unwrap().sha256
}

fn value(record: &JobRecord, quantity: &str) -> f64 {
    record.checks.iter().find(|c| c.quantity == quantity).unwrap().value.unwrap()
}

/// What was outside is within by a sheet of one's own. Nothing can know that
/// this sheet is wrong; which sheet it was is on record, with its digest.
#[test]
fn a_sheet_with_wider_limits() {
    let record = attacked("wrong", |job| {
        rewrite(&job.join("setup.toml"), |text| {
            let line = |line: &str| match line.split_once(" = ") {
                Some((key @ ("lower" | "upper"), number)) => {
                    let wider = if key == "lower" { -30.0 } else { 30.0 };
                    format!("{key} = {:.1}\n", number.parse::<f64>().unwrap() + wider)
                }
                _ => format!("{line}\n"),
            };
            text.lines().map(line).collect()
        });
    });
    unseen(&record);
    assert_ne!(digest(&record, "setup"), digest(&judged(&sample("good")), "setup"));
}

/// Markers as large as nobody printed them, where they sit.
#[test]
fn a_kit_file_with_other_marker_sizes() {
    stopped(
        &attacked("good", |job| rewrite(&job.join("kit.toml"), |text| scaled(text, "size_xy_mm", 1.02))),
        "print-scale-wrong",
    );
}

#[test]
fn a_kit_file_with_other_sizes_on_the_stand_alone() {
    let record = attacked("good", |job| {
        rewrite(&job.join("kit.toml"), |text| text.replace("[150.0, 150.0]", "[151.5, 151.5]"));
    });
    stopped(&record, "print-scale-wrong");
}

/// Everything larger alike: photos have no scale of their own. The laser has.
fn larger(by: f64, reading: bool) -> JobRecord {
    attacked("good", |job| {
        rewrite(&job.join("kit.toml"), |text| scaled(&scaled(text, "size_xy_mm", by), "centre_mm", by));
        if !reading {
            rewrite(&job.join("job.toml"), without_reading);
        }
    })
}

fn without_reading(text: &str) -> String {
    let (before, rest) = text.split_once("[[reading]]").unwrap();
    let (_, after) = rest.split_once("\n\n").unwrap();
    before.to_owned() + after
}

#[test]
fn a_whole_kit_file_scaled_against_a_laser() {
    named(&larger(1.003, true), "reading-disagrees");
}

#[test]
fn a_whole_kit_file_scaled_and_nothing_measured_otherwise() {
    let honest = judged(&sample("good"));
    let record = larger(1.003, false);
    unseen(&record);
    let share = value(&record, "distance") / value(&honest, "distance");
    assert!((share - 1.003).abs() < 3e-4, "the distance grows alike: {share}");
    assert_ne!(digest(&record, "kit"), digest(&honest, "kit"));
}

/// Where a body's frame is said to lie in its markers is the kit file's alone.
#[test]
fn a_stand_said_to_lie_elsewhere_in_its_markers() {
    let honest = judged(&sample("good"));
    let record = attacked("good", |job| {
        rewrite(&job.join("job.toml"), without_reading);
        rewrite(&job.join("kit.toml"), |text| {
            let (stand, rest) = text.split_once("\n[[carrier]]\nname = \"rear-left\"").unwrap();
            stand
                .replace("centre_mm = [34.0,", "centre_mm = [38.0,")
                .replace("centre_mm = [-62.0,", "centre_mm = [-58.0,")
                + "\n[[carrier]]\nname = \"rear-left\""
                + rest
        });
    });
    unseen(&record);
    let nearer = value(&record, "distance") - value(&honest, "distance");
    assert!((nearer.abs() - 4.0).abs() < 0.3, "{nearer}");
    assert_ne!(digest(&record, "kit"), digest(&honest, "kit"));
}

/// The stand is turned, and the file has the markers of its left end where a stand that is square would have them.
#[test]
fn some_of_the_stands_markers_shifted_in_the_kit_file() {
    let record = attacked("good", |job| {
        rewrite(&job.join("job.toml"), without_reading);
        rewrite(&job.join("kit.toml"), |text| {
            text.replace("centre_mm = [34.0, 590.0,", "centre_mm = [40.0, 590.0,")
                .replace("centre_mm = [34.0, 300.0,", "centre_mm = [40.0, 300.0,")
        });
    });
    assert_eq!(record.verdict, Verdict::NotProven);
    let found = record.findings.iter().find(|f| f.code == "marker-displaced").unwrap();
    assert_eq!((found.level, found.carrier.as_deref()), (Level::Stop, Some("stand")));
    // An end that is bent by a millimetre is not told from prints glued so, and moves nothing by much.
    let honest = judged(&sample("good"));
    let record = attacked("good", |job| {
        rewrite(&job.join("kit.toml"), |text| text.replace("centre_mm = [34.0, 590.0,", "centre_mm = [34.3, 590.0,"));
    });
    assert_eq!(record.verdict, Verdict::Within);
    assert!((value(&record, "yaw") - value(&honest, "yaw")).abs() < 0.02);
}

/// Sizes changed one way only: width over height is the photos' to say.
#[test]
fn marker_heights_changed_in_the_kit_file() {
    let honest = judged(&sample("good"));
    let record = attacked("good", |job| {
        rewrite(&job.join("kit.toml"), |text| {
            ["150.0", "120.0", "110.0", "170.0", "70.0"].into_iter().fold(text.to_owned(), |text, size| {
                let lower = size.parse::<f64>().unwrap() * 0.997;
                text.replace(&format!("[{size}, {size}]"), &format!("[{size}, {lower:.2}]"))
            })
        });
    });
    for (quantity, least) in [("distance", 2.0), ("height", 0.6), ("yaw", 0.02)] {
        let moved = value(&record, quantity) - value(&honest, quantity);
        assert!(moved.abs() < least, "{quantity} moves by {moved}");
    }
}

/// Uncertainties of nothing: figures are said to be known better than anyone can know them.
#[test]
fn a_kit_said_to_be_perfect() {
    let honest = judged(&sample("good"));
    let record = attacked("good", |job| {
        rewrite(&job.join("kit.toml"), |text| {
            let zero = |text: String, key: &str, value: &str| {
                text.replace(&format!("{key} = {value}"), &format!("{key} = 0.0"))
            };
            let text = zero(text.to_owned(), "u_layout_mm", "0.15");
            zero(zero(text, "u_turn_deg", "0.03"), "u_scale_relative", "0.0003")
        });
    });
    unseen(&record);
    assert_ne!(digest(&record, "kit"), digest(&honest, "kit"));
}

/// What would contradict a typed length is not in the kit file any more.
#[test]
fn a_vehicle_typed_shorter_and_its_nose_taken_out_of_the_kit() {
    let honest = judged(&sample("good"));
    let record = attacked("good", |job| {
        rewrite(&job.join("job.toml"), |text| {
            without_reading(&text.replace("nose_from_rear_axle_mm = 3490.0", "nose_from_rear_axle_mm = 3487.0"))
        });
        rewrite(&job.join("kit.toml"), |text| text.split_once("\n[[carrier]]\nname = \"nose\"").unwrap().0.to_owned());
    });
    unseen(&record);
    let farther = value(&record, "distance") - value(&honest, "distance");
    assert!((1.0..5.0).contains(&farther), "{farther}");
}

#[test]
fn another_cameras_file() {
    stopped(
        &attacked("good", |job| rewrite(&job.join("camera.toml"), |text| scaled(text, "focal_px", 1.06))),
        "camera-mismatch",
    );
}

/// Where the nose is marked, the typed length of the vehicle moves nothing, and is contradicted.
#[test]
fn a_vehicle_typed_shorter() {
    let honest = judged(&sample("wrong"));
    let record = attacked("wrong", |job| {
        rewrite(&job.join("job.toml"), |text| {
            text.replace("nose_from_rear_axle_mm = 3490.0", "nose_from_rear_axle_mm = 3465.0")
        });
    });
    assert_eq!(record.verdict, Verdict::Outside);
    assert_eq!(value(&record, "distance").to_bits(), value(&honest, "distance").to_bits());
    named(&record, "vehicle-sizes-disagree");
}

/// A stand set to where another vehicle's length would have it, by what is typed of both.
#[test]
fn the_sizes_of_another_vehicle() {
    let typed = |key: &str, typed: &str| {
        attacked("good", |job| {
            rewrite(&job.join("job.toml"), |text| text.replace(key, typed));
        })
    };
    stopped(&typed("nose_from_rear_axle_mm = 3490.0", "nose_from_rear_axle_mm = 3450.0"), "vehicle-sizes-disagree");
    stopped(&typed("wheelbase_mm = 2640.0", "wheelbase_mm = 2690.0"), "vehicle-sizes-disagree");
    stopped(&typed("wheelbase_mm = 2640.0", "rear_track_mm = 1740.0"), "vehicle-sizes-disagree");
    let honest =
        typed("wheelbase_mm = 2640.0", "wheelbase_mm = 2645.0\nrear_track_mm = 1695.0\nfront_track_mm = 1700.0");
    assert_eq!((honest.verdict, codes(&honest).len()), (Verdict::Within, 0), "{:?}", codes(&honest));
}

/// A key that was not hit, metres for millimetres: nobody is sent to the plates or to take photos again.
#[test]
fn a_size_typed_with_a_slip() {
    let typed = |size: &str| {
        let record = attacked("good", |job| {
            rewrite(&job.join("job.toml"), |text| {
                text.replace("wheelbase_mm = 2640.0", &format!("wheelbase_mm = {size}"))
            });
        });
        stopped(&record, "vehicle-sizes-disagree");
        let said = record.findings.iter().find(|f| f.code == "vehicle-sizes-disagree").unwrap().message.clone();
        let report = baywitness::report::text(&record, &baywitness::report::TextOptions::default());
        (said, report.split_whitespace().collect::<Vec<_>>().join(" "))
    };
    for (size, shown) in [("264.0", " 264 mm were typed"), ("2.64", " 2.64 mm were typed")] {
        let (said, report) = typed(size);
        assert!(said.contains(shown) && said.contains("slip of the keyboard"), "{said}");
        assert!(report.contains("Verify the job again.") && !report.contains("Take the photos again."), "{report}");
    }
    // Another vehicle's, or a plate off its hub: by less than a tenth.
    let (said, _) = typed("2690.0");
    assert!(said.contains("2690 mm were typed: a wheel plate sits off its hub"), "{said}");
}

#[test]
fn a_reading_that_nobody_read() {
    let record = attacked("good", |job| {
        rewrite(&job.join("job.toml"), |text| text.replace("value = 1502.0", "value = 1515.0"));
    });
    named(&record, "reading-disagrees");
}

/// The photos show wheels and a stand; whose they are is typed.
#[test]
fn the_name_of_another_vehicle() {
    let record = attacked("good", |job| {
        rewrite(&job.join("job.toml"), |text| {
            text.replace("invented small hatchback", "invented van of somebody else").replace("SAMPLE-GOOD", "OTHER")
        });
    });
    unseen(&record);
}

/// What a sheet asks for and nobody can see is typed.
#[test]
fn a_prerequisite_ticked_and_not_done() {
    let honest = attacked("good", |job| {
        rewrite(&job.join("job.toml"), |text| text.replace("steering_straight = true", "steering_straight = false"));
    });
    named(&honest, "prerequisite-not-met");
    unseen(&judged(&sample("good")));
}
