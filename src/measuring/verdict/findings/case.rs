//! Everything that a finding may look at.

use std::collections::BTreeMap;

use super::moved::Moved;
use super::photo_problem::PhotoProblem;
use super::suspects::Suspect;
use crate::credentials::Credentials;
use crate::detect::{Coefficients, Grain, Sightings};
use crate::folder::{JobFile, Reading, Unlisted};
use crate::marker::{Kit, Role};
use crate::measure::{Ask, CarrierPose, Measurement};
use crate::photo::{Clearness, Exif, Light, Traces};
use crate::pose::{Problem, Scene};
use crate::quantity::{Estimate, Quantity};
use crate::setup::{ReferenceLine, Setup};
use crate::verdict::check::Checked;
use crate::verdict::sensitivity::Sensitivity;
use crate::verdict::{Level, Verdict, words};
use crate::words::{Phrase, Value};

/// Everything that a finding may look at.
pub struct Case<'a> {
    /// The marker kit.
    pub kit: &'a Kit,
    /// The set-up sheet.
    pub setup: &'a Setup,
    /// The job file.
    pub job: &'a JobFile,
    /// Photos that lie beside the job's and take no part.
    pub unlisted: &'a [Unlisted],
    /// The photos, in the job's order.
    pub photos: &'a [PhotoFacts<'a>],
    /// The adjustment, where there is one; photo indices are those of `photos`.
    pub scene: Option<&'a Scene>,
    /// What the adjustment saw.
    pub problem: Option<&'a Problem<'a>>,
    /// The measurement.
    pub measurement: Option<&'a Measurement>,
    /// The decided checks, in the sheet's order.
    pub checks: &'a [Checked],
    /// The sheet's reference line.
    pub line: ReferenceLine,
    /// What could explain the photos' misfit, best first.
    pub suspects: &'a [Suspect],
    /// The readings against the photos.
    pub readings: &'a [Compared],
    /// Every quantity that the photos determine, against the sheet's line.
    pub measured: &'a BTreeMap<String, (Quantity, Estimate)>,
    /// What was asked besides because a check is outside.
    pub elsewhere: &'a [(Ask, Estimate)],
    /// What the answers hang on ([`Sensitivity`]).
    pub sensitivity: &'a [Sensitivity],
    /// How far stand and vehicle moved between before and after; empty where not photographed.
    pub phases: &'a [Moved],
    /// By photo, how often the stand had been moved when it was taken; empty where it was not moved.
    pub after_move: &'a [u32],
}

/// What a finding needs to know of one photo.
pub struct PhotoFacts<'a> {
    /// Its name in the job.
    pub file: &'a str,
    /// Its EXIF.
    pub exif: &'a Exif,
    /// What tells that its file is no longer as the camera wrote it; `None` where it was not looked for.
    pub traces: Option<&'a Traces>,
    /// What was found in it.
    pub sightings: &'a Sightings,
    /// The noise of each of these markers, where it can be told; empty where its pixels were not looked at.
    pub grain: &'a [Option<Grain>],
    /// How the pixels of each of these markers were compressed; empty where they were not looked at.
    pub coefficients: &'a [Coefficients],
    /// Why it did not take part, if it did not.
    pub problem: Option<PhotoProblem>,
    /// SHA-256 of its bytes.
    pub sha256: &'a str,
    /// Stored width and height, px.
    pub size_px: [usize; 2],
    /// How bright it is where; `None` where its pixels were not looked at.
    pub light: Option<&'a Light>,
    /// Whether it is dark or blurred; `None` where markers tell that.
    pub clearness: Option<&'a Clearness>,
    /// What was found in its mirror image, where nothing was found in itself.
    pub mirrored: Option<&'a Sightings>,
    /// What its camera signed about its bytes; `None` where it carries nothing, or nothing that can be read here.
    pub credentials: Option<&'a Credentials>,
}

/// A reading compared with the photos.
#[derive(Debug, Clone, PartialEq)]
pub struct Compared {
    /// The reading.
    pub reading: Reading,
    /// What the photos say.
    pub photo: Option<Estimate>,
    /// E_n after ISO/IEC 17043.
    pub normalized_error: Option<f64>,
}

impl Compared {
    /// A reading against what the photos say of it.
    pub fn of(reading: &Reading, photo: Option<Estimate>) -> Self {
        let normalized_error = photo.and_then(|p| reading.estimate().normalized_error(&p));
        Compared { reading: reading.clone(), photo, normalized_error }
    }

    /// Whether reading and photos are known to agree.
    pub fn agrees(&self) -> bool {
        self.normalized_error.is_some_and(|e| e.abs() <= 1.0)
    }

    /// Whether reading and photos exclude each other.
    pub fn is_excluded(&self) -> bool {
        self.normalized_error.is_some_and(|e| e.abs() > 1.0)
    }
}

impl Case<'_> {
    /// A quantity that the photos determine, against the sheet's line.
    pub(crate) fn measured(&self, quantity: Quantity) -> Option<Estimate> {
        self.measured.values().find(|(q, _)| *q == quantity).map(|(_, e)| *e)
    }

    /// Where the first carrier of a role is, where the photos determine it.
    pub(super) fn placed(&self, role: Role) -> Option<&CarrierPose> {
        self.measurement?.carriers[self.kit.with_role(role).next()?].as_ref()
    }

    /// A carrier within a sentence.
    pub(super) fn body(&self, k: usize) -> Phrase {
        words::body(self.kit, k)
    }

    /// A carrier at a sentence's beginning.
    pub(super) fn body_first(&self, k: usize) -> Phrase {
        words::body_first(self.kit, k)
    }

    /// Carriers by their own names: "floor-1 and floor-2".
    pub(super) fn own_names(&self, carriers: &[usize]) -> Value {
        carriers.iter().map(|k| self.kit.carriers[*k].name.as_str()).collect::<Vec<_>>().into()
    }

    /// The level of what makes figures less well known: a warning where a check is not proven.
    pub(super) fn level_of_lost_precision(&self) -> Level {
        let not_proven = self.checks.iter().any(|c| c.verdict == Verdict::NotProven);
        if not_proven { Level::Warn } else { Level::Note }
    }

    /// Photos by name: "a.jpg", "b.jpg and c.jpg".
    pub(super) fn files(&self, photos: &[usize]) -> Value {
        photos.iter().map(|j| self.photos[*j].file).collect::<Vec<_>>().into()
    }
}
