//! Set-up sheets.

use baywitness::setup::Setup;

use super::{Case, case, check};

const SETUP: &str = r#"format = "setup/1"
name = "demo-front-radar"
title = "Front radar"
source = "invented"
reference_line = "thrust_line"
decision = { rule = "guarded", conformance_probability = 0.95 }

[[datum]]
name = "sensor"
carrier = "rear-left"
offset_mm = [0.0, 0.0, -35.0]
u_mm = 1.0

[[prerequisite]]
id = "tyres"
text = "Tyre pressures"

[[check]]
quantity = "distance"
from = "nose"
nominal = 1500.0
tolerance = 10.0

[[check]]
quantity = "yaw"
nominal = 0.0
lower = -0.5
upper = 0.5

[[check]]
quantity = "height_from_nose"
from = "sensor"
nominal = 0.0
tolerance = 8.0

[[waived]]
quantity = "height"
because = "follows the sensor"

[limits]
floor_slope_deg = 0.5
"#;

const WRONG_SETUPS: &[Case] = &[
    case("thrust_line", "thrust_lien", "reference_line", "no reference line", "did you mean `thrust_line`"),
    case("guarded", "garded", "decision.rule", "no decision rule", "did you mean `guarded`"),
    case("0.95 }", "0.501 }", "decision.conformance_probability", "at least 0.8", "0.95"),
    case("0.95 }", "0.799 }", "decision.conformance_probability", "at least 0.8", "0.95"),
    case("0.95 }", "1.0 }", "decision.conformance_probability", "below 1", "0.95"),
    case("0.95 }", "nan }", "decision.conformance_probability", "finite", "number"),
    case("source = \"invented\"\n", "", "source", "is missing", "add"),
    case("\"sensor\"", "\"nose\"", "datum[0].name", "every sheet has", "another name"),
    case("offset_mm = [0.0, 0.0, -35.0]", "offset_mm = [0.0]", "datum[0].offset_mm", "3 values, not 1", "3 values"),
    case("u_mm = 1.0", "u_mm = -1.0", "datum[0].u_mm", "between 0", "1 sigma"),
    case(
        "quantity = \"distance\"",
        "quantity = \"distanze\"",
        "check[0].quantity",
        "no quantity",
        "did you mean `distance`",
    ),
    case("from = \"nose\"", "from = \"nosee\"", "check[0].from", "no point to measure from", "did you mean `nose`"),
    case("from = \"nose\"", "from = \"sensr\"", "check[0].from", "no point to measure from", "did you mean `sensor`"),
    case("from = \"sensor\"", "from = \"rear_axle\"", "check[2].from", "not measured from an axle", "nose or a datum"),
    case(
        "quantity = \"yaw\"",
        "quantity = \"yaw\"\nfrom = \"nose\"|",
        "check[1].from",
        "not measured from a point",
        "leave from out",
    ),
    case("nominal = 1500.0\n", "", "check[0].nominal", "is missing", "add"),
    case("nominal = 1500.0", "nominal = 1500000.0", "check[0].nominal", "between", "unit"),
    case("tolerance = 10.0", "tolerance = 0.0", "check[0].tolerance", "above zero", "sign"),
    case("tolerance = 10.0", "tolerance = -10.0", "check[0].tolerance", "above zero, not -10.0 mm", "sign"),
    case(
        "tolerance = 10.0",
        "tolerance = 10.0\nlower = 1400|",
        "check[0].lower",
        "beside tolerance",
        "lower and upper",
    ),
    case(
        "tolerance = 10.0",
        "tolerance = 10.0\nupper = 1600|",
        "check[0].upper",
        "beside tolerance",
        "lower and upper",
    ),
    case("lower = -0.5", "lower = 0.6", "check[1].lower", "not below upper", "not deviations"),
    case(
        "nominal = 0.0\nlower",
        "nominal = 0.7|\nlower",
        "check[1].nominal",
        "outside its own limits",
        "not deviations",
    ),
    case("quantity = \"yaw\"", "quantity = \"yaw\"\nunit = \"in\"|", "check[1].unit", "stated in deg", "only lengths"),
    case("quantity = \"yaw\"", "quantity = \"yaw\"\ntarget = \"\"|", "check[1].target", "empty", "fill"),
    case(
        "quantity = \"yaw\"",
        "quantity = \"thrust_angle\"\ntarget = \"stand\"|",
        "check[1].target",
        "not concern a target",
        "leave target out",
    ),
    case(
        "quantity = \"yaw\"",
        "quantity = \"target_tilt_gravity\"",
        "check[1].quantity",
        "cannot be seen",
        "evidence = \"reading\"",
    ),
    case(
        "quantity = \"yaw\"",
        "quantity = \"yaw\"\nevidence = \"photo\"|",
        "check[1].evidence",
        "no kind of evidence",
        "did you mean `photos`",
    ),
    case(
        "quantity = \"yaw\"",
        "quantity = \"yaw\"\nstep = \"level\"|",
        "check[1].step",
        "has no steps",
        "leave step out",
    ),
    case(
        "reference_line = \"thrust_line\"",
        "reference_line = \"thrust_line\"\nsteps = [\"level\", \"level\"]|",
        "steps[1]",
        "named twice",
        "once",
    ),
    case(
        "quantity = \"height\"",
        "quantity = \"yaw\"",
        "waived[0].quantity",
        "waived here but checked by check[1]",
        "keep",
    ),
    case(
        "quantity = \"height\"",
        "quantity = \"heigth\"",
        "waived[0].quantity",
        "no quantity",
        "did you mean `height`",
    ),
    case("because = \"follows the sensor\"\n", "", "waived[0].because", "is missing", "add"),
    case(
        "floor_slope_deg = 0.5",
        "floor_slop_deg = 0.5",
        "limits.floor_slop_deg",
        "unknown key",
        "did you mean `floor_slope_deg`",
    ),
    case("floor_slope_deg = 0.5", "floor_slope_deg = -0.5", "limits.floor_slope_deg", "above zero", "sign"),
    case(
        "[[waived]]",
        "[[check]]\nquantity = \"yaw\"|\nnominal = 0\ntolerance = 1\n[[waived]]",
        "check[3].quantity",
        "already checked by check[1]",
        "one of the two",
    ),
    case(
        "[[waived]]",
        "[[check]]\nquantity = \"roll\"\nnominal = 0|\n[[waived]]",
        "check[3]",
        "has no limit",
        "tolerance",
    ),
    case(
        "[[waived]]",
        "[[prerequisite]]\nid = \"tyres\"|\ntext = \"again\"\n[[waived]]",
        "prerequisite[1].id",
        "already the id",
        "another id",
    ),
];

#[test]
fn wrong_setups() {
    let read = |text: &str, file: &str| Setup::from_toml(text, file).map(|_| ());
    check(SETUP, "setup.toml", read, WRONG_SETUPS);
}
