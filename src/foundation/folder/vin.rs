//! Vehicle identification numbers: form (ISO 3779) and check digit (49 CFR 565.15).

use crate::words::{Phrase, phrase};

/// What is wrong with the form of a number: 17 characters, digits and capital
/// letters without I, O and Q (ISO 3779). `None` where the form is right.
pub fn form_problem(vin: &str) -> Option<Phrase> {
    let count = vin.chars().count();
    if let Some(c) = vin.chars().find(|c| !is_vin_character(*c)) {
        return Some(phrase!("doors-vin-character", character = format!("{c:?}")));
    }
    (count != 17).then(|| phrase!("doors-vin-length", count = count))
}

/// Whether the ninth character is the check digit that North American numbers
/// bear (49 CFR 565.15 (c)). Numbers of other markets need none, so `false`
/// proves no mistake; `None` where the form is wrong.
pub fn check_digit_agrees(vin: &str) -> Option<bool> {
    Some(vin.chars().nth(8) == Some(check_digit(vin)?))
}

/// The check digit that a number should bear in its ninth place, `0` to `9` or
/// `X` (49 CFR 565.15 (c), tables III and IV). `None` where the form is wrong.
pub fn check_digit(vin: &str) -> Option<char> {
    const WEIGHTS: [u32; 17] = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];
    if form_problem(vin).is_some() {
        return None;
    }
    let sum: u32 = vin.chars().zip(WEIGHTS).map(|(c, weight)| assigned_value(c) * weight).sum();
    match sum % 11 {
        10 => Some('X'),
        remainder => char::from_digit(remainder, 10),
    }
}

fn is_vin_character(c: char) -> bool {
    c.is_ascii_digit() || (c.is_ascii_uppercase() && !"IOQ".contains(c))
}

/// 49 CFR 565.15, table III.
fn assigned_value(c: char) -> u32 {
    match c {
        'A' | 'J' => 1,
        'B' | 'K' | 'S' => 2,
        'C' | 'L' | 'T' => 3,
        'D' | 'M' | 'U' => 4,
        'E' | 'N' | 'V' => 5,
        'F' | 'W' => 6,
        'G' | 'P' | 'X' => 7,
        'H' | 'Y' => 8,
        'R' | 'Z' => 9,
        digit => digit.to_digit(10).unwrap_or(0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Language;

    /// One letter among noughts, so that each number is no vehicle's: 49 CFR 565.15, table III has the letter's
    /// value, table IV the weight of its place.
    #[test]
    fn check_digit_is_that_of_the_regulation() {
        const VALUES: [(&str, u32); 3] = [("ABCDEFGH", 1), ("JKLMN", 1), ("STUVWXYZ", 2)];
        const WEIGHTS: [u32; 17] = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];
        let rows = VALUES.iter().flat_map(|(letters, first)| letters.chars().zip(*first..));
        for (letter, value) in rows.chain([('P', 7), ('R', 9)]) {
            for (place, weight) in WEIGHTS.into_iter().enumerate().filter(|(place, _)| *place != 8) {
                let mut number: Vec<char> = "0".repeat(17).chars().collect();
                number[place] = letter;
                let wanted = "0123456789X".chars().nth((value * weight % 11) as usize).unwrap();
                number[8] = wanted;
                let number: String = number.into_iter().collect();
                assert_eq!((check_digit(&number), check_digit_agrees(&number)), (Some(wanted), Some(true)), "{number}");
                let other = if wanted == '0' { '1' } else { '0' };
                let wrong: String = number.chars().enumerate().map(|(i, c)| if i == 8 { other } else { c }).collect();
                assert_eq!(check_digit_agrees(&wrong), Some(false), "{wrong}");
            }
        }
        // Every value 1: the weights sum to 89, remainder 1.
        assert_eq!(check_digit("11111111111111111"), Some('1'));
    }

    #[test]
    fn remainder_ten_is_an_x() {
        // Only the second place counts: 3 x 7 = 21, remainder 10.
        assert_eq!(check_digit("03000000000000000"), Some('X'));
    }

    #[test]
    fn the_form_is_iso_3779() {
        assert_eq!(form_problem("11111111111111111"), None);
        assert!(form_problem("1111").unwrap().say(Language::English).contains("4 characters"));
        for letter in ["I", "O", "Q", "a", "-", "ä"] {
            let vin = format!("{letter}1111111111111111");
            assert!(form_problem(&vin).is_some(), "{vin}");
            assert_eq!(check_digit(&vin), None);
        }
    }
}
