//! Reading job files (`job/1`).

use std::collections::BTreeMap;

use crate::input::{Document, Error, Table, Value, did_you_mean, turns_writing};
use crate::marker::Role;
use crate::quantity::{Quantity, Unit};
use crate::setup::{read_from, read_quantity};
use crate::words::{Language, phrase};

use super::job_file::{Attachment, Calibration, JobFile, MoveEntry, Phase, PhotoEntry, Reading, Vehicle};
use super::vin;

pub(super) const FORMAT: &str = "job/1";

/// Instruments with 1 sigma where a reading states none (common practice, no source).
pub const INSTRUMENTS: [(&str, f64, Unit); 4] = [
    ("laser", 1.5, Unit::Millimetre),
    ("tape", 3.0, Unit::Millimetre),
    ("level", 0.15, Unit::Degree),
    ("alignment", 0.04, Unit::Degree),
];

const ATTACHMENT_KINDS: [&str; 6] = ["scan-before", "scan-after", "alignment", "procedure", "overview-photo", "other"];
const CALIBRATION_RESULTS: [&str; 3] = ["successful", "failed", "not-run"];

/// A job has two to a few dozen photos.
pub(super) const MOST_PHOTOS: usize = 1000;

/// A stand is moved four or five times; somebody who has moved it a hundred times begins anew.
pub const MOST_MOVES: u32 = 100;

/// Nobody turns a screw farther in one go.
const MOST_TURNS: f64 = 200.0;

/// Marker ids that are kept free for job cards, first and last.
pub const CARD_IDS: [u32; 2] = [500, 586];

/// 1 sigma of a typed vehicle size where none is stated, mm.
const DEFAULT_U_VEHICLE_MM: f64 = 3.0;

impl JobFile {
    /// Reads a job file's text; `file` is its name for messages.
    ///
    /// # Errors
    /// Wrong in any way: names file, line, key and remedy.
    pub fn from_toml(text: &str, file: &str) -> Result<Self, Error> {
        JobFile::from_document(&JobFile::document(text, file)?)
    }

    /// The document of a job file, to be kept where mistakes that show only
    /// beside other files must name their line.
    ///
    /// # Errors
    /// Not TOML, or a file of another format.
    pub fn document<'a>(text: &'a str, file: &str) -> Result<Document<'a>, Error> {
        Document::parse(text, file, FORMAT)
    }

    /// Reads a parsed job file.
    ///
    /// # Errors
    /// As [`JobFile::from_toml`].
    pub fn from_document(document: &Document) -> Result<Self, Error> {
        let root = document.root().allow(&[
            "format",
            "job",
            "setup",
            "kit",
            "camera",
            "stand",
            "photos",
            "photo",
            "move",
            "series",
            "attempt",
            "card",
            "technician",
            "bay",
            "taken",
            "keep_until",
            "language",
            "rendered",
            "vehicle",
            "prerequisites",
            "reading",
            "attachment",
            "calibration",
        ])?;
        let photo_entries = read_photo_entries(&root)?;
        Ok(JobFile {
            job: root.need("job")?.name()?,
            setup: root.need("setup")?.name()?,
            kit: root.need("kit")?.name()?,
            camera: root.maybe("camera", Value::name)?,
            stand: root.maybe("stand", Value::name)?,
            photos: root.maybe("photos", read_photos)?,
            photo_entries,
            moves: root.tables("move")?.iter().map(read_move).collect::<Result<_, _>>()?,
            series: root.maybe("series", Value::name)?,
            attempt: root.maybe("attempt", |v| v.whole(1, 1_000_000))?,
            card: root.maybe("card", read_card)?.unwrap_or_default(),
            technician: root.maybe("technician", Value::name)?,
            bay: root.maybe("bay", Value::name)?,
            taken: root.maybe("taken", Value::time)?,
            keep_until: root.maybe("keep_until", Value::date)?,
            language: root.maybe("language", |v| v.choice("language", &Language::ALL.map(|l| (l.tag(), l))))?,
            rendered: root.maybe("rendered", Value::flag)?.unwrap_or(false),
            vehicle: root.table("vehicle")?.map_or(Ok(Vehicle::default()), read_vehicle)?,
            prerequisites: root.table("prerequisites")?.map_or(Ok(BTreeMap::new()), read_prerequisites)?,
            readings: root.tables("reading")?.iter().map(read_reading).collect::<Result<_, _>>()?,
            attachments: read_attachments(&root)?,
            calibration: root.table("calibration")?.map(read_calibration).transpose()?,
        })
    }
}

impl Default for Vehicle {
    /// Nothing is known.
    fn default() -> Self {
        Vehicle {
            description: None,
            vin: None,
            wheelbase_mm: None,
            nose_from_rear_axle_mm: None,
            floor_below_hub_mm: None,
            rear_track_mm: None,
            front_track_mm: None,
            u_wheelbase_mm: DEFAULT_U_VEHICLE_MM,
            u_nose_from_rear_axle_mm: DEFAULT_U_VEHICLE_MM,
            u_floor_below_hub_mm: DEFAULT_U_VEHICLE_MM,
            u_rear_track_mm: DEFAULT_U_VEHICLE_MM,
            u_front_track_mm: DEFAULT_U_VEHICLE_MM,
        }
    }
}

fn read_photos(value: &Value) -> Result<Vec<String>, Error> {
    let items = value.items()?;
    if items.is_empty() {
        return Err(value.error(phrase!("doors-photos-none"), phrase!("doors-photos-none-remedy")));
    }
    if items.len() > MOST_PHOTOS {
        return Err(value.error(
            phrase!("doors-photos-many", count = items.len(), most = MOST_PHOTOS),
            phrase!("doors-split-the-job"),
        ));
    }
    let mut photos: Vec<String> = Vec::new();
    for item in items {
        let name = item.text()?;
        if photos.contains(&name) {
            return Err(item.error(phrase!("doors-named-twice", name = name), phrase!("doors-photo-once")));
        }
        photos.push(name);
    }
    Ok(photos)
}

/// `[[photo]]`, which stands instead of `photos`.
fn read_photo_entries(root: &Table) -> Result<Option<Vec<PhotoEntry>>, Error> {
    let tables = root.tables("photo")?;
    if tables.is_empty() {
        return Ok(None);
    }
    if let Some(photos) = root.get("photos") {
        return Err(photos.error(phrase!("doors-photos-twice"), phrase!("doors-photos-twice-remedy")));
    }
    if tables.len() > MOST_PHOTOS {
        return Err(root.error(
            phrase!("doors-photos-many", count = tables.len(), most = MOST_PHOTOS),
            phrase!("doors-split-the-job"),
        ));
    }
    let mut entries: Vec<PhotoEntry> = Vec::new();
    for table in tables {
        let table = table.allow(&["file", "step", "phase", "after_move"])?;
        let value = table.need("file")?;
        let file = value.text()?;
        if let Some(k) = entries.iter().position(|e| e.file == file) {
            return Err(value.error(
                phrase!("doors-already", name = file, key = format!("photo[{k}]")),
                phrase!("doors-photo-once"),
            ));
        }
        let phase = table.maybe("phase", |v| v.choice("phase", &Phase::ALL.map(|p| (p.name(), p))))?;
        let after_move = table.maybe("after_move", |v| v.whole(0, MOST_MOVES))?.unwrap_or(0);
        entries.push(PhotoEntry { file, step: table.maybe("step", Value::name)?, phase, after_move });
    }
    Ok(Some(entries))
}

/// `[[move]]`: what was turned in the first move, the second, ...
fn read_move(table: &Table) -> Result<MoveEntry, Error> {
    let table = table.clone().allow(&["turned"])?;
    let turns = table
        .table("turned")?
        .map_or_else(Vec::new, |t| t.entries().into_iter().map(|(k, v)| (k.to_owned(), v)).collect());
    let one = |(screw, value): (String, Value)| Ok((screw, value.within(-MOST_TURNS, MOST_TURNS, "turns")?));
    Ok(MoveEntry { turned: turns.into_iter().map(one).collect::<Result<_, Error>>()? })
}

/// The one-time code: ids that are kept free for job cards, each once.
fn read_card(value: &Value) -> Result<Vec<u32>, Error> {
    let mut card: Vec<u32> = Vec::new();
    for item in value.items()? {
        let id = item.whole(CARD_IDS[0], CARD_IDS[1])?;
        if card.contains(&id) {
            return Err(item.error(phrase!("doors-card-twice", id = id), phrase!("doors-card-twice-remedy")));
        }
        card.push(id);
    }
    if card.is_empty() {
        return Err(value.error(phrase!("doors-card-empty"), phrase!("doors-card-empty-remedy")));
    }
    Ok(card)
}

fn read_vehicle(table: Table) -> Result<Vehicle, Error> {
    let table = table.allow(&[
        "description",
        "vin",
        "wheelbase_mm",
        "nose_from_rear_axle_mm",
        "floor_below_hub_mm",
        "rear_track_mm",
        "front_track_mm",
        "u_wheelbase_mm",
        "u_nose_from_rear_axle_mm",
        "u_floor_below_hub_mm",
        "u_rear_track_mm",
        "u_front_track_mm",
    ])?;
    let size = |key: &str| table.maybe(key, |v| v.positive(30_000.0, "mm"));
    let u = |key: &str| Ok(table.maybe(key, |v| v.positive(1000.0, "mm"))?.unwrap_or(DEFAULT_U_VEHICLE_MM));
    Ok(Vehicle {
        description: table.maybe("description", Value::text)?,
        vin: table.maybe("vin", read_vin)?,
        wheelbase_mm: size("wheelbase_mm")?,
        nose_from_rear_axle_mm: size("nose_from_rear_axle_mm")?,
        floor_below_hub_mm: size("floor_below_hub_mm")?,
        rear_track_mm: size("rear_track_mm")?,
        front_track_mm: size("front_track_mm")?,
        u_wheelbase_mm: u("u_wheelbase_mm")?,
        u_nose_from_rear_axle_mm: u("u_nose_from_rear_axle_mm")?,
        u_floor_below_hub_mm: u("u_floor_below_hub_mm")?,
        u_rear_track_mm: u("u_rear_track_mm")?,
        u_front_track_mm: u("u_front_track_mm")?,
    })
}

fn read_vin(value: &Value) -> Result<String, Error> {
    let text = value.text()?;
    match vin::form_problem(&text) {
        None => Ok(text),
        Some(problem) => Err(value.error(problem, phrase!("doors-vin-remedy"))),
    }
}

fn read_prerequisites(table: Table) -> Result<BTreeMap<String, serde_json::Value>, Error> {
    let read = |(id, value): (&str, Value)| {
        if id.trim().is_empty() || id.chars().any(|c| c.is_control() || turns_writing(c)) || id.len() > 120 {
            return Err(value.error(phrase!("doors-prerequisite-key"), phrase!("doors-prerequisite-key-remedy")));
        }
        Ok((id.to_owned(), value.flag_or_text()?))
    };
    table.entries().into_iter().map(read).collect()
}

fn read_reading(table: &Table) -> Result<Reading, Error> {
    let table = table.clone().allow(&["quantity", "from", "target", "step", "value", "u", "instrument", "use"])?;
    let quantity_value = table.need("quantity")?;
    let quantity = read_quantity(&quantity_value)?;
    let use_in_adjustment = table.maybe("use", Value::flag)?.unwrap_or(false);
    if use_in_adjustment && (quantity.is_reading_only() || Role::of_arch_height(quantity).is_some()) {
        return Err(table.need("use")?.error(
            phrase!("doors-reading-unused", quantity = quantity.name()),
            phrase!("doors-leave-out", key = "use"),
        ));
    }
    let instrument = table.maybe("instrument", Value::name)?;
    let (most, unit) = match quantity.unit() {
        Unit::Millimetre => (50_000.0, "mm"),
        Unit::Degree => (180.0, "deg"),
    };
    let u = match table.get("u") {
        Some(value) => value.positive(most, unit)?,
        None if use_in_adjustment => table.need("u")?.number()?,
        None => default_u(&table, instrument.as_deref(), quantity.unit())?,
    };
    Ok(Reading {
        quantity,
        from: read_from(&table, quantity)?,
        target: table.maybe("target", |v| read_of_stand(v, quantity, "target"))?,
        step: table.maybe("step", |v| read_of_stand(v, quantity, "step"))?,
        value: table.need("value")?.within(-most, most, unit)?,
        u,
        instrument,
        use_in_adjustment,
    })
}

/// A target's or step's name, which only a quantity of the stand has.
fn read_of_stand(value: &Value, quantity: Quantity, key: &str) -> Result<String, Error> {
    if quantity.is_of_target() {
        return value.name();
    }
    let problem = match key {
        "target" => phrase!("doors-no-target-here", quantity = quantity.name()),
        _ => phrase!("doors-no-step-here", quantity = quantity.name()),
    };
    Err(value.error(problem, phrase!("doors-leave-out", key = key)))
}

/// The instrument's usual 1 sigma, where the reading states none.
fn default_u(table: &Table, instrument: Option<&str>, unit: Unit) -> Result<f64, Error> {
    let Some(name) = instrument else {
        return Err(table.error(phrase!("doors-reading-no-u"), phrase!("doors-reading-no-u-remedy")));
    };
    let value = table.need("instrument")?;
    let Some((_, u, of)) = INSTRUMENTS.iter().find(|(known, _, _)| *known == name) else {
        let known = did_you_mean(name, INSTRUMENTS.iter().map(|(known, _, _)| *known));
        return Err(value.error(
            phrase!("doors-instrument-unknown", instrument = name),
            phrase!("doors-instrument-unknown-remedy", known = known),
        ));
    };
    if *of != unit {
        return Err(value.error(
            phrase!("doors-instrument-unit", instrument = name, own = of.symbol(), unit = unit.symbol()),
            phrase!("doors-instrument-unit-remedy"),
        ));
    }
    Ok(*u)
}

fn read_attachments(root: &Table) -> Result<Vec<Attachment>, Error> {
    let mut attachments: Vec<Attachment> = Vec::new();
    for table in root.tables("attachment")? {
        let table = table.allow(&["file", "kind"])?;
        let value = table.need("file")?;
        let file = value.text()?;
        if let Some(k) = attachments.iter().position(|a| a.file == file) {
            return Err(value.error(
                phrase!("doors-already", name = file, key = format!("attachment[{k}]")),
                phrase!("doors-file-once"),
            ));
        }
        let kind = table.need("kind")?.choice("attachment", &ATTACHMENT_KINDS.map(|k| (k, k)))?;
        attachments.push(Attachment { file, kind: kind.to_owned() });
    }
    Ok(attachments)
}

fn read_calibration(table: Table) -> Result<Calibration, Error> {
    let table = table.allow(&["result", "at", "reported_azimuth_deg", "reported_elevation_deg"])?;
    let angle = |key: &str| table.maybe(key, |v| v.within(-180.0, 180.0, "deg"));
    let result = table.need("result")?.choice("calibration-result", &CALIBRATION_RESULTS.map(|r| (r, r)))?;
    Ok(Calibration {
        result: result.to_owned(),
        at: table.maybe("at", Value::time)?,
        reported_azimuth_deg: angle("reported_azimuth_deg")?,
        reported_elevation_deg: angle("reported_elevation_deg")?,
    })
}
