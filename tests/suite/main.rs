//! All tests that call the library or the program, in one binary: it is linked
//! once, and two cores are never idle while another test file is still busy.
//!
//! `cargo test --test suite web::` runs those of one room.

#![cfg(test)]

mod adjust;
mod architecture;
mod attacks;
mod audit;
mod bay;
mod before;
mod broken;
mod cli;
mod coverage;
mod credentials;
mod detect_bay;
mod detect_render;
mod detect_support;
mod determinism;
mod docs;
mod doors;
mod evidence;
mod explained;
mod faults;
mod findings;
mod golden;
mod hostile_pictures;
mod input_defaults;
mod input_errors;
mod input_folder;
mod input_round_trip;
mod kit_bay;
mod kits;
mod lens;
mod lens_table;
mod made;
mod moves;
mod older_names;
mod outputs;
mod phones;
mod photo;
mod photo_heic;
mod photo_png;
mod photo_record;
mod photo_scans;
mod pipeline;
mod plan;
mod planned;
mod procedure;
mod program;
mod pseudo;
mod published;
mod real;
mod reference;
mod report;
mod sampled_bay;
#[cfg(feature = "sensor-pattern")]
mod sensor;
mod sentences;
mod sheet;
mod sheet_door;
mod slips;
mod staged;
mod supply;
mod survey;
mod synth_edges;
mod synth_insides;
mod synth_measure;
mod synth_samples;
mod synth_stage;
mod synth_support;
mod synth_truth;
mod told;
mod training;
mod transparency;
mod trends;
mod tripod;
mod web;
mod words;
