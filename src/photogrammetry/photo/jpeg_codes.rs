//! Huffman codes of JPEG's picture data (ITU-T T.81, annexes C and F.2), several bits at once.

/// Bits that are looked up at once: all codes but rare ones.
const LOOK: u32 = 10;
/// A step that ends a block, from wherever it is. So much more of it ends the following blocks as well, as
/// [`Step::end_run`] says.
pub(super) const END: usize = 128;

/// What a table's codes stand for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    /// Differences of means.
    Dc,
    /// Runs of zeros with what comes after them.
    Ac,
    /// Likewise where several scans make up a block: ends may be those of many blocks (G.1.2.2).
    AcByScans,
}

/// What one code and the number behind it say.
#[derive(Debug, Clone, Copy)]
pub(super) struct Step {
    /// How far it goes on in the block.
    pub(super) on: usize,
    pub(super) value: i32,
}

impl Step {
    /// How many blocks end here in this scan, this one counted; `None` where none does.
    pub(super) fn end_run(self) -> Option<u32> {
        let size = self.on.checked_sub(END)? as u32;
        // A number without a leading one was taken for a negative one.
        let number = if self.value < 0 { self.value + (1 << size) - 1 } else { self.value };
        Some((1 << size) + number as u32)
    }
}

/// The codes of one table.
pub(super) struct Codes {
    /// By the next bits what [`packed`] has of the code that they begin with; 0 where it is longer, or none.
    table: Box<[u32; 1 << LOOK]>,
    /// By a code's length less one: the first sixteen bits that no code so short begins with, and what leads from a
    /// code to its symbol's place.
    ends: [(u32, i32); 16],
    symbols: [u8; 256],
    kind: Kind,
}

impl Codes {
    /// From the counts of codes by length and their symbols (B.2.4.2); `None` where they are none.
    pub(super) fn new(counts: &[u8; 16], listed: &[u8], kind: Kind) -> Option<Self> {
        let mut symbols = [0; 256];
        symbols.get_mut(..listed.len())?.copy_from_slice(listed);
        let mut codes = Codes { table: Box::new([0; 1 << LOOK]), ends: [(0, 0); 16], symbols, kind };
        let (mut code, mut place) = (0u32, 0usize);
        for (length, count) in (1u32..).zip(counts) {
            let first = code;
            for symbol in listed.get(place..place + usize::from(*count))? {
                if let Some(free) = LOOK.checked_sub(length) {
                    let start = (code << free) as usize;
                    codes.table.get_mut(start..start + (1 << free))?.fill(packed(*symbol, length, kind).unwrap_or(0));
                }
                code += 1;
            }
            codes.ends[length as usize - 1] = (code << (16 - length), place as i32 - first as i32);
            place += usize::from(*count);
            if code > 1 << length {
                return None;
            }
            code <<= 1;
        }
        (place == listed.len()).then_some(codes)
    }

    /// The next step, from at least 30 bits; `None` where no code stands there.
    #[inline(always)]
    pub(super) fn next(&self, bits: &mut Bits<'_>) -> Option<Step> {
        let mut entry = self.table[(bits.next >> (64 - LOOK)) as usize];
        if entry == 0 {
            entry = self.long(bits.next)?;
        }
        let (all, size) = (entry & 0xff, entry >> 8 & 0xff);
        // The number's bits come first; of none there is no shift of 64.
        let front = bits.next.wrapping_shl(all.wrapping_sub(size));
        let number = (front >> 1).wrapping_shr(63u32.wrapping_sub(size)) as i32;
        // Without a leading one it is negative (F.2.2.1).
        let negative = !((front as i64 >> 63) as i32);
        let value = number.wrapping_add(negative & 1i32.wrapping_sub(1i32.wrapping_shl(size)));
        bits.take(all);
        Some(Step { on: (entry >> 16) as usize, value })
    }

    /// A code that the table does not have.
    #[cold]
    #[inline(never)]
    fn long(&self, next: u64) -> Option<u32> {
        let sixteen = (next >> 48) as u32;
        let (length, (_, shift)) = (1u32..).zip(self.ends).find(|(_, (end, _))| sixteen < *end)?;
        let place = (sixteen >> (16 - length)).checked_add_signed(shift)?;
        packed(*self.symbols.get(place as usize)?, length, self.kind)
    }
}

/// What a code stands for (F.1.2.1, F.1.2.2): bits of it with its number, bits of the number, and the step, a byte each;
/// `None` for what no encoder writes.
fn packed(symbol: u8, length: u32, kind: Kind) -> Option<u32> {
    let (run, size) = (u32::from(symbol >> 4), u32::from(symbol & 15));
    let (on, size) = match (kind, run, size) {
        (Kind::Dc, 0, 0..=11) => (0, size),
        (Kind::Ac | Kind::AcByScans, 15, 0) => (16, 0),
        (Kind::Ac, 0, 0) => (END as u32, 0),
        (Kind::AcByScans, _, 0) => (END as u32 + run, run),
        (Kind::Ac | Kind::AcByScans, _, 1..=10) => (run + 1, size),
        _ => return None,
    };
    Some((length + size) | size << 8 | on << 16)
}

/// The bits of a run of picture data, stuffed zeros left out (B.1.1.5).
#[derive(Clone, Copy)]
pub(super) struct Bits<'a> {
    bytes: &'a [u8],
    at: usize,
    /// The next bits, the first one highest; behind them zeros or what comes next.
    next: u64,
    /// How many of them are there.
    count: u32,
    /// How many there are that the run does not have.
    beyond: u32,
}

impl<'a> Bits<'a> {
    pub(super) fn new(bytes: &'a [u8]) -> Self {
        Bits { bytes, at: 0, next: 0, count: 0, beyond: 0 }
    }

    /// Sees to at least 54 bits: two codes with their numbers.
    #[inline(always)]
    pub(super) fn fill(&mut self) {
        if let Some(eight) = self.bytes.get(self.at..).and_then(|rest| rest.first_chunk::<8>()) {
            let word = u64::from_be_bytes(*eight);
            // No byte of it is FF: the complement has no zero byte.
            const EACH: u64 = 0x0101_0101_0101_0101;
            if (!word).wrapping_sub(EACH) & word & (EACH << 7) == 0 {
                // What is there of one byte more comes again as it is.
                self.next |= word.wrapping_shr(self.count);
                let whole = 64u32.wrapping_sub(self.count) / 8;
                self.at = self.at.wrapping_add(whole as usize);
                self.count = self.count.wrapping_add(8 * whole);
                return;
            }
        }
        *self = self.filled_slowly();
    }

    /// By value: what is kept in registers stays there.
    #[cold]
    #[inline(never)]
    fn filled_slowly(mut self) -> Self {
        // Never as many as 64, which could not be shifted by.
        while self.count <= 55 {
            let byte = match self.bytes.get(self.at..) {
                Some([0xff, 0, ..]) => {
                    self.at += 2;
                    0xff
                }
                Some([byte, ..]) => {
                    self.at += 1;
                    *byte
                }
                _ => {
                    self.beyond += 8;
                    0
                }
            };
            self.next |= u64::from(byte) << (56 - self.count);
            self.count += 8;
        }
        self
    }

    #[inline(always)]
    fn take(&mut self, count: u32) {
        self.next = self.next.wrapping_shl(count);
        self.count = self.count.wrapping_sub(count);
    }

    /// One bit alone.
    #[inline(always)]
    pub(super) fn bit(&mut self) -> bool {
        if self.count == 0 {
            self.fill();
        }
        let bit = self.next >> 63 != 0;
        self.take(1);
        bit
    }

    /// Whether all of the run was taken, but for what fills up its last byte, and nothing more.
    pub(super) fn is_used_up(&self) -> bool {
        self.at == self.bytes.len() && (self.beyond..self.beyond + 8).contains(&self.count)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The table of luminance DC differences, T.81 table K.3.
    fn luminance_dc() -> Codes {
        let counts = [0, 1, 5, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0];
        Codes::new(&counts, &[0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], Kind::Dc).unwrap()
    }

    #[test]
    fn codes_of_the_standards_table_are_read() {
        // Size 2 is 011, size 0 is 00, size 11 is 111111110; -3 is 00, 3 is 11, 1024 is 10000000000.
        let text = "01100" /* -3 */.to_owned() + "01111" /* 3 */ + "00" + "11111111010000000000";
        let bytes: Vec<u8> =
            text.as_bytes().chunks(8).map(|b| b.iter().fold(0, |byte, bit| byte << 1 | (bit - b'0'))).collect();
        // No byte is FF here but the one of ones, which is stuffed.
        let stuffed: Vec<u8> = bytes.iter().flat_map(|b| if *b == 0xff { vec![0xff, 0] } else { vec![*b] }).collect();
        let (codes, mut bits) = (luminance_dc(), Bits::new(&stuffed));
        let mut value = || {
            bits.fill();
            codes.next(&mut bits).unwrap().value
        };
        let values = [value(), value(), value(), value()];
        assert_eq!(values, [-3, 3, 0, 1024]);
        assert!(bits.is_used_up());
        // A code of ones alone stands for nothing (C.2).
        let mut ones = Bits::new(&[0xff, 0, 0xff, 0]);
        ones.fill();
        assert!(codes.next(&mut ones).is_none());
    }

    /// T.81 table G.1: an end of so many blocks, of which all but the leading one are written behind the code.
    #[test]
    fn ends_of_many_blocks_are_read() {
        let mut counts = [0; 16];
        counts[1] = 3;
        let codes = Codes::new(&counts, &[0x00, 0x20, 0xe0], Kind::AcByScans).unwrap();
        // 00; 01 then 00, 01, 10, 11; 10 then fourteen ones.
        let mut bits = Bits::new(&[0b0001_0001, 0b0101_1001, 0b1110_1111, 0b1111_1111, 0, 0b1110_0000]);
        let mut ends = || {
            bits.fill();
            codes.next(&mut bits).unwrap().end_run()
        };
        let all: Vec<_> = (0..6).map(|_| ends().unwrap()).collect();
        assert_eq!(all, [1, 4, 5, 6, 7, (1 << 15) - 1]);
    }

    #[test]
    fn tables_that_are_none_are_refused() {
        let mut counts = [0; 16];
        counts[0] = 3;
        assert!(Codes::new(&counts, &[0, 1, 2], Kind::Dc).is_none());
        counts[0] = 1;
        assert!(Codes::new(&counts, &[], Kind::Dc).is_none() && Codes::new(&counts, &[0, 1], Kind::Dc).is_none());
    }

    #[test]
    fn more_than_a_run_has_is_seen() {
        let (codes, mut bits) = (luminance_dc(), Bits::new(&[0b0000_0111]));
        bits.fill();
        assert!((0..3).all(|_| codes.next(&mut bits).is_some()) && !bits.is_used_up());
    }
}
