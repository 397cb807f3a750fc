//! The log of every attempt: append-only, so that what was tried cannot be
//! dropped, put in later or changed without being seen.
//!
//! A tiled transparency log in the open formats of C2SP (`tlog-tiles`,
//! `tlog-checkpoint`, `signed-note`, `tlog-cosignature`, `tlog-proof`) over the trees
//! of RFC 6962, in plain files: any file server publishes it, any reader of these
//! formats checks it. Own code, since the crates there are for Rust bring an old
//! base64, `url` and paths that panic, for some 300 lines.
//!
//! [`Log`] writes, [`LogFolder`] reads one that may be anything, [`witness()`]
//! vouches for one from elsewhere. What an archive lacks of it is for `custody` to say.

mod attempt;
mod checkpoint;
mod note;
mod proof_file;
mod read;
mod sequence;
mod tile;
mod tree;
mod witness;
mod write;

use crate::words::{Phrase, phrase};

pub use attempt::{Attempt, Commitments, OrderSalt, order, order_name, orders, photo_commitment};
pub use checkpoint::{Checkpoint, Vouchers};
pub use note::{KeyKind, NoteSignature, NoteSigner, SignedNote, VerifierKey, Vouched, check_name};
pub use proof_file::{AttemptProof, Shown};
pub use read::{CHECKPOINT, LogError, LogFolder, read_checkpoint};
pub use sequence::{TOLERANCE_S, against_witness, out_of_order};
pub use tree::Hash;
pub use witness::{WITNESSED, Witnessed, memory, witness, witnessed};
pub use write::{Appended, Log, VERIFIER_KEY, order_salt_file, private_folder, read_order_salt};

/// That something cannot be done with a file: `read`, `write`, `make` (a folder), `rename`, `remove`, `lock`,
/// `protect`, `key` (read one), `random` (get random numbers for it).
fn cannot(doing: &str, path: &std::path::Path, why: &std::io::Error) -> Phrase {
    phrase!("evidence-cannot", doing = doing, path = path.display().to_string(), why = why.to_string())
}

/// The proof's name in an evidence folder's payload.
pub const PROOF_FILE: &str = "attempt.tlog-proof";
