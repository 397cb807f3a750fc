//! A kit with hidden errors as photos show it: exact corners through the lens,
//! then noise. No rendering and no detector.

use baywitness::camera::Profile;
use baywitness::detect::{Sighting, Sightings};
use baywitness::geom::{self, Camera, Pose, World};
use baywitness::marker::{Kit, Role};
use baywitness::photo::Exif;
use baywitness::survey::SurveyPhoto;
use nalgebra::{Matrix3, Point3, Rotation3, SMatrix, Vector2, Vector3};

use crate::sampled_bay::Noise;

pub(crate) const SIZE: [u32; 2] = [4032, 3024];
const NOISE_PX: f64 = 0.03;
const U_EDGE_PX: f64 = 0.02;

/// The kit as it was really built: centres off by `u_mm` per coordinate,
/// markers turned, all prints by one factor.
pub(crate) fn as_built(kit: &Kit, u_mm: f64, scale: f64, noise: &mut Noise) -> Kit {
    let mut built = kit.clone();
    for marker in built.carriers.iter_mut().flat_map(|c| &mut c.markers) {
        marker.centre_mm += noise.vector(u_mm);
        let turn = Rotation3::new(noise.vector(0.002));
        marker.right = turn * marker.right;
        marker.up = turn * marker.up;
        marker.size_mm = marker.size_mm.map(|s| s * scale);
    }
    built
}

/// Where the carriers of a bay kit stand.
fn place(role: Role, floor: &mut usize) -> Vector3<f64> {
    match role {
        Role::Target => Vector3::new(5060.0, 0.0, 750.0),
        Role::RearLeftWheel => Vector3::new(0.0, 860.0, 315.0),
        Role::RearRightWheel => Vector3::new(0.0, -860.0, 315.0),
        Role::FrontLeftWheel => Vector3::new(2700.0, 860.0, 315.0),
        Role::FrontRightWheel => Vector3::new(2700.0, -860.0, 315.0),
        Role::Floor => {
            *floor += 1;
            let [x, y] = [[4300.0, 1000.0], [4300.0, -1000.0], [5600.0, 700.0], [5600.0, -700.0]][(*floor - 1) % 4];
            Vector3::new(x, y, 0.0)
        }
        _ => Vector3::new(3560.0, 0.0, 550.0),
    }
}

/// Photos from an arc before the vehicle and from both sides.
pub(crate) fn stations(count: usize) -> Vec<[Vector3<f64>; 2]> {
    let one = |i: usize| {
        let part = i as f64 / (count - 1) as f64;
        // Few photos stay before the vehicle, where they share markers.
        let angle = (part - 0.5) * 2.1 * (count as f64 / 8.0).min(1.0);
        let far = [4200.0, 3000.0][i % 2];
        let at = Vector3::new(3000.0, 0.0, 450.0);
        let eye =
            Vector3::new(2900.0 + far * angle.cos() * 1.3, far * angle.sin() * 1.1, [1700.0, 1100.0, 700.0][i % 3]);
        [eye, at + Vector3::new(400.0 * angle.cos(), 500.0 * angle.sin(), 0.0)]
    };
    (0..count).map(one).collect()
}

fn look(eye: Vector3<f64>, at: Vector3<f64>) -> Pose<Camera, World> {
    let z = (at - eye).normalize();
    let x = z.cross(&Vector3::z()).normalize();
    let world_from_camera: Pose<World, Camera> = Pose::from_matrix(Matrix3::from_columns(&[x, z.cross(&x), z]), eye);
    world_from_camera.inverse()
}

/// Photos of a kit as built.
pub(crate) fn photos(built: &Kit, camera: &Profile, count: usize, noise: &mut Noise) -> Vec<SurveyPhoto> {
    let mut floor = 0;
    let carriers: Vec<Pose<World, geom::Carrier>> = built
        .carriers
        .iter()
        .map(|c| {
            let turn = nalgebra::UnitQuaternion::from_scaled_axis(noise.vector(0.005));
            Pose::new(turn, place(c.role, &mut floor))
        })
        .collect();
    let stations = stations(count);
    stations.iter().enumerate().map(|(i, station)| photo(built, camera, &carriers, station, i, noise)).collect()
}

fn photo(
    built: &Kit,
    camera: &Profile,
    carriers: &[Pose<World, geom::Carrier>],
    [eye, at]: &[Vector3<f64>; 2],
    index: usize,
    noise: &mut Noise,
) -> SurveyPhoto {
    let camera_from_world = look(eye + noise.vector(30.0), *at);
    let eye = camera_from_world.inverse().origin_mm();
    let mut lens = camera.lens;
    let focal = 1.0 + camera.per_photo.u_focal_relative * noise.normal();
    lens.focal_px = lens.focal_px.map(|f| f * focal);
    lens.centre_px = lens.centre_px.map(|c| c + camera.per_photo.u_centre_px * noise.normal());
    let edge = U_EDGE_PX * noise.normal();
    let mut markers = Vec::new();
    for (carrier, pose) in built.carriers.iter().zip(carriers) {
        for marker in &carrier.markers {
            let towards = (eye - pose.point(&Point3::from(marker.centre_mm)).coords).normalize();
            if pose.direction(&marker.normal()).dot(&towards) < 0.34 {
                continue;
            }
            let pixels: Option<Vec<Vector2<f64>>> = marker
                .corners_mm()
                .iter()
                .map(|c| {
                    let pixel = lens.project(&camera_from_world.point(&pose.point(c)).coords)?.pixel;
                    let inside = (0..2).all(|a| (10.0..f64::from(SIZE[a]) - 10.0).contains(&pixel[a]));
                    inside.then_some(pixel)
                })
                .collect();
            let Some(exact) = pixels else { continue };
            let side = (exact[1] - exact[0]).norm().min((exact[2] - exact[1]).norm());
            if side < 20.0 {
                continue;
            }
            let sigma = NOISE_PX * (40.0 / side).max(1.0);
            let outward = outward(&exact);
            markers.push(Sighting {
                id: marker.id,
                wrong_bits: 0,
                corners_px: std::array::from_fn(|k| {
                    exact[k] + Vector2::new(noise.normal(), noise.normal()) * sigma + outward[k] * edge
                }),
                corner_valid: [true; 4],
                covariance_px2: SMatrix::identity() * (sigma * sigma),
                contrast: 0.7,
                blur_px: 0.7,
                warp_px: None,
            });
        }
    }
    let sightings =
        Sightings { markers, edge_offset_px: 0.0, u_edge_offset_px: U_EDGE_PX, blur_px: 0.7, gain_spread: None };
    SurveyPhoto { file: format!("{index}.jpg"), size_px: SIZE, exif: Exif::default(), sightings }
}

/// How corners move when every edge moves outwards by one pixel.
fn outward(c: &[Vector2<f64>]) -> [Vector2<f64>; 4] {
    let normal = |i: usize| {
        let e = c[(i + 1) % 4] - c[i];
        Vector2::new(e.y, -e.x).normalize()
    };
    std::array::from_fn(|i| {
        let (a, b) = (normal((i + 3) % 4), normal(i));
        (a + b) / (1.0 + a.dot(&b))
    })
}
