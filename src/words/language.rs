//! The languages and how one is chosen.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A language that people may read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default, Serialize, Deserialize, JsonSchema)]
pub enum Language {
    /// English, the reference.
    #[default]
    #[serde(rename = "en")]
    English,
    /// German.
    #[serde(rename = "de")]
    German,
    /// Spanish.
    #[serde(rename = "es")]
    Spanish,
    /// French.
    #[serde(rename = "fr")]
    French,
    /// English made longer and accented: shows what is not translated and what breaks.
    #[serde(rename = "en-XA")]
    Pseudo,
}

impl Language {
    /// Those for people.
    pub const ALL: [Language; 4] = [Language::English, Language::German, Language::Spanish, Language::French];

    /// Its tag (BCP 47), as in `lang` of a page.
    pub fn tag(self) -> &'static str {
        match self {
            Language::English => "en",
            Language::German => "de",
            Language::Spanish => "es",
            Language::French => "fr",
            Language::Pseudo => "en-XA",
        }
    }

    /// Its own name, for choosing it.
    pub fn own_name(self) -> &'static str {
        match self {
            Language::English => "English",
            Language::German => "Deutsch",
            Language::Spanish => "Español",
            Language::French => "Français",
            Language::Pseudo => "[Ƥşḗŭḓǿ]",
        }
    }

    /// Whether somebody of the trade whose language it is has read it.
    pub fn is_proofread(self) -> bool {
        matches!(self, Language::English | Language::German | Language::Pseudo)
    }

    /// Whether decimals have a comma.
    pub(crate) fn has_decimal_comma(self) -> bool {
        matches!(self, Language::German | Language::Spanish | Language::French)
    }

    /// Of a tag or a locale's name: `de`, `de-AT`, `de_DE.UTF-8`; `None`: one that is not spoken here.
    pub fn of_tag(tag: &str) -> Option<Self> {
        let tag = tag.trim();
        if tag.eq_ignore_ascii_case(Language::Pseudo.tag()) {
            return Some(Language::Pseudo);
        }
        let first = tag.split(['-', '_', '.', '@']).next().unwrap_or_default();
        if first.eq_ignore_ascii_case("C") || first.eq_ignore_ascii_case("POSIX") {
            return Some(Language::English);
        }
        Self::ALL.into_iter().find(|l| l.tag().eq_ignore_ascii_case(first))
    }

    /// Of an `Accept-Language` header: the first that is spoken here, in its order.
    pub fn of_header(header: &str) -> Option<Self> {
        header.split(',').find_map(|part| Self::of_tag(part.split(';').next()?))
    }

    /// Of the environment as POSIX has it: `LC_ALL`, else `LC_MESSAGES`, else
    /// `LANG`; the first that is set counts, English where it is not spoken here.
    pub fn of_environment() -> Self {
        let set = |name: &&str| std::env::var(name).ok().filter(|v| !v.is_empty());
        let locale = ["LC_ALL", "LC_MESSAGES", "LANG"].iter().find_map(set);
        locale.and_then(|l| Self::of_tag(&l)).unwrap_or_default()
    }
}

/// Whose wish for a language counts: what was typed, else the job's own, else
/// that of whoever asked (the environment, the browser).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wish {
    /// With the command.
    pub typed: Option<Language>,
    /// Where nobody else says.
    pub otherwise: Language,
}

impl Wish {
    /// The language of a job's report.
    pub fn for_job(self, own: Option<Language>) -> Language {
        self.typed.or(own).unwrap_or(self.otherwise)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tags_headers_and_locales_are_told() {
        assert_eq!(Language::of_tag("de_AT.UTF-8"), Some(Language::German));
        assert_eq!(Language::of_tag("C.UTF-8"), Some(Language::English));
        assert_eq!(Language::of_tag("en-xa"), Some(Language::Pseudo));
        assert_eq!(Language::of_tag("pl"), None);
        assert_eq!(Language::of_header("pl, fr-CH;q=0.8, de;q=0.7"), Some(Language::French));
        assert_eq!(Language::of_header("*"), None);
    }
}
