//! Which bodies come off for the calibration, which stay, and what photos from
//! before and after it can then compare.

use maud::{Markup, html};

use crate::marker::Role;
use crate::web::view::View;
use crate::words::{Language, say};

/// What comes off: all that is on the vehicle (metal in front of the sensor), by name.
pub(super) fn what_comes_off(language: Language, view: &View) -> Markup {
    let off = names(view, Role::is_on_vehicle);
    let sheets = if names(view, |r| r == Role::Floor).is_empty() { "none" } else { "some" };
    html! {
        @if !off.is_empty() { p.notice.warn { (say!(language, "page-take-off", names = off, sheets = sheets)) } }
    }
}

/// What a photo after the calibration can show then.
pub(super) fn what_stays(language: Language, view: &View) -> Markup {
    let sheets = !names(view, |r| r == Role::Floor).is_empty();
    html! { p { (if sheets { say!(language, "page-after-with-sheets") } else { say!(language, "page-after-without-sheets") }) } }
}

fn names(view: &View, of: impl Fn(Role) -> bool) -> Vec<String> {
    let carriers = view.named.as_ref().map(|n| n.kit.carriers.as_slice()).unwrap_or_default();
    carriers.iter().filter(|c| of(c.role)).map(|c| c.name.clone()).collect()
}
