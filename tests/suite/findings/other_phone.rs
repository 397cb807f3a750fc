//! One photo of a job taken by another phone of the same model: neither EXIF nor the picture's
//! size tells it, only how it bends and magnifies. What is named, and what becomes of the checks.

use baywitness::quantity::Quantity as Q;
use baywitness::setup::{From, Setup};
use baywitness::verdict::{Level, StandSize, Verdict, check};
use rayon::prelude::*;

use super::bench::{LINE, a_check, bay, en, job, judge, samples, sheet};
use super::campaign::least;
use super::defect::Defect;
use super::planted::{another_focal, another_phone, half_turned};
use crate::sampled_bay::Bay;

/// Half of what is tolerated, as demonstration sheets have it: mm and degrees.
const CHECKS: [(Q, f64); 6] =
    [(Q::Distance, 15.0), (Q::LateralOffset, 20.0), (Q::Height, 8.0), (Q::Yaw, 0.4), (Q::Pitch, 0.6), (Q::Roll, 0.6)];

fn sheet_of(nominal: [f64; 6]) -> Setup {
    let checks = CHECKS.iter().zip(nominal).map(|((quantity, tolerance), nominal)| {
        a_check(*quantity, (*quantity == Q::Distance).then_some(From::RearAxle), nominal, *tolerance)
    });
    Setup { checks: checks.collect(), ..sheet() }
}

/// Counts over jobs.
#[derive(Default, Debug)]
struct Row {
    /// A finding says that the camera is another or was zoomed.
    camera: usize,
    /// It names the photo that is the one.
    right_photo: usize,
    /// A body is said to have moved or to sit badly, and not the camera to be another.
    body: usize,
    none: usize,
    /// A check of a stand that stands right is outside.
    outside: usize,
    /// Likewise by the figures alone, without the findings' say.
    outside_by_figures: usize,
    /// Of twelve limits with the truth on them: called within.
    within_at_limit: usize,
}

impl Row {
    fn plus(self, other: Row) -> Row {
        Row {
            camera: self.camera + other.camera,
            right_photo: self.right_photo + other.right_photo,
            body: self.body + other.body,
            none: self.none + other.none,
            outside: self.outside + other.outside,
            outside_by_figures: self.outside_by_figures + other.outside_by_figures,
            within_at_limit: self.within_at_limit + other.within_at_limit,
        }
    }
}

fn draw(bay: &Bay, (who, defect): &(usize, Defect), seed: u64) -> Row {
    let sample = defect.sample(bay, seed);
    let truth = defect.truth(&sample);
    let judged = judge(&sample, &sheet_of(truth), &job());
    let file = ["a.jpg", "b.jpg", "c.jpg", "d.jpg"][*who];
    let camera = |c: &str| c == "camera-mismatch" || c == "photo-zoomed";
    let named = judged.findings.iter().any(|f| camera(f.code));
    let body = |c: &str| c.ends_with("-moved-between-photos") || c == "plate-not-seated";
    let blamed = !named && judged.findings.iter().any(|f| body(f.code));
    let is_outside = |checks: &[baywitness::verdict::Checked]| checks.iter().any(|c| c.verdict == Verdict::Outside);
    let size = StandSize { half_width_mm: 760.0, half_height_mm: 245.0 };
    let mut within_at_limit = 0;
    for side in [-1.0, 1.0] {
        // One sheet with the truth on this limit of every quantity: checks are decided one by one.
        let setup = sheet_of(std::array::from_fn(|i| truth[i] + side * CHECKS[i].1));
        for (i, c) in setup.checks.iter().enumerate().filter(|(i, _)| judged.settled[*i].untrusted.is_empty()) {
            let Some(answer) = &judged.checks[i].answer else { continue };
            let decided =
                check(c, LINE, &setup.decision, Ok(answer.clone()), &size, &baywitness::words::Phrase::new(""));
            within_at_limit += usize::from(decided.verdict == Verdict::Within);
        }
    }
    if !named {
        let words: Vec<String> =
            judged.findings.iter().map(|f| format!("{}: {}", f.code, crate::findings::bench::en(&f.message))).collect();
        println!("   {seed} {file}: {}", words.join(" | "));
    }
    Row {
        camera: usize::from(named),
        right_photo: usize::from(judged.findings.iter().any(|f| camera(f.code) && f.photo.as_deref() == Some(file))),
        body: usize::from(blamed),
        none: usize::from(judged.findings.iter().all(|f| f.level > Level::Stop)),
        outside: usize::from(is_outside(&judged.settled)),
        outside_by_figures: usize::from(is_outside(&judged.checks)),
        within_at_limit,
    }
}

type Make = fn(u64, f64, usize) -> (usize, Defect);

/// Two, three and four photos, each lens model with the usual four.
fn bays() -> [(&'static str, Bay, usize); 4] {
    [
        ("two photos", Bay { four_photos: false, ..bay() }, 2),
        ("three photos", Bay { stations: Some(3), ..bay() }, 3),
        ("four photos", bay(), 4),
        ("four photos, Kannala-Brandt", Bay { kannala_brandt: true, ..bay() }, 4),
    ]
}

/// Prints what became of `n` jobs in each bay.
fn table(what: &str, make: Make, n: u64) -> Vec<Row> {
    let columns = [
        "the camera named",
        "and the photo",
        "a body blamed",
        "nothing stops",
        "outside, stands right",
        "by figures alone",
        "within with the truth on a limit",
    ];
    println!("| {what}, {n} jobs each | {} of {} |", columns.join(" | "), 12 * n);
    println!("|---|---|---|---|---|---|---|---|");
    let mut rows = Vec::new();
    for (name, bay, photos) in bays() {
        let one = |seed: u64| draw(&bay, &make(90_000 + seed, 1.0, photos), 90_000 + seed);
        let r = (0..n).into_par_iter().map(one).reduce(Row::default, Row::plus);
        let counts = [r.camera, r.right_photo, r.body, r.none, r.outside, r.outside_by_figures, r.within_at_limit];
        println!("| {name} | {} |", counts.map(|c| c.to_string()).join(" | "));
        rows.push(r);
    }
    rows
}

/// Nobody is sent away from a stand that stands right, no body is blamed, and limits are kept as a
/// guarded decision at .95 promises, three standard deviations of the count allowed.
fn assert_nobody_is_misled(rows: &[Row], n: u64) {
    for r in rows {
        let set_ups = 12.0 * n as f64;
        let promised = 0.05 * set_ups + 3.0 * (0.05 * 0.95 * set_ups).sqrt();
        assert_eq!((r.outside, r.body), (0, 0), "{rows:?}");
        assert!(r.within_at_limit as f64 <= promised, "{rows:?}");
    }
}

fn assert_the_photo_is_named(rows: &[Row], n: u64) {
    assert_nobody_is_misled(rows, n);
    assert!(rows.iter().all(|r| r.right_photo >= least(n as usize)), "{rows:?}");
}

#[test]
fn a_photo_through_another_phone_is_named() {
    let n = samples(2);
    assert_the_photo_is_named(&table("k1 .02 off", another_phone, n), n);
}

/// A focal length that is 1.2 % off may pass for one of 1 % and what it varies by: named in most, right in all.
#[test]
#[ignore = "two minutes: 60 jobs for each number of photos and lens model, and for a lens and a focal length that are other"]
fn another_phone_of_the_model_in_hundreds_of_jobs() {
    let n = samples(60);
    assert_the_photo_is_named(&table("k1 .02 off", another_phone, n), n);
    assert_nobody_is_misled(&table("focal length 1.2 % off", another_focal, n), n);
}

/// All photos turned by half a turn in the gallery: the more the lens is off its picture's middle the surer it is told. Here its
/// middle is half a pixel and 3.5 px off, and it decentres by a pixel in the corners.
#[test]
fn photos_turned_by_half_a_turn_before_they_were_saved() {
    let n = 4 * samples(3);
    let named = |seed: u64| {
        let defect = half_turned(|_| true);
        let judged = judge(&defect.sample(&bay(), 44_000 + seed), &sheet(), &job());
        judged.findings.iter().any(|f| f.code == "camera-mismatch" && en(&f.message).starts_with("Upside down"))
    };
    let named = (0..n).into_par_iter().filter(|seed| named(*seed)).count();
    println!("turned by half a turn: named in {named} of {n}");
    assert!(named as f64 > 0.5 * n as f64, "{named} of {n}");
}
