//! A board for fitting a camera on one page, upright or lying.

use crate::marker::{Board, BoardKind, Dictionary};
use crate::words::{Figure, Language, phrase, say};

use super::canvas::{Anchor, BLACK, Canvas, DARK, GREY, Style, rectangle};
use super::code::{self, CELLS};
use super::paper::{Paper, UNPRINTABLE_MM};
use super::{Error, marks, ruler, words};

/// Room above the board's white margin, below it and on its left, mm.
const TOP_MM: f64 = 9.0;
const BOTTOM_MM: f64 = 17.0;
const LEFT_MM: f64 = 12.0;
const RIGHT_MM: f64 = 1.0;
/// Where a gap is at least this wide, each marker's id stands below it, mm.
const LABEL_GAP_MM: f64 = 8.0;

/// Where everything goes.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Layout {
    pub(super) page_mm: [f64; 2],
    /// Top left of the white margin.
    corner_mm: [f64; 2],
    /// Width of the white margin.
    quiet_mm: f64,
    /// Pattern with white margin.
    size_mm: [f64; 2],
    outlines: Vec<Vec<[f64; 2]>>,
    labels: Vec<([f64; 2], u32)>,
}

impl Layout {
    pub(super) fn new(board: &Board, paper: Paper) -> Result<Self, Error> {
        let (pattern, quiet) = extent_mm(board)?;
        let needs_mm = pattern.map(|side| side + 2.0 * quiet);
        let Some(page_mm) = position(paper, needs_mm) else {
            let factor = Figure::fixed(smaller(paper, needs_mm), 2);
            let remedy = match words::larger_paper(paper, |other| position(other, needs_mm).is_some()) {
                Some(paper) => phrase!("print-larger-paper-or-board", paper = paper, factor = factor),
                None => phrase!("print-smaller-board", factor = factor),
            };
            return Err(Error::BoardTooLarge {
                needs_mm,
                offers_mm: room_mm(lying_if(paper, needs_mm)),
                paper,
                remedy,
            });
        };
        let room = room_mm(page_mm);
        let corner_mm = [
            UNPRINTABLE_MM + LEFT_MM + 0.5 * (room[0] - needs_mm[0]),
            UNPRINTABLE_MM + TOP_MM + 0.5 * (room[1] - needs_mm[1]),
        ];
        let start = corner_mm.map(|at| at + quiet);
        let (outlines, labels) = match board.kind {
            BoardKind::Markers { columns, rows, first_id, size_mm, gap_mm } => {
                markers([columns, rows], first_id, size_mm, gap_mm, start)?
            }
            BoardKind::Chessboard { inner_corners, square_mm } => {
                (squares(inner_corners, square_mm, start), Vec::new())
            }
        };
        Ok(Layout { page_mm, corner_mm, quiet_mm: quiet, size_mm: needs_mm, outlines, labels })
    }

    /// Top left of the pattern on the page, mm.
    pub(super) fn pattern_mm(&self) -> [f64; 2] {
        self.corner_mm.map(|at| at + self.quiet_mm)
    }
}

/// The pattern's width and height, and its white margin: one cell, half a square.
fn extent_mm(board: &Board) -> Result<([f64; 2], f64), Error> {
    let sized = |what: &str, value: f64, zero_allowed: bool| {
        let fine = value.is_finite() && (value > 0.0 || zero_allowed && value >= 0.0);
        if fine { Ok(()) } else { Err(Error::BadSize { what: phrase!("print-of-the-board", what = what), value }) }
    };
    match board.kind {
        BoardKind::Markers { columns, rows, size_mm, gap_mm, .. } => {
            sized("marker", size_mm, false)?;
            sized("gap", gap_mm, true)?;
            let side = |n: u32| f64::from(n) * (size_mm + gap_mm) - gap_mm;
            Ok(([side(columns), side(rows)], size_mm / CELLS as f64))
        }
        BoardKind::Chessboard { inner_corners, square_mm } => {
            sized("square", square_mm, false)?;
            Ok((inner_corners.map(|n| (f64::from(n) + 1.0) * square_mm), 0.5 * square_mm))
        }
    }
}

fn room_mm(page_mm: [f64; 2]) -> [f64; 2] {
    let edges = 2.0 * UNPRINTABLE_MM;
    [page_mm[0] - edges - LEFT_MM - RIGHT_MM, page_mm[1] - edges - TOP_MM - BOTTOM_MM]
}

fn lying_if(paper: Paper, needs_mm: [f64; 2]) -> [f64; 2] {
    let [width, height] = paper.size_mm();
    if needs_mm[0] > needs_mm[1] { [height, width] } else { [width, height] }
}

/// The page upright or lying, whichever takes the board.
fn position(paper: Paper, needs_mm: [f64; 2]) -> Option<[f64; 2]> {
    let [width, height] = paper.size_mm();
    [[width, height], [height, width]]
        .into_iter()
        .find(|&page| (0..2).all(|axis| needs_mm[axis] <= room_mm(page)[axis]))
}

/// The factor that makes a board fit.
fn smaller(paper: Paper, needs_mm: [f64; 2]) -> f64 {
    let room = room_mm(lying_if(paper, needs_mm));
    let factor = (room[0] / needs_mm[0]).min(room[1] / needs_mm[1]);
    (factor * 100.0).floor() / 100.0
}

type Pattern = (Vec<Vec<[f64; 2]>>, Vec<([f64; 2], u32)>);

fn markers([columns, rows]: [u32; 2], first_id: u32, size: f64, gap: f64, start: [f64; 2]) -> Result<Pattern, Error> {
    let dictionary = Dictionary::tag36h11();
    let count = u64::from(columns) * u64::from(rows);
    if u64::from(first_id) + count > dictionary.len() as u64 {
        let id = first_id.saturating_add(u32::try_from(count.saturating_sub(1)).unwrap_or(u32::MAX));
        return Err(Error::UnknownMarker { id, family: dictionary.name(), last: dictionary.len() - 1 });
    }
    let (mut outlines, mut labels) = (Vec::new(), Vec::new());
    for row in 0..rows {
        for column in 0..columns {
            let id = first_id + row * columns + column;
            let place = |axis: usize, n: u32| start[axis] + f64::from(n) * (size + gap) + 0.5 * size;
            let centre = [place(0, column), place(1, row)];
            outlines.extend(code::outlines_mm(id, centre, [size; 2])?);
            labels.push((centre, id));
        }
    }
    Ok((outlines, labels))
}

/// Black squares; the top-left one is black.
fn squares(inner_corners: [u32; 2], square: f64, start: [f64; 2]) -> Vec<Vec<[f64; 2]>> {
    let [columns, rows] = inner_corners.map(|n| n + 1);
    let black = (0..rows).flat_map(|row| (0..columns).map(move |column| (column, row)));
    black
        .filter(|(column, row)| (column + row) % 2 == 0)
        .map(|(column, row)| {
            let corner = [start[0] + f64::from(column) * square, start[1] + f64::from(row) * square];
            rectangle(corner[0], corner[1], square, square)
        })
        .collect()
}

pub(super) fn draw(canvas: &mut Canvas<'_>, board: &Board, layout: &Layout) {
    let [width, height] = layout.page_mm;
    canvas.fill(&layout.outlines, BLACK);
    marks::crop(canvas, layout.corner_mm, layout.size_mm, layout.page_mm);
    if let BoardKind::Markers { size_mm, gap_mm, .. } = board.kind
        && gap_mm >= LABEL_GAP_MM
    {
        for (centre, id) in &layout.labels {
            let below = [centre[0], centre[1] + 0.5 * (size_mm + gap_mm) + 0.7];
            let last_row = below[1] > layout.corner_mm[1] + layout.size_mm[1] - layout.quiet_mm;
            if !last_row {
                canvas.text(below, Anchor::Middle, Style::regular(5.0).grey(GREY), &id.to_string());
            }
        }
    }
    let left = UNPRINTABLE_MM + 3.0;
    let top = UNPRINTABLE_MM + 5.0;
    marks::up_arrow(canvas, [left + 1.0, top + 0.8], 5.0);
    let language = canvas.language;
    let (up, bold) = (say!(language, "print-up"), Style::bold(10.0));
    canvas.text([left + 4.0, top], Anchor::Left, bold, &up);
    let beside = left + 4.0 + canvas.width_mm(&up, bold) + 3.0;
    canvas.text([beside, top], Anchor::Left, Style::regular(8.5).grey(DARK), &describe(board, language));
    let length = ruler::RULER_MM;
    let y = height - UNPRINTABLE_MM - 9.5;
    ruler::across(canvas, [left + LEFT_MM, y], length, &ruler::request("right", length, language));
    let up_top = 0.5 * (height - length);
    ruler::along(canvas, [UNPRINTABLE_MM + 1.0, up_top], length, &ruler::request("up", length, language));
    let note = say!(language, "print-board-note");
    canvas.text([width - 6.0, height - 9.5], Anchor::Right, Style::regular(7.0).grey(DARK), &note);
    canvas.text(
        [width - 6.0, height - 6.0],
        Anchor::Right,
        Style::regular(7.0).grey(GREY),
        &say!(language, "print-board-foot"),
    );
}

fn describe(board: &Board, language: Language) -> String {
    match board.kind {
        BoardKind::Markers { columns, rows, first_id, size_mm, gap_mm } => say!(
            language,
            "print-board-markers",
            columns = columns,
            rows = rows,
            first = first_id.to_string(),
            last = (first_id + (columns * rows).saturating_sub(1)).to_string(),
            size = words::mm(size_mm),
            gap = words::mm(gap_mm),
        ),
        BoardKind::Chessboard { inner_corners: [across, down], square_mm } => {
            say!(language, "print-board-chessboard", across = across, down = down, square = words::mm(square_mm),)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn board(columns: u32, rows: u32, size_mm: f64, gap_mm: f64) -> Board {
        Board { kind: BoardKind::Markers { columns, rows, first_id: 100, size_mm, gap_mm }, u_scale_relative: 0.0005 }
    }

    #[test]
    fn a_wide_board_lies_and_a_large_one_is_refused_with_the_remedy() {
        let [width, height] = Layout::new(&board(7, 5, 26.0, 8.0), Paper::A4).unwrap().page_mm;
        assert!(width > height);
        let error = Layout::new(&board(7, 5, 38.0, 12.0), Paper::A4).unwrap_err().to_string();
        assert!(error.contains("a4") && error.contains("--paper a3") && error.contains("factor of 0.7"), "{error}");
        let error = Layout::new(&board(7, 5, 60.0, 18.0), Paper::A3).unwrap_err().to_string();
        assert!(!error.contains("--paper") && error.contains("smaller"), "{error}");
    }

    #[test]
    fn ids_beyond_the_family_and_sizes_that_are_none_are_refused() {
        let mut many = board(7, 5, 20.0, 5.0);
        many.kind = BoardKind::Markers { columns: 30, rows: 30, first_id: 0, size_mm: 2.0, gap_mm: 1.0 };
        assert!(Layout::new(&many, Paper::A4).unwrap_err().to_string().contains("899"));
        assert!(matches!(Layout::new(&board(7, 5, f64::NAN, 5.0), Paper::A4), Err(Error::BadSize { .. })));
        assert!(matches!(Layout::new(&board(7, 5, 20.0, -5.0), Paper::A4), Err(Error::BadSize { .. })));
    }
}
