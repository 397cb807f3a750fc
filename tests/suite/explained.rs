//! The words of findings: every code and every rule has all of its texts, in
//! every language its own, and no text is of a code that no rule gives.

use std::collections::BTreeSet;

use baywitness::verdict::findings::{RULES, explanation};
use baywitness::words::{Language, Phrase};

use crate::words::messages;

const OF_A_CODE: [&str; 6] = ["title", "meaning", "cause", "look", "remedy", "scene"];
const OF_A_RULE: [&str; 2] = ["rationale", "method"];

/// The keys that there must be.
fn wanted() -> BTreeSet<String> {
    let codes: BTreeSet<&str> = RULES.iter().flat_map(|rule| rule.codes.iter().copied()).collect();
    let of_codes = codes.iter().flat_map(|code| OF_A_CODE.map(|part| format!("finding-{code}.{part}")));
    let of_rules = RULES.iter().flat_map(|rule| OF_A_RULE.map(|part| format!("finding-rule-{}.{part}", rule.name)));
    of_codes.chain(of_rules).collect()
}

#[test]
fn every_code_and_every_rule_has_its_words_and_no_words_lack_a_code() {
    for language in Language::ALL {
        let of_codes = |key: &String| key.starts_with("finding-") && key.contains('.');
        let there: BTreeSet<String> = messages(language).into_keys().filter(of_codes).collect();
        let wanted = wanted();
        let lacking: Vec<_> = wanted.difference(&there).collect();
        let surplus: Vec<_> = there.difference(&wanted).collect();
        assert!(lacking.is_empty() && surplus.is_empty(), "{}: lacks {lacking:?}; has {surplus:?}", language.tag());
    }
}

#[test]
fn no_language_says_it_in_the_words_of_another() {
    for key in wanted() {
        let said: BTreeSet<String> = Language::ALL.map(|language| Phrase::new(&key).say(language)).into();
        assert_eq!(said.len(), Language::ALL.len(), "{key}: {said:?}");
    }
}

/// A figure that one language states must stand in the others too, with their decimal sign.
#[test]
fn every_language_states_the_same_figures() {
    let figures = |text: &str| -> Vec<String> {
        let parts = text.split(|c: char| !c.is_ascii_digit() && !".,".contains(c));
        let mut all: Vec<String> = parts
            .map(|part| part.trim_matches(|c| c == '.' || c == ',').replace(',', "."))
            .filter(|part| part.chars().any(|c| c.is_ascii_digit()))
            .collect();
        all.sort();
        all
    };
    for key in wanted().into_iter().filter(|key| key.ends_with(".method")) {
        let english = figures(&Phrase::new(&key).say(Language::English));
        for language in Language::ALL {
            assert_eq!(figures(&Phrase::new(&key).say(language)), english, "{key} in {}", language.tag());
        }
    }
}

#[test]
fn a_code_is_told_by_its_rules() {
    for rule in RULES {
        for code in rule.codes {
            let told = explanation(code).unwrap_or_else(|| panic!("{code} is not explained"));
            assert!(told.rules().any(|r| r.name == rule.name), "{code}");
        }
    }
}
