//! Answers under seal: not read at a glance, and not changed without it showing.
//!
//! The file is scrambled with its own salt, so that opening it shows nothing;
//! whoever reads this program can unscramble it. What the seal does prove is
//! that the answers are the ones that were drawn: their SHA-256 with the salt
//! stands in the drill's file, to be noted elsewhere by whoever wants proof.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

use crate::input::hex;

/// Sealed content with its commitment.
pub(super) struct Sealed {
    /// The file's text.
    pub(super) text: String,
    /// SHA-256 over salt and content, lower-case hex.
    pub(super) commitment: String,
}

/// Seals `content`; the salt is drawn anew for every drill.
pub(super) fn seal(content: &[u8], salt: [u8; 32]) -> Sealed {
    let text = format!("{}\n{}\n", hex(&salt), STANDARD.encode(scrambled(content, &salt)));
    Sealed { text, commitment: commitment(content, &salt) }
}

/// Opens what [`seal`] wrote; `None` where it is not that, or is not what was committed to.
pub(super) fn open(text: &str, committed: &str) -> Option<Vec<u8>> {
    let mut lines = text.lines();
    let salt_text = lines.next()?;
    let salt: Option<Vec<u8>> =
        (0..32).map(|i| u8::from_str_radix(salt_text.get(2 * i..2 * i + 2)?, 16).ok()).collect();
    let salt: [u8; 32] = salt?.try_into().ok()?;
    let content = scrambled(&STANDARD.decode(lines.next()?).ok()?, &salt);
    (commitment(&content, &salt) == committed).then_some(content)
}

fn commitment(content: &[u8], salt: &[u8; 32]) -> String {
    let mut digest = Sha256::new();
    digest.update(salt);
    digest.update(content);
    hex(&digest.finalize())
}

/// Each block of 32 bytes with the digest of the salt and the block's number added.
fn scrambled(content: &[u8], salt: &[u8; 32]) -> Vec<u8> {
    let mut out = Vec::with_capacity(content.len());
    for (number, block) in content.chunks(32).enumerate() {
        let mut digest = Sha256::new();
        digest.update(b"drill");
        digest.update(salt);
        digest.update((number as u64).to_le_bytes());
        out.extend(block.iter().zip(digest.finalize()).map(|(a, b)| a ^ b));
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn opened_only_as_it_was_sealed() {
        let content = b"{\"finding\": \"stand-turned\"} and more than one block of it";
        let sealed = seal(content, [7; 32]);
        assert!(!sealed.text.contains("stand") && sealed.commitment.len() == 64);
        assert_eq!(open(&sealed.text, &sealed.commitment).as_deref(), Some(&content[..]));
        let mut changed = sealed.text.clone().into_bytes();
        changed[70] = if changed[70] == b'A' { b'B' } else { b'A' };
        assert_eq!(open(&String::from_utf8(changed).unwrap(), &sealed.commitment), None);
        assert_eq!(open("nothing", &sealed.commitment), None);
    }

    #[test]
    fn the_commitment_is_plain_sha_256() {
        // FIPS 180-4: SHA-256 of 32 zero bytes with nothing after them (value from memory).
        assert_eq!(seal(b"", [0; 32]).commitment, "66687aadf862bd776c8fc18b8e9f8e20089714856ee233b3902a591d0d5f2925");
    }
}
