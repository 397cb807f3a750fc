//! Who may come in: addresses and their places, the pairing code, devices and their pace.

mod devices;
mod pace;
mod pairing;
mod places;

pub(super) use devices::Who;
pub(super) use pace::{Pace, too_soon};
pub use pairing::qr_text;
pub(super) use pairing::{Pairing, Refused, TOKEN_COOKIE, reachable};
pub(super) use places::Places;
