//! A small face of capital letters and digits on a 5 x 7 grid, for labels and signs.

/// Rows from the top, five bits each, leftmost dot first; anything else is blank.
fn glyph(letter: char) -> [u8; 7] {
    match letter {
        '0' => [0b01110, 0b10001, 0b10011, 0b10101, 0b11001, 0b10001, 0b01110],
        '1' => [0b00100, 0b01100, 0b00100, 0b00100, 0b00100, 0b00100, 0b01110],
        '2' => [0b01110, 0b10001, 0b00001, 0b00110, 0b01000, 0b10000, 0b11111],
        '3' => [0b01110, 0b10001, 0b00001, 0b00110, 0b00001, 0b10001, 0b01110],
        '4' => [0b00010, 0b00110, 0b01010, 0b10010, 0b11111, 0b00010, 0b00010],
        '5' => [0b11111, 0b10000, 0b11110, 0b00001, 0b00001, 0b10001, 0b01110],
        '6' => [0b00110, 0b01000, 0b10000, 0b11110, 0b10001, 0b10001, 0b01110],
        '7' => [0b11111, 0b00001, 0b00010, 0b00100, 0b01000, 0b01000, 0b01000],
        '8' => [0b01110, 0b10001, 0b10001, 0b01110, 0b10001, 0b10001, 0b01110],
        '9' => [0b01110, 0b10001, 0b10001, 0b01111, 0b00001, 0b00010, 0b01100],
        'A' => [0b01110, 0b10001, 0b10001, 0b11111, 0b10001, 0b10001, 0b10001],
        'B' => [0b11110, 0b10001, 0b10001, 0b11110, 0b10001, 0b10001, 0b11110],
        'C' => [0b01110, 0b10001, 0b10000, 0b10000, 0b10000, 0b10001, 0b01110],
        'D' => [0b11110, 0b10001, 0b10001, 0b10001, 0b10001, 0b10001, 0b11110],
        'E' => [0b11111, 0b10000, 0b10000, 0b11110, 0b10000, 0b10000, 0b11111],
        'F' => [0b11111, 0b10000, 0b10000, 0b11110, 0b10000, 0b10000, 0b10000],
        'G' => [0b01110, 0b10001, 0b10000, 0b10111, 0b10001, 0b10001, 0b01111],
        'H' => [0b10001, 0b10001, 0b10001, 0b11111, 0b10001, 0b10001, 0b10001],
        'I' => [0b01110, 0b00100, 0b00100, 0b00100, 0b00100, 0b00100, 0b01110],
        'J' => [0b00111, 0b00010, 0b00010, 0b00010, 0b00010, 0b10010, 0b01100],
        'K' => [0b10001, 0b10010, 0b10100, 0b11000, 0b10100, 0b10010, 0b10001],
        'L' => [0b10000, 0b10000, 0b10000, 0b10000, 0b10000, 0b10000, 0b11111],
        'M' => [0b10001, 0b11011, 0b10101, 0b10101, 0b10001, 0b10001, 0b10001],
        'N' => [0b10001, 0b11001, 0b11001, 0b10101, 0b10011, 0b10011, 0b10001],
        'O' => [0b01110, 0b10001, 0b10001, 0b10001, 0b10001, 0b10001, 0b01110],
        'P' => [0b11110, 0b10001, 0b10001, 0b11110, 0b10000, 0b10000, 0b10000],
        'Q' => [0b01110, 0b10001, 0b10001, 0b10001, 0b10101, 0b10010, 0b01101],
        'R' => [0b11110, 0b10001, 0b10001, 0b11110, 0b10100, 0b10010, 0b10001],
        'S' => [0b01111, 0b10000, 0b10000, 0b01110, 0b00001, 0b00001, 0b11110],
        'T' => [0b11111, 0b00100, 0b00100, 0b00100, 0b00100, 0b00100, 0b00100],
        'U' => [0b10001, 0b10001, 0b10001, 0b10001, 0b10001, 0b10001, 0b01110],
        'V' => [0b10001, 0b10001, 0b10001, 0b10001, 0b10001, 0b01010, 0b00100],
        'W' => [0b10001, 0b10001, 0b10001, 0b10101, 0b10101, 0b11011, 0b10001],
        'X' => [0b10001, 0b10001, 0b01010, 0b00100, 0b01010, 0b10001, 0b10001],
        'Y' => [0b10001, 0b10001, 0b01010, 0b00100, 0b00100, 0b00100, 0b00100],
        'Z' => [0b11111, 0b00001, 0b00010, 0b00100, 0b01000, 0b10000, 0b11111],
        '-' => [0, 0, 0, 0b11111, 0, 0, 0],
        '.' => [0, 0, 0, 0, 0, 0b01100, 0b01100],
        '/' => [0b00001, 0b00001, 0b00010, 0b00100, 0b01000, 0b10000, 0b10000],
        _ => [0; 7],
    }
}

/// Width of a text whose letters are `height` high.
pub(crate) fn width(text: &str, height: f64) -> f64 {
    let letters = text.chars().count() as f64;
    (6.0 * letters - 1.0).max(0.0) * height / 7.0
}

/// Column and row (from the top) of every dot of a text.
pub(crate) fn dots(text: &str) -> Vec<[usize; 2]> {
    let mut dots = Vec::new();
    for (i, letter) in text.chars().enumerate() {
        for (row, bits) in glyph(letter).iter().enumerate() {
            dots.extend((0..5).filter(|c| bits >> (4 - c) & 1 == 1).map(|c| [6 * i + c, row]));
        }
    }
    dots
}

/// Whether a dot of the text covers a point; `at` is the text's lower left corner, y upwards.
pub(crate) fn covers(text: &str, height: f64, at: [f64; 2], point: [f64; 2]) -> bool {
    let dot = height / 7.0;
    let (column, row) = ((point[0] - at[0]) / dot, 7.0 - (point[1] - at[1]) / dot);
    if column < 0.0 || !(0.0..7.0).contains(&row) {
        return false;
    }
    let (letter, column) = (column as usize / 6, column as usize % 6);
    text.chars().nth(letter).is_some_and(|c| column < 5 && glyph(c)[row as usize] >> (4 - column) & 1 == 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_read_from_left_to_right_and_top_to_bottom() {
        // "L" has its foot at the bottom right and nothing at the top right.
        assert!(covers("L", 7.0, [0.0, 0.0], [4.5, 0.5]));
        assert!(!covers("L", 7.0, [0.0, 0.0], [4.5, 6.5]));
        assert!(covers("-L", 7.0, [10.0, 0.0], [16.5, 6.5]));
        assert!((width("AB", 7.0) - 11.0).abs() < 1e-12);
    }
}
