//! What stands within a paragraph.

use std::rc::Rc;

use usvg::roxmltree::Node;

use super::drawings::Drawings;
use super::lines::Piece;
use super::nodes::has_class;
use super::style::Style;
use crate::typeface::Weight;

/// Elements that are part of a line.
const INLINE: [&str; 8] = ["span", "strong", "small", "sub", "em", "code", "b", "br"];

/// Whether a node belongs into a paragraph with its neighbours.
pub(super) fn is_inline(node: Node) -> bool {
    node.is_text() || INLINE.contains(&node.tag_name().name())
}

/// The palette's colour of the verdict or level that an element is about.
pub(super) fn verdict_colour(node: Node) -> &'static str {
    let known = [
        ("within", "within"),
        ("outside", "outside"),
        ("not_proven", "not_proven"),
        ("retake", "retake"),
        ("void", "retake"),
        ("stop", "outside"),
        ("warn", "not_proven"),
    ];
    node.ancestors()
        .find_map(|n| known.iter().find(|(class, _)| has_class(n, class)).map(|(_, colour)| *colour))
        .unwrap_or("ink")
}

/// All text below a node, with single blanks.
pub(super) fn text_of(node: Node) -> String {
    let all: String = node.descendants().filter(Node::is_text).filter_map(|n| n.text()).collect();
    all.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Reads inline content into pieces.
pub(super) struct Inline<'a> {
    pub(super) drawings: &'a Drawings<'a>,
    pub(super) source: &'a str,
}

impl Inline<'_> {
    /// The pieces of a node and what is in it.
    pub(super) fn pieces(&self, node: Node, style: Style, pieces: &mut Vec<Piece>) {
        if let Some(text) = node.text().filter(|_| node.is_text()) {
            pieces.push(Piece::Text { text: text.to_owned(), style });
            return;
        }
        let name = node.tag_name().name();
        match name {
            "svg" => pieces.extend(self.icon(node, style)),
            "br" => pieces.push(Piece::Break),
            _ => {
                let inner = styled(node, style);
                let own_line = name == "small" && !pieces.is_empty();
                if own_line {
                    pieces.push(Piece::Break);
                }
                let from = pieces.len();
                node.children().for_each(|child| self.pieces(child, inner, pieces));
                if has_class(node, "num") {
                    pieces[from..].iter_mut().for_each(unbroken);
                }
                if own_line {
                    pieces.push(Piece::Break);
                }
                // A step's title runs into its words, as on printed pages of the HTML.
                if name == "strong" && node.ancestors().any(|n| has_class(n, "todo")) {
                    pieces.push(Piece::Text { text: ": ".to_owned(), style: inner });
                }
            }
        }
    }

    /// A drawing in the line, as high as its text.
    fn icon(&self, svg: Node, style: Style) -> Option<Piece> {
        let height = style.line_mm() * 0.95;
        let width = height / Drawings::aspect(svg)?;
        let layers = self.drawings.layers(svg, self.source, width, verdict_colour(svg))?;
        Some(Piece::Icon { layers: Rc::new(layers), size: [width, height], words: None })
    }
}

fn styled(node: Node, style: Style) -> Style {
    match node.tag_name().name() {
        "strong" | "b" => style.bold(),
        "small" => Style { weight: Weight::Regular, ..style.sized(style.size_pt * 0.86).coloured("muted") },
        "sub" => Style { rise_mm: style.rise_mm - style.size_pt * 0.05, ..style.sized(style.size_pt * 0.75) },
        "span" if has_class(node, "tag") => style.bold().sized(style.size_pt * 0.9).coloured(verdict_colour(node)),
        "span" if has_class(node, "path") || has_class(node, "hash") => style.sized(style.size_pt * 0.9),
        _ => style,
    }
}

/// A number stays with its unit.
fn unbroken(piece: &mut Piece) {
    if let Piece::Text { text, .. } = piece {
        *text = text.replace(' ', "\u{a0}");
    }
}
