//! A phrase as text of a language.

use fluent_bundle::types::{FluentNumber, FluentNumberOptions};
use fluent_bundle::{FluentArgs, FluentValue};

use crate::{Figure, Language, Phrase, Value, dates, lexicon};

impl Phrase {
    /// In a language; in English where that lacks it, the bare key where no language knows it.
    pub fn say(&self, language: Language) -> String {
        self.known(language).unwrap_or_else(|| self.key.clone())
    }

    /// The same, or nothing where no language knows it: the record is of a newer program.
    pub fn known(&self, language: Language) -> Option<String> {
        self.found(language).or_else(|| self.found(Language::English))
    }

    /// From a language's own messages.
    fn found(&self, language: Language) -> Option<String> {
        let mut values = FluentArgs::new();
        for (name, value) in &self.with {
            values.set(name.as_str(), value.resolve(language));
        }
        lexicon::of(language).say(&self.key, &values)
    }
}

impl Value {
    /// As the message library takes it.
    fn resolve(&self, language: Language) -> FluentValue<'static> {
        match self {
            Value::Count(n) => FluentValue::from(*n as f64),
            Value::Figure(figure) => number(*figure),
            other => FluentValue::from(other.say(language)),
        }
    }

    /// As text.
    pub fn say(&self, language: Language) -> String {
        match self {
            Value::Count(n) => n.to_string(),
            Value::Figure(figure) => figure.say(language),
            Value::Phrase(phrase) => phrase.say(language),
            Value::Moment { moment } => dates::say(moment, language),
            Value::All(values) => listed(values, language),
            Value::Text(text) => text.clone(),
        }
    }
}

fn number(figure: Figure) -> FluentValue<'static> {
    let digits = Some(usize::from(figure.digits));
    let options = FluentNumberOptions {
        minimum_fraction_digits: digits,
        maximum_fraction_digits: digits,
        ..FluentNumberOptions::default()
    };
    FluentValue::Number(FluentNumber::new(figure.value, options))
}

/// "a", "a and b", "a, b and c".
fn listed(values: &[Value], language: Language) -> String {
    let texts: Vec<String> = values.iter().map(|v| v.say(language)).collect();
    match texts.split_last() {
        Some((last, [])) => last.clone(),
        Some((last, others)) => phrase!("list-and", others = others.join(", "), last = last.as_str()).say(language),
        None => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

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
