//! Reading set-up sheets (`setup/1`).

use std::path::Path;

use crate::input::{Document, Error, SourceFile, Table, Value};
use crate::words::{Figure, phrase};

use super::check_file::{Known, check_twice, line, read_check, read_quantity};
use super::sheet::{
    Check, Datum, Decision, DecisionRule, From, Limits, Prerequisite, Procedure, ReferenceLine, Setup, Waiver,
};

pub(super) const FORMAT: &str = "setup/1";

pub(super) const RULES: [(&str, DecisionRule); 4] = [
    ("guarded", DecisionRule::Guarded),
    ("simple", DecisionRule::Simple),
    ("binary", DecisionRule::Binary),
    ("four_way", DecisionRule::FourWay),
];

/// What a sheet can say of content credentials.
const CREDENTIALS: [(&str, bool); 2] = [("required", true), ("optional", false)];

impl Setup {
    /// Reads a set-up sheet from disk.
    ///
    /// # Errors
    /// Unreadable, or wrong in any way: names file, line, key and remedy.
    pub fn read(path: &Path) -> Result<Self, Error> {
        let file = SourceFile::read(path)?;
        Setup::from_toml(file.text()?, file.name())
    }

    /// Reads a set-up sheet's text; `file` is its name for messages.
    ///
    /// # Errors
    /// Wrong in any way: names file, line, key and remedy.
    pub fn from_toml(text: &str, file: &str) -> Result<Self, Error> {
        Setup::from_document(&Document::parse(text, file, FORMAT)?)
    }

    /// The document of a set-up sheet, to be kept where mistakes that show
    /// only beside other files must name their line.
    ///
    /// # Errors
    /// Not TOML, or a file of another format.
    pub fn document<'a>(text: &'a str, file: &str) -> Result<Document<'a>, Error> {
        Document::parse(text, file, FORMAT)
    }

    /// Reads a parsed set-up sheet.
    ///
    /// # Errors
    /// As [`Setup::from_toml`].
    pub fn from_document(document: &Document) -> Result<Self, Error> {
        let root = document.root().allow(&[
            "format",
            "name",
            "title",
            "source",
            "reference_line",
            "decision",
            "procedure",
            "steps",
            "datum",
            "prerequisite",
            "check",
            "waived",
            "limits",
            "evidence",
        ])?;
        let name = root.need("name")?.name()?;
        let reference_line = line(&root.need("reference_line")?)?;
        let datums = read_datums(&root)?;
        let steps = root.maybe("steps", read_steps)?.unwrap_or_default();
        let known = Known { datums: &datums, steps: &steps };
        let checks = read_checks(&root, &known, reference_line)?;
        Ok(Setup {
            name,
            title: root.need("title")?.text()?,
            source: root.need("source")?.text()?,
            reference_line,
            decision: read_decision(root.table("decision")?)?,
            procedure: root.table("procedure")?.map(read_procedure).transpose()?,
            prerequisites: read_prerequisites(&root)?,
            waived: read_waivers(&root, &checks)?,
            limits: root.table("limits")?.map_or(Ok(Limits::default()), read_limits)?,
            credentials_required: root.table("evidence")?.map_or(Ok(false), read_evidence)?,
            steps,
            datums,
            checks,
        })
    }
}

/// What the sheet asks of the photos' files.
fn read_evidence(table: Table) -> Result<bool, Error> {
    let table = table.allow(&["credentials"])?;
    Ok(table.maybe("credentials", |v| v.choice("credentials", &CREDENTIALS))?.unwrap_or(false))
}

fn read_steps(value: &Value) -> Result<Vec<String>, Error> {
    const MOST_STEPS: usize = 20;
    let items = value.items()?;
    if items.is_empty() || items.len() > MOST_STEPS {
        let problem = phrase!("doors-step-count", count = items.len());
        return Err(value.error(problem, phrase!("doors-step-count-remedy", most = MOST_STEPS)));
    }
    let mut steps: Vec<String> = Vec::new();
    for item in items {
        let name = item.name()?;
        if steps.contains(&name) {
            return Err(item.error(phrase!("doors-named-twice", name = name), phrase!("doors-step-once")));
        }
        steps.push(name);
    }
    Ok(steps)
}

fn read_decision(table: Option<Table>) -> Result<Decision, Error> {
    let mut decision = Decision::default();
    let Some(table) = table else { return Ok(decision) };
    let table = table.allow(&["rule", "conformance_probability", "photos_after_move"])?;
    if let Some(rule) = table.get("rule") {
        decision.rule = rule.choice("rule", &RULES)?;
    }
    if let Some(value) = table.get("conformance_probability") {
        let p = value.number()?;
        if !(Decision::LEAST_PROBABILITY..1.0).contains(&p) {
            let wrong = phrase!(
                "doors-probability",
                least = Figure::plain(Decision::LEAST_PROBABILITY),
                found = Figure::plain(p)
            );
            return Err(value.error(wrong, phrase!("doors-probability-remedy")));
        }
        decision.conformance_probability = p;
    }
    if let Some(value) = table.get("photos_after_move") {
        decision.photos_after_move = value.whole(1, 12)? as usize;
    }
    Ok(decision)
}

fn read_procedure(table: Table) -> Result<Procedure, Error> {
    let table = table.allow(&["document", "revision", "opened", "applies_to"])?;
    Ok(Procedure {
        document: table.maybe("document", Value::text)?,
        revision: table.maybe("revision", Value::text)?,
        opened: table.maybe("opened", Value::date)?,
        applies_to: table.maybe("applies_to", Value::text)?,
    })
}

fn read_limits(table: Table) -> Result<Limits, Error> {
    let table = table.allow(&["floor_slope_deg", "floor_flatness_mm_per_m", "free_ahead_mm"])?;
    Ok(Limits {
        floor_slope_deg: table.maybe("floor_slope_deg", |v| v.positive(45.0, "deg"))?,
        floor_flatness_mm_per_m: table.maybe("floor_flatness_mm_per_m", |v| v.positive(1000.0, "mm/m"))?,
        free_ahead_mm: table.maybe("free_ahead_mm", |v| v.positive(200_000.0, "mm"))?,
    })
}

fn read_datums(root: &Table) -> Result<Vec<Datum>, Error> {
    let mut datums: Vec<Datum> = Vec::new();
    for table in root.tables("datum")? {
        let table = table.allow(&["name", "carrier", "offset_mm", "u_mm"])?;
        let value = table.need("name")?;
        let name = value.name()?;
        if [From::Nose, From::FrontAxle, From::RearAxle].iter().any(|f| f.name() == name) {
            return Err(value.error(phrase!("doors-datum-standard", name = name), phrase!("doors-other-name")));
        }
        if let Some(k) = datums.iter().position(|d| d.name == name) {
            return Err(value.error(
                phrase!("doors-name-taken", name = name, key = format!("datum[{k}]")),
                phrase!("doors-other-name"),
            ));
        }
        datums.push(Datum {
            name,
            carrier: table.need("carrier")?.name()?,
            offset_mm: table.need("offset_mm")?.array(|v| v.within(-10_000.0, 10_000.0, "mm"))?,
            u_mm: table.need("u_mm")?.uncertainty(1000.0, "mm")?,
        });
    }
    Ok(datums)
}

fn read_prerequisites(root: &Table) -> Result<Vec<Prerequisite>, Error> {
    let mut all: Vec<Prerequisite> = Vec::new();
    for table in root.tables("prerequisite")? {
        let table = table.allow(&["id", "text", "required"])?;
        let value = table.need("id")?;
        let id = value.name()?;
        if let Some(k) = all.iter().position(|p| p.id == id) {
            return Err(value.error(
                phrase!("doors-id-taken", id = id, key = format!("prerequisite[{k}]")),
                phrase!("doors-other-id"),
            ));
        }
        all.push(Prerequisite {
            id,
            text: table.need("text")?.text()?,
            required: table.maybe("required", Value::flag)?.unwrap_or(true),
        });
    }
    Ok(all)
}

fn read_checks(root: &Table, known: &Known, sheet_line: ReferenceLine) -> Result<Vec<Check>, Error> {
    let tables = root.tables("check")?;
    if tables.is_empty() {
        root.need("check")?;
        return Err(root.error(phrase!("doors-no-check"), phrase!("doors-no-check-remedy")));
    }
    let mut checks: Vec<Check> = Vec::new();
    for table in tables {
        let check = read_check(&table, known)?;
        if let Some(k) = checks.iter().position(|earlier| check_twice(earlier, &check, sheet_line)) {
            return Err(table.need("quantity")?.error(
                phrase!("doors-check-twice", quantity = check.quantity.name(), key = format!("check[{k}]")),
                phrase!("doors-check-twice-remedy"),
            ));
        }
        checks.push(check);
    }
    Ok(checks)
}

fn read_waivers(root: &Table, checks: &[Check]) -> Result<Vec<Waiver>, Error> {
    let mut waived: Vec<Waiver> = Vec::new();
    for table in root.tables("waived")? {
        let table = table.allow(&["quantity", "because"])?;
        let value = table.need("quantity")?;
        let quantity = read_quantity(&value)?;
        if let Some(k) = checks.iter().position(|c| c.quantity == quantity) {
            return Err(value.error(
                phrase!("doors-waived-and-checked", quantity = quantity.name(), key = format!("check[{k}]")),
                phrase!("doors-waived-and-checked-remedy"),
            ));
        }
        if let Some(k) = waived.iter().position(|w| w.quantity == quantity) {
            return Err(value.error(
                phrase!("doors-waived-twice", quantity = quantity.name(), key = format!("waived[{k}]")),
                phrase!("doors-waived-twice-remedy"),
            ));
        }
        waived.push(Waiver { quantity, because: table.need("because")?.text()? });
    }
    Ok(waived)
}
