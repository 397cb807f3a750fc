//! What a line's end must not part.

/// Prose for a narrow column: what follows a digit or a `±` stays with it on its line.
pub fn kept_together(text: &str) -> String {
    let mut kept = String::with_capacity(text.len());
    let mut before = ' ';
    let mut rest = text.chars().peekable();
    while let Some(c) = rest.next() {
        let word_follows = rest.peek().is_some_and(|next| next.is_alphabetic() || *next == '%');
        let holds = before == '±' || before.is_ascii_digit() && word_follows;
        kept.push(if c == ' ' && holds { '\u{a0}' } else { c });
        before = c;
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_unit_stays_with_its_number() {
        assert_eq!(kept_together("1475.8 ± 1.1 mm"), "1475.8 ±\u{a0}1.1\u{a0}mm");
        assert_eq!(kept_together("20 mm to the left"), "20\u{a0}mm to the left");
        assert_eq!(kept_together("0,597° ± 0,019°"), "0,597° ±\u{a0}0,019°");
    }
}
