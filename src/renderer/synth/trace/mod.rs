//! The ray tracer: facets, surfaces, light, and one photo's light per pixel.

mod colour;
mod facet;
mod font;
mod light;
mod model;
mod near;
mod noise;
mod paint;
mod rays;
mod render;
mod sheet;
mod tree;

pub(crate) use colour::Colour;
pub(crate) use facet::Ray;
pub(crate) use font::{dots as text_dots, width as text_width};
pub(crate) use model::{Lamp, Model, Trim};
pub(crate) use near::Near;
pub(crate) use noise::{mix, normal_pair};
pub(crate) use paint::{Decorated, From, Gloss, Paint, Rim, Shape};
pub(crate) use render::{Light, render};
pub(crate) use sheet::{Label, Sheet};
