//! The vehicle of a scene.

use serde::Deserialize;

/// An invented vehicle. Its design frame has x along the design centreline,
/// z up from the floor, the origin below the midpoint of the rear axle's
/// design position. Headings are to the left positive, toe-in and top outward
/// positive; pairs are left, right.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct VehicleSpec {
    /// Between the axles, mm.
    pub wheelbase_mm: f64,
    /// Between the rear hub datums, mm.
    pub rear_track_mm: f64,
    /// Between the front hub datums, mm.
    pub front_track_mm: f64,
    /// Hub datums above the floor, mm.
    pub hub_height_mm: f64,
    /// Foremost point: distance before the rear axle and height, mm.
    pub nose_mm: [f64; 2],
    /// Where the nose really is, against the design, mm.
    pub nose_offset_mm: [f64; 3],
    /// Turn of the rear axle's hub datums about their midpoint, degrees.
    pub rear_axle_skew_deg: f64,
    /// Turn of the front axle's hub datums about their midpoint, degrees.
    pub front_axle_skew_deg: f64,
    /// Shift of the rear axle's midpoint to the left, mm.
    pub rear_axle_shift_mm: f64,
    /// Shift of the front axle's midpoint to the left, mm.
    pub front_axle_shift_mm: f64,
    /// Direction in which the rear wheels steer, degrees.
    pub thrust_deg: f64,
    /// Rear toe about the thrust direction, degrees.
    pub rear_toe_deg: [f64; 2],
    /// Front toe about the steering direction, degrees.
    pub front_toe_deg: [f64; 2],
    /// Front wheels turned, degrees.
    pub steering_deg: f64,
    /// Rear camber, degrees.
    pub rear_camber_deg: [f64; 2],
    /// Front camber, degrees.
    pub front_camber_deg: [f64; 2],
    /// Rear plates about the axle, top forward positive, degrees.
    pub rear_plumb_deg: [f64; 2],
    /// Front plates about the axle, degrees.
    pub front_plumb_deg: [f64; 2],
    /// Wheels raised (something lies below them): rear left, rear right, front left, front right, mm.
    pub raised_mm: [f64; 4],
    /// Wheel-arch edges above the wheels' design height, in the same order, mm: where arch marks sit.
    pub arch_heights_mm: [f64; 4],
    /// Width of the body, mm.
    pub width_mm: f64,
    /// Height of the roof, mm.
    pub height_mm: f64,
    /// Body behind the rear axle, mm.
    pub rear_overhang_mm: f64,
    /// Paint, linear RGB.
    pub colour: [f32; 3],
}

impl Default for VehicleSpec {
    fn default() -> Self {
        VehicleSpec {
            wheelbase_mm: 2640.0,
            rear_track_mm: 1690.0,
            front_track_mm: 1700.0,
            hub_height_mm: 321.0,
            nose_mm: [3490.0, 520.0],
            nose_offset_mm: [0.0; 3],
            rear_axle_skew_deg: 0.0,
            front_axle_skew_deg: 0.0,
            rear_axle_shift_mm: 0.0,
            front_axle_shift_mm: 0.0,
            thrust_deg: 0.0,
            rear_toe_deg: [0.05, 0.05],
            front_toe_deg: [0.04, 0.04],
            steering_deg: 0.0,
            rear_camber_deg: [-1.2, -1.1],
            front_camber_deg: [-0.5, -0.4],
            rear_plumb_deg: [0.1, -0.15],
            front_plumb_deg: [-0.1, 0.2],
            raised_mm: [0.0; 4],
            arch_heights_mm: [377.0; 4],
            width_mm: 1780.0,
            height_mm: 1490.0,
            rear_overhang_mm: 780.0,
            colour: [0.10, 0.17, 0.27],
        }
    }
}
