//! Checkpoints: how large a log is and which root its tree has, signed (C2SP `tlog-checkpoint`).

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use super::note::{KeyKind, SignedNote, VerifierKey, Vouched, check_name};
use super::tree::Hash;
use crate::words::{Phrase, phrase};

/// The state of a log.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Checkpoint {
    /// The log's name.
    pub origin: String,
    /// How many entries it has.
    pub size: u64,
    /// The root of its tree.
    pub root: Hash,
}

/// Who vouches for a checkpoint, of those whose keys are known.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Vouchers {
    /// Whether the log's own key is among the known ones and signed.
    pub log: bool,
    /// Witnesses with their times, seconds since 1970.
    pub witnesses: Vec<(String, u64)>,
}

impl Checkpoint {
    /// The text that is signed.
    pub fn text(&self) -> String {
        format!("{}\n{}\n{}\n", self.origin, self.size, STANDARD.encode(self.root))
    }

    /// Reads a signed checkpoint; nothing of its signatures is checked.
    ///
    /// # Errors
    /// What is wrong.
    pub fn read(note: &str) -> Result<(Self, SignedNote), Phrase> {
        let wrong = |problem: &str| phrase!("evidence-checkpoint", problem = problem);
        let note = SignedNote::read(note)?;
        let mut lines = note.text.lines();
        let (Some(origin), Some(size), Some(root)) = (lines.next(), lines.next(), lines.next()) else {
            return Err(wrong("lines"));
        };
        let root = STANDARD.decode(root).ok().and_then(|bytes| Hash::try_from(bytes).ok());
        let (Ok(number), Some(root)) = (size.parse::<u64>(), root) else {
            return Err(wrong("numbers"));
        };
        if number.to_string() != size || lines.any(str::is_empty) {
            return Err(wrong("spelling"));
        }
        check_name(origin)?;
        Ok((Checkpoint { origin: origin.to_owned(), size: number, root }, note))
    }

    /// Who vouches for it.
    ///
    /// # Errors
    /// A signature of a known key is false, or the log's key is known and did not sign.
    pub fn vouchers(&self, note: &SignedNote, keys: &[VerifierKey]) -> Result<Vouchers, Phrase> {
        let mut found = Vouchers::default();
        for key in keys {
            let own = key.kind == KeyKind::Log && key.name == self.origin;
            match note.vouched_by(key) {
                Vouched::Falsely => return Err(phrase!("evidence-checkpoint-false", key = &key.name)),
                Vouched::Yes(None) => found.log |= own,
                Vouched::Yes(Some(time)) => found.witnesses.push((key.name.clone(), time)),
                Vouched::No => {}
            }
        }
        let known = keys.iter().any(|k| k.kind == KeyKind::Log && k.name == self.origin);
        if known && !found.log {
            return Err(phrase!("evidence-checkpoint-unsigned", log = &self.origin));
        }
        Ok(found)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::transparency::note::NoteSigner;

    #[test]
    fn only_one_spelling_is_read() {
        let checkpoint = Checkpoint { origin: "log.example/a".to_owned(), size: 12, root: [9; 32] };
        let signer = NoteSigner::new("log.example/a", &[1; 32]);
        let signed = |text: &str| {
            let note = SignedNote { text: text.to_owned(), signatures: vec![signer.sign(text)] };
            Checkpoint::read(&note.to_text())
        };
        let (read, note) = signed(&checkpoint.text()).unwrap();
        assert_eq!(read, checkpoint);
        let keys = [signer.verifier(KeyKind::Log)];
        assert!(read.vouchers(&note, &keys).unwrap().log);
        let other = NoteSigner::new("log.example/a", &[2; 32]).verifier(KeyKind::Log);
        assert!(
            read.vouchers(&note, &[other]).unwrap_err().say(crate::words::Language::English).contains("not signed")
        );
        for wrong in [("12", "012"), ("12", "+12"), ("12", "-1"), ("CQkJ", "CQk"), ("log.example/a", "a b")] {
            assert!(signed(&checkpoint.text().replacen(wrong.0, wrong.1, 1)).is_err(), "{wrong:?}");
        }
    }
}
