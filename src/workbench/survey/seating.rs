//! How repeatably a plate seats on its wheel: the same plate clamped on again
//! and again, its pose each time against a carrier that stays where it is.

use nalgebra::{DMatrix, Matrix3, Matrix6, Quaternion, UnitQuaternion, Vector3, Vector6};

use super::look::camera_of;
use super::{Error, SurveyPhoto};
use crate::camera::Profile;
use crate::geom::{self, Pose};
use crate::marker::Kit;
use crate::num::student_quantile;
use crate::pose::{self, PhotoView, Problem, Source, adjust};
use crate::record::JobRecord;
use crate::words::{Phrase, phrase};

/// The plate once clamped on: where it sat, in the reference carrier's frame.
#[derive(Debug, Clone, PartialEq)]
pub struct Seated {
    /// The photos' folder or the result file.
    pub name: String,
    /// Reference carrier from plate.
    pub place: Pose<geom::World, geom::Carrier>,
    /// Covariance of the plate's step by what differs from one measurement to
    /// the next: noise and the photos' own focal lengths, not the kit's layout.
    pub covariance: Matrix6<f64>,
}

/// Repeatability of a plate's seat.
#[derive(Debug, Clone, PartialEq)]
pub struct Seating {
    /// Deviations from the mean in the plate's axes: mm, then rad.
    pub deviations: Vec<Vector6<f64>>,
    /// Scatter of the measurement alone, 1 sigma, mm and degrees about x, y, z.
    pub u_measured: [f64; 4],
    /// What a kit file states: 1 sigma for each axis, mm, widened so that two
    /// sigmas hold 95 % although it comes from so few seatings.
    pub u_seating_mm: f64,
    /// Likewise about x, y, z, degrees.
    pub u_seating_deg: [f64; 3],
    /// Seatings minus one.
    pub degrees_of_freedom: f64,
    /// By half a turn of the wheel.
    pub run_out: Option<RunOut>,
}

/// Where the wheel's spin axis lies in the plate, from poses before and after
/// a turn of the wheel with the plate left on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RunOut {
    /// Turn of the wheel, degrees.
    pub turn_deg: f64,
    /// Spin axis against the plate's y axis, about x and about z, degrees:
    /// what the plate adds to camber and heading.
    pub about_deg: [f64; 2],
    /// Spin axis beside the plate's origin along x and z, mm; `None` where the
    /// wheel rolled on.
    pub beside_mm: Option<[f64; 2]>,
}

/// A smaller turn says too little of its axis, degrees.
const LEAST_TURN_DEG: f64 = 60.0;
/// A hub that moved farther than this rolled on, mm.
const MOST_ROLL_MM: f64 = 60.0;

/// One seating from its photos.
///
/// # Errors
/// No camera, or the photos do not show both carriers.
pub fn seated_from_photos(
    kit: &Kit,
    cameras: &[Profile],
    camera_named: bool,
    name: &str,
    photos: &[SurveyPhoto],
    [plate, against]: [usize; 2],
) -> Result<Seated, Error> {
    let mut used: Vec<&Profile> = Vec::new();
    let mut views = Vec::new();
    for photo in photos {
        let camera = camera_of(photo, camera_named, cameras)?;
        let at = used.iter().position(|c| std::ptr::eq(*c, camera)).unwrap_or(used.len());
        if at == used.len() {
            used.push(camera);
        }
        views.push(PhotoView::from_sightings(kit, at, &photo.sightings));
    }
    let problem = Problem { kit, cameras: used, photos: views };
    let not = |why: Phrase| Error::NotMeasured(phrase!("fit-of", what = name, why = why));
    let scene = adjust(&problem, &pose::Options::default()).map_err(|e| not(e.phrase()))?;
    let place = |k: usize| {
        let seen = scene.carriers[k].filter(|_| scene.knows(k));
        seen.ok_or_else(|| not(phrase!("fit-no-place", holder = &kit.carriers[k].name)))
    };
    let (world_from_plate, world_from_reference) = (place(plate)?, place(against)?);
    let relative: Pose<geom::World, geom::Carrier> =
        Pose::from_isometry(world_from_reference.isometry().inverse() * world_from_plate.isometry());
    let changing: Vec<usize> = (0..scene.sources.len())
        .filter(|c| !matches!(scene.sources[*c], Source::Layout | Source::Scale | Source::Calibration(_)))
        .collect();
    let rows = |k: usize| DMatrix::from_fn(6, changing.len(), |i, j| scene.factor[(6 * k + i, changing[j])]);
    let step = rows(plate) + by_reference(&relative) * rows(against);
    let covariance = &step * step.transpose();
    Ok(Seated { name: name.to_owned(), place: relative, covariance: Matrix6::from_fn(|i, j| covariance[(i, j)]) })
}

/// How a step of the reference moves the plate's relative pose, as its step.
fn by_reference(relative: &Pose<geom::World, geom::Carrier>) -> DMatrix<f64> {
    let back: Matrix3<f64> = relative.matrix().transpose();
    let mut all = DMatrix::zeros(6, 6);
    all.view_mut((0, 0), (3, 3)).copy_from(&-back);
    all.view_mut((0, 3), (3, 3)).copy_from(&(back * relative.origin_mm().cross_matrix()));
    all.view_mut((3, 3), (3, 3)).copy_from(&-back);
    all
}

/// One seating from a verified job's result.
///
/// # Errors
/// The result has not both carriers.
pub fn seated_from_record(name: &str, record: &JobRecord, plate: &str, against: &str) -> Result<Seated, Error> {
    let find = |wanted: &str| {
        let carrier = record.carriers.iter().find(|c| c.name == wanted);
        let why = || phrase!("fit-no-holder", holder = wanted);
        carrier.ok_or_else(|| Error::NotMeasured(phrase!("fit-of", what = name, why = why())))
    };
    let (plate, against) = (find(plate)?, find(against)?);
    let pose = |c: &crate::record::CarrierRecord| -> Pose<geom::World, geom::Carrier> {
        let [w, x, y, z] = c.quaternion_wxyz;
        Pose::new(UnitQuaternion::from_quaternion(Quaternion::new(w, x, y, z)), Vector3::from(c.position_mm))
    };
    let relative = pose(against).isometry().inverse() * pose(plate).isometry();
    // A record holds no correlations: both uncertainties add.
    let u = |i: usize| {
        let one = |c: &crate::record::CarrierRecord| match i {
            0..=2 => c.standard_uncertainty.position_mm[i],
            _ => geom::rad(c.standard_uncertainty.rotation_deg[i - 3]),
        };
        one(plate).hypot(one(against))
    };
    Ok(Seated {
        name: name.to_owned(),
        place: Pose::from_isometry(relative),
        covariance: Matrix6::from_diagonal(&Vector6::from_fn(|i, _| u(i).powi(2))),
    })
}

/// Repeatability from repeated seatings; `turned`: the same plate, left on,
/// after the wheel was turned.
///
/// # Errors
/// Fewer than three seatings.
pub fn seating(seated: &[Seated], turned: &[Seated]) -> Result<Seating, Error> {
    if seated.len() < 3 {
        return Err(Error::NotMeasured(phrase!("fit-no-seatings", count = seated.len())));
    }
    let n = seated.len() as f64;
    let degrees_of_freedom = n - 1.0;
    let mean = mean_place(seated);
    let deviations: Vec<Vector6<f64>> = seated.iter().map(|s| mean.step_to(&s.place)).collect();
    let scatter = |i: usize| deviations.iter().map(|d| d[i] * d[i]).sum::<f64>() / degrees_of_freedom;
    let measured = |i: usize| seated.iter().map(|s| s.covariance[(i, i)]).sum::<f64>() / n;
    let three = |f: &dyn Fn(usize) -> f64| (0..3).map(f).sum::<f64>() / 3.0;
    // What the measurement itself scatters is not the plate's.
    let own = |all: f64, noise: f64, degrees: f64| {
        student_quantile(0.975, degrees) / student_quantile(0.975, f64::INFINITY) * (all - noise).max(0.0).sqrt()
    };
    let deg = |variance: f64| geom::deg(variance.sqrt());
    let about = |i: usize| geom::deg(own(scatter(3 + i), measured(3 + i), degrees_of_freedom));
    Ok(Seating {
        u_measured: [three(&measured).sqrt(), deg(measured(3)), deg(measured(4)), deg(measured(5))],
        u_seating_mm: own(three(&scatter), three(&measured), 3.0 * degrees_of_freedom),
        u_seating_deg: [about(0), about(1), about(2)],
        degrees_of_freedom,
        deviations,
        run_out: (!turned.is_empty()).then(|| run_out(&mean, &mean_place(turned))).flatten(),
    })
}

/// The mean pose: steps from the first one, twice, so that its choice does not matter.
fn mean_place(seated: &[Seated]) -> Pose<geom::World, geom::Carrier> {
    let mut mean = seated[0].place;
    for _ in 0..3 {
        let step: Vector6<f64> =
            seated.iter().map(|s| mean.step_to(&s.place)).sum::<Vector6<f64>>() / seated.len() as f64;
        mean = mean.moved(&step);
    }
    mean
}

/// The fixed axis of the plate's motion, in its own frame.
fn run_out(before: &Pose<geom::World, geom::Carrier>, after: &Pose<geom::World, geom::Carrier>) -> Option<RunOut> {
    let motion = before.isometry().inverse() * after.isometry();
    let (axis, angle) = motion.rotation.axis_angle()?;
    let turn_deg = geom::deg(angle);
    if turn_deg < LEAST_TURN_DEG {
        return None;
    }
    let axis = axis.into_inner() * axis.y.signum();
    let shift = motion.translation.vector;
    // The point of the axis nearest to the origin stays: (1 - R) c = t across the axis.
    let across = shift - axis * axis.dot(&shift);
    let stays = (Matrix3::identity() - motion.rotation.to_rotation_matrix().into_inner())
        .svd(true, true)
        .solve(&across, 1e-9)
        .ok()?;
    let fixed = stays - axis * axis.dot(&stays);
    let rolled = fixed.norm() > MOST_ROLL_MM;
    Some(RunOut {
        turn_deg,
        about_deg: [geom::deg(axis.z.atan2(axis.y)), geom::deg((-axis.x).atan2(axis.y))],
        beside_mm: (!rolled).then_some([fixed.x, fixed.z]),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use rand::{RngExt, SeedableRng};

    fn seated(place: Pose<geom::World, geom::Carrier>) -> Seated {
        Seated { name: "s".into(), place, covariance: Matrix6::zeros() }
    }

    #[test]
    fn sampled_seatings_give_their_sigmas() {
        let mut rng = rand::rngs::ChaCha8Rng::seed_from_u64(3);
        let mut normal = move || crate::num::normal_quantile(rng.random_range(1e-9..1.0));
        let base = Pose::new(UnitQuaternion::from_euler_angles(0.1, 0.2, -1.0), Vector3::new(900.0, -50.0, 300.0));
        let rad = [0.1, 0.3, 0.05].map(geom::rad);
        let all: Vec<Seated> = (0..400)
            .map(|_| {
                let t = Vector3::from_fn(|_, _| 0.4 * normal());
                let r = Vector3::from_fn(|i, _| rad[i] * normal());
                seated(base.moved(&Vector6::new(t.x, t.y, t.z, r.x, r.y, r.z)))
            })
            .collect();
        let found = seating(&all, &[]).unwrap();
        assert!((found.u_seating_mm / 0.4 - 1.0).abs() < 0.1, "{}", found.u_seating_mm);
        for (found, truth) in found.u_seating_deg.iter().zip([0.1, 0.3, 0.05]) {
            assert!((found / truth - 1.0).abs() < 0.12, "{found} {truth}");
        }
        assert!(seating(&all[..2], &[]).is_err());
    }

    #[test]
    fn half_a_turn_finds_the_spin_axis() {
        // The spin axis passes 1.5 mm before and 0.7 mm above the plate's
        // origin, .2 deg about z and .1 deg about x off its y axis.
        let base: Pose<geom::World, geom::Carrier> = Pose::new(UnitQuaternion::identity(), Vector3::new(5.0, 6.0, 7.0));
        let lean = UnitQuaternion::from_euler_angles(geom::rad(0.1), 0.0, geom::rad(0.2));
        let axis = nalgebra::Unit::new_normalize(lean * Vector3::y());
        let spin = UnitQuaternion::from_axis_angle(&axis, geom::rad(178.0));
        let centre = Vector3::new(1.5, 0.0, 0.7);
        let motion: Pose<geom::Carrier, geom::Carrier> = Pose::new(spin, centre - spin * centre);
        let after = base * motion;
        let found = run_out(&base, &after).unwrap();
        assert!((found.turn_deg - 178.0).abs() < 1e-6);
        assert!((found.about_deg[0] - 0.1).abs() < 1e-3 && (found.about_deg[1] - 0.2).abs() < 1e-3, "{found:?}");
        let [x, z] = found.beside_mm.unwrap();
        assert!((x - 1.5).abs() < 0.01 && (z - 0.7).abs() < 0.01, "{found:?}");
        assert!(run_out(&base, &base).is_none());
    }
}
