//! Why a quantity has no value.

use crate::marker::Role;

/// Why a quantity has no value.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Undetermined {
    /// The carrier of a role has no trusted pose.
    #[error("no usable {} was seen", role_words(*.0))]
    NotSeen(Role),
    /// No floor sheets and no rear plates to take the floor from.
    #[error("neither floor sheets nor both rear wheel plates were seen, so there is no floor")]
    NoFloor,
    /// The floor's height is not known.
    #[error("no floor sheet was seen and vehicle.floor_below_hub_mm is not given")]
    NoFloorHeight,
    /// Nothing defines the centreline.
    #[error("there is no centreline: show plates on both front wheels, or a nose mark that is on_centreline")]
    NoCentreline,
    /// No front plates and no wheelbase.
    #[error("no front plates were seen and vehicle.wheelbase_mm is not given")]
    NoWheelbase,
    /// No nose mark and no nose position.
    #[error("no nose mark was seen and vehicle.nose_from_rear_axle_mm is not given")]
    NoNose,
    /// The sheet has no such datum, or the kit no such carrier.
    #[error("the datum is on a carrier that the kit does not have")]
    NoDatum,
    /// The plates themselves define the floor.
    #[error("the plates define the floor here; floor sheets are needed")]
    PlatesAreTheFloor,
    /// Only an instrument can tell.
    #[error("photos can't tell; it takes a reading")]
    ReadingOnly,
    /// The lines are parallel or a body stands on its head.
    #[error("the geometry is degenerate")]
    Degenerate,
}

fn role_words(role: Role) -> &'static str {
    match role {
        Role::Target => "stand",
        Role::RearLeftWheel => "plate on the rear left wheel",
        Role::RearRightWheel => "plate on the rear right wheel",
        Role::FrontLeftWheel => "plate on the front left wheel",
        Role::FrontRightWheel => "plate on the front right wheel",
        Role::Floor => "floor sheet",
        Role::Nose => "nose mark",
        Role::RearLeftArch => "mark on the rear left wheel arch",
        Role::RearRightArch => "mark on the rear right wheel arch",
        Role::FrontLeftArch => "mark on the front left wheel arch",
        Role::FrontRightArch => "mark on the front right wheel arch",
        Role::Card => "job card",
    }
}
