//! Which camera took a photo, as far as patterns can say.

use super::digest::Digest;
use super::search::{Found, MATCH_PCE, alike};

/// No chance is stated below this: none of 58 pairs of real strangers matched, whose bound at 95 % is three of 58
/// (`docs/sensor-pattern.md`).
pub const MEASURED_CHANCE: f64 = 0.05;
/// "Another camera" needs an expected energy of the claimed one's pattern of so many times [`MATCH_PCE`].
const MUST_SHOW: f64 = 4.0;

/// What the patterns say of one photo.
#[derive(Debug, Clone, PartialEq)]
pub enum Says {
    /// It carries the pattern of the camera that it names.
    ThisCamera {
        /// Chance that a photo of another camera would, at most.
        chance: f64,
        /// Where.
        found: Found,
    },
    /// It carries another known camera's pattern, and would have shown its own.
    AnotherCamera {
        /// That camera.
        camera: String,
        /// Chance that a photo which is not that camera's would, at most.
        chance: f64,
        /// Where.
        found: Found,
    },
    /// Neither.
    CantTell(Doubt),
}

/// Why not.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Doubt {
    /// No pattern of the camera that the photo names is known.
    NoPattern,
    /// Its pattern does not show, nor another one's.
    Faint,
    /// Another one's shows, but too faintly to say that its own had to.
    MightHide,
    /// Another one's shows, and the two patterns are alike: one camera under two names, or something that both add.
    Alike,
}

/// The chance that one of so many places without the pattern reaches an energy: correlation there is normal, so that it
/// is at most the normal tail (Mills's bound) times the places; never below [`MEASURED_CHANCE`].
fn chance(found: &Found) -> f64 {
    let tail = (-0.5 * found.pce).exp() / (std::f64::consts::TAU * found.pce).sqrt();
    (tail * found.places as f64).max(MEASURED_CHANCE)
}

/// What is to be said. `claimed` is the pattern of the camera that the photo names with what was found of it; `others`
/// are the other known ones, which need not be looked for where the claimed one shows.
pub fn judge<'a>(claimed: Option<(&Digest, Found)>, others: impl IntoIterator<Item = (&'a Digest, Found)>) -> Says {
    let Some((own, here)) = claimed else { return Says::CantTell(Doubt::NoPattern) };
    if here.pce >= MATCH_PCE {
        return Says::ThisCamera { chance: chance(&here), found: here };
    }
    let shown = others.into_iter().filter(|(_, found)| found.pce >= MATCH_PCE);
    let Some((other, there)) = shown.max_by(|a, b| a.1.pce.total_cmp(&b.1.pce)) else {
        return Says::CantTell(Doubt::Faint);
    };
    if alike(own, other) {
        return Says::CantTell(Doubt::Alike);
    }
    // What both patterns are worth on their own photos tells what the claimed one would have reached on this one.
    let expected = there.pce * f64::from(own.median_pce) / f64::from(other.median_pce.max(1));
    if expected < MUST_SHOW * MATCH_PCE {
        return Says::CantTell(Doubt::MightHide);
    }
    Says::AnotherCamera { camera: other.camera.clone(), chance: chance(&there), found: there }
}
