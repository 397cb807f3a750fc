//! The body's height and pitch against the wheels, from readings at the four
//! wheel arches: plates on wheels never see the body that carries the sensor.

use crate::folder::JobFile;
use crate::geom::deg;
use crate::quantity::{Estimate, Quantity, rounded};
use crate::record::RideHeightRecord;
use crate::setup::{Check, Setup};

const ARCHES: [Quantity; 4] = [
    Quantity::ArchHeightFrontLeft,
    Quantity::ArchHeightFrontRight,
    Quantity::ArchHeightRearLeft,
    Quantity::ArchHeightRearRight,
];

/// What the readings say of the body against the sheet's nominal heights;
/// `None` where not all four were read and are wanted, or the wheelbase is unknown.
pub(super) fn ride_height(setup: &Setup, job: &JobFile, wheelbase_mm: Option<f64>) -> Option<RideHeightRecord> {
    let off = |q: Quantity| -> Option<(f64, f64)> {
        let wanted = setup.checks.iter().find(|c: &&Check| c.quantity == q)?.nominal;
        let reading = job.readings.iter().find(|r| r.quantity == q)?;
        Some((reading.value - wanted, reading.u))
    };
    let [fl, fr, rl, rr] = ARCHES.map(off);
    let (fl, fr, rl, rr) = (fl?, fr?, rl?, rr?);
    let wheelbase = wheelbase_mm.filter(|w| *w > 500.0)?;
    let mean = |a: (f64, f64), b: (f64, f64)| (f64::midpoint(a.0, b.0), a.1.hypot(b.1) / 2.0);
    let (front, rear) = (mean(fl, fr), mean(rl, rr));
    // Pitch after ISO 8855: the nose down is positive.
    let pitch = Estimate::known(deg(((rear.0 - front.0) / wheelbase).atan()), deg(front.1.hypot(rear.1) / wheelbase));
    let (height, u_height) = mean(front, rear);
    let words = vec![
        format!(
            "The body stands {} mm {} than the sheet's arch heights on average.",
            rounded(height.abs(), 1),
            if height < 0.0 { "lower" } else { "higher" }
        ),
        format!(
            "Its nose points {} deg (+-{}) {} against them, and a sensor on it with it.",
            rounded(pitch.value.abs(), 2),
            rounded(pitch.expanded_uncertainty(), 2),
            if pitch.value > 0.0 { "down" } else { "up" }
        ),
    ];
    Some(RideHeightRecord {
        height_mm: height,
        u_height_mm: u_height,
        pitch_deg: pitch.value,
        u_pitch_deg: pitch.standard_uncertainty,
        words,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_nose_that_is_twenty_millimetres_low_points_down() {
        let mut sheet = String::from(
            "format = \"setup/1\"\nname = \"x\"\ntitle = \"x\"\nsource = \"invented\"\nreference_line = \"centreline\"\n",
        );
        let mut job = String::from("format = \"job/1\"\njob = \"x\"\nsetup = \"x\"\nrig = \"x\"\n");
        for (q, value) in ARCHES.iter().zip([360.0, 360.0, 385.0, 385.0]) {
            let name = q.name();
            let nominal = if name.contains("front") { 380.0 } else { 385.0 };
            sheet.push_str(&format!(
                "[[check]]\nquantity = \"{name}\"\nevidence = \"reading\"\nnominal = {nominal}\ntolerance = 10.0\n"
            ));
            job.push_str(&format!("[[reading]]\nquantity = \"{name}\"\nvalue = {value}\ninstrument = \"tape\"\n"));
        }
        let (setup, job) = (Setup::from_toml(&sheet, "s").unwrap(), JobFile::from_toml(&job, "j").unwrap());
        let found = ride_height(&setup, &job, Some(2640.0)).unwrap();
        // atan(20 / 2640) = .434 deg; two tapes of 3 mm at each end.
        assert!((found.pitch_deg - 0.434).abs() < 1e-3 && (found.height_mm + 10.0).abs() < 1e-9, "{found:?}");
        assert!((found.u_pitch_deg - deg(3.0 / 2640.0)).abs() < 1e-6);
        assert!(found.words[1].contains("down"), "{:?}", found.words);
        assert_eq!(ride_height(&setup, &job, None), None);
    }
}
