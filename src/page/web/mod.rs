//! The technician's page: a door beside the command line. It shows and edits
//! ordinary job folders; what is measured comes from the `job` room.
//!
//! From the outside in: `server` accepts connections, `places` counts them, `tls`
//! encrypts, `guard`, `pairing` and `devices` say who may ask, `changes` notes it, `routes` says what can be asked, `page` and `draw` answer,
//! `intake` keeps what is sent, `edit` changes job files, `desk` measures,
//! `shelf` knows the folders. What people read stands in the message files, room `page`.

mod address;
mod alignment;
mod answer;
mod app;
mod attempt;
mod bench;
mod changes;
mod closing;
mod connecting;
mod desk;
mod devices;
mod doing;
mod draw;
mod edit;
mod error;
mod events;
mod forms;
mod glance;
mod guard;
mod handing_out;
mod happened;
mod intake;
mod language;
mod library;
mod limits;
mod logged;
mod named;
mod opening;
mod own_sheets;
mod pace;
mod page;
mod pairing;
mod paperwork;
mod places;
mod plans;
mod preview;
mod request;
mod routes;
mod sending;
mod series;
mod server;
mod shelf;
mod showing;
mod tls;
mod tripod;
mod trouble;
mod upload;
mod view;

pub use app::Options;
pub use error::Error;
pub use pairing::qr_text;
pub use server::Server;
pub use tls::{Error as TlsError, Tls};
