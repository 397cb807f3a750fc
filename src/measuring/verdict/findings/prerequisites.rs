//! What the technician attests.

use super::{Case, Explanation, Finding, Rule, Touches};
use crate::setup::Prerequisite;
use crate::verdict::Level;
use crate::words::phrase;

pub(super) const RULE: Rule = Rule {
    name: "prerequisites",
    codes: &["prerequisite-not-met", "record-incomplete"],
    touches: Touches::MovesOnly,
    find,
};

pub(super) const EXPLAIN: &[Explanation] =
    &[Explanation::of("prerequisite-not-met", Level::Stop), Explanation::of("record-incomplete", Level::Warn)];

/// First words of an answer that says no, in the languages of this program.
const NO: [&str; 7] = ["no", "not", "nein", "nicht", "non", "pas", "false"];
/// Words of no that turn a figure into none, wherever they stand.
const NOTHING: [&str; 8] = ["none", "never", "kein", "keine", "nie", "aucun", "aucune", "nunca"];
/// Whole answers that are a plain yes.
const YES: [&str; 17] = [
    "yes",
    "true",
    "ok",
    "okay",
    "done",
    "checked",
    "ja",
    "erledigt",
    "erfüllt",
    "geprüft",
    "oui",
    "fait",
    "vérifié",
    "sí",
    "si",
    "hecho",
    "comprobado",
];
/// So much of an answer is quoted, characters.
const QUOTED: usize = 120;

/// What an answer in words says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Said {
    No,
    /// A plain yes, or a figure where one was asked for: "2.3 bar".
    Met,
    /// Words that only a reader can judge.
    Words,
}

fn said(answer: &str) -> Said {
    let words: Vec<String> =
        answer.split(|c: char| !c.is_alphanumeric()).filter(|w| !w.is_empty()).map(str::to_lowercase).collect();
    let is = |word: &String, list: &[&str]| list.contains(&word.as_str());
    match words.as_slice() {
        [first, ..] if is(first, &NO) => Said::No,
        [one] if is(one, &YES) => Said::Met,
        all if all.iter().any(|w| is(w, &NO) || is(w, &NOTHING)) => Said::Words,
        all if all.iter().any(|w| w.contains(|c: char| c.is_ascii_digit())) => Said::Met,
        _ => Said::Words,
    }
}

fn find(case: &Case) -> Vec<Finding> {
    let answer = |id: &str| case.job.prerequisites.get(id);
    let mut found: Vec<Finding> = case.setup.prerequisites.iter().filter_map(|p| judged(p, answer(&p.id)?)).collect();
    let open: Vec<&str> = case
        .setup
        .prerequisites
        .iter()
        .filter(|p| p.required && answer(&p.id).is_none())
        .map(|p| p.text.as_str())
        .collect();
    if !open.is_empty() {
        let message = phrase!("findings-not-answered", texts = open.join("; "));
        found.push(Finding::new("record-incomplete", Level::Warn, message));
    }
    found
}

/// What an answer that is not a plain yes leaves to say.
fn judged(asked: &Prerequisite, answer: &serde_json::Value) -> Option<Finding> {
    let not_met = |message| Finding::new("prerequisite-not-met", Level::Stop, message);
    if answer == &serde_json::Value::Bool(false) {
        return Some(not_met(phrase!("findings-prerequisite-not-met", text = &asked.text)));
    }
    let words = answer.as_str()?;
    let quoted: String = words.chars().take(QUOTED).collect();
    match said(words) {
        Said::No => Some(not_met(phrase!("findings-prerequisite-answered-no", text = &asked.text, answer = quoted))),
        Said::Words if asked.required => {
            let message = phrase!("findings-prerequisite-in-words", text = &asked.text, answer = quoted);
            Some(Finding::new("record-incomplete", Level::Warn, message))
        }
        Said::Words | Said::Met => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_say_no_a_figure_yes_or_something_to_read() {
        for no in ["no", "No, not done", "not checked", "nein", "Nicht geprüft", "non", "pas fait", "no comprobado"] {
            assert_eq!(said(no), Said::No, "{no}");
        }
        for met in ["yes", "Ja.", "OK", "Sí", "2.3 bar", "front 2,3, rear 2,5 bar", "1/2"] {
            assert_eq!(said(met), Said::Met, "{met}");
        }
        for words in ["later", "see the sheet", "rear left is flat", "yes, but not all", "2 bar, never 2.3", "?"] {
            assert_eq!(said(words), Said::Words, "{words}");
        }
    }
}
