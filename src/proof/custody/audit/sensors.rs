//! Two jobs with the same photos: two sensors of one vehicle that were set up together, or one set-up judged twice.
//!
//! Names are typed, and a sheet that is given another name is the sheet that it was. What tells two sensors apart is where
//! their sheets want the target: another distance, another height, or from another datum.

use crate::record::{CheckRecord, JobRecord};

/// What says where a sheet wants the target. Angles and the place across are nought for most sensors and tell none apart.
const PLACES: [&str; 4] = ["distance", "range", "height", "height_from_nose"];

/// The vehicle of a job, as it was typed.
#[derive(Debug)]
pub(super) struct Vehicle {
    pub(super) vin: Option<String>,
    /// The vehicle in words.
    pub(super) words: Option<String>,
}

impl Vehicle {
    pub(super) fn of(record: &JobRecord) -> Self {
        let context = &record.context;
        Vehicle { vin: context.vin.as_deref().and_then(plain), words: context.vehicle.as_deref().and_then(plain) }
    }

    fn may_be(&self, other: &Vehicle) -> bool {
        may_be_one([&self.vin, &other.vin].map(Option::as_ref), [&self.words, &other.words].map(Option::as_ref))
    }
}

/// Whether nothing speaks against one vehicle: its number where both have one, else the words.
pub(super) fn may_be_one<T: PartialEq>(vins: [Option<T>; 2], words: [Option<T>; 2]) -> bool {
    match (vins, words) {
        ([Some(a), Some(b)], _) | (_, [Some(a), Some(b)]) => a == b,
        _ => true,
    }
}

/// Capitals, blanks and hyphens are typed one way or another.
fn plain(text: &str) -> Option<String> {
    let text: String = text.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect();
    Some(text).filter(|text| !text.is_empty())
}

/// A place that a sheet wants the target at.
#[derive(Debug)]
struct Place {
    /// Quantity, datum and target.
    what: [Option<String>; 3],
    nominal: f64,
    lower: Option<f64>,
    upper: Option<f64>,
}

impl Place {
    fn of(check: &CheckRecord) -> Option<Self> {
        PLACES.contains(&check.quantity.as_str()).then(|| Place {
            what: [Some(check.quantity.clone()), check.from.clone(), check.target.clone()],
            nominal: check.nominal,
            lower: check.lower,
            upper: check.upper,
        })
    }

    fn takes(&self, value: f64) -> bool {
        self.lower.is_none_or(|lower| value >= lower) && self.upper.is_none_or(|upper| value <= upper)
    }

    /// The same, also where the nominal was shifted a little beside wider limits.
    fn is_like(&self, other: &Place) -> bool {
        self.what == other.what && (self.takes(other.nominal) || other.takes(self.nominal))
    }
}

/// What a job says of its sensor.
#[derive(Debug)]
pub(super) struct Sensor {
    vehicle: Vehicle,
    series: Option<String>,
    setup: String,
    places: Vec<Place>,
}

impl Sensor {
    pub(super) fn of(record: &JobRecord) -> Self {
        Sensor {
            vehicle: Vehicle::of(record),
            series: record.context.series.clone(),
            setup: record.context.setup.clone(),
            places: record.checks.iter().filter_map(Place::of).collect(),
        }
    }

    /// Whether they are two sensors of one repair order that were set up together. Where a sheet wants the target
    /// nowhere, it may be the other sheet with the place left out.
    pub(super) fn is_beside(&self, other: &Sensor) -> bool {
        let places = !self.places.is_empty() && !other.places.is_empty();
        let one_order = self.series.is_some() && self.series == other.series;
        one_order
            && self.setup != other.setup
            && self.vehicle.may_be(&other.vehicle)
            && places
            && !self.places.iter().any(|place| other.places.iter().any(|p| place.is_like(p)))
    }
}

#[cfg(test)]
mod tests {
    use super::super::tests::by_sheet as job;
    use super::*;

    fn beside(a: &JobRecord, b: &JobRecord) -> bool {
        let [a, b] = [a, b].map(Sensor::of);
        assert_eq!(a.is_beside(&b), b.is_beside(&a));
        a.is_beside(&b)
    }

    #[test]
    fn another_sensor_has_another_place_and_the_same_vehicle() {
        let (radar, camera) = (job("radar", 0.0), job("camera", 900.0));
        assert!(beside(&radar, &camera));
        assert!(!beside(&radar, &job("renamed", 0.0)), "a name alone");
        let mut wide = job("wide", 900.0);
        wide.checks[0].lower = Some(100.0);
        assert!(!beside(&radar, &wide), "limits that take the other's place in");
        let mut bare = camera.clone();
        bare.checks.retain(|check| check.unit == "deg");
        assert!(!beside(&radar, &bare), "the place left out");
        let mut datum = job("camera", 900.0);
        datum.checks.iter_mut().for_each(|check| check.nominal -= 900.0);
        assert!(!beside(&radar, &datum));
        datum.checks.iter_mut().for_each(|check| check.from = Some("front_axle".to_owned()));
        assert!(beside(&radar, &datum), "from another datum");
        let mut other = camera.clone();
        other.context.series = Some("R-8".to_owned());
        assert!(!beside(&radar, &other), "another repair order");
        other.context.series = None;
        assert!(!beside(&other.clone(), &other));
    }

    #[test]
    fn vehicles_are_told_apart_by_number_then_by_words() {
        let of = |vin: &str, words: &str| {
            let (mut radar, mut camera) = (job("radar", 0.0), job("camera", 900.0));
            (radar.context.vin, radar.context.vehicle) = (Some("INVENTED 1".to_owned()), Some("Van, blue".to_owned()));
            let some = |text: &str| Some(text.to_owned()).filter(|text| !text.is_empty());
            (camera.context.vin, camera.context.vehicle) = (some(vin), some(words));
            beside(&radar, &camera)
        };
        assert!(of("invented-1", "Estate") && of("", "van blue") && of("", "") && of("INVENTED 1", ""));
        assert!(!of("INVENTED 2", "Van, blue") && !of("", "Estate"));
    }
}
