//! What can be asked, and what answers: `table` names every address, `showing` and `doing` most of what answers them.

mod answer;
mod connecting;
mod doing;
mod events;
mod glance;
mod guard;
mod handing_out;
mod request;
mod sending;
mod showing;
mod table;
mod tripod;

pub(super) use table::routes;
