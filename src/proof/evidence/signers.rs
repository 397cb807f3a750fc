//! Whose signatures count: OpenSSH's `allowed_signers` file (ssh-keygen(1),
//! ALLOWED SIGNERS).

use sha2::{Digest, Sha256};
use ssh_key::PublicKey;
use time::{OffsetDateTime, PrimitiveDateTime, UtcOffset};

use super::signature::NAMESPACE;
use crate::input::{hex, printable};
use crate::words::{Language, Phrase, phrase};

/// One line of the file.
#[derive(Debug, Clone)]
pub struct Signer {
    /// Who, as the file says it.
    pub principals: String,
    key: PublicKey,
    namespaces: Option<Vec<String>>,
    valid_after: Option<OffsetDateTime>,
    valid_before: Option<OffsetDateTime>,
    /// The key signs other keys: certificates, which this program does not check.
    authority: bool,
}

/// All lines, as they stand at one moment.
#[derive(Debug, Clone)]
pub struct Signers {
    lines: Vec<Signer>,
    at: OffsetDateTime,
    /// SHA-256 of the file, lower-case hexadecimal.
    pub sha256: String,
}

/// A line that cannot be understood.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", self.phrase().say(Language::English))]
pub struct SignersError {
    /// The file.
    pub file: String,
    /// The line, from 1.
    pub line: usize,
    /// What is wrong.
    pub problem: Phrase,
}

impl SignersError {
    /// For any language.
    pub fn phrase(&self) -> Phrase {
        phrase!("evidence-signers-line", file = &self.file, line = self.line, problem = self.problem.clone())
    }
}

impl Signers {
    /// Reads the file's text, for signatures that are looked at `now`. Times
    /// without Z are local ones, in `now`'s offset from UTC.
    ///
    /// # Errors
    /// The first line that cannot be understood.
    pub fn read(text: &str, file: &str, now: OffsetDateTime) -> Result<Self, SignersError> {
        let mut signers = Vec::new();
        for (i, line) in text.lines().enumerate() {
            let line = line.trim();
            if line.is_empty() || line.starts_with('#') {
                continue;
            }
            let wrong = |problem: Phrase| SignersError { file: file.to_owned(), line: i + 1, problem };
            signers.push(read_line(line, now.offset()).map_err(wrong)?);
        }
        Ok(Signers { lines: signers, at: now, sha256: hex(&Sha256::digest(text)) })
    }

    /// Who a key belongs to.
    ///
    /// # Errors
    /// Why nobody's signature by this key counts.
    pub fn who(&self, key: &PublicKey) -> Result<&str, Phrase> {
        let lines: Vec<&Signer> = self.lines.iter().filter(|s| s.key.key_data() == key.key_data()).collect();
        let mut why = phrase!("evidence-signers-unlisted");
        for signer in lines {
            match signer.objection(self.at) {
                None => return Ok(&signer.principals),
                Some(objection) => why = objection,
            }
        }
        Err(why)
    }
}

impl Signer {
    fn objection(&self, at: OffsetDateTime) -> Option<Phrase> {
        let object =
            |why: &str| phrase!("evidence-signers-objection", who = &self.principals, why = why, namespace = NAMESPACE);
        if self.authority {
            return Some(object("authority"));
        }
        // A signature names nobody, so that nobody knows whether it is of one who is left out.
        if self.principals.split(',').any(|pattern| pattern.starts_with('!')) {
            return Some(object("excluded"));
        }
        let named = |list: &Vec<String>| in_list(list, NAMESPACE);
        if !self.namespaces.as_ref().is_none_or(named) {
            return Some(object("namespace"));
        }
        if self.valid_after.is_some_and(|t| at < t) {
            return Some(object("early"));
        }
        if self.valid_before.is_some_and(|t| at > t) {
            return Some(object("late"));
        }
        None
    }
}

fn read_line(line: &str, offset: UtcOffset) -> Result<Signer, Phrase> {
    let (principals, rest) = first_word(line);
    let mut signer = None;
    let (word, after) = first_word(rest);
    // The options are left out as a rule; a key's kind starts the rest then.
    let (options, key_text) = if is_key_kind(word) { ("", rest) } else { (word, after) };
    let (kind, rest) = first_word(key_text);
    let (blob, _comment) = first_word(rest);
    if let Ok(key) = PublicKey::from_openssh(&format!("{kind} {blob}")) {
        signer = Some(Signer {
            principals: printable(principals.trim_matches('"').to_owned()),
            key,
            namespaces: None,
            valid_after: None,
            valid_before: None,
            authority: false,
        });
    }
    let mut signer = signer.ok_or_else(|| phrase!("evidence-signers-no-key"))?;
    let mut named = Vec::new();
    for option in split_options(options) {
        let (name, value) = option.split_once('=').map_or((option, None), |(n, v)| (n, Some(v.trim_matches('"'))));
        let name = name.to_ascii_lowercase();
        if named.contains(&name) {
            return Err(phrase!("evidence-signers-option-twice", option = name));
        }
        match (name.as_str(), value) {
            ("cert-authority", None) => signer.authority = true,
            ("namespaces", Some(list)) => signer.namespaces = Some(list.split(',').map(str::to_owned).collect()),
            ("valid-after", Some(time)) => signer.valid_after = Some(read_time(time, offset)?),
            ("valid-before", Some(time)) => signer.valid_before = Some(read_time(time, offset)?),
            _ => return Err(phrase!("evidence-signers-option", option = printable(option.to_owned()))),
        }
        named.push(name);
    }
    Ok(signer)
}

fn is_key_kind(word: &str) -> bool {
    ["ssh-", "sk-ssh-", "ecdsa-sha2-", "sk-ecdsa-sha2-"].iter().any(|start| word.starts_with(start))
}

/// Up to a blank outside quotes.
fn first_word(text: &str) -> (&str, &str) {
    let text = text.trim_start();
    let mut quoted = false;
    let end = text.find(|c: char| {
        quoted ^= c == '"';
        c.is_whitespace() && !quoted
    });
    end.map_or((text, ""), |end| (&text[..end], text[end..].trim_start()))
}

fn split_options(options: &str) -> Vec<&str> {
    let mut quoted = false;
    let split = options.split(|c: char| {
        quoted ^= c == '"';
        c == ',' && !quoted
    });
    split.filter(|o| !o.is_empty()).collect()
}

/// `YYYYMMDD`, `YYYYMMDDHHMM` or `YYYYMMDDHHMMSS`, with `Z` for UTC.
fn read_time(text: &str, offset: UtcOffset) -> Result<OffsetDateTime, Phrase> {
    let (digits, offset) = text.strip_suffix('Z').map_or((text, offset), |digits| (digits, UtcOffset::UTC));
    let wrong = || phrase!("evidence-signers-time", time = text);
    if !digits.bytes().all(|b| b.is_ascii_digit()) {
        return Err(wrong());
    }
    let whole = match digits.len() {
        8 => format!("{digits}000000"),
        12 => format!("{digits}00"),
        14 => digits.to_owned(),
        _ => return Err(wrong()),
    };
    let form = time::macros::format_description!("[year][month][day][hour][minute][second]");
    PrimitiveDateTime::parse(&whole, &form).map(|t| t.assume_offset(offset)).map_err(|_| wrong())
}

/// OpenSSH's lists of patterns: one that begins with `!` and matches excludes, whatever else matches.
fn in_list(list: &[String], text: &str) -> bool {
    let excluded = list.iter().filter_map(|pattern| pattern.strip_prefix('!')).any(|pattern| matches(pattern, text));
    !excluded && list.iter().any(|pattern| !pattern.starts_with('!') && matches(pattern, text))
}

/// OpenSSH's patterns: `*` and `?`.
fn matches(pattern: &str, text: &str) -> bool {
    let (mut rest, mut chars) = (pattern.chars(), text.chars());
    match rest.next() {
        None => text.is_empty(),
        Some('*') => {
            text.char_indices().map(|(i, _)| i).chain([text.len()]).any(|i| matches(rest.as_str(), &text[i..]))
        }
        Some('?') => chars.next().is_some_and(|_| matches(rest.as_str(), chars.as_str())),
        Some(c) => chars.next() == Some(c) && matches(rest.as_str(), chars.as_str()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const KEY: &str = "ssh-ed25519 AAAAC3NzaC1lZDI1NTE5AAAAIJhG1hyVQMgVHYvh6Qa5PQ7Z4YTTtRfnBxRGIVbuYsDl";

    fn at(text: &str) -> OffsetDateTime {
        read_time(text, UtcOffset::UTC).unwrap()
    }

    fn who(line: &str, time: &str) -> Result<String, String> {
        let signers = Signers::read(line, "signers", at(time)).map_err(|e| e.to_string())?;
        let who = signers.who(&PublicKey::from_openssh(KEY).unwrap());
        who.map(str::to_owned).map_err(|why| why.say(Language::English))
    }

    #[test]
    fn lines_of_the_manual_are_understood() {
        assert_eq!(who(&format!("a@shop.example {KEY} a comment"), "20260101"), Ok("a@shop.example".to_owned()));
        assert_eq!(who(&format!("# first\n\n\"a b\" {KEY}"), "20260101"), Ok("a b".to_owned()));
        let spaces = format!("a namespaces=\"git,baywitness-*\",valid-after=\"20250101\",valid-before=20270101Z {KEY}");
        assert_eq!(who(&spaces, "20260101"), Ok("a".to_owned()));
        assert!(who(&spaces, "20241231").unwrap_err().contains("not yet"));
        assert!(who(&spaces, "202701010001").unwrap_err().contains("no longer"));
        assert!(who(&format!("a namespaces=\"git\" {KEY}"), "20260101").unwrap_err().contains("may not sign"));
        assert!(who(&format!("a cert-authority {KEY}"), "20260101").unwrap_err().contains("authority"));
        assert!(who("", "20260101").unwrap_err().contains("not in the list"));
    }

    #[test]
    fn wrong_lines_are_named() {
        for line in [
            "a",
            "a ssh-ed25519",
            "a ssh-ed25519 AAAA",
            &format!("a whatever=1 {KEY}"),
            &format!("a valid-after=2026 {KEY}"),
        ] {
            let error = who(&format!("# c\n{line}"), "20260101").unwrap_err();
            assert!(error.contains("line 2"), "{error}");
        }
    }

    /// As `match_pattern_list` of OpenSSH has it (ssh_config(5), PATTERNS).
    #[test]
    fn a_pattern_that_excludes_excludes_whatever_else_matches() {
        for list in ["!baywitness-evidence,*", "*,!baywitness-evidence", "!baywitness-*,baywitness-evidence", "!git"] {
            let said = who(&format!("a namespaces=\"{list}\" {KEY}"), "20260101");
            assert!(said.as_ref().is_err_and(|why| why.contains("may not sign")), "{list}: {said:?}");
        }
        assert_eq!(who(&format!("a namespaces=\"!git,*\" {KEY}"), "20260101"), Ok("a".to_owned()));
        for names in ["!shop,*", "*,!shop"] {
            assert!(who(&format!("{names} {KEY}"), "20260101").unwrap_err().contains("leaves somebody out"), "{names}");
        }
    }

    /// OpenSSH refuses such a line; which of the two would count, nobody says.
    #[test]
    fn an_option_stands_once() {
        for options in [
            "valid-before=20250101,valid-before=20990101",
            "namespaces=\"git\",namespaces=\"baywitness-evidence\"",
            "valid-after=20990101,Valid-After=20200101",
            "cert-authority,cert-authority",
        ] {
            let said = who(&format!("a {options} {KEY}"), "20260101").unwrap_err();
            assert!(said.contains("line 1") && said.contains("twice"), "{options}: {said}");
        }
        assert_eq!(who(&format!("a valid-after=20250101,valid-before=20270101 {KEY}"), "20260101"), Ok("a".to_owned()));
    }

    #[test]
    fn names_control_no_terminal() {
        assert_eq!(who(&format!("\"a\u{1b}[2Kb\" {KEY}"), "20260101"), Ok("a\\u{1b}[2Kb".to_owned()));
        assert_eq!(who(&format!("müller@shop.example {KEY}"), "20260101"), Ok("müller@shop.example".to_owned()));
    }

    #[test]
    fn one_of_two_lines_is_enough() {
        let two = format!("old valid-before=20250101 {KEY}\nnew {KEY}");
        assert_eq!(who(&two, "20260101"), Ok("new".to_owned()));
    }
}
