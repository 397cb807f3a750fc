//! People as pseudonyms: the same person is the same in every report of an
//! archive, and nobody tells who it is without the archive's key.

use std::collections::{HashMap, HashSet};

use sha2::{Digest, Sha256};

/// A key of an archive's pseudonyms.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PeopleKey(pub [u8; 32]);

/// Letters and digits that are not mistaken for each other.
const LETTERS: &[u8; 32] = b"ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

/// A pseudonym for each name: `Person 7KQ2`; longer where two would be the same.
pub(super) fn pseudonyms(names: &[String], key: &PeopleKey) -> HashMap<String, String> {
    let long: Vec<String> = names.iter().map(|name| letters(name, key)).collect();
    let mut length = 4;
    while length < 20 && long.iter().map(|l| &l[..length]).collect::<HashSet<_>>().len() < long.len() {
        length += 1;
    }
    names.iter().zip(&long).map(|(name, l)| (name.clone(), format!("Person {}", &l[..length]))).collect()
}

fn letters(name: &str, key: &PeopleKey) -> String {
    // HMAC's own shape is not needed: the key is of fixed length and comes first and last.
    let mut digest = Sha256::new();
    digest.update(key.0);
    digest.update((name.len() as u64).to_le_bytes());
    digest.update(name);
    digest.update(key.0);
    digest.finalize().iter().map(|byte| char::from(LETTERS[usize::from(byte % 32)])).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn stable_for_a_key_and_different_for_another() {
        let names = ["T1".to_owned(), "T2".to_owned()];
        let (a, b) = (pseudonyms(&names, &PeopleKey([1; 32])), pseudonyms(&names, &PeopleKey([2; 32])));
        assert_eq!(a, pseudonyms(&names, &PeopleKey([1; 32])));
        assert_ne!(a["T1"], a["T2"]);
        assert_ne!(a["T1"], b["T1"]);
        assert!(a["T1"].starts_with("Person ") && a["T1"].len() == 11);
    }
}
