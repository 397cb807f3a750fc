//! Why a quantity has no value.

use crate::marker::Role;

/// Why a quantity has no value; `verdict` has the words.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Undetermined {
    /// The carrier of a role has no trusted pose.
    NotSeen(Role),
    /// Nothing was measured: too few photos can be used.
    NothingMeasured,
    /// No floor sheets and no rear plates to take the floor from.
    NoFloor,
    /// The floor's height is not known.
    NoFloorHeight,
    /// Nothing defines the centreline.
    NoCentreline,
    /// No front plates and no wheelbase.
    NoWheelbase,
    /// No nose mark and no nose position.
    NoNose,
    /// The sheet has no such datum, or the kit no such carrier.
    NoDatum,
    /// The plates themselves define the floor.
    PlatesAreTheFloor,
    /// A mark on the body leans against the vehicle, so that a point beside it goes astray.
    Leans(Role),
    /// Only an instrument can tell.
    ReadingOnly,
    /// The lines are parallel or a body stands on its head.
    Degenerate,
}
