//! From the page's elements to items with their structure. The words and
//! drawings are those of the HTML report; here is only how paper shows them.

use std::rc::Rc;

use usvg::roxmltree::Node;

use super::drawings::{Drawings, MM_PER_PIXEL};
use super::flow::{Atom, Item};
use super::inline::{Inline, is_inline, text_of, verdict_colour};
use super::lines::{Line, Piece, lines};
use super::nodes::has_class;
use super::page::{BOTTOM_MM, Draw, Mark, TOP_MM, WIDTH_MM};
use super::style::{Style, colour};
use super::tags::{Kind, Tags};
use crate::typeface::Fonts;

/// Space between blocks, mm.
pub(super) const GAP_MM: f64 = 2.0;
/// A photo is no wider and no higher than this on paper, mm.
const PHOTO_MM: [f64; 2] = [118.0, 88.0];

/// A column: where it begins and how wide it is, mm.
#[derive(Clone, Copy)]
pub(super) struct Area {
    pub(super) x: f64,
    pub(super) width: f64,
}

impl Area {
    pub(super) const PAGE: Area = Area { x: 0.0, width: WIDTH_MM };
}

/// The document in the making.
pub(super) struct Build<'a> {
    pub(super) fonts: &'a Fonts,
    pub(super) inline: Inline<'a>,
    pub(super) tags: Tags,
    pub(super) items: Vec<Item>,
}

impl Build<'_> {
    /// Adds an element and all that is in it.
    pub(super) fn block(&mut self, node: Node, parent: usize) {
        let name = node.tag_name().name();
        match name {
            "section" => self.section(node, parent),
            "header" => self.title_block(node, parent),
            "h1" | "h2" | "h3" => self.heading(node, parent),
            "p" | "figcaption" | "summary" | "footer" => self.paragraph(node, parent),
            "table" => self.table(node, parent),
            "dl" => self.pairs(node, parent),
            "ul" if has_class(node, "key") => self.paragraph(node, parent),
            "ul" | "ol" => self.list(node, parent),
            "svg" => self.drawing(node, parent),
            "div" if has_class(node, "verdict") => self.verdict(node, parent),
            "div" if has_class(node, "loupes") => self.side_by_side(node, parent),
            "figure" => {
                let from = self.items.len();
                if has_class(node, "photo") {
                    self.photo(node, parent)
                } else {
                    self.blocks(node, parent)
                }
                self.keep_together(from, 3.0);
                // The last picture is read with the line below it, as a heading is with its text.
                if let [.., last, _] = &mut self.items[from..] {
                    last.with_next = true;
                }
            }
            "details" => {
                let from = self.items.len();
                self.blocks(node, parent);
                self.keep_together(from, 3.0);
            }
            _ => self.blocks(node, parent),
        }
    }

    /// Adds what is in an element; text between blocks becomes paragraphs.
    pub(super) fn blocks(&mut self, node: Node, parent: usize) {
        let mut loose: Vec<Node> = Vec::new();
        for child in node.children() {
            if is_inline(child) {
                loose.push(child);
                continue;
            }
            self.loose(&mut loose, parent);
            if child.is_element() {
                self.block(child, parent);
            }
        }
        self.loose(&mut loose, parent);
    }

    fn loose(&mut self, nodes: &mut Vec<Node>, parent: usize) {
        let nodes = std::mem::take(nodes);
        if nodes.iter().all(|n| text_of(*n).is_empty()) {
            return;
        }
        let mut pieces = Vec::new();
        nodes.iter().for_each(|n| self.inline.pieces(*n, Style::body(), &mut pieces));
        let element = self.tags.open(parent, Kind::Paragraph);
        let column = self.text(pieces, element, Area::PAGE, 0.0);
        self.items.push(Item { gap: GAP_MM, columns: vec![column], ..Item::default() });
    }

    /// The items since `from` stand on one page where one holds them.
    fn keep_together(&mut self, from: usize, gap: f64) {
        let last = self.items.len().saturating_sub(1);
        for (i, item) in self.items.iter_mut().enumerate().skip(from) {
            item.kept |= i < last;
            if i == from {
                item.gap = item.gap.max(gap);
            }
        }
    }

    fn section(&mut self, node: Node, parent: usize) {
        let element = self.tags.open(parent, Kind::Section);
        let from = self.items.len();
        self.blocks(node, element);
        if has_class(node, "keep") {
            self.keep_together(from, 0.0);
        }
        // What stands between a heading and its first table or drawing is of no use alone.
        if let [heading, words, _, ..] = &mut self.items[from..] {
            words.with_next |= heading.with_next;
        }
        if let Some(first) = self.items.get_mut(from) {
            first.gap = 7.5;
            first.rule_above = Some((colour("ink"), 0.4));
            first.new_page = has_class(node, "leaf");
        }
    }

    fn heading(&mut self, node: Node, parent: usize) {
        let (level, size) = match node.tag_name().name() {
            "h1" => (1, 15.0),
            "h2" => (2, 11.5),
            _ => (3, 9.6),
        };
        let title = text_of(node);
        let element = self.tags.open(parent, Kind::Heading(level, title.clone()));
        let column = self.text_of_node(node, element, Style::body().bold().sized(size), Area::PAGE, 0.0);
        self.items.push(Item {
            gap: if level == 3 { 3.4 } else { GAP_MM },
            columns: vec![column],
            with_next: true,
            bookmark: Some((level, title)),
            ..Item::default()
        });
    }

    fn paragraph(&mut self, node: Node, parent: usize) {
        let style = block_style(node);
        let element = self.tags.open(parent, Kind::Paragraph);
        let column = self.text_of_node(node, element, style, Area::PAGE, 0.0);
        let lead = has_class(node, "lede") || has_class(node, "key") && has_class(node, "first");
        let with_next = lead || node.tag_name().name() == "summary";
        // The last words of a document don't get a page to themselves, nor a table's signs without a row of it.
        let closing = node.tag_name().name() == "footer" || has_class(node, "key") && !has_class(node, "first");
        if let Some(before) = self.items.last_mut().filter(|_| closing) {
            before.with_next = true;
        }
        self.items.push(Item { gap: GAP_MM, columns: vec![column], with_next, ..Item::default() });
    }

    /// Lines of pieces as atoms.
    pub(super) fn text(&mut self, pieces: Vec<Piece>, element: usize, area: Area, gap: f64) -> Vec<Atom> {
        let leaf = Some(self.tags.leaf(element));
        atoms(lines(self.fonts, pieces, area.width, leaf), area.x, gap)
    }

    /// The lines of all that is in a node.
    pub(super) fn text_of_node(&mut self, node: Node, element: usize, style: Style, area: Area, gap: f64) -> Vec<Atom> {
        let mut pieces = Vec::new();
        if has_class(node, "key") {
            for item in node.children().filter(|n| n.tag_name().name() == "li") {
                item.children().for_each(|n| self.inline.pieces(n, style, &mut pieces));
                pieces.push(Piece::Text { text: " \u{a0} ".to_owned(), style });
            }
        } else {
            node.children().for_each(|n| self.inline.pieces(n, style, &mut pieces));
        }
        self.text(pieces, element, area, gap)
    }

    /// A drawing as an atom, with its words for those who don't see it.
    pub(super) fn svg(&mut self, node: Node, parent: usize, area: Area, gap: f64) -> Option<Atom> {
        let aspect = Drawings::aspect(node)?;
        let photo = has_class(node, "ph");
        let width = if photo { area.width.min(PHOTO_MM[0]).min(PHOTO_MM[1] / aspect) } else { area.width };
        let width = width.min((BOTTOM_MM - TOP_MM) / aspect);
        let layers = self.inline.drawings.layers(node, self.inline.source, width, verdict_colour(node))?;
        let leaf = node.attribute("aria-label").map(|words| {
            let figure = self.tags.open(parent, Kind::Figure(words.to_owned()));
            self.tags.leaf(figure)
        });
        let draw = Draw::Svg { at: [area.x, 0.0], size: [width, width * aspect], layers: Rc::new(layers) };
        Some(Atom { gap, height: width * aspect, marks: vec![Mark { leaf, draw }] })
    }

    fn drawing(&mut self, node: Node, parent: usize) {
        let Some(atom) = self.svg(node, parent, Area::PAGE, 0.0) else { return };
        self.items.push(Item { gap: GAP_MM, columns: vec![vec![atom]], ..Item::default() });
    }

    /// All that is in an element, one below the other in a column.
    pub(super) fn stack(&mut self, node: Node, parent: usize, style: Style, area: Area) -> Vec<Atom> {
        let mut all: Vec<Atom> = Vec::new();
        let mut pieces = Vec::new();
        for child in node.children().filter(|n| !n.is_comment()) {
            // A drawing without words of its own in a line of text is a sign of that text.
            if is_inline(child) || child.attribute("aria-hidden").is_some() && !pieces.is_empty() {
                self.inline.pieces(child, style, &mut pieces);
                continue;
            }
            if !pieces.is_empty() {
                all.extend(self.text(std::mem::take(&mut pieces), parent, area, 1.0));
            }
            match child.tag_name().name() {
                "svg" => all.extend(self.svg(child, parent, area, 1.2)),
                "p" | "li" | "figcaption" | "h3" | "h2" => {
                    let inner = match child.tag_name().name() {
                        "h2" | "h3" => style.bold(),
                        "figcaption" => block_style(child).sized(style.size_pt * 0.92),
                        _ if has_class(child, "aside") || has_class(child, "why") => block_style(child),
                        _ => style,
                    };
                    let element = self.tags.open(parent, Kind::Paragraph);
                    all.extend(self.text_of_node(child, element, inner, area, 1.0));
                }
                _ => all.extend(self.stack(child, parent, style, area)),
            }
        }
        if !pieces.is_empty() {
            all.extend(self.text(pieces, parent, area, 1.0));
        }
        all
    }

    /// A paragraph of the document's own.
    pub(super) fn note(&mut self, words: &str) {
        let element = self.tags.open(Tags::ROOT, Kind::Paragraph);
        let style = Style::body().sized(8.4).coloured("muted");
        let pieces = vec![Piece::Text { text: words.to_owned(), style }];
        let column = self.text(pieces, element, Area::PAGE, 0.0);
        self.items.push(Item { gap: GAP_MM, columns: vec![column], ..Item::default() });
    }

    fn side_by_side(&mut self, node: Node, parent: usize) {
        let figures: Vec<Node> = node.children().filter(Node::is_element).collect();
        let width = (WIDTH_MM - 2.0 * 6.0) / 3.0;
        let columns = figures.iter().enumerate().map(|(i, figure)| {
            let area = Area { x: i as f64 * (width + 6.0), width };
            self.stack(*figure, parent, Style::body().sized(8.4), area)
        });
        let columns = columns.collect();
        self.items.push(Item { gap: 2.0 * GAP_MM, columns, ..Item::default() });
    }
}

/// Lines as atoms, moved right.
pub(super) fn atoms(lines: Vec<Line>, x: f64, gap: f64) -> Vec<Atom> {
    let one = |(i, line): (usize, Line)| Atom {
        gap: if i == 0 { gap } else { 0.0 },
        height: line.height,
        marks: line.marks.iter().map(|m| m.moved([x, 0.0])).collect(),
    };
    lines.into_iter().enumerate().map(one).collect()
}

/// How the style sheet shows a paragraph.
fn block_style(node: Node) -> Style {
    let style = Style::body();
    match node.tag_name().name() {
        "summary" => style.bold(),
        "figcaption" | "footer" => style.sized(8.4).coloured("muted"),
        _ if ["lede", "aside", "key"].iter().any(|class| has_class(node, class)) => style.sized(8.4).coloured("muted"),
        _ if has_class(node, "why") => style.sized(8.2),
        _ => style,
    }
}

/// `width:40%` of a style attribute, as a share.
pub(super) fn width_share(node: Node) -> Option<f64> {
    let percent = node.attribute("style")?.strip_prefix("width:")?.strip_suffix('%')?;
    Some(percent.parse::<f64>().ok()? / 100.0)
}

/// A bar of a share, decoration of the figure beside it.
pub(super) fn share_bar(share: f64, area: Area) -> Atom {
    let size = [(area.width * share).max(0.2), 6.0 * MM_PER_PIXEL];
    let draw = Draw::Box { at: [area.x, 1.2], size, fill: Some(colour("accent")), edge: None };
    Atom { gap: 0.0, height: 3.0, marks: vec![Mark { leaf: None, draw }] }
}
