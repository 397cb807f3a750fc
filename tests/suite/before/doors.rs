//! `camera fit`, `survey`, `seating`, `gauge` and `recheck`: exit codes and messages.

use super::{pictures, run_in, shared};

const UNREADABLE: i32 = 2;
const NOT_FIT: i32 = 3;

/// A grey picture without anything in it.
fn grey(path: &std::path::Path) {
    image::GrayImage::from_pixel(640, 480, image::Luma([128])).save(path).unwrap();
}

#[test]
fn camera_fit_says_what_is_missing() {
    let folder = tempfile::tempdir().unwrap();
    let here = folder.path();
    for i in 0..4 {
        grey(&here.join(format!("{i}.png")));
    }
    std::fs::write(here.join("broken.jpg"), [0xff, 0xd8, 0xff, 0xe0, 0, 16]).unwrap();
    let fit = |photos: &[&str], board: &str| {
        let mut all = vec!["camera", "fit"];
        all.extend(photos);
        all.extend(["--board", board, "--out", "camera.toml"]);
        run_in(here, &all)
    };
    for (photos, board, code, says) in [
        (vec!["0.png", "1.png", "2.png", "3.png"], "board-a4", NOT_FIT, "no part of the board was found"),
        (vec!["0.png", "broken.jpg"], "board-a4", UNREADABLE, "broken.jpg"),
        (vec!["0.png", "none.jpg"], "board-a4", UNREADABLE, "none.jpg"),
        (vec!["0.png"], "board-a5", UNREADABLE, "did you mean"),
    ] {
        let (found, text) = fit(&photos, board);
        assert_eq!(found, code, "{photos:?}: {text}");
        assert!(text.contains(says), "{text}");
    }
    assert!(!here.join("camera.toml").exists());
}

#[test]
fn a_board_that_fills_little_of_the_frame_is_not_fit_for_use() {
    let Some(photos) = shared("real/chessboard") else { return };
    let folder = tempfile::tempdir().unwrap();
    let board = "format = \"board/1\"\nkind = \"chessboard\"\ninner_corners = [9, 6]\nsquare_mm = 25.0\n";
    std::fs::write(folder.path().join("board.toml"), board).unwrap();
    let left: Vec<String> =
        pictures(&photos).into_iter().filter(|p| p.contains("left") && p.ends_with("jpg")).collect();
    let mut all = vec!["camera", "fit"];
    all.extend(left.iter().map(String::as_str));
    all.extend(["--board", "board.toml", "--out", "camera.toml"]);
    let (code, text) = run_in(folder.path(), &all);
    assert_eq!(code, NOT_FIT, "{text}");
    assert!(text.contains("fill the upper left corner") && text.contains("Fit for use: NO"), "{text}");
    let camera = baywitness::camera::Profile::read(&folder.path().join("camera.toml")).unwrap();
    // OpenCV's calibrateCameraExtended on these photos (corner window 5): value
    // and standard deviation, recorded beside the photos.
    let covariance = camera.covariance.unwrap();
    let u = |i: usize| covariance[(i, i)].sqrt();
    for (ours, i, theirs, their_u) in [
        (camera.lens.focal_px[0], 0, 532.83, 0.44),
        (camera.lens.focal_px[1], 1, 532.95, 0.44),
        (camera.lens.centre_px[0], 2, 342.49, 0.46),
        (camera.lens.centre_px[1], 3, 233.86, 0.51),
        (camera.lens.distortion[0], 4, -0.2809, 0.0054),
        (camera.lens.distortion[1], 5, 0.025, 0.042),
        // OpenCV's own figure for p1, .00011, takes its residuals for independent; leaving out one photo
        // after the other gives this (tests/suite/reference/camera.rs does so for all parameters).
        (camera.lens.distortion[2], 6, 0.00122, 0.00027),
        (camera.lens.distortion[3], 7, -0.00014, 0.00014),
        (camera.lens.distortion[4], 8, 0.163, 0.089),
    ] {
        let normalized = (ours - theirs).abs() / u(i).hypot(their_u);
        println!("parameter {i}: {ours} +- {}, OpenCV {theirs} +- {their_u}: {normalized:.2}", u(i));
        // The largest of nine at 95 % (Bonferroni's bound for a normal distribution).
        assert!(normalized < 2.77, "parameter {i}: {ours} +- {}, {theirs} +- {their_u}", u(i));
    }
}

#[test]
#[ignore = "keeps the default run short: the continuous checks run it"]
fn a_good_session_is_fit_for_use_and_holds_the_truth() {
    let Some(job) = shared("bay/jobs/camera_board") else { return };
    let folder = tempfile::tempdir().unwrap();
    let photos = pictures(&job.join("photos"));
    let board = job.join("board.toml").display().to_string();
    let mut all = vec!["camera", "fit"];
    all.extend(photos.iter().map(String::as_str));
    // Into a folder that is not there yet, as the guide has it.
    all.extend(["--board", &board, "--out", "cameras/camera.toml", "--report", "page"]);
    let (code, text) = run_in(folder.path(), &all);
    assert_eq!(code, 0, "{text}");
    let found = baywitness::camera::Profile::read(&folder.path().join("cameras/camera.toml")).unwrap();
    let truth = job.join("../../truth/camera_board/camera_truth.toml");
    let truth = baywitness::camera::Profile::read(&truth).unwrap();
    let values = |l: &baywitness::camera::Lens| {
        let all = [&l.focal_px[..], &l.centre_px[..], &l.distortion[..]].concat();
        nalgebra::DVector::from_vec(all)
    };
    let error = values(&found.lens) - values(&truth.lens);
    let squared = error.dot(&found.covariance.unwrap().cholesky().unwrap().solve(&error)) / 9.0;
    println!("squared normalised error {squared:.2}");
    // Chi squared over 9: 95 % below 1.88; sigmas that are estimated widen it.
    assert!(squared < 2.2, "{squared}");
    assert!(
        std::fs::read_to_string(folder.path().join("page/camera.html"))
            .unwrap()
            .contains("How far off a point may appear")
    );
}

#[test]
fn surveys_and_seatings_say_what_is_missing() {
    let folder = tempfile::tempdir().unwrap();
    let here = folder.path();
    grey(&here.join("a.png"));
    std::fs::create_dir(here.join("empty")).unwrap();
    std::fs::write(here.join("log.csv"), "something else\n").unwrap();
    for (arguments, code, says) in [
        ("survey a.png --kit bay-a4 --out kit.toml", UNREADABLE, "no camera file fits it"),
        ("survey a.png --kit bay-a9 --out kit.toml", UNREADABLE, "did you mean"),
        ("survey a.png --kit bay-a4 --out kit.toml --length 1:tl,2:tr=3", UNREADABLE, "ID:CORNER"),
        ("survey a.png --kit bay-a4 --out kit.toml --due tomorrow", UNREADABLE, "write it as 2027-05-01"),
        ("seating empty empty empty --kit bay-a4 --plate rear-left", UNREADABLE, "has no photo"),
        ("seating empty --kit bay-a4 --plate left", UNREADABLE, "it has: stand, rear-left"),
        ("recheck a.png --kit bay-a4 --log log.csv", UNREADABLE, "is no log of checks"),
        ("recheck a.png --kit bay-a4 --log new.csv --camera demo-phone", NOT_FIT, "was never surveyed"),
        ("gauge none.csv", UNREADABLE, "cannot read none.csv"),
    ] {
        let words: Vec<&str> = arguments.split(' ').collect();
        let (found, text) = run_in(here, &words);
        assert_eq!(found, code, "{arguments}: {text}");
        assert!(text.contains(says), "{arguments}: {text}");
    }
    assert!(!here.join("kit.toml").exists() && !here.join("new.csv").exists());
}

#[test]
fn results_of_verified_jobs_give_the_seating() {
    let folder = tempfile::tempdir().unwrap();
    let good = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("samples/good");
    let options = baywitness::job::Options::new(baywitness::folder::Models::embedded());
    let mut record = serde_json::to_value(baywitness::job::verify(&good, &options).unwrap()).unwrap();
    let at = record["carriers"].as_array().unwrap().iter().position(|c| c["name"] == "rear-left").unwrap();
    let x = record["carriers"][at]["position_mm"][0].as_f64().unwrap();
    let mut names = Vec::new();
    for (i, off) in [-30.0, -10.0, 10.0, 30.0].iter().enumerate() {
        record["carriers"][at]["position_mm"][0] = (x + off).into();
        names.push(format!("{i}.json"));
        std::fs::write(folder.path().join(&names[i]), record.to_string()).unwrap();
    }
    let mut all = vec!["seating"];
    all.extend(names.iter().map(String::as_str));
    all.extend(["--kit", "demo-bay", "--plate", "rear-left", "--out", "seated.toml"]);
    let (code, text) = run_in(folder.path(), &all);
    assert_eq!(code, 0, "{text}");
    let kit = baywitness::marker::Kit::read(&folder.path().join("seated.toml")).unwrap();
    let plate = kit.carriers.iter().find(|c| c.name == "rear-left").unwrap();
    // Sample variance of x is 666.7 mm2, nothing in y and z: 14.9 mm for each
    // axis, times 1.154 for nine degrees of freedom (Student's t over 1.96).
    assert!((plate.u_seating_mm - 17.2).abs() < 0.3, "{}", plate.u_seating_mm);
    assert!(plate.u_seating_deg.iter().all(|u| *u < 1e-6), "{:?}", plate.u_seating_deg);
}

#[test]
fn a_kit_stands_in_for_a_board_and_two_photos_are_too_few() {
    let folder = tempfile::tempdir().unwrap();
    let good = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("samples/good");
    let photos = pictures(&good.join("photos"));
    let kit = good.join("kit.toml").display().to_string();
    let mut all = vec!["camera", "fit"];
    all.extend(photos.iter().map(String::as_str));
    all.extend(["--board", &kit, "--out", "camera.toml"]);
    let (code, text) = run_in(folder.path(), &all);
    assert_eq!(code, NOT_FIT, "{text}");
    assert!(text.contains("only 2 photos could be used"), "{text}");
    let read = |path: &std::path::Path| baywitness::camera::Profile::read(path).unwrap();
    let (found, truth) = (read(&folder.path().join("camera.toml")), read(&good.join("camera.toml")));
    let u = found.covariance.as_ref().unwrap()[(0, 0)].sqrt();
    let error = found.lens.focal_px[0] - truth.lens.focal_px[0];
    // The sample's photos have their own focal lengths, .2 % of the mean.
    println!("focal length off by {error:.1} px, stated {u:.1} px");
    assert!(error.abs() < 3.0 * u, "{error} {u}");
}
