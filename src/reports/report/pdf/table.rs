//! Tables: widths of columns, rows, the head again on every page.

use std::rc::Rc;

use usvg::roxmltree::Node;

use super::build::{Area, Build, GAP_MM, share_bar, width_share};
use super::flow::{Atom, Item};
use super::inline::text_of;
use super::lines::extent;
use super::nodes::has_class;
use super::page::WIDTH_MM;
use super::style::{Style, colour};
use super::tags::Kind;

/// Space between columns, mm.
const BETWEEN_MM: f64 = 3.2;

/// Shares of the width that the style sheet gives columns of the checks.
const FIXED: [(&str, f64); 5] =
    [("c-name", 0.22), ("c-want", 0.14), ("c-meas", 0.19), ("c-bar", 0.22), ("c-verd", 0.23)];

fn rows<'n, 'i>(table: Node<'n, 'i>, part: &'static str) -> Vec<Node<'n, 'i>> {
    let parts = table.children().filter(move |n| n.tag_name().name() == part);
    parts.flat_map(|p| p.children().filter(|n| n.tag_name().name() == "tr")).collect()
}

fn cells<'n, 'i>(row: Node<'n, 'i>) -> Vec<Node<'n, 'i>> {
    row.children().filter(|n| ["th", "td"].contains(&n.tag_name().name())).collect()
}

/// Tables that the page folds away are set closer.
fn is_compact(node: Node) -> bool {
    node.ancestors().any(|n| n.tag_name().name() == "details")
}

fn head_style() -> Style {
    Style::body().sized(7.8).coloured("muted").bold()
}

impl Build<'_> {
    pub(super) fn table(&mut self, node: Node, parent: usize) {
        let table = self.tags.open(parent, Kind::Table);
        let (head, body) = (rows(node, "thead"), rows(node, "tbody"));
        let areas = self.areas(&head, &body);
        let mut repeated = None;
        if let Some(row) = head.first() {
            let part = self.tags.open(table, Kind::Head);
            let first = self.row(*row, part, &areas, true);
            repeated = Some(Rc::new(first.clone()));
            self.items.push(Item { gap: GAP_MM, with_next: true, ..first });
        }
        let part = self.tags.open(table, Kind::Rows);
        for row in body {
            let item = self.row(row, part, &areas, false);
            self.items.push(Item { head: repeated.clone(), ..item });
        }
    }

    fn row(&mut self, row: Node, parent: usize, areas: &[Area], head: bool) -> Item {
        let element = self.tags.open(parent, Kind::Row);
        let columns = cells(row).into_iter().zip(areas).map(|(cell, area)| self.cell(cell, element, *area, head));
        let columns = columns.collect();
        let rule = if head { (colour("ink"), 0.35) } else { (colour("rule"), 0.2) };
        let padding = if head || is_compact(row) { 0.7 } else { 1.2 };
        Item { columns, padding, rule: Some(rule), ..Item::default() }
    }

    fn cell(&mut self, cell: Node, row: usize, area: Area, head: bool) -> Vec<Atom> {
        let (kind, style) = match cell.tag_name().name() {
            _ if head => (Kind::ColumnHeader, head_style()),
            "th" => (Kind::RowHeader, Style::body().bold()),
            _ => (Kind::Cell, Style::body()),
        };
        let style = if is_compact(cell) { style.sized(style.size_pt * 0.9) } else { style };
        let element = self.tags.open(row, kind);
        if let Some(share) = cell.children().find(|n| has_class(*n, "share")).and_then(width_share) {
            return vec![share_bar(share, area)];
        }
        self.stack(cell, element, style, area)
    }

    /// Where the columns stand: as the style sheet says, else by their content.
    fn areas(&self, head: &[Node], body: &[Node]) -> Vec<Area> {
        let all: Vec<Vec<Node>> = head.iter().chain(body).map(|row| cells(*row)).collect();
        let count = all.iter().map(Vec::len).max().unwrap_or(0);
        let fixed = |column: usize| {
            let cell = all.first()?.get(column)?;
            FIXED.iter().find(|(class, _)| has_class(*cell, class)).map(|(_, share)| share * WIDTH_MM)
        };
        let widths: Vec<f64> = match (0..count).map(fixed).collect::<Option<Vec<f64>>>() {
            Some(widths) => widths,
            None => shared_out(&(0..count).map(|c| self.column(&all, c)).collect::<Vec<_>>()),
        };
        let mut x = 0.0;
        let place = |width: &f64| {
            let area = Area { x, width: (width - BETWEEN_MM).max(5.0) };
            x += width;
            area
        };
        widths.iter().map(place).collect()
    }

    /// The least and the wanted width of a column.
    fn column(&self, rows: &[Vec<Node>], column: usize) -> [f64; 2] {
        let (mut least, mut wanted) = (8.0_f64, 8.0_f64);
        for cell in rows.iter().filter_map(|row| row.get(column)) {
            if let Some(share) = width_share(*cell) {
                return [share * WIDTH_MM; 2];
            }
            let mut pieces = Vec::new();
            let blank = text_of(*cell).is_empty();
            let style = if cell.tag_name().name() == "th" { Style::body().bold() } else { Style::body() };
            cell.children().filter(|_| !blank).for_each(|n| self.inline.pieces(n, style, &mut pieces));
            let [word, line] = extent(self.fonts, pieces);
            least = least.max((word + BETWEEN_MM).min(0.36 * WIDTH_MM));
            wanted = wanted.max(line + BETWEEN_MM + 0.3);
        }
        [least, wanted.max(least)]
    }
}

/// Everyone's wanted width where there is room, the rest to the widest; else
/// the least and a share of what remains.
fn shared_out(columns: &[[f64; 2]]) -> Vec<f64> {
    let least: f64 = columns.iter().map(|c| c[0]).sum();
    let wanted: f64 = columns.iter().map(|c| c[1]).sum();
    if wanted <= WIDTH_MM {
        let rest = (WIDTH_MM - wanted).min(0.25 * WIDTH_MM) / columns.len().max(1) as f64;
        return columns.iter().map(|c| c[1] + rest).collect();
    }
    if least >= WIDTH_MM {
        return columns.iter().map(|c| c[0] * WIDTH_MM / least).collect();
    }
    let share = (WIDTH_MM - least) / (wanted - least);
    columns.iter().map(|c| c[0] + (c[1] - c[0]) * share).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_never_exceed_the_page() {
        for columns in [vec![[10.0, 20.0]; 3], vec![[10.0, 200.0], [20.0, 30.0]], vec![[90.0, 100.0]; 4]] {
            let widths = shared_out(&columns);
            assert!(widths.iter().sum::<f64>() <= WIDTH_MM + 1e-9, "{widths:?}");
            assert!(widths.iter().all(|w| *w > 5.0), "{widths:?}");
        }
    }
}
