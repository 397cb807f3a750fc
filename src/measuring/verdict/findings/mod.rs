//! Known misplacements and mistakes, one file each: what it is, why it
//! matters, how it is found, what the search can and can't see.

use std::collections::BTreeMap;

use crate::detect::{Grain, Sightings};
use crate::folder::JobFile;
use crate::marker::Kit;
use crate::measure::{Ask, Measurement};
use crate::photo::{Clearness, Exif, Light, Traces};
use crate::pose::{Problem, Scene};
use crate::quantity::{Estimate, Quantity};
use crate::setup::{From, ReferenceLine, Setup};
use crate::words::{Language, Phrase, Value, phrase};

use super::check::Checked;
use super::ladder::Level;
use super::sensitivity::Sensitivity;
use super::words;

mod camera_mismatch;
mod card;
mod carrier_not_seen;
mod detectable;
mod explanation;
mod floor_not_level;
mod focal_contradicts;
mod hypotheses;
mod marker_duplicated;
mod markers_without_noise;
mod noise_repeated;
mod not_checked;
mod other_day;
mod other_kit;
mod phases_differ;
mod photo_badly_lit;
mod photo_blurred;
mod photo_edited;
mod photo_light_changed;
mod photo_rendered;
mod photo_resized;
mod photo_reused;
mod photo_zoomed;
mod photos_too_alike;
mod plate_not_seated;
mod plates_swapped;
mod prerequisites;
mod print_scale_wrong;
mod reading_disagrees;
mod sheet_slid;
mod something_moved;
mod stand_misplaced;
mod steering_not_straight;
mod suspects;
mod times_out_of_order;
mod touches;
mod weak_geometry;
mod wrong_datum_suspected;

pub use detectable::{Detectable, detectable};
pub use explanation::{Explanation, explanation, explanations};
pub use hypotheses::asks as alternative_asks;
pub use not_checked::not_checked;
pub use phases_differ::Moved;
pub use photo_reused::{Corners, same_corners, same_view};
pub(super) use plate_not_seated::U_TOTAL_TOE_DEG;
pub use suspects::{Suspect, suspects};
pub use touches::{Open, Touches};

/// Everything that a finding may look at.
pub struct Case<'a> {
    /// The marker kit.
    pub kit: &'a Kit,
    /// The set-up sheet.
    pub setup: &'a Setup,
    /// The job file.
    pub job: &'a JobFile,
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
    /// What could explain the photos' misfit, best first ([`suspects`]).
    pub suspects: &'a [Suspect],
    /// The readings against the photos.
    pub readings: &'a [Compared],
    /// Every quantity that the photos determine, against the sheet's line.
    pub measured: &'a BTreeMap<String, (Quantity, Estimate)>,
    /// What was asked besides because a check is outside ([`alternative_asks`]).
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
}

/// Why a photo did not take part.
#[derive(Debug, Clone, PartialEq)]
pub enum PhotoProblem {
    /// Its size is not the camera file's.
    Resized(Phrase),
    /// Its EXIF names another camera, or no camera file fits.
    OtherCamera(Phrase),
    /// No marker of the kit was found.
    NoMarkers(Unseen),
    /// It shares no carrier with the other photos.
    NotLinked,
    /// It shows nothing that stood still while the stand was moved.
    NotTied {
        /// The move after which it was taken.
        after_move: u32,
    },
    /// Stand or vehicle had moved when it was taken.
    OtherPhase,
}

impl PhotoProblem {
    /// Why, and the remedy: what stands behind the photo's name and a colon.
    pub fn phrase(&self) -> Phrase {
        match self {
            PhotoProblem::Resized(why) | PhotoProblem::OtherCamera(why) => why.clone(),
            PhotoProblem::NoMarkers(unseen) => phrase!("findings-photo-no-markers", why = unseen.phrase()),
            PhotoProblem::NotLinked => phrase!("findings-photo-not-linked"),
            PhotoProblem::NotTied { after_move } => phrase!("findings-photo-not-tied", move = *after_move),
            PhotoProblem::OtherPhase => phrase!("findings-photo-other-phase"),
        }
    }
}

/// Why no marker of the kit was found in a photo.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unseen {
    /// Its markers are others.
    OtherKit,
    /// What its mirror image shows.
    Mirrored,
    /// Too dark.
    Dark,
    /// Blurred.
    Blurred,
    /// Sharp: markers would have been found.
    NotInView,
    /// Too little in it to tell.
    CannotTell,
}

impl Unseen {
    fn phrase(self) -> Phrase {
        match self {
            Unseen::OtherKit => phrase!("findings-unseen-other-kit"),
            Unseen::Mirrored => phrase!("findings-unseen-mirrored"),
            Unseen::Dark => phrase!("findings-unseen-dark"),
            Unseen::Blurred => phrase!("findings-unseen-blurred"),
            Unseen::NotInView => phrase!("findings-unseen-not-in-view"),
            Unseen::CannotTell => phrase!("findings-unseen-cannot-tell"),
        }
    }

    /// By what the picture itself shows.
    pub fn by(clearness: Option<&Clearness>) -> Self {
        match clearness {
            Some(c) if c.is_dark() => Unseen::Dark,
            Some(c) if c.is_blurred() => Unseen::Blurred,
            Some(c) if c.is_sharp() => Unseen::NotInView,
            _ => Unseen::CannotTell,
        }
    }
}

/// A reading compared with the photos.
#[derive(Debug, Clone, PartialEq)]
pub struct Compared {
    /// What was read.
    pub quantity: Quantity,
    /// The datum of a distance.
    pub from: Option<From>,
    /// The reading.
    pub value: f64,
    /// 1 sigma.
    pub u: f64,
    /// What the photos say.
    pub photo: Option<Estimate>,
    /// E_n after ISO/IEC 17043.
    pub normalized_error: Option<f64>,
    /// Whether it entered the adjustment.
    pub used: bool,
}

/// One finding.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// The code.
    pub code: &'static str,
    /// How much it weighs.
    pub level: Level,
    /// The carrier it is about.
    pub carrier: Option<String>,
    /// The photo it is about.
    pub photo: Option<String>,
    /// What, why and the remedy.
    pub message: Phrase,
    /// The figures that it spoils; `None`: those of its rule.
    pub touches: Option<Touches>,
    /// The explanations that it leaves open; none: it can't be said what the figures would be.
    pub open: Vec<Open>,
}

/// A kind of finding.
pub struct Rule {
    /// Its name: the message `finding-rule-NAME` says why it matters and how it is found.
    pub name: &'static str,
    /// The codes it may give.
    pub codes: &'static [&'static str],
    /// The figures that its findings of level stop and void spoil.
    pub touches: Touches,
    /// The search.
    pub find: fn(&Case) -> Vec<Finding>,
}

impl Rule {
    /// Why it matters.
    pub fn rationale(&self, language: Language) -> String {
        Phrase::new(format!("finding-rule-{}.rationale", self.name)).say(language)
    }

    /// How it is found, its limits, and the rate of false alarms it was made for.
    pub fn method(&self, language: Language) -> String {
        Phrase::new(format!("finding-rule-{}.method", self.name)).say(language)
    }
}

/// All rules.
pub const RULES: &[&Rule] = &[
    &stand_misplaced::RULE,
    &something_moved::RULE,
    &sheet_slid::RULE,
    &phases_differ::RULE,
    &plates_swapped::RULE,
    &plate_not_seated::RULE,
    &print_scale_wrong::RULE,
    &camera_mismatch::RULE,
    &photo_zoomed::RULE,
    &photo_resized::RULE,
    &photo_reused::RULE,
    &photo_blurred::RULE,
    &photo_badly_lit::RULE,
    &photo_light_changed::RULE,
    &photos_too_alike::RULE,
    &floor_not_level::RULE,
    &carrier_not_seen::RULE,
    &steering_not_straight::RULE,
    &wrong_datum_suspected::RULE,
    &reading_disagrees::RULE,
    &marker_duplicated::RULE,
    &weak_geometry::RULE,
    &times_out_of_order::RULE,
    &other_day::RULE,
    &photo_edited::RULE,
    &photo_rendered::RULE,
    &noise_repeated::RULE,
    &markers_without_noise::RULE,
    &focal_contradicts::RULE,
    &other_kit::RULE,
    &card::RULE,
    &prerequisites::RULE,
    &not_checked::RULE,
];

/// Runs all rules; the worst findings come first, else in the rules' order.
pub fn find(case: &Case) -> Vec<Finding> {
    let of_rule = |rule: &&Rule| {
        let touching = |f: Finding| Finding { touches: f.touches.or(Some(rule.touches)), ..f };
        (rule.find)(case).into_iter().map(touching).collect::<Vec<_>>()
    };
    let mut all: Vec<Finding> = RULES.iter().flat_map(of_rule).collect();
    // Where the figures can't be trusted nobody guesses from them, and nobody is told to move by them.
    if all.iter().any(|f| f.level == Level::Void) {
        all.retain(|f| f.level <= Level::Stop || !BY_FIGURES.contains(&f.code));
    }
    if all.iter().any(Finding::spoils_any) {
        all.retain(|f| f.level <= Level::Stop || f.code != GUESS);
    }
    if all.iter().any(Finding::holds_moves) {
        all.retain(|f| f.level <= Level::Stop || !stand_misplaced::RULE.codes.contains(&f.code));
    }
    all.sort_by_key(|f| f.level);
    all
}

/// A guess at what a far-off figure could come from.
const GUESS: &str = "wrong-datum-suspected";

/// What follows from the figures alone, besides a misplaced stand.
const BY_FIGURES: [&str; 5] =
    [GUESS, "reading-disagrees", "weak-geometry", "steering-not-straight", "photos-too-alike"];

/// The stand's misplacements by checks that are outside.
pub(super) fn misplaced(case: &Case) -> Vec<Finding> {
    let touches = Some(stand_misplaced::RULE.touches);
    (stand_misplaced::RULE.find)(case).into_iter().map(|f| Finding { touches, ..f }).collect()
}

impl Case<'_> {
    /// A quantity that the photos determine, against the sheet's line.
    pub(crate) fn measured(&self, quantity: Quantity) -> Option<Estimate> {
        self.measured.values().find(|(q, _)| *q == quantity).map(|(_, e)| *e)
    }

    /// A carrier within a sentence.
    fn body(&self, k: usize) -> Phrase {
        words::body(self.kit, k)
    }

    /// A carrier at a sentence's beginning.
    fn body_first(&self, k: usize) -> Phrase {
        words::body_first(self.kit, k)
    }

    /// Carriers by their own names: "floor-1 and floor-2".
    fn own_names(&self, carriers: &[usize]) -> Value {
        carriers.iter().map(|k| self.kit.carriers[*k].name.as_str()).collect::<Vec<_>>().into()
    }

    /// Photos by name: "a.jpg", "b.jpg and c.jpg".
    fn files(&self, photos: &[usize]) -> Value {
        photos.iter().map(|j| self.photos[*j].file).collect::<Vec<_>>().into()
    }

    /// A message, and what else would explain the photos almost as well.
    fn with_rivals(&self, message: Phrase) -> Phrase {
        words::sentences(message, self.rivals())
    }
}

impl Finding {
    /// A finding about the whole job.
    pub(crate) fn new(code: &'static str, level: Level, message: Phrase) -> Self {
        Finding { code, level, carrier: None, photo: None, message, touches: None, open: Vec::new() }
    }

    /// Other figures than those of its rule.
    pub(crate) fn touching(mut self, touches: Touches) -> Self {
        self.touches = Some(touches);
        self
    }

    /// The explanations that it leaves open.
    pub(crate) fn leaving(mut self, open: Vec<Open>) -> Self {
        self.open = open;
        self
    }

    /// What it spoils by its level.
    fn reach(&self) -> Touches {
        let touches = self.touches.unwrap_or(Touches::Everything);
        if self.level <= Level::Stop { touches } else { Touches::Nothing }
    }

    /// Whether a quantity's figure is not to be trusted while it stands.
    pub fn spoils(&self, quantity: Quantity) -> bool {
        self.reach().spoils(quantity)
    }

    /// Whether any figure is not to be trusted while it stands.
    pub fn spoils_any(&self) -> bool {
        self.reach().spoils_any()
    }

    /// Whether nobody is told to move anything while it stands.
    pub fn holds_moves(&self) -> bool {
        self.reach().holds_moves()
    }

    pub(crate) fn on_carrier(mut self, name: &str) -> Self {
        self.carrier = Some(name.to_owned());
        self
    }

    pub(crate) fn in_photo(mut self, file: &str) -> Self {
        self.photo = Some(file.to_owned());
        self
    }
}
