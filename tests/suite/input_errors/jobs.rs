//! Job files.

use baywitness::folder::JobFile;

use super::{Case, case, check};

const JOB: &str = r#"format = "job/1"
job = "D-0001"
setup = "setup.toml"
kit = "kit.toml"
photos = ["photos/a.jpg", "photos/b.jpg"]
attempt = 1
taken = 2026-11-25T10:30:00+01:00
keep_until = 2036-11-25

[vehicle]
description = "demo hatchback"
vin = "11111111111111111"
wheelbase_mm = 2700.0
u_wheelbase_mm = 3.0

[prerequisites]
tyres = true

[[reading]]
quantity = "distance"
from = "nose"
value = 1300.0
u = 1.0
instrument = "laser"
use = false

[[attachment]]
file = "before.pdf"
kind = "scan-before"

[calibration]
result = "successful"
at = 2026-11-25T10:41:00+01:00
"#;

const WRONG_JOBS: &[Case] = &[
    case("kit = \"kit.toml\"\n", "", "kit", "is missing", "add"),
    case("kit = \"kit.toml\"", "kti = \"kit.toml\"", "kti", "unknown key", "did you mean `kit`"),
    case("kit = \"kit.toml\"", "kit = 7", "kit", "must be a text", "quotation"),
    case("attempt = 1", "attempt = 0", "attempt", "whole number from 1", "check"),
    case("attempt = 1", "card = [5]", "card[0]", "whole number from 500 to 586", "check"),
    case("attempt = 1", "card = []", "card", "names no id", "leave the key out"),
    case("attempt = 1", "card = [512, 512]", "card[1]", "named twice", "again"),
    case(
        "photos = [\"photos/a.jpg\", \"photos/b.jpg\"]\nattempt = 1\n",
        "|photos = [\"photos/a.jpg\"]\n[[photo]]\nfile = \"a.jpg\"\n",
        "photos",
        "stands beside [[photo]]",
        "one of the two",
    ),
    case("[\"photos/a.jpg\", \"photos/b.jpg\"]", "[]", "photos", "names no photo", "leave the key out"),
    case(
        "photos = [\"photos/a.jpg\", \"photos/b.jpg\"]\nattempt = 1\ntaken = 2026-11-25T10:30:00+01:00\nkeep_until = 2036-11-25\n",
        "[[photo]]\nfile = \"a.jpg\"\n|after_move = -1\n",
        "photo[0].after_move",
        "whole number from 0 to 100",
        "check",
    ),
    case(
        "[prerequisites]",
        "[[move]]\n|turned = { crank = \"twice\" }\n\n[prerequisites]",
        "move[0].turned.crank",
        "must be a number",
        "",
    ),
    case("photos/b.jpg", "photos/a.jpg", "photos[1]", "named twice", "once"),
    case("T10:30:00+01:00", "T10:30:00", "taken", "with its offset from UTC", "+01:00"),
    case("2026-11-25T10:30:00+01:00", "2026-11-25", "taken", "with its offset from UTC", "+01:00"),
    case(
        "2026-11-25T10:30:00+01:00",
        "\"2026-11-25T10:30:00+01:00\"",
        "taken",
        "must be a date and time",
        "without quotation",
    ),
    case("T10:41:00+01:00", "T10:41:00", "calibration.at", "with its offset from UTC", "+01:00"),
    case("keep_until = 2036-11-25", "keep_until = 10", "keep_until", "must be a date", "2026-11-25"),
    case("11111111111111111", "1111111111111111", "vehicle.vin", "16 characters instead of 17", "copy"),
    case("11111111111111111", "1111111111111111O", "vehicle.vin", "'O'", "copy"),
    case("wheelbase_mm = 2700.0", "wheelbase_mm = -2700.0", "vehicle.wheelbase_mm", "above zero", "sign"),
    case("u_wheelbase_mm = 3.0", "u_wheelbase_mm = 0", "vehicle.u_wheelbase_mm", "above zero", ""),
    case("u_wheelbase_mm = 3.0", "rear_track_mm = 0", "vehicle.rear_track_mm", "above zero", ""),
    case("tyres = true", "tyres = 1", "prerequisites.tyres", "true, false or a text", "quotation"),
    case(
        "quantity = \"distance\"",
        "quantity = \"distanc\"",
        "reading[0].quantity",
        "no quantity",
        "did you mean `distance`",
    ),
    case("from = \"nose\"\n", "", "reading[0].from", "is missing", "add"),
    case("value = 1300.0", "value = nan", "reading[0].value", "finite", "plain number"),
    case("u = 1.0", "u = -1.0", "reading[0].u", "above zero", ""),
    case("u = 1.0\ninstrument = \"laser\"\nuse = false", "use = true", "reading[0].u", "is missing", "add `u"),
    case(
        "u = 1.0\ninstrument = \"laser\"",
        "instrument = \"laesr\"|",
        "reading[0].instrument",
        "no usual uncertainty",
        "did you mean `laser`",
    ),
    case(
        "u = 1.0\ninstrument = \"laser\"",
        "instrument = \"level\"|",
        "reading[0].instrument",
        "in deg, but this quantity is in mm",
        "add u",
    ),
    case("u = 1.0\ninstrument = \"laser\"\n", "", "reading[0]", "neither u nor an instrument", "add u"),
    case(
        "quantity = \"distance\"\nfrom = \"nose\"\nvalue = 1300.0\nu = 1.0\ninstrument = \"laser\"\nuse = false",
        "quantity = \"target_tilt_gravity\"\nvalue = 1.0\nu = 0.1\nuse = true|",
        "reading[0].use",
        "cannot enter",
        "leave use out",
    ),
    case("scan-before", "scan-befor", "attachment[0].kind", "no kind of attachment", "did you mean `scan-before`"),
    case("\"successful\"", "\"succesful\"", "calibration.result", "no result", "did you mean `successful`"),
];

#[test]
fn wrong_jobs() {
    let read = |text: &str, file: &str| JobFile::from_toml(text, file).map(|_| ());
    check(JOB, "job.toml", read, WRONG_JOBS);
}
