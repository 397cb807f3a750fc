//! A marker as the library publishes it, upright, with its white border.

use maud::{Markup, html};

use crate::marker::Dictionary;

/// Cells of the code with its black border.
const CELLS: usize = 8;

/// The marker; one cell is one unit, and one white cell is around it.
pub(in crate::web) fn marker(id: u32, described: &str) -> Markup {
    let code = Dictionary::tag36h11();
    let inner = 1..CELLS - 1;
    html! {
        svg viewBox="-1 -1 10 10" role="img" aria-label=(described) shape-rendering="crispEdges" {
            rect.white x="-1" y="-1" width="10" height="10" {}
            rect.black width=(CELLS) height=(CELLS) {}
            @for row in inner.clone() { @for column in inner.clone() {
                @if code.is_white(id, column, row) { rect.white x=(column) y=(row) width="1" height="1" {} }
            } }
        }
    }
}
