//! The code table of the printed markers.

use std::sync::LazyLock;

/// Cells along a marker's side, black border included.
pub const CELLS: usize = 8;
/// Code cells along a marker's side, border excluded.
pub const CODE_CELLS: usize = 6;

static TAG_36H11: LazyLock<Dictionary> =
    LazyLock::new(|| Dictionary::parse("36h11", 5, baywitness_models::TABLE_36H11));

/// A family of square markers: 6x6 code cells within a black border of one cell.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Dictionary {
    name: &'static str,
    correctable: u32,
    codes: Vec<u64>,
    /// For each third of a code: the ids by that third's value.
    by_part: [Vec<Vec<u32>>; PARTS],
}

/// A code falls into so many parts; one of them is right where fewer bits are wrong.
const PARTS: usize = 3;
const PART_BITS: usize = CODE_CELLS * CODE_CELLS / PARTS;

fn part(bits: u64, k: usize) -> usize {
    (bits >> (k * PART_BITS)) as usize & ((1 << PART_BITS) - 1)
}

/// How a read code compares with the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Match {
    /// Code number in the family.
    pub id: u32,
    /// Bits that differ.
    pub wrong_bits: u32,
    /// Clockwise quarter turns (0 to 3) that bring the picture as read upright.
    pub turns: u32,
}

impl Dictionary {
    /// AprilTag family 36h11; the table's source and licence stand in `models/36h11.txt`.
    pub fn tag36h11() -> &'static Dictionary {
        &TAG_36H11
    }

    fn parse(name: &'static str, correctable: u32, table: &str) -> Self {
        let lines = table.lines().filter(|line| !line.starts_with('#'));
        let codes: Vec<u64> = lines.filter_map(|line| u64::from_str_radix(line.trim(), 16).ok()).collect();
        let by_part = std::array::from_fn(|k| {
            let mut ids = vec![Vec::new(); 1 << PART_BITS];
            for (id, code) in codes.iter().enumerate() {
                ids[part(*code, k)].push(id as u32);
            }
            ids
        });
        Dictionary { name, correctable, codes, by_part }
    }

    /// The family's name in files.
    pub fn name(&self) -> &'static str {
        self.name
    }

    /// Number of codes; ids run from 0.
    pub fn len(&self) -> usize {
        self.codes.len()
    }

    /// Whether the table is empty.
    pub fn is_empty(&self) -> bool {
        self.codes.is_empty()
    }

    /// Most bits that can be corrected without ambiguity.
    pub fn correctable(&self) -> u32 {
        self.correctable
    }

    /// The 36 code bits of an id, 1 = white: the most significant one is the top-left inner
    /// cell of the upright picture, then row by row. `None` where the family has no such id.
    pub fn code(&self, id: u32) -> Option<u64> {
        self.codes.get(usize::try_from(id).ok()?).copied()
    }

    /// Whether a cell of the upright 8x8 picture is white (row 0 on top). The border is
    /// black; so is everything outside of the picture and of the family.
    pub fn is_white(&self, id: u32, column: usize, row: usize) -> bool {
        let inner = 1..=CODE_CELLS;
        if !inner.contains(&column) || !inner.contains(&row) {
            return false;
        }
        let index = (row - 1) * CODE_CELLS + column - 1;
        self.code(id).is_some_and(|code| code >> (CODE_CELLS * CODE_CELLS - 1 - index) & 1 == 1)
    }

    /// The code nearest to 36 bits read row by row, in any of the four turns, if at most
    /// `most_wrong` bits differ.
    pub fn find(&self, bits: u64, most_wrong: u32) -> Option<Match> {
        let mut turned = bits;
        let mut best: Option<Match> = None;
        for turns in 0..4 {
            let mut compare = |id: u32| {
                let wrong_bits = (self.codes[id as usize] ^ turned).count_ones();
                if wrong_bits <= most_wrong && best.is_none_or(|b| wrong_bits < b.wrong_bits) {
                    best = Some(Match { id, wrong_bits, turns });
                }
            };
            if (most_wrong as usize) < PARTS {
                self.by_part.iter().enumerate().flat_map(|(k, ids)| &ids[part(turned, k)]).for_each(|id| compare(*id));
            } else {
                (0..self.codes.len() as u32).for_each(compare);
            }
            turned = turn_clockwise(turned);
        }
        best
    }
}

/// A 6x6 picture turned by a quarter clockwise.
fn turn_clockwise(bits: u64) -> u64 {
    let n = CODE_CELLS;
    let mut turned = 0;
    for row in 0..n {
        for column in 0..n {
            // What lands at (row, column) stood at (n - 1 - column, row).
            let from = (n - 1 - column) * n + row;
            turned = turned << 1 | (bits >> (n * n - 1 - from) & 1);
        }
    }
    turned
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Inner cells of id 0, W white, as rendered when the AprilTag library (pupil-apriltags 1.0.4)
    /// reported it with its first corner bottom left and hence upright.
    const ID_0: [&str; 6] = ["WW.W.W", ".WWW.W", ".WW...", "W.W...", ".W.WW.", "...W.."];

    #[test]
    fn holds_the_whole_family() {
        let d = Dictionary::tag36h11();
        assert_eq!(d.len(), 587);
        assert_eq!(d.code(587), None);
        assert!(d.codes.iter().all(|c| c >> 36 == 0));
    }

    #[test]
    fn is_upright() {
        let d = Dictionary::tag36h11();
        for row in 0..CELLS {
            for column in 0..CELLS {
                let inner = (1..=6).contains(&row) && (1..=6).contains(&column);
                let white = inner && ID_0[row - 1].as_bytes()[column - 1] == b'W';
                assert_eq!(d.is_white(0, column, row), white, "row {row} column {column}");
            }
        }
    }

    /// The family's name says it: distance 11, rotations included.
    #[test]
    fn codes_are_eleven_bits_apart() {
        let codes = &Dictionary::tag36h11().codes;
        for (i, a) in codes.iter().enumerate() {
            let mut turned = *a;
            for turns in 0..4 {
                let others = if turns == 0 { &codes[i + 1..] } else { &codes[i..] };
                assert!(others.iter().all(|b| (turned ^ b).count_ones() >= 11), "id {i}, {turns} turns");
                turned = turn_clockwise(turned);
            }
            assert_eq!(turned, *a);
        }
    }

    #[test]
    fn finds_a_turned_code_with_wrong_bits() {
        let d = Dictionary::tag36h11();
        let code = d.code(123).unwrap();
        let seen = turn_clockwise(code) ^ 0b1_0000_0001_0000;
        assert_eq!(d.find(seen, 3), Some(Match { id: 123, wrong_bits: 2, turns: 3 }));
        assert_eq!(d.find(seen, 1), None);
    }
}
