//! The assembly drawing of a carrier: where each sheet goes, from its datum.

use crate::marker::Carrier;

use super::canvas::{Anchor, BLACK, Canvas, DARK, GREY, LIGHT, Style};
use super::dimension::{self, Ordinate};
use super::paper::Paper;
use super::piece::Piece;
use super::view::{self, View};
use super::{marks, words};
use crate::typeface::{Fonts, Weight};
use crate::words::{Figure, Language, say};

const MARGIN_MM: f64 = 12.0;
const HEAD_MM: f64 = 36.0;
const FOOT_MM: f64 = 12.0;
const ROW_MM: f64 = 4.6;
/// Room around a view for dimensions (left, below), its title (above) and air.
const LEFT_MM: f64 = 19.0;
const BELOW_MM: f64 = 19.0;
const ABOVE_MM: f64 = 15.0;
const RIGHT_MM: f64 = 7.0;
const TITLE: Style = Style { size_pt: 8.5, weight: Weight::Bold, grey: BLACK };
const NOTE: Style = Style { size_pt: 7.0, weight: Weight::Regular, grey: DARK };
/// Scales of ISO 5455 that fit such drawings, and 1:2.5, 1:12.5 and 1:25, which workshops use.
const SCALES: [f64; 9] = [1.0, 2.0, 2.5, 5.0, 10.0, 12.5, 20.0, 25.0, 50.0];
/// No view takes more of a page's height: the next one shall fit beside or below it.
const MOST_OF_PAGE: f64 = 0.48;

/// How texts are set.
pub(super) struct Lettering<'a> {
    pub(super) fonts: &'a Fonts,
    pub(super) language: Language,
}

/// One page of a carrier's assembly drawing.
#[derive(Debug, Clone)]
pub(super) struct Drawing<'a> {
    views: Vec<Placed>,
    rows: Vec<Row<'a>>,
    /// Where the table starts, mm from the top.
    table_mm: f64,
}

/// A view on the page.
#[derive(Debug, Clone)]
struct Placed {
    view: View,
    /// Millimetres of the carrier on one of the paper.
    divisor: f64,
    corner: [f64; 2],
}

#[derive(Debug, Clone)]
struct Row<'a> {
    piece: Piece<'a>,
    page: usize,
}

/// The drawing pages; the sheets follow them. `first_page` is where the drawings start.
pub(super) fn drawings<'a>(
    carrier: &Carrier,
    pieces: &[Piece<'a>],
    paper: Paper,
    first_page: usize,
    lettering: &Lettering<'_>,
) -> Vec<Drawing<'a>> {
    let free = paper.size_mm()[1] - HEAD_MM - FOOT_MM;
    let framed =
        view::views(carrier, pieces, lettering.language).into_iter().map(|view| Framed::new(view, paper, lettering));
    let mut drawings = shelve(framed, paper);
    let used = drawings.last().map_or(0.0, |last| last.table_mm - HEAD_MM);
    let rows_of = |height: f64| ((height - 6.0) / ROW_MM - 1.0).max(0.0) as usize;
    let (beside, alone) = (rows_of(free - used), rows_of(free).max(1));
    // The table follows the views where it fits as a whole.
    let together = pieces.len() <= beside;
    let pages = drawings.len() + if together { 0 } else { pieces.len().div_ceil(alone) };
    let row = |(index, piece): (usize, &Piece<'a>)| Row { piece: piece.clone(), page: first_page + pages + index };
    let rows: Vec<Row<'a>> = pieces.iter().enumerate().map(row).collect();
    match drawings.last_mut() {
        Some(last) if together => last.rows = rows,
        _ => drawings.extend(rows.chunks(alone).map(|rows| Drawing {
            views: Vec::new(),
            rows: rows.to_vec(),
            table_mm: HEAD_MM + 6.0,
        })),
    }
    drawings
}

/// Places views on shelves from the top, on as many pages as it takes.
fn shelve<'a>(views: impl Iterator<Item = Framed>, paper: Paper) -> Vec<Drawing<'a>> {
    let [width, height] = paper.size_mm();
    let (inner, floor) = (width - 2.0 * MARGIN_MM, height - FOOT_MM);
    let mut pages: Vec<Drawing<'a>> = Vec::new();
    let (mut x, mut top, mut shelf) = (0.0, f64::INFINITY, 0.0f64);
    for Framed { view, divisor, box_mm: [w, h] } in views {
        if x > 0.0 && x + w > inner {
            (x, top, shelf) = (0.0, top + shelf, 0.0);
        }
        if top + h > floor {
            pages.push(Drawing { views: Vec::new(), rows: Vec::new(), table_mm: HEAD_MM });
            (x, top, shelf) = (0.0, HEAD_MM, 0.0);
        }
        shelf = shelf.max(h);
        if let Some(page) = pages.last_mut() {
            page.views.push(Placed { view, divisor, corner: [MARGIN_MM + x, top] });
            page.table_mm = top + shelf + 6.0;
        }
        x += w;
    }
    pages
}

/// A view with its scale and its size on the paper.
struct Framed {
    view: View,
    divisor: f64,
    box_mm: [f64; 2],
}

impl Framed {
    fn new(mut view: View, paper: Paper, lettering: &Lettering<'_>) -> Self {
        let [width, height] = paper.size_mm();
        let room = [width - 2.0 * MARGIN_MM, MOST_OF_PAGE * (height - HEAD_MM - FOOT_MM)];
        let size = |divisor: f64| {
            let [low, high] = view.extent;
            let around = [LEFT_MM + RIGHT_MM, ABOVE_MM + BELOW_MM];
            [0, 1].map(|axis| (high[axis] - low[axis]) / divisor + around[axis] + 2.0 * view.pad_mm[axis])
        };
        let fits = |divisor: &f64| (0..2).all(|axis| size(*divisor)[axis] <= room[axis]);
        let divisor = SCALES.into_iter().find(fits).unwrap_or(SCALES[SCALES.len() - 1]);
        let [drawn, high] = size(divisor);
        view.title = say!(lettering.language, "print-view-scale", title = &view.title, scale = Figure::plain(divisor));
        let width = |text: &str, style: Style| lettering.fonts.width_mm(text, style.weight, style.size_pt);
        let words = width(&view.title, TITLE).max(width(&view.note, NOTE)) + 6.0;
        Framed { view, divisor, box_mm: [drawn.max(words), high] }
    }
}

/// Draws one page.
pub(super) fn draw(canvas: &mut Canvas<'_>, paper: Paper, carrier: &Carrier, drawing: &Drawing<'_>, folio: &str) {
    let [width, height] = paper.size_mm();
    let language = canvas.language;
    let title = say!(language, "print-assembly-title", carrier = &carrier.name);
    canvas.text([MARGIN_MM, 15.0], Anchor::Left, Style::bold(15.0), &title);
    let role = words::role(carrier.role, language);
    canvas.text([width - MARGIN_MM, 15.0], Anchor::Right, Style::regular(10.0).grey(DARK), &role);
    let note = say!(language, "print-assembly-note", datum = words::datum(carrier.role));
    canvas.paragraph([MARGIN_MM, 21.0], width - 2.0 * MARGIN_MM, Style::regular(8.5).grey(DARK), &note);
    for placed in &drawing.views {
        draw_view(canvas, placed);
    }
    if !drawing.rows.is_empty() {
        table(canvas, drawing, width);
    }
    canvas.text([width - MARGIN_MM, height - 6.0], Anchor::Right, Style::regular(7.0).grey(GREY), folio);
}

fn draw_view(canvas: &mut Canvas<'_>, Placed { view, divisor, corner }: &Placed) {
    let [low, high] = view.extent;
    let pad = view.pad_mm;
    let origin = [corner[0] + LEFT_MM + pad[0] - low[0] / divisor, corner[1] + ABOVE_MM + pad[1] + high[1] / divisor];
    let on_page = |p: [f64; 2]| [origin[0] + p[0] / divisor, origin[1] - p[1] / divisor];
    canvas.text([corner[0] + 2.0, corner[1] + 4.0], Anchor::Left, TITLE, &view.title);
    canvas.text([corner[0] + 2.0, corner[1] + 8.0], Anchor::Left, NOTE, &view.note);
    let (bottom, left) = (on_page(low)[1] + 1.5 + pad[1], on_page(low)[0] - 1.5 - pad[0]);
    dimensions(canvas, view, on_page, bottom, left);
    canvas.centre_line([left, origin[1]], [on_page(high)[0] + 3.0, origin[1]], GREY);
    canvas.centre_line([origin[0], on_page(high)[1] - 3.0], [origin[0], bottom], GREY);
    for sheet in &view.sheets {
        canvas.stroke(&sheet.map(on_page), true, 0.18, GREY);
    }
    for square in &view.squares {
        draw_square(canvas, on_page(square.centre), square.size.map(|size| size / divisor), square.id);
    }
    for edge in &view.edges {
        draw_edge(canvas, edge, on_page);
    }
    datum(canvas, origin);
}

fn dimensions(canvas: &mut Canvas<'_>, view: &View, on_page: impl Fn([f64; 2]) -> [f64; 2], bottom: f64, left: f64) {
    let ordinates = |axis: usize, edge: f64| {
        let places = view.points.iter().copied().chain([[0.0, 0.0]]);
        let ordinate = |place: [f64; 2]| {
            let at = on_page(place);
            Ordinate { at_mm: at[axis], from_mm: at[1 - axis], value_mm: view.signs[axis] * place[axis] }
        };
        dimension::distinct(places.map(ordinate).collect(), edge)
    };
    dimension::below(canvas, &ordinates(0, bottom), bottom);
    dimension::left(canvas, &ordinates(1, left), left);
}

fn draw_square(canvas: &mut Canvas<'_>, [x, y]: [f64; 2], [w, h]: [f64; 2], id: u32) {
    let corners = super::canvas::rectangle(x - 0.5 * w, y - 0.5 * h, w, h);
    canvas.fill(std::slice::from_ref(&corners), LIGHT);
    canvas.stroke(&corners, true, 0.3, BLACK);
    let size = (h * 0.9).clamp(4.0, 11.0);
    if h > 9.0 {
        marks::arrow(canvas, [x, y - 0.14 * h], [0.0, -1.0], 0.26 * h, DARK);
        canvas.text([x, y + 0.3 * h], Anchor::Middle, Style::bold(size), &id.to_string());
    } else {
        canvas.text([x, y + 0.13 * size], Anchor::Middle, Style::bold(size), &id.to_string());
    }
}

fn draw_edge(canvas: &mut Canvas<'_>, edge: &view::Edge, on_page: impl Fn([f64; 2]) -> [f64; 2]) {
    let [a, b] = edge.ends.map(on_page);
    canvas.line(a, b, 0.9, BLACK);
    let middle = [0.5 * (a[0] + b[0]), 0.5 * (a[1] + b[1])];
    let looks = [edge.looks[0], -edge.looks[1]];
    let beside = |distance: f64| [middle[0] + distance * looks[0], middle[1] + distance * looks[1]];
    marks::arrow(canvas, beside(0.8), looks, 4.0, DARK);
    let at = beside(6.2);
    let anchor = if looks[0] > 0.5 {
        Anchor::Left
    } else if looks[0] < -0.5 {
        Anchor::Right
    } else {
        Anchor::Middle
    };
    let text = words::list(edge.ids.iter().copied(), canvas.language);
    let drop = 1.0 + looks[1].max(0.0) * 0.6;
    canvas.text([at[0], at[1] + drop], anchor, Style::bold(7.5), &text);
}

/// A ring with a cross: where the dimensions start.
fn datum(canvas: &mut Canvas<'_>, [x, y]: [f64; 2]) {
    let ring: Vec<[f64; 2]> = (0..32)
        .map(|i| f64::from(i) * std::f64::consts::TAU / 32.0)
        .map(|angle| [x + 1.9 * angle.cos(), y + 1.9 * angle.sin()])
        .collect();
    canvas.stroke(&ring, true, 0.35, BLACK);
    canvas.line([x - 3.0, y], [x + 3.0, y], 0.25, BLACK);
    canvas.line([x, y - 3.0], [x, y + 3.0], 0.25, BLACK);
    let datum = say!(canvas.language, "print-datum");
    canvas.text([x + 2.3, y - 2.3], Anchor::Left, Style::regular(6.5), &datum);
}

fn table(canvas: &mut Canvas<'_>, drawing: &Drawing<'_>, width: f64) {
    const COLUMNS: [f64; 7] = [0.0, 0.07, 0.20, 0.42, 0.51, 0.60, 0.69];
    let language = canvas.language;
    let titles = [
        say!(language, "print-column-page"),
        say!(language, "print-column-ids"),
        say!(language, "print-column-square"),
        say!(language, "print-column-centre-x"),
        "y".to_owned(),
        "z".to_owned(),
        say!(language, "print-column-looks"),
    ];
    let inner = width - 2.0 * MARGIN_MM;
    let mut y = drawing.table_mm;
    for (at, title) in COLUMNS.iter().zip(&titles) {
        canvas.text([MARGIN_MM + at * inner, y], Anchor::Left, Style::bold(7.5), title);
    }
    canvas.line([MARGIN_MM, y + 1.2], [width - MARGIN_MM, y + 1.2], 0.3, BLACK);
    for row in &drawing.rows {
        y += ROW_MM;
        let piece = &row.piece;
        let first = piece.first();
        let [x_mm, y_mm, z_mm] = [0, 1, 2].map(|axis| words::mm(piece.centre_mm[axis]).say(language));
        let cells = [
            row.page.to_string(),
            words::list(piece.markers.iter().map(|marker| marker.id), language),
            say!(language, "print-size", right = words::mm(first.size_mm[0]), up = words::mm(first.size_mm[1])),
            x_mm,
            y_mm,
            z_mm,
            words::direction(first.normal()).say(language),
        ];
        for (at, cell) in COLUMNS.iter().zip(cells) {
            canvas.text([MARGIN_MM + at * inner, y], Anchor::Left, Style::regular(7.5), &cell);
        }
        canvas.line([MARGIN_MM, y + 1.2], [width - MARGIN_MM, y + 1.2], 0.1, LIGHT);
    }
}
