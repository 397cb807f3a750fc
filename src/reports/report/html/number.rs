//! A number with its unit.

use maud::{Markup, html};

/// A number with its uncertainty and unit: a narrow column may break it before the
/// `±`, never between a number and its unit.
pub(super) fn number(text: &str) -> Markup {
    html! { span.num { (text.replace(' ', "\u{a0}").replace("\u{a0}±", " ±")) } }
}
