//! The page that carries one piece at true size.

use crate::marker::Carrier;
use crate::words::{Figure, say};

use super::canvas::{Anchor, BLACK, Canvas, DARK, GREY, Style};
use super::paper::{Paper, UNPRINTABLE_MM};
use super::piece::{CROP_MM, FOOT_MM, HEAD_MM, Piece, RulerPlace, SIDE_MM, STRIP_MM, room_mm};
use super::{code, marks, ruler, words};

/// Top left of what is cut out on the page, mm.
fn cut_corner_mm(piece: &Piece<'_>, paper: Paper) -> [f64; 2] {
    let room = room_mm(paper, piece.ruler);
    let cut = piece.cut_mm();
    let (left, top) = match piece.ruler {
        RulerPlace::Beside => (UNPRINTABLE_MM + SIDE_MM + CROP_MM, UNPRINTABLE_MM + HEAD_MM + CROP_MM),
        RulerPlace::Below => (UNPRINTABLE_MM, UNPRINTABLE_MM + HEAD_MM + CROP_MM),
    };
    // Beside a full-length ruler the piece stands in the middle; otherwise as high as it can.
    let drop = if piece.ruler == RulerPlace::Beside { (0.5 * (room[1] - cut[1])).min(40.0) } else { 0.0 };
    [left + 0.5 * (room[0] - cut[0]), top + drop]
}

/// Middle of the markers' margin box on the page, mm.
fn centre_mm(piece: &Piece<'_>, paper: Paper) -> [f64; 2] {
    let corner = cut_corner_mm(piece, paper);
    [0, 1].map(|axis| corner[axis] + 0.5 * piece.size_mm[axis])
}

/// Each marker's centre on the page, mm.
pub(super) fn centres_mm(piece: &Piece<'_>, paper: Paper) -> Vec<[f64; 2]> {
    let centre = centre_mm(piece, paper);
    piece.offsets_mm.iter().map(|offset| [centre[0] + offset[0], centre[1] - offset[1]]).collect()
}

pub(super) fn draw(canvas: &mut Canvas<'_>, paper: Paper, carrier: &Carrier, piece: &Piece<'_>, folio: &str) {
    let corner = cut_corner_mm(piece, paper);
    heading(canvas, paper, carrier, piece);
    for (marker, at) in piece.markers.iter().zip(centres_mm(piece, paper)) {
        // Ids were checked when the piece was made.
        if let Ok(outlines) = code::outlines_mm(marker.id, at, marker.size_mm) {
            canvas.fill(&outlines, BLACK);
        }
    }
    strip(canvas, carrier, piece, [corner[0], corner[1] + piece.size_mm[1]]);
    marks::crop(canvas, corner, piece.cut_mm(), paper.size_mm());
    marks::align(canvas, corner, piece.cut_mm(), centre_mm(piece, paper));
    rulers(canvas, paper, piece, corner);
    let [width, height] = paper.size_mm();
    canvas.text([width - 6.0, height - 6.0], Anchor::Right, Style::regular(7.0).grey(GREY), folio);
}

fn heading(canvas: &mut Canvas<'_>, paper: Paper, carrier: &Carrier, piece: &Piece<'_>) {
    let left = UNPRINTABLE_MM + 2.0;
    let right = paper.size_mm()[0] - left;
    let language = canvas.language;
    let ids = words::list(piece.markers.iter().map(|m| m.id), language);
    let title = say!(language, "print-sheet-title", carrier = &carrier.name, ids = ids);
    canvas.text([left, 10.5], Anchor::Left, Style::bold(13.0), &title);
    let role = words::role(carrier.role, language);
    canvas.text([right, 10.5], Anchor::Right, Style::regular(9.0).grey(DARK), &role);
    let first = piece.first();
    let line = say!(
        language,
        "print-sheet-line",
        right = words::mm(first.size_mm[0]),
        up = words::mm(first.size_mm[1]),
        direction = words::direction(first.normal()),
        place = words::place(piece.centre_mm),
    );
    canvas.text([left, 15.5], Anchor::Left, Style::regular(7.5).grey(DARK), &line);
}

/// The strip that stays on the piece: up arrow, id, carrier and position.
fn strip(canvas: &mut Canvas<'_>, carrier: &Carrier, piece: &Piece<'_>, corner: [f64; 2]) {
    let [x, y] = corner;
    let width = piece.size_mm[0];
    let base = y + 0.62 * STRIP_MM;
    marks::up_arrow(canvas, [x + 4.0, y + STRIP_MM - 1.6], STRIP_MM - 3.2);
    let language = canvas.language;
    let up = words::up(piece.first(), language);
    let ids = words::list(piece.markers.iter().map(|m| m.id), language);
    let label = say!(language, "print-strip", up = up, ids = ids, carrier = &carrier.name);
    let place = words::place(piece.centre_mm).say(language);
    // The middle of the lower edge is left to the alignment tick; small pieces drop the position, then shrink.
    let room = width - 9.0;
    let mut style = Style::bold(7.0);
    let both = |canvas: &Canvas<'_>, style: Style| {
        canvas.width_mm(&label, style) + canvas.width_mm(&place, Style::regular(style.size_pt)) + 6.0
    };
    while style.size_pt > 4.5 && both(canvas, style) > room {
        style.size_pt -= 0.25;
    }
    if both(canvas, style) <= room {
        let small = Style::regular(style.size_pt).grey(DARK);
        canvas.text([x + width - 2.0, base], Anchor::Right, small, &place);
    } else {
        style.size_pt = 6.0;
        while style.size_pt > 3.5 && canvas.width_mm(&label, style) > room {
            style.size_pt -= 0.25;
        }
    }
    let label = canvas.clipped(&label, room, style);
    canvas.text([x + 7.0, base], Anchor::Left, style, &label);
}

fn rulers(canvas: &mut Canvas<'_>, paper: Paper, piece: &Piece<'_>, corner: [f64; 2]) {
    let language = canvas.language;
    let [width, height] = paper.size_mm();
    match piece.ruler {
        RulerPlace::Beside => {
            let top = UNPRINTABLE_MM + HEAD_MM + 4.0;
            let length = ruler::RULER_MM;
            ruler::along(canvas, [UNPRINTABLE_MM + 2.0, top], length, &ruler::request("up", length, language));
            let left = 0.5 * (width - ruler::RULER_MM);
            let y = height - UNPRINTABLE_MM - FOOT_MM + 6.0;
            ruler::across(canvas, [left, y], length, &ruler::request("right", length, language));
        }
        RulerPlace::Below => {
            let y = corner[1] + piece.cut_mm()[1] + CROP_MM + 2.0;
            let length = ruler::SHORT_LENGTH_MM;
            ruler::along(canvas, [14.0, y], length, &ruler::quick(length, language));
            ruler::across(
                canvas,
                [32.0, y + 4.0],
                ruler::RULER_MM,
                &ruler::request("right", ruler::RULER_MM, language),
            );
            let note = say!(language, "print-wide-note", length = Figure::fixed(ruler::RULER_MM, 1));
            canvas.paragraph([32.0, y + 20.0], width - 44.0, Style::regular(8.0).grey(DARK), &note);
        }
    }
}
