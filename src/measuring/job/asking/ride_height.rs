//! The body's height and pitch against the wheels, from marks on the four wheel
//! arches or from readings there: plates on wheels never see the body that
//! carries the sensor.

use std::collections::BTreeMap;

use crate::folder::{JobFile, Reading};
use crate::geom::deg;
use crate::quantity::{Estimate, Quantity};
use crate::record::RideHeightRecord;
use crate::setup::{Check, Setup};
use crate::verdict::figure;
use crate::words::{Language, Phrase, phrase};

use super::as_one::as_one;

const ARCHES: [Quantity; 4] = [
    Quantity::ArchHeightFrontLeft,
    Quantity::ArchHeightFrontRight,
    Quantity::ArchHeightRearLeft,
    Quantity::ArchHeightRearRight,
];

/// Every quantity that the photos determine, by its key in the record.
type Measured = BTreeMap<String, (Quantity, Estimate)>;

/// What the arches say of the body against the sheet's nominal heights: the
/// photos where they show all four marks, else the job's readings. `None` where
/// not all four are wanted and known, or the wheelbase is unknown.
pub(in crate::job) fn ride_height(
    setup: &Setup,
    job: &JobFile,
    measured: &Measured,
    wheelbase_mm: Option<f64>,
) -> Option<RideHeightRecord> {
    let nominal = |q: Quantity| setup.checks.iter().find(|c: &&Check| c.quantity == q).map(|c| c.nominal);
    let [fl, fr, rl, rr] = ARCHES.map(nominal);
    let wanted = [f64::midpoint(fl?, fr?), f64::midpoint(rl?, rr?)];
    let wheelbase = wheelbase_mm.filter(|w| *w > 500.0)?;
    let (height, pitch) = by_photos(measured).or_else(|| by_readings(job, wheelbase))?;
    let height = Estimate { value: height.value - f64::midpoint(wanted[0], wanted[1]), ..height };
    // Pitch after ISO 8855: the nose down is positive.
    let pitch = Estimate { value: pitch.value - deg(((wanted[1] - wanted[0]) / wheelbase).atan()), ..pitch };
    let phrases = words(&height, &pitch);
    Some(RideHeightRecord {
        height_mm: height.value,
        u_height_mm: height.standard_uncertainty,
        pitch_deg: pitch.value,
        u_pitch_deg: pitch.standard_uncertainty,
        words: phrases.iter().map(|p| p.say(Language::English)).collect(),
        words_phrases: phrases,
    })
}

/// Mean height and pitch of the body as the photos have them.
fn by_photos(measured: &Measured) -> Option<(Estimate, Estimate)> {
    let of = |q: Quantity| measured.get(q.name()).map(|m| m.1);
    Some((of(Quantity::RideHeight)?, of(Quantity::BodyPitch)?))
}

/// The same from readings at the four arches; `None` where those of one exclude each other.
fn by_readings(job: &JobFile, wheelbase_mm: f64) -> Option<(Estimate, Estimate)> {
    let reading = |q: Quantity| {
        let all: Vec<(usize, &Reading)> = job.readings.iter().enumerate().filter(|(_, r)| r.quantity == q).collect();
        let set: Vec<&Reading> = all.iter().map(|(_, reading)| *reading).collect();
        let (_, one) = as_one(&all).filter(|_| Reading::farthest_apart(&set).is_none())?;
        Some((one.value, one.standard_uncertainty))
    };
    let [fl, fr, rl, rr] = ARCHES.map(reading);
    let mean = |a: (f64, f64), b: (f64, f64)| (f64::midpoint(a.0, b.0), a.1.hypot(b.1) / 2.0);
    let (front, rear) = (mean(fl?, fr?), mean(rl?, rr?));
    let (height, u_height) = mean(front, rear);
    let pitch = deg(((rear.0 - front.0) / wheelbase_mm).atan());
    let u_pitch = deg(front.1.hypot(rear.1) / wheelbase_mm);
    Some((Estimate::known(height, u_height), Estimate::known(pitch, u_pitch)))
}

fn words(height: &Estimate, pitch: &Estimate) -> Vec<Phrase> {
    vec![
        phrase!(
            "moves-ride-height",
            way = if height.value < 0.0 { "lower" } else { "higher" },
            by = figure(height.value.abs(), 1),
            uncertainty = figure(height.expanded_uncertainty(), 1)
        ),
        phrase!(
            "moves-body-pitch",
            way = if pitch.value > 0.0 { "down" } else { "up" },
            by = figure(pitch.value.abs(), 2),
            uncertainty = figure(pitch.expanded_uncertainty(), 2)
        ),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_nose_that_is_twenty_millimetres_low_points_down() {
        let mut sheet = String::from(
            "format = \"setup/1\"\nname = \"x\"\ntitle = \"x\"\nsource = \"invented\"\nreference_line = \"centreline\"\n",
        );
        let mut job = String::from("format = \"job/1\"\njob = \"x\"\nsetup = \"x\"\nkit = \"x\"\n");
        for (q, value) in ARCHES.iter().zip([360.0, 360.0, 385.0, 385.0]) {
            let name = q.name();
            let nominal = if name.contains("front") { 380.0 } else { 385.0 };
            sheet.push_str(&format!(
                "[[check]]\nquantity = \"{name}\"\nevidence = \"reading\"\nnominal = {nominal}\ntolerance = 10.0\n"
            ));
            job.push_str(&format!("[[reading]]\nquantity = \"{name}\"\nvalue = {value}\ninstrument = \"tape\"\n"));
        }
        let (setup, job) = (Setup::from_toml(&sheet, "s").unwrap(), JobFile::from_toml(&job, "j").unwrap());
        let found = ride_height(&setup, &job, &Measured::new(), Some(2640.0)).unwrap();
        // atan(20 / 2640) = .434 deg; two tapes of 3 mm at each end.
        assert!((found.pitch_deg - 0.434).abs() < 1e-3 && (found.height_mm + 10.0).abs() < 1e-9, "{found:?}");
        assert!((found.u_pitch_deg - deg(3.0 / 2640.0)).abs() < 1e-6);
        assert!(found.words[1].contains("down"), "{:?}", found.words);
        assert_eq!(ride_height(&setup, &job, &Measured::new(), None), None);
        // Read again at one arch: 4 mm agree with two tapes of 3 mm, 20 mm do not.
        let again = |value: f64| {
            let mut twice = job.clone();
            twice.readings.push(Reading { value, ..job.readings[0].clone() });
            ride_height(&setup, &twice, &Measured::new(), Some(2640.0)).map(|body| body.height_mm)
        };
        assert!(again(364.0).is_some_and(|height| (height + 9.5).abs() < 1e-9), "{:?}", again(364.0));
        assert_eq!(again(380.0), None);
    }
}
