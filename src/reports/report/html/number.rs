//! A number with its unit.

use maud::{Markup, html};

use crate::words::kept_together;

/// A number with its uncertainty and unit: a narrow column may break it before the
/// `±`, never between a number and its unit.
pub(super) fn number(text: &str) -> Markup {
    html! { span.num { (kept_together(text)) } }
}
