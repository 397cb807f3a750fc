//! A message with its values, not yet in any language.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::{Language, Value, lexicon};

/// A message's key and what is put into it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Phrase {
    /// The message's key.
    pub key: String,
    /// Its figures, names and phrases, by variable.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub with: BTreeMap<String, Value>,
}

impl Phrase {
    /// A message without values; `key` may name an attribute: `code.title`.
    pub fn new(key: impl Into<String>) -> Self {
        Phrase { key: key.into(), with: BTreeMap::new() }
    }

    /// With one more value.
    #[must_use]
    pub fn with(mut self, name: &str, value: impl Into<Value>) -> Self {
        self.with.insert(name.to_owned(), value.into());
        self
    }

    /// With its texts and those of the phrases in it changed: a folder's path left out of file names.
    #[must_use]
    pub fn with_texts(self, change: &dyn Fn(&str) -> String) -> Self {
        let with = self.with.into_iter().map(|(name, value)| (name, value.with_texts(change))).collect();
        Phrase { key: self.key, with }
    }

    /// In a language; in English where that lacks it, the bare key where no language knows it.
    pub fn say(&self, language: Language) -> String {
        self.known(language).unwrap_or_else(|| self.key.clone())
    }

    /// The same, or nothing where no language knows it: the record is of a newer program.
    pub fn known(&self, language: Language) -> Option<String> {
        lexicon::of(language).say(self).or_else(|| lexicon::of(Language::English).say(self))
    }
}
