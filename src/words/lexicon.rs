//! A language's messages, parsed once when first asked for.

use std::sync::LazyLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use crate::{Figure, Language, Phrase, files, pseudo};

/// One language's messages.
pub(crate) struct Lexicon {
    language: Language,
    bundle: FluentBundle<FluentResource>,
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
        let locale: LanguageIdentifier = language.tag().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![locale]);
        bundle.set_use_isolating(false);
        bundle.set_formatter(Some(if language.has_decimal_comma() { with_comma } else { with_point }));
        for (_, text) in files::of(language) {
            let text = if language == Language::Pseudo { pseudo::of(text) } else { (*text).to_owned() };
            // A file with a mistake keeps its good messages; a test finds the others.
            let resource = FluentResource::try_new(text).unwrap_or_else(|(good, _)| good);
            bundle.add_resource_overriding(resource);
        }
        Lexicon { language, bundle }
    }

    /// A phrase as text; nothing where the key, a variable or an attribute is not known.
    pub(crate) fn say(&self, phrase: &Phrase) -> Option<String> {
        let (key, attribute) = match phrase.key.split_once('.') {
            Some((key, attribute)) => (key, Some(attribute)),
            None => (phrase.key.as_str(), None),
        };
        let message = self.bundle.get_message(key)?;
        let pattern = match attribute {
            Some(name) => message.get_attribute(name)?.value(),
            None => message.value()?,
        };
        let mut values = FluentArgs::new();
        for (name, value) in &phrase.with {
            values.set(name.as_str(), value.resolve(self.language));
        }
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(&values), &mut errors);
        errors.is_empty().then(|| text.into_owned())
    }
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
    use crate::{Value, phrase, say};

    #[test]
    fn figures_take_the_language_s_decimal_sign_and_lists_its_joint() {
        let all = |language| {
            let names: Value = vec!["a", "b", "c"].into();
            (Figure::fixed(-12.5, 2).say(language), names.say(language))
        };
        assert_eq!(all(Language::English), ("-12.50".to_owned(), "a, b and c".to_owned()));
        assert_eq!(all(Language::German), ("-12,50".to_owned(), "a, b und c".to_owned()));
        assert_eq!(Figure::fixed(-0.001, 1).say(Language::French), "0,0");
        assert_eq!(Figure::plain(0.25).say(Language::Spanish), "0,25");
        assert_eq!(Value::moment("2026-11-25T10:30:00+01:00").say(Language::German), "25.11.2026 10:30 +01:00");
    }

    #[test]
    fn a_phrase_survives_json_and_an_unknown_key_is_nothing() {
        let inner = phrase!("list-and", others = "x", last = Figure::fixed(0.5, 1));
        let phrase = phrase!("list-and", others = inner, last = 3_usize);
        let read: Phrase = serde_json::from_str(&serde_json::to_string(&phrase).unwrap()).unwrap();
        assert_eq!(read, phrase);
        assert_eq!(read.say(Language::German), "x und 0,5 und 3");
        assert_eq!(Phrase::new("of-a-newer-program").known(Language::German), None);
        assert_eq!(phrase!("list-and", others = "x").known(Language::English), None);
    }

    #[test]
    fn the_pseudo_language_brackets_what_it_says() {
        let text = say!(Language::Pseudo, "list-and", others = "a", last = "b");
        assert!(text.starts_with('⟦') && text.ends_with('⟧') && text.contains("àñđ"), "{text}");
    }
}
