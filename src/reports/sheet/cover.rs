//! The first page of a kit: what to do, in order, and the rulers whose reading is entered.

use crate::marker::Kit;
use crate::words::{Figure, Language, Value, say};

use super::canvas::{Anchor, BLACK, Canvas, DARK, GREY, Style};
use super::leaf::Leaf;
use super::paper::Paper;
use super::{ruler, words};

const MARGIN_MM: f64 = 18.0;

/// Rows of the contents: carrier, what it is, its drawings, its sheets.
pub(super) fn contents(kit: &Kit, leaves: &[Leaf<'_>], language: Language) -> Vec<[String; 4]> {
    let pages = |wanted: usize, sheets: bool| {
        let of = |(index, leaf): (usize, &Leaf<'_>)| match leaf {
            Leaf::Assembly { carrier, .. } if !sheets && *carrier == wanted => Some(index + 1),
            Leaf::Sheet { carrier, .. } if sheets && *carrier == wanted => Some(index + 1),
            _ => None,
        };
        let found: Vec<usize> = leaves.iter().enumerate().filter_map(of).collect();
        match (found.first(), found.last()) {
            (Some(first), Some(last)) if first != last => say!(language, "print-pages", first = *first, last = *last),
            (Some(first), _) => first.to_string(),
            _ => String::new(),
        }
    };
    kit.carriers
        .iter()
        .enumerate()
        .filter(|(_, carrier)| !carrier.markers.is_empty())
        .map(|(index, carrier)| {
            [carrier.name.clone(), words::role(carrier.role, language), pages(index, false), pages(index, true)]
        })
        .collect()
}

/// What to do, in order: a word or two, and the sentences beside them.
fn steps(language: Language) -> [[String; 2]; 6] {
    [
        [say!(language, "print-step-print-title"), say!(language, "print-step-print")],
        [say!(language, "print-step-measure-title"), say!(language, "print-step-measure")],
        [say!(language, "print-step-glue-title"), say!(language, "print-step-glue")],
        [say!(language, "print-step-white-title"), say!(language, "print-step-white")],
        [say!(language, "print-step-off-title"), say!(language, "print-step-off")],
        [say!(language, "print-step-keep-title"), say!(language, "print-step-keep")],
    ]
}

pub(super) fn draw(canvas: &mut Canvas<'_>, paper: Paper, kit: &Kit, contents: &[[String; 4]], folio: &str) {
    let language = canvas.language;
    let [width, height] = paper.size_mm();
    let inner = width - 2.0 * MARGIN_MM;
    canvas.text(
        [MARGIN_MM, 22.0],
        Anchor::Left,
        Style::bold(20.0),
        &say!(language, "print-kit-title", kit = &kit.name),
    );
    let serial = kit.serial.as_ref().map(|serial| say!(language, "print-serial", serial = serial));
    let kind = say!(language, "print-kind", paper = paper.name());
    let due = kit.survey_due.map(|d| say!(language, "print-survey-due", date = Value::moment(d.to_string())));
    let subtitle = serial.into_iter().chain([kind]).chain(due).collect::<Vec<_>>().join(" · ");
    canvas.text([MARGIN_MM, 28.0], Anchor::Left, Style::regular(9.5).grey(DARK), &subtitle);
    let mut y = 38.0;
    for (index, [title, text]) in steps(language).iter().enumerate() {
        let label = format!("{} {title}", index + 1);
        canvas.text([MARGIN_MM, y], Anchor::Left, Style::bold(9.0), &label);
        y = canvas.paragraph([MARGIN_MM + 30.0, y], inner - 30.0, Style::regular(9.0), text) + 1.6;
    }
    y = canvas.paragraph([MARGIN_MM, y + 2.0], inner, Style::regular(9.0).grey(DARK), &assumptions(kit, language));
    y = table(canvas, contents, y + 3.0, width);
    let _ =
        canvas.paragraph([MARGIN_MM, y + 4.0], inner, Style::regular(8.0).grey(DARK), &say!(language, "print-caution"));
    rulers(canvas, paper);
    canvas.text([width - 6.0, height - 6.0], Anchor::Right, Style::regular(7.0).grey(GREY), folio);
}

/// What the kit's file takes for granted about how it was made.
fn assumptions(kit: &Kit, language: Language) -> String {
    let scale = Figure::fixed(100.0 * kit.u_scale_relative, 2);
    match &kit.layout {
        Some(_) => say!(language, "print-assumes-surveyed", scale = scale),
        None => say!(
            language,
            "print-assumes",
            layout = Figure::plain(kit.u_layout_mm),
            turn = Figure::plain(kit.u_turn_deg),
            scale = scale,
        ),
    }
}

fn table(canvas: &mut Canvas<'_>, contents: &[[String; 4]], top: f64, width: f64) -> f64 {
    let inner = width - 2.0 * MARGIN_MM;
    let columns = [0.0, 0.30, 0.66, 0.82].map(|part| MARGIN_MM + part * inner);
    let mut y = top;
    let language = canvas.language;
    let head = [
        say!(language, "print-column-holder"),
        say!(language, "print-column-role"),
        say!(language, "print-column-drawing"),
        say!(language, "print-column-sheets"),
    ];
    for (x, title) in columns.iter().zip(&head) {
        canvas.text([*x, y], Anchor::Left, Style::bold(8.0), title);
    }
    canvas.line([MARGIN_MM, y + 1.3], [width - MARGIN_MM, y + 1.3], 0.3, BLACK);
    for row in contents {
        y += 4.7;
        for (x, cell) in columns.iter().zip(row) {
            let cell = canvas.clipped(cell, 0.29 * inner, Style::regular(8.0));
            canvas.text([*x, y], Anchor::Left, Style::regular(8.0), &cell);
        }
    }
    y + 4.7
}

fn rulers(canvas: &mut Canvas<'_>, paper: Paper) {
    let language = canvas.language;
    let [width, height] = paper.size_mm();
    let length = ruler::RULER_MM;
    ruler::across(canvas, [0.5 * (width - length), height - 22.0], length, &ruler::request("right", length, language));
    ruler::along(canvas, [6.5, 0.5 * (height - length)], length, &ruler::request("up", length, language));
}
