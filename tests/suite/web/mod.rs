//! The technician's page as a browser and as an attacker meet it: the built
//! program is started, spoken to in plain HTTP, and killed.

#![cfg(test)]

mod bay;
mod changes;
mod client;
mod crash;
mod crowd;
mod devices;
mod encrypted;
mod flow;
mod glance;
mod hostile;
mod laid;
mod languages;
mod list;
mod logged;
mod own_sheets;
mod plain;
mod tls_client;
mod together;
mod tripod;
mod wait;
