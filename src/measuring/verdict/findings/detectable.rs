//! What these photos would have shown: for each finding the size that is found
//! with probability .95 in this job, and what is not checkable at all.

use super::plate_not_seated::{AXLES, MOST_TOTAL_TOE_DEG, total_toe};
use super::suspects::LEVEL;
use super::{
    Case, floor_not_level, focal,
    print_scale_wrong::{self, Prints},
    something_moved, steering_not_straight, vehicle_sizes_disagree,
};
use crate::geom::deg;
use crate::marker::Role;
use crate::num::ONE_SIDED_95;
use crate::pose::{Extra, ScoreTest};
use crate::quantity::Quantity;
use crate::words::{Phrase, phrase};

/// One kind of fault and the least size that would have been found.
#[derive(Debug, Clone, PartialEq)]
pub struct Detectable {
    /// The finding's code.
    pub code: &'static str,
    /// The carrier that it is about, where it is about one.
    pub carrier: Option<String>,
    /// Size found with probability .95; `None`: not checkable with these photos.
    pub size: Option<f64>,
    /// mm, deg or %.
    pub unit: &'static str,
    /// What would make it checkable, or `None`.
    pub remedy: Option<Phrase>,
}

/// For every kind of fault that a fit can show.
pub fn detectable(case: &Case) -> Vec<Detectable> {
    if case.scene.is_none() {
        return Vec::new();
    }
    let mut all = moved(case);
    all.push(rolled(case));
    all.extend(plates(case));
    all.extend(off_hub(case));
    all.extend(sizes(case));
    all.extend(lenses(case));
    all.extend(floor(case));
    all.push(steering(case));
    all
}

/// The worst size among tests of one kind; `None` where one of them sees nothing or there is none.
fn worst<'a>(
    tests: impl Iterator<Item = &'a ScoreTest>,
    components: std::ops::Range<usize>,
    unit: f64,
    least: f64,
) -> Option<f64> {
    let size = |t: &ScoreTest| {
        let significant = t.detectable(components.clone(), LEVEL)?;
        // The estimate must also come out above what is too small to be named.
        Some((significant * unit).max(least + ONE_SIDED_95 * unit * t.worst_u(components.clone())))
    };
    let sizes: Option<Vec<f64>> = tests.map(size).collect();
    // What nothing in these photos determines would be found from an infinite size on.
    sizes?.into_iter().reduce(f64::max).filter(|size| size.is_finite())
}

fn tests<'a>(case: &'a Case, wanted: impl Fn(&Extra) -> bool + 'a) -> impl Iterator<Item = &'a ScoreTest> + 'a {
    case.suspects.iter().filter(move |s| wanted(&s.extra)).map(|s| &s.test)
}

fn moved(case: &Case) -> Vec<Detectable> {
    let mut all = Vec::new();
    for (k, carrier) in case.kit.carriers.iter().enumerate() {
        let code = match carrier.role {
            Role::Target => "stand-moved-between-photos",
            // A body sways on its springs when somebody gets out: the wheels stay.
            Role::Nose => "vehicle-moved-between-photos",
            role if role.is_wheel() => "plate-not-seated",
            _ => continue,
        };
        if case.scene.is_none_or(|s| s.carriers[k].is_none()) {
            continue;
        }
        let of = |e: &Extra| matches!(e, Extra::CarrierMoved { carrier, .. } if *carrier == k);
        let mm = worst(tests(case, of), 0..3, 1.0, something_moved::LEAST_MM);
        let degrees = worst(tests(case, of), 3..6, deg(1.0), something_moved::LEAST_DEG);
        let remedy = |size: Option<f64>| size.is_none().then(|| one_more(case, k));
        // Where a point on the body goes matters, not how its mark turns there.
        let turns = carrier.role != Role::Nose;
        for (size, unit) in std::iter::once((mm, "mm")).chain(turns.then_some((degrees, "deg"))) {
            all.push(Detectable { code, carrier: Some(carrier.name.clone()), size, unit, remedy: remedy(size) });
        }
    }
    all
}

/// The photo that would make a carrier's place checkable.
fn one_more(case: &Case, carrier: usize) -> Phrase {
    let showing: Vec<&str> = case
        .problem
        .into_iter()
        .flat_map(|p| p.photos.iter().zip(case.photos).filter(|(v, _)| v.shows(carrier)).map(|(_, f)| f.file))
        .collect();
    match showing.as_slice() {
        [] | [_] => phrase!("findings-takes-second-photo"),
        many => phrase!("findings-takes-linking-photo", photos = many.to_vec()),
    }
}

fn rolled(case: &Case) -> Detectable {
    let along = tests(case, |e| matches!(e, Extra::GroupRolled { .. }));
    let size = worst(along, 0..1, 1.0, something_moved::LEAST_ROLL_MM);
    let remedy = size.is_none().then(|| phrase!("findings-takes-two-with-stand"));
    Detectable { code: "vehicle-moved-between-photos", carrier: None, size, unit: "mm", remedy }
}

/// A plate that is askew in all photos: what one plate alone may be off.
fn plates(case: &Case) -> Vec<Detectable> {
    let one = |(left, right, axle): &(Role, Role, &str)| {
        case.kit.with_role(*left).next()?;
        let size = total_toe(case, *left, *right).map(|(_, u, _)| MOST_TOTAL_TOE_DEG + 2.0 * ONE_SIDED_95 * u);
        let remedy = size.is_none().then(|| phrase!("findings-takes-axle", axle = *axle));
        Some(Detectable { code: "plate-not-seated", carrier: Some(format!("{axle} axle")), size, unit: "deg", remedy })
    };
    AXLES.iter().filter_map(one).collect()
}

/// A plate off its hub and a nose mark off the nose, in all photos alike: by what is known of the vehicle alone.
fn off_hub(case: &Case) -> Vec<Detectable> {
    const CODE: &str = vehicle_sizes_disagree::CODE;
    let of = |carrier: String, size: Option<f64>, what: &'static str| {
        let remedy = size.is_none().then(|| phrase!("findings-takes-typed-sizes", what = what));
        Detectable { code: CODE, carrier: Some(carrier), size, unit: "mm", remedy }
    };
    let plates = total_toe(case, Role::RearLeftWheel, Role::RearRightWheel)
        .map(|_| of("rear axle".into(), vehicle_sizes_disagree::plate_off_hub_mm(case), "plates"));
    let nose = vehicle_sizes_disagree::nose_off_mm(case).map(|(name, size)| of(name.to_owned(), size, "nose"));
    plates.into_iter().chain(nose).collect()
}

fn sizes(case: &Case) -> Vec<Detectable> {
    const LEAST_PERCENT: f64 = 100.0 * print_scale_wrong::LEAST;
    const LEAST_OF_ONE_PERCENT: f64 = 100.0 * print_scale_wrong::LEAST_OF_ONE;
    const CAREFUL_PERCENT: f64 = 100.0 * print_scale_wrong::CAREFUL;
    let mut all = Vec::new();
    for (k, carrier) in case.kit.carriers.iter().enumerate().filter(|(_, c)| c.role != Role::Card) {
        let of = |e: &Extra| matches!(e, Extra::Scale { carriers } if carriers.as_slice() == [k]);
        if case.scene.is_none_or(|s| s.carriers[k].is_none()) {
            continue;
        }
        let named = worst(tests(case, of), 0..1, 100.0, LEAST_OF_ONE_PERCENT);
        let surely = worst(tests(case, of), 0..1, 100.0, 0.0).map(|s| CAREFUL_PERCENT + s);
        let size = named.zip(surely).map(|(a, b)| a.max(b));
        let remedy = size.is_none().then(|| phrase!("findings-takes-other-direction"));
        all.push(Detectable {
            code: "print-scale-wrong",
            carrier: Some(carrier.name.clone()),
            size,
            unit: "%",
            remedy,
        });
    }
    let common = tests(case, |e| matches!(e, Extra::Scale { carriers } if case.prints(carriers) == Prints::All));
    let size = worst(common, 0..1, 100.0, LEAST_PERCENT);
    let remedy = size.is_none().then(|| phrase!("findings-takes-nearer"));
    all.push(Detectable { code: "print-scale-wrong", carrier: None, size, unit: "%", remedy });
    all
}

fn lenses(case: &Case) -> Vec<Detectable> {
    const LEAST_PERCENT: f64 = 100.0 * focal::LEAST;
    let of = |code: &'static str, one: bool| {
        let wanted = move |e: &Extra| matches!(e, Extra::Focal { photos } if (photos.len() == 1) == one);
        let size = worst(tests(case, wanted), 0..1, 100.0, LEAST_PERCENT);
        let remedy = size.is_none().then(|| phrase!("findings-takes-one-more"));
        Detectable { code, carrier: None, size, unit: "%", remedy }
    };
    vec![of("photo-zoomed", true), of("camera-mismatch", false)]
}

/// Each sheet, and a floor that bends between the sheets.
fn floor(case: &Case) -> Vec<Detectable> {
    const CODE: &str = "floor-not-level";
    let sheets: Vec<usize> = case
        .kit
        .with_role(Role::Floor)
        .filter(|k| case.scene.is_some_and(|s| s.carriers[*k].is_some() && s.on_floor))
        .collect();
    let no_more = match sheets.len() {
        0 => Some(phrase!("findings-takes-sheets")),
        1..=3 => Some(phrase!("findings-takes-fourth-sheet")),
        _ => None,
    };
    let mut all: Vec<Detectable> = (!sheets.is_empty()).then(|| below_wheels(case)).into_iter().collect();
    if let Some(remedy) = no_more {
        let remedy = Some(remedy);
        all.push(Detectable { code: CODE, carrier: None, size: None, unit: "mm", remedy });
        return all;
    }
    let one = |k: &usize| {
        let of = |e: &Extra| matches!(e, Extra::OffFloor { carriers, .. } if carriers.as_slice() == [*k]);
        // The few corners of a sheet in one photo may pass for wrong corners and be left out.
        let photos = case.problem.map_or(0, |p| p.photos.iter().filter(|v| v.shows(*k)).count());
        let size = worst(tests(case, of), 0..1, 1.0, floor_not_level::LEAST_MM).filter(|_| photos > 1);
        let remedy = size.is_none().then(|| phrase!("findings-takes-second-view"));
        Detectable { code: CODE, carrier: Some(case.kit.carriers[*k].name.clone()), size, unit: "mm", remedy }
    };
    all.extend(sheets.iter().map(one));
    let bends = tests(case, |e| matches!(e, Extra::OffFloor { carriers, .. } if carriers.len() > 1));
    let size = worst(bends, 1..3, deg(1.0), floor_not_level::LEAST_DEG);
    let remedy = size.is_none().then(|| phrase!("findings-takes-two-and-two"));
    all.push(Detectable { code: CODE, carrier: None, size, unit: "deg", remedy });
    all
}

/// A floor that rises between the wheels and all sheets bends between no two of them.
fn below_wheels(case: &Case) -> Detectable {
    let size = floor_not_level::detectable_below_wheels_mm(case);
    let remedy = size.is_none().then(|| phrase!("findings-takes-hub-height"));
    Detectable { code: "floor-not-level", carrier: Some("rear axle".into()), size, unit: "mm", remedy }
}

fn steering(case: &Case) -> Detectable {
    let size = case.measured(Quantity::SteeringAngle).map(|a| steering_not_straight::detectable(&a));
    let remedy = size.is_none().then(|| phrase!("findings-takes-front-plates"));
    Detectable { code: "steering-not-straight", carrier: None, size, unit: "deg", remedy }
}
