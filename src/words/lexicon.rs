//! A language's messages, parsed room by room when first asked for: most commands speak of little.

use std::sync::{LazyLock, OnceLock};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use crate::{Figure, Language, files, pseudo};

/// One language's messages.
pub(crate) struct Lexicon {
    language: Language,
    /// In the order of the files.
    rooms: Vec<OnceLock<FluentBundle<FluentResource>>>,
}

/// Those of a language.
pub(crate) fn of(language: Language) -> &'static Lexicon {
    static ENGLISH: LazyLock<Lexicon> = LazyLock::new(|| Lexicon::new(Language::English));
    static GERMAN: LazyLock<Lexicon> = LazyLock::new(|| Lexicon::new(Language::German));
    static SPANISH: LazyLock<Lexicon> = LazyLock::new(|| Lexicon::new(Language::Spanish));
    static FRENCH: LazyLock<Lexicon> = LazyLock::new(|| Lexicon::new(Language::French));
    static PSEUDO: LazyLock<Lexicon> = LazyLock::new(|| Lexicon::new(Language::Pseudo));
    match language {
        Language::English => &ENGLISH,
        Language::German => &GERMAN,
        Language::Spanish => &SPANISH,
        Language::French => &FRENCH,
        Language::Pseudo => &PSEUDO,
    }
}

impl Lexicon {
    fn new(language: Language) -> Self {
        Lexicon { language, rooms: files::of(language).iter().map(|_| OnceLock::new()).collect() }
    }

    /// The messages of a key's room.
    fn room(&self, key: &str) -> Option<&FluentBundle<FluentResource>> {
        let files = files::of(self.language);
        let at = files.iter().position(|(room, _)| *room == files::room_of(key))?;
        Some(self.rooms[at].get_or_init(|| parsed(self.language, files[at].1)))
    }

    /// A message as text; nothing where the key, a variable or an attribute is not known.
    pub(crate) fn say(&self, key: &str, values: &FluentArgs) -> Option<String> {
        let (key, attribute) = match key.split_once('.') {
            Some((key, attribute)) => (key, Some(attribute)),
            None => (key, None),
        };
        let room = self.room(key)?;
        let message = room.get_message(key)?;
        let pattern = match attribute {
            Some(name) => message.get_attribute(name)?.value(),
            None => message.value()?,
        };
        let mut errors = Vec::new();
        let text = room.format_pattern(pattern, Some(values), &mut errors);
        errors.is_empty().then(|| text.into_owned())
    }
}

fn parsed(language: Language, text: &str) -> FluentBundle<FluentResource> {
    let locale: LanguageIdentifier = language.tag().parse().unwrap_or_default();
    let mut bundle = FluentBundle::new_concurrent(vec![locale]);
    bundle.set_use_isolating(false);
    bundle.set_formatter(Some(if language.has_decimal_comma() { with_comma } else { with_point }));
    let text = if language == Language::Pseudo { pseudo::of(text) } else { text.to_owned() };
    // A file with a mistake keeps its good messages; a test finds the others.
    let resource = FluentResource::try_new(text).unwrap_or_else(|(good, _)| good);
    bundle.add_resource_overriding(resource);
    bundle
}

fn with_point<M>(value: &FluentValue, _: &M) -> Option<String> {
    number(value, Language::English)
}

fn with_comma<M>(value: &FluentValue, _: &M) -> Option<String> {
    number(value, Language::German)
}

fn number(value: &FluentValue, language: Language) -> Option<String> {
    let FluentValue::Number(number) = value else { return None };
    let digits = number.options.minimum_fraction_digits.and_then(|d| u8::try_from(d).ok());
    Some(digits.map_or_else(|| Figure::plain(number.value), |d| Figure::fixed(number.value, d)).say(language))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_message_stands_in_the_room_that_its_key_names() {
        for language in [Language::English, Language::German, Language::Spanish, Language::French] {
            for (room, text) in files::of(language) {
                let key = |line: &str| Some(line.split_once(" =")?.0.to_owned());
                let is_key = |key: &String| key.starts_with(|c: char| c.is_ascii_lowercase());
                let keys: Vec<String> = text.lines().filter_map(key).filter(is_key).collect();
                assert!(!keys.is_empty(), "{room}");
                for key in keys {
                    assert_eq!(files::room_of(&key), *room, "{key}");
                    assert!(of(language).room(&key).is_some_and(|r| r.has_message(&key)), "{key}");
                }
            }
        }
    }
}
