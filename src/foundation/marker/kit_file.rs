//! Reading and writing kits (`kit/1`).

use std::collections::BTreeMap;
use std::path::Path;

use nalgebra::Vector3;

use crate::input::{Document, Error, SourceFile, Table, Value, Writer};

use super::kit::{Carrier, Kit, Marker, Role};
use super::layout_file::read_layout;
use crate::words::{Figure, phrase};

/// The largest standard uncertainty of a marker's centre that a kit file may state, mm.
pub const MOST_U_CENTRE_MM: f64 = 100.0;

/// 1 sigma of a sheet's turn about each axis where a kit file states none, degrees. In its plane: marks at
/// both ends of a sheet of 200 mm, laid on their lines by eye so that they differ by 0.1 mm. Out of it: a
/// plate or a floor that is flat to 0.1 mm over as much (common practice, no source).
pub const USUAL_U_TURN_DEG: f64 = 0.03;
/// 1 sigma of the prints' width over their height where a kit file states none: paper gives way by 0.1 to 0.3 % across its
/// grain, a printer's feed by as much, and a ruler reads 150 mm to 0.2 mm (common practice, no source).
const USUAL_U_ASPECT: f64 = 0.002;
/// The largest that a kit file may state, degrees.
pub const MOST_U_TURN_DEG: f64 = 10.0;

/// The format of kit files.
pub const KIT_FORMAT: &str = "kit/1";
/// The only family that is supported.
pub(super) const FAMILY: &str = "36h11";
/// Ids of the family: 587 codes.
pub(super) const LAST_ID: u32 = 586;
/// From here on ids belong to job cards.
const FIRST_CARD_ID: u32 = 500;
/// No bay is larger, mm.
const FARTHEST_MM: f64 = 20_000.0;
const LARGEST_MARKER_MM: f64 = 2_000.0;

/// A kit file's own content, before its layout (another file) is read.
#[derive(Debug, Clone, PartialEq)]
pub struct KitFile {
    /// The kit, without layout.
    pub kit: Kit,
    /// The layout file that it names, relative to the kit file's folder.
    pub layout: Option<String>,
}

impl Kit {
    /// Reads a kit file from disk and the layout file that it names.
    ///
    /// # Errors
    /// Unreadable, or wrong in any way: names file, line, key and remedy.
    pub fn read(path: &Path) -> Result<Self, Error> {
        let file = SourceFile::read(path)?;
        let KitFile { mut kit, layout } = KitFile::from_toml(file.text()?, file.name())?;
        if let Some(layout) = layout {
            let layout_path = path.parent().unwrap_or(Path::new("")).join(layout);
            kit.layout = Some(read_layout(
                &SourceFile::read_up_to(&layout_path, super::MAX_LAYOUT_BYTES)?,
                &kit,
                &file.sha256(),
            )?);
        }
        Ok(kit)
    }

    /// The kit file's text; `layout` is the layout file that it shall name.
    pub fn to_toml(&self, layout: Option<&str>) -> String {
        let mut w = Writer::new(KIT_FORMAT);
        w.key("name", self.name.as_str());
        w.key("family", FAMILY);
        w.key("u_layout_mm", self.u_layout_mm);
        w.key("u_turn_deg", self.u_turn_deg);
        w.key("u_scale_relative", self.u_scale_relative);
        w.key("u_aspect_relative", self.u_aspect_relative);
        w.maybe("layout", layout);
        w.maybe("serial", self.serial.as_deref());
        w.maybe("survey_due", self.survey_due.map(Writer::date));
        for carrier in &self.carriers {
            write_carrier(&mut w, carrier);
        }
        w.finish()
    }
}

impl KitFile {
    /// Reads a kit file's text; `file` is its name for messages.
    ///
    /// # Errors
    /// Wrong in any way: names file, line, key and remedy.
    pub fn from_toml(text: &str, file: &str) -> Result<Self, Error> {
        let document = Document::parse(text, file, KIT_FORMAT)?;
        let root = document.root().allow(&[
            "format",
            "name",
            "family",
            "u_layout_mm",
            "u_turn_deg",
            "u_scale_relative",
            "u_aspect_relative",
            "layout",
            "serial",
            "survey_due",
            "carrier",
        ])?;
        root.need("family")?.choice("family", &[(FAMILY, ())])?;
        let tables = root.tables("carrier")?;
        if tables.is_empty() {
            root.need("carrier")?;
            return Err(root.error(phrase!("doors-kit-no-carrier"), phrase!("doors-kit-no-carrier-remedy")));
        }
        let carriers = tables.iter().map(read_carrier).collect::<Result<Vec<_>, Error>>()?;
        check_ids(&tables, &carriers)?;
        check_names_and_roles(&tables, &carriers)?;
        let kit = Kit {
            name: root.need("name")?.name()?,
            u_layout_mm: root.maybe("u_layout_mm", |v| v.uncertainty(100.0, "mm"))?.unwrap_or(0.3),
            u_turn_deg: root
                .maybe("u_turn_deg", |v| v.uncertainty(MOST_U_TURN_DEG, "deg"))?
                .unwrap_or(USUAL_U_TURN_DEG),
            u_scale_relative: root.maybe("u_scale_relative", |v| v.uncertainty(0.1, ""))?.unwrap_or(0.0005),
            u_aspect_relative: root.maybe("u_aspect_relative", |v| v.uncertainty(0.1, ""))?.unwrap_or(USUAL_U_ASPECT),
            serial: root.maybe("serial", Value::name)?,
            survey_due: root.maybe("survey_due", Value::date)?,
            carriers,
            layout: None,
        };
        Ok(KitFile { kit, layout: root.maybe("layout", Value::name)? })
    }
}

fn read_carrier(table: &Table) -> Result<Carrier, Error> {
    let table = table.clone().allow(&["name", "role", "u_seating_mm", "u_seating_deg", "on_centreline", "marker"])?;
    let role = table.need("role")?.choice("role", &Role::ALL.map(|r| (r.name(), r)))?;
    let on_centreline = table.maybe("on_centreline", Value::flag)?.unwrap_or(false);
    if on_centreline && role != Role::Nose {
        return Err(table
            .need("on_centreline")?
            .error(phrase!("doors-on-centreline", role = role.name()), phrase!("doors-on-centreline-remedy")));
    }
    let tables = table.tables("marker")?;
    if tables.is_empty() {
        return Err(table.error(phrase!("doors-carrier-no-marker"), phrase!("doors-carrier-no-marker-remedy")));
    }
    // Common practice, no source: a clamp's repeatability; a mark held to a rolled edge by hand.
    let (seating_mm, seating_deg) = match role {
        wheel if wheel.is_wheel() => (0.5, 0.1),
        arch if arch.is_arch() => (1.0, 0.0),
        _ => (0.0, 0.0),
    };
    Ok(Carrier {
        name: table.need("name")?.name()?,
        role,
        u_seating_mm: table.maybe("u_seating_mm", |v| v.uncertainty(1000.0, "mm"))?.unwrap_or(seating_mm),
        u_seating_deg: table
            .maybe("u_seating_deg", |v| v.array(|u| u.uncertainty(45.0, "deg")))?
            .unwrap_or([seating_deg; 3]),
        on_centreline,
        markers: tables.iter().map(|t| read_marker(t, role)).collect::<Result<_, Error>>()?,
    })
}

fn read_marker(table: &Table, role: Role) -> Result<Marker, Error> {
    let table = table.clone().allow(&[
        "id",
        "size_mm",
        "size_xy_mm",
        "centre_mm",
        "right",
        "up",
        "u_centre_mm",
        "u_turn_deg",
        "u_size_mm",
    ])?;
    let id = table.need("id")?;
    let (right, up) = read_axes(&table)?;
    Ok(Marker {
        id: read_id(&id, role)?,
        size_mm: read_size(&table)?,
        centre_mm: Vector3::from(table.need("centre_mm")?.array(|v| v.within(-FARTHEST_MM, FARTHEST_MM, "mm"))?),
        right,
        up,
        u_centre_mm: table.maybe("u_centre_mm", |v| v.array(|u| u.uncertainty(MOST_U_CENTRE_MM, "mm")))?,
        u_turn_deg: table.maybe("u_turn_deg", |v| v.array(|u| u.uncertainty(MOST_U_TURN_DEG, "deg")))?,
        u_size_mm: table.maybe("u_size_mm", |v| v.uncertainty(100.0, "mm"))?,
    })
}

fn read_id(value: &Value, role: Role) -> Result<u32, Error> {
    let id = value.whole(0, LAST_ID)?;
    if (id >= FIRST_CARD_ID) == (role == Role::Card) {
        return Ok(id);
    }
    Err(value.error(
        phrase!("doors-card-ids", id = id, role = role.name(), first = FIRST_CARD_ID, last = LAST_ID),
        phrase!("doors-card-ids-remedy"),
    ))
}

fn read_size(table: &Table) -> Result<[f64; 2], Error> {
    match (table.get("size_mm"), table.get("size_xy_mm")) {
        (Some(_), Some(both)) => Err(both.error(phrase!("doors-size-twice"), phrase!("doors-size-twice-remedy"))),
        (None, Some(both)) => both.array(|v| v.positive(LARGEST_MARKER_MM, "mm")),
        _ => table.need("size_mm")?.positive(LARGEST_MARKER_MM, "mm").map(|s| [s, s]),
    }
}

/// The unit vectors `right` and `up`. What a file rounded away (up to 1e-3) is
/// put right; more is a mistake in the file.
fn read_axes(table: &Table) -> Result<(Vector3<f64>, Vector3<f64>), Error> {
    const TOLERANCE: f64 = 1e-3;
    let unit = |key: &str| -> Result<Vector3<f64>, Error> {
        let value = table.need(key)?;
        let v = Vector3::from(value.array(|c| c.within(-1e6, 1e6, ""))?);
        if (v.norm() - 1.0).abs() > TOLERANCE {
            return Err(value.error(
                phrase!("doors-unit-vector", length = Figure::fixed(v.norm(), 4)),
                phrase!("doors-unit-vector-remedy"),
            ));
        }
        Ok(v.normalize())
    };
    let (right, up) = (unit("right")?, unit("up")?);
    if right.dot(&up).abs() > TOLERANCE {
        let angle = right.dot(&up).clamp(-1.0, 1.0).acos().to_degrees();
        return Err(table.need("up")?.error(
            phrase!("doors-axes-square", angle = Figure::fixed(angle, 2)),
            phrase!("doors-axes-square-remedy"),
        ));
    }
    Ok((right, (up - right * right.dot(&up)).normalize()))
}

/// Names are unique; a wheel has one plate and the vehicle one nose.
fn check_names_and_roles(tables: &[Table], carriers: &[Carrier]) -> Result<(), Error> {
    for (i, carrier) in carriers.iter().enumerate() {
        let earlier = |same: &dyn Fn(&Carrier) -> bool| carriers[..i].iter().position(same);
        if let Some(k) = earlier(&|c| c.name == carrier.name) {
            return Err(tables[i].need("name")?.error(
                phrase!("doors-carrier-name-taken", name = &carrier.name, carrier = k, line = tables[k].place().line),
                phrase!("doors-carrier-name-taken-remedy"),
            ));
        }
        let single = carrier.role.is_on_vehicle();
        if let Some(k) = earlier(&|c| single && c.role == carrier.role) {
            return Err(tables[i].need("role")?.error(
                phrase!("doors-role-taken", role = carrier.role.name(), carrier = k, line = tables[k].place().line),
                phrase!("doors-role-taken-remedy"),
            ));
        }
    }
    Ok(())
}

/// Ids are unique in the kit, and no two markers lie in one place.
fn check_ids(tables: &[Table], carriers: &[Carrier]) -> Result<(), Error> {
    let mut seen: BTreeMap<u32, (String, usize)> = BTreeMap::new();
    for (table, carrier) in tables.iter().zip(carriers) {
        for (i, (place, marker)) in table.tables("marker")?.iter().zip(&carrier.markers).enumerate() {
            let id = place.need("id")?;
            if let Some((path, line)) = seen.insert(marker.id, (id.path().to_owned(), id.place().line)) {
                return Err(id.error(
                    phrase!("doors-marker-id-taken", id = marker.id, path = path, line = line),
                    phrase!("doors-marker-id-taken-remedy"),
                ));
            }
            let same =
                |m: &&Marker| (m.centre_mm - marker.centre_mm).norm() < 1e-6 && m.normal().dot(&marker.normal()) > 0.0;
            if let Some(other) = carrier.markers[..i].iter().find(same) {
                return Err(place
                    .need("centre_mm")?
                    .error(phrase!("doors-same-centre", id = other.id), phrase!("doors-same-centre-remedy")));
            }
        }
    }
    Ok(())
}

fn write_carrier(w: &mut Writer, carrier: &Carrier) {
    w.item("carrier");
    w.key("name", carrier.name.as_str());
    w.key("role", carrier.role.name());
    w.key("u_seating_mm", carrier.u_seating_mm);
    w.numbers("u_seating_deg", &carrier.u_seating_deg);
    if carrier.on_centreline {
        w.key("on_centreline", true);
    }
    for marker in &carrier.markers {
        w.item("carrier.marker");
        w.key("id", i64::from(marker.id));
        w.numbers("size_xy_mm", &marker.size_mm);
        w.numbers("centre_mm", marker.centre_mm.as_slice());
        w.numbers("right", marker.right.as_slice());
        w.numbers("up", marker.up.as_slice());
        if let Some(u) = &marker.u_centre_mm {
            w.numbers("u_centre_mm", u);
        }
        if let Some(u) = &marker.u_turn_deg {
            w.numbers("u_turn_deg", u);
        }
        w.maybe("u_size_mm", marker.u_size_mm);
    }
}
