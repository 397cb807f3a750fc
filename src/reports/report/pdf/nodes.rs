//! Elements of the page and their classes.

use usvg::roxmltree::Node;

/// Whether an element has a class.
pub(super) fn has_class(node: Node, class: &str) -> bool {
    node.attribute("class").is_some_and(|all| all.split_whitespace().any(|one| one == class))
}
