//! Whether a set-up sheet and a kit fit together.

use crate::input::{Problem, did_you_mean};
use crate::marker::{Kit, Role};

use super::sheet::{Check, Evidence, Setup};

impl Setup {
    /// Checks what the sheet says of the kit's carriers: those that datums
    /// and checks name exist and have a role that fits.
    ///
    /// # Errors
    /// The first key that does not fit.
    pub fn check_against(&self, kit: &Kit) -> Result<(), Problem> {
        for (i, datum) in self.datums.iter().enumerate() {
            let key = format!("datum[{i}].carrier");
            let Some(carrier) = kit.carriers.iter().find(|c| c.name == datum.carrier) else {
                return Err(no_such_carrier(key, &datum.carrier, kit.carriers.iter().map(|c| c.name.as_str()), kit));
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
        let targets: Vec<&str> = kit.with_role(Role::Target).map(|i| kit.carriers[i].name.as_str()).collect();
        for (i, check) in self.checks.iter().enumerate().filter(|(_, c)| c.quantity.is_of_target()) {
            match &check.target {
                Some(name) if !targets.contains(&name.as_str()) => {
                    return Err(no_such_carrier(format!("check[{i}].target"), name, targets.iter().copied(), kit));
                }
                None if targets.len() > 1 => {
                    return Err(Problem {
                        key: format!("check[{i}]"),
                        problem: format!(
                            "does not say which target is meant: the kit \"{}\" has {}",
                            kit.name,
                            targets.join(", ")
                        ),
                        remedy: format!("add target = \"{}\" or another of them", targets[0]),
                    });
                }
                None if targets.is_empty() => {
                    return Err(Problem {
                        key: format!("check[{i}].quantity"),
                        problem: format!(
                            "concerns the target, but the kit \"{}\" has no carrier of role target",
                            kit.name
                        ),
                        remedy: "name the kit that the stand belongs to".to_owned(),
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
    pub fn is_decided_by_reading(&self, kit: &Kit) -> bool {
        let unmarked = |arch| kit.with_role(arch).next().is_none();
        self.evidence == Evidence::Reading
            || self.quantity.is_reading_only()
            || Role::of_arch_height(self.quantity).is_some_and(unmarked)
    }
}

fn no_such_carrier<'a>(key: String, name: &str, known: impl Iterator<Item = &'a str> + Clone, kit: &Kit) -> Problem {
    let what = if key.ends_with("target") { "carrier of role target" } else { "carrier" };
    Problem {
        key,
        problem: format!("\"{name}\" is no {what} of the kit \"{}\"", kit.name),
        remedy: did_you_mean(name, known),
    }
}
