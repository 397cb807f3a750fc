//! What one verification produced, as the record is made of it.

use std::collections::BTreeMap;

use crate::folder::JobFolder;
use crate::job::opening::{Assignment, Looked};
use crate::measure::Measurement;
use crate::pose::{Problem, Scene};
use crate::quantity::{Estimate, Quantity};
use crate::verdict::findings::{Compared, Detectable, Moved};
use crate::verdict::{Checked, Finding, Sensitivity};
use crate::words::Phrase;

/// Everything that one verification produced.
pub(in crate::job) struct Parts<'a> {
    pub(in crate::job) folder: &'a JobFolder,
    pub(in crate::job) photos: &'a [Looked],
    pub(in crate::job) assignment: &'a Assignment,
    pub(in crate::job) problem: &'a Problem<'a>,
    pub(in crate::job) scene: Option<&'a Scene>,
    pub(in crate::job) why_no_scene: Option<&'a Phrase>,
    pub(in crate::job) measurement: Option<&'a Measurement>,
    pub(in crate::job) measured: BTreeMap<String, (Quantity, Estimate)>,
    pub(in crate::job) checks: &'a [Checked],
    pub(in crate::job) without: Option<&'a [Checked]>,
    pub(in crate::job) readings: &'a [Compared],
    pub(in crate::job) findings: &'a [Finding],
    pub(in crate::job) detectable: &'a [Detectable],
    pub(in crate::job) sensitivity: &'a [Sensitivity],
    pub(in crate::job) phases: &'a [Moved],
    /// Names of bodies that are where a stand stood before it was moved.
    pub(in crate::job) earlier_stands: &'a [String],
}
