//! Where the hashes and entries of a log lie: tiles of 256 (C2SP `tlog-tiles`).

use super::tree::{Hash, node_hash};

/// Hashes in a full tile, entries in a full bundle.
pub(super) const WIDTH: u64 = 256;
/// The same as a power of two.
const HEIGHT: u32 = 8;
/// Longest entry, bytes: bundles state lengths in 16 bits.
pub(super) const LONGEST: usize = u16::MAX as usize;

/// What a tile holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub(super) enum Kind {
    /// Hashes: level 0 of entries, each further level of full tiles below.
    Hashes(u32),
    /// The entries themselves.
    Entries,
}

/// A tile of a tree.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub(super) struct Tile {
    pub(super) kind: Kind,
    pub(super) index: u64,
    /// 1 to 256.
    pub(super) width: u64,
}

impl Tile {
    /// A tile as it is in a tree of `size` entries; none where it is empty there.
    pub(super) fn of(kind: Kind, index: u64, size: u64) -> Option<Tile> {
        let level = if let Kind::Hashes(level) = kind { level } else { 0 };
        let hashes = size.checked_shr(HEIGHT * level).unwrap_or(0);
        let width = hashes.saturating_sub(index.saturating_mul(WIDTH)).min(WIDTH);
        (width > 0).then_some(Tile { kind, index, width })
    }

    /// The last tiles of a tree of `size` entries: of entries, and of hashes level by level.
    pub(super) fn last_of(size: u64) -> Vec<Tile> {
        let mut tiles = Vec::new();
        let last = |kind, hashes: u64| Tile::of(kind, (hashes - 1) / WIDTH, size);
        let (mut level, mut hashes) = (0, size);
        tiles.extend(if size > 0 { last(Kind::Entries, size) } else { None });
        while hashes > 0 {
            tiles.extend(last(Kind::Hashes(level), hashes));
            level += 1;
            hashes /= WIDTH;
        }
        tiles
    }

    /// The path below the log's folder.
    pub(super) fn path(&self) -> String {
        let full = self.full_path();
        if self.width < WIDTH { format!("{full}.p/{}", self.width) } else { full }
    }

    /// The path of the same tile once it is full.
    pub(super) fn full_path(&self) -> String {
        let kind = match self.kind {
            Kind::Hashes(level) => level.to_string(),
            Kind::Entries => "entries".to_owned(),
        };
        let (mut number, mut rest) = (format!("{:03}", self.index % 1000), self.index / 1000);
        while rest > 0 {
            number = format!("x{:03}/{number}", rest % 1000);
            rest /= 1000;
        }
        format!("tile/{kind}/{number}")
    }
}

/// The tile's level and number in which the subtree `(level, index)` lies, and its hashes there.
pub(super) fn holder(level: u32, index: u64) -> (u32, u64, std::ops::Range<usize>) {
    let (tile_level, within) = (level / HEIGHT, level % HEIGHT);
    let first = index << within;
    let start = (first % WIDTH) as usize;
    (tile_level, first / WIDTH, start..start + (1 << within))
}

/// The hash of a complete subtree; `hashes` are a power of two of them.
pub(super) fn subtree(hashes: &[Hash]) -> Hash {
    match hashes {
        [one] => *one,
        many => {
            let (left, right) = many.split_at(many.len() / 2);
            node_hash(&subtree(left), &subtree(right))
        }
    }
}

/// Entries as a bundle holds them: each behind its length in two bytes.
pub(super) fn bundle(entries: &[Vec<u8>]) -> Vec<u8> {
    let mut bytes = Vec::new();
    for entry in entries {
        bytes.extend((entry.len() as u16).to_be_bytes());
        bytes.extend(entry);
    }
    bytes
}

/// The first `count` entries of a bundle; none where it does not hold as many.
/// `exactly`: and no byte more.
pub(super) fn unbundle(mut bytes: &[u8], count: u64, exactly: bool) -> Option<Vec<Vec<u8>>> {
    let mut entries = Vec::new();
    for _ in 0..count {
        let (length, rest) = bytes.split_first_chunk()?;
        let (entry, rest) = rest.split_at_checked(u16::from_be_bytes(*length).into())?;
        entries.push(entry.to_vec());
        bytes = rest;
    }
    (!exactly || bytes.is_empty()).then_some(entries)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The examples of the specification.
    #[test]
    fn tiles_lie_where_the_specification_has_them() {
        let path = |kind, index, width| Tile { kind, index, width }.path();
        assert_eq!(path(Kind::Hashes(0), 1_234_067, 256), "tile/0/x001/x234/067");
        assert_eq!(path(Kind::Entries, 0, 7), "tile/entries/000.p/7");
        let last: Vec<String> = Tile::last_of(70_000).iter().map(Tile::path).collect();
        assert_eq!(last, ["tile/entries/273.p/112", "tile/0/273.p/112", "tile/1/001.p/17", "tile/2/000.p/1"]);
        let last: Vec<String> = Tile::last_of(256).iter().map(Tile::path).collect();
        assert_eq!(last, ["tile/entries/000", "tile/0/000", "tile/1/000.p/1"]);
        assert_eq!(Tile::of(Kind::Hashes(0), 273, 70_000).unwrap().width, 112);
        assert_eq!(Tile::of(Kind::Hashes(0), 274, 70_000), None);
        assert_eq!(Tile::last_of(0), []);
    }

    #[test]
    fn a_bundle_that_was_cut_off_is_none() {
        let entries = vec![b"a".to_vec(), Vec::new(), vec![7; 300]];
        let bytes = bundle(&entries);
        assert_eq!(unbundle(&bytes, 3, true), Some(entries.clone()));
        assert_eq!(unbundle(&bytes, 2, false), Some(entries[..2].to_vec()));
        assert_eq!(unbundle(&bytes, 2, true), None);
        assert_eq!(unbundle(&bytes[..bytes.len() - 1], 3, true), None);
        assert_eq!(unbundle(&bytes, 4, true), None);
    }
}
