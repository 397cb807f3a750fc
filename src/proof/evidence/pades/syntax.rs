//! As much of a PDF's syntax (ISO 32000-1, 7.2 to 7.5) as it takes to add
//! objects to a file that this program has written: dictionaries and a
//! cross-reference table of one section.

/// Where a value that begins at `at` ends.
pub(super) fn value_end(bytes: &[u8], at: usize) -> Option<usize> {
    match *bytes.get(at)? {
        b'(' => string_end(bytes, at),
        b'<' if bytes.get(at + 1) == Some(&b'<') => group_end(bytes, at + 2, b'>'),
        b'<' => Some(at + memchr::memchr(b'>', &bytes[at..])? + 1),
        b'[' => group_end(bytes, at + 1, b']'),
        _ => {
            let rest = &bytes[at + 1..];
            Some(at + 1 + rest.iter().position(|&b| ends_word(b)).unwrap_or(rest.len()))
        }
    }
}

fn ends_word(byte: u8) -> bool {
    byte.is_ascii_whitespace() || byte == 0 || b"()<>[]{}/%".contains(&byte)
}

/// Brackets may nest; a backslash hides what follows it.
fn string_end(bytes: &[u8], at: usize) -> Option<usize> {
    let (mut depth, mut i) = (0_usize, at);
    loop {
        match *bytes.get(i)? {
            b'\\' => i += 1,
            b'(' => depth += 1,
            b')' if depth == 1 => return Some(i + 1),
            b')' => depth -= 1,
            _ => {}
        }
        i += 1;
    }
}

/// The end of a dictionary (`>>`) or an array. What nests is skipped by a
/// count of what is open, so that no file can exhaust the stack.
fn group_end(bytes: &[u8], at: usize, close: u8) -> Option<usize> {
    let (mut open, mut i) = (vec![close], at);
    while let Some(&innermost) = open.last() {
        i = after_blanks(bytes, i);
        match *bytes.get(i)? {
            b'>' if innermost == b'>' && bytes.get(i + 1) == Some(&b'>') => {
                open.pop();
                i += 2;
            }
            b']' if innermost == b']' => {
                open.pop();
                i += 1;
            }
            b'<' if bytes.get(i + 1) == Some(&b'<') => {
                open.push(b'>');
                i += 2;
            }
            b'[' => {
                open.push(b']');
                i += 1;
            }
            b'>' | b']' | b')' | b'}' => return None,
            _ => i = value_end(bytes, i)?,
        }
    }
    Some(i)
}

pub(super) fn after_blanks(bytes: &[u8], at: usize) -> usize {
    let rest = bytes.get(at..).unwrap_or_default();
    at + rest.iter().take_while(|b| b.is_ascii_whitespace() || **b == 0).count()
}

/// The value of a key of a dictionary (from its `<<` on); references with all three words.
pub(super) fn entry<'a>(dictionary: &'a [u8], key: &str) -> Option<&'a [u8]> {
    let mut i = after_blanks(dictionary, 2);
    while dictionary.get(i) == Some(&b'/') {
        let end = value_end(dictionary, i)?;
        let name = &dictionary[i..end];
        let from = after_blanks(dictionary, end);
        let mut to = value_end(dictionary, from)?;
        // What follows up to the next key belongs to the value: `12 0 R`.
        loop {
            let next = after_blanks(dictionary, to);
            if matches!(dictionary.get(next), None | Some(b'/' | b'>')) {
                i = next;
                break;
            }
            to = value_end(dictionary, next)?;
        }
        if name == key.as_bytes() {
            return Some(&dictionary[from..to]);
        }
    }
    None
}

/// A whole number that begins a text.
pub(super) fn number(text: &[u8]) -> Option<usize> {
    let digits = text.iter().take_while(|b| b.is_ascii_digit()).count();
    std::str::from_utf8(&text[..digits]).ok()?.parse().ok()
}

/// The object that a reference names; its generation must be 0.
pub(super) fn reference(text: &[u8]) -> Option<usize> {
    let mut words = text.split(u8::is_ascii_whitespace).filter(|w| !w.is_empty());
    let object = number(words.next()?)?;
    (words.next()? == b"0" && words.next()?.starts_with(b"R")).then_some(object)
}

/// A file whose cross-reference is one table from 0.
pub(super) struct File<'a> {
    bytes: &'a [u8],
    /// Where the first line of the table is, and how many there are.
    table: (usize, usize),
    /// Where the table begins: what the next one calls the previous.
    pub(super) start: usize,
    pub(super) trailer: &'a [u8],
}

/// One line of the table.
const LINE: usize = 20;

impl<'a> File<'a> {
    /// Reads the file's end.
    pub(super) fn read(bytes: &'a [u8]) -> Option<Self> {
        let said = memchr::memmem::rfind(bytes, b"startxref")?;
        let start = number(&bytes[after_blanks(bytes, said + 9)..])?;
        let at = after_blanks(bytes, start + bytes.get(start..)?.strip_prefix(b"xref").map(|_| 4)?);
        let head = bytes.get(at..)?.strip_prefix(b"0 ")?;
        let count = number(head)?;
        let first = at + memchr::memchr(b'\n', bytes.get(at..)?)? + 1;
        let behind = first.checked_add(count.checked_mul(LINE)?)?;
        let trailer = after_blanks(bytes, behind + bytes.get(behind..)?.strip_prefix(b"trailer").map(|_| 7)?);
        let end = value_end(bytes, trailer)?;
        Some(File { bytes, table: (first, count), start, trailer: &bytes[trailer..end] })
    }

    /// The dictionary of an object.
    pub(super) fn dictionary(&self, object: usize) -> Option<&'a [u8]> {
        let (first, count) = self.table;
        let line = (object < count).then(|| self.bytes.get(first + object * LINE..first + (object + 1) * LINE))??;
        let place = line.get(17).filter(|kind| **kind == b'n').and_then(|_| number(line))?;
        let head = format!("{object} 0 obj");
        let at = after_blanks(
            self.bytes,
            place + self.bytes.get(place..)?.strip_prefix(head.as_bytes()).map(|_| head.len())?,
        );
        self.bytes.get(at..)?.strip_prefix(b"<<")?;
        Some(&self.bytes[at..value_end(self.bytes, at)?])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn values_of_a_dictionary_are_found_whatever_stands_between() {
        let text = b"<</A 12 0 R/B<</C[1 (x\\)>>(y))<ff>]>>/D(]>>)/E[<</F null>>]/G/H /I true>>";
        for (key, value) in [
            ("/A", "12 0 R"),
            ("/B", "<</C[1 (x\\)>>(y))<ff>]>>"),
            ("/D", "(]>>)"),
            ("/E", "[<</F null>>]"),
            ("/G", "/H"),
            ("/I", "true"),
        ] {
            assert_eq!(entry(text, key).map(String::from_utf8_lossy).as_deref(), Some(value), "{key}");
        }
        assert_eq!(entry(text, "/C"), None, "a key further in is not the dictionary's");
        assert_eq!(value_end(text, 0), Some(text.len()));
        assert_eq!(reference(b"12 0 R"), Some(12));
        assert_eq!(reference(b"12 1 R"), None);
    }

    #[test]
    fn no_text_makes_it_panic() {
        let text = b"1 0 obj\n<</A[(\\(]<<>>/B<f>>\nendobj\nxref\n0 2\n0000000000 65535 f\r\n0000000000 00000 n\r\ntrailer\n<</Root 1 0 R>>\nstartxref\n36\n%%EOF";
        for from in 0..text.len() {
            for to in from..text.len() {
                let part = &text[from..to];
                let _ = value_end(part, 0);
                let _ = entry(part, "/B");
                let _ = File::read(part).and_then(|f| f.dictionary(1).map(<[u8]>::len));
            }
        }
        assert_eq!(value_end(&b"[".repeat(1 << 20), 0), None);
    }
}
