//! Whether a set-up sheet and a rig fit together.

use crate::input::{Problem, did_you_mean};
use crate::marker::{Rig, Role};

use super::sheet::{Check, Evidence, Setup};

impl Setup {
    /// Checks what the sheet says of the rig's carriers: those that datums
    /// and checks name exist and have a role that fits.
    ///
    /// # Errors
    /// The first key that does not fit.
    pub fn check_against(&self, rig: &Rig) -> Result<(), Problem> {
        for (i, datum) in self.datums.iter().enumerate() {
            let key = format!("datum[{i}].carrier");
            let Some(carrier) = rig.carriers.iter().find(|c| c.name == datum.carrier) else {
                return Err(no_such_carrier(key, &datum.carrier, rig.carriers.iter().map(|c| c.name.as_str()), rig));
            };
            if !carrier.role.is_on_vehicle() && carrier.role != Role::Floor {
                return Err(Problem {
                    key,
                    problem: format!("\"{}\" has the role {}", carrier.name, carrier.role.name()),
                    remedy: "name a carrier on the vehicle or the floor: nothing is measured from a target or card"
                        .to_owned(),
                });
            }
        }
        let targets: Vec<&str> = rig.with_role(Role::Target).map(|i| rig.carriers[i].name.as_str()).collect();
        for (i, check) in self.checks.iter().enumerate().filter(|(_, c)| c.quantity.is_of_target()) {
            match &check.target {
                Some(name) if !targets.contains(&name.as_str()) => {
                    return Err(no_such_carrier(format!("check[{i}].target"), name, targets.iter().copied(), rig));
                }
                None if targets.len() > 1 => {
                    return Err(Problem {
                        key: format!("check[{i}]"),
                        problem: format!(
                            "does not say which target is meant: the rig \"{}\" has {}",
                            rig.name,
                            targets.join(", ")
                        ),
                        remedy: format!("add target = \"{}\" or another of them", targets[0]),
                    });
                }
                None if targets.is_empty() => {
                    return Err(Problem {
                        key: format!("check[{i}].quantity"),
                        problem: format!(
                            "concerns the target, but the rig \"{}\" has no carrier of role target",
                            rig.name
                        ),
                        remedy: "name the rig that the stand belongs to".to_owned(),
                    });
                }
                _ => {}
            }
        }
        Ok(())
    }
}

impl Check {
    /// Whether the job's reading decides, not the photos: where the sheet says
    /// so, where no photo can tell, and for a wheel arch that bears no mark.
    pub fn is_decided_by_reading(&self, rig: &Rig) -> bool {
        let unmarked = |arch| rig.with_role(arch).next().is_none();
        self.evidence == Evidence::Reading
            || self.quantity.is_reading_only()
            || Role::of_arch_height(self.quantity).is_some_and(unmarked)
    }
}

fn no_such_carrier<'a>(key: String, name: &str, known: impl Iterator<Item = &'a str> + Clone, rig: &Rig) -> Problem {
    let what = if key.ends_with("target") { "carrier of role target" } else { "carrier" };
    Problem {
        key,
        problem: format!("\"{name}\" is no {what} of the rig \"{}\"", rig.name),
        remedy: did_you_mean(name, known),
    }
}
