//! From one page to the next: what fits stays together, what is larger than a
//! page goes on overleaf.

use std::collections::VecDeque;
use std::rc::Rc;

use krilla::color::rgb;

use super::page::{BOTTOM_MM, Bookmark, Draw, LEFT_MM, Mark, Pages, TOP_MM, WIDTH_MM};

/// More of a page than this is not left empty to keep things together, mm.
const MOST_EMPTY_MM: f64 = 110.0;

/// Gaps may shrink to this part of themselves to keep a leaf on one page.
const LEAST_GAPS: f64 = 0.4;

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
pub(super) fn flow(mut items: Vec<Item>) -> Pages {
    items.chunk_by_mut(|_, next| !next.new_page).for_each(tighten);
    let mut flow = Flow { pages: Pages { pages: vec![Vec::new()], bookmarks: Vec::new() }, y: TOP_MM };
    let needs: Vec<Need> = (0..items.len()).map(|i| need(&items[i..])).collect();
    let mut joined = false;
    for (item, needs) in items.into_iter().zip(needs) {
        // Where things that are kept together begin, it is decided once: what could not stay
        // together there goes on as the page fills, or a heading would stay behind alone.
        let needs = Need { kept: needs.kept.filter(|_| !joined), ..needs };
        joined = item.with_next || item.kept;
        flow.place(item, needs);
    }
    flow.pages
}

/// What overflows a page of its own by little is set closer, and stays one page.
fn tighten(leaf: &mut [Item]) {
    if !leaf.first().is_some_and(|first| first.new_page) {
        return;
    }
    let gaps: f64 = leaf.iter().skip(1).map(|item| item.gap).sum();
    let heights: f64 = leaf.iter().map(Item::height).sum();
    let room = BOTTOM_MM - TOP_MM - 0.1 - heights;
    if gaps > room && room >= LEAST_GAPS * gaps {
        leaf.iter_mut().for_each(|item| item.gap *= room / gaps);
    }
}

/// What an item needs with those that stand with it, mm.
struct Need {
    /// With all that are kept together, where a page holds them.
    kept: Option<f64>,
    /// With what follows a heading, where a page holds that; else nothing.
    least: f64,
}

fn need(items: &[Item]) -> Need {
    let chain = |joined: fn(&Item) -> bool| items.iter().take_while(|i| joined(i)).count() + 1;
    let sum = |n: usize| -> f64 {
        items.iter().take(n).enumerate().map(|(i, item)| item.height() + if i > 0 { item.gap } else { 0.0 }).sum()
    };
    let fits = |h: &f64| *h <= BOTTOM_MM - TOP_MM;
    let kept = Some(sum(chain(|i| i.with_next || i.kept))).filter(fits);
    let least = [sum(chain(|i| i.with_next)), sum(1)].into_iter().find(fits).unwrap_or(0.0);
    Need { kept, least }
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

    fn place(&mut self, item: Item, need: Need) {
        if item.new_page && !self.at_top() {
            self.new_page(None);
        }
        if !self.at_top() {
            let room = BOTTOM_MM - self.y - item.gap;
            // Keeping things together is not worth an empty half of a page.
            let apart = need.kept.is_some_and(|kept| kept > room) && room < MOST_EMPTY_MM;
            if apart || need.least > room {
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

#[cfg(test)]
mod tests {
    use super::super::page::Draw;
    use super::super::style::Style;
    use super::*;

    fn line(name: &str, height: f64) -> Atom {
        let draw = Draw::Text { at: [0.0, 0.0], style: Style::body(), text: name.to_owned() };
        Atom { gap: 0.0, height, marks: vec![Mark { leaf: Some(0), draw }] }
    }

    fn item(name: &str, height: f64) -> Item {
        Item { columns: vec![vec![line(name, height)]], ..Item::default() }
    }

    /// The texts of each page.
    fn texts(items: Vec<Item>) -> Vec<Vec<String>> {
        let text = |mark: &Mark| match &mark.draw {
            Draw::Text { text, at, .. } => {
                assert!(at[1] >= TOP_MM && at[1] <= BOTTOM_MM, "{text} at {at:?}");
                Some(text.clone())
            }
            _ => None,
        };
        flow(items).pages.iter().map(|page| page.iter().filter_map(text).collect()).collect()
    }

    #[test]
    fn a_heading_never_stands_alone_at_the_foot() {
        let items = vec![item("a", 230.0), Item { with_next: true, ..item("heading", 8.0) }, item("b", 20.0)];
        assert_eq!(texts(items), [vec!["a"], vec!["heading", "b"]]);
    }

    #[test]
    fn what_is_kept_together_moves_on_unless_half_a_page_stays_empty() {
        let pair = |before: f64| vec![item("a", before), Item { kept: true, ..item("b", 70.0) }, item("c", 70.0)];
        assert_eq!(texts(pair(150.0)), [vec!["a"], vec!["b", "c"]]);
        assert_eq!(texts(pair(120.0)), [vec!["a", "b"], vec!["c"]]);
    }

    /// The heading found more than half a page: its rows begin there too.
    #[test]
    fn what_is_kept_together_leaves_no_heading_behind() {
        let row = |name: &str| Item { kept: true, ..item(name, 30.0) };
        let heading = |name: &str, height: f64| Item { with_next: true, kept: true, ..item(name, height) };
        let rows = ["b", "c", "d", "e", "f"].map(row);
        let items = [vec![item("a", 130.0), heading("heading", 8.0), heading("head", 6.0)], rows.to_vec()].concat();
        assert_eq!(texts(items), [vec!["a", "heading", "head", "b", "c", "d"], vec!["e", "f"]]);
    }

    /// Twelve items with their gaps are a little too much for the page that they begin, twenty far too much.
    #[test]
    fn a_leaf_that_overflows_by_little_is_set_closer() {
        let leaf = |count: usize| {
            let one = |i: usize| Item { gap: 4.0, new_page: i == 0, ..item("x", 17.0) };
            texts([vec![item("a", 10.0)], (0..count).map(one).collect()].concat())
        };
        assert_eq!(leaf(12).iter().map(Vec::len).collect::<Vec<_>>(), [1, 12]);
        assert_eq!(leaf(20).len(), 3);
    }

    /// A row that is longer than a page goes on, below the table's head.
    #[test]
    fn nothing_is_lost_of_a_row_longer_than_two_pages() {
        let head = Rc::new(item("head", 6.0));
        let long: Vec<Atom> = (0..150).map(|i| line(&i.to_string(), 4.0)).collect();
        let row = Item { columns: vec![long, vec![line("beside", 4.0)]], head: Some(head), ..Item::default() };
        let pages = texts(vec![item("a", 100.0), row]);
        assert!(pages.len() >= 3, "{} pages", pages.len());
        assert!(pages[1..].iter().all(|page| page[0] == "head"));
        let said: Vec<&String> = pages.iter().flatten().filter(|t| t.parse::<u32>().is_ok()).collect();
        assert_eq!(said.len(), 150);
    }

    /// Higher than a page: it stands out below rather than nowhere.
    #[test]
    fn what_no_page_holds_still_ends() {
        assert_eq!(flow(vec![item("a", 60.0), item("b", 900.0), item("c", 10.0)]).pages.len(), 3);
    }
}
