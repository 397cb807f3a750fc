//! Merkle trees as RFC 6962, 2.1 defines them, over SHA-256: hashes of leaves
//! and nodes, proofs that a leaf is in a tree and that a tree is the start of a
//! later one. Making a proof asks for hashes of complete subtrees; checking one
//! (RFC 9162, 2.1.3.2 and 2.1.4.2) needs the proof alone.

use sha2::{Digest, Sha256};

/// A hash of a leaf, a node or a whole tree.
pub type Hash = [u8; 32];

/// The hash of an entry.
pub(super) fn leaf_hash(entry: &[u8]) -> Hash {
    Sha256::new().chain_update([0]).chain_update(entry).finalize().into()
}

/// The hash of a node over two others.
pub(super) fn node_hash(left: &Hash, right: &Hash) -> Hash {
    Sha256::new().chain_update([1]).chain_update(left).chain_update(right).finalize().into()
}

/// The root of a tree without leaves.
pub(super) fn empty_root() -> Hash {
    Sha256::digest([]).into()
}

/// The largest power of two below `n`, which is at least 2.
fn split(n: u64) -> u64 {
    1 << (63 - (n - 1).leading_zeros())
}

/// The hash over the leaves `from..to`; `node(level, index)` is the hash of the
/// complete subtree of `2^level` leaves that begins at `index * 2^level`. As
/// everywhere here, `from` is a multiple of the smallest power of two that is not
/// below `to - from`.
///
/// # Errors
/// What `node` says.
pub(super) fn range_hash<E>(from: u64, to: u64, node: &impl Fn(u32, u64) -> Result<Hash, E>) -> Result<Hash, E> {
    let n = to - from;
    if n == 0 {
        return Ok(empty_root());
    }
    if n.is_power_of_two() {
        let level = n.trailing_zeros();
        return node(level, from >> level);
    }
    let middle = from + split(n);
    Ok(node_hash(&range_hash(from, middle, node)?, &range_hash(middle, to, node)?))
}

/// The proof that leaf `index` is in the tree of `size` leaves: from its sibling up (RFC 6962, 2.1.1).
///
/// # Errors
/// What `node` says.
pub(super) fn inclusion_proof<E>(
    index: u64,
    size: u64,
    node: &impl Fn(u32, u64) -> Result<Hash, E>,
) -> Result<Vec<Hash>, E> {
    let (mut from, mut to, mut proof) = (0, size, Vec::new());
    while to - from > 1 {
        let middle = from + split(to - from);
        if index < middle {
            proof.push(range_hash(middle, to, node)?);
            to = middle;
        } else {
            proof.push(range_hash(from, middle, node)?);
            from = middle;
        }
    }
    proof.reverse();
    Ok(proof)
}

/// The proof that the tree of `earlier` leaves is the start of that of `size` (RFC 6962, 2.1.2); empty where
/// nothing has to be shown: no leaf earlier, or none since.
///
/// # Errors
/// What `node` says.
pub(super) fn consistency_proof<E>(
    earlier: u64,
    size: u64,
    node: &impl Fn(u32, u64) -> Result<Hash, E>,
) -> Result<Vec<Hash>, E> {
    let mut proof = Vec::new();
    if earlier == 0 || earlier >= size {
        return Ok(proof);
    }
    // `whole`: what is left of the earlier tree is the earlier tree itself, which the checker knows.
    let (mut from, mut to, mut whole) = (0, size, true);
    while earlier != to {
        let middle = from + split(to - from);
        if earlier <= middle {
            proof.push(range_hash(middle, to, node)?);
            to = middle;
        } else {
            proof.push(range_hash(from, middle, node)?);
            from = middle;
            whole = false;
        }
    }
    if !whole {
        proof.push(range_hash(from, to, node)?);
    }
    proof.reverse();
    Ok(proof)
}

/// Whether a proof shows that the leaf with this hash is number `index` of the tree with this root.
pub(super) fn is_included(index: u64, size: u64, leaf: &Hash, proof: &[Hash], root: &Hash) -> bool {
    if index >= size {
        return false;
    }
    let mut hash = *leaf;
    let whole = climb(index, size - 1, proof, |step, from_left| {
        hash = if from_left { node_hash(step, &hash) } else { node_hash(&hash, step) };
    });
    whole && hash == *root
}

/// The way from a node to the root, `last` being the last node on its level: hands out each step of a proof and
/// whether it stands to the left. Whether the steps end at the root.
fn climb<'a>(
    mut at: u64,
    mut last: u64,
    steps: impl IntoIterator<Item = &'a Hash>,
    mut join: impl FnMut(&Hash, bool),
) -> bool {
    for step in steps {
        if last == 0 {
            return false;
        }
        let from_left = at & 1 == 1 || at == last;
        join(step, from_left);
        while from_left && at & 1 == 0 && at != 0 {
            at >>= 1;
            last >>= 1;
        }
        at >>= 1;
        last >>= 1;
    }
    last == 0
}

/// Whether a proof shows that the earlier tree is the start of the later one.
pub(super) fn is_consistent(earlier: (u64, &Hash), later: (u64, &Hash), proof: &[Hash]) -> bool {
    let ((m, first), (n, second)) = (earlier, later);
    if m == n {
        return proof.is_empty() && first == second;
    }
    if m == 0 {
        return proof.is_empty() && *first == empty_root();
    }
    if m > n {
        return false;
    }
    let mut steps = proof.iter();
    // The earlier tree is a complete subtree of the later one: its root begins the way up.
    let begin = if m.is_power_of_two() { Some(first) } else { steps.next() };
    let Some(begin) = begin else { return false };
    let (mut at, mut last) = (m - 1, n - 1);
    while at & 1 == 1 {
        at >>= 1;
        last >>= 1;
    }
    let (mut old, mut new) = (*begin, *begin);
    let whole = climb(at, last, steps, |step, from_left| {
        if from_left {
            old = node_hash(step, &old);
            new = node_hash(step, &new);
        } else {
            new = node_hash(&new, step);
        }
    });
    whole && old == *first && new == *second
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::input::hex;
    use std::convert::Infallible;

    /// The eight entries of the reference tests of Certificate Transparency (`merkle_tree_test.cc`, also in Go's
    /// and Trillian's tests), and the roots there; written down from memory.
    const ENTRIES: [&[u8]; 8] = [
        b"",
        b"\x00",
        b"\x10",
        b"\x20\x21",
        b"\x30\x31",
        b"\x40\x41\x42\x43",
        b"\x50\x51\x52\x53\x54\x55\x56\x57",
        b"\x60\x61\x62\x63\x64\x65\x66\x67\x68\x69\x6a\x6b\x6c\x6d\x6e\x6f",
    ];
    const ROOTS: [&str; 8] = [
        "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
        "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
        "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
        "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
        "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
        "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
        "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
        "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328",
    ];

    /// RFC 6962's own recursive definition over the entries, without any stored hash.
    fn naive(entries: &[Vec<u8>]) -> Hash {
        match entries {
            [] => empty_root(),
            [one] => leaf_hash(one),
            many => {
                let mut k = 1;
                while k * 2 < many.len() {
                    k *= 2;
                }
                node_hash(&naive(&many[..k]), &naive(&many[k..]))
            }
        }
    }

    fn nodes(entries: &[Vec<u8>]) -> impl Fn(u32, u64) -> Result<Hash, Infallible> {
        let mut levels = vec![entries.iter().map(|e| leaf_hash(e)).collect::<Vec<Hash>>()];
        while levels.last().unwrap().len() > 1 {
            let pairs = levels.last().unwrap().chunks_exact(2).map(|p| node_hash(&p[0], &p[1])).collect();
            levels.push(pairs);
        }
        move |level, index| Ok(levels[level as usize][index as usize])
    }

    #[test]
    fn roots_are_those_of_the_reference_tests() {
        let entries: Vec<Vec<u8>> = ENTRIES.map(<[u8]>::to_vec).into();
        let node = nodes(&entries);
        for (n, root) in ROOTS.iter().enumerate() {
            assert_eq!(hex(&range_hash(0, n as u64 + 1, &node).unwrap()), *root, "{} leaves", n + 1);
        }
        assert_eq!(hex(&empty_root()), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    /// Trees of 1 to 300 leaves against the definition, with proofs from all and to all; a change of anything is seen.
    #[test]
    fn proofs_of_all_sizes_hold_and_no_others() {
        let entries: Vec<Vec<u8>> = (0..300_u32).map(|i| i.to_be_bytes().to_vec()).collect();
        let node = nodes(&entries);
        let roots: Vec<Hash> = (0..=300).map(|n| naive(&entries[..n])).collect();
        for n in 1..=300_u64 {
            let root = &roots[n as usize];
            assert_eq!(range_hash(0, n, &node).unwrap(), *root);
            // All leaves of small trees, changing ones of larger ones.
            for i in (0..n).filter(|i| n < 20 || (i + n) % 61 == 0 || i + 2 > n) {
                let proof = inclusion_proof(i, n, &node).unwrap();
                let leaf = leaf_hash(&entries[i as usize]);
                assert!(is_included(i, n, &leaf, &proof, root), "{i} of {n}");
                assert!(
                    !is_included(i + 1, n, &leaf, &proof, root) && !is_included(i, n, root, &proof, root) || n == 1
                );
                assert!(n == 1 || !is_included(i, n, &leaf, &proof[1..], root));
                assert!(!is_included(i, n, &leaf, &[&proof[..], &[leaf]].concat(), root));
                assert!(!is_included(i, n, &leaf, &proof, &roots[n as usize - 1]));
            }
            for m in (0..=n).filter(|m| n < 20 || (m + n) % 61 == 0 || m + 2 > n) {
                let proof = consistency_proof(m, n, &node).unwrap();
                let old = &roots[m as usize];
                assert!(is_consistent((m, old), (n, root), &proof), "{m} to {n}");
                let wrong = if m == 0 { *root } else { roots[m as usize - 1] };
                assert!(!is_consistent((m, &wrong), (n, root), &proof), "{m} to {n}, another start");
                if m < n && m > 0 {
                    assert!(!is_consistent((m, old), (n, old), &proof), "{m} to {n}, another end");
                    assert!(!is_consistent((m, old), (n, root), &[&proof[..], &[*root]].concat()));
                    assert!(!is_consistent((m, old), (n, root), &proof[1..]));
                }
            }
        }
    }
}
