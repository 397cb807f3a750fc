//! What one verification produced, as the record is made of it.

use std::collections::BTreeMap;

use super::assign::Assignment;
use super::look::Looked;
use crate::folder::JobFolder;
use crate::measure::Measurement;
use crate::pose::{Problem, Scene};
use crate::quantity::{Estimate, Quantity};
use crate::verdict::findings::{Compared, Detectable, Moved};
use crate::verdict::{Checked, Finding, Sensitivity};
use crate::words::Phrase;

/// Everything that one verification produced.
pub(super) struct Parts<'a> {
    pub(super) folder: &'a JobFolder,
    pub(super) photos: &'a [Looked],
    pub(super) assignment: &'a Assignment,
    pub(super) problem: &'a Problem<'a>,
    pub(super) scene: Option<&'a Scene>,
    pub(super) why_no_scene: Option<&'a Phrase>,
    pub(super) measurement: Option<&'a Measurement>,
    pub(super) measured: BTreeMap<String, (Quantity, Estimate)>,
    pub(super) checks: &'a [Checked],
    pub(super) without: Option<&'a [Checked]>,
    pub(super) readings: &'a [Compared],
    pub(super) findings: &'a [Finding],
    pub(super) detectable: &'a [Detectable],
    pub(super) sensitivity: &'a [Sensitivity],
    pub(super) phases: &'a [Moved],
    /// Names of bodies that are where a stand stood before it was moved.
    pub(super) earlier_stands: &'a [String],
}
