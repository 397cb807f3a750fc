//! The steps to which a JPEG rounds its luma's coefficients (ITU-T T.81, B.2.4.1).

/// Where the n-th value of a table stands: row by row, n counted as the file does (T.81, figure A.6).
const ZIGZAG: [u8; 64] = [
    0, 1, 8, 16, 9, 2, 3, 10, 17, 24, 32, 25, 18, 11, 4, 5, 12, 19, 26, 33, 40, 48, 41, 34, 27, 20, 13, 6, 7, 14, 21,
    28, 35, 42, 49, 56, 57, 50, 43, 36, 29, 22, 15, 23, 30, 37, 44, 51, 58, 59, 52, 45, 38, 31, 39, 46, 53, 60, 61, 54,
    47, 55, 62, 63,
];

/// Steps of the 64 coefficients, rows of rising vertical frequency.
pub type Steps = [u16; 64];

/// The table with the number 0, which writers give the luma (common practice, no source), in a DQT segment.
pub(super) fn steps(mut segment: &[u8]) -> Option<Steps> {
    while let Some((&head, rest)) = segment.split_first() {
        let wide = usize::from(head >> 4 != 0) + 1;
        let values = rest.get(..64 * wide)?;
        if head & 15 == 0 {
            let mut table = [0; 64];
            for (bytes, place) in values.chunks_exact(wide).zip(ZIGZAG) {
                table[usize::from(place)] = bytes.iter().fold(0, |all, b| all << 8 | u16::from(*b));
            }
            return Some(table).filter(|t| t.iter().all(|s| *s > 0));
        }
        segment = &rest[64 * wide..];
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_table_is_read_into_its_rows() {
        let values: Vec<u8> = (1..=64).collect();
        let first = [&[0][..], &values].concat();
        let table = steps(&first).unwrap();
        // T.81, figure A.6: the beginning of the first rows, and the end.
        assert_eq!((&table[..4], &table[8..11], table[63]), (&[1, 2, 6, 7][..], &[3, 5, 8][..], 64));
        // Behind another table, with 16 bits; cut off; a step of nothing.
        let wide: Vec<u8> = values.iter().flat_map(|v| [1, *v]).collect();
        let second = [&[1][..], &values, &[0x10], &wide].concat();
        assert_eq!(steps(&second).unwrap()[1], 258);
        assert_eq!((steps(&first[..40]), steps(&[0; 65]), steps(&[])), (None, None, None));
    }
}
