//! Light of three colours.

/// Linear red, green and blue reflectance or radiance.
pub(crate) type Colour = [f32; 3];
