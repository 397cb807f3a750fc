//! The proof that an attempt is in a log, for who has only that (C2SP
//! `tlog-proof`): entry, number, path up to the root, checkpoint.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use super::attempt::Attempt;
use super::checkpoint::Checkpoint;
use super::note::SignedNote;
use super::tree::{Hash, is_included, leaf_hash};
use crate::words::{Phrase, phrase};

const FIRST_LINE: &str = "c2sp.org/tlog-proof@v1";
/// Longest path in any tree.
const LONGEST_PATH: usize = 64;

fn wrong(problem: &str) -> Phrase {
    phrase!("evidence-proof", problem = problem, first_line = FIRST_LINE)
}

/// A proof. It says itself what it is of: the entry goes along as the format's extra data.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct AttemptProof {
    /// The entry's bytes.
    pub entry: Vec<u8>,
    /// Its number in the log, from 0.
    pub index: u64,
    /// From its sibling up.
    pub proof: Vec<Hash>,
    /// The checkpoint that it leads to.
    pub note: SignedNote,
}

/// What a proof shows, once the checkpoint's signature is known to be true.
#[derive(Debug)]
pub struct Shown {
    /// The attempt.
    pub attempt: Attempt,
    /// The log's state then.
    pub checkpoint: Checkpoint,
}

impl AttemptProof {
    /// The file's text.
    pub fn to_text(&self) -> String {
        let path: String = self.proof.iter().map(|hash| STANDARD.encode(hash) + "\n").collect();
        let extra = STANDARD.encode(&self.entry);
        format!("{FIRST_LINE}\nextra {extra}\nindex {}\n{path}\n{}", self.index, self.note.to_text())
    }

    /// Reads a proof file.
    ///
    /// # Errors
    /// What is wrong.
    pub fn read(text: &str) -> Result<Self, Phrase> {
        let (head, note) = text.split_once("\n\n").ok_or_else(|| wrong("head"))?;
        let mut lines = head.lines();
        if lines.next() != Some(FIRST_LINE) {
            return Err(wrong("first-line"));
        }
        let entry = lines.next().and_then(|l| STANDARD.decode(l.strip_prefix("extra ")?).ok());
        let entry = entry.ok_or_else(|| wrong("entry"))?;
        let index = lines.next().and_then(|l| l.strip_prefix("index ")?.parse().ok());
        let index = index.ok_or_else(|| wrong("index"))?;
        let hash = |line: &str| STANDARD.decode(line).ok().and_then(|bytes| Hash::try_from(bytes).ok());
        let proof: Option<Vec<Hash>> = lines.take(LONGEST_PATH + 1).map(hash).collect();
        let proof = proof.ok_or_else(|| wrong("hash"))?;
        let read = AttemptProof { entry, index, proof, note: SignedNote::read(note)? };
        if read.to_text() != text {
            return Err(wrong("spelling"));
        }
        Ok(read)
    }

    /// Whether the entry follows from the checkpoint. Nothing of its signatures is checked.
    ///
    /// # Errors
    /// What is wrong.
    pub fn check(&self) -> Result<Shown, Phrase> {
        let (checkpoint, _) = Checkpoint::read(&self.note.to_text())?;
        let attempt = Attempt::read(&self.entry).map_err(|why| phrase!("evidence-proof-entry", why = why))?;
        let leaf = leaf_hash(&self.entry);
        if !is_included(self.index, checkpoint.size, &leaf, &self.proof, &checkpoint.root) {
            return Err(wrong("path"));
        }
        Ok(Shown { attempt, checkpoint })
    }
}
