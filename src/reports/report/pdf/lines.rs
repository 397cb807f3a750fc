//! Breaking text into lines.

use std::rc::Rc;

use super::page::{Draw, Layers, Mark};
use super::style::Style;
use crate::typeface::Fonts;

/// What a paragraph is made of.
pub(super) enum Piece {
    /// Text of one look; white space is where lines may break.
    Text { text: String, style: Style },
    /// A small drawing in the line.
    Icon { layers: Rc<Layers>, size: [f64; 2], words: Option<usize> },
    /// A new line.
    Break,
}

/// One line: its height and what stands in it, from its top left.
pub(super) struct Line {
    pub(super) height: f64,
    pub(super) marks: Vec<Mark>,
}

/// What may not be parted, with its width.
#[derive(Default)]
struct Word {
    parts: Vec<Part>,
    space_before: bool,
    break_before: bool,
}

enum Part {
    Text { text: String, style: Style, width: f64 },
    Icon { layers: Rc<Layers>, size: [f64; 2], leaf: Option<usize> },
}

impl Part {
    fn width(&self) -> f64 {
        match self {
            Part::Text { width, .. } => *width,
            Part::Icon { size, .. } => size[0] + 1.2,
        }
    }
}

impl Word {
    fn width(&self) -> f64 {
        self.parts.iter().map(Part::width).sum()
    }
}

/// The lines of a paragraph in a column `width` mm wide; `leaf` is the piece
/// of the structure that its text belongs to.
pub(super) fn lines(fonts: &Fonts, pieces: Vec<Piece>, width: f64, leaf: Option<usize>) -> Vec<Line> {
    let mut lines: Vec<(Vec<Word>, f64)> = Vec::new();
    for word in fitting(fonts, words(fonts, pieces), width) {
        let gap = if word.space_before { space(fonts, &word) } else { 0.0 };
        let wide = word.width();
        match lines.last_mut() {
            Some((line, filled)) if !word.break_before && *filled + gap + wide <= width + 1e-6 => {
                *filled += gap + wide;
                line.push(word);
            }
            _ => lines.push((vec![word], wide)),
        }
    }
    lines.into_iter().map(|(words, _)| set(fonts, words, leaf)).collect()
}

/// The width of the widest word and of the whole on one line, mm.
pub(super) fn extent(fonts: &Fonts, pieces: Vec<Piece>) -> [f64; 2] {
    let (mut widest, mut line, mut longest) = (0.0_f64, 0.0_f64, 0.0_f64);
    for word in words(fonts, pieces) {
        let wide = word.width();
        widest = widest.max(wide);
        line = if word.break_before { wide } else { line + wide + space(fonts, &word) };
        longest = longest.max(line);
    }
    [widest, longest]
}

fn space(fonts: &Fonts, word: &Word) -> f64 {
    match word.parts.first() {
        Some(Part::Text { style, .. }) => fonts.width_mm(" ", style.weight, style.size_pt),
        _ => 1.0,
    }
}

fn words(fonts: &Fonts, pieces: Vec<Piece>) -> Vec<Word> {
    let mut all: Vec<Word> = Vec::new();
    let (mut glued, mut broken) = (false, false);
    let mut push = |part: Part, space: bool, broken: &mut bool| match all.last_mut() {
        Some(last) if !space && !*broken => last.parts.push(part),
        _ => all.push(Word { parts: vec![part], space_before: space, break_before: std::mem::take(broken) }),
    };
    for piece in pieces {
        match piece {
            Piece::Break => (glued, broken) = (false, true),
            Piece::Icon { layers, size, words } => {
                push(Part::Icon { layers, size, leaf: words }, !glued, &mut broken);
                glued = true;
            }
            Piece::Text { text, style } => {
                let blank = |c: char| c.is_whitespace() && c != '\u{a0}' && c != '\u{202f}';
                for (i, word) in text.split(blank).enumerate() {
                    glued &= i == 0;
                    if word.is_empty() {
                        continue;
                    }
                    let width = fonts.width_mm(word, style.weight, style.size_pt);
                    push(Part::Text { text: word.to_owned(), style, width }, !glued, &mut broken);
                    glued = true;
                }
            }
        }
    }
    all
}

/// Words that are wider than the column come apart at any character.
fn fitting(fonts: &Fonts, words: Vec<Word>, width: f64) -> Vec<Word> {
    let mut all = Vec::new();
    for word in words {
        if word.width() <= width {
            all.push(word);
            continue;
        }
        let mut first = Word { parts: Vec::new(), ..word };
        let mut filled = 0.0;
        for part in word.parts {
            let Part::Text { text, style, .. } = part else {
                filled += part.width();
                first.parts.push(part);
                continue;
            };
            let mut taken = String::new();
            let mut taken_width = 0.0;
            for c in text.chars() {
                let wide = fonts.width_mm(c.encode_utf8(&mut [0; 4]), style.weight, style.size_pt);
                if filled + taken_width + wide > width && filled + taken_width > 0.0 {
                    first.parts.push(Part::Text { text: std::mem::take(&mut taken), style, width: taken_width });
                    all.push(std::mem::replace(&mut first, Word { break_before: true, ..Word::default() }));
                    (filled, taken_width) = (0.0, 0.0);
                }
                taken.push(c);
                taken_width += wide;
            }
            filled += taken_width;
            first.parts.push(Part::Text { text: taken, style, width: taken_width });
        }
        all.push(first);
    }
    all
}

/// Puts words on a base line. Neighbours of one look become one text, with a
/// true space between them and at the end, so that copied text has its spaces.
fn set(fonts: &Fonts, words: Vec<Word>, leaf: Option<usize>) -> Line {
    let parts = || words.iter().flat_map(|w| &w.parts);
    let styles = parts().filter_map(|p| if let Part::Text { style, .. } = p { Some(*style) } else { None });
    let icons = parts().map(|p| if let Part::Icon { size, .. } = p { size[1] } else { 0.0 }).fold(0.0, f64::max);
    let (mut height, mut ascent) = (0.0_f64, 0.0_f64);
    for style in styles {
        height = height.max(style.line_mm());
        ascent = ascent.max(style.ascent_mm());
    }
    if icons + 0.6 > height {
        ascent += (icons + 0.6 - height) / 2.0;
        height = icons + 0.6;
    }
    let mut marks: Vec<Mark> = Vec::new();
    let mut x = 0.0;
    for (i, word) in words.into_iter().enumerate() {
        let gap = if word.space_before && i > 0 { space(fonts, &word) } else { 0.0 };
        let mut spaced = gap > 0.0;
        x += gap;
        for part in word.parts {
            let wide = part.width();
            match part {
                Part::Text { text, style, .. } => match marks.last_mut() {
                    Some(Mark { draw: Draw::Text { text: before, style: same, .. }, .. }) if *same == style => {
                        before.push_str(if spaced { " " } else { "" });
                        before.push_str(&text);
                    }
                    _ => {
                        let draw = Draw::Text { at: [x, ascent - style.rise_mm], style, text };
                        marks.push(Mark { leaf, draw });
                    }
                },
                Part::Icon { layers, size, leaf } => {
                    let draw = Draw::Svg { at: [x, (height - size[1]) / 2.0], size, layers };
                    marks.push(Mark { leaf, draw });
                }
            }
            x += wide;
            spaced = false;
        }
    }
    for mark in &mut marks {
        if let Draw::Text { text, .. } = &mut mark.draw {
            text.push(' ');
        }
    }
    Line { height, marks }
}
