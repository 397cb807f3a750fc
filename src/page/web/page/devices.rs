//! The connected devices, and what vouches for the page.

use maud::{Markup, html};

use super::frame::{moment, open_network, page as frame};
use crate::web::app::App;
use crate::web::entry::Who;
use crate::web::tls::digits;
use crate::words::{Language, Value, say};

/// The page for whoever asks.
pub(in crate::web) fn page(language: Language, app: &App, who: &Who) -> Markup {
    let list = app.pairing.devices.list();
    let body = html! {
        (open_network(language, app.open))
        h1 { (say!(language, "page-devices")) }
        @if list.is_empty() { p { (say!(language, "page-no-devices")) } }
        @else { p { (say!(language, "page-devices-why")) } }
        ul.jobs {
            @for (device, seen) in &list {
                li.device {
                    h2 { (device.name) @if who.id.as_deref() == Some(device.id()) { " (" (say!(language, "page-this-device")) ")" } }
                    p.hint {
                        @if let Some(since) = &device.since { (say!(language, "page-connected-since", when = Value::moment(since.as_str()))) " · " }
                        @if let Some(seen) = seen { (say!(language, "page-last-here", when = moment(*seen, app.offset))) }
                    }
                    form.inline method="post" action="/devices" {
                        input type="hidden" name="device" value=(device.id());
                        button type="submit" { (say!(language, "page-show-out")) span.gone { (say!(language, "page-colon")) " " (device.name) } }
                    }
                }
            }
        }
        (certificate(language, app))
    };
    frame(language, &say!(language, "page-devices"), None, &body)
}

/// The page's certificate: what to compare, and the root to trust.
pub(super) fn certificate(language: Language, app: &App) -> Markup {
    let Some(keeper) = &app.certificate else { return html! {} };
    let print = keeper.fingerprint();
    html! {
        section aria-labelledby="certificate" data-print=(digits(&print)) {
            h2 #certificate { (say!(language, "page-certificate")) }
            p { (say!(language, "page-certificate-why")) }
            p.hint { (say!(language, "page-certificate-of-page")) }
            p.print { (print) }
            @if let Some((_, root)) = keeper.root() {
                p.hint { (say!(language, "page-certificate-of-root")) }
                p.print { (root) }
                p { (say!(language, "page-root-why")) }
                p { a.button href="/root.crt" download { (say!(language, "page-take-root")) } }
            }
        }
    }
}
