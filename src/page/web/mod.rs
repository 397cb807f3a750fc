//! The technician's page: a door beside the command line. It shows and edits
//! ordinary job folders; what is measured comes from the `job` room.
//!
//! From the outside in: `server` accepts connections, `places` counts them, `tls`
//! encrypts, `guard`, `pairing` and `devices` say who may ask, `changes` notes it, `routes` says what can be asked, `page` and `draw` answer,
//! `intake` keeps what is sent, `edit` changes job files, `desk` measures,
//! `shelf` knows the folders. What people read stands in the message files, room `page`.

mod alignment;
mod answer;
mod app;
mod attempt;
mod changes;
mod closing;
mod connecting;
mod desk;
mod devices;
mod draw;
mod edit;
mod events;
mod forms;
mod glance;
mod guard;
mod handing_out;
mod intake;
mod language;
mod library;
mod limits;
mod opening;
mod own_sheets;
mod page;
mod pairing;
mod paperwork;
mod places;
mod plans;
mod preview;
mod routes;
mod sending;
mod server;
mod shelf;
mod tls;
mod tripod;
mod trouble;
mod upload;
mod view;

pub use app::Options;
pub use pairing::qr_text;
pub use server::{Error, Server};
pub use tls::{Error as TlsError, Tls};
