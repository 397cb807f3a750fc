//! The technician's page: a door beside the command line. It shows and edits
//! ordinary job folders; what is measured comes from the `job` room.
//!
//! From the outside in: `server` accepts connections, `entry` says who may come in, `tls`
//! encrypts, `routes` says what can be asked, `page` and `draw` answer, `deeds` change a job and
//! note it, `desk` measures, `folders` knows the job folders. Below them all `app` is what requests
//! share. What people read stands in the message files, room `page`.

mod address;
mod app;
mod deeds;
mod desk;
mod draw;
mod entry;
mod error;
mod folders;
mod forms;
mod language;
mod limits;
mod page;
mod routes;
mod server;
mod tls;
mod trouble;
mod view;

pub use app::Options;
pub use entry::qr_text;
pub use error::Error;
pub use server::Server;
pub use tls::{Error as TlsError, Tls};
