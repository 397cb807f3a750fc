//! The first page of a kit: what to do, in order, and the rulers whose reading is entered.

use crate::marker::Kit;

use super::canvas::{Anchor, BLACK, Canvas, DARK, GREY, Style};
use super::paper::Paper;
use super::{Leaf, ruler, words};

const MARGIN_MM: f64 = 18.0;

/// Rows of the contents: carrier, what it is, its drawings, its sheets.
pub(super) fn contents(kit: &Kit, leaves: &[Leaf<'_>]) -> Vec<[String; 4]> {
    let pages = |wanted: usize, sheets: bool| {
        let of = |(index, leaf): (usize, &Leaf<'_>)| match leaf {
            Leaf::Assembly { carrier, .. } if !sheets && *carrier == wanted => Some(index + 1),
            Leaf::Sheet { carrier, .. } if sheets && *carrier == wanted => Some(index + 1),
            _ => None,
        };
        let found: Vec<usize> = leaves.iter().enumerate().filter_map(of).collect();
        match (found.first(), found.last()) {
            (Some(first), Some(last)) if first != last => format!("{first} to {last}"),
            (Some(first), _) => first.to_string(),
            _ => String::new(),
        }
    };
    kit.carriers
        .iter()
        .enumerate()
        .filter(|(_, carrier)| !carrier.markers.is_empty())
        .map(|(index, carrier)| {
            [carrier.name.clone(), words::role(carrier.role).to_owned(), pages(index, false), pages(index, true)]
        })
        .collect()
}

const STEPS: [(&str, &str); 6] = [
    (
        "Print",
        "at 100 % (\"actual size\"; no \"fit to page\"), on matt paper of 120 g/m² or more or on matt film, with a laser printer. \
         One run, one printer, one tray: sheets of one run share their scale.",
    ),
    (
        "Measure",
        "the two rulers on this page with a caliper, from the middle of one end line to the middle of the other, to 0.05 mm. \
         Check two more pages. Enter what you read: baywitness sheet KIT --measured-mm RIGHT,UP \
         --corrected FILE writes the kit's file with the sizes as printed. Verify jobs with that file; print from the first one.",
    ),
    (
        "Glue",
        "on flat, stiff, matt plates (aluminium composite of 4 mm; thin sheet metal, all alike, for the floor): pencil lines through each \
         sheet's centre as the drawings say, spray adhesive over the whole back, short edge lines on the pencil lines, no bubbles. \
         A plate that a straight edge shows to be hollow by more than 0.2 mm is not flat.",
    ),
    (
        "Keep the white",
        "margin of one cell around each black square. Cut on the crop marks or outside, never into the margin; no tape, no gloss, \
         no laminate that mirrors lamps.",
    ),
    (
        "Take off",
        "the nose mark and every metal plate before the calibration runs: what is in a sensor's view changes what it sees.",
    ),
    (
        "Keep in order",
        "paper grows and shrinks by 0.1 to 0.3 % with humidity: measure again when seasons change and enter it. A kit that was \
         dropped or bent is surveyed again before it is used.",
    ),
];

const CAUTION: &str = "The vehicle maker's service information and local rules govern. This work is for trained people; lasers and \
                       lifted vehicles need their own precautions. baywitness documents the procedure and does not replace it.";

pub(super) fn draw(canvas: &mut Canvas<'_>, paper: Paper, kit: &Kit, contents: &[[String; 4]], folio: &str) {
    let [width, height] = paper.size_mm();
    let inner = width - 2.0 * MARGIN_MM;
    canvas.text([MARGIN_MM, 22.0], Anchor::Left, Style::bold(20.0), &format!("Marker kit {}", kit.name));
    let serial = kit.serial.as_ref().map(|s| format!("serial {s} · ")).unwrap_or_default();
    let due = kit.survey_due.map(|date| format!(" · survey due {date}")).unwrap_or_default();
    let subtitle = format!("{serial}markers of family 36h11 · {paper} paper{due}");
    canvas.text([MARGIN_MM, 28.0], Anchor::Left, Style::regular(9.5).grey(DARK), &subtitle);
    let mut y = 38.0;
    for (index, (title, text)) in STEPS.iter().enumerate() {
        let label = format!("{} {title}", index + 1);
        canvas.text([MARGIN_MM, y], Anchor::Left, Style::bold(9.0), &label);
        y = canvas.paragraph([MARGIN_MM + 30.0, y], inner - 30.0, Style::regular(9.0), text) + 1.6;
    }
    y = canvas.paragraph([MARGIN_MM, y + 2.0], inner, Style::regular(9.0).grey(DARK), &assumptions(kit));
    y = table(canvas, contents, y + 3.0, width);
    let _ = canvas.paragraph([MARGIN_MM, y + 4.0], inner, Style::regular(8.0).grey(DARK), CAUTION);
    rulers(canvas, paper);
    canvas.text([width - 6.0, height - 6.0], Anchor::Right, Style::regular(7.0).grey(GREY), folio);
}

/// What the kit's file takes for granted about how it was made.
fn assumptions(kit: &Kit) -> String {
    let layout = match &kit.layout {
        Some(_) => "sheet centres as surveyed".to_owned(),
        None => format!(
            "sheet centres within {} mm of the drawings, sheets straight within {} degrees",
            kit.u_layout_mm, kit.u_turn_deg
        ),
    };
    let scale = 100.0 * kit.u_scale_relative;
    format!(
        "The kit's file assumes {layout} and sizes within {scale:.2} % (one standard deviation each). Work to half of that."
    )
}

fn table(canvas: &mut Canvas<'_>, contents: &[[String; 4]], top: f64, width: f64) -> f64 {
    let inner = width - 2.0 * MARGIN_MM;
    let columns = [0.0, 0.30, 0.66, 0.82].map(|part| MARGIN_MM + part * inner);
    let mut y = top;
    let head = ["marker holder", "what it is", "drawing, page", "sheets, page"];
    for (x, title) in columns.iter().zip(head) {
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
    let [width, height] = paper.size_mm();
    let length = ruler::RULER_MM;
    ruler::across(canvas, [0.5 * (width - length), height - 22.0], length, &ruler::request("right", length));
    ruler::along(canvas, [6.5, 0.5 * (height - length)], length, &ruler::request("up", length));
}
