//! From the placed scene to bodies that rays can meet.

mod body;
mod clutter;
mod kit;
mod room;
mod shapes;
mod stand;
mod wheel;

use super::place::Placement;
use super::scene::{PhotoSpec, Scene};
use super::trace::Model;

/// Builds the model of a bay at the moment of a photo.
pub(crate) fn model(scene: &Scene, photo: &PhotoSpec, placement: &Placement) -> Model {
    let mut model = Model::default();
    room::build(&mut model, &scene.spec);
    clutter::build(&mut model, &scene.spec);
    body::build(&mut model, &scene.spec.vehicle, &placement.vehicle);
    for wheel in &placement.vehicle.wheels {
        wheel::build(&mut model, wheel, scene.spec.vehicle.hub_height_mm);
    }
    kit::build(&mut model, scene, photo, placement);
    model.finish();
    model
}
