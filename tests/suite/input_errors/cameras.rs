//! Camera files.

use baywitness::camera::Profile;

use super::{Case, case, check};

const CAMERA: &str = r#"format = "camera/1"
name = "phone"
model = "brown-conrady"
image_size_px = [4032, 3024]
focal_px = [3050.1, 3049.7]
centre_px = [2014.9, 1508.3]
distortion = [0.081, -0.21, 0.0004, -0.0002, 0.12]
u_noise_px = 0.05

[per_photo]
u_focal_relative = 0.002
u_centre_px = 5.0

[exif]
make = "Example"
model = "Phone 12M"
focal_length_mm = 5.7
"#;

/// As files stated it before each kind of term had a key.
const FLAT: &str = "distortion = [0.081, -0.21, 0.0004, -0.0002, 0.12]";

const WRONG_CAMERAS: &[Case] = &[
    case("format = \"camera/1\"", "format = \"camera/2\"", "format", "version", "newer baywitness"),
    case("format = \"camera/1\"", "format = \"kit/1\"", "format", "\"kit/1\" file", "name a camera file"),
    case("format = \"camera/1\"\n", "", "format", "not stated", "first line must be"),
    case("name = \"phone\"\n", "", "name", "is missing", "add `name"),
    case("name = \"phone\"", "name = \"\"", "name", "is empty", "fill it in"),
    case("name = \"phone\"", "name = \"two\\nlines\"", "name", "one line", "shorten"),
    case("brown-conrady", "brown-conradi", "model", "no lens model", "did you mean `brown-conrady`"),
    case("4032, 3024", "4032", "image_size_px", "2 values, not 1", "2 values"),
    case("4032, 3024", "4032.5, 3024", "image_size_px[0]", "whole number", "decimal point"),
    case("4032, 3024", "0, 3024", "image_size_px[0]", "whole number from 16", "check"),
    case("3050.1, 3049.7", "5.7, 5.7", "focal_px[0]", "in mm?", "in pixels"),
    case("3050.1, 3049.7", "90000.0, 90000.0", "focal_px[0]", "cannot be a focal length", "in pixels"),
    case("3050.1, 3049.7", "-3050.1, 3049.7", "focal_px[0]", "cannot be a focal length", "in pixels"),
    case("3050.1, 3049.7", "3050.1, nan", "focal_px[1]", "finite number, not nan", "plain number"),
    case("3050.1, 3049.7", "3050.1, 1500.0", "focal_px", "differ by more", "check"),
    case("2014.9, 1508.3", "2014.9, 1e9", "centre_px[1]", "between", "unit"),
    case("2014.9, 1508.3", "inf, 1508.3", "centre_px[0]", "finite number, not inf", "plain number"),
    case("0.081, -0.21", "nan, -0.21", "distortion[0]", "finite number, not nan", "plain number"),
    case("0.081, -0.21, 0.0004", "0.081, 0.0004", "distortion", "5 values for brown-conrady, not 4", "k3"),
    case(FLAT, "radial = [0.081, -0.21]\ndecentring = [0.0004, -0.0002]", "radial", "3 values", "k1, k2, k3"),
    case(FLAT, "radial = [0.081, -0.21, 0.12]", "decentring", "is missing", "add `decentring"),
    case(
        FLAT,
        "angular = [0.0, 0.0, 0.0, 0.0]\nradial = [0.0, 0.0, 0.0]",
        "angular",
        "does not belong",
        "leave it out",
    ),
    case("u_noise_px = 0.05", "radial = [0.0, 0.0, 0.0]", "radial", "beside distortion", "leave it out"),
    case("u_noise_px = 0.05", "u_noise_px = 0.0", "u_noise_px", "above zero", "sign"),
    case("u_noise_px = 0.05", "u_nosie_px = 0.05", "u_nosie_px", "unknown key", "did you mean `u_noise_px`"),
    case("u_noise_px = 0.05", "covariance = [[1.0]]", "covariance", "9 x 9 values, not 1 x 1", "leave it out"),
    case("u_noise_px = 0.05", "covariance = 3", "covariance", "must be a list", "square brackets"),
    case(
        "u_focal_relative = 0.002",
        "u_focal_relative = -0.002",
        "per_photo.u_focal_relative",
        "between 0 and",
        "1 sigma",
    ),
    case("u_focal_relative = 0.002\n", "", "per_photo.u_focal_relative", "is missing", "add"),
    case("[exif]", "[exf]", "exf", "unknown key", "did you mean `exif`"),
    case("make = \"Example\"", "make = 3", "exif.make", "must be a text, not 3", "quotation"),
    case("focal_length_mm = 5.7", "focal_length_mm = 0", "exif.focal_length_mm", "above zero, not 0 mm", "sign"),
];

#[test]
fn wrong_cameras() {
    let read = |text: &str, file: &str| Profile::from_toml(text, file).map(|_| ());
    check(CAMERA, "camera.toml", read, WRONG_CAMERAS);
}
