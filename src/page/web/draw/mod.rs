//! Drawings for a phone's width, as SVG; no figure in them is computed here.

pub(super) mod bay;
pub(super) mod code;
pub(super) mod moves;
