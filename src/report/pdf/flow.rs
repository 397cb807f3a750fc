//! From one page to the next: what fits stays together, what is larger than a
//! page goes on overleaf.

use std::collections::VecDeque;
use std::rc::Rc;

use krilla::color::rgb;

use super::page::{BOTTOM_MM, Bookmark, Draw, LEFT_MM, Mark, Pages, TOP_MM, WIDTH_MM};

/// The smallest thing that no page's end parts: a line of text, a drawing.
#[derive(Clone)]
pub(super) struct Atom {
    /// Space above it, left out at the top of a column.
    pub(super) gap: f64,
    pub(super) height: f64,
    /// From its top left, which is the left of the printed width.
    pub(super) marks: Vec<Mark>,
}

impl Atom {
    /// How far its drawings reach to the right, mm.
    pub(super) fn width(&self) -> f64 {
        let right = |mark: &Mark| match &mark.draw {
            Draw::Svg { at, size, .. } | Draw::Box { at, size, .. } => at[0] + size[0],
            Draw::Text { at, .. } => at[0],
            Draw::Rule { to, .. } => to[0],
        };
        self.marks.iter().map(right).fold(0.0, f64::max)
    }
}

/// Columns side by side.
#[derive(Clone, Default)]
pub(super) struct Item {
    /// Space above it, left out at the top of a page.
    pub(super) gap: f64,
    pub(super) columns: Vec<Vec<Atom>>,
    /// Space above and below inside it.
    pub(super) padding: f64,
    /// A line along its bottom (or its top) over the whole width.
    pub(super) rule: Option<(rgb::Color, f64)>,
    pub(super) rule_above: Option<(rgb::Color, f64)>,
    /// A frame around it: ground and edge.
    pub(super) frame: Option<(Option<rgb::Color>, rgb::Color, f64)>,
    /// The next one stands on the same page: this is a heading.
    pub(super) with_next: bool,
    /// The next one stands on the same page where one page holds all such.
    pub(super) kept: bool,
    /// It begins a page.
    pub(super) new_page: bool,
    /// Shown again on top where a page begins with this item.
    pub(super) head: Option<Rc<Item>>,
    pub(super) bookmark: Option<(u8, String)>,
}

fn height(atoms: &[Atom]) -> f64 {
    atoms.iter().enumerate().map(|(i, a)| a.height + if i > 0 { a.gap } else { 0.0 }).sum()
}

impl Item {
    fn height(&self) -> f64 {
        self.columns.iter().map(|c| height(c)).fold(0.0, f64::max) + 2.0 * self.padding
    }
}

/// Places items one after the other.
pub(super) fn flow(items: Vec<Item>) -> Pages {
    let mut flow = Flow { pages: Pages { pages: vec![Vec::new()], bookmarks: Vec::new() }, y: TOP_MM };
    let needs: Vec<f64> = (0..items.len()).map(|i| together(&items[i..])).collect();
    for (item, needs) in items.into_iter().zip(needs) {
        flow.place(item, needs);
    }
    flow.pages
}

/// The height of the first item and of those that stand with it: of all that
/// are kept together, where that is more than a page of a heading and what
/// follows it, where that is more of the first alone, which goes on overleaf.
fn together(items: &[Item]) -> f64 {
    let chain = |joined: fn(&Item) -> bool| items.iter().take_while(|i| joined(i)).count() + 1;
    let sum = |n: usize| -> f64 {
        items.iter().take(n).enumerate().map(|(i, item)| item.height() + if i > 0 { item.gap } else { 0.0 }).sum()
    };
    let chains = [chain(|i| i.with_next || i.kept), chain(|i| i.with_next), 1];
    chains.map(sum).into_iter().find(|&h| h <= BOTTOM_MM - TOP_MM).unwrap_or(0.0)
}

struct Flow {
    pages: Pages,
    y: f64,
}

impl Flow {
    fn at_top(&self) -> bool {
        self.y <= TOP_MM + 1e-9
    }

    fn new_page(&mut self, head: Option<&Rc<Item>>) {
        self.pages.pages.push(Vec::new());
        self.y = TOP_MM;
        // One that would leave no room for the rest is not said again.
        if let Some(head) = head.filter(|head| head.height() < 40.0) {
            // Said once already: overleaf it is decoration.
            let atoms = head.columns.iter().map(|c| c.iter().collect::<Vec<_>>());
            let (height, y) = (head.height(), self.y);
            for column in atoms {
                let mut down = y + head.padding;
                for (i, atom) in column.iter().enumerate() {
                    down += if i > 0 { atom.gap } else { 0.0 };
                    self.draw(atom.marks.iter().map(|m| Mark { leaf: None, ..m.clone() }).collect(), down);
                    down += atom.height;
                }
            }
            self.y += height;
            self.rule(head.rule, self.y);
        }
    }

    fn draw(&mut self, marks: Vec<Mark>, y: f64) {
        if let Some(page) = self.pages.pages.last_mut() {
            page.extend(marks.iter().map(|mark| mark.moved([LEFT_MM, y])));
        }
    }

    fn rule(&mut self, rule: Option<(rgb::Color, f64)>, y: f64) {
        let Some((colour, width_mm)) = rule else { return };
        let draw = Draw::Rule { from: [0.0, 0.0], to: [WIDTH_MM, 0.0], colour, width_mm };
        self.draw(vec![Mark { leaf: None, draw }], y);
    }

    fn place(&mut self, item: Item, needs: f64) {
        if item.new_page && !self.at_top() {
            self.new_page(None);
        }
        if !self.at_top() {
            if self.y + item.gap + needs > BOTTOM_MM {
                self.new_page(item.head.as_ref());
            } else {
                self.y += item.gap;
            }
        }
        self.rule(item.rule_above, self.y - 1.6);
        if let Some((level, title)) = item.bookmark {
            let page = self.pages.pages.len() - 1;
            self.pages.bookmarks.push(Bookmark { level, title, page, y_mm: self.y });
        }
        let mut columns: Vec<VecDeque<Atom>> = item.columns.into_iter().map(VecDeque::from).collect();
        loop {
            let start = self.y;
            let end = self.fill(&mut columns, start, item.padding, item.frame);
            let done = columns.iter().all(VecDeque::is_empty);
            self.y = end;
            if done {
                self.rule(item.rule, end);
                return;
            }
            self.new_page(item.head.as_ref());
        }
    }

    /// As much of each column as the page holds; where it ends.
    fn fill(
        &mut self,
        columns: &mut [VecDeque<Atom>],
        start: f64,
        padding: f64,
        frame: Option<(Option<rgb::Color>, rgb::Color, f64)>,
    ) -> f64 {
        let top = start + padding;
        let fresh = start <= BOTTOM_MM - 200.0;
        let mut end = top;
        let highest = columns.iter_mut().map(|c| height(c.make_contiguous())).fold(0.0, f64::max);
        let mut placed: Vec<(Vec<Mark>, f64)> = Vec::new();
        for column in columns.iter_mut() {
            // In a frame a shorter column stands in the middle.
            let slack = highest - height(column.make_contiguous());
            let top = if frame.is_some() && top + highest <= BOTTOM_MM { top + slack / 2.0 } else { top };
            let mut y = top;
            while let Some(atom) = column.front() {
                let gap = if y > top { atom.gap } else { 0.0 };
                // What is higher than a whole page stands out below rather than nowhere.
                if y + gap + atom.height + padding > BOTTOM_MM && !(fresh && y <= top) {
                    break;
                }
                y += gap;
                let Some(atom) = column.pop_front() else { break };
                placed.push((atom.marks, y));
                y += atom.height;
            }
            end = end.max(y);
        }
        if let Some((fill, edge, width)) = frame.filter(|_| !placed.is_empty()) {
            let size = [WIDTH_MM, end + padding - start];
            let draw = Draw::Box { at: [0.0, 0.0], size, fill, edge: Some((edge, width)) };
            self.draw(vec![Mark { leaf: None, draw }], start);
        }
        for (marks, y) in placed {
            self.draw(marks, y);
        }
        end + padding
    }
}
