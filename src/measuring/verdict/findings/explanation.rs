//! What a code means, for people who meet it in a report.

use crate::verdict::Level;
use crate::words::{Language, Phrase};

/// A code whose words are the message `finding-CODE`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Explanation {
    /// The code.
    pub code: &'static str,
    /// How much it weighs.
    pub level: Level,
}

impl Explanation {
    pub(super) const fn of(code: &'static str, level: Level) -> Self {
        Explanation { code, level }
    }

    /// Its name for people, not yet in any language.
    pub fn title_phrase(&self) -> Phrase {
        self.part("title")
    }

    /// Its name for people.
    pub fn title(&self, language: Language) -> String {
        self.part("title").say(language)
    }

    /// What it says.
    pub fn meaning(&self, language: Language) -> String {
        self.part("meaning").say(language)
    }

    /// How that comes about in a bay.
    pub fn cause(&self, language: Language) -> String {
        self.part("cause").say(language)
    }

    /// How to see it with one's own eyes.
    pub fn look(&self, language: Language) -> String {
        self.part("look").say(language)
    }

    /// What to do.
    pub fn remedy(&self, language: Language) -> String {
        self.part("remedy").say(language)
    }

    /// What was done in the gallery's bay to show it.
    pub fn scene(&self, language: Language) -> String {
        self.part("scene").say(language)
    }

    fn part(&self, attribute: &str) -> Phrase {
        Phrase::new(format!("finding-{}.{attribute}", self.code))
    }
}
