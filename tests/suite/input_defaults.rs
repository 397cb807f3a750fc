//! What a file leaves out, and what a reader makes of what it says.

#![allow(
    clippy::unwrap_used,
    clippy::float_cmp,
    reason = "a helper may stop the test; values are read as they were written"
)]

use baywitness::camera::Profile;
use baywitness::folder::JobFile;
use baywitness::marker::{Kit, KitFile};
use baywitness::quantity::Quantity;
use baywitness::setup::{DecisionRule, Evidence, From, Setup};

fn kit(carrier: &str, axes: &str) -> Result<Kit, String> {
    let text = format!(
        "format = \"kit/1\"\nname = \"r\"\nfamily = \"36h11\"\n[[carrier]]\nname = \"c\"\n{carrier}\n\
         [[carrier.marker]]\nid = 1\nsize_mm = 100\ncentre_mm = [0, 0, 0]\n{axes}\n"
    );
    KitFile::from_toml(&text, "kit.toml").map(|f| f.kit).map_err(|e| e.to_string())
}

const FORWARD: &str = "right = [0, 1, 0]\nup = [0, 0, 1]";

#[test]
fn kits_have_the_defaults_of_the_format() {
    let stand = kit("role = \"target\"", FORWARD).unwrap();
    assert_eq!((stand.u_layout_mm, stand.u_turn_deg, stand.u_scale_relative), (0.3, 0.03, 0.0005));
    assert_eq!((stand.carriers[0].u_seating_mm, stand.carriers[0].u_seating_deg), (0.0, [0.0; 3]));
    let wheel = kit("role = \"front_left_wheel\"", FORWARD).unwrap();
    assert_eq!((wheel.carriers[0].u_seating_mm, wheel.carriers[0].u_seating_deg), (0.5, [0.1; 3]));
    let exact = kit("role = \"front_left_wheel\"\nu_seating_mm = 0\nu_seating_deg = [0, 0, 0.2]", FORWARD).unwrap();
    assert_eq!((exact.carriers[0].u_seating_mm, exact.carriers[0].u_seating_deg), (0.0, [0.0, 0.0, 0.2]));
    let nose = kit("role = \"nose\"\non_centreline = true", FORWARD).unwrap();
    assert!(nose.carriers[0].on_centreline);
}

#[test]
fn rounded_axes_are_put_right_and_wrong_ones_refused() {
    let rounded = kit("role = \"target\"", "right = [0.7071, 0.7071, 0]\nup = [0.0004, 0, 1]").unwrap();
    let marker = &rounded.carriers[0].markers[0];
    assert!((marker.right.norm() - 1.0).abs() < 1e-15 && (marker.up.norm() - 1.0).abs() < 1e-15);
    assert!(marker.right.dot(&marker.up).abs() < 1e-15);
    assert!((marker.right.x - 0.5_f64.sqrt()).abs() < 1e-15);
    let askew = kit("role = \"target\"", "right = [0, 1, 0]\nup = [0, 0.0015, 1]").unwrap_err();
    assert!(askew.contains("89.91 deg"), "{askew}");
    let long = kit("role = \"target\"", "right = [0, 1.0011, 0]\nup = [0, 0, 1]").unwrap_err();
    assert!(long.contains("1.0011"), "{long}");
}

#[test]
fn job_cards_have_their_own_ids() {
    let card = |id: u32| {
        let text = kit("role = \"card\"", FORWARD).unwrap_err();
        assert!(text.contains("1 on a marker holder of role card"), "{text}");
        KitFile::from_toml(
            &format!(
                "format = \"kit/1\"\nname = \"r\"\nfamily = \"36h11\"\n[[carrier]]\nname = \"c\"\nrole = \"card\"\n\
                 marker = [{{id = {id}, size_mm = 9, centre_mm = [0, 0, 0], right = [0, 1, 0], up = [0, 0, 1]}}]\n"
            ),
            "kit.toml",
        )
    };
    assert!(card(500).is_ok() && card(586).is_ok());
    assert!(card(499).is_err() && card(587).is_err());
}

fn setup(check: &str) -> Result<Setup, String> {
    let text = format!(
        "format = \"setup/1\"\nname = \"s\"\ntitle = \"t\"\nsource = \"invented\"\nreference_line = \"centreline\"\n\
         [[check]]\n{check}\n"
    );
    Setup::from_toml(&text, "setup.toml").map_err(|e| e.to_string())
}

#[test]
fn a_plain_sheet_is_guarded_at_95_percent() {
    let sheet = setup("quantity = \"yaw\"\nnominal = 0\ntolerance = 0.5").unwrap();
    assert_eq!((sheet.decision.rule, sheet.decision.conformance_probability), (DecisionRule::Guarded, 0.95));
    let check = &sheet.checks[0];
    assert_eq!((check.lower, check.upper), (Some(-0.5), Some(0.5)));
    assert_eq!((check.evidence, check.reference_line, check.in_inches), (Evidence::Photos, None, false));
}

/// The international inch is 25.4 mm exactly.
#[test]
fn inches_become_millimetres() {
    let sheet =
        setup("quantity = \"distance\"\nfrom = \"nose\"\nunit = \"in\"\nnominal = 59\nlower = 58.5\nupper = 60")
            .unwrap();
    let check = &sheet.checks[0];
    assert!(check.in_inches);
    assert_eq!(check.from, Some(From::Nose));
    assert!((check.nominal - 1498.6).abs() < 1e-9);
    assert!((check.lower.unwrap() - 1485.9).abs() < 1e-9 && (check.upper.unwrap() - 1524.0).abs() < 1e-9);
    let sheet =
        setup("quantity = \"distance\"\nfrom = \"nose\"\nunit = \"in\"\nnominal = 59\ntolerance = 0.5").unwrap();
    assert!((sheet.checks[0].upper.unwrap() - 59.5 * 25.4).abs() < 1e-9);
}

#[test]
fn one_limit_is_enough() {
    let sheet = setup("quantity = \"setback\"\nnominal = 0\nupper = 5").unwrap();
    assert_eq!((sheet.checks[0].lower, sheet.checks[0].upper), (None, Some(5.0)));
}

#[test]
fn what_only_an_instrument_reads_is_decided_by_the_reading() {
    let sheet =
        setup("quantity = \"target_tilt_gravity\"\nevidence = \"reading\"\nnominal = 2\ntolerance = 0.5").unwrap();
    assert_eq!((sheet.checks[0].quantity, sheet.checks[0].evidence), (Quantity::TargetTiltGravity, Evidence::Reading));
}

/// The same quantity may be checked twice where something tells the two apart.
#[test]
fn two_checks_of_a_quantity_may_differ_in_line_or_datum() {
    let two = |extra: &str| {
        setup(&format!(
            "quantity = \"distance\"\nfrom = \"nose\"\nnominal = 0\ntolerance = 1\n[[check]]\n\
             quantity = \"distance\"\nnominal = 0\ntolerance = 1\n{extra}"
        ))
    };
    assert!(two("from = \"nose\"").unwrap_err().contains("already checked by check[0]"));
    assert!(two("from = \"nose\"\nreference_line = \"centreline\"").is_err(), "that is the sheet's line");
    assert!(two("from = \"rear_axle\"").is_ok());
    assert!(two("from = \"nose\"\nreference_line = \"thrust_line\"").is_ok());
}

fn job(more: &str) -> Result<JobFile, String> {
    let text = format!("format = \"job/1\"\njob = \"D-1\"\nsetup = \"s\"\nkit = \"r\"\n{more}\n");
    JobFile::from_toml(&text, "job.toml").map_err(|e| e.to_string())
}

#[test]
fn jobs_have_the_defaults_of_the_format() {
    let plain = job("").unwrap();
    assert_eq!(plain.vehicle.u_wheelbase_mm, 3.0);
    assert_eq!(plain.vehicle.u_nose_from_rear_axle_mm, 3.0);
    assert_eq!(plain.vehicle.u_floor_below_hub_mm, 3.0);
    assert_eq!((plain.vehicle.u_rear_track_mm, plain.vehicle.u_front_track_mm), (3.0, 3.0));
    let typed = job("[vehicle]\nrear_track_mm = 1690.0\nu_front_track_mm = 2.0").unwrap().vehicle;
    assert_eq!((typed.rear_track_mm, typed.front_track_mm, typed.u_front_track_mm), (Some(1690.0), None, 2.0));
    assert!(plain.photos.is_none() && plain.camera.is_none() && plain.calibration.is_none());
    let u = |quantity: &str, instrument: &str| {
        job(&format!("[[reading]]\nquantity = {quantity}\nvalue = 1\ninstrument = \"{instrument}\"")).unwrap().readings
            [0]
        .u
    };
    // The formats page's defaults by instrument (common practice, no source).
    assert_eq!(u("\"height\"", "laser"), 1.5);
    assert_eq!(u("\"height\"", "tape"), 3.0);
    assert_eq!(u("\"pitch\"", "level"), 0.15);
    assert_eq!(u("\"thrust_angle\"", "alignment"), 0.04);
    let other =
        job("[[reading]]\nquantity = \"height\"\nvalue = 1\nu = 0.2\ninstrument = \"folding rule\"\nuse = true");
    let reading = &other.unwrap().readings[0];
    assert!(reading.use_in_adjustment && reading.instrument.as_deref() == Some("folding rule"));
}

#[test]
fn cameras_have_cautious_defaults() {
    let text = "format = \"camera/1\"\nname = \"c\"\nmodel = \"kannala-brandt\"\nimage_size_px = [4000, 3000]\n\
        focal_px = [1500, 1500]\ncentre_px = [2000, 1500]\ndistortion = [0.1, 0.2, 0.3, 0.4]\n";
    let camera = Profile::from_toml(text, "camera.toml").unwrap();
    assert_eq!((camera.per_photo.u_focal_relative, camera.per_photo.u_centre_px), (0.002, 5.0));
    assert_eq!(camera.lens.distortion, [0.1, 0.2, 0.3, 0.4, 0.0]);
    let five = Profile::from_toml(&text.replace("0.4]", "0.4, 0.5]"), "camera.toml").unwrap_err();
    assert!(five.to_string().contains("4 values for kannala-brandt, not 5; write k1, k2, k3, k4"), "{five}");
    let rows: Vec<String> = (0..8).map(|i| format!("{:?}", unit_row(i, 8))).collect();
    let with = format!("{text}covariance = [{}]\n", rows.join(", "));
    assert_eq!(Profile::from_toml(&with, "camera.toml").unwrap().covariance.unwrap().nrows(), 8);
    let skew = with.replacen("[[1.0, 0.0,", "[[1.0, 0.5,", 1);
    let skew = Profile::from_toml(&skew, "camera.toml").unwrap_err().to_string();
    assert!(skew.contains("line 8") && skew.contains("not symmetric at rows 1 and 2"), "{skew}");
}

fn unit_row(i: usize, n: usize) -> Vec<f64> {
    (0..n).map(|k| if k == i { 1.0 } else { 0.0 }).collect()
}

/// Windows line ends are plain TOML.
#[test]
fn line_ends_do_not_matter() {
    let text = "format = \"job/1\"\r\njob = \"D-1\"\r\nsetup = \"s\"\r\nkit = \"r\"\r\nattempt = 0\r\n";
    let told = JobFile::from_toml(text, "job.toml").unwrap_err().to_string();
    assert!(told.starts_with("job.toml, line 5, column 11: attempt: "), "{told}");
}
