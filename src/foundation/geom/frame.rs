//! The coordinate frames as empty types.

/// A coordinate frame. Implemented by the empty types of this room only.
pub trait Frame: Copy + std::fmt::Debug + PartialEq + Send + Sync + 'static {
    /// Name for messages.
    const NAME: &'static str;
}

macro_rules! frame {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub struct $name;
        impl Frame for $name {
            const NAME: &'static str = stringify!($name);
        }
    };
}

frame! {
    /// ISO 8855 vehicle frame: x forward along the job's reference line, y
    /// left, z up along the floor's normal; origin on the floor below the
    /// midpoint of the two rear hub datums. Millimetres.
    Vehicle
}
frame! {
    /// The frame in which one job is adjusted. Where floor sheets are seen,
    /// its x-y plane is the floor and z points up. Millimetres.
    World
}
frame! {
    /// A camera at the moment of one photo: x right, y down, z forward, on
    /// the stored (unrotated) pixel grid. Millimetres.
    Camera
}
frame! {
    /// A rigid body that bears markers. Axes parallel to the vehicle's when
    /// the set-up is perfect. Millimetres.
    Carrier
}
frame! {
    /// One printed marker: x right, y up, z out of the printed face towards
    /// the viewer, origin in its centre. Millimetres.
    Marker
}
