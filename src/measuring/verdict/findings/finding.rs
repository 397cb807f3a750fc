//! One finding, and the kind of finding that it is.

use super::case::Case;
use super::touches::{Open, Touches};
use crate::quantity::Quantity;
use crate::verdict::ladder::Level;
use crate::words::{Language, Phrase};

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
