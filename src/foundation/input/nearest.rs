//! Which known word a mistyped one may have meant.

use crate::words::{Phrase, phrase};

/// The known word most like `word`, if any is alike enough to be worth naming.
pub fn nearest<'a>(word: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    const LEAST_LIKENESS: f64 = 0.6;
    // Comparing costs the product of both lengths, and no key is that long.
    const LONGEST: usize = 100;
    if word.len() > LONGEST {
        return None;
    }
    let wanted = word.to_lowercase();
    known
        .into_iter()
        .map(|k| (strsim::normalized_damerau_levenshtein(&wanted, k).max(prefix_likeness(&wanted, k)), k))
        .filter(|(likeness, _)| *likeness >= LEAST_LIKENESS)
        .reduce(|best, next| if next.0 > best.0 { next } else { best })
        .map(|(_, k)| k)
}

/// `size` for `size_mm`: what was typed is the beginning of the key.
fn prefix_likeness(word: &str, known: &str) -> f64 {
    if word.len() >= 3 && known.starts_with(word) { 0.9 } else { 0.0 }
}

/// `did you mean X?`, else the list of what is known.
pub fn did_you_mean<'a>(word: &str, known: impl IntoIterator<Item = &'a str> + Clone) -> Phrase {
    match nearest(word, known.clone()) {
        Some(k) => phrase!("doors-did-you-mean", word = k),
        None => {
            let all: Vec<&str> = known.into_iter().collect();
            if all.is_empty() {
                phrase!("doors-remove-it")
            } else {
                phrase!("doors-known-here", words = all.join(", "))
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    const KEYS: [&str; 4] = ["size_mm", "size_xy_mm", "centre_mm", "right"];

    #[test]
    fn typing_errors_find_their_key() {
        assert_eq!(nearest("siez_mm", KEYS), Some("size_mm"));
        assert_eq!(nearest("center_mm", KEYS), Some("centre_mm"));
        assert_eq!(nearest("Right", KEYS), Some("right"));
        assert_eq!(nearest("size", KEYS), Some("size_mm"));
        assert_eq!(nearest("weather", KEYS), None);
        assert_eq!(nearest(&"x".repeat(1_000_000), KEYS), None);
    }

    #[test]
    fn without_a_likely_word_all_are_listed() {
        assert_eq!(did_you_mean("weather", ["a", "b"]).say(Language::English), "known here: a, b");
        assert_eq!(did_you_mean("rigth", KEYS).say(Language::English), "did you mean `right`?");
    }
}
