//! Things beside one another: title block, verdict, numbered steps, findings,
//! names and values.

use usvg::roxmltree::Node;

use super::build::{Area, Build, GAP_MM};
use super::flow::Item;
use super::inline::verdict_colour;
use super::nodes::has_class;
use super::page::{Draw, Mark, WIDTH_MM};
use super::style::{Style, colour};
use super::tags::Kind;

/// Names and values in a grid of this many columns.
const GRID: usize = 4;

fn elements<'n, 'i>(node: Node<'n, 'i>) -> impl Iterator<Item = Node<'n, 'i>> {
    node.children().filter(Node::is_element)
}

impl Build<'_> {
    pub(super) fn title_block(&mut self, node: Node, parent: usize) {
        for child in elements(node) {
            self.block(child, parent);
        }
    }

    /// The verdict in one glance: sign and word in a frame of its colour.
    pub(super) fn verdict(&mut self, node: Node, parent: usize) {
        let name = verdict_colour(node);
        let mut columns = Vec::new();
        let sign = Area { x: 4.0, width: 15.0 };
        let words = Area { x: 25.0, width: WIDTH_MM - 30.0 };
        for child in elements(node) {
            if child.tag_name().name() == "svg" {
                columns.push(self.svg(child, parent, sign, 0.0).into_iter().collect());
                continue;
            }
            let mut column = Vec::new();
            for part in elements(child) {
                let (kind, style) = match part.tag_name().name() {
                    "h2" => {
                        let title = super::inline::text_of(part);
                        (Kind::Heading(2, title), Style::body().bold().sized(18.0).coloured(name))
                    }
                    _ => (Kind::Paragraph, Style::body().sized(10.0)),
                };
                let element = self.tags.open(parent, kind);
                column.extend(self.text_of_node(part, element, style, words, 1.0));
            }
            columns.push(column);
        }
        self.items.push(Item {
            gap: 4.0,
            columns,
            padding: 3.0,
            frame: Some((Some(colour(&format!("{name}-tint"))), colour(name), 0.8)),
            ..Item::default()
        });
    }

    /// Steps, findings or plain points.
    pub(super) fn list(&mut self, node: Node, parent: usize) {
        let list = self.tags.open(parent, Kind::List);
        for (i, item) in elements(node).enumerate() {
            if has_class(node, "findings") {
                self.finding(item, list);
            } else {
                let label = if node.tag_name().name() == "ol" { format!("{}.", i + 1) } else { "–".to_owned() };
                self.point(item, list, &label);
            }
        }
    }

    fn point(&mut self, node: Node, list: usize, label: &str) {
        let entry = self.tags.open(list, Kind::Item);
        let (number, body) = (self.tags.open(entry, Kind::Label), self.tags.open(entry, Kind::Body));
        let label = vec![super::lines::Piece::Text { text: label.to_owned(), style: Style::body().bold() }];
        let left = self.text(label, number, Area { x: 0.0, width: 8.0 }, 0.0);
        let area = Area { x: 8.0, width: WIDTH_MM - 8.0 };
        let right = self.stack(node, body, Style::body(), area);
        self.items.push(Item { gap: 0.5 * GAP_MM, columns: vec![left, right], ..Item::default() });
    }

    fn finding(&mut self, node: Node, list: usize) {
        let entry = self.tags.open(list, Kind::Item);
        let parts = [
            (Kind::Label, Area { x: 0.0, width: 34.0 }, Style::body().coloured(verdict_colour(node)).bold()),
            (Kind::Body, Area { x: 38.0, width: WIDTH_MM - 38.0 }, Style::body()),
        ];
        let columns = elements(node).zip(parts).map(|(child, (kind, area, style))| {
            let element = self.tags.open(entry, kind);
            self.stack(child, element, style, area)
        });
        let columns = columns.collect();
        let rule = Some((colour("rule"), 0.2));
        self.items.push(Item { gap: 0.4, columns, padding: 1.2, rule, ..Item::default() });
    }

    /// A photo with its facts beside it.
    pub(super) fn photo(&mut self, node: Node, parent: usize) {
        let (mut left, mut facts) = (Vec::new(), Vec::new());
        let mut wide = 0.0;
        for child in elements(node) {
            match child.tag_name().name() {
                "svg" => {
                    left.extend(self.svg(child, parent, Area::PAGE, 0.0));
                    wide = left.iter().map(super::flow::Atom::width).fold(0.0, f64::max);
                }
                "figcaption" | "dl" => facts.push(child),
                _ => self.block(child, parent),
            }
        }
        let area = Area { x: wide + 5.0, width: WIDTH_MM - wide - 5.0 };
        let mut right = Vec::new();
        for child in facts {
            if child.tag_name().name() == "dl" {
                let list = self.tags.open(parent, Kind::List);
                for div in elements(child) {
                    let entry = self.tags.open(list, Kind::Item);
                    for part in elements(div) {
                        let gap = if part.tag_name().name() == "dt" { 1.6 } else { 0.2 };
                        let mut atoms = self.pair_part(part, entry, area);
                        atoms.iter_mut().take(1).for_each(|a| a.gap = gap);
                        right.extend(atoms);
                    }
                }
            } else {
                let element = self.tags.open(parent, Kind::Paragraph);
                let style = Style::body().sized(8.4).coloured("muted");
                right.extend(self.text_of_node(child, element, style, area, 0.0));
            }
        }
        self.items.push(Item { gap: GAP_MM, columns: vec![left, right], ..Item::default() });
    }

    /// Names and values: `dt` and `dd`, bare or in `div`s of a grid.
    pub(super) fn pairs(&mut self, node: Node, parent: usize) {
        let list = self.tags.open(parent, Kind::List);
        let all: Vec<Node> = elements(node).collect();
        if all.iter().any(|n| n.tag_name().name() == "div") {
            return self.grid(&all, list);
        }
        for pair in all.chunks(2) {
            let entry = self.tags.open(list, Kind::Item);
            let areas = [Area { x: 0.0, width: 42.0 }, Area { x: 46.0, width: WIDTH_MM - 46.0 }];
            let columns = pair.iter().zip(areas).map(|(part, area)| self.pair_part(*part, entry, area));
            let columns = columns.collect();
            self.items.push(Item { gap: 0.8, columns, ..Item::default() });
        }
    }

    fn pair_part(&mut self, node: Node, entry: usize, area: Area) -> Vec<super::flow::Atom> {
        let (kind, style) = match node.tag_name().name() {
            "dt" => (Kind::Label, Style::body().sized(8.0).coloured("muted")),
            _ => (Kind::Body, Style::body()),
        };
        let element = self.tags.open(entry, kind);
        self.text_of_node(node, element, style, area, 0.2)
    }

    fn grid(&mut self, all: &[Node], list: usize) {
        let width = WIDTH_MM / GRID as f64;
        let (mut columns, mut used) = (Vec::new(), 0);
        for (i, div) in all.iter().enumerate() {
            let span = if has_class(*div, "wide") { 2 } else { 1 };
            if used + span > GRID {
                self.grid_row(std::mem::take(&mut columns), i == all.len());
                used = 0;
            }
            let area = Area { x: used as f64 * width, width: span as f64 * width - 4.0 };
            let entry = self.tags.open(list, Kind::Item);
            columns.push(elements(*div).flat_map(|part| self.pair_part(part, entry, area)).collect());
            used += span;
        }
        self.grid_row(columns, true);
    }

    fn grid_row(&mut self, columns: Vec<Vec<super::flow::Atom>>, last: bool) {
        if !columns.is_empty() {
            self.items.push(Item { gap: 1.6, columns, with_next: !last, ..Item::default() });
        }
    }
}

/// A line of the sheet's foot or head.
pub(super) fn plain_text(at: [f64; 2], style: Style, text: String) -> Mark {
    Mark { leaf: None, draw: Draw::Text { at, style, text } }
}
