//! Whether a set-up sheet and a kit fit together.

use crate::input::{Problem, did_you_mean};
use crate::marker::{Kit, Role};
use crate::words::phrase;

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
                    problem: phrase!("doors-datum-role", carrier = &carrier.name, role = carrier.role.name()),
                    remedy: phrase!("doors-datum-role-remedy"),
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
                        problem: phrase!("doors-which-target", kit = &kit.name, targets = targets.join(", ")),
                        remedy: phrase!("doors-which-target-remedy", target = targets[0]),
                    });
                }
                None if targets.is_empty() => {
                    return Err(Problem {
                        key: format!("check[{i}].quantity"),
                        problem: phrase!("doors-kit-no-target", kit = &kit.name),
                        remedy: phrase!("doors-kit-no-target-remedy"),
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
    let what = if key.ends_with("target") { "target" } else { "any" };
    Problem {
        key,
        problem: phrase!("doors-no-carrier", name = name, what = what, kit = &kit.name),
        remedy: did_you_mean(name, known),
    }
}
