//! The technician's page as a browser and as an attacker meet it: the built
//! program is started, spoken to in plain HTTP, and killed.

#![cfg(test)]

mod bay;
mod client;
mod crash;
mod crowd;
mod devices;
mod flow;
mod hostile;
mod list;
mod logged;
mod own_sheets;
mod plain;
mod together;
