//! A source file as the words of the language, without comments, strings and tests.

/// A word or a mark of a source file.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(crate) enum Token<'a> {
    Word(&'a str),
    /// `::`
    Path,
    Mark(char),
}

/// The tokens of a file up to its test module.
pub(crate) fn tokens(text: &str) -> Vec<Token<'_>> {
    let text = &text[..text.find("#[cfg(test)]\nmod tests {").unwrap_or(text.len())];
    let mut found = Vec::new();
    let mut rest = text;
    while let Some(c) = rest.chars().next() {
        rest = if rest.starts_with("//") {
            after(rest, "\n")
        } else if rest.starts_with("/*") {
            after(rest, "*/")
        } else if let Some(hashes) = raw_string(rest) {
            after(&rest[hashes + 2..], &format!("\"{}", "#".repeat(hashes)))
        } else if c == '"' {
            past_string(rest)
        } else if c == '\'' {
            past_quote(rest)
        } else if c.is_alphanumeric() || c == '_' {
            let end = rest.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap_or(rest.len());
            found.push(Token::Word(&rest[..end]));
            &rest[end..]
        } else if let Some(rest) = rest.strip_prefix("::") {
            found.push(Token::Path);
            rest
        } else {
            if !c.is_whitespace() {
                found.push(Token::Mark(c));
            }
            &rest[c.len_utf8()..]
        };
    }
    found
}

fn after<'a>(text: &'a str, end: &str) -> &'a str {
    text.find(end).map_or("", |at| &text[at + end.len()..])
}

/// How many `#` open a raw string that begins here.
fn raw_string(text: &str) -> Option<usize> {
    let hashes = text.strip_prefix('r')?.bytes().take_while(|b| *b == b'#').count();
    text[hashes + 1..].starts_with('"').then_some(hashes)
}

fn past_string(text: &str) -> &str {
    let mut escaped = false;
    for (at, c) in text.char_indices().skip(1) {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => return &text[at + 1..],
            _ => {}
        }
    }
    ""
}

/// Past a character, or past the quote of a lifetime, whose name is then a word.
fn past_quote(text: &str) -> &str {
    let mut inside = text[1..].char_indices();
    match (inside.next(), inside.next()) {
        (Some((_, '\\')), Some(_)) => text[3..].find('\'').map_or("", |at| &text[at + 4..]),
        (Some(_), Some((at, '\''))) => &text[at + 2..],
        _ => &text[1..],
    }
}
