//! Signed notes (C2SP `signed-note`) with Ed25519, and timestamped cosignatures
//! of witnesses (C2SP `tlog-cosignature`).

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use ed25519_dalek::{Signature, Signer as _, SigningKey, VerifyingKey};
use sha2::{Digest, Sha256};

use crate::input::{printable, turns_writing};
use crate::words::{Phrase, phrase};

/// What a key signs, as its identifier byte.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum KeyKind {
    /// A log's own signature (1).
    Log,
    /// A witness's, with its time (4).
    Witness,
}

impl KeyKind {
    fn byte(self) -> u8 {
        match self {
            KeyKind::Log => 1,
            KeyKind::Witness => 4,
        }
    }
}

/// A key that signatures are checked with.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct VerifierKey {
    /// Its name: of a log the origin.
    pub name: String,
    /// What it signs.
    pub kind: KeyKind,
    key: VerifyingKey,
}

/// A line under a note.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NoteSignature {
    /// The key's name.
    pub name: String,
    id: [u8; 4],
    bytes: Vec<u8>,
}

/// A text with signatures; nothing of them is checked yet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SignedNote {
    /// What is signed, with its last line end.
    pub text: String,
    /// By whom, as far as the note says.
    pub signatures: Vec<NoteSignature>,
}

/// A key that signs notes.
pub struct NoteSigner {
    name: String,
    key: SigningKey,
}

impl std::fmt::Debug for NoteSigner {
    /// Its name alone: the key is nobody's to read.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("NoteSigner").field("name", &self.name).finish_non_exhaustive()
    }
}

/// Most signatures under a note.
const MOST_SIGNATURES: usize = 64;

fn key_id(name: &str, kind: KeyKind, key: &VerifyingKey) -> [u8; 4] {
    let digest =
        Sha256::new().chain_update(name).chain_update([b'\n', kind.byte()]).chain_update(key.as_bytes()).finalize();
    [digest[0], digest[1], digest[2], digest[3]]
}

/// Why a text is no name of a key.
///
/// # Errors
/// Why not.
pub fn check_name(name: &str) -> Result<(), Phrase> {
    let bad = |c: char| c.is_whitespace() || c.is_control() || turns_writing(c) || c == '+';
    if name.is_empty() || name.len() > 200 || name.contains(bad) {
        return Err(phrase!("evidence-log-name", name = printable(name.to_owned())));
    }
    Ok(())
}

impl VerifierKey {
    /// Reads `name+id+key`, as it is published.
    ///
    /// # Errors
    /// What is wrong.
    pub fn read(text: &str) -> Result<Self, Phrase> {
        let wrong = |problem: &str| phrase!("evidence-verifier", text = printable(text.to_owned()), problem = problem);
        let mut parts = text.splitn(3, '+');
        let (Some(name), Some(id), Some(key)) = (parts.next(), parts.next(), parts.next()) else {
            return Err(wrong("parts"));
        };
        check_name(name)?;
        let bytes = STANDARD.decode(key).map_err(|_| wrong("base64"))?;
        let (kind, key) = match bytes.split_first() {
            Some((1, key)) => (KeyKind::Log, key),
            Some((4, key)) => (KeyKind::Witness, key),
            _ => return Err(wrong("kind")),
        };
        let key = <&[u8; 32]>::try_from(key).ok().and_then(|bytes| VerifyingKey::from_bytes(bytes).ok());
        let key = key.ok_or_else(|| wrong("key"))?;
        let read = VerifierKey { name: name.to_owned(), kind, key };
        if read.text() != text || !read.text().contains(&format!("+{id}+")) {
            return Err(wrong("id"));
        }
        Ok(read)
    }

    /// The keys of a file, one a line; lines that start with `#` are comments.
    ///
    /// # Errors
    /// The first line that is none.
    pub fn read_all(text: &str, file: &str) -> Result<Vec<Self>, Phrase> {
        let lines = text.lines().map(str::trim).enumerate();
        let of_line = |n: usize, why| phrase!("evidence-verifier-line", file = file, line = n + 1, why = why);
        lines
            .filter(|(_, line)| !line.is_empty() && !line.starts_with('#'))
            .map(|(n, line)| VerifierKey::read(line).map_err(|why: Phrase| of_line(n, why)))
            .collect()
    }

    /// The line to publish.
    pub fn text(&self) -> String {
        let id: String = self.id().iter().map(|b| format!("{b:02x}")).collect();
        let key = [&[self.kind.byte()][..], self.key.as_bytes()].concat();
        format!("{}+{id}+{}", self.name, STANDARD.encode(key))
    }

    fn id(&self) -> [u8; 4] {
        key_id(&self.name, self.kind, &self.key)
    }

    /// Whether both are one key, whatever their names are and what they sign.
    pub(super) fn is_the_key_of(&self, other: &VerifierKey) -> bool {
        self.key == other.key
    }

    /// The same key as that of a log.
    pub(super) fn as_log(&self, origin: &str) -> VerifierKey {
        VerifierKey { name: origin.to_owned(), kind: KeyKind::Log, key: self.key }
    }
}

/// What a note says of one key.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Vouched {
    /// It did not sign.
    No,
    /// Something claims to be its signature and is not.
    Falsely,
    /// It signed; a witness at this time, seconds since 1970.
    Yes(Option<u64>),
}

impl SignedNote {
    /// Reads a note.
    ///
    /// # Errors
    /// What is wrong.
    pub fn read(note: &str) -> Result<Self, Phrase> {
        let wrong = |problem: &str| phrase!("evidence-note", problem = problem);
        if note.contains(|c: char| c < ' ' && c != '\n') || !note.ends_with('\n') {
            return Err(wrong("characters"));
        }
        let at = note.rfind("\n\n").ok_or_else(|| wrong("empty-line"))?;
        let (text, lines) = (&note[..=at], &note[at + 2..]);
        let signatures: Option<Vec<NoteSignature>> = lines.lines().map(read_signature).collect();
        let signatures = signatures.ok_or_else(|| wrong("signatures"))?;
        if signatures.is_empty() || signatures.len() > MOST_SIGNATURES {
            return Err(phrase!("evidence-note-count", count = signatures.len(), most = MOST_SIGNATURES));
        }
        Ok(SignedNote { text: text.to_owned(), signatures })
    }

    /// The note as a file holds it.
    pub fn to_text(&self) -> String {
        let mut note = format!("{}\n", self.text);
        for s in &self.signatures {
            let bytes = STANDARD.encode([&s.id[..], &s.bytes].concat());
            note.push_str(&format!("\u{2014} {} {bytes}\n", s.name));
        }
        note
    }

    /// What it says of a key.
    pub fn vouched_by(&self, key: &VerifierKey) -> Vouched {
        let id = key.id();
        let Some(found) = self.signatures.iter().find(|s| s.name == key.name && s.id == id) else { return Vouched::No };
        let checked = match key.kind {
            KeyKind::Log => checked(key, self.text.as_bytes(), &found.bytes).map(|()| None),
            KeyKind::Witness => found.bytes.split_first_chunk().and_then(|(time, signature)| {
                let time = u64::from_be_bytes(*time);
                checked(key, cosigned(&self.text, time).as_bytes(), signature).map(|()| Some(time))
            }),
        };
        checked.map_or(Vouched::Falsely, Vouched::Yes)
    }

    /// Adds signatures that are not there yet.
    pub fn add(&mut self, more: impl IntoIterator<Item = NoteSignature>) {
        for signature in more {
            // A newer one of the same key takes the older one's place.
            self.signatures.retain(|s| (&s.name, s.id) != (&signature.name, signature.id));
            self.signatures.push(signature);
        }
    }
}

fn checked(key: &VerifierKey, message: &[u8], signature: &[u8]) -> Option<()> {
    key.key.verify_strict(message, &Signature::from_slice(signature).ok()?).ok()
}

fn cosigned(text: &str, time: u64) -> String {
    format!("cosignature/v1\ntime {time}\n{text}")
}

fn read_signature(line: &str) -> Option<NoteSignature> {
    let (name, bytes) = line.strip_prefix("\u{2014} ")?.split_once(' ')?;
    check_name(name).ok()?;
    let bytes = STANDARD.decode(bytes).ok()?;
    let (id, rest) = bytes.split_first_chunk()?;
    Some(NoteSignature { name: name.to_owned(), id: *id, bytes: rest.to_vec() })
}

impl NoteSigner {
    /// A key that signs under a name.
    pub fn new(name: &str, seed: &[u8; 32]) -> Self {
        NoteSigner { name: name.to_owned(), key: SigningKey::from_bytes(seed) }
    }

    /// The key to check its signatures with.
    pub fn verifier(&self, kind: KeyKind) -> VerifierKey {
        VerifierKey { name: self.name.clone(), kind, key: self.key.verifying_key() }
    }

    /// A log's signature.
    pub fn sign(&self, text: &str) -> NoteSignature {
        self.line(KeyKind::Log, self.key.sign(text.as_bytes()).to_bytes().to_vec())
    }

    /// A witness's, at a time in seconds since 1970.
    pub fn cosign(&self, text: &str, time: u64) -> NoteSignature {
        let signature = self.key.sign(cosigned(text, time).as_bytes()).to_bytes();
        self.line(KeyKind::Witness, [&time.to_be_bytes()[..], &signature].concat())
    }

    fn line(&self, kind: KeyKind, bytes: Vec<u8>) -> NoteSignature {
        let id = key_id(&self.name, kind, &self.key.verifying_key());
        NoteSignature { name: self.name.clone(), id, bytes }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOTE: &str = "If you think cryptography is the answer to your problem,\nthen you don't know what your problem is.\n\n\
        \u{2014} PeterNeumann x08go/ZJkuBS9UG/SffcvIAQxVBtiFupLLr8pAcElZInNIuGUgYN1FFYC2pZSNXgKvqfqdngotpRZb6KE6RyyBwJnAM=\n";

    /// The example in the documentation of Go's package golang.org/x/mod/sumdb/note, which the format comes from.
    #[test]
    fn the_example_of_the_format_s_first_library_holds() {
        let key = VerifierKey::read("PeterNeumann+c74f20a3+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW").unwrap();
        let note = SignedNote::read(NOTE).unwrap();
        assert_eq!(note.vouched_by(&key), Vouched::Yes(None));
        assert_eq!(note.to_text(), NOTE);
        let other = SignedNote::read(&NOTE.replace("answer", "Answer")).unwrap();
        assert_eq!(other.vouched_by(&key), Vouched::Falsely);
        assert!(VerifierKey::read("PeterNeumann+c74f20a4+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW").is_err());
    }

    #[test]
    fn a_witness_s_time_is_signed_too() {
        let witness = NoteSigner::new("witness.example/w1", &[7; 32]);
        let key = VerifierKey::read(&witness.verifier(KeyKind::Witness).text()).unwrap();
        let text = "log.example/a\n0\n47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=\n";
        let mut note = SignedNote { text: text.to_owned(), signatures: Vec::new() };
        note.add([NoteSigner::new("log.example/a", &[1; 32]).sign(text)]);
        assert_eq!(note.vouched_by(&key), Vouched::No);
        note.add([witness.cosign(text, 1_679_315_147)]);
        let mut note = SignedNote::read(&note.to_text()).unwrap();
        assert_eq!(note.vouched_by(&key), Vouched::Yes(Some(1_679_315_147)));
        note.signatures[1].bytes[7] ^= 1;
        assert_eq!(note.vouched_by(&key), Vouched::Falsely);
    }

    /// U+202E and its like show a line as another one than it is.
    #[test]
    fn a_name_that_turns_the_writing_is_refused() {
        for c in ['\u{202a}', '\u{202e}', '\u{2066}', '\u{2069}'] {
            let name = format!("shop.example/{c}x");
            let said = check_name(&name).unwrap_err().say(crate::words::Language::English);
            assert!(!said.contains(c) && said.contains("\\u{20"), "{said}");
            let key = NoteSigner::new(&name, &[1; 32]).verifier(KeyKind::Log).text();
            let said = VerifierKey::read(&key).unwrap_err().say(crate::words::Language::English);
            assert!(!said.contains(c), "{said}");
        }
        check_name("shop.example/\u{5d0}\u{5d1}").unwrap();
    }

    #[test]
    fn what_is_no_note_is_refused() {
        for wrong in ["", "a\n", "a\n\n", "a\n\n\u{2014} b\n", "a\n\n\u{2014} b AAAA", "a\r\n\n\u{2014} b AAAAAA==\n"] {
            assert!(SignedNote::read(wrong).is_err(), "{wrong:?}");
        }
    }
}
