//! A language's messages, parsed once when first asked for.

use std::sync::LazyLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use crate::{Figure, Language, files, pseudo};

/// One language's messages.
pub(crate) struct Lexicon {
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
        Lexicon { bundle }
    }

    /// A message as text; nothing where the key, a variable or an attribute is not known.
    pub(crate) fn say(&self, key: &str, values: &FluentArgs) -> Option<String> {
        let (key, attribute) = match key.split_once('.') {
            Some((key, attribute)) => (key, Some(attribute)),
            None => (key, None),
        };
        let message = self.bundle.get_message(key)?;
        let pattern = match attribute {
            Some(name) => message.get_attribute(name)?.value(),
            None => message.value()?,
        };
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(values), &mut errors);
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
