//! A file's path on the page.

use maud::{Markup, html};

/// `PATH` without its folders is too little to tell two photos apart, so the
/// whole path is kept; long ones may break anywhere.
pub(super) fn path(file: &str) -> Markup {
    html! { span.path { (file) } }
}
