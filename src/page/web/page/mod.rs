//! The pages, a file each: pure functions of what they show and a language.

pub(super) mod bodies;
pub(super) mod card;
mod changes;
pub(super) mod devices;
pub(super) mod finish;
mod frame;
mod job_head;
pub(super) mod new_job;
pub(super) mod new_sheet;
pub(super) mod pair;
mod photo_card;
pub(super) mod photos;
pub(super) mod prepare;
mod quantities;
pub(super) mod sheets;
pub(super) mod start;
mod stations;
pub(super) mod trouble;
mod verdict;
mod viewer;

pub(super) use frame::style;
