//! Which single unknown would explain the misfit of the photos best.
//!
//! A stand that moved makes every other body fit worse too; so all suspects
//! are tried with the same test and the one that explains most is named. What
//! explains almost as much is named with it: the photos can't tell them apart.

use nalgebra::Vector3;

use crate::marker::{Kit, Role};
use crate::pose::{Extra, Problem, Scene, ScoreTest};

/// A tried unknown.
#[derive(Debug, Clone)]
pub struct Suspect {
    /// What might be wrong.
    pub extra: Extra,
    /// The test's figures.
    pub test: ScoreTest,
    /// Chance of such a misfit in a job without fault.
    pub chance: f64,
    /// Misfit explained, in units of its noise, less two for each unknown
    /// (Akaike 1974): the explanation with the largest one is the likeliest.
    pub weight: f64,
}

/// A suspect counts only when chance is this unlikely to have made it; some
/// fifty suspects of a job share the rate of false alarms.
pub(super) const LEVEL: f64 = 1e-4;

/// Places that gave way by more standard uncertainties than this are asked about.
const STRAINED: f64 = 2.5;
/// So many markers are asked about that each must be unlikelier than other suspects, and farther off than careful work is
/// (common practice, no source), mm.
const DISPLACED_LEVEL: f64 = 1e-6;
const LEAST_DISPLACED_MM: f64 = 0.75;

/// Other lens errors are no half turn, even where they look a little like one.
const HALF_TURNED: f64 = 0.3;

/// A kit whose prints sit a little worse than it says is no explanation of anything.
fn is_large_enough(suspect: &Suspect) -> bool {
    match suspect.extra {
        Extra::Displaced { .. } => {
            suspect.chance < DISPLACED_LEVEL && suspect.test.estimate.norm() > LEAST_DISPLACED_MM
        }
        // A photo is turned or it is not.
        Extra::HalfTurned { .. } => (suspect.test.estimate[0] - 1.0).abs() < HALF_TURNED,
        _ => true,
    }
}

/// Prints that are made together: floor sheets, and wheel plates.
const KINDS_OF_PRINTS: [fn(&Role) -> bool; 2] = [|role| *role == Role::Floor, |role| role.is_wheel()];

/// Explanations that differ by less than this in weight are rivals: a
/// likelihood ratio below some 20.
pub(super) const RIVAL: f64 = 6.0;

/// More photos than this: each is tried on its own, not every cut of the series.
const MOST_CUTS: usize = 12;

/// All suspects, the best explanation first. `after_move` has, by photo, how often the stand had been moved when it was
/// taken; it is empty where it was not.
pub fn suspects(kit: &Kit, problem: &Problem, scene: &Scene, after_move: &[u32]) -> Vec<Suspect> {
    let mut suspects: Vec<Suspect> = Bodies { kit, problem, scene, after_move }
        .extras()
        .into_iter()
        .filter_map(|extra| {
            let test = scene.score(&extra)?;
            let chance = test.chance(scene);
            let freedom = (scene.degrees_of_freedom - test.unknowns as f64).max(1.0);
            // The noise is what is left once the suspect is taken for true.
            let rest = ((scene.variance * scene.degrees_of_freedom - test.drop) / freedom).max(1.0);
            let weight = test.drop / rest - 2.0 * test.unknowns as f64;
            let suspect = Suspect { extra, test, chance, weight };
            is_large_enough(&suspect).then_some(suspect)
        })
        .collect();
    suspects.sort_by(|a, b| b.weight.total_cmp(&a.weight));
    suspects
}

/// What there is to suspect.
struct Bodies<'a> {
    kit: &'a Kit,
    problem: &'a Problem<'a>,
    scene: &'a Scene,
    after_move: &'a [u32],
}

impl Bodies<'_> {
    fn extras(&self) -> Vec<Extra> {
        let mut extras = self.moved();
        extras.extend(self.rolled());
        extras.extend(self.nudged());
        extras.extend(self.sizes());
        extras.extend(self.floor());
        extras.extend(self.lenses());
        extras.extend(self.markers());
        extras.extend(self.displaced());
        extras
    }

    fn placed(&self) -> Vec<usize> {
        (0..self.kit.carriers.len()).filter(|k| self.scene.carriers[*k].is_some()).collect()
    }

    fn used(&self) -> Vec<usize> {
        (0..self.problem.photos.len()).filter(|j| self.scene.photos[*j].is_some()).collect()
    }

    fn seen(&self, carrier: usize) -> Vec<usize> {
        self.used().into_iter().filter(|j| self.problem.photos[*j].shows(carrier)).collect()
    }

    fn moved(&self) -> Vec<Extra> {
        let of =
            |k: usize| parts(&self.seen(k)).into_iter().map(move |photos| Extra::CarrierMoved { carrier: k, photos });
        self.placed().into_iter().flat_map(of).collect()
    }

    /// The vehicle with everything on it, along the way that its wheels point.
    fn rolled(&self) -> Vec<Extra> {
        let on_vehicle = |k: &usize| self.kit.carriers[*k].role.is_on_vehicle();
        let carriers: Vec<usize> = self.placed().into_iter().filter(on_vehicle).collect();
        let wheels: Vec<usize> = carriers.iter().copied().filter(|k| self.kit.carriers[*k].role.is_wheel()).collect();
        let ahead = wheels
            .iter()
            .filter_map(|k| self.scene.carriers[*k])
            .fold(Vector3::zeros(), |sum: Vector3<f64>, pose| sum + pose.direction(&Vector3::x()));
        let Some(along) = ahead.try_normalize(1e-9) else { return Vec::new() };
        if carriers.len() < 2 {
            return Vec::new();
        }
        let showing: Vec<usize> =
            self.used().into_iter().filter(|j| carriers.iter().any(|k| self.problem.photos[*j].shows(*k))).collect();
        let rolled = |photos| Extra::GroupRolled {
            carriers: carriers.clone(),
            wheels: wheels.clone(),
            along: along.into(),
            photos,
        };
        parts(&showing).into_iter().map(rolled).collect()
    }

    /// The vehicle over the floor, any way, while the stand was moved: who handles a heavy stand before it leans on it.
    /// Of other photos it is not asked: there nothing but its brake gives way.
    fn nudged(&self) -> Vec<Extra> {
        let on_vehicle = |k: &usize| self.kit.carriers[*k].role.is_on_vehicle();
        let carriers: Vec<usize> = self.placed().into_iter().filter(on_vehicle).collect();
        if carriers.is_empty() || !self.scene.on_floor {
            return Vec::new();
        }
        let wheels: Vec<usize> = carriers.iter().copied().filter(|k| self.kit.carriers[*k].role.is_wheel()).collect();
        let sum: Vector3<f64> = carriers.iter().filter_map(|k| self.scene.carriers[*k]).map(|p| p.origin_mm()).sum();
        let centre_mm: [f64; 3] = (sum / carriers.len() as f64).into();
        let mut moves: Vec<u32> = self.after_move.iter().copied().filter(|n| *n > 0).collect();
        moves.sort_unstable();
        moves.dedup();
        let since = |n: u32| -> Vec<usize> {
            let after = |j: &usize| self.after_move.get(*j).is_some_and(|m| *m >= n);
            self.used().into_iter().filter(after).collect()
        };
        let nudged =
            |photos| Extra::GroupMoved { carriers: carriers.clone(), wheels: wheels.clone(), centre_mm, photos };
        moves.into_iter().map(since).filter(|photos| !photos.is_empty()).map(nudged).collect()
    }

    fn sizes(&self) -> Vec<Extra> {
        let placed = self.placed();
        let mut sizes: Vec<Vec<usize>> = placed.iter().map(|k| vec![*k]).collect();
        // Sheets of one kind come out of one file and one evening's printing.
        for is_of_kind in KINDS_OF_PRINTS {
            let of_kind: Vec<usize> =
                placed.iter().copied().filter(|k| is_of_kind(&self.kit.carriers[*k].role)).collect();
            if of_kind.len() > 1 && of_kind.len() < placed.len() {
                sizes.push(of_kind);
            }
        }
        if placed.len() > 1 {
            sizes.push(placed);
        }
        sizes.into_iter().map(|carriers| Extra::Scale { carriers }).collect()
    }

    /// One sheet, or all sheets beyond a kink across the vehicle's line.
    fn floor(&self) -> Vec<Extra> {
        if !self.scene.on_floor {
            return Vec::new();
        }
        let place = |k: &usize| self.scene.carriers[*k].map(|p| p.origin_mm());
        let mut sheets: Vec<usize> =
            self.placed().into_iter().filter(|k| self.kit.carriers[*k].role == Role::Floor).collect();
        let off = |carriers: Vec<usize>| {
            let sum: Vector3<f64> = carriers.iter().filter_map(place).sum();
            let centre_mm = (sum / carriers.len() as f64).into();
            Extra::OffFloor { carriers, centre_mm }
        };
        let mut extras: Vec<Extra> = sheets.iter().map(|k| off(vec![*k])).collect();
        let (stand, rear) = (self.origin(&[Role::Target]), self.origin(&[Role::RearLeftWheel, Role::RearRightWheel]));
        if let (Some(stand), Some(rear)) = (stand, rear) {
            let ahead = |k: &usize| place(k).map_or(0.0, |p| p.dot(&(stand - rear)));
            sheets.sort_by(|a, b| ahead(a).total_cmp(&ahead(b)));
            let cuts = 2..sheets.len().saturating_sub(1);
            extras.extend(cuts.map(|cut| off(sheets[cut..].to_vec())));
        }
        extras
    }

    /// Midpoint of the carriers with some roles.
    fn origin(&self, roles: &[Role]) -> Option<Vector3<f64>> {
        let with: Vec<Vector3<f64>> = roles
            .iter()
            .flat_map(|role| self.kit.with_role(*role))
            .filter_map(|k| self.scene.carriers[k])
            .map(|p| p.origin_mm())
            .collect();
        (!with.is_empty()).then(|| with.iter().sum::<Vector3<f64>>() / with.len() as f64)
    }

    /// What strikes one marker in one photo only: no body has moved for one marker's word.
    fn markers(&self) -> Vec<Extra> {
        let odd = self.scene.odd_markers().into_iter();
        odd.map(|(carrier, id, photo)| Extra::MarkerOff { carrier, id, photo }).collect()
    }

    /// A marker whose place had to give way, on a carrier that others hold.
    fn displaced(&self) -> Vec<Extra> {
        let strained = self.scene.strained_markers(STRAINED).into_iter();
        let held = strained.filter(|(k, _)| self.kit.carriers[*k].markers.len() > 1);
        held.map(|(carrier, id)| Extra::Displaced { carrier, id }).collect()
    }

    fn lenses(&self) -> Vec<Extra> {
        let used = self.used();
        let mut extras: Vec<Extra> = used.iter().map(|j| Extra::Focal { photos: vec![*j] }).collect();
        // Another phone of the same model took one of them: nothing but its lens tells.
        extras.extend(used.iter().map(|j| Extra::Lens { photos: vec![*j] }));
        let camera = |j: usize| self.problem.cameras[self.problem.photos[j].camera];
        extras.extend(used.iter().map(|j| Extra::half_turned(vec![*j], camera(*j))));
        for camera in 0..self.problem.cameras.len() {
            let own: Vec<usize> = used.iter().copied().filter(|j| self.problem.photos[*j].camera == camera).collect();
            if own.len() > 1 {
                extras.push(Extra::Focal { photos: own.clone() });
                extras.push(Extra::Lens { photos: own.clone() });
                extras.push(Extra::half_turned(own, self.problem.cameras[camera]));
            }
        }
        extras
    }
}

/// The ways in which a series of photos can be cut in two by something that
/// happened once, and each photo alone; of two complements one is enough.
fn parts(photos: &[usize]) -> Vec<Vec<usize>> {
    let n = photos.len();
    if n < 2 {
        return Vec::new();
    }
    let mut parts: Vec<Vec<usize>> = Vec::new();
    if n <= MOST_CUTS {
        parts.extend((1..n).map(|cut| photos[cut..].to_vec()));
        // The first and the last alone are cuts already.
        parts.extend((1..n - 1).map(|i| vec![photos[i]]));
    } else {
        parts.extend(photos.iter().map(|j| vec![*j]));
    }
    parts
}

#[cfg(test)]
mod tests {
    use super::parts;

    #[test]
    fn a_series_is_cut_once_or_one_photo_is_alone() {
        assert_eq!(parts(&[3, 5]), vec![vec![5]]);
        assert_eq!(parts(&[0, 1, 2]), vec![vec![1, 2], vec![2], vec![1]]);
        let four = parts(&[0, 1, 2, 3]);
        assert_eq!(four, vec![vec![1, 2, 3], vec![2, 3], vec![3], vec![1], vec![2]]);
        assert!(parts(&[7]).is_empty());
    }
}
