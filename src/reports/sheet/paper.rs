//! Papers.

use std::fmt;

/// What common office printers can't print at each edge, mm (common practice, no source).
pub(super) const UNPRINTABLE_MM: f64 = 4.5;

/// A paper size: A series of ISO 216, letter of ANSI Y14.1.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Paper {
    /// 210 x 297 mm.
    #[default]
    A4,
    /// 297 x 420 mm.
    A3,
    /// 8.5 x 11 inches.
    Letter,
}

impl Paper {
    /// Every paper.
    pub const ALL: [Paper; 3] = [Paper::A4, Paper::A3, Paper::Letter];

    /// Width and height upright, mm.
    pub fn size_mm(self) -> [f64; 2] {
        match self {
            Paper::A4 => [210.0, 297.0],
            Paper::A3 => [297.0, 420.0],
            Paper::Letter => [215.9, 279.4],
        }
    }

    /// The name as typed.
    pub fn name(self) -> &'static str {
        match self {
            Paper::A4 => "a4",
            Paper::A3 => "a3",
            Paper::Letter => "letter",
        }
    }
}

impl fmt::Display for Paper {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}
