//! A lens's distortion as a camera file states it: a key for each kind of term.
//!
//! `radial` is k1, k2, k3 and `decentring` p1, p2 of Brown's model (Brown 1971: close-range camera calibration);
//! `angular` is k1 to k4 of Kannala and Brandt's (2006: a generic camera model). Files written before these keys
//! have one list, `distortion`, in the order in which [`super::Lens`] keeps them.

use crate::input::{Error, Table, Value, Writer};

use super::lens::LensModel;
use crate::words::phrase;

/// All keys that state a distortion.
pub(super) const KEYS: [&str; 4] = ["distortion", "radial", "decentring", "angular"];

/// A key and where its terms stand in a lens's list.
type Terms = (&'static str, &'static [usize]);

fn terms(model: LensModel) -> &'static [Terms] {
    match model {
        LensModel::BrownConrady => &[("radial", &[0, 1, 4]), ("decentring", &[2, 3])],
        LensModel::KannalaBrandt => &[("angular", &[0, 1, 2, 3])],
    }
}

pub(super) fn read(root: &Table, model: LensModel) -> Result<[f64; 5], Error> {
    let flat: Vec<usize> = (0..model.coefficients()).collect();
    let one_list: [(&str, &[usize]); 1] = [(KEYS[0], &flat)];
    let wanted = if root.get(KEYS[0]).is_some() { &one_list[..] } else { terms(model) };
    let names: Vec<&str> = wanted.iter().map(|t| t.0).collect();
    let foreign = KEYS.iter().filter(|key| !names.contains(key)).find_map(|key| root.get(key));
    if let Some(foreign) = foreign {
        return Err(foreign.error(
            phrase!("doors-distortion-foreign", model = model.name(), beside = names),
            phrase!("doors-distortion-foreign-remedy"),
        ));
    }
    let mut distortion = [0.0; 5];
    for (key, places) in wanted {
        let value = root.need(key)?;
        let found = value.items()?;
        if found.len() != places.len() {
            return Err(wrong_count(&value, model, places, found.len()));
        }
        for (place, term) in places.iter().zip(&found) {
            distortion[*place] = term.within(-1e4, 1e4, "")?;
        }
    }
    Ok(distortion)
}

fn wrong_count(value: &Value, model: LensModel, places: &[usize], found: usize) -> Error {
    let names: &[&str] = match model {
        LensModel::BrownConrady => &["k1", "k2", "p1", "p2", "k3"],
        LensModel::KannalaBrandt => &["k1", "k2", "k3", "k4"],
    };
    let listed: Vec<&str> = places.iter().map(|place| names[*place]).collect();
    value.error(
        phrase!("doors-distortion-count", wanted = places.len(), model = model.name(), found = found),
        phrase!("doors-distortion-count-remedy", terms = listed.join(", ")),
    )
}

pub(super) fn write(w: &mut Writer, model: LensModel, distortion: &[f64; 5]) {
    for (key, places) in terms(model) {
        let listed: Vec<f64> = places.iter().map(|place| distortion[*place]).collect();
        w.numbers(key, &listed);
    }
}
