//! The connected devices, and what vouches for the page.

use maud::{Markup, html};

use super::frame::{moment, open_network, page as frame};
use crate::web::app::App;
use crate::web::devices::Who;
use crate::web::tls::digits;
use crate::web::words::{Words, fill};

/// The page for whoever asks.
pub(in crate::web) fn page(words: &Words, app: &App, who: &Who) -> Markup {
    let list = app.pairing.devices.list();
    let body = html! {
        (open_network(words, app.open))
        h1 { (words.devices) }
        @if list.is_empty() { p { (words.no_devices) } }
        @else { p { (words.devices_why) } }
        ul.jobs {
            @for (device, seen) in &list {
                li.device {
                    h2 { (device.name) @if who.id.as_deref() == Some(device.id()) { " (" (words.this_device) ")" } }
                    p.hint {
                        @if let Some(since) = &device.since { (fill(words.connected_since, &[&since.replace('T', " ")])) " · " }
                        @if let Some(seen) = seen { (fill(words.last_here, &[&moment(*seen, app.offset)])) }
                    }
                    form.inline method="post" action="/devices" {
                        input type="hidden" name="device" value=(device.id());
                        button type="submit" { (words.show_out) span.gone { ": " (device.name) } }
                    }
                }
            }
        }
        (certificate(words, app))
    };
    frame(words, words.devices, None, &body)
}

/// The page's certificate: what to compare, and the root to trust.
pub(super) fn certificate(words: &Words, app: &App) -> Markup {
    let Some(keeper) = &app.certificate else { return html! {} };
    let print = keeper.fingerprint();
    html! {
        section aria-labelledby="certificate" data-print=(digits(&print)) {
            h2 #certificate { (words.certificate) }
            p { (words.certificate_why) }
            p.hint { (words.certificate_of_page) }
            p.print { (print) }
            @if let Some((_, root)) = keeper.root() {
                p.hint { (words.certificate_of_root) }
                p.print { (root) }
                p { (words.root_why) }
                p { a.button href="/root.crt" download { (words.take_root) } }
            }
        }
    }
}
