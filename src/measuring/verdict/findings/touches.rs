//! What a finding of level stop or void leaves of the figures, and what it leaves open.

use super::Case;
use super::suspects::{LEVEL, RIVAL};
use crate::marker::Role;
use crate::pose::Extra;
use crate::quantity::Quantity;
use crate::words::{Phrase, phrase};

/// The figures that a finding spoils while it stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Touches {
    /// None, and moves by them are right.
    Nothing,
    /// None, but what they are about is over or incomplete: nothing is moved by them.
    MovesOnly,
    /// All but these.
    AllBut(&'static [Quantity]),
    /// All.
    Everything,
}

impl Touches {
    /// Whether a quantity's figure is not to be trusted.
    pub fn spoils(self, quantity: Quantity) -> bool {
        match self {
            Touches::Nothing | Touches::MovesOnly => false,
            Touches::AllBut(whole) => !whole.contains(&quantity),
            Touches::Everything => true,
        }
    }

    /// Whether any figure is not to be trusted.
    pub fn spoils_any(self) -> bool {
        matches!(self, Touches::AllBut(_) | Touches::Everything)
    }

    /// Whether nobody is told to move anything.
    pub fn holds_moves(self) -> bool {
        self != Touches::Nothing
    }
}

/// One explanation that a finding leaves open, as something that can be measured with.
#[derive(Debug, Clone, PartialEq)]
pub enum Open {
    /// Carriers stood elsewhere in some photos: where the others show them counts.
    Apart {
        /// Indices in the kit.
        carriers: Vec<usize>,
        /// The photos in which they are bodies of their own.
        photos: Vec<usize>,
    },
    /// The markers on some carriers have another size.
    Size(Vec<usize>),
    /// Some photos have other focal lengths.
    Focal(Vec<usize>),
    /// Some photos were taken through another lens.
    Lens(Vec<usize>),
    /// Some sheets are no part of the floor.
    OffFloor(Vec<usize>),
    /// A photo shows something else.
    WithoutPhoto(usize),
    /// A plate is not flush: its wheel's heading is another plate's within what toe can be.
    NotFlush {
        /// Index in the kit.
        carrier: usize,
        /// Turn about its own z that makes the axle's headings equal, degrees.
        turn_deg: f64,
    },
    /// The readings that were used are wrong.
    WithoutReadings,
    /// What was typed is wrong, the photos are right.
    AsMeasured,
}

impl Case<'_> {
    /// What the best explanation of the photos' misfit, and each that explains
    /// almost as much, leave open.
    pub(super) fn open(&self) -> Vec<Open> {
        let Some(best) = self.suspects.first() else { return Vec::new() };
        let near = self.suspects.iter().filter(|s| best.weight - s.weight < RIVAL && s.chance < LEVEL);
        let mut all: Vec<Open> = Vec::new();
        // Which of a carrier's markers are where they belong nothing tells: there is nothing to measure with.
        if near.clone().any(|s| matches!(s.extra, Extra::Displaced { .. })) {
            return all;
        }
        for open in near.flat_map(|s| self.open_by(&s.extra)) {
            if !all.contains(&open) {
                all.push(open);
            }
        }
        all
    }

    /// What one explanation leaves open: of two places, two planes, either.
    pub(super) fn open_by(&self, extra: &Extra) -> Vec<Open> {
        match extra {
            Extra::CarrierMoved { carrier, photos } => self.either(&[*carrier], photos),
            Extra::GroupRolled { carriers, photos, .. } | Extra::GroupMoved { carriers, photos, .. } => {
                self.either(carriers, photos)
            }
            Extra::Scale { carriers } => vec![Open::Size(carriers.clone())],
            Extra::Focal { photos } => vec![Open::Focal(photos.clone())],
            // Without it all else fits, and stands where it is said to stand.
            Extra::MarkerOff { .. } | Extra::Displaced { .. } => Vec::new(),
            Extra::HalfTurned { photos, .. } => vec![Open::Lens(photos.clone())],
            Extra::Lens { photos } => {
                let each = photos.iter().filter(|_| photos.len() > 1).map(|j| Open::Lens(vec![*j]));
                std::iter::once(Open::Lens(photos.clone())).chain(each).collect()
            }
            Extra::OffFloor { carriers, .. } if carriers.len() == 1 => vec![Open::OffFloor(carriers.clone())],
            Extra::OffFloor { carriers, .. } => {
                let nearer = self.sheets().into_iter().filter(|k| !carriers.contains(k)).collect();
                vec![Open::OffFloor(carriers.clone()), Open::OffFloor(nearer)]
            }
        }
    }

    /// As the photos show it that are named, and as the others do.
    fn either(&self, carriers: &[usize], photos: &[usize]) -> Vec<Open> {
        let others = self.used().into_iter().filter(|j| !photos.contains(j)).collect();
        [photos.to_vec(), others].map(|photos| Open::Apart { carriers: carriers.to_vec(), photos }).into()
    }

    fn used(&self) -> Vec<usize> {
        let scene = self.scene.map_or(&[][..], |s| &s.photos);
        (0..scene.len()).filter(|j| scene[*j].is_some()).collect()
    }

    /// The floor sheets that were seen.
    pub(super) fn sheets(&self) -> Vec<usize> {
        let seen = |k: &usize| self.scene.is_some_and(|s| s.carriers[*k].is_some());
        self.kit.with_role(Role::Floor).filter(seen).collect()
    }

    /// An explanation as what stands before "it would be ...".
    pub(crate) fn open_words(&self, open: &Open) -> Phrase {
        match open {
            Open::Apart { carriers, photos } => {
                let others: Vec<usize> = self.used().into_iter().filter(|j| !photos.contains(j)).collect();
                let body = match carriers.as_slice() {
                    [one] => self.body(*one),
                    _ => phrase!("verdict-body", role = "vehicle"),
                };
                phrase!("findings-with-place", body = body, count = others.len(), photos = self.files(&others))
            }
            Open::Size(carriers) => match carriers.as_slice() {
                [one] => phrase!("findings-with-size", body = self.body(*one)),
                _ => phrase!("findings-with-sizes"),
            },
            Open::Focal(photos) => phrase!("findings-with-focal", photos = self.files(photos)),
            Open::Lens(photos) => phrase!("findings-with-lens", photos = self.files(photos)),
            Open::OffFloor(carriers) if carriers.len() == self.sheets().len() => phrase!("findings-with-rear-floor"),
            Open::OffFloor(carriers) => {
                phrase!("findings-with-floor", count = carriers.len(), sheets = self.own_names(carriers))
            }
            Open::WithoutPhoto(j) => phrase!("verdict-without-photo", photo = self.photos[*j].file),
            Open::NotFlush { carrier, .. } => phrase!("findings-with-not-flush", body = self.body(*carrier)),
            Open::WithoutReadings => phrase!("findings-without-readings"),
            Open::AsMeasured => phrase!("findings-with-typed-wrong"),
        }
    }
}
