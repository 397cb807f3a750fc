//! Which bodies come off for the calibration, which stay, and what photos from
//! before and after it can then compare.

use maud::{Markup, html};

use crate::marker::{Kit, Role};
use crate::verdict::body_label;
use crate::web::view::View;
use crate::words::{Language, say};

/// What comes off: all that is on the vehicle (metal in front of the sensor), by name.
pub(super) fn what_comes_off(language: Language, view: &View) -> Markup {
    let off: Vec<String> =
        names(view, Role::is_on_vehicle).iter().map(|name| body_name(language, view, name)).collect();
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

/// A body by what it is, and its own name where the kit has several such.
pub(super) fn body_name(language: Language, view: &View, name: &str) -> String {
    match &view.named {
        Ok(named) => kit_body_name(language, &named.kit, name),
        Err(_) => name.to_owned(),
    }
}

/// The same by the kit alone.
pub(in crate::web) fn kit_body_name(language: Language, kit: &Kit, name: &str) -> String {
    let role = kit.carriers.iter().find(|c| c.name == name).map(|c| c.role);
    let Some(body) = body_label(name, role) else { return name.to_owned() };
    let several = role.is_some_and(|role| kit.with_role(role).nth(1).is_some());
    if several { say!(language, "verdict-body-own", body = body, name = name) } else { body.say(language) }
}

fn names(view: &View, of: impl Fn(Role) -> bool) -> Vec<String> {
    let carriers = view.named.as_ref().map(|n| n.kit.carriers.as_slice()).unwrap_or_default();
    carriers.iter().filter(|c| of(c.role)).map(|c| c.name.clone()).collect()
}
