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

    /// Who vouches for it. One key is one witness, whatever names it has, by the first of them; the log's own is none.
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
                Vouched::Yes(Some(_)) if self.is_own(key, note, keys) => {}
                Vouched::Yes(Some(time)) => {
                    let first = keys.iter().find(|k| k.kind == KeyKind::Witness && k.is_the_key_of(key)).unwrap_or(key);
                    if found.witnesses.iter().all(|(name, _)| *name != first.name) {
                        found.witnesses.push((first.name.clone(), time));
                    }
                }
                Vouched::No => {}
            }
        }
        let known = keys.iter().any(|k| k.kind == KeyKind::Log && k.name == self.origin);
        if known && !found.log {
            return Err(phrase!("evidence-checkpoint-unsigned", log = &self.origin));
        }
        Ok(found)
    }

    /// Whether a witness's key is the log's: who grew it cannot vouch for how it grew.
    pub(super) fn is_own(&self, witness: &VerifierKey, note: &SignedNote, keys: &[VerifierKey]) -> bool {
        let of_log = |k: &VerifierKey| k.kind == KeyKind::Log && k.name == self.origin;
        keys.iter().any(|k| of_log(k) && k.is_the_key_of(witness))
            || note.vouched_by(&witness.as_log(&self.origin)) == Vouched::Yes(None)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::transparency::note::NoteSigner;

    /// Names are free, keys are not; and the log's own key vouches for nothing but itself.
    #[test]
    fn a_key_is_one_witness_and_the_log_s_own_is_none() {
        let checkpoint = Checkpoint { origin: "log.example/a".to_owned(), size: 12, root: [9; 32] };
        let log = NoteSigner::new("log.example/a", &[1; 32]);
        let witness = |name, seed| NoteSigner::new(name, &[seed; 32]);
        let all =
            [witness("one.example", 2), witness("two.example", 2), witness("three.example", 1), witness("four", 3)];
        let text = checkpoint.text();
        let signatures = [log.sign(&text)].into_iter().chain(all.iter().map(|w| w.cosign(&text, 77))).collect();
        let note = SignedNote { text, signatures };
        let witnesses: Vec<VerifierKey> = all.iter().map(|w| w.verifier(KeyKind::Witness)).collect();
        let counted = [("one.example".to_owned(), 77), ("four".to_owned(), 77)];
        let keys = [&[log.verifier(KeyKind::Log)][..], &witnesses].concat();
        assert_eq!(checkpoint.vouchers(&note, &keys).unwrap().witnesses, counted);
        // Nor where the log's key is not among those that count.
        assert_eq!(checkpoint.vouchers(&note, &witnesses).unwrap().witnesses, counted);
        // By the first name, whichever of them cosigned.
        let other = SignedNote { signatures: vec![all[1].cosign(&note.text, 78)], text: note.text.clone() };
        let counted = [("one.example".to_owned(), 78)];
        assert_eq!(checkpoint.vouchers(&other, &witnesses).unwrap().witnesses, counted);
    }

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
