//! An HTML page taken apart by html5ever, the parser that browsers' rules are
//! written down in.

use html5ever::tendril::TendrilSink;
use html5ever::{ParseOpts, parse_document};
use markup5ever_rcdom::{Handle, NodeData, RcDom};

/// One element: name, attributes, own and inner text, in document order.
pub(crate) struct Element {
    pub(crate) name: String,
    pub(crate) attributes: Vec<(String, String)>,
    pub(crate) text: String,
}

impl Element {
    pub(crate) fn attribute(&self, name: &str) -> Option<&str> {
        self.attributes.iter().find(|(key, _)| key == name).map(|(_, value)| value.as_str())
    }
}

/// A page with what the parser complained about.
pub(crate) struct Page {
    pub(crate) elements: Vec<Element>,
    pub(crate) complaints: Vec<String>,
}

impl Page {
    pub(crate) fn parse(html: &str) -> Page {
        let dom = parse_document(RcDom::default(), ParseOpts::default()).one(html);
        let mut elements = Vec::new();
        walk(&dom.document, &mut elements);
        let complaints = dom.errors.borrow().iter().map(ToString::to_string).collect();
        Page { elements, complaints }
    }

    pub(crate) fn named<'a>(&'a self, name: &'a str) -> impl Iterator<Item = &'a Element> {
        self.elements.iter().filter(move |e| e.name == name)
    }
}

fn walk(node: &Handle, elements: &mut Vec<Element>) {
    if let NodeData::Element { name, attrs, .. } = &node.data {
        let attributes = attrs.borrow().iter().map(|a| (a.name.local.to_string(), a.value.to_string())).collect();
        elements.push(Element { name: name.local.to_string(), attributes, text: text(node) });
    }
    for child in node.children.borrow().iter() {
        walk(child, elements);
    }
}

fn text(node: &Handle) -> String {
    let mut all = String::new();
    gather(node, &mut all);
    all.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn gather(node: &Handle, all: &mut String) {
    if let NodeData::Text { contents } = &node.data {
        all.push_str(&contents.borrow());
        all.push(' ');
    }
    for child in node.children.borrow().iter() {
        gather(child, all);
    }
}
