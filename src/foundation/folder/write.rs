//! Writing job files (`job/1`).

use crate::input::Writer;
use crate::words::Language;

use super::file::FORMAT;
use super::job_file::{Calibration, JobFile, Phase, Reading, Vehicle};

impl JobFile {
    /// The job file's text.
    pub fn to_toml(&self) -> String {
        let mut w = Writer::new(FORMAT);
        w.key("job", self.job.as_str());
        w.key("setup", self.setup.as_str());
        w.key("kit", self.kit.as_str());
        w.maybe("camera", self.camera.as_deref());
        w.maybe("stand", self.stand.as_deref());
        w.maybe("photos", self.photos.clone());
        w.maybe("series", self.series.as_deref());
        w.maybe("attempt", self.attempt.map(i64::from));
        if !self.card.is_empty() {
            w.key("card", self.card.iter().map(|id| i64::from(*id)).collect::<Vec<_>>());
        }
        w.maybe("technician", self.technician.as_deref());
        w.maybe("bay", self.bay.as_deref());
        w.maybe("taken", self.taken.map(Writer::time));
        w.maybe("keep_until", self.keep_until.map(Writer::date));
        w.maybe("language", self.language.map(Language::tag));
        w.maybe("rendered", self.rendered.then_some(true));
        for entry in self.photo_entries.iter().flatten() {
            w.item("photo");
            w.key("file", entry.file.as_str());
            w.maybe("step", entry.step.as_deref());
            w.maybe("phase", entry.phase.map(Phase::name));
            w.maybe("after_move", (entry.after_move > 0).then_some(i64::from(entry.after_move)));
        }
        for made in &self.moves {
            w.item("move");
            if !made.turned.is_empty() {
                let turns = made.turned.iter().map(|(screw, turns)| (screw.clone(), toml::Value::from(*turns)));
                w.key("turned", turns.collect::<toml::Table>());
            }
        }
        if self.vehicle != Vehicle::default() {
            write_vehicle(&mut w, &self.vehicle);
        }
        if !self.prerequisites.is_empty() {
            w.table("prerequisites");
            for (id, value) in &self.prerequisites {
                match value {
                    serde_json::Value::Bool(flag) => w.key(id, *flag),
                    serde_json::Value::String(text) => w.key(id, text.as_str()),
                    other => w.key(id, other.to_string()),
                }
            }
        }
        for reading in &self.readings {
            write_reading(&mut w, reading);
        }
        for attachment in &self.attachments {
            w.item("attachment");
            w.key("file", attachment.file.as_str());
            w.key("kind", attachment.kind.as_str());
        }
        if let Some(calibration) = &self.calibration {
            write_calibration(&mut w, calibration);
        }
        w.finish()
    }
}

fn write_vehicle(w: &mut Writer, vehicle: &Vehicle) {
    w.table("vehicle");
    w.maybe("description", vehicle.description.as_deref());
    w.maybe("vin", vehicle.vin.as_deref());
    w.maybe("wheelbase_mm", vehicle.wheelbase_mm);
    w.maybe("nose_from_rear_axle_mm", vehicle.nose_from_rear_axle_mm);
    w.maybe("floor_below_hub_mm", vehicle.floor_below_hub_mm);
    w.key("u_wheelbase_mm", vehicle.u_wheelbase_mm);
    w.key("u_nose_from_rear_axle_mm", vehicle.u_nose_from_rear_axle_mm);
    w.key("u_floor_below_hub_mm", vehicle.u_floor_below_hub_mm);
    let usual = Vehicle::default();
    w.maybe("rear_track_mm", vehicle.rear_track_mm);
    w.maybe("front_track_mm", vehicle.front_track_mm);
    let stated = |u: f64, usual: f64| (u.to_bits() != usual.to_bits()).then_some(u);
    w.maybe("u_rear_track_mm", stated(vehicle.u_rear_track_mm, usual.u_rear_track_mm));
    w.maybe("u_front_track_mm", stated(vehicle.u_front_track_mm, usual.u_front_track_mm));
}

fn write_reading(w: &mut Writer, reading: &Reading) {
    w.item("reading");
    w.key("quantity", reading.quantity.name());
    w.maybe("from", reading.from.as_ref().map(|f| f.name()));
    w.maybe("target", reading.target.as_deref());
    w.maybe("step", reading.step.as_deref());
    w.key("value", reading.value);
    w.key("u", reading.u);
    w.maybe("instrument", reading.instrument.as_deref());
    if reading.use_in_adjustment {
        w.key("use", true);
    }
}

fn write_calibration(w: &mut Writer, calibration: &Calibration) {
    w.table("calibration");
    w.key("result", calibration.result.as_str());
    w.maybe("at", calibration.at.map(Writer::time));
    w.maybe("reported_azimuth_deg", calibration.reported_azimuth_deg);
    w.maybe("reported_elevation_deg", calibration.reported_elevation_deg);
}
