//! The document's structure: what is a heading, a paragraph, a cell.

use std::num::NonZeroU16;

use krilla::tagging::{Identifier, ListNumbering, Node, TableHeaderScope, Tag, TagGroup, TagKind, TagTree};

/// Longer titles and descriptions are of use to nobody, and PDF/A limits strings.
const LONGEST: usize = 4000;

/// One kind of element (ISO 32000-1, 14.8.4).
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Kind {
    Section,
    Heading(u8, String),
    Paragraph,
    List,
    Item,
    Label,
    Body,
    Table,
    Head,
    Rows,
    Row,
    ColumnHeader,
    RowHeader,
    Cell,
    /// With its description in words.
    Figure(String),
}

enum Child {
    Element(usize),
    Leaf(usize),
}

struct Element {
    kind: Kind,
    children: Vec<Child>,
}

/// The structure in the making; element 0 is the document's own section.
pub(super) struct Tags {
    elements: Vec<Element>,
    leaves: usize,
}

impl Tags {
    pub(super) const ROOT: usize = 0;

    pub(super) fn new() -> Tags {
        Tags { elements: vec![Element { kind: Kind::Section, children: Vec::new() }], leaves: 0 }
    }

    /// A new element inside `parent`.
    pub(super) fn open(&mut self, parent: usize, kind: Kind) -> usize {
        let at = self.elements.len();
        self.elements.push(Element { kind, children: Vec::new() });
        self.elements[parent].children.push(Child::Element(at));
        at
    }

    /// A new piece of content inside `parent`.
    pub(super) fn leaf(&mut self, parent: usize) -> usize {
        self.leaves += 1;
        self.elements[parent].children.push(Child::Leaf(self.leaves - 1));
        self.leaves - 1
    }

    /// How many pieces of content there are.
    pub(super) fn leaves(&self) -> usize {
        self.leaves
    }

    /// The tree, once every piece is drawn and has its identifiers.
    pub(super) fn tree(&self, drawn: &mut [Vec<Identifier>]) -> TagTree {
        let mut tree = TagTree::new();
        if let Some(root) = self.group(Tags::ROOT, drawn) {
            tree.push(root);
        }
        tree
    }

    /// `None` where nothing of it was drawn.
    fn group(&self, at: usize, drawn: &mut [Vec<Identifier>]) -> Option<TagGroup> {
        let element = &self.elements[at];
        let mut group = TagGroup::new(tag(&element.kind));
        for child in &element.children {
            match child {
                Child::Element(at) => {
                    if let Some(inner) = self.group(*at, drawn) {
                        group.push(Node::Group(inner));
                    }
                }
                Child::Leaf(at) => {
                    for identifier in std::mem::take(&mut drawn[*at]) {
                        group.push(Node::Leaf(identifier));
                    }
                }
            }
        }
        // An empty cell keeps its place in the row.
        let kept = matches!(element.kind, Kind::Cell | Kind::ColumnHeader | Kind::RowHeader);
        (kept || !group.children.is_empty()).then_some(group)
    }
}

fn tag(kind: &Kind) -> TagKind {
    let level = |n: u8| NonZeroU16::new(u16::from(n)).unwrap_or(NonZeroU16::MIN);
    match kind {
        Kind::Section => Tag::Section.into(),
        Kind::Heading(n, title) => Tag::Hn(level(*n), Some(shortened(title))).into(),
        Kind::Paragraph => Tag::P.into(),
        Kind::List => Tag::L(ListNumbering::None).into(),
        Kind::Item => Tag::LI.into(),
        Kind::Label => Tag::Lbl.into(),
        Kind::Body => Tag::LBody.into(),
        Kind::Table => Tag::Table.into(),
        Kind::Head => Tag::THead.into(),
        Kind::Rows => Tag::TBody.into(),
        Kind::Row => Tag::TR.into(),
        Kind::ColumnHeader => Tag::TH(TableHeaderScope::Column).into(),
        Kind::RowHeader => Tag::TH(TableHeaderScope::Row).into(),
        Kind::Cell => Tag::TD.into(),
        Kind::Figure(words) => Tag::Figure(Some(shortened(words))).into(),
    }
}

/// At most [`LONGEST`] characters, the last an ellipsis where any is missing.
pub(super) fn shortened(text: &str) -> String {
    if text.chars().count() <= LONGEST {
        return text.to_owned();
    }
    text.chars().take(LONGEST - 1).chain(['…']).collect()
}
