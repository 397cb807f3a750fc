//! Which bodies come off for the calibration, which stay, and what photos from
//! before and after it can then compare.

use maud::{Markup, html};

use crate::marker::Role;
use crate::web::view::View;
use crate::web::words::{Words, fill};

/// What comes off: all that is on the vehicle (metal before the sensor), by name.
pub(super) fn what_comes_off(words: &Words, view: &View) -> Markup {
    let off = names(view, Role::is_on_vehicle).join(", ");
    let stays = if names(view, |r| r == Role::Floor).is_empty() { words.the_stand } else { words.stand_and_sheets };
    html! {
        @if !off.is_empty() {
            p.notice.warn {
                @if stays == words.the_stand { (fill(words.take_off_only, &[&off])) }
                @else { (fill(words.take_off, &[&off, stays])) }
            }
        }
    }
}

/// What a photo after the calibration can show then.
pub(super) fn what_stays(words: &Words, view: &View) -> Markup {
    let sheets = !names(view, |r| r == Role::Floor).is_empty();
    html! { p { (if sheets { words.after_with_sheets } else { words.after_without_sheets }) } }
}

fn names(view: &View, of: impl Fn(Role) -> bool) -> Vec<String> {
    let carriers = view.named.as_ref().map(|n| n.kit.carriers.as_slice()).unwrap_or_default();
    carriers.iter().filter(|c| of(c.role)).map(|c| c.name.clone()).collect()
}
