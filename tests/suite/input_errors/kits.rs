//! Kits and boards.

use baywitness::marker::{Board, KitFile};

use super::{Case, case, check};

const KIT: &str = r#"format = "kit/1"
name = "demo-bay"
family = "36h11"
u_layout_mm = 0.3
survey_due = 2027-05-01

[[carrier]]
name = "stand"
role = "target"

[[carrier.marker]]
id = 10
size_mm = 150.0
centre_mm = [40.0, 600.0, 180.0]
right = [0.0, 1.0, 0.0]
up = [0.0, 0.0, 1.0]

[[carrier.marker]]
id = 11
size_xy_mm = [150.1, 149.8]
centre_mm = [40.0, -600.0, 180.0]
right = [0.0, 1.0, 0.0]
up = [0.0, 0.0, 1.0]
u_centre_mm = [0.05, 0.05, 0.08]

[[carrier]]
name = "rear-left"
role = "rear_left_wheel"
u_seating_deg = [0.1, 0.1, 0.1]

[[carrier.marker]]
id = 20
size_mm = 120.0
centre_mm = [126.0, 139.0, 105.0]
right = [0.0, 1.0, 0.0]
up = [0.0, 0.0, 1.0]
"#;

const BOARD: &str = r#"format = "board/1"
kind = "markers"
family = "36h11"
columns = 7
rows = 5
first_id = 100
size_mm = 60.0
gap_mm = 18.0
"#;

/// The size of the first marker.
const FIRST: &str = "size_mm = 150.0";

const WRONG_RIGS: &[Case] = &[
    case("36h11", "25h9", "family", "no supported marker family", "36h11"),
    case("u_layout_mm = 0.3", "u_layout_mm = -0.3", "u_layout_mm", "between 0 and", "1 sigma"),
    case("u_layout_mm = 0.3", "u_layout_mm = \"0.3\"", "u_layout_mm", "must be a number", "without quotation"),
    case("u_layout_mm = 0.3", "u_layout_mm = 0,3", "u_layout_mm", "not valid TOML", "decimals with a point"),
    case("u_layout_mm = 0.3", "u_turn_deg = 12.0", "u_turn_deg", "between 0 and", "1 sigma"),
    case("2027-05-01", "2027-02-30", "survey_due", "not valid TOML", "correct the line"),
    case("2027-05-01", "\"2027-05-01\"", "survey_due", "must be a date", "without quotation"),
    case("2027-05-01", "2027-05-01T10:00:00Z", "survey_due", "must be a date", "or time"),
    case(
        "role = \"target\"",
        "role = \"rear_left_wheal\"",
        "carrier[0].role",
        "no role",
        "did you mean `rear_left_wheel`",
    ),
    case(
        "role = \"target\"",
        "role = \"target\"\non_centreline = true|",
        "carrier[0].on_centreline",
        "nose mark",
        "leave it out",
    ),
    case("\"rear-left\"", "\"stand\"", "carrier[1].name", "already the name of carrier[0], line 7", "own name"),
    case(
        "[[carrier]]\nname = \"rear-left\"\nrole",
        "[[carrier]]\nname = \"x\"\nrole = \"rear_left_wheel\"\nmarker = [{id = 9, size_mm = 9, centre_mm = [0, 0, 0], right = [0, 1, 0], up = [0, 0, 1]}]\n[[carrier]]\nname = \"rear-left\"\n|role",
        "carrier[2].role",
        "already the role of carrier[1], line 26",
        "one marker holder",
    ),
    case("id = 11", "id = 10", "carrier[0].marker[1].id", "already used by carrier[0].marker[0].id, line 12", "own id"),
    case("id = 20", "id = 10", "carrier[1].marker[0].id", "already used by carrier[0].marker[0].id, line 12", "own id"),
    case("id = 20", "id = 587", "carrier[1].marker[0].id", "from 0 to 586", "check"),
    case("id = 20", "id = -1", "carrier[1].marker[0].id", "from 0 to 586", "check"),
    case("id = 20", "id = 99999999999999999999", "carrier[1].marker[0].id", "whole number", "check"),
    case("id = 20", "id = 500", "carrier[1].marker[0].id", "job cards", "another id"),
    case(FIRST, "size_mm = -150.0", "carrier[0].marker[0].size_mm", "above zero, not -150.0 mm", "sign"),
    case(FIRST, "size_mm = 0", "carrier[0].marker[0].size_mm", "above zero, not 0 mm", "sign"),
    case(FIRST, "size_mm = nan", "carrier[0].marker[0].size_mm", "finite number, not nan", "plain number"),
    case(FIRST, "size_mm = inf", "carrier[0].marker[0].size_mm", "finite number, not inf", "plain number"),
    case(FIRST, "size_mm = 1e999", "carrier[0].marker[0].size_mm", "finite number", "plain number"),
    case(FIRST, "size_mm = 150000", "carrier[0].marker[0].size_mm", "at most 2000 mm", "unit"),
    case(FIRST, "siez_mm = 150", "carrier[0].marker[0].siez_mm", "unknown key", "did you mean `size_mm`"),
    case(
        FIRST,
        "size_mm = 150\nsize_xy_mm = [1, 2]|",
        "carrier[0].marker[0].size_xy_mm",
        "beside size_mm",
        "one of the two",
    ),
    case("size_mm = 150.0\n", "", "carrier[0].marker[0].size_mm", "is missing", "add `size_mm"),
    case("[40.0, 600.0, 180.0]", "[40.0, 600.0]", "carrier[0].marker[0].centre_mm", "3 values, not 2", "3 values"),
    case("[40.0, 600.0, 180.0]", "[40.0, 600.0, 1e6]", "carrier[0].marker[0].centre_mm[2]", "between", "unit"),
    case("[40.0, 600.0, 180.0]", "[40.0, 600.0, nan]", "carrier[0].marker[0].centre_mm[2]", "finite", "plain number"),
    case("[40.0, -600.0", "[40.0, 600.0", "carrier[0].marker[1].centre_mm", "also the centre of marker 10", "measure"),
    case(
        "right = [0.0, 1.0, 0.0]",
        "right = [0.0, 1.1, 0.0]",
        "carrier[0].marker[0].right",
        "length is 1.1000",
        "divide",
    ),
    case(
        "right = [0.0, 1.0, 0.0]",
        "right = [0.0, 0.0, 0.0]",
        "carrier[0].marker[0].right",
        "length is 0.0000",
        "divide",
    ),
    case(
        "up = [0.0, 0.0, 1.0]",
        "up = [0.0, 1.0, 0.0]",
        "carrier[0].marker[0].up",
        "angle between them is 0.00",
        "correct",
    ),
    case("[0.1, 0.1, 0.1]", "0.1", "carrier[1].u_seating_deg", "must be a list", "square brackets"),
];

#[test]
fn wrong_kits() {
    let read = |text: &str, file: &str| KitFile::from_toml(text, file).map(|_| ());
    check(KIT, "kit.toml", read, WRONG_RIGS);
}

const WRONG_BOARDS: &[Case] = &[
    case("\"markers\"", "\"marker\"", "kind", "no kind of board", "did you mean `markers`"),
    case("columns = 7", "columns = 0", "columns", "whole number from 1", "check"),
    case("first_id = 100", "first_id = 560", "first_id", "560 run to 594", "smaller id"),
    case("size_mm = 60.0", "size_mm = nan", "size_mm", "finite", "plain number"),
    case("gap_mm = 18.0", "gap_mm = -18.0", "gap_mm", "above zero", "sign"),
    case("gap_mm = 18.0", "square_mm = 18.0", "square_mm", "unknown key", ""),
];

#[test]
fn wrong_boards() {
    let read = |text: &str, file: &str| Board::from_toml(text, file).map(|_| ());
    check(BOARD, "board.toml", read, WRONG_BOARDS);
}
