//! Keeps typed text from acting on the screen that shows it.

/// `text` without the characters that command a display: control characters
/// (a terminal would obey their escape sequences) become a replacement
/// character, line breaks and tabs a space, and the marks that reverse the
/// reading direction (Unicode Bidi_Control) are dropped.
pub(super) fn clean(text: &str) -> String {
    text.chars().filter_map(shown).collect()
}

fn shown(c: char) -> Option<char> {
    match c {
        '\n' | '\r' | '\t' | '\u{2028}' | '\u{2029}' => Some(' '),
        c if c.is_control() => Some('\u{fffd}'),
        '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' => None,
        c => Some(c),
    }
}

#[cfg(test)]
mod tests {
    use super::clean;

    #[test]
    fn commands_to_the_display_lose_their_force() {
        assert_eq!(clean("a\u{1b}[2Jb"), "a\u{fffd}[2Jb");
        assert_eq!(clean("two\nlines\ttab"), "two lines tab");
        assert_eq!(clean("gnp\u{202e}exe"), "gnpexe");
        assert_eq!(clean("Grüße, 北京"), "Grüße, 北京");
    }
}
